"""What a vat should be: the wish, and the parts of it that can stand in each other's way."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from webapp.book.vats.sum import Source

AIMS = ("fewest", "oldest_stays", "oldest_first")
STRENGTH, SHARE, LOT_SHARE, WHOLE, MUST = "strength", "share", "lot_share", "whole", "must:"


@dataclass(frozen=True, slots=True)
class Wish:
    """What the vat should be. Shares are of its pure alcohol."""

    strength_pct: float | None = None  # None: as the spirit comes, no water
    volume_l: float | None = None  # None: as much as they give
    within_pct: float = 2.0  # the volume may be off by this for the aim's sake
    share_most_pct: float = 100.0  # of any one vessel
    lot_most_pct: float = 100.0  # of any one lot
    always: frozenset[str] = frozenset()  # marks that go in whatever else does
    aim: str = "fewest"


def parts_of(wish: Wish, sources: Sequence[Source]) -> tuple[str, ...]:
    """Return the parts of a wish that a choice has to keep, each by name: a must names its vessel, `must:C001-Z`.

    Volume and aim are none: they are met as nearly as can be.
    """
    parts = [MUST + one.mark for one in sources if one.mark in wish.always]
    if any(one.is_whole for one in sources):
        parts.append(WHOLE)
    if wish.lot_most_pct < 100.0:
        parts.append(LOT_SHARE)
    if wish.share_most_pct < 100.0:
        parts.append(SHARE)
    if wish.strength_pct is not None:
        parts.append(STRENGTH)
    return tuple(parts)
