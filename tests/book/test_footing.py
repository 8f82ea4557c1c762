"""Shown figures add up: lines to totals, opening and what moved to closing, in litres and in proof gallons."""

from decimal import Decimal
from fractions import Fraction
from itertools import product
from math import ceil, floor

import pytest
from hypothesis import given
from hypothesis import strategies as some

from webapp.book.periods.footing import foot, foot_amounts, footed, in_litres, in_proof_gallons, moved, nearest
from webapp.book.periods.periods import Account, Shown, litres, proof_gallons

amounts = some.integers(0, 10**11) | some.sampled_from([1, 4_999, 5_000, 5_001, 10_000, 95_090, 95_091, 190_180])
parties = some.sampled_from(["out:fermented", "out:evaporation", "storage", "processing", "finished", "out:sample"])
sides = some.lists(some.tuples(parties, amounts), max_size=25)


def account(opening: int, ins: list[tuple[str, int]], outs: list[tuple[str, int]]) -> Account:
    came, went = (
        tuple(Shown(side, party, str(n), "", ul) for n, (party, ul) in enumerate(lines))
        for side, lines in (("in", ins), ("out", outs))
    )
    return Account("production", opening, came, went, opening + sum(ul for _, ul in ins) - sum(ul for _, ul in outs))


@given(some.integers(-10**11, 10**11), sides, sides)
def test_every_account_adds_up_as_shown(
    opening: int, ins: list[tuple[str, int]], outs: list[tuple[str, int]]
) -> None:
    made = account(opening, ins, outs)
    for measure, nearest_of in ((in_litres(), litres), (in_proof_gallons(), proof_gallons)):
        shown = footed(made, measure)
        assert sum(map(Decimal, shown.ins)) == Decimal(shown.total_in)
        assert sum(map(Decimal, shown.outs)) == Decimal(shown.total_out)
        total = Decimal(shown.opening) + Decimal(shown.total_in) - Decimal(shown.total_out)
        assert total == Decimal(shown.closing)
        # One period begins as the last one ended: both ends are the nearest, whatever lies between.
        assert Decimal(shown.opening) == nearest_of(made.opening)
        assert Decimal(shown.closing) == nearest_of(made.closing)
        figures = [*zip((*made.ins, *made.outs), (*shown.ins, *shown.outs), strict=True)]
        for line, text in figures:
            assert abs(Fraction(Decimal(text)) - measure.steps(line.ul) * Fraction(measure.step)) < measure.step
            assert Decimal(text) >= 0
            assert len(text.partition(".")[2]) == len(str(measure.step)) - 2


@given(some.lists(some.fractions(-50, 50, max_denominator=64), min_size=1, max_size=7), some.integers(-1, 1))
def test_no_rounding_that_adds_up_is_nearer(parts: list[Fraction], way: int) -> None:
    """Held against every choice of the whole number below or above each part."""
    exact = sum(parts, Fraction(0))
    total = nearest(exact) + way
    if abs(total - exact) >= 1:
        return
    made = foot(parts, total)
    ways = product(*({floor(part), ceil(part)} for part in parts))
    least = min(sum(abs(a - b) for a, b in zip(one, parts, strict=True)) for one in ways if sum(one) == total)
    assert sum(made) == total
    assert sum(abs(a - b) for a, b in zip(made, parts, strict=True)) == least


def test_the_textbook_example_of_largest_remainders() -> None:
    """Ten seats by Hare's quota, as encyclopaedias print it for the method of largest remainders (from memory)."""
    votes = [47_000, 16_000, 15_800, 12_000, 6_100, 3_100]
    assert foot([Fraction(one, 10_000) for one in votes], 10) == [5, 2, 1, 1, 1, 0]


def test_what_goes_to_another_account_is_the_same_on_both_sides_where_it_can_be() -> None:
    """0.006 L to storage and 0.006 L of samples out of 1.012 L: 1.01 on hand, nothing left but 1.00; 0.01 goes out."""
    made = account(1_012_000, [], [("storage", 6_000), ("out:sample", 6_000)])
    assert footed(made, in_litres()).outs == ("0.01", "0.00")
    assert [(line.party, by) for line, by in moved(made) if "L" in by] == [("out:sample", "0.01 L less")]


def quarter_of(there: int, months: list[list[int]]) -> tuple[list[Account], Account]:
    """Three months with lines of such amounts going out, and their quarter."""
    names, opening, found = ("out:sample", "out:evaporation", "out:leak"), there, []
    for amounts in months:
        found.append(account(opening, [], list(zip(names, amounts, strict=True))))
        opening -= sum(amounts)
    sums = [sum(amounts) for amounts in zip(*months, strict=True)]
    return found, account(there, [], list(zip(names, sums, strict=True)))


def beside(months: list[Account], quarter: Account) -> list[Decimal]:
    """How far each line of the quarter stands beside the sum of its months as shown. [L]"""
    shown = zip(*(footed(one, in_litres()).outs for one in months), strict=True)
    of_months = [sum(map(Decimal, some)) for some in shown]
    return [abs(Decimal(a) - b) for a, b in zip(footed(quarter, in_litres()).outs, of_months, strict=True)]


def test_a_quarter_need_not_be_the_sum_of_its_months_as_shown() -> None:
    """It is rounded by itself, so that no figure is farther off than it must be: the page says so."""
    made = quarter_of(10_000_281, [[19_379, 6_360, 16_133], [3_421, 21_822, 12_781], [9_701, 16_518, 16_377]])
    assert max(beside(*made)) == Decimal("0.02")


@given(some.integers(10**9, 10**10), some.lists(some.lists(some.integers(0, 10**8), min_size=3, max_size=3),
                                                min_size=3, max_size=3))
def test_a_line_of_a_quarter_stands_at_most_three_beside_its_months(there: int, months: list[list[int]]) -> None:
    made = quarter_of(there, months)
    assert max(beside(*made)) <= Decimal("0.03")
    for line, text in zip(made[1].outs, footed(made[1], in_litres()).outs, strict=True):
        assert abs(Decimal(text) - Decimal(line.ul) / 10**6) < Decimal("0.01")


def test_lines_that_add_up_by_themselves_are_left_alone() -> None:
    made = account(1_000_000, [("out:fermented", 2_340_000)], [("storage", 1_110_000)])
    assert [by for _, by in moved(made) if " L " in by] == []
    assert footed(made, in_litres()).closing == "2.23"


def test_amounts_below_a_total_that_is_none_of_theirs_are_refused() -> None:
    with pytest.raises(ValueError, match="come to"):
        foot([Fraction(1, 2)], 5)
    assert foot_amounts([], 0, in_litres()) == []
    assert foot_amounts([3_333_333, 3_333_333, 3_333_334], 10_000_000, in_litres()) == [
        Decimal("3.33"), Decimal("3.33"), Decimal("3.34")]
