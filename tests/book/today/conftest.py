"""A small book asked about its day, by entries through the one door."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime, timedelta
from typing import Any

import pytest

from tests.book.conftest import book, send, settled
from webapp.book.fold.registry_rows import load_site
from webapp.book.record.store import Book
from webapp.book.today import due, facts
from webapp.book.today.due import Due
from webapp.book.today.facts import Facts

__all__ = ["book"]


def ask(book: Book) -> Facts:
    """Return the facts of a book as it stands."""
    return facts.load_facts(book, facts.load_registry(book), "metric")


def ask_anew(book: Book) -> Facts:
    """Return the facts of a book, nothing being held from before."""
    facts._held.clear()
    return ask(book)


def due_at(book: Book, now: datetime) -> list[Due]:
    """Return all that is due in a book at a time."""
    registry = facts.load_registry(book)
    site = load_site(book)
    return due.all_due(facts.load_facts(book, registry, "metric"), registry, site, now, now.date().isoformat())


def keys(found: list[Due]) -> list[tuple[str, str]]:
    """Return the sort and the vessel of each."""
    return [(one.key, one.mark) for one in found]


@pytest.fixture
def hand(book: Book) -> Callable[..., None]:
    """Hand in entries one after another, each soon after it was read."""

    def give(*entries: dict[str, Any]) -> None:
        for one in entries:
            read = datetime.fromisoformat(one["read_at"])
            assert settled(send(book, one, now=read + timedelta(minutes=2)))[0] in ("entered", "queried"), one

    return give
