"""Questions that are open when a month is closed: who closes has read each, and the close carries it for good."""

from __future__ import annotations

import json
from collections.abc import Iterable, Sequence
from typing import TypedDict

from webapp.book.record.errors import BookError
from webapp.book.record.store import Book
from webapp.kinds.plain import Json
from webapp.words.catalogue import ENGLISH
from webapp.words.houseunits import House
from webapp.words.travel import KeptQuestion, with_words


class _About(TypedDict):
    entry: str
    name: str
    code: str
    weight: str
    mark: str
    kind: str
    at: str


class OpenQuestion(_About):
    """An open question as a close keeps it: of which entry, and its message, in nobody's language and units yet.

    name: of the question among those of its entry; at: the time that the entry speaks of, UTC; weight: stop or ask.
    """

    message: Json


class _Row(_About):
    message: str


def open_between(book: Book, start: str, until: str) -> list[OpenQuestion]:
    """Return open questions, no notes, on entries that speak of a time from `start` to before `until`, oldest first."""
    rows = book.rows(
        _Row,
        "SELECT entry, name, code, weight, mark, kind, at, message FROM queries "
        "WHERE answer = '' AND weight <> 'note' AND at >= ? AND at < ? ORDER BY at, entry, name",
        (start, until),
    )
    return [
        {
            "entry": row["entry"], "name": row["name"], "code": row["code"], "weight": row["weight"],
            "mark": row["mark"], "kind": row["kind"], "at": row["at"], "message": json.loads(row["message"]),
        }
        for row in rows
    ]


def key_of(question: OpenQuestion) -> str:
    """Return the key of a question: the id of its entry, and its name there."""
    return f"{question['entry']}:{question['name']}"


def sentence_of(question: OpenQuestion, house: House) -> str:
    """Return the sentence of a question, in the units of the house."""
    kept: KeptQuestion = {
        "code": question["code"], "weight": question["weight"], "field": "", "message": question["message"],
    }
    return with_words(kept, ENGLISH, house)["words"]


def refuse_unread(questions: Sequence[OpenQuestion], read: Iterable[str]) -> None:
    """Raise BookError where a person has not said of each question, by its key, that they have read it."""
    unread = {key_of(one) for one in questions} - set(read)
    if unread:
        n = len(unread)
        are = "1 open question is not ticked as read" if n == 1 else f"{n} open questions are not ticked as read"
        raise BookError(f"{are}. Read it, then answer it or tick it." if n == 1 else
                        f"{are}. Read each, then answer it or tick it.")
