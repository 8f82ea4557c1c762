"""Sites with real books, and a group over a real PostgreSQL; what lies between them can be cut."""

from __future__ import annotations

import json
import random
from collections.abc import Callable, Iterator
from datetime import datetime, timedelta
from pathlib import Path
from typing import Any

import pytest

from tests.book.conftest import NOW, fill_world, send
from tests.book.stories import make_any
from tests.faults.tally import report
from tests.group.postgres import Postgres, postgres_or_skip
from webapp.book import intake
from webapp.book.fold import unjudged
from webapp.book.house import devices, people, registry
from webapp.book.opening import open_book
from webapp.book.record.store import Book
from webapp.group.sender import NoAnswer


@pytest.hookimpl(trylast=True)
def pytest_terminal_summary(terminalreporter: Any) -> None:
    """Print what was put in, and what came of it."""
    report(terminalreporter)


@pytest.fixture(scope="session")
def postgres() -> Iterator[Postgres]:
    """One server for the session."""
    server = postgres_or_skip()
    yield server
    server.close()


class Wire:
    """Brings messages to an app in this process. `lose_answers` and `is_cut` are what goes wrong on the way."""

    def __init__(self, group: Group, cookie: str) -> None:
        self.client = group.app.test_client(use_cookies=False)
        self.headers = {"Cookie": cookie}
        self.is_cut = False
        self.lose_answers: Callable[[], bool] = lambda: False

    def ask(self, method: str, path: str, body: bytes | None = None) -> tuple[int, bytes]:
        if self.is_cut:
            raise NoAnswer("cut")
        more = {"Content-Encoding": "gzip"} if body else {}
        answer = self.client.open(path, method=method, data=body, content_type="application/json",
                                  headers=self.headers | more)
        if method == "POST" and self.lose_answers():
            raise NoAnswer("the answer was lost")
        return answer.status_code, answer.data

    def hand_in(self, batch: dict[str, Any]) -> tuple[int, dict[str, Any]]:
        """Send a batch by hand, as a hostile site might."""
        answer = self.client.post("/api/hand-in", json=batch, headers=self.headers)
        return answer.status_code, answer.json


class Group:
    """A group in this process."""

    def __init__(self, folder: Path, url: str) -> None:
        from webapp.group.app import create_app

        self.url, self.folder = url, folder
        self.app = create_app(folder, DATABASE=url, testing=True, WTF_CSRF_ENABLED=False)
        self.store, self.folds = self.app.extensions["store"], self.app.extensions["folds"]

    def let_in(self, name: str = "a site") -> Wire:
        """Return a wire for a new device, let in by a one-time code."""
        token = devices.new_token(self.app.extensions["book"], by="OL", name=name)
        client = self.app.test_client(use_cookies=False)
        answer = client.post("/api/enrol", json={"token": token, "name": name})
        assert answer.status_code == 200, answer.data
        return Wire(self, answer.headers["Set-Cookie"].partition(";")[0])

    def place(self, book: Book) -> dict[str, Any]:
        """Return how far it has a site."""
        from webapp.group.intake import load_place

        return load_place(self.store, intake.book_id(book))

    def close(self) -> None:
        for name in ("folds", "store", "book"):
            self.app.extensions[name].close()


@pytest.fixture
def group(postgres: Postgres, tmp_path: Path) -> Iterator[Group]:
    made = Group(tmp_path / "group", postgres.make())
    yield made
    made.close()


@pytest.fixture
def make_site(tmp_path: Path) -> Iterator[Callable[..., Book]]:
    """A function that makes a site's book of the small world, with a name and so many entries told at random."""
    books: list[Book] = []

    def make(name: str, size: int = 0, seed: int = 1) -> Book:
        book = open_book(tmp_path / f"{name}.sqlite")
        books.append(book)
        fill_world(book)
        registry.set_site(book, {"name": name}, by="JK")
        tell(book, size, seed)
        return book

    yield make
    for book in books:
        book.close()


def tell(book: Book, size: int, seed: int = 1) -> None:
    """Hand so many entries in at a site, told at random, in small batches."""
    chance = random.Random(seed)
    had = (book.one("SELECT max(seq) AS n FROM entries") or {})["n"] or 0
    story = [
        make_any(chance, seq=had + n, read_at=NOW - timedelta(minutes=chance.randrange(1, 600)))
        for n in range(1, size + 1)
    ]
    for at in range(0, size, 25):
        send(book, *story[at : at + 25])
    unjudged.judge_all(book)  # as the site's server does between hand-ins


def row_of(book: Book, number: int) -> dict[str, Any]:
    """Return a row of a site's book as it travels."""
    found = book.one("SELECT book_no, body, received_at, skew_s, via, digest FROM entries WHERE book_no = ?", (number,))
    assert found
    return json.loads(json.dumps(found))


def at(hours: float) -> datetime:
    """So many hours before the world's present."""
    return NOW - timedelta(hours=hours)


def with_words(made: dict[str, Any], **words: str) -> dict[str, Any]:
    """Set fields of words: the helper of entries takes what stands after a blank for a unit."""
    made["values"] |= {name: {"raw": text} for name, text in words.items()}
    return made


def signed_in(group: Group) -> Any:
    """A client of somebody of the group's office."""
    keeper = group.app.extensions["book"]
    people.put_person(keeper, {"code": "OL", "name": "Ola", "access": "office"}, by="OL")
    people.set_password(keeper, "OL", "a long enough secret")
    client = group.app.test_client()
    assert client.get("/group/sites").status_code == 302
    signed = client.post("/sign-in", data={"code": "OL", "password": "a long enough secret"})
    assert signed.headers["Location"] == "/group/sites"
    return client
