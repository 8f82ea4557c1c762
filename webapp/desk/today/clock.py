"""Days and minutes in words by the house's clock."""

from __future__ import annotations

from datetime import date, datetime

from webapp.access import current

_NUMBERS = ("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve")


def at_house(at: float | str) -> datetime:
    """Return a time, [s since 1970] or UTC text, by the house's clock."""
    when = datetime.fromisoformat(at).timestamp() if isinstance(at, str) else at
    return datetime.fromtimestamp(when, current.zone)


def minute(at: float | str) -> str:
    """Return the minute of a time: 14:22."""
    return f"{at_house(at):%H:%M}"


def day(at: float | str) -> str:
    """Return the day of a time: Thu 3 Dec."""
    when = at_house(at)
    return f"{when:%a} {when.day} {when:%b}"


def date_words(at: float | str) -> str:
    """Return the date of a time in full: 3 December 2026."""
    when = at_house(at)
    return f"{when.day} {when:%B %Y}"


def near(at: float | str, now: float) -> str:
    """Return a time as seen from now: 14:22 of today, else Thu 3 Dec 14:22, else 3 December 2025."""
    when, then = at_house(at), at_house(now)
    if when.date() == then.date():
        return minute(at)
    return f"{day(at)} {minute(at)}" if abs((when - then).days) < 300 else date_words(at)


def month_words(name: str) -> str:
    """Return a month by its name: `2026-11` is November 2026."""
    return f"{date.fromisoformat(f'{name[:7]}-01'):%B %Y}"


def long(days: float) -> str:
    """Return the time since something fell due, in words: 3 h, 5 days, 7 months."""
    if days < 2:
        return f"{max(round(days * 24), 0)} h"
    if days < 60:
        return f"{days:.0f} days"
    months = round(days / 30.44)
    return f"{months} months" if months < 24 else f"{days / 365.25:.0f} years"


def count(many: int, one: str, more: str = "") -> str:
    """Return a number with its noun: one cask, twelve casks, 40 casks."""
    said = _NUMBERS[many] if 0 <= many < len(_NUMBERS) else str(many)
    return f"{said} {one if many == 1 else more or f'{one}s'}"
