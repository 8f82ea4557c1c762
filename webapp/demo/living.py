"""The living moment: what stands in the house today, so that a newcomer finds something to do."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime

from webapp.demo.phones import HandIn, Phone


def hand_ins(phones: Mapping[str, Phone], today: datetime) -> list[HandIn]:
    """Return the batches of the last days up to `today` (aware)."""
    return []
