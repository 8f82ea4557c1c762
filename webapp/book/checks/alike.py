"""A cask against casks like it, by a robust spread: how full they were filled, how their strength went, what they kept.

Middle and spread are the median and the median of the differences to it, so one odd cask moves neither. Neighbours are
looked at only where a figure is off a plain bound already.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from statistics import median
from typing import NamedTuple

from webapp.book.before.limits import Limit, declare, limit
from webapp.book.before.view import Query, seconds_between
from webapp.book.checks.words import DAY_S, YEAR_DAYS, figure, rounded
from webapp.kinds.expected import Expected
from webapp.kinds.message import message
from webapp.kinds.read import Read
from webapp.kinds.rows import VesselRow
from webapp.kinds.view import View

LIMITS = declare(
    Limit("alike_spread", 3.5, "", "Spreads that a cask may be off casks like it"),
    Limit("alike_casks", 4, "", "Casks like it that are needed"),
    Limit("fill_look_pct", 90, "%", "How full a cask is filled is looked at below"),
    Limit("fill_low_pct", 50, "%", "Without casks like it: a cask is filled to at least"),
    Limit("opened_look_pct", 75, "%", "How full a cask is taken in is looked at below"),
    Limit("opened_low_pct", 40, "%", "Without casks like it: a cask is taken in at least so full"),
    Limit("level_spread_pct", 3, "%", "Least spread that is taken of how full casks are"),
)

FULL_LOW_PCT, FULL_HIGH_PCT = 92.0, 101.0  # a cask that is filled to its bung; common practice, no source
MAD_TO_SPREAD = 1.4826  # of a normal spread, from the median of the differences to the median


class Alike(NamedTuple):
    """What casks like one come to: how many they are, their middle, and the ends of what is usual of them."""

    many: int
    middle: float
    low: float
    high: float


def alike(values: Sequence[float], least_spread: float, view: View) -> Alike | None:
    """Return middle and usual ends of some figures, or None where they are too few to say. [as the figures]"""
    if len(values) < limit("alike_casks", view):
        return None
    middle = median(values)
    spread = max(MAD_TO_SPREAD * median(abs(value - middle) for value in values), least_spread)
    wide = limit("alike_spread", view) * spread
    return Alike(len(values), middle, middle - wide, middle + wide)


def fill_level(read: Read, view: View) -> Iterable[Query]:
    """A cask filled, or taken in, less full than casks like it: net for gross, another unit, another cask."""
    row, litres = view.vessel(read.mark), read.figures.get("volume_20")
    if not row or row["sort"] != "cask" or not row.get("capacity_l") or litres is None or litres <= 0:
        return
    capacity, is_new = row["capacity_l"] or 0.0, read.kind.name == "cask_fill"
    share = litres / capacity * 100
    if share >= limit("fill_look_pct" if is_new else "opened_look_pct", view):
        return
    levels = list(_levels(view.neighbours(read.mark), ("cask_fill", "opening") if is_new else ("opening",), view))
    found = alike(levels, limit("level_spread_pct", view), view)
    low = found.low if found else limit("fill_low_pct" if is_new else "opened_low_pct", view)
    # A weight that is that of a full cask without its wood is no half-filled cask, whoever lies beside it.
    is_net = is_weight_without_cask(read, share) and (is_new or share < _aged_level(read, row, view))
    if share >= low and not is_net:
        return
    look = limit("fill_look_pct", view) if is_new else _aged_level(read, row, view)
    low = max(low, look) if is_net else low
    said = message(
        "fill_level", litres=rounded(litres, 1, "L"), cask=row["name"], share=rounded(share, 0, "pct"),
        casks=found.many if found else "none", usual=figure(round(found.middle if found else low), 0, "pct"),
    )
    near = (found.middle / 100 if found else 0.95) * capacity
    at = next((name for name in ("gross", "net_weight", "volume") if name in read.values), "gross")
    brim = limit("cask_brim", view)
    yield Query("fill_level", "ask", at, said, (Expected("volume_20", low / 100 * capacity, brim * capacity, near),))


def _aged_level(read: Read, row: VesselRow, view: View) -> float:
    """Return how full a cask is at least that was filled full on its day and lost what is looked at. [%]"""
    filled = read.text("filled_on")
    years = max(years_between(f"{filled}T12:00:00Z", view.at), 0.0) if filled else 0.0
    is_small = 0 < (row.get("capacity_l") or 0.0) < limit("small_l", view)
    lost = limit("loss_look_small_pct" if is_small else "loss_look_large_pct", view)
    # Where the papers say more of its past, or the book has it already, that speaks first.
    is_told = read.number("filled_strength") is not None or view.state(read.mark)["holds"] is not None
    spare = 2 * limit("level_spread_pct", view) if is_told else 0.0
    return float(FULL_LOW_PCT * (1 - lost / 100) ** years - spare) if filled else 0.0


def is_weight_without_cask(read: Read, share: float) -> bool:
    """Return whether the gross weight typed would be the net weight of a full cask. share: full as typed [%]"""
    net, tare = read.figures.get("net"), read.number("tare")
    if not net or not tare or "gross" not in read.values:
        return False
    return FULL_LOW_PCT <= share * (net + tare) / net <= FULL_HIGH_PCT and share < FULL_LOW_PCT - 10.0


def _levels(rows: Iterable[VesselRow], kinds: Sequence[str], view: View) -> Iterator[float]:
    """Yield how full casks were when they were filled last, or taken into the book. [% of what they hold]"""
    for row in rows:
        lines, capacity = [line for kind in kinds for line in view.recent(row["mark"], kind)], row.get("capacity_l")
        litres = lines[-1]["figures"].get("volume_20") if lines else None
        if litres and capacity:
            yield litres / capacity * 100


def years_between(earlier: str, later: str) -> float:
    """Return the years between two times. [years]"""
    return seconds_between(earlier, later) / DAY_S / YEAR_DAYS
