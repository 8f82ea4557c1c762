"""A phone without a browser: it keeps what it logs until the book has answered for it by id, and tries again.

The rule is the product's (docs/hand-in.md): only one result per entry, in order, settles anything.
"""

from __future__ import annotations

import contextlib
import http.client
import json
import random
import threading
from collections import Counter
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any
from urllib.parse import urlsplit

from tests.book.stories import MAKERS, make_any
from webapp.book.house import devices
from webapp.book.opening import open_book

# The stories' moments count on from here. A season of one reading a second, nearly in order: so are real ones.
SEASON = datetime(2025, 9, 1, 6, 0, tzinfo=UTC)
TELL_OF = [name for name in MAKERS if name.split()[0] not in ("answer", "stranger")]


class PlainPhone:
    """One phone: `kept` is all that it ever logged, by id; `waiting` what no receipt has come for."""

    def __init__(self, url: str, device: str, secret: str, *, clock_off_s: float = 0.0, seed: int = 0) -> None:
        self.url, self.device, self.secret, self.clock_off_s = url, device, secret, clock_off_s
        self.kept: dict[str, dict[str, Any]] = {}
        self.waiting: list[str] = []
        self.receipts: dict[str, dict[str, Any]] = {}
        self.answers_missed = 0
        self.known_again = 0
        self.statuses: Counter[int] = Counter()
        self.last_error = ""
        self.seq = 0
        self.at_s = 0  # how far into the season this phone has got
        self._chance = random.Random(seed)
        self._unsure: set[str] = set()
        self.minds_head = False  # whether it looks for the head it had: phones of before did not
        self._head: list[Any] | None = None

    def log(self, count: int) -> None:
        """Log entries of every kind, one after the other; now and then one amends an earlier one."""
        for _ in range(count):
            self.seq += 1
            self.at_s += self._chance.randrange(1, 90)
            late = self._chance.randrange(600) if self._chance.random() < 0.05 else 0
            read_at = SEASON + timedelta(seconds=self.at_s - late + self.clock_off_s)
            more: dict[str, Any] = {}
            if self.kept and self._chance.random() < 0.04:
                more = {"amends": self._chance.choice(list(self.kept)[-50:]), "because": "misread"}
            entry = make_any(self._chance, read_at=read_at, device=self.device, seq=self.seq, **more)
            self.kept[entry["id"]] = entry
            self.waiting.append(entry["id"])

    def hand_in(self, most: int = 60, timeout_s: float = 20.0) -> bool:
        """Offer a batch once; say whether a receipt came. Whatever else comes settles nothing."""
        ids = self.waiting[:most]
        answer = self._ask("POST", "/api/hand-in", self._batch(ids), timeout_s)
        results = answer.get("results") if answer else None
        if not isinstance(results, list) or [one.get("id") for one in results] != ids:
            self.answers_missed += 1
            self._unsure |= set(ids)
            return False
        for one in results:
            assert one["settled"] in ("entered", "queried", "known"), one
            # Known, and no receipt had come: the book had written it down before the fault.
            self.known_again += one["settled"] == "known" and one["id"] in self._unsure
            self.receipts[one["id"]] = one
        self.waiting = self.waiting[len(ids) :]
        self._unsure -= set(ids)
        self.seq = max(self.seq, answer["devices"].get(self.device, {}).get("seen", 0))
        self._head = answer["head"]
        return True

    def hand_in_all(self, tries_most: int = 60) -> None:
        """Hand in until nothing waits."""
        for _ in range(tries_most + len(self.waiting)):
            if not self.waiting:
                return
            self.hand_in()
        raise AssertionError(f"{len(self.waiting)} entries of {self.device} still wait.")

    def offer_again(self) -> None:
        """Offer again what the book says that it has not seen, as a phone does after every answer."""
        answer = self._ask("POST", "/api/hand-in", self._batch([]), 20.0)
        assert answer
        waiting = set(self.waiting)
        if answer.get("has_head") is False:
            self.waiting += [one for one in self.kept if one not in waiting]
            return
        seen = answer["devices"][self.device]
        gone = {n for low, high in seen["gaps"] for n in range(low, high + 1)}
        self.waiting += [
            entry["id"]
            for entry in self.kept.values()
            if entry["id"] not in waiting and (entry["seq"] in gone or entry["seq"] > seen["seen"])
        ]

    def _batch(self, ids: list[str]) -> dict[str, Any]:
        now = datetime.now(UTC) + timedelta(seconds=self.clock_off_s)
        batch = {"now": now.isoformat(), "device": self.device, "entries": [self.kept[one] for one in ids]}
        return batch | ({"head": self._head} if self._head and self.minds_head else {})

    def _ask(self, method: str, path: str, body: dict[str, Any], timeout_s: float) -> dict[str, Any] | None:
        where = urlsplit(self.url)
        connection = http.client.HTTPConnection(str(where.hostname), where.port, timeout=timeout_s)
        headers = {"Content-Type": "application/json", "Cookie": f"cellarslate_device={self.secret}"}
        try:
            connection.request(method, path, json.dumps(body), headers)
            reply = connection.getresponse()
            said = json.loads(reply.read())
            self.statuses[reply.status] += 1
            self.last_error = said.get("error", "")
            return said if reply.status == 200 and said.get("marker") == "cellarslate" else None
        except (OSError, http.client.HTTPException, ValueError):
            return None
        finally:
            connection.close()


def let_in(
    book_path: Path, url: str, count: int, *, seed: int, clocks_s: tuple[float, ...] = (0.0,)
) -> list[PlainPhone]:
    """Return phones that are let in."""
    made = []
    with open_book(book_path) as book:
        for number in range(count):
            token = devices.new_token(book, "JK", f"PH-{number}")
            device, secret = devices.enrol_device(book, token, "", datetime.now(UTC))
            off_s = clocks_s[number % len(clocks_s)]
            made.append(PlainPhone(url, device["id"], secret, clock_off_s=off_s, seed=seed * 100 + number))
    return made


class Handing(threading.Thread):
    """A phone that logs and hands in without a pause until the line breaks."""

    def __init__(self, phone: PlainPhone, seed: int) -> None:
        super().__init__(daemon=True)
        self.phone, self._chance = phone, random.Random(seed)

    def run(self) -> None:
        """Go on until an answer fails to come."""
        with contextlib.suppress(OSError):
            while True:
                if len(self.phone.waiting) < 60:
                    self.phone.log(self._chance.randrange(1, 40))
                if not self.phone.hand_in(self._chance.randrange(1, 60)):
                    return
