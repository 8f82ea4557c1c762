"""A message becomes a sentence of a language. Twin of static/words/say.js; both are held equal by shared vectors."""

from __future__ import annotations

import logging
from collections.abc import Callable
from datetime import date
from functools import cache, lru_cache
from typing import Any

from babel import Locale
from babel.dates import format_skeleton

from webapp.kinds.message import (
    Day,
    Declared,
    Figure,
    Message,
    Month,
    Param,
    Range,
    Several,
    Span,
    Time,
    Unit,
    message,
)
from webapp.trade import units
from webapp.words.catalogue import ENGLISH, LOCALES, bundle_of, declared_id
from webapp.words.declared import declared_words, fill_rule, is_worked_out, rule_words
from webapp.words.houseunits import METRIC, House, text_in, unit_in
from webapp.words.values import Shown, figure_text, spoken_unit, with_unit

_log = logging.getLogger("cellarslate.words")
_KEPT = 4096
_NEAR_DAYS = 60  # a day this long ago is said without its year


@lru_cache(maxsize=_KEPT)
def make_sentence(said: Message, language: str = ENGLISH, house: House = METRIC) -> str:
    """Return the sentence that a message makes in a language; in English where that language has no such message.

    Figures that were worked out are said in the units of the house that reads it.
    """
    for each in dict.fromkeys((language, ENGLISH)):
        bundle = bundle_of(each, house)
        pattern = bundle.get_message(said.id).value if bundle.has_message(said.id) else None
        if pattern is not None:
            params = {name: _value(value, each, house) for name, value in said.params}
            text, errors = bundle.format_pattern(pattern, params)
            for error in errors:
                _log.error("message %s: %s", said.id, error)
            return str(text)
    words = rule_words(said.id)
    if words is not None:
        read_in = {name: house if is_worked_out(said.id, name) else METRIC for name, _ in said.params}  # else as typed
        return fill_rule(words, {name: param_text(value, language, read_in[name]) for name, value in said.params})
    _log.error("no message %s in the catalogue", said.id)
    return make_sentence(message("no_such_message", id=said.id), language)


def param_text(param: Param, language: str, house: House = METRIC) -> str:
    """Return a parameter as it stands in a sentence of that language."""
    make: Callable[[object, str, House], str] | None = _SHOWN.get(type(param))
    return make(param, language, house) if make else str(param)


@cache
def locale_of(language: str) -> Locale:
    """Return the locale whose numbers and dates go with a language."""
    return Locale.parse(LOCALES[language], sep="-")


def _value(param: Param, language: str, house: House) -> object:
    if isinstance(param, str):
        return param
    return Shown(param, locale_of(language), lambda each, units_of: param_text(each, language, units_of), house)


def _figure(figure: Figure, language: str, house: House) -> str:
    if house == METRIC:
        return with_unit(figure_text(figure.text, locale_of(language)), spoken_unit(figure.unit))
    text = figure_text(text_in(figure.text, figure.unit, house), locale_of(language))
    return with_unit(text, spoken_unit(unit_in(figure.unit, house)))


def _range(span: Range, language: str, house: House) -> str:
    low, high = (None if end is None else Figure(text_in(end, span.unit, house)) for end in (span.low, span.high))
    if low is None:
        return make_sentence(message("range-up_to", high=high or ""), language)
    if high is None:
        return make_sentence(message("range-or_more", low=low), language)
    return make_sentence(message("range-between", low=low, high=high), language)


def _time(time: Time, language: str, _house: House) -> str:
    at, clock = date.fromisoformat(time.at[:10]), time.at[11:16]
    days = (date.fromisoformat(time.seen) - at).days
    if days == 0:
        return make_sentence(message("time-same_day", clock=clock), language)
    if days == 1:
        return make_sentence(message("time-day_before", clock=clock), language)
    if 0 <= days < _NEAR_DAYS:
        return make_sentence(message("time-day", day=_skeleton("MMMMd", at, language), clock=clock), language)
    return _skeleton("yMMMMd", at, language)


def _day(day: Day, language: str, _house: House) -> str:
    return _skeleton("yMMMMd", date.fromisoformat(day.day), language)


def _month(month: Month, language: str, _house: House) -> str:
    return _skeleton("yMMMM", date.fromisoformat(f"{month.month}-01"), language)


def _span(span: Span, language: str, _house: House) -> str:
    return " ".join(make_sentence(message(f"span-{unit}", many=many), language) for many, unit in span.parts)


def _declared(declared: Declared, language: str, _house: House) -> str:
    bundle, id_ = bundle_of(language), declared_id(declared.path)
    return make_sentence(message(id_), language) if bundle.has_message(id_) else declared_words(declared.path)


def _several(several: Several, language: str, house: House) -> str:
    return ", ".join(param_text(item, language, house) for item in several.items)


def _skeleton(skeleton: str, day: date, language: str) -> str:
    return str(format_skeleton(skeleton, day, locale=LOCALES[language].replace("-", "_")))


_SHOWN: dict[type, Callable[[Any, str, House], str]] = {
    Figure: _figure, Range: _range, Time: _time, Day: _day, Month: _month, Span: _span, Declared: _declared,
    Several: _several, Unit: lambda unit, *_: units.symbol(unit.code), Message: make_sentence,
}
