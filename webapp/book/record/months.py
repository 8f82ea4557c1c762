"""Months and quarters by name, and their bounds in the site's time zone."""

from __future__ import annotations

import re
from collections.abc import Iterator
from datetime import UTC, datetime
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from webapp.book.record.errors import BookError

_MONTH = re.compile(r"(20\d\d|19[789]\d)-(0[1-9]|1[0-2])\Z", re.ASCII)
_QUARTER = re.compile(r"(20\d\d|19[789]\d)-Q([1-4])\Z", re.ASCII)


def months_of(period: str) -> list[str]:
    """Return the months of a period, `2025-09` or `2025-Q3`, in order. BookError where the name is none."""
    if _MONTH.match(period):
        return [period]
    found = _QUARTER.match(period)
    if not found:
        raise BookError(f"{period[:12]} is no period. Ask for a month such as 2025-09, or a quarter such as 2025-Q3.")
    first = int(found[2]) * 3 - 2
    return [f"{found[1]}-{month:02d}" for month in range(first, first + 3)]


def quarter_of(month: str) -> str:
    """Return the quarter that a month lies in: `2025-09` in `2025-Q3`."""
    return f"{month[:4]}-Q{(int(month[5:]) + 2) // 3}"


def next_month(month: str) -> str:
    """Return the month after."""
    year, number = int(month[:4]), int(month[5:])
    return f"{year + number // 12}-{number % 12 + 1:02d}"


def months_between(first: str, last: str) -> Iterator[str]:
    """Yield the months from first to last, both included."""
    while first <= last:
        yield first
        first = next_month(first)


def month_start(month: str, zone: str) -> str:
    """Return the first moment of a month in a time zone, as UTC text to the second without its Z.

    It compares with the texts of the book, `...:00Z` as `...:00.000Z`: both are later than the bare second.
    """
    local = datetime(int(month[:4]), int(month[5:]), 1, tzinfo=zone_named(zone))
    return local.astimezone(UTC).strftime("%Y-%m-%dT%H:%M:%S")


def month_at(stamp: str, zone: str) -> str:
    """Return the month in which a UTC text lies, by the clock of a time zone."""
    return datetime.fromisoformat(stamp).astimezone(zone_named(zone)).strftime("%Y-%m").rjust(7, "0")


def zone_named(name: str) -> ZoneInfo:
    """Return a time zone by its IANA name; UTC where there is none of that name."""
    try:
        return ZoneInfo(name or "UTC")
    except (ZoneInfoNotFoundError, ValueError):
        return ZoneInfo("UTC")
