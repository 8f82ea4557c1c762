"""What casks lose between two gauges, what casks like them lose, and what a loss looks like.

``static/trade/caskloss.js`` is the twin, for the phone in the cellar. Gauges are mappings, oldest first: `years`
(time, any zero), `lpa` (pure alcohol found), `strength_pct`, and `drawn_l` (pure alcohol drawn, less what was poured
in, since the gauge before).

One law everywhere: a cask loses the same share of what is there year after year, so what is kept falls as
exp(-rate * years / 100). Rates are in logarithms; only so do years add up and casks of unlike times between gauges
average. `year_share` is what a rate takes in one year, for people to read.
"""

import math
from collections.abc import Sequence
from itertools import pairwise
from statistics import median
from typing import NotRequired, TypedDict

from webapp.trade.numeric import check_range

RATE_YEARS = 60 / 365.25  # two gauges nearer to each other make no rate [years]
BORROW = 4.0  # a group of so many casks counts as much as the wider group it belongs to
SPREAD_LEAST = 0.5  # [% a year]
MAD_TO_SPREAD = 1.4826  # of a normal spread, from the median of the differences to the median
SMALL_L = 100.0
# Where the house has no cask to compare: middle and spread of the loss [% a year, in logarithms]. Common practice, no
# source.
PLAIN = {"small": (6.5, 2.0), "large": (3.0, 1.2)}
HIGH_SPREADS = 2.5
Z_80 = 1.2815515655446004
YEARS = (-3000.0, 3000.0)  # a date may be given as a year


class Gauge(TypedDict):
    """A gauge of a cask, as the head of this module says. [years, L, % vol, L]"""

    years: float
    lpa: float
    strength_pct: float
    drawn_l: NotRequired[float]


class Rate(TypedDict):
    """A loss between two gauges. [% a year in logarithms, the same, % vol a year, years]"""

    lpa_pct_year: float
    volume_pct_year: float
    strength_year: float
    years: float


class Rates(TypedDict):
    """What a cask loses, since the last gauge that is long enough ago and since its fill."""

    last: Rate | None
    fill: Rate | None


class Usual(TypedDict):
    """What casks like one lose. [% a year, in logarithms]"""

    middle: float
    spread: float
    low: float
    high: float
    most: float
    count: int


def loss_rates(gauges: Sequence[Gauge]) -> Rates:
    """Return what a cask loses a year: since the last gauge that is long enough ago, and since its fill.

    What was drawn between two gauges is no loss: it is added to what was found; what was poured in is added to what
    was there. Volume is pure alcohol over strength.

    Parameters
    ----------
    gauges : sequence of mapping
        As the head of this module says, oldest first. [years, L, % vol, L], `lpa` above 0, `years` rising

    Returns
    -------
    rates : dict
        JSON. `last` and `fill`, each None or `lpa_pct_year` [% a year, in logarithms], `volume_pct_year` [the same],
        `strength_year` [% vol a year], `years`.

    Raises
    ------
    OutOfDomain
        Where a gauge is empty, or times do not rise.

    Source
    ------
    Decay by a constant share: the logarithm of what was kept, over the years between (common practice, no source).
    """
    check_gauges(gauges)
    if not gauges:
        return {"last": None, "fill": None}
    now = gauges[-1]["years"]
    old = [i for i, one in enumerate(gauges) if now - one["years"] >= RATE_YEARS - 1e-9]
    return {
        "last": _between(gauges[old[-1] :]) if old else None,
        "fill": _between(gauges) if 0 in old else None,
    }


def check_gauges(gauges: Sequence[Gauge]) -> None:
    for i, one in enumerate(gauges):
        check_range("time", float(one["years"]), gauges[i - 1]["years"] if i else YEARS[0], YEARS[1], "years",
                    "order_gauges")
        check_range("pure_alcohol", float(one["lpa"]), 1e-6, 1e7, "L", "empty_cask")
        check_range("strength", float(one["strength_pct"]), 0.1, 100, "pct_vol", "check_glass")


def _between(gauges: Sequence[Gauge]) -> Rate:
    first, last = gauges[0], gauges[-1]
    years = last["years"] - first["years"]
    return {
        "lpa_pct_year": -sum(log_kept(*pair) for pair in pairwise(gauges)) * 100 / years,
        "volume_pct_year": -sum(log_kept(*pair, by_volume=True) for pair in pairwise(gauges)) * 100 / years,
        "strength_year": (last["strength_pct"] - first["strength_pct"]) / years,
        "years": years,
    }


def log_kept(before: Gauge, now: Gauge, *, by_volume: bool = False) -> float:
    """Return the logarithm of the share that was kept between two gauges, of pure alcohol or of volume."""
    drawn = now.get("drawn_l") or 0.0
    had, has = before["lpa"], now["lpa"]
    if by_volume:
        had, has, drawn = (had / before["strength_pct"] * 100, has / now["strength_pct"] * 100,
                           drawn / now["strength_pct"] * 100)
    return math.log((has + drawn) / had) if drawn >= 0 else math.log(has / (had - drawn))


def year_share(rate_pct_year: float) -> float:
    """Return what a rate takes of what is there in one year.

    Parameters
    ----------
    rate_pct_year : float
        In logarithms. [% a year], any; below 0 for a gain

    Returns
    -------
    share_pct : float
        [%], below 100; below 0 for a gain

    Source
    ------
    1 - exp(-rate): a constant share is lost (common practice, no source).
    """
    return 100 * (1 - math.exp(-rate_pct_year / 100))


def share_lost(then: float, now: float, years: float) -> float:
    """Return the share lost in a year where the same share was lost year after year.

    Parameters
    ----------
    then : float
        Amount at the beginning. [any unit], above 0
    now : float
        Amount at the end. [the same unit], from 0
    years : float
        Between them. [years], above 0

    Returns
    -------
    share_pct : float
        [% of what was there, a year], 100 where nothing is left; below 0 for a gain

    Source
    ------
    As `year_share`.
    """
    return 100 * (1 - float((now / then) ** (1 / years)))


def usual_of(groups: Sequence[Sequence[float]], capacity_l: float, small_l: float = SMALL_L) -> Usual:
    """Return what casks like one usually are, from groups of them that narrow: small groups borrow from wider ones.

    Begin with plain figures for the size. In each group, from the widest to the narrowest, take the median and the
    spread (from the median of the differences to it, so that one leaker counts little). A group of n moves middle and
    spread towards its own by n / (n + 4).

    Parameters
    ----------
    groups : sequence of sequences of float
        Loss rates of other casks: of like size; of the same size; of the same area as well; of the same wood and use
        as well. [% a year, in logarithms], any; groups may be empty
    capacity_l : float
        Rated size of the cask. [L], above 0, up to 1e6
    small_l : float
        A cask is small below. [L], any

    Returns
    -------
    usual : dict
        JSON. `middle`, `spread`, `low` and `high` (four of five lie between), `most` (above it: high) [% a year,
        in logarithms], `count` of the casks of the widest group.

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
        Pure alcohol lost. [% a year, in logarithms], any
    volume_rate : float
        Volume lost. [% a year, in logarithms], any
    years : float
        Between the two gauges. [years], above 0
    most : float
        Above it the loss is high: `most` of usual_of. [% a year, in logarithms], any
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
