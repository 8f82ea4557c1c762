"""The same entries, in any order, in any batches, any number of times, give the same fold: to the byte."""

from __future__ import annotations

import os
import random
import shutil
import tempfile
from pathlib import Path
from typing import Any

import pytest
from hypothesis import HealthCheck, find, given, settings
from hypothesis import strategies as st

import webapp.kinds
from tests.book.conftest import C2, VESSELS, fill_world, send
from tests.book.oracle import as_bytes, fold_kept, fold_plainly
from tests.book.stories import MAKERS, SKEWS, Telling, draw_telling, make_story, stories, tell_story
from webapp.book.fold import fold, month_sums
from webapp.book.fold.evaluate import FAULT
from webapp.book.house import registry
from webapp.book.opening import open_book
from webapp.book.periods import accounts
from webapp.book.record import log
from webapp.book.record.store import Book


def hand_in_shuffled(book: Book, story: list[dict[str, Any]], chance: random.Random) -> None:
    """Hand all of it in: shuffled, in batches of any size, some of it twice, while the desk fills the registry."""
    late = chance.sample([row["mark"] for row in VESSELS] + ["NS"], 3)
    fill_world(book, but=late)
    desk = [
        lambda: fill_world(book),
        lambda: registry.put_vessel(book, {"mark": C2, "sort": "cask", "tare_kg": 44.0, "capacity_l": 228}, "JK"),
        lambda: registry.set_limit(book, "sort", "fermenter", "ferment_reading", "temp", [10, 16], None, "JK"),
        lambda: registry.set_site(book, {"checks": {"clock_note_s": 90}}, "JK"),
    ]
    order = story + chance.sample(story, len(story) // 4)
    chance.shuffle(order)
    while order:
        if desk and chance.random() < 0.3:
            desk.pop(0)()
        device = chance.choice(sorted({e["device"] for e in order}))
        batch = [e for e in order if e["device"] == device][: chance.choice((1, 2, 5, 40))]
        send(book, *batch, skew_s=SKEWS[device], device=device)
        for one in batch:
            order.remove(one)
    for change in desk:
        change()


def check_book(book: Book, story: list[dict[str, Any]]) -> bytes:
    """Everything is there once, the fold is what its definition says and what a rebuild gives. Return its dump."""
    assert book.one("SELECT count(*) AS n FROM entries") == {"n": len(story)}
    kept = fold.dump(book)
    assert as_bytes(fold_kept(book)) == as_bytes(fold_plainly(book))
    fold.rebuild(book)
    assert fold.dump(book) == kept
    assert log.verify(book) == []
    assert book.query("SELECT * FROM queries WHERE code = ?", (FAULT,)) == []
    check_accounts(book)
    return kept


def check_accounts(book: Book) -> None:
    """Double entry: over all accounts nothing is made or lost; each vessel holds the sum of its flows, none below 0.

    Summed here anew, row by row, so that neither the book's sums nor its own check can hide a fault.
    """
    assert accounts.verify(book) == []
    assert month_sums.verify(book) == []
    sums: dict[str, list[int]] = {}
    for row in book.query("SELECT * FROM flows"):
        for account, sign in ((row["source"], -1), (row["target"], 1)):
            held = sums.setdefault(account, [0, 0])
            held[0] += sign * row["lpa_ul"]
            held[1] += sign * row["mass_g"]
        assert min(row["lpa_ul"], row["volume_ml"], row["mass_g"]) >= 0
        for side in ("source", "target"):
            inside = row[side][:2] in ("v:", "r:")
            assert bool(row[f"{side}_fill"]) == inside, row
            assert bool(row[f"{side}_account"]) == (inside or row[side][:2] == "b:"), row
    assert [sum(parts) for parts in zip(*sums.values(), strict=True)] in ([], [0, 0])
    for key, state in fold_kept(book)["states"].items():
        if key[:2] in ("v:", "r:", "b:"):
            holder = (state["holds"] if key[0] == "v" else state) or {}
            assert [holder.get("lpa_ul", 0), holder.get("mass_g", 0)] == sums.get(key, [0, 0]), key
            assert min(holder.get("lpa_ul", 0), holder.get("mass_g", 0), holder.get("volume_ml", 0)) >= 0, key


def _empty(folder: Path) -> Path:
    """A book with nothing in it, made once: laying the tables takes longer than a short story does."""
    path = folder / "empty.db"
    if not path.exists():
        open_book(path).close()
    return path


def run_one(folder: Path, story: list[dict[str, Any]], arrivals: list[random.Random]) -> None:
    """One story, handed in in several ways; all folds alike."""
    dumps = set()
    for arrival in arrivals:
        with (
            tempfile.TemporaryDirectory(dir=folder) as own,
            open_book(shutil.copy(_empty(folder), Path(own) / "book.db")) as book,
        ):
            hand_in_shuffled(book, story, arrival)
            dumps.add(check_book(book, story))
    assert len(dumps) == 1


ARRIVALS = st.lists(st.randoms(use_true_random=False), min_size=2, max_size=2)


@pytest.mark.timeout(900)  # a story that fails is shortened, and that takes its time
@settings(
    max_examples=12, deadline=None,
    suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow, HealthCheck.data_too_large],
)
@given(story=stories(most=50), arrivals=ARRIVALS)
def test_any_order_of_arrival_gives_the_same_fold(
    tmp_path: Path, story: list[dict[str, Any]], arrivals: list[random.Random]
) -> None:
    run_one(tmp_path, story, arrivals)


@pytest.mark.soak
def test_a_story_that_fails_is_shortened() -> None:
    """Six kinds and an amendment fail only in stories of six entries or more: ten tell it, not fifty."""

    def fails(story: list[dict[str, Any]]) -> bool:
        return len({one["kind"] for one in story}) >= 6 and any(one["amends"] for one in story)

    shortest = find(stories(most=50), fails, settings=settings(max_examples=200, database=None, derandomize=True))
    assert 6 <= len(shortest) <= 10


def test_a_telling_left_out_leaves_a_story() -> None:
    """What it was about is then another entry, and an answer with nothing before it is not said."""
    chance = random.Random(4)
    tellings: list[Telling] = [draw_telling(chance) for _ in range(30)]
    for leave_out in range(30):
        story = tell_story(one for n, one in enumerate(tellings) if n != leave_out)
        known: set[str] = set()
        for one in story:
            about = one["amends"] or one["values"].get("entry", {}).get("raw")
            assert about is None or about in known
            known.add(one["id"])
        for device in SKEWS:
            seqs = [one["seq"] for one in story if one["device"] == device]
            assert seqs == list(range(1, len(seqs) + 1))


def test_the_stories_tell_of_every_kind(tmp_path: Path) -> None:
    """Convergence would prove little if some kind never came, or never had an effect."""
    entered: dict[str, int] = {}
    reached: set[str] = set()
    for seed in range(6):
        with open_book(tmp_path / f"{seed}.db") as book:
            fill_world(book)
            hand_in_shuffled(book, make_story(random.Random(seed), 200), random.Random(seed))
            sql = "SELECT kind FROM folded f JOIN entries e ON e.id = f.entry WHERE f.standing = 'entered'"
            for row in book.query(sql):
                entered[row["kind"]] = entered.get(row["kind"], 0) + 1
            sides = "SELECT source AS side FROM flows UNION SELECT target FROM flows"
            reached |= {row["side"] for row in book.query(sides)}
    assert set(entered) == {kind.name for kind in webapp.kinds.ALL} - {"answer"}
    assert min(entered.values()) >= 3, entered
    assert {name.split()[0] for name in MAKERS} - {"stranger"} == set(entered)
    wanted = ("stillage", "evaporation", "soakage", "leak", "spill", "sample", "destroyed", "gauge_difference",
              "filter_loss", "removed", "received", "transit", "overage", "shortage", "not_accounted")
    assert reached >= {f"out:{name}" for name in wanted}, set(wanted) - {name[4:] for name in reached}


@pytest.mark.soak
@pytest.mark.timeout(0)  # hours: SOAK_HISTORIES says how many, SOAK_FROM at which story to go on
def test_any_order_of_arrival_gives_the_same_fold_for_long(tmp_path: Path) -> None:
    """Histories of arrival: each story is handed in in four ways of its own. One story in fifty is a long one."""
    ways, first, many = 4, int(os.environ.get("SOAK_FROM", 0)), int(os.environ.get("SOAK_HISTORIES", 100_000))
    for seed in range(first, first + -(-many // ways)):
        story = make_story(random.Random(1_000_000 + seed), 160 if seed % 50 == 0 else 3 + seed % 20)
        run_one(tmp_path, story, [random.Random(seed * 31 + way) for way in range(ways)])
        if seed % 250 == 249:
            print(f"{(seed + 1 - first) * ways} histories", flush=True)
