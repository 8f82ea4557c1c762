"""How well a cask's losses are known: the difference of two gauges, with the instruments that they share."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from math import exp
from typing import NamedTuple

from webapp.book.cellar.casks import Gauge
from webapp.book.house.uncertain import load_by_entry
from webapp.book.record.store import Book
from webapp.trade.caskloss import Rate, Rates, year_share
from webapp.trade.uncertainty import Uncertain, combine


class Fallen(NamedTuple):
    """By how much pure alcohol fell between two gauges, and when these were. [LPA]; [s since 1970]"""

    since_s: float
    until_s: float
    lpa: Uncertain


class KnownRates(NamedTuple):
    """The share of pure alcohol that a year takes, as `Rates` has them, each with its uncertainty. [% a year]"""

    last: Uncertain | None
    fill: Uncertain | None


Known = Mapping[str, Mapping[str, Uncertain]]  # figures by the entry of the gauge and their name


def load_known(book: Book, gauges: Sequence[Gauge]) -> Known:
    """Return the figures of these gauges with their uncertainty. One statement at most."""
    return load_by_entry(book, [one["entry"] for one in gauges if one.get("entry")])


def known_rates(known: Known, gauges: Sequence[Gauge], rates: Rates) -> KnownRates:
    """Return how well a cask's shares a year are known; None without a rate, or where papers alone say an end of it.

    By the gauges at both ends: what was drawn between them counts as known.
    """

    def share(rate: Rate | None) -> Uncertain | None:
        begin = _begin(gauges, rate) if rate else None
        if not rate or not begin:
            return None
        then, now = (known.get(one.get("entry", ""), {}).get("lpa") for one in (begin, gauges[-1]))
        if not then or not now or then.value <= 0 or now.value <= 0:
            return None
        # The rate is the logarithm of then over now, in hundredths a year; the share is 1 - exp(-rate).
        slope = 100 / rate["years"] * exp(-rate["lpa_pct_year"] / 100)
        found = combine([(slope / then.value, then), (-slope / now.value, now)])
        return found._replace(value=year_share(rate["lpa_pct_year"]))

    return KnownRates(share(rates["last"]), share(rates["fill"]))


def _begin(gauges: Sequence[Gauge], rate: Rate) -> Gauge | None:
    """Return the gauge that a rate begins with: so many years before the last."""
    return next((one for one in gauges if abs(gauges[-1]["years"] - one["years"] - rate["years"]) < 1e-9), None)


def last_fall(known: Known, gauges: Sequence[Gauge]) -> Fallen | None:
    """Return by how much a cask's pure alcohol fell between its last two gauges of this fill; None without two."""
    last = [one for one in gauges if one.get("entry")][-2:]
    figures = [known.get(one["entry"], {}).get("lpa") for one in last]
    if len(figures) < 2 or figures[0] is None or figures[1] is None:
        return None
    return Fallen(last[0]["at_s"], last[1]["at_s"], combine([(1.0, figures[0]), (-1.0, figures[1])]))
