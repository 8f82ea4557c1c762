"""Casks over years: what they will hold, and whether they are ready. Gauges are those of `caskloss`."""

import math
from collections.abc import Sequence
from itertools import pairwise
from typing import TypedDict

from webapp.trade.caskloss import RATE_YEARS, Z_80, Gauge, Usual, check_gauges, log_kept
from webapp.trade.errors import OutOfDomain
from webapp.trade.numeric import check_range

GAUGE_SD_PCT = 0.4  # what scale and glass alone may pretend of the pure alcohol in a cask [%]
STRENGTH_SD_PCT = 0.12  # and of its strength [% vol]
YEAR_SD_PCT = 0.3  # by how much one year differs from the next, of the loss [% a year]
YEAR_SHARE = 0.1  # and by this share of the loss: a dry summer takes more of a thirsty cask [1]
RATE_SHARE = 0.05  # a rate moves by this share in the years to come: air, place, ullage [1]
DRIFT_YEAR_SD = 0.15  # and of the drift in strength [% vol a year]
DRIFT_SD = 0.5  # between casks that nobody has compared [% vol a year]
NEW_WOOD_YEARS = 1.2  # new wood drinks in its first year: such a year tells little of the next ones


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
        `middle` and `spread` of the loss of casks like it. [% a year, in logarithms], spread above 0
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
        `loss_pct_year` [% a year, in logarithms], `drift_year` as taken.

    Raises
    ------
    OutOfDomain
        Outside these ranges, or without a gauge.

    Source
    ------
    Normal posterior of a mean with normal prior (any textbook of Bayesian statistics); loss by the year is a constant
    share of what is there (common practice, no source).
    """
    check_gauges(gauges)
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
        kept = sum(log_kept(before, one) for before, one in pairwise(own))
        rate, rate_var = _weigh(rate, rate_var, -kept * 100 / years,
                                2 * GAUGE_SD_PCT**2 / years**2 + _year_var(rate) / years)
        drift, drift_var = _weigh(drift, drift_var, (last["strength_pct"] - own[0]["strength_pct"]) / years,
                                  2 * STRENGTH_SD_PCT**2 / years**2 + DRIFT_YEAR_SD**2 / years)
    ahead = float(years_ahead)
    lpa = last["lpa"] * math.exp(-rate * ahead / 100)
    lpa_var = (ahead**2 * (rate_var + (RATE_SHARE * rate) ** 2) + ahead * _year_var(rate) + 2 * GAUGE_SD_PCT**2) / 1e4
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


def _year_var(rate: float) -> float:
    """Return the variance of a year's loss about the rate. [(% a year)^2]"""
    return YEAR_SD_PCT**2 + (YEAR_SHARE * rate) ** 2


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
