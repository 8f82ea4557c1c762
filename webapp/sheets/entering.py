"""The rows of a sheet on their way through the write door, and what the book says of each."""

from __future__ import annotations

import json
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime

from webapp.book import intake
from webapp.book.house import parties, people, registry
from webapp.book.record import counters
from webapp.book.record.errors import BookError
from webapp.book.record.store import Book
from webapp.kinds.message import as_said, message_from_json
from webapp.sheets.lookover import ASK, NEW, STOP, Fault, Look, Offer, Part, Row
from webapp.sheets.prepare import NOT_OF_ENTRY, record_of
from webapp.sheets.targets import Column
from webapp.trade import units

BATCH = 100


@dataclass(slots=True)
class Stamp:
    """Who puts a sheet in, and when."""

    person: str
    role: str
    now: datetime


def put_rows(book: Book, look: Look, stamp: Stamp) -> None:
    """Put the rows that fit in, and note on each what the book says of it. Inside a write only."""
    for part in look.parts:
        if part.heads is None:
            continue
        target = part.heads.target
        rows = [row for row in part.rows if row.state in (NEW, ASK)]
        if target.kind is None:
            for row in rows:
                _put_record(book, target.name, row, stamp.person)
        else:
            _put_entries(book, look, part, rows, stamp)


def _put_record(book: Book, target: str, row: Row, by: str) -> None:
    record = record_of(target, row) | {"retired": False}
    try:
        if target == "vessels":
            registry.put_vessel(book, record, by)
        elif target == "people":
            people.put_person(book, record, by)
        elif target == "parties":
            parties.put_party(book, record, by)
        else:
            registry.put_instrument(book, record | {"state": "in use"}, by)
    except BookError as error:
        row.stop("", as_said(str(error)))


def _put_entries(book: Book, look: Look, part: Part, rows: list[Row], stamp: Stamp) -> None:
    for row in rows:
        before = registry.vessel(book, row.mark) if row.mark else None
        if row.mark and (before is None or before["retired"]):
            registry.put_vessel(book, _vessel_of(row, is_new=before is None), stamp.person)
            row.makes_vessel = True
    rows = [row for row in rows if row.state in (NEW, ASK)]
    for start in range(0, len(rows), BATCH):
        some = rows[start : start + BATCH]
        seq = counters.report_seen(book, intake.DESK)["seen"]
        entries = [_entry(book, look, part, row, seq + n, stamp) for n, row in enumerate(some, 1)]
        batch = {"now": stamp.now.isoformat(), "device": intake.DESK, "entries": entries}
        results = intake.hand_in(book, batch, via="sheet", now=stamp.now, is_desk=True)["results"]
        for row, result in zip(some, results, strict=True):
            _note_result(part, row, result)
    _note_alcohol(book, rows)


def _vessel_of(row: Row, *, is_new: bool) -> dict[str, object]:
    """Return the vessel that a row of opening stock brings with it, or back into use."""
    made: dict[str, object] = {"mark": row.mark, "retired": False}
    if is_new:
        made |= {"sort": row.raw("vessel_sort") or "cask", "place": row.raw("place"), "wood": row.raw("wood"),
                 "use": row.raw("use"), "tare_kg": row.said["tare"].value if "tare" in row.said else None}
    return made | ({"capacity_l": row.said["capacity_l"].value} if "capacity_l" in row.said else {})


def _entry(book: Book, look: Look, part: Part, row: Row, seq: int, stamp: Stamp) -> dict[str, object]:
    assert part.heads
    assert part.heads.target.kind
    kind = part.heads.target.kind
    values = {
        name: {"raw": said.raw, "unit": said.unit} if said.unit else {"raw": said.raw}
        for name, said in row.said.items() if name not in NOT_OF_ENTRY
    }
    typed = stamp.now.astimezone(registry.zone(book)).isoformat(timespec="seconds")
    day = row.raw("read_on")
    read_at = registry.at_house(book, f"{day}T12:00") if day and day < typed[:10] else typed
    return {
        "id": row.entry_id, "kind": kind.name, "kind_version": kind.version, "mark": row.mark,
        "mark_by": "typed" if row.mark else "", "read_at": read_at, "typed_at": typed, "person": stamp.person,
        "role": stamp.role, "seen_by": "", "device": intake.DESK, "seq": seq, "values": values, "as_read": [],
        "looked_again": [], "amends": None, "reason": "",
        "remark": f"Row {row.number} of {_one_line(look.name)}, sheet {look.sha256[:16]}.",
    }


def _one_line(text: str) -> str:
    return "".join(character for character in text if character.isprintable())[:120]


def _note_result(part: Part, row: Row, result: intake.Result) -> None:
    if result["settled"] in ("refused", "clash"):
        for problem in result.get("problems", []):
            row.stop(_column_of(part, str(problem.get("field", ""))), message_from_json(problem["message"]))
        return
    asked = result.get("queries", [])
    # Where something cannot be, what follows from it is not asked as well.
    for query in [one for one in asked if one["weight"] == STOP] or asked:
        column = part.heads.target.column(query["field"]) if part.heads else None
        offers = tuple(
            Offer(text, text) for one in query.get("suggestions", [])
            if column and one["field"] == column.name and not one.get("also")
            and (text := f"{one['raw']} {units.symbol(one['unit']) if one.get('unit') else ''}".strip())
        )
        said = message_from_json(query["message"])
        row.faults.append(Fault(column.name if column else "", query["weight"], said, offers))
        if query["weight"] == STOP:
            row.state = STOP
        elif query["weight"] == ASK and row.state != STOP:
            row.state = ASK


def _column_of(part: Part, field_name: str) -> str:
    column: Column | None = part.heads.target.column(field_name) if part.heads else None
    return column.name if column else ""


def _note_alcohol(book: Book, rows: Iterable[Row]) -> None:
    """Note on each row the pure alcohol that its entry brought in. [L]"""
    by_id = {row.entry_id: row for row in rows}
    found = book.query(
        "SELECT entry, sum(lpa_ul) AS ul FROM flows WHERE source = 'out:opening' AND entry IN "
        "(SELECT value FROM json_each(?)) GROUP BY entry", (json.dumps(list(by_id)),)
    )
    for one in found:
        by_id[one["entry"]].lpa_l = one["ul"] / 1e6
