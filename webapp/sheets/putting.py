"""A sheet that a person has looked over goes into the book as one, and is taken back as one."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import UTC

from uuid6 import uuid7

from webapp.book import intake
from webapp.book.house import parties, people, registry
from webapp.book.record import counters, evidence
from webapp.book.record.clock import utc_text
from webapp.book.record.errors import BookError
from webapp.book.record.evidence import PutRow, Taking
from webapp.book.record.store import Book
from webapp.kinds.rows import SiteSettings
from webapp.sheets.entering import BATCH, Stamp, put_rows
from webapp.sheets.judge import look_over
from webapp.sheets.lookover import NEW, Look, Told, read_parts
from webapp.sheets.prepare import prepare

CHANGED = "The book or the sheet has changed since you looked: {now} rows would go in, not {then}. Look over it again."


def put_in(
    book: Book, name: str, content: bytes, told: Told, stamp: Stamp, site: SiteSettings, *, expected: int | None = None
) -> tuple[int | None, Look]:
    """Put the rows that fit into the book; return the number of the taking, None where nothing was new, and the look.

    expected: how many rows the person saw that would go in; another number is a BookError. Raises NoSheet.
    """
    seen = look_over(book, name, content, told, stamp, site)
    wanted = {(part.at, row.number) for part, row in seen.fitting}
    if expected is not None and len(wanted) != expected:
        raise BookError(CHANGED.format(now=len(wanted), then=expected))
    if not wanted:
        return None, seen
    look = read_parts(book, name, content, told, site, stamp.now)
    with book.write():
        prepare(book, look)
        for part in look.parts:
            for row in part.rows:
                if row.state == NEW and (part.at, row.number) not in wanted:
                    row.state = "stop"
        put_rows(book, look, stamp)
        put = [
            PutRow(table=part.name, row=row.number, target=part.heads.target.name, key=row.key, entry=row.entry_id)
            for part, row in look.fitting if part.heads
        ]
        put += [
            PutRow(table=part.name, row=row.number, target="vessels", key=row.mark, entry="")
            for part, row in look.fitting if row.makes_vessel
        ]
        if {(part.at, row.number) for part, row in look.fitting} != wanted:
            raise BookError(CHANGED.format(now=len(put), then=len(wanted)))
        at = utc_text(stamp.now.astimezone(UTC))
        no = evidence.keep_taking(book, name, content, put, told=told.as_json(), person=stamp.person, at=at)
    return no, seen


def take_back(book: Book, no: int, stamp: Stamp, reason: str) -> list[str]:
    """Strike all entries of a sheet, and put what it added to the registry out of use. Returns what stays, in words.

    A vessel stays in use where the book has more of it than this sheet. BookError where it was taken back already.
    """
    with book.write():
        taking = evidence.load_taking(book, no)
        if taking is None:
            raise BookError("There is no such sheet. Look for it in the list.")
        if taking["back_at"]:
            raise BookError("This sheet was taken back already.")
        entries = [row["entry"] for row in taking["rows"] if row["entry"]]
        _strike(book, entries, stamp, reason)
        stays = _put_out_of_use(book, taking, set(entries), stamp.person)
        evidence.note_taken_back(
            book, no, person=stamp.person, reason=reason, at=utc_text(stamp.now.astimezone(UTC))
        )
    return stays


def _strike(book: Book, entries: list[str], stamp: Stamp, reason: str) -> None:
    for start in range(0, len(entries), BATCH):
        seq = counters.report_seen(book, intake.DESK)["seen"]
        at = stamp.now.astimezone(registry.zone(book)).isoformat(timespec="seconds")
        answers: list[dict[str, object]] = [
            {
                "id": str(uuid7()), "kind": "answer", "kind_version": 1, "mark": "", "mark_by": "", "read_at": at,
                "typed_at": at, "person": stamp.person, "role": stamp.role, "seen_by": "", "device": intake.DESK,
                "seq": seq + n, "as_read": [], "looked_again": [], "remark": "", "amends": None, "reason": "",
                "values": {"entry": {"raw": one}, "verdict": {"raw": "struck"}, "reason": {"raw": reason}},
            }
            for n, one in enumerate(entries[start : start + BATCH], 1)
        ]
        batch = {"now": stamp.now.isoformat(), "device": intake.DESK, "entries": answers}
        results = intake.hand_in(book, batch, via="sheet", now=stamp.now, is_desk=True)["results"]
        if any(result["settled"] == "refused" for result in results):
            raise BookError("Not every row could be struck, so none was. Strike them one by one.")


def _put_out_of_use(book: Book, taking: Taking, own: set[str], by: str) -> list[str]:
    stays = []
    for row in taking["rows"]:
        if row["target"] == "vessels":
            if _has_more(book, row["key"], own):
                stays.append(row["key"])
            else:
                registry.put_vessel(book, {"mark": row["key"], "retired": True}, by)
        elif row["target"] == "people" and row["key"] != by:
            people.put_person(book, {"code": row["key"], "retired": True}, by)
        elif row["target"] == "instruments":
            registry.put_instrument(book, {"id": row["key"], "state": "out of use"}, by)
        elif row["target"] == "parties":
            name, _, role = row["key"].rpartition(", ")
            parties.put_party(book, {"name": name, "role": role, "retired": 1}, by)
    return stays


def _has_more(book: Book, mark: str, own: set[str]) -> bool:
    """Return whether the book has an entry of a vessel that stands and is not of this sheet."""
    rows: list[Mapping[str, object]] = [*book.query(
        "SELECT entry FROM folded WHERE mark = ? AND standing <> 'struck' LIMIT 500", (mark,)
    )]
    return any(row["entry"] not in own for row in rows)
