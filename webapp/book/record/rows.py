"""Rows of the log and of the fold, as they stand in the book's file."""

from __future__ import annotations

from typing import NotRequired, TypedDict

from webapp.book.record.upcast import stored_mark
from webapp.kinds.entry import Entry
from webapp.words.travel import KeptQuestion


class NotedRow(TypedDict):
    """What of a row of the log its family ties need."""

    id: str
    kind: str
    typed_at: str
    person: str
    skew_s: float


class EntryRow(NotedRow):
    """A row of the log, as the fold needs it. Times as the phone told them; `received_at` by the book's clock."""

    read_at: str
    device: str
    seq: int
    received_at: str
    via: str


class LinkedRow(TypedDict):
    """What the digest of a row goes over. Its number and its digest are given when it is appended."""

    body_sha256: str
    received_at: str
    skew_s: float
    via: str
    book_no: NotRequired[int]
    digest: NotRequired[str]


class LogRow(EntryRow, LinkedRow):
    """A row of the log."""

    kind_version: int
    mark: str
    role: str
    body: str


class Logged(LogRow):
    """An entry as readers find it: its row, its body read, the root of its family, its place, and its standing.

    `order_key` is the place of its family in the order of the fold, `~` where it has none.
    Standing is `entered`, `stopped` (an open stop query: it moves no stock), `amended`, `struck` or `answer`.
    """

    entry: Entry
    root: str
    order_key: str
    standing: str


class Family(TypedDict):
    """An entry with its family: root, id of the one that has effect, all amendments in order, the answers to any."""

    entry: Logged | None
    root: str
    effective: str | None
    members: list[Logged]
    answers: list[Logged]


class Wanted(TypedDict, total=False):
    """Which entries are wanted (log.find_entries)."""

    kind: str | None
    mark: str | None
    person: str | None
    device: str | None
    since: str | None
    until: str | None
    weight: str | None


class _Aside(TypedDict):
    id: str | None
    device: str | None
    seq: int | None
    settled: str
    body: str
    body_sha256: str
    received_at: str
    via: str


class AsideRow(_Aside):
    """A body that was put aside, refused or a clash; its problems as JSON."""

    problems: str


class Aside(_Aside):
    """A body that was put aside, with its problems in words."""

    no: int
    problems: list[KeptQuestion]


class FoldedRow(TypedDict):
    """Where and how a family of entries stands in the fold. `keys` are JSON."""

    root: str
    entry: str
    order_key: str
    mark: str
    keys: str
    standing: str


def row_of(entry: Entry, body: str, *, body_sha256: str, received_at: str, skew_s: float, via: str) -> LogRow:
    """Return an entry as a row of the log, without its number and its digest."""
    return {
        "id": entry["id"], "kind": entry["kind"], "kind_version": entry["kind_version"],
        "read_at": entry["read_at"], "typed_at": entry["typed_at"], "person": entry["person"],
        "device": entry["device"], "seq": entry["seq"], "received_at": received_at, "via": via,
        "mark": stored_mark(entry.get("mark") or "") or "", "role": entry.get("role") or "", "body": body,
        "body_sha256": body_sha256, "skew_s": skew_s,
    }
