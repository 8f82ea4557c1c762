"""What stands in a vessel, cut down to what a day asks of it: its fill, when it was last seen to, its gravities."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime

from webapp.book.before.limits import end_gravity, is_grain
from webapp.book.cellar.endings import Newest, past_weights
from webapp.book.cellar.ferments import FermentReading, Forecast, forecast_of
from webapp.kinds.rows import VesselRow
from webapp.kinds.state import Fill, Line, Vessel, figure_in

LINES_MOST = 12  # of a vessel but a cask: more than a day's round has of one
GAUGES = ("cask_fill", "gauge", "distilled_gauge", "opening", "cask_regauge")
SEEN_TO = ("cask_regauge", "sample", "tasting_note", "bottling_gauge", "ferment_reading")


@dataclass(frozen=True, slots=True)
class Logged:
    """One entry of a vessel: its kind, its time as UTC text, its person."""

    kind: str
    at: str
    person: str


@dataclass(frozen=True, slots=True)
class Held:
    """The fill of a vessel. lpa_ul: pure alcohol [uL at 20 degC]; aged_since: since when its youngest part is in wood.
    """

    fill: str
    what: str
    name: str
    account: str
    mash: bool
    lpa_ul: int
    since: str
    aged_since: str
    closed: bool
    charged: bool


@dataclass(frozen=True, slots=True)
class Standing:
    """A vessel that holds something, or a still. last: the newest time of each kind in SEEN_TO and of `any` entry.

    forecast: of a ferment that is neither closed nor charged.
    """

    mark: str
    name: str
    sort: str
    place: str
    holds: Held | None
    run: str | None
    last: Mapping[str, str]
    logged: tuple[Logged, ...]
    readings: tuple[FermentReading, ...] = ()
    forecast: Forecast | None = None

    @property
    def shown(self) -> str:
        """The name on its label, or its mark where it has none."""
        return self.name or self.mark

    @property
    def end_state(self) -> str:
        """What the forecast of its end says: running, ended, stuck or too_little; empty where there is none."""
        return self.forecast["state"] if self.forecast else ""

    @property
    def end_s(self) -> Mapping[str, float]:
        """When it will have ended, or has: at, and low and high where they are known. [s since 1970]"""
        return self.forecast.get("at_s", {}) if self.forecast else {}

    @property
    def is_fermenting(self) -> bool:
        """Whether a mash in it is still to be read."""
        return bool(self.sort == "fermenter" and self.holds and not (self.holds.closed or self.holds.charged))


def standing_of(row: VesselRow, state: Vessel, falls: Newest) -> Standing:
    """Return the standing of a vessel on this day, from its row, its newest state and how past ferments fell."""
    fill = state["holds"]
    since = fill["since"] if fill else ""
    last: dict[str, str] = {}
    for kind, lines in state["recent"].items():
        here = [line["at"] for line in lines if line["at"] >= since]
        if here:
            newest = max(here)
            last["any"] = max(last.get("any", ""), newest)
            if kind in SEEN_TO:
                last[kind] = newest
            if kind in GAUGES:
                last["gauged"] = max(last.get("gauged", ""), newest)
    readings = _readings(state["recent"].get("ferment_reading", []), since) if row["sort"] == "fermenter" else ()
    is_under_way = bool(readings and fill and not fill.get("closed") and not fill.get("charged"))
    return Standing(
        row["mark"], row["name"], row["sort"], state.get("place") or row["place"] or "",
        _held(fill) if fill else None, state["run"], last,
        () if row["sort"] == "cask" else _logged(state), readings,
        _forecast(readings, fill, falls) if is_under_way and fill else None,
    )


def _held(fill: Fill) -> Held:
    return Held(
        fill["fill"], fill["what"] or "", fill["name"] or "", fill["account"], fill["mash"], fill["lpa_ul"],
        fill["since"], str(fill.get("aged_since") or ""), bool(fill.get("closed")), bool(fill.get("charged")),
    )


def _logged(state: Vessel) -> tuple[Logged, ...]:
    every = [Logged(kind, line["at"], line["person"]) for kind, lines in state["recent"].items() for line in lines]
    return tuple(sorted(every, key=lambda one: (one.at, one.kind))[-LINES_MOST:])


def _readings(lines: list[Line], since: str) -> tuple[FermentReading, ...]:
    """Return the gravities of the fill that the vessel remembers, oldest first."""
    return tuple(
        {"at": line["at"], "gravity": gravity, "temp_c": figure_in(line["values"], "temp"),
         "person": line["person"], "entry": line["entry"]}
        for line in lines
        if line["at"] >= since and (gravity := figure_in(line["values"], "gravity")) is not None
    )


def _forecast(readings: tuple[FermentReading, ...], fill: Fill, falls: Newest) -> Forecast:
    material, what = fill["material"] or "", fill["what"] or ""
    past = past_weights(falls, material)
    return forecast_of(readings, end_gravity(material, what), is_grain(f"{material} {what}"), past)


def days_since(at: str, now: datetime) -> float:
    """Return the days between a UTC text and now. [days], below nothing for a time to come"""
    return (now - datetime.fromisoformat(at)).total_seconds() / 86_400
