"""Whoever comes reads in their own language, then in the browser's choice, its system's, the house's, or in English."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from tests.access.conftest import csrf_of
from tests.words.invented import two_more
from webapp.book.house import people, registry


@pytest.fixture(autouse=True)
def _two_more(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[None]:
    yield from two_more(tmp_path, monkeypatch)


def _lang(client: Any, **headers: str) -> str:
    page = client.get("/desk/you", headers=headers).text
    return str(page.partition('<html lang="')[2].partition('"')[0])


def _choose(client: Any, code: str, onward: str) -> Any:
    token = csrf_of(client.get(onward or "/sign-in").text)
    return client.post("/language", data={"language": code, "next": onward, "csrf_token": token})


def test_the_person_comes_before_the_browser_and_the_browser_before_the_house(
    app: Any, sign_in: Any
) -> None:
    client, book = sign_in("OL"), app.extensions["book"]
    assert _lang(client) == "en-GB"
    registry.set_site(book, {"language": "cs"}, by="OL")
    assert _lang(client) == "cs"
    wants_german = {"Accept-Language": "de-AT,de;q=0.9,en;q=0.1"}
    assert _lang(client, **wants_german) == "de"
    client.set_cookie("cellarslate_language", "en")
    assert _lang(client, **wants_german) == "en-GB"
    people.set_language(book, "OL", "cs", by="OL")
    assert _lang(client, **wants_german) == "cs"


def test_a_choice_at_the_foot_of_a_page_stays_with_the_person(app: Any, sign_in: Any) -> None:
    client = sign_in("OL")
    assert 'value="cs" lang="cs"' in client.get("/desk/you").text
    answer = _choose(client, "de", "/desk/you")
    assert (answer.status_code, answer.location) == (302, "/desk/you")
    person = people.person(app.extensions["book"], "OL")
    assert person is not None and person["language"] == "de"
    client.delete_cookie("cellarslate_language")
    assert "Zunge" in client.get("/desk/you").text
    token = csrf_of(client.get("/desk/you").text)
    away = {"language": "", "next": "https://elsewhere.example/", "csrf_token": token}
    assert "elsewhere" not in client.post("/language", data=away).location
    assert _lang(client) == "en-GB"


def test_a_stranger_chooses_before_signing_in_and_an_unknown_language_is_none(app: Any) -> None:
    client = app.test_client()
    assert _choose(client, "de", "/sign-in").location == "/sign-in"
    assert '<html lang="de"' in client.get("/sign-in").text
    _choose(client, "../en", "")
    assert '<html lang="en-GB"' in client.get("/sign-in").text
