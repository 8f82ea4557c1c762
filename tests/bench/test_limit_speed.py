"""What a limit of the whole site costs: the change itself, the longest slice, and how long a hand-in waits meanwhile.

The server's own upkeep works it off in a thread beside the one that hands in, as it does in a server. BOOK_SIZES sets
other sizes; above 100,000 it is left out, for it takes as many minutes as there are hundred thousands.
"""

from __future__ import annotations

import os
import threading
import time
from collections.abc import Iterator
from contextlib import contextmanager
from itertools import islice
from pathlib import Path
from typing import Any

import pytest

from tests.bench.book_season import entries, fill_house
from tests.bench.table import Measured
from tests.bench.test_book_speed import START, STEP_S, send
from webapp.book.fold import unjudged
from webapp.book.house.check_limits import set_check_limit
from webapp.book.opening import open_book
from webapp.book.record.store import Book
from webapp.keeping import upkeep

pytestmark = [pytest.mark.bench, pytest.mark.timeout(7200)]
SIZES = [n for n in map(int, os.environ.get("BOOK_SIZES", "10000,100000").split(",")) if 10_000 <= n <= 100_000]
HAND_IN_EVERY_S = 1.0


@contextmanager
def slices_timed(monkeypatch: pytest.MonkeyPatch) -> Iterator[list[tuple[float, float]]]:
    """How long each slice holds the write door, its commit included: by the wall, and of its own processor time. [s]"""
    took: list[tuple[float, float]] = []

    def work(book: Book, plain: Any = unjudged.judge_slice) -> bool:
        with book.write():
            wall, cpu = time.perf_counter(), time.thread_time()
            left = plain(book)
        took.append((time.perf_counter() - wall, time.thread_time() - cpu))
        return bool(left)

    with monkeypatch.context() as patch:
        patch.setattr(unjudged, "judge_slice", work)
        yield took


def timed(run: Any) -> float:
    begun = time.perf_counter()
    run()
    return time.perf_counter() - begun


def test_a_limit_of_the_whole_site(tmp_path: Path, measured: Measured, monkeypatch: pytest.MonkeyPatch) -> None:
    with open_book(tmp_path / "book.db") as book:
        stream = entries(fill_house(book), START, STEP_S)
        size = 0
        for wanted in SIZES:
            while size < wanted:
                send(book, some := list(islice(stream, min(200, wanted - size))))
                size += len(some)
            alone = [timed(lambda: send(book, list(islice(stream, 1)))) for _ in range(20)]
            # Strengths in runs that rise, and gauges against their sum: it asks many entries otherwise than before.
            with slices_timed(monkeypatch) as slices:
                change = timed(lambda: set_check_limit(book, "site", "", "slope_pct", 30.0, "JK"))
                left, begun, waits = unjudged.count_left(book), time.perf_counter(), []
                ended = threading.Event()
                thread = upkeep.start_upkeep(book, ended)
                while unjudged.count_left(book):
                    waits.append(timed(lambda: send(book, list(islice(stream, 1)))))
                    time.sleep(HAND_IN_EVERY_S)
                total = time.perf_counter() - begun
                ended.set()
                thread.join()
            size += len(alone) + len(waits)
            room = f"a limit of the whole site, book of {wanted:,} entries"
            measured.add(room, "the change itself", change, "s", at_most=1.0)
            measured.add(room, "longest slice inside the write door", max(wall for wall, _ in slices), "s", at_most=1.0)
            measured.add(room, "the same, of processor time", max(cpu for _, cpu in slices), "s", at_most=1.0)
            measured.add(room, "one more entry meanwhile, longest", max(waits), "s", at_most=2.0)
            measured.add(room, "one more entry before, longest", max(alone), "s")
            measured.add(room, "until all is judged", total, "s")
            measured.add(room, "slices", len(slices), "")
            measured.add(room, "all slices, of processor time", sum(cpu for _, cpu in slices), "s")
            measured.add(room, "entries left after the change itself", left, "")
