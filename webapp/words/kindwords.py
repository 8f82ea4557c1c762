"""The kinds in the words of a language. Their English stands where they are declared; a catalogue translates it by id.

The ids: `title-`, `short-`, `about-` and `summary-<kind>`; `label-` and `help-<kind>-<field>`; `choice-<kind>-<field>-
<value>`; `danger-<kind>-<field>-<number>`; `rule-<kind>-<code>`; `figure-<kind>-<figure>`. In what holds figures, as a
summary or a rule, `{name}` of the declaration is `{ $name }` of the catalogue.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from dataclasses import replace
from functools import cache

import webapp.kinds
from webapp.kinds.as_form import FORM_WORDS
from webapp.kinds.spec import Field, Kind
from webapp.words.catalogue import ENGLISH, declared_id, has_catalogue, sound_messages
from webapp.words.desk import say as say_now

_NAMED = re.compile(r"\{(\w+)\}")
_LETTER = re.compile(r"[^\W\d_]")
_PLACED = re.compile(r"\{ ?\$(\w+) ?\}")


def declared() -> dict[str, str]:
    """Return the English words of everything that the kinds declare, as a catalogue has them, by their ids."""
    found: dict[str, str] = {}
    for kind in webapp.kinds.ALL:
        whole = {"title": kind.title, "short": kind.short, "about": kind.about, "summary": kind.summary}
        found |= {declared_id((sort, kind.name)): words for sort, words in whole.items()}
        for spec in kind.fields:
            found |= _of_field(kind, spec)
        found |= {declared_id(("rule", kind.name, rule.code)): rule.words for rule in kind.rules}
        found |= {declared_id(("figure", kind.name, figure.name)): figure.label for figure in kind.figures}
    said = {id_: words for id_, words in found.items() if _LETTER.search(_NAMED.sub("", words))}
    return {id_: _NAMED.sub(r"{ $\1 }", words) for id_, words in said.items()}


def _of_field(kind: Kind, spec: Field) -> dict[str, str]:
    at = (kind.name, spec.name)
    found = {declared_id(("label", *at)): spec.label, declared_id(("help", *at)): spec.help}
    found |= {declared_id(("choice", *at, value)): words for value, words in spec.choices}
    return found | {declared_id(("danger", *at, str(n))): words for n, (_, words) in enumerate(spec.danger)}


def form_words() -> dict[str, str]:
    """Return the words that every form has beside those of its kind, in the language that is read."""
    said = {name: say_now(_id_of(name), what="{what}") for name in FORM_WORDS if name != "lowers"}
    return said | {"lowers": "yes" if say_now("floor-form-within", words="A") == "a" else ""}


def _id_of(name: str) -> str:
    return f"floor-form-{name.replace(' ', '_')}"


_made: dict[tuple[str, int, str], Kind] = {}


def kind_in(kind: Kind, language: str) -> Kind:
    """Return a kind with its words in a language; in English where that language has none."""
    if language == ENGLISH or not has_catalogue(language):
        return kind
    at = (kind.name, kind.version, language)
    if at not in _made:
        _made[at] = _translated(kind, sayings(language))
    return _made[at]


def _translated(kind: Kind, said: Mapping[str, str]) -> Kind:
    def say(words: str, sort: str, *rest: str) -> str:
        return said.get(declared_id((sort, kind.name, *rest)), words)

    return replace(
        kind, title=say(kind.title, "title"), about=say(kind.about, "about"), summary=say(kind.summary, "summary"),
        short=say(kind.short, "short") if kind.short else "",
        fields=tuple(_field_in(spec, say) for spec in kind.fields),
        rules=tuple(replace(rule, words=say(rule.words, "rule", rule.code)) for rule in kind.rules),
        figures=tuple(replace(one, label=say(one.label, "figure", one.name)) for one in kind.figures),
    )


def _field_in(spec: Field, say: Callable[..., str]) -> Field:
    choices = tuple((value, say(words, "choice", spec.name, value)) for value, words in spec.choices)
    danger = tuple((level, say(words, "danger", spec.name, str(n))) for n, (level, words) in enumerate(spec.danger))
    label, text = say(spec.label, "label", spec.name), say(spec.help, "help", spec.name)
    return replace(spec, label=label, help=text, choices=choices, danger=danger)


@cache
def sayings(language: str) -> dict[str, str]:
    """Return a catalogue's messages about the kinds, with placeholders as the kinds write them."""
    found = sound_messages(language) if language != ENGLISH else {}
    return {
        id_: _PLACED.sub(r"{\1}", " ".join(text.split()))
        for id_, text in found.items() if id_.partition("-")[0] in _SORTS
    }


_SORTS = frozenset(("title", "short", "about", "summary", "label", "help", "choice", "danger", "rule", "figure"))
