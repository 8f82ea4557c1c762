"""Results of a laboratory: units against worked figures, spread against printed ones, and the three verdicts."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.trade.properties import steady
from tests.trade.reference_files import read_json
from webapp.trade.analysis import (
    ONE_SIDED_95,
    methanol_by_volume,
    per_litre,
    per_pure_alcohol,
    usual_spread_pct,
    verdict_at_least,
    verdict_at_most,
)
from webapp.trade.errors import OutOfDomain

LAB = read_json("lab_limits.json")
RULES = {rule["id"]: rule for rule in LAB["units"]}
UNITS = ("g_hL_pa", "mg_L", "mg_kg")


@pytest.mark.parametrize(("mg_l", "pct", "g_hl"), RULES["mgL_to_ghL"]["tests"])
def test_by_litre_of_the_drink_and_by_pure_alcohol(mg_l: float, pct: float, g_hl: float) -> None:
    # By the definition of the units; 28 mg/L and 7 g/hL at 40 % vol are the law's own figures for hydrocyanic acid.
    assert per_pure_alcohol(mg_l, "mg_L", pct) == pytest.approx(g_hl, rel=1e-12)
    assert per_litre(g_hl, "g_hL_pa", pct) == pytest.approx(mg_l, rel=1e-12)


def test_by_mass_of_the_drink() -> None:
    # Regulation (EC) No 2870/2000, Annex III.2, 9.2, worked out with the density of OIML R 22.
    case = RULES["ugg_to_ghL"]["test"]
    assert per_pure_alcohol(case["ug_g"], "mg_kg", case["pct"]) == pytest.approx(case["g_hL"], abs=0.01)


@pytest.mark.parametrize("case", RULES["pctvol_methanol"]["tests"])
def test_methanol_by_volume(case: dict[str, float]) -> None:
    # Density of methanol 791.8 kg/m3, from memory.
    pure = per_pure_alcohol(case["pct_methanol"], "pct_methanol", case["pct_vol"])
    assert pure == pytest.approx(case["g_hL"], abs=0.1)
    assert methanol_by_volume(case["g_hL"], case["pct_vol"]) == pytest.approx(case["pct_methanol"], abs=1e-4)


@steady
@given(st.floats(0, 1e5), st.sampled_from(UNITS), st.floats(1, 100))
def test_there_and_back(found: float, unit: str, pct: float) -> None:
    pure = per_pure_alcohol(found, unit, pct)
    assert per_litre(pure, "g_hL_pa", pct) == pytest.approx(per_litre(found, unit, pct), rel=1e-9)
    assert methanol_by_volume(pure, pct) == pytest.approx(pure * pct / 79180, rel=1e-12)


@pytest.mark.parametrize("unit", ["mg_L", "mg_kg", "pct_methanol"])
def test_without_a_strength_nothing_is_turned(unit: str) -> None:
    assert per_pure_alcohol(812.0, "g_hL_pa", 0.0) == 812.0
    with pytest.raises(OutOfDomain):
        per_pure_alcohol(812.0, unit, 0.0)
    with pytest.raises(OutOfDomain):
        per_pure_alcohol(-1.0, unit, 40.0)


def test_a_unit_of_something_else_is_refused() -> None:
    with pytest.raises(TypeError):
        per_pure_alcohol(1.0, "kg", 40.0)
    with pytest.raises(TypeError):
        per_litre(1.0, "pct_methanol", 40.0)


def test_the_usual_spread_is_of_the_size_that_trials_found() -> None:
    # Horwitz's curve: 1 g/kg 5.7 %, 1 mg/kg 16 % (from memory). Of methanol 11.8 % was found near 20 ug/g, 3.9 to 6.2 %
    # above (Regulation (EC) No 2870/2000, Annex III.2, table 11). Trials lie within half and twice the curve.
    assert usual_spread_pct(1e-3) == pytest.approx(5.66, abs=0.01)
    assert usual_spread_pct(1e-6) == pytest.approx(16.0, abs=0.01)
    tried = LAB["method_precision"]["RSD_R_pct"]
    assert 0.5 < tried["methanol_near_20_ug_g"] / usual_spread_pct(20e-6) < 2
    for found in tried["methanol"]:
        assert 0.5 < found / usual_spread_pct(5e-3) < 2
    with pytest.raises(OutOfDomain):
        usual_spread_pct(0.0)


def test_the_published_reading_of_a_certificate() -> None:
    case = LAB["method_precision"]["reading_of_a_certificate"]
    spread = case["methanol"] * case["spread_pct"] / 100
    assert case["methanol"] + ONE_SIDED_95 * spread == pytest.approx(case["at_worst"], abs=1)
    assert verdict_at_most(case["methanol"], spread, case["limit"]) == "not_safely"


@pytest.mark.parametrize(
    ("found", "most", "least"),
    [(899.0, "within", "outside"), (999.9, "not_safely", "outside"), (1000.0, "not_safely", "not_safely"),
     (1000.1, "outside", "not_safely"), (1101.0, "outside", "within"), (float("nan"), "outside", "outside")],
)
def test_three_verdicts(found: float, most: str, least: str) -> None:
    assert verdict_at_most(found, 60.0, 1000.0) == most
    assert verdict_at_least(found, 60.0, 1000.0) == least


@steady
@given(st.floats(0, 2000), st.floats(0, 2000), st.floats(0, 200))
def test_more_is_never_nearer_to_safe(found: float, more: float, spread: float) -> None:
    rank = ("within", "not_safely", "outside").index
    low, high = sorted((found, more))
    assert rank(verdict_at_most(low, spread, 1000.0)) <= rank(verdict_at_most(high, spread, 1000.0))
    assert rank(verdict_at_least(high, spread, 1000.0)) <= rank(verdict_at_least(low, spread, 1000.0))
    assert rank(verdict_at_most(low, spread, 1000.0)) <= rank(verdict_at_most(low, spread + 1, 1000.0))
