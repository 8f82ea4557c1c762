"""Which casks and tanks make the vat that is wanted, and how far it is proven that none is better.

Wishes are met one after the other, each kept while the next is sought:

1. as near the volume as can be, or as much as can be where no volume is wanted;
2. the aim: fewest vessels, oldest stays, oldest first;
3. nearer the volume again, as far as the aim allows.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from webapp.book.before.limits import Limit, declare
from webapp.book.vats.conflict import SOURCES_MOST as CONFLICT_MOST
from webapp.book.vats.conflict import conflict_words, find_conflict
from webapp.book.vats.programme import EFFORT, LEAST_DRAW_KG, Impossible, NotFound, Programme, Sought
from webapp.book.vats.sum import Draw, Source, Vat, make_vat, to_scale
from webapp.book.vats.wish import Wish, parts_of

LIMITS = declare(
    Limit(
        "vat_youngest_years", 2, "years", "Youngest part of a planned vat, in wood for at least",
        "a rule of the house, not of the law: fruit brandy stands at least two years in oak",
    ),
)

SOURCES_MOST = 2_000
NEAR_SHARE = 0.0005  # of the volume: nearer than any dip can tell, and quick to prove
AIM_SHARE = 0.0001  # of the ethanol and its years
SLACK_L = 0.01  # by how much a later wish may move the volume of an earlier one
PROVEN_L = 0.1  # where as much as can be is wanted


class NoVat(Exception):
    """No choice of these sources makes such a vat; the words say why and what to change."""


@dataclass(frozen=True, slots=True)
class Proof:
    """How far it is proven that no choice is better.

    litres: a vat nearer what was wanted by more than this is ruled out; fewer: so many fewer vessels, and older_pct: so
    much more or less of old spirit [% of kg of ethanol times years], are not ruled out. Nothing: proven.
    """

    litres: float
    fewer: int = 0
    older_pct: float = 0.0

    def is_proven(self, near_l: float) -> bool:
        """Say whether nothing better is left that anybody could tell. near_l: what no dip can tell [L]"""
        return self.litres <= near_l and not self.fewer and self.older_pct <= 2 * AIM_SHARE * 100


@dataclass(frozen=True, slots=True)
class WorkedOut:
    """The vat that meets a wish best, and how far that is proven."""

    vat: Vat
    proof: Proof

    def words(self, litres: Callable[[float], str] = "{:.1f} L".format) -> str:
        """Return the proof in a sentence. litres: how the house says a volume."""
        if self.proof.is_proven(max(self.vat.volume_l * NEAR_SHARE, PROVEN_L) + SLACK_L):
            return "Proven: no other choice of these meets the wish better."
        open_ = []
        if self.proof.litres > self.vat.volume_l * NEAR_SHARE:
            open_.append(f"a vat up to {litres(self.proof.litres)} nearer")
        if self.proof.fewer:
            open_.append(f"one with up to {self.proof.fewer} fewer vessels")
        if self.proof.older_pct > 2 * AIM_SHARE * 100:
            open_.append(f"one up to {self.proof.older_pct:.1f} % better by age")
        return f"Not proven: {' and '.join(open_)} is not ruled out. Tick fewer vessels for a proof."


def solve(sources: Sequence[Source], wish: Wish) -> Vat:
    """Return the vat that meets the wish best. NoVat says why there is none."""
    return work_out(sources, wish).vat


def work_out(sources: Sequence[Source], wish: Wish, effort: int = EFFORT) -> WorkedOut:
    """Return the vat that meets the wish best, and the proof. NoVat says why there is none.

    effort: how much the search may work, in branches times vessels.
    """
    usable = [source for source in sources if source.usable_kg >= LEAST_DRAW_KG and source.fraction > 0]
    if not usable:
        raise NoVat("None of these vessels has spirit to spare. Pick others, or leave less behind.")
    if len(usable) > SOURCES_MOST:
        raise NoVat(f"{len(usable)} vessels are too many at once. Narrow the list to {SOURCES_MOST}.")
    try:
        kilograms, proof = _run(Programme(usable, wish, parts_of(wish, usable), effort), wish)
    except Impossible:
        raise NoVat(_why_none(usable, wish)) from None
    except NotFound:
        raise NoVat(
            "No such vat was found, and none is ruled out: too many choices. Pick fewer vessels, or let more of them "
            "be drawn in part."
        ) from None
    made = make_vat([_rounded(one, kg) for one, kg in zip(usable, kilograms, strict=True)], wish.strength_pct)
    if made is None:
        raise NoVat(_why_none(usable, wish))
    return WorkedOut(made, proof)


def _rounded(source: Source, kg: float) -> Draw:
    return Draw(source, min(to_scale(kg), source.usable_kg))


def _run(programme: Programme, wish: Wish) -> tuple[list[float], Proof]:
    """Return the kilograms of each source, and how far they are proven."""
    volume = wish.volume_l
    if volume is None:
        missed, nearer = -programme.volume, PROVEN_L
        first = programme.seek(missed, gap=PROVEN_L)
        allowed = first.value + PROVEN_L
    else:
        missed = programme.apart(volume)
        enough, nearer = volume * max(wish.within_pct / 100.0, NEAR_SHARE), volume * NEAR_SHARE
        # What is within is right: so the search ends with the first such vat, and elsewhere goes on to the nearest.
        excess = programme.above(missed, enough)
        first = programme.seek(excess, gap=nearer)
        allowed = enough + first.value + SLACK_L
    programme.keep(missed, allowed)
    kilograms = programme.kilograms()
    is_count, aim = wish.aim == "fewest", programme.aim()
    try:
        best = programme.seek(aim, gap=0.99 if is_count else 1e-6, share=0.0 if is_count else AIM_SHARE)
        kilograms = programme.kilograms()
        programme.keep(aim, best.value + max(1e-6, abs(best.value) * 1e-6))
        last = programme.seek(missed, gap=nearer)
        kilograms = programme.kilograms()
    except (NotFound, Impossible):  # a choice is at hand: what is better is only not proven
        return kilograms, Proof(_left(first), *_aim_left(None, is_count))
    # The last wish comes after the aim: what it leaves open is no better vat by the wishes before it.
    return kilograms, Proof(max(_left(first), _left(last)), *_aim_left(best, is_count))


def _left(sought: Sought) -> float:
    return max(sought.value - sought.bound, 0.0)


def _aim_left(best: Sought | None, is_count: bool) -> tuple[int, float]:
    """Return the number of fewer vessels, and the per cent of a better age, that are not ruled out."""
    if best is None:
        return (1, 0.0) if is_count else (0, 100.0)
    if is_count:
        return max(round(best.value) - _ceil(best.bound), 0), 0.0
    return 0, min(_left(best) / max(abs(best.value), 1e-9) * 100, 100.0)


def _ceil(bound: float) -> int:
    """Return the least number of vessels that a bound leaves. One at least goes in."""
    return max(1, int(bound - 1e-6) + 1) if bound > 0 else 1


def _why_none(sources: Sequence[Source], wish: Wish) -> str:
    """Return the reason why these sources make no such vat: the smallest set of its parts that must give."""
    found = find_conflict(sources, wish)
    if found is None:
        return (
            "No choice of these keeps all limits. Let casks be drawn in part, allow a larger share, or pick others. "
            f"Tick at most {CONFLICT_MOST} to hear which limits stand in each other's way."
        )
    return conflict_words(found, sources, wish)
