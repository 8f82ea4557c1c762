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

# Of a field: its label; with its choices and what to do in danger, where it has any.
_FieldWords = str | tuple[str, list[str], list[str]]


def starting_words(language: str) -> dict[str, object]:
    """Return what every page of a phone says in a language, with the words of the kinds in the order of the kinds."""
    kinds = [_kind_words(kind_in(kind, language)) for kind in webapp.kinds.ALL]
    return {"locale": LOCALES[language], "languages": offered(), "said": _said(language)[0], "kinds": kinds}


def later_words(language: str) -> dict[str, object]:
    """Return what the jobs and the questions of the book say in a language."""
    return {"said": _said(language)[1]}


@cache
def _said(language: str) -> tuple[dict[str, str], dict[str, str]]:
    own = {} if language == ENGLISH else sound_messages(language)
    first, later = (messages_in(part) for part in phone_parts(ENGLISH))
    said = [{id_: own.get(id_, text) for id_, text in part.items()} for part in (first, later)]
    return said[0], said[1]


def _kind_words(kind: Kind) -> list[object]:
    return [
        kind.title, kind.short or kind.title, kind.summary, [_field_words(spec) for spec in kind.fields],
        [rule.words for rule in kind.rules], [figure.label for figure in kind.figures],
    ]


def _field_words(spec: Field) -> _FieldWords:
    if not spec.choices and not spec.danger:
        return spec.label
    return spec.label, [words for _, words in spec.choices], [words for _, words in spec.danger]
