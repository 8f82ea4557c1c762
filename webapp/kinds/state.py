"""The shape of what the fold keeps, by the sort of its key (key.py). How an entry is remembered in it: remember.py.

States are plain JSON: dicts and lists, as the book stores them. Times are the fold's own, UTC. Never change a state:
it is shared. What takes its place is a new one.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import NotRequired, TypedDict

from webapp.kinds.amount import Stock
from webapp.kinds.goods_state import Bottling, Falls, Named, Removal, Yields
from webapp.kinds.run_state import Run, Wish
from webapp.kinds.tasting_state import Tasting

RECENT = 20
RUNS = 12
READINGS = 400
CHECKS = 20

Value = float | str  # of a field as it was read: a figure in the field's canonical unit, or a text


class Line(TypedDict):
    """An entry as a vessel remembers it."""

    entry: str
    at: str
    person: str
    device: str
    seq: int
    values: dict[str, Value]
    figures: dict[str, float]


class Emptied(TypedDict):
    """The entry that emptied a vessel."""

    entry: str
    kind: str
    at: str
    device: str
    person: str


class PlannedVat(TypedDict):
    """The last vat that was planned for a tank."""

    entry: str
    at: str
    person: str
    name: str
    draws: str
    water_kg: float | None
    target_pct: float | None
    volume_l: float | None


class Reduced(TypedDict):
    """The last water that went into a fill: what was wanted, and what was measured after the rest."""

    at: str
    target_pct: float | None
    planned_pct: float | None
    planned_l: float | None
    measured_pct: float | None
    measured_l: float | None
    before_l: float | None
    water_l: float


class FillFacts(TypedDict, total=False):
    """What of a fill is there only where somebody has said it."""

    lot: str | None
    use: str | None
    wood: str | None
    toast: str | None
    cooperage: str | None
    tare_kg: float | None
    fill_strength_pct: float | None
    distilled_pct: float | None
    label_strength_pct: float | None
    aged_since: str | None  # since when its youngest part is in wood
    by_papers: str  # there where it is from before this book: the papers that say its age, or an empty text
    opened_at: str  # when it was taken into this book; where `since` is the same, nobody knows when it was filled
    filled_lpa_l: float | None  # at its fill, where that was before the book
    origin: str
    final_gravity: float | None
    sugar_added: bool
    closed: bool  # its wash is measured
    charged: bool  # some of its wash is in a still
    reduced: Reduced


class FillChanges(FillFacts, total=False):
    """What an entry may say of a fill. Its stock is changed by flows alone."""

    what: str
    material: str | None
    name: str
    og: float | None
    sources: list[str]
    account: str
    mash: bool
    since: str


class Fill(FillFacts, Stock):
    """What stands in a vessel from empty to empty; litres and kilograms follow from its stock."""

    fill: str
    what: str
    material: str | None
    name: str
    since: str
    og: float | None
    sources: list[str]
    account: str
    mash: bool
    volume_l: float | None
    lpa_l: float | None
    mass_kg: float | None
    strength_pct: float | None


NO_FILL: Fill = {
    "fill": "", "what": "", "material": None, "name": "", "since": "", "og": None, "sources": [], "account": "",
    "mash": False, "lpa_ul": 0, "volume_ml": 0, "mass_g": 0, "volume_l": None, "lpa_l": None, "mass_kg": None,
    "strength_pct": None,
}


class Vessel(TypedDict):
    """A vessel, key `v:`. `recent` are the last RECENT entries of each kind and `runs` the last RUNS, oldest first."""

    holds: Fill | None
    recent: dict[str, list[Line]]
    run: str | None  # id of the run now on this still
    runs: list[str]
    place: str | None  # where an entry put it last; None: the registry's place holds
    emptied: NotRequired[Emptied | None]  # only while it is empty
    planned: NotRequired[PlannedVat]
    vapour_offsets: NotRequired[list[list[str | float]]]  # of its last runs: [run id, degC] its thermometer stood off


EMPTY_VESSEL: Vessel = {"holds": None, "recent": {}, "run": None, "runs": [], "place": None, "emptied": None}


class VesselChanges(TypedDict, total=False):
    """What an entry may change of a vessel."""

    holds: Fill | None
    run: str | None
    runs: list[str]
    place: str | None
    emptied: Emptied | None
    planned: PlannedVat
    vapour_offsets: list[list[str | float]]


class PastFill(TypedDict):
    """What is known of a fill for good, key `f:`: its vessel, its facts, when it ended."""

    mark: str
    ended_at: str | None
    what: NotRequired[str]
    material: NotRequired[str]
    name: NotRequired[str]
    lot: NotRequired[str]
    since: NotRequired[str]
    account: NotRequired[str]
    mash: NotRequired[bool]
    use: NotRequired[str]
    wood: NotRequired[str]
    toast: NotRequired[str]
    cooperage: NotRequired[str]
    tare_kg: NotRequired[float]
    fill_strength_pct: NotRequired[float]
    distilled_pct: NotRequired[float]
    label_strength_pct: NotRequired[float]
    aged_since: NotRequired[str]
    by_papers: NotRequired[str]
    opened_at: NotRequired[str]
    filled_lpa_l: NotRequired[float]
    origin: NotRequired[str]
    sugar_added: NotRequired[bool]
    og: NotRequired[float]
    final_gravity: NotRequired[float]


class InstrumentCheck(TypedDict):
    """A check of an instrument."""

    entry: str
    at: str
    good: bool
    against: str | None
    expected: float | None
    found: float | None
    correction: float | None
    in_use: str | None
    until: str | None


class Instrument(TypedDict):
    """An instrument, key `i:`, with its last CHECKS checks."""

    checks: list[InstrumentCheck]
    last_good_at: str | None
    failed_at: str | None


class Finding(TypedDict):
    """The vessel last found at a place by a stock count, key `p:`, and the place it had in the book."""

    mark: str
    at: str
    booked: str


class PhoneClock(TypedDict):
    """How far a phone's clock was off when it was last said, key `d:`. [s]"""

    skew_s: float


# The round a person is on, key `h:`: figure -> [value, on how many vessels running, at, mark].
Round = dict[str, list[float | str]]
State = (
    Vessel | PastFill | Run | Wish | Instrument | Bottling | Named | Removal | Yields | Falls | Finding | PhoneClock
    | Tasting | Round
)
Body = Mapping[str, object]  # any state, where nobody looks into it


def figure_in(values: Mapping[str, Value], name: str) -> float | None:
    """Return a figure among values as they were read, or None."""
    value = values.get(name)
    return value if isinstance(value, (float, int)) else None


def text_in(values: Mapping[str, Value], name: str) -> str | None:
    """Return a text among values as they were read, or None."""
    value = values.get(name)
    return value if isinstance(value, str) else None


