"""US gauging against the printed tables and worked examples of 27 CFR part 30."""

import math
from decimal import ROUND_HALF_UP, Decimal
from functools import cache

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.trade.properties import steady
from tests.trade.reference_files import read_csv, read_json
from webapp.trade.density import PROOF_TEMP_C, density_from_strength, mass_fraction_from_strength
from webapp.trade.errors import OutOfDomain
from webapp.trade.gauging import (
    gravity_of_proof,
    obscuration_proof,
    pounds_per_wine_gallon,
    proof_gallons_from_pounds,
    proof_gallons_from_wine_gallons,
    proof_gallons_per_pound,
    wine_gallons_from_pounds,
    wine_gallons_per_pound,
)
from webapp.trade.numeric import round_half_up
from webapp.trade.proof import (
    litres_from_pounds,
    lpa_from_pounds,
    lpa_from_proof_gallons,
    lpa_per_proof_gallon,
    proof_from_strength,
    proof_gallons_from_lpa,
    strength_from_proof,
    volume_20c_from_60f,
    volume_60f_from_20c,
)
from webapp.trade.table1 import table1_tenths, true_proof, true_proof_unrounded

TABLE_1 = {
    (int(row["hydrometer_reading"]), int(temp)): row[temp]
    for row in read_csv("us_table1_true_proof.csv")
    for temp in row
    if temp != "hydrometer_reading"
}
PRINTED = {cell: Decimal(text) for cell, text in TABLE_1.items() if text}
TABLE_6 = read_csv("us_table6.csv")
GAUGING = read_json("us_gauging.json")
EXAMPLES = {example["id"]: example for example in GAUGING["worked_examples"]}


def test_every_cell_of_table_1_by_look_up() -> None:
    # reference/us_table1_true_proof.csv: 17368 figures, all others blank.
    assert len(PRINTED) == 17368
    for (reading, temp_f), printed in PRINTED.items():
        assert true_proof(reading, temp_f) == float(printed)
        assert table1_tenths()[reading, temp_f] == int(printed * 10)


def test_every_blank_of_table_1_is_refused() -> None:
    blanks = [cell for cell, text in TABLE_1.items() if not text]
    assert len(blanks) == 207 * 100 - 17368
    for reading, temp_f in blanks:
        with pytest.raises(OutOfDomain, match="table1_blank"):
            true_proof(reading, temp_f)


def interpolated(reading: Decimal, temp_f: Decimal) -> Decimal | None:
    """27 CFR 30.23 in decimal arithmetic, straight from the printed table; None where a cell is blank."""
    low_reading, low_temp = int(reading), int(temp_f)
    part_reading, part_temp = reading - low_reading, temp_f - low_temp
    here = PRINTED.get((low_reading, low_temp))
    above = PRINTED.get((low_reading + 1, low_temp)) if part_reading else here
    warmer = PRINTED.get((low_reading, low_temp + 1)) if part_temp else here
    if here is None or above is None or warmer is None:
        return None
    return here + part_reading * (above - here) - part_temp * (here - warmer)


@steady
@given(st.decimals(0, 206, places=2), st.decimals(1, 100, places=2))
def test_interpolation_against_decimal_arithmetic(reading: Decimal, temp_f: Decimal) -> None:
    expected = interpolated(reading, temp_f)
    if expected is None:
        with pytest.raises(OutOfDomain):
            true_proof(float(reading), float(temp_f))
        return
    assert true_proof_unrounded(float(reading), float(temp_f)) == pytest.approx(float(expected), abs=1e-9)
    rounded = expected.quantize(Decimal("0.1"), rounding=ROUND_HALF_UP)
    assert true_proof(float(reading), float(temp_f)) == float(rounded)


def test_halves_go_up_on_paper_not_in_binary() -> None:
    # Many half readings land exactly on a half of the last place.
    halves = 0
    for reading in range(60, 180, 3):
        for temp_f in range(40, 90, 7):
            expected = interpolated(Decimal(reading) + Decimal("0.5"), Decimal(temp_f))
            assert expected is not None
            halves += expected * 100 % 10 == 5
            assert true_proof(reading + 0.5, temp_f) == float(expected.quantize(Decimal("0.1"), rounding=ROUND_HALF_UP))
    assert halves > 50


def test_arrays_give_what_numbers_give() -> None:
    rng = np.random.default_rng(3)
    readings, temps = rng.uniform(80, 180, 300).round(2), rng.uniform(40, 99, 300).round(2)
    one_by_one = [true_proof(r, t) for r, t in zip(readings.tolist(), temps.tolist(), strict=True)]
    assert true_proof(readings, temps).tolist() == one_by_one
    with pytest.raises(OutOfDomain, match="table1_blank"):
        true_proof(np.array([100.0, 5.0]), np.array([60.0, 10.0]))


def test_worked_example_30_23() -> None:
    given_, expected = EXAMPLES["30.23"]["inputs"], EXAMPLES["30.23"]["expected"]
    arguments = (
        given_["hydrometer_reading"],
        given_["temp_F"],
        given_["hydrometer_correction"],
        given_["thermometer_correction"],
    )
    assert true_proof_unrounded(*arguments) == pytest.approx(expected["unrounded"], abs=1e-9)
    assert true_proof(*arguments) == expected["proof"] == 190.0


def test_sample_line_30_61() -> None:
    assert true_proof(193, 75) == EXAMPLES["30.61"]["expected"]["true_proof"]


@pytest.mark.parametrize(
    ("reading", "temp_f", "corrections"),
    [
        (206.01, 99, ()),
        (-0.01, 55, ()),
        (100, 0.99, ()),
        (100, 100.01, ()),
        (206, 60, ()),
        (0, 61, ()),
        (0.5, 60.5, ()),
        (100, 60, (5.1, 0)),
        (100, 60, (0, -5.1)),
        (float("nan"), 60, ()),
        (100, float("nan"), ()),
        (float("inf"), 60, ()),
    ],
)
def test_outside_table_1_is_refused(reading: float, temp_f: float, corrections: tuple[float, ...]) -> None:
    with pytest.raises(OutOfDomain):
        true_proof(reading, temp_f, *corrections)


def test_edges_of_table_1_are_inside() -> None:
    assert true_proof(206, 100) == 199.6
    assert true_proof(0, 60) == 0
    assert true_proof(76, 1) == 101.9
    assert true_proof(0, 59.5) == 0.1  # 0.05 goes up


BOUNDS = GAUGING["oiml_vs_us_tables"]["max_abs_deviation_proof"]


@pytest.mark.parametrize("row", BOUNDS, ids=lambda row: f"{row['readings']}-{row['temp_F']}")
def test_table_1_against_oiml(row: dict[str, object]) -> None:
    # The bounds of reference/us_gauging.json: OIML R 22 with a glass of 25e-6 made for 60 °F, cell by cell.
    from webapp.trade.density import coefficients_at, mass_fraction_at, volume_share_at
    from webapp.trade.numeric import invert, polynomial

    (low, high), (cold, warm) = row["readings"], row["temp_F"]  # type: ignore[misc]
    deviations = []
    for reading in range(low, high + 1):
        mark = polynomial(coefficients_at(PROOF_TEMP_C), mass_fraction_at(float(reading), PROOF_TEMP_C, "", "", 200.0))
        for temp_f in range(cold, warm + 1):
            if (reading, temp_f) not in PRINTED:
                continue
            temp_c = (temp_f - 32) / 1.8
            fraction = invert(coefficients_at(temp_c), mark * (1 - 25e-6 * (temp_c - PROOF_TEMP_C)), 0.0, 1.0)
            if not math.isnan(fraction):
                printed = float(PRINTED[reading, temp_f])
                deviations.append(abs(volume_share_at(fraction, PROOF_TEMP_C, 200.0) - printed))
    assert max(deviations) < row["max"] + 0.005  # type: ignore[operator]
    assert math.sqrt(np.mean(np.square(deviations))) < row["rms"] + 0.0011  # type: ignore[operator]


# As docs/numbers.md has it: readings, temperatures, most apart [proof], share that rounds otherwise [%].
SHARES = [((75, 190), (40, 100), 0.17, 15), ((75, 190), (1, 39), 0.47, 75), ((191, 200), (40, 100), 0.26, 37),
          ((1, 74), (40, 100), 0.30, 30), ((1, 74), (1, 39), 0.43, 73), ((1, 206), (1, 100), 0.47, 37)]


@pytest.mark.parametrize(("readings", "temps", "most", "share"), SHARES)
def test_how_near_oiml_is_to_table_1_and_where(
    readings: tuple[int, int], temps: tuple[int, int], most: float, share: float
) -> None:
    cells = [(proof, float(PRINTED[key])) for key, proof in _by_oiml().items()
             if readings[0] <= key[0] <= readings[1] and temps[0] <= key[1] <= temps[1]]
    assert max(abs(proof - printed) for proof, printed in cells) == pytest.approx(most, abs=0.005)
    otherwise = [round_half_up(proof, 1) != printed for proof, printed in cells]
    assert 100 * np.mean(otherwise) == pytest.approx(share, abs=0.5)


@cache
def _by_oiml() -> dict[tuple[int, int], float]:
    """Return the true proof of each printed cell by OIML R 22, a glass of 25e-6 made for 60 °F."""
    from webapp.trade.density import coefficients_at, mass_fraction_at, volume_share_at
    from webapp.trade.numeric import invert, polynomial

    found = {}
    for reading, temp_f in PRINTED:
        temp_c = (temp_f - 32) / 1.8
        if not 0 < reading <= 200:
            continue
        mark = polynomial(coefficients_at(PROOF_TEMP_C), mass_fraction_at(float(reading), PROOF_TEMP_C, "", "", 200.0))
        fraction = invert(coefficients_at(temp_c), mark * (1 - 25e-6 * (temp_c - PROOF_TEMP_C)), 0.0, 1.0)
        if not math.isnan(fraction):
            found[reading, temp_f] = volume_share_at(fraction, PROOF_TEMP_C, 200.0)
    return found


def test_table_6_is_kept_as_printed() -> None:
    for row in TABLE_6:
        proof = float(row["proof"])
        assert gravity_of_proof(proof) == float(row["sg_air_60F"])
        assert gravity_of_proof(proof, in_air=False) == float(row["sg_vacuum_60F"])


def test_table_6_gravity_against_oiml() -> None:
    # reference/us_gauging.json: at most 7.2e-5 apart; 46 proof in vacuo is a misprint (5e-5).
    water = density_from_strength(0, PROOF_TEMP_C)
    for row in TABLE_6:
        density = density_from_strength(strength_from_proof(float(row["proof"])), PROOF_TEMP_C)
        assert density / water == pytest.approx(float(row["sg_vacuum_60F"]), abs=8e-5)


def test_table_6_water_parts_against_oiml() -> None:
    # reference/us_gauging.json: at most 0.012 parts apart.
    water = density_from_strength(0, PROOF_TEMP_C)
    for row in TABLE_6:
        strength = strength_from_proof(float(row["proof"]))
        parts = (
            100 * density_from_strength(strength, PROOF_TEMP_C) * (1 - mass_fraction_from_strength(strength)) / water
        )
        assert parts == pytest.approx(float(row["water_parts"]), abs=0.0125)


def test_gravity_between_lines_is_on_the_straight_line() -> None:
    assert gravity_of_proof(190.5) == pytest.approx((gravity_of_proof(190) + gravity_of_proof(191)) / 2, abs=1e-12)


def test_pounds_and_gallons_30_64() -> None:
    example = EXAMPLES["30.64a"]
    assert wine_gallons_per_pound(190) == example["inputs"]["wine_gal_per_lb"]
    assert proof_gallons_per_pound(190) == example["inputs"]["proof_gal_per_lb"]
    assert wine_gallons_from_pounds(81000, 190) == example["expected"]["wine_gal"]
    assert proof_gallons_from_pounds(81000, 190) == example["expected"]["proof_gal"]


@pytest.mark.parametrize(
    ("pounds", "proof", "wine_gallons", "proof_gallons"),
    [
        (81000, 190, 11921.58, 22650.84),  # 27 CFR 30.64, as printed
        (1000, 200, 1000 * 0.15129, 302.58),  # 27 CFR 30.64, the weight to be reduced
        (500, 120, 65.735, 78.88),  # Table 4 as the rule computes it: 0.13147 and 0.15776 a pound
    ],
)
def test_what_is_weighed_in_pounds_goes_by_30_64(
    pounds: float, proof: float, wine_gallons: float, proof_gallons: float
) -> None:
    strength = strength_from_proof(proof)
    at_60f = volume_60f_from_20c(litres_from_pounds(pounds, strength), strength) / 3.785411784
    assert at_60f == pytest.approx(wine_gallons, abs=1e-6)
    assert proof_gallons_from_lpa(lpa_from_pounds(pounds, strength)) == pytest.approx(proof_gallons, abs=1e-6)


def test_proof_is_gauged_to_a_tenth_before_table_4() -> None:
    """27 CFR 30.23: to the nearest tenth, hundredths of 5 and over going up."""
    assert lpa_from_pounds(500, strength_from_proof(119.96)) == lpa_from_pounds(500, strength_from_proof(120.04))
    assert lpa_from_pounds(500, strength_from_proof(119.94)) < lpa_from_pounds(500, strength_from_proof(119.96))


def test_tank_car_30_63() -> None:
    # From memory in the reference file; the parts are the same sum of smaller weights.
    parts = {k: v for k, v in EXAMPLES["30.63"]["expected"].items() if k != "total"}
    for pounds, proof_gallons in parts.items():
        assert proof_gallons_from_pounds(float(pounds), 190) == proof_gallons
    assert proof_gallons_from_pounds(60378, 190) == EXAMPLES["30.63"]["expected"]["total"]


def test_wine_to_proof_gallons_30_51() -> None:
    expected = EXAMPLES["30.51"]["expected"]
    assert proof_gallons_from_wine_gallons(4286.94, 86.8) == expected["proof_gal"]


def test_obscuration_30_32() -> None:
    example = EXAMPLES["30.32b"]
    solids = 4 * example["inputs"]["residue_g_from_25_mL"]
    assert obscuration_proof(solids, 90.0) == example["expected"]["obscuration_proof"]
    for solids in (-0.01, 0.601, float("nan")):
        with pytest.raises(OutOfDomain):
            obscuration_proof(solids, 90.0)


@pytest.mark.parametrize("proof", [80.0, 79.96, 100.0, 100.04])
def test_obscuration_is_for_80_to_100_proof(proof: float) -> None:
    # 27 CFR 30.31 and 30.32, as reference/us_gauging.json has them; a proof is taken to a tenth (30.23).
    assert "80-100 proof" in EXAMPLES["30.32b"]["check"]
    assert obscuration_proof(0.5, proof) == 2.0


@pytest.mark.parametrize("proof", [79.94, 100.06, 40.0, 120.0, float("nan")])
def test_obscuration_is_not_taken_further(proof: float) -> None:
    with pytest.raises(OutOfDomain):
        obscuration_proof(0.5, proof)


@pytest.mark.parametrize("row", GAUGING["table_30_44b_weighing_small_containers"]["rows"], ids=str)
def test_weighing_small_containers_30_44b(row: list[float]) -> None:
    # Ounces go up to a whole one; proof gallons to a tenth.
    proof, gallons, pounds, ounces, _, proof_gallons = row
    assert math.ceil(gallons * pounds_per_wine_gallon(proof) * 16 - 0.01) == pounds * 16 + ounces
    assert proof_gallons_from_wine_gallons(gallons, proof) == proof_gallons


def test_half_proof_is_not_strength_at_20() -> None:
    # reference/us_gauging.json: % vol at 20 °C less half the proof.
    differences = GAUGING["oiml_vs_us_tables"]["abv_20C_minus_half_proof"]
    for proof, difference in differences.items():
        assert strength_from_proof(float(proof)) - float(proof) / 2 == pytest.approx(difference, abs=0.0006)
    assert proof_from_strength(45.0) == pytest.approx(89.87, abs=0.005)


def test_printed_mass_percent_of_half_proof() -> None:
    # USP 29 alcoholometric table (through oiml_check_values.csv): % vol at 60 °F against % mass.
    rows = [r for r in read_csv("oiml_check_values.csv") if r["quantity"] == "mass_percent"]
    assert len(rows) == 32
    for row in rows:
        ours = 100 * mass_fraction_from_strength(strength_from_proof(2 * float(row["strength"])))
        assert ours == pytest.approx(float(row["printed"]), abs=0.012)


def test_a_proof_gallon_is_not_half_a_gallon_at_20() -> None:
    assert lpa_per_proof_gallon() == pytest.approx(1.9018, abs=0.00005)
    # 1.5010 kg of alcohol either way: 3.785411784/2 L at 793.03 kg/m3.
    kilograms = lpa_per_proof_gallon() * 0.7892391
    assert kilograms == pytest.approx(1.892705892 * 0.7930325, rel=1e-6)
    assert proof_gallons_from_lpa(1000) == pytest.approx(525.82, abs=0.01)


@steady
@given(st.floats(0, 200))
def test_proof_and_back(proof: float) -> None:
    assert proof_from_strength(strength_from_proof(proof)) == pytest.approx(proof, abs=1e-10)


@steady
@given(st.floats(-1e6, 1e6), st.floats(0, 100))
def test_volumes_and_proof_gallons_and_back(amount: float, strength: float) -> None:
    assert lpa_from_proof_gallons(proof_gallons_from_lpa(amount)) == pytest.approx(amount, rel=1e-12)
    volume = abs(amount)
    assert volume_20c_from_60f(volume_60f_from_20c(volume, strength), strength) == pytest.approx(volume, rel=1e-12)


def test_both_worlds_count_the_same_alcohol() -> None:
    # 1000 L at 20 °C of 62 % vol: proof gallons by LPA and by wine gallons at 60 °F times proof.
    by_lpa = proof_gallons_from_lpa(1000 * 0.62)
    wine_gallons = volume_60f_from_20c(1000, 62) / 3.785411784
    assert wine_gallons * proof_from_strength(62) / 100 == pytest.approx(by_lpa, rel=1e-12)


@pytest.mark.parametrize("proof", [-0.1, 200.1, float("nan")])
def test_proof_outside_its_scale_is_refused(proof: float) -> None:
    for sum_ in (strength_from_proof, gravity_of_proof, wine_gallons_per_pound, pounds_per_wine_gallon):
        with pytest.raises(OutOfDomain):
            sum_(proof)
