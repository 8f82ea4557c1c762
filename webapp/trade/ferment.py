"""A ferment under way: when it will end, and what its fall, two instruments or an old law say of its alcohol.

``static/trade/ferment.js`` is the twin of `forecast_end`: the same steps in the same order.
"""

import math
from collections.abc import Sequence
from typing import NotRequired, TypedDict

from webapp.trade.errors import OutOfDomain
from webapp.trade.fermentfit import END_WITHIN, POWERS, SHAPES, Fitted, bound, curve, fit_shape, solve, stretch
from webapp.trade.numeric import check_range

Z_80 = 1.2815515655446004  # normal quantile of an interval that holds four times out of five
FIT_SHARE = 0.8  # of the fit's own spread: readings do not all err by their age at once; found on made ferments [1]
PACE_SD = 0.15  # how far the pace may yet change, a share of the time that is left [1]
SPARE_DAY = 0.3  # readings are made once a day at best [days]
SLOPE = math.log(9.0) / Z_80  # of a logistic curve that has as much below as a normal one at that quantile [1]
WIDEST = 1.8  # logarithm of how many times longer than thought a ferment may take [1]
READINGS_LEAST = 4
FALL_LEAST = 0.004  # less has not begun [SG]
REST_H, REST_SG = 40.0, 0.0005  # three gravities are equal within this, over this time
STUCK_H, STUCK_SG, STUCK_ABOVE = 45.0, 0.001, 0.006
USUALLY = (0.3, 0.3, 0.3, 0.1)  # of SHAPES in a house without a past: few end sharply; common practice, no source [1]
USUALLY_COUNT = 2.0  # so many ferments of its own count as much [1]
HALVINGS = 60
GRAVITY, DAYS = (0.98, 1.17874), (-1.0, 400.0)
PROOF_SPIRIT_PCT = 57.1  # strength of British proof spirit [% vol]; from memory


class EndForecast(TypedDict):
    """When a ferment will have ended: `running`, `ended`, `stuck` or `too_little`, and what goes with it."""

    state: str
    why: NotRequired[str]
    days: NotRequired[dict[str, float]]
    end_gravity: NotRequired[float]
    rate_day: NotRequired[float]
    curve: NotRequired[list[list[float]]]


def forecast_end(
    days: Sequence[float], gravities: Sequence[float], end_gravity: float, *, is_grain: bool = False,
    past: Sequence[float] | None = None,
) -> EndForecast:
    """Return when a ferment will have ended, with an interval that is meant to hold four times out of five.

    Curves of four shapes (fermentfit.py), from one whose fall drags to one that ends sharply, are fitted to the
    readings and weighed by how well they fit and by how the house's past ferments ended; the interval is that of their
    mixture. Old readings count less, a slip hardly. Where the fruit usually ends and how fast ferments go is told
    beforehand, and given up as the readings say otherwise. A ferment that stuck and moved again begins anew.

    Parameters
    ----------
    days : sequence of float
        When each gravity was read, from the first. [days], rising, 0 to 400
    gravities : sequence of float
        Gravity of strained juice by hydrometer; the first is the original gravity. [SG], 0.98 to 1.17874
    end_gravity : float
        Gravity at which this material usually ends. [SG], 0.98 to 1.17874
    is_grain : bool
        Grain ferments faster than fruit. [yes or no], either
    past : sequence of float, optional
        Weights of `SHAPES` by the house's past ferments (`weigh_past`); the usual ones without any. [1], 0 to 1

    Returns
    -------
    forecast : dict
        JSON. `state`: "running" with `days` {at, low, high} [days from the first], `end_gravity` [SG], `rate_day`
        [1/day] and `curve` of [day, SG], those of the likeliest shape; "ended" with `days` {at}; "stuck"; or
        "too_little" with `why`.

    Raises
    ------
    OutOfDomain
        Outside these ranges, or where times do not rise.

    Source
    ------
    Shapes and fit: fermentfit.py. Rates, spreads and usual ends: common practice, no source.
    """
    days, gravities = [float(day) for day in days], [float(gravity) for gravity in gravities]
    _check(days, gravities, end_gravity)
    rest = _at_rest(days, gravities)
    if rest is not None and gravities[-1] <= end_gravity + STUCK_ABOVE + 1e-9:
        return {"state": "ended", "days": {"at": rest}}
    if _is_stuck(days, gravities, end_gravity):
        return {"state": "stuck"}
    begun = _begun_anew(days, gravities, end_gravity)
    zero = days[begun] if days else 0.0
    days, gravities = [day - zero for day in days[begun:]], gravities[begun:]
    if len(days) < READINGS_LEAST:
        return {"state": "too_little", "why": "few_readings"}
    if gravities[0] - gravities[-1] < FALL_LEAST - 1e-9:
        return {"state": "too_little", "why": "not_begun"}
    fits = _fit_all(days, gravities, end_gravity, is_grain=is_grain)
    weights = _weigh(fits, USUALLY if past is None else past)
    return _answer(zero, days[-1], gravities[0], fits, weights)


def tell_shape(days: Sequence[float], gravities: Sequence[float], *, is_grain: bool = False) -> list[float] | None:
    """Return how much speaks for each of `SHAPES` in a ferment that has ended, or None where it has too few readings.

    Parameters
    ----------
    days : sequence of float
        When each gravity was read, from the first. [days], rising, 0 to 400
    gravities : sequence of float
        Gravity of strained juice by hydrometer, to its last. [SG], 0.98 to 1.17874
    is_grain : bool
        Grain ferments faster than fruit. [yes or no], either

    Returns
    -------
    shares : list of float
        [1], together 1

    Raises
    ------
    OutOfDomain
        Outside these ranges, or where times do not rise.

    Source
    ------
    fermentfit.py.
    """
    days, gravities = [float(day) for day in days], [float(gravity) for gravity in gravities]
    if len(days) < READINGS_LEAST or gravities[0] - gravities[-1] < FALL_LEAST - 1e-9:
        return None
    _check(days, gravities, gravities[-1])
    fits = _fit_all([day - days[0] for day in days], gravities, gravities[-1], is_grain=is_grain, is_over=True)
    return _weigh(fits, [1.0] * len(SHAPES))


def weigh_past(told: Sequence[Sequence[float]]) -> list[float]:
    """Return the weights of `SHAPES` by the shapes that past ferments had; the usual ones where there are none.

    Parameters
    ----------
    told : sequence of list of float
        What `tell_shape` said of each. [1], 0 to 1, each together 1

    Returns
    -------
    weights : list of float
        [1], together 1

    Raises
    ------
    Nothing.

    Source
    ------
    The mean of Dirichlet's distribution after counts (Gelman and others, Bayesian Data Analysis, ch. 3; from memory).
    """
    count = USUALLY_COUNT + len(told)
    return [(usual * USUALLY_COUNT + sum(one[i] for one in told)) / count for i, usual in enumerate(USUALLY)]


def _fit_all(
    days: list[float], gravities: list[float], end_gravity: float, *, is_grain: bool, is_over: bool = False
) -> list[Fitted]:
    kind = "grain" if is_grain else "fruit"
    return [fit_shape(days, gravities, end_gravity, kind, power, is_over=is_over) for power in POWERS.values()]


def _weigh(fits: Sequence[Fitted], past: Sequence[float]) -> list[float]:
    """Return the weights of shapes, together 1, by their fits and the past."""
    most = max(one.evidence for one in fits)
    weights = [before * math.exp(one.evidence - most) for one, before in zip(fits, past, strict=True)]
    return [weight / sum(weights) for weight in weights]


def _check(days: Sequence[float], gravities: Sequence[float], end_gravity: float) -> None:
    if len(days) != len(gravities):
        raise OutOfDomain("readings", len(days), len(gravities), len(gravities), "uneven_readings")
    for gravity in (*gravities, end_gravity):
        check_range("gravity", gravity, *GRAVITY, "SG", "check_scale")
    for i, day in enumerate(days):
        low = days[i - 1] if i else DAYS[0]
        check_range("time", day, low, DAYS[1], "days", "order_readings")


def _at_rest(days: Sequence[float], gravities: Sequence[float]) -> float | None:
    """Return the day of the first of three equal gravities, or None."""
    if len(days) < 3 or days[-1] - days[-3] < REST_H / 24 - 1e-9:
        return None
    last = gravities[-3:]
    return days[-3] if max(last) - min(last) < REST_SG - 1e-9 else None


def _is_stuck(days: Sequence[float], gravities: Sequence[float], end_gravity: float) -> bool:
    """Hardly a fall in two days, and well above where it should end."""
    older = [i for i, day in enumerate(days) if days[-1] - day >= STUCK_H / 24 - 1e-9]
    if not older or gravities[-1] <= end_gravity + STUCK_ABOVE + 1e-9 or gravities[0] - gravities[-1] < FALL_LEAST:
        return False
    window = gravities[older[-1] :]
    return max(window) - min(window) < STUCK_SG - 1e-9


def _begun_anew(days: Sequence[float], gravities: Sequence[float], end_gravity: float) -> int:
    """Return where the fall began: at the first gravity, or where a stuck ferment moved again."""
    for i in range(len(days) - 1, 0, -1):
        if _is_stuck(days[: i + 1], gravities[: i + 1], end_gravity):
            return i
    return 0


def _answer(
    zero: float, now: float, og: float, fits: Sequence[Fitted], weights: Sequence[float]
) -> EndForecast:
    ends = [(weight, *end) for one, weight in zip(fits, weights, strict=True) if (end := _end_of(one, now, og))]
    if not ends:
        return {"state": "too_little", "why": "not_begun"}
    low, at, high = (now + math.exp(_quantile(ends, part)) - 1 for part in (0.1, 0.5, 0.9))
    until = max(high, now + 1)
    likeliest = fits[weights.index(max(weights))]
    drawn = [[zero + until * i / 40, curve(until * i / 40, og, likeliest.theta, likeliest.power)[0]] for i in range(41)]
    told = {"at": zero + max(at, now), "low": zero + max(low, now), "high": zero + max(high, now)}
    return {
        "state": "running", "days": told, "end_gravity": likeliest.theta[0], "rate_day": math.exp(likeliest.theta[1]),
        "curve": drawn,
    }


def _end_of(fitted: Fitted, now: float, og: float) -> tuple[float, float] | None:
    """Return the logarithm of the days that are left (and one), and its spread; None where there is no fall to end."""
    end, middle = fitted.theta[0], fitted.theta[2]
    rate, steepness = math.exp(fitted.theta[1]), math.exp(fitted.theta[3])
    ratio = (og - end) / END_WITHIN
    if ratio <= 1:
        return None
    work, by_ratio = stretch(ratio, fitted.power)
    start, root = math.exp(bound(-rate * middle)), math.exp(bound(work / steepness))
    amount = (1 + start) * root
    at = middle + math.log(amount - 1) / rate
    by_amount = 1 / (rate * (amount - 1))
    slopes = [
        -by_amount * amount * by_ratio / (steepness * (og - end)),
        -math.log(amount - 1) / rate - by_amount * root * start * middle * rate,
        1 - by_amount * root * start * rate,
        -by_amount * amount * work / steepness,
    ]
    solved = solve(fitted.precision, slopes)
    variance = sum(slopes[i] * solved[i] for i in range(4))
    left = max(at - now, 0.0)
    spread = math.sqrt(FIT_SHARE**2 * variance + (PACE_SD * left) ** 2 + SPARE_DAY**2)
    return math.log(left + 1), min(spread / (left + 1), WIDEST / Z_80)  # it may drag on, never end before


def _quantile(ends: Sequence[tuple[float, float, float]], part: float) -> float:
    """Return below where a part of a mixture lies: of logistic curves that hold four fifths as normal ones do."""
    whole = sum(weight for weight, _, _ in ends)
    low, high = -10.0, 20.0
    for _ in range(HALVINGS):
        middle = (low + high) / 2
        below = sum(weight / (1 + math.exp(bound((at - middle) / spread * SLOPE))) for weight, at, spread in ends)
        low, high = (middle, high) if below < part * whole else (low, middle)
    return (low + high) / 2


def strength_by_two_instruments(refractometer_brix: float, hydrometer_gravity: float) -> float:
    """Return the alcohol of a ferment from a refractometer and a hydrometer read in the same juice.

    A refractometer alone cannot be believed once there is alcohol: alcohol bends light too. With both instruments the
    two unknowns, sugar and alcohol, part. Fitted to fortified wines, not to mash: a hint, never the record.

    Parameters
    ----------
    refractometer_brix : float
        What the refractometer shows. [degBx by refractometer], 0 to 40
    hydrometer_gravity : float
        Gravity of the same juice. [SG 20/20 degC], 1.0 to 1.17874

    Returns
    -------
    strength_pct : float
        [% vol], expected error 1 and more outside fortified wine; never below 0

    Raises
    ------
    OutOfDomain
        Outside these ranges, or where the formula gives more than 25 % vol.

    Source
    ------
    F. Rogerson, C. Symington, Am. J. Enol. Vitic. 57 (2006) 486, doi 10.5344/ajev.2006.57.4.486 (abstract read):
    % vol = 1.646 Bx - 2.703 degBaume - 1.794. degBaume = 145 - 145/gravity (common practice, no source).
    """
    check_range("refractometer", refractometer_brix, 0, 40, "Bx", "check_instrument")
    check_range("gravity", hydrometer_gravity, 1.0, GRAVITY[1], "SG", "no_baume")
    strength = 1.646 * refractometer_brix - 2.703 * (145 - 145 / hydrometer_gravity) - 1.794
    check_range("alcohol_by_both", strength, -25, 25, "pct_vol", "read_both_again")
    return max(strength, 0.0)


def strength_by_attenuation_1880(original_gravity: float, gravity: float) -> float:
    """Return the strength that an old law presumed of a wash from the gravity it had lost.

    A gallon of proof spirit from 100 gallons of wash for each five degrees (thousandths) of gravity lost: about 0.87 of
    the chemical figure. A count to set beside others, no record of today.

    Parameters
    ----------
    original_gravity : float
        Gravity when set. [SG], 0.98 to 1.17874
    gravity : float
        Gravity now. [SG], 0.98 to original_gravity

    Returns
    -------
    strength_pct : float
        [% vol]

    Raises
    ------
    OutOfDomain
        Outside these ranges.

    Source
    ------
    Spirits Act 1880 (43 & 44 Vict. c. 24), s. 46; proof spirit as 57.1 % vol, from memory.
    """
    check_range("original_gravity", original_gravity, *GRAVITY, "SG", "check_scale")
    check_range("gravity", gravity, GRAVITY[0], original_gravity, "SG", "cannot_rise")
    return (original_gravity - gravity) * 1000 / 5 * PROOF_SPIRIT_PCT / 100
