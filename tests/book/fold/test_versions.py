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
    versions.flush()
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
    for _ in range(3):  # while it waits, when it is written, and when memory has let it go
        assert versions.at(KEY, "05", None) == (True, state(5))
        assert versions.at(KEY, "04", state(1)) == (False, state(1))
        assert versions.at(KEY, "06", state(5)) == (False, state(5))
        assert versions.before(KEY, "05") == (None, 0), "just before its own place it was nothing"
        assert versions.before(KEY, "06") == (state(5), 0)
        if book.query("SELECT * FROM states"):
            book.memory.clear()
        versions.flush()
    versions.drop(KEY, "05")
    assert versions.at(KEY, "05", state(1)) == (False, state(1)), "it is still in the file"
    assert versions.before(KEY, "99") == (None, 0)


def test_a_version_of_the_file_is_read_at_its_place_as_a_difference_to_what_it_was_before(book: Book) -> None:
    versions = Versions(book)
    write(versions, 3)
    versions.flush()
    book.memory.clear()
    assert versions.at(KEY, "01", None) == (True, state(1))
    assert versions.at(KEY, "03", state(2)) == (True, state(3))
    assert versions.at(KEY, "02x", state(2)) == (False, state(2))


def test_past_states_are_decoded_once(book: Book) -> None:
    """Places in the past are read again and again, as late entries do: each version comes from the file once."""
    versions = Versions(book)
    write(versions, 90)
    versions.flush()
    book.memory.clear()
    asked: list[str] = []
    book.db.conn.set_trace_callback(asked.append)
    chance = random.Random(2)
    try:
        for n in [chance.randrange(1, 91) for _ in range(300)]:
            assert versions.before(KEY, f"{n:02d}") == (state(n - 1) if n > 1 else None, (n - 2) % 24 if n > 1 else 0)
        before = len(asked)
        for n in range(1, 91):
            versions.before(KEY, f"{n:02d}")
    finally:
        book.db.conn.set_trace_callback(None)
    assert len([sql for sql in asked if "body" in sql]) <= 90
    assert len(asked) - before < 10, "what is known to lie side by side is not asked for"


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
    assert book.query("SELECT body FROM states WHERE order_key = '02'") == [{"body": '{"d":{}}'}]
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
    """A bound on the states in memory: the tenth part that was not asked for the longest time goes."""
    monkeypatch.setattr(states, "COURSES_MOST", 20)
    versions = Versions(book)
    keys = [stored_key(f"v:T{n}") for n in range(20)]
    for n, key in enumerate(keys):
        versions.put(key, "01", None, 0, state(n))
    assert list(book.memory.courses) == keys
    assert versions.before(keys[0], "99") == (state(0), 0)
    versions.put(stored_key("v:new"), "01", None, 0, state(99))
    assert list(book.memory.courses) == [*keys[3:], keys[0], "v:new"]
    assert versions.before(keys[1], "99") == (state(1), 0)
    assert book.memory.versions == len(book.memory.courses) == 20


def test_memory_holds_so_many_versions_and_no_more(book: Book, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(states, "VERSIONS_MOST", 100)
    versions = Versions(book)
    for n in range(1, 200):
        key = stored_key(f"v:T{n % 7}")
        before, depth = versions.before(key, f"{n:03d}")
        versions.put(key, f"{n:03d}", before, depth, state(n))
        assert book.memory.versions == sum(len(one.places) - 1 for one in book.memory.courses.values()) <= 100
    for n in range(8, 200):
        assert versions.before(stored_key(f"v:T{n % 7}"), f"{n:03d}")[0] == state(n - 7)


def test_a_long_course_lets_go_the_half_that_is_not_asked_for(book: Book, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(states, "COURSE_LONGEST", 40)
    versions = Versions(book)
    write(versions, 99)
    for n in [*range(99, 0, -1), *range(1, 100), 1, 99, 50]:
        assert versions.before(KEY, f"{n:02d}")[0] == (state(n - 1) if n > 1 else None)
        assert len(book.memory.courses[KEY].places) <= 65
    assert book.memory.versions == len(book.memory.courses[KEY].places) - 1


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


def test_late_versions_between_others_read_as_a_list_of_them(book: Book, monkeypatch: pytest.MonkeyPatch) -> None:
    """As late entries do it: one more version or one less somewhere, some that follow are other ones, then one is as it
    was. Memory is so small that it lets go all the time, and no chain of differences becomes long.
    """
    monkeypatch.setattr(states, "COURSE_LONGEST", 30)
    monkeypatch.setattr(states, "VERSIONS_MOST", 60)
    chance = random.Random(5)
    keys = [stored_key(f"v:T{n}") for n in range(3)]
    plain: dict[Key, dict[str, Any]] = {key: {} for key in keys}
    for _ in range(600):
        versions = Versions(book)
        key = chance.choice(keys)
        held, name = plain[key], f"{chance.randrange(1000):03d}"
        now, depth = versions.before(key, name)
        then = now
        assert now == held.get(max((one for one in held if one < name), default=""))
        follow = sorted(one for one in held if one > name)[: chance.randrange(1, 9)]
        for n, place in enumerate([name, *follow]):
            is_there, then = versions.at(key, place, then)
            assert (is_there, then) == (place in held, held.get(place, then))
            if is_there and n == 0 and chance.random() < 0.4:
                versions.drop(key, place)
                del held[place]
                continue
            is_last = place == follow[-1] if follow else False
            held[place] = then if is_last and then is not None else state(chance.randrange(1000))
            now, depth = held[place], versions.put(key, place, now, depth, held[place])
        versions.flush()
        if chance.random() < 0.1:
            book.memory.clear()
    for key, held in plain.items():
        for place in held:
            assert load_before(book, key, place) == held.get(max((one for one in held if one < place), default=""))
        run = longest = 0
        for row in book.query("SELECT whole FROM states WHERE key = ? ORDER BY order_key", (key,)):
            run = 0 if row["whole"] else run + 1
            longest = max(longest, run)
        assert 10 < longest < 2 * WHOLE_EVERY
