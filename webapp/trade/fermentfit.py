"""The curves that the fall of a ferment is fitted by: shapes of one family, from one that drags to a sharp end.

Yeast at work grows as a logistic curve, and takes sugar by a power of what is left, the order. Of order 1 a fall fades;
of a half it thins out, of 0 it goes straight on and ends sharply; above 1 it drags. Twin of static/trade/ferment.js.
"""

import math
from collections.abc import Sequence
from typing import NamedTuple

READING_SD = 0.0007  # what a hydrometer in strained juice wanders by [SG]
AGE_SD_DAY = 0.0005  # what a reading counts for less, for each day of its age: a mash warms and cools [SG a day]
TAIL = 4.0  # degrees of freedom of Student's t: one slip bends the curve little
END_WITHIN = 0.001  # as near to its last gravity as a hydrometer tells [SG]
END_SD = 0.0025  # of the gravity at which a fruit usually ends [SG]
RATE_DAY = {"fruit": 0.6, "grain": 2.0}  # usual rate of a ferment [1/day]; fruit 10 to 30 days, rye 3 to 5
RATE_SD = 0.6  # of its logarithm [1]
MIDDLE_DAY = {"fruit": 5.0, "grain": 1.2}  # day on which half of the sugar has gone [days]
MIDDLE_SD_DAY = 6.0
STEEPNESS_SD = 0.6  # of the logarithm of how fast yeast at its height takes sugar, over the rate [1]
SPREADS = (END_SD, RATE_SD, MIDDLE_SD_DAY, STEEPNESS_SD)
POWERS = {"dragging": -4.0, "fading": 0.0, "thinning": 2.0, "sharp": 1.0}  # 1 / (1 - order); 0 stands for no end of it
SHAPES = tuple(POWERS)
USUAL_RATIO = 50.0  # of the whole fall to the thousandth that is its end: all shapes are thought equally long [1]
STEPS = 80
ODD = 3.0  # a reading further off than so many spreads tells nothing of the shape [1]
LEAST_GAIN = 1e-12  # of the cost; below it nothing is left but rounding


class Fitted(NamedTuple):
    """A shape as it fits the readings best: end, log rate, middle, log steepness, with their precision.

    `evidence` is the logarithm of what speaks for the shape; differences of it count.
    """

    power: float
    theta: list[float]
    precision: list[list[float]]
    evidence: float


class _Readings(NamedTuple):
    days: list[float]
    gravities: list[float]
    spreads: list[float]


def fit_shape(
    days: list[float], gravities: list[float], end_gravity: float, kind: str, power: float, *, is_over: bool = False
) -> Fitted:
    """Return the likeliest curve of a shape. Days from the first reading [days], gravities [SG]; kind fruit or grain.

    What is to come is told by the last readings; of a ferment that is over, all count alike.

    Source
    ------
    An order of reaction for what is left, the q-exponential of C. Tsallis, J. Stat. Phys. 52 (1988) 479, over a
    logistic growth; order 1 is the curve of F. J. Richards, J. Exp. Bot. 10 (1959) 290. Robust weights of Student's t
    after Lange, Little, Taylor, J. Am. Stat. Assoc. 84 (1989) 881. Evidence by Laplace's method (MacKay, Neural
    Computation 4 (1992) 415). All from memory.
    """
    steepness = math.log(stretch(USUAL_RATIO, power)[0] / stretch(USUAL_RATIO, 0.0)[0])
    prior = (end_gravity, math.log(RATE_DAY[kind]), MIDDLE_DAY[kind], steepness)
    read = _Readings(days, gravities, [READING_SD if is_over else _spread(days[-1] - day) for day in days])
    theta = _search(read, prior, power)
    precision = _normal(read, theta, prior, power)[0]
    lower = cholesky(precision)
    spreads = sum(math.log(lower[i][i] * SPREADS[i]) for i in range(4))
    odd = (TAIL + 1) * math.log(1 + ODD * ODD / TAIL)
    cost = sum((min(one, odd) for one in _costs(read, theta, power)), _stray(theta, prior))
    return Fitted(power, theta, precision, -cost / 2 - spreads)


def stretch(ratio: float, power: float) -> tuple[float, float]:
    """Return how far the yeast's work goes until a ratio-th is left, and its slope by the logarithm of the ratio."""
    if not power:
        return math.log(ratio), 1.0
    kept = math.pow(ratio, -1 / power)
    return power * (1 - kept), kept


def curve(day: float, og: float, theta: Sequence[float], power: float) -> tuple[float, list[float]]:
    """Return the gravity of a day and its slopes by end, log rate, middle and log steepness."""
    end, rate, middle, steepness = theta[0], math.exp(theta[1]), theta[2], math.exp(theta[3])
    start, now = math.exp(bound(-rate * middle)), math.exp(bound(rate * (day - middle)))
    base = math.log((1 + start) / (1 + now))
    share, falls = _left(steepness * base, power)
    part = (og - end) * falls * steepness
    by_rate = part * rate * (-middle * start / (1 + start) - (day - middle) * now / (1 + now))
    by_middle = part * rate * (-start / (1 + start) + now / (1 + now))
    return end + (og - end) * share, [1 - share, by_rate, by_middle, part * base]


def _left(work: float, power: float) -> tuple[float, float]:
    """Return the share of the sugar that is left after work of the yeast (below 0), and its slope."""
    if not power:
        return math.exp(work), math.exp(work)
    rest = 1 + work / power
    return (math.pow(rest, power), math.pow(rest, power - 1)) if rest > 0 else (0.0, 0.0)


def bound(exponent: float) -> float:
    """Return an exponent that no exponential overflows at."""
    return min(max(exponent, -60.0), 60.0)


def _cost(read: _Readings, theta: list[float], prior: Sequence[float], power: float) -> float:
    return sum(_costs(read, theta, power), _stray(theta, prior))


def _stray(theta: list[float], prior: Sequence[float]) -> float:
    return sum(((theta[j] - prior[j]) / sd) ** 2 for j, sd in enumerate(SPREADS))


def _costs(read: _Readings, theta: list[float], power: float) -> list[float]:
    """Return the cost of each reading."""
    og = read.gravities[0]
    offs = [(gravity - curve(day, og, theta, power)[0]) / sd for day, gravity, sd in zip(*read, strict=True)]
    return [(TAIL + 1) * math.log(1 + off * off / TAIL) for off in offs]


def _spread(age_days: float) -> float:
    return math.sqrt(READING_SD * READING_SD + AGE_SD_DAY * AGE_SD_DAY * age_days * age_days)


def _normal(
    read: _Readings, theta: list[float], prior: Sequence[float], power: float
) -> tuple[list[list[float]], list[float]]:
    """Return the weighted normal equations about theta: precision, and what pulls."""
    matrix = [[1 / SPREADS[i] ** 2 if i == j else 0.0 for j in range(4)] for i in range(4)]
    pull = [(prior[i] - theta[i]) / SPREADS[i] ** 2 for i in range(4)]
    for day, gravity, sd in zip(*read, strict=True):
        at, slopes = curve(day, read.gravities[0], theta, power)
        off = (gravity - at) / sd
        weight = (TAIL + 1) / (TAIL + off * off) / (sd * sd)
        for i in range(4):
            pull[i] += weight * slopes[i] * (gravity - at)
            for j in range(4):
                matrix[i][j] += weight * slopes[i] * slopes[j]
    return matrix, pull


def _search(read: _Readings, prior: Sequence[float], power: float) -> list[float]:
    """Return where the cost is least, from what is told beforehand."""
    theta = list(prior)
    cost, damping = _cost(read, theta, prior, power), 1e-2
    for _ in range(STEPS):
        matrix, pull = _normal(read, theta, prior, power)
        damped = [[value * (1 + damping) if i == j else value for j, value in enumerate(row)]
                  for i, row in enumerate(matrix)]
        step = solve(damped, pull)
        tried = [theta[j] + step[j] for j in range(4)]
        tried[1], tried[3] = min(max(tried[1], -4.0), 3.0), min(max(tried[3], prior[3] - 2.5), prior[3] + 2.5)
        tried_cost = _cost(read, tried, prior, power)
        gain = cost - tried_cost
        if gain > 0:
            theta, cost, damping = tried, tried_cost, max(damping / 5, 1e-9)
            if gain < LEAST_GAIN:
                break
        else:
            damping *= 4
        if damping > 1e12:
            break
    return theta


def solve(matrix: Sequence[Sequence[float]], right: Sequence[float]) -> list[float]:
    """Return the solution of linear equations with a positive definite matrix, by Cholesky's method."""
    size, lower = len(right), cholesky(matrix)
    half, found = [0.0] * size, [0.0] * size
    for i in range(size):
        half[i] = (right[i] - sum(lower[i][k] * half[k] for k in range(i))) / lower[i][i]
    for i in reversed(range(size)):
        found[i] = (half[i] - sum(lower[k][i] * found[k] for k in range(i + 1, size))) / lower[i][i]
    return found


def cholesky(matrix: Sequence[Sequence[float]]) -> list[list[float]]:
    """Return the lower triangle whose square is a positive definite matrix."""
    size = len(matrix)
    lower = [[0.0] * size for _ in range(size)]
    for i in range(size):
        for j in range(i + 1):
            rest = matrix[i][j] - sum(lower[i][k] * lower[j][k] for k in range(j))
            lower[i][j] = math.sqrt(rest) if i == j else rest / lower[j][j]
    return lower
