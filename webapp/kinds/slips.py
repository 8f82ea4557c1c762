"""Likely slips of the thumb: swapped digits, a slipped point, degF typed as degC. Twin of static/kinds/slips.js."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise
from math import inf

from webapp.kinds.message import Message, Unit, message
from webapp.kinds.spec import Field, Range
from webapp.trade import units
from webapp.trade.errors import OutOfDomain

MOST = 2
SHOWN_MOST = 1e9
SWAPPED, POINT = message("slip-swapped"), message("slip-point")
FACTORS = (0.1, 10.0, 0.01, 100.0, 0.001, 1000.0)  # 1040 is often typed for 1.040


@dataclass(frozen=True, slots=True)
class Slip:
    """A figure that may have been meant: as typed, its unit, and what might have happened."""

    raw: str
    unit: str
    message: Message | None
    value: float  # canonical


def likely_slips(spec: Field, typed: float, unit: str, usual: Range, last: float | None) -> list[Slip]:
    """Return at most two likely figures, the likeliest first: usual, nearer to the last, not above a falling last.

    `typed` is the figure in `unit`; `usual` and `last` are in the canonical unit of the field.
    Without a last value the middle of the usual range stands in for it.
    """
    text = show_number(abs(typed), spec.decimals)
    sign = "-" if typed < 0 else ""
    found: dict[str, Slip] = {}
    as_typed = _slip(spec, sign + text, unit, None)
    near = last if last is not None else 0.0
    far = inf  # a falling figure that rose is wrong however near it is
    if as_typed and last is not None and not _rose(spec, as_typed.value, last):
        far = abs(as_typed.value - near)
    for raw, as_unit, why in [*_swaps(text, unit), *_points(typed, unit, spec.decimals), *_senses(spec, text, unit)]:
        slip = _slip(spec, sign + raw, as_unit, why)
        is_other = slip is not None and (slip.raw, slip.unit) != (sign + text, unit)
        if slip and is_other and _fits(spec, slip.value, usual, last) and abs(slip.value - near) < far:
            found.setdefault(slip.raw + slip.unit, slip)
    centre = last if last is not None else _middle(usual)
    ranked = sorted(found.values(), key=lambda slip: abs(slip.value - centre) if centre is not None else 0.0)
    return ranked[:MOST]


def show_number(value: float, decimals: int | None) -> str:
    """Return a figure as it would be typed; without decimals given, at most three and no trailing zeros."""
    if not abs(value) <= SHOWN_MOST:
        return f"{value:.0f}"
    if decimals is not None:
        return units.format_number(value, decimals)
    text = units.format_number(value, 3)
    return text.rstrip("0").rstrip(".") if "." in text else text


def _swaps(text: str, unit: str) -> list[tuple[str, str, Message]]:
    """Swap each pair of neighbouring digits, over the point too; nobody types a leading zero."""
    swapped = []
    places = [i for i, char in enumerate(text) if char.isdigit()]
    for a, b in pairwise(places):
        chars = list(text)
        chars[a], chars[b] = chars[b], chars[a]
        raw = "".join(chars)
        if raw != text and not (raw[0] == "0" and raw[1:2].isdigit()):
            swapped.append((raw, unit, SWAPPED))
    return swapped


def _points(typed: float, unit: str, decimals: int | None) -> list[tuple[str, str, Message]]:
    value = abs(typed)
    return [(show_number(value * f, decimals), unit, POINT) for f in FACTORS]


def _senses(spec: Field, text: str, unit: str) -> list[tuple[str, str, Message]]:
    others = [u for u in spec.units if u != unit and {u, unit} <= {"degC", "degF"}]
    return [(text, other, message("slip-unit", meant=Unit(other), typed=Unit(unit))) for other in others]


def _slip(spec: Field, raw: str, unit: str, why: Message | None) -> Slip | None:
    try:
        return Slip(raw, unit, why, units.to_canonical(units.parse_number(raw), unit))
    except (OutOfDomain, ValueError):
        return None


def _fits(spec: Field, value: float, usual: Range, last: float | None) -> bool:
    low, high = usual
    if (low is not None and value < low) or (high is not None and value > high):
        return False
    return last is None or not _rose(spec, value, last)


def _rose(spec: Field, value: float, last: float) -> bool:
    return spec.falls is not None and value > last + spec.falls


def _middle(limits: Range) -> float | None:
    low, high = limits
    return (low + high) / 2 if low is not None and high is not None else None
