"""The live sums by name: what a form shows at once and the book computes again.

A kind names a sum and says which of its fields feeds which input. ``static/trade/sums.js`` is its twin.
"""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import lru_cache
from typing import NamedTuple

from webapp.trade import alcoholometry, obscured, proof, reducing, sugar, table1
from webapp.trade.dipping import volume_of_dip
from webapp.trade.errors import OutOfDomain
from webapp.trade.ferment import strength_by_two_instruments
from webapp.trade.gauging import obscuration_proof, proof_gallons_from_pounds, wine_gallons_from_pounds
from webapp.trade.numeric import check_range
from webapp.trade.units import from_canonical, quantity_of, to_canonical

ANSWERS_KEPT = 4096
OBSCURATION_FROM = 0.4  # g/100 mL; below it the hydrometer's proof may stand: 27 CFR 30.31


class Quantity(NamedTuple):
    """A value as read, with its unit."""

    value: float
    unit: str


# A value as read, a bare number in the canonical unit, or what the registry says of a vessel.
Given = Quantity | float | str


@dataclass(frozen=True)
class Sum:
    """One named sum: the inputs it needs, the unit of its answer, and the figures worth showing."""

    name: str
    inputs: tuple[str, ...]
    unit: str
    decimals: int
    run: Callable[..., float]


# The unit in which an input is handed to its sum, and which a bare number is taken to have. A glass reading
# has none: without the unit nobody can know which glass it was.
INPUT_UNITS: dict[str, str | None] = {
    "glass": None, "temp": "degC", "volume": "L", "strength": "pct_vol", "gross": "kg", "tare": "kg",
    "net": "kg", "lpa": "LPA", "a": "LPA", "b": "LPA", "original_gravity": "SG",
    "gravity": "SG", "juice_share": "pct", "sugar": None, "target": "pct_vol", "water": "kg", "water_volume": "L",
    "size": "L", "number": "count", "solids": "g_100mL",
    "refractometer": "Bx", "density": "kg_m3", "sample_volume": "L", "sample_temp": "degC", "distillate_volume": "L",
    "dip": "cm", "dips": None, "distillate_temp": "degC", "seen": "pct_vol", "extract": "g_L",
}


def compute(name: str, values: Mapping[str, Given | None]) -> float | None:
    """Return a named sum of the given inputs.

    Parameters
    ----------
    name : str
        Name of the sum. [text], any key of SUMS
    values : mapping
        Input name to Quantity(value, unit), or to a bare number in the input's canonical unit. [as each unit
        says], range as each function says. More inputs than needed do no harm.

    Returns
    -------
    answer : float or None
        [SUMS[name].unit], not rounded unless the source prescribes it; None while an input is missing

    Raises
    ------
    OutOfDomain
        If an input lies outside what the sum's source covers.
    KeyError
        If there is no such sum.
    TypeError
        If a unit does not fit its input, or a glass reading or sugar comes without a unit.

    Source
    ------
    As each function that the sum calls.
    """
    wanted = SUMS[name]
    given = tuple(value for input_name in wanted.inputs if (value := values.get(input_name)) is not None)
    if len(given) < len(wanted.inputs):
        return None
    if any((value[0] if isinstance(value, tuple) else value) == 0 for value in given):
        return _run(name, given)  # 0.0 and -0.0 are one key, and may have answers that are written otherwise
    return _run_once(name, given)


def _run(name: str, given: tuple[Given, ...]) -> float:
    wanted = SUMS[name]
    return wanted.run(*(_in_input_unit(n, v) for n, v in zip(wanted.inputs, given, strict=True)))


# The same sum of the same inputs is asked for when an entry is read, judged, and read as it may have been meant.
_run_once = lru_cache(maxsize=ANSWERS_KEPT)(_run)


def _in_input_unit(input_name: str, value: Given) -> Given:
    if isinstance(value, str):
        return value
    unit = INPUT_UNITS[input_name]
    if not isinstance(value, tuple):
        if unit is None:
            raise TypeError(f"{input_name} needs its unit")
        return float(value)
    value = Quantity(*value)
    if unit is None or input_name == "temp":
        return value  # the sum itself looks at the unit
    if quantity_of(value.unit) != quantity_of(unit):
        raise TypeError(f"{value.unit} does not fit {input_name}")
    return to_canonical(float(value.value), value.unit)


def _temp_in(temp: Quantity | float, unit: str) -> float:
    """A temperature in the unit wanted, untouched if it was read in it: Table 1 counts hundredths."""
    given = temp if isinstance(temp, Quantity) else Quantity(temp, "degC")
    if quantity_of(given.unit) != "temperature":
        raise TypeError(f"{given.unit} does not fit temp")
    return float(given.value) if given.unit == unit else from_canonical(to_canonical(given.value, given.unit), unit)


def _true_strength(glass: Quantity, temp: Quantity | float) -> float:
    if glass.unit == "proof_glass":
        return proof.strength_from_proof(_true_proof(glass, temp))
    if glass.unit == "pct_glass":
        return alcoholometry.true_strength_from_glass(float(glass.value), _temp_in(temp, "degC"))
    raise TypeError(f"{glass.unit} is no glass reading")


def _strength_by_density(density: float, temp: Quantity | float) -> float:
    return alcoholometry.strength_from_density_meter(density, _temp_in(temp, "degC"))


def _volume_of_dip(dips: str, dip: float, temp: Quantity | float) -> float:
    if not dips:
        raise OutOfDomain("dip", dip, None, None, "no_dip_table")
    return volume_of_dip(dips, dip, _temp_in(temp, "degC"))


def _volume_of_dense(net: float, density: float, temp: Quantity | float, strength: float) -> float:
    return obscured.volume_of_dense(net, density, _temp_in(temp, "degC"), strength)


def _true_proof(glass: Quantity, temp: Quantity | float) -> float:
    if glass.unit == "proof_glass":
        return table1.true_proof(float(glass.value), _temp_in(temp, "degF"))
    return proof.proof_from_strength(_true_strength(glass, temp))


def _volume_20(volume: float, strength: float, temp: Quantity | float) -> float:
    return alcoholometry.volume_at_20(volume, strength, _temp_in(temp, "degC"))


def _lpa_volume(volume: float, strength: float, temp: Quantity | float) -> float:
    return alcoholometry.litres_pure_alcohol(_volume_20(volume, strength, temp), strength)


def _lpa_mass(net: float, strength: float) -> float:
    return alcoholometry.litres_pure_alcohol(alcoholometry.litres_from_mass(net, strength), strength)


def _net(gross: float, tare: float) -> float:
    if not (0 <= tare <= gross < float("inf")):
        raise OutOfDomain("tare", tare, 0, gross, "tare_too_heavy")
    return gross - tare


def _total(a: float, b: float) -> float:
    for part in (a, b):
        check_range("pure_alcohol", part, -1e9, 1e9, "LPA", "check_figure")
    return a + b


def _volume_weighed(net: float, strength: float) -> float:
    return alcoholometry.litres_from_mass(net, strength, in_air=True)


def _volume_weighed_us(net: float, strength: float) -> float:
    return proof.litres_from_pounds(from_canonical(net, "lb"), strength)


def _lpa_weighed_us(net: float, strength: float) -> float:
    return proof.lpa_from_pounds(from_canonical(net, "lb"), strength)


def _difference(a: float, b: float) -> float:
    return _total(a, -b)


def _wine_gallons(volume: float, strength: float) -> float:
    return from_canonical(proof.volume_60f_from_20c(volume, strength), "gal")


def _wine_gallons_weighed(net: float, strength: float) -> float:
    return wine_gallons_from_pounds(from_canonical(net, "lb"), proof.proof_from_strength(strength))


def _proof_gallons_weighed(net: float, strength: float) -> float:
    return proof_gallons_from_pounds(from_canonical(net, "lb"), proof.proof_from_strength(strength))


def _alcohol_so_far(original_gravity: float, gravity: float, juice_share: float) -> float:
    return sugar.alcohol_from_gravity_fall(original_gravity, gravity, juice_share / 100.0)


def _potential_alcohol(reading: Quantity) -> float:
    if reading.unit == "Bx":
        return sugar.potential_alcohol_from_brix(float(reading.value))
    if quantity_of(reading.unit) == "gravity":
        return sugar.potential_alcohol_from_gravity(to_canonical(float(reading.value), reading.unit))
    raise TypeError(f"{reading.unit} is no measure of sugar")


def _presumptive_lpa(net: float, reading: Quantity, juice_share: float) -> float:
    if reading.unit != "Bx":
        raise TypeError("presumptive_lpa needs a refractometer reading in Bx")
    return sugar.presumptive_lpa(net, float(reading.value), juice_share / 100.0)


def _reduced_volume(net: float, strength: float, water: float) -> float:
    return alcoholometry.litres_from_mass(net + water, reducing.strength_with_water(net, strength, water))


def _water_mass(water_volume: float) -> float:
    return alcoholometry.mass_from_litres(water_volume, 0.0)


def _volume_of_count(size: float, number: float) -> float:
    check_range("size", size, 0, 1e6, "L", "check_figure")
    check_range("number", number, 0, 1e7, "", "count_again")
    return size * number


def _unhidden_strength(strength: float, solids: float) -> float:
    if solids < OBSCURATION_FROM:
        return strength
    seen = proof.proof_from_strength(strength)
    return proof.strength_from_proof(seen + obscuration_proof(solids, seen))


SUMS: dict[str, Sum] = {
    each.name: each
    for each in (
        Sum("true_strength", ("glass", "temp"), "pct_vol", 1, _true_strength),
        Sum("true_proof", ("glass", "temp"), "proof", 1, _true_proof),
        Sum("volume_20", ("volume", "strength", "temp"), "L", 1, _volume_20),
        Sum("lpa_volume", ("volume", "strength", "temp"), "LPA", 2, _lpa_volume),
        Sum("net_mass", ("gross", "tare"), "kg", 1, _net),
        Sum("net_fruit", ("gross", "tare"), "kg", 0, _net),
        Sum("volume_from_mass", ("net", "strength"), "L", 1, alcoholometry.litres_from_mass),
        Sum("lpa_mass", ("net", "strength"), "LPA", 2, _lpa_mass),
        Sum("volume_weighed", ("net", "strength"), "L", 1, _volume_weighed),
        Sum("volume_weighed_us", ("net", "strength"), "L", 1, _volume_weighed_us),
        Sum("lpa_weighed_us", ("net", "strength"), "LPA", 2, _lpa_weighed_us),
        Sum("total", ("a", "b"), "LPA", 2, _total),
        Sum("proof_gallons", ("lpa",), "proof_gal", 1, proof.proof_gallons_from_lpa),
        Sum("wine_gallons", ("volume", "strength"), "gal", 1, _wine_gallons),
        Sum("wine_gallons_weighed", ("net", "strength"), "gal", 1, _wine_gallons_weighed),
        Sum("proof_gallons_weighed", ("net", "strength"), "proof_gal", 1, _proof_gallons_weighed),
        Sum("alcohol_so_far", ("original_gravity", "gravity", "juice_share"), "pct_vol", 1, _alcohol_so_far),
        Sum("alcohol_by_both", ("refractometer", "gravity"), "pct_vol", 1, strength_by_two_instruments),
        Sum("potential_alcohol", ("sugar",), "pct_vol", 1, _potential_alcohol),
        Sum("presumptive_lpa", ("net", "sugar", "juice_share"), "LPA", 1, _presumptive_lpa),
        Sum("mass_from_volume", ("volume", "strength"), "kg", 1, alcoholometry.mass_from_litres),
        Sum("difference", ("a", "b"), "LPA", 2, _difference),
        Sum("water_mass", ("water_volume",), "kg", 1, _water_mass),
        Sum("water_to_reduce", ("net", "strength", "target"), "kg", 1, reducing.water_to_target_kg),
        Sum("reduced_strength", ("net", "strength", "water"), "pct_vol", 1, reducing.strength_with_water),
        Sum("reduced_volume", ("net", "strength", "water"), "L", 1, _reduced_volume),
        Sum("volume_of_count", ("size", "number"), "L", 2, _volume_of_count),
        Sum("unhidden_strength", ("strength", "solids"), "pct_vol", 1, _unhidden_strength),
        Sum("strength_by_distillation",
            ("sample_volume", "sample_temp", "distillate_volume", "distillate_temp", "strength"), "pct_vol", 1,
            obscured.strength_by_distillation),
        Sum("volume_of_dip", ("dips", "dip", "temp"), "L", 1, _volume_of_dip),
        Sum("obscuration", ("strength", "seen"), "pct_vol", 1, obscured.obscuration),
        Sum("obscuration_least", ("strength", "extract"), "pct_vol", 1, obscured.obscuration_least),
        Sum("obscuration_most", ("strength", "extract"), "pct_vol", 1, obscured.obscuration_most),
        Sum("volume_of_dense", ("net", "density", "temp", "strength"), "L", 1, _volume_of_dense),
        Sum("strength_by_density", ("density", "temp"), "pct_vol", 1, _strength_by_density),
    )
}
