"""What the book holds in memory between writes: only what can be read again from the file at any time."""

from __future__ import annotations

from collections import OrderedDict
from dataclasses import dataclass, field
from typing import Any


@dataclass(slots=True)
class Tail:
    """The newest version of one state: where it was written, what it is, how far it is from a whole version."""

    order_key: str
    last_touch: str
    value: Any = None
    depth: int = 0
    is_loaded: bool = False


@dataclass(slots=True)
class Memory:
    """Newest states, the registry, and what waits to be folded. Cleared whenever it might be old."""

    tails: OrderedDict[str, Tail] = field(default_factory=OrderedDict)
    registry: dict[str, Any] = field(default_factory=dict)
    dirty_roots: set[str] = field(default_factory=set)

    def clear(self) -> None:
        """Forget everything."""
        self.tails.clear()
        self.registry.clear()
        self.dirty_roots.clear()
