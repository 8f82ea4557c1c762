"""Sugar scales and what ferments make of them."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.trade.properties import steady
from tests.trade.reference_files import read_json
from webapp.trade.datafiles import load_data
from webapp.trade.errors import OutOfDomain
from webapp.trade.sugar import (
    alcohol_from_gravity_fall,
    brix_from_gravity,
    gravity_from_brix,
    gravity_from_plato,
    oechsle_from_gravity,
    plato_from_gravity,
    potential_alcohol_from_brix,
    potential_alcohol_from_gravity,
    presumptive_lpa,
)

REFERENCE = read_json("sugar_and_gravity.json")
MUST = np.array(REFERENCE["grape_must_table"]["rows"])


def test_the_printed_pair_at_1_040() -> None:
    # Printed 9.99325 Bx and 9.99359 P (tables); the fits give 9.99341 and 9.99353.
    pair = REFERENCE["printed_pair"]
    assert brix_from_gravity(pair["S"]) == pytest.approx(pair["equations_give"]["Bx"], abs=6e-6)
    assert plato_from_gravity(pair["S"]) == pytest.approx(pair["equations_give"]["P"], abs=6e-6)
    assert brix_from_gravity(pair["S"]) == pytest.approx(pair["Bx_nbs"], abs=0.0009)
    assert plato_from_gravity(pair["S"]) == pytest.approx(pair["P_asbc"], abs=0.0009)


def test_known_gravities_of_sucrose() -> None:
    # NBS and ASBC tables, FROM MEMORY in the reference file.
    for brix, gravity in REFERENCE["pairs_from_memory_sucrose_sg_20_20"]["values"].items():
        assert gravity_from_brix(float(brix)) == pytest.approx(gravity, abs=1e-5)
        assert gravity_from_plato(float(brix)) == pytest.approx(gravity, abs=1e-5)


def test_cubic_against_the_short_formula() -> None:
    # Another fit of the same table, 28.14203 S + 202.4427 - 230.5870/S, 0 to 40 Bx.
    gravity = np.linspace(1.0, 1.178, 200)
    assert brix_from_gravity(gravity) == pytest.approx(28.14203 * gravity + 202.4427 - 230.5870 / gravity, abs=0.03)


def test_plato_and_brix_are_near_one_another_over_the_range_of_plato() -> None:
    gravity = np.linspace(1.0, 1.13, 200)
    assert plato_from_gravity(gravity) == pytest.approx(brix_from_gravity(gravity), abs=0.03)


def test_top_of_the_brix_fit_is_40() -> None:
    assert brix_from_gravity(1.17874) == pytest.approx(40, abs=0.005)


@steady
@given(st.floats(0.98, 1.17874))
def test_brix_and_back(gravity: float) -> None:
    assert gravity_from_brix(brix_from_gravity(gravity)) == pytest.approx(gravity, abs=1e-13)


@steady
@given(st.floats(0.98, 1.13))
def test_plato_and_back(gravity: float) -> None:
    assert gravity_from_plato(plato_from_gravity(gravity)) == pytest.approx(gravity, abs=1e-13)


def test_oechsle() -> None:
    assert oechsle_from_gravity(1.064) == pytest.approx(64)
    assert brix_from_gravity(1.064) == pytest.approx(15.7, abs=0.05)  # the glossary pair 1.064, 15.7 Bx, 64 °Oe


@pytest.mark.parametrize("row", MUST.tolist(), ids=lambda row: str(row[0]))
def test_must_table(row: list[float]) -> None:
    # OIV Oeno 21/2004 table II as printed in the French order. Its alcohol column is sometimes cut, not rounded: 0.012.
    brix, _, density, _, _, potential = row
    assert potential_alcohol_from_brix(brix) == pytest.approx(potential, abs=0.012)
    if 1.0391 < density < 1.1287:
        assert potential_alcohol_from_gravity(density / 0.99820123) == pytest.approx(potential, abs=0.017)


def test_must_quadratics_are_the_fit_of_the_printed_rows() -> None:
    sugar = load_data("sugar")
    by_brix, by_density = (np.polyfit(x, MUST[:, 3], 2)[::-1] for x in (MUST[:, 0], MUST[:, 2] - 1))
    assert sugar["must_sugar_from_brix"] == pytest.approx(by_brix, abs=1e-5)
    assert sugar["must_sugar_from_density"] == pytest.approx(by_density, abs=1e-3)


def test_density_column_is_near_the_sucrose_scale() -> None:
    # Grape must is not sucrose solution, but the two gravities of one Brix are within 0.002.
    for row in MUST:
        assert gravity_from_brix(float(row[0])) == pytest.approx(row[2] / 0.99820123, abs=0.002)


def test_gravity_fall() -> None:
    # Common practice: 131 % vol for each unit of gravity, times the juice.
    assert alcohol_from_gravity_fall(1.056, 1.004, 0.8) == pytest.approx(5.45, abs=0.005)
    assert alcohol_from_gravity_fall(1.05, 1.05, 1) == 0


def test_presumptive_alcohol_of_apples() -> None:
    # Common practice: 12.5 Bx, share 0.9, 3.5 off: 4.9 L from 100 kg.
    assert presumptive_lpa(100, 12.5, 0.9) == pytest.approx(4.9, abs=0.05)
    assert presumptive_lpa(100, 3, 0.9) == 0
    assert presumptive_lpa(np.array([100.0, 200.0]), 12.5, 0.9)[1] == pytest.approx(9.88, abs=0.005)


@pytest.mark.parametrize(
    ("call", "arguments"),
    [
        (brix_from_gravity, (0.9799,)),
        (brix_from_gravity, (1.1788,)),
        (gravity_from_brix, (40.1,)),
        (gravity_from_brix, (-6,)),
        (plato_from_gravity, (1.131,)),
        (oechsle_from_gravity, (float("nan"),)),
        (potential_alcohol_from_brix, (9.99,)),
        (potential_alcohol_from_brix, (30.01,)),
        (potential_alcohol_from_gravity, (1.04,)),
        (gravity_from_plato, (31,)),
        (alcohol_from_gravity_fall, (1.01, 1.02, 0.8)),
        (alcohol_from_gravity_fall, (1.05, 1.01, 0)),
        (alcohol_from_gravity_fall, (1.05, 1.01, 1.01)),
        (presumptive_lpa, (100, 41, 0.9)),
        (presumptive_lpa, (-1, 12, 0.9)),
    ],
)
def test_outside_the_domain_is_refused(call: object, arguments: tuple[float, ...]) -> None:
    with pytest.raises(OutOfDomain):
        call(*arguments)  # type: ignore[operator]
