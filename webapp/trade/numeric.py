"""Small numerical pieces under the sums. ``static/trade/numeric.js`` is the same, step for step.

Every formula uses only + - * / in a fixed order, so the phone and the book give the same bits and refuse
the same inputs. The scalar paths are plain Python: numpy costs about a microsecond an operation on one
number, and the book folds entries one at a time.
"""

from bisect import bisect_right
from collections.abc import Sequence
from math import isfinite
from typing import TypeAlias, TypeVar, overload

import numpy as np
import numpy.typing as npt

from webapp.trade.errors import OUTSIDE, OutOfDomain

FloatArray = npt.NDArray[np.float64]
Number: TypeAlias = float | FloatArray
# One float, or an array of float; the two may meet in one sum, as numpy broadcasts. Of floats alone a sum is a float.
N = TypeVar("N", float, Number)

MAX_STEPS = 80
# Newton's steps square their error: after one this small nothing is left but rounding.
LAST_STEP = 1e-10
# A target this share of the span beyond the ends is taken as the end: it is rounding, not a reading.
SLACK = 1e-10


@overload
def as_number(value: float) -> float: ...
@overload
def as_number(value: Number) -> Number: ...
def as_number(value: Number) -> Number:
    """Return a float for one number, an array of float for several."""
    if isinstance(value, (float, int)):
        return float(value)
    array = np.asarray(value, dtype=float)
    return float(array) if array.ndim == 0 else array


def check_range(what: str, value: Number, low: float, high: float, unit: str, advice: str) -> None:
    """Raise OutOfDomain unless every value is within low and high (both allowed; NaN is not).

    What is measured and the advice are given by their codes; the unit is a key of data/units.json or a code too.
    """
    if isinstance(value, float):
        if low <= value <= high:
            return
        first = value
    else:
        within = (value >= low) & (value <= high)
        if within.all():
            return
        first = float(value[~within][0])
    raise OutOfDomain(what, first, low, high, OUTSIDE, unit=unit, advice=advice)


def polynomial(coefficients: Sequence[N], x: N) -> N:
    """Return c0 + c1 x + c2 x^2 + ... by Horner's rule."""
    total = coefficients[-1]
    for coefficient in reversed(coefficients[:-1]):
        total = total * x + coefficient
    return total


@overload
def invert(coefficients: Sequence[float], target: float, low: float, high: float) -> float: ...
@overload
def invert(coefficients: Sequence[Number], target: Number, low: float, high: float) -> Number: ...
def invert(coefficients: Sequence[Number], target: Number, low: float, high: float) -> Number:
    """Return x in [low, high] where a monotonic polynomial takes the target; NaN where it never does.

    Newton's steps, kept inside a shrinking bracket.
    """
    plain = [c for c in coefficients if isinstance(c, float)]
    if isinstance(target, float) and len(plain) == len(coefficients):
        return _invert_one(plain, target, low, high)
    shape = np.broadcast_shapes(np.shape(target), *(np.shape(c) for c in coefficients))
    rows = [np.broadcast_to(np.asarray(c, dtype=float), shape) for c in coefficients]
    return _invert_many(rows, np.broadcast_to(target, shape), low, high)


def _invert_one(coefficients: Sequence[float], target: float, low: float, high: float) -> float:
    at_low, at_high = polynomial(coefficients, low), polynomial(coefficients, high)
    rising = at_high > at_low
    slack = SLACK * abs(at_high - at_low)
    if not min(at_low, at_high) - slack <= target <= max(at_low, at_high) + slack:
        return float("nan")
    target = min(max(target, min(at_low, at_high)), max(at_low, at_high))
    if target == at_high:
        return high
    x = low + (high - low) * ((target - at_low) / (at_high - at_low))
    top, rest = coefficients[-1], coefficients[-2::-1]
    for _ in range(MAX_STEPS):
        value, slope = top, 0.0
        for coefficient in rest:
            slope = slope * x + value
            value = value * x + coefficient
        miss = value - target
        if (miss < 0) == rising:
            low = x
        else:
            high = x
        step = miss / slope if slope != 0 else high - low + 1
        if abs(step) <= LAST_STEP:
            return x - step if low <= x - step <= high else x
        x = x - step if low <= x - step <= high else (low + high) / 2
    return x


def _invert_many(coefficients: Sequence[FloatArray], target: FloatArray, low: float, high: float) -> FloatArray:
    wide: Sequence[Number] = coefficients
    at_low, at_high = np.asarray(polynomial(wide, low)), np.asarray(polynomial(wide, high))
    least, most = np.minimum(at_low, at_high), np.maximum(at_low, at_high)
    rising = at_high > at_low
    slack = SLACK * np.abs(at_high - at_low)
    reached = (target >= least - slack) & (target <= most + slack)
    target = np.minimum(np.maximum(target, least), most)
    below, above = np.full(target.shape, low), np.full(target.shape, high)
    x = low + (high - low) * ((target - at_low) / (at_high - at_low))
    done = ~reached | (target == at_high)
    x = np.where(target == at_high, high, x)
    for _ in range(MAX_STEPS):
        if done.all():
            break
        value, slope = coefficients[-1], np.zeros(target.shape)
        for coefficient in coefficients[-2::-1]:
            slope = slope * x + value
            value = value * x + coefficient
        miss = value - target
        under = (miss < 0) == rising
        below, above = np.where(under, x, below), np.where(under, above, x)
        with np.errstate(divide="ignore", invalid="ignore"):
            step = miss / slope
        settled = np.abs(step) <= LAST_STEP
        after = x - step
        inside = (after >= below) & (after <= above)
        after = np.where(inside, after, np.where(settled, x, (below + above) / 2))
        x = np.where(done, x, after)
        done = done | settled
    return np.where(reached, x, np.nan)


def interpolate(x: N, xs: Sequence[float], ys: Sequence[float]) -> N:
    """Return y at x on the straight lines between points; beyond the ends, the end."""
    if not isinstance(x, float):
        return np.interp(x, xs, ys)
    if x <= xs[0]:
        return ys[0]
    if x >= xs[-1]:
        return ys[-1]
    i = bisect_right(xs, x) - 1
    return (ys[i + 1] - ys[i]) / (xs[i + 1] - xs[i]) * (x - xs[i]) + ys[i]


def round_half_up(value: N, decimals: int) -> N:
    """Return value rounded so that a five and over goes up, away from zero (27 CFR 30.23, 30.64).

    A billionth of the last place is added first: 1185.05 is a little less in binary than on paper, and the
    rule is about paper.
    """
    scale = 10.0**decimals
    size: Number
    sign: Number
    if isinstance(value, (float, int)):
        size, sign = abs(value), -1.0 if value < 0 else 1.0
    else:
        size, sign = np.abs(value), np.where(value < 0, -1.0, 1.0)
    return (size * scale + 0.5 + 1e-9) // 1.0 / scale * sign + 0.0


def fixed(value: float, decimals: int) -> str:
    """Return a figure for a sentence, rounded half up; the phone prints the very same."""
    return f"{round_half_up(float(value), decimals):.{decimals}f}" if isfinite(value) else "no number"


def brief(value: float) -> str:
    """Return a figure for a sentence with at most five decimals, and none that are nought."""
    text = fixed(value, 5)
    return text.rstrip("0").rstrip(".") if "." in text else text
