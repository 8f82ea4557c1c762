"""What the fold costs of processor time, without a server: in order, dealt out over fifty phones at once, and anew.

Ratios within one run are what counts. FOLD_ENTRIES sets how many entries.
"""

from __future__ import annotations

import os
import time
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from datetime import UTC, datetime, timedelta
from itertools import islice
from pathlib import Path
from typing import Any

import pytest

from tests.bench.book_season import fill_house, plausible
from tests.bench.table import Measured
from tests.bench.test_book_speed import send, timed
from webapp.book.fold import fold, unjudged
from webapp.book.intake import hand_in
from webapp.book.opening import open_book
from webapp.book.record.line import Line, Turn
from webapp.book.record.store import Book

pytestmark = [pytest.mark.bench, pytest.mark.timeout(3600)]
ENTRIES = int(os.environ.get("FOLD_ENTRIES", "6000"))
PHONES, SHIFT_H = 50, 8
START = datetime(2025, 9, 1, 6, tzinfo=UTC)


class _TimedLine(Line[Turn]):
    """A line that keeps how long its groups held the door. [s of processor time]"""

    took_s: list[float]

    def _serve(self, group: list[Turn], serve: Callable[[list[Turn]], None]) -> None:
        begun_s = time.thread_time()
        super()._serve(group, serve)
        self.took_s.append(time.thread_time() - begun_s)


def test_fifty_phones_to_the_same_entries_in_order(tmp_path: Path, measured: Measured) -> None:
    room = f"{PHONES} phones at once, {ENTRIES // PHONES} plausible entries each, no server, of processor time"
    with open_book(tmp_path / "order.db") as book:
        some = _shift(book)
        order_s = timed(lambda: [send(book, some[at : at + 200]) for at in range(0, len(some), 200)])[1]
    with open_book(tmp_path / "dealt.db") as book:
        some = _shift(book)
        line: Any = _TimedLine(*(getattr(book.line, name) for name in ("_most", "_most_s") if hasattr(book.line, name)))
        book.line, line.took_s = line, []
        dealt_s = timed(lambda: _hand_in_at_once(book, [some[n::PHONES] for n in range(PHONES)]))[1]
        slices: list[float] = []
        while unjudged.count_left(book):
            slices.append(timed(lambda: unjudged.judge_slice(book))[1])
        before = fold.dump(book)
        anew_s = timed(lambda: fold.rebuild(book))[1]
        assert fold.dump(book) == before
    measured.add(room, "in order", ENTRIES / order_s, "entries/s")
    measured.add(room, "until all are handed in, times the same in order", dealt_s / order_s, "", at_most=1.5)
    measured.add(room, "until all is judged, times the same in order", (dealt_s + sum(slices)) / order_s, "")
    measured.add(room, "the longest group", max(line.took_s), "s", at_most=0.3)
    measured.add(room, "the longest slice", max(slices, default=0.0), "s", at_most=0.3)
    measured.add(room, "folded anew", ENTRIES / anew_s, "entries/s")


def _shift(book: Book) -> list[dict[str, Any]]:
    return list(islice(plausible(fill_house(book), START, SHIFT_H * 3600 / ENTRIES), ENTRIES))


def _hand_in_at_once(book: Book, stories: list[list[dict[str, Any]]]) -> None:
    """Hand in by a thread for each phone, all at once, in batches of 200."""
    now = START + timedelta(hours=SHIFT_H, minutes=1)

    def tell(phone: int, story: list[dict[str, Any]]) -> None:
        device = f"d-p{phone:03d}"
        story = [{**entry, "device": device, "seq": seq} for seq, entry in enumerate(story, 1)]
        for at in range(0, len(story), 200):
            batch = {"now": now.isoformat(), "device": device, "entries": story[at : at + 200]}
            given = hand_in(book, batch, via="phone", now=now)
            assert {result["settled"] for result in given["results"]} <= {"entered", "queried"}

    with ThreadPoolExecutor(PHONES) as threads:
        for done in [threads.submit(tell, phone, story) for phone, story in enumerate(stories)]:
            done.result()
