"""The book's questions to entries, open and answered."""

from __future__ import annotations

import json
from collections.abc import Iterable
from typing import Any

from webapp.book.before.view import Query
from webapp.book.record.store import Book
from webapp.kinds.message import to_json
from webapp.words.travel import keep_suggestions, with_words

LIST_MOST = 1000
IDS_MOST = 500
_COLUMNS = "entry, name, code, weight, field, message, suggestions, mark, kind, person, at, answer"
_HEAVIEST = "CASE weight WHEN 'stop' THEN 0 WHEN 'ask' THEN 1 ELSE 2 END"


def as_sent(entry_id: str, name: str, query: Query) -> dict[str, Any]:
    """Return a query as it travels to a phone."""
    return with_words({
        "id": f"{entry_id}:{name}", "code": query.code, "weight": query.weight, "field": query.field,
        "message": to_json(query.message), "suggestions": keep_suggestions(query.suggestions),
    })


def open_queries(
    book: Book, *, weight: str | None = None, mark: str | None = None, person: str | None = None, limit: int = 200
) -> list[dict[str, Any]]:
    """Return queries without an answer, the heaviest first, then the newest; notes only where asked for by weight."""
    rows = book.query(
        f"SELECT {_COLUMNS} FROM queries WHERE answer = '' "  # noqa: S608
        "AND CASE WHEN :weight IS NULL THEN weight <> 'note' ELSE weight = :weight END "
        "AND (:mark IS NULL OR mark = :mark) AND (:person IS NULL OR person = :person) "
        f"ORDER BY {_HEAVIEST}, at DESC, entry, name LIMIT :limit",
        {"weight": weight, "mark": mark, "person": person, "limit": max(1, min(limit, LIST_MOST))},
    )
    return [_dressed(row) for row in rows]


def for_entry(book: Book, entry_id: str) -> list[dict[str, Any]]:
    """Return every query to an entry, answered ones too (`answer` is the id of the answer), the heaviest first."""
    rows = book.query(
        f"SELECT {_COLUMNS} FROM queries WHERE entry = ? ORDER BY {_HEAVIEST}, name",  # noqa: S608
        (entry_id,),
    )
    return [_dressed(row) for row in rows]


def still_open(book: Book, ids: list[str]) -> dict[str, list[dict[str, Any]]]:
    """Return the open queries of these entries, notes too, as they travel to a phone; by entry."""
    marks, found = ", ".join("?" * len(ids)), {}  # type: ignore[var-annotated]
    sql = f"SELECT {_COLUMNS} FROM queries WHERE answer = '' AND entry IN ({marks}) ORDER BY entry, {_HEAVIEST}, name"  # noqa: S608
    for row in map(_dressed, book.query(sql, ids)):
        sent = {name: row[name] for name in ("id", "code", "weight", "field", "words", "message", "suggestions")}
        found.setdefault(row["entry"], []).append(sent)
    return found


def queries_by_entry(book: Book, ids: Iterable[str]) -> dict[str, list[dict[str, Any]]]:
    """Return open queries by entry id: code, weight."""
    wanted, found = list(ids), {}  # type: ignore[var-annotated]
    for at in range(0, len(wanted), IDS_MOST):
        some = wanted[at : at + IDS_MOST]
        marks = ", ".join("?" * len(some))
        rows = book.query(
            f"SELECT entry, code, weight FROM queries WHERE answer = '' AND entry IN ({marks})",  # noqa: S608
            some,
        )
        for row in rows:
            found.setdefault(row["entry"], []).append(row)
    return found


def counts(book: Book) -> dict[str, int]:
    """Return the number of open queries by weight: stop, ask, note."""
    rows = book.query("SELECT weight, count(*) AS many FROM queries WHERE answer = '' GROUP BY weight")
    return {"stop": 0, "ask": 0, "note": 0} | {row["weight"]: row["many"] for row in rows}


def for_card(book: Book, mark: str, limit: int = 20) -> list[dict[str, Any]]:
    """Return the open queries of a vessel as its card shows them, newest first."""
    rows = book.query(
        f"SELECT {_COLUMNS} FROM queries WHERE mark = ? AND answer = '' AND weight <> 'note' "  # noqa: S608
        "ORDER BY at DESC, entry, name LIMIT ?",
        (mark, limit),
    )
    keep = ("id", "entry", "kind", "code", "weight", "words", "message", "at", "suggestions")
    return [{name: row[name] for name in keep} for row in map(_dressed, rows)]


def counts_by_mark(book: Book, marks: Iterable[str], most: int = 20) -> dict[str, int]:
    """Return by vessel the number of its open queries that are more than notes, as far as its card shows them."""
    wanted = list(marks)
    rows = book.query(
        "SELECT mark, count(*) AS many FROM queries WHERE mark IN (SELECT value FROM json_each(?)) AND answer = '' "
        "AND weight <> 'note' GROUP BY mark",
        (json.dumps(wanted),),
    )
    return dict.fromkeys(wanted, 0) | {row["mark"]: min(row["many"], most) for row in rows}


def _dressed(row: dict[str, Any]) -> dict[str, Any]:
    kept = {"message": json.loads(row["message"]), "suggestions": json.loads(row["suggestions"])}
    return with_words(row | {"id": f"{row['entry']}:{row['name']}"} | kept)
