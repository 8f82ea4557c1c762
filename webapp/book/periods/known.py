"""How well the lines of a period are known: its entries, with the errors of the instruments that they share.

A line that finds a difference, such as evaporation, is the gauge before less the gauge that found it; every other is
what its entry measured, or its share of it. Nothing is kept. Source: JCGM 100:2008, 5.2.2.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import NamedTuple

from webapp.book.fold.row_reader import read_all_as_folded
from webapp.book.fold.states import load_before_each
from webapp.book.house.uncertain import (
    JOINED,
    Effective,
    last_measured,
    load_effective,
    load_holdings,
    measured_or_filled,
    own_of_entry,
    sum_of,
)
from webapp.book.periods.lines import ACCOUNTS, WAREHOUSE, Line
from webapp.book.periods.periods import Account, Shown
from webapp.book.record.store import Book
from webapp.kinds.key import vessel_key
from webapp.kinds.state import NO_FILL
from webapp.kinds.uncertainty import uncertain_as_read
from webapp.trade.uncertainty import Uncertain, combine

MOVED_LEAST_L = 0.01  # roundings of two gauges
ENTRIES_MOST = 1000  # a millisecond each
DIFFERENCES = frozenset(("out:evaporation", "out:gauge_difference", "out:leak"))
# What no instrument says by itself: the rest of a sum, or what was reckoned.
_UNSAID = frozenset(("out:stillage", "out:fermented", "out:not_accounted", "out:soakage", "out:transit"))
_FLOWS = (
    "WITH w AS (SELECT entry AS value, "  # noqa: S608 - joins are ours, values are bound
    "CASE WHEN source_account = '' THEN source ELSE source_account END AS a, "
    "CASE WHEN target_account = '' THEN target ELSE target_account END AS b, "
    "CASE WHEN reason GLOB '* bottles' THEN 'bottles' ELSE reason END AS reason, sort, sum(lpa_ul) AS lpa_ul "
    "FROM flows INDEXED BY flows_at WHERE at >= ? AND at < ? AND lpa_ul <> 0 AND source_account <> target_account "
    "GROUP BY 1, 2, 3, 4, 5 LIMIT ?) "
    "SELECT w.value AS asked, w.a, w.b, w.reason, w.sort, w.lpa_ul, e.kind, e.mark, e.body, f.order_key FROM w "
    + JOINED
)


class _Flow(Effective):
    """What an entry moved from one account or place outside to another, with its row. [uL]"""

    a: str
    b: str
    reason: str
    sort: str
    lpa_ul: int


class Part(NamedTuple):
    """What one entry has in a line: pure alcohol [uL], and how well it is known [LPA]; None where nobody can say."""

    ul: int
    known: Uncertain | None


Parts = Mapping[Line, Sequence[Part]]


def parts_between(book: Book, start: str, until: str, most: int = ENTRIES_MOST) -> dict[Line, list[Part]]:
    """Return the parts of each line from start up to until, UTC texts without Z; nothing where more than `most` flows
    lie between.
    """
    flows = book.rows(_Flow, _FLOWS, (start, until, most + 1))
    if not flows or len(flows) > most:
        return {}
    own: dict[str, Effective] = {flow["asked"]: flow for flow in flows}
    finders = {flow["asked"] for flow in flows if {flow["a"], flow["b"]} & DIFFERENCES}
    before = _gauges_before(book, [own[asked] for asked in sorted(finders)])
    rows = [*own.values(), *load_effective(book, set(before.values()) - own.keys())]
    reads = read_all_as_folded(book, rows)
    known = {
        row["asked"]: {name: own_of_entry(row, one) for name, one in uncertain_as_read(read).items()}
        for row, read in zip(rows, reads, strict=True) if read
    }
    parts: dict[Line, list[Part]] = {}
    for flow in flows:
        a, b, ul = flow["a"], flow["b"], flow["lpa_ul"]
        figures = known.get(flow["asked"], {})
        if {a, b} & DIFFERENCES:
            then = known.get(before.get(flow["asked"], ""), {}).get("lpa")
            found = _fallen(then, figures.get("lpa"), -1.0 if b in DIFFERENCES else 1.0)
            # Where something was moved between the two, they alone do not say it.
            if found and abs(found.value - ul / 1e6) > MOVED_LEAST_L:
                found = None
        elif {a, b} & _UNSAID:
            found = None
        else:
            found = _share(figures.get("lost" if b == "out:filter_loss" else "lpa"), ul / 1e6)
        if b in ACCOUNTS:
            parts.setdefault(Line(b, "in", a, flow["reason"]), []).append(Part(ul, found))
        if a in ACCOUNTS:
            parts.setdefault(Line(a, "out", b, flow["reason"], flow["sort"]), []).append(Part(ul, found))
    return parts


def known_line(parts: Parts, account: str, line: Shown) -> Uncertain | None:
    """Return how well a line of an account is known; None for an adjustment, for a figure that is no longer what its
    entries say, and where an entry says nothing. [LPA]
    """
    if line.of:
        return None
    if account == WAREHOUSE:
        mine = [
            part for one, some in parts.items() for part in some
            if (one.side, one.party, one.reason) == (line.side, line.party, line.reason) and one.party not in ACCOUNTS
        ]
    else:
        mine = list(parts.get(Line(account, line.side, line.party, line.reason, line.sort), ()))
    terms = [(1.0, part.known) for part in mine if part.known]
    if not terms or len(terms) < len(mine) or sum(part.ul for part in mine) != line.ul:
        return None
    return combine(terms)._replace(value=line.ul / 1e6)


def known_total(parts: Parts, account: Account, side: str) -> Uncertain | None:
    """Return how well all that came in, or went out, is known; None where one of its lines is not. [LPA]"""
    lines = account.ins if side == "in" else account.outs
    found = [known_line(parts, account.name, line) for line in lines]
    return sum_of(found) if lines else None


class Held(NamedTuple):
    """What a vessel held that somebody measured: pure alcohol [uL], how well that is known [LPA], and since when it was
    not measured, UTC text, empty where what came in was measured and not what stands there.
    """

    mark: str
    account: str
    ul: int
    known: Uncertain
    measured_at: str


def load_held(book: Book, until: str) -> list[Held]:
    """Return the measured holdings of vessels before a time, UTC text without Z, the least known first. What nobody
    measured, mash and bottles are left out. Nothing where more vessels hold something than `load_holdings` follows.
    """
    marks = [row["mark"] for row in book.query("SELECT mark FROM vessels ORDER BY mark")]
    found = load_before_each(book, ((vessel_key(mark), until) for mark in marks))
    states = {mark: state for mark in marks if (state := found.get((vessel_key(mark), until)))}
    held = []
    for mark, known in load_holdings(book, states, until).items():
        fill, line = states[mark]["holds"] or NO_FILL, last_measured(states[mark])
        held.append(Held(mark, fill["account"], fill["lpa_ul"], known, line["at"] if line else ""))
    return sorted(held, key=lambda one: (-one.known.standard, one.mark))


def _gauges_before(book: Book, rows: Sequence[Effective]) -> dict[str, str]:
    """Return the last gauge of its vessel before each entry that found a difference, by the id asked for."""
    places = {row["asked"]: (vessel_key(row["mark"]), row["order_key"]) for row in rows if row["mark"]}
    states = load_before_each(book, places.values())
    found = {}
    for asked, place in places.items():
        state = states.get(place)
        line = measured_or_filled(state) if state else None
        if line:
            found[asked] = line["entry"]
    return found


def _fallen(then: Uncertain | None, now: Uncertain | None, way: float) -> Uncertain | None:
    """Return what came (way 1) or went (-1) between two gauges."""
    return combine([(way, now), (-way, then)]) if then and now else None


def _share(measured: Uncertain | None, litres: float) -> Uncertain | None:
    if measured is None or not measured.value > 0:
        return None
    return combine([(litres / measured.value, measured)])
