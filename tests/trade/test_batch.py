"""The batch still: Rayleigh's integral, steps solved otherwise, conservation, refusals."""

import math
from typing import Any

import numpy as np
import pytest
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

from tests.trade.still_runs import ETHANOL_KG_L, MOLAR, falls, strength_from_mole_fraction
from webapp.trade import batch
from webapp.trade.density import density_from_strength
from webapp.trade.errors import OutOfDomain
from webapp.trade.vle import mole_fraction_from_strength, vapour_mole_fraction

STILLS = [(1.0, 0.0), (1.6, 0.5), (2.4, 1.5), (3.3, 2.0), (4.0, 3.0), (7.0, 5.0)]


def test_rayleighs_integral_for_a_constant_relative_volatility(monkeypatch: pytest.MonkeyPatch) -> None:
    # ln(n0/n) = (ln(x0/x) + a ln((1-x)/(1-x0))) / (a - 1): Rayleigh 1902, as every textbook integrates it.
    a = 4.0
    liquids = [i / 4000 for i in range(4001)]
    monkeypatch.setattr(batch, "_line", lambda: (liquids, [a * x / (1 + (a - 1) * x) for x in liquids]))
    pot = batch.charge_pot(100.0, 30.0)
    moments = batch.run_down(pot, batch.Column(1.0, 0.0), 70.0, 200)
    begun, x0 = sum(pot), pot.mole_fraction
    for moment in moments[20::30]:
        x = moment.pot.mole_fraction
        left = math.exp(-(math.log(x0 / x) + a * math.log((1 - x) / (1 - x0))) / (a - 1))
        assert sum(moment.pot) / begun == pytest.approx(left, rel=2e-3)
    assert moments[-1].pot.mole_fraction < 0.25 * x0


@pytest.mark.parametrize("still", STILLS, ids=str)
@pytest.mark.parametrize("pot", [0.002, 0.01, 0.03, 0.1])
def test_steps_solved_from_the_pot_up(still: tuple[float, float], pot: float) -> None:
    # The same column from below, on the equilibrium itself and by a library's root finder instead of tables.
    stages, reflux = still
    share, back = (stages - 1) / batch.SECTIONS, max(reflux / (reflux + 1), batch.LEAST_SHARE)

    def leaves(stream: float) -> float:
        vapour = vapour_mole_fraction(pot)
        for _ in range(batch.SECTIONS):
            liquid = (vapour - (1 - back) * stream) / back
            if not 0 <= liquid <= 1:
                return -1.0 if liquid < 0 else 1.0
            vapour += share * (vapour_mole_fraction(liquid) - vapour)
        return vapour - stream

    low = vapour_mole_fraction(pot) * 0.999
    stream = brentq(leaves, low, 0.885, xtol=1e-9)
    exact = strength_from_mole_fraction(stream)
    # Near the azeotrope the steps crowd together, and the table's straight lines tell.
    tolerance = 0.06 if exact < 85 else 0.15 if exact < 91 else 0.5
    assert batch.Column(stages, reflux).strength_pct(pot) == pytest.approx(exact, abs=tolerance)


def test_total_reflux_gives_each_stage_in_full(monkeypatch: pytest.MonkeyPatch) -> None:
    # Fenske 1932: at total reflux each stage multiplies the ratio by the volatility.
    a, pot = 1.6, 0.03
    liquids = [i / 4000 for i in range(4001)]
    monkeypatch.setattr(batch, "_line", lambda: (liquids, [a * x / (1 + (a - 1) * x) for x in liquids]))
    ratio = pot / (1 - pot) * a**7
    exact = strength_from_mole_fraction(ratio / (1 + ratio))
    found = batch.Column(7.0, 1e9).strength_pct(pot)
    assert found == pytest.approx(exact, abs=0.1)


@pytest.mark.parametrize("still", STILLS, ids=str)
def test_the_pot_empties_as_an_independent_integrator_says(still: tuple[float, float]) -> None:
    column = batch.Column(*still)
    pot = batch.charge_pot(497.0, 28.9)
    moments = batch.run_down(pot, column, 50.0, 80)

    def rates(_: float, left: Any) -> list[float]:
        strength = column.strength_pct(left[0] / (left[0] + left[1]))
        ethanol = strength / 100 * ETHANOL_KG_L * 1e3 / MOLAR[0]
        water = (float(density_from_strength(strength, 20.0)) - strength / 100 * ETHANOL_KG_L * 1e3) / MOLAR[1]
        return [-ethanol, -water]

    litres = np.array([moment.volume_l for moment in moments])
    by_library = solve_ivp(rates, (0, 50), list(pot), t_eval=litres, rtol=1e-8, atol=1e-8, max_step=0.5)
    fractions = by_library.y[0] / by_library.y.sum(axis=0)
    strengths = [column.strength_pct(float(x)) for x in fractions]
    assert [moment.strength_pct for moment in moments] == pytest.approx(strengths, abs=0.12)


@pytest.mark.parametrize("still", STILLS, ids=str)
def test_no_alcohol_is_lost_or_made(still: tuple[float, float]) -> None:
    pot = batch.charge_pot(200.0, 14.0)
    for moment in batch.run_down(pot, batch.Column(*still), 25.0, 60):
        off = moment.lpa * ETHANOL_KG_L * 1e3 / MOLAR[0]
        assert off + moment.pot.ethanol_mol == pytest.approx(pot.ethanol_mol, rel=1e-4)


@pytest.mark.parametrize("still", STILLS, ids=str)
def test_the_stream_only_falls(still: tuple[float, float]) -> None:
    moments = batch.run_down(batch.charge_pot(200.0, 14.0), batch.Column(*still), 25.0, 60)
    assert len(moments) > 20
    assert falls([moment.strength_pct for moment in moments])
    assert falls([moment.pot.mole_fraction for moment in moments])


def test_more_stages_and_more_reflux_give_a_stronger_stream() -> None:
    for pot in (0.005, 0.02, 0.06):
        assert falls([batch.Column(stages, 2.0).strength_pct(pot) for stages in (5, 4, 3, 2, 1)])
        assert falls([batch.Column(3.0, reflux).strength_pct(pot) for reflux in (8, 4, 2, 1, 0.3)])


def test_a_bare_pot_gives_the_vapour_of_its_liquid() -> None:
    for strength in (3.0, 8.0, 25.0, 40.0):
        x = mole_fraction_from_strength(strength)
        vapour = strength_from_mole_fraction(vapour_mole_fraction(x))
        assert batch.Column(1.0, 0.0).strength_pct(x) == pytest.approx(vapour, abs=0.05)


def test_a_charge_keeps_its_litres_and_its_alcohol() -> None:
    pot = batch.charge_pot(100.0, 7.0)
    grams = pot.ethanol_mol * MOLAR[0] + pot.water_mol * MOLAR[1]
    assert grams / 1000 == pytest.approx(100.0 * float(density_from_strength(7.0, 20.0)) / 1000, rel=1e-9)
    assert pot.ethanol_mol * MOLAR[0] / 1000 == pytest.approx(7.0 * ETHANOL_KG_L, rel=1e-4)
    for strength in (0.0, 11.3, 47.7, 96.9):
        assert batch.stream_moles(2.0, strength) == pytest.approx(batch.moles_in(2.0, strength), rel=3e-4)


def test_a_spent_pot_ends_the_run() -> None:
    moments = batch.run_down(batch.charge_pot(10.0, 1.0), batch.Column(1.0, 0.0), 50.0, 100)
    assert len(moments) < 100


def test_what_lies_outside_is_refused() -> None:
    for volume_l, lpa in ((0, 0), (10, 11), (10, -1), (2e6, 5), (float("nan"), 1)):
        with pytest.raises(OutOfDomain):
            batch.charge_pot(volume_l, lpa)
    with pytest.raises(OutOfDomain):
        batch.run_down(batch.charge_pot(10.0, 1.0), batch.Column(2.0, 1.0), 0.0, 10)
