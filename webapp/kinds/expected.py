"""What a question hands over beside its sentence: which figure was expected, and what is offered instead.

A check says `expects`; `suggestions` follow from it (meant.py).
"""

from __future__ import annotations

from dataclasses import dataclass

from webapp.kinds.message import Message


@dataclass(frozen=True, slots=True)
class Expected:
    """A field or figure of an entry that would do from low to high, best at `near` or in the middle. [canonical unit]

    A field that names a vessel, or "mark" for the entry's own, is expected to be another one: it has no limits.
    """

    of: str
    low: float = 0.0
    high: float = 0.0
    near: float | None = None


@dataclass(frozen=True, slots=True)
class Box:
    """A box of the form as it would be filled in; an empty raw leaves it empty."""

    field: str
    raw: str
    unit: str = ""


@dataclass(frozen=True, slots=True)
class Suggestion:
    """A likely figure to tap, as it would be typed; `also`: other boxes that change with it."""

    field: str
    raw: str
    unit: str
    message: Message | None = None  # what may have happened
    also: tuple[Box, ...] = ()
