"""Families of entries: which member has effect, at which place, and what its answers say. Rows only, no fold.

What is held here is the rule as docs/hand-in.md and the module's head have it.
"""

from __future__ import annotations

import json
from collections.abc import Iterator
from datetime import datetime, timedelta
from itertools import permutations
from pathlib import Path
from typing import Any

import pytest

from webapp.book.fold import families
from webapp.book.fold.families import AFTER_STRIKE, Fresh, Plan
from webapp.book.opening import open_book
from webapp.book.record.store import Book

EIGHT = datetime.fromisoformat("2025-10-02T08:00:00+02:00")


@pytest.fixture(scope="module")
def opened(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Book]:
    with open_book(Path(tmp_path_factory.mktemp("families")) / "book.db") as book:
        yield book


@pytest.fixture
def house(opened: Book) -> Iterator[House]:
    with opened.write() as database:
        for table in ("amendments", "answers"):
            database.conn.execute(f"DELETE FROM {table}")
        yield House(opened)


class House:
    """Entries that have come, by their ids."""

    def __init__(self, book: Book) -> None:
        self.book, self.fresh = book, Fresh()

    def take(self, name: str, *, read_min: float = 0, typed_min: float = 0, skew_s: float = 0, kind: str = "gauge",
             amends: str | None = None, device: str = "d-1", seq: int = 1, **values: Any) -> set[str]:
        """Take an entry in, read and typed so many minutes after eight; return the roots that it concerns."""
        read_at, typed_at = ((EIGHT + timedelta(minutes=m)).isoformat() for m in (read_min, typed_min))
        row: Any = {"id": name, "kind": kind, "read_at": read_at, "typed_at": typed_at, "person": "NS",
                    "device": device, "seq": seq, "skew_s": skew_s, "received_at": "2025-10-02T09:00:00Z",
                    "via": "phone"}
        entry: Any = {"id": name, "kind": kind, "kind_version": 1, "mark": "", "read_at": read_at, "amends": amends,
                      "values": values}
        self.fresh[name] = (row, entry)
        return families.note_family(self.book, row, entry)

    def answer(self, name: str, about: str, verdict: str = "stands", typed_min: float = 10, **more: str) -> set[str]:
        given = {"entry": about, "verdict": verdict, **more}
        return self.take(name, kind="answer", typed_min=typed_min, **{k: {"raw": v} for k, v in given.items()})

    def plan(self, root: str) -> Plan:
        made = families.load_plan(self.book, root, self.fresh)
        assert made is not None
        return made


def test_an_entry_alone_has_the_place_of_its_time_its_phone_and_its_number(house: House) -> None:
    assert house.take("e1", read_min=5, typed_min=7, seq=42) == {"e1"}
    plan = house.plan("e1")
    assert (plan.root, plan.id) == ("e1", "e1")
    assert plan.order_key.split("|")[1:] == ["d-1", "0000000000000042", "e1"]
    assert plan.order_key.startswith("2025-10-02T06:05:00")
    assert (plan.at, plan.typed_at, plan.received_at, plan.skew_s) == (
        "2025-10-02T06:05:00Z", "2025-10-02T06:07:00Z", "2025-10-02T09:00:00Z", 0,
    )
    assert (plan.struck, plan.amended_after_strike, plan.clashed, plan.stands) == (False, False, False, {})


def test_a_wrong_clock_is_put_right_by_whole_minutes(house: House) -> None:
    house.take("e1", read_min=5, typed_min=7, skew_s=-3661)
    plan = house.plan("e1")
    assert (plan.at, plan.typed_at, plan.skew_s) == ("2025-10-02T07:06:00Z", "2025-10-02T07:08:00Z", -3661)


def test_what_nobody_has_is_no_family(house: House) -> None:
    assert families.load_plan(house.book, "e9", house.fresh) is None
    house.answer("a1", "e9")
    assert families.load_plan(house.book, "a1", house.fresh) is None, "an answer is no entry of its own"


@pytest.mark.parametrize("order", list(permutations(("e1", "e2", "e3"))))
def test_the_end_of_a_chain_has_effect_in_whatever_order_it_comes(house: House, order: tuple[str, ...]) -> None:
    """The last of the chain was typed first, by a clock that somebody had set back."""
    chain = {"e1": (None, 20), "e2": ("e1", 15), "e3": ("e2", 10)}
    for n, name in enumerate(order):
        amends, typed = chain[name]
        roots = house.take(name, typed_min=typed, amends=amends)
        assert name in roots
        if name != "e1" and n == 2:
            assert "e1" in roots
    plan = house.plan("e1")
    assert (plan.root, plan.id) == ("e1", "e3")
    assert families.load_plan(house.book, "e2", house.fresh) is None, "a member has no place of its own"
    assert families.load_plan(house.book, "e3", house.fresh) is None


def test_of_two_that_amend_the_same_the_one_typed_last_has_effect(house: House) -> None:
    house.take("e1")
    house.take("e2", amends="e1", typed_min=20)
    house.take("e3", amends="e1", typed_min=10)
    assert house.plan("e1").id == "e2"
    # By the true time: this clock is an hour slow.
    house.take("e4", amends="e1", typed_min=5, skew_s=-3600)
    assert house.plan("e1").id == "e4"
    # At one and the same minute it is the greater id, in every book.
    house.take("e6", amends="e1", typed_min=90)
    house.take("e5", amends="e1", typed_min=90)
    assert house.plan("e1").id == "e6"


def test_entries_that_amend_each_other_are_one_family_of_the_lowest_id(house: House) -> None:
    house.take("e3", amends="e1", typed_min=1)
    house.take("e1", amends="e2", typed_min=2)
    assert house.take("e2", amends="e3", typed_min=3) == {"e1", "e2"}
    plan = house.plan("e1")
    assert (plan.root, plan.id) == ("e1", "e2"), "and the one typed last has effect"
    assert families.load_plan(house.book, "e2", house.fresh) is None
    assert families.load_plan(house.book, "e3", house.fresh) is None


def test_an_amendment_that_keeps_the_time_keeps_the_clock_that_told_it(house: House) -> None:
    house.take("e1", read_min=5, skew_s=-3600)
    house.take("e2", read_min=5, amends="e1", typed_min=20)
    house.take("e3", read_min=5, amends="e2", typed_min=30)
    assert house.plan("e1").at == "2025-10-02T07:05:00Z"
    # One that says another time says it by its own clock, and what amends that keeps that one.
    house.take("e4", read_min=6, amends="e3", typed_min=40)
    assert house.plan("e1").at == "2025-10-02T06:06:00Z"
    house.take("e5", read_min=6, amends="e4", typed_min=50, skew_s=-60)
    assert house.plan("e1").at == "2025-10-02T06:06:00Z"


def test_an_answer_is_noted_with_what_it_says(house: House) -> None:
    house.take("e1")
    said = {"query": " unusual:temp ", "reason": " looked again "}
    assert house.answer("a1", " E1 ", "stands", typed_min=12.5, **said) == {"e1"}
    assert house.answer("a2", "e1", "struck") == {"e1"}
    rows = house.book.query("SELECT * FROM answers ORDER BY id")
    assert rows[0] == {
        "id": "a1", "entry": "e1", "query": "unusual:temp", "verdict": "stands", "reason": "looked again",
        "person": "NS", "typed_key": rows[0]["typed_key"],
    }
    assert rows[0]["typed_key"].startswith("2025-10-02T06:12:30") and rows[0]["typed_key"].endswith("|a1")
    assert (rows[1]["query"], rows[1]["verdict"], rows[1]["reason"]) == ("", "struck", "")


def test_an_answer_without_values_is_to_nothing(house: House) -> None:
    assert house.take("a1", kind="answer", entry=None, verdict={"raw": None}) == {""}
    (row,) = house.book.query("SELECT entry, query, verdict, reason FROM answers")
    assert row == {"entry": "", "query": "", "verdict": "", "reason": ""}


def test_an_answer_concerns_the_family_of_what_it_answers(house: House) -> None:
    house.take("e1")
    house.take("e2", amends="e1")
    assert house.answer("a1", "e2") == {"e1"}


def test_what_stands_is_kept_by_the_question_for_the_member_that_has_effect(house: House) -> None:
    house.take("e1")
    house.answer("a1", "e1", query="unusual:temp")
    house.answer("a2", "e1", typed_min=11)
    assert house.plan("e1").stands == {"unusual:temp": "a1", "": "a2"}
    house.answer("a3", "e1", typed_min=12, query="unusual:temp")
    assert house.plan("e1").stands == {"unusual:temp": "a3", "": "a2"}
    house.take("e2", amends="e1", typed_min=20)
    assert house.plan("e1").stands == {}, "another figure: it is asked anew"
    house.answer("a4", "e2", typed_min=21, query="x")
    assert house.plan("e1").stands == {"x": "a4"}


@pytest.mark.parametrize(
    ("answers", "struck"),
    [
        ([("struck", "")], True), ([("struck", "x")], True), ([("stands", "")], False),
        ([("struck", ""), ("stands", "")], False), ([("stands", ""), ("struck", "")], True),
        ([("struck", ""), ("stands", "x")], True), ([("struck", ""), ("stands", AFTER_STRIKE)], False),
        ([("struck", ""), ("stands", ""), ("struck", "")], True),
    ],
)
def test_the_last_word_for_the_whole_entry_strikes_or_lifts(
    house: House, answers: list[tuple[str, str]], struck: bool
) -> None:
    """Heard in the order they were typed, in whatever order they come."""
    house.take("e1")
    lines = [(f"a{n}", verdict, n, query) for n, (verdict, query) in enumerate(answers, 1)]
    for name, verdict, typed, query in reversed(lines):
        house.answer(name, "e1", verdict, typed, **({"query": query} if query else {}))
    assert house.plan("e1").struck is struck


def test_whoever_strikes_a_member_strikes_the_family(house: House) -> None:
    house.take("e1")
    house.take("e2", amends="e1", typed_min=5)
    house.answer("a1", "e1", "struck", 10)
    plan = house.plan("e1")
    assert (plan.id, plan.struck, plan.amended_after_strike) == ("e2", True, False), "it was amended before"


def test_what_amends_after_the_strike_is_asked_about(house: House) -> None:
    house.take("e1", typed_min=20)
    house.answer("a1", "e1", "struck", 10)
    assert not house.plan("e1").amended_after_strike, "the first of a family amends nothing"
    house.take("e2", amends="e1", typed_min=11)
    assert house.plan("e1").amended_after_strike
    house.answer("a2", "e2", "stands", 12, query=AFTER_STRIKE)
    plan = house.plan("e1")
    assert (plan.struck, plan.amended_after_strike, plan.stands) == (False, False, {AFTER_STRIKE: "a2"})


def test_another_body_under_the_id_of_the_one_that_has_effect(house: House) -> None:
    house.take("e-clash")
    conn = house.book.db.conn
    line = (
        "INSERT INTO aside (id, settled, body, body_sha256, problems, received_at, via) VALUES (?, ?, ?, ?, '', '', '')"
    )
    conn.execute(line, ("e-clash", "refused", "{}", "1"))
    assert not house.plan("e-clash").clashed
    conn.execute(line, ("e-clash", "clash", "{}", "2"))
    assert house.plan("e-clash").clashed
    house.take("e-other", amends="e-clash", typed_min=20)
    assert not house.plan("e-clash").clashed, "the amendment has a body of its own"


def write(house: House, book_no: int, name: str, skew_s: float) -> None:
    """Put an entry into the log, as a batch does."""
    row, entry = house.fresh[name]
    line = {**row, "skew_s": skew_s, "book_no": book_no, "kind_version": 1, "mark": "", "role": "", "via": "phone",
            "body": json.dumps(entry), "body_sha256": "", "digest": ""}
    places = ", ".join(f":{column}" for column in line)
    house.book.db.conn.execute(f"INSERT INTO entries ({', '.join(line)}) VALUES ({places})", line)


def test_a_family_is_read_from_the_log_as_it_came(house: House) -> None:
    house.take("l1", read_min=5, typed_min=7, seq=42, skew_s=-120, device="d-7", text={"raw": "ä"})
    write(house, 1, "l1", -120)
    assert families.load_plan(house.book, "l1") == families.load_plan(house.book, "l1", Fresh()) == house.plan("l1")


def test_other_rules_of_clocks_time_the_answers_anew(house: House) -> None:
    house.take("e1")
    house.answer("l2", "e1")
    house.book.db.conn.execute("UPDATE answers SET typed_key = 'old'")
    write(house, 2, "l2", 120)
    families.retime_answers(house.book)
    (row,) = house.book.query("SELECT typed_key FROM answers")
    assert row["typed_key"].startswith("2025-10-02T06:08:00") and row["typed_key"].endswith("|l2")
