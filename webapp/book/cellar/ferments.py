"""Ferments as the cellar looks at them: readings, forecast of the end, and independent counts of one alcohol.

Reads only. A ferment is a fill of a fermenter; its runs are those that were charged from it.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field
from datetime import datetime
from functools import partial
from itertools import groupby
from operator import itemgetter
from typing import NotRequired, TypedDict, cast

from webapp.book.before.limits import end_gravity, is_grain
from webapp.book.before.reading_context import JUICE_SHARE_PCT
from webapp.book.cellar.endings import FALL_KEYS, Newest, past_weights
from webapp.book.fold.reader_rows import FillRow
from webapp.book.fold.row_reader import PlacedRow, read_all_as_folded
from webapp.book.fold.states import load_newest, load_newest_of
from webapp.book.record.log import JOIN_FOLDED
from webapp.book.record.store import Book
from webapp.book.still import runs
from webapp.kinds.goods_state import Falls
from webapp.kinds.key import FallKey, FillKey, VesselKey, fill_key, vessel_key
from webapp.kinds.reasons import reason_of
from webapp.kinds.state import EMPTY_VESSEL, Body, Fill, PastFill, Vessel
from webapp.trade.errors import OutOfDomain
from webapp.trade.ferment import EndForecast, forecast_end, strength_by_attenuation_1880
from webapp.trade.sugar import alcohol_from_gravity_fall
from webapp.words import sentence

LIST_MOST = 200
READINGS_MOST = 400
DAY_S = 86_400
_WHOLLY_LIQUID = ("rye",)


class FermentPart(TypedDict):
    """A ferment's part of its card: its usual end gravity [SG], whether it is grain, and how past ones ended [1]."""

    end: float
    grain: bool
    past: NotRequired[list[float]]


class FermentReading(TypedDict):
    """A reading of a ferment. [SG, degC]"""

    at: str
    gravity: float
    temp_c: float | None
    person: str
    entry: str


class Forecast(EndForecast):
    """When it will have ended, in time as well. [s since 1970]"""

    words: NotRequired[str]
    at_s: NotRequired[dict[str, float]]
    curve_s: NotRequired[list[list[float]]]


class Measured(TypedDict, total=False):
    """What was measured when a ferment closed; nothing before. [L pure alcohol, % vol, L, SG]"""

    lpa: float | None
    strength_pct: float | None
    volume_l: float | None
    final_gravity: float | None


class Ferment(TypedDict):
    """A ferment: facts, readings, and the forecast of its end."""

    fill: str
    mark: str
    what: str
    name: str
    since: str
    ended_at: str
    holds: Fill | None
    material: str
    readings: list[FermentReading]
    measured: Measured
    end_gravity: float
    grain: bool
    closed: bool
    charged: bool
    forecast: Forecast


class Counted(TypedDict):
    """One count of a ferment's alcohol. [% vol, L, % of what was measured]"""

    key: str
    pct: float | None
    lpa: float | None
    share: NotRequired[float | None]
    greatest: NotRequired[bool]
    runs: NotRequired[int]
    charged_lpa: NotRequired[float]


class _LoggedRow(PlacedRow):
    id: str
    person: str
    fill: str
    ended_at: str


def card_part(book: Book, state: Vessel) -> FermentPart | None:
    """Return the ferment's part of its card, for the forecast on a phone: its usual end gravity, whether it is grain,
    and how the house's past ferments of its material ended, where there were any.
    """
    held = state["holds"]
    if not held:
        return None
    material, what = held.get("material") or "", held.get("what") or ""
    part: FermentPart = {"end": end_gravity(material, what), "grain": is_grain(f"{material} {what}")}
    past = past_weights(partial(load_newest, book), material)
    return {**part, "past": past} if past else part


def ferments(book: Book, limit: int = LIST_MOST) -> list[Ferment]:
    """Return the fills of fermenters, those under way first, then newest first."""
    rows = book.rows(
        FillRow,
        "SELECT f.* FROM fills f JOIN vessels v ON v.mark = f.mark WHERE v.sort = 'fermenter' "
        "ORDER BY (f.ended_at = '') DESC, f.since DESC LIMIT ?",
        (limit,),
    )
    return _ferments(book, rows)


def ferment(book: Book, fill: str) -> Ferment | None:
    """Return a ferment by its fill: facts, readings [day, SG, degC], forecast. None where no fermenter has had it."""
    rows = book.rows(
        FillRow,
        "SELECT f.* FROM fills f JOIN vessels v ON v.mark = f.mark WHERE f.id = ? AND v.sort = 'fermenter'",
        (fill,),
    )
    return next(iter(_ferments(book, rows)), None)


def _ferments(book: Book, rows: Sequence[FillRow]) -> list[Ferment]:
    keys: list[FillKey | VesselKey | FallKey] = [fill_key(row["id"]) for row in rows]
    keys += [vessel_key(row["mark"]) for row in rows]
    keys += FALL_KEYS.values()
    states = load_newest_of(book, keys)
    logged = _logged(book, rows)
    facts = [cast("PastFill | None", states.get(fill_key(row["id"]))) for row in rows]  # the key says which sort it is

    def newest(key: FallKey) -> Falls | None:
        return cast("Falls | None", states.get(key))  # as above

    return [
        _ferment(
            row, fact,
            cast("Vessel | None", states.get(vessel_key(row["mark"]))) or EMPTY_VESSEL,  # as above
            logged[row["id"]], newest,
        )
        for row, fact in zip(rows, facts, strict=True)
    ]


def _ferment(
    row: FillRow, facts: PastFill | None, state: Vessel, logged: _Logged,
    newest: Newest,
) -> Ferment:
    fill = row["id"]
    held = state["holds"] if state["holds"] and state["holds"]["fill"] == fill else None
    of: Body = held or facts or {}
    known = facts["material"] if facts and "material" in facts else None
    material, what = (held["material"] if held else known) or "", row["what"] or ""
    end, grain, closed = end_gravity(material, what), is_grain(f"{material} {what}"), bool(of.get("closed"))
    return {
        "fill": fill, "mark": row["mark"], "what": what, "name": row["name"], "since": row["since"],
        "ended_at": row["ended_at"], "holds": held, "material": material, "readings": logged.readings,
        "measured": logged.measured, "end_gravity": end, "grain": grain, "closed": closed,
        "charged": bool(of.get("charged")),
        "forecast": {"state": "closed"} if closed else forecast_of(
            logged.readings, end, grain, past_weights(newest, material)),
    }


@dataclass(slots=True)
class _Logged:
    """What was logged of a ferment: readings with a gravity, oldest first, and what was measured when it closed."""

    readings: list[FermentReading] = field(default_factory=list)
    measured: Measured = field(default_factory=Measured)


def _logged(book: Book, fills: Sequence[FillRow]) -> dict[str, _Logged]:
    """Return by fill what was logged of it."""
    rows = book.rows(
        _LoggedRow,
        "SELECT e.*, f.order_key, l.id AS fill, l.ended_at FROM json_each(?) w "  # noqa: S608
        "CROSS JOIN fills l ON l.id = w.value "
        "CROSS JOIN touches t ON t.key = 'v:' || l.mark AND t.order_key >= l.since "
        f"JOIN entries e ON e.id = substr(t.order_key, -36) {JOIN_FOLDED} "
        "WHERE e.kind IN ('ferment_reading', 'ferment_closed') AND f.standing = 'entered' AND f.mark = l.mark "
        "AND (l.ended_at = '' OR substr(f.order_key, 1, 19) || 'Z' <= l.ended_at) ORDER BY l.id, f.order_key",
        (json.dumps([row["id"] for row in fills]),),
    )
    kept = [row for _, some in groupby(rows, key=itemgetter("fill")) for row in _first_of_each(some)]
    found = {row["id"]: _Logged() for row in fills}
    for row, read in zip(kept, read_all_as_folded(book, kept), strict=True):
        if read is None:
            continue
        one = found[row["fill"]]
        if row["kind"] == "ferment_closed":
            one.measured = {
                "lpa": read.figures.get("wash_lpa"), "strength_pct": read.number("wash_strength"),
                "volume_l": read.number("volume"), "final_gravity": read.number("final_gravity"),
            }
        elif (gravity := read.number("gravity")) is not None:
            one.readings.append({
                "at": row["order_key"][:19] + "Z", "gravity": gravity, "temp_c": read.number("temp"),
                "person": row["person"], "entry": row["id"],
            })
    return found


def _first_of_each(rows: Iterable[_LoggedRow]) -> Iterator[_LoggedRow]:
    """Yield the first readings of a fill, and the first entry that closed it before it left."""
    readings, closings = 0, 0
    for row in rows:
        if row["kind"] == "ferment_reading":
            readings += 1
            if readings <= READINGS_MOST:
                yield row
        elif not row["ended_at"] or row["order_key"] <= f"{row['ended_at']}~":
            closings += 1
            if closings == 1:
                yield row


def forecast_of(
    lines: Sequence[FermentReading], end: float, grain: bool, past: Sequence[float] | None
) -> Forecast:
    """Return when a ferment will have ended, by its readings and by how past ones of its material ended."""
    times = [datetime.fromisoformat(line["at"]).timestamp() for line in lines]
    try:
        said = forecast_end([(at - times[0]) / DAY_S for at in times], [line["gravity"] for line in lines], end,
                            is_grain=grain, past=past)
    except OutOfDomain as error:
        return {"state": "too_little", "why": "refused", "words": sentence(reason_of(error))}
    told = cast(Forecast, said)  # the same answer, to which its times are added
    if "days" in said:
        told["at_s"] = {name: times[0] + day * DAY_S for name, day in said["days"].items()}
    if "curve" in said:
        told["curve_s"] = [[times[0] + day * DAY_S, gravity] for day, gravity in said["curve"]]
    return told


def count_alcohol(book: Book, found: Ferment) -> list[Counted]:
    """Return the independent counts of a ferment's alcohol: key, words, lpa [L], pct [% vol], share [% of measured].

    By the fall of gravity, by the law of 1880, by the measured wash, by low wines, by spirits. Counts behind the still
    are scaled to the whole wash; what other spirit was charged with it is taken off by its share.
    """
    closed = found["measured"]
    lines, volume = found["readings"], closed.get("volume_l")
    og = lines[0]["gravity"] if lines else None
    last = closed.get("final_gravity") or (lines[-1]["gravity"] if lines else None)
    made: list[Counted] = []
    if og and last and og >= last:
        share = 1.0 if found["material"] in _WHOLLY_LIQUID else JUICE_SHARE_PCT / 100
        for key, pct in (("gravity", alcohol_from_gravity_fall(og, last, share)),
                         ("law_1880", strength_by_attenuation_1880(og, last))):
            made.append({"key": key, "pct": pct, "lpa": pct / 100 * volume if volume else None})
    if closed.get("lpa"):
        made.append({"key": "wash", "pct": closed["strength_pct"], "lpa": closed["lpa"]})
    made += _behind_the_still(book, found["fill"], closed.get("lpa"))
    measured = closed.get("lpa")
    for one in made:
        one["share"] = one["lpa"] / measured * 100 if measured and one["lpa"] else None
    three = [one for one in made if one["key"] in ("gravity", "low_wines", "spirits") and one["lpa"]]
    if three:
        max(three, key=lambda one: one["lpa"] or 0.0)["greatest"] = True
    return made


def _behind_the_still(book: Book, fill: str, measured: float | None) -> list[Counted]:
    rows = book.query(
        "SELECT target, sum(lpa_ul) AS lpa_ul FROM flows WHERE source_fill = ? AND target LIKE 'r:%' GROUP BY target",
        (fill,),
    )
    sums: dict[str, list[float]] = {}
    known = runs.runs_by_id(book, (row["target"][2:] for row in rows))
    for row in rows:
        run = known.get(row["target"][2:])
        charge = run.get("charge") if run else None
        charged, wash = (charge.get("lpa_l") or 0.0) if charge else 0.0, row["lpa_ul"] / 1e6
        if not run or not run["ended_at"] or not run["fractions"] or charged <= 0:
            continue
        names = {part["fraction"] for part in run["fractions"]}
        key = "low_wines" if "low_wines" in names else "spirits"
        got = sum(part["lpa_l"] for part in run["fractions"]) * wash / charged
        total = sums.setdefault(key, [0.0, 0.0, 0.0])
        total[0], total[1], total[2] = total[0] + got, total[1] + wash, total[2] + 1
    return [
        {"key": key, "pct": None, "lpa": got / wash * (measured or wash), "runs": int(count), "charged_lpa": wash}
        for key, (got, wash, count) in sums.items()
        if wash > 0
    ]
