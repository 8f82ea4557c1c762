"""Days and minutes in words by the house's clock."""

from __future__ import annotations

from datetime import date, datetime

from webapp.access import current
from webapp.words import local
from webapp.words.catalogue import ENGLISH
from webapp.words.desk import say
from webapp.words.language import language

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
    return local.near_day(at_house(at))


def date_words(at: float | str) -> str:
    """Return the date of a time in full: 3 December 2026."""
    return local.day_in(at_house(at), "yMMMMd", "{0.day} {0:%B %Y}")


def near(at: float | str, now: float) -> str:
    """Return a time as seen from now: 14:22 of today, else Thu 3 Dec 14:22, else 3 December 2025."""
    when, then = at_house(at), at_house(now)
    if when.date() == then.date():
        return minute(at)
    return f"{day(at)} {minute(at)}" if abs((when - then).days) < 300 else date_words(at)


def month_words(name: str) -> str:
    """Return a month by its name: `2026-11` is November 2026."""
    return local.month(date.fromisoformat(f"{name[:7]}-01"))


def long(days: float) -> str:
    """Return the time since something fell due, in words: 3 h, 5 days, 7 months."""
    if days < 2:
        return f"{max(round(days * 24), 0)} h"
    if days < 60:
        return say("desk-clock-days", many=round(days))
    months = round(days / 30.44)
    return say("desk-clock-months", many=months) if months < 24 else say("desk-clock-years", many=round(days / 365.25))


def count(many: int, id_: str) -> str:
    """Return a number with its noun, by the message that has both: one cask, twelve casks, 40 casks.

    Small numbers are words in English; other languages count in digits, as no word of theirs goes with every noun.
    """
    is_word = language() == ENGLISH and 0 <= many < len(_NUMBERS)
    return say(id_, n=many, many=_NUMBERS[many] if is_word else str(many))
