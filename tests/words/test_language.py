"""Each reads in a language of their own: the person's, the browser's choice, its system's, the house's, English."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.words.invented import two_more
from webapp.words import desk, language


@pytest.fixture(autouse=True)
def _two_more(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[None]:
    yield from two_more(tmp_path, monkeypatch)


def test_a_message_is_put_together_by_text_or_by_what_it_chooses() -> None:
    language.read_in("de")
    assert desk.say("plain-one") == "nur Text & <b>"
    assert desk.t("plain-one") == "nur Text &amp; &lt;b&gt;"
    assert desk.t("plain-many", who="<Nora>", many=3) == "&lt;Nora&gt; hat 3 Fässer"
    assert desk.say("plain-chosen", who="Nora", many=1) == "ein Fass von Nora"
    assert desk.t("plain-chosen", who="a & b", many=4) == "4 Fässer von a &amp; b"
    language.read_in("cs")
    assert [desk.say("plain-chosen", many=many) for many in (1, 3, 5)] == ["sud", "3 sudy", "5 sudů"]


def test_what_a_language_lacks_is_said_in_english() -> None:
    language.read_in("cs")
    assert desk.say("desk-you-language") == "Language"


def test_a_form_says_its_words_when_it_is_shown_not_when_it_is_declared() -> None:
    label = desk.Later("desk-you-language")
    language.read_in("de")
    assert (str(label), f"{label}", label.__html__()) == ("Zunge", "Zunge", "Zunge")
    language.read_in("en")
    assert str(label) == "Language"


@pytest.mark.parametrize(("wanted", "best"), [
    (["de-AT", "en"], "de"), (["pl", "cs-CZ", "de"], "cs"), (["en-US"], "en"), (["pl", "xx"], None), ([], None),
])
def test_the_browser_gets_the_first_it_wants_that_there_is(wanted: list[str], best: str | None) -> None:
    assert language.best_of(wanted) == best
