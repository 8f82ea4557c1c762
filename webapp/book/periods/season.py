"""A whole season in one sum: fruit, wash, and where its pure alcohol is. Worked out from the flows alone.

What the runs were charged with comes out again as hearts, heads, feints, stillage and each run's own loss. What two
dips of one thing differ by (low wines between two runs, a can gauged later) is what the sum does not close by.
"""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from decimal import Decimal
from typing import NamedTuple, TypedDict

from webapp.book.before.limits import Limit, declare
from webapp.book.checks import site_limit
from webapp.book.checks.words import figure_text, rounded_text
from webapp.book.fold.registry_rows import load_site
from webapp.book.periods.footing import foot_amounts, in_litres, in_proof_gallons
from webapp.book.periods.words import pure_words
from webapp.book.record import months
from webapp.book.record.clock import utc_text
from webapp.book.record.store import Book
from webapp.kinds.rows import SiteSettings
from webapp.words.houseunits import METRIC, US, House, house_of

LIMITS = declare(
    Limit("season_close_pct", 1.0, "%", "A season's alcohol may miss its sum by, of the wash"),
)

FIRST_MONTH = 7  # fruit ripens after midsummer; a house south of the line sets its own. Common practice, no source.
_NAMED = {"hearts", "heads", "tails", "feints", "stillage", "run_balance", "wash", "low_wines"}


@dataclass(frozen=True, slots=True)
class Season:
    """One season. Amounts are pure alcohol [uL at 20 degC] but for fruit [g]."""

    name: str  # 2025/26
    start: str
    until: str
    fruit_g: int
    fermented: int
    wash: int
    hearts: int
    heads: int
    feints: int
    stillage: int
    lost: int  # what no run accounts for
    dips: int  # low wines: what was charged less what was gauged
    gauged: int  # found by later gauges in production, losses negative
    other: int  # lost out of runs by a logged cause, negative
    on_stills: int  # charged into runs that are under way
    runs: int
    lost_most_pct: float
    close_most_pct: float
    house: House = METRIC

    @property
    def closes_by(self) -> int:
        """Return the remainder of the sum. [uL]"""
        return self.dips + self.gauged

    @property
    def closes_by_pct(self) -> float:
        """Return the same of the wash. [%]"""
        return abs(self.closes_by) / self.wash * 100 if self.wash else 0.0

    @property
    def lost_pct(self) -> float:
        """Return the share of the wash that no run accounts for. [%]"""
        return self.lost / self.wash * 100 if self.wash else 0.0

    @property
    def l_per_100kg(self) -> float | None:
        """Return the pure alcohol made from 100 kg of fruit. [L]"""
        return self.fermented / 1e6 / (self.fruit_g / 1e5) if self.fruit_g > 0 else None

    @property
    def is_odd(self) -> bool:
        """Say whether it does not close, or the runs lose more than they should."""
        return self.closes_by_pct > self.close_most_pct or self.lost_pct > self.lost_most_pct

    @property
    def parts(self) -> dict[str, Decimal]:
        """Return the products of the wash as shown, in the house's measure: they come to the wash as shown. Between
        dips and lost out of the stills: what is to be added, with its sign.
        """
        exact = {
            "hearts": self.hearts, "heads": self.heads, "feints": self.feints, "stillage": self.stillage,
            "lost": self.lost, "dips": -self.dips, "other": -self.other, "on_stills": self.on_stills,
        }
        measure = in_proof_gallons() if self.house == US else in_litres()
        return dict(zip(exact, foot_amounts(list(exact.values()), self.wash, measure), strict=True))

    @property
    def words(self) -> str:
        """Return the sum in words."""
        parts = self.parts
        named = [("hearts", "hearts"), ("heads", "heads"), ("feints on hand", "feints"), ("stillage", "stillage"),
                 ("not accounted for", "lost")]
        said = " + ".join(f"{name} {parts[part]}" for name, part in named)
        more = [("between two dips of low wines", parts["dips"]), ("lost out of the stills", parts["other"]),
                ("on a still now", parts["on_stills"])]
        rest = "".join(f", {'and' if pure > 0 else 'less'} {abs(pure)} {name}" for name, pure in more if pure)
        way = "more" if self.gauged > 0 else "less"
        later = f" Gauges after collection found {self._pure(abs(self.gauged))} {way}."
        return f"Wash {pure_words(self.wash, self.house)} = {said}{rest}.{later if round(self.gauged, -4) else ''}"

    def _pure(self, ul: int) -> str:
        return pure_words(ul, self.house).split()[0]

    @property
    def verdict(self) -> str:
        """Return a judgement of the sum, and the advice that follows from it."""
        sign = "proof gal" if self.house == US else "L"
        out = f"Out by {self._pure(abs(self.closes_by))} {sign} ({rounded_text(self.closes_by_pct)} % of the wash)"
        if self.closes_by_pct > self.close_most_pct:
            return (
                f"{out}: more than {figure_text(self.close_most_pct, 1)} %. Look through dips of low wines and gauges "
                "of feints and receivers."
            )
        if self.lost_pct > self.lost_most_pct:
            return (
                f"The runs leave {rounded_text(self.lost_pct)} % not accounted for, more than "
                f"{figure_text(self.lost_most_pct, 1)} %. Look at wash strengths, stillage, condenser and joints."
            )
        return f"{out}: within {figure_text(self.close_most_pct, 1)} %."


def season_of(month: str, first: int) -> str:
    """Return the season that a month lies in: `2026-03` in `2025/26`."""
    year = int(month[:4]) - (int(month[5:]) < first)
    return f"{year}/{(year + 1) % 100:02d}" if first > 1 else str(year)


def seasons(book: Book, now: datetime, most: int = 100, site: SiteSettings | None = None) -> list[Season]:
    """Return the seasons in which fruit came or a still ran, newest first; of the newest `most` only.

    site: the settings, where they have been read already.
    """
    site = site or load_site(book)
    zone, first = str(site.get("time_zone") or "UTC"), _first_month(site.get("season_month"))
    last = season_of(months.month_at(utc_text(now), zone), first)
    # The next season too: a clock that is ahead may have begun it.
    spans = [_span(int(last[:4]) + 1 - back, first, zone) for back in range(most + 1)]
    moved: dict[int, list[_MovedRow]] = {}
    for row in book.rows(_MovedRow, _MOVED, (json.dumps([(span.start, span.until) for span in spans]),)):
        moved.setdefault(row["span"], []).append(row)
    begun_at = next((rows[0]["begun"] for rows in moved.values()), None)
    if begun_at is None:
        return []
    begun = season_of(months.month_at(begun_at, zone), first)
    limits = {name: site_limit(name, site) for name in ("run_loss_pct", "season_close_pct")}
    wanted = [n for n, span in enumerate(spans) if begun <= span.name <= max(last, begun)]
    house = house_of(site.get("units"))
    found = [_season(spans[n], moved.get(n, []), limits, house) for n in wanted[:most]]
    return [one for one in found if one.wash or one.fruit_g or one.fermented]


class _MovedRow(TypedDict):
    span: int
    s: str  # of the source: what sort of account it is
    t: str  # of the target
    source: str
    target: str
    reason: str
    a: str  # tax account of the source
    b: str  # of the target
    ul: int
    g: int
    runs: int
    begun: str


class _Span(NamedTuple):
    name: str
    start: str
    until: str


# The spans of all seasons come as JSON: one statement, however many there are. `begun`: the first fruit or run.
_MOVED = """
SELECT w.key AS span, substr(source, 1, 2) AS s, substr(target, 1, 2) AS t, source, target, reason,
source_account AS a, target_account AS b, sum(lpa_ul) AS ul, sum(mass_g) AS g,
(SELECT count(*) FROM runs WHERE started_at >= json_extract(w.value, '$[0]')
 AND started_at < json_extract(w.value, '$[1]')) AS runs,
(SELECT min(at) FROM (SELECT min(at) AS at FROM flows WHERE source = 'out:grower'
 UNION ALL SELECT min(started_at) FROM runs)) AS begun
FROM json_each(?) w CROSS JOIN flows INDEXED BY flows_at
ON at >= json_extract(w.value, '$[0]') AND at < json_extract(w.value, '$[1]')
WHERE source IN ('out:grower', 'out:fermented', 'out:gauge_difference')
OR target IN ('out:fermented', 'out:gauge_difference') OR source GLOB 'r:*' OR target GLOB 'r:*'
GROUP BY w.key, s, t, CASE WHEN s = 'ou' THEN source END, CASE WHEN t = 'ou' THEN target END, reason, a, b
"""


def _span(year: int, first: int, zone: str) -> _Span:
    begins, ends = f"{year}-{first:02d}", f"{year + 1}-{first:02d}"
    return _Span(season_of(begins, first), months.month_start(begins, zone), months.month_start(ends, zone))


def _first_month(said: object) -> int:
    return said if isinstance(said, int) and 1 <= said <= 12 else FIRST_MONTH


def _season(span: _Span, rows: Sequence[_MovedRow], limits: Mapping[str, float], house: House) -> Season:
    into: Counter[str] = Counter()
    fruit_g = fermented = gauged = 0
    for row in rows:
        fruit_g += row["g"] if row["source"] == "out:grower" else 0
        into[row["reason"]] += (row["t"] == "r:") * row["ul"] - (row["s"] == "r:") * row["ul"]
        if "r:" not in (row["s"], row["t"]):
            way = (row["s"] == "ou") - (row["t"] == "ou")
            is_ferment = "out:fermented" in (row["source"], row["target"])
            fermented += way * row["ul"] if is_ferment else 0
            is_gauge = "out:gauge_difference" in (row["source"], row["target"])
            gauged += way * row["ul"] if is_gauge and "production" in (row["a"], row["b"]) else 0
    other = sum(ul for reason, ul in into.items() if reason not in _NAMED)
    standing = sum(into.values())  # on a still under way: charged, and not come out yet
    return Season(
        *span, fruit_g, fermented, into["wash"], -into["hearts"], -into["heads"],
        -(into["tails"] + into["feints"]), -into["stillage"], -into["run_balance"], into["low_wines"], gauged,
        other, standing, rows[0]["runs"] if rows else 0, limits["run_loss_pct"], limits["season_close_pct"],
        house,
    )
