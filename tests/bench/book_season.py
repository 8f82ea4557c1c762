"""Entries as a busy house makes them, for benches: any number, and plausible enough to be folded for real."""

from __future__ import annotations

import random
from collections.abc import Iterator
from datetime import datetime, timedelta
from typing import Any

from webapp.book.house import people, registry
from webapp.book.record.store import Book
from webapp.trade.marks import BadMark, make_mark

EMPTY = 0.0
PHONES = ("d-aaaa", "d-bbbb", "d-cccc")


def fill_house(book: Book, fermenters: int = 20, casks: int = 200) -> dict[str, list[str]]:
    """Put vessels and people in; return the marks by sort."""
    marks: dict[str, list[str]] = {"fermenter": [], "still": [], "receiver": [], "cask": [], "tank": []}
    many = {"fermenter": fermenters, "still": 3, "receiver": 9, "cask": casks, "tank": 10}
    letters = {"fermenter": "F", "still": "S", "receiver": "R", "cask": "C", "tank": "T"}
    with book.write():
        people.put_person(book, {"code": "NS", "name": "Noor S."}, "JK")
        for sort, number in many.items():
            for n in range(1, number + 1):
                try:
                    mark = make_mark(f"{letters[sort]}{n:03d}")
                except BadMark:
                    continue
                row = {"mark": mark, "sort": sort, "capacity_l": 2000, "tare_kg": 45.0 if sort == "cask" else None}
                registry.put_vessel(book, row, "JK")
                marks[sort].append(mark)
    return marks


def entries(marks: dict[str, list[str]], start: datetime, step_s: float, seed: int = 1) -> Iterator[dict[str, Any]]:
    """Yield entries for ever, one every `step_s` seconds: ferment readings, run readings, gauges, regauges."""
    chance = random.Random(seed)
    gravity = dict.fromkeys(marks["fermenter"], EMPTY)
    seqs = dict.fromkeys(PHONES, 0)
    number = 0
    while True:
        at = (start + timedelta(seconds=step_s * number)).isoformat(timespec="seconds")
        number += 1
        phone = PHONES[number % len(PHONES)]
        seqs[phone] += 1
        kind, mark, values = _one(chance, marks, gravity)
        yield {
            "id": f"{seed:08x}-{number >> 16:04x}-7{number & 0xFFF:03x}-8{number >> 12 & 0xF:03x}-{number:012x}",
            "kind": kind, "kind_version": 1, "mark": mark, "mark_by": "scanned", "read_at": at, "typed_at": at,
            "person": "NS", "role": "cellar hand", "seen_by": "", "device": phone, "seq": seqs[phone], "values": values,
            "as_read": [], "looked_again": [], "remark": "", "amends": None, "reason": "",
        }


def _one(
    chance: random.Random, marks: dict[str, list[str]], gravity: dict[str, float]
) -> tuple[str, str, dict[str, Any]]:
    dice = chance.random()
    if dice < 0.6:
        mark = chance.choice(marks["fermenter"])
        before = gravity[mark]
        gravity[mark] = round(1.060 if before == EMPTY else EMPTY if before < 1.012 else before - 0.001, 3)
        if before == EMPTY:
            return "fruit_intake", mark, {
                "gross": {"raw": "1250", "unit": "kg"}, "tare": {"raw": "60", "unit": "kg"},
                "material": {"raw": "plum"}, "grower_lot": {"raw": "G4"},
                "temp": {"raw": "12", "unit": "degC"}, "rot": {"raw": "1", "unit": "pct"},
            }
        if gravity[mark] == EMPTY:
            return "charge", chance.choice(marks["still"]), {
                "from_vessel": {"raw": mark}, "wash": {"raw": "900", "unit": "L"},
                "wash_strength": {"raw": "6.1", "unit": "pct_vol"},
            }
        return "ferment_reading", mark, {
            "temp": {"raw": f"{chance.uniform(14, 18):.1f}", "unit": "degC", "instrument": "TH-2"},
            "gravity": {"raw": f"{gravity[mark]:.3f}", "unit": "SG"},
        }
    glass = {"raw": f"{chance.uniform(50, 80):.1f}", "unit": "pct_glass"}
    temp = {"raw": f"{chance.uniform(10, 18):.1f}", "unit": "degC"}
    if dice < 0.8:
        return "run_reading", chance.choice(marks["still"]), {"glass": glass, "temp": temp}
    if dice < 0.9:
        volume = {"raw": f"{chance.uniform(100, 900):.1f}", "unit": "L"}
        return "gauge", chance.choice(marks["tank"]), {"volume": volume, "glass": glass, "temp": temp}
    gross = {"raw": f"{chance.uniform(200, 240):.1f}", "unit": "kg"}
    return "cask_regauge", chance.choice(marks["cask"]), {
        "gross": gross, "glass": glass, "temp": temp, "condition": {"raw": "tight"},
    }
