"""A trace as lists: its parts by sort, the recall list, what stands where. The same for one site and for several."""

from __future__ import annotations

from collections import defaultdict
from typing import TypedDict

from webapp.book.lineage.lineage import Trace
from webapp.book.lineage.names import Node
from webapp.desk.trace.picture import COLUMN, SORTS, Links, with_vats
from webapp.words.desk import Later

LISTED_MOST = 60  # of one sort on the page; the files have all
PARTS_MOST = 12
TITLES = {
    "fruit": Later("desk-common-fruit"), "opening": Later("desk-trace-from_before_this_book"),
    "received": Later("desk-trace-received_from_elsewhere"), "found": Later("desk-trace-not_on_record"),
    "no_fruit": Later("desk-trace-no_fruit_on_record"), "rest": Later("desk-trace-not_followed"),
    "ferment": Later("desk-trace-ferments"), "run": Later("desk-common-runs"),
    "receiver": Later("desk-trace-receivers"), "can": Later("desk-trace-cans"), "still": Later("desk-trace-stills"),
    "tank": Later("desk-trace-tanks"), "cask": Later("desk-common-casks"), "vat": Later("desk-trace-vats"),
    "way": Later("desk-trace-between_sites"), "bottling": Later("desk-trace-bottlings"),
    "goods_way": Later("desk-trace-bottles_between_sites"), "goods": Later("desk-trace-received_in_bottles"),
    "gone": Later("desk-trace-gone"),
}


class Line(TypedDict):
    """A node of a trace with its share and its amount; fruit has none yet. [%, uL of pure alcohol]"""

    node: Node
    share_pct: float
    lpa_ul: float | None


class SectionLine(Line):
    """The same with the parts that it came from, and how many more there are."""

    parts: list[tuple[Node, float]]
    more: int


class Section(TypedDict):
    """The nodes of one sort."""

    title: str
    lines: list[SectionLine]


def made_name(made: Trace, gone: str) -> str:
    """Return the title of an outside account."""
    node = made.nodes.get(f"g:{gone}")
    return node.name if node else {"bottled": "in bottles"}.get(gone, gone.replace("_", " "))


def back_links(made: Trace) -> Links:
    """Return the links of the origin in pure alcohol. [uL] A fill without alcohol yet: in shares of a million."""
    whole = made.lpa_ul or 1e6
    return {pair: share * whole for pair, share in made.origin.links.items()}


def sections(made: Trace, links: Links, total: float, *, backward: bool) -> list[Section]:
    """Return the nodes of a direction by sort, each with its share, amount and the parts it came from."""
    total = total or (1e6 if backward else 0.0)
    into: dict[str, dict[str, float]] = defaultdict(dict)
    out: dict[str, dict[str, float]] = defaultdict(dict)
    for (source, target), weight in links.items():
        into[target][source] = out[source][target] = weight
    sorts = with_vats(made.nodes, links)
    found: dict[str, list[SectionLine]] = defaultdict(list)
    for node in {*into, *out}:
        if node == made.subject.node:
            continue
        weight = max(sum(into[node].values()), sum(out[node].values()))
        parts = sorted(into[node].items(), key=lambda item: (-item[1], item[0]))
        found[sorts[node]].append({
            "node": made.nodes[node], "lpa_ul": weight if made.lpa_ul or not backward else 0.0,
            "share_pct": min(100 * weight / total, 100.0) if total else 0.0,
            "parts": [(made.nodes[part], 100 * ul / total if total else 0.0) for part, ul in parts[:PARTS_MOST]],
            "more": max(len(parts) - PARTS_MOST, 0),
        })
    order = sorted(found, key=lambda sort: (COLUMN[sort], SORTS.index(sort)), reverse=backward)
    return [
        {"title": str(TITLES[sort]), "lines": sorted(
            found[sort], key=lambda line: (-line["share_pct"], line["node"].id),
        )}
        for sort in order
    ]


def bottlings(made: Trace) -> list[Line]:
    """Return the recall list: every bottling that holds a part, the newest first."""
    lines: list[Line] = [
        {"node": made.nodes[f"b:{entry}"], "share_pct": 100 * share, "lpa_ul": ul}
        for entry, (share, ul) in made.spread.bottled.items()
    ]
    return sorted(lines, key=lambda line: (line["node"].at, line["node"].id), reverse=True)


def standing_spirit(made: Trace) -> list[Line]:
    """Return the spirit that stands somewhere now, the most first; fruit that has made no alcohol yet comes last."""
    lines: list[Line] = [
        {"node": made.nodes[f"f:{fill}"], "share_pct": 100 * share, "lpa_ul": ul}
        for fill, (share, ul) in made.spread.standing.items()
    ]
    lines += [
        {"node": made.nodes[f"f:{fill}"], "share_pct": 100 * share, "lpa_ul": None}
        for fill, share in made.spread.mash.items()
    ]
    return sorted(lines, key=lambda line: (-(line["lpa_ul"] or 0.0), line["node"].id))
