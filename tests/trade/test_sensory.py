"""Blind tasting: critical numbers against printed tables, tails and ranks against scipy and published examples."""

from __future__ import annotations

import itertools
import random

import pytest
from scipy import stats

from tests.trade.reference_files import read_json
from webapp.trade import ranking, sensory
from webapp.trade.errors import OutOfDomain

PRINTED = read_json("sensory.json")  # each part names its source
# Eight orders of five glasses whose sums are those of the published example; the orders themselves were not printed.
ORDERS = [[1, 3, 5, 4, 2], [2, 4, 5, 3, 1], [2, 3, 4, 5, 1], [2, 4, 5, 1, 3], [2, 5, 3, 4, 1], [2, 4, 5, 3, 1],
          [2, 5, 4, 1, 3], [4, 3, 1, 2, 5]]


@pytest.mark.parametrize("method", ["triangle", "duo_trio", "pair_two_sided"])
def test_critical_numbers_are_those_of_the_printed_tables(method: str) -> None:
    for answers, five, one in PRINTED[method]["rows"]:
        assert sensory.critical_number(answers, method, 0.05) == five, answers
        assert sensory.critical_number(answers, method, 0.01) == one, answers
        if method == "duo_trio":
            assert sensory.critical_number(answers, "pair", 0.05) == five, "one-sided pairs are guessed as duo-trios"


def test_the_chance_of_guessing_is_the_binomial_tail() -> None:
    """scipy.stats, a general-purpose library."""
    for answers, right in ((6, 5), (18, 13), (40, 11), (300, 133)):
        assert sensory.guessing_p(right, answers, "triangle") == pytest.approx(
            stats.binom.sf(right - 1, answers, 1 / 3), rel=1e-9)
        assert sensory.guessing_p(right, answers, "pair") == pytest.approx(
            stats.binomtest(right, answers, alternative="greater").pvalue, rel=1e-9)
    for answers, most in ((12, 10), (31, 16), (10, 5)):
        assert sensory.guessing_p(most, answers, "pair_two_sided") == pytest.approx(
            stats.binomtest(most, answers).pvalue, rel=1e-9)
    assert sensory.guessing_p(6, 8, "triangle") == pytest.approx(129 / 6561, rel=1e-12), "1 in 51, counted by hand"
    assert sensory.guessing_p(0, 8, "duo_trio") == 1.0


def test_a_critical_number_is_the_least_that_keeps_the_risk() -> None:
    for method, alpha in itertools.product(sensory.CHANCES, (0.1, 0.05, 0.01, 0.001)):
        for answers in range(1, 40):
            least = sensory.critical_number(answers, method, alpha)
            low = answers // 2 + answers % 2
            if least is None:
                assert sensory.guessing_p(answers, answers, method) > alpha
            else:
                assert sensory.guessing_p(least, answers, method) <= alpha
                if method != "pair_two_sided" or least > low:
                    assert sensory.guessing_p(least - 1, answers, method) > alpha
    assert sensory.critical_number(2, "triangle", 0.05) is None
    assert sensory.critical_number(4, "pair", 0.0625) == 4, "a risk that is met exactly is kept"


def test_what_a_number_of_answers_finds() -> None:
    for answers, least, half, some in PRINTED["triangle_power"]["rows"]:
        assert sensory.critical_number(answers, "triangle") == least
        assert sensory.chance_to_find(answers, "triangle", 0.5) == pytest.approx(half, abs=6e-4)
        assert sensory.chance_to_find(answers, "triangle", 0.3) == pytest.approx(some, abs=6e-4)
    both = stats.binom.sf(9, 12, 0.8) + stats.binom.cdf(2, 12, 0.8)
    assert sensory.chance_to_find(12, "pair_two_sided", 0.6) == pytest.approx(both, rel=1e-9)
    assert sensory.chance_to_find(2, "triangle", 1.0) == 0.0


def test_the_share_that_would_have_been_found_is_the_least() -> None:
    for method in sensory.CHANCES:
        share = sensory.least_share_found(24, method)
        assert share is not None and 0 < share < 1
        assert sensory.chance_to_find(24, method, share) >= 0.8 > sensory.chance_to_find(24, method, share - 0.001)
    assert sensory.least_share_found(2, "triangle") is None
    shares = [sensory.least_share_found(n, "triangle") or 1.0 for n in (6, 12, 24, 60)]
    assert shares == sorted(shares, reverse=True), "more answers find less"
    assert sensory.least_share_found(24, "triangle", beta=0.05) > sensory.least_share_found(24, "triangle", beta=0.5)


def test_the_published_example_of_a_ranking() -> None:
    said, found = PRINTED["ranking"], ranking.compare_ranks(ORDERS)
    assert found.sums == tuple(said["sums"])
    assert found.friedman == pytest.approx(said["friedman"], abs=1e-9)
    assert found.lsd == pytest.approx(said["lsd_5"], abs=1e-3)
    assert ranking.compare_ranks(ORDERS, 0.01).lsd == pytest.approx(said["lsd_1"], abs=2e-3)  # z as 2.576
    assert not found.is_exact and 0.01 < found.p < 0.05
    apart = {"-".join("ABCDE"[n] for n in pair) for pair in ranking.pairs_apart(found.sums, found.lsd)}
    assert apart == set(said["apart"])
    assert ranking.pairs_apart([1.0, 4.0], 3.0) == [(0, 1)], "just so far apart is apart"


def test_friedman_with_and_without_ties_is_that_of_scipy() -> None:
    """scipy.stats.friedmanchisquare and rankdata, a general-purpose library."""
    wanted = stats.friedmanchisquare(*zip(*ORDERS, strict=True)).statistic
    assert ranking.friedman_figure(ORDERS) == pytest.approx(wanted)
    chance = random.Random(5)
    for glasses, tasters in ((3, 5), (4, 7), (6, 4)):
        scores = [[chance.randint(1, 4) for _ in range(glasses)] for _ in range(tasters)]
        tied = [[float(rank) for rank in stats.rankdata(one)] for one in scores]
        wanted = stats.friedmanchisquare(*zip(*scores, strict=True)).statistic
        assert ranking.friedman_figure(tied) == pytest.approx(wanted, rel=1e-9)
    assert ranking.friedman_figure([[1.5, 1.5], [1.5, 1.5]]) == 0.0, "nobody set them apart"


def test_small_panels_are_counted_out() -> None:
    for tasters, glasses, figure, chance in PRINTED["friedman_exact"]["rows"]:
        orders = next(
            panel for panel in itertools.product(itertools.permutations(range(1, glasses + 1)), repeat=tasters)
            if abs(ranking.friedman_figure(panel) - figure) < 1e-9
        )
        found = ranking.compare_ranks(orders)
        assert found.is_exact and found.p == pytest.approx(chance, abs=6e-4)
    tied = [[1.0, 2.5, 2.5], [1.0, 2.0, 3.0], [1.5, 1.5, 3.0]]
    least = sum(sum(column) ** 2 for column in zip(*tied, strict=True))
    panels = list(itertools.product(*(list(itertools.permutations(one)) for one in tied)))
    hits = sum(sum(sum(column) ** 2 for column in zip(*panel, strict=True)) >= least for panel in panels)
    assert ranking.compare_ranks(tied).p == pytest.approx(hits / len(panels), rel=1e-12)


def test_chi_square_is_that_of_the_tables_and_of_scipy() -> None:
    for share, row in ((0.05, "5 %"), (0.01, "1 %")):
        for freedom, figure in PRINTED["chi_square"][row].items():
            assert ranking.chi_square_p(figure, int(freedom)) == pytest.approx(share, abs=3e-4)
    for freedom in range(1, 21):
        assert ranking.chi_square_p(7.3, freedom) == pytest.approx(stats.chi2.sf(7.3, freedom), rel=1e-9)
    assert ranking.chi_square_p(0.0, 1) == 1.0


@pytest.mark.parametrize("call", [
    lambda: sensory.guessing_p(9, 8, "triangle"), lambda: sensory.guessing_p(-1, 8, "triangle"),
    lambda: sensory.critical_number(0, "triangle"), lambda: sensory.critical_number(1001, "triangle"),
    lambda: sensory.critical_number(8, "triangle", 0.0), lambda: sensory.chance_to_find(8, "triangle", 1.1),
    lambda: sensory.least_share_found(8, "triangle", beta=1.0),
    lambda: ranking.friedman_figure([[1.0]]),
    lambda: ranking.friedman_figure([[1.0, 3.0]]), lambda: ranking.friedman_figure([[1.0, 2.0], [1.0, 2.0, 3.0]]),
    lambda: ranking.friedman_figure([[1.0, 1.0, 3.0]]), lambda: ranking.compare_ranks([[1.0, 2.0]] * 101),
    lambda: ranking.chi_square_p(-1.0, 2), lambda: ranking.chi_square_p(1.0, 21), lambda: ranking.compare_ranks([]),
])
def test_what_no_panel_can_give_is_refused(call: object) -> None:
    with pytest.raises(OutOfDomain):
        call()  # type: ignore[operator]
