"""Ferments as the cellar looks at them: readings, forecast of the end, and independent counts of one alcohol.

Reads only. A ferment is a fill of a fermenter; its runs are those that were charged from it.
"""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from datetime import datetime
from typing import Any

from webapp.book.before.limits import end_gravity, is_grain
from webapp.book.before.reading_context import JUICE_SHARE_PCT
from webapp.book.fold.row_reader import read_all_as_folded, read_as_folded
from webapp.book.fold.states import load_newest_of
from webapp.book.record.log import JOIN_FOLDED
from webapp.book.record.store import Book
from webapp.book.still import runs
from webapp.kinds.key import fill_key, vessel_key
from webapp.kinds.state import EMPTY_VESSEL, Body, PastFill, Vessel
from webapp.trade.errors import OutOfDomain
from webapp.trade.ferment import forecast_end, strength_by_attenuation_1880
from webapp.trade.sugar import alcohol_from_gravity_fall

LIST_MOST = 200
READINGS_MOST = 400
DAY_S = 86_400
_WHOLLY_LIQUID = ("rye",)


def card_part(state: Mapping[str, Any]) -> dict[str, Any] | None:
    """Return the ferment's part of its card, for the forecast on a phone: its usual end gravity, and whether it is
    grain.
    """
    held = state["holds"]
    if not held:
        return None
    material, what = held.get("material") or "", held.get("what") or ""
    return {"end": end_gravity(material, what), "grain": is_grain(f"{material} {what}")}


def ferments(book: Book, limit: int = LIST_MOST) -> list[dict[str, Any]]:
    """Return the fills of fermenters, those under way first, then newest first."""
    rows = book.query(
        "SELECT f.* FROM fills f JOIN vessels v ON v.mark = f.mark WHERE v.sort = 'fermenter' "
        "ORDER BY (f.ended_at = '') DESC, f.since DESC LIMIT ?",
        (limit,),
    )
    return _ferments(book, rows)


def ferment(book: Book, fill: str) -> dict[str, Any] | None:
    """Return a ferment by its fill: facts, readings [day, SG, degC], forecast. None where there is no such fill."""
    return next(iter(_ferments(book, book.query("SELECT * FROM fills WHERE id = ?", (fill,)))), None)


def _ferments(book: Book, rows: Sequence[Mapping[str, Any]]) -> list[dict[str, Any]]:
    facts = load_newest_of(book, (fill_key(row["id"]) for row in rows))
    states = load_newest_of(book, (vessel_key(row["mark"]) for row in rows))
    readings = _readings(book, rows)
    return [
        _ferment(row, facts.get(fill_key(row["id"])), states.get(vessel_key(row["mark"])) or EMPTY_VESSEL,
                 readings[row["id"]])
        for row in rows
    ]


def _ferment(
    row: Mapping[str, Any], facts: PastFill | None, state: Vessel, lines: list[dict[str, Any]]
) -> dict[str, Any]:
    fill = row["id"]
    held = state["holds"] if state["holds"] and state["holds"]["fill"] == fill else None
    of: Body = held or facts or {}
    past = facts["material"] if facts and "material" in facts else None
    material, what = (held["material"] if held else past) or "", row["what"] or ""
    found = {
        "fill": fill, "mark": row["mark"], "what": what, "name": row["name"], "since": row["since"],
        "ended_at": row["ended_at"], "holds": held, "material": material, "readings": lines,
        "end_gravity": end_gravity(material, what), "grain": is_grain(f"{material} {what}"),
        "closed": bool(of.get("closed")), "charged": bool(of.get("charged")),
    }
    return found | {"forecast": _forecast(found)}


def _readings(book: Book, fills: Sequence[Mapping[str, Any]]) -> dict[str, list[dict[str, Any]]]:
    """Return by fill its readings with a gravity, oldest first: at, gravity, temp_c, person, entry."""
    rows = book.query(
        "SELECT e.*, f.root AS root, f.order_key AS order_key, l.id AS fill FROM json_each(?) w "  # noqa: S608
        "CROSS JOIN fills l ON l.id = w.value "
        "CROSS JOIN touches t ON t.key = 'v:' || l.mark AND t.order_key >= l.since "
        f"JOIN entries e ON e.id = substr(t.order_key, -36) {JOIN_FOLDED} "
        "WHERE e.kind = 'ferment_reading' AND f.standing = 'entered' AND f.mark = l.mark "
        "AND (l.ended_at = '' OR substr(f.order_key, 1, 19) || 'Z' <= l.ended_at) ORDER BY l.id, f.order_key",
        (json.dumps([row["id"] for row in fills]),),
    )
    by_fill: dict[str, list[dict[str, Any]]] = {row["id"]: [] for row in fills}
    for row in rows:
        if len(by_fill[row["fill"]]) < READINGS_MOST:
            by_fill[row["fill"]].append(row)
    kept = [row for some in by_fill.values() for row in some]
    found: dict[str, list[dict[str, Any]]] = {fill: [] for fill in by_fill}
    for row, read in zip(kept, read_all_as_folded(book, kept), strict=True):
        if read and read.values.get("gravity") is not None:
            found[row["fill"]].append({
                "at": row["order_key"][:19] + "Z", "gravity": read.values["gravity"],
                "temp_c": read.values.get("temp"), "person": row["person"], "entry": row["id"],
            })
    return found


def _forecast(found: Mapping[str, Any]) -> dict[str, Any]:
    lines = found["readings"]
    if found["closed"]:
        return {"state": "closed"}
    times = [datetime.fromisoformat(line["at"]).timestamp() for line in lines]
    try:
        told = forecast_end([(at - times[0]) / DAY_S for at in times], [line["gravity"] for line in lines],
                            found["end_gravity"], is_grain=found["grain"])
    except OutOfDomain as error:
        return {"state": "too_little", "why": "refused", "words": error.sentence}
    if "days" in told:
        told["at_s"] = {name: times[0] + day * DAY_S for name, day in told["days"].items()}
    if "curve" in told:
        told["curve_s"] = [[times[0] + day * DAY_S, gravity] for day, gravity in told["curve"]]
    return told


def counts(book: Book, found: Mapping[str, Any]) -> list[dict[str, Any]]:
    """Return the independent counts of a ferment's alcohol: key, words, lpa [L], pct [% vol], share [% of measured].

    By the fall of gravity, by the law of 1880, by the measured wash, by low wines, by spirits. Counts behind the still
    are scaled to the whole wash; what other spirit was charged with it is taken off by its share.
    """
    closed = _closed(book, found)
    lines, volume = found["readings"], closed.get("volume_l")
    og = lines[0]["gravity"] if lines else None
    last = closed.get("final_gravity") or (lines[-1]["gravity"] if lines else None)
    made: list[dict[str, Any]] = []
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
        max(three, key=lambda one: float(one["lpa"]))["greatest"] = True
    return made


def _closed(book: Book, found: Mapping[str, Any]) -> dict[str, Any]:
    row = book.one(
        "SELECT e.*, f.root AS root FROM folded f JOIN entries e ON e.id = f.entry WHERE f.mark = ? AND "
        "e.kind = 'ferment_closed' AND f.standing = 'entered' AND f.order_key >= ? "
        "AND (?3 = '' OR f.order_key <= ?3 || '~') ORDER BY f.order_key LIMIT 1",
        (found["mark"], found["since"], found["ended_at"]),
    )
    read = read_as_folded(book, row) if row else None
    if read is None:
        return {}
    return {
        "lpa": read.figures.get("wash_lpa"), "strength_pct": read.values.get("wash_strength"),
        "volume_l": read.values.get("volume"), "final_gravity": read.values.get("final_gravity"),
    }


def _behind_the_still(book: Book, fill: str, measured: float | None) -> list[dict[str, Any]]:
    rows = book.query(
        "SELECT target, sum(lpa_ul) AS lpa_ul FROM flows WHERE source_fill = ? AND target LIKE 'r:%' GROUP BY target",
        (fill,),
    )
    sums: dict[str, list[float]] = {}
    known = runs.runs_by_id(book, (row["target"][2:] for row in rows))
    for row in rows:
        run = known.get(row["target"][2:])
        charged, wash = ((run or {}).get("charge") or {}).get("lpa_l") or 0.0, row["lpa_ul"] / 1e6
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
