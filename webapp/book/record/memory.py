"""The book's memory between writes: only values that can be read again from the file at any time."""

from __future__ import annotations

from collections import OrderedDict
from dataclasses import dataclass, field
from typing import Any

from webapp.kinds.entry import Limits
from webapp.kinds.rows import InstrumentRow, PersonRow, SiteSettings, VesselRow
from webapp.kinds.state import State

ENDLESS = "~~"  # after every place, and right after it


@dataclass(slots=True)
class Course:
    """What is known of the versions of one state: the places of the newest and of the last touch; and of some versions
    in their order place, value, distance from a version that is kept in full, and up to which place nothing but what
    stands here follows. The first is no version: it is how things stood before all of them.
    """

    newest: str
    last_touch: str
    places: list[str] = field(default_factory=lambda: [""])
    values: list[State | None] = field(default_factory=lambda: [None])
    depths: list[int] = field(default_factory=lambda: [0])
    reaches: list[str] = field(default_factory=lambda: [""])


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
    """Versions of states, the registry, and the families that wait to be folded. Cleared whenever it might be old."""

    courses: OrderedDict[str, Course] = field(default_factory=OrderedDict)  # the one that was asked for last is last
    versions: int = 0  # in all courses together
    registry: Registry = field(default_factory=Registry)
    plans: OrderedDict[str, Any] = field(default_factory=OrderedDict)  # by place; only replay.py knows what they are
    plan_places: dict[str, str] = field(default_factory=dict)  # root of a family -> place of its plan
    dirty_roots: set[str] = field(default_factory=set)

    def clear(self) -> None:
        """Forget everything."""
        self.courses.clear()
        self.versions = 0
        self.registry.clear()
        self.plans.clear()
        self.plan_places.clear()
        self.dirty_roots.clear()
