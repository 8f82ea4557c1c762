"""The facts of a day: read again only where something has changed, and then as if read anew. Questions with figures."""

from __future__ import annotations

import random
from dataclasses import replace
from datetime import timedelta

import pytest

from tests.book import stories
from tests.book.conftest import F1, NOW, answer, fruit, reading, send
from tests.book.today.conftest import ask, ask_anew
from webapp.book.fold import queries
from webapp.book.house import registry
from webapp.book.today import facts, since

DAY = timedelta(days=1)


@pytest.mark.parametrize("seed", range(6))
def test_facts_read_piece_by_piece_are_those_read_anew(book, seed):
    """Entries of every kind, at random; after each batch the held facts are compared with fresh ones."""
    chance = random.Random(seed)
    for n in range(12):
        hours = [chance.randrange(1, 2000) for _ in range(6)]
        send(book, *(stories.make_any(chance, read_at=NOW - timedelta(hours=before), seq=n * 10 + one)
                     for one, before in enumerate(hours, 1)))
        held = ask(book)
        fresh = ask_anew(book)
        assert dict(held.standings) == dict(fresh.standings)
        assert replace(held, turn=0) == replace(fresh, turn=0)


def test_the_heaviest_questions_are_the_first_of_all(book):
    chance = random.Random(5)
    send(book, *(stories.make_any(chance, read_at=NOW - timedelta(hours=one), seq=one) for one in range(1, 120)))
    found = queries.open_queries(book, limit=1000)
    assert {one["weight"] for one in found} == {"stop", "ask"}
    assert queries.heaviest(book, "metric", 1000) == found
    few = queries.heaviest(book, "metric", 3)
    assert [one["weight"] for one in few] == ["stop"] * 3 + ["ask"] * 3
    assert few[:3] == found[:3]


def test_nothing_is_read_again_while_the_book_stands(book, hand):
    hand(fruit(F1, read_at=NOW - DAY))
    assert ask(book) is ask(book)
    first = ask(book)
    registry.put_vessel(book, {"mark": F1, "sort": "fermenter", "title": "By the door", "name": "F1"}, by="JK")
    assert ask(book) is not first and ask(book).standings[F1].name == "F1"
    registry.put_vessel(book, {"mark": F1, "sort": "fermenter", "retired": True}, by="JK")
    assert F1 not in ask(book).standings


def questions(book, hand):
    hand(fruit(F1, read_at=NOW - 4 * DAY), reading(F1, "1.050", read_at=NOW - 3 * DAY, seq=2),
         reading(F1, "1.045", read_at=NOW - 2 * DAY, seq=3), reading(F1, "1.054", read_at=NOW - DAY, seq=4))
    return ask(book).asked


def test_a_question_comes_with_the_figures_before_it_and_the_likely_one(book, hand):
    (one,) = questions(book, hand)
    assert (one.mark, one.title, one.first["code"]) == (F1, "Ferment reading", "ferment_gravity_rose")
    assert [point.value for point in one.slip.before] == [1.05, 1.045]
    assert one.slip.typed == 1.054
    offers = [float(offer["raw"]) for offer in one.first["suggestions"]]
    assert one.slip.offered == (offers[0] if offers else None)
    assert one.summary == "1.054 SG at 15.0 °C"


def test_the_heaviest_question_comes_first_and_an_answered_one_goes(book, hand):
    (one,) = questions(book, hand)
    hand(reading(F1, "1.040", temp="66.6", read_at=NOW - timedelta(hours=5), seq=5))
    assert [asked.first["weight"] for asked in ask(book).asked] == ["stop", "ask"]
    hand(answer(one.first["entry"], read_at=NOW, seq=6))
    assert [asked.first["weight"] for asked in ask(book).asked] == ["stop"]


def test_what_a_stop_holds_back_is_told_as_it_was_typed(book, hand):
    hand(fruit(F1, read_at=NOW - 4 * DAY), reading(F1, "1.050", read_at=NOW - 3 * DAY, seq=2),
         reading(F1, "1.040", temp="66.6", read_at=NOW - DAY, seq=5))
    (one,) = ask(book).asked
    assert "66.6" in one.summary and "\u2013" not in one.summary


def test_what_has_come_since(book, hand):
    (one,) = questions(book, hand)
    told = since.load_since(book, 1, "metric")
    assert (told.entries, told.people, told.answer) == (3, 1, None)
    hand(answer(one.first["entry"], read_at=NOW, seq=6, person="JK"))
    told = since.load_since(book, 0, "metric")
    assert (told.entries, told.people) == (5, 2)
    assert [(news.title, news.mark) for news in told.news] == [("Fruit intake", F1)]
    assert (told.answer.verdict, told.answer.person, told.answer.reason) == ("stands", "JK", "looked again")
    assert facts.load_registry(book).entries == 5
