"""Ferments whose end is known, made by other rules than the forecast's own: what the back-test is held against.

Three shapes: sugar eaten by growing yeast in a mash that warms and cools (Monod's kinetics, integrated in small steps),
Gompertz's curve, which falls faster than it tails off, and logistic curves of odd rates. Hydrometer to half a
thousandth with its scatter; a day is missed now and then; one reading in thirty has a slip.

And ferments that end in one way or another (`ending`): by Monod's law with little or much sugar at half speed, and by a
power of what is left after a lag, in a mash that warms and cools. Neither is the forecast's own curve.
"""

import json
import math
import random
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

END_WITHIN = 0.001
DEMO = Path(__file__).parents[2] / "demo_data" / "ferments.json"


@dataclass(frozen=True)
class Ferment:
    name: str
    days: list[float]
    gravities: list[float]
    end_day: float  # when it was truly within a thousandth of its last gravity
    usual_end: float  # what is told beforehand
    is_grain: bool = False


def made(count: int, seed: int) -> list[Ferment]:
    """Return ferments of the three shapes in turn."""
    chance = random.Random(seed)
    return [_made(i, chance) for i in range(count)]


def _made(index: int, chance: random.Random) -> Ferment:
    usual = chance.choice([1.011, 1.009, 1.006, 1.000])
    end, og = usual + chance.gauss(0, 0.002), usual + chance.uniform(0.035, 0.075)
    shape = ("monod", "gompertz", "logistic")[index % 3]
    fine = {"monod": _monod, "gompertz": _gompertz, "logistic": _logistic}[shape](og, end, chance)
    return _read(f"{shape} {index}", fine, end, usual, chance)


def ending(how: str, count: int, seed: int) -> list[Ferment]:
    """Return ferments that end "sharp", "between" or "fading", every other one by a power of what is left."""
    chance = random.Random(f"{how} {seed}")
    return [_ending(how, i, chance) for i in range(count)]


def _ending(how: str, index: int, chance: random.Random) -> Ferment:
    usual = chance.choice([1.011, 1.009, 1.006, 1.000])
    end, og = usual + chance.gauss(0, 0.002), usual + chance.uniform(0.035, 0.075)
    drift, phase = chance.uniform(-0.25, 0.25), chance.uniform(0, 6.28)
    if index % 2:
        low, high = {"sharp": (0.0, 0.2), "between": (0.45, 0.7), "fading": (1.0, 1.2)}[how]
        order, days, lag = chance.uniform(low, high), chance.uniform(7, 18), chance.uniform(0.5, 2.5)
        work = -math.log(0.02) if abs(order - 1) < 1e-6 else (1 - 0.02 ** (1 - order)) / (1 - order)

        def pace(day: float, left: float) -> float:
            return work / days * (1 - math.exp(-day / lag)) * (og - end) * (left / (og - end)) ** order
    else:
        low, high = {"sharp": (0.0003, 0.0015), "between": (0.006, 0.02), "fading": (0.05, 0.15)}[how]
        half, growth = chance.uniform(low, high), chance.uniform(0.5, 1.0) * (3.0 if how == "fading" else 0.9)
        yeast, most = chance.uniform(0.002, 0.005), 0.012

        def pace(day: float, left: float) -> float:
            return growth * min(yeast + 0.6 * (og - end - left), most) * left / (left + half)
    left, fine = og - end, []
    for step in range(90 * 50):
        day = step / 50
        fine.append((day, end + left))
        left -= min(pace(day, left) * (1 + drift * math.sin(day / 3 + phase)) / 50, left) if left > 0 else 0.0
    return _read(f"{how} {index}", fine, end, usual, chance)


def _read(name: str, fine: list[tuple[float, float]], end: float, usual: float, chance: random.Random) -> Ferment:
    end_day = next(day for day, gravity in fine if gravity <= end + END_WITHIN)
    days, gravities = [], []
    for day in range(int(end_day) + 4):
        if day and chance.random() < 0.12:
            continue
        at = day + (chance.uniform(-0.1, 0.1) if day else 0.0)
        true = next(gravity for when, gravity in fine if when >= at)
        read = round((true + chance.gauss(0, 0.0005)) * 2000) / 2000
        if day > 1 and chance.random() < 1 / 30:
            read += chance.choice([-0.009, 0.009, 0.01])
        days.append(at)
        gravities.append(min(max(read, 0.985), 1.15))
    return Ferment(name, days, gravities, end_day, usual)


def _fine(fall: Callable[[float], float]) -> list[tuple[float, float]]:
    return [(step / 50, fall(step / 50)) for step in range(60 * 50)]


def _logistic(og: float, end: float, chance: random.Random) -> list[tuple[float, float]]:
    rate, middle = math.exp(chance.gauss(math.log(0.65), 0.45)), chance.uniform(2.5, 7)
    start = 1 + math.exp(-rate * middle)
    return _fine(lambda day: end + (og - end) * start / (1 + math.exp(rate * (day - middle))))


def _gompertz(og: float, end: float, chance: random.Random) -> list[tuple[float, float]]:
    rate, lag = chance.uniform(0.25, 0.6), chance.uniform(1.5, 4)
    scale = 1 - math.exp(-math.exp(rate * lag))
    return _fine(lambda day: end + (og - end) * (1 - math.exp(-math.exp(-rate * (day - lag)))) / scale)


def _monod(og: float, end: float, chance: random.Random) -> list[tuple[float, float]]:
    growth, half, yeast = chance.uniform(0.5, 1.0), chance.uniform(0.006, 0.02), chance.uniform(0.002, 0.005)
    drift, left, found = chance.uniform(-0.35, 0.35), og - end, []
    phase = chance.uniform(0, 6.28)
    for step in range(60 * 50):
        day = step / 50
        found.append((day, end + left))
        warmth = 1 + drift * math.sin(day / 3 + phase)
        eaten = min(growth * warmth * yeast * left / (left + half) / 50, left)
        left -= eaten
        yeast = min(yeast + eaten * 0.6, 0.018)
    return found


def of_the_demo() -> list[Ferment]:
    """Return the invented year's ferments; the end by straight lines between the readings."""
    from webapp.book.before.limits import end_gravity, is_grain

    found = []
    for one in json.loads(DEMO.read_text(encoding="utf-8")):
        days, gravities = [float(line[0]) for line in one["readings"]], [line[1] for line in one["readings"]]
        near = gravities[-1] + END_WITHIN
        at = next(i for i, gravity in enumerate(gravities) if gravity <= near + 1e-9)
        part = (gravities[at - 1] - near) / (gravities[at - 1] - gravities[at])
        end_day = days[at - 1] + part * (days[at] - days[at - 1])
        found.append(Ferment(one["batch"], days, gravities, end_day, end_gravity(one["material"], one["variety"]),
                             is_grain(one["material"])))
    return found
