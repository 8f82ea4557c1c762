"""The same entries, in any order, in any batches, any number of times, give the same fold: to the byte."""

from __future__ import annotations

import random
from datetime import datetime, timedelta
from pathlib import Path
from typing import Any

import pytest
from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st

from tests.book.conftest import (
    C1,
    C2,
    F1,
    F2,
    NOW,
    R1,
    R2,
    S1,
    T1,
    VESSELS,
    answer,
    charge,
    entry,
    fill_world,
    fruit,
    gauge,
    reading,
    send,
)  # fmt: skip
from tests.book.oracle import as_bytes, fold_kept, fold_plainly
from webapp.book import fold, log, registry
from webapp.book.store import Book, open_book
from webapp.trade.marks import make_mark

SKEWS = {"d-one": 0.0, "d-two": -3661.2, "d-three": 95.0, "d-four": 86_400.0 * 400}


def make_story(chance: random.Random, size: int) -> list[dict[str, Any]]:
    """A season in little: readings, fruit, runs, gauges, and people who amend, strike and answer, on four phones."""
    story: list[dict[str, Any]] = []
    seqs = dict.fromkeys(SKEWS, 0)

    def said(make: Any, **given: Any) -> None:
        device = chance.choice(list(SKEWS))
        seqs[device] += 1
        # Few different minutes: so that ties come up, and everything meddles with everything.
        true_at = NOW - timedelta(minutes=10 * chance.randrange(1, 60), days=chance.choice((0, 0, 0, 90, 400)))
        read_at = true_at + timedelta(seconds=SKEWS[device])
        typed_at = read_at + timedelta(minutes=chance.choice((0, 1, 45)))
        given = {"read_at": read_at} | given
        story.append(make(typed_at=typed_at, device=device, seq=seqs[device], **given))

    for _ in range(size):
        earlier = [e for e in story if e["kind"] != "answer"]
        dice = chance.random()
        if dice < 0.12 and earlier:
            old = chance.choice(earlier)
            again = {"amends": old["id"], "because": "misread"}
            if chance.random() < 0.6:
                again["read_at"] = old["read_at"]
            said(_maker(chance), **again)
        elif dice < 0.22 and story:
            about = chance.choice(story)["id"]
            said(answer, about=about, verdict=chance.choice(("stands", "stands", "struck")),
                 query=chance.choice(("", "", "ferment_gravity_rose", "unusual", "impossible:gravity")))  # fmt: skip
        else:
            said(_maker(chance))
    return story


def _maker(chance: random.Random) -> Any:
    def run_reading(**more: Any) -> dict[str, Any]:
        return entry("run_reading", S1, glass=f"{chance.randrange(200, 860) / 10} pct_glass", temp="16 degC", **more)

    def cut(**more: Any) -> dict[str, Any]:
        event, to = chance.choice((("heads_cut", R2), ("hearts_cut", R1), ("first_drop", R1)))
        return entry("cut", S1, event=event, receiver=to, reason="nose", **more)

    def run_end(**more: Any) -> dict[str, Any]:
        return entry("run_end", S1, reason="strength", **more)

    def fraction(**more: Any) -> dict[str, Any]:
        part = chance.choice(("hearts", "heads", "stillage"))
        return entry("fraction_gauge", chance.choice((R1, R2)), still=S1, fraction=part, volume="40 L", temp="18 degC",
                     strength=f"{chance.randrange(60, 75)} pct_vol",
                     goes_to=chance.choice(("stays", "stays", "drain")), **more)  # fmt: skip

    def regauge(**more: Any) -> dict[str, Any]:
        return entry("cask_regauge", chance.choice((C1, C2)),
                     gross=f"{chance.randrange(180, 240)} kg", glass="61.0 pct_glass",
                     temp="12 degC", condition="tight", **more)  # fmt: skip

    def stranger(**more: Any) -> dict[str, Any]:
        return reading(make_mark("Z9"), person="XX", **more) if chance.random() < 0.3 else run_end(**more)

    def ferment(**more: Any) -> dict[str, Any]:
        gravity = chance.choice(("1.052", "1.040", "1.043", "1.031", "1.020", "1.4"))
        return reading(chance.choice((F1, F2)), gravity, str(chance.randrange(12, 30)), **more)

    def second_run(**more: Any) -> dict[str, Any]:
        feints = chance.choice(({}, {"feints": "40 L", "feints_strength": "30 pct_vol", "feints_from": R2}))
        return entry("charge", S1, from_vessel=chance.choice((R1, F2)), wash=f"{chance.choice((20, 40))} L",
                     wash_strength="30 pct_vol", heads_to=R1, **feints, **more)  # fmt: skip

    makers = (
        ferment, ferment, ferment, fruit, charge, second_run, run_reading, run_reading, cut,
        run_end, fraction, regauge, stranger,
    )  # fmt: skip
    return chance.choice((*makers, lambda **more: gauge(T1, str(chance.randrange(100, 900)), **more)))


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
    check_flows(book)
    return kept


def check_flows(book: Book) -> None:
    """Double entry: over all accounts nothing is made or lost, in any of the three measures."""
    for measure in ("lpa_ul", "volume_ml", "mass_g"):
        balances: dict[str, int] = {}
        for row in book.query(f"SELECT source, target, {measure} AS amount FROM flows"):
            balances[row["source"]] = balances.get(row["source"], 0) - row["amount"]
            balances[row["target"]] = balances.get(row["target"], 0) + row["amount"]
        assert sum(balances.values()) == 0
        if measure == "lpa_ul":
            check_stock(book, balances)


def check_stock(book: Book, balances: dict[str, int]) -> None:
    """The sum of the flows over a vessel is its stock: kept by the fold, and held by the card."""
    for key, state in fold_kept(book)["states"].items():
        assert state.get("stock_ul", 0) == balances.get(key, 0), key
        holds = state.get("holds", {}) if key.startswith("v:") else {}
        if holds is None:
            assert state["stock_ul"] == 0, key
        elif holds.get("lpa_l") and not holds.get("charged"):
            assert abs(state["stock_ul"] - holds["lpa_l"] * 1e6) <= 2, key  # each entry rounds to a microlitre


def run_one(folder: Path, seed: int, size: int, ways: int) -> None:
    """One story, handed in in several ways; all folds alike."""
    chance = random.Random(seed)
    story = make_story(chance, size)
    dumps = set()
    for way in range(ways):
        with open_book(folder / f"{seed}-{way}.db") as book:
            hand_in_shuffled(book, story, random.Random(seed * 31 + way))
            dumps.add(check_book(book, story))
    assert len(dumps) == 1
    for file in folder.glob(f"{seed}-*"):
        file.unlink()


@settings(
    max_examples=12, deadline=None, phases=(Phase.explicit, Phase.reuse, Phase.generate),
    suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow],
)  # fmt: skip
@given(seed=st.integers(0, 2**32), size=st.integers(1, 60))
def test_any_order_of_arrival_gives_the_same_fold(tmp_path: Path, seed: int, size: int) -> None:
    run_one(tmp_path, seed, size, 2)


@pytest.mark.soak
@pytest.mark.timeout(3600)
def test_any_order_of_arrival_gives_the_same_fold_for_long(tmp_path: Path) -> None:
    start, seed = datetime.now(), 0  # noqa: DTZ005
    while datetime.now() - start < timedelta(minutes=10):  # noqa: DTZ005
        run_one(tmp_path, seed, 20 + seed % 160, 3)
        seed += 1
    print(f"{seed} stories, three ways each")
