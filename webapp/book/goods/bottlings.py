"""Batches that were or are being bottled: gauges, checks of the line, closes, and where the spirit went."""

from __future__ import annotations

import json
import statistics
from collections.abc import Sequence
from itertools import groupby, islice
from operator import itemgetter
from typing import TypedDict

from webapp.book.checks import site_limit
from webapp.book.checks.bottling import fill_allowed_pct
from webapp.book.fold import row_reader
from webapp.book.fold.registry_rows import load_site
from webapp.book.fold.states import load_newest_of
from webapp.book.record.log import JOIN_FOLDED
from webapp.book.record.store import Book
from webapp.kinds.goods_state import Bottling
from webapp.kinds.key import bottling_key
from webapp.kinds.rows import SiteSettings
from webapp.kinds.state import Value, figure_in

LIST_MOST = 100
CHECKS_MOST = 500
# Whatever is not here is called as its account is: "out:destroyed" is destroyed.
WENT = {
    "b:": "in bottles", "out:spill": "broken", "out:filter_loss": "filter, heel and line", "out:sample": "samples",
    "out:gauge_difference": "not accounted for", "out:evaporation": "evaporated", "out:leak": "leaked",
}


class TankFill(TypedDict):
    """What stood in a tank under the name of the batch."""

    id: str
    mark: str
    tank: str
    what: str
    since: str
    ended_at: str


class LineEntry(TypedDict):
    """A gauge of the tank, or a check of the line, as it was read."""

    entry: str
    at: str
    person: str
    tank: str
    values: dict[str, Value]
    figures: dict[str, float]


class Went(TypedDict):
    """Where a part of the batch went. [L]"""

    words: str
    lpa_l: float
    volume_l: float


class Sums(TypedDict):
    """Bottles over all closes, and what is in the good ones. [L]"""

    filled: int
    broken: int
    reworked: int
    library: int
    good: int
    lpa_l: float
    volume_l: float


class Spread(TypedDict):
    """The middle of all checks of something, and how far they lie apart."""

    count: int
    mean: float
    least: float
    most: float
    spread: float | None


class BatchLimits(TypedDict):
    """The size of the bottles, the strength on the label, and what each may be off by. [L, % vol, %, % vol]"""

    size_l: float | None
    label_pct: float | None
    fill_pct: float | None
    is_us: bool
    strength_pct: float


class Batch(TypedDict):
    """All that the book has of a batch's bottling."""

    name: str
    what: str
    fills: list[TankFill]
    gauges: list[LineEntry]
    checks: list[LineEntry]
    closes: list[Bottling]
    went: list[Went]
    sums: Sums
    fill: Spread | None
    strength: Spread | None
    limits: BatchLimits


class _LineRow(row_reader.PlacedRow):
    n: int  # which of the fills
    id: str
    person: str


def batches(book: Book) -> list[dict[str, object]]:
    """Return batches in a tank gauged for bottling, then those with a close alone, newest first: name, at, closes."""
    done = book.query(
        "SELECT batch AS name, max(at) AS at, count(*) AS closes FROM bottlings WHERE batch <> '' AND tank <> '' "
        "GROUP BY batch ORDER BY at DESC LIMIT ?",
        (LIST_MOST,),
    )
    open_now = book.query(
        "SELECT f.name, max(f.since) AS at, 0 AS closes FROM fills f JOIN vessels v ON v.mark = f.mark "
        "WHERE f.ended_at = '' AND f.name <> '' AND v.sort = 'tank' GROUP BY f.name ORDER BY at DESC LIMIT ?",
        (LIST_MOST,),
    )
    gauged = _gauged(book, [row["name"] for row in open_now])
    under_way = [row for row in open_now if row["name"] in gauged]
    names = {row["name"] for row in under_way}
    return [*({**row, "is_open": True} for row in under_way),
            *({**row, "is_open": False} for row in done if row["name"] not in names)]


def _gauged(book: Book, names: Sequence[str]) -> set[str]:
    """Return those of the batches of which a tank was gauged for bottling."""
    rows = book.query(
        "SELECT DISTINCT l.name FROM json_each(?) w CROSS JOIN fills l ON l.name = w.value AND l.name <> '' "  # noqa: S608
        f"JOIN vessels v ON v.mark = l.mark {_WHILE_IT_STOOD} WHERE {_STANDS} AND v.sort = 'tank' "
        "AND e.kind = 'bottling_gauge'",
        (json.dumps(list(names)),),
    )
    return {row["name"] for row in rows}


_WHILE_IT_STOOD = (  # the entries about the vessel of a fill `l`, by what touched it
    "CROSS JOIN touches t ON t.key = 'v:' || l.mark AND t.order_key >= substr(l.since, 1, 19) "
    "AND (l.ended_at = '' OR substr(t.order_key, 1, 19) <= substr(l.ended_at, 1, 19)) "
    "JOIN entries e ON e.id = substr(t.order_key, -36) AND e.mark = l.mark "
    f"{JOIN_FOLDED}"
)
_STANDS = "f.standing = 'entered'"


def batch(book: Book, name: str, site: SiteSettings | None = None) -> Batch | None:
    """Return all that the book has of a batch's bottling, or None where it has no such batch.

    site: the settings, where they have been read already.
    """
    fills = _fills(book, name)
    roots = book.query("SELECT id FROM bottlings WHERE batch = ? AND tank <> '' ORDER BY at LIMIT ?", (name, LIST_MOST))
    states = load_newest_of(book, (bottling_key(row["id"]) for row in roots))
    closes = [close for row in roots if (close := states.get(bottling_key(row["id"])))]
    if not fills and not closes:
        return None
    lines = _lines(book, fills)
    gauges = lines["bottling_gauge"]
    checks = sorted(lines["bottle_check"], key=lambda line: line["at"])
    return {
        "name": name, "what": next((fill["what"] for fill in fills), ""), "fills": fills, "gauges": gauges,
        "checks": checks, "closes": closes, "went": _went(book, fills), "sums": _sums(closes),
        "fill": _spread(checks, "fill_found"), "strength": _spread(checks, "strength_found"),
        "limits": _limits(site or load_site(book), checks, closes, gauges),
    }


def _fills(book: Book, name: str) -> list[TankFill]:
    return book.rows(
        TankFill,
        "SELECT f.id, f.mark, v.name AS tank, f.what, f.since, f.ended_at FROM fills f "
        "JOIN vessels v ON v.mark = f.mark WHERE f.name = ? AND v.sort = 'tank' ORDER BY f.since LIMIT ?",
        (name, LIST_MOST),
    )


def _lines(book: Book, fills: Sequence[TankFill]) -> dict[str, list[LineEntry]]:
    """Return by kind and fill the gauges and checks of its tank while it stood there: id, at, person, values, figures.
    """
    rows = book.rows(
        _LineRow,
        "SELECT w.key AS n, e.*, f.order_key FROM json_each(:fills) w "  # noqa: S608
        f"CROSS JOIN fills l ON l.id = w.value {_WHILE_IT_STOOD} "
        f"WHERE {_STANDS} AND e.kind IN ('bottling_gauge', 'bottle_check') ORDER BY e.kind, w.key, f.order_key",
        {"fills": json.dumps([fill["id"] for fill in fills])},
    )
    kept = [row for _, some in groupby(rows, key=itemgetter("kind", "n")) for row in islice(some, CHECKS_MOST)]
    reads = row_reader.read_all_as_folded(book, kept)
    found: dict[str, list[LineEntry]] = {"bottling_gauge": [], "bottle_check": []}
    for row, read in zip(kept, reads, strict=True):
        if read:
            found[row["kind"]].append({
                "entry": row["id"], "at": f"{row['order_key'][:19]}Z", "person": row["person"],
                "tank": fills[row["n"]]["tank"], "values": dict(read.values), "figures": dict(read.figures),
            })
    return found


def _went(book: Book, fills: Sequence[TankFill]) -> list[Went]:
    """Return the destinations of a batch: words, pure alcohol and volume [L], largest first."""
    if not fills:
        return []
    marks = ", ".join("?" * len(fills))
    rows = book.query(
        "SELECT CASE WHEN target LIKE 'b:%' THEN 'b:' ELSE target END AS goal, sum(lpa_ul) AS lpa_ul, "  # noqa: S608
        f"sum(volume_ml) AS volume_ml FROM flows WHERE source_fill IN ({marks}) "
        "AND (target LIKE 'out:%' OR target LIKE 'b:%') GROUP BY goal ORDER BY lpa_ul DESC",
        [fill["id"] for fill in fills],
    )
    return [
        {"words": WENT.get(row["goal"], row["goal"][4:].replace("_", " ")), "lpa_l": row["lpa_ul"] / 1e6,
         "volume_l": row["volume_ml"] / 1e3}
        for row in rows
    ]


def _sums(closes: Sequence[Bottling]) -> Sums:
    """Return bottles and pure alcohol over all closes."""
    return {
        "filled": sum(close["filled"] for close in closes), "broken": sum(close["broken"] for close in closes),
        "reworked": sum(close["reworked"] for close in closes), "library": sum(close["library"] for close in closes),
        "good": sum(close["good"] for close in closes), "lpa_l": sum(close["bottled_ul"] for close in closes) / 1e6,
        "volume_l": sum(close["good"] * close["size_l"] for close in closes),
    }


def _spread(checks: Sequence[LineEntry], name: str) -> Spread | None:
    """Return average, spread and how many checks lie over and under the average of all, or None without any."""
    values = [value for check in checks if (value := figure_in(check["values"], name)) is not None]
    if not values:
        return None
    return {
        "count": len(values), "mean": statistics.fmean(values), "least": min(values), "most": max(values),
        "spread": statistics.stdev(values) if len(values) > 1 else None,
    }


def _limits(
    site: SiteSettings, checks: Sequence[LineEntry], closes: Sequence[Bottling], gauges: Sequence[LineEntry]
) -> BatchLimits:
    """Return the bottle's size, label and what each may be off by, as far as somebody has said."""
    sizes = [figure_in(check["values"], "bottle_size") for check in checks] + [close["size_l"] for close in closes]
    size_l = next((size for size in reversed(sizes) if size), None)
    labels = [figure_in(gauge["values"], "label_strength") for gauge in gauges]
    fill, is_us = fill_allowed_pct(size_l * 1000.0, site) if size_l and 0.005 <= size_l <= 10 else (None, False)
    return {
        "size_l": size_l, "label_pct": next((label for label in reversed(labels) if label), None), "fill_pct": fill,
        "is_us": is_us, "strength_pct": site_limit("label_pct", site),
    }
