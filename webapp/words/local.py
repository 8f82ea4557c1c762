"""Numbers, days and lists as the language that is being read writes them; English ones as they always were."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, datetime
from functools import lru_cache

from webapp.words.catalogue import ENGLISH, LOCALES
from webapp.words.language import language

_KEPT = 2048


def number(text: object) -> str:
    """Return digits with the decimal sign of the language; what is no plain figure stays as it is."""
    now = language()
    return str(text) if now == ENGLISH else _number(str(text), now)


def day_in(when: date, skeleton: str, english: str) -> str:
    """Return a day by a skeleton of CLDR; in English by a format string: `"{0.day} {0:%b %Y}"`."""
    now = language()
    if now == ENGLISH:
        return english.format(when)
    return _day(when.date() if isinstance(when, datetime) else when, skeleton, now)


def long_day(when: date) -> str:
    """Return a day with its weekday: Monday 30 November 2026."""
    return day_in(when, "yMMMMEEEEd", "{0:%A} {0.day} {0:%B %Y}")


def weekday_and_time(when: datetime) -> str:
    """Return a day of this year with its weekday and its minute: Monday 30 November, 16:42."""
    return f"{day_in(when, 'MMMMEEEEd', '{0:%A} {0.day} {0:%B}')}, {when:%H:%M}"


def short_day(when: date) -> str:
    """Return a day: 2 Dec 2026."""
    return day_in(when, "yMMMd", "{0.day} {0:%b %Y}")


def near_day(when: date) -> str:
    """Return a day that is near enough to need no year: Wed 2 Dec."""
    return day_in(when, "MMMEd", "{0:%a} {0.day} {0:%b}")


def weekday(when: date) -> str:
    """Return the short name of a day of the week: Wed."""
    return day_in(when, "E", "{0:%a}")


def day_of_month(when: date) -> str:
    """Return a day without weekday and year: 2 Dec."""
    return day_in(when, "MMMd", "{0.day} {0:%b}")


def month(when: date) -> str:
    """Return a month: December 2026."""
    return day_in(when, "yMMMM", "{0:%B %Y}")


def month_name(which: int) -> str:
    """Return the name of a month by its number, by itself: December."""
    return day_in(date(2000, which, 1), "LLLL", "{0:%B}")


def listed(items: Sequence[str]) -> str:
    """Return things one after the other: F1, F2 and F3."""
    now = language()
    if now == ENGLISH:
        return items[0] if len(items) == 1 else f"{', '.join(items[:-1])} and {items[-1]}"
    from babel.lists import format_list

    from webapp.words.say import locale_of

    return format_list(list(items), locale=locale_of(now))


@lru_cache(maxsize=_KEPT)
def _number(text: str, language: str) -> str:
    from webapp.words.say import locale_of
    from webapp.words.values import figure_text

    return figure_text(text, locale_of(language))


@lru_cache(maxsize=_KEPT)
def _day(when: date, skeleton: str, language: str) -> str:
    from babel.dates import format_date, format_skeleton

    locale = LOCALES[language].replace("-", "_")
    if skeleton == "LLLL":
        return str(format_date(when, "LLLL", locale=locale))
    return str(format_skeleton(skeleton, when, locale=locale))
