"""What is wrong or odd with an entry by itself."""

from __future__ import annotations

from dataclasses import dataclass

from webapp.kinds.expected import Expected
from webapp.kinds.message import Message


@dataclass(frozen=True, slots=True)
class Problem:
    """What is wrong or odd with an entry. `refuse`: no number at all; `stop`, `ask`, `note`: kept, and queried."""

    code: str
    weight: str
    field: str
    message: Message
    expects: tuple[Expected, ...] = ()
