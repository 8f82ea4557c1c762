"""What the search costs: finding among a million entries, and each hand-in that keeps the index up.

`--bench` runs it; SEARCH_SIZES=10000,1000000 sets other sizes. As in test_trace_speed.py, entries and fills are put
straight into their tables; the index is kept up by the write door, as at a hand-in. Half of the entries have a remark
of four to nine words out of thirty and one of 20,000, which is far more than a house writes.
"""

from __future__ import annotations

import gc
import os
import random
import statistics
import time
from collections.abc import Callable, Iterator
from datetime import UTC, datetime, timedelta
from functools import partial
from itertools import islice
from pathlib import Path
from typing import Any

import pytest

from tests.bench.book_season import entries, fill_house
from tests.bench.table import Measured
from tests.bench.test_book_speed import send
from webapp import create_app
from webapp.book.house import people
from webapp.book.opening import open_book
from webapp.book.record.log import canonical
from webapp.book.record.search_tables import SOURCES
from webapp.book.record.store import Book
from webapp.book.search import keeping, near
from webapp.book.search.finding import find
from webapp.book.search.folding import read_wanted

pytestmark = [pytest.mark.bench, pytest.mark.timeout(7200)]
_SIZES = os.environ.get("SEARCH_SIZES") or os.environ.get("TRACE_SIZES", "1000,10000,100000")
SIZES = [int(size) for size in _SIZES.split(",")]
START = datetime(2000, 1, 1, tzinfo=UTC)
PASSWORD = "plum and pear and quince"
PART = 10_000
COMMON = (
    "plum", "pear", "apple", "cherry", "ferment", "cap", "pushed", "down", "foam", "smell", "clean", "warm", "cold",
    "leak", "head", "hoop", "stave", "tight", "replaced", "gasket", "hydrometer", "cracked", "crate", "rot", "wasps",
    "stirred", "evening", "round", "again", "yeast", "slow", "check",
)
# Marks whole, half and short; names; numbers; common and rare words, whole and half, one to three; and nothing.
TEXTS = (
    "C-014", "c14", "C 150", "c", "c-0", "F3", "12", "1", "4711", "Grower 17", "grow", "Farm 3, D-77", "R-12", "r-4",
    "B-26-1", "L-77", "D-100", "D-3141", "plum", "plu", "p", "ferment", "ferm", "fer", "hydrom", "leak head",
    "wasps cap foam", "cold clean warm cap", "rare77", "rare1", "rar", "plum rare123", "C014 leak", "noor", "TH-2",
    "zzzz", "plum zzzz", "nothing of the kind", "Harbour 7", "500000",
)
LOOKS = 5


def made_entries(many: int, chance: random.Random, marks: list[str]) -> Iterator[tuple[Any, ...]]:
    """Yield rows of the log: of a hundred, one load, one charge, one paper; half of the rest with a remark."""
    for n in range(1, many + 1):
        at = (START + timedelta(minutes=5 * n)).isoformat()
        kind, values, remark = "ferment_reading", {}, ""
        place = n % 100
        if place == 1:
            lot = f"Grower {n % 57} Farm {n % 7}, D-{n // 100}"
            kind, values = "fruit_intake", {"grower_lot": lot, "batch": f"B-{n // 100}", "material": "plum"}
        elif place == 2:
            kind, values = "charge", {"run_name": f"R-{n // 100}"}
        elif place == 3:
            kind, values = "dispatch", {"document": f"D-{n // 100}", "to_whom": f"Harbour {n % 97} Bond"}
        elif n % 2:
            words = [chance.choice(COMMON) for _ in range(chance.randrange(4, 10))]
            remark = " ".join([*words, f"rare{chance.randrange(20_000)}"])
        entry_id = f"{n:08x}-0000-7000-8000-000000000000"
        body = {
            "id": entry_id, "kind": kind, "kind_version": 1, "mark": marks[n % len(marks)], "read_at": at,
            "values": {name: {"raw": value} for name, value in values.items()}, "remark": remark, "reason": "",
        }
        about = (kind, 1, body["mark"], at, at, "NS", "", "d-one", n, canonical(body))
        yield (n, entry_id, *about, "", at, 0.0, "phone", "")


def write_book(book: Book, marks: list[str], many: int, chance: random.Random) -> float:
    """Put the entries in, and a fill for every twentieth; return what indexing took for each. [us]"""
    stream = made_entries(many, chance, marks)
    spent = 0.0

    def timed(book: Book) -> None:
        nonlocal spent
        begun = time.process_time()
        keeping.keep_up(book)
        spent += time.process_time() - begun

    book.before_commit = timed
    while rows := list(islice(stream, PART if book.one("SELECT 1 FROM entries LIMIT 1") else 1000)):
        with book.write() as database:
            places = ", ".join("?" * len(rows[0]))
            database.conn.executemany(f"INSERT INTO entries VALUES ({places})", rows)
            folded = [(row[1], row[1], f"{row[5]}|{row[1]}", row[4], "[]", "entered") for row in rows]
            database.conn.executemany("INSERT INTO folded VALUES (?, ?, ?, ?, ?, ?)", folded)
            fills = [
                (row[1], row[4], chance.choice(COMMON[:4]), f"B-{row[0] // 100}", f"L-{row[0] // 1000}", row[5], row[5])
                for row in rows if row[0] % 20 == 0
            ]
            database.conn.executemany("INSERT INTO fills VALUES (?, ?, ?, ?, ?, ?, ?)", fills)
    keeping.index_all(book)
    return spent / many * 1e6


def took_ms(run: Callable[[], object]) -> tuple[float, float]:
    """Return (by the wall, of the processor) [ms]."""
    wall, cpu = time.perf_counter(), time.thread_time()
    run()
    return (time.perf_counter() - wall) * 1000, (time.thread_time() - cpu) * 1000


@pytest.mark.parametrize("size", SIZES)
def test_finding_among_many(tmp_path: Path, measured: Measured, size: int) -> None:
    app = create_app(tmp_path)
    book = app.extensions["book"]
    sorts = fill_house(book, fermenters=50, casks=900)
    marks = [mark for some in sorts.values() for mark in some]
    with book.write():
        people.put_person(book, {"code": "MD", "name": "M. D.", "access": "office"}, "JK")
        people.set_password(book, "MD", PASSWORD)
    chance = random.Random(5)
    each_us = write_book(book, marks, size, chance)
    room = f"search, book of {size:,} entries"
    texts = [text for _ in range(LOOKS) for text in chance.sample(TEXTS, len(TEXTS))]
    _add(measured, room, "a search", texts, lambda text: find(book, read_wanted(text)), at_most=50)
    _add(measured, room, "what was meant", list(TEXTS), lambda text: near.suggest(book, read_wanted(text)))
    client = app.test_client()
    page = client.get("/sign-in").get_data(as_text=True)
    token = page.split('name="csrf_token"', 1)[1].split('value="', 1)[1].split('"', 1)[0]
    client.post("/sign-in", data={"code": "MD", "password": PASSWORD, "csrf_token": token})
    for what, path in (("the list under the box", "/desk/search/hits"), ("the page of results", "/desk/search")):
        asked = partial(client.get, path)
        _add(measured, room, what, texts, lambda text, asked=asked: asked(query_string={"q": text, "all": 1}))  # type: ignore[misc]
    measured.add(room, "indexing, for each entry, half of them with remarks", each_us, "us")
    sizes = book.one("SELECT sum(pgsize) AS size FROM dbstat WHERE name GLOB 'search_*'") if _has_dbstat(book) else None
    if sizes:
        measured.add(room, "index, for each entry", sizes["size"] / size, "bytes")
    book.close()


def _has_dbstat(book: Book) -> bool:
    return any(row[0] == "ENABLE_DBSTAT_VTAB" for row in book.db.conn.execute("PRAGMA compile_options"))


def _add(
    measured: Measured, room: str, what: str, texts: list[str], run: Callable[[str], object], **bound: float
) -> None:
    """Time each text, and keep the middle, the 95th of a hundred and the slowest. The bound is of processor time."""
    looks = sorted((*took_ms(partial(run, text)), text) for text in texts)
    walls, cpus = [wall for wall, _, _ in looks], sorted(cpu for _, cpu, _ in looks)
    at = int(len(looks) * 0.95)
    measured.add(room, f"{what}, p50 / by the wall", statistics.median(walls), "ms")
    measured.add(room, f"{what}, p95 / by the wall", walls[at], "ms")
    measured.add(room, f"{what}, p50", statistics.median(cpus), "ms of processor")
    row = measured.add(room, f"{what}, p95", cpus[at], "ms of processor", **bound)
    measured.add(room, f"{what}, slowest", cpus[-1], "ms of processor")
    print(f"{room}, {what}: the slowest are", ", ".join(f"{text} {cpu:.1f}" for _, cpu, text in sorted(
        looks, key=lambda look: -look[1])[:8]), "ms of processor")
    assert row.holds is not False, looks


@pytest.mark.parametrize("share", [0.0, 0.3])
def test_a_hand_in_is_not_slower_for_being_found(tmp_path: Path, measured: Measured, share: float) -> None:
    """The same entries into a book with the index and into one without, batch by batch in turn."""
    with open_book(tmp_path / "with.db") as one, open_book(tmp_path / "without.db") as other:
        with other.write() as database:
            for table, _, columns in SOURCES.values():
                for event in ("new", "gone", *(["other"] if columns else [])):
                    database.conn.execute(f"DROP TRIGGER search_{table}_{event}")
        other.before_commit = None
        marks = {"with": fill_house(one), "without": fill_house(other)}
        for room, size, rounds in (("hand-in in batches of 200", 200, 40), ("one entry at a time", 1, 400)):
            start = START + timedelta(days=8000 if size > 1 else 9000)  # one after the other: late entries cost more
            streams = {name: _with_remarks(entries(marks[name], start, 60, seed=size), share) for name in marks}
            spent: dict[str, list[float]] = {"with": [], "without": []}
            for n in range(rounds):
                for name, book in (("with", one), ("without", other))[:: 1 if n % 2 else -1]:
                    batch = list(islice(streams[name], size))
                    if size > 1:
                        gc.collect()
                    begun = time.process_time()
                    send(book, batch)
                    spent[name].append(time.process_time() - begun)
            with_, without = spent["with"], spent["without"]
            room = f"{room}, {share:.0%} with a remark: with the index to without"
            measured.add(room, "processor time, all", sum(with_) / sum(without), "")
            measured.add(room, "processor time, median", statistics.median(with_) / statistics.median(without), "")


def _with_remarks(stream: Iterator[dict[str, Any]], share: float) -> Iterator[dict[str, Any]]:
    chance = random.Random(9)
    for entry in stream:
        if chance.random() < share:
            entry["remark"] = " ".join(chance.choices(COMMON, k=7))
        yield entry
