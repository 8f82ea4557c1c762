"""What a desk page takes in a house of 100,000 vessels."""

from __future__ import annotations

import random
import time
from collections.abc import Callable
from datetime import UTC, datetime
from itertools import islice
from pathlib import Path

import pytest
from flask import Flask

from tests.bench.book_season import entries, fill_house
from tests.bench.table import Measured
from tests.bench.test_book_speed import send
from webapp import create_app
from webapp.book.house import people, registry
from webapp.trade.marks import BadMark, make_mark

pytestmark = [pytest.mark.bench, pytest.mark.timeout(1800)]
VESSELS, ENTRIES, LOOKS = 100_000, 5_000, 300
PASSWORD = "plum and pear and quince"


@pytest.fixture(scope="module")
def house(tmp_path_factory: pytest.TempPathFactory) -> tuple[Flask, list[str], list[str]]:
    """A book of 100,000 vessels; the marks of those that were worked with, and of some that were not."""
    folder: Path = tmp_path_factory.mktemp("many")
    app = create_app(folder)
    book = app.extensions["book"]
    marks = fill_house(book)
    idle = []
    with book.write():
        number = 0
        while len(idle) < VESSELS:
            number += 1
            try:
                idle.append(make_mark(f"Q{number:06d}"))
            except BadMark:
                continue
            registry.put_vessel(book, {"mark": idle[-1], "sort": "cask", "capacity_l": 225, "place": "LOFT"}, "JK")
        people.put_person(book, {"code": "MD", "name": "M. D.", "access": "distiller"}, "JK")
        people.set_password(book, "MD", PASSWORD)
    stream = entries(marks, datetime(2025, 1, 1, tzinfo=UTC), 60)
    for _ in range(0, ENTRIES, 200):
        send(book, list(islice(stream, 200)))
    return app, [mark for sort in marks.values() for mark in sort], idle


def test_a_vessels_page_among_a_hundred_thousand(house: tuple[Flask, list[str], list[str]], measured: Measured) -> None:
    app, used, idle = house
    client = app.test_client()
    page = client.get("/sign-in").get_data(as_text=True)
    token = page.split('name="csrf_token"', 1)[1].split('value="', 1)[1].split('"', 1)[0]
    client.post("/sign-in", data={"code": "MD", "password": PASSWORD, "csrf_token": token})
    chance = random.Random(1)
    marks = [chance.choice(used if n % 2 else idle) for n in range(LOOKS)]
    room = f"desk, {VESSELS:,} vessels"

    def p95(get: Callable[[str], str]) -> float:
        took = []
        for mark in marks:
            begun = time.perf_counter()
            answer = client.get(get(mark))
            took.append((time.perf_counter() - begun) * 1000)
            assert answer.status_code == 200, answer.get_data(as_text=True)[:300]
        return sorted(took)[int(len(took) * 0.95)]

    measured.add(room, "list of vessels, one looked for, p95", p95(lambda mark: f"/desk/vessels?find={mark}"), "ms")
    client.get("/desk/")  # what stands in the vessels is read once, then what has changed
    assert measured.add(room, "the page of the day, p95", p95(lambda mark: "/desk/"), "ms", at_most=50).holds
    assert measured.add(room, "a vessel's page, p95", p95(lambda mark: f"/desk/vessels/{mark}"), "ms", at_most=50).holds
