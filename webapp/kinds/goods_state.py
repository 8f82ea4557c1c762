"""What the fold keeps of bottlings, their removals, and what ferments gave. Part of state.py, whose rules hold here."""

from __future__ import annotations

from typing import NotRequired, TypedDict

from webapp.kinds.amount import Stock

Cases = list[str | int]  # a range of cases: [what stands before their numbers, first, last]


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


class Removed(TypedDict):
    """How goods of a bottling left: when, why, to whom, with which document."""

    at: str
    why: str
    to_whom: str
    document: str


class Bottling(BottlingFacts, Stock):
    """A bottling, key `b:`: an account of its own. `gone`: the cases that left, [what stands before, first, last]."""

    bottled_ul: int
    on_hand: int
    gone: list[Cases]
    removed: NotRequired[list[Removed]]  # the last ones


class BottlingChanges(TypedDict, total=False):
    """What an entry may change of a bottling."""

    on_hand: int
    gone: list[Cases]
    counted: BottleCount
    removed: list[Removed]


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


class Fall(TypedDict):
    """How one ferment fell to its end: when each gravity was read, from the first, and what it was. [days], [SG]"""

    root: str
    days: list[float]
    gravities: list[float]


class Yields(TypedDict):
    """The last ferments of a material, key `y:`."""

    closes: list[Yield]


class Falls(TypedDict):
    """How the last ferments of a material fell, key `e:`."""

    ended: list[Fall]
