"""What a change of limits concerns is judged again in slices: hand-ins between them, kills between them, one result."""

from __future__ import annotations

import random
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st

from tests.book.conftest import C1, NOW, T1, VESSELS, fill_world, gauge, reading, send
from tests.book.test_convergence import SKEWS, check_book, make_story
from webapp.book import closes, fold, registry, replay, unjudged
from webapp.book.check_limits import set_check_limit
from webapp.book.errors import BookError
from webapp.book.queries import for_entry
from webapp.book.store import Book, open_book

# Each moves stock: what is impossible or beyond the brim stops an entry until it is answered. The last ones hold.
CHANGES: list[Callable[[Book], Any]] = [
    lambda book: registry.set_limit(book, "site", "", "gauge", "volume", None, [0, 100], "JK"),
    lambda book: set_check_limit(book, "site", "", "wash_stop_pct", 5.0, "JK"),
    lambda book: registry.set_limit(book, "sort", "cask", "cask_fill", "gross", None, [0, 120], "JK"),
    lambda book: set_check_limit(book, "site", "", "source_short_pct", 400.0, "JK"),
    lambda book: registry.put_vessel(book, {"mark": T1, "sort": "tank", "capacity_l": 150}, "JK"),
    lambda book: set_check_limit(book, "vessel", C1, "cask_brim", 0.5, "JK"),
    lambda book: registry.set_limit(book, "site", "", "gauge", "volume", None, [0, 200], "JK"),
    lambda book: set_check_limit(book, "site", "", "source_short_pct", 0.1, "JK"),
    lambda book: registry.set_site(book, {"height_m": 700.0}, "JK"),
]


@pytest.fixture(autouse=True)
def _slices_of_one(monkeypatch: pytest.MonkeyPatch) -> None:
    """The least that a slice can be: one entry."""
    monkeypatch.setattr(replay, "SLICE_S", 0.0)
    monkeypatch.setattr(replay, "SLICE_LEAST", 1)


def live(path: Path, story: list[dict[str, Any]], chance: random.Random) -> bytes:
    """Hand a story in while limits change, slices are worked off, and the program is killed; return the dump."""
    order, changes = story + chance.sample(story, len(story) // 4), list(CHANGES)
    chance.shuffle(order)
    book = open_book(path)
    fill_world(book, but=chance.sample([row["mark"] for row in VESSELS if row["mark"] != C1], 2))
    while order:
        if changes and chance.random() < 0.4:
            changes.pop(0)(book)
        device = chance.choice(sorted({e["device"] for e in order}))
        batch = [e for e in order if e["device"] == device][: chance.choice((1, 2, 5, 40))]
        send(book, *batch, skew_s=SKEWS[device], device=device)
        for one in batch:
            order.remove(one)
        for _ in range(chance.choice((0, 1, 4))):
            unjudged.work(book)
        if chance.random() < 0.2:
            _kill_in_a_slice(book)
            book = open_book(path)
    for change in changes:
        change(book)
    fill_world(book)
    try:
        unjudged.finish(book)
        assert unjudged.words(book) == ""
        return check_book(book, story)
    finally:
        book.close()


def _kill_in_a_slice(book: Book) -> None:
    """What the slice under way has written is gone, what came before it stays."""
    before = fold.dump(book), unjudged.left(book)
    with pytest.raises(KeyboardInterrupt), book.write():
        unjudged.work(book)
        raise KeyboardInterrupt
    assert (fold.dump(book), unjudged.left(book)) == before
    book.close()


@settings(
    max_examples=10, deadline=None, phases=(Phase.explicit, Phase.reuse, Phase.generate),
    suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow],
)  # fmt: skip
@given(seed=st.integers(0, 2**32), size=st.integers(1, 60))
def test_limits_that_change_amid_arrivals_leave_the_fold_of_a_rebuild(tmp_path: Path, seed: int, size: int) -> None:
    story = make_story(random.Random(seed), size)
    dumps = set()
    for way in range(2):
        path = tmp_path / f"{seed}-{way}.db"
        dumps.add(live(path, story, random.Random(seed * 31 + way)))
        for file in tmp_path.glob(f"{path.name}*"):
            file.unlink()
    assert len(dumps) == 1
