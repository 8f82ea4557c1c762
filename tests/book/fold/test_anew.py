"""The book folded anew: it says how far it is, and where it is broken off, whoever opens the book goes on with it."""

from __future__ import annotations

import contextlib
import random
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from itertools import islice
from pathlib import Path

import pytest

from tests.bench.book_season import fill_house, plausible
from tests.bench.test_book_speed import send
from webapp.book.fold import fold, replay, unjudged
from webapp.book.opening import open_book
from webapp.book.record.store import Book

ENTRIES = 450
START = datetime(2025, 9, 1, tzinfo=UTC)


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Book]:
    """A book of some shifts, with entries amended, struck and answered."""
    chance = random.Random(4)
    with open_book(tmp_path / "book.db") as book:
        told = list(islice(plausible(fill_house(book, 6, 12), START, 300), ENTRIES))
        for n, first in enumerate(chance.sample(told, 40)):
            later = START + timedelta(days=9, minutes=n)
            ties = {"id": f"00000009-0000-7000-8000-{n:012x}", "typed_at": later.isoformat(), "seq": 9000 + n}
            if n % 2:
                told.append({**first, **ties, "amends": first["id"], "reason": "misread"})
            else:
                verdict = chance.choice(("struck", "stands"))
                said = {"entry": first["id"], "query": "", "verdict": verdict, "reason": "x"}
                values = {name: {"raw": text} for name, text in said.items()}
                told.append({**first, **ties, "kind": "answer", "mark": "", "mark_by": "", "values": values})
        for at in range(0, len(told), 100):
            send(book, told[at : at + 100])
        unjudged.judge_all(book)
        yield book


def test_it_comes_out_as_it_was_and_says_how_far_it_is(book: Book, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(fold, "ANEW_TOGETHER", 100)
    before, said = fold.dump(book), list[tuple[int, int]]()
    fold.rebuild(book, lambda done, many: said.append((done, many)))
    assert fold.dump(book) == before
    many = book.query("SELECT count(*) AS n FROM folded")[0]["n"]
    assert said == [*((done, many) for done in range(100, many, 100)), (many, many)]


def test_entries_in_their_order_leave_no_seam_and_are_worked_out_once(
    book: Book, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(fold, "ANEW_TOGETHER", 60)
    worked_out, evaluate = list[str](), replay.evaluate

    def count(plan: replay.Plan, *rest: object) -> replay.Outcome:
        assert book.query("SELECT * FROM seams") == []
        worked_out.append(plan.id)
        return evaluate(plan, *rest)  # type: ignore[arg-type]

    monkeypatch.setattr(replay, "evaluate", count)
    fold.rebuild(book)
    assert len(worked_out) == len(set(worked_out)) == book.query("SELECT count(*) AS n FROM folded")[0]["n"]


def test_what_is_broken_off_goes_on_where_it_was(book: Book, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(fold, "ANEW_TOGETHER", 100)
    before, path = fold.dump(book), book.path

    def break_off(done: int, _many: int) -> None:
        if done >= 300:
            raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        fold.rebuild(book, break_off)
    left = unjudged.count_left(book)
    assert 0 < left < ENTRIES - 250
    book.close()
    with open_book(path) as again:
        assert unjudged.count_left(again) == left, "what was folded is durable"
        assert "still to be judged" in unjudged.describe_progress(again)
        unjudged.judge_all(again)
        assert fold.dump(again) == before


def test_inside_a_write_it_is_one_with_it(book: Book) -> None:
    before = fold.dump(book)
    with contextlib.suppress(KeyboardInterrupt), book.write():
        fold.rebuild(book)
        raise KeyboardInterrupt
    assert (unjudged.count_left(book), fold.dump(book)) == (0, before)
