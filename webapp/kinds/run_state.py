"""What the fold keeps of a run, and of what the distiller wants of one. Part of state.py, whose rules hold here."""

from __future__ import annotations

from typing import NotRequired, TypedDict

from webapp.kinds.amount import Stock


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
    tasting: NotRequired[str]  # the blind tasting it rests on


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
