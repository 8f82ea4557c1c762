"""Strength by distillation, and what an extract hides: against the method of the regulation, the law and a balance."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import brentq

from tests.trade.properties import steady
from tests.trade.reference_files import read_json
from webapp.trade.density import density_from_mass_fraction, density_from_strength, mass_fraction_from_strength
from webapp.trade.errors import OutOfDomain
from webapp.trade.obscured import (
    EXTRACT_KG_M3_PER_G_L,
    obscuration,
    obscuration_least,
    obscuration_most,
    obscuration_of_extract,
    strength_by_distillation,
    volume_of_dense,
)
from webapp.trade.proof import strength_from_proof


def test_the_method_of_the_regulation_gives_the_strength_of_the_distillate() -> None:
    # Regulation (EC) 2870/2000, Annex I, appendix I: 200 mL at 20 degC, distilled, made up to 200 mL at 20 degC.
    assert strength_by_distillation(0.2, 20, 0.2, 20, 40.0) == pytest.approx(40.0, abs=1e-12)
    # At another temperature too, where it is the same for both: flasks and mixtures are the same.
    assert strength_by_distillation(0.2, 14, 0.2, 14, 31.7) == pytest.approx(31.7, abs=1e-12)
    # Made up to twice its volume, the distillate has half the strength.
    assert strength_by_distillation(0.1, 20, 0.2, 20, 30.0) == pytest.approx(60.0, abs=1e-12)


@steady
@given(st.floats(0.05, 1), st.floats(5, 30), st.floats(0.05, 1), st.floats(5, 30), st.floats(1, 60))
def test_the_ethanol_of_the_sample_is_that_of_the_distillate(
    sample: float, sample_temp: float, made_up: float, made_up_temp: float, distillate: float
) -> None:
    # The balance of mass, solved by SciPy: litres times density times mass fraction, by OIML R 22.
    def ethanol(litres: float, pct: float, temp: float) -> float:
        fraction = mass_fraction_from_strength(pct)
        return float(litres * density_from_mass_fraction(fraction, temp) * fraction)

    wanted = ethanol(made_up, distillate, made_up_temp)
    if ethanol(sample, 99.0, sample_temp) < wanted:
        return
    found = brentq(lambda pct: ethanol(sample, pct, sample_temp) - wanted, 0, 99, xtol=1e-12)
    assert strength_by_distillation(sample, sample_temp, made_up, made_up_temp, distillate) == pytest.approx(
        found, abs=1e-8
    )


def test_a_gram_of_extract_hides_what_the_law_says() -> None:
    # 27 CFR 30.32(b): 0.1 g of solids in 100 mL hides 0.4 proof, from 80 to 100 proof and up to 0.6 g.
    rule = read_json("us_gauging.json")
    assert "0.4" in str(rule), "the rule's figure stands in the reference file"
    for proof in (80.0, 90.0, 100.0):
        for solids in (0.4, 0.6):
            by_law = strength_from_proof(proof + 4.0 * solids) - strength_from_proof(proof)
            found = obscuration_of_extract(strength_from_proof(proof + 4.0 * solids), 10.0 * solids)
            assert found == pytest.approx(by_law, rel=0.2)
            strength = strength_from_proof(proof + 4.0 * solids)
            assert obscuration_least(strength, 10.0 * solids) < by_law < obscuration_most(strength, 10.0 * solids)


def test_what_a_gram_of_sucrose_adds_to_density() -> None:
    # Sucrose solutions at 20 degC, handbooks, FROM MEMORY: 10 % 1038.1, 20 % 1081.0, 30 % 1127.0 kg/m3; water 998.2.
    for share, density in ((0.1, 1038.1), (0.2, 1081.0), (0.3, 1127.0)):
        assert (density - 998.2) / (share * density) == pytest.approx(EXTRACT_KG_M3_PER_G_L, rel=0.012)


def test_least_and_most_stand_about_what_the_extract_hides() -> None:
    middle = obscuration_of_extract(40.0, 20.0)
    assert obscuration_least(40.0, 20.0) == pytest.approx(0.8 * middle - 0.3)
    assert obscuration_most(40.0, 20.0) == pytest.approx(1.2 * middle + 0.3)
    assert obscuration_least(40.0, 0.0) == pytest.approx(-0.3)
    assert obscuration(40.0, 36.5) == pytest.approx(3.5)


def test_the_volume_of_a_weight_goes_by_the_density_that_was_read() -> None:
    # 60 % vol is 909.11 kg/m3 (OIML R 22); a litre of it weighs 909.11 less the air, 1.2 kg/m3 against brass weights.
    in_air = 0.90911 * (1 - 1.2 / 909.11) / (1 - 1.2 / 8000)
    assert volume_of_dense(in_air, 909.11, 20, 60.0) == pytest.approx(1.0, abs=1e-9)
    # A liqueur, heavier than water: 1082 kg/m3.
    assert volume_of_dense(108.2 * (1 - 1.2 / 1082) / (1 - 1.2 / 8000), 1082, 20, 25.0) == pytest.approx(100, abs=1e-9)
    warm = volume_of_dense(100, 1070, 28, 25.0) / volume_of_dense(100, 1070, 20, 25.0)
    assert warm == pytest.approx(density_from_strength(25.0, 28.0) / density_from_strength(25.0, 20.0))


@pytest.mark.parametrize(
    ("call", "arguments"),
    [
        (strength_by_distillation, (0.009, 20, 0.2, 20, 40)),
        (strength_by_distillation, (0.2, 20, 10.1, 20, 40)),
        (strength_by_distillation, (0.1, 20, 0.3, 20, 40)),
        (strength_by_distillation, (0.2, 41, 0.2, 20, 40)),
        (strength_by_distillation, (0.2, 20, 0.2, 20, float("nan"))),
        (obscuration, (101, 40)),
        (obscuration, (40, -1)),
        (obscuration_of_extract, (40, 601)),
        (obscuration_of_extract, (25, 300)),
        (volume_of_dense, (-1, 900, 20, 40)),
        (volume_of_dense, (1, 599, 20, 40)),
    ],
)
def test_outside_the_domain_is_refused(call: object, arguments: tuple[float, ...]) -> None:
    with pytest.raises(OutOfDomain):
        call(*arguments)  # type: ignore[operator]
