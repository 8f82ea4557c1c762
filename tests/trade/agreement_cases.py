"""Calls that the book and the phone have to answer alike: over whole ranges, at the edges, and with nonsense."""

import itertools
import json
import random
from collections.abc import Callable, Iterator
from typing import Any

from tests.trade.test_sums import EXAMPLES
from tests.trade.test_units import VECTORS
from webapp.trade import (
    alcoholometry,
    bottling,
    density,
    dipping,
    ferment,
    gauging,
    obscured,
    proof,
    reducing,
    scales,
    still,
    sugar,
    sums,
    table1,
    units,
)
from webapp.trade.datafiles import load_data
from webapp.trade.errors import OutOfDomain

NAN, INFINITY = float("nan"), float("inf")
# What the first pages do without, and the page therefore has outside the folder of the sums.
LATER_MODULES = ["reducing.js", "bottling.js"]
Case = tuple[Any, ...]

# In the page's name and the book's function.
PAIRS: dict[str, Callable[..., Any]] = {
    "densityFromMassFraction": density.density_from_mass_fraction,
    "densityFromStrength": density.density_from_strength,
    "massFractionFromDensity": density.mass_fraction_from_density,
    "massFractionFromStrength": density.mass_fraction_from_strength,
    "strengthFromMassFraction": density.strength_from_mass_fraction,
    "freezingLimitC": density.freezing_limit_c,
    "trueStrengthFromGlass": alcoholometry.true_strength_from_glass,
    "glassIndication": alcoholometry.glass_indication,
    "strengthFromDensityMeter": alcoholometry.strength_from_density_meter,
    "volumeAt20": alcoholometry.volume_at_20,
    "litresFromMass": alcoholometry.litres_from_mass,
    "massFromLitres": alcoholometry.mass_from_litres,
    "litresPureAlcohol": alcoholometry.litres_pure_alcohol,
    "trueProof": table1.true_proof,
    "trueProofUnrounded": table1.true_proof_unrounded,
    "strengthFromProof": proof.strength_from_proof,
    "proofFromStrength": proof.proof_from_strength,
    "lpaPerProofGallon": proof.lpa_per_proof_gallon,
    "proofGallonsFromLpa": proof.proof_gallons_from_lpa,
    "lpaFromProofGallons": proof.lpa_from_proof_gallons,
    "volume60fFrom20c": proof.volume_60f_from_20c,
    "volume20cFrom60f": proof.volume_20c_from_60f,
    "litresFromPounds": proof.litres_from_pounds,
    "lpaFromPounds": proof.lpa_from_pounds,
    "gravityOfProof": gauging.gravity_of_proof,
    "poundsPerWineGallon": gauging.pounds_per_wine_gallon,
    "wineGallonsPerPound": gauging.wine_gallons_per_pound,
    "proofGallonsPerPound": gauging.proof_gallons_per_pound,
    "wineGallonsFromPounds": gauging.wine_gallons_from_pounds,
    "proofGallonsFromPounds": gauging.proof_gallons_from_pounds,
    "proofGallonsFromWineGallons": gauging.proof_gallons_from_wine_gallons,
    "obscurationProof": gauging.obscuration_proof,
    "brixFromGravity": scales.brix_from_gravity,
    "gravityFromBrix": scales.gravity_from_brix,
    "platoFromGravity": scales.plato_from_gravity,
    "gravityFromPlato": scales.gravity_from_plato,
    "gravityFromKmw": scales.gravity_from_kmw,
    "kmwFromGravity": scales.kmw_from_gravity,
    "volumeOfDip": dipping.volume_of_dip,
    "volumeOfCask": dipping.volume_of_cask,
    "dipLimitsCm": dipping.dip_limits_cm,
    "strengthByDistillation": obscured.strength_by_distillation,
    "obscuration": obscured.obscuration,
    "obscurationOfExtract": obscured.obscuration_of_extract,
    "obscurationLeast": obscured.obscuration_least,
    "obscurationMost": obscured.obscuration_most,
    "volumeOfDense": obscured.volume_of_dense,
    "brixFromOechsle": scales.brix_from_oechsle,
    "oechsleFromBrix": scales.oechsle_from_brix,
    "brixFromKmw": scales.brix_from_kmw,
    "kmwFromBrix": scales.kmw_from_brix,
    "oechsleFromGravity": scales.oechsle_from_gravity,
    "potentialAlcoholFromBrix": sugar.potential_alcohol_from_brix,
    "potentialAlcoholFromGravity": sugar.potential_alcohol_from_gravity,
    "alcoholFromGravityFall": sugar.alcohol_from_gravity_fall,
    "strengthByTwoInstruments": ferment.strength_by_two_instruments,
    "presumptiveLpa": sugar.presumptive_lpa,
    "vapourTempC": still.vapour_temp_c,
    "waterToTargetKg": reducing.water_to_target_kg,
    "strengthWithWater": reducing.strength_with_water,
    "dipWithWaterL": reducing.dip_with_water_l,
    "glassWithWater": reducing.glass_with_water,
    "waterVolumeL": reducing.water_volume_l,
    "shrinkageL": reducing.shrinkage_l,
    "mixedTempC": reducing.mixed_temp_c,
    "fillFromWeightPct": bottling.fill_from_weight_pct,
    "usFillAllowedPct": bottling.us_fill_allowed_pct,
    "euFillAllowedPct": bottling.eu_fill_allowed_pct,
    "meanOf": bottling.mean_of,
    "spreadOf": bottling.spread_of,
    "bottlesOf": bottling.bottles_of,
    "toCanonical": units.to_canonical,
    "fromCanonical": units.from_canonical,
    "canonicalUnit": units.canonical_unit,
    "quantityOf": units.quantity_of,
    "symbol": units.symbol,
    "parseNumber": units.parse_number,
    "formatNumber": units.format_number,
    "compute": sums.compute,
}


def grid(low: float, high: float, steps: int) -> list[float]:
    """Even steps from end to end, and what lies just outside and nowhere."""
    inside = [low + (high - low) * i / steps for i in range(steps)] + [high]
    return [*inside, low - 1e-9, high + 1e-9, low - 5, high + 5, NAN, INFINITY, -INFINITY]


TEMPS = [*grid(-20, 40, 60), 3.98, 140 / 9, -0.0, 1e-12, -1e-9]
STRENGTHS = [*grid(0, 100, 80), 1e-9, 1e-4, 0.05, 99.9999, 97.2]
PROOFS = [*grid(0, 200, 400), 0.05, 199.95]
GRAVITIES = grid(0.98, 1.17874, 200)


def alcohol_cases() -> Iterator[Case]:
    for temp in TEMPS:
        for strength in STRENGTHS:
            yield "densityFromMassFraction", strength / 100, temp
            yield "densityFromStrength", strength, temp
            yield "trueStrengthFromGlass", strength, temp
            yield "glassIndication", strength, temp
            yield "volumeAt20", 1000.0, strength, temp
        yield from (("massFractionFromDensity", rho, temp) for rho in grid(765, 1004, 90))
        yield from (("strengthFromDensityMeter", rho, temp) for rho in grid(940, 1001, 60))
        yield "trueStrengthFromGlass", 60.0, temp, 10e-6
        yield "trueStrengthFromGlass", 60.0, temp, 2e-4
    for strength in STRENGTHS:
        yield "massFractionFromStrength", strength
        yield "strengthFromMassFraction", strength / 100
        yield "freezingLimitC", strength / 100
        for amount in (0.0, 0.7, 225.0, 1e9, 1.1e9, -1.0, NAN):
            yield "litresPureAlcohol", amount, strength
            for in_air in (False, True):
                yield "litresFromMass", amount, strength, in_air
                yield "massFromLitres", amount, strength, in_air


def edge_cases() -> Iterator[Case]:
    """Where a refusal begins: the ends of what a glass can show, the ice line, densities of the pure liquids."""
    nudges = (0.0, 1e-13, -1e-13, 1e-9, -1e-9, 1e-6, -1e-6)
    for temp in [x / 2 for x in range(-40, 81)]:
        water = density.polynomial(density.coefficients_at(float(temp)), 0.0)
        ethanol = density.polynomial(density.coefficients_at(float(temp)), 1.0)
        for end in (water, ethanol):
            yield from (("massFractionFromDensity", end + nudge, temp) for nudge in nudges)
        for strength in (0.0, 100.0):
            try:
                end = alcoholometry.glass_indication(strength, temp)
            except OutOfDomain:
                continue
            yield from (("trueStrengthFromGlass", end + nudge, temp) for nudge in nudges)
    for mass_fraction in [x / 200 for x in range(70)]:
        ice = density.freezing_limit_c(mass_fraction)
        yield from (("densityFromMassFraction", mass_fraction, ice + nudge) for nudge in nudges)


def gauging_cases() -> Iterator[Case]:
    # Every cell and blank of Table 1, all around its edges, and two thousand readings in between.
    for reading, temp in itertools.product(range(-1, 208), range(0, 102)):
        yield "trueProof", reading, temp
    dice = random.Random(30)
    for _ in range(4000):
        yield "trueProof", round(dice.uniform(0, 206), dice.choice((1, 2, 5))), round(dice.uniform(1, 100), 2)
    for _ in range(2000):
        corrected = round(dice.uniform(-0.4, 0.4), 2), round(dice.uniform(-0.4, 0.4), 2)
        yield "trueProofUnrounded", dice.uniform(60, 190), dice.uniform(20, 100), *corrected
    yield from (("trueProof", 120.5, (tenths / 10 - 32) * (5 / 9) / (5 / 9) + 32) for tenths in range(10, 1000))
    yield from (
        ("trueProof", *bad) for bad in ((NAN, 60), (100, NAN), (INFINITY, 60), (100, 60, 6, 0), (100, 60, 0, -6))
    )
    yield ("lpaPerProofGallon",)
    for proof_value in PROOFS:
        for name in ("strengthFromProof", "gravityOfProof", "poundsPerWineGallon", "wineGallonsPerPound"):
            yield name, proof_value
        yield "gravityOfProof", proof_value, False
        yield "proofGallonsPerPound", proof_value
        for amount in (0.0, 12.34, 60378.0, 1e9, -1.0, NAN):
            yield "wineGallonsFromPounds", amount, proof_value
            yield "proofGallonsFromPounds", amount, proof_value
            yield "proofGallonsFromWineGallons", amount, proof_value
    for strength in STRENGTHS:
        yield "proofFromStrength", strength
        yield "volume60fFrom20c", 1000.0, strength
        yield "volume20cFrom60f", 1000.0, strength
        for pounds in (0.0, 12.34, 500.0, 1e8, 1.1e8, -1.0, NAN):
            yield "litresFromPounds", pounds, strength
            yield "lpaFromPounds", pounds, strength
    for amount in (0.0, 1.0, -5.5, 1e9, 1.1e9, NAN):
        yield "proofGallonsFromLpa", amount
        yield "lpaFromProofGallons", amount
    yield from (("obscurationProof", solids, 90.0) for solids in grid(0, 0.6, 30))
    yield from (("obscurationProof", 0.5, proof_value) for proof_value in grid(79.9, 100.1, 40))


TABLE = json.dumps({"points": [[0, 0], [10.5, 20], [20, 91.25], [30, 190], [40, 290]], "of": "dip", "shell_c": 15.0,
                    "per_c": 48e-6, "tilt_cm": -0.4})
CASKS = [json.dumps({"bung_cm": 69.0, "head_cm": head, "length_cm": 89.0, "lies": lies, "of": of})
         for head in (56.0, 69.0) for lies in (True, False) for of in ("dip", "ullage")]


def dipping_cases() -> Iterator[Case]:
    for dip in (-0.1, 0.0, 0.4, 3.3, 10.9, 17.0, 34.5, 40.4, 41.0, 62.6, 69.0, 77.7, 89.0, 89.1, NAN):
        for temp in (-20.0, 12.5, 20.0, 40.5):
            for dips in (TABLE, *CASKS):
                yield "volumeOfDip", dips, dip, temp
                yield "dipLimitsCm", dips, dip, temp
        for bung, head, length in ((69.0, 56.0, 89.0), (300.0, 240.0, 320.0), (4.0, 4.0, 50.0), (60.0, 61.0, 80.0),
                                   (60.0, 50.0, NAN)):
            for lies in (True, False):
                yield "volumeOfCask", bung, head, length, dip, lies


def obscured_cases() -> Iterator[Case]:
    for strength in (0.0, 12.5, 37.5, 60.0, 97.0, 101.0, NAN):
        for temp in (-21.0, 4.0, 20.0, 33.0):
            for made_up in (0.009, 0.1, 0.2, 1.0):
                yield "strengthByDistillation", 0.2, temp, made_up, 20.0, strength
                yield "strengthByDistillation", 0.1, 18.0, made_up, temp, strength
            for heavy in (599.0, 905.5, 1082.0, NAN):
                yield "volumeOfDense", 250.0, heavy, temp, strength
        for extract in (-1.0, 0.0, 0.4, 6.0, 90.0, 350.0, 601.0):
            for name in ("obscurationOfExtract", "obscurationLeast", "obscurationMost"):
                yield name, strength, extract
        yield "obscuration", strength, 33.3
        yield "obscuration", 41.0, strength


def sugar_and_still_cases() -> Iterator[Case]:
    for gravity in GRAVITIES:
        for name in ("brixFromGravity", "platoFromGravity", "oechsleFromGravity", "kmwFromGravity",
                     "potentialAlcoholFromGravity"):
            yield name, gravity
        for now in (0.979, 0.98, 0.996, 1.02, 1.05, NAN):
            yield "alcoholFromGravityFall", gravity, now, 0.8
            yield "strengthByTwoInstruments", (gravity - 0.9) * 100, now
    for brix in grid(-5.2, 40, 200):
        for name in ("gravityFromBrix", "gravityFromPlato", "gravityFromKmw", "potentialAlcoholFromBrix",
                     "oechsleFromBrix", "kmwFromBrix", "brixFromKmw"):
            yield name, brix
        yield "brixFromOechsle", brix * 5
        for share in (0.0, 1e-7, 0.85, 1.0, 1.01, NAN):
            yield "presumptiveLpa", 100.0, brix, share
        yield "presumptiveLpa", 100.0, brix, 0.85, 5.0
    yield "presumptiveLpa", 100.0, 12.0, 0.85, 10.1
    for strength in grid(20, 95, 150):
        yield from (("vapourTempC", strength, height) for height in (0.0, 612.0, 3000.0, 3001.0, -1.0, NAN))


def unit_cases() -> Iterator[Case]:
    for unit in load_data("units"):
        yield from ((name, unit) for name in ("canonicalUnit", "quantityOf", "symbol"))
        for value in (-400.0, -40.0, -1.0, 0.0, 0.1, 1.0, 1.05, 12.34, 72.1, 100.0, 150.0, 200.0, 200.1, 1e6, NAN):
            yield from ((name, value, unit) for name in ("toCanonical", "fromCanonical"))
    yield from (("parseNumber", text) for text, _ in VECTORS["texts"])
    yield from (("formatNumber", value, decimals) for value, decimals, _ in VECTORS["formats"])
    dice = random.Random(5)
    for _ in range(2000):
        yield "formatNumber", round(dice.uniform(-2000, 2000), dice.choice((1, 2, 3, 9))), dice.choice((0, 1, 2, 3))
        yield "parseNumber", "".join(dice.choice("0123456789,. -+e\u00a0\u2009x") for _ in range(dice.randint(1, 9)))


def sum_cases() -> Iterator[Case]:
    for name, values in EXAMPLES.items():
        plain = {k: v._asdict() if isinstance(v, tuple) else v for k, v in values.items()}
        yield "compute", name, plain
        yield from (("compute", name, {k: v for k, v in plain.items() if k != missing}) for missing in plain)
    for reading in range(0, 207, 3):
        for temp in (*range(-22, 110, 7), 71.3, 31.99):
            for glass, unit in itertools.product(("pct_glass", "proof_glass"), ("degC", "degF")):
                values = {"glass": {"value": reading / 1.1, "unit": glass}, "temp": {"value": temp, "unit": unit}}
                yield "compute", "true_strength", values
                yield "compute", "true_proof", values
    for gross, tare in ((10, 11), (10, -1), (10, 10), (0, 0), (NAN, 1), (10, NAN), (INFINITY, 1)):
        yield "compute", "net_mass", {"gross": gross, "tare": tare}


def reducing_cases() -> Iterator[Case]:
    waters = (0.0, 0.5, 124.9, 4000.0, 1e9, -1.0, NAN)
    for strength in (*grid(0, 100, 40), 60.0, 97.2):
        for target in (0.0, 37.5, 40.0, 45.0, strength, 101.0, NAN):
            yield "waterToTargetKg", 329.9, strength, target
        for water in waters:
            yield "strengthWithWater", 329.9, strength, water
            yield "shrinkageL", 329.9, strength, water
            for temp in (-19.0, 4.0, 17.4, 40.0, 41.0, NAN):
                yield "dipWithWaterL", 329.9, strength, water, temp
                yield "glassWithWater", 329.9, strength, water, temp
                yield "mixedTempC", 329.9, strength, temp, water, 12.0
        yield "mixedTempC", 329.9, strength, 15.0, 100.0, -1.0
    for net in (0.0, 1e-4, 1e9, 1.1e9, -3.0, NAN):
        yield "waterToTargetKg", net, 60.0, 45.0
        yield "strengthWithWater", net, 60.0, 10.0
    yield from (("waterVolumeL", kg, temp) for kg in waters for temp in grid(0, 40, 20))


def bottling_cases() -> Iterator[Case]:
    steps = [end + nudge for end in (50, 100, 101, 200, 300, 376, 500, 1000) for nudge in (-0.1, 0.0)]
    for size in (*grid(5, 10_000, 60), *steps, 99_000.0):
        yield from ((name, size) for name in ("usFillAllowedPct", "euFillAllowedPct"))
        yield from (("bottlesOf", litres, size) for litres in (0.0, 0.4999, 284.5, 481.2, 1e9, 1.1e9, -1.0, NAN))
        yield from (("fillFromWeightPct", gross, 412.0, 45.0, size) for gross in (412.0, 884.2, 400.0, 1e6, NAN))
    for strength in (*grid(1, 97.2, 400), 44.7, 45.0, 45.25, 45.3):
        yield "fillFromWeightPct", 884.2, 412.0, strength, 500.0
    dice = random.Random(19)
    for count in (0, 1, 2, 3, 5, 10, 40):
        values = [round(dice.gauss(100, 0.4), 1) for _ in range(count)]
        yield from ((name, values) for name in ("meanOf", "spreadOf"))
    yield from ((name, [100.0, NAN, 99.0]) for name in ("meanOf", "spreadOf"))


FAMILIES = {
    "alcohol": alcohol_cases,
    "edges": edge_cases,
    "gauging": gauging_cases,
    "sugar and still": sugar_and_still_cases,
    "obscured": obscured_cases,
    "dipping": dipping_cases,
    "units": unit_cases,
    "sums": sum_cases,
    "reducing": reducing_cases,
    "bottling": bottling_cases,
}
