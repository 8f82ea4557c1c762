"""The registry as the fold sees it: read once, held in memory, and forgotten when it changes."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from webapp.book.fold import registry_rows
from webapp.book.fold.registry_rows import Known
from webapp.book.house import people, registry
from webapp.book.opening import open_book
from webapp.book.record.store import Book
from webapp.trade.marks import make_mark

CASKS = {  # base of the mark: place, wood, use
    "C1": ("CELL-A1", "oak", "used"), "C2": ("LOFT-J1", "ash", "new"), "C3": ("CELL-B2", "ash", "new"),
    "C4": ("CELL-A2", "oak", "new"), "C5": ("CELL-A3", "oak", "used"), "C6": ("LOFT-J2", "ash", "new"),
}


@pytest.fixture(scope="module")
def opened(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Book]:
    with open_book(Path(tmp_path_factory.mktemp("registry")) / "book.db") as book:
        for base, (place, wood, use) in CASKS.items():
            cask = {"mark": make_mark(base), "sort": "cask", "capacity_l": 225, "size_class": "barrel"}
            registry.put_vessel(book, {**cask, "place": place, "wood": wood, "use": use}, "JK")
        small = {"mark": make_mark("C7"), "sort": "cask", "capacity_l": 50, "size_class": "small", "place": "CELL-A1"}
        registry.put_vessel(book, small, "JK")
        registry.put_vessel(book, {"mark": make_mark("T1"), "sort": "tank", "capacity_l": 1000}, "JK")
        people.put_person(book, {"code": "NS", "name": "Noor S.", "roles": ["cellar hand"]}, "JK")
        yield book


@pytest.fixture
def known(opened: Book) -> Iterator[Known]:
    opened.memory.clear()
    with opened.write():
        yield Known(opened)


def asked_of(book: Book) -> list[str]:
    asked: list[str] = []
    book.db.conn.set_trace_callback(asked.append)
    return asked


def test_each_thing_is_read_once(opened: Book, known: Known) -> None:
    asked = asked_of(opened)
    try:
        for _ in range(3):
            cask = known.vessel(make_mark("C1"))
            assert cask is not None and known.vessel("X9-X") is None
            assert known.person("NS") is not None and known.person("XY") is None
            assert known.instrument("TH-1") is None
            assert known.site()["units"] == "metric" and known.limits() == {}
            assert len(known.like(cask, 3)) == 3
        assert len([sql for sql in asked if sql.startswith("SELECT")]) == 7
        assert len(known.like(cask, 2)) == 2
    finally:
        opened.db.conn.set_trace_callback(None)


def test_a_vessel_has_its_flags_as_true_and_false(opened: Book, known: Known) -> None:
    cask = known.vessel(make_mark("C1"))
    assert cask is not None
    assert {flag: cask[flag] for flag in registry_rows.VESSEL_FLAGS} == {  # type: ignore[literal-required]
        "in_zone": False, "curved": False, "retired": False,
    }
    opened.db.conn.execute("UPDATE vessels SET in_zone = 1, curved = 0, retired = 1 WHERE mark = ?", (cask["mark"],))
    try:
        opened.memory.clear()
        again = known.vessel(cask["mark"])
        assert again is not None
        assert (again["in_zone"], again["curved"], again["retired"]) == (True, False, True)
    finally:
        opened.db.conn.execute("UPDATE vessels SET in_zone = 0, retired = 0 WHERE mark = ?", (cask["mark"],))


def test_the_casks_most_like_one_come_first(opened: Book, known: Known) -> None:
    """C5 shares area, wood and use; C4 area and wood; C3 the area; the rest nothing, by name. C7 is of another size."""
    cask = known.vessel(make_mark("C1"))
    assert cask is not None
    assert [row["name"] for row in known.like(cask, 9)] == ["C5", "C4", "C3", "C2", "C6"]
    assert [row["name"] for row in known.like(cask, 2)] == ["C5", "C4"]
    opened.db.conn.execute("UPDATE vessels SET retired = 1 WHERE mark = ?", (make_mark("C5"),))
    try:
        opened.memory.clear()
        assert [row["name"] for row in known.like(cask, 2)] == ["C4", "C3"]
    finally:
        opened.db.conn.execute("UPDATE vessels SET retired = 0 WHERE mark = ?", (make_mark("C5"),))


def test_memory_is_bounded(opened: Book, known: Known, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(registry_rows, "VESSELS_HELD_MOST", 2)
    held = opened.memory.registry.vessels
    for name in ("X1", "X2"):
        known.vessel(name)
    assert list(held) == ["X1", "X2"]
    known.vessel("X2")
    assert list(held) == ["X1", "X2"]
    known.vessel("X3")
    assert list(held) == ["X3"]


def test_a_person_and_an_instrument_are_found_by_their_codes(opened: Book) -> None:
    registry.put_instrument(opened, {"id": "TH-1", "sort": "thermometer", "due_on": "2026-01-01"}, "JK")
    opened.memory.clear()
    with opened.write():
        known = Known(opened)
        found, person = known.instrument("TH-1"), known.person("NS")
    assert found is not None and (found["sort"], found["due_on"]) == ("thermometer", "2026-01-01")
    assert person is not None and person["name"] == "Noor S."


def test_a_site_has_a_default_of_each_setting(opened: Book) -> None:
    assert registry_rows.load_site(opened) == {
        "name": "", "units": "metric", "decimal_mark": ".", "height_m": None, "areas": [], "time_zone": "UTC",
    }
    registry.set_site(opened, {"height_m": 310, "units": "us"}, "JK")
    site = registry_rows.load_site(opened)
    assert (site["height_m"], site["units"], site["decimal_mark"]) == (310, "us", ".")


def test_limits_are_found_by_what_they_are_for(opened: Book) -> None:
    line = "INSERT INTO limits ({}) VALUES ({})"
    columns = {row["name"] for row in opened.query("PRAGMA table_info(limits)")}
    rows = [
        {"scope": "site", "key": "", "kind": "gauge", "field": "temp", "usual": "[1, 2]", "possible": "[0, 3]"},
        {"scope": "site", "key": "", "kind": "gauge", "field": "volume", "usual": "", "possible": "[0, null]"},
        {"scope": "sort", "key": "cask", "kind": "gauge", "field": "temp", "usual": "[5, 6]", "possible": ""},
    ]
    with opened.write() as database:
        for row in rows:
            assert set(row) <= columns, columns
            database.conn.execute(line.format(", ".join(row), ", ".join(f":{name}" for name in row)), row)
        found = registry_rows.load_limits(opened)
        database.conn.execute("DELETE FROM limits")
    assert found == {
        ("site", "", "gauge"): {"temp": {"usual": [1, 2], "possible": [0, 3]}, "volume": {"possible": [0, None]}},
        ("sort", "cask", "gauge"): {"temp": {"usual": [5, 6]}},
    }
