"""The book keeps what was asked, not how it is said: better words change no book; old words are said as they were."""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.book.conftest import F1, entry, fill_world, fruit, reading, send
from webapp.book.fold import fold, queries, unjudged
from webapp.book.opening import open_book
from webapp.book.record import log
from webapp.book.record.store import Book
from webapp.words import catalogue, say

ROSE = "can only fall"


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Book]:
    with open_book(tmp_path / "book.sqlite") as made:
        fill_world(made)
        send(made, fruit(), reading(gravity="1.031", seq=2), reading(gravity="1.043", temp="66,6", seq=3))
        yield made


@pytest.fixture
def better_words(monkeypatch: pytest.MonkeyPatch) -> Iterator[None]:
    """Say it otherwise, in the catalogue alone."""
    text = catalogue.catalogue_text("en")
    assert ROSE in text
    monkeypatch.setattr(catalogue, "catalogue_text", lambda _: text.replace(ROSE, "never rises by itself"))
    for cache in (catalogue.bundle_of, say.make_sentence):
        cache.cache_clear()
    yield
    for cache in (catalogue.bundle_of, say.make_sentence):
        cache.cache_clear()


def words_in(book: Book) -> str:
    return " ".join(str(one["words"]) for one in queries.open_queries(book))


def test_better_words_change_no_byte_of_the_fold(book: Book, request: pytest.FixtureRequest) -> None:
    before, head, words = fold.dump(book), log.load_head(book), words_in(book)
    assert ROSE in words
    request.getfixturevalue("better_words")
    assert "never rises by itself" in words_in(book)
    fold.rebuild(book)
    assert fold.dump(book) == before
    assert log.load_head(book) == head


def test_a_question_stands_in_the_book_as_a_message_with_its_figures(book: Book) -> None:
    rows = {row["code"]: json.loads(row["message"]) for row in book.query("SELECT code, message FROM queries")}
    rose = rows["ferment_gravity_rose"]
    assert rose["id"] == "ferment_gravity_rose"
    assert rose["params"]["gravity"] == {"figure": "1.043", "unit": "SG"}
    assert rose["params"]["at"].keys() == {"time", "seen"}
    assert not [one for one in rows.values() if one["id"] == "as_said"]


def test_a_refused_entry_is_put_aside_with_a_message_and_answered_with_words(book: Book) -> None:
    sent = entry("gauge", F1[:-1] + "?")
    result = send(book, sent)["results"][0]
    assert result["settled"] == "refused"
    assert all(problem["words"] and problem["message"]["id"] for problem in result["problems"])
    (row,) = log.load_aside(book)
    assert "words" not in book.query("SELECT problems FROM aside")[0]["problems"]
    assert [one["words"] for one in row["problems"]] == [one["words"] for one in result["problems"]]


def test_what_an_older_program_put_aside_says_what_it_said(book: Book) -> None:
    problems = json.dumps([{"code": "bad_mark", "weight": "refuse", "field": "mark", "words": "F3-9 is no mark."}])
    row = {"id": "x", "device": "d-1", "seq": 9, "settled": "refused", "body": "{}", "body_sha256": "0" * 64,
           "problems": problems, "received_at": "2025-09-24T12:00:00Z", "via": "phone"}
    with book.write():
        log.put_aside(book, [row])
    (told,) = log.load_aside(book, entry_id="x")
    assert told["problems"][0]["words"] == "F3-9 is no mark."


def test_questions_of_an_older_book_are_brought_over_word_for_word_and_judged_again(book: Book) -> None:
    asked = {row["entry"]: queries.for_entry(book, row["entry"]) for row in book.query("SELECT entry FROM queries")}
    whole = fold.dump(book)
    book.close()
    _make_older(book.path, asked)
    with open_book(book.path) as again:
        for entry_id, lines in asked.items():
            told = queries.for_entry(again, entry_id)
            assert [_said(line) for line in told] == [_said(line) for line in lines]
            assert all(line["message"]["id"] == "as_said" for line in told)
        assert unjudged.count_left(again) > 0
        unjudged.judge_all(again)
        assert fold.dump(again) == whole


def _said(line: dict[str, object]) -> list[object]:
    suggestions = line["suggestions"]
    assert isinstance(suggestions, list)
    return [line[name] for name in ("name", "code", "weight", "field", "words", "answer")] + [
        (one["field"], one["raw"], one["unit"], one["words"]) for one in suggestions
    ]


def _make_older(path: Path, asked: dict[str, list[dict[str, object]]]) -> None:
    """Turn the table of questions into what version 0.1.0 had."""
    with sqlite3.connect(path) as database:
        database.execute("ALTER TABLE queries ADD COLUMN words TEXT NOT NULL DEFAULT ''")
        for entry_id, lines in asked.items():
            for line in lines:
                suggestions = line["suggestions"]
                assert isinstance(suggestions, list)
                kept = [{name: one[name] for name in ("field", "raw", "unit", "words")} for one in suggestions]
                database.execute(
                    "UPDATE queries SET words = ?, suggestions = ? WHERE entry = ? AND name = ?",
                    (line["words"], json.dumps(kept), entry_id, line["name"]),
                )
        database.execute("ALTER TABLE queries DROP COLUMN message")
        database.execute("DELETE FROM migrations WHERE name = 'messages'")
    database.close()
