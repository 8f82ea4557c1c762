"""Blind tasting: what the orders in which a panel sets glasses say together, against mere chance.

Exact where all orders can be counted; a panel too large for that takes the chi-square curve, and says so.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from fractions import Fraction
from functools import lru_cache
from itertools import combinations, permutations
from math import erfc, exp, gamma, sqrt
from statistics import NormalDist
from typing import NamedTuple

from webapp.trade.errors import OUTSIDE, OutOfDomain
from webapp.trade.numeric import check_range

TASTERS_MOST = 100
GLASSES_MOST = 6
# How many steps the exact distribution of a ranking may take; above that the chi-square curve counts.
STEPS_MOST = 200_000


class Ranking(NamedTuple):
    """What the orders of a panel say together: Friedman's figure, how likely it is by chance, and how that was got."""

    sums: tuple[float, ...]
    friedman: float
    p: float
    is_exact: bool
    lsd: float


def friedman_figure(ranks: Sequence[Sequence[float]]) -> float:
    """Return Friedman's figure of a panel's orders, put right for ties.

    Parameters
    ----------
    ranks : sequence of sequences
        For each taster the rank of each glass, 1 the first; tied ones share the mean of their places. [rank], 1 to 6

    Returns
    -------
    figure : float
        0 where all rank sums are equal or nobody set the glasses apart. [1]

    Raises
    ------
    OutOfDomain
        If there are too few or too many tasters or glasses, or ranks that are none.

    Source
    ------
    ISO 8587, F = 12/(J P (P+1)) sum R^2 - 3 J (P+1), divided by 1 - E/(J P (P^2 - 1)) with E the sum of n^3 - n over
    ties; formulae read through a copy.
    """
    tasters, glasses = _check_ranks(ranks)
    return _figure(tuple(map(sum, zip(*ranks, strict=True))), tasters, glasses, _tie_share(ranks))


def compare_ranks(ranks: Sequence[Sequence[float]], alpha: float = 0.05) -> Ranking:
    """Return rank sums, Friedman's figure, how likely it is by chance, and the least difference that counts.

    Parameters
    ----------
    ranks : sequence of sequences
        For each taster the rank of each glass, 1 the first; tied ones share the mean of their places. [rank], 1 to 6
    alpha : float
        The risk of finding a difference where there is none. [1], above 0, below 1

    Returns
    -------
    ranking : Ranking
        sums [rank], friedman [1], p [1] exact over all orders of the tasters where they can be counted, else by
        chi-square with one degree of freedom less than glasses; lsd [rank] by which two sums must be apart, which
        counts only where p is at most alpha.

    Raises
    ------
    OutOfDomain
        If a figure lies outside its range, or ranks are none.

    Source
    ------
    ISO 8587 (formulae read through a copy): least significant difference z sqrt(J P (P+1) / 6).
    """
    tasters, glasses = _check_ranks(ranks)
    _check_risk(alpha)
    sums = tuple(float(sum(column)) for column in zip(*ranks, strict=True))
    figure = friedman_figure(ranks)
    panel = tuple(sorted(tuple(sorted(round(2 * rank) for rank in one)) for one in ranks))
    exact = _exact_p(panel, sum(round(2 * one) ** 2 for one in sums))
    p = chi_square_p(figure, glasses - 1) if exact is None else exact
    z = NormalDist().inv_cdf(1.0 - alpha / 2.0)
    return Ranking(sums, figure, p, exact is not None, z * sqrt(tasters * glasses * (glasses + 1) / 6.0))


def pairs_apart(sums: Sequence[float], lsd: float) -> list[tuple[int, int]]:
    """Return which glasses differ: the pairs whose rank sums are apart by the least significant difference or more.

    Parameters
    ----------
    sums : sequence of float
        Rank sums. [rank], any
    lsd : float
        Least significant difference. [rank], above 0

    Returns
    -------
    pairs : list
        Places of the two glasses in `sums`, the one with the smaller sum first. [index]

    Source
    ------
    ISO 8587 (read through a copy).
    """
    found = [(a, b) if sums[a] < sums[b] else (b, a) for a, b in combinations(range(len(sums)), 2)
             if abs(sums[a] - sums[b]) >= lsd]
    return sorted(found, key=lambda pair: (sums[pair[0]], pair))


def chi_square_p(figure: float, freedom: int) -> float:
    """Return how likely a chi-square figure is so large or larger.

    Parameters
    ----------
    figure : float
        [1], 0 or above
    freedom : int
        Degrees of freedom. [count], 1 to 20

    Returns
    -------
    p : float
        [1], 0 to 1

    Raises
    ------
    OutOfDomain
        If a figure lies outside its range.

    Source
    ------
    Abramowitz and Stegun, Handbook of Mathematical Functions, 26.4.4 and 26.4.5: closed forms for odd and even degrees.
    """
    check_range("number", figure, 0.0, 1e9, "", "check_figure")
    _check_count(freedom, 1, 20)
    half = figure / 2.0
    if freedom % 2 == 0:
        return exp(-half) * sum(half**n / gamma(n + 1) for n in range(freedom // 2))
    more = sum(sqrt(half) ** (2 * n - 1) / gamma(n + 0.5) for n in range(1, (freedom + 1) // 2))
    return erfc(sqrt(half)) + exp(-half) * more


@lru_cache(maxsize=64)
def _exact_p(panel: tuple[tuple[int, ...], ...], least_squares: int) -> float | None:
    """Return how likely rank sums, in halves, have a sum of squares so large or larger; None where it is too much.

    Each taster's ranks are put in every order, all equally likely. By chance glasses are alike, so sums stay sorted.
    """
    ways: Counter[tuple[int, ...]] = Counter({(0,) * len(panel[0]): 1})
    steps = 0
    for ranks in panel:
        orders = Counter(permutations(ranks))
        steps += len(ways) * len(orders)
        if steps > STEPS_MOST:
            return None
        after: Counter[tuple[int, ...]] = Counter()
        for sums, many in ways.items():
            for order, same in orders.items():
                after[tuple(sorted(a + b for a, b in zip(sums, order, strict=True)))] += many * same
        ways = after
    found = sum(many for sums, many in ways.items() if sum(one * one for one in sums) >= least_squares)
    return float(Fraction(found, sum(ways.values())))


def _figure(sums: Sequence[float], tasters: int, glasses: int, tie_share: float) -> float:
    if tie_share >= 1.0:
        return 0.0
    squares = sum(one * one for one in sums)
    plain = 12.0 * squares / (tasters * glasses * (glasses + 1)) - 3.0 * tasters * (glasses + 1)
    return max(0.0, plain / (1.0 - tie_share))


def _tie_share(ranks: Sequence[Sequence[float]]) -> float:
    tied = sum(many**3 - many for one in ranks for many in Counter(one).values())
    return tied / (len(ranks) * len(ranks[0]) * (len(ranks[0]) ** 2 - 1))


def _check_ranks(ranks: Sequence[Sequence[float]]) -> tuple[int, int]:
    _check_count(len(ranks), 1, TASTERS_MOST)
    glasses = len(ranks[0])
    _check_count(glasses, 2, GLASSES_MOST)
    for one in ranks:
        _check_count(len(one), glasses, glasses)
        for rank in one:
            if rank != _shared_rank(one, rank):
                raise OutOfDomain("number", rank, 1, glasses, OUTSIDE, advice="count_again")
    return len(ranks), glasses


def _shared_rank(ranks: Sequence[float], rank: float) -> float:
    """Return the rank that those tied at one rank should share: the mean of the places they take."""
    return sum(other < rank for other in ranks) + (ranks.count(rank) + 1) / 2.0


def _check_count(value: int, low: int, high: int) -> None:
    check_range("number", float(value), low, high, "", "count_again")


def _check_risk(risk: float) -> None:
    check_range("number", risk, 1e-9, 1.0 - 1e-9, "", "check_figure")
