"""What stands against closing a period: said in plain words beside it, never hidden. Nothing here changes a figure."""

from __future__ import annotations

import json
from dataclasses import dataclass

from webapp.book.fold.states import load_before_each
from webapp.book.periods.periods import Period
from webapp.book.periods.words import pure_words
from webapp.book.record import months
from webapp.book.record.store import Book
from webapp.book.record.units import house_units
from webapp.kinds.key import vessel_key
from webapp.words.houseunits import House

SOURCES = {"tank_loss": "27 CFR 19.462"}
TANK_LOSS_PCT = 1.5  # 27 CFR 19.462: of what was in the tanks in a calendar quarter; casks do not count
_LOSSES = ("out:gauge_difference", "out:leak", "out:spill", "out:missing", "out:evaporation")


@dataclass(frozen=True, slots=True)
class Notice:
    """One thing to look at. weight: ask or note; href: where to, or empty."""

    code: str
    weight: str
    words: str
    href: str = ""


def warnings(book: Book, period: Period, house: House | None = None) -> list[Notice]:
    """Return the points to look at before a period is closed. house: its units, where they have been read already."""
    lost = _not_accounted(period, house or house_units(book))
    return [*_negatives(period), *_open_questions(book, period), *lost, *tank_loss(book, period)]


def _negatives(period: Period) -> list[Notice]:
    """An account with a figure below nothing, or whose in and out do not come to its closing."""
    found = []
    for account in (*period.accounts, *period.known):
        figures = (account.opening, account.closing, *(line.ul for line in (*account.ins, *account.outs)))
        if min(figures) < 0:
            words = f"The account {account.name} has a figure below nothing. Look for an entry of a wrong day."
            found.append(Notice("negative", "ask", words))
        if account.opening + account.total_in - account.total_out != account.closing:
            words = f"In and out of {account.name} do not come to its closing. Report this to who keeps the program."
            found.append(Notice("unbalanced", "ask", words))
    return list(dict.fromkeys(found))


def _open_questions(book: Book, period: Period) -> list[Notice]:
    """Questions on entries of this time that nobody has answered."""
    row = book.one(
        "SELECT count(*) AS n FROM queries WHERE answer = '' AND weight <> 'note' AND at >= ? AND at < ?",
        (period.start, period.until),
    )
    n = int(row["n"]) if row else 0
    if not n:
        return []
    are, them = ("question is", "it") if n == 1 else ("questions are", "them")
    words = f"{n} {are} open on entries of this time. Answer {them}, or read {them} one by one as you close."
    return [Notice("questions", "ask", words, "/desk/queries")]


def _not_accounted(period: Period, house: House) -> list[Notice]:
    """Pure alcohol that came from where the book has nothing, or went where nothing accounts for it."""
    found = []
    for account in period.known:
        lost = sum(line.ul for line in account.outs if line.party == "out:not_accounted")
        came = sum(line.ul for line in account.ins if line.party == "out:not_accounted")
        if came:
            words = f"{pure_words(came, house)} came into {account.name} from where the book has nothing."
            found.append(Notice("from_nothing", "ask", f"{words} Look for an entry that is missing."))
        if lost:
            words = f"{pure_words(lost, house)} went out of {account.name} that nothing accounts for."
            found.append(Notice("not_accounted", "note", words))
    return found


def tank_loss(book: Book, period: Period) -> list[Notice]:
    """What tanks lost in a calendar quarter, against what was in them. Gains do not make up for losses."""
    if period.name not in {months.quarter_of(month) for month in period.months}:
        return []
    held = "SELECT 'v:' || mark FROM vessels WHERE sort = 'tank'"
    sums = book.one(
        f"SELECT sum(CASE WHEN target IN ({held}) THEN lpa_ul ELSE 0 END) AS came, "  # noqa: S608
        f"sum(CASE WHEN target IN {_LOSSES} THEN lpa_ul ELSE 0 END) AS lost, "
        "(SELECT json_group_array(mark) FROM vessels WHERE sort = 'tank') AS tanks FROM flows INDEXED BY flows_at "
        f"WHERE at >= :start AND at < :until AND source <> target AND (source IN ({held}) OR target IN ({held})) "
        f"AND NOT (source IN ({held}) AND target IN ({held}))",
        {"start": period.start, "until": period.until},
    )
    assert sums is not None
    # What stood there when the quarter began is what the flows before it came to: accounts.verify.
    states = load_before_each(book, ((vessel_key(mark), period.start) for mark in json.loads(sums["tanks"])))
    opening = sum(state["holds"]["lpa_ul"] for state in states.values() if state and state["holds"])
    contained, lost = opening + (sums["came"] or 0), sums["lost"] or 0
    if not contained or lost * 100 <= TANK_LOSS_PCT * contained:
        return []
    house = house_units(book)
    words = (
        f"Tanks lost {pure_words(lost, house).split()[0]} of {pure_words(contained, house)} in them this quarter: "
        f"{lost * 100 / contained:.1f} %. Above {TANK_LOSS_PCT} % counts as excessive in the US (27 CFR 19.462)."
    )
    return [Notice("tank_loss", "ask", words)]
