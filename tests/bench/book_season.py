"""Entries as a busy house makes them, for benches: any number, and plausible enough to be folded for real."""

from __future__ import annotations

import random
from collections.abc import Iterable, Iterator
from datetime import datetime, timedelta
from itertools import count
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
    return _as_entries((_one(chance, marks, gravity) for _ in count()), start, step_s, seed)


def plausible(marks: dict[str, list[str]], start: datetime, step_s: float, seed: int = 1) -> Iterator[dict[str, Any]]:
    """Yield entries of ferments, runs and casks for ever, such as a good shift logs: hardly one raises a question."""
    return _as_entries(_shift(random.Random(seed), marks), start, step_s, seed)


def _as_entries(
    told: Iterable[tuple[str, str, dict[str, Any]]], start: datetime, step_s: float, seed: int
) -> Iterator[dict[str, Any]]:
    seqs = dict.fromkeys(PHONES, 0)
    for number, (kind, mark, values) in enumerate(told, 1):
        at = (start + timedelta(seconds=step_s * (number - 1))).isoformat(timespec="seconds")
        phone = PHONES[number % len(PHONES)]
        seqs[phone] += 1
        yield {
            "id": f"{seed:08x}-{number >> 16:04x}-7{number & 0xFFF:03x}-8{number >> 12 & 0xF:03x}-{number:012x}",
            "kind": kind, "kind_version": 1, "mark": mark, "mark_by": "scanned", "read_at": at, "typed_at": at,
            "person": "NS", "role": "cellar hand", "seen_by": "", "device": phone, "seq": seqs[phone], "values": values,
            "as_read": [], "looked_again": [], "remark": "", "amends": None, "reason": "",
        }


def _shift(
    chance: random.Random, marks: dict[str, list[str]]
) -> Iterator[tuple[str, str, dict[str, Any]]]:
    """Yield kind, mark and values: casks taken over, then mashes read, runs followed and casks weighed."""
    degrees = {"raw": "15.0", "unit": "degC"}
    gross = {}
    for cask in marks["cask"]:
        gross[cask] = 235.0
        yield "opening", cask, {
            "gross": {"raw": "235.0", "unit": "kg"}, "glass": {"raw": "62.0", "unit": "pct_glass"}, "temp": degrees,
            "tare": {"raw": "45", "unit": "kg"}, "spirit": {"raw": "plum"}, "filled_on": {"raw": "2024-06-01"},
        }
    gravity: dict[str, float] = {}
    running: dict[str, float] = {}  # a still -> what its glass shows
    while True:
        dice = chance.random()
        if dice < 0.6:
            mark = chance.choice(marks["fermenter"])
            if mark not in gravity:
                gravity[mark] = 1.060
                yield "fruit_intake", mark, {
                    "gross": {"raw": "1250", "unit": "kg"}, "tare": {"raw": "60", "unit": "kg"},
                    "material": {"raw": "plum"}, "grower_lot": {"raw": "G4"},
                    "temp": {"raw": "12", "unit": "degC"}, "rot": {"raw": "1", "unit": "pct"},
                }
                continue
            gravity[mark] = max(gravity[mark] - 0.0005, 1.002)
            yield "ferment_reading", mark, {
                "temp": {"raw": f"{chance.uniform(15, 17):.1f}", "unit": "degC", "instrument": "TH-2"},
                "gravity": {"raw": f"{gravity[mark]:.3f}", "unit": "SG"},
            }
        elif dice < 0.85:
            still = chance.choice(marks["still"])
            ripe = [mark for mark, now in gravity.items() if now < 1.015]
            if still not in running:
                if ripe:
                    running[still] = 75.0
                    yield "charge", still, {
                        "from_vessel": {"raw": ripe[0]}, "wash": {"raw": "100", "unit": "L"},
                        "wash_strength": {"raw": "6.1", "unit": "pct_vol"},
                    }
                continue
            running[still] -= 0.2
            if running[still] < 50:
                del running[still]
                yield "run_end", still, {"reason": {"raw": "strength"}}
                continue
            glass = {"raw": f"{running[still] + chance.uniform(-0.3, 0.3):.1f}", "unit": "pct_glass"}
            yield "run_reading", still, {"glass": glass, "temp": degrees}
        else:
            cask = chance.choice(marks["cask"])
            gross[cask] = max(gross[cask] - chance.choice((0.0, 0.1)), 200.0)
            yield "cask_regauge", cask, {
                "gross": {"raw": f"{gross[cask]:.1f}", "unit": "kg"}, "glass": {"raw": "62.0", "unit": "pct_glass"},
                "temp": degrees, "condition": {"raw": "tight"},
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
