"""Parameters as values of Fluent, and the functions that a message may call on them. Twin of static/words/values.js.

The functions: `BARE` leaves the unit out, `UNIT` writes it where a figure is usually spoken bare (a gravity), `PLURAL`
gives the plural category of a count or a figure (one, few, other ...), `ISO_DAY` writes a day as 2025-09-24, `CLOCK`
the hour and minute of a time, `LOWER` and `CAPITAL` change letters.

Of units: `UNITS` gives those of the house that reads it (metric, us), for words that stand beside a bare figure.
`APART` is `BARE` of how far two figures are apart, and of a limit of the law: 2 degC apart are 3.6 degF apart. `TYPED`
leaves what was typed in the unit it was typed in; `LIKE` says a range in the sense of the figure beside it.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from decimal import Decimal, InvalidOperation
from functools import cache
from typing import Any, Protocol

from babel import Locale
from babel.numbers import get_decimal_symbol
from fluent.runtime.types import FluentType

from webapp.kinds.message import Day, Figure, Param, Range, Several, Time
from webapp.trade import units
from webapp.words.houseunits import METRIC, US, House, text_in, unit_in

_POINTED = re.compile(r"[+-]?[0-9]*\.[0-9]+")
_SPOKEN_BARE = "SG"


class Say(Protocol):
    """How a parameter is said in the units of a house."""

    def __call__(self, param: Param, house: House, /) -> str: ...


class Shown(FluentType):
    """A parameter on its way into a sentence."""

    def __init__(self, param: Param, locale: Locale, say: Say, house: House) -> None:
        self.param, self.locale, self.house, self._say = param, locale, house, say

    def format(self, locale: Locale) -> str:
        """Return the parameter as it stands in a sentence."""
        return self._say(self.param, self.house)

    def other(self, param: Param, house: House) -> Shown:
        """Return another parameter in its stead."""
        return Shown(param, self.locale, self._say, house)


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


def _bare(shown: object, *, is_apart: bool = False) -> str:
    if isinstance(shown, Shown) and isinstance(shown.param, Figure):
        text = shown.param.text
        if shown.house == US:
            text = text_in(text, shown.param.unit, US, is_apart=is_apart)
        return figure_text(text, shown.locale)
    return _text(shown)


def _apart(shown: object) -> str:
    return _bare(shown, is_apart=True)


def _unit(shown: object) -> str:
    param = shown.param if isinstance(shown, Shown) else None
    if isinstance(shown, Shown) and isinstance(param, Figure | Range):
        text = _bare(shown) if isinstance(param, Figure) else _text(shown)
        return with_unit(text, unit_in(param.unit, shown.house))
    return _text(shown)


def _typed(shown: object) -> object:
    if not isinstance(shown, Shown) or shown.house != US:
        return shown
    if isinstance(shown.param, Several):
        return shown.other(Several(tuple(_gauged(one) for one in shown.param.items)), METRIC)
    return shown.other(shown.param, METRIC)


def _gauged(param: Param) -> Param:
    """Return a figure of a gauge as it was typed; a strength that was worked out stands beside them in bare percent."""
    if isinstance(param, Figure) and param.unit == "pct":
        return Figure(text_in(param.text, "pct_vol", US), unit_in("pct_vol", US))
    return param


def _like(shown: object, figure: object) -> object:
    span = shown.param if isinstance(shown, Shown) else None
    read = figure.param if isinstance(figure, Shown) else None
    if not (isinstance(shown, Shown) and shown.house == US and isinstance(span, Range) and isinstance(read, Figure)):
        return shown
    if span.unit == "pct_glass" and read.unit == "proof_glass":  # what kinds/read.py sets a proof glass against
        low, high = (end and text_in(end, "pct_vol", US, is_apart=True) for end in (span.low, span.high))
        return shown.other(Range(low, high, read.unit), METRIC)
    return shown.other(span, METRIC) if span.unit == read.unit else shown


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
    "CAPITAL": _capital, "APART": _apart, "TYPED": _typed, "LIKE": _like,
}


def functions_of(house: House) -> dict[str, Callable[..., Any]]:
    """Return the functions that a message may call, for a house."""
    return {**FUNCTIONS, "UNITS": lambda: house}
