"""The invented year, loaded once for all tests of it."""

import time
from collections.abc import Iterator

import pytest

from webapp import demo
from webapp.book.fold.queries import for_entry
from webapp.book.opening import open_book
from webapp.book.record.store import Book


class Year:
    """The loaded book, with the questions by entry and what the load said on its way."""

    def __init__(self, book: Book, seconds: float, steps: list[tuple[int, int, str]]) -> None:
        self.book = book
        self.seconds = seconds
        self.steps = steps

    def entry(self, name: str, kind: str, day: str, person: str = "") -> str:
        """Return the id of the one entry of that kind on that vessel, by the local day that its phone wrote."""
        sql = (
            "SELECT e.id FROM entries e JOIN vessels v ON v.mark = e.mark WHERE v.name = ? AND e.kind = ? "
            "AND substr(e.read_at, 1, 10) = ? AND (? = '' OR e.person = ?)"
        )
        found = self.book.query(sql, (name, kind, day, person, person))
        assert len(found) == 1, (name, kind, day, len(found))
        return str(found[0]["id"])

    def asked(self, entry_id: str) -> list[tuple[str, str, str]]:
        """Return (code, weight, field) of the questions that stand on an entry, answered or not."""
        rows = self.book.query("SELECT code, weight, field FROM queries WHERE entry = ? ORDER BY code", (entry_id,))
        return [(row["code"], row["weight"], row["field"]) for row in rows]

    def words(self, entry_id: str, code: str) -> str:
        (words,) = [row["words"] for row in for_entry(self.book, entry_id) if row["code"] == code]
        return str(words)

    def suggested(self, entry_id: str, code: str) -> list[dict[str, str]]:
        (found,) = [row["suggestions"] for row in for_entry(self.book, entry_id) if row["code"] == code]
        assert isinstance(found, list)
        return found


@pytest.fixture(scope="session")
def year(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Year]:
    data_dir = tmp_path_factory.mktemp("demo")
    steps: list[tuple[int, int, str]] = []
    began = time.process_time()
    demo.load(data_dir, lambda done, total, words: steps.append((done, total, words)))
    seconds = time.process_time() - began
    with open_book(data_dir / "book.sqlite") as book:
        yield Year(book, seconds, steps)
