"""What an entry would come to with another figure: the same that the fold makes of it once it is put right.

Nothing outside the project knows this: the book is held against itself, by two ways through it.
"""

from __future__ import annotations

import json
from typing import Any

import pytest

from tests.book.conftest import C1, NOW, T1, answer, entry, send, settled
from tests.book.told import Told, fill, start
from webapp.book.fold.queries import for_entry
from webapp.book.fold.supposing import Supposing
from webapp.book.periods.postings import moved_by
from webapp.book.record.log import load_family
from webapp.book.record.store import Book
from webapp.kinds.expected import Box
from webapp.kinds.meant import with_boxes


@pytest.fixture
def told(book: Book) -> Told:
    made = start(book)
    made.say("gauge", T1, volume="400 L", temp="20 degC", strength="62 pct_vol")
    fill(made, C1, "46.3", "220", "62")
    return made


def _supposing(book: Book, entry_id: str) -> tuple[Any, Supposing]:
    row = load_family(book, entry_id)["entry"]
    assert row
    return row, Supposing(book, row, for_entry(book, entry_id))


def _moved(book: Book, entry_id: str) -> list[dict[str, Any]]:
    names = "source, target, lpa_ul, mass_g, reason, source_account, target_account"
    return book.query(f"SELECT {names} FROM flows WHERE entry = ? ORDER BY n", (entry_id,))


@pytest.fixture
def regauge(told: Told) -> dict[str, Any]:
    """A strength with two digits swapped: the cask would hold more than was put in."""
    made = entry("cask_regauge", C1, NOW, seq=90, gross="219.1 kg", temp="12 degC", strength="81.6 pct_vol",
                 condition="tight")
    assert settled(send(told.book, made)) == ["queried"]
    return made


def test_the_offer_moves_what_the_amended_entry_moves(told: Told, regauge: dict[str, Any]) -> None:
    row, supposing = _supposing(told.book, regauge["id"])
    assert row["standing"] == "stopped"
    outcome = supposing.outcome(with_boxes(row["entry"], [Box("strength", "61.8", "pct_vol")]))
    assert outcome.standing == "entered"
    better = entry("cask_regauge", C1, NOW, seq=91, amends=regauge["id"], reason="digits swapped", gross="219.1 kg",
                   temp="12 degC", strength="61.8 pct_vol", condition="tight")
    assert settled(send(told.book, better)) == ["entered"]
    made = _moved(told.book, better["id"])
    assert made
    assert moved_by(outcome.effect) == made


def test_a_stop_shows_what_it_holds_back(told: Told, regauge: dict[str, Any]) -> None:
    row, supposing = _supposing(told.book, regauge["id"])
    assert moved_by(supposing.outcome(row["entry"]).effect) == [], "a stop moves nothing"
    held_back = moved_by(supposing.outcome(row["entry"], is_all_answered=True).effect)
    assert settled(send(told.book, answer(regauge["id"], seq=91))) == ["entered"]
    assert held_back == _moved(told.book, regauge["id"])


def test_supposing_writes_nothing(told: Told, regauge: dict[str, Any]) -> None:
    before = "\n".join(told.book.db.conn.iterdump())
    row, supposing = _supposing(told.book, regauge["id"])
    supposing.outcome(with_boxes(row["entry"], [Box("strength", "61.8", "pct_vol")]))
    assert "\n".join(told.book.db.conn.iterdump()) == before
    assert json.loads(row["body"]) == row["entry"], "the row is as it was"
