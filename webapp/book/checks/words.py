"""Figures, times and spans as a person would say them, for the sentences of the checks."""

from __future__ import annotations

from datetime import datetime, timedelta, timezone
from typing import Any

from webapp.kinds.read import Read, Suggestion
from webapp.kinds.slips import likely_slips
from webapp.trade import units
from webapp.trade.errors import OutOfDomain

DAY_S = 86_400
YEAR_DAYS = 365.25
LONGEST = 1e9


def local(at: str, read: Read) -> datetime:
    """Return a UTC text as local time, in the offset that the phone of this entry had."""
    offset = datetime.fromisoformat(read.entry["read_at"]).utcoffset() or timedelta(0)
    return datetime.fromisoformat(at).astimezone(timezone(offset))


def when(at: str, read: Read, view: Any) -> str:
    """Return a time as seen from this entry: "08:10", "08:10 the day before", "24 September 08:10", "12 May 2025"."""
    then, now = local(at, read), local(view.at, read)
    days = (now.date() - then.date()).days
    clock = f"{then:%H:%M}"
    if days == 0:
        return clock
    if days == 1:
        return f"{clock} the day before"
    day = f"{then.day} {then:%B}"
    return f"{day} {clock}" if 0 <= days < 60 else f"{day} {then.year}"


def month(at: str, read: Read) -> str:
    """Return the month of a time for long spans, "May 2024": a query may be read a year after it was put."""
    return f"{local(at, read):%B %Y}"


def span(seconds: float) -> str:
    """Return a length of time in two parts at most: "40 s", "12 min", "1 h 1 min", "3 days". [s], 0 or more."""
    seconds = abs(seconds)
    if seconds < 120:
        return f"{seconds:.0f} s"
    minutes = round(seconds / 60)
    if minutes < 60:
        return f"{minutes} min"
    if minutes < 48 * 60:
        hours, rest = divmod(minutes, 60)
        return f"{hours} h {rest} min" if rest else f"{hours} h"
    return f"{round(seconds / DAY_S)} days"


def plain(value: float, decimals: int) -> str:
    """Return a figure with its decimals, or one more where that is what was read (1.0325); a huge one as it is."""
    if not abs(value) < LONGEST:
        return f"{value:.4g}"
    more = abs(value * 10**decimals - round(value * 10**decimals)) > 1e-6
    finer = abs(value * 10 ** (decimals + 1) - round(value * 10 ** (decimals + 1))) < 1e-6
    return units.format_number(value, decimals + 1 if more and finer else decimals)


def about(value: float, decimals: int = 1) -> str:
    """Return a figure that was worked out, rounded to its decimals."""
    return plain(round(value, decimals), decimals) if abs(value) < LONGEST else plain(value, decimals)


def like_typed(read: Read, name: str, value: float) -> str:
    """Return a canonical value of a field as it would have been typed in this entry: its unit, its decimals."""
    spec = read.kind.field(name)
    assert spec is not None, name
    unit = read.raw(name).get("unit") or (spec.units[0] if spec.units else "")
    try:
        shown = units.from_canonical(value, unit)
    except OutOfDomain:
        unit, shown = spec.units[0], value
    bare = "" if unit == "SG" else units.symbol(unit)
    return f"{plain(float(shown), spec.decimals or 0)} {bare}".strip()


def typed(read: Read, name: str) -> str:
    """Return a field as typed, with its unit; a gravity bare, as it is spoken."""
    raw = read.raw(name)
    figure = str(raw.get("raw", "")).strip().replace(",", ".")
    unit = raw.get("unit") or ""
    return f"{figure} {'' if unit == 'SG' else units.symbol(unit)}".strip() if unit else figure


def slips(read: Read, name: str, low: float, high: float, near: float | None = None) -> tuple[Suggestion, ...]:
    """Return the likely slips of a field whose figure would lie from low to high, nearest first. [canonical unit]"""
    spec = read.kind.field(name)
    raw = read.raw(name)
    if spec is None or not raw.get("raw"):
        return ()
    centre = near if near is not None else (low + high) / 2
    found = likely_slips(spec, units.parse_number(raw["raw"]), raw["unit"], (low, high), centre)
    return tuple(Suggestion(name, slip.raw, slip.unit, slip.words) for slip in found if low <= slip.value <= high)
