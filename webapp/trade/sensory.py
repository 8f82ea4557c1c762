"""Blind tasting: what a count of right answers says against mere guessing. Exact throughout.

The sums are counts of equally likely outcomes, in whole numbers, so no table is needed and no normal curve stands in
for a small panel. Orders of glasses: ranking.py.
"""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from functools import lru_cache
from math import comb

from webapp.trade.numeric import check_range

ANSWERS_MOST = 1_000
# The share of right answers by guessing.
CHANCES: Mapping[str, Fraction] = {
    "triangle": Fraction(1, 3), "duo_trio": Fraction(1, 2), "pair": Fraction(1, 2), "pair_two_sided": Fraction(1, 2),
}


def guessing_p(right: int, answers: int, method: str) -> float:
    """Return how likely guessing alone gives so many right answers or more.

    Parameters
    ----------
    right : int
        Answers that were right; of a two-sided pair those for the glass named more often. [count], 0 to answers
    answers : int
        All answers. [count], 1 to 1000
    method : str
        triangle, duo_trio, pair (one-sided) or pair_two_sided. [text], one of the range of CHANCES

    Returns
    -------
    p : float
        Probability, 0 to 1; of a two-sided pair both tails. [1]

    Raises
    ------
    OutOfDomain
        If a count lies outside its range.

    Source
    ------
    The binomial distribution, as ISO 4120 (triangle), ISO 10399 (duo-trio) and ISO 5495 (pair) use it; the numbers of
    ISO 10399 and ISO 5495 from memory.
    """
    _check_counts(right, answers)
    return float(_p_of(right, answers, method))


def critical_number(answers: int, method: str, alpha: float = 0.05) -> int | None:
    """Return the least number of right answers that shows a difference.

    Parameters
    ----------
    answers : int
        All answers. [count], 1 to 1000
    method : str
        triangle, duo_trio, pair (one-sided) or pair_two_sided. [text], one of the range of CHANCES
    alpha : float
        The risk of finding a difference where there is none. [1], above 0, below 1

    Returns
    -------
    critical : int or None
        The least count with guessing_p at most alpha; None where not even all right would show it. [count]

    Raises
    ------
    OutOfDomain
        If a figure lies outside its range.

    Source
    ------
    As guessing_p. Printed: FAO V7180E, appendix A (triangle); GOST ISO 10399-2015, table A.1 (duo-trio).
    """
    _check_counts(0, answers)
    _check_risk(alpha)
    return _critical(answers, method, alpha)


@lru_cache(maxsize=512)
def _critical(answers: int, method: str, alpha: float) -> int | None:
    bound = Fraction(str(alpha))
    low = answers // 2 + 1 if method == "pair_two_sided" else 0
    return next((k for k in range(low, answers + 1) if _p_of(k, answers, method) <= bound), None)


def chance_to_find(answers: int, method: str, share: float, alpha: float = 0.05) -> float:
    """Return how likely a test shows a difference that a share of the answers truly perceives.

    The others guess. Of a two-sided pair that share all name the same glass.

    Parameters
    ----------
    answers : int
        All answers. [count], 1 to 1000
    method : str
        triangle, duo_trio, pair (one-sided) or pair_two_sided. [text], one of the range of CHANCES
    share : float
        Share of answers that are no guess. [1], 0 to 1
    alpha : float
        The risk of finding a difference where there is none. [1], above 0, below 1

    Returns
    -------
    power : float
        Probability, 0 to 1; 0 where no count is enough. [1]

    Raises
    ------
    OutOfDomain
        If a figure lies outside its range.

    Source
    ------
    The binomial distribution with p = chance + share * (1 - chance), Abbott's rule, as ISO 4120 takes it (from memory).
    """
    _check_counts(0, answers)
    _check_risk(alpha)
    _check_share(share)
    least = _critical(answers, method, alpha)
    if least is None:
        return 0.0
    chance = float(CHANCES[method])
    right = chance + share * (1.0 - chance)
    found = _tail(least, answers, right)
    return found + _tail(least, answers, 1.0 - right) if method == "pair_two_sided" else found


def least_share_found(answers: int, method: str, alpha: float = 0.05, beta: float = 0.2) -> float | None:
    """Return the smallest share of true answers that so many answers would have found with a chance of 1 - beta.

    Parameters
    ----------
    answers : int
        All answers. [count], 1 to 1000
    method : str
        triangle, duo_trio, pair (one-sided) or pair_two_sided. [text], one of the range of CHANCES
    alpha : float
        The risk of finding a difference where there is none. [1], above 0, below 1
    beta : float
        The risk of missing a difference of that share. [1], above 0, below 1

    Returns
    -------
    share : float or None
        To 0.0001 above. [1], 0 to 1; None where no count of right answers would be enough

    Raises
    ------
    OutOfDomain
        If a figure lies outside its range.

    Source
    ------
    chance_to_find turned round by halving.
    """
    _check_risk(beta)
    if critical_number(answers, method, alpha) is None:
        return None
    low, high = 0.0, 1.0
    while high - low > 1e-4:
        middle = (low + high) / 2.0
        low, high = (low, middle) if chance_to_find(answers, method, middle, alpha) >= 1.0 - beta else (middle, high)
    return high


def _p_of(right: int, answers: int, method: str) -> Fraction:
    chance = CHANCES[method]
    wrong = chance.denominator - chance.numerator
    ways = sum(comb(answers, k) * chance.numerator**k * wrong ** (answers - k) for k in range(right, answers + 1))
    one_tail = Fraction(ways, chance.denominator**answers)
    return min(Fraction(1), 2 * one_tail) if method == "pair_two_sided" else one_tail


def _tail(least: int, answers: int, share: float) -> float:
    return sum(comb(answers, k) * share**k * (1.0 - share) ** (answers - k) for k in range(least, answers + 1))


def _check_counts(right: int, answers: int) -> None:
    _check_count(answers, 1, ANSWERS_MOST)
    _check_count(right, 0, answers)


def _check_count(value: int, low: int, high: int) -> None:
    check_range("number", float(value), low, high, "", "count_again")


def _check_risk(risk: float) -> None:
    check_range("number", risk, 1e-9, 1.0 - 1e-9, "", "check_figure")


def _check_share(share: float) -> None:
    check_range("number", share, 0.0, 1.0, "", "check_figure")
