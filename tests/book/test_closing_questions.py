"""A period with questions open: closed by somebody who has read each of them, and the close carries what was open."""

from __future__ import annotations

import json

import pytest

from tests.closing import close_as_read
from webapp.book.periods import closes
from webapp.book.periods.ledger import load_ledger
from webapp.book.periods.open_questions import key_of, sentence_of
from webapp.book.record.errors import BookError
from webapp.book.record.store import Book
from webapp.words.houseunits import METRIC, US

from .test_periods import LATER, R2, T1, Teller, a_season, gauge, told

__all__ = ["told"]
MONTH = "2025-10"


@pytest.fixture
def asked(told: Teller) -> Teller:
    """A season in whose October a tank is gauged at more than was put into it, so that the book asks."""
    a_season(told)
    told.say("2025-10-28T10:00+01:00", gauge, T1, "45", "70")
    return told


def open_in(book: Book) -> closes.Draft:
    draft = closes.draft_close(book, MONTH, LATER)
    assert draft.questions, "the story asks something of October"
    return draft


def test_nothing_is_closed_before_each_question_is_read(asked: Teller) -> None:
    draft = open_in(asked.book)
    for read in ([], draft.question_keys[1:], ["another:question"]):
        with pytest.raises(BookError, match="not ticked as read"):
            closes.close_period(asked.book, MONTH, "OL", draft.digest, LATER, read)
    assert closes.closes(asked.book) == []
    closes.close_period(asked.book, MONTH, "OL", draft.digest, LATER, draft.question_keys)
    assert MONTH in {row["month"] for row in closes.closes(asked.book)}


def test_the_close_carries_what_was_open_for_good(asked: Teller) -> None:
    draft = open_in(asked.book)
    close_as_read(asked.book, MONTH, "OL", LATER)
    closed = load_ledger(asked.book, LATER).closed
    carried = [one for month in draft.months for one in closed[month].questions]
    assert carried == list(draft.questions)
    said = [sentence_of(one, METRIC) for one in carried]
    assert all(said) and said == [sentence_of(one, METRIC) for one in draft.questions]
    assert all(sentence_of(one, US) for one in carried)
    first = carried[0]
    asked.say("2026-02-01T10:00+01:00", "answer", "", entry=first["entry"], query=key_of(first).split(":")[1],
              verdict="stands", reason="looked at the tank")
    again = load_ledger(asked.book, LATER).closed
    assert [one for month in draft.months for one in again[month].questions] == carried
    assert closes.verify(asked.book) == []


def test_a_spoilt_question_of_a_close_is_found(asked: Teller) -> None:
    close_as_read(asked.book, MONTH, "OL", LATER)
    with asked.book.write() as database:
        database.conn.execute("DROP TRIGGER closes_stay")
        database.conn.execute("UPDATE closes SET figures = replace(figures, '\"weight\":\"', '\"weight\":\"x')")
    assert any("not those that were signed" in words for words in closes.verify(asked.book))


def test_a_month_without_questions_is_closed_as_before(told: Teller) -> None:
    told.say("2025-10-10T10:00+02:00", gauge, R2, "40", "70", purpose="opening")
    draft = closes.draft_close(told.book, MONTH, LATER)
    assert not draft.questions and all("questions" not in json.loads(text) for text in draft.figures)
    closes.close_period(told.book, MONTH, "OL", draft.digest, LATER)
