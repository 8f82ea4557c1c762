"""Limits of error of instruments against limits as laws print them."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.trade.properties import steady
from tests.trade.reference_files import read_json
from webapp.trade.error_limits import (
    dip_limits_l,
    glass_limit_pct,
    proof_limit,
    scale_interval_kg,
    scale_limit_kg,
    thermometer_limit_c,
)

REFERENCE = read_json("uncertainty.json")


@pytest.mark.parametrize("row", REFERENCE["scales"]["tests"])
def test_limits_of_scales(row: dict[str, float | str]) -> None:
    """Directive 2014/31/EU, annex I, as UK S.I. 1995/1907 prints it."""
    found = scale_limit_kg(float(row["load_kg"]), float(row["e_kg"]), str(row["class"]))
    assert found == pytest.approx(float(row["mpe_kg"]), abs=1e-12)


def test_a_scale_that_was_not_named_has_three_thousand_intervals() -> None:
    assert [scale_interval_kg(load) for load in (0, 52, 268.5, 300, 301, 900, 2000, 60_000)] == pytest.approx(
        [0.1, 0.1, 0.1, 0.1, 0.2, 0.5, 1.0, 20.0]
    )
    assert scale_limit_kg(268.5, 0.1, "") == scale_limit_kg(268.5, 0.1, "III")


@pytest.mark.parametrize(("accuracy", "limit"), REFERENCE["alcoholometers"]["mpe_pct"].items())
def test_limits_of_glasses(accuracy: str, limit: float) -> None:
    """Directive 76/765/EEC, as Czech decree 31/2002 has it."""
    assert glass_limit_pct(accuracy, None) == pytest.approx(limit)
    assert glass_limit_pct(accuracy, 0.1) == pytest.approx(limit)
    assert glass_limit_pct(accuracy, 0.5) == 0.5  # no glass of a class


def test_limits_of_other_glasses_and_thermometers() -> None:
    assert glass_limit_pct("", None) == glass_limit_pct("III", None)
    assert (proof_limit(None), proof_limit(1.0)) == (0.2, 1.0)
    for row in REFERENCE["thermometers"]["rows"]:  # Czech decree 31/2002, annex, 9.2
        assert thermometer_limit_c(row["interval_C"]) == row["mpe_C"]
    assert (thermometer_limit_c(None), thermometer_limit_c(0.3), thermometer_limit_c(1.0)) == (0.2, 0.2, 1.0)


def test_a_dip_is_off_by_the_table_and_by_the_surface() -> None:
    """0.3 % of what stands there (French order of 18 December 1996); 2 mm on one square metre are 2 L."""
    assert dip_limits_l(500.0, 1000.0) == (pytest.approx(1.5), pytest.approx(2.0))
    assert dip_limits_l(8000.0, None) == (pytest.approx(24.0), pytest.approx(8.0))
    assert dip_limits_l(0.0, 0.0) == (0.0, 0.0)


@steady
@given(st.floats(1e-6, 1e6))
def test_the_surface_is_that_of_a_cube(litres: float) -> None:
    assert dip_limits_l(0.0, litres)[1] == pytest.approx((litres / 1000) ** (2 / 3) * 2, rel=1e-9)
