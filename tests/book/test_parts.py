"""The small parts: differences of states, the quick look at an entry, clocks."""

from __future__ import annotations

import copy
import dataclasses
import json
from datetime import UTC, datetime, timedelta
from typing import Any

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

import webapp.kinds
from tests.book.conftest import F1, NOW, charge, fruit, reading, send
from webapp.book.fold import fold
from webapp.book.fold.states import apply_difference, difference
from webapp.book.record import log, upcast
from webapp.book.record.clock import correct_time, measured_skew, order_skew, sort_text, utc_text
from webapp.book.record.soundness import is_plainly_sound
from webapp.book.record.store import Book
from webapp.kinds.as_schema import entry_schema

KEYS = st.sampled_from(["holds", "recent", "run", "a", "b"])
TREES = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats(allow_nan=False) | st.text(max_size=5),
    lambda inner: st.lists(inner, max_size=5) | st.dictionaries(KEYS, inner, max_size=4),
    max_leaves=20,
)
STATES = st.dictionaries(KEYS, TREES, max_size=5)


@given(old=STATES, new=STATES)
@example(old={"a": [1, 2, 3]}, new={"a": [2, 3, 4]})
@example(old={"a": []}, new={"a": {}})
@example(old={"a": 1, "b": {"a": None}}, new={"b": {}})
def test_a_difference_makes_the_new_state_of_the_old_one(old: dict[str, Any], new: dict[str, Any]) -> None:
    kept = copy.deepcopy(old)
    change = difference(old, new) or {"d": {}}
    assert apply_difference(old, json.loads(json.dumps(change))) == new
    assert old == kept


def test_a_line_more_costs_a_line() -> None:
    lines = [{"entry": str(n), "values": {"gravity": 1.05}} for n in range(20)]
    old = {"holds": {"og": 1.05}, "recent": {"x": lines, "y": lines}}
    new = {**old, "recent": {**old["recent"], "x": [*lines[1:], {"entry": "20", "values": {}}]}}
    assert difference(old, new) == {"d": {"recent": {"d": {"x": {"a": [1, [{"entry": "20", "values": {}}]]}}}}}


ODD = st.one_of(
    TREES,
    st.text(max_size=60),
    st.integers(),
    st.sampled_from(["2025-09-24T08:05:00Z", "2025-02-30T08:05:00Z", "F1-9"]),
)


SOUND = [fruit(), reading(), charge()]


@given(data=st.data())
def test_what_the_quick_look_lets_through_the_schema_lets_through(data: st.DataObject) -> None:
    one = copy.deepcopy(data.draw(st.sampled_from(SOUND)))
    parts = [one, one["values"], *one["values"].values()]
    for _ in range(data.draw(st.integers(0, 3))):
        where = parts[data.draw(st.integers(0, len(parts) - 1))]
        if where and data.draw(st.booleans()):
            where.pop(data.draw(st.sampled_from(sorted(where))))
        else:
            key = data.draw(st.sampled_from([*sorted(where), "extra", "unit"]))
            where[key] = data.draw(ODD)
    if isinstance(one.get("values"), dict) and is_plainly_sound(one):
        assert entry_schema().validate(one) == {}


def test_the_quick_look_does_let_plain_entries_through() -> None:
    assert all(is_plainly_sound(one) for one in (fruit(), reading(), charge()))


@pytest.mark.parametrize(
    ("skew_s", "expected"),
    [(0.0, 0), (59.9, 0), (-60.0, 0), (61.0, 60), (-3661.2, -3660), (86_400.0 * 900, 86_400 * 900)],
)
def test_the_order_is_corrected_by_whole_minutes(skew_s: float, expected: int) -> None:
    assert order_skew(skew_s) == expected


@given(st.datetimes(timezones=st.just(UTC)), st.datetimes(timezones=st.just(UTC)))
def test_texts_of_times_sort_as_the_times_do(one: datetime, other: datetime) -> None:
    a, b = (moment.replace(microsecond=moment.microsecond // 1000 * 1000) for moment in (one, other))
    assert (sort_text(a) < sort_text(b)) == (a < b)
    assert len(utc_text(a)) == len(utc_text(b)) == 20


@pytest.mark.parametrize("skew_s", [10**12, -(10**12)])
def test_a_clock_off_by_ages_is_clamped(skew_s: int) -> None:
    assert 1 <= correct_time("2025-09-24T08:05:00+02:00", skew_s).year <= 9999


def test_skew_is_phone_minus_book() -> None:
    assert measured_skew((NOW + timedelta(seconds=90.04)).isoformat(), NOW) == 90.0
    assert measured_skew("2025-09-24T12:00:00", NOW) == 0.0  # no offset: it says no instant


def test_an_entry_of_an_older_kind_is_read_in_the_shape_of_today(book: Book, monkeypatch: pytest.MonkeyPatch) -> None:
    """As if `grower_lot` had been called `lot` in version 1: a phone that has not been updated still hands in."""
    today = webapp.kinds.get("fruit_intake")
    assert today is not None
    newer = dataclasses.replace(today, version=2)

    def rename(old: dict[str, Any]) -> dict[str, Any]:
        values = {("grower_lot" if name == "lot" else name): value for name, value in old["values"].items()}
        return {**old, "values": values}

    monkeypatch.setattr(webapp.kinds, "ALL", [newer if kind.name == newer.name else kind for kind in webapp.kinds.ALL])
    monkeypatch.setitem(upcast.STEPS, ("fruit_intake", 1), rename)
    old = fruit()
    old["values"]["lot"] = old["values"].pop("grower_lot")
    assert send(book, old)["results"][0]["settled"] == "entered"
    kept = log.load_entry(book, old["id"])
    assert kept is not None
    assert kept["entry"] == old
    line = fold.load_state(book, f"v:{F1}")["recent"]["fruit_intake"][0]
    assert line["values"]["grower_lot"] == "G4"


def test_the_dump_of_the_fold_holds_each_table_by_its_name(book: Book) -> None:
    """Two books are compared by it, so a table that is left out would be compared by nobody."""
    send(book, reading(gravity="1.4"))
    dumped = json.loads(fold.dump(book))
    assert set(dumped) == {
        "states", "flows", "queries", "standing", "runs", "fills", "dispatches", "month_sums", "bottlings",
        "placings",
    }
    for table in ("flows", "queries", "runs", "fills", "dispatches", "month_sums", "bottlings", "placings"):
        assert len(dumped[table]) == book.one(f"SELECT count(*) AS n FROM {table}")["n"], table
    assert dumped["queries"] and len(dumped["standing"]) == 1
