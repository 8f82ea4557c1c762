"""Runs to try the forecast on: those of the invented year, and generated ones whose truth is known.

The generated runs are made here by other means than the forecast's: equilibria of the library CoolProp (HEOS) on a
table, whole plates with an efficiency, straight Euler steps in time, a reflux that wanders, a charge gauged wrongly,
readings that scatter, a flow that is read off its true value.
"""

from __future__ import annotations

import random
from collections import defaultdict
from functools import cache
from itertools import pairwise
from typing import Any, NamedTuple

import CoolProp
import numpy as np

from webapp.demo import still as demo_still
from webapp.demo.story import load
from webapp.trade.cutdue import forecast_cut
from webapp.trade.density import strength_from_mass_fraction
from webapp.trade.stilllearn import learn_prior

ETHANOL_KG_L, MOLAR = 0.78924, (46.068, 18.015)
Run = dict[str, Any]


def demo_runs() -> list[tuple[str, str, Run, float, float, float]]:
    """Spirit runs from mash of the invented year: (name, still, run, cut % vol, its minute, its litres)."""
    found = []
    for told in load("runs")["runs"]:
        if "low_wines" in told or "from" in told:
            continue
        moments = list(demo_still.moments(demo_still.fractions(told)))
        ends = [moment for moment in moments if moment.share == 1.0]
        read = sorted([*demo_still.picked(demo_still.fractions(told)), *ends], key=lambda moment: moment.minute)
        litres = told["wash_l"] + told.get("feints_l", 0.0)
        feints = told.get("feints_l", 0.0) * told.get("feints_strength_pct", 0.0)
        lpa = told["wash_l"] * told["wash_strength_pct"] + feints
        readings = [
            {
                "minutes": float(round(moment.minute)),
                "strength_pct": round(moment.strength_pct, 1),
                "flow_l_h": round(moment.flow_l_h, 1),
            }
            for moment in read
        ]
        cut = next(moment for moment in reversed(moments) if moment.fraction == "hearts")
        run = {"charge": {"volume_l": litres, "lpa_l": lpa / 100}, "readings": readings, "collected": [],
               "still": {"plates": 3, "height_m": 310}}
        cut_l = told["heads"][0] + told["hearts"][0]
        found.append((told["run"], told["still"], run, cut.strength_pct, cut.minute, cut_l))
    return found


@cache
def _equilibria() -> tuple[Any, Any]:
    state = CoolProp.AbstractState("HEOS", "Ethanol&Water")
    liquids = np.concatenate([np.linspace(0.0005, 0.05, 40), np.linspace(0.06, 0.88, 60)])
    vapours = []
    for x in liquids:
        state.set_mole_fractions([float(x), float(1 - x)])
        state.update(CoolProp.PQ_INPUTS, 101325, 0)
        vapours.append(state.mole_fractions_vapor()[0])
    return np.concatenate([[0.0], liquids]), np.concatenate([[0.0], vapours])


def _strength_of(x: Any) -> Any:
    xs, strengths = _densities()
    return np.interp(x, xs, strengths)


@cache
def _densities() -> tuple[Any, Any]:
    """Mole fraction to strength, on a table: OIML R 22 as the product has it, which has tests of its own."""
    xs = np.linspace(0, 1, 801)
    return xs, np.asarray(strength_from_mole_fraction(xs))


def strength_from_mole_fraction(mole_fraction: Any) -> Any:
    """Return the strength of spirit of which that share of the moles is ethanol. [% vol at 20 degC]"""
    ethanol, water = mole_fraction * MOLAR[0], (1 - mole_fraction) * MOLAR[1]
    return strength_from_mass_fraction(ethanol / (ethanol + water))


@cache
def _column(plates: int, efficiency: float, reflux: float) -> Any:
    """Stream [mol/mol] over pots, by finding for each stream the pot that gives it."""
    liquids, vapours = _equilibria()
    back, streams, pots = reflux / (reflux + 1), np.linspace(0.002, 0.86, 140), []
    for stream in streams:
        vapour = stream
        for _ in range(plates):
            fixed = (1 - back) * stream
            meets = (1 - efficiency) * (back * liquids + fixed) + efficiency * vapours
            liquid = np.interp(vapour, meets, liquids)
            vapour = back * liquid + fixed
        pots.append(np.interp(vapour, vapours, liquids))
    return np.concatenate([[0.0], pots]), np.concatenate([[0.0], streams])


def generated_run(seed: int, still: int, target_pct: float = 60.0) -> tuple[Run, float, float]:
    """One run of a still that keeps its ways: (run, minute and litres at which the true stream falls to the target)."""
    of_still, dice = random.Random(still), random.Random(seed * 1000 + still)
    plates, efficiency = of_still.choice([1, 2, 3, 4]), of_still.uniform(0.5, 0.8)
    reflux_usual, size_l = of_still.uniform(0.8, 3.5), of_still.choice([100, 200, 450])
    strength = dice.uniform(4.0, 9.0)
    lpa = size_l * strength / 100
    ethanol, water = lpa * ETHANOL_KG_L / MOLAR[0] * 1e3, (size_l - lpa) * 0.998 / MOLAR[1] * 1e3
    reflux, flow = reflux_usual * dice.uniform(0.8, 1.25), size_l * 0.028 * dice.uniform(0.85, 1.15)
    flow_bias, read_scatter, rising = dice.uniform(0.95, 1.05), 0.4, dice.uniform(-0.15, 0.25)
    minute = litres = 0.0
    when: tuple[float, float] | None = None
    readings, following, wander = [], 4.0, 0.0
    while minute < 600:
        pots, streams = _column(plates, round(efficiency, 2), round(reflux * (1 + wander), 2))
        share_left = ethanol / (lpa * ETHANOL_KG_L / MOLAR[0] * 1e3)
        stream = float(np.interp(ethanol / (ethanol + water), pots, streams))
        pct = float(_strength_of(stream))
        flow_now = flow * (1 + rising * (1 - share_left))
        if when is None and pct <= target_pct:
            when = (minute, litres)
        if minute >= following:
            readings.append({
                "minutes": minute, "strength_pct": round(min(pct + dice.gauss(0, read_scatter), 96.0), 1),
                "flow_l_h": round(flow_now * flow_bias * (1 + dice.gauss(0, 0.03)), 1),
            })
            following = minute + dice.choice([8, 12, 15, 20])
        if pct < 12 or share_left < 0.03:
            break
        # One minute on; the cooling water, and with it the reflux, wanders a few percent an hour.
        wander = min(max(wander + dice.gauss(0, 0.006), -0.25), 0.25)
        passed = flow_now / 60
        moles = passed * (pct / 100 * ETHANOL_KG_L * 1e3) / (stream * MOLAR[0]) if stream > 0 else 0.0
        ethanol, water = ethanol - moles * stream, water - moles * (1 - stream)
        minute, litres = minute + 1, litres + passed
    gauged = lpa * dice.gauss(1.0, 0.05)
    charge = {"volume_l": float(size_l), "lpa_l": gauged}
    run = {"charge": charge, "readings": readings, "collected": [],
           "still": {"plates": plates, "height_m": 0}}
    return run, *(when or (float("nan"), float("nan")))


def seen_until(run: Run, minute: float) -> Run:
    """The run as it stood at a minute."""
    return run | {"readings": [reading for reading in run["readings"] if reading["minutes"] <= minute]}


class Tried(NamedTuple):
    """One forecast against what came: its state, minutes off (late is above nought), whether the cut lay within."""

    name: str
    state: str
    off_min: float
    within: bool
    width_min: float
    runs_before: int


def forecast_again(runs: list[tuple[str, str, Run, float, float, float]], share: float) -> list[Tried]:
    """Forecast each run's cut from its readings until a share of the time to it, knowing the still's runs before it."""
    found, past = [], defaultdict[str, list[Run]](list)
    for name, still, run, cut_pct, cut_min, _ in runs:
        known = learn_prior(past[still]) if past[still] else None
        seen = forecast_cut(seen_until(run, cut_min * share), known, cut_pct)
        at = seen.get("minutes") or {"at": 0.0, "low": 0.0, "high": 0.0}
        within = at["low"] <= cut_min <= at["high"]
        state = seen["state"] if seen["state"] != "too_little" else seen["why"]
        found.append(Tried(name, state, at["at"] - cut_min, within, at["high"] - at["low"], len(past[still])))
        past[still].append(run | {"cut_pct": cut_pct})
    return found


def falls(values: list[float]) -> bool:
    return all(b < a for a, b in pairwise(values))
