"""A still in the course of its run: Rayleigh's integral, Fenske's stages, the same column by a library's integrator."""

import math
from itertools import pairwise
from typing import Any

import numpy as np
import pytest
from scipy.integrate import solve_ivp

from tests.trade.still_runs import falls, strength_from_mole_fraction
from webapp.trade import column
from webapp.trade.batch import Pot, charge_pot
from webapp.trade.column import Column, Make
from webapp.trade.vle import mole_fraction_from_strength, vapour_mole_fraction

BARE = Make(0, 1.0, 0.0, 0.0)


def constant_volatility(monkeypatch: pytest.MonkeyPatch, a: float) -> None:
    """Take a liquid of constant relative volatility for ethanol and water: textbooks have closed answers for it."""
    real = column.tables()
    vapours = [a * x / (1 + (a - 1) * x) for x in real.liquids]
    made = real._replace(vapours=vapours, vapour_slopes=column._slopes(real.liquids, vapours))
    monkeypatch.setattr(column, "tables", lambda: made)


def test_rayleighs_integral_for_a_constant_relative_volatility(monkeypatch: pytest.MonkeyPatch) -> None:
    # ln(n0/n) = (ln(x0/x) + a ln((1-x)/(1-x0))) / (a - 1): Rayleigh 1902, as every textbook integrates it.
    a = 4.0
    constant_volatility(monkeypatch, a)
    pot = charge_pot(100.0, 30.0)
    still, begun, x0 = Column(pot, BARE), sum(pot), pot.mole_fraction
    ethanol, steps = 0.0, 4000
    for k in range(1, steps + 1):
        ethanol += still.top * 0.6 * begun / steps
        still.step(ethanol, 0.6 * begun * k / steps, 1.0, 0.0)
    left = 0.4
    x = (pot.ethanol_mol - ethanol) / (begun * left)
    wanted = math.exp(-(math.log(x0 / x) + a * math.log((1 - x) / (1 - x0))) / (a - 1))
    assert left == pytest.approx(wanted, rel=2e-3)
    assert x < 0.5 * x0


def test_total_reflux_gives_each_stage_in_full(monkeypatch: pytest.MonkeyPatch) -> None:
    # Fenske 1932: at total reflux each stage multiplies the ratio by the volatility; the pot is one of them.
    a = 1.6
    constant_volatility(monkeypatch, a)
    pot = charge_pot(1e5, 8e3)
    still = Column(pot, Make(6, 1.0, 0.001, 50.0))
    for _ in range(400):
        still.step(0.0, 0.0, 10.0, 10.0)
    x = pot.mole_fraction
    ratio = x / (1 - x) * a**7
    assert still.top == pytest.approx(ratio / (1 + ratio), abs=2e-3)


def test_a_bare_pot_gives_the_vapour_of_its_liquid() -> None:
    for strength in (3.0, 8.0, 25.0, 40.0):
        vapour = strength_from_mole_fraction(vapour_mole_fraction(mole_fraction_from_strength(strength)))
        assert Column(charge_pot(100.0, strength), BARE).strength_pct == pytest.approx(vapour, abs=0.05)


@pytest.mark.parametrize(
    ("sections", "share", "held_l", "reflux"), [(1, 0.3, 0.05, 0.4), (2, 0.6, 0.5, 1.5), (4, 0.65, 1.5, 2.0),
                                                (6, 0.7, 0.3, 3.0), (8, 0.6, 1.0, 1.8)], ids=str)
def test_the_column_runs_as_an_independent_integrator_says(
    sections: int, share: float, held_l: float, reflux: float
) -> None:
    # The balances of each section written out in moles of distillate, on the equilibrium itself, by LSODA.
    charge = charge_pot(200.0, 14.0)
    make = Make(sections, share, held_l, 1.0)
    begun = list(Column(charge, make).liquids)
    xs = np.linspace(0, 1, 4001) ** 2
    ys = np.array([vapour_mole_fraction(float(x)) if 0 < x < 1 else x for x in xs])

    def held(x: Any) -> Any:
        return held_l * 1000 / (18.07 + 40.3 * x)

    def stream(liquids: Any, off: tuple[float, float]) -> tuple[float, list[float]]:
        ethanol = charge.ethanol_mol - off[0] - float((held(liquids) * liquids).sum())
        rest = sum(charge) - off[1] - float(held(liquids).sum())
        vapour, rising = float(np.interp(ethanol / rest, xs, ys)), []
        for x in liquids:
            rising.append(vapour)
            vapour += share * (float(np.interp(x, xs, ys)) - vapour)
        return vapour, [*rising, vapour]

    def rates(off: float, state: Any) -> list[float]:
        liquids, ethanol = state[:-1], state[-1]
        top, rising = stream(liquids, (ethanol, off))
        above = [*liquids[1:], top]
        moved = [((reflux + 1) * (rising[k] - rising[k + 1]) + reflux * (above[k] - liquids[k])) / held(liquids[k])
                 for k in range(sections)]
        return [*moved, top]

    whole = 220.0
    for steps, far in ((2400, 0.25), (60, 8.0)):
        exact = solve_ivp(rates, (0, whole), [*begun, 0.0], method="LSODA",
                          t_eval=np.linspace(0, whole, steps + 1), rtol=1e-7, atol=1e-10)
        still, off = Column(charge, make), []
        for k in range(1, steps + 1):
            ethanol = float(exact.y[-1, k])  # what has run off is measured, not the model's
            still.step(ethanol, whole * k / steps, whole / steps * (reflux + 1), whole / steps * reflux)
            top, _ = stream(exact.y[:-1, k], (ethanol, whole * k / steps))
            off.append(abs(still.strength_pct - float(strength_from_mole_fraction(top))))
        assert max(off) < far, steps  # where the fall is steepest; half as much with twice the steps


def test_no_ethanol_is_lost_or_made() -> None:
    charge = charge_pot(200.0, 14.0)
    make = Make(4, 0.65, 1.0, 1.0)
    still = Column(charge, make)
    assert still.liquids[-1] > still.liquids[0] > charge.mole_fraction
    full = sum(x * h for x, h in zip(still.liquids, still.held_mol, strict=True))
    for k in range(1, 41):
        still.step(4.0 * k, 5.0 * k, 15.0, 10.0)
    then = sum(x * h for x, h in zip(still.liquids, still.held_mol, strict=True))
    # What the sections gave up has run off: with them the pot kept more than it lost to the stream alone.
    alone = Column(Pot(charge.ethanol_mol - full, charge.water_mol), BARE)
    assert then < full
    assert alone.strength_pct < still.strength_pct


def test_the_stream_only_falls_and_the_filling_enriches() -> None:
    charge = charge_pot(200.0, 14.0)
    starts = [Column(charge, Make(3, 0.65, 0.5, filled)).strength_pct for filled in (0.0, 0.3, 1.0, 3.0)]
    assert all(b > a for a, b in pairwise(starts))
    still, strengths, ethanol = Column(charge, Make(3, 0.65, 0.5, 3.0)), [], 0.0
    for k in range(1, 60):
        ethanol += still.top * 5.0
        still.step(ethanol, 5.0 * k, 15.0, 10.0)
        strengths.append(still.strength_pct)
    assert falls(strengths)


def test_more_sections_and_more_reflux_give_a_stronger_stream() -> None:
    charge = charge_pot(2000.0, 140.0)

    def after(sections: int, reflux: float) -> float:
        still = Column(charge, Make(sections, 0.65, 0.1, 0.0))
        for k in range(1, 61):
            still.step(0.8 * k, k * 1.0, reflux + 1.0, reflux)
        return still.strength_pct

    assert falls([after(sections, 2.0) for sections in (6, 4, 3, 2, 1)])
    assert falls([after(3, reflux) for reflux in (8.0, 4.0, 2.0, 1.0, 0.3)])


def test_a_spent_pot_keeps_a_trace_and_the_stream_falls_to_nothing() -> None:
    still = Column(charge_pot(10.0, 1.0), Make(2, 0.6, 0.05, 1.0))
    for k in range(1, 60):
        still.step(17.2 + k, 30.0 + 8.0 * k, 24.0, 16.0)
    assert 0.0 <= still.strength_pct < 1.0


def test_a_plate_that_is_put_in_enriches_and_one_taken_out_again_leaves_the_still_as_without_it() -> None:
    charge = charge_pot(2000.0, 140.0)

    def run(*turns: tuple[int, int], sections: int = 2) -> list[float]:
        still, found = Column(charge, Make(sections, 0.65, 0.1, 0.0)), []
        for k in range(1, 201):
            for at, sections in turns:
                if k == at:
                    still.stand(sections)
            still.step(0.8 * k, k * 1.0, 3.0, 2.0)
            found.append(still.strength_pct)
        return found

    plain, more, back = run(), run((30, 3)), run((30, 3), (100, 2))
    assert more[:29] == plain[:29] and more[29] > plain[29] + 2.0
    # The vapour of each step is as much as a section holds: long after, the still stands as if it had begun so.
    assert more[-1] == pytest.approx(run(sections=3)[-1], abs=0.02)
    assert back[-1] == pytest.approx(plain[-1], abs=0.02)


def test_the_last_section_stays_and_what_sections_hold_comes_out_of_the_pot() -> None:
    still = Column(charge_pot(200.0, 14.0), Make(2, 0.65, 1.0, 1.0))
    before = sum(still.held_mol)
    still.stand(4)
    # A litre in each; at the strength of the stream some 18 to 55 mol (CRC Handbook: 46.07 g/mol and 0.789 kg/L).
    assert all(17.0 < held < 55.6 for held in still.held_mol[2:]) and sum(still.held_mol) > before
    assert still.liquids[2:] == [still.top, still.top]
    still.stand(0)
    assert len(still.liquids) == len(still.held_mol) == still.make.sections == 1
