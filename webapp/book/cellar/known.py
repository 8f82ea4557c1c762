"""How well a cask's last loss is known: the difference of its last two gauges, with the instruments that they share."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from webapp.book.cellar.casks import Gauge
from webapp.book.house.uncertain import load_by_entry
from webapp.book.record.store import Book
from webapp.trade.uncertainty import Uncertain, combine


class Fallen(NamedTuple):
    """By how much pure alcohol fell between two gauges, and when these were. [LPA]; [s since 1970]"""

    since_s: float
    until_s: float
    lpa: Uncertain


def last_fall(book: Book, gauges: Sequence[Gauge]) -> Fallen | None:
    """Return by how much a cask's pure alcohol fell between its last two gauges of this fill; None without two."""
    last = [one for one in gauges if one.get("entry")][-2:]
    known = load_by_entry(book, [one["entry"] for one in last]) if len(last) == 2 else {}
    figures = [known.get(one["entry"], {}).get("lpa") for one in last]
    if len(figures) < 2 or figures[0] is None or figures[1] is None:
        return None
    return Fallen(last[0]["at_s"], last[1]["at_s"], combine([(1.0, figures[0]), (-1.0, figures[1])]))
