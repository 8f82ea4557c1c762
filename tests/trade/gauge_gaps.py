"""Houses of casks that are gauged every one, two, three or five years, made by three laws of their own.

`even`: a rate for each cask, years that differ. `seasons`: summers take more, the weather of a year is that of the
whole house, a cask loses faster as it empties, samples are drawn, gauges come weeks early or late. `litres`: wood and
air take the same litres a year whatever is left, the first year more; the forecast's figures were not chosen with it.
"""

import math
import random
from collections.abc import Callable
from dataclasses import dataclass

STEPS_A_YEAR = 8


@dataclass(frozen=True)
class Followed:
    size_l: float
    place: str
    gauges: list[dict[str, float]]
    later_lpa: float  # what truly stands in it so many years after the last gauge


def house(law: str, seed: int, gap_years: float, ahead_years: float, count: int = 40) -> list[Followed]:
    """Return casks of two sizes in a cellar and a loft, gauged two or three times, and what they hold later."""
    chance = random.Random(seed)
    usual = {(size, place): base + (1.0 if place == "loft" else 0.0) + chance.gauss(0, 0.4)
             for size, base in ((200.0, 2.6), (50.0, 5.5)) for place in ("cellar", "loft")}
    weather: dict[int, float] = {}
    return [_cask(law, chance, usual, weather, gap_years, ahead_years) for _ in range(count)]


def _cask(
    law: str, chance: random.Random, usual: dict[tuple[float, str], float], weather: dict[int, float], gap: float,
    ahead: float,
) -> Followed:
    size, place = chance.choice(sorted(usual))
    middle = usual[size, place]
    rate = max(middle + chance.gauss(0, 0.6), 0.3) if law == "even" else middle * math.exp(chance.gauss(0, 0.22))
    full = size * 0.6
    take = _LAWS[law](chance, rate, full, weather)
    lpa, at, gauges = full, 0.0, []
    for n in range(chance.choice([2, 3])):
        due, drawn = n * gap + (chance.uniform(-0.06, 0.06) if n and law != "even" else 0.0), 0.0
        if n and law != "even" and chance.random() < 0.4:
            lpa, at = _pass(take, lpa, at, chance.uniform(at, due))
            drawn = chance.uniform(0.05, 0.3)
            lpa -= drawn
        lpa, at = _pass(take, lpa, at, due)
        gauges.append({"years": at, "lpa": lpa * (1 + chance.gauss(0, 0.0035)),
                       "strength_pct": 60 + chance.gauss(0, 0.1), "drawn_l": drawn})
    return Followed(size, place, gauges, _pass(take, lpa, at, at + ahead)[0])


Take = Callable[[float, float, float], float]  # litres there, when [years], for how long [years] -> litres kept


def _pass(take: Take, lpa: float, at: float, until: float) -> tuple[float, float]:
    steps = math.ceil((until - at) * STEPS_A_YEAR)
    for n in range(steps):
        long = (until - at) / steps
        lpa = take(lpa, at + n * long, long)
    return lpa, until


def _even(chance: random.Random, rate: float, full: float, weather: dict[int, float]) -> Take:
    return lambda lpa, at, long: lpa * math.exp(-(rate * long + chance.gauss(0, 0.5) * long**0.5) / 100)


def _seasons(chance: random.Random, rate: float, full: float, weather: dict[int, float]) -> Take:
    filled = chance.uniform(0, 1)

    def take(lpa: float, at: float, long: float) -> float:
        year = weather.setdefault(int(at + filled), chance.gauss(0, 0.12))
        now = rate * (1 + 0.5 * math.sin(2 * math.pi * (at + filled))) * (1 + 0.25 * (1 - lpa / full)) * (1 + year)
        return lpa * math.exp(-(now * long + chance.gauss(0, 0.3) * long**0.5) / 100)

    return take


def _litres(chance: random.Random, rate: float, full: float, weather: dict[int, float]) -> Take:
    def take(lpa: float, at: float, long: float) -> float:
        a_year = rate / 100 * full * (1.25 if at < 1 else 1.0) * (1 + chance.gauss(0, 0.15) / long**0.5)
        return max(lpa - a_year * long, 0.05 * full)

    return take


_LAWS = {"even": _even, "seasons": _seasons, "litres": _litres}
