"""Uncertainty: what the limits of error of instruments leave open of a figure (JCGM 100:2008, law of propagation).

A reading has two errors: that of its instrument, which every reading with the same instrument shares, and its own
(where the eye or the display stops). ``static/trade/uncertainty.js`` is its twin.
"""

from collections.abc import Callable, Iterable, Mapping, Sequence
from math import sqrt
from typing import NamedTuple

from webapp.trade.datafiles import load_data

COVERAGE = 2.0  # k: about 95 of 100
STEPS_1_2_5 = (1.0, 2.0, 5.0)


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


def glass_limit_pct(accuracy: str, interval_pct: float | None) -> float:
    """Return the limit of error of a glass alcoholometer in % vol.

    Parameters
    ----------
    accuracy : str
        Class, I, II or III; III where it is none of them. [text], any
    interval_pct : float or None
        Interval of its scale; 0.1 where it is not known. [% vol], above 0

    Returns
    -------
    limit : float
        [% vol]; of a glass whose interval is not that of a class, one interval (the house's own rule, no source)

    Source
    ------
    Directive 76/765/EEC as amended by 82/624/EEC, as in Czech decree 31/2002, annex, 4.5 to 9.
    """
    facts = load_data("instruments")["alcoholometer"]
    if interval_pct is not None and interval_pct != facts["interval_pct"]:
        return interval_pct
    classes = facts["limit_intervals"]
    return classes.get(accuracy, classes[facts["usual"]]) * facts["interval_pct"]


def proof_limit(interval_proof: float | None) -> float:
    """Return the limit of error of a proof hydrometer: one subdivision.

    Parameters
    ----------
    interval_proof : float or None
        Subdivision; 0.2 where it is not known. [proof], above 0

    Returns
    -------
    limit : float
        [proof]

    Source
    ------
    27 CFR 19.188 (its old number 19.277 read): in error by more than one subdivision, it is not used. Subdivisions of
    0.2 proof: 27 CFR 30.22, from memory.
    """
    return load_data("instruments")["proof_hydrometer"]["interval_proof"] if interval_proof is None else interval_proof


def thermometer_limit_c(interval_c: float | None) -> float:
    """Return the limit of error of a thermometer read beside an alcoholometer.

    Parameters
    ----------
    interval_c : float or None
        Interval of its scale; 0.5 where it is not known. [degC], above 0

    Returns
    -------
    limit : float
        [degC]; of a coarser scale one interval (the house's own rule, no source)

    Source
    ------
    Czech decree 31/2002, annex, 9.1.4 and 9.2 (Directive 76/765/EEC).
    """
    facts = load_data("instruments")["thermometer"]
    interval = facts["interval_c"] if interval_c is None else interval_c
    known = zip(facts["intervals_c"], facts["limits_c"], strict=True)
    return next((limit for step, limit in known if interval <= step), interval)


def scale_interval_kg(load_kg: float) -> float:
    """Return the verification interval of a scale that was not named, for its load.

    Parameters
    ----------
    load_kg : float
        What it showed. [kg], 0 or above

    Returns
    -------
    interval : float
        The finest of 1, 2 or 5 times a power of ten with which 3000 intervals reach the load; 0.1 at least. [kg]

    Source
    ------
    Class III has 3000 intervals as a rule (common practice, no source); casks to 0.1 kg: Czech decree 150/2008, 14 (4).
    """
    facts = load_data("instruments")["scale"]
    interval, decade, n = float(facts["least_interval_kg"]), float(facts["least_interval_kg"]), 0
    while interval * facts["most_intervals"] < load_kg and decade < 1e6:
        n += 1
        if n == len(STEPS_1_2_5):
            n, decade = 0, decade * 10.0
        interval = STEPS_1_2_5[n] * decade
    return interval


def scale_limit_kg(load_kg: float, interval_kg: float, accuracy: str) -> float:
    """Return the limit of error of a scale at a load, as at its verification.

    Parameters
    ----------
    load_kg : float
        What it showed. [kg], 0 or above
    interval_kg : float
        Verification interval e. [kg], above 0
    accuracy : str
        Class, I, II, III or IIII; III where it is none of them. [text], any

    Returns
    -------
    limit : float
        0.5, 1 or 1.5 e. [kg]

    Source
    ------
    Directive 2014/31/EU, annex I (UK S.I. 1995/1907, schedule 2, table 3): the limits of OIML R 76.
    """
    facts = load_data("instruments")["scale"]
    loads = facts["loads_intervals"].get(accuracy, facts["loads_intervals"][facts["usual"]])
    many = load_kg / interval_kg
    n = sum(many > most + 1e-9 for most in loads)
    return facts["limits_intervals"][n] * interval_kg


def dip_limits_l(volume_l: float, capacity_l: float | None) -> tuple[float, float]:
    """Return the limits of error of a volume that was dipped: of the tank's table, and of the surface as it is read.

    Parameters
    ----------
    volume_l : float
        As dipped. [L], 0 or above
    capacity_l : float or None
        What the vessel holds; the volume itself where that is not known or less. [L], 0 or above

    Returns
    -------
    limits : tuple
        0.3 % of the volume, and 2 mm of a vessel as wide as a cube of its capacity. [L], [L]

    Source
    ------
    Tables of storage tanks for alcohol, 0.3 %: French order of 18 December 1996, article 18. Surface and cube: the
    house's own rule, no source.
    """
    facts = load_data("instruments")["tank"]
    holds = max(volume_l, capacity_l or 0.0)
    side_m = _cube_root(holds / 1000.0)
    return facts["table_share"] * volume_l, side_m * side_m * facts["surface_m"] * 1000.0


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


def _cube_root(value: float) -> float:
    """Newton's steps: powers are not the same to the last bit everywhere."""
    if value <= 0:
        return 0.0
    root = max(value, 1.0)
    for _ in range(200):
        better = root - (root * root * root - value) / (3.0 * root * root)
        if not better < root:
            return root
        root = better
    return root
