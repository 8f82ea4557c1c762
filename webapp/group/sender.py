"""The site's side: hand in the rows that the group lacks. Nothing is remembered here but the way to the group.

The group says how far it has this book; so a lost answer, a restored group or a restored book all come right by
themselves: ask, find the last number that both have alike, hand in from there.
"""

from __future__ import annotations

import gzip
import json
import logging
import threading
from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import UTC, datetime
from typing import Any, Protocol, TypedDict

from webapp.book.fold.registry_rows import load_site
from webapp.book.intake import BATCH_MOST, book_id
from webapp.book.record import log
from webapp.book.record.clock import utc_text
from webapp.book.record.errors import BookError
from webapp.book.record.store import Book
from webapp.group.parts import digest_of, read_registry
from webapp.keeping.witnesses import GROUP, Witnesses

EVERY_S = 60.0
SETTLED = ("entered", "known", "clash")
_log = logging.getLogger("cellarslate.group")


class Row(TypedDict):
    """A row of the log as it is handed in."""

    book_no: int
    body: str
    received_at: str
    skew_s: float
    via: str
    digest: str


class Changed(TypedDict):
    """A row of the registry that the group has otherwise, or has and this book has not."""

    sort: str
    key: str
    body: str | None


class NoAnswer(Exception):
    """The group is out of reach, or what answered is not the group. The site goes on alone."""


class Carrier(Protocol):
    """What brings a message to the group and its answer back: (status, body). Raises NoAnswer."""

    def ask(self, method: str, path: str, body: bytes | None = None) -> tuple[int, bytes]: ...


@dataclass
class Report:
    """The counts of one round of hand-in."""

    entries: int = 0
    registry: int = 0
    cursor: int = 0
    head: int = 0
    troubles: list[str] = field(default_factory=list)

    @property
    def words(self) -> str:
        """The counts in one line."""
        done = f"The group has {self.cursor} of {self.head} entries; {self.entries} were handed in now."
        return " ".join([done, *dict.fromkeys(self.troubles)])


def send(
    book: Book, carrier: Carrier, *, batch_most: int = BATCH_MOST, witnesses: Witnesses | None = None
) -> Report:
    """Hand in all rows that the group lacks, with the book's signed heads; take back those that it was shown last.

    Raises NoAnswer where the group cannot be reached; nothing is lost by that.
    """
    return _Round(book, carrier, batch_most, witnesses).run()


class _Round:
    def __init__(self, book: Book, carrier: Carrier, batch_most: int, witnesses: Witnesses | None) -> None:
        self._book, self._carrier, self._size, self._witnesses = book, carrier, batch_most, witnesses
        self._id = book_id(book)
        self.report = Report()

    def run(self) -> Report:
        place = self._ask(f"/api/group/place?book_id={self._id}")
        if self._witnesses:
            self._witnesses.take(GROUP, place.get("heads"), datetime.now(UTC))
        cursor = self._common(place)
        self._send_registry(str(place.get("registry_digest")))
        while rows := self._rows(cursor):
            answer = self._hand_in(rows, [])
            settled = [result["settled"] for result in answer["results"]]
            self.report.entries += len(settled) - settled.count("known") - settled.count("gap")
            if answer.get("trouble"):
                self.report.troubles.append(str(answer["trouble"]))
            if not all(one in SETTLED for one in settled):
                break  # It stands; a person has to look. The next round tries again.
            cursor = rows[-1]["book_no"]
        else:
            answer = self._hand_in([], [])
            if answer.get("trouble"):
                self.report.troubles.append(str(answer["trouble"]))
        self.report.cursor, self.report.head = int(answer["cursor"]), log.load_head(self._book)[0]
        return self.report

    def _common(self, place: Mapping[str, Any]) -> int:
        """Return the last number at which this book and the group's have the same digest."""
        low, high = 0, min(int(place["cursor"]), log.load_head(self._book)[0])
        if high == place["cursor"] and self._digest(high) == place["digest"]:
            return high
        if self._is_alike(high):
            return high
        while high - low > 1:
            middle = (low + high) // 2
            if self._is_alike(middle):
                low = middle
            else:
                high = middle
        return low

    def _is_alike(self, number: int) -> bool:
        asked = f"/api/group/place?book_id={self._id}&at={number}"
        return number == 0 or bool(self._ask(asked)["at"] == self._digest(number))

    def _digest(self, number: int) -> str:
        row = self._book.one("SELECT digest FROM entries WHERE book_no = ?", (number,))
        return str(row["digest"]) if row else log.FIRST_DIGEST

    def _rows(self, after: int) -> list[Row]:
        return self._book.rows(
            Row,
            "SELECT book_no, body, received_at, skew_s, via, digest FROM entries WHERE book_no > ? "
            "ORDER BY book_no LIMIT ?",
            (after, self._size),
        )

    def _send_registry(self, held_digest: str) -> None:
        mine = read_registry(self._book)
        if digest_of(mine) == held_digest:
            return
        listed = self._ask(f"/api/group/registry?book_id={self._id}")["rows"]
        held = {(sort, key): sha for sort, key, sha in listed}
        changed: list[Changed] = [
            {"sort": sort, "key": key, "body": body}
            for (sort, key), body in sorted(mine.items())
            if held.get((sort, key)) != log.sha256(body)
        ]
        changed += [Changed(sort=sort, key=key, body=None) for sort, key in sorted(held.keys() - mine.keys())]
        for at in range(0, len(changed), self._size):
            self._hand_in([], changed[at : at + self._size])
        self.report.registry = len(changed)

    def _hand_in(self, rows: list[Row], items: list[Changed]) -> dict[str, Any]:
        batch = {
            "now": utc_text(datetime.now(UTC)), "book_id": self._id, "name": load_site(self._book)["name"],
            "head": log.load_head(self._book), "entries": rows, "registry": items,
            "heads": self._witnesses.give(datetime.now(UTC)) if self._witnesses else [],
        }
        status, body = self._carrier.ask("POST", "/api/hand-in", gzip.compress(json.dumps(batch).encode(), 3))
        if status == 413 and len(rows) + len(items) > 1:
            half = (len(rows) + 1) // 2, (len(items) + 1) // 2
            first = self._hand_in(rows[: half[0]], items[: half[1]])
            second = self._hand_in(rows[half[0] :], items[half[1] :])
            return second | {"results": first["results"] + second["results"]}
        answer = _ours(status, body)
        results, ids = answer.get("results"), [json.loads(row["body"])["id"] for row in rows]
        if not isinstance(results, list) or not isinstance(answer.get("cursor"), int):
            raise NoAnswer("What answered is not the group's server. Look at its address.")
        # One result an entry, in order. A row that could not be read has no id to come back with.
        if len(results) != len(ids) or any(r.get("id") not in (i, None) for r, i in zip(results, ids, strict=True)):
            raise NoAnswer("The group's answer does not fit what was handed in. It is handed in again.")
        return answer

    def _ask(self, path: str) -> dict[str, Any]:
        return _ours(*self._carrier.ask("GET", path))


def _ours(status: int, body: bytes) -> dict[str, Any]:
    """Return an answer of the group; raise NoAnswer for any other, with the group's own words where it gave some."""
    try:
        answer = json.loads(body)
    except ValueError:
        answer = None
    if not isinstance(answer, dict) or answer.get("marker") != "cellarslate":
        raise NoAnswer(f"What answered is not the group's server (status {status}). Look at its address.")
    if status != 200 or not answer.get("ok"):
        raise NoAnswer(str(answer.get("error") or f"The group's server answered {status}."))
    return answer


class Sending(threading.Thread):
    """Hands in every so often beside the server; goes on alone when the group is out of reach, and catches up."""

    def __init__(
        self, book: Book, carrier: Carrier, every_s: float = EVERY_S, witnesses: Witnesses | None = None
    ) -> None:
        super().__init__(name="group sender", daemon=True)
        self._book, self._carrier, self._every_s, self._witnesses = book, carrier, max(every_s, 1.0), witnesses
        self._stopped = threading.Event()

    def run(self) -> None:
        said = ""
        while not self._stopped.is_set():
            try:
                words = " ".join(send(self._book, self._carrier, witnesses=self._witnesses).troubles)
            except (NoAnswer, BookError) as error:
                words = str(error)
            except Exception:  # what goes wrong here must not end the sending for good
                _log.exception("group sender")
                words = "failed"
            if words and words != said:
                _log.warning("group: %s", words)
            said = words
            self._stopped.wait(self._every_s)

    def stop(self) -> None:
        """End after the round under way."""
        self._stopped.set()
