"""What a change of limits concerns is judged again in slices: hand-ins between them, kills between them, one result."""

from __future__ import annotations

import contextlib
import os
import random
import tempfile
from collections.abc import Callable
from datetime import timedelta
from pathlib import Path
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings

from tests.book.conftest import C1, NOW, T1, VESSELS, fill_world, gauge, reading, send
from tests.book.stories import SKEWS, make_story, stories
from tests.book.test_convergence import ARRIVALS, check_book
from webapp.book import verification
from webapp.book.fold import fold, replay, unjudged
from webapp.book.fold.evaluate import FAULT
from webapp.book.fold.queries import for_entry
from webapp.book.house import registry
from webapp.book.house.check_limits import set_check_limit
from webapp.book.opening import open_book
from webapp.book.periods import closes
from webapp.book.record.errors import BookError
from webapp.book.record.store import Book

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
    """The least that a slice can be, one entry; and of what follows from a late one, nothing is worked out at once."""
    monkeypatch.setattr(replay, "SLICE_S", 0.0)
    monkeypatch.setattr(replay, "SLICE_LEAST", 1)
    monkeypatch.setattr(replay, "FOLLOW_S", 0.0)
    monkeypatch.setattr(replay, "FOLLOW_LEAST", 0)


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
            unjudged.judge_slice(book)
        # Beyond a seam everything is as it was: no entry meets states of two worlds that do not go together.
        assert book.query("SELECT * FROM queries WHERE code = ?", (FAULT,)) == []
        if chance.random() < 0.2:
            _kill_in_a_slice(book)
            book = open_book(path)
    for change in changes:
        change(book)
    fill_world(book)
    try:
        unjudged.judge_all(book)
        assert unjudged.describe_progress(book) == ""
        return check_book(book, story)
    finally:
        book.close()


def _kill_in_a_slice(book: Book) -> None:
    """What the slice under way has written is gone, what came before it stays."""
    before = fold.dump(book), unjudged.count_left(book)
    with contextlib.suppress(KeyboardInterrupt), book.write():
        unjudged.judge_slice(book)
        raise KeyboardInterrupt
    assert (fold.dump(book), unjudged.count_left(book)) == before
    book.close()


@pytest.mark.timeout(900)  # a story that fails is shortened, and that takes its time
@settings(
    max_examples=8, deadline=None,
    suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow, HealthCheck.data_too_large],
)
@given(story=stories(most=36), arrivals=ARRIVALS)
def test_limits_that_change_amid_arrivals_leave_the_fold_of_a_rebuild(
    tmp_path: Path, story: list[dict[str, Any]], arrivals: list[random.Random]
) -> None:
    _live_twice(tmp_path, story, arrivals)


@pytest.mark.soak
@pytest.mark.timeout(0)  # SOAK_HISTORIES says how many, SOAK_FROM at which story to go on
def test_limits_that_change_amid_arrivals_for_long(tmp_path: Path) -> None:
    first, many = int(os.environ.get("SOAK_FROM", 0)), int(os.environ.get("SOAK_HISTORIES", 10_000))
    for seed in range(first, first + many // 2):
        chance = random.Random(seed)
        story = make_story(chance, chance.randint(1, 60))
        _live_twice(tmp_path, story, [random.Random(seed * 31 + way) for way in range(2)])
        if seed % 250 == 249:
            print(f"{(seed + 1 - first) * 2} histories", flush=True)


def _live_twice(tmp_path: Path, story: list[dict[str, Any]], arrivals: list[random.Random]) -> None:
    """Tell a story twice, each time with limits, slices and kills in other places: both end as a rebuild does."""
    dumps = set()
    for arrival in arrivals:
        with tempfile.TemporaryDirectory(dir=tmp_path) as folder:
            dumps.add(live(Path(folder) / "book.db", story, arrival))
    assert len(dumps) == 1


def _stopped(book: Book, entry_id: str) -> set[str]:
    return {query["code"] for query in for_entry(book, entry_id) if query["weight"] == "stop"}


@pytest.fixture
def changed(book: Book) -> Book:
    """Eight readings of one ferment and eight gauges of one tank, when a limit changes: most are still to be judged."""
    send(book, *[reading(temp="15.0", gravity=f"1.0{60 - n}", seq=n, read_at=NOW - timedelta(days=30 - n))
                 for n in range(1, 9)])
    send(book, *[gauge(T1, "300", seq=10 + n, read_at=NOW - timedelta(days=20 - n)) for n in range(8)])
    registry.set_limit(book, "site", "", "gauge", "volume", None, [0, 100], "JK")
    return book


def test_a_change_is_written_at_once_and_the_rest_a_slice_at_a_time(changed: Book) -> None:
    assert registry.limits(changed)[0]["possible"] == [0, 100]
    seen = [unjudged.count_left(changed)]
    while unjudged.judge_slice(changed):
        seen.append(unjudged.count_left(changed))
    assert seen[0] >= 7 and seen == sorted(seen, reverse=True)
    assert unjudged.describe_progress(changed) == ""


def test_it_says_how_far_it_is(changed: Book) -> None:
    left = unjudged.count_left(changed)
    said = f"{left} of 16 entries are still to be judged by the limits and settings as they are now."
    assert unjudged.describe_progress(changed) == said
    while unjudged.count_left(changed) > 1:
        unjudged.judge_slice(changed)
    assert unjudged.describe_progress(changed).startswith("1 of 16 entries is still")


def test_a_hand_in_meanwhile_is_judged_by_the_new_limit_and_upon_stock_as_it_was(changed: Book) -> None:
    last = changed.query("SELECT id FROM entries WHERE mark = ? ORDER BY read_at DESC LIMIT 1", (T1,))[0]["id"]
    assert _stopped(changed, last) == set(), "the newest of the old ones is not judged yet"
    new, small = gauge(T1, "300", seq=30, read_at=NOW), gauge(T1, "90", seq=31, read_at=NOW + timedelta(minutes=1))
    results = send(changed, new, small)["results"]
    assert "impossible" in _stopped(changed, new["id"]) and "impossible" not in _stopped(changed, small["id"])
    assert results[0]["settled"] == "queried"
    assert unjudged.count_left(changed) > 0
    unjudged.judge_all(changed)
    assert "impossible" in _stopped(changed, last) and "impossible" in _stopped(changed, new["id"])
    kept = fold.dump(changed)
    fold.rebuild(changed)
    assert fold.dump(changed) == kept


def test_a_change_while_another_is_worked_off_concerns_all_again(changed: Book) -> None:
    for _ in range(5):
        unjudged.judge_slice(changed)
    registry.set_limit(changed, "site", "", "gauge", "volume", None, None, "JK")
    unjudged.judge_all(changed)
    kept = fold.dump(changed)
    assert changed.query("SELECT * FROM queries WHERE weight = 'stop'") == []
    fold.rebuild(changed)
    assert fold.dump(changed) == kept


def test_a_little_is_judged_at_once(book: Book, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(replay, "SLICE_LEAST", 50)
    new = gauge(T1, "300", read_at=NOW)
    send(book, new)
    registry.set_limit(book, "site", "", "gauge", "volume", None, [0, 100], "JK")
    assert (unjudged.count_left(book), _stopped(book, new["id"])) == (0, {"impossible"})


def test_no_period_is_closed_and_no_book_verified_before_all_is_judged(changed: Book) -> None:
    with pytest.raises(BookError, match=r"of 16 entries are still .* Close 2025-08 when they are\."):
        closes.draft_close(changed, "2025-08", NOW)
    assert verification.verify(changed) == []
    assert unjudged.count_left(changed) == 0
