"""Sums of the still log."""

import pytest

from tests.trade.reference_files import read_csv
from webapp.trade.errors import OutOfDomain
from webapp.trade.still import vapour_offset_c, vapour_temp_c

VLE = [row for row in read_csv("vle_ethanol_water.csv") if 20 <= float(row["vapour_abv_20C_derived"]) <= 95]


@pytest.mark.parametrize("row", VLE, ids=lambda row: row["vapour_abv_20C_derived"])
def test_vapour_temperature_against_measured_equilibria(row: dict[str, str]) -> None:
    # Carey and Lewis 1932, as textbooks carry it; the strengths are the vapour's own, brought to % vol at 20 °C.
    assert vapour_temp_c(float(row["vapour_abv_20C_derived"])) == pytest.approx(float(row["T_C"]), abs=0.7)


def test_there_are_measured_points_to_compare() -> None:
    assert len(VLE) >= 12


def test_a_higher_still_is_cooler() -> None:
    assert vapour_temp_c(70, 600) == pytest.approx(vapour_temp_c(70) - 2)


def test_strength_and_height_have_ends() -> None:
    for strength, height in ((19.9, 0), (95.1, 0), (60, -1), (60, 3001), (float("nan"), 0)):
        with pytest.raises(OutOfDomain):
            vapour_temp_c(strength, height)


def test_a_still_learns_its_own_vapour_offset_and_one_slip_does_not_move_it() -> None:
    # By hand: each vapour is the expected one less 0.6 degC; the fourth pair is a slip of 15 degC.
    pairs = [(pct, float(vapour_temp_c(pct, 310)) - 0.6) for pct in (75, 70, 60, 50, 40)]
    assert vapour_offset_c(pairs, 310) == pytest.approx(-0.6, abs=1e-9)
    pairs[3] = (50, pairs[3][1] + 15)
    assert vapour_offset_c(pairs, 310) == pytest.approx(-0.6, abs=1e-9)


def test_too_few_pairs_teach_no_offset() -> None:
    assert vapour_offset_c([(70, 88.0), (60, 91.0)]) is None
    assert vapour_offset_c([(70, 88.0), (60, 91.0), (8.8, 98.0)]) is None  # a strength outside the data is left out
