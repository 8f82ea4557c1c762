"""One entry of the story as it happened, in the house's own time, and small helpers to write it down."""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta, timezone
from typing import Any
from zlib import crc32

from webapp.places import DEMO_DIR
from webapp.trade import units
from webapp.trade.alcoholometry import glass_indication

Values = Mapping[str, str | tuple[str, ...]]
PHONE_OF = {"IM": "PH-1", "BT": "PH-1", "NS": "PH-2", "PR": "PH-3", "SD": "PH-1", "WK": "PH-4", "OL": "Office"}
ROLE_OF = {
    "IM": "master distiller", "BT": "still hand", "NS": "cellar hand", "PR": "gauger", "SD": "gauger",
    "WK": "harvest hand", "OL": "office",
}
# Which glass serves from where up [% as it shows]: whoever reads takes the first that reaches.
GLASSES = ((80.0, "AH-5"), (60.0, "AH-1"), (40.0, "AH-2"), (22.0, "AH-3"), (0.0, "AH-4"))


@dataclass(slots=True)
class Draft:
    """One entry before a phone has it. `at` and `typed` are true local times without a zone; `key` finds it again."""

    at: datetime
    kind: str
    vessel: str  # the base of its mark; empty for none
    person: str
    values: Values
    key: str = ""
    phone: str = ""
    typed: datetime | None = None
    remark: str = ""
    amends: str = ""  # key of the draft it amends
    reason: str = ""
    sent_twice: bool = False
    extra: dict[str, object] = field(default_factory=dict)

    @property
    def typed_at(self) -> datetime:
        """The time of logging: half a minute after the reading, unless the story gives another."""
        return self.typed or self.at + timedelta(seconds=30)

    @property
    def by_phone(self) -> str:
        """The phone it was logged on."""
        return self.phone or PHONE_OF[self.person]


def load(name: str) -> Any:
    """Return one file of demo_data as plain data. FileNotFoundError if the program was installed without it."""
    return json.loads((DEMO_DIR / f"{name}.json").read_text("utf-8"))


def day(text: str, clock: str = "08:05") -> datetime:
    """Return a day and a time of the house as a datetime without a zone."""
    return datetime.fromisoformat(f"{text}T{clock}")


def zoned(local: datetime) -> datetime:
    """Return a local time of the house with its offset: an hour ahead of UTC, two in summer.

    Written out (EU rule: last Sundays of March and October, 01:00 UTC) because not every system has a zone table.
    """
    naive_utc = local - timedelta(hours=1)
    begins, ends = (_last_sunday(local.year, month) + timedelta(hours=1) for month in (3, 10))
    hours = 2 if begins <= naive_utc < ends else 1
    return local.replace(tzinfo=timezone(timedelta(hours=hours)))


def house_time(moment: datetime) -> datetime:
    """Return an aware instant as local time of the house without a zone."""
    utc = moment.astimezone(UTC).replace(tzinfo=None)
    summer = zoned(utc + timedelta(hours=2)).utcoffset()
    assert summer is not None
    return utc + summer


def _last_sunday(year: int, month: int) -> datetime:
    last = datetime(year, month, 31)  # noqa: DTZ001
    return last - timedelta(days=(last.weekday() + 1) % 7)


def figure(value: float, decimals: int) -> str:
    """Return a figure as it would be typed."""
    return units.format_number(value, decimals)


def gravity(value: float) -> str:
    """Return a gravity as it would be typed: three decimals, four where a half mark was read."""
    return figure(value, 3 if abs(value * 1000 - round(value * 1000)) < 1e-6 else 4)


def glass_values(strength_pct: float, temp_c: float) -> dict[str, tuple[str, ...]]:
    """Return the glass reading and temperature that a spirit of this true strength shows. [% vol, degC]"""
    shown = figure(float(glass_indication(strength_pct, temp_c)), 1)
    instrument = next(name for low, name in GLASSES if float(shown) >= low)
    return {"glass": (shown, "pct_glass", instrument), "temp": (figure(temp_c, 1), "degC", "TH-1")}


def wobble(text: str, size: float) -> float:
    """Return a small figure that is always the same for the same text, within -size to size: no two days are alike."""
    return (crc32(text.encode()) / 0xFFFF_FFFF * 2 - 1) * size
