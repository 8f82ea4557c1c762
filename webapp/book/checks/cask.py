"""Checks of a cask against its own past: nothing grows in wood, and its strength hardly moves."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from typing import Any

from webapp.book.before.limits import limit
from webapp.book.before.view import Query, View, seconds_between
from webapp.book.checks.run import MOST_BELOW, strength_slips
from webapp.book.checks.words import DAY_S, YEAR_DAYS, like_typed, plain, slips, typed, when
from webapp.kinds.read import Read, Suggestion
from webapp.trade import sums, units
from webapp.trade.errors import OutOfDomain

Line = Mapping[str, Any]
NEAR_20_C = 0.5
BOOKED_L = 0.01  # what rounding of a gauge may leave [L]


@dataclass(frozen=True, slots=True)
class Past:
    """One earlier gauge of this fill: when, pure alcohol [L], strength [% vol], net and gross mass [kg] or None."""

    at: str
    lpa: float
    strength: float
    net: float | None
    gross: float | None
    moved: float = 0.0  # pure alcohol that the book has moved in (or, negative, out) since then [L]


def past_gauges(read: Read, view: View) -> list[Past]:
    """Return the gauges and regauges of what this entry's cask now holds, oldest first."""
    return past_of(read.mark, view)


def past_of(mark: str, view: View) -> list[Past]:
    """Return the fill, gauges and regauges of what a cask now holds, oldest first.

    The last one is as the book has it today: what was topped up, drawn as a sample or lost since is counted with it.
    """
    held = view.state(mark)["holds"]
    if not held:
        return []
    lines = [line for kind in ("cask_fill", "gauge", "cask_regauge") for line in view.recent(mark, kind)]
    found = []
    for line in lines:
        lpa, strength = line["figures"].get("lpa"), line["figures"].get("true_strength")
        if line["at"] >= held["since"] and lpa is not None and strength is not None:
            net = line["figures"].get("net", line["values"].get("net_weight"))
            found.append(Past(line["at"], lpa, strength, net, line["values"].get("gross")))
    found.sort(key=lambda past: past.at)
    booked = held.get("lpa_ul", 0) / 1e6
    if found and booked and abs(booked - found[-1].lpa) > BOOKED_L:
        found[-1] = replace(found[-1], lpa=booked, moved=booked - found[-1].lpa, gross=None, net=None)
    return found


def _at(read: Read) -> str:
    return "strength" if "strength" in read.values else "glass"


def cask_grew(read: Read, view: View) -> Iterable[Query]:
    """Pure alcohol or weight above the last gauge."""
    past = past_gauges(read, view)
    if not past:
        return
    last, lpa, gross = past[-1], read.figures.get("lpa"), read.values.get("gross")
    if lpa is not None and lpa > last.lpa * (1 + limit("cask_grew_pct", view) / 100):
        words = (
            f"Pure alcohol {plain(lpa, 1)} L ({plain(read.figures['true_strength'], 1)} %) is above "
            f"{plain(last.lpa, 1)} L ({plain(last.strength, 1)} %) of {when(last.at, read, view)}{told_moved(last)}; "
            "a cask cannot gain."
        )
        at, found = _what_slipped(read, last, view)
        yield Query("cask_grew", "stop", at, words, found)
    elif gross is not None and last.gross is not None and gross > last.gross + limit("gross_step_kg", view) + 1e-9:
        words = (
            f"Gross {typed(read, 'gross')} is above {like_typed(read, 'gross', last.gross)} of "
            f"{when(last.at, read, view)}; it can only fall, unless the cask was topped up."
        )
        found = slips(read, "gross", last.gross * 0.85, last.gross, last.gross)
        yield Query("cask_grew", "ask", "gross", words, found)


def told_moved(past: Past) -> str:
    """Return what the book has moved since a gauge, for a sentence; nothing where it has not."""
    if not past.moved:
        return ""
    way = "added" if past.moved > 0 else "drawn"
    return f" with {plain(round(abs(past.moved), 2), 2)} L {way} since"


def _what_slipped(read: Read, last: Past, view: View) -> tuple[str, tuple[Suggestion, ...]]:
    """Look for a likelier strength first where the strength is odd, else for a likelier weight."""
    odd = usual_drift(last, view)
    if abs(read.figures["true_strength"] - last.strength) > odd:
        return _at(read), _strength_slips(read, last, odd)
    reach = last.gross if last.gross is not None else None
    if reach is None:
        return "gross", ()
    return "gross", slips(read, "gross", reach * 0.85, reach, reach)


def usual_drift(last: Past, view: View) -> float:
    """Return how far a strength may lie from that of the last gauge. [% vol]"""
    years = seconds_between(last.at, view.at) / DAY_S / YEAR_DAYS
    return limit("drift_pct", view) + limit("drift_pct_year", view) * years


def cask_strength_slip(read: Read, view: View) -> Iterable[Query]:
    """A strength far from the last one: a misread glass, swapped digits, or a raw reading taken for a true one."""
    past, now, lpa = past_gauges(read, view), read.figures.get("true_strength"), read.figures.get("lpa")
    if not past or now is None or any(p.code == "raw_equals_corrected" for p in read.problems):
        return
    last = past[-1]
    odd = usual_drift(last, view)
    grew = lpa is not None and lpa > last.lpa * (1 + limit("cask_grew_pct", view) / 100)
    if grew or abs(now - last.strength) <= odd:  # what grew is asked about already, with the same suggestion
        return
    side = "below" if now < last.strength else "above"
    found = _strength_slips(read, last, odd)
    raw = next((s for s in found if s.field == "glass" and _at(read) == "strength"), None)
    hint = f" {raw.words}" if raw else ""
    words = (
        f"Strength {plain(now, 1)} % is {plain(abs(now - last.strength), 1)} points {side} {plain(last.strength, 1)} % "
        f"of {when(last.at, read, view)}; less than a point a year is usual.{hint}"
    )
    yield Query("cask_strength_slip", "ask", _at(read), words, found)


def _strength_slips(read: Read, last: Past, odd: float) -> tuple[Suggestion, ...]:
    at = _at(read)
    low, high = max(last.strength - min(odd, MOST_BELOW), 0), last.strength + odd
    found = list(strength_slips(read, at, low, high, last.strength))
    temp = read.values.get("temp")
    if at == "strength" and temp is not None and abs(temp - 20) > NEAR_20_C:
        raw = read.raw("strength")
        unit = "proof_glass" if raw["unit"] == "proof" else "pct_glass"
        given = {"glass": sums.Quantity(units.parse_number(raw["raw"]), unit), "temp": sums.Quantity(temp, "degC")}
        try:
            true = sums.compute("true_strength", given)
        except OutOfDomain:
            true = None
        if true is not None and abs(true - last.strength) <= odd:
            words = f"As a glass reading at {typed(read, 'temp')} it is {plain(true, 1)} % true."
            found.insert(0, Suggestion("glass", raw["raw"], unit, words))
    return tuple(found)
