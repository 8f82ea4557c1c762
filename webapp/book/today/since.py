"""What has come into the book since somebody was last here, and the last answer that was given."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import dataclass

import webapp.kinds
from webapp.book.record.store import Book
from webapp.book.record.upcast import upcast
from webapp.book.today.typed import line_words
from webapp.words.houseunits import House

SHOWN_MOST = 5
# What a house tells of its day, the weightiest of all that is logged.
TOLD = (
    "run_end", "fraction_gauge", "cask_fill", "dump", "bottling_close", "dispatch", "ferment_closed", "fruit_intake",
    "reduce", "receipt", "goods_receipt", "destruction", "loss", "stock_count", "instrument_check", "cask_regauge",
)


@dataclass(frozen=True, slots=True)
class News:
    """An entry that has come: its id, kind in words, vessel, line, time of reading, person."""

    entry: str
    title: str
    mark: str
    summary: str
    read_at: str
    person: str


@dataclass(frozen=True, slots=True)
class Since:
    """How many entries of how many people have come; the last of those that tell of the day; the last answer."""

    entries: int
    people: int
    news: Sequence[News]
    answer: Answer | None


@dataclass(frozen=True, slots=True)
class Answer:
    """The last answer to a question: the entry it is about, the verdict, the reason, the person, when it was typed."""

    entry: str
    mark: str
    verdict: str
    reason: str
    person: str
    at: str


def load_since(book: Book, book_no: int, house: House) -> Since:
    """Return the entries after a number of the book, in one statement. Figures are shown as they were typed."""
    found: dict[str, list[dict[str, object]]] = {"count": [], "news": [], "answer": []}
    for part, value in book.db.conn.execute(_SINCE, {"no": book_no, "kinds": json.dumps(TOLD), "most": SHOWN_MOST}):
        found[part].append(json.loads(value))
    count = found["count"][0]
    answer = found["answer"][0] if found["answer"] else None
    return Since(
        int(str(count["n"])), int(str(count["people"])), [_news(one, house) for one in found["news"]],
        Answer(**{name: str(value) for name, value in answer.items()}) if answer else None,
    )


def _news(row: dict[str, object], house: House) -> News:
    entry = upcast(json.loads(str(row["body"])))
    kind = webapp.kinds.get(entry["kind"])
    return News(str(row["id"]), kind.title if kind else entry["kind"], str(row["mark"]),
                line_words(kind, entry, None, house), str(row["read_at"]), str(row["person"]))


_SINCE = """
SELECT 'count', json_object('n', count(*), 'people', count(DISTINCT person)) FROM entries WHERE book_no > :no
UNION ALL SELECT 'news', json_object('id', id, 'mark', mark, 'read_at', read_at, 'person', person, 'body', body) FROM (
    SELECT * FROM entries WHERE book_no > :no AND kind IN (SELECT value FROM json_each(:kinds))
    ORDER BY book_no DESC LIMIT :most
)
UNION ALL SELECT 'answer', json_object('entry', a.entry, 'mark', coalesce(e.mark, ''), 'verdict', a.verdict,
    'reason', a.reason, 'person', a.person, 'at', substr(a.typed_key, 1, 19) || 'Z')
FROM (SELECT * FROM answers ORDER BY typed_key DESC LIMIT 1) a LEFT JOIN entries e ON e.id = a.entry
"""
