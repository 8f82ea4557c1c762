"""What a phone fetches of a language: the words of every page from the start, those of the jobs and questions after it.

A phone loads its own language alone. What a catalogue lacks stands there in English, so a phone needs no second one.
"""

from __future__ import annotations

from functools import cache

import webapp.kinds
from webapp.kinds.spec import Field, Kind
from webapp.words.catalogue import ENGLISH, LOCALES, messages_in, phone_parts, sound_messages
from webapp.words.kindwords import kind_in
from webapp.words.language import offered

# Forms that nobody needs in the first minute: of bottling, goods and accounts, of casks and blending, of what is looked
# into apart from the work (samples, tastings, instruments, plans), and the long one of a certificate. What a ferment
# and a run need from fruit to feints comes first.
LATER_KINDS = (
    "account_move", "best_run", "bottle_check", "bottled_count", "bottling_close", "bottling_gauge", "cask_fill",
    "cask_move", "cask_regauge", "chill_filter", "cleaning", "cut_plan", "destruction", "dispatch", "distilled_gauge",
    "dump", "goods_receipt", "instrument_check", "lab_certificate", "loss", "opening", "opening_goods", "receipt",
    "reduce", "sample", "stock_count", "tasting_answer", "tasting_note", "top_up",
)
# Of a field: its label; with its choices and what to do in danger, where it has any.
_FieldWords = str | tuple[str, list[str], list[str]]


def starting_words(language: str) -> dict[str, object]:
    """Return the words of every page of a phone in a language, with those of the kinds in the order of the kinds.

    Of LATER_KINDS there are the title, the short one and the line alone.
    """
    told = [kind_in(kind, language) for kind in webapp.kinds.ALL]
    kinds = [[*_heads(kind), *(() if kind.name in LATER_KINDS else _parts(kind))] for kind in told]
    return {"locale": LOCALES[language], "languages": offered(), "said": _said(language)[0], "kinds": kinds}


def later_words(language: str) -> dict[str, object]:
    """Return the words of the jobs and of questions in a language, and those of LATER_KINDS by kind."""
    later = [kind for kind in webapp.kinds.ALL if kind.name in LATER_KINDS]
    return {"said": _said(language)[1], "kinds": {kind.name: _parts(kind_in(kind, language)) for kind in later}}


@cache
def _said(language: str) -> tuple[dict[str, str], dict[str, str]]:
    own = {} if language == ENGLISH else sound_messages(language)
    first, later = (messages_in(part) for part in phone_parts(ENGLISH))
    said = [{id_: own.get(id_, text) for id_, text in part.items()} for part in (first, later)]
    return said[0], said[1]


def _heads(kind: Kind) -> tuple[str, str, str]:
    return kind.title, kind.short or kind.title, kind.summary


def _parts(kind: Kind) -> tuple[list[_FieldWords], list[str], list[str]]:
    """Return the words of a kind's fields, rules and figures."""
    return (
        [_field_words(spec) for spec in kind.fields], [rule.words for rule in kind.rules],
        [figure.label for figure in kind.figures],
    )


def _field_words(spec: Field) -> _FieldWords:
    if not spec.choices and not spec.danger:
        return spec.label
    return spec.label, [words for _, words in spec.choices], [words for _, words in spec.danger]
