"""Taking back: which answers strike no more than what the same phone logged itself, a short while ago."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from datetime import datetime, timedelta
from typing import NamedTuple, TypedDict

from webapp.book.record.store import Book
from webapp.kinds.entry import Entry

TAKE_BACK_H = 72  # how long a phone may take back a line of its own; common practice, no source


class _Logged(NamedTuple):
    device: object
    typed_at: object


class _LoggedRow(TypedDict):
    id: str
    device: str
    typed_at: str


class TakeBacks:
    """The entries that the answers of one batch speak of: who logged them, and when."""

    def __init__(self, book: Book, entries: Iterable[object]) -> None:
        said = {e["id"]: e for e in entries if isinstance(e, dict) and isinstance(e.get("id"), str)}
        ids = {id_ for e in said.values() if e.get("kind") == "answer" and (id_ := _spoken_of(e))}
        marks = ", ".join("?" * len(ids))
        asked = f"SELECT id, device, json_extract(body, '$.typed_at') AS typed_at FROM entries WHERE id IN ({marks})"  # noqa: S608
        rows = book.rows(_LoggedRow, asked, list(ids)) if ids else []
        self._in_book = {row["id"]: _Logged(row["device"], row["typed_at"]) for row in rows}
        # Logged and taken back before it was handed in: who carries both might as well have kept both.
        self._carried = {id_: _Logged(said[id_].get("device"), said[id_].get("typed_at")) for id_ in ids if id_ in said}

    def is_own(self, answer: Entry, phone: str) -> bool:
        """Whether a sound answer strikes, as a whole, a line of the last days that its own phone logged.

        `phone` is the device that has shown to be let in, "" where none has: only it may speak of what is in the book.
        """
        values = answer["values"]
        if _raw(values, "verdict") != "struck" or _raw(values, "query"):
            return False
        id_ = _spoken_of(answer)
        logged = self._in_book.get(id_) or self._carried.get(id_)
        if logged is None or logged.device != answer["device"] or (id_ in self._in_book and logged.device != phone):
            return False
        try:
            since = datetime.fromisoformat(answer["typed_at"]) - datetime.fromisoformat(str(logged.typed_at))
        except (ValueError, TypeError):  # what is carried along need be no sound entry
            return False
        return since <= timedelta(hours=TAKE_BACK_H)


def _spoken_of(answer: Mapping[str, object]) -> str:
    """Return the id of the entry that an answer speaks of, "" where it names none."""
    values = answer.get("values")
    return _raw(values, "entry") if isinstance(values, dict) else ""


def _raw(values: Mapping[str, object], name: str) -> str:
    """Return the text typed into a field, "" where nothing was."""
    value = values.get(name)
    raw = value.get("raw") if isinstance(value, dict) else None
    return raw.strip() if isinstance(raw, str) else ""
