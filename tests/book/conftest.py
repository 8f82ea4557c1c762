"""A small world for the tests of the book: a dozen vessels, three people, and entries with the least that they need."""

from __future__ import annotations

import itertools
import logging
from collections.abc import Container, Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any
from uuid import UUID

import pytest

from tests.words.well_said import check_said
from webapp.book.house import people, registry
from webapp.book.intake import hand_in
from webapp.book.opening import open_book
from webapp.book.record.store import Book
from webapp.kinds.message import message_from_json
from webapp.trade.marks import make_mark

NOW = datetime(2025, 9, 24, 12, 0, tzinfo=UTC)
F1, F2, F3, S1, R1, R2, R3, T1, T2, C1, C2 = (
    make_mark(base) for base in ("F1", "F2", "F3", "S1", "R1", "R2", "R3", "T1", "T2", "C001", "C002")
)
VESSELS: list[dict[str, Any]] = [
    *({"mark": mark, "sort": "fermenter", "capacity_l": 2000, "working_l": 1700} for mark in (F1, F2, F3)),
    {"mark": S1, "sort": "still", "capacity_l": 600, "working_l": 500},
    *({"mark": mark, "sort": "receiver", "capacity_l": 150} for mark in (R1, R2, R3)),
    {"mark": T1, "sort": "tank", "capacity_l": 1000},
    {"mark": T2, "sort": "tank", "capacity_l": 300},
    *({"mark": mark, "sort": "cask", "capacity_l": 228, "tare_kg": 45.0} for mark in (C1, C2)),
]
_numbers = itertools.count(1)


def new_id() -> str:
    """A UUID of version 7 in its form, counting up, so that tests are the same every time."""
    number = next(_numbers)
    return str(UUID(int=(0x0193_0000_0000 + number) << 80 | 0x7000 << 64 | 0x8000 << 48 | number))


def values_of(**given: Any) -> dict[str, dict[str, str]]:
    """`temp="14.6 degC"` as a phone sends it; a text without a unit stays alone."""
    made = {}
    for name, text in given.items():
        raw, _, unit = str(text).partition(" ") if " " in str(text) else (str(text), "", "")
        made[name] = {"raw": raw, "unit": unit} if unit else {"raw": raw}
    return made


def entry(
    kind: str, mark: str = "", read_at: datetime | str = NOW - timedelta(hours=4), *, device: str = "d-one",
    seq: int = 1, values: dict[str, Any] | None = None, typed_at: datetime | str | None = None, **more: Any,
) -> dict[str, Any]:
    """An entry as handed in; fields of the kind by name (`temp="14.6 degC"`)."""
    top = {k: more.pop(k) for k in ("id", "person", "amends", "remark", "as_read", "kind_version") if k in more}
    because = more.pop("because", "")
    read = read_at if isinstance(read_at, str) else read_at.isoformat(timespec="seconds")
    typed = typed_at or read
    return {
        "id": new_id(), "kind": kind, "kind_version": 1, "mark": mark, "mark_by": "scanned" if mark else "",
        "read_at": read, "typed_at": typed if isinstance(typed, str) else typed.isoformat(timespec="seconds"),
        "person": "NS", "role": "cellar hand", "seen_by": "", "device": device, "seq": seq,
        "values": values if values is not None else values_of(**more), "as_read": [], "looked_again": [], "remark": "",
        "amends": None, "reason": because,
    } | top


def reading(mark: str = F1, gravity: str = "1.050", temp: str = "15.0", **more: Any) -> dict[str, Any]:
    """A ferment reading."""
    return entry("ferment_reading", mark, **more, gravity=f"{gravity} SG", temp=f"{temp} degC")


def fruit(mark: str = F1, gross: str = "900", **more: Any) -> dict[str, Any]:
    """A load of fruit."""
    return entry(
        "fruit_intake", mark, **more, gross=f"{gross} kg", tare="60 kg", material="plum", grower_lot="G4",
        temp="14 degC", rot="1 pct", batch="B-25-01",
    )


def gauge(mark: str = T1, volume: str = "400", strength: str = "62.0", **more: Any) -> dict[str, Any]:
    """A gauge of a tank, of litres at 20 degC."""
    return entry("gauge", mark, **more, volume=f"{volume} L", temp="20 degC", strength=f"{strength} pct_vol")


def charge(still: str = S1, source: str = F1, **more: Any) -> dict[str, Any]:
    """A charge of a still."""
    return entry(
        "charge", still, **more, from_vessel=source, wash="450 L", wash_strength="6.0 pct_vol", heads_to=R1,
        hearts_to=R2, tails_to=R3,
    )


def answer(about: str, verdict: str = "stands", query: str = "", **more: Any) -> dict[str, Any]:
    """An answer to a query, or the striking of an entry."""
    given = {"entry": {"raw": about}, "verdict": {"raw": verdict}, "reason": {"raw": "looked again"}}
    return entry("answer", **more, values=given | ({"query": {"raw": query}} if query else {}))


def send(book: Book, *entries: Any, now: datetime = NOW, skew_s: float = 0.0, device: str = "d-one") -> dict[str, Any]:
    """Hand in one batch."""
    batch = {"now": (now + timedelta(seconds=skew_s)).isoformat(), "device": device, "entries": list(entries)}
    given = hand_in(book, batch, via="phone", now=now)
    for result in given["results"]:
        for query in result.get("queries", ()):
            check_said(message_from_json(query["message"]))
    return given


def settled(given: dict[str, Any]) -> list[str]:
    """The settled states of an answer, in order."""
    return [result["settled"] for result in given["results"]]


def fill_world(book: Book, *, but: Container[str] = ()) -> None:
    """Vessels and people, as somebody at the desk would put them in; some left out by mark or code."""
    for row in VESSELS:
        if row["mark"] not in but:
            registry.put_vessel(book, row, "JK")
    for code in ("NS", "JK", "TB"):
        if code in but:
            continue
        people.put_person(book, {"code": code, "name": code, "roles": ["cellar hand"]}, "JK")


@pytest.fixture
def book(tmp_path: Path, caplog: pytest.LogCaptureFixture) -> Iterator[Book]:
    """An open book of the small world. An entry that our own code could not work out fails the test."""
    with caplog.at_level(logging.ERROR, "cellarslate.book"), open_book(tmp_path / "book.db") as opened:
        fill_world(opened)
        yield opened
    assert not caplog.records
