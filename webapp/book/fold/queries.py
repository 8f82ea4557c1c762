"""The book's questions to entries, open and answered."""

from __future__ import annotations

import json
from collections.abc import Iterable
from typing import TypedDict

from webapp.book.before.view import Query
from webapp.book.record.store import Book
from webapp.book.record.units import house_units
from webapp.kinds.message import to_json
from webapp.kinds.plain import Json
from webapp.words.catalogue import ENGLISH
from webapp.words.houseunits import METRIC, House
from webapp.words.travel import KeptQuestion, KeptSuggestion, keep_suggestions, with_words

LIST_MOST = 1000
_COLUMNS = "entry, name, code, weight, field, message, suggestions, mark, kind, person, at, answer"
_HEAVIEST = "CASE weight WHEN 'stop' THEN 0 WHEN 'ask' THEN 1 ELSE 2 END"


class SentQuestion(KeptQuestion):
    """A question as it travels to a phone."""

    id: str


class _Place(TypedDict):
    entry: str
    name: str
    mark: str
    kind: str
    person: str
    at: str
    answer: str


class Question(SentQuestion, _Place):
    """A question with its entry: vessel, kind, person, time, and the id of its answer, empty while it is open."""


class CardQuestion(TypedDict):
    """An open question as the card of its vessel shows it."""

    id: str
    entry: str
    kind: str
    code: str
    weight: str
    words: str
    message: Json
    at: str
    suggestions: list[KeptSuggestion]


class Weighed(TypedDict):
    """The code of an entry's open question, and its weight."""

    entry: str
    code: str
    weight: str


class _Row(_Place):
    code: str
    weight: str
    field: str
    message: str
    suggestions: str


def as_sent(entry_id: str, name: str, query: Query, house: House = METRIC) -> SentQuestion:
    """Return a query as it travels to a phone, its words in the units of the house."""
    said = with_words({
        "code": query.code, "weight": query.weight, "field": query.field, "message": to_json(query.message),
        "suggestions": keep_suggestions(query.suggestions),
    }, ENGLISH, house)
    return {**said, "id": f"{entry_id}:{name}"}


def open_queries(
    book: Book, *, weight: str | None = None, mark: str | None = None, person: str | None = None, limit: int = 200
) -> list[Question]:
    """Return queries without an answer, the heaviest first, then the newest; notes only where asked for by weight."""
    rows = book.rows(
        _Row,
        f"SELECT {_COLUMNS} FROM queries WHERE answer = '' "  # noqa: S608
        "AND CASE WHEN :weight IS NULL THEN weight <> 'note' ELSE weight = :weight END "
        "AND (:mark IS NULL OR mark = :mark) AND (:person IS NULL OR person = :person) "
        f"ORDER BY {_HEAVIEST}, at DESC, entry, name LIMIT :limit",
        {"weight": weight, "mark": mark, "person": person, "limit": max(1, min(limit, LIST_MOST))},
    )
    return _dressed_all(book, rows)


def heaviest(book: Book, house: House, each: int) -> list[Question]:
    """Return the newest stops without an answer, then the newest asks, so many of each; by the index of open queries.
    """
    newest = f"SELECT {_COLUMNS} FROM queries WHERE answer = '' AND weight = "  # noqa: S608
    last = "ORDER BY at DESC, entry, name LIMIT ?"
    sql = f"SELECT * FROM ({newest} 'stop' {last}) UNION ALL SELECT * FROM ({newest} 'ask' {last})"  # noqa: S608
    return _dressed_all(book, book.rows(_Row, sql, (each, each)), house)


def for_entry(book: Book, entry_id: str, house: House | None = None) -> list[Question]:
    """Return every query to an entry, answered ones too (`answer` is the id of the answer), the heaviest first.

    house: the units of the house, where they are known already.
    """
    rows = book.rows(
        _Row,
        f"SELECT {_COLUMNS} FROM queries WHERE entry = ? ORDER BY {_HEAVIEST}, name",  # noqa: S608
        (entry_id,),
    )
    return _dressed_all(book, rows, house)


def still_open(book: Book, ids: list[str], house: House | None = None) -> dict[str, list[SentQuestion]]:
    """Return the open queries of these entries, notes too, as they travel to a phone; by entry.

    house: the units of the house, where they are known already.
    """
    marks = ", ".join("?" * len(ids))
    found: dict[str, list[SentQuestion]] = {}
    sql = f"SELECT {_COLUMNS} FROM queries WHERE answer = '' AND entry IN ({marks}) ORDER BY entry, {_HEAVIEST}, name"  # noqa: S608
    for row in _dressed_all(book, book.rows(_Row, sql, ids), house):
        sent: SentQuestion = {
            "id": row["id"], "code": row["code"], "weight": row["weight"], "field": row["field"],
            "words": row["words"], "message": row["message"], "suggestions": row["suggestions"],
        }
        found.setdefault(row["entry"], []).append(sent)
    return found


def queries_by_entry(book: Book, ids: Iterable[str]) -> dict[str, list[Weighed]]:
    """Return open queries by entry id: code, weight."""
    sql = "SELECT entry, code, weight FROM queries WHERE answer = '' AND entry IN (SELECT value FROM json_each(?))"
    found: dict[str, list[Weighed]] = {}
    for row in book.rows(Weighed, sql, (json.dumps(list(ids)),)):
        found.setdefault(row["entry"], []).append(row)
    return found


def count_open(book: Book) -> dict[str, int]:
    """Return the number of open queries by weight: stop, ask, note."""
    return as_counts(book.db.conn.execute(COUNTS))


COUNTS = "SELECT weight, count(*) FROM queries WHERE answer = '' GROUP BY weight"


def as_counts(rows: Iterable[tuple[str, int]]) -> dict[str, int]:
    """Return the rows of COUNTS as the number of open queries by weight."""
    return {"stop": 0, "ask": 0, "note": 0} | dict(rows)


def for_card(book: Book, mark: str, limit: int = 20, house: House | None = None) -> list[CardQuestion]:
    """Return the open queries of a vessel as its card shows them, newest first.

    house: the units of the house, where they are known already.
    """
    rows = book.rows(
        _Row,
        f"SELECT {_COLUMNS} FROM queries WHERE mark = ? AND answer = '' AND weight <> 'note' "  # noqa: S608
        "ORDER BY at DESC, entry, name LIMIT ?",
        (mark, limit),
    )
    return [
        {
            "id": row["id"], "entry": row["entry"], "kind": row["kind"], "code": row["code"],
            "weight": row["weight"], "words": row["words"], "message": row["message"], "at": row["at"],
            "suggestions": row["suggestions"],
        }
        for row in _dressed_all(book, rows, house)
    ]


def count_by_mark(book: Book, marks: Iterable[str], most: int = 20) -> dict[str, int]:
    """Return by vessel the number of its open queries that are more than notes, as far as its card shows them."""
    wanted = list(marks)
    rows = book.query(
        "SELECT mark, count(*) AS many FROM queries WHERE mark IN (SELECT value FROM json_each(?)) AND answer = '' "
        "AND weight <> 'note' GROUP BY mark",
        (json.dumps(wanted),),
    )
    return dict.fromkeys(wanted, 0) | {row["mark"]: min(row["many"], most) for row in rows}


def _dressed_all(book: Book, rows: Iterable[_Row], house: House | None = None) -> list[Question]:
    house = house or house_units(book)
    return [_dressed(row, house) for row in rows]


def _dressed(row: _Row, house: House) -> Question:
    said = with_words({
        "code": row["code"], "weight": row["weight"], "field": row["field"], "message": json.loads(row["message"]),
        "suggestions": json.loads(row["suggestions"]),
    }, ENGLISH, house)
    return {
        "id": f"{row['entry']}:{row['name']}", "entry": row["entry"], "name": row["name"], "mark": row["mark"],
        "kind": row["kind"], "person": row["person"], "at": row["at"], "answer": row["answer"], **said,
    }
