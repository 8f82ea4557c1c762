"""What the registry knows of vessels, instruments, people and the site, as checks and effects see it."""

from __future__ import annotations

from typing import NotRequired, TypedDict

from webapp.trade.maturing import Ripe


class VesselRow(TypedDict):
    """A vessel: what it is called and for, where it stands, how much it holds. Sizes in L, kg; 1 or 0 for yes or no."""

    mark: str
    name: str
    title: str
    sort: str
    place: str
    capacity_l: float | None
    working_l: float | None
    tare_kg: float | None
    wood: str
    toast: str
    use: str
    size_class: str
    in_zone: bool
    curved: bool
    note: str
    retired: bool
    dips: str  # how its litres follow from a dip; "" where they do not


NO_ROW: VesselRow = {
    "mark": "", "name": "", "title": "", "sort": "", "place": "", "capacity_l": None, "working_l": None,
    "tare_kg": None, "wood": "", "toast": "", "use": "", "size_class": "", "in_zone": False, "curved": False,
    "note": "", "retired": False, "dips": "",
}


class InstrumentRow(TypedDict):
    """An instrument: its scale, its unit, when it is due, the table of its certificate as JSON, or an empty text.

    accuracy: its class, I to IIII, or an empty text; interval: of its scale, in its unit.
    """

    id: str
    sort: str
    title: str
    low: float | None
    high: float | None
    unit: str
    due_on: str | None
    state: str
    corrections: str
    accuracy: str
    interval: float | None


class PersonRow(TypedDict):
    """A person: the code that stands in entries, the name, the roles as JSON, what they may open."""

    code: str
    name: str
    roles: str
    access: str
    password: str | None
    pin: str | None
    retired: int
    language: str


LimitsByScope = dict[str, dict[str, dict[str, float]]]  # scope -> key -> name of the limit -> value


class Area(TypedDict):
    """A part of the house that vessels stand in; its air where somebody has measured it. [% RH]"""

    id: str
    name: str
    humidity_pct: NotRequired[float | None]
    signal: NotRequired[str]


class ReadyRule(Ripe, total=False):
    """When a cask of a spirit, or of any, is ready."""

    what: str


class SiteSettings(TypedDict, total=False):
    """What the house has said of itself. The first six are always there."""

    name: str
    units: str
    decimal_mark: str
    height_m: float | None
    areas: list[Area]
    time_zone: str
    id: str
    accounts: str  # which report of the law its accounts are kept for
    season_month: int
    due: dict[str, float]  # how often each round is due
    loss_allowance: str  # whose law stands beside the loss of casks; empty: none
    tasting: dict[str, list[str]]
    ready_rules: list[ReadyRule]
    group: dict[str, str]
    language: str  # which is read where neither the person nor the browser says another
    pin_at_tax: bool  # whether what concerns tax wants the person's PIN when it is logged
    checks: dict[str, float]  # limits of the checks for the whole site, by name
    check_limits: LimitsByScope
