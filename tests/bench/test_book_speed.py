"""What the book costs: hand-in with checks and fold, one more entry, a day-late batch, as the book grows.

Ratios within one run are what counts; the machine is whatever it is. `--bench` runs it; BOOK_SIZES=1000,1000000 sets
other sizes.
"""

from __future__ import annotations

import gc
import os
import sqlite3
import statistics
import time
from contextlib import closing
from datetime import UTC, datetime, timedelta
from itertools import islice
from pathlib import Path
from typing import Any

import pytest

from tests.bench.book_season import entries, fill_house
from tests.bench.table import Measured
from webapp.book.intake import hand_in
from webapp.book.opening import open_book
from webapp.book.record.log import canonical
from webapp.book.record.store import Book

pytestmark = [pytest.mark.bench, pytest.mark.timeout(7200)]
SIZES = [int(size) for size in os.environ.get("BOOK_SIZES", "1000,10000,100000").split(",")]
START = datetime(2025, 1, 1, tzinfo=UTC)
STEP_S = 60
HAND_INS = 10_000


def send(book: Book, batch: list[dict[str, Any]]) -> None:
    now = max(datetime.fromisoformat(entry["read_at"]) for entry in batch) + timedelta(minutes=1)
    given = hand_in(book, {"now": now.isoformat(), "device": "d-aaaa", "entries": batch}, via="phone", now=now)
    assert all(result["settled"] in ("entered", "queried") for result in given["results"])


def timed(run: Any) -> tuple[float, float]:
    """Return (by the wall, of this process) [s]."""
    gc.collect()
    wall, cpu = time.perf_counter(), time.process_time()
    run()
    return time.perf_counter() - wall, time.process_time() - cpu


def memory_mb() -> float:
    """Return what this process holds in memory now. [MB]; 0 where the system does not say"""
    gc.collect()
    statm = Path("/proc/self/statm")
    return int(statm.read_text().split()[1]) * os.sysconf("SC_PAGE_SIZE") / 1e6 if statm.exists() else 0.0


def raw_inserts(path: Path, some: list[dict[str, Any]]) -> float:
    """Entries a second of SQLite alone: the same bodies, the same batches, one table with an id. [1/s]"""
    with closing(sqlite3.connect(path, isolation_level=None)) as conn:
        conn.execute("PRAGMA journal_mode = WAL")
        conn.execute("PRAGMA synchronous = FULL")
        conn.execute("CREATE TABLE entries (book_no INTEGER PRIMARY KEY, id TEXT UNIQUE, body TEXT)")

        def run() -> None:
            for at in range(0, len(some), 200):
                conn.execute("BEGIN IMMEDIATE")
                lines = [(entry["id"], canonical(entry)) for entry in some[at : at + 200]]
                conn.executemany("INSERT INTO entries (id, body) VALUES (?, ?)", lines)
                conn.execute("COMMIT")

        return len(some) / timed(run)[0]


def test_hand_in_of_ten_thousand(tmp_path: Path, measured: Measured) -> None:
    with open_book(tmp_path / "book.db") as book:
        some = list(islice(entries(fill_house(book), START, STEP_S), HAND_INS))
        batches = [some[at : at + 200] for at in range(0, HAND_INS, 200)]
        send(book, batches[0])
        memory_before = memory_mb()
        wall, cpu = timed(lambda: [send(book, batch) for batch in batches[1:]])
        memory_after = memory_mb()
    many = HAND_INS - 200
    raw = raw_inserts(tmp_path / "raw.db", some)
    room = "hand-in of 10,000 in batches of 200, checks and fold included"
    measured.add(room, "by the wall", many / wall, "entries/s", at_least=2000)
    measured.add(room, "of processor time", many / cpu, "entries/s")
    measured.add(room, "SQLite alone with the same bodies and batches: times as many", raw * wall / many, "to 1")
    measured.add(room, "memory after all, above that after the first batch", memory_after - memory_before, "MB")


def test_one_more_entry_and_a_late_day_as_the_book_grows(tmp_path: Path, measured: Measured) -> None:
    print(f"\n{'entries':>9} {'one more, ms':>13} {'ratio':>6} {'processor ms':>13} {'ratio':>6} {'500 late, s':>12} "
          f"{'processor s':>12} {'file, MB':>9}")
    first: tuple[float, float] | None = None
    with open_book(tmp_path / "book.db") as book:
        marks = fill_house(book)
        stream = entries(marks, START, STEP_S)
        size = 0
        for wanted in SIZES:
            while size < wanted:
                send(book, some := list(islice(stream, min(200, wanted - size))))
                size += len(some)
            ones = [timed(lambda: send(book, list(islice(stream, 1)))) for _ in range(40)]
            wall, cpu = (statistics.median(one[n] for one in ones) * 1000 for n in (0, 1))
            first = first or (wall, cpu)
            # A phone that lay in a drawer for a day: 500 readings among those of the others.
            day_ago = START + timedelta(seconds=STEP_S * size) - timedelta(days=1)
            late = list(islice(entries(marks, day_ago, STEP_S, seed=1000 + wanted), 500))
            parts = [late[:200], late[200:400], late[400:]]
            late_wall, late_cpu = timed(lambda parts=parts: [send(book, part) for part in parts])  # type: ignore[misc]
            room = f"book of {size - 40:,} entries"
            bounds = {"at_most": 1.5} if size > 900_000 else {}
            measured.add(room, f"one more entry, times that at {SIZES[0]:,}", wall / first[0], "", **bounds)
            measured.add(room, "500 entries a day late", late_wall, "s", at_most=2.0)
            size += 540
            print(f"{size - 540:9} {wall:13.2f} {wall / first[0]:6.2f} {cpu:13.2f} {cpu / first[1]:6.2f} "
                  f"{late_wall:12.2f} {late_cpu:12.2f} {book.path.stat().st_size / 1e6:9.1f}")
