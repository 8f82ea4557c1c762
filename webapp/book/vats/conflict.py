"""Where no vat keeps a wish: which of its parts stand in each other's way, and which of them is enough to let go.

Parts are let go one by one; a part without which the rest is still impossible is no part of the trouble (deletion
filter: J. W. Chinneck, E. W. Dravnieks, ORSA J. Computing 3 (1991) 157, from memory). What is left cannot be kept
together, and could be without any one of it. Plain limits are tried before musts, so that the set is small and plain.
"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass
from itertools import combinations

from webapp.book.vats.programme import NotFound, Programme
from webapp.book.vats.sum import Source
from webapp.book.vats.wish import LOT_SHARE, MUST, SHARE, STRENGTH, WHOLE, Wish, parts_of

CHECK_EFFORT = 20_000  # less than a search: these are many
SETS_MOST = 400  # of parts that are tried for the smallest
SOURCES_MOST = 500  # among more of them nobody looks for the reason: it would take minutes


@dataclass(frozen=True, slots=True)
class Conflict:
    """Parts of a wish that cannot be kept together; enough: those that free the whole wish, each by itself.

    is_smallest: no set of fewer parts is impossible.
    """

    parts: tuple[str, ...]
    enough: tuple[str, ...]
    is_smallest: bool


def find_conflict(sources: Sequence[Source], wish: Wish) -> Conflict | None:
    """Return a smallest set of parts that stand in each other's way; None where the work does not suffice to tell."""
    if len(sources) > SOURCES_MOST:
        return None
    parts = parts_of(wish, sources)
    try:
        if _can(sources, wish, parts):
            return None
        found = _smallest(sources, wish, parts)
        is_smallest = found is not None
        found = found or _filtered(sources, wish, parts)
        enough = [one for one in found if _can(sources, wish, [part for part in parts if part != one])]
    except NotFound:
        return None
    return Conflict(tuple(found), tuple(enough), is_smallest)


def _can(sources: Sequence[Source], wish: Wish, kept: Collection[str]) -> bool:
    return Programme(sources, wish, kept, CHECK_EFFORT).is_possible()


def _smallest(sources: Sequence[Source], wish: Wish, parts: Sequence[str]) -> list[str] | None:
    """Return the first impossible set among the smaller ones, the smallest first; None where there are too many."""
    tried = 0
    for size in range(1, len(parts) + 1):
        for some in combinations(parts, size):
            tried += 1
            if tried > SETS_MOST:
                return None
            if not _can(sources, wish, some):
                return list(some)
    return None


def _filtered(sources: Sequence[Source], wish: Wish, parts: Sequence[str]) -> list[str]:
    left = list(parts)
    for one in parts:
        without = [part for part in left if part != one]
        if not _can(sources, wish, without):
            left = without
    return left


def conflict_words(conflict: Conflict, sources: Sequence[Source], wish: Wish) -> str:
    """Return a conflict in a sentence, and what to let go."""
    if plain := _plain_words(conflict, sources, wish):
        return plain
    names = {one.mark: one.name for one in sources}
    said = {part: _part_words(part, wish, names) for part in conflict.parts}
    together = f"These cannot be kept together: {'; '.join(said.values())}."
    free = [said[part] for part in conflict.enough]
    if not free:
        return f"{together} More than one of them has to give, or pick more vessels."
    way = "Let it go" if len(free) == 1 else "Let any one of them go"
    one = f" ({free[0]})" if len(free) == 1 and len(said) > 1 else ""
    if 1 < len(free) < len(said):
        way, one = "Let one of these go", f": {'; '.join(free)}"
    return f"{together} {way}{one}, or pick more vessels."


def _part_words(part: str, wish: Wish, names: dict[str, str]) -> str:
    if part.startswith(MUST):
        return f"{names[part.removeprefix(MUST)]} must go in"
    return {
        WHOLE: "casks go whole, none is drawn in part",
        SHARE: f"at most {wish.share_most_pct:g} % of any one vessel",
        LOT_SHARE: f"at most {wish.lot_most_pct:g} % of any one lot",
        STRENGTH: f"{wish.strength_pct or 0:.1f} % vol",
    }[part]


def _plain_words(conflict: Conflict, sources: Sequence[Source], wish: Wish) -> str:
    """Return a plainer reason where one limit alone rules out every vat."""
    if conflict.parts == (STRENGTH,):
        strongest = max(one.strength_pct for one in sources)
        return f"The strongest of them has {strongest:.1f} % vol; water makes it weaker only. Ask for less than that."
    if conflict.parts == (SHARE,) and wish.share_most_pct * len(sources) < 100.0:
        return (
            f"{len(sources)} vessels of at most {wish.share_most_pct:g} % each cannot make a whole. "
            "Pick more of them, or allow a larger share."
        )
    lots = {one.lot for one in sources if one.lot}
    if conflict.parts == (LOT_SHARE,) and wish.lot_most_pct * len(lots) < 100.0:
        return (
            f"{len(lots)} lots of at most {wish.lot_most_pct:g} % each cannot make a whole. "
            "Pick more lots, or allow a larger share."
        )
    return ""


