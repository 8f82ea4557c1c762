"""The shape of what the fold keeps, by the sort of its key (key.py). How an entry is remembered in it: remember.py.

States are plain JSON: dicts and lists, as the book stores them. Times are the fold's own, UTC. Never change a state:
it is shared. What takes its place is a new one.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import NotRequired, TypedDict

RECENT = 20
RUNS = 12
READINGS = 400
CHECKS = 20

Cases = list[str | int]  # a range of cases: [what stands before their numbers, first, last]
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


class Stock(TypedDict):
    """What is booked in a vessel, a run or the bottles of a bottling: the sum of its flows, kept by stock.py alone."""

    lpa_ul: int
    volume_ml: int
    mass_g: int


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


class RunLine(TypedDict):
    """A reading, a cut or the end of a run: what it read, and where it flowed."""

    entry: str
    at: str
    true_strength: float | None
    vapour_temp: NotRequired[float]
    flow: NotRequired[float]
    plates: NotRequired[float]
    cooling_temp: NotRequired[float]
    event: NotRequired[str]
    receiver: NotRequired[str | None]
    reason: NotRequired[str]
    nose: NotRequired[str]
    glass: NotRequired[float]
    temp: NotRequired[float]
    dip: NotRequired[float]
    remnant_l: NotRequired[float]  # what its receiver held before
    typed_at: NotRequired[str]  # of a cut that was logged after it was made
    late_why: NotRequired[str]


class Charge(TypedDict):
    """What a run was charged with."""

    volume_l: float
    wash_l: float | None
    feints_l: float | None
    feints_lpa_l: float | None
    lpa_l: float | None


class Fraction(TypedDict):
    """A part of a run, as it was gauged in its receiver."""

    entry: str
    at: str
    fraction: str | None
    receiver: str
    volume_l: float
    strength_pct: float | None
    lpa_l: float
    goes_to: str | None


class RunChanges(TypedDict, total=False):
    """What an entry may change of a run."""

    fractions: list[Fraction]


_RunSource = TypedDict("_RunSource", {"from": str})


class Run(_RunSource, Stock):
    """A run of a still, key `r:`. Its id is the root of its charge, so amending the charge keeps the run.

    `from` is the vessel that its wash came from; its stock is what of the charge is not accounted for yet.
    """

    still: str
    name: str
    what: str
    batch: str
    material: str | None
    started_at: str
    receivers: dict[str, str | None]  # heads, hearts, tails
    receiver: str | None
    charge: Charge
    readings: list[RunLine]
    cuts: list[RunLine]
    fractions: list[Fraction]
    ended_at: str | None
    end: NotRequired[RunLine]


class CutPlan(TypedDict):
    """Where the distiller wants the cuts of a fruit."""

    entry: str
    at: str
    person: str
    why: str
    heads_l: float | None
    hearts_to_pct: float | None
    tails_to_pct: float | None
    still: str


class BestRun(TypedDict):
    """The run that later ones are held against."""

    entry: str
    at: str
    person: str
    why: str
    run: str
    name: str


class Wish(TypedDict):
    """What the distiller wants of a fruit, key `c:`; plans by still, or "*" for any, and best runs by still."""

    what: str
    plans: dict[str, CutPlan]
    best: dict[str, BestRun]


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


class BottleCount(TypedDict):
    """The last count of the bottles of a bottling."""

    at: str
    bottles: int
    entry: str


class BottlingFacts(TypedDict):
    """What somebody has said of a bottling: where it came from, its counts and case numbers."""

    entry: str
    tank: str
    fill: str
    at: str
    what: str
    batch: str
    lot_mark: str | None
    strength_pct: float
    label_strength_pct: float | None
    size_l: float
    good: int
    filled: int
    broken: int
    reworked: int
    library: int
    per_case: float | None
    case_from: str | None
    case_to: str | None
    odd_case: str | None
    consignor: NotRequired[str]
    document: NotRequired[str]
    counted: NotRequired[BottleCount]
    opened: NotRequired[bool]  # it stood in the store before the book
    origin: NotRequired[str]
    papers: NotRequired[str]


class Bottling(BottlingFacts, Stock):
    """A bottling, key `b:`: an account of its own. `gone`: the cases that left, [what stands before, first, last]."""

    bottled_ul: int
    on_hand: int
    gone: list[Cases]


class BottlingChanges(TypedDict, total=False):
    """What an entry may change of a bottling."""

    on_hand: int
    gone: list[Cases]
    counted: BottleCount


class Named(TypedDict):
    """The bottlings that answer to a batch or lot mark, key `l:`."""

    bottlings: list[str]


class Removal(TypedDict):
    """One removal of bottles, key `o:`, for the list of where cases went."""

    entry: str
    bottling: str
    at: str
    why: str
    bottles: int
    cases: int
    document: str
    to_whom: str
    case_from: str
    case_to: str


class Yield(TypedDict):
    """What one ferment gave of what it promised."""

    root: str
    at: str
    by: str
    share: float


class Yields(TypedDict):
    """The last ferments of a material, key `y:`."""

    closes: list[Yield]


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
    Vessel | PastFill | Run | Wish | Instrument | Bottling | Named | Removal | Yields | Finding | PhoneClock | Round
)
Body = Mapping[str, object]  # any state, where nobody looks into it


def figure_in(values: Mapping[str, Value], name: str) -> float | None:
    """Return a figure among values as they were read, or None."""
    value = values.get(name)
    return value if isinstance(value, float | int) else None


def text_in(values: Mapping[str, Value], name: str) -> str | None:
    """Return a text among values as they were read, or None."""
    value = values.get(name)
    return value if isinstance(value, str) else None


