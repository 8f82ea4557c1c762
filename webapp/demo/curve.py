"""The invented curve of a run whose full log is not at hand. It agrees with the run's own figures.

Let u be the share of a fraction that has run, by volume, 0 to 1:
    heads    falls in a straight line by 0.8 points about its gauged strength
    hearts   s(u) = cut + (first - cut) * (1 - u**q);    its mean over u is cut + (first - cut) * q / (q + 1)
    tails    s(u) = end + (cut - end) * (1 - u)**p;      its mean over u is end + (cut - end) / (p + 1)
with q and p chosen so that the mean is the strength that was gauged. Flow is a fixed shape over u, and time is volume
over flow. A stripping run is one fraction shaped like tails.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise

HEADS_FALL = 0.8  # [% vol]
STEPS = 200


@dataclass(frozen=True, slots=True)
class Moment:
    """The stream at one moment: minutes since the first drop, fraction, share of it, true strength, flow [L/h]."""

    minute: float
    fraction: str
    share: float
    strength_pct: float
    flow_l_h: float


@dataclass(frozen=True, slots=True)
class Fraction:
    """One fraction: litres, gauged strength, strength at its begin and end [% vol], flow over the share [L/h]."""

    name: str
    volume_l: float
    mean_pct: float
    first_pct: float
    last_pct: float
    flows: tuple[tuple[float, float], ...]

    def strength(self, share: float) -> float:
        """Return the strength at a share of the volume. [% vol], last to first."""
        fall = self.first_pct - self.last_pct
        above = (self.mean_pct - self.last_pct) / fall
        if self.name == "heads":
            return self.first_pct - fall * share
        if self.name == "hearts":
            q = above / (1 - above)
            return float(self.last_pct + fall * (1 - share**q))
        return float(self.last_pct + fall * (1 - share) ** (1 / above - 1))

    def flow(self, share: float) -> float:
        """Return the flow at a share of the volume. [L/h]"""
        for (a, left), (b, right) in pairwise(self.flows):
            if share <= b:
                return left + (right - left) * (share - a) / (b - a)
        return self.flows[-1][1]


def fractions_of(
    heads: tuple[float, float], hearts: tuple[float, float], tails: tuple[float, float], cut_pct: float, pace: float
) -> list[Fraction]:
    """Return the three fractions of a run from (litres, % vol) each, the strength of the hearts cut, and the pace."""
    first = heads[1] - HEADS_FALL / 2
    end = 8.8

    def paced(*flows: tuple[float, float]) -> tuple[tuple[float, float], ...]:
        return tuple((share, flow * pace) for share, flow in flows)

    return [
        Fraction("heads", *heads, heads[1] + HEADS_FALL / 2, first, paced((0, 3.6), (1, 7.0))),
        Fraction("hearts", *hearts, first, cut_pct, paced((0, 7.4), (0.1, 11), (0.3, 13.6), (0.8, 14.3), (1, 12.3))),
        Fraction("tails", *tails, cut_pct, end, paced((0, 12.1), (1, 11))),
    ]


def stripping(volume_l: float, mean_pct: float) -> list[Fraction]:
    """Return a stripping run as its one fraction."""
    return [Fraction("low_wines", volume_l, mean_pct, 55.0, 1.2, ((0, 28), (0.2, 36), (1, 33)))]


def moments(fractions: list[Fraction]) -> Iterator[Moment]:
    """Yield the stream in small steps from the first drop to the end."""
    minute = 0.0
    for fraction in fractions:
        for step in range(STEPS + 1):
            share = step / STEPS
            if step:
                minute += 60 * fraction.volume_l / STEPS / fraction.flow(share - 0.5 / STEPS)
            yield Moment(minute, fraction.name, share, fraction.strength(share), fraction.flow(share))
