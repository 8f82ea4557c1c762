"""Glass, density meter, volumes and pure alcohol."""

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from tests.trade.properties import steady
from tests.trade.reference_files import read_json
from tests.trade.refusal_words import words_of
from webapp.trade.alcoholometry import (
    glass_indication,
    litres_from_mass,
    litres_pure_alcohol,
    mass_from_litres,
    strength_from_density_meter,
    true_strength_from_glass,
    volume_at_20,
)
from webapp.trade.density import density_from_strength, freezing_limit_c, mass_fraction_from_strength
from webapp.trade.errors import OutOfDomain
from webapp.trade.table1 import true_proof

LAW = read_json("density_law_text.json")
# Glass reading minus true strength, alpha 25e-6; worked out apart from this code with OIML R 22, printed to a tenth.
TRUE = (20, 40, 45, 60, 70, 80)
GLASS_MINUS_TRUE = {
    5: (-3.7, -6.2, -6.0, -5.3, -4.9, -4.5),
    10: (-2.7, -4.1, -3.9, -3.5, -3.3, -3.0),
    15: (-1.5, -2.0, -2.0, -1.8, -1.6, -1.5),
    25: (1.7, 2.0, 1.9, 1.7, 1.6, 1.5),
    30: (3.5, 3.9, 3.8, 3.5, 3.3, 3.0),
}


@pytest.mark.parametrize(("temp_c", "differences"), GLASS_MINUS_TRUE.items())
def test_glass_minus_true(temp_c: float, differences: tuple[float, ...]) -> None:
    for strength, difference in zip(TRUE, differences, strict=True):
        assert glass_indication(strength, temp_c) - strength == pytest.approx(difference, abs=0.055)


def test_glass_agrees_with_us_table_1() -> None:
    # An outside check of the glass term: Table 1 (27 CFR 30.61) is for a glass made for 60 °F. Over the readings and
    # temperatures of daily work the two stay within 0.17 proof (reference/us_gauging.json).
    from webapp.trade.density import PROOF_TEMP_C, coefficients_at, mass_fraction_at, volume_share_at
    from webapp.trade.numeric import invert, polynomial

    worst = 0.0
    for reading in range(75, 191, 5):
        mark = polynomial(coefficients_at(PROOF_TEMP_C), mass_fraction_at(reading, PROOF_TEMP_C, "", "", 200.0))
        for temp_f in range(40, 101, 4):
            temp_c = (temp_f - 32) / 1.8
            fraction = invert(coefficients_at(temp_c), mark * (1 - 25e-6 * (temp_c - PROOF_TEMP_C)), 0.0, 1.0)
            worst = max(worst, abs(volume_share_at(fraction, PROOF_TEMP_C, 200.0) - true_proof(reading, temp_f)))
    assert 0.05 < worst < 0.17 + 0.05  # the printed table is rounded to a tenth


@steady
@given(st.floats(0, 100), st.floats(-20, 40))
def test_glass_and_back(strength_pct: float, temp_c: float) -> None:
    assume(temp_c > freezing_limit_c(mass_fraction_from_strength(strength_pct)) + 1e-6)
    try:
        indication = glass_indication(strength_pct, temp_c)
    except OutOfDomain:
        # Only off the ends of the scale.
        assert (strength_pct < 10 and temp_c < 20) or (strength_pct > 88 and temp_c > 20)
        return
    assert true_strength_from_glass(indication, temp_c) == pytest.approx(strength_pct, abs=1e-9)


@steady
@given(st.floats(-20, 40), st.floats(0, 99), st.floats(0.001, 1))
def test_a_higher_reading_is_always_stronger(temp_c: float, indication: float, more: float) -> None:
    try:
        weaker, stronger = (true_strength_from_glass(x, temp_c) for x in (indication, indication + more))
    except OutOfDomain:
        return
    assert stronger > weaker


@steady
@given(st.floats(5, 90), st.floats(0, 39.9), st.floats(0.01, 0.1))
def test_at_one_reading_warmer_spirit_is_weaker(indication: float, temp_c: float, warmer: float) -> None:
    # Holds from 5 % up above 0 °C (weaker spirit turns round near its density maximum).
    assume(indication > 12 or temp_c > 8)
    try:
        cold, warm = (true_strength_from_glass(indication, t) for t in (temp_c, temp_c + warmer))
    except OutOfDomain:
        return
    assert warm < cold


def test_weak_cold_readings_turn_round_and_stay_unambiguous() -> None:
    # Near the density maximum one reading stands for more than one temperature, never for two strengths.
    temps = np.linspace(0, 12, 121)
    strengths = true_strength_from_glass(1.0, temps)
    assert np.diff(strengths).max() > 0 > np.diff(strengths).min()
    for temp_c in (0.0, 2.0, 4.0, 8.0):
        readings = np.linspace(0, 12, 241)
        assert (np.diff(true_strength_from_glass(readings, temp_c)) > 0).all()


def test_at_20_the_glass_is_right() -> None:
    assert true_strength_from_glass(63.4, 20) == pytest.approx(63.4, abs=1e-11)
    assert true_strength_from_glass(0, 20) == 0
    assert true_strength_from_glass(100, 20) == 100


def test_glass_expansion_counts() -> None:
    soda_lime = true_strength_from_glass(60, 5)
    borosilicate = true_strength_from_glass(60, 5, 10e-6)
    # 15e-6 * 15 degC * 900 kg/m3 is 0.20 kg/m3, about 0.1 % vol at this strength.
    assert 0.05 < abs(soda_lime - borosilicate) < 0.15


def test_the_glass_grows_as_the_law_prints_it() -> None:
    # Decree 141/1997 Sb., Annex 1 B: a density by glass is to be multiplied by these at 15 and 25 degC.
    tests = {name: case for case in LAW["expansion_per_C"]["tests"] for name in case if name.startswith("glass")}
    for name, alpha in (("glass25_t", 25e-6), ("glass10_t", 10e-6)):
        case = tests[name]
        mark = density_from_strength(60.0, 20.0)
        true = true_strength_from_glass(60.0, case[name], alpha)
        assert density_from_strength(true, case[name]) == pytest.approx(mark * case["Fb"], abs=2e-4)


@pytest.mark.parametrize("case", LAW["weighing_in_air"]["tests"], ids=lambda case: str(case["sigma"]))
def test_a_kilogram_on_the_scale_as_the_law_prints_it(case: dict[str, float]) -> None:
    # Decree 141/1997 Sb., Annex 1 D: litres of pure alcohol in a kilogram as weighed; first order in the buoyancy.
    litres = litres_from_mass(1.0, case["sigma"], in_air=True)
    assert litres_pure_alcohol(litres, case["sigma"]) == pytest.approx(case["km"], rel=8e-6)
    by_mass = litres_pure_alcohol(litres_from_mass(1.0, case["sigma"]), case["sigma"])
    assert by_mass != pytest.approx(case["km"], rel=1e-4)


@pytest.mark.parametrize(
    ("indication", "temp_c", "what"),
    [
        (-0.01, 20, "glass_reading"),
        (100.01, 20, "glass_reading"),
        (60, 40.01, "temperature"),
        (60, -20.01, "temperature"),
        (1.5, 30, "glass_reading"),
        (98.4, 10, "glass_reading"),
        (5, -10, "temperature"),
        (float("nan"), 20, "glass_reading"),
        (60, float("nan"), "temperature"),
        (float("inf"), 20, "glass_reading"),
    ],
)
def test_readings_without_a_meaning_are_refused(indication: float, temp_c: float, what: str) -> None:
    with pytest.raises(OutOfDomain) as caught:
        true_strength_from_glass(indication, temp_c)
    assert caught.value.what == what
    assert words_of(caught.value).endswith(".")
    with pytest.raises(OutOfDomain):
        true_strength_from_glass(np.array([60.0, indication]), np.array([20.0, temp_c]))


def test_refusal_says_what_a_glass_can_show() -> None:
    with pytest.raises(OutOfDomain) as caught:
        true_strength_from_glass(1.0, 30)
    low = caught.value.low
    assert low == pytest.approx(glass_indication(0, 30), abs=1e-9)
    assert true_strength_from_glass(low, 30) == pytest.approx(0, abs=1e-9)
    assert "can show 1.6 to 100:" in words_of(caught.value)


def test_density_meter_is_the_density_turned_round() -> None:
    # Control values of test_density.py; half a unit of their last place is 0.003 % vol and a little.
    for strength, density in ((40, 948.05), (60, 909.11), (96, 807.42)):
        assert strength_from_density_meter(density, 20) == pytest.approx(strength, abs=0.004)


@steady
@given(st.floats(0, 100), st.floats(0, 40))
def test_density_meter_and_back(strength_pct: float, temp_c: float) -> None:
    density = density_from_strength(strength_pct, temp_c)
    assert strength_from_density_meter(density, temp_c) == pytest.approx(strength_pct, abs=1e-9)


def test_volume_at_20_against_27_cfr_30_51() -> None:
    # The printed factor of Table 7 for 86.8 proof at 72 °F is 0.995 (to 60 °F); by densities 0.99506.
    from webapp.trade.proof import strength_from_proof, volume_60f_from_20c

    strength = strength_from_proof(86.8)
    at_60f = volume_60f_from_20c(volume_at_20(4308.48, strength, (72 - 32) / 1.8), strength)
    assert at_60f / 4308.48 == pytest.approx(0.995, abs=0.0005)


def test_cold_spirit_grows_when_brought_to_20() -> None:
    # 60 % vol at 5 °C: +1.3 %.
    assert volume_at_20(1000, 60, 5) == pytest.approx(1013, abs=0.5)


def test_mass_to_litres_and_the_air() -> None:
    # 100 kg of 60 % vol is 100/909.11*1000 L; air of 1.2 kg/m3 against weights of 8000 lifts it by 0.117 %.
    assert litres_from_mass(100, 60) == pytest.approx(109.998, abs=0.001)
    lift = (1.2 / 909.11 - 1.2 / 8000) / (1 - 1.2 / 909.11)
    assert litres_from_mass(100, 60, in_air=True) / litres_from_mass(100, 60) - 1 == pytest.approx(lift, rel=1e-4)


@pytest.mark.parametrize("row", read_json("uncertainty.json")["weighing_in_air"]["tests"])
def test_weighing_in_air_as_a_law_prints_it(row: dict[str, float]) -> None:
    """Litres of pure alcohol a kilogram. Czech decree 141/1997, annex 1, part D; its density is cut to 0.01 kg/m3."""
    lpa = litres_pure_alcohol(litres_from_mass(1.0, row["sigma"], in_air=True), row["sigma"])
    assert lpa == pytest.approx(row["km"], abs=5e-6)


@steady
@given(st.floats(0, 1e6), st.floats(0, 100), st.booleans())
def test_mass_and_litres_and_back(volume_l: float, strength_pct: float, in_air: bool) -> None:
    net_kg = mass_from_litres(volume_l, strength_pct, in_air)
    assert litres_from_mass(net_kg, strength_pct, in_air) == pytest.approx(volume_l, rel=1e-12)


def test_pure_alcohol() -> None:
    assert litres_pure_alcohol(200, 63.5) == pytest.approx(127)
    for volume, strength in ((-1, 40), (10, 100.1), (10, -0.1), (float("nan"), 40), (2e9, 40)):
        with pytest.raises(OutOfDomain):
            litres_pure_alcohol(volume, strength)


def test_reducing_by_mass_gives_the_printed_litres() -> None:
    # 100 L of 60 % vol to 45 %: 34.36 kg of water gives 133.33 L (worked out apart from this code).
    before, after = mass_fraction_from_strength(60), mass_fraction_from_strength(45)
    mass = mass_from_litres(100, 60)
    water = mass * (before / after - 1)
    assert water == pytest.approx(34.36, abs=0.005)
    assert litres_from_mass(mass + water, 45) == pytest.approx(133.33, abs=0.005)
