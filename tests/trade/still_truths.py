"""Stills simulated plate by plate in time, to try the forecast of a cut on: no part of it is the forecast's model.

Each structure has its own equilibria and hydraulics; heat and cooling are paths in watts, from which the reflux comes.

- ``weirs``: CoolProp's equation of state (HEOS) for the equilibria; plates hold a constant volume; latent heats of the
  two differ; a dephlegmator condenses a part of the vapour, with some enrichment.
- ``leaks``: modified UNIFAC (Dortmund) of the library thermo; what a plate holds grows with the liquid that crosses its
  weir (Francis); every plate loses heat; a plate's efficiency falls as the vapour slows; the parrot holds the stream
  back.

Plates fill from the pot and run at total reflux for a while. An operator changes heat and water, rarely stops, reads a
glass that scatters, a jug that is sometimes misread. Sizes of all these are common practice, no source; they are truth
by construction, and none was fitted to the forecast.
"""

from __future__ import annotations

import random
from datetime import UTC, datetime, timedelta
from functools import cache
from typing import Any, NamedTuple

import CoolProp
import numpy as np
from CoolProp.CoolProp import PropsSI
from scipy.optimize import brentq
from scipy.signal import lfilter
from thermo.unifac import DOUFIP2016, DOUFSG, UNIFAC

from tests.trade.still_runs import ETHANOL_KG_L, MOLAR, strength_from_mole_fraction

LATENT = (38_600.0, 40_660.0)  # of boiling ethanol and water [J/mol], CoolProp at 101325 Pa to three digits
STEP_S, LONGEST_S, PLATES_MOST = 5.0, 9 * 3600, 7
CLASSES = {"bare pot": (0, 0), "one to four plates": (1, 4), "five to seven": (5, 7)}
STRUCTURES = ("weirs", "leaks")
Array = Any


class Still(NamedTuple):
    """A still and its operator, as the simulation has them."""

    structure: str
    plates: int
    efficiency: float
    held_l: float  # on each plate
    helm: float  # share of the vapour that the helm or dephlegmator sends back, at usual heat and water
    enrich: float  # of a full stage, by that
    size_l: float
    strength_pct: float
    cut_pct: float
    hours: float  # that the charge is to take
    loss: float  # of the heat, along the plates
    restless: float  # changes of heat or water in a run
    raises_water: float  # how often the operator gives more water near the cut
    starts_min: float  # usual minutes at total reflux
    taps: float  # how often a change is logged
    every_min: float  # between readings


class Simulated(NamedTuple):
    """A run as the book has it, with its truth: when the stream really fell to the cut's strength. [min, L]"""

    run: dict[str, Any]
    cut_pct: float
    heads_min: float
    cut_min: float
    cut_l: float


def make_still(seed: int, sort: str, structure: str) -> Still:
    """Return an invented still of a class."""
    dice = random.Random(f"{seed} {sort} {structure}")
    low, high = CLASSES[sort]
    plates = dice.randint(low, high)
    size = dice.choice([100.0, 150.0, 200.0, 300.0, 450.0])
    held = dice.uniform(0.2, 3.0) * (size / 450.0) ** 0.5
    bare = plates == 0
    return Still(
        structure=structure, plates=plates, efficiency=dice.uniform(0.5, 0.8), held_l=max(held, 0.2),
        helm=dice.uniform(0.1, 0.3) if bare else dice.uniform(0.5, 0.75),
        enrich=dice.uniform(0.1, 0.5) if bare else dice.uniform(0.3, 0.9), size_l=size,
        strength_pct=dice.uniform(20.0, 30.0) if bare else dice.uniform(5.0, 10.0),
        cut_pct=dice.uniform(48, 60) if bare else dice.uniform(52, 58) + 2.5 * min(plates, 3),
        hours=dice.uniform(2.5, 4.5) if bare else dice.uniform(3.0, 5.5), loss=dice.uniform(0.02, 0.1),
        restless=dice.uniform(0.2, 1.2), raises_water=dice.choice([0.0, 0.2, 0.6]), starts_min=dice.uniform(3, 25),
        taps=0.8, every_min=dice.uniform(8, 18),
    )


@cache
def _equilibria(structure: str) -> tuple[Array, Array]:
    """Return vapour over liquid on an even grid of the root of the liquid. [mol/mol]"""
    xs = np.linspace(0, 1, 401) ** 2
    known = np.concatenate([np.linspace(0.0005, 0.05, 40), np.linspace(0.06, 0.88, 60)])
    ys = [_by_state(float(x)) if structure == "weirs" else _by_groups(float(x)) for x in known]
    return xs, np.interp(xs, np.concatenate([[0.0], known, [1.0]]), np.concatenate([[0.0], ys, [1.0]]))


def _by_state(x: float) -> float:
    state = CoolProp.AbstractState("HEOS", "Ethanol&Water")
    state.set_mole_fractions([x, 1 - x])
    state.update(CoolProp.PQ_INPUTS, 101325, 0)
    return float(state.mole_fractions_vapor()[0])


def _by_groups(x: float) -> float:
    def pressures(kelvin: float) -> tuple[float, float]:
        gammas = UNIFAC.from_subgroups(
            T=kelvin, xs=[x, 1 - x], chemgroups=[{1: 1, 2: 1, 14: 1}, {16: 1}], version=1,
            interaction_data=DOUFIP2016, subgroups=DOUFSG,
        ).gammas()
        pure = [PropsSI("P", "T", kelvin, "Q", 0, name) for name in ("Ethanol", "Water")]
        return x * gammas[0] * pure[0], (1 - x) * gammas[1] * pure[1]

    ethanol, water = pressures(brentq(lambda k: sum(pressures(k)) - 101325, 345, 375))
    return float(ethanol / (ethanol + water))


@cache
def _strengths() -> tuple[Array, Array]:
    """Return mole fraction to strength [% vol] and to moles in a litre at 20 degC, on an even grid."""
    xs = np.linspace(0, 1, 1001)
    pcts = np.asarray(strength_from_mole_fraction(xs))
    pure = pcts / 100 * ETHANOL_KG_L * 1e3 / MOLAR[0]
    return pcts, np.where(xs > 0, pure / np.maximum(xs, 1e-9), 998.2 / MOLAR[1])


def _on(grid: Array, x: Array) -> Array:
    """Read an even grid over 0 to 1 on the straight lines between its points."""
    place = np.clip(x, 0.0, 1.0) * (len(grid) - 1)
    i = np.minimum(place.astype(int), len(grid) - 2)
    return grid[i] + (place - i) * (grid[i + 1] - grid[i])


def simulate(stills: list[Still], seeds: list[int]) -> list[Simulated | None]:
    """Return a run of each still; None where its stream never came to the cut. All of one structure, all at once."""
    dices = [np.random.default_rng(seed) for seed in seeds]
    plans = [_Plan(still, dice) for still, dice in zip(stills, dices, strict=True)]
    truth = _Column(stills, plans).run()
    return [_read(still, plan, truth, i, dice) for i, (still, plan, dice) in
            enumerate(zip(stills, plans, dices, strict=True))]


class _Plan:
    """What happens in a run from without: charge, heat and water as paths, pauses, changes that were logged."""

    def __init__(self, still: Still, dice: Any) -> None:
        self.strength = still.strength_pct * dice.uniform(0.8, 1.2)
        self.size = still.size_l * dice.uniform(0.85, 1.05)
        steps = int(LONGEST_S / STEP_S)
        minutes = np.arange(steps) * STEP_S / 60
        self.total_min = still.starts_min * dice.uniform(0.6, 1.5) if still.plates else 0.0
        self.heat, self.water = _wandering(dice, steps, 0.012), _wandering(dice, steps, 0.015)
        self.changes: list[tuple[float, str]] = []
        usual = still.hours * 60
        for _ in range(dice.poisson(still.restless)):
            at, what = dice.uniform(0.15, 0.95) * usual + self.total_min, dice.choice(["heat", "water"])
            self._change(minutes, at, what, float(np.exp(dice.normal(0, 0.06))), still.taps, dice)
        if dice.random() < still.raises_water:  # more water as the stream begins to fall: a habit, so it has its time
            at = usual * dice.normal(0.7, 0.06) + self.total_min
            self._change(minutes, at, "water", 1.0 + abs(dice.normal(0.05, 0.015)), still.taps, dice)
        self.pause = None
        if dice.random() < 0.08:
            at = dice.uniform(0.2, 0.7) * usual + self.total_min
            self.pause = (at, at + dice.uniform(8, 25))
            self.heat[(minutes > self.pause[0]) & (minutes < self.pause[1])] = 0.0
        self.heat[minutes < self.total_min] *= 0.8
        # From run to run the heat differs, and the operator sets the water until the flow is about as usual.
        self.level = dice.normal(1.0, 0.05)
        self.water *= (self.level - (1 - still.helm) * dice.normal(1.0, 0.08)) / still.helm if still.plates else 1.0
        self.changes.sort()

    def _change(self, minutes: Array, at: float, what: str, by: float, taps: float, dice: Any) -> None:
        path = self.heat if what == "heat" else self.water
        path[minutes > at] *= by
        if dice.random() < taps:
            self.changes.append((at, what))


def _wandering(dice: Any, steps: int, size: float) -> Array:
    """Return a path about one that forgets itself in forty minutes."""
    fade = float(np.exp(-STEP_S / 2400))
    pushes = dice.normal(0, size * np.sqrt(1 - fade * fade), steps)
    pushes[0] = dice.normal(0, size)
    return 1.0 + lfilter([1.0], [1.0, -fade], pushes)


class _Column:
    """All runs at once: pot, plates and helm, step by step in time."""

    def __init__(self, stills: list[Still], plans: list[_Plan]) -> None:
        self.structure = stills[0].structure
        assert all(still.structure == self.structure for still in stills)
        xs, self.vapours = _equilibria(self.structure)
        self.liquids = xs
        self.pcts, self.moles = _strengths()
        each = {name: np.array([getattr(still, name) for still in stills]) for name in
                ("plates", "efficiency", "held_l", "helm", "enrich", "loss", "hours", "cut_pct")}
        self.each, self.plans = each, plans
        self.there = np.arange(PLATES_MOST)[None, :] < each["plates"][:, None]  # 0 is the lowest plate
        size, pct = np.array([plan.size for plan in plans]), np.array([plan.strength for plan in plans])
        self.lpa = size * pct / 100
        self.ethanol = self.lpa * ETHANOL_KG_L * 1e3 / MOLAR[0]
        self.water = (size - self.lpa) * 998.2 / MOLAR[1]
        # Heat so that some nine tenths of the alcohol come over in the hours meant, at 70 % vol or so.
        distilled = 0.9 * self.lpa / 0.7 * 33.0 / (each["hours"] * 3600)
        self.boil_up = distilled / (1 - each["helm"])  # mol/s at usual heat
        self.cooled = self.boil_up * each["helm"]
        self.usual_w = self.boil_up * 39_800

    def _y(self, x: Array) -> Array:
        return _on(self.vapours, np.sqrt(np.clip(x, 0.0, 1.0)))

    def _fill(self) -> None:
        """Fill the plates with condensate of the pot's vapour."""
        x = np.clip(self.ethanol / (self.ethanol + self.water), 0, 1)
        start = self._y(x)
        self.x = np.repeat(start[:, None], PLATES_MOST, 1)
        held = np.where(self.there, self.each["held_l"][:, None] * _on(self.moles, self.x), 0.0)
        self.held = held
        self.ethanol -= (held * self.x).sum(1)
        self.water -= (held * (1 - self.x)).sum(1)

    def run(self) -> dict[str, Array]:
        """Return strengths in the parrot, litres and flow at every step: arrays of (runs, steps)."""
        self._fill()
        heat, water = np.array([p.heat * p.level for p in self.plans]), np.array([p.water for p in self.plans])
        total = np.array([plan.total_min for plan in self.plans]) * 60
        steps, count = heat.shape[1], len(self.plans)
        found = {name: np.zeros((count, steps), np.float32) for name in ("pct", "litres", "flow")}
        litres, parrot = np.zeros(count), np.full(count, np.nan)
        for k in range(steps):
            closed = k * STEP_S < total
            off, x_off = self._step(heat[:, k], water[:, k], closed)
            passed = off * STEP_S / _on(self.moles, x_off)
            litres += passed
            pct = _on(self.pcts, x_off)
            share = np.clip(passed / 0.4, 0, 1) if self.structure == "leaks" else (passed > 0).astype(float)
            parrot = np.where(np.isnan(parrot) & (passed > 0), pct, parrot + share * (pct - parrot))
            found["pct"][:, k], found["litres"][:, k], found["flow"][:, k] = parrot, litres, passed / STEP_S * 3600
            if k % 60 == 0 and np.all(np.nan_to_num(parrot, nan=99.0) < self.each["cut_pct"] - 8):
                for name in found:
                    found[name] = found[name][:, : k + 1]
                break
        return found

    def _step(self, heat: Array, water: Array, closed: Array) -> tuple[Array, Array]:
        """Move pot and plates on by a step; return moles a second that run off and their mole fraction."""
        each = self.each
        pot = np.clip(self.ethanol / (self.ethanol + self.water), 1e-6, 1)
        spent = self.ethanol + self.water < 20
        latent = LATENT[1] + self._y(pot) * (LATENT[0] - LATENT[1])
        rising = np.where(spent, 0.0, self.usual_w * heat / latent)
        up, y = rising, self._y(pot)
        out_pot = rising * y
        vapours = np.empty_like(self.x)
        slow = 0.15 * (1 - np.clip(rising / np.maximum(self.boil_up, 1e-9), 0, 1)) if self.structure == "leaks" else 0.0
        for n in range(PLATES_MOST):
            gain = np.where(self.there[:, n], each["efficiency"] - slow, 0.0)
            y = y + gain * (self._y(self.x[:, n]) - y)
            vapours[:, n] = y
        cooled = self.cooled * water
        loss = each["loss"] * rising if self.structure == "leaks" else each["loss"] * 0.3 * rising
        down_top = np.where(closed, up - loss, np.minimum(cooled, (up - loss) * 0.98))
        down_top = np.maximum(down_top, 0)
        off = np.maximum(up - loss - down_top, 0.0)
        # The helm condenses a part: what goes on is richer, by a share of a stage.
        onward = self._partial(y, down_top / np.maximum(up, 1e-9))
        richer = y + each["enrich"] * np.where(closed, 0.0, 1.0) * (onward - y)
        x_off = np.where(off > 0, richer, y)
        back = np.where(down_top + loss > 1e-9, (up * y - off * x_off) / np.maximum(down_top + loss, 1e-9), y)
        back = np.clip(back, 0, 1)
        down, x_down = down_top + loss, back
        for n in reversed(range(PLATES_MOST)):
            there, held = self.there[:, n], np.maximum(self.held[:, n], 1e-9)
            below = self._y(pot) if n == 0 else vapours[:, n - 1]
            change = (down * (x_down - self.x[:, n]) + rising * (below - vapours[:, n])) / held * STEP_S
            leaves = down
            if self.structure == "leaks":  # over the weir: what a plate holds follows the liquid that crosses it
                usual = np.maximum(self.cooled, 1e-9)
                deep = 0.7 + 0.3 * np.clip(down / usual, 0, 3) ** (2 / 3)
                wanted = each["held_l"] * deep * _on(self.moles, self.x[:, n])
                grow = np.clip((wanted - held) / 60.0, -0.5 * down, 0.5 * down)
                self.held[:, n] = np.where(there, held + grow * STEP_S, 0.0)
                leaves = down - grow
            x_new = np.clip(self.x[:, n] + change, 1e-6, 1)
            down, x_down = np.where(there, leaves, down), np.where(there, self.x[:, n], x_down)
            self.x[:, n] = np.where(there, x_new, self.x[:, n])
        self.ethanol = np.maximum(self.ethanol + (down * x_down - out_pot) * STEP_S, 1e-3)
        self.water = np.maximum(self.water + (down * (1 - x_down) - (rising - out_pot)) * STEP_S, 1e-3)
        return off, x_off

    def _partial(self, y: Array, share: Array) -> Array:
        """Return the vapour that goes on, of which a share has condensed in equilibrium with it."""
        x = y * 0.8
        for _ in range(8):
            x = np.clip(x - 0.6 * (share * x + (1 - share) * self._y(x) - y), 1e-6, 1)
        return self._y(x)


def _read(still: Still, plan: _Plan, truth: dict[str, Array], i: int, dice: Any) -> Simulated | None:
    """Write down the run as its operator read it, in the shape of the book's own."""
    pct, litres, flow = (truth[name][i] for name in ("pct", "litres", "flow"))
    runs = np.flatnonzero(litres > 0)
    if not len(runs):
        return None
    drop = int(runs[0])
    lpa = np.cumsum(np.diff(litres, prepend=0) * np.nan_to_num(pct) / 100)
    charged = plan.size * plan.strength / 100
    heads = drop + int(np.searchsorted(lpa[drop:], 0.06 * charged))
    fallen = np.flatnonzero((pct <= still.cut_pct) & (np.arange(len(pct)) > heads))
    if not len(fallen) or pct[min(heads, len(pct) - 1)] < still.cut_pct + 4:
        return None
    cut = int(fallen[0])
    end = min(len(pct) - 1, cut + int(25 * 60 / STEP_S))
    zero = datetime(2026, 3, 1, 8, 0, tzinfo=UTC)
    jug = dice.normal(1.0, 0.02)

    def at(step: int) -> str:
        return (zero + timedelta(seconds=round(step * STEP_S))).strftime("%Y-%m-%dT%H:%M:%SZ")

    def line(step: int, **more: Any) -> dict[str, Any]:
        strength = float(pct[step]) + dice.normal(0, 0.4)
        if dice.random() < 0.015:
            strength += dice.choice([-10.0, 10.0])
        read = {"entry": f"e{step}{len(more)}", "at": at(step), "true_strength": round(min(strength, 96.5), 1), **more}
        if still.plates or dice.random() < 0.5:
            read["plates"] = float(still.plates)
        if dice.random() < 0.75:
            said = float(flow[step]) * jug * dice.normal(1.0, 0.04)
            read["flow"] = round(said * (dice.choice([0.5, 2.0]) if dice.random() < 0.02 else 1.0), 1)
        return read

    readings, step = [], drop + int(dice.uniform(2, 6) * 60 / STEP_S)
    while step < end:
        minute = step * STEP_S / 60
        if not (plan.pause and plan.pause[0] <= minute <= plan.pause[1] + 4):
            readings.append(line(step))
        step += int(max(still.every_min * dice.normal(1, 0.25), 3) * 60 / STEP_S)
    taken = min(max(cut + int(dice.normal(0, 2) * 60 / STEP_S), heads + 1), end)
    cuts = [{"entry": "drop", "at": at(drop), "event": "first_drop", "true_strength": None},
            line(heads, event="heads_cut"), line(taken, event="hearts_cut")]
    cuts += [{"entry": f"c{k}", "at": at(int(minute * 60 / STEP_S)), "event": f"{what}_changed", "true_strength": None}
             for k, (minute, what) in enumerate(plan.changes)]
    gauged = charged * dice.normal(1.0, 0.03)
    run = {"still": "S1", "what": "plum", "started_at": at(0), "ended_at": at(end), "cuts": cuts,
           "readings": readings,
           "charge": {"volume_l": plan.size, "lpa_l": gauged}}
    spent = STEP_S / 60
    return Simulated(run, still.cut_pct, (heads - drop) * spent, (cut - drop) * spent, float(litres[cut]))
