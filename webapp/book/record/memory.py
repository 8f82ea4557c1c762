"""The book's memory between writes: only values that can be read again from the file at any time."""

from __future__ import annotations

from collections import OrderedDict
from dataclasses import dataclass, field
from typing import Any


@dataclass(slots=True)
class Tail:
    """The newest version of one state: its place, its value, its distance from a version that is kept in full."""

    order_key: str
    last_touch: str
    value: Any = None
    depth: int = 0
    is_loaded: bool = False


@dataclass(slots=True)
class Memory:
    """Newest states, the registry, and the families that wait to be folded. Cleared whenever it might be old."""

    tails: OrderedDict[str, Tail] = field(default_factory=OrderedDict)
    registry: dict[str, Any] = field(default_factory=dict)
    dirty_roots: set[str] = field(default_factory=set)

    def clear(self) -> None:
        """Forget everything."""
        self.tails.clear()
        self.registry.clear()
        self.dirty_roots.clear()
