"""The shapes of what the files of demo_data tell. Days are `2025-09-24`, days with a time `2025-09-24 08:05`."""

from __future__ import annotations

from typing import Final, NotRequired, TypedDict

Spirit = list[float]  # (litres, % vol)
PARTS: Final = ("heads", "hearts", "tails", "low_wines")


class RunFacts(TypedDict):
    """A run: its charge, and what came of it."""

    run: str
    still: str
    on: str
    batch: str
    wash_l: float
    wash_strength_pct: float
    stillage: Spirit
    heads: NotRequired[Spirit]
    hearts: NotRequired[Spirit]
    tails: NotRequired[Spirit]
    low_wines: NotRequired[Spirit]
    heads_to: NotRequired[str]
    hearts_to: NotRequired[str]
    tails_to: NotRequired[str]
    feints_l: NotRequired[float]
    feints_strength_pct: NotRequired[float]
    feints_from: NotRequired[str]


_From = TypedDict("_From", {"from": NotRequired[str]})


class Run(RunFacts, _From):
    """A run, with the vessel that it was charged from where that is no fermenter."""


class LoggedLine(TypedDict):
    """A line of the log of the one run that is known line by line."""

    at: str
    event: str
    vapour_c: NotRequired[float]
    temp_c: NotRequired[float]
    glass_pct: NotRequired[float]
    true_pct: NotRequired[float]
    flow_l_h: NotRequired[float]


class Ferment(TypedDict):
    """A ferment: its load of fruit, its readings (days, SG, degC, pH), its wash."""

    batch: str
    vessel: str
    material: str
    variety: str
    grower: str
    delivery: str
    at: str
    by: str
    gross_kg: float
    tare_kg: float
    brix: float | None
    temp_c: float
    ph: float | None
    rot_pct: float
    readings: list[list[float]]
    wash_l: float
    wash_strength_pct: float


class CaskFill(TypedDict):
    """What a cask was filled with."""

    on: str
    what: str
    net_kg: float
    strength_pct: float


class Regauge(TypedDict):
    """A regauge of a cask."""

    on: str
    gross_kg: float
    strength_pct: float


class Cask(TypedDict):
    """A cask, its fill and its regauges."""

    base: str
    name: str
    size_class: str
    capacity_l: float
    wood: str
    toast: str
    use: str
    tare_kg: float
    place: str
    fill: NotRequired[CaskFill]
    regauges: NotRequired[list[Regauge]]


class Lot(TypedDict):
    """A lot of spirit, from its gauge to its casks."""

    lot: str
    batches: list[str]
    what: str
    tank: str
    gauged_on: str
    filled_on: str
    net_kg: float
    strength_pct: float
    casks: list[str]
    kept_clear_lpa_l: float
    kept_in: str


class Dump(TypedDict):
    """A cask that was emptied into the vat."""

    on: str
    cask: str
    gross_kg: float
    empty_kg: float
    strength_pct: float


class Water(TypedDict):
    """Water that went into the vat, or what was read after its rest."""

    on: str
    water_kg: float
    rest_until: NotRequired[str]
    glass_pct: NotRequired[float]
    temp_c: NotRequired[float]
    dip_20_l: NotRequired[float]
    strength_pct: NotRequired[float]


class Filtered(TypedDict):
    """The cold filter: what went in and what came out."""

    on: str
    chilled_c: float
    sheets: str
    before: Spirit
    after: Spirit


class Gauged(TypedDict):
    """The gauge of the tank before bottling."""

    on: str
    volume_l: float
    strength_pct: float
    label_pct: float


class _TankFilled(TypedDict):
    on: str
    to: str
    volume_l: float
    filled: int
    broken: int
    library: int
    cases: list[int]
    odd_case: str
    loss_l: float
    samples_ml: int
    checks: list[tuple[str, float, float]]  # time, fill [% of the label], % vol


_Since = TypedDict("_Since", {"from": str})


class TankFill(_TankFilled, _Since):
    """One fill of the bottling tank, and the bottles that it gave."""


class Bottling(TypedDict):
    """The vatting that was bottled."""

    batch: str
    what: str
    tank: str
    bottling_tank: str
    target_pct: float
    dumps: list[Dump]
    vatted_l: float
    waters: list[Water]
    filter: Filtered
    gauge: Gauged
    bottle_l: float
    per_case: int
    lot_mark: str
    tank_fills: list[TankFill]


class Checked(TypedDict):
    """A check of an instrument, as it was typed."""

    on: str
    person: str
    instrument: str
    against: str
    expected: str
    found: str
    correction: str
    result: str
    in_use: str


class _Moved(TypedDict):
    on: str
    cask: str
    to: str
    why: str


class Moved(_Moved, _Since):
    """A cask that was carried from one place to another."""


class Sampled(TypedDict):
    """Samples that were drawn."""

    on: str
    vessel: str
    number: int
    millilitres: int
    purpose: str


class Tasted(TypedDict):
    """A tasting; scores of nose, mouth, wood and fault."""

    on: str
    vessel: str
    scores: list[int]
    words: str
    reduced_to: float
    decision: str


class Cleaned(TypedDict):
    """A vessel that was cleaned."""

    on: str
    vessel: str
    person: str
    agent: str
    temp: str
    rinse_ph: str


class Destroyed(TypedDict):
    """Heads that were destroyed: vessel, litres, % vol."""

    on: str
    heads: list[tuple[str, float, float]]


class Counted(TypedDict):
    """The stock count: the two casks that had changed places, and the cans that were counted too."""

    on: str
    swapped: list[str]
    cans: list[str]


class Added(TypedDict):
    """What was added to a ferment."""

    on: str
    vessel: str
    person: str
    what: str
    lot_no: str
    amount: list[str]


class Cellar(TypedDict):
    """The other work of the year."""

    additions: list[Added]
    instrument_checks: list[Checked]
    moves: list[Moved]
    samples: list[Sampled]
    tastings: list[Tasted]
    cleanings: list[Cleaned]
    heads_destroyed: Destroyed
    counted: Counted


class Removed(TypedDict):
    """Cases or bottles that left."""

    on: str
    person: str
    why: str
    to_whom: str
    document: NotRequired[str]
    cases: NotRequired[list[int]]
    bottles: NotRequired[int]
    of_case: NotRequired[str]


class TastingTold(TypedDict):
    """A blind tasting; `answers` has a word for each taster, a letter for each set: r right, w wrong, - none yet."""

    name: str
    on: str
    method: str
    question: str
    samples: str
    reduced_to: int
    poured_by: str
    tasters: list[str]
    sets: int
    answers: str
    opened: str
    decision: str


class PersonTold(TypedDict):
    """A person of the house."""

    code: str
    name: str
    roles: list[str]
    access: str
    pin: str
    password: NotRequired[str]
