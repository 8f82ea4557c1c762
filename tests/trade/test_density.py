"""OIML R 22 against printed tables, an independent library, and its own shape."""

import numpy as np
import pytest
from CoolProp.CoolProp import PropsSI
from hypothesis import given
from hypothesis import strategies as st

from tests.trade.properties import steady
from tests.trade.reference_files import read_csv, read_json
from tests.trade.refusal_words import words_of
from webapp.trade.density import (
    coefficients_at,
    density_from_mass_fraction,
    density_from_strength,
    freezing_limit_c,
    mass_fraction_from_density,
    mass_fraction_from_strength,
    strength_from_mass_fraction,
)
from webapp.trade.errors import OutOfDomain
from webapp.trade.numeric import polynomial
from webapp.trade.proof import proof_from_strength, strength_from_proof

CHECKS = read_csv("oiml_check_values.csv")
AIR = 1.2  # kg/m3, as the printed "in air" columns are taken


def specific_gravity_in_air(mass_fraction: float, temp_c: float) -> float:
    spirit, water = (density_from_mass_fraction(p, temp_c) for p in (mass_fraction, 0.0))
    return (spirit - AIR) / (water - AIR)


def value_for(row: dict[str, str]) -> float:
    """Our figure for a printed row."""
    strength, temp_c = float(row["strength"]), float(row["temp_c"])
    # The 60 °F rows carry 15.56; the scale they are printed for is 60 °F itself.
    temp_c = 140 / 9 if row["temp_c"] == "15.56" else temp_c
    if row["basis"] == "mass%":
        mass_fraction = strength / 100
    else:
        mass_fraction = mass_fraction_from_strength(strength_from_proof(2 * strength))
    quantity = row["quantity"]
    if quantity == "density_kg_m3":
        return density_from_mass_fraction(mass_fraction, temp_c)
    if quantity == "density_g_mL":
        return density_from_mass_fraction(mass_fraction, temp_c) / 1000
    if quantity == "vol_percent_15.56C":
        return proof_from_strength(strength_from_mass_fraction(mass_fraction)) / 2
    if quantity == "mass_percent":
        return 100 * mass_fraction
    assert quantity.startswith("sg_air")
    return specific_gravity_in_air(mass_fraction, temp_c)


@pytest.mark.parametrize("row", CHECKS, ids=[f"{r['source_id']}-{r['id']}" for r in CHECKS])
def test_printed_value_is_met_within_the_tolerance_of_its_row(row: dict[str, str]) -> None:
    # Sources S1-S5 and tolerances: reference/README.md.
    assert value_for(row) == pytest.approx(float(row["printed"]), abs=float(row["tolerance"]))


def test_there_are_511_printed_values() -> None:
    assert len(CHECKS) == 511


def test_implied_constants_of_the_formula() -> None:
    # reference/oiml_r22.json, "implied": worked out from the coefficients apart from this code.
    implied = read_json("oiml_r22.json")["implied"]
    assert density_from_mass_fraction(0, 20) == pytest.approx(implied["water_20C_kg_m3"], abs=5e-6)
    assert density_from_mass_fraction(1, 20) == pytest.approx(implied["ethanol_20C_kg_m3_from_formula"], abs=5e-5)
    assert density_from_mass_fraction(0, 140 / 9) == pytest.approx(implied["water_60F_kg_m3"], abs=5e-5)
    assert density_from_mass_fraction(1, 140 / 9) == pytest.approx(implied["ethanol_60F_kg_m3"], abs=5e-5)


def test_coefficients_are_those_of_the_reference() -> None:
    from webapp.trade.datafiles import load_data

    reference, ours = read_json("oiml_r22.json"), load_data("spirit")
    # Decree 141/1997 Sb., Annex 1: all 54 as a law in force prints them.
    printed = read_json("density_law_text.json")["coefficients"]
    assert (ours["A"], ours["B"], ours["C"]) == (printed["A"], printed["B"], list(printed["C"].values()))
    assert (ours["A"], ours["B"]) == (reference["A"], reference["B"])
    assert ours["C"] == [reference["C"][f"C{i}"] for i in range(1, 6)]


def test_formula_term_by_term() -> None:
    # The sum exactly as OIML R 22 prints it, with powers, against the collapsed Horner form.
    reference = read_json("oiml_r22.json")
    A, B, C = reference["A"], reference["B"], reference["C"]
    for p in (0.0, 0.07, 0.33, 0.5, 0.81, 1.0):
        for t in (0.0, 12.3, 20.0, 33.0, 40.0):
            rho = sum(a * p**k for k, a in enumerate(A))
            rho += sum(b * (t - 20) ** k for k, b in enumerate(B, 1))
            rho += sum(c * p**k * (t - 20) ** i for i in range(1, 6) for k, c in enumerate(C[f"C{i}"], 1))
            assert density_from_mass_fraction(p, t) == pytest.approx(rho, rel=1e-12)


# Control values at 20 °C: % vol, kg/m3, % mass. Worked out apart from this code by the same formula; 50, 96 and
# 100 % vol agree with commonly published ones. The 85.67 is 90 * 789.24 / 829.18 = 85.665 rounded up: hence 0.006.
CONTROL = [
    (0, 998.20, 0), (10, 984.71, 8.02), (20, 973.56, 16.21), (30, 962.21, 24.61), (40, 948.05, 33.30),
    (45, 939.54, 37.80), (50, 930.14, 42.43), (60, 909.11, 52.09), (70, 885.56, 62.39), (80, 859.27, 73.48),
    (90, 829.18, 85.67), (96, 807.42, 93.84), (100, 789.24, 100),
]


@pytest.mark.parametrize(("strength_pct", "density", "mass_pct"), CONTROL)
def test_control_table_at_20(strength_pct: float, density: float, mass_pct: float) -> None:
    assert density_from_strength(strength_pct, 20) == pytest.approx(density, abs=0.0051)
    assert 100 * mass_fraction_from_strength(strength_pct) == pytest.approx(mass_pct, abs=0.006)


@pytest.mark.parametrize("temp_c", [0.5, 4, 10, 20, 30, 40])
def test_pure_liquids_against_equations_of_state(temp_c: float) -> None:
    # CoolProp: water by IAPWS-95, ethanol by Schroeder et al. 2014 (stated uncertainty about 0.02 % of 790).
    water, ethanol = (PropsSI("D", "T", temp_c + 273.15, "P", 101325, fluid) for fluid in ("Water", "Ethanol"))
    assert density_from_mass_fraction(0, temp_c) == pytest.approx(water, abs=0.02)
    assert density_from_mass_fraction(1, temp_c) == pytest.approx(ethanol, abs=0.25)


LIQUID = [
    (mass_fraction, temp_c)
    for mass_fraction in (0.05, 0.1, 0.2, 0.3, 0.35, 0.4, 0.5, 0.6)
    for temp_c in (-19, -10, 0, 10, 20, 30, 40)
    if temp_c >= freezing_limit_c(mass_fraction)
]


@pytest.mark.parametrize(("mass_fraction", "temp_c"), LIQUID)
def test_mixtures_against_melinder(mass_fraction: float, temp_c: float) -> None:
    # CoolProp INCOMP::MEA, Melinder 2010: a fit of its own to other measurements, good to 0.1 % or so.
    melinder = PropsSI("D", "T", temp_c + 273.15, "P", 101325, f"INCOMP::MEA[{mass_fraction}]")
    allowed = 0.0007 if temp_c >= 0 else 0.002
    assert density_from_mass_fraction(mass_fraction, temp_c) == pytest.approx(melinder, rel=allowed)


def test_density_falls_strictly_with_mass_fraction_at_every_temperature() -> None:
    # So each inverse has one answer. Looked at through the slope, on a dense grid, ice region included.
    mass_fraction = np.linspace(0, 1, 4001)
    for temp_c in np.linspace(-20, 40, 241):
        coefficients = coefficients_at(float(temp_c))
        slope = polynomial([k * c for k, c in enumerate(coefficients)][1:], mass_fraction)
        assert slope.max() < -6, f"at {temp_c} °C"
        # Where the sums answer, the slope is steep enough: 0.05 kg/m3 is never more than 0.12 % mass.
        assert slope[temp_c >= freezing_limit_c(mass_fraction)].max() < -45, f"at {temp_c} °C"


def test_density_of_weak_spirit_has_a_maximum_in_temperature() -> None:
    # Water is heaviest near 4 °C: nothing may take density for monotonic in temperature.
    temps = np.linspace(0, 10, 1001)
    heaviest = temps[np.argmax(density_from_mass_fraction(np.zeros(1001), temps))]
    assert heaviest == pytest.approx(3.98, abs=0.1)
    weak = density_from_strength(np.full(1001, 3.0), temps)
    assert np.diff(weak).max() > 0 > np.diff(weak).min()


@steady
@given(st.floats(0, 1), st.floats(-20, 40))
def test_density_and_back(mass_fraction: float, temp_c: float) -> None:
    if temp_c < freezing_limit_c(mass_fraction) + 1e-6:
        return
    density = density_from_mass_fraction(mass_fraction, temp_c)
    assert mass_fraction_from_density(density, temp_c) == pytest.approx(mass_fraction, abs=1e-11)


@steady
@given(st.floats(0, 100))
def test_strength_and_back(strength_pct: float) -> None:
    assert strength_from_mass_fraction(mass_fraction_from_strength(strength_pct)) == pytest.approx(
        strength_pct, abs=1e-10
    )


def test_pure_ethanol_is_one_hundred_exactly() -> None:
    assert strength_from_mass_fraction(1) == 100
    assert mass_fraction_from_strength(100) == 1
    assert mass_fraction_from_strength(0) == 0


def test_arrays_and_numbers_give_the_same_bits() -> None:
    rng = np.random.default_rng(7)
    strengths, temps = rng.uniform(0, 100, 500), rng.uniform(0, 40, 500)
    many = density_from_strength(strengths, temps)
    assert many.tolist() == [
        density_from_strength(q, t) for q, t in zip(strengths.tolist(), temps.tolist(), strict=True)
    ]
    fractions = mass_fraction_from_density(many, temps)
    assert fractions.tolist() == [
        mass_fraction_from_density(d, t) for d, t in zip(many.tolist(), temps.tolist(), strict=True)
    ]


def test_one_number_gives_a_float_and_shapes_broadcast() -> None:
    assert type(density_from_mass_fraction(np.float64(0.5), 20)) is float
    assert type(density_from_mass_fraction(np.array(0.5), np.array(20))) is float
    assert density_from_mass_fraction(np.zeros((3, 1)), np.full(4, 20.0)).shape == (3, 4)
    assert mass_fraction_from_density([950.0, 900.0], 20).shape == (2,)
    assert mass_fraction_from_density(950.0, [15.0, 20.0, 25.0]).shape == (3,)


@pytest.mark.parametrize(
    ("mass_fraction", "temp_c"),
    [(-1e-9, 20), (1 + 1e-9, 20), (0.5, 40.0001), (0.5, -20.0001), (float("nan"), 20), (0.5, float("nan")),
     (0.5, float("inf")), (0, -0.001), (0.1, -3.99), (0.2, -10.73)],
)
def test_outside_the_domain_is_refused(mass_fraction: float, temp_c: float) -> None:
    with pytest.raises(OutOfDomain):
        density_from_mass_fraction(mass_fraction, temp_c)


@pytest.mark.parametrize(("mass_fraction", "temp_c"), [(0, 0), (1, 40), (1, -20), (0.1, -3.97), (0.2, -10.71)])
def test_edges_of_the_domain_are_inside(mass_fraction: float, temp_c: float) -> None:
    assert density_from_mass_fraction(mass_fraction, temp_c) > 700


def test_a_density_no_mixture_has_is_refused_with_the_ends() -> None:
    with pytest.raises(OutOfDomain) as caught:
        mass_fraction_from_density(1001, 20)
    assert caught.value.what == "density"
    assert (caught.value.low, caught.value.high) == pytest.approx((789.239, 998.201), abs=0.001)
    assert "Check density and temperature" in words_of(caught.value)
    with pytest.raises(OutOfDomain):
        mass_fraction_from_density(np.array([950.0, 700.0]), 20)
    with pytest.raises(OutOfDomain, match="part_ice"):
        mass_fraction_from_density(999.0, -5)


# Freezing points in % mass and degC from a well-known handbook's table of aqueous ethanol. FROM MEMORY, not looked up.
HANDBOOK_FREEZING = {2: -0.81, 4: -1.65, 6: -2.54, 8: -3.47, 10: -4.47, 14: -6.73, 20: -10.92, 26: -16.4, 30: -20.47}


@pytest.mark.parametrize(("mass_pct", "freezes_at_c"), HANDBOOK_FREEZING.items())
def test_freezing_limit_is_on_the_warm_side(mass_pct: float, freezes_at_c: float) -> None:
    published = PropsSI("T_FREEZE", "T", 300, "P", 101325, f"INCOMP::MEA[{mass_pct / 100}]") - 273.15
    limit = freezing_limit_c(mass_pct / 100)
    assert limit > published + 0.35
    assert limit > freezes_at_c
    assert limit < freezes_at_c + 1


def test_water_is_liquid_down_to_nought() -> None:
    assert freezing_limit_c(0) == 0
    assert density_from_mass_fraction(0, 0) == pytest.approx(999.84, abs=0.01)
