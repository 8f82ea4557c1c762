"""Uncertainty: what the limits of error of instruments leave open of a figure (JCGM 100:2008, law of propagation).

A reading has two errors: that of its instrument, which every reading with the same instrument shares, and its own
(where the eye or the display stops). ``static/trade/uncertainty.js`` is its twin.
"""

from collections.abc import Callable, Iterable, Mapping, Sequence
from math import sqrt
from typing import NamedTuple

COVERAGE = 2.0  # k: about 95 of 100


class Uncertain(NamedTuple):
    """A figure with its uncertainty.

    shared: by the name of an error, how far one standard uncertainty of it moves the figure, signed [the figure's
    unit]; own: the variance of what no other figure shares [its square].
    """

    value: float
    shared: Mapping[str, float]
    own: float

    @property
    def standard(self) -> float:
        """Return the combined standard uncertainty. [the figure's unit]"""
        square = self.own
        for part in self.shared.values():
            square += part * part
        return sqrt(square)


class Input(NamedTuple):
    """A reading as the law of propagation takes it: its value, the name of the error that it shares, both standard
    uncertainties, and how far it is moved to find how a figure follows it; 0: by its whole uncertainty.
    """

    name: str
    value: float
    error: str
    shared: float
    own: float
    step: float = 0.0


def standard_from_limit(limit: float) -> float:
    """Return the standard uncertainty of an error of which only its limit is known.

    Parameters
    ----------
    limit : float
        Largest error either way. [any unit], 0 or above

    Returns
    -------
    standard : float
        Of a rectangular distribution. [the same unit]

    Source
    ------
    JCGM 100:2008, 4.3.7: limit / sqrt(3).
    """
    return limit / sqrt(3.0)


def standard_from_interval(interval: float) -> float:
    """Return the standard uncertainty of a figure read to an interval.

    Parameters
    ----------
    interval : float
        Step of the scale or of the display. [any unit], 0 or above

    Returns
    -------
    standard : float
        Of a rectangular distribution of half a step either way. [the same unit]

    Source
    ------
    JCGM 100:2008, F.2.2.1: interval / sqrt(12).
    """
    return interval / sqrt(12.0)


def propagate(
    model: Callable[[Mapping[str, float]], Mapping[str, float]], inputs: Sequence[Input]
) -> dict[str, Uncertain]:
    """Return each figure of a model with its uncertainty.

    Parameters
    ----------
    model : function
        From the values of the inputs by name to figures by name; what has no answer is left out. [any], any
    inputs : sequence of Input
        Readings, of which those with an equal error share it. [as each says], any number

    Returns
    -------
    figures : dict
        Name of the figure to Uncertain. [the figure's unit]

    Notes
    -----
    How a figure follows an input is found by moving the input up and down by its standard uncertainty, as 5.1.3 note 2
    has it; where one side has no answer, by the other alone. Second-order terms are left out.

    Source
    ------
    JCGM 100:2008, 5.1.2, 5.1.3 note 2, 5.2.2.
    """
    at = {one.name: one.value for one in inputs}
    middle = model(at)
    shared: dict[str, dict[str, float]] = {name: {} for name in middle}
    own = dict.fromkeys(middle, 0.0)
    for one in inputs:
        step = one.step or sqrt(one.shared * one.shared + one.own * one.own)
        if not step > 0:
            continue
        above, below = model({**at, one.name: one.value + step}), model({**at, one.name: one.value - step})
        for name, value in middle.items():
            slope = _slope(below.get(name), value, above.get(name), step)
            if one.error and one.shared and slope:
                shared[name][one.error] = shared[name].get(one.error, 0.0) + slope * one.shared
            alone = slope * one.own if one.error else slope * sqrt(one.shared * one.shared + one.own * one.own)
            own[name] += alone * alone
    return {name: Uncertain(value, shared[name], own[name]) for name, value in middle.items()}


def combine(terms: Iterable[tuple[float, Uncertain]]) -> Uncertain:
    """Return a weighted sum of figures: shared errors add with their signs, all else by squares.

    Parameters
    ----------
    terms : iterable of (weight, Uncertain)
        1 adds a figure, -1 takes it away. [1], any; [one unit], any

    Returns
    -------
    figure : Uncertain
        [the same unit]

    Source
    ------
    JCGM 100:2008, 5.2.2, with correlation 1 between readings of one instrument.
    """
    value, own = 0.0, 0.0
    shared: dict[str, float] = {}
    for weight, term in terms:
        value += weight * term.value
        own += weight * weight * term.own
        for error, part in term.shared.items():
            shared[error] = shared.get(error, 0.0) + weight * part
    return Uncertain(value, shared, own)


def expanded(standard: float, decimals: int) -> float:
    """Return the expanded uncertainty as it is shown: k = 2, rounded up to the decimals of its figure.

    Parameters
    ----------
    standard : float
        Combined standard uncertainty. [any unit], 0 to 1e12
    decimals : int
        Of the figure that it stands beside. [1], 0 to 6

    Returns
    -------
    expanded : float
        [the same unit]; never less than one of the last place, unless the figure is exact

    Source
    ------
    JCGM 100:2008, 6.2 (coverage factor 2), 7.2.6 (rounded up rather than to the nearest digit).
    """
    scale = 10.0**decimals
    return (COVERAGE * standard * scale + 1.0 - 1e-6) // 1.0 / scale


def _slope(below: float | None, value: float, above: float | None, step: float) -> float:
    if above is None:
        return 0.0 if below is None else (value - below) / step
    return (above - value) / step if below is None else (above - below) / (2.0 * step)
