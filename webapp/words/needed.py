"""What a catalogue needs: every message and declared word with its English; what a language has not, or has wrong.

For whoever translates (`cellarslate words de`), and for the tests.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import TypeVar

from fluent.syntax import FluentParser
from fluent.syntax import ast as ftl

from webapp.words.catalogue import DESK, ENGLISH, FOLDER, catalogue_text, desk_text, has_catalogue, messages_in
from webapp.words.kindwords import declared

_Node = TypeVar("_Node", bound=ftl.BaseNode)


class NoCatalogue(Exception):
    """There is no file of a language; the words say what to do."""


@dataclass(frozen=True)
class Found:
    """What is to be put right in a catalogue, where, and the English that it should say, where there is one."""

    sort: str  # broken, twice, missing, surplus, place, parameters
    id: str
    words: str
    line: int = 0

    def shown(self, language: str) -> str:
        """Return it as one line for whoever looks after the file."""
        where = f"{FOLDER.name}/{language}.ftl" + (f":{self.line}" if self.line else "")
        return f"{where}: {self.id}: {self.words}"


def needed() -> dict[str, str]:
    """Return the English of everything that a catalogue may say, by id, in the order of the English file."""
    return {**messages_in(catalogue_text(ENGLISH)), **declared(), **messages_in(desk_text(ENGLISH))}


def look_at(language: str) -> list[Found]:
    """Return all that is to be put right in the catalogue of a language: first what is broken, then what is missing."""
    if not has_catalogue(language):
        raise NoCatalogue(f"There is no file {language}.ftl in {FOLDER}. Begin one there: `{ENGLISH}.ftl` says how.")
    text = (FOLDER / f"{language}.ftl").read_text(encoding="utf-8")
    body = FluentParser().parse(text).body
    known = {one.id.name: one for one in body if isinstance(one, ftl.Message)}
    wanted = needed()
    english = _messages(wanted)
    found = [*_broken(body, text), *_twice(body, text)]
    if language != ENGLISH:
        surplus = sorted(known.keys() - wanted.keys())
        found += [Found("surplus", id_, "English has no such message. Take it out.") for id_ in surplus]
        found += [Found("missing", id_, words) for id_, words in wanted.items() if id_ not in known]
    for_desk, below = messages_in(desk_text(ENGLISH)), text.find(DESK)
    for id_, one in known.items():
        if id_ in wanted and one.span and (id_ in for_desk) != (0 <= below < one.span.start):
            side = "below" if id_ in for_desk else "above"
            found.append(Found("place", id_, f"move it {side} the line “{DESK}”", _line_of(text, one)))
        if id_ in english and (said := _other_parameters(english[id_], one)):
            found.append(Found("parameters", id_, said, _line_of(text, one)))
    return found


def _messages(texts: dict[str, str]) -> dict[str, ftl.Message]:
    whole = "".join(f"{id_} = {text}\n" for id_, text in texts.items())
    return {one.id.name: one for one in FluentParser().parse(whole).body if isinstance(one, ftl.Message)}


def _broken(body: list[ftl.EntryType], text: str) -> Iterator[Found]:
    for one in body:
        if isinstance(one, ftl.Junk):
            at = one.annotations[0].span
            line = text[: at.start].count("\n") + 1 if at else _line_of(text, one)
            id_ = (one.content or "").partition("=")[0].strip() or "?"
            words = one.annotations[0].message or "cannot be read"
            yield Found("broken", id_, f"{words}. Look for a brace that is missing or left open.", line)


def _twice(body: list[ftl.EntryType], text: str) -> Iterator[Found]:
    seen = set()
    for one in body:
        if isinstance(one, ftl.Message):
            if one.id.name in seen:
                yield Found("twice", one.id.name, "stands there twice. Take one out.", _line_of(text, one))
            seen.add(one.id.name)


def _other_parameters(english: ftl.Message, other: ftl.Message) -> str:
    """Return the faults of a message's parameters: none where each is said, and none is made up.

    What English only chooses by, another language need not choose by.
    """
    got = _names(other)
    lost, new = _spoken(english) - got, got - _names(english)
    words = [f"does not say ${name}" for name in sorted(lost)]
    return "; ".join([*words, *(f"${name} is none of its parameters" for name in sorted(new))])


def _spoken(message: ftl.Message) -> set[str]:
    """Return the parameters that are said and not only chosen by."""
    only: set[str] = set()
    for placeable in _nodes(message, ftl.Placeable):
        if not isinstance(placeable.expression, ftl.SelectExpression):
            only |= _names(placeable)
    return only


def _names(node: ftl.BaseNode | None) -> set[str]:
    return {one.id.name for one in _nodes(node, ftl.VariableReference)}


def _nodes(node: object, of: type[_Node]) -> Iterator[_Node]:
    if isinstance(node, of):
        yield node
    inner = vars(node).values() if isinstance(node, ftl.BaseNode) else node if isinstance(node, list) else ()
    for one in inner:
        if isinstance(one, ftl.BaseNode | list):
            yield from _nodes(one, of)


def _line_of(text: str, node: ftl.EntryType) -> int:
    return text[: node.span.start].count("\n") + 1 if node.span else 0
