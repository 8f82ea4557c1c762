"""What the book says of the rows of a sheet: they are put in and undone again, so it says what it would say."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from datetime import datetime
from uuid import UUID

from webapp.book import intake
from webapp.book.fold.states import load_newest_of
from webapp.book.house import parties, people, registry
from webapp.book.record import counters
from webapp.book.record.errors import BookError
from webapp.book.record.store import Book
from webapp.kinds.key import vessel_key
from webapp.kinds.message import as_said, message, message_from_json
from webapp.kinds.rows import SiteSettings
from webapp.sheets.cells import Said
from webapp.sheets.lookover import ASK, KNOWN, LEFT, NEW, STOP, Fault, Look, Offer, Part, Row, Told, read_parts
from webapp.sheets.targets import Column
from webapp.sheets.unitwords import unit_written
from webapp.trade import units
from webapp.trade.datafiles import load_data
from webapp.trade.marks import BadMark, make_mark, parse_mark

BATCH = 100
AGAIN_MOST = 50  # how often one row may be put in and taken back
_VESSEL_FACTS = ("capacity_l", "vessel_sort")
_NOT_OF_ENTRY = ("code", "read_on", *_VESSEL_FACTS)


@dataclass(slots=True)
class Stamp:
    """Who puts a sheet in, and when."""

    person: str
    role: str
    now: datetime


@dataclass(slots=True)
class Known:
    """What the book has already of what the rows name."""

    vessels: dict[str, Mapping[str, object]] = field(default_factory=dict)
    people: dict[str, Mapping[str, object]] = field(default_factory=dict)
    instruments: dict[str, Mapping[str, object]] = field(default_factory=dict)
    parties: dict[str, Mapping[str, object]] = field(default_factory=dict)


class _Undo(Exception):
    """Leaves the write door without a change."""


def look_over(book: Book, name: str, content: bytes, told: Told, stamp: Stamp, site: SiteSettings) -> Look:
    """Return a file looked over: every row as it would stand. The book is as it was. Raises NoSheet."""
    look = read_parts(book, name, content, told, site, stamp.now)
    try:
        with book.write():
            prepare(book, look)
            put_rows(book, look, stamp)
            raise _Undo
    except _Undo:
        return look


def prepare(book: Book, look: Look) -> None:
    """Find for each row what it names, what the book has of it already, and what stands twice. Inside a write."""
    known = Known(
        {row["mark"]: {**row} for row in registry.vessels(book)},
        {one["code"]: {**one} for one in people.people(book)},
        {row["id"]: {**row} for row in registry.instruments(book)},
        {f"{one['name']}, {one['role']}": {**one} for one in parties.parties(book)},
    )
    to_come = set(known.vessels)
    seen: dict[tuple[str, str], int] = {}
    for part in look.parts:
        if part.heads is None or part.faults:
            for row in part.rows:
                row.state = STOP if row.state != LEFT else LEFT
            continue
        for row in part.rows:
            if row.state == LEFT:
                continue
            _name_row(part, row, to_come)
            target = part.heads.target.name
            if row.key and (before := seen.setdefault((target, row.key), row.number)) != row.number:
                shown = row.raw("code") or row.raw("name") or row.key
                row.stop(part.heads.target.columns[0].name, message("sheet-twice", name=shown, row=before))
            elif row.state == NEW and part.heads.target.kind is None:
                _compare(target, row, known)
            if target == "vessels" and row.state != STOP and row.mark:
                to_come.add(row.mark)
    _find_entries(book, look)


def _name_row(part: Part, row: Row, vessels: set[str]) -> None:
    assert part.heads
    target = part.heads.target.name
    if target in ("vessels", "opening"):
        row.mark = _mark_of(row, vessels)
        row.key = row.mark
        if target == "opening" and row.mark and row.mark not in vessels and row.state != STOP:
            if "capacity_l" not in row.said:
                row.stop("code", message("sheet-no_vessel", name=row.raw("code")))
            else:
                vessels.add(row.mark)
    elif target == "people":
        row.key = row.raw("code").upper()
    elif target == "instruments":
        row.key = row.raw("id")
        _read_scale(row)
    elif target == "parties":
        row.key = f"{row.raw('name')}, {row.raw('role')}"
    else:
        row.key = f"{row.raw('batch')} {row.raw('case_from')}".strip()


def _mark_of(row: Row, vessels: set[str]) -> str:
    text = row.raw("code")
    if not text or any(fault.column == "code" for fault in row.faults):
        return ""
    try:
        if text[-2:-1] == "-" and text[-1:].isalnum():
            whole = parse_mark(text)
            if whole in vessels or len(text) > 3:
                return whole
    except BadMark:
        pass
    try:
        return make_mark(text)
    except BadMark as error:
        row.stop("code", as_said(str(error)))
        return ""


def _read_scale(row: Row) -> None:
    """Find the unit of an instrument's scale by its sign or its code."""
    text = row.raw("unit")
    if not text:
        return
    every = load_data("units")
    known = {code.lower(): code for code in every} | {units.symbol(code).lower(): code for code in every}
    code = known.get(text.lower()) or unit_written(text, None)
    if not code:
        row.stop("unit", message("sheet-no_unit", typed=text[:40], units="°C, °F, kg, lb, L, % vol, SG"))
    else:
        row.said["unit"] = Said(code)


def record_of(target: str, row: Row) -> dict[str, object]:
    """Return the columns of a registry row that a sheet's row gives."""
    made: dict[str, object] = {}
    for name, said in row.said.items():
        made[name] = said.value if said.value is not None else said.raw
    if target == "vessels":
        made.pop("code", None)
        made["mark"] = row.mark
        if "in_zone" in made:
            made["in_zone"] = made["in_zone"] == "yes"
    elif target == "people":
        made["code"] = row.key
        roles = str(made.get("roles", "")).replace(";", ",").split(",")
        made["roles"] = [role.strip() for role in roles if role.strip()]
    return made


def _compare(target: str, row: Row, known: Known) -> None:
    """A row of the registry that the book has already is known, where it says the same; else it does not fit."""
    kept: Mapping[str, object] | None = getattr(known, target).get(row.key)
    if kept is None:
        return
    given = record_of(target, row)
    other = next((name for name, value in given.items() if not _is_same(kept.get(name), value)), None)
    if kept.get("retired") or kept.get("state") == "out of use":
        return  # it was taken back: it comes in again
    if other is None:
        row.state = KNOWN
        return
    said = message(
        "sheet-other", name=row.raw("code") or row.key, there=_shown(kept.get(other)), here=_shown(given[other]),
    )
    row.stop("code" if other == "mark" else other, said)


def _is_same(kept: object, given: object) -> bool:
    if isinstance(given, float) and isinstance(kept, int | float):
        return abs(kept - given) < 1e-6
    if isinstance(given, list):
        return kept == given
    return str(kept if kept is not None else "").strip() == str(given).strip()


def _shown(value: object) -> str:
    if isinstance(value, float):
        return f"{value:.10g}"
    return ", ".join(map(str, value)) if isinstance(value, list) else str(value or "–")


def _find_entries(book: Book, look: Look) -> None:
    """Give each row of opening stock the id of its entry, the same for the same row; known where the book has it."""
    rows = [(part, row) for part in look.parts for row in part.rows
            if part.heads and part.heads.target.kind and row.state == NEW]
    states = load_newest_of(book, (vessel_key(row.mark) for _, row in rows if row.mark))
    for part, row in rows:
        assert part.heads
        for again in range(AGAIN_MOST):
            row.entry_id = entry_id(intake.book_id(book), part.heads.target.name, row, again)
            standing = _standing_of(book, row.entry_id)
            if standing == "":
                break
            if standing != "struck":
                row.state = KNOWN
                break
        state = states.get(vessel_key(row.mark)) if row.mark else None
        if row.state == NEW and state and state["holds"] and state["recent"].get("opening"):
            row.stop("code", message("sheet-opened", name=row.raw("code")))


def _standing_of(book: Book, id_: str) -> str:
    """Return the standing of an entry in the book, or an empty text where it has none."""
    found = book.one(
        "SELECT coalesce(f.standing, 'entered') AS standing FROM entries e LEFT JOIN amendments a ON a.id = e.id "
        "LEFT JOIN folded f ON f.root = coalesce(a.root, e.id) WHERE e.id = ?", (id_,)
    )
    return str(found["standing"]) if found else ""


def entry_id(book_id: str, target: str, row: Row, again: int) -> str:
    """Return the id of a row's entry: a UUID by what the row says, not by where it stands."""
    said = sorted((name, one.raw, one.unit) for name, one in row.said.items())
    text = json.dumps([book_id, target, row.mark, said, again], ensure_ascii=False)
    made = bytearray(hashlib.sha256(text.encode()).digest()[:16])
    made[6], made[8] = made[6] & 0x0F | 0x80, made[8] & 0x3F | 0x80  # version 8: of one's own making (RFC 9562)
    return str(UUID(bytes=bytes(made)))


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
        for name, said in row.said.items() if name not in _NOT_OF_ENTRY
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
            Offer(text, text) for one in query.get("suggestions", []) if column and one["field"] == column.name
            if (text := f"{one['raw']} {units.symbol(one['unit']) if one.get('unit') else ''}".strip())
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
