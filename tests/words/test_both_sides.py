"""The book and the phone make the same sentences: every vector, in a real browser, with the numbers of six languages.

The oracle for months, decimal signs and plurals is CLDR twice over: Babel's copy in Python, ICU's in the browser.
"""

from __future__ import annotations

import contextlib
import json
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from tests.labels.browser import serve
from webapp.isolate import isolate
from webapp.kinds.as_data import kinds_data
from webapp.kinds.message import Figure, Message, Span, Time, message, message_from_json, to_json
from webapp.trade.datafiles import DATA_FOLDER
from webapp.words import catalogue, say, sentence
from webapp.words.catalogue import ENGLISH, LOCALES, catalogue_text, messages_in
from webapp.words.phone import starting_words

VECTORS = json.loads(Path("tests/vectors/messages.json").read_text("utf-8"))["messages"]
IN_US = json.loads(Path("tests/vectors/messages_us.json").read_text("utf-8"))["messages"]
OTHERS = ("de", "fr", "es", "it", "cs", "pl")  # the languages planned, and one with plurals richer than theirs
# For the test alone: each plural category by its name, so that two choices can be told apart.
CATEGORIES = "\ncategory = { PLURAL($figure) } { $figure } { BARE($figure) }\n"
PAGE = b"<!doctype html><html lang=en><meta charset=utf-8><title>words</title>"
SAY_ALL = """async messages => {
  const { loadKinds } = await import("/static/kinds/kinds.js");
  const { loadQuestions } = await import("/static/words/catalogue.js");
  const { sentence } = await import("/static/words/say.js");
  await loadKinds();
  await (await import("/static/words/catalogue.js")).loadLater();
  await loadQuestions();
  return messages.map(sentence);
}"""


@contextlib.contextmanager
def phone(browser: Any, locale: str) -> Iterator[Any]:
    """Open a page that has the catalogue in English, and the numbers and dates of that locale."""
    start = starting_words(ENGLISH)
    said = {**messages_in(CATEGORIES), **start["said"]}
    files = {"kinds.json": kinds_data()}
    data = {f"/data/{path.name}": ("application/json", path.read_bytes()) for path in DATA_FOLDER.glob("*.json")}
    data |= {f"/data/{name}": ("application/json", json.dumps(file).encode()) for name, file in files.items()}
    data["/words/en.json"] = ("application/json", json.dumps({**start, "locale": locale, "said": said}).encode())
    with serve({**data, "/words": ("text/html", PAGE)}) as origin:
        page = browser.new_page()
        page.goto(f"{origin}/words")
        yield page
        page.close()


@pytest.fixture
def book_in(monkeypatch: pytest.MonkeyPatch) -> Iterator[Any]:
    """Let the book speak English with the numbers and dates of another locale."""
    english = catalogue_text(ENGLISH) + CATEGORIES
    caches = (catalogue.bundle_of, say.make_sentence, say.locale_of)

    def speak(locale: str) -> None:
        monkeypatch.setitem(LOCALES, locale, locale)
        monkeypatch.setattr(catalogue, "catalogue_text", lambda _: english)

    for cache in caches:
        cache.cache_clear()
    yield speak
    for cache in caches:
        cache.cache_clear()


def test_the_browser_makes_every_sentence_of_the_vectors(browser: Any) -> None:
    with phone(browser, LOCALES[ENGLISH]) as page:
        made = page.evaluate(SAY_ALL, [vector["message"] for vector in VECTORS])
        page.evaluate("localStorage.setItem('units', 'us')")
        made += page.evaluate(SAY_ALL, [vector["message"] for vector in IN_US])
    pairs = zip([*VECTORS, *IN_US], made, strict=True)
    wrong = [(one["words"], other) for one, other in pairs if one["words"] != other]
    assert wrong == []


@pytest.mark.parametrize("locale", OTHERS)
def test_both_write_figures_times_and_plurals_of_other_languages_alike(locale: str, browser: Any, book_in: Any) -> None:
    book_in(locale)
    said = [*_tricky(), *(message_from_json(vector["message"]) for vector in VECTORS)]
    with phone(browser, locale) as page:
        made = page.evaluate(SAY_ALL, [to_json(one) for one in said])
    book = [sentence(one, locale) for one in said]
    assert [pair for pair in zip(book, made, strict=True) if pair[0] != pair[1]] == []
    assert "1,5 1,5" in " ".join(book)  # a comma in all of these


def test_the_phone_closes_off_a_sentence_with_a_name_that_runs_from_right_to_left(browser: Any) -> None:
    names = ["R3", "\u05d0\u05d1", "\u202eR3", "a\u2069b", "\u2067a", "\u0661\u0662", "\U0001e900"]
    with phone(browser, LOCALES[ENGLISH]) as page:
        closed = page.evaluate("async all => all.map((await import('/static/words/isolate.js')).isolate)", names)
        assert closed == [isolate(name) for name in names]
        query = {"message": to_json(message("vessel_empty", vessel="\u05d0\u05d1")), "words": "a"}
        page.evaluate(SAY_ALL, [])
        said = page.evaluate("async query => (await import('/static/words/say.js')).say(query)", query)
        assert said == isolate(sentence(message_from_json(query["message"])))


def _tricky() -> list[Message]:
    figures = ["0", "1", "1.0", "1.5", "2", "3.0", "4", "5", "0.25", "11", "12", "21", "100", "101", "-1", "1000000"]
    months = [Time(f"2025-{month:02d}-03T08:10", "2025-12-24") for month in range(1, 13)]
    return [
        *(message("category", figure=Figure(text)) for text in figures),
        *(message("category", figure=int(text)) for text in figures if text.lstrip("-").isdigit()),
        *(message("late", after=Span(((many, "days"),))) for many in (1, 2, 5)),
        *(message("run_order-no_hearts_cut", began=time) for time in months),
    ]


def test_another_language_writes_its_own_decimal_sign_and_month(book_in: Any) -> None:
    book_in("de")
    vector = next(one for one in VECTORS if one["words"].startswith("The run ends") and "May" in one["words"])
    assert "12. Mai 2025" in sentence(message_from_json(vector["message"]), "de")
    assert "1,031" in sentence(
        message("ferment_gravity_rose", gravity=Figure("1.043", "SG"), last=Figure("1.031", "SG"), at="08:10"), "de"
    )
