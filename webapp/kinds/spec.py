"""What a kind of entry is made of: plain data, declared once, read by every room.

A `Kind` is frozen and dumps to JSON. The form, the schema, the phone's checks, the API description, the list
columns, the CSV heads and the reference page are all derived from it. Nothing here knows a request or a database.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field
from typing import Literal, cast

from webapp.kinds.key import Key, VesselKey, is_vessel
from webapp.kinds.state import State, Vessel

Sort = Literal["number", "choice", "text", "date", "time", "mark", "yes_no"]
Weight = Literal["stop", "ask", "note"]
Range = tuple[float | None, float | None]
OPEN: Range = (None, None)


@dataclass(frozen=True, slots=True)
class Field:
    """One box on the form. Ranges are in the canonical unit, that is `units[0]`.

    A `usual` range that is left draws a second look; a `possible` range that is left may still be kept "as read".
    """

    name: str
    label: str
    sort: Sort = "number"
    units: tuple[str, ...] = ()
    usual: Range = OPEN
    possible: Range = OPEN
    required: bool = False
    choices: tuple[tuple[str, str], ...] = ()
    instrument: str | None = None  # the sort of instrument that is read, if its id should be kept
    decimals: int | None = None
    vessels: tuple[str, ...] = ()  # for a mark: the sorts of vessel it may name; empty means any
    ghost: bool = True  # show the last value beside the new one
    danger: tuple[tuple[float, str], ...] = ()  # (from this value on [canonical unit], what to do at once), rising
    falls: float | None = None  # the value can only fall; by how much it may rise before we ask [canonical unit]
    help: str = ""
    source: str = "common practice, no source"  # of the ranges
    aside: bool = False  # seldom read: asked behind one line, after what is always read
    typed_in: str = ""  # the unit that the form offers first, where it is not the canonical one

    @property
    def is_place(self) -> bool:
        """Whether it names a place: its name ends so. Forms offer the places that there are."""
        return self.sort == "text" and self.name.endswith("place")


@dataclass(frozen=True, slots=True)
class Rule:
    """A check between fields of one entry that the phone and the book make alike.

    ops: `lt`, `le` (left against right, both present), `differ_unless` (left and right may be equal only if `near` says
    so), `any_of` (at least one of `left`, `right` is there), `needs` (if left is there, right must be). A side is a
    field or figure, `a|b` for the first of two that is there, or `event=x|y`, there where the choice is one of these.
    """

    code: str
    op: Literal["lt", "le", "any_of", "needs", "differ_unless"]
    left: str
    right: str
    weight: Literal["refuse", "stop", "ask"]
    words: str
    near: tuple[str, float, float] | None = None  # (field, centre, half width), canonical units


@dataclass(frozen=True, slots=True)
class Figure:
    """A computed figure: `sum` names one of trade.sums.SUMS, `inputs` maps its inputs to fields or earlier figures.

    Several sources of one input are tried in order: a figure, a field, `@name` of the vessel's context, `=20` for a
    fixed figure in the input's canonical unit. Of two figures with one name the first that can be computed counts.
    `given` names a field that, when filled in, is the figure itself. A figure that is `only_shown` is left out where
    its sum has no answer; any other then puts a `stop`. One that is `typed` as ("volume|net_weight", "lb") counts only
    where the first of these fields that was filled in is in that unit: the law that measures in it has its own sum.
    """

    name: str
    label: str
    unit: str
    sum: str
    inputs: Mapping[str, tuple[str, ...]]
    decimals: int = 1
    given: str | None = None
    big: bool = False
    only_shown: bool = False
    typed: tuple[str, str] | None = None


@dataclass(frozen=True, slots=True)
class Flow:
    """Pure alcohol, volume and mass moved between two accounts by one entry; whole units so that sums are exact.

    Accounts are `v:<mark>` for vessels, `r:<run>` for a run under way, `b:<bottling>` for the bottles of a bottling and
    `out:<name>` for the world outside. A fill is what stands in a vessel from empty to empty, named by the root entry
    that began it; a run is a fill of its own; bottles and the outside have none. Tax accounts are production, storage,
    processing and finished (goods in bottles); the outside has none. What changes its tax account where it stands flows
    from its vessel into the same vessel. What leaves production says of which class it is: spirits.py.
    """

    source: Key
    target: Key
    lpa_ul: int = 0  # pure alcohol [uL at 20 degC]
    volume_ml: int = 0  # liquid [mL at 20 degC]; for show: volumes do not add
    mass_g: int = 0  # [g]
    source_fill: str = ""
    target_fill: str = ""
    reason: str = ""  # a word of the effect that made it
    source_account: str = ""
    target_account: str = ""
    sort: str = ""


@dataclass(frozen=True, slots=True)
class Effect:
    """What one entry does to the fold: new states by key, and flows. Both may be empty."""

    states: Mapping[Key, State] = field(default_factory=dict)
    flows: tuple[Flow, ...] = ()

    def vessels(self) -> Iterator[tuple[VesselKey, Vessel]]:
        """Yield the vessels among the states."""
        for key, state in self.states.items():
            if is_vessel(key):
                yield key, cast(Vessel, state)  # the key says which sort of state it is


NOTHING = Effect()


@dataclass(frozen=True, slots=True)
class Kind:
    """A sort of entry. One module in this folder declares one, and the registry in __init__ lists it."""

    name: str
    version: int
    title: str
    fields: tuple[Field, ...]
    about: str  # one sentence for the reference page
    short: str = ""  # on buttons; the title where empty
    icon: str = "pen"
    vessels: tuple[str, ...] = ()  # sorts of vessel whose card offers it
    needs_mark: bool = True
    role: str = ""  # the trade role that usually makes it
    rules: tuple[Rule, ...] = ()
    figures: tuple[Figure, ...] = ()
    checks: tuple[str, ...] = ()  # names of history checks in book.checks
    effect: Callable[..., Effect] | None = None  # (Read, View) -> Effect, pure; read.py stands above this file
    summary: str = ""  # one line for lists, e.g. "{gravity} at {temp}"
    curve: tuple[str, ...] = ()  # figures or fields drawn over time on the vessel's card
    cautions: tuple[str, ...] = ()  # keys into the cautions file
    account: str = ""  # production, storage, processing, any
    feeds: tuple[str, ...] = ()
    run: bool = False  # belongs to the run now on the still
    taxed: bool = False  # goes into or out of the accounts of the tax; common practice, no source
    floor: bool = True  # offered on the floor (offline)

    def field(self, name: str) -> Field | None:
        """Return the field of that name, or None."""
        for one in self.fields:  # a generator would cost more than the search
            if one.name == name:
                return one
        return None
