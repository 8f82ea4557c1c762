"""From drafts to hand-ins: each phone counts its entries, stamps them by its own clock, and hands them in later."""

from __future__ import annotations

import hashlib
import uuid
from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from typing import TypedDict

import webapp.kinds
from webapp.demo.story import ROLE_OF, Draft, zoned
from webapp.trade.marks import make_mark

NOON = 13  # a phone hands in when its person comes up: after the morning, and after the afternoon
UP_MIN = 12
BATCH_MOST = 150


_Since = TypedDict("_Since", {"from": str})


class ClockSpan(_Since):
    """From which day to which a phone's clock is off, and by how much. [s]"""

    to: str
    off_s: float


class Body(TypedDict):
    """What a phone sends: the time by its clock, its id, the entries."""

    now: str
    device: str
    entries: list[dict[str, object]]


@dataclass(slots=True)
class Phone:
    """A phone: its id in the book, how it writes decimals, and how far its clock is off on which days [s]."""

    name: str
    device: str
    decimal_mark: str = "."
    clock: list[ClockSpan] = field(default_factory=list)
    seq: int = 0

    def off(self, local: datetime) -> timedelta:
        """Return the seconds by which this phone's clock is ahead of the right time at that moment. [s]"""
        today = f"{local:%Y-%m-%d}"
        off_s = next((span["off_s"] for span in self.clock if span["from"] <= today <= span["to"]), 0)
        return timedelta(seconds=off_s)


@dataclass(slots=True)
class HandIn:
    """One batch on its way: which phone, when by the right clock, and the body it sends."""

    phone: Phone
    now: datetime
    body: Body


def hand_ins(told: list[Draft], phones: Mapping[str, Phone], up_min: int = UP_MIN) -> list[HandIn]:
    """Return all batches in the order they reach the book. Entries keep the order in which they were typed."""
    ids: dict[str, str] = {}
    batches: dict[tuple[str, str, bool, int], list[Draft]] = {}
    counts: dict[tuple[str, str, bool], int] = {}
    for draft in sorted(told, key=lambda draft: (draft.typed_at, draft.key)):
        half = (draft.by_phone, f"{draft.typed_at:%Y-%m-%d}", draft.typed_at.hour >= NOON)
        counts[half] = counts.get(half, -1) + 1
        batches.setdefault((*half, counts[half] // BATCH_MOST), []).append(draft)
    sent = []
    for (name, _, _, n), drafts in batches.items():
        phone = phones[name]
        now = zoned(drafts[-1].typed_at + timedelta(minutes=up_min, seconds=n))
        entries = [_entry(draft, phone, ids) for draft in drafts]
        sent.append(_hand_in(phone, now, entries))
        again = [entry for entry, draft in zip(entries, drafts, strict=True) if draft.sent_twice]
        if again:
            sent.append(_hand_in(phone, now + timedelta(minutes=2), again))
    return sorted(sent, key=lambda hand_in: hand_in.now)


def _hand_in(phone: Phone, now: datetime, entries: list[dict[str, object]]) -> HandIn:
    by_phone = now + phone.off(now.replace(tzinfo=None))
    return HandIn(phone, now, {"now": by_phone.isoformat(), "device": phone.device, "entries": entries})


def _entry(draft: Draft, phone: Phone, ids: dict[str, str]) -> dict[str, object]:
    phone.seq += 1
    off = phone.off(draft.typed_at)
    typed_at = zoned(draft.typed_at) + off
    kind = webapp.kinds.get(draft.kind)
    assert kind is not None, draft.kind
    entry_id = ids[draft.key] = _made_id(typed_at, f"{phone.name}:{phone.seq}")
    return {
        "id": entry_id, "kind": draft.kind, "kind_version": kind.version,
        "mark": make_mark(draft.vessel) if draft.vessel else "", "mark_by": "scanned" if draft.vessel else "",
        "read_at": (zoned(draft.at) + off).isoformat(), "typed_at": typed_at.isoformat(),
        "person": draft.person, "role": ROLE_OF[draft.person], "seen_by": "", "device": phone.device, "seq": phone.seq,
        "values": {name: _value(value, phone, ids) for name, value in draft.values.items()},
        "as_read": [], "looked_again": [], "remark": draft.remark,
        "amends": ids[draft.amends] if draft.amends else None, "reason": draft.reason, **draft.extra,
    }


def _value(value: str | tuple[str, ...], phone: Phone, ids: Mapping[str, str]) -> dict[str, str]:
    if isinstance(value, str):  # `@key` stands for the id of another draft
        return {"raw": ids[value[1:]] if value.startswith("@") else value}
    raw, unit, instrument = (*value, "")[:3]
    named = {"instrument": instrument} if instrument else {}
    return {"raw": raw.replace(".", phone.decimal_mark), "unit": unit, **named}


def _made_id(typed_at: datetime, name: str) -> str:
    """Return a UUIDv7 for that moment; its random part comes from the name, so that every load makes the same year."""
    stamp = int(typed_at.timestamp() * 1000)
    chance = int.from_bytes(hashlib.sha256(name.encode()).digest()[:10], "big")
    number = (stamp << 80) | (0x7 << 76) | (((chance >> 62) & 0xFFF) << 64) | (0b10 << 62) | (chance & ((1 << 62) - 1))
    return str(uuid.UUID(int=number))
