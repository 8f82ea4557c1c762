"""Questions as they travel and as they are kept: code, message and suggestions; with words too where they travel.

A phone makes the sentence itself. The words travel all the same: for a phone whose program does not know the message
yet, and for any other program.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Any

from webapp.kinds.message import as_said, message_from_json, to_json
from webapp.kinds.read import Problem, Suggestion
from webapp.words import sentence
from webapp.words.catalogue import ENGLISH

Json = dict[str, Any]


def keep_suggestions(suggestions: Iterable[Suggestion]) -> list[Json]:
    """Return suggestions as the book keeps them."""
    return [
        {"field": one.field, "raw": one.raw, "unit": one.unit}
        | ({"message": to_json(one.message)} if one.message else {})
        for one in suggestions
    ]


def keep_problem(problem: Problem) -> Json:
    """Return a problem as the book keeps it beside what it put aside."""
    return {
        "code": problem.code, "weight": problem.weight, "field": problem.field, "message": to_json(problem.message),
        "suggestions": keep_suggestions(problem.suggestions),
    }


def with_words(kept: Mapping[str, Any], language: str = ENGLISH) -> Json:
    """Return a kept question or problem with its words, and those of its suggestions, in a language.

    What an older program kept has its words instead of a message, and says them.
    """
    made = _said(kept, language)
    if "suggestions" in kept:
        made["suggestions"] = [_said(one, language) for one in kept["suggestions"]]
    return made


def _said(kept: Mapping[str, Any], language: str) -> Json:
    if "message" in kept:
        return {**kept, "words": sentence(message_from_json(kept["message"]), language)}
    words = str(kept.get("words") or "")
    return {**kept, "words": words} | ({"message": to_json(as_said(words))} if words else {})
