"""Questions as they travel and as they are kept: code, message and suggestions; with words too where they travel.

A phone makes the sentence itself. The words travel all the same: for a phone whose program does not know the message
yet, and for any other program.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import NotRequired, TypedDict

from webapp.kinds.expected import Suggestion
from webapp.kinds.message import as_said, message_from_json, to_json
from webapp.kinds.plain import Json
from webapp.kinds.problem import Problem
from webapp.words import sentence
from webapp.words.catalogue import ENGLISH
from webapp.words.houseunits import METRIC, House


class Words(TypedDict, total=False):
    """A message as JSON, and the sentence that it makes. What an older program kept has the sentence alone."""

    message: Json
    words: str


class KeptBox(TypedDict):
    """A box as it would be filled in; an empty raw leaves it empty."""

    field: str
    raw: str
    unit: str


class KeptSuggestion(Words):
    """A likely figure, as the book keeps it and as it travels."""

    field: str
    raw: str
    unit: str
    also: NotRequired[list[KeptBox]]


class KeptQuestion(Words):
    """A question or problem, as the book keeps it and as it travels."""

    code: str
    weight: str
    field: str
    suggestions: NotRequired[list[KeptSuggestion]]


def keep_suggestions(suggestions: Iterable[Suggestion]) -> list[KeptSuggestion]:
    """Return suggestions as the book keeps them."""
    return [_kept(one) for one in suggestions]


def _kept(one: Suggestion) -> KeptSuggestion:
    kept: KeptSuggestion = {"field": one.field, "raw": one.raw, "unit": one.unit}
    if one.message:
        kept["message"] = to_json(one.message)
    if one.also:
        kept["also"] = [{"field": box.field, "raw": box.raw, "unit": box.unit} for box in one.also]
    return kept


def keep_problem(problem: Problem) -> KeptQuestion:
    """Return a problem as the book keeps it beside what it put aside."""
    return {
        "code": problem.code, "weight": problem.weight, "field": problem.field, "message": to_json(problem.message),
        "suggestions": [],
    }


def with_words(kept: KeptQuestion, language: str = ENGLISH, house: House = METRIC) -> KeptQuestion:
    """Return a kept question or problem with its words, and those of its suggestions, in a language.

    The words have the units of the house; what is kept has none of its reader's. What an older program kept has its
    words instead of a message, and says them.
    """
    made: KeptQuestion = {**kept, **_said(kept, language, house)}
    if "suggestions" in kept:
        made["suggestions"] = [{**one, **_said(one, language, house)} for one in kept["suggestions"]]
    return made


def _said(kept: Words, language: str, house: House) -> Words:
    if "message" in kept:
        return {"words": sentence(message_from_json(kept["message"]), language, house)}
    words = str(kept.get("words") or "")
    return {"words": words, "message": to_json(as_said(words))} if words else {"words": words}
