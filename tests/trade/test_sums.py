"""The registry of live sums: what kinds rely on."""

import json

import pytest

from tests.trade.refusal_words import words_of
from webapp.trade.alcoholometry import litres_from_mass, true_strength_from_glass
from webapp.trade.datafiles import load_data
from webapp.trade.errors import OutOfDomain
from webapp.trade.proof import strength_from_proof
from webapp.trade.sums import INPUT_UNITS, SUMS, Quantity, compute
from webapp.trade.table1 import true_proof

NEEDED = {
    "true_strength",
    "true_proof",
    "lpa_volume",
    "volume_20",
    "net_mass",
    "volume_from_mass",
    "lpa_mass",
    "proof_gallons",
    "wine_gallons",
    "alcohol_so_far",
    "potential_alcohol",
    "net_fruit",
    "presumptive_lpa",
    "total",
}

# One set of inputs for each sum, with the answer to a tenth where a printed or independently worked figure exists.
EXAMPLES = {
    "true_strength": {"glass": Quantity(58.2, "pct_glass"), "temp": Quantity(15, "degC")},
    "true_proof": {"glass": Quantity(193, "proof_glass"), "temp": Quantity(75, "degF")},
    "volume_20": {"volume": 1000, "strength": 60, "temp": 5},
    "lpa_volume": {"volume": Quantity(1000, "L"), "strength": Quantity(60, "pct_vol"), "temp": Quantity(5, "degC")},
    "net_mass": {"gross": 231.5, "tare": 48.5},
    "net_fruit": {"gross": Quantity(1000, "lb"), "tare": Quantity(100, "lb")},
    "volume_from_mass": {"net": 100, "strength": 60},
    "lpa_mass": {"net": 100, "strength": 60},
    "volume_weighed": {"net": 100, "strength": 60},
    "volume_weighed_us": {"net": Quantity(500, "lb"), "strength": Quantity(120, "proof")},
    "lpa_weighed_us": {"net": Quantity(500, "lb"), "strength": Quantity(120, "proof")},
    "total": {"a": 10.25, "b": 1.5},
    "proof_gallons": {"lpa": 1000},
    "wine_gallons": {"volume": 1000, "strength": 62},
    "wine_gallons_weighed": {"net": Quantity(81000, "lb"), "strength": Quantity(190, "proof")},
    "proof_gallons_weighed": {"net": Quantity(81000, "lb"), "strength": Quantity(190, "proof")},
    "alcohol_so_far": {"original_gravity": 1.056, "gravity": 1.004, "juice_share": 80},
    "alcohol_by_both": {"refractometer": Quantity(12.0, "Bx"), "gravity": 1.02},
    "potential_alcohol": {"sugar": Quantity(12.5, "Bx")},
    "presumptive_lpa": {"net": 100, "sugar": Quantity(12.5, "Bx"), "juice_share": Quantity(90, "pct")},
    "mass_from_volume": {"volume": 100, "strength": 60},
    "difference": {"a": 101.2, "b": 100.4},
    "water_mass": {"water_volume": Quantity(100, "L")},
    "water_to_reduce": {"net": 90.911, "strength": 60, "target": Quantity(45, "pct_vol")},
    "reduced_strength": {"net": 90.911, "strength": 60, "water": 34.36},
    "reduced_volume": {"net": 90.911, "strength": 60, "water": Quantity(34.36, "kg")},
    "volume_of_count": {"size": Quantity(100, "mL"), "number": 3},
    "strength_by_density": {"density": Quantity(0.90911, "g_mL"), "temp": Quantity(68, "degF")},
    "strength_by_distillation": {"sample_volume": Quantity(200, "mL"), "sample_temp": 20, "strength": 40,
                                 "distillate_volume": Quantity(0.2, "L"), "distillate_temp": Quantity(68, "degF")},
    "volume_of_dip": {"dips": json.dumps({"points": [[0, 0], [10, 100]], "of": "dip", "shell_c": 20, "per_c": 36e-6,
                                          "tilt_cm": 0}), "dip": Quantity(2.5, "in"), "temp": Quantity(104, "degF")},
    "obscuration": {"strength": 40, "seen": Quantity(36.5, "pct_vol")},
    "obscuration_least": {"strength": Quantity(92, "proof"), "extract": Quantity(5, "g_L")},
    "obscuration_most": {"strength": Quantity(92, "proof"), "extract": Quantity(5, "g_L")},
    "volume_of_dense": {"net": 99.849, "density": Quantity(1.0, "g_mL"), "temp": 20, "strength": 25},
    "unhidden_strength": {"strength": Quantity(90, "proof"), "solids": Quantity(500, "mg_100mL")},
}
ANSWERS = {
    "true_proof": (189.5, 0),  # 27 CFR 30.61, sample line
    "volume_20": (1013, 0.5),
    "lpa_volume": (608, 0.4),
    "net_mass": (183, 0),
    "net_fruit": (408.233133, 1e-9),
    "volume_from_mass": (109.998, 0.001),
    "lpa_mass": (65.999, 0.001),
    "volume_weighed": (110.126, 0.001),  # Czech decree 141/1997: 0.660758 L of pure alcohol a kilogram
    "volume_weighed_us": (249.80, 0.05),  # 65.735 gal at 60 degF (27 CFR 30.64), 248.83 L, and 0.39 % to 20 degC
    "lpa_weighed_us": (150.01, 0.01),  # 78.88 proof gal (27 CFR 30.64) of 1.9018 L
    "total": (11.75, 0),
    "proof_gallons": (525.82, 0.01),
    "wine_gallons_weighed": (11921.6, 0),  # 27 CFR 30.64
    "proof_gallons_weighed": (22650.8, 0),  # 27 CFR 30.64
    "alcohol_so_far": (5.45, 0.005),
    "potential_alcohol": (6.47, 0.012),  # OIV Oeno 21/2004 table II
    "presumptive_lpa": (4.9, 0.05),
    "mass_from_volume": (90.911, 0.001),  # OIML R 22: 909.11 kg/m3 at 60 % vol
    "difference": (0.8, 1e-9),
    "water_mass": (99.82, 0.001),  # density of water at 20 degC, handbooks: 998.20 kg/m3
    # 100 L of 60 % to 45 %: worked with OIML R 22 apart from this code, 34.36 kg of water, 133.33 L
    "water_to_reduce": (34.36, 0.005),
    "reduced_strength": (45.0, 0.005),
    "reduced_volume": (133.33, 0.01),
    "volume_of_count": (0.3, 1e-12),
    "strength_by_distillation": (40.0, 1e-9),  # Regulation (EC) 2870/2000, Annex I: one volume, 20 degC
    "volume_of_dip": (63.54572, 1e-4),  # 6.35 cm of 10 L, and 1.00072 for the shell: Czech decree 141/1997, annex 1
    "obscuration": (3.5, 1e-12),
    "obscuration_least": (0.5, 0.15),  # 27 CFR 30.32(b): 0.5 g/100 mL hides 2 proof, 1 % vol; less a fifth and 0.3
    "obscuration_most": (1.5, 0.15),
    "volume_of_dense": (99.95, 0.01),  # a kilogram of 1000 kg/m3 shows 0.99895 kg in air of 1.2 kg/m3
    "strength_by_density": (60.0, 0.005),  # OIML R 22: 909.11 kg/m3 at 60 % vol and 20 degC
    "unhidden_strength": (46.07, 0.02),  # 27 CFR 30.32(b): 0.5 g/100 mL hides 2 proof; 92 proof is 46.07 % vol
}


def test_all_the_sums_that_kinds_name_are_there() -> None:
    assert set(SUMS) >= NEEDED
    assert set(EXAMPLES) == set(SUMS)


@pytest.mark.parametrize("name", SUMS)
def test_declaration_is_whole(name: str) -> None:
    wanted = SUMS[name]
    assert wanted.name == name
    assert set(wanted.inputs) <= set(INPUT_UNITS)
    assert wanted.unit in load_data("units")
    assert 0 <= wanted.decimals <= 3


@pytest.mark.parametrize(("name", "answer"), ANSWERS.items())
def test_answer(name: str, answer: tuple[float, float]) -> None:
    expected, tolerance = answer
    assert compute(name, EXAMPLES[name]) == pytest.approx(expected, abs=tolerance + 1e-9)


@pytest.mark.parametrize("name", SUMS)
def test_a_missing_input_gives_nothing_yet(name: str) -> None:
    for missing in SUMS[name].inputs:
        left = {k: v for k, v in EXAMPLES[name].items() if k != missing}
        assert compute(name, left) is None
        assert compute(name, {**left, missing: None}) is None
    assert compute(name, EXAMPLES[name]) is not None


def test_more_inputs_than_needed_do_no_harm() -> None:
    assert compute("total", {"a": 1, "b": 2, "glass": 3}) == 3


def test_true_strength_by_either_glass() -> None:
    by_pct = compute("true_strength", {"glass": Quantity(58.2, "pct_glass"), "temp": Quantity(59, "degF")})
    assert by_pct == pytest.approx(true_strength_from_glass(58.2, 15), abs=1e-12)
    by_proof = compute("true_strength", {"glass": Quantity(116.5, "proof_glass"), "temp": Quantity(50.5, "degF")})
    assert by_proof == strength_from_proof(true_proof(116.5, 50.5))


def test_a_temperature_read_in_celsius_serves_table_1() -> None:
    # 22.5 °C is 72.5 °F exactly; through binary factors it must still be.
    in_f = compute("true_proof", {"glass": Quantity(192.85, "proof_glass"), "temp": Quantity(72.5, "degF")})
    assert compute("true_proof", {"glass": Quantity(192.85, "proof_glass"), "temp": 22.5}) == in_f
    # A figure kept in canonical °C gives the tenth that the °F reading gives, for every tenth of a degree.
    for tenths in range(400, 1000):
        temp_f = tenths / 10
        kept = (temp_f - 32) * (5 / 9)
        assert compute("true_proof", {"glass": Quantity(120.5, "proof_glass"), "temp": kept}) == true_proof(
            120.5, temp_f
        )


def test_a_glass_without_its_unit_is_a_programmer_error() -> None:
    for glass in (58.2, Quantity(58.2, "pct_vol"), Quantity(58.2, "degC")):
        with pytest.raises(TypeError):
            compute("true_strength", {"glass": glass, "temp": 15})
    with pytest.raises(TypeError):
        compute("true_strength", {"glass": Quantity(58.2, "pct_glass"), "temp": Quantity(15, "kg")})
    with pytest.raises(TypeError):
        compute("net_mass", {"gross": Quantity(15, "L"), "tare": 1})
    with pytest.raises(KeyError):
        compute("no such sum", {})


@pytest.mark.parametrize(
    ("name", "values"),
    [
        ("net_mass", {"gross": 10, "tare": 11}),
        ("net_mass", {"gross": 10, "tare": -1}),
        ("net_mass", {"gross": float("nan"), "tare": 1}),
        ("net_mass", {"gross": float("inf"), "tare": 1}),
        ("true_strength", {"glass": Quantity(1, "pct_glass"), "temp": 35}),
        ("volume_from_mass", {"net": 10, "strength": 101}),
        ("true_proof", {"glass": Quantity(20, "proof_glass"), "temp": Quantity(20, "degF")}),
        ("volume_20", {"volume": 10, "strength": 10, "temp": -10}),
        ("alcohol_so_far", {"original_gravity": 1.05, "gravity": 1.06, "juice_share": 80}),
        ("total", {"a": float("nan"), "b": 1}),
    ],
)
def test_inputs_outside_raise_a_sentence(name: str, values: dict[str, object]) -> None:
    with pytest.raises(OutOfDomain) as refused:
        compute(name, values)  # type: ignore[arg-type]
    assert words_of(refused.value).endswith(".")


def test_mass_is_taken_as_mass_not_as_weight_in_air() -> None:
    assert compute("volume_from_mass", {"net": 100, "strength": 60}) == litres_from_mass(100, 60, in_air=False)
