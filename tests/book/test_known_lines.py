"""The lines of a period with their uncertainty: one glass over many entries, against Monte Carlo (JCGM 101:2008)."""

from __future__ import annotations

from dataclasses import replace
from math import sqrt

import numpy as np
import pytest

from tests.book.conftest import C1, T1
from tests.book.told import Told, fill, start
from webapp.book.cellar.years import by_kind_and_year
from webapp.book.fold.states import NEWEST
from webapp.book.house import registry
from webapp.book.periods.known import Parts, known_line, known_total, load_held, parts_between
from webapp.book.periods.lines import WAREHOUSE, Line
from webapp.book.periods.periods import Account, Shown
from webapp.book.record.store import Book
from webapp.trade.marks import make_mark
from webapp.trade.uncertainty import Uncertain, combine

DRAWS = 100_000
EVER = ("0001", "9999")
MARKS = [make_mark(f"T{n}") for n in range(50, 59)]


@pytest.fixture
def told(book: Book) -> Told:
    return start(book)


def gauged(told: Told, *, instrument: str) -> Parts:
    """Nine tanks of 1000 L gauged for the first time: 500 L at 60.0 % vol, 20 degC."""
    registry.put_instrument(told.book, {"id": "AH-1", "sort": "alcoholmeter", "unit": "pct_glass"}, "JK")
    for mark in MARKS:
        registry.put_vessel(told.book, {"mark": mark, "name": mark[:3], "sort": "tank", "capacity_l": 1000}, "JK")
        told.say("gauge", mark, values={
            "volume": {"raw": "500", "unit": "L"}, "temp": {"raw": "20", "unit": "degC"},
            "glass": {"raw": "60.0", "unit": "pct_glass", **({"instrument": instrument} if instrument else {})},
            "purpose": {"raw": "opening"},
        })
    return parts_between(told.book, *EVER)


def line_of(parts: Parts) -> tuple[str, Shown]:
    [line] = [one for one in parts if one.side == "in" and one.party.startswith("out:")]
    return line.account, Shown("in", line.party, line.reason, line.sort, sum(part.ul for part in parts[line]))


def glass_alone(known: Uncertain) -> float:
    return abs(known.shared.get("AH-1/glass", 0.0))


def test_one_glass_over_nine_entries_counts_nine_times_and_all_else_three_times(told: Told) -> None:
    """JCGM 100:2008, 5.2.2. Limits: 0.1 % vol (class III) on 500 L; 0.3 % of 500 L and 2 mm of 1 m2; 0.2 degC."""
    parts = gauged(told, instrument="AH-1")
    account, line = line_of(parts)
    known = known_line(parts, account, line)
    [one, *_] = (part.known for part in parts[Line(account, "in", line.party, line.reason)])
    assert known and one
    assert known.value == line.ul / 1e6
    assert glass_alone(known) == pytest.approx(9 * glass_alone(one))
    rest = sqrt(known.standard**2 - glass_alone(known) ** 2)
    assert rest == pytest.approx(3 * sqrt(one.standard**2 - glass_alone(one) ** 2))
    dice = np.random.default_rng(7)

    def off(limit: float, count: int) -> np.ndarray:
        return dice.uniform(-limit, limit, (DRAWS, count))

    strength = 60.0 + off(0.1, 1) + off(0.05, 9)
    litres = 500.0 + off(1.5, 9) + off(2.0, 9)
    pure = (litres * strength / 100.0).sum(axis=1)
    # The thermometer, which names no instrument, moves strength and volume by less than the tenth of a standard
    # uncertainty here.
    assert known.standard == pytest.approx(float(np.std(pure)), rel=0.06)
    whole = known_line(parts, WAREHOUSE, line)
    assert whole and whole.standard == pytest.approx(known.standard)


def test_nine_glasses_that_nobody_named_count_three_times(told: Told) -> None:
    parts = gauged(told, instrument="")
    account, line = line_of(parts)
    known = known_line(parts, account, line)
    [one, *_] = (part.known for part in parts[Line(account, "in", line.party, line.reason)])
    assert known and one and known.standard == pytest.approx(3 * one.standard)


def test_what_evaporated_is_the_first_gauge_less_the_last(told: Told) -> None:
    """Three gauges of one cask: the middle one counts in both losses, once each way, and goes out of their sum."""
    told.say("gauge", T1, values={"volume": {"raw": "500", "unit": "L"}, "strength": {"raw": "60", "unit": "pct_vol"},
                                  "temp": {"raw": "20", "unit": "degC"}})
    fill(told, C1, "46.3", "206.4", "59.7")
    for gross in ("205.9", "205.2"):
        told.say("cask_regauge", C1, values={
            "gross": {"raw": gross, "unit": "kg"}, "glass": {"raw": "59.7", "unit": "pct_glass"},
            "temp": {"raw": "20", "unit": "degC"}, "condition": {"raw": "tight"},
        })
    parts = parts_between(told.book, *EVER)
    [line] = [one for one in parts if one.party == "out:evaporation"]
    found = [part.known for part in parts[line]]
    assert len(found) == 2 and found[0] and found[1]
    both = combine([(1.0, found[0]), (1.0, found[1])])
    assert both.value == pytest.approx(sum(part.ul for part in parts[line]) / 1e6, abs=1e-3)
    assert both.standard < sqrt(found[0].standard ** 2 + found[1].standard ** 2) / 1.2
    # Nobody says half: a total with a line that is not known has no uncertainty either.
    shown = Shown("out", line.party, line.reason, line.sort, sum(part.ul for part in parts[line]))
    other = Shown("out", "out:not_accounted", "rest", "", 5)
    account = Account(line.account, 0, (), (shown,), 0)
    assert known_total(parts, account, "out") == known_line(parts, line.account, shown)
    assert known_total(parts, Account(line.account, 0, (), (shown, other), 0), "out") is None
    assert known_line(parts, line.account, replace(shown, of="2025-01")) is None
    assert known_line(parts, line.account, replace(shown, ul=shown.ul + 1)) is None


def test_what_stands_in_vessels_is_known_with_what_they_share(told: Told) -> None:
    """JCGM 100:2008, 5.2.2: what a move took from one vessel is what it brought to the other, so all of it together is
    known as the one gauge before the move was; nine tanks that one glass gauged are off by it nine times.
    """
    told.say("gauge", T1, values={"volume": {"raw": "500", "unit": "L"}, "strength": {"raw": "60", "unit": "pct_vol"},
                                  "temp": {"raw": "20", "unit": "degC"}})
    [before] = load_held(told.book, NEWEST)
    fill(told, C1, "46.3", "206.4", "59.7")
    least, most = sorted(load_held(told.book, NEWEST), key=lambda one: one.ul)
    assert (least.mark, most.mark, most.measured_at[:2], least.measured_at) == (C1, T1, "20", "")
    both = combine([(1.0, least.known), (1.0, most.known)])
    assert both.standard == pytest.approx(before.known.standard, rel=1e-6)
    assert both.standard < sqrt(least.known.standard**2 + most.known.standard**2)
    assert least.ul + most.ul == pytest.approx(before.ul, abs=1)
    assert load_held(told.book, "2000-01-01") == []
    gauged(told, instrument="AH-1")
    nine = [one for one in load_held(told.book, NEWEST) if one.mark in MARKS]
    whole = combine([(1.0, one.known) for one in nine])
    assert len(nine) == 9 and glass_alone(whole) == pytest.approx(9 * glass_alone(nine[0].known))


def test_casks_of_a_year_are_known_with_the_glass_that_they_share(told: Told) -> None:
    told.say("gauge", T1, values={"volume": {"raw": "500", "unit": "L"}, "strength": {"raw": "60", "unit": "pct_vol"},
                                  "temp": {"raw": "20", "unit": "degC"}})
    fill(told, C1, "46.3", "206.4", "59.7")
    [plain], [row] = by_kind_and_year(told.book), by_kind_and_year(told.book, is_known=True)
    [cask] = [one for one in load_held(told.book, NEWEST) if one.mark == C1]
    assert plain.known is None and row.known and row.known.standard == pytest.approx(cask.known.standard)
    assert row.lpa_ul == cask.ul


def test_more_entries_than_can_be_followed_leave_it_open(told: Told) -> None:
    gauged(told, instrument="")
    assert parts_between(told.book, *EVER, most=8) == {}
    assert len(parts_between(told.book, *EVER, most=9)) == 1
