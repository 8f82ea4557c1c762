"""Intake: what phones and pages hand in is settled here, entry by entry. A result is a receipt.

Everything of a batch is judged first and written at the end, in one transaction: either the phone gets its answer and
the book has the entries, or neither. A bad entry is put aside and does not hold up its neighbours. Batches that wait
for the write door are taken together (record/line.py): one transaction and one settling, and each its own answer.
"""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from datetime import datetime
from functools import partial
from typing import Any, NotRequired, TypedDict, cast

from uuid6 import uuid7

import webapp.kinds
from webapp.book.fold import fold
from webapp.book.fold.evaluate import Outcome
from webapp.book.fold.families import Fresh
from webapp.book.fold.queries import SentQuestion, as_sent, still_open
from webapp.book.handed import Handed
from webapp.book.house import devices
from webapp.book.record import counters, log
from webapp.book.record.clock import measured_skew, utc_text
from webapp.book.record.errors import BookError
from webapp.book.record.kept_json import from_text
from webapp.book.record.line import Turn
from webapp.book.record.rows import AsideRow, LogRow, row_of
from webapp.book.record.soundness import check_entry
from webapp.book.record.store import Book
from webapp.book.record.units import house_units
from webapp.book.take_back import TakeBacks
from webapp.kinds.entry import Entry
from webapp.kinds.message import message
from webapp.kinds.problem import Problem
from webapp.words.catalogue import ENGLISH
from webapp.words.travel import KeptQuestion, keep_problem, with_words

BATCH_MOST = 200
BYTES_MOST = 512 * 1024
DESK = "desk"
SEQ_MOST = 2**53 - 1


class Result(TypedDict):
    """A receipt for one entry: `entered`, `queried`, `known`, `clash` or `refused`."""

    id: str | None
    settled: str
    book_no: NotRequired[int]
    received_at: NotRequired[str]
    digest: NotRequired[str]
    queries: NotRequired[list[SentQuestion]]
    problems: NotRequired[list[KeptQuestion]]


class Receipt(TypedDict):
    """The answer to a batch, as docs/hand-in.md has it."""

    book_id: str
    server_now: str
    skew_s: float
    results: list[Result]
    devices: dict[str, counters.Seen]
    cursor: int
    head: tuple[int, str]
    has_head: NotRequired[bool]


class _KnownRow(TypedDict):
    id: str
    book_no: int
    body_sha256: str
    received_at: str
    digest: str


def hand_in(
    book: Book, batch: Mapping[str, object], *, via: str, now: datetime, carrier: str | None = None,
    may_answer: bool = True, phone: str = "", is_desk: bool = False, signed_in: str = "",
) -> Receipt:
    """Settle a batch and return the answer as docs/hand-in.md has it, without `marker` and `ok`.

    `via` says how it came (`phone`, `page`, `file`, `demo`); `now` is the book's clock, aware. `carrier` is the
    device that brings it, whose clock is measured by it; left out, the one the batch names. `may_answer`: it may answer
    queries and strike anything; `phone`: the device that has shown to be let in, which may take back what it logged
    itself; `signed_in`: the person whose session brings it; `is_desk`: it is this book's own desk, whose counter nobody
    else may use. Raises BookError if the batch as
    a whole is too big or is no batch.
    """
    entries = batch.get("entries")
    if not isinstance(entries, list):
        raise BookError("The batch holds no list of entries. Update the app on the phone and send again.")
    if len(entries) > BATCH_MOST:
        raise BookError(f"A batch has at most {BATCH_MOST} entries. Send it in halves.")
    named = str(batch.get("device") or "")[:40]
    carrier = named if carrier is None else carrier
    head = batch.get("head")
    turn = _Turn(entries, named, carrier, measured_skew(batch.get("now"), now), via, now)
    turn.handed = Handed(book, entries, via, phone, signed_in)  # signatures are looked at before anybody is held up
    turn.past = head if isinstance(head, list | tuple) else ()
    turn.may_answer, turn.is_desk, turn.phone = may_answer, is_desk, phone
    if book.is_writing or not book.line.stand(turn, partial(_take_together, book)):
        _take_together(book, [turn])
    if turn.trouble:
        raise turn.trouble
    assert turn.receipt is not None
    return turn.receipt


class _Turn(Turn):
    """One batch that waits for the write door, and the answer to it."""

    def __init__(
        self, entries: list[object], named: str, carrier: str, skew_s: float, via: str, now: datetime
    ) -> None:
        super().__init__(len(entries))
        self.entries, self.named, self.carrier = entries, named, carrier
        self.skew_s, self.via, self.now = skew_s, via, now
        self.past: Sequence[Any] = ()  # the head that the phone was told last, if it said one
        self.may_answer, self.is_desk, self.phone = True, False, ""
        self.had_head = False
        self.handed: Handed
        self.receipt: Receipt | None = None
        self.trouble: BookError | None = None


def _take_together(book: Book, turns: list[_Turn]) -> None:
    """Take batches in one write and one settling; each turn gets a receipt, or the trouble with it."""
    with book.write() as database:
        desks: list[tuple[_Turn, _Desk]] = []
        fresh = Fresh()
        for turn in turns:
            dirty = set(book.memory.dirty_roots)
            database.conn.execute("SAVEPOINT turn")
            desk = _Desk(book, turn)
            try:
                turn.had_head = bool(turn.past) and log.has_head(book, turn.past)
                desk.look_up(turn.entries)
                for entry in turn.entries:
                    desk.judge(entry)
                desk.append()
            except BookError as error:
                database.conn.execute("ROLLBACK TO turn")
                book.memory.dirty_roots = dirty
                turn.trouble = error
            else:
                desks.append((turn, desk))
                fresh.update(desk.fresh)
            database.conn.execute("RELEASE turn")
        # A sheet is looked over with all that follows from it, before it is kept.
        outcomes = fold.settle(book, fresh, in_part=turns[0].via != "sheet")
        for turn, desk in desks:
            turn.receipt = _receipt(book, turn, desk, outcomes)


def _receipt(book: Book, turn: _Turn, desk: _Desk, outcomes: Mapping[str, Outcome]) -> Receipt:
    results = desk.answer(outcomes)
    devices.note_heard(book, turn.carrier, utc_text(turn.now), turn.skew_s)
    asked = desk.named | {turn.named, turn.carrier}
    receipt: Receipt = {
        "book_id": book_id(book), "server_now": utc_text(turn.now), "skew_s": turn.skew_s, "results": results,
        "devices": {name: counters.report_seen(book, name) for name in sorted(asked - {""})},
        "cursor": cursor(book), "head": log.load_head(book),
    }
    if turn.past:
        receipt["has_head"] = turn.had_head
    return receipt


def enter_page_entry(
    book: Book, *, kind: str, mark: str, values: Mapping[str, object], person: str, role: str, read_at: str,
    remark: str = "", amends: str | None = None, reason: str = "", now: datetime, mark_by: str = "picked",
    enclosed: Sequence[str] = (),
) -> Result:
    """Enter one entry from a page of the book itself; return its result. The desk has a counter like any phone."""
    with book.write():
        spec = webapp.kinds.get(kind)
        entry = {
            "id": str(uuid7()), "kind": kind, "kind_version": spec.version if spec else 1, "mark": mark or "",
            "mark_by": mark_by if mark else "", "read_at": read_at, "typed_at": now.isoformat(timespec="seconds"),
            "person": person, "role": role, "seen_by": "", "device": DESK,
            "seq": counters.report_seen(book, DESK)["seen"] + 1, "values": values, "as_read": [], "looked_again": [],
            "remark": remark, "amends": amends or None, "reason": reason,
        } | ({"enclosed": list(enclosed)} if enclosed else {})
        batch = {"now": now.isoformat(), "device": DESK, "entries": [entry]}
        return hand_in(book, batch, via="page", now=now, is_desk=True)["results"][0]


def book_id(book: Book) -> str:
    """Return the book's own id."""
    return str((book.one("SELECT value FROM settings WHERE name = 'book_id'") or {})["value"])


def cursor(book: Book) -> int:
    """Return the turn of the card that changed last."""
    return int((book.one("SELECT value FROM settings WHERE name = 'turn'") or {})["value"])


class _Desk:
    """One batch on its way into the book. Inside a write only."""

    def __init__(self, book: Book, turn: _Turn) -> None:
        self.book, self._house = book, house_units(book)
        self.named: set[str] = set()
        self.fresh = Fresh()
        self._may_answer, self._is_desk, self._phone = turn.may_answer, turn.is_desk, turn.phone
        self._received_at, self._handed = utc_text(turn.now), turn.handed
        self._known: dict[str, LogRow | _KnownRow] = {}
        self._skews: dict[str, float] = {turn.carrier: turn.skew_s}
        self._seen: dict[str, list[int]] = {}
        self._rows: list[LogRow] = []
        self._aside: list[AsideRow] = []
        self._results: list[Result] = []
        self._bytes = 0

    def look_up(self, entries: list[object]) -> None:
        """Find the entries of this batch that the book has already, by id."""
        ids = [e["id"] for e in entries if isinstance(e, dict) and isinstance(e.get("id"), str) and e["id"].isascii()]
        marks = ", ".join("?" * len(ids))
        columns = "id, book_no, body_sha256, received_at, digest"
        rows = self.book.rows(_KnownRow, f"SELECT {columns} FROM entries WHERE id IN ({marks})", ids)  # noqa: S608
        self._known = {row["id"]: row for row in rows}
        self._take_backs = TakeBacks(self.book, entries)

    def judge(self, sent: object) -> None:
        """Decide about one entry."""
        problems, text = check_entry(sent)
        entry = cast(Entry, sent)  # looked at only where nothing speaks against it
        problems = problems or ([] if entry["id"] in self._known else self._barred(entry))
        self._bytes += len(text)
        if self._bytes > BYTES_MOST:
            raise BookError("The batch is larger than 512 KB. Send it in halves.")
        self._note_counter(sent)
        if problems:
            self._put_aside(sent, text, "refused", problems)
            return
        sha = log.sha256(text)
        known = self._known.get(entry["id"])
        if known is None:
            self._accept(entry, text, sha)
        elif known["body_sha256"] == sha:
            self._results.append({"id": entry["id"], "settled": "known"})
        else:
            said = message("clash-in_batch")
            if "book_no" in known:
                said = message("clash-in_book", number=known["book_no"])
            self._put_aside(sent, text, "clash", [Problem("clash", "stop", "", said)])

    def _barred(self, entry: Entry) -> list[Problem]:
        """Return the reasons why this carrier may not hand in this sound entry; empty where it may."""
        if entry["device"] == DESK and not self._is_desk:
            return [Problem("not_the_desk", "refuse", "device", message("not_the_desk"))]
        if forged := self._handed.problems(entry):
            return forged
        if entry["kind"] == "answer" and not self._may_answer and not self._take_backs.is_own(entry, self._phone):
            return [Problem("may_not_answer", "refuse", "kind", message("may_not_answer"))]
        return []

    def append(self) -> None:
        """Write what was judged, and note it for the fold."""
        log.append_rows(self.book, self._rows)
        log.put_aside(self.book, self._aside)
        for device, numbers in self._seen.items():
            counters.note_seen(self.book, device, numbers)
        for row in self._rows:
            fold.note_entry(self.book, row, self.fresh[row["id"]][1])
        for line in self._aside:
            if line["settled"] == "clash" and line["id"]:
                fold.note_clash(self.book, line["id"])

    def answer(self, outcomes: Mapping[str, Outcome]) -> list[Result]:
        """Return the results in their order, after the fold has settled."""
        known = [result["id"] for result in self._results if result["id"] and result["settled"] == "known"]
        asked = still_open(self.book, known) if known else {}
        return [self._finished(result, outcomes, asked) for result in self._results]

    def _accept(self, entry: Entry, text: str, sha: str) -> None:
        skew_s = self._skew_of(entry["device"])
        row = row_of(
            entry, text, body_sha256=sha, skew_s=skew_s, received_at=self._received_at, via=self._handed.via(entry)
        )
        self._rows.append(row)
        self._known[entry["id"]] = row
        self.fresh[entry["id"]] = (row, from_text(text))
        self._results.append({"id": entry["id"], "settled": "entered"})

    def _put_aside(self, entry: object, text: str, settled: str, problems: list[Problem]) -> None:
        said = entry if isinstance(entry, dict) else {}
        text, kept = text or _ascii_text(entry), [keep_problem(problem) for problem in problems]
        self._aside.append({
            "id": _short_text(said.get("id")), "device": _short_text(said.get("device")),
            "seq": _counter(said.get("seq")), "settled": settled, "body": text, "body_sha256": log.sha256(text),
            "problems": json.dumps(kept), "received_at": self._received_at, "via": self._handed.how,
        })
        told = [with_words(one, ENGLISH, self._house) for one in kept]
        self._results.append({"id": _short_text(said.get("id")), "settled": settled, "problems": told})

    def _note_counter(self, entry: object) -> None:
        # One that is put aside has been seen too: the phone need not offer it again to close a gap.
        if isinstance(entry, dict):
            device, seq = _short_text(entry.get("device")), _counter(entry.get("seq"))
            if device and seq and (device != DESK or self._is_desk):
                self.named.add(device)
                self._seen.setdefault(device, []).append(seq)

    def _skew_of(self, device: str) -> float:
        """Return the skew of the clock that an entry's times were read from: the last known one, where another phone
        carries it.
        """
        if device not in self._skews:
            self._skews[device] = devices.last_skew(self.book, device)
        return self._skews[device]

    def _finished(
        self, result: Result, outcomes: Mapping[str, Outcome], asked: Mapping[str, list[SentQuestion]]
    ) -> Result:
        entry_id = result["id"] or ""
        known = self._known.get(entry_id)
        if result["settled"] == "refused" or not known:
            return result
        result["book_no"], result["digest"] = known["book_no"], known["digest"]
        result["received_at"] = known["received_at"]
        if result["settled"] == "known" and entry_id in asked:
            # The phone that asks again may have missed the first receipt, and what the book asked in it.
            result["queries"] = asked[entry_id]
            return result
        outcome = outcomes.get(entry_id)
        if result["settled"] == "entered" and outcome:
            queries = [
                as_sent(entry_id, name, query, self._house)
                for name, query, answer in outcome.questions if not answer
            ]
            if queries:
                result["settled"], result["queries"] = "queried", queries
        return result


def _ascii_text(entry: object) -> str:
    """Return JSON in ASCII, which UTF-8 and SQLite can hold whatever was sent; parts nested too deep are named only."""
    try:
        return json.dumps(entry, sort_keys=True)
    except RecursionError:
        parts = entry.items() if isinstance(entry, dict) else ()
        return json.dumps({k: v if isinstance(v, str | int | float) else "(nested too deep)" for k, v in parts})


def _short_text(value: object) -> str | None:
    if not isinstance(value, str) or not value or not value.isprintable():
        return None
    return value[:60]


def _counter(value: object) -> int | None:
    return value if isinstance(value, int) and not isinstance(value, bool) and 1 <= value <= SEQ_MOST else None
