"""Versions of a state: written as differences, a whole one now and then, read at any place. Checked by a plain list."""

from __future__ import annotations

import json
import random
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from webapp.book.fold import states
from webapp.book.fold.states import NEWEST, WHOLE_EVERY, Versions, load_before, load_before_each, load_newest
from webapp.book.opening import open_book
from webapp.book.record.store import Book
from webapp.kinds.key import Key, stored_key, vessel_key

KEY: Key = stored_key("v:T1-U")


@pytest.fixture(scope="module")
def opened(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Book]:
    with open_book(Path(tmp_path_factory.mktemp("versions")) / "book.db") as book:
        yield book


@pytest.fixture
def book(opened: Book) -> Iterator[Book]:
    opened.memory.clear()
    with opened.write() as database:
        database.conn.execute("DELETE FROM states")
        database.conn.execute("DELETE FROM touches")
        yield opened
    opened.memory.clear()


def state(n: int) -> Any:
    return {"holds": {"lpa_ul": n}, "recent": {"x": [str(m) for m in range(max(n - 20, 0), n)]}}


def write(versions: Versions, many: int) -> list[int]:
    """Write so many versions at places 01, 02, ...; return their depths."""
    depths = []
    for n in range(1, many + 1):
        before, depth = versions.before(KEY, f"{n:02d}")
        depths.append(versions.put(KEY, f"{n:02d}", before, depth, state(n)))
    return depths


def test_every_so_many_a_version_is_kept_whole(book: Book) -> None:
    versions = Versions(book)
    assert write(versions, 50) == [*range(24), *range(24), 0, 1]
    versions.flush()
    whole = [row["order_key"] for row in book.query("SELECT order_key FROM states WHERE whole ORDER BY order_key")]
    assert whole == ["01", "25", "49"] and WHOLE_EVERY == 24
    assert json.loads(book.query("SELECT body FROM states WHERE order_key = '25'")[0]["body"]) == state(25)


def test_a_state_is_read_at_any_place(book: Book) -> None:
    versions = Versions(book)
    write(versions, 50)
    places = [f"{n:02d}" for n in range(1, 52)]
    for n, place in enumerate(places):
        wanted = state(n) if n else None
        depth = (n - 1) % 24 if n else 0
        assert versions.before(KEY, place) == (wanted, depth), place
        assert load_before(book, KEY, place) == wanted
    assert load_newest(book, KEY) == state(50)
    asked = [(KEY, place) for place in (*places, NEWEST, NEWEST)] + [(stored_key("v:X"), "99")]
    assert load_before_each(book, asked) == {
        **{(KEY, place): state(n) for n, place in enumerate(places) if n}, (KEY, NEWEST): state(50),
    }
    assert load_before_each(book, []) == {}
    assert load_before(book, stored_key("v:X"), "99") is load_newest(book, stored_key("v:X")) is None


def test_what_vessels_hold_now(book: Book) -> None:
    versions = Versions(book)
    write(versions, 3)
    versions.flush()
    assert states.load_fill(book, "T1-U") == {"lpa_ul": 3}
    assert states.load_fill(book, "T2-U") is None
    assert states.load_fills(book, ["T1-U", "T2-U"]) == {"T1-U": {"lpa_ul": 3}, "T2-U": None}
    assert states.load_newest_of(book, [vessel_key("T1-U"), vessel_key("T2-U")]) == {KEY: state(3)}


def test_the_newest_is_read_from_memory_and_the_file_is_asked_once(book: Book) -> None:
    versions = Versions(book)
    write(versions, 30)
    versions.flush()
    book.memory.clear()
    asked: list[str] = []
    book.db.conn.set_trace_callback(asked.append)
    try:
        for _ in range(3):
            assert versions.before(KEY, "99") == (state(30), 5)
    finally:
        book.db.conn.set_trace_callback(None)
    assert len([sql for sql in asked if "body" in sql]) == 1


def test_a_version_that_waits_is_seen_like_one_that_is_written(book: Book) -> None:
    versions = Versions(book)
    assert versions.before(KEY, "05") == (None, 0)
    versions.put(KEY, "05", None, 0, state(5))
    assert book.query("SELECT * FROM states") == []
    row = versions.row(KEY, "05")
    assert row is not None and (row[:3], json.loads(row[3])) == ((KEY, "05", 1), state(5))
    assert versions.row(KEY, "04") is None
    assert versions.before(KEY, "05") == (None, 0), "just before its own place it was nothing"
    assert versions.before(KEY, "06") == (state(5), 0)
    versions.flush()
    kept = versions.row(KEY, "05")
    assert kept is not None and (tuple(kept[:3]), json.loads(kept[3])) == ((KEY, "05", 1), state(5))


def test_a_version_in_the_past_is_not_the_newest(book: Book) -> None:
    versions = Versions(book)
    versions.put(KEY, "05", None, 0, state(5))
    versions.put(KEY, "03", None, 0, state(3))
    versions.put(KEY, "05", state(3), 0, state(6))
    assert versions.before(KEY, "04") == (state(3), 0)
    assert versions.before(KEY, "99") == (state(6), 1)
    versions.flush()
    assert load_newest(book, KEY) == state(6)


def test_a_state_that_did_not_change_is_written_as_no_difference(book: Book) -> None:
    versions = Versions(book)
    versions.put(KEY, "01", None, 0, state(1))
    assert versions.put(KEY, "02", state(1), 0, state(1)) == 1
    versions.flush()
    assert book.query("SELECT body FROM states WHERE order_key = '02'") == [{"body": '{"d": {}}'}]
    assert load_newest(book, KEY) == state(1)


def test_texts_are_kept_as_they_are_written(book: Book) -> None:
    versions = Versions(book)
    versions.put(KEY, "01", None, 0, {"holds": {"what": "Zwätschge"}})  # type: ignore[arg-type]
    versions.flush()
    assert "Zwätschge" in book.query("SELECT body FROM states")[0]["body"]


def test_a_version_that_is_dropped_gives_way_to_the_one_before(book: Book) -> None:
    versions = Versions(book)
    versions.put(KEY, "01", None, 0, state(1))
    versions.put(KEY, "02", state(1), 0, state(2))
    versions.put(stored_key("v:T2-X"), "02", None, 0, state(7))
    versions.drop(KEY, "02")
    assert versions.before(KEY, "99") == (state(1), 0)
    assert versions.before(stored_key("v:T2-X"), "99") == (state(7), 0)
    versions.drop(KEY, "00")
    assert versions.before(KEY, "99") == (state(1), 0)
    versions.drop(KEY, "01")
    assert versions.before(KEY, "99") == (None, 0) and load_newest(book, KEY) is None


def test_who_touches_a_key_next(book: Book) -> None:
    versions = Versions(book)
    for place in ("01", "05", "03"):
        versions.touch(KEY, place)
    versions.touch("v:T2-X", "09")
    versions.flush()
    assert [versions.touched_after(KEY, place) for place in ("00", "01", "02", "04", "05", "99")] == [
        "01", "03", "03", "05", None, None,
    ]
    versions.untouch(KEY, "03")
    assert versions.touched_after(KEY, "01") == "05"
    versions.untouch(KEY, "05")
    assert versions.touched_after(KEY, "01") is None
    book.memory.clear()
    assert versions.touched_after(KEY, "00") == "01", "and so it is read from the file"
    assert versions.touched_after("v:X", "00") is None


def test_what_memory_lets_go_is_read_again(book: Book, monkeypatch: pytest.MonkeyPatch) -> None:
    """A bound on the memory: the tenth part that was asked for first goes."""
    monkeypatch.setattr(states, "TAILS_MOST", 20)
    versions = Versions(book)
    keys = [stored_key(f"v:T{n}") for n in range(20)]
    for n, key in enumerate(keys):
        versions.put(key, "01", None, 0, state(n))
    assert list(book.memory.tails) == keys
    versions.put(stored_key("v:new"), "01", None, 0, state(99))
    assert list(book.memory.tails) == [*keys[2:], "v:new"]
    assert versions.before(keys[0], "99") == (state(0), 0)
    assert len(book.memory.tails) == 20


def test_versions_written_in_any_order_read_as_a_list_of_them(book: Book) -> None:
    """Places at random, written, written again and taken out: what is read is what a list of all would say."""
    chance = random.Random(3)
    for _ in range(6):
        versions, plain = Versions(book), {}
        place = 0
        for _ in range(60):  # in the order of the fold, as a replay does
            place += chance.randrange(1, 3)
            name = f"{place:03d}"
            before, depth = versions.before(KEY, name)
            assert before == plain.get(max((one for one in plain if one < name), default=""))
            plain[name] = state(chance.randrange(1000))
            versions.put(KEY, name, before, depth, plain[name])
        last = max(plain)
        if chance.random() < 0.5:
            versions.drop(KEY, last)
            del plain[last]
        versions.flush()
        for name in (f"{n:03d}" for n in range(0, place + 2, 7)):
            assert load_before(book, KEY, name) == plain.get(max((one for one in plain if one < name), default=""))
        assert load_newest(book, KEY) == plain[max(plain)]
        book.db.conn.execute("DELETE FROM states")
        book.memory.clear()
