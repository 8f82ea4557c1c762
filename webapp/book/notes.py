"""Notes to the next shift: the last ones, and those that hang on a vessel until somebody has read or heard them."""

from __future__ import annotations

import json
from collections.abc import Iterable
from typing import TypedDict

from webapp.book.enclosures import listed
from webapp.book.record.log import JOIN_FOLDED
from webapp.book.record.store import Book

LAST_MOST = 20
HANGING_MOST = 60
LOOKED_AT_MOST = 500  # of notes on vessels: an unheard one that is older hangs no longer

_NOTE = "e.kind = 'shift_note' AND f.standing = 'entered'"
# By the index of what was heard, whatever the planner thinks of a young book. The plus takes the column's type away: an
# index on an expression serves no comparison that has one.
_HEARD = """
SELECT h.person, hf.order_key FROM entries h INDEXED BY entries_heard LEFT JOIN amendments ha ON ha.id = h.id
JOIN folded hf ON hf.root = coalesce(ha.root, h.id) AND hf.entry = h.id AND hf.standing = 'entered'
WHERE h.kind = 'note_heard' AND json_extract(h.body, '$.values.note.raw') = +note.id ORDER BY hf.order_key LIMIT 1
"""
_COLUMNS = "e.book_no, e.id, e.mark, e.person, e.body, f.order_key, e.received_at"
# Notes from before this book could be told that one was heard would hang for ever.
_SINCE = "coalesce((SELECT at FROM migrations WHERE name = 'enclosures'), '')"
_NOTES = f"""
SELECT note.*, (SELECT json_array(person, order_key) FROM ({_HEARD})) AS heard FROM (
    SELECT * FROM (SELECT {_COLUMNS} FROM entries e {JOIN_FOLDED} WHERE {_NOTE} ORDER BY e.book_no DESC LIMIT :last)
    UNION
    SELECT * FROM (
        SELECT note.* FROM (
            SELECT {_COLUMNS} FROM entries e {JOIN_FOLDED} WHERE {_NOTE} AND e.mark <> '' AND e.received_at >= {_SINCE}
            ORDER BY e.book_no DESC LIMIT :looked_at
        ) note WHERE NOT EXISTS ({_HEARD}) ORDER BY note.book_no DESC LIMIT :hanging
    )
) note ORDER BY note.book_no DESC
"""  # noqa: S608 -- fixed text


class NoteFile(TypedDict):
    """A picture or a voice note that goes with a note."""

    sha256: str
    type: str


class Note(TypedDict):
    """A note to the next shift, of a vessel or of the house; `heard` and `heard_at` are empty until somebody has."""

    entry: str
    mark: str
    person: str
    at: str
    text: str
    heard: str
    heard_at: str
    enclosed: list[NoteFile]


class _Row(TypedDict):
    id: str
    mark: str
    person: str
    body: str
    order_key: str
    heard: str | None


def load_notes(book: Book) -> list[Note]:
    """Return the last notes, and every one that still hangs on a vessel, newest first."""
    most = {"last": LAST_MOST, "looked_at": LOOKED_AT_MOST, "hanging": HANGING_MOST}
    rows = book.rows(_Row, _NOTES, most)
    files = _files_of(book, (row["id"] for row in rows if '"enclosed"' in row["body"]))
    return [_note(row, files.get(row["id"], [])) for row in rows]


def _files_of(book: Book, ids: Iterable[str]) -> dict[str, list[NoteFile]]:
    wanted = list(ids)
    found: dict[str, list[NoteFile]] = {}
    for one in listed.of_entries(book, wanted) if wanted else ():
        if one["type"]:
            found.setdefault(one["about"], []).append(NoteFile(sha256=one["sha256"], type=one["type"]))
    return found


def _note(row: _Row, files: list[NoteFile]) -> Note:
    person, heard_key = json.loads(row["heard"]) if row["heard"] else ("", "")
    return {
        "entry": row["id"], "mark": row["mark"], "person": row["person"], "at": _time(row["order_key"]),
        "text": str(json.loads(row["body"])["values"].get("text", {}).get("raw", "")),
        "heard": person, "heard_at": _time(heard_key) if heard_key else "", "enclosed": files,
    }


def _time(order_key: str) -> str:
    return order_key[:19] + "Z"
