"""Casks as the cellar looks at them: gauges of the fill, loss a year against casks like it, forecast, score, readiness.

Reads only. What a phone gets of a cask is small (`card_part`); it compares casks by itself from the cards it holds.
"""

from __future__ import annotations

import statistics
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from datetime import datetime
from itertools import islice
from typing import NotRequired, TypedDict

from webapp.book.before.limits import held_limit, site_limit, vessel_scopes
from webapp.book.fold.registry_rows import load_site, with_flags
from webapp.book.fold.states import load_newest_of
from webapp.book.record.store import Book
from webapp.kinds.key import vessel_key
from webapp.kinds.rows import SiteSettings, VesselRow
from webapp.kinds.state import EMPTY_VESSEL, NO_FILL, Fill, Value, Vessel
from webapp.trade import caskloss
from webapp.trade.caskloss import SMALL_L, Rates, Usual, judge_loss, loss_rates, usual_of, year_share
from webapp.trade.maturing import CaskForecast, forecast_cask
from webapp.trade.placenames import room_of, sort_key

YEAR_S = 365.25 * 86_400
CASKS_MOST = 5_000
GROUP_MOST = 150  # more of a kind tell nothing new of the middle, and cost time
GAUGES_ON_CARD = 8
SCORES = ("nose_score", "mouth_score", "wood_score")
_GAUGES = ("cask_fill", "gauge", "distilled_gauge", "opening", "cask_regauge")


class Gauge(caskloss.Gauge):
    """A gauge of a cask, with its time [s since 1970] and, but for one that only papers say, its entry."""

    at_s: float
    entry: NotRequired[str]


class Tasting(TypedDict):
    """A tasting: its score of 10, the fault, the words, the house's own scores, and what was decided."""

    at: str
    person: str
    score: float
    fault: Value | None
    words: Value
    house: Value
    decision: Value
    entry: str


class CaskPart(TypedDict):
    """A cask's part of its card."""

    size: str
    wood: str
    use: str
    gauges: list[list[float]]
    score: NotRequired[float]
    tasted_at: NotRequired[str]


@dataclass(slots=True)
class Cask:
    """One cask in use: its row, what it holds, its gauges, and what follows from them."""

    row: VesselRow
    holds: Fill | None
    place: str
    gauges: list[Gauge]
    rates: Rates
    score: float | None
    tastings: list[Tasting]
    usual: Usual = field(default_factory=lambda: usual_of((), 200.0))
    drift_year: float = 0.0
    verdict: str = ""

    @property
    def area(self) -> str:
        """The place's area, as its name says it: CELL of CELL-A1."""
        return room_of(self.place)

    @property
    def rate(self) -> float | None:
        """Pure alcohol lost since the last gauge that is long enough ago, else since the fill. [% a year, in
        logarithms]
        """
        rate = self.rates["last"] or self.rates["fill"]
        return rate["lpa_pct_year"] if rate else None

    @property
    def loss(self) -> float | None:
        """The same as the share that goes in a year, for people to read. [% a year]"""
        return None if self.rate is None else year_share(self.rate)

    def age_years(self, at: datetime) -> float | None:
        """Years in wood of the youngest part; None where it is not known."""
        held = self.holds or NO_FILL
        since = held.get("aged_since") or (held["since"] if self.papers is None else None)
        return (at - datetime.fromisoformat(since)).total_seconds() / YEAR_S if since else None

    @property
    def papers(self) -> str | None:
        """The papers by which its age is known, or an empty text; None where it is not from before this book."""
        return (self.holds or NO_FILL).get("by_papers")

    def at(self, when: datetime) -> CaskForecast | None:
        """Return the forecast for a time to come; None without a gauge, or where that time has gone by."""
        if not self.gauges:
            return None
        ahead = (when.timestamp() - self.gauges[-1]["at_s"]) / YEAR_S
        if not 0 <= ahead <= 50:
            return None
        return forecast_cask(self.gauges, self.usual, ahead, drift_year=self.drift_year, is_new_wood=_is_new(self.row))


def gauges_of(state: Vessel) -> list[Gauge]:
    """Return the gauges of what a cask now holds, oldest first: years, at_s, lpa, strength_pct, drawn_l, net_kg."""
    held = state["holds"]
    if not held:
        return []
    found: list[Gauge] = _at_fill(held)
    for line in (line for kind in _GAUGES for line in state["recent"].get(kind, ())):
        lpa, strength = line["figures"].get("lpa"), line["figures"].get("true_strength")
        if line["at"] >= held["since"] and lpa and lpa > 0 and strength and strength > 0:
            at_s = datetime.fromisoformat(line["at"]).timestamp()
            found.append({"years": at_s / YEAR_S, "at_s": at_s, "lpa": lpa, "strength_pct": strength, "drawn_l": 0.0,
                          "entry": line["entry"]})
    found.sort(key=lambda one: one["at_s"])
    for at_s, lpa in _drawn(state, held["since"]):
        after = next((one for one in found[1:] if one["at_s"] >= at_s), None)
        if after and at_s >= found[0]["at_s"]:
            after["drawn_l"] += lpa
    return found


def _at_fill(held: Fill) -> list[Gauge]:
    """Return the gauge at the fill where that was before this book, and its papers say it; else none."""
    lpa, strength = held.get("filled_lpa_l"), held.get("fill_strength_pct")
    if not lpa or not strength or not lpa > 0 or not strength > 0:
        return []
    at_s = datetime.fromisoformat(held["since"]).timestamp()
    return [{"years": at_s / YEAR_S, "at_s": at_s, "lpa": lpa, "strength_pct": strength, "drawn_l": 0.0}]


def _drawn(state: Vessel, since: str) -> Iterable[tuple[float, float]]:
    """Yield the time and amount of each sample drawn, and of each pouring in as a negative amount. [s since 1970, L
    pure alcohol]
    """
    for kind, sign in (("sample", 1.0), ("top_up", -1.0)):
        for line in state["recent"].get(kind, ()):
            lpa = line["figures"].get("lpa")
            if lpa and line["at"] >= since and line["values"].get("went") != "returned":
                yield datetime.fromisoformat(line["at"]).timestamp(), sign * lpa


def card_part(row: VesselRow, state: Vessel) -> CaskPart:
    """Return the cask's part of its card, for comparing it on a phone: size class, wood, use, gauges [s, L, % vol, L
    drawn], score.
    """
    gauges = [[round(one["at_s"]), round(one["lpa"], 3), round(one["strength_pct"], 2), round(one["drawn_l"], 3)]
              for one in gauges_of(state)]
    if len(gauges) > GAUGES_ON_CARD:  # the fill stays
        gauges = [gauges[0], *gauges[1 - GAUGES_ON_CARD :]]
    part: CaskPart = {"size": row["size_class"], "wood": row["wood"], "use": row["use"], "gauges": gauges}
    if tasted := _tastings(state):
        part["score"], part["tasted_at"] = tasted[-1]["score"], tasted[-1]["at"]
    return part


def _tastings(state: Vessel) -> list[Tasting]:
    since = (state["holds"] or NO_FILL)["since"]
    found: list[Tasting] = []
    for line in state["recent"].get("tasting_note", ()):
        scores = [float(line["values"][name]) for name in SCORES if line["values"].get(name) is not None]
        if line["at"] >= since and scores:
            found.append({"at": line["at"], "person": line["person"], "score": round(sum(scores) / len(scores), 2),
                          "fault": line["values"].get("fault_score"), "words": line["values"].get("words") or "",
                          "house": line["values"].get("house_scores") or "", "entry": line["entry"],
                          "decision": line["values"].get("decision") or ""})
    return found


def casks(book: Book) -> list[Cask]:
    """Return the casks in use by place, each compared with the others; at most some thousands."""
    sql = "SELECT * FROM vessels WHERE sort = 'cask' AND NOT retired ORDER BY name LIMIT ?"
    rows = book.rows(VesselRow, sql, (CASKS_MOST,))
    states = load_newest_of(book, (vessel_key(row["mark"]) for row in rows))
    found = [_cask(with_flags(row), states.get(vessel_key(row["mark"])) or EMPTY_VESSEL) for row in rows]
    compare_casks(found, load_site(book))
    return sorted(found, key=lambda cask: (sort_key(cask.place), cask.place, sort_key(cask.row["name"])))


def _cask(row: VesselRow, state: Vessel) -> Cask:
    gauges, tastings = gauges_of(state), _tastings(state)
    score = tastings[-1]["score"] if tastings else None
    place = state.get("place") or row["place"] or ""
    return Cask(row, state["holds"], place, gauges, loss_rates(gauges), score, tastings)


def compare_casks(found: Sequence[Cask], site: SiteSettings | None = None) -> None:
    """Set what is usual of each cask, the drift where it lies, and what its loss looks like, from those like it."""
    site = site or {}
    small_l = site_limit("small_l", site)
    alike = Alike(found, small_l)
    for cask in found:
        groups = [[one.rate or 0.0 for one in group] for group in alike.groups(cask)]
        cask.usual = usual_of(groups, cask.row["capacity_l"] or 200.0, small_l)
        drifts = [fill["strength_year"] for one in alike.near(cask) if (fill := one.rates["fill"])]
        cask.drift_year = min(max(statistics.median(drifts), -5.0), 5.0) if len(drifts) > 2 else 0.0
        rate = cask.rates["last"]
        if rate:
            before = cask.gauges[-1]["strength_pct"] - rate["strength_year"] * rate["years"]
            held = cask.holds or NO_FILL
            scopes = vessel_scopes(cask.row["mark"], cask.row["sort"], (held.get("what"), held.get("material")))
            noise, drift, drift_year = (
                held_limit(name, site, scopes)[0] for name in ("loss_noise_pct", "drift_pct", "drift_pct_year")
            )
            cask.verdict = judge_loss(
                rate["lpa_pct_year"], rate["volume_pct_year"], rate["years"], cask.usual["most"], before,
                cask.gauges[-1]["strength_pct"], noise_pct=noise, drift_pct=drift, drift_pct_year=drift_year,
            )


class Alike:
    """Casks with a loss rate, found by what they have in common."""

    def __init__(self, casks: Iterable[Cask], small_l: float = SMALL_L) -> None:
        self._small_l = small_l
        self._by: dict[tuple[object, ...], list[Cask]] = {}
        for cask in casks:
            if cask.rate is not None:
                for key in (*self._keys(cask), ("area", cask.area)):
                    self._by.setdefault(key, []).append(cask)

    def groups(self, cask: Cask) -> list[list[Cask]]:
        """Return casks like one in groups that narrow: like size, same size, same area too, same wood and use too."""
        return [self._others(key, cask) for key in self._keys(cask)]

    def near(self, cask: Cask) -> list[Cask]:
        """Return the others of the same area."""
        return self._others(("area", cask.area), cask)

    def _others(self, key: tuple[object, ...], cask: Cask) -> list[Cask]:
        return list(islice((one for one in self._by.get(key, ()) if one is not cask), GROUP_MOST))

    def _keys(self, cask: Cask) -> tuple[tuple[object, ...], ...]:
        small = (cask.row["capacity_l"] or 200.0) < self._small_l
        same = (small, cask.row["size_class"])
        return ((small,), same, (*same, cask.area), (*same, cask.area, cask.row["wood"], cask.row["use"]))


def _is_new(row: VesselRow) -> bool:
    return "new" in str(row.get("use") or "")
