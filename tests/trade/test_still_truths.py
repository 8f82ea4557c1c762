"""The simulated stills that forecasts are tried on, and a small table of them. The whole table is a bench."""

from __future__ import annotations

import numpy as np
import pytest

from tests.trade import still_truths
from tests.trade.still_table import Told, by_the_book, line_of, nearest_runs, questions, runs_of, straight_line
from webapp.trade.vle import vapour_mole_fraction


@pytest.mark.parametrize("structure", still_truths.STRUCTURES)
def test_no_alcohol_is_lost_or_made_in_the_simulation(structure: str) -> None:
    stills = [still_truths.make_still(k, sort, structure) for k, sort in enumerate(still_truths.CLASSES)]
    plans = [still_truths._Plan(still, np.random.default_rng(k)) for k, still in enumerate(stills)]
    column = still_truths._Column(stills, plans)
    before = column.ethanol.copy()
    column._fill()
    held = (column.held * column.x).sum(1)
    assert column.ethanol + held == pytest.approx(before)
    off, half = np.zeros(len(stills)), np.ones(len(stills))
    for k in range(1500):
        passed, x = column._step(half, half, np.full(len(stills), k < 100))
        off += passed * x * still_truths.STEP_S
    there = column.ethanol + (column.held * column.x).sum(1) + off
    assert np.all(off > 0.01 * before)
    # A change of what a weir holds, and one section taken after the other, cost a little.
    assert there == pytest.approx(before, rel=0.03)


def test_the_equilibria_are_not_the_models() -> None:
    for structure, least in (("weirs", 0.002), ("leaks", 0.004)):
        xs, ys = still_truths._equilibria(structure)
        own = np.array([vapour_mole_fraction(float(x)) for x in xs[40:340:20]])
        apart = np.abs(own - ys[40:340:20])
        assert least < apart.max() < 0.02


def test_what_a_table_sums_up() -> None:
    told = [Told(-4.0, True, 30.0), Told(10.0, False, 20.0), Told(None), Told(1.0, True, 40.0)]
    line = line_of(told)
    assert (line.count, line.median_min, line.p90_min, line.widest_min) == (4, 4.0, 10.0, 40.0)
    assert (line.held, line.silent) == (pytest.approx(2 / 3), 0.25)


def test_a_still_of_plates_with_its_past_by_the_books_path() -> None:
    # Seeds that nothing was tuned on. Few runs: the limits are far, the table of the bench has the figures.
    stills = runs_of("leaks", "five to seven", range(900, 902))
    asked = list(questions("five to seven", stills, with_past=True))
    assert len(asked) >= 12
    book, line, nearest = ([answer(one) for one in asked] for answer in (by_the_book, straight_line, nearest_runs))
    lines = [line_of(told) for told in (book, line, nearest)]
    assert lines[0].median_min < min(lines[1].median_min, 20.0)
    assert lines[0].held >= 0.5 and lines[0].silent <= 0.35
    assert lines[0].widest_min <= 55.0
