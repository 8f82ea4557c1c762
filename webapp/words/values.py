"""Parameters as values of Fluent, and the functions that a message may call on them. Twin of static/words/values.js.

The functions: `BARE` leaves the unit out, `UNIT` writes it where a figure is usually spoken bare (a gravity), `PLURAL`
gives the plural category of a count or a figure (one, few, other ...), `ISO_DAY` writes a day as 2025-09-24, `CLOCK`
the hour and minute of a time, `LOWER` and `CAPITAL` change letters.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from decimal import Decimal, InvalidOperation
from functools import cache
from typing import Any

from babel import Locale
from babel.numbers import get_decimal_symbol
from fluent.runtime.types import FluentType

from webapp.kinds.message import Day, Figure, Param, Range, Time
from webapp.trade import units

_POINTED = re.compile(r"[+-]?[0-9]*\.[0-9]+")
_SPOKEN_BARE = "SG"


class Shown(FluentType):
    """A parameter on its way into a sentence."""

    def __init__(self, param: Param, locale: Locale, say: Callable[[Param], str]) -> None:
        self.param, self.locale, self._say = param, locale, say

    def format(self, locale: Locale) -> str:
        """Return the parameter as it stands in a sentence."""
        return self._say(self.param)


def figure_text(text: str, locale: Locale) -> str:
    """Return digits with the decimal sign of a language; what is no plain figure stays as it was typed."""
    return text.replace(".", decimal_sign(str(locale))) if _POINTED.fullmatch(text) else text


@cache
def decimal_sign(locale: str) -> str:
    """Return the decimal sign of a language's figures."""
    return str(get_decimal_symbol(Locale.parse(locale)))


def with_unit(text: str, unit: str) -> str:
    """Return a text with the symbol of a unit after it, where it has one."""
    return f"{text} {units.symbol(unit)}".strip() if unit else text


def spoken_unit(unit: str) -> str:
    """Return the unit that is said with a figure in a sentence: a gravity is spoken bare."""
    return "" if unit == _SPOKEN_BARE else unit


def _bare(shown: object) -> str:
    if isinstance(shown, Shown) and isinstance(shown.param, Figure):
        return figure_text(shown.param.text, shown.locale)
    return _text(shown)


def _unit(shown: object) -> str:
    param = shown.param if isinstance(shown, Shown) else None
    if isinstance(param, Figure):
        return with_unit(_bare(shown), param.unit)
    return with_unit(_text(shown), param.unit) if isinstance(param, Range) else _text(shown)


def _plural(shown: object) -> str:
    param = shown.param if isinstance(shown, Shown) else None
    try:
        number = Decimal(param.text if isinstance(param, Figure) else param if isinstance(param, int | str) else "")
    except (InvalidOperation, ValueError):
        return "other"
    return str(shown.locale.plural_form(abs(number))) if isinstance(shown, Shown) else "other"


def _iso_day(shown: object) -> str:
    param = shown.param if isinstance(shown, Shown) else None
    return param.day if isinstance(param, Day) else param.at[:10] if isinstance(param, Time) else _text(shown)


def _clock(shown: object) -> str:
    return shown.param.at[11:16] if isinstance(shown, Shown) and isinstance(shown.param, Time) else _text(shown)


def _lower(shown: object) -> str:
    return _text(shown).lower()


def _capital(shown: object) -> str:
    text = _text(shown)
    return text[:1].upper() + text[1:]


def _text(shown: object) -> str:
    return shown.format(shown.locale) if isinstance(shown, Shown) else str(shown)


FUNCTIONS: dict[str, Callable[..., Any]] = {
    "BARE": _bare, "UNIT": _unit, "PLURAL": _plural, "ISO_DAY": _iso_day, "CLOCK": _clock, "LOWER": _lower,
    "CAPITAL": _capital,
}
