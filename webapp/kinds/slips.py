"""How a box may have been typed otherwise than it was meant: digits, point, sign, key. Twin: static/kinds/slips.js.

What follows from each, and which is offered, is for meant.py.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from itertools import pairwise

from webapp.kinds.message import Figure, Message, Unit, message
from webapp.kinds.spec import Field
from webapp.trade import units
from webapp.trade.errors import OutOfDomain

SHOWN_MOST = 1e9
FACTORS = (0.1, 10.0, 0.01, 100.0, 0.001, 1000.0)  # 1040 is often typed for 1.040
# Keys that lie beside each other on the phone's keypad, on a number block (the same, upside down) and in a row.
BESIDE = {
    "0": "89", "1": "24", "2": "135", "3": "246", "4": "1357", "5": "2468", "6": "3579", "7": "468", "8": "5790",
    "9": "680",
}
# Digits that are taken for each other in handwriting and on a worn dial; common practice, no source.
LOOKS_LIKE = {
    "0": "68", "1": "74", "2": "7", "3": "85", "4": "91", "5": "63", "6": "058", "7": "12", "8": "306", "9": "4",
}
# How often it is this, against two digits swapped; common practice, no source.
SWAPPED, POINT, UNIT, KEY, SIGN, TWICE, MISREAD, LOST = 1.0, 0.9, 0.9, 0.25, 0.25, 0.25, 0.25, 0.15

# Each is said of many a slip, and made once.
_SWAPPED, _POINT, _KEY = message("slip-swapped"), message("slip-point"), message("slip-key")
_TWICE, _MISREAD = message("slip-twice"), message("slip-misread")
_LOST, _SIGN = message("slip-lost"), message("slip-sign")
_PLAIN = re.compile(r"^[0-9]{1,9}([.][0-9]{1,4})?$")


@dataclass(frozen=True, slots=True)
class Slip:
    """A figure that may have been meant: as typed, its unit, what may have happened, and how often that happens."""

    raw: str
    unit: str
    message: Message
    weight: float


def slips_of(spec: Field, as_typed: str, typed: float, unit: str) -> list[Slip]:
    """Return all that a box may have been meant to hold, each figure once. typed: the figure `as_typed`, in `unit`."""
    text, sign = show_number(abs(typed), spec.decimals), "-" if typed < 0 else ""
    found: dict[tuple[str, str], Slip] = {}
    others = (
        *((sign + raw, unit, _SWAPPED, SWAPPED) for raw in _swaps(text)),
        *((sign + show_number(abs(typed) * factor, spec.decimals), unit, _POINT, POINT) for factor in FACTORS),
        *((as_typed, other, _in_unit(spec, typed, other, unit), UNIT) for other in spec.units if other != unit),
        *((sign + raw, unit, _KEY, KEY) for raw in _others(text, BESIDE)),
        *((sign + raw, unit, _TWICE, TWICE) for raw in _twice(text)),
        *((sign + raw, unit, _MISREAD, MISREAD) for raw in _others(text, LOOKS_LIKE)),
        *((sign + raw, unit, _LOST, LOST) for raw in _lost(as_typed.strip("+-"), text)),
        (text if sign else "-" + text, unit, _SIGN, SIGN),
    )
    for raw, as_unit, why, weight in others:
        if (raw, as_unit) != (sign + text, unit):
            found.setdefault((raw, as_unit), Slip(raw, as_unit, why, weight))
    return list(found.values())


def show_number(value: float, decimals: int | None) -> str:
    """Return a figure as it would be typed; without decimals given, at most three and no trailing zeros."""
    if not abs(value) <= SHOWN_MOST:
        return f"{value:.0f}"
    if decimals is not None:
        return units.format_number(value, decimals)
    text = units.format_number(value, 3)
    return text.rstrip("0").rstrip(".") if "." in text else text


def _in_unit(spec: Field, typed: float, other: str, unit: str) -> Message:
    """Say which unit was meant, or, of one that the field is not thought in, the figure in the field's own."""
    if other == spec.units[0]:
        return message("slip-unit", meant=Unit(other), typed=Unit(unit))
    try:
        meant = units.to_canonical(typed, other)
    except OutOfDomain:
        return message("slip-unit", meant=Unit(other), typed=Unit(unit))
    return message("slip-meant", meant=Figure(show_number(meant, spec.decimals), spec.units[0]))


def _swaps(text: str) -> list[str]:
    """Swap each pair of neighbouring digits, over the point too; nobody types a leading zero."""
    places = [i for i, char in enumerate(text) if char.isdigit()]
    swapped = []
    for a, b in pairwise(places):
        chars = list(text)
        chars[a], chars[b] = chars[b], chars[a]
        swapped.append("".join(chars))
    return [raw for raw in swapped if _is_typed(raw)]


def _others(text: str, table: Mapping[str, str]) -> list[str]:
    """Put in the place of each digit, one at a time, those that a table has for it."""
    return [
        raw for at, char in enumerate(text) for other in table.get(char, "")
        if _is_typed(raw := text[:at] + other + text[at + 1 :])
    ]


def _lost(as_typed: str, text: str) -> list[str]:
    """Put a digit that was not typed in each place before the point."""
    whole, point, rest = (as_typed if _PLAIN.match(as_typed) else text).partition(".")
    return [
        raw for at in range(len(whole) + 1) for digit in "0123456789"
        if _is_typed(raw := whole[:at] + digit + whole[at:] + point + rest)
    ]


def _twice(text: str) -> list[str]:
    """Take away one of two equal digits beside each other."""
    return [text[:at] + text[at + 1 :] for at in range(1, len(text)) if text[at] == text[at - 1] and text[at].isdigit()]


def _is_typed(raw: str) -> bool:
    return not (raw[0] == "0" and raw[1:2].isdigit())
