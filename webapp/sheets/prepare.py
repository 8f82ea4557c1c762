"""What each row of a sheet names, what the book has of it already, and which entry it would be."""

from __future__ import annotations

import hashlib
import json
import re
from collections.abc import Mapping, Set
from dataclasses import dataclass, field
from uuid import UUID

from webapp.book import intake
from webapp.book.fold.states import load_newest_of
from webapp.book.house import parties, people, registry
from webapp.book.record.store import Book
from webapp.kinds.key import vessel_key
from webapp.kinds.message import as_said, message
from webapp.sheets.cells import Said
from webapp.sheets.lookover import KNOWN, LEFT, NEW, STOP, Look, Offer, Part, Row
from webapp.sheets.unitwords import unit_written
from webapp.trade import units
from webapp.trade.datafiles import load_data
from webapp.trade.marks import BadMark, make_mark, parse_mark

AGAIN_MOST = 50  # how often one row may be put in and taken back
_VESSEL_FACTS = ("capacity_l", "vessel_sort")
_NUMBERED = re.compile(r"(.*?)([0-9]{1,9})")
NOT_OF_ENTRY = ("code", "read_on", *_VESSEL_FACTS)


@dataclass(slots=True)
class Known:
    """What the book has already of what the rows name."""

    vessels: dict[str, Mapping[str, object]] = field(default_factory=dict)
    people: dict[str, Mapping[str, object]] = field(default_factory=dict)
    instruments: dict[str, Mapping[str, object]] = field(default_factory=dict)
    parties: dict[str, Mapping[str, object]] = field(default_factory=dict)


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
                first = part.heads.target.columns[0].name
                likely = _left_out(part, row, first, set() if target == "opening" else set(getattr(known, target, ())))
                offers = [Offer(f"It is {likely}", likely)] if likely else []
                row.stop(first, message("sheet-twice", name=shown, row=before), offers)
            elif row.state == NEW and part.heads.target.kind is None:
                _compare(target, row, known)
            if target == "vessels" and row.state != STOP and row.mark:
                to_come.add(row.mark)
    _find_entries(book, look)


def _left_out(part: Part, row: Row, column: str, taken: Set[str]) -> str:
    """Return the name that a run of numbered rows leaves out just here, or an empty text.

    Rows C-005, C-005, C-007: the second lies where C-006 would be. So does a last row that repeats the one before.
    taken: keys that the book has already.
    """
    at = part.rows.index(row)
    before = _NUMBERED.fullmatch(part.rows[at - 1].raw(column)) if at else None
    after = _NUMBERED.fullmatch(part.rows[at + 1].raw(column)) if at + 1 < len(part.rows) else None
    if not before:
        return ""
    likely = f"{before[1]}{int(before[2]) + 1:0{len(before[2])}}"
    if after and (after[1] != before[1] or int(after[2]) != int(before[2]) + 2):
        return ""
    try:
        key = make_mark(likely) if part.heads and part.heads.target.name in ("vessels", "opening") else likely
    except BadMark:
        return ""
    is_there = any(one.raw(column) == likely for one in part.rows)
    return "" if is_there or key in taken else likely


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
