"""Scales of gravity, from specific gravity and back."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.trade.properties import steady
from tests.trade.reference_files import read_json
from webapp.trade.errors import OutOfDomain
from webapp.trade.scales import (
    brix_from_gravity,
    brix_from_kmw,
    brix_from_oechsle,
    gravity_from_brix,
    gravity_from_kmw,
    gravity_from_plato,
    kmw_from_brix,
    kmw_from_gravity,
    oechsle_from_brix,
    oechsle_from_gravity,
    plato_from_gravity,
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


# Degrees KMW and Oechsle of Austrian wine law, from memory: Landwein, Qualitaetswein, Kabinett, Spaetlese, Auslese,
# Beerenauslese, Trockenbeerenauslese.
KMW_OECHSLE = [(14, 68), (15, 73), (17, 84), (19, 94), (21, 105), (25, 127), (30, 156)]


@pytest.mark.parametrize(("kmw", "oechsle"), KMW_OECHSLE)
def test_the_pairs_of_the_law_come_out_to_their_whole_degrees(kmw: float, oechsle: float) -> None:
    assert oechsle_from_gravity(gravity_from_kmw(kmw)) == pytest.approx(oechsle, abs=0.5)
    assert kmw_from_gravity(1 + oechsle / 1000) == pytest.approx(kmw, abs=0.1)


@steady
@given(st.floats(0.98, 1.17874))
def test_kmw_there_and_back(gravity: float) -> None:
    assert gravity_from_kmw(kmw_from_gravity(gravity)) == pytest.approx(gravity, abs=1e-12)


def test_kmw_ends_where_gravities_end() -> None:
    # The scale means per cent of sugar by mass; it lies below Brix by what is no sugar in juice.
    assert -4.6 < kmw_from_gravity(0.98) < -4.4 and 33.7 < kmw_from_gravity(1.17874) < 33.9
    for beyond in (-4.6, 33.9, float("nan")):
        with pytest.raises(OutOfDomain):
            gravity_from_kmw(beyond)
    assert np.all(kmw_from_gravity(np.linspace(1.02, 1.12, 50)) < brix_from_gravity(np.linspace(1.02, 1.12, 50)))


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


def test_a_refractometers_oechsle_against_the_must_table() -> None:
    # OIV Oeno 21/2004, table II: Brix by refractometer and density of grape must. Must is a little denser than sucrose.
    found = np.array([brix_from_oechsle((row[2] / 0.99820123 - 1) * 1000) - row[0] for row in MUST])
    assert np.all(found > 0.13) and np.all(found < 0.34)


def test_refractometer_pairs() -> None:
    # The glossary pair 15.7 Bx, 64 °Oe; 17 KMW are 84 °Oe by Austrian wine law (from memory).
    assert brix_from_oechsle(64) == pytest.approx(15.7, abs=0.05)
    assert brix_from_kmw(17) == pytest.approx(brix_from_oechsle(84), abs=0.11)
    for beyond in (179.0, -21.0, float("nan")):
        with pytest.raises(OutOfDomain):
            brix_from_oechsle(beyond)
    with pytest.raises(OutOfDomain):
        brix_from_kmw(33.9)


@steady
@given(st.floats(-5.0, 39.9))
def test_refractometer_scales_there_and_back(brix: float) -> None:
    assert brix_from_oechsle(oechsle_from_brix(brix)) == pytest.approx(brix, abs=1e-10)
    assert brix_from_kmw(kmw_from_brix(brix)) == pytest.approx(brix, abs=1e-10)


def test_density_column_is_near_the_sucrose_scale() -> None:
    # Grape must is not sucrose solution, but the two gravities of one Brix are within 0.002.
    for row in MUST:
        assert gravity_from_brix(float(row[0])) == pytest.approx(row[2] / 0.99820123, abs=0.002)


@pytest.mark.parametrize(
    ("call", "arguments"),
    [
        (brix_from_gravity, (0.9799,)),
        (brix_from_gravity, (1.1788,)),
        (gravity_from_brix, (40.1,)),
        (gravity_from_brix, (-6,)),
        (plato_from_gravity, (1.131,)),
        (oechsle_from_gravity, (float("nan"),)),
        (gravity_from_plato, (31,)),
    ],
)
def test_outside_the_domain_is_refused(call: object, arguments: tuple[float, ...]) -> None:
    with pytest.raises(OutOfDomain):
        call(*arguments)  # type: ignore[operator]
