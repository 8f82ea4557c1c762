"""The figures of an entry with their uncertainty: which instrument each reading came from, and how far it may be off.

Pure, the same on the phone (static/kinds/uncertainty.js). An instrument that is not named, or whose class nobody has
said, is taken as of the class that the law prescribes; one that is overdue or has failed its last check, at twice its
limit. Nothing of this is kept: it follows from the entry and the registry, wherever somebody looks.
"""

from __future__ import annotations

from collections.abc import Mapping

from webapp.kinds.entry import Accuracy, Context
from webapp.kinds.figures import figures_of
from webapp.kinds.read import Read
from webapp.kinds.spec import Field, Kind
from webapp.kinds.state import Value
from webapp.trade import error_limits, uncertainty
from webapp.trade.datafiles import load_data
from webapp.trade.dipping import dip_limits_cm
from webapp.trade.errors import OutOfDomain
from webapp.trade.uncertainty import Input, Uncertain
from webapp.trade.units import to_canonical

# Sums whose figures are carried; those of other sums are off by their method, not by their instruments.
CARRIED = frozenset((
    "true_strength", "true_proof", "strength_by_density", "strength_by_distillation", "volume_of_dense",
    "volume_of_dip",
    "volume_20", "lpa_volume", "net_mass", "volume_from_mass", "volume_weighed",
    "volume_weighed_us", "lpa_mass", "lpa_weighed_us", "total", "difference", "proof_gallons", "unhidden_strength",
))
IN_SERVICE = 2.0  # times the limit at verification: 4.2 of the law on scales; of all else the house's own rule
TABLE_STEPS = 4.0  # proof is rounded to a tenth: a smaller step would measure the rounding


Accuracies = Mapping[str, Accuracy]  # by the id of the instrument


def uncertain_figures(read: Read, accuracies: Accuracies, capacity_l: float | None = None) -> dict[str, Uncertain]:
    """Return the figures of an entry with their uncertainty, by name; those that no instrument speaks of are left out.

    capacity_l: of the vessel that was dipped.
    """
    kind, entry = read.kind, read.entry
    wanted = {figure.name for figure in kind.figures if figure.sum in CARRIED} & read.figures.keys()
    inputs = inputs_of(read, accuracies, capacity_l) if wanted else []
    if not inputs:
        return {}

    def model(at: Mapping[str, float]) -> dict[str, float]:
        values: dict[str, Value] = {**read.values, **{name: value for name, value in at.items() if name[0] != "@"}}
        context: Context = {**read.context}
        if "@tare_kg" in at:
            context["tare_kg"] = at["@tare_kg"]
        if "@strength_pct" in at:
            context["strength_pct"] = at["@strength_pct"]
        found = figures_of(kind, entry, values, context)
        return {name: found[name] for name in wanted if name in found}

    found = uncertainty.propagate(model, inputs)
    return {name: figure for name, figure in found.items() if figure.shared or figure.own}


def uncertain_as_read(read: Read) -> dict[str, Uncertain]:
    """Return the figures of an entry with their uncertainty, where it was read with what the book knows of its
    instruments and its vessel.
    """
    return uncertain_figures(read, read.context.get("accuracies") or {}, read.context.get("capacity_l"))


def inputs_of(read: Read, accuracies: Accuracies, capacity_l: float | None) -> list[Input]:
    """Return the readings of an entry that its figures follow, each with what its instrument may be off by."""
    sources = _sources(read.kind)
    by_table = any(read.raw(name).get("unit") == "proof_glass" for name in read.values)
    found = []
    for spec in read.kind.fields:
        value = read.number(spec.name) if spec.name in sources else None
        limits = _limits_of(spec, value, read, accuracies, capacity_l) if value is not None else None
        if value is not None and limits:
            # Dips of one vessel share its table.
            named = _named(read, spec.name) or (read.mark if spec.instrument == "dip" else "")
            coarse = by_table and spec.name in ("glass", "temp")
            found.append(_input(spec.name, value, f"{named}/{spec.name}" if named else "", *limits, coarse=coarse))
    tare, strength = read.context.get("tare_kg"), read.context.get("strength_pct")
    if tare and "@tare_kg" in sources:
        found.append(_input("@tare_kg", tare, f"{read.mark}/tare", *_scale(tare, None)))
    if strength and "@strength_pct" in sources and "true_strength" not in read.figures:
        found.append(_input("@strength_pct", strength, f"{read.mark}/strength", *_strength()))
    return found


def _input(name: str, value: float, error: str, limit: float, interval: float, *, coarse: bool = False) -> Input:
    shared = uncertainty.standard_from_limit(limit)
    own = uncertainty.standard_from_interval(interval)
    return Input(name, value, error, shared, own, TABLE_STEPS * shared if coarse else 0.0)


def _sources(kind: Kind) -> set[str]:
    carried = [figure for figure in kind.figures if figure.sum in CARRIED]
    named = {source for figure in carried for sources in figure.inputs.values() for source in sources}
    return named | {figure.given for figure in carried if figure.given}


def _named(read: Read, name: str) -> str:
    return str(read.raw(name).get("instrument") or "").strip()


def _limits_of(
    spec: Field, value: float, read: Read, accuracies: Accuracies, capacity_l: float | None
) -> tuple[float, float] | None:
    """Return (limit of error, interval) of a reading in its canonical unit; None where no instrument is spoken of."""
    known = accuracies.get(_named(read, spec.name))
    unit = read.raw(spec.name).get("unit") or ""
    found = _dipped(read, value) if spec.name == "dip" else _prescribed(spec, value, unit, known, capacity_l)
    if found is None:
        return None
    limit, interval = found
    return (limit * IN_SERVICE if known and known["doubtful"] else limit), interval


def _dipped(read: Read, dip_cm: float) -> tuple[float, float] | None:
    """Return limit of error and interval of a dip whose litres follow from the vessel. [cm]"""
    dips, temp = read.context.get("dips") or read.context.get("cask_dips"), read.number("temp")
    if not dips or temp is None:
        return None
    try:
        vessel, surface = dip_limits_cm(dips, dip_cm, temp)
    except OutOfDomain:
        return None
    return vessel, surface * 2.0


def _prescribed(
    spec: Field, value: float, unit: str, known: Accuracy | None, capacity_l: float | None
) -> tuple[float, float] | None:
    accuracy, interval = (known["accuracy"], known["interval"]) if known else ("", None)
    if unit == "pct_glass":
        return error_limits.glass_limit_pct(accuracy, interval), interval or _glass_interval()
    if unit == "proof_glass":
        limit = error_limits.proof_limit(interval)
        return limit, limit
    if spec.instrument == "thermometer":
        step = interval if interval is None else _width(interval, known)
        return error_limits.thermometer_limit_c(step), step or 0.1  # a display shows tenths
    if spec.instrument == "scale":
        return _scale(value, known)
    if spec.instrument == "dip":
        table, surface = error_limits.dip_limits_l(value, capacity_l)
        # Either way: an interval of twice as much, unless its own is known, such as that of a sight glass in litres.
        return table, surface * 2.0 if interval is None else _width(interval, known)
    if unit in ("kg_m3", "g_mL"):
        meter = load_data("instruments")["density_meter"]
        return meter["limit_kg_m3"], meter["interval_kg_m3"] if interval is None else _width(interval, known)
    if spec.instrument == "density meter":
        return _strength()
    return (load_data("instruments")["wash_strength_pct"], 0.0) if spec.name == "wash_strength" else None


def _scale(load_kg: float, known: Accuracy | None) -> tuple[float, float]:
    interval = known["interval"] if known else None
    step = error_limits.scale_interval_kg(load_kg) if interval is None else _width(interval, known)
    return error_limits.scale_limit_kg(load_kg, step, known["accuracy"] if known else ""), step


def _strength() -> tuple[float, float]:
    # What is typed corrected has to be as good as glass of class III: German AlkStV, section 2.
    return error_limits.glass_limit_pct("", None), _glass_interval()


def _glass_interval() -> float:
    return load_data("instruments")["alcoholometer"]["interval_pct"]


def _width(interval: float, known: Accuracy | None) -> float:
    """Return an interval in the canonical unit of its instrument: widths have no zero."""
    unit = known["unit"] if known else ""
    if unit not in ("degF", "lb", "gal", "g_mL"):
        return interval
    return float(to_canonical(interval, unit) - to_canonical(0.0, unit))
