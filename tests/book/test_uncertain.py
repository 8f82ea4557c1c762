"""Stocks, losses and balances with their uncertainty, in a book told line by line."""

from __future__ import annotations

from math import sqrt

import numpy as np
import pytest

from tests.book.conftest import C1, T1, gauge
from tests.book.test_stock_spirit import the_run
from tests.book.told import Told, fill, start
from webapp.book.cellar import casks
from webapp.book.cellar.known import Fallen, known_rates, last_fall, load_known
from webapp.book.fold import fold
from webapp.book.fold.row_reader import read_all_as_folded
from webapp.book.house import registry
from webapp.book.house.uncertain import find_holding, load_by_entry, uncertain_holding
from webapp.book.record.store import Book
from webapp.book.still import runs
from webapp.book.still.run_account import balance_of
from webapp.book.still.run_uncertain import load_open
from webapp.kinds.state import EMPTY_VESSEL
from webapp.trade.caskloss import loss_rates
from webapp.trade.uncertainty import Uncertain


@pytest.fixture
def told(book: Book) -> Told:
    return start(book)


def read_with(**said: str) -> dict[str, dict[str, str]]:
    """Values of an entry, each as `figure unit` or `figure unit instrument`."""
    names = ("raw", "unit", "instrument")
    return {name: dict(zip(names, text.split(), strict=False)) for name, text in said.items()}


def holding(told: Told, mark: str) -> Uncertain:
    known = find_holding(told.book, fold.load_state(told.book, f"v:{mark}"))
    assert known
    found = uncertain_holding(known, read_all_as_folded(told.book, known.rows))
    assert found
    assert found.value == told.holds(mark)["lpa_l"]
    return found


def lpa_of(told: Told, entry: str) -> Uncertain:
    return load_by_entry(told.book, [entry])[entry]["lpa"]


def test_a_dipped_tank_is_known_as_its_dip_is(told: Told) -> None:
    """0.3 % of 500 L and 2 mm of a cube's bottom (rectangular), 0.1 % vol of class III and its interval of 0.1."""
    registry.put_vessel(told.book, {"mark": T1, "capacity_l": 1000}, "JK")
    dipped = told.say(gauge, T1, "500", "60")
    found = holding(told, T1)
    assert found.standard == lpa_of(told, dipped).standard
    litres = sqrt((1.5 / sqrt(3)) ** 2 + (2.0 / sqrt(3)) ** 2)
    strength = sqrt((0.1 / sqrt(3)) ** 2 + (0.1 / sqrt(12)) ** 2)
    assert found.standard == pytest.approx(sqrt((litres * 0.6) ** 2 + (500 * strength / 100) ** 2), rel=0.01)


def test_what_was_moved_since_adds_its_own(told: Told) -> None:
    told.say(gauge, T1, "500", "60")
    before = holding(told, T1)
    filled = fill(told, C1, "46.3", "206.4", "59.7")
    after = holding(told, T1)
    moved = lpa_of(told, filled)
    assert after.standard == pytest.approx(sqrt(before.standard**2 + moved.standard**2), rel=1e-6)
    assert holding(told, C1).standard == pytest.approx(moved.standard)
    told.say(gauge, T1, "310", "60")
    assert holding(told, T1).standard < after.standard
    assert find_holding(told.book, EMPTY_VESSEL) is None


def test_the_class_of_an_instrument_and_its_check_count_at_once(told: Told) -> None:
    registry.put_instrument(told.book, {"id": "AH-1", "sort": "alcoholmeter", "unit": "pct_glass"}, "JK")
    entry = told.say("gauge", T1, values=read_with(volume="500 L", glass="60.0 pct_glass AH-1", temp="20 degC"))
    plain = lpa_of(told, entry).shared["AH-1/glass"]
    registry.put_instrument(told.book, {"id": "AH-1", "accuracy": "I"}, "JK")
    assert lpa_of(told, entry).shared["AH-1/glass"] == pytest.approx(plain / 2)
    registry.put_instrument(told.book, {"id": "AH-1", "due_on": "2025-01-01"}, "JK")
    assert lpa_of(told, entry).shared["AH-1/glass"] == pytest.approx(plain)
    registry.put_instrument(told.book, {"id": "AH-1", "interval": 0.5, "due_on": ""}, "JK")
    assert lpa_of(told, entry).shared["AH-1/glass"] == pytest.approx(plain * 5)


def fall_of(told: Told) -> Fallen | None:
    gauges = casks.gauges_of(fold.load_state(told.book, f"v:{C1}"))
    return last_fall(load_known(told.book, gauges), gauges)


def test_a_fall_with_one_glass_and_one_scale_is_better_known(told: Told) -> None:
    told.say(gauge, T1, "500", "60")
    fill(told, C1, "46.3", "206.4", "59.7")
    told.say("cask_regauge", C1, gross="204.0 kg", glass="59.0 pct_glass", temp="20 degC", condition="tight")
    told.say("cask_regauge", C1, gross="203.0 kg", glass="58.9 pct_glass", temp="20 degC", condition="tight")
    apart = fall_of(told)
    for name in ("AH-1", "TH-1", "SC-1"):
        registry.put_instrument(told.book, {"id": name, "sort": "any"}, "JK")
    for gross, glass in (("202.0", "58.8"), ("201.0", "58.7")):
        values = read_with(gross=f"{gross} kg SC-1", glass=f"{glass} pct_glass AH-1", temp="20 degC TH-1")
        told.say("cask_regauge", C1, values=values | {"condition": {"raw": "tight"}})
    together = fall_of(told)
    assert apart and together
    assert together.lpa.value == pytest.approx(apart.lpa.value, abs=0.02)
    assert together.lpa.standard < apart.lpa.standard / 1.5
    assert last_fall({}, []) is None


def test_the_share_a_year_is_as_well_known_as_both_its_gauges(told: Told) -> None:
    """Against Monte Carlo (JCGM 101:2008, 7): 200,000 draws of the errors that both gauges share, and of their own."""
    for name in ("AH-1", "TH-1", "SC-1"):
        registry.put_instrument(told.book, {"id": name, "sort": "any"}, "JK")
    told.say(gauge, T1, "500", "60")
    fill(told, C1, "46.3", "206.4", "59.7")
    for gross, glass in (("204.0", "59.2"), ("201.0", "58.7")):
        values = read_with(gross=f"{gross} kg SC-1", glass=f"{glass} pct_glass AH-1", temp="20 degC TH-1")
        told.say("cask_regauge", C1, values=values | {"condition": {"raw": "tight"}})
    gauges = casks.gauges_of(fold.load_state(told.book, f"v:{C1}"))[-2:]
    for one, years in zip(gauges, (10.0, 11.5), strict=True):
        one["years"] = years
    found = known_rates(load_known(told.book, gauges), gauges, loss_rates(gauges))
    assert found.last and found.fill and found.last.value == found.fill.value

    then, now = (lpa_of(told, one["entry"]) for one in gauges)
    rng = np.random.default_rng(7)
    shared = {error: rng.standard_normal(200_000) for error in {*then.shared, *now.shared}}
    drawn = [
        one.value + sum(part * shared[error] for error, part in one.shared.items())
        + np.sqrt(one.own) * rng.standard_normal(200_000) for one in (then, now)
    ]
    share = 100 * (1 - (drawn[1] / drawn[0]) ** (1 / 1.5))
    assert found.last.value == pytest.approx(float(share.mean()), abs=0.01)
    assert found.last.standard == pytest.approx(float(share.std()), rel=0.02)
    assert set(then.shared) & set(now.shared), "one glass, one scale"
    assert known_rates({}, [], loss_rates([])) == (None, None)
    papers = [{name: value for name, value in one.items() if name != "entry"} for one in gauges]
    by_papers = known_rates(load_known(told.book, papers), papers, loss_rates(papers))  # type: ignore[arg-type]
    assert by_papers == (None, None)


def test_the_balance_of_a_run_is_as_well_known_as_its_wash(told: Told) -> None:
    """482 L at 5.1 % by attenuation, off by 0.5 at most (common practice): 0.5 / sqrt 3 of 482 L, 1.39 L; then dips."""
    run_id, _ = the_run(told)
    run = runs.run(told.book, run_id)
    assert run
    balance = balance_of(run, registry.site(told.book))
    assert balance
    found = load_open(told.book, run_id, run, balance)
    assert found
    assert found.value == balance.open
    wash = 482 * 0.5 / sqrt(3) / 100
    assert wash < found.standard < wash * 1.1
