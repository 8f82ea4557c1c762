"""The picture of a trace: bands from block to block, as wide as the pure alcohol they carry. Geometry alone, no page.

Each sort of thing has a column of its own, fruit first and bottles last. One drawing runs from left to right; the
other, for a phone, from top to bottom. What goes back a column (feints into a later run) is a line around, at most
AROUND_MOST wide: its share stands in the list.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field

from webapp.book.lineage.lineage import Node
from webapp.words.desk import Later, say

Links = Mapping[tuple[str, str], float]
SORTS = ("fruit", "opening", "received", "found", "no_fruit", "rest", "ferment", "run", "receiver", "can",
         "still", "tank", "cask", "vat", "way", "bottling", "goods_way",
         "goods", "gone")
COLUMN = {"fruit": 0, "opening": 0, "received": 0, "found": 0, "no_fruit": 0, "rest": 0, "ferment": 1,
          "run": 2, "receiver": 3, "can": 3, "still": 3, "tank": 4, "way": 4, "cask": 5, "vat": 6, "bottling": 7,
          "goods_way": 7, "goods": 7, "gone": 7}
HEADS = (
    Later("desk-common-fruit"), Later("desk-trace-ferments"), Later("desk-common-runs"),
    Later("desk-trace-receivers"), Later("desk-trace-tanks"), Later("desk-common-casks"), Later("desk-trace-vats"),
    Later("desk-common-bottles"),
)
DEEP_MOST = 3  # tanks into tanks: columns of one sort beside each other
WIDE, TALL = 1160, 358  # viewBox units, which are pixels at the widths they are made for
BLOCK, LETTER = 14, 6.7
AROUND_MOST = 9.0
Key = tuple[int, int]


@dataclass(slots=True)
class Block:
    """One thing in the picture; `node` is None for the others of a column taken together."""

    id: str
    node: Node | None
    name: str
    weight: float
    share_pct: float
    column: Key = (0, 0)
    x: float = 0.0
    y: float = 0.0
    width: float = 0.0
    height: float = 0.0
    label_x: float | None = None
    label_y: float = 0.0
    anchor: str = "start"
    sort: str = "rest"

    @property
    def label(self) -> str:
        """Name and share."""
        return f"{self.name} {percent(self.share_pct)}"


@dataclass(slots=True)
class Picture:
    """A drawing: blocks, bands (path, sort, whether it goes back) and heads (x, y, words)."""

    width: float
    height: float
    blocks: list[Block] = field(default_factory=list)
    bands: list[tuple[str, str, float | None]] = field(default_factory=list)
    heads: list[tuple[float, float, str]] = field(default_factory=list)


def percent(share_pct: float) -> str:
    """Return a share as people say it: two figures, and never a nought for something."""
    if share_pct >= 99.95:
        return "100 %"
    if share_pct >= 9.95:
        return f"{share_pct:.0f} %"
    if share_pct >= 0.095:
        return f"{share_pct:.1f} %"
    return say("desk-trace-under_0_1")


def with_vats(nodes: Mapping[str, Node], links: Links) -> dict[str, str]:
    """Return the sort of every node; a tank that a cask went into is a vat."""
    onward: dict[str, list[str]] = defaultdict(list)
    for source, target in links:
        onward[source].append(target)
    reached: set[str] = set()
    rest = [node for node, known in nodes.items() if known.sort == "cask"]
    while rest:
        for target in onward[rest.pop()]:
            if target not in reached:
                reached.add(target)
                rest.append(target)
    return {node: "vat" if known.sort == "tank" and node in reached else known.sort for node, known in nodes.items()}


def draw(nodes: Mapping[str, Node], links: Links, total: float, *, tall: bool) -> Picture | None:
    """Return the drawing of links between nodes, shares of `total`; None where there is nothing to draw."""
    if not links or total <= 0:
        return None
    sorts = with_vats(nodes, links)
    columns = _columns(sorts, links)
    blocks, joined = _gathered(nodes, sorts, columns, links, total, most=9 if tall else 14)
    rows: dict[Key, list[Block]] = defaultdict(list)
    for block in blocks.values():
        rows[block.column].append(block)
    order = sorted(rows)
    _untangle([rows[key] for key in order], joined)
    picture = _tall(order, rows) if tall else _wide(order, rows)
    _bands(picture, blocks, joined, tall)
    return picture


def _columns(sorts: Mapping[str, str], links: Links) -> dict[str, Key]:
    """Return each node's column: by its sort, and within one sort by how far along it lies."""
    deep = dict.fromkeys(sorts, 0)
    for _ in range(DEEP_MOST):
        for source, target in links:
            if COLUMN[sorts[source]] == COLUMN[sorts[target]]:
                deep[target] = min(max(deep[target], deep[source] + 1), DEEP_MOST)
    return {node: (COLUMN[sort], deep[node]) for node, sort in sorts.items()}


def _weights(links: Links) -> dict[str, float]:
    into: dict[str, float] = defaultdict(float)
    out: dict[str, float] = defaultdict(float)
    for (source, target), weight in links.items():
        out[source] += weight
        into[target] += weight
    return {node: max(into[node], out[node]) for node in {*into, *out}}


def _gathered(
    nodes: Mapping[str, Node], sorts: Mapping[str, str], columns: Mapping[str, Key], links: Links, total: float,
    *, most: int,
) -> tuple[dict[str, Block], dict[tuple[str, str], float]]:
    """Return the blocks, the small ones of a full column as one, and the links between them."""
    weights = _weights(links)
    by_column: dict[Key, list[str]] = defaultdict(list)
    for node in sorted(weights, key=lambda one: (-weights[one], one)):
        by_column[columns[node]].append(node)
    blocks, stands_for = {}, {}
    for column, there in by_column.items():
        shown = there if len(there) <= most else there[: most - 1]
        for node in shown:
            known = nodes[node]
            share = min(100 * weights[node] / total, 100.0)
            blocks[node] = Block(node, known, known.name, weights[node], share, column, sort=sorts[node])
            stands_for[node] = node
        others = there[len(shown) :]
        if others:
            name, weight = f"others:{column}", sum(weights[node] for node in others)
            share = min(100 * weight / total, 100.0)
            blocks[name] = Block(
                name, None, say("desk-trace-others", count=len(others)), weight, share, column, sort=sorts[others[0]],
            )
            stands_for |= dict.fromkeys(others, name)
    joined: dict[tuple[str, str], float] = defaultdict(float)
    for (source, target), weight in links.items():
        pair = stands_for[source], stands_for[target]
        if pair[0] != pair[1]:
            joined[pair] += weight
    return blocks, dict(joined)


def _untangle(rows: list[list[Block]], links: Links) -> None:
    """Put each column in the order of what it is joined to, once forth and once back."""
    for one_way in (rows, rows[::-1], rows):
        place: dict[str, float] = {}
        for row in one_way:
            pulled: dict[str, list[tuple[float, float]]] = defaultdict(list)
            for (source, target), weight in links.items():
                for block, other in ((source, target), (target, source)):
                    if other in place:
                        pulled[block].append((place[other], weight))
            middle = {
                block: sum(at * weight for at, weight in pairs) / (sum(weight for _, weight in pairs) or 1.0)
                for block, pairs in pulled.items()
            }
            row.sort(key=lambda block: (middle.get(block.id, 0.5), -block.weight, block.id))
            place |= {block.id: (n + 0.5) / len(row) for n, block in enumerate(row)}


def _wide(order: list[Key], rows: Mapping[Key, list[Block]]) -> Picture:
    """Columns from left to right, labels beside their blocks."""
    top, slot, gap = 34.0, 18.0, 6.0
    most = max(len(row) for row in rows.values())
    height = max(260.0, most * (slot + gap) + 60)
    heaviest = max(sum(block.weight for block in row) for row in rows.values())
    scale = (height - most * gap) / heaviest
    # The first column has the longest names: growers.
    first = min(230.0, WIDE / 3)
    pitch = (WIDE - 165 - first) / max(len(order) - 2, 1)
    picture = Picture(WIDE, 0)
    for n, key in enumerate(order):
        row, x, y = rows[key], first + (n - 1) * pitch if n else 0.0, top
        is_last = n == len(order) - 1 and n > 0
        picture.heads.append((x, 16.0, _head(key, row)))
        spare = height - sum(max(block.weight * scale, slot) + gap for block in row)
        y += max(spare, 0.0) / 2
        for block in row:
            room = max(block.weight * scale, slot)
            block.width, block.height = BLOCK, max(block.weight * scale, 2.0)
            block.x, block.y = x, y + (room - block.height) / 2
            block.label_x, block.label_y = x + BLOCK + 5, y + room / 2 + 4.5
            y += room + gap
            room_for_words = 145 if is_last else (pitch if n else first) - BLOCK - 12
            most_letters = int(room_for_words / LETTER) - len(percent(block.share_pct)) - 1
            block.name = _cut(block.name, max(most_letters, 6))
        picture.height = max(picture.height, y + 8)
        picture.blocks += row
    return picture


def _tall(order: list[Key], rows: Mapping[Key, list[Block]]) -> Picture:
    """Rows from top to bottom, labels under their blocks on up to three lines."""
    gap, head, line, lines = 5.0, 18.0, 15.0, 3
    most = max(len(row) for row in rows.values())
    heaviest = max(sum(block.weight for block in row) for row in rows.values())
    least = 4.0
    scale = max(TALL - most * (gap + least), 120.0) / heaviest
    picture, y = Picture(TALL, 0), 0.0
    for key in order:
        row, x = rows[key], 0.0
        picture.heads.append((0.0, y + 13, _head(key, row)))
        spare = TALL - sum(max(block.weight * scale, least) + gap for block in row) + gap
        x += max(spare, 0.0) / 2
        ends = [-10.0] * lines
        for block in row:
            block.width, block.height = max(block.weight * scale, least), BLOCK
            block.x, block.y = x, y + head
            x += block.width + gap
            block.name = _cut(block.name, 22)
            _place_label(block, ends, line)
        y += head + BLOCK + line * lines + 34
        picture.blocks += row
    picture.height = y - 30
    return picture


def _place_label(block: Block, ends: list[float], line: float) -> None:
    """Put a label on the first line with room; without room it has none: the list beside the picture has all."""
    wide = len(block.label) * LETTER
    start = min(max(block.x + block.width / 2 - wide / 2, 0.0), TALL - wide)
    for n, end in enumerate(ends):
        if start >= end + 6:
            ends[n] = start + wide
            block.label_x, block.label_y, block.anchor = start, block.y + BLOCK + line * (n + 1) - 2, "start"
            return


def _head(key: Key, row: Iterable[Block]) -> str:
    blocks = list(row)
    if key[0] == 0 and all(block.sort not in ("fruit",) for block in blocks):
        return say("desk-trace-origin")
    if key[0] == 7 and all(block.sort == "gone" for block in blocks):
        return say("desk-trace-gone")
    if key[0] == 3 and all(block.sort == "can" for block in blocks):
        return say("desk-trace-cans")
    if key[0] == 7 and any(block.sort == "gone" for block in blocks):
        return say("desk-trace-bottles_losses")
    return HEADS[key[0]]


def _cut(name: str, most: int) -> str:
    return name if len(name) <= most else name[: most - 1].rstrip() + "…"


def _bands(picture: Picture, blocks: Mapping[str, Block], links: Links, tall: bool) -> None:
    """Draw each link from the side of one block to the side of the other, beside those before it."""
    used_out: dict[str, float] = defaultdict(float)
    used_in: dict[str, float] = defaultdict(float)

    def along(block: Block) -> float:
        return block.x if tall else block.y

    def scale(block: Block) -> float:
        return (block.width if tall else block.height) / block.weight if block.weight else 0.0

    if any(blocks[target].column <= blocks[source].column for source, target in links):
        if tall:
            picture.width += AROUND_MOST + 8
        else:
            picture.height += AROUND_MOST + 14
    by_place = sorted(links.items(), key=lambda item: (along(blocks[item[0][1]]), along(blocks[item[0][0]])))
    starts: dict[tuple[str, str], float] = {}
    for (source, target), weight in by_place:
        starts[source, target] = along(blocks[source]) + used_out[source]
        used_out[source] += weight * scale(blocks[source])
    by_source = sorted(links.items(), key=lambda item: (along(blocks[item[0][0]]), along(blocks[item[0][1]])))
    for (source, target), weight in by_source:
        one, other = blocks[source], blocks[target]
        begin = along(other) + used_in[target]
        used_in[target] += weight * scale(other)
        thick = weight * scale(one), weight * scale(other)
        ends = (starts[source, target], begin)
        if other.column <= one.column:
            picture.bands.append((_around(one, other, ends, thick, picture, tall), one.sort,
                                  min(max(thick[0], 1.0), AROUND_MOST)))
        else:
            picture.bands.append((_between(one, other, ends, thick, tall), one.sort, None))


def _between(one: Block, other: Block, ends: tuple[float, float], thick: tuple[float, float], tall: bool) -> str:
    a = one.y + one.height if tall else one.x + one.width
    b = other.y if tall else other.x
    middle, (s, t) = (a + b) / 2, ends
    s2, t2 = s + max(thick[0], 0.6), t + max(thick[1], 0.6)
    points = [(a, s), (middle, s), (middle, t), (b, t), (b, t2), (middle, t2), (middle, s2), (a, s2)]
    p = [f"{y:.1f} {x:.1f}" if tall else f"{x:.1f} {y:.1f}" for x, y in points]
    return f"M{p[0]}C{p[1]} {p[2]} {p[3]}L{p[4]}C{p[5]} {p[6]} {p[7]}Z"


def _around(
    one: Block, other: Block, ends: tuple[float, float], thick: tuple[float, float], picture: Picture, tall: bool
) -> str:
    """Return a line from the far side of one block around to the near side of another that lies before it."""
    s, t = ends[0] + thick[0] / 2, ends[1] + thick[1] / 2
    a = one.y + one.height if tall else one.x + one.width
    b = other.y if tall else other.x
    far = (picture.width if tall else picture.height) - AROUND_MOST / 2 - 2
    bow = 22.0
    points = [(a, s), (a + bow, s), (a + bow, far), ((a + b) / 2, far), (b - bow, far), (b - bow, t), (b, t)]
    p = [f"{y:.1f} {x:.1f}" if tall else f"{x:.1f} {y:.1f}" for x, y in points]
    return f"M{p[0]}C{p[1]} {p[2]} {p[3]}C{p[4]} {p[5]} {p[6]}"
