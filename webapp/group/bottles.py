"""Bottles in a trace over several sites: those that went over the border are fills in the sums, and bottlings on paper.

So a trace goes on through them as through any tank: out of the sender's bottling, on the way, into the receiver's, and
on from there. What left a bottling otherwise (sold, poured, broken) ends a trace, as at one site: that is listed as
where the cases went.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping

from webapp.book.lineage.lineage import Trace
from webapp.book.lineage.trace import Reader

MARK = "/b:"  # within the id of a fill that is a bottling: `<site>/b:<root>`
SEEN = "g:transit"  # what was lost on the way here is shown; it is part of what the sender had bottled


def fill_of(site: str, root: str) -> str:
    """Return the id of the fill that stands for a bottling."""
    return f"{site}{MARK}{root}"


def is_bottles(node: str) -> bool:
    """Say whether a node or fill stands for a bottling."""
    fill = node.removeprefix("f:")
    return MARK in fill and fill[:2] != "t/"  # a document's number may hold anything


def name_bottlings(made: Trace, read: Reader, entry_of: Callable[[str, str], str]) -> None:
    """Turn the fills that stand for bottlings into bottlings, in place; `entry_of` gives the entry of (site, root)."""
    links = (*made.origin.links, *made.spread.links)
    fills = {node[2:] for pair in links for node in pair if is_bottles(node)}
    names = {}
    for fill in fills:
        site, root = fill.split(MARK)
        names[f"f:{fill}"] = f"b:{site}/{entry_of(site, root)}"
    made.origin.links = _named(made.origin.links, names)
    spread = made.spread
    for (source, target), ul in spread.links.items():
        if source in names and target[:2] == "g:" and target != SEEN:
            left = spread.gone_ul.get(target[2:], 0.0) - ul
            spread.gone_ul[target[2:]] = left
            if left < 1.0:  # less than a microlitre is what floating sums leave
                del spread.gone_ul[target[2:]]
    reached = {target for _, target in spread.links} & set(names)
    for node in sorted(reached):
        _as_bottled(made, read, node, names[node])
    spread.links = _named({
        (source, target): ul for (source, target), ul in spread.links.items()
        if source not in names or target[:2] != "g:" or target == SEEN
    }, names)
    for fill in fills:
        spread.standing.pop(fill, None)


def _as_bottled(made: Trace, read: Reader, node: str, name: str) -> None:
    """Note the share of the subject in these bottles.

    It is the share of the first inflow, because bottles that came back later were part of it.
    """
    spread = made.spread
    came = [step for step in read(node[2:]) if step.target_fill == node[2:]]
    reached_ul = sum(ul for (_, target), ul in spread.links.items() if target == node)
    share = min(reached_ul / (sum(step.lpa_ul for step in came) or 1), 1.0)
    spread.bottled[name[2:]] = (share, share * sum(step.lpa_ul for step in came if step.entry == name[2:]))
    filled_ul = sum(
        ul for (source, target), ul in spread.links.items() if target == node and source[2:4] != "t/"
    )
    if filled_ul:
        spread.gone_ul["bottled"] = spread.gone_ul.get("bottled", 0.0) + filled_ul


def _named(links: Mapping[tuple[str, str], float], names: Mapping[str, str]) -> dict[tuple[str, str], float]:
    return {(names.get(a, a), names.get(b, b)): weight for (a, b), weight in links.items()}
