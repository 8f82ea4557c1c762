"""The sentence that is made of a refusal, on the book's side and of what the phone hands over."""

from __future__ import annotations

from typing import Any

from webapp.kinds.message import message_from_json
from webapp.kinds.reasons import reason_of
from webapp.trade.errors import NotANumber, OutOfDomain
from webapp.words import sentence


def words_of(error: OutOfDomain | NotANumber) -> str:
    """Return the sentence that is made of a refusal."""
    return sentence(reason_of(error))


def said(answer: Any) -> Any:
    """Return an answer of the book or of the phone; a refusal with its sentence in place of its message."""
    if not isinstance(answer, dict) or "reason" not in answer:
        return answer
    rest = {name: value for name, value in answer.items() if name != "reason"}
    return rest | {"sentence": sentence(message_from_json(answer["reason"]))}
