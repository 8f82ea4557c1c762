"""A ferment under way: when it will end, and what its fall, two instruments or an old law say of its alcohol.

``static/trade/ferment.js`` is the twin of `forecast_end`: the same steps in the same order.
"""

import math
from collections.abc import Sequence
from typing import NotRequired, TypedDict

from webapp.trade.errors import OutOfDomain
from webapp.trade.numeric import check_range

READING_SD = 0.0007  # what a hydrometer in strained juice wanders by [SG]
AGE_SD_DAY = 0.0005  # what a reading counts for less, for each day of its age: a mash warms and cools [SG a day]
TAIL = 4.0  # degrees of freedom of Student's t: one slip bends the curve little
END_WITHIN = 0.001  # as near to its last gravity as a hydrometer tells [SG]
END_SD = 0.0025  # of the gravity at which a fruit usually ends [SG]
RATE_DAY = {"fruit": 0.6, "grain": 2.0}  # usual rate of a ferment [1/day]; fruit 10 to 30 days, rye 3 to 5
RATE_SD = 0.6  # of its logarithm [1]
MIDDLE_DAY = {"fruit": 5.0, "grain": 1.2}  # day on which half of the sugar has gone [days]
MIDDLE_SD_DAY = 6.0
SHAPE_SD = 0.6  # of the logarithm of the shape: above 1 a fall ends briskly, below 1 it drags on [1]
SPREADS = (END_SD, RATE_SD, MIDDLE_SD_DAY, SHAPE_SD)
Z_80 = 1.2815515655446004  # normal quantile of an interval that holds four times out of five
PACE_SD = 0.2  # how far the pace may yet change, a share of the time that is left [1]
SPARE_DAY = 0.35  # readings are made once a day at best [days]
WIDEST = 1.8  # logarithm of how many times longer than thought a ferment may take [1]
READINGS_LEAST = 4
FALL_LEAST = 0.004  # less has not begun [SG]
REST_H, REST_SG = 40.0, 0.0005  # three gravities are equal within this, over this time
STUCK_H, STUCK_SG, STUCK_ABOVE = 45.0, 0.001, 0.006
STEPS = 80
LEAST_GAIN = 1e-12  # of the cost; below it nothing is left but rounding
STARTS = (0.2, 0.45, 1.0, 2.2)  # rates that the search begins from [1/day]
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
    days: Sequence[float], gravities: Sequence[float], end_gravity: float, *, is_grain: bool = False
) -> EndForecast:
    """Return when a ferment will have ended, with an interval that is meant to hold four times out of five.

    A curve that falls slowly, fast and slowly again through the first gravity is fitted to the readings: its rate, its
    middle, its end, and how briskly it ends. Old readings count less, a slip hardly. Where the fruit usually ends and
    how fast ferments go is told beforehand, and given up as the readings say otherwise. A ferment that stuck and moved
    again begins anew.

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

    Returns
    -------
    forecast : dict
        JSON. `state`: "running" with `days` {at, low, high} [days from the first], `end_gravity` [SG], `rate_day`
        [1/day] and `curve` of [day, SG]; "ended" with `days` {at}; "stuck"; or "too_little" with `why`.

    Raises
    ------
    OutOfDomain
        Outside these ranges, or where times do not rise.

    Source
    ------
    The generalised logistic curve of F. J. Richards, J. Exp. Bot. 10 (1959) 290; robust weights of Student's t after
    Lange, Little, Taylor, J. Am. Stat. Assoc. 84 (1989) 881 (both from memory). Rates, spreads and usual ends: common
    practice, no source.
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
    kind = "grain" if is_grain else "fruit"
    prior = (end_gravity, math.log(RATE_DAY[kind]), MIDDLE_DAY[kind], 0.0)
    theta, precision = _fit(days, gravities, prior)
    return _answer(zero, days[-1], gravities[0], theta, precision)


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


def _curve(day: float, og: float, theta: Sequence[float]) -> tuple[float, tuple[float, float, float, float]]:
    """Return the gravity of a day and its slopes by end, log rate, middle and log shape."""
    end, rate, middle, shape = theta[0], math.exp(theta[1]), theta[2], math.exp(theta[3])
    start, now = math.exp(_bound(-rate * middle)), math.exp(_bound(rate * (day - middle)))
    base = math.log((1 + start) / (1 + now))
    share = math.exp(shape * base)
    part = (og - end) * share * shape
    by_rate = part * rate * (-middle * start / (1 + start) - (day - middle) * now / (1 + now))
    by_middle = part * rate * (-start / (1 + start) + now / (1 + now))
    return end + (og - end) * share, (1 - share, by_rate, by_middle, part * base)


def _bound(exponent: float) -> float:
    return min(max(exponent, -60.0), 60.0)


def _cost(days: list[float], gravities: list[float], theta: list[float], prior: Sequence[float]) -> float:
    total = sum(((theta[j] - prior[j]) / sd) ** 2 for j, sd in enumerate(SPREADS))
    for day, gravity in zip(days, gravities, strict=True):
        off = (gravity - _curve(day, gravities[0], theta)[0]) / _spread(days[-1] - day)
        total += (TAIL + 1) * math.log(1 + off * off / TAIL)
    return total


def _spread(age_days: float) -> float:
    return math.sqrt(READING_SD * READING_SD + AGE_SD_DAY * AGE_SD_DAY * age_days * age_days)


def _normal(
    days: list[float], gravities: list[float], theta: list[float], prior: Sequence[float]
) -> tuple[list[list[float]], list[float]]:
    """Return the weighted normal equations about theta: precision, and what pulls."""
    matrix = [[1 / SPREADS[i] ** 2 if i == j else 0.0 for j in range(4)] for i in range(4)]
    pull = [(prior[i] - theta[i]) / SPREADS[i] ** 2 for i in range(4)]
    for day, gravity in zip(days, gravities, strict=True):
        at, slopes = _curve(day, gravities[0], theta)
        sd = _spread(days[-1] - day)
        off = (gravity - at) / sd
        weight = (TAIL + 1) / (TAIL + off * off) / (sd * sd)
        for i in range(4):
            pull[i] += weight * slopes[i] * (gravity - at)
            for j in range(4):
                matrix[i][j] += weight * slopes[i] * slopes[j]
    return matrix, pull


def _fit(days: list[float], gravities: list[float], prior: Sequence[float]) -> tuple[list[float], list[list[float]]]:
    """Return the likeliest end, log rate and middle, and their precision, from several beginnings."""
    best: tuple[float, list[float]] | None = None
    for start in STARTS:
        theta = [prior[0], math.log(start), prior[2], prior[3]]
        cost, damping = _cost(days, gravities, theta, prior), 1e-2
        for _ in range(STEPS):
            matrix, pull = _normal(days, gravities, theta, prior)
            damped = [[value * (1 + damping) if i == j else value for j, value in enumerate(row)]
                      for i, row in enumerate(matrix)]
            step = _solve(damped, pull)
            tried = [theta[j] + step[j] for j in range(4)]
            tried[1], tried[3] = min(max(tried[1], -4.0), 3.0), min(max(tried[3], -2.5), 2.5)
            tried_cost = _cost(days, gravities, tried, prior)
            if tried_cost < cost:
                gain, theta, cost, damping = cost - tried_cost, tried, tried_cost, max(damping / 5, 1e-9)
                if gain < LEAST_GAIN:
                    break
            else:
                damping *= 4
            if damping > 1e12:
                break
        if best is None or cost < best[0] - 1e-9:
            best = (cost, theta)
    assert best is not None
    return best[1], _normal(days, gravities, best[1], prior)[0]


def _solve(matrix: Sequence[Sequence[float]], right: Sequence[float]) -> list[float]:
    """Return the solution of linear equations with a positive definite matrix, by Cholesky's method."""
    size = len(right)
    lower = [[0.0] * size for _ in range(size)]
    for i in range(size):
        for j in range(i + 1):
            rest = matrix[i][j] - sum(lower[i][k] * lower[j][k] for k in range(j))
            lower[i][j] = math.sqrt(rest) if i == j else rest / lower[j][j]
    half, found = [0.0] * size, [0.0] * size
    for i in range(size):
        half[i] = (right[i] - sum(lower[i][k] * half[k] for k in range(i))) / lower[i][i]
    for i in reversed(range(size)):
        found[i] = (half[i] - sum(lower[k][i] * found[k] for k in range(i + 1, size))) / lower[i][i]
    return found


def _answer(
    zero: float, now: float, og: float, theta: list[float], precision: list[list[float]]
) -> EndForecast:
    end, rate, middle, shape = theta[0], math.exp(theta[1]), theta[2], math.exp(theta[3])
    ratio = (og - end) / END_WITHIN
    if ratio <= 1:
        return {"state": "too_little", "why": "not_begun"}
    start, root = math.exp(_bound(-rate * middle)), math.exp(math.log(ratio) / shape)
    amount = (1 + start) * root
    at = middle + math.log(amount - 1) / rate
    by_amount = 1 / (rate * (amount - 1))
    slopes = [
        -by_amount * amount / (shape * (og - end)),
        -math.log(amount - 1) / rate - by_amount * root * start * middle * rate,
        1 - by_amount * root * start * rate,
        -by_amount * amount * math.log(ratio) / shape,
    ]
    solved = _solve(precision, slopes)
    spread = math.sqrt(sum(slopes[i] * solved[i] for i in range(4)))
    left = max(at - now, 0.0)
    spread = math.sqrt(spread**2 + (PACE_SD * left) ** 2 + SPARE_DAY**2)
    wide = min(Z_80 * spread / (left + 1), WIDEST)  # of the time left: it may drag on, never end before
    low, high = now + (left + 1) * math.exp(-wide) - 1, now + (left + 1) * math.exp(wide) - 1
    until = max(high, now + 1)
    curve = [[zero + until * i / 40, _curve(until * i / 40, og, theta)[0]] for i in range(41)]
    told = {"at": zero + max(at, now), "low": zero + max(low, now), "high": zero + max(high, now)}
    return {
        "state": "running", "days": told, "end_gravity": end, "rate_day": rate, "curve": curve,
    }


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
