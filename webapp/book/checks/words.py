"""Figures, times and spans as parameters of what the checks ask: settled to the last digit, said by webapp/words."""

from __future__ import annotations

from datetime import datetime, timedelta, timezone

from webapp.kinds.message import Figure, Month, Span, Time
from webapp.kinds.read import Read
from webapp.kinds.view import View
from webapp.trade import units
from webapp.trade.errors import OutOfDomain

DAY_S = 86_400
YEAR_DAYS = 365.25
LONGEST = 1e9


def local_time(at: str, read: Read) -> datetime:
    """Return a UTC text as local time, in the offset that the phone of this entry had."""
    offset = datetime.fromisoformat(read.entry["read_at"]).utcoffset() or timedelta(0)
    return datetime.fromisoformat(at).astimezone(timezone(offset))


def when(at: str, read: Read, view: View) -> Time:
    """Return a time as seen from this entry: "08:10", "08:10 the day before", "24 September 08:10", "12 May 2025"."""
    return Time(local_text(at, read), local_text(view.at, read)[:10])


def local_text(at: str, read: Read) -> str:
    """Return a UTC text as a text of local time, `2025-09-24T08:10`."""
    return local_time(at, read).isoformat()[:16]


def month(at: str, read: Read) -> Month:
    """Return the month of a time for long spans, "May 2024": a query may be read a year after it was put."""
    return Month(local_text(at, read)[:7])


def time_span(seconds: float) -> Span:
    """Return a length of time in two parts at most: "40 s", "12 min", "1 h 1 min", "3 days". [s], 0 or more."""
    seconds = abs(seconds)
    if seconds < 120:
        return Span(((int(f"{seconds:.0f}"), "s"),))
    minutes = round(seconds / 60)
    if minutes < 60:
        return Span(((minutes, "min"),))
    if minutes < 48 * 60:
        hours, rest = divmod(minutes, 60)
        return Span(((hours, "h"), (rest, "min")) if rest else ((hours, "h"),))
    return Span(((round(seconds / DAY_S), "days"),))


def figure(value: float, decimals: int, unit: str = "") -> Figure:
    """Return a figure as it was read, by `plain`."""
    return Figure(figure_text(value, decimals), unit)


def rounded(value: float, decimals: int = 1, unit: str = "") -> Figure:
    """Return a figure that was worked out, by `about`."""
    return Figure(rounded_text(value, decimals), unit)


def figure_text(value: float, decimals: int) -> str:
    """Return a figure with its decimals, or with one more where one more was read (1.0325); a huge one as it is."""
    if not abs(value) < LONGEST:
        return f"{value:.4g}"
    more = abs(value * 10**decimals - round(value * 10**decimals)) > 1e-6
    finer = abs(value * 10 ** (decimals + 1) - round(value * 10 ** (decimals + 1))) < 1e-6
    return units.format_number(value, decimals + 1 if more and finer else decimals)


def rounded_text(value: float, decimals: int = 1) -> str:
    """Return a figure that was worked out, rounded to its decimals."""
    return figure_text(round(value, decimals), decimals) if abs(value) < LONGEST else figure_text(value, decimals)


def like_typed(read: Read, name: str, value: float) -> Figure:
    """Return a canonical value of a field as it would have been typed in this entry: its unit, its decimals."""
    spec = read.kind.field(name)
    assert spec is not None, name
    unit = read.raw(name).get("unit") or (spec.units[0] if spec.units else "")
    try:
        shown = units.from_canonical(value, unit)
    except OutOfDomain:
        unit, shown = spec.units[0], value
    return figure(float(shown), spec.decimals or 0, unit)


def typed(read: Read, name: str) -> Figure:
    """Return a field as typed, with its unit."""
    raw = read.raw(name)
    return Figure(str(raw.get("raw", "")).strip().replace(",", "."), raw.get("unit") or "")


def strength_field(read: Read) -> str:
    """Return the name of the field that a strength was read in: typed as such, by glass, or by density meter."""
    return next((name for name in ("strength", "glass") if name in read.values), "density" if "density" in read.values
                else "glass")

