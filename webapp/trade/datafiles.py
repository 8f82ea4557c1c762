"""The published coefficients and tables in ``trade/data``; the phone reads the same files."""

import json
from functools import cache
from pathlib import Path
from typing import Any, Literal, NotRequired, TypedDict, overload

DATA_FOLDER = Path(__file__).parent / "data"


class Spirit(TypedDict):
    """Density of ethanol and water, and where the mixture freezes."""

    A: list[float]
    B: list[float]
    C: list[list[float]]
    temp_c: list[float]
    freezing_mass_fraction: list[float]
    freezing_limit_c: list[float]
    air_kg_m3: float
    weights_kg_m3: float


class Gauging(TypedDict):
    """Gravities by proof, and what a US gallon is."""

    us_gallon_l: float
    pound_kg: float
    water_lb_per_gallon: float
    gravity_air: list[float]
    gravity_vacuum: list[float]


class Table1(TypedDict):
    """27 CFR 30.61 Table 1: of each reading the first temperature, its proof in tenths, and the steps from there."""

    rows: list[tuple[int, int, str]]


class Sugar(TypedDict):
    """Polynomials between gravity, sugar and alcohol, and their ranges."""

    brix: list[float]
    plato: list[float]
    gravity: list[float]
    plato_gravity: list[float]
    must_brix: list[float]
    must_sugar_from_brix: list[float]
    must_density_kg_l: list[float]
    must_sugar_from_density: list[float]
    sugar_g_l_per_pct: float
    alcohol_per_gravity: float
    litres_per_kg_sugar: float


class Still(TypedDict):
    """The temperature of the vapour by its strength."""

    vapour_strength_pct: list[float]
    vapour_temp_c: list[float]
    height_m: list[float]
    metres_per_degree: float


class Vle(TypedDict):
    """Vapour above ethanol and water."""

    pressure_mmhg: float
    molar_g_mol: list[float]
    antoine_log10_mmhg: list[list[float]]
    alpha: float
    tau_12: list[float]
    tau_21: list[float]


class Unit(TypedDict):
    """A unit: its quantity, the canonical unit, and the way there: a named curve, or shift and factor."""

    quantity: str
    canonical: str
    symbol: str
    via: NotRequired[str]
    shift: NotRequired[float]
    factor: NotRequired[float]


class Alcoholometer(TypedDict):
    """Glass alcoholometers: interval of the scale, limits of error in intervals by class, and the class taken."""

    interval_pct: float
    limit_intervals: dict[str, float]
    usual: str


class ProofHydrometer(TypedDict):
    """Proof hydrometers: the subdivision taken."""

    interval_proof: float


class Thermometer(TypedDict):
    """Thermometers beside an alcoholometer: limits of error by interval, rising, and the interval taken."""

    intervals_c: list[float]
    limits_c: list[float]
    interval_c: float


class DensityMeter(TypedDict):
    """Density meters: limit of error and step, as of an alcohol hydrometer of class III."""

    limit_kg_m3: float
    interval_kg_m3: float


class Scale(TypedDict):
    """Scales: limits of error in intervals, the loads in intervals up to which they hold by class, what is taken."""

    limits_intervals: list[float]
    loads_intervals: dict[str, list[float]]
    usual: str
    most_intervals: float
    least_interval_kg: float


class Tank(TypedDict):
    """Dipped volumes: limit of the tank's table as a share, and of the surface as it is read."""

    table_share: float
    surface_m: float


class Instruments(TypedDict):
    """Limits of error of the instruments that are read."""

    alcoholometer: Alcoholometer
    proof_hydrometer: ProofHydrometer
    thermometer: Thermometer
    density_meter: DensityMeter
    scale: Scale
    tank: Tank
    wash_strength_pct: float


@overload
def load_data(name: Literal["spirit"]) -> Spirit: ...
@overload
def load_data(name: Literal["gauging"]) -> Gauging: ...
@overload
def load_data(name: Literal["table1"]) -> Table1: ...
@overload
def load_data(name: Literal["sugar"]) -> Sugar: ...
@overload
def load_data(name: Literal["still"]) -> Still: ...
@overload
def load_data(name: Literal["vle"]) -> Vle: ...
@overload
def load_data(name: Literal["instruments"]) -> Instruments: ...
@overload
def load_data(name: Literal["units"]) -> dict[str, Unit]: ...
@cache
def load_data(name: str) -> Any:
    """Return the parsed data file of that name, read once.

    Parameters
    ----------
    name : str
        File name without its ending. [text], any name listed in data/manifest.json

    Returns
    -------
    content : dict
        What the JSON file holds. Treat it as read-only.

    Source
    ------
    Each file names its own; data/manifest.json lists them with SHA-256.
    """
    return json.loads((DATA_FOLDER / f"{name}.json").read_text(encoding="utf-8"))
