"""Shown figures that add up: lines rounded so that they come to their totals, by largest remainder.

What is on hand at the start and at the end is rounded to the nearest, so that one period begins as the last one ended.
Totals and lines follow: each to the nearest where that adds up; where it does not, those that stand nearest to the
other side of their rounding go there, no further, and as few as can be. What goes between two accounts moves last, so
that both say the same. Signed figures are whole microlitres and no part of this.

Source: the method of largest remainders (Hamilton; common practice for tables that must add up, no source).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction

from webapp.book.periods.lines import ACCOUNTS
from webapp.book.periods.periods import UL_PER_L, Account, Shown, litres, proof_gallons
from webapp.trade.proof import lpa_per_proof_gallon


@dataclass(frozen=True, slots=True)
class Measure:
    """What amounts are shown in. step: one of its last place; ul: pure alcohol in one step [uL]."""

    step: Decimal
    ul: Fraction

    def steps(self, ul: int) -> Fraction:
        """Return an amount in steps, exact. ul: [uL]"""
        return ul / self.ul


def in_litres() -> Measure:
    """Return litres of pure alcohol at 20 degC, to 0.01."""
    return Measure(Decimal("0.01"), Fraction(UL_PER_L, 100))


def in_proof_gallons() -> Measure:
    """Return proof gallons, to 0.1."""
    return Measure(Decimal("0.1"), Fraction(lpa_per_proof_gallon()) * UL_PER_L / 10)


@dataclass(frozen=True, slots=True)
class Footed:
    """The shown figures of an account, each a text: opening and ins less outs are the closing, to the last place."""

    opening: str
    ins: tuple[str, ...]
    total_in: str
    outs: tuple[str, ...]
    total_out: str
    closing: str


def footed(account: Account, measure: Measure) -> Footed:
    """Return an account's figures as they are shown."""
    opening, closing = nearest(measure.steps(account.opening)), nearest(measure.steps(account.closing))
    both = [measure.steps(account.total_in), -measure.steps(account.total_out)]
    total_in, less = foot(both, closing - opening)
    ins, outs = _side(account.ins, total_in, measure), _side(account.outs, -less, measure)

    def text(steps: int) -> str:
        return str(steps * measure.step)

    return Footed(
        text(opening), tuple(map(text, ins)), text(total_in), tuple(map(text, outs)), text(-less), text(closing)
    )


def foot_amounts(amounts: Sequence[int], total: int, measure: Measure) -> list[Decimal]:
    """Return amounts as they are shown below their total, which is shown to the nearest. All in [uL], any sign."""
    steps = foot([measure.steps(ul) for ul in amounts], nearest(measure.steps(total)))
    return [one * measure.step for one in steps]


def moved(account: Account) -> list[tuple[Shown, str]]:
    """Return the lines that are shown otherwise than to their nearest, each with by how much: `0.01 L more`."""
    found = []
    for measure, nearest_of, unit in (
        (in_litres(), litres, "L"), (in_proof_gallons(), proof_gallons, "proof gal"),
    ):
        made = footed(account, measure)
        for line, text in zip((*account.ins, *account.outs), (*made.ins, *made.outs), strict=True):
            off = Decimal(text) - nearest_of(line.ul)
            if off:
                found.append((line, f"{abs(off)} {unit} {'more' if off > 0 else 'less'}"))
    return found


def _side(lines: Sequence[Shown], total: int, measure: Measure) -> list[int]:
    return foot([measure.steps(line.ul) for line in lines], total, [line.party in ACCOUNTS for line in lines])


def foot(parts: Sequence[Fraction], total: int, is_last: Sequence[bool] = ()) -> list[int]:
    """Return parts in whole steps that come to a total: each the whole number below or above it, as near as can be.

    total: less than one from the sum of the parts, else ValueError. is_last: those that move only after all others.
    """
    whole = [nearest(part) for part in parts]
    off = total - sum(whole)
    way = 1 if off > 0 else -1
    last = is_last or [False] * len(parts)
    can = [n for n, part in enumerate(parts) if (part - whole[n]) * way > 0]
    can.sort(key=lambda n: (last[n], -abs(parts[n] - whole[n]), n))
    if len(can) < abs(off):
        raise ValueError(f"{total} is not what these parts come to.")
    for n in can[: abs(off)]:
        whole[n] += way
    return whole


def nearest(steps: Fraction) -> int:
    """Return the nearest whole number of steps, halves away from nothing."""
    rounded = int(abs(steps) + Fraction(1, 2))
    return rounded if steps >= 0 else -rounded
