"""Uncertainty against published examples and against Monte Carlo (JCGM 101)."""

from math import sqrt

import numpy as np
import pytest

from tests.trade.reference_files import read_json
from webapp.trade.alcoholometry import litres_from_mass, litres_pure_alcohol, true_strength_from_glass, volume_at_20
from webapp.trade.table1 import true_proof
from webapp.trade.uncertainty import (
    Input,
    Uncertain,
    combine,
    expanded,
    propagate,
    standard_from_interval,
    standard_from_limit,
)

REFERENCE = read_json("uncertainty.json")
DRAWS = 200_000


def alone(name: str, value: float, standard: float) -> Input:
    """An input whose error nothing else shares."""
    return Input(name, value, "", standard, 0.0)


def test_a_standard_solution_by_the_eurachem_guide() -> None:
    """EURACHEM/CITAC Guide, example A1: c = 1000 m P / V, printed 1002.7 mg/L and 0.9 mg/L."""
    given_inputs = REFERENCE["eurachem_A1"]["inputs"]
    inputs = [alone(name, *given_inputs[name]) for name in ("m_mg", "P", "V_mL")]
    found = propagate(lambda at: {"c": 1000 * at["m_mg"] * at["P"] / at["V_mL"]}, inputs)["c"]
    expected = REFERENCE["eurachem_A1"]["expected"]
    assert found.value == pytest.approx(expected["c_mg_L"], abs=0.05)
    assert found.standard == pytest.approx(expected["unrounded"]["u_c"], rel=1e-4)


def test_ten_resistors_held_against_one_standard() -> None:
    """JCGM 100:2008, 5.2.2, example (from memory): 1 ohm in series, and not the 0.32 ohm of ten that share nothing."""
    one = Uncertain(1000.0, {"standard": 0.1}, 0.0)
    series = combine([(1.0, one)] * 10)
    assert (series.value, series.standard) == (pytest.approx(10_000), pytest.approx(1.0))
    apart = combine([(1.0, Uncertain(1000.0, {f"standard {n}": 0.1}, 0.0)) for n in range(10)])
    assert apart.standard == pytest.approx(0.316, abs=0.001)


def _limits(name: str) -> tuple[float, float]:
    given_input = REFERENCE["cask"]["inputs"][name]
    return given_input["value"], standard_from_limit(given_input["mpe"])


def cask(at: dict[str, float]) -> dict[str, float]:
    """Pure alcohol in a cask, without the air, as the worked example has it."""
    strength = true_strength_from_glass(at["reading_pct"], at["temp_C"])
    litres = litres_from_mass(at["gross_kg"] - at["tare_kg"], strength)
    return {"strength": strength, "lpa": litres_pure_alcohol(litres, strength)}


def test_a_cask_weighed_and_proved() -> None:
    """Worked apart from this code, with its sensitivities."""
    expected = REFERENCE["cask"]["expected"]
    found = propagate(cask, [alone(name, *_limits(name)) for name in REFERENCE["cask"]["inputs"]])
    assert found["lpa"].value == pytest.approx(expected["LPA"], abs=1e-3)
    assert found["lpa"].standard == pytest.approx(expected["u_LPA"], abs=2e-4)
    assert found["strength"].standard == pytest.approx(expected["u_strength_pct"], abs=2e-4)
    for name, slope in (("gross_kg", "L_per_kg_gross"), ("reading_pct", "L_per_pct"), ("temp_C", "L_per_C")):
        value, standard = _limits(name)
        rest = [Input(each, _limits(each)[0], "", 0.0, 0.0) for each in REFERENCE["cask"]["inputs"] if each != name]
        part = propagate(cask, [Input(name, value, "it", standard, 0.0), *rest])["lpa"]
        assert part.shared["it"] / standard == pytest.approx(expected["sensitivities"][slope], rel=2e-3)


def _drawn(values: dict[str, tuple[float, float]]) -> dict[str, np.ndarray]:
    dice = np.random.default_rng(101)
    return {
        name: value + dice.uniform(-1, 1, DRAWS) * standard * sqrt(3.0) for name, (value, standard) in values.items()
    }


def test_propagation_agrees_with_monte_carlo() -> None:
    """JCGM 101:2008: rectangular draws through the same sums; 95 of 100 lie within k = 2, or a little less far."""
    values = {name: _limits(name) for name in REFERENCE["cask"]["inputs"]}
    found = propagate(cask, [alone(name, *one) for name, one in values.items()])["lpa"]
    drawn = cask(_drawn(values))["lpa"]
    assert found.standard == pytest.approx(float(np.std(drawn)), rel=0.01)
    low, high = np.quantile(drawn, [0.025, 0.975])
    assert REFERENCE["cask"]["monte_carlo"]["p2_5"] == pytest.approx(low, abs=0.015)
    assert 1.8 < (high - low) / 2 / found.standard < 2.05


@pytest.mark.parametrize(("litres", "reading", "temp"), [(100.0, 45.0, 5.0), (2000.0, 72.0, 30.0), (850.0, 12.0, 18.0)])
def test_a_dipped_volume_agrees_with_monte_carlo(litres: float, reading: float, temp: float) -> None:
    """Strength and volume share the thermometer: its error goes into both, with its signs."""

    def model(at: dict[str, float]) -> dict[str, float]:
        strength = true_strength_from_glass(at["glass"], at["temp"])
        return {"lpa": litres_pure_alcohol(volume_at_20(at["volume"], strength, at["temp"]), strength)}

    values = {"volume": (litres, litres * 0.002), "glass": (reading, 0.0577), "temp": (temp, 0.1155)}
    found = propagate(model, [alone(name, *one) for name, one in values.items()])["lpa"]
    assert found.standard == pytest.approx(float(np.std(model(_drawn(values))["lpa"])), rel=0.01)


def test_a_loss_between_two_gauges_with_one_glass_is_better_known_than_the_strength() -> None:
    def gauge(kg: float, glass: float, error: str) -> Uncertain:
        scale, alcoholmeter = error and "scale", error and "glass"
        inputs = [Input("kg", kg, scale, 0.087, 0.029), Input("glass", glass, alcoholmeter, 0.058, 0.0)]
        return propagate(
            lambda at: {"lpa": litres_pure_alcohol(litres_from_mass(at["kg"], at["glass"]), at["glass"])}, inputs
        )["lpa"]

    with_one = combine([(1.0, gauge(183.0, 62.0, "one")), (-1.0, gauge(176.0, 61.2, "one"))])
    with_any = combine([(1.0, gauge(183.0, 62.0, "")), (-1.0, gauge(176.0, 61.2, ""))])
    assert with_one.value == with_any.value
    assert with_one.standard < with_any.standard / 3


def test_proof_is_followed_in_steps_larger_than_its_rounding() -> None:
    """Near 120 proof one subdivision of the glass is one of the proof: 27 CFR 30.61, Table 1, rises by 1.0 a degree."""
    inputs = [Input("glass", 120.0, "", standard_from_limit(0.2), 0.0, 4 * standard_from_limit(0.2))]
    found = propagate(lambda at: {"proof": true_proof(at["glass"], 70.0)}, inputs)["proof"]
    assert found.standard == pytest.approx(standard_from_limit(0.2), rel=0.12)


def test_where_one_side_has_no_answer_the_other_tells() -> None:
    def model(at: dict[str, float]) -> dict[str, float]:
        return {"twice": 2 * at["x"]} if at["x"] <= 1 else {}

    assert propagate(model, [alone("x", 1.0, 0.1)])["twice"].standard == pytest.approx(0.2)
    assert propagate(model, [alone("x", 2.0, 0.1)]) == {}
    found = propagate(lambda at: {"y": at["x"]} if at["x"] == 1 else {}, [alone("x", 1.0, 0.1)])
    assert found["y"].standard == 0


def test_what_is_shown_is_never_less_than_what_is_meant() -> None:
    """JCGM 100:2008, 7.2.6: rounded up."""
    assert [expanded(one, 1) for one in (0.0, 0.01, 0.05, 0.0692, 0.10, 0.1001)] == [0.0, 0.1, 0.1, 0.2, 0.2, 0.3]
    assert expanded(0.20455, 2) == 0.41
    assert expanded(12.0, 0) == 24.0


def test_readings_to_an_interval() -> None:
    assert standard_from_interval(0.1) == pytest.approx(0.0288675)
    assert standard_from_limit(0.1) == pytest.approx(0.0577350)
