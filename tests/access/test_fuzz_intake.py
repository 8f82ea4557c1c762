"""Entries spoilt at random, one place or several, through the real door: every one is answered, none stops the rest."""

from __future__ import annotations

import copy
import uuid
from collections.abc import Iterator
from datetime import UTC, datetime
from typing import Any

import pytest
from flask import Flask
from flask.testing import FlaskClient
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

import webapp.kinds
from webapp import create_app
from webapp.book.house import devices, people, registry
from webapp.book.periods import accounts
from webapp.book.record import log
from webapp.trade.marks import make_mark

SORTS = ("fermenter", "still", "receiver", "cask", "tank", "can")
MARKS = {sort: make_mark(f"{sort[0].upper()}7") for sort in SORTS if sort != "can"} | {"can": make_mark("N7")}
SETTLED = {"entered", "known", "clash", "queried", "refused"}
HOSTILE = st.sampled_from(
    ["", " ", "-0", "1e999", "NaN", "∞", "0x1F", "1,031.5", "９９", "'; DROP TABLE entries; --",
     "<script>alert(1)</script>", "\u202egnp.exe", "🍐" * 40, "a" * 5000, "\x00", "../../etc/passwd", "=1+1", "9" * 400,
     "2025-02-30T08:05:00Z"]
)
LEAVES = st.none() | st.booleans() | st.integers() | st.floats() | st.text(max_size=20) | HOSTILE
KEYS = HOSTILE | st.text(max_size=8)
TREES = st.recursive(LEAVES, lambda inner: st.lists(inner, max_size=4) | st.dictionaries(KEYS, inner, max_size=4))


@pytest.fixture(scope="module")
def house(tmp_path_factory: pytest.TempPathFactory) -> Iterator[tuple[Flask, FlaskClient]]:
    app = create_app(tmp_path_factory.mktemp("fuzz"), testing=True)
    book = app.extensions["book"]
    for sort, mark in MARKS.items():
        registry.put_vessel(book, {"mark": mark, "sort": sort, "capacity_l": 1000.0, "tare_kg": 45.0}, by="MD")
    people.put_person(book, {"code": "NS", "name": "Noor", "access": "floor"}, by="MD")
    phone = app.test_client()
    phone.post("/api/enrol", json={"token": devices.new_token(book, "MD", "PH-2"), "name": "PH-2"})
    yield app, phone
    book.close()


def sound(kind: Any, seq: int) -> dict[str, Any]:
    """An entry of a kind with something in every field, as good as may be without knowing the kind."""
    mark = MARKS.get(next((sort for sort in kind.vessels if sort in MARKS), ""), "")
    values: dict[str, Any] = {}
    for field in kind.fields:
        raw = field.choices[0][0] if field.choices else "12"
        values[field.name] = {"raw": raw, **({"unit": field.units[0]} if field.units else {})}
    at = "2025-09-24T08:05:00+02:00"
    return {
        "id": str(uuid.uuid4()), "kind": kind.name, "kind_version": kind.version, "mark": mark, "mark_by": "typed",
        "read_at": at, "typed_at": at, "person": "NS", "role": "", "seen_by": "", "device": "d-fuzz", "seq": seq,
        "values": values, "as_read": [], "looked_again": [], "remark": "", "amends": None, "reason": "",
    }


def places(tree: Any, way: tuple[Any, ...] = ()) -> Iterator[tuple[Any, ...]]:
    """Yield the way to every value in a tree."""
    inner = tree.items() if isinstance(tree, dict) else enumerate(tree) if isinstance(tree, list) else ()
    for key, value in inner:
        yield (*way, key)
        yield from places(value, (*way, key))


def spoil(tree: Any, way: tuple[Any, ...], value: Any) -> None:
    """Put a value in a place, if that place is still there."""
    inside: Any = None
    for key in way:
        inside = tree
        keys = tree.keys() if isinstance(tree, dict) else range(len(tree)) if isinstance(tree, list) else ()
        if key not in keys:
            return
        tree = tree[key]
    inside[way[-1]] = value


@settings(max_examples=120, suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow])
@given(data=st.data())
def test_every_spoilt_entry_is_answered_and_the_book_stays_whole(
    house: tuple[Flask, FlaskClient], data: st.DataObject
) -> None:
    app, phone = house
    kinds = data.draw(st.lists(st.sampled_from(webapp.kinds.ALL), min_size=1, max_size=4))
    entries: list[Any] = [sound(kind, data.draw(st.integers(1, 500))) for kind in kinds]
    for entry in entries:
        for way in data.draw(st.lists(st.sampled_from(sorted(places(entry), key=repr)), max_size=3)):
            spoil(entry, way, copy.deepcopy(data.draw(TREES)))
    batch = {"now": datetime.now(UTC).isoformat(timespec="seconds"), "device": "d-fuzz", "entries": entries}
    answer = phone.post("/api/hand-in", json=batch)
    assert answer.status_code in (200, 400, 413), answer.text[:500]
    said = answer.get_json()
    assert said["marker"] == "cellarslate"
    if answer.status_code == 200:
        assert [result["settled"] in SETTLED for result in said["results"]] == [True] * len(entries)
    book = app.extensions["book"]
    assert log.verify(book) == []
    assert accounts.verify(book) == []
    assert phone.get("/api/cards?since=0").status_code == 200
