"""An entry as it was handed in, and what the book knew of its vessel when it was read."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import NotRequired, TypedDict

from webapp.kinds.state import Value

Table = Sequence[Sequence[float]]  # points (shown, add) of an instrument's certificate, rising


class Typed(TypedDict, total=False):
    """One box of the form as it was left: the text as typed, the unit, the instrument that was read."""

    raw: str
    unit: str
    instrument: str


class Entry(TypedDict):
    """An entry: which kind, of which vessel, when it was read and typed, by whom, on which phone, and its boxes."""

    id: str
    kind: str
    kind_version: int
    mark: str
    read_at: str
    typed_at: str
    person: str
    device: str
    seq: int
    values: Mapping[str, Typed]
    role: NotRequired[str]
    amends: NotRequired[str | None]
    reason: NotRequired[str | None]
    remark: NotRequired[str | None]
    seen_by: NotRequired[str]
    shown: NotRequired[str]  # what the person had shown on the phone: "", "pin", or "now" for this very entry
    enclosed: NotRequired[list[str]]  # SHA-256 of each picture, paper or voice note that belongs to it
    signature: NotRequired[str]  # of the phone: the name of its key, a point, the signature (book/record/signing.py)


class Correction(TypedDict):
    """What is added to what an instrument shows, in its own unit: its certificate's table, moved by its last check."""

    unit: str
    table: Table
    offset: float


class Accuracy(TypedDict):
    """What the registry says of an instrument: its class, its interval, whether its last check is bad or too old."""

    unit: str
    accuracy: str
    interval: float | None
    doubtful: bool


class Ranges(TypedDict, total=False):
    """Ranges of a field that are not the kind's own, each (low, high). [canonical unit]"""

    usual: Sequence[float | None]
    possible: Sequence[float | None]


# (scope, key, kind) -> field -> ranges that somebody has set; the narrower scope wins: site, material, sort, vessel.
Limits = Mapping[tuple[str, str, str], Mapping[str, Ranges]]


class Context(TypedDict, total=False):
    """What the book knows of a vessel that the reading of an entry needs: the same on the card of a phone."""

    og: float | None
    tare_kg: float | None
    volume_l: float | None
    strength_pct: float | None
    mass_kg: float | None
    lpa_l: float | None
    dips: str | None  # its strapping table; "" where it has none, None where it has the dimensions of a cask
    cask_dips: str | None
    juice_share: float
    last: Mapping[str, Value]  # field -> its last value
    limits: Mapping[str, Ranges]
    corrections: Mapping[str, Correction]  # by the id of the instrument
    accuracies: Mapping[str, Accuracy]  # the same; no figure follows from them, but how far it may be off
    capacity_l: float | None
