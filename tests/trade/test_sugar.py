"""What ferments make of sugar."""

import numpy as np
import pytest

from tests.trade.reference_files import read_json
from webapp.trade.datafiles import load_data
from webapp.trade.errors import OutOfDomain
from webapp.trade.sugar import (
    alcohol_from_gravity_fall,
    potential_alcohol_from_brix,
    potential_alcohol_from_gravity,
    presumptive_lpa,
)

REFERENCE = read_json("sugar_and_gravity.json")
MUST = np.array(REFERENCE["grape_must_table"]["rows"])


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
        (potential_alcohol_from_brix, (9.99,)),
        (potential_alcohol_from_brix, (30.01,)),
        (potential_alcohol_from_gravity, (1.04,)),
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
