"""Casks over years: what they lose, what casks like them lose, what they will hold, and whether they are ready.

``static/trade/maturing.js`` is the twin, for the phone in the cellar. Gauges are mappings, oldest first: `years`
(time, any zero), `lpa` (pure alcohol found), `strength_pct`, and `drawn_l` (pure alcohol drawn, less what was poured
in, since the gauge before).
"""

import math
from collections.abc import Sequence
from itertools import pairwise
from statistics import median
from typing import NotRequired, TypedDict

from webapp.trade.errors import OutOfDomain
from webapp.trade.numeric import check_range

GAUGE_SD_PCT = 0.4  # what scale and glass alone may pretend of the pure alcohol in a cask [%]
STRENGTH_SD_PCT = 0.12  # and of its strength [% vol]
YEAR_SD_PCT = 0.5  # by how much one year differs from the next, of the loss [% a year]
DRIFT_YEAR_SD = 0.15  # and of the drift in strength [% vol a year]
DRIFT_SD = 0.5  # between casks that nobody has compared [% vol a year]
RATE_YEARS = 60 / 365.25  # two gauges nearer to each other make no rate [years]
BORROW = 4.0  # a group of so many casks counts as much as the wider group it belongs to
SPREAD_LEAST = 0.5  # [% a year]
MAD_TO_SPREAD = 1.4826  # of a normal spread, from the median of the differences to the median
SMALL_L = 100.0
# Where the house has no cask to compare: middle and spread of the loss [% a year]; common practice, no source.
PLAIN = {"small": (6.5, 2.0), "large": (3.0, 1.2)}
HIGH_SPREADS = 2.5
Z_80 = 1.2815515655446004
NEW_WOOD_YEARS = 1.2  # new wood drinks in its first year: such a year tells little of the next ones
YEARS = (-3000.0, 3000.0)  # a date may be given as a year


class Gauge(TypedDict):
    """A gauge of a cask, as the head of this module says. [years, L, % vol, L]"""

    years: float
    lpa: float
    strength_pct: float
    drawn_l: NotRequired[float]


class Rate(TypedDict):
    """A loss between two gauges. [% a year, % a year, % vol a year, years]"""

    lpa_pct_year: float
    volume_pct_year: float
    strength_year: float
    years: float


class Rates(TypedDict):
    """What a cask loses, since the last gauge that is long enough ago and since its fill."""

    last: Rate | None
    fill: Rate | None


class Usual(TypedDict):
    """What casks like one lose. [% a year]"""

    middle: float
    spread: float
    low: float
    high: float
    most: float
    count: int


class Interval(TypedDict):
    """A figure to come, and between which ends it lies four times in five."""

    at: float
    low: float
    high: float


class CaskForecast(TypedDict):
    """What a cask will hold. [L, % vol, L at 20 degC, % a year, % vol a year]"""

    lpa: Interval
    strength_pct: Interval
    volume_l: Interval
    loss_pct_year: float
    drift_year: float


class Ripe(TypedDict, total=False):
    """When a cask is ready, by the distiller's own rule. [years, % vol, points, % a year]"""

    age_years: float | None
    strength_low: float | None
    strength_high: float | None
    score_low: float | None
    loss_high: float | None


class Found(TypedDict):
    """What such a rule is held against. [years, % vol, points, % a year]"""

    age_years: float | None
    strength_pct: float | None
    score: float | None
    loss_pct_year: float | None


def loss_rates(gauges: Sequence[Gauge]) -> Rates:
    """Return what a cask loses a year: since the last gauge that is long enough ago, and since its fill.

    What was drawn between two gauges is no loss. Volume is pure alcohol over strength.

    Parameters
    ----------
    gauges : sequence of mapping
        As the head of this module says, oldest first. [years, L, % vol, L], `lpa` above 0, `years` rising

    Returns
    -------
    rates : dict
        JSON. `last` and `fill`, each None or `lpa_pct_year` [% a year of what was there], `volume_pct_year`
        [% a year], `strength_year` [% vol a year], `years`.

    Raises
    ------
    OutOfDomain
        Where a gauge is empty, or times do not rise.

    Source
    ------
    The definition (common practice, no source): lost over what was there, over the years between.
    """
    _check(gauges)
    if not gauges:
        return {"last": None, "fill": None}
    now = gauges[-1]["years"]
    old = [i for i, one in enumerate(gauges) if now - one["years"] >= RATE_YEARS - 1e-9]
    return {
        "last": _between(gauges[old[-1] :]) if old else None,
        "fill": _between(gauges) if 0 in old else None,
    }


def _check(gauges: Sequence[Gauge]) -> None:
    for i, one in enumerate(gauges):
        check_range("time", float(one["years"]), gauges[i - 1]["years"] if i else YEARS[0], YEARS[1], "years",
                    "order_gauges")
        check_range("pure_alcohol", float(one["lpa"]), 1e-6, 1e7, "L", "empty_cask")
        check_range("strength", float(one["strength_pct"]), 0.1, 100, "pct_vol", "check_glass")


def _between(gauges: Sequence[Gauge]) -> Rate:
    first, last = gauges[0], gauges[-1]
    years = last["years"] - first["years"]
    drawn = sum(one.get("drawn_l") or 0.0 for one in gauges[1:])
    then = first["lpa"] / first["strength_pct"] * 100
    drawn_volume = sum((one.get("drawn_l") or 0.0) / one["strength_pct"] * 100 for one in gauges[1:])
    return {
        "lpa_pct_year": (first["lpa"] - drawn - last["lpa"]) / first["lpa"] * 100 / years,
        "volume_pct_year": (then - drawn_volume - last["lpa"] / last["strength_pct"] * 100) / then * 100 / years,
        "strength_year": (last["strength_pct"] - first["strength_pct"]) / years,
        "years": years,
    }


def usual_of(groups: Sequence[Sequence[float]], capacity_l: float, small_l: float = SMALL_L) -> Usual:
    """Return what casks like one usually are, from groups of them that narrow: small groups borrow from wider ones.

    Begin with plain figures for the size. In each group, from the widest to the narrowest, take the median and the
    spread (from the median of the differences to it, so that one leaker counts little). A group of n moves middle and
    spread towards its own by n / (n + 4).

    Parameters
    ----------
    groups : sequence of sequences of float
        Loss rates of other casks: of like size; of the same size; of the same area as well; of the same wood and use
        as well. [% a year], any; groups may be empty
    capacity_l : float
        Rated size of the cask. [L], above 0, up to 1e6
    small_l : float
        A cask is small below. [L], any

    Returns
    -------
    usual : dict
        JSON. `middle`, `spread`, `low` and `high` (four of five lie between), `most` (above it: high) [% a year],
        `count` of the casks of the widest group.

    Raises
    ------
    OutOfDomain
        Where a rate is no number.

    Source
    ------
    Partial pooling as in A. Gelman, J. Hill, Data Analysis Using Regression and Multilevel Models (2007), ch. 12:
    weight n / (n + ratio of variances), the ratio taken as 4 (common practice, no source); robust middle and spread.
    """
    check_range("size", float(capacity_l), 1e-3, 1e6, "L", "give_cask_size")
    middle, spread = PLAIN["small" if capacity_l < small_l else "large"]
    for group in groups:
        for rate in group:
            check_range("loss", float(rate), -1e6, 1e6, "pct_year", "check_gauges")
        if not group:
            continue
        own = median(group)
        own_spread = max(MAD_TO_SPREAD * median(abs(rate - own) for rate in group), SPREAD_LEAST)
        share = len(group) / (len(group) + BORROW)
        middle = share * own + (1 - share) * middle
        spread = math.sqrt(share * own_spread * own_spread + (1 - share) * spread * spread)
    return {
        "middle": middle, "spread": spread, "low": middle - Z_80 * spread, "high": middle + Z_80 * spread,
        "most": middle + HIGH_SPREADS * spread, "count": len(groups[0]) if groups else 0,
    }


def judge_loss(
    rate: float, volume_rate: float, years: float, most: float, strength_then: float, strength_now: float, *,
    noise_pct: float = 1.0, drift_pct: float = 1.5, drift_pct_year: float = 1.2,
) -> str:
    """Return what a loss looks like: usual, a leak, a slip of the glass, another cask, or a gain.

    Much lost at a usual strength leaks; a usual volume with an odd strength is a slip; both odd is another cask. Volume
    stands for weight here: a slip of the glass hardly moves it.

    Parameters
    ----------
    rate : float
        Pure alcohol lost. [% a year], any
    volume_rate : float
        Volume lost. [% a year], any
    years : float
        Between the two gauges. [years], above 0
    most : float
        Above it the loss is high: `most` of usual_of. [% a year], any
    strength_then : float
        At the gauge before. [% vol], 0 to 100
    strength_now : float
        Now. [% vol], 0 to 100
    noise_pct : float
        What scale and glass alone may pretend. [%], 0 to 100
    drift_pct : float
        A strength may differ by this. [% vol], 0 to 100
    drift_pct_year : float
        And by this for each year. [% vol a year], 0 to 100

    Returns
    -------
    word : str
        One of "usual", "leak", "slip", "other_cask", "gain". [a word]

    Raises
    ------
    OutOfDomain
        Where no time lies between.

    Source
    ------
    Common practice, no source.
    """
    check_range("time", float(years), 1e-6, YEARS[1], "years", "two_gauges")
    if abs(strength_now - strength_then) > drift_pct + drift_pct_year * years + 1e-9:
        usual_volume = -noise_pct / years <= volume_rate <= most + noise_pct / years
        return "slip" if usual_volume else "other_cask"
    if rate < -noise_pct / years:
        return "gain"
    return "leak" if rate > most + noise_pct / years else "usual"


def forecast_cask(
    gauges: Sequence[Gauge], usual: Usual, years_ahead: float, *, drift_year: float = 0.0,
    is_new_wood: bool = False,
) -> CaskForecast:
    """Return what a cask will hold at a time to come, each with an interval that is meant to hold four times in five.

    The cask's own loss and drift, as far as its gauges can tell, are weighed against those of casks like it: a cask
    that was gauged twice in a year says little, one that was followed for years says most. No leak, sample or move to
    another place is foreseen.

    Parameters
    ----------
    gauges : sequence of mapping
        As the head of this module says, oldest first. [years, L, % vol, L], any from one on
    usual : mapping
        `middle` and `spread` of the loss of casks like it. [% a year], spread above 0
    years_ahead : float
        From the last gauge. [years], 0 to 50
    drift_year : float
        Usual drift in strength where it lies. [% vol a year], -5 to 5
    is_new_wood : bool
        Its first year is then left out where later gauges tell. [yes or no], either

    Returns
    -------
    forecast : dict
        JSON. `lpa` [L], `strength_pct` [% vol], `volume_l` [L at 20 degC], each with `at`, `low`, `high`; and
        `loss_pct_year`, `drift_year` as taken.

    Raises
    ------
    OutOfDomain
        Outside these ranges, or without a gauge.

    Source
    ------
    Normal posterior of a mean with normal prior (any textbook of Bayesian statistics); loss by the year is a constant
    share of what is there (common practice, no source).
    """
    _check(gauges)
    if not gauges:
        raise OutOfDomain("gauges", 0.0, 1, 1000, "no_gauges")
    check_range("time_ahead", float(years_ahead), 0, 50, "years", "not_so_far")
    check_range("usual_drift", float(drift_year), -5, 5, "pct_vol_year", "check_strengths")
    own = gauges
    if is_new_wood and len(gauges) > 2 and gauges[1]["years"] - gauges[0]["years"] <= NEW_WOOD_YEARS:
        own = gauges[1:]
    years, last = own[-1]["years"] - own[0]["years"], own[-1]
    rate, rate_var = float(usual["middle"]), float(usual["spread"]) ** 2
    drift, drift_var = float(drift_year), DRIFT_SD**2
    if years >= RATE_YEARS - 1e-9:
        kept = sum(math.log((one["lpa"] + (one.get("drawn_l") or 0.0)) / before["lpa"])
                   for before, one in pairwise(own))
        rate, rate_var = _weigh(rate, rate_var, -kept * 100 / years,
                                2 * GAUGE_SD_PCT**2 / years**2 + YEAR_SD_PCT**2 / years)
        drift, drift_var = _weigh(drift, drift_var, (last["strength_pct"] - own[0]["strength_pct"]) / years,
                                  2 * STRENGTH_SD_PCT**2 / years**2 + DRIFT_YEAR_SD**2 / years)
    ahead = float(years_ahead)
    lpa = last["lpa"] * math.exp(-rate * ahead / 100)
    lpa_var = (ahead**2 * rate_var + ahead * YEAR_SD_PCT**2 + 2 * GAUGE_SD_PCT**2) / 1e4
    strength = last["strength_pct"] + drift * ahead
    strength_var = ahead**2 * drift_var + ahead * DRIFT_YEAR_SD**2 + 2 * STRENGTH_SD_PCT**2
    wide, apart = Z_80 * math.sqrt(lpa_var), Z_80 * math.sqrt(strength_var)
    strength = min(max(strength, 1.0), 100.0)
    volume_wide = Z_80 * math.sqrt(lpa_var + strength_var / strength**2)
    volume = lpa / strength * 100
    return {
        "lpa": {"at": lpa, "low": lpa * math.exp(-wide), "high": lpa * math.exp(wide)},
        "strength_pct": {"at": strength, "low": max(strength - apart, 0.0), "high": min(strength + apart, 100.0)},
        "volume_l": {"at": volume, "low": volume * math.exp(-volume_wide), "high": volume * math.exp(volume_wide)},
        "loss_pct_year": rate, "drift_year": drift,
    }


def _weigh(prior: float, prior_var: float, found: float, found_var: float) -> tuple[float, float]:
    precision = 1 / prior_var + 1 / found_var
    return (prior / prior_var + found / found_var) / precision, 1 / precision


def lacks_of(rule: Ripe, cask: Found) -> list[str]:
    """Return what a cask lacks by the distiller's own rule; nothing: it is ready.

    Parameters
    ----------
    rule : mapping
        Each of `age_years`, `strength_low`, `strength_high`, `score_low`, `loss_high`, or None for each.
        [years, % vol, points, % a year], any
    cask : mapping
        `age_years`, `strength_pct`, `score`, `loss_pct_year`; None where it is not known. [as the rule], any

    Returns
    -------
    lacks : list of str
        Codes of JSON: too_young, too_weak, too_strong, score_low, not_tasted, loses_much, not_gauged.

    Source
    ------
    The distiller's own rule; no figure here is a recommendation.
    """
    age, strength = cask.get("age_years"), cask.get("strength_pct")
    score, loss = cask.get("score"), cask.get("loss_pct_year")
    age_least, strength_low, strength_high = (rule.get("age_years"), rule.get("strength_low"),
                                              rule.get("strength_high"))
    score_low, loss_high = rule.get("score_low"), rule.get("loss_high")
    lacks = []
    if age_least is not None and (age is None or age < age_least):
        lacks.append("too_young")
    if strength is None and (strength_low is not None or strength_high is not None):
        lacks.append("not_gauged")
    if strength is not None and strength_low is not None and strength < strength_low:
        lacks.append("too_weak")
    if strength is not None and strength_high is not None and strength > strength_high:
        lacks.append("too_strong")
    if score_low is not None and (score is None or score < score_low):
        lacks.append("not_tasted" if score is None else "score_low")
    if loss_high is not None and loss is not None and loss > loss_high:
        lacks.append("loses_much")
    return lacks
