"""The book's memory between writes: only values that can be read again from the file at any time."""

from __future__ import annotations

from collections import OrderedDict
from dataclasses import dataclass, field

from webapp.kinds.entry import Limits
from webapp.kinds.rows import InstrumentRow, PersonRow, SiteSettings, VesselRow
from webapp.kinds.state import State


@dataclass(slots=True)
class Tail:
    """The newest version of one state: its place, its value, its distance from a version that is kept in full."""

    order_key: str
    last_touch: str
    value: State | None = None
    depth: int = 0
    is_loaded: bool = False


@dataclass(slots=True)
class Registry:
    """What the fold has asked the registry for; None where it has not asked yet."""

    vessels: dict[str, VesselRow | None] = field(default_factory=dict)
    like: dict[tuple[str, int], list[VesselRow]] = field(default_factory=dict)
    instruments: dict[str, InstrumentRow] | None = None
    people: dict[str, PersonRow] | None = None
    site: SiteSettings | None = None
    limits: Limits | None = None

    def clear(self) -> None:
        """Forget everything."""
        self.vessels.clear()
        self.like.clear()
        self.instruments = self.people = self.site = self.limits = None


@dataclass(slots=True)
class Memory:
    """Newest states, the registry, and the families that wait to be folded. Cleared whenever it might be old."""

    tails: OrderedDict[str, Tail] = field(default_factory=OrderedDict)
    registry: Registry = field(default_factory=Registry)
    dirty_roots: set[str] = field(default_factory=set)

    def clear(self) -> None:
        """Forget everything."""
        self.tails.clear()
        self.registry.clear()
        self.dirty_roots.clear()
