"""One slip: an entry of a season as it should be, and what was written instead; what it moves."""

from __future__ import annotations

from copy import deepcopy
from dataclasses import dataclass
from math import inf
from typing import Any

import webapp.kinds
from tests.slips.house import Said
from webapp.kinds.read import read_entry
from webapp.kinds.spec import Field
from webapp.kinds.uncertainty import uncertain_figures
from webapp.trade import units
from webapp.trade.errors import OutOfDomain
from webapp.trade.uncertainty import COVERAGE

# Smaller than this is what instruments and hands do by themselves: nothing can see it. By quantity: share, and least.
NOISE = {
    "mass": (0.003, 0.3), "volume": (0.01, 0.8), "temperature": (0.0, 1.5), "strength": (0.0, 0.3),
    "glass reading in %": (0.0, 0.3), "glass reading in proof": (0.0, 0.6),
    "gravity": (0.0, 0.002), "flow": (0.07, 0.2), "sugar": (0.0, 0.7),
}


@dataclass
class Slip:
    """What was written at one place of a season: nothing, one entry or two."""

    sort: str
    at: int
    entries: list[dict[str, Any]]
    field: str = ""
    right: dict[str, str] | None = None  # the figure that was meant, where one was
    stake_l: float = 0.0  # pure alcohol that the slip moves
    is_small: bool = False  # no more than instruments and hands do
    is_within: bool = False  # moves what follows from it by no more than the combined uncertainty, k = 2
    skew_s: float = 0.0
    said: Said | None = None


def numbers(entry: dict[str, Any]) -> list[Field]:
    """Return the fields of an entry that hold a figure."""
    kind = webapp.kinds.get(entry["kind"])
    assert kind is not None
    return [spec for spec in kind.fields if spec.sort == "number" and entry["values"].get(spec.name, {}).get("raw")]


def canonical(value: dict[str, str]) -> float | None:
    """Return a figure as typed in its canonical unit; None where it is none."""
    try:
        return float(units.to_canonical(units.parse_number(value["raw"]), value.get("unit") or "plain"))
    except (ValueError, KeyError):
        return None


def lpa_of(entry: Any, context: Any) -> float:
    """Return the pure alcohol that an entry speaks of, as it is written. [L]"""
    kind = webapp.kinds.get(entry["kind"])
    assert kind is not None
    try:
        figures = read_entry(kind, entry, context).figures
    except OutOfDomain:
        return 0.0
    if entry["kind"] == "reduce" and "volume_20" in figures:
        return figures["volume_20"] * figures.get("true_strength", 0.0) / 100
    for name in ("charge_lpa", "wash_lpa", "lpa", "lpa_after"):
        if name in figures:
            return float(figures[name])
    return 0.0


def stake_of(said: Said, wrong: dict[str, Any]) -> float:
    """Return by how much pure alcohol the wrong entry is off, at most what the right one spoke of. [L]"""
    if wrong["kind"] in ("dispatch", "bottled_count"):
        right, now = (canonical(one["values"].get("cases", {})) or 0.0 for one in (said.entry, wrong))
        return min(abs(now - right) / max(right, 1.0), 1.0) * said.lpa
    if wrong["kind"] == "chill_filter":
        before = {**said.entry, "values": {**wrong["values"]}}
        off = abs(lpa_of(said.entry, said.context) - lpa_of(before, said.context))
    else:
        off = abs(lpa_of(said.entry, said.context) - lpa_of(wrong, said.context))
    return min(off, said.lpa)


def figure_slip(said: Said, at: int, spec: Field, value: dict[str, str]) -> Slip | None:
    """Return the slip that writes another figure into one field."""
    right = said.entry["values"][spec.name]
    was, now = canonical(right), canonical(value)
    if was is None or now is None or was == now:
        return None
    wrong = deepcopy(said.entry)
    wrong["values"][spec.name] = value
    is_small, is_within = _is_small(spec, was, now), within_uncertainty(said, wrong)
    return Slip("", at, [wrong], spec.name, right, stake_of(said, wrong), is_small, is_within)


def within_uncertainty(said: Said, wrong: dict[str, Any]) -> bool:
    """Return whether all figures that a slip moves stay within twice the standard uncertainty of the right ones, by
    instruments of the prescribed classes (JCGM 100:2008, 6.2): then nothing sees it. False if it moves none.
    """
    kind = webapp.kinds.get(said.entry["kind"])
    assert kind is not None
    try:
        right, now = (read_entry(kind, entry, said.context) for entry in (said.entry, wrong))
        found = uncertain_figures(right, {}, None)
    except OutOfDomain:
        return False
    moved = [(abs(now.figures.get(name, inf) - right.figures[name]), one.standard)
             for name, one in found.items() if name in right.figures]
    moved = [(off, standard) for off, standard in moved if off > 1e-9]
    return bool(moved) and all(off <= COVERAGE * standard for off, standard in moved)


def _is_small(spec: Field, was: float, now: float) -> bool:
    quantity = units.quantity_of(spec.units[0]) if spec.units else ""
    share, least = NOISE.get(quantity, (0.03, 0.0))
    return abs(now - was) <= max(abs(was) * share, least)
