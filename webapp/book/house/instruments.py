"""The record of one instrument: its checks, its correction, its due day, and the readings that a failed check casts
doubt on.

Every entry that names an instrument touches its key `i:<id>` in the fold; so the list is exact and found by an index.
"""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import dataclass
from typing import TypedDict

from webapp.book.fold.states import load_newest_of
from webapp.book.record.log import JOIN_FOLDED
from webapp.book.record.rows import LogRow
from webapp.book.record.store import Book
from webapp.kinds.key import instrument_key
from webapp.kinds.rows import InstrumentRow
from webapp.kinds.state import Instrument, InstrumentCheck

LISTED_MOST = 500


class DoubtfulRow(LogRow):
    """A row of the log that was read with the instrument, its family's root, its place and its standing."""

    root: str
    order_key: str
    standing: str


class _Place(TypedDict):
    entry: str
    order_key: str
    person: str


@dataclass(frozen=True, slots=True)
class Check:
    """One check in the order of the fold. doubtful: how many readings a failed one casts doubt on."""

    entry: str
    order_key: str
    at: str
    good: bool
    against: str
    expected: float | None
    found: float | None
    correction: float | None
    in_use: str
    until: str | None
    person: str
    doubtful: int = 0

    @property
    def off(self) -> float | None:
        """The reading less the true value. [the instrument's own unit]"""
        return None if self.found is None or self.expected is None else round(self.found - self.expected, 9)


@dataclass(frozen=True, slots=True)
class Record:
    """The book's facts about an instrument. standing: good, failed, out of use, due or unchecked."""

    row: InstrumentRow
    checks: tuple[Check, ...]  # newest first
    standing: str
    due_on: str | None
    correction: float | None
    last_good_at: str | None
    readings: int

    @property
    def failed(self) -> Check | None:
        """The last check that failed, or None."""
        return next((check for check in self.checks if not check.good), None)


def record(book: Book, instrument_id: str, today: str) -> Record | None:
    """Return the record of an instrument, or None where the book has none of that id. today: `2026-03-02`."""
    row = book.row(InstrumentRow, "SELECT * FROM instruments WHERE id = ?", (instrument_id,))
    if row is None:
        return None
    return records(book, [row], today)[0]


def records(book: Book, rows: Sequence[InstrumentRow], today: str) -> list[Record]:
    """Return the record of each of these instruments, given by their rows in the registry. today: `2026-03-02`."""
    ids = [row["id"] for row in rows]
    checks, readings = _checks_of(book, ids)
    return [_record(row, checks[row["id"]], readings[row["id"]], today) for row in rows]


def _record(row: InstrumentRow, checks: tuple[Check, ...], readings: int, today: str) -> Record:
    last = checks[0] if checks else None
    good = next((check for check in checks if check.good), None)
    due = last.until if last and last.in_use == "until" else row["due_on"]
    return Record(
        row, checks, _standing(row, last, good, due, today), due, last.correction if last else None,
        good.at if good else None, readings,
    )


def in_doubt(book: Book, record: Record, check_entry: str) -> tuple[list[DoubtfulRow], int]:
    """Return (log rows, count of all) of the readings taken between the last good check and a failed one.

    Newest first, at most LISTED_MOST rows. A check that was good, or is none of this instrument, casts no doubt.
    """
    instrument_id, checks = record.row["id"], record.checks
    for n, check in enumerate(checks):
        if check.entry == check_entry and not check.good:
            since = next((one.order_key for one in checks[n + 1 :] if one.good), "")
            rows = book.rows(
                DoubtfulRow,
                f"SELECT e.*, f.root, f.standing, t.order_key {_READ_WITH} ORDER BY t.order_key DESC LIMIT ?",
                (f"i:{instrument_id}", since, check.order_key, instrument_id, LISTED_MOST),
            )
            return rows, check.doubtful
    return [], 0


_READ_WITH = (  # joins and names are ours, values are bound
    f"FROM touches t JOIN entries e ON e.id = substr(t.order_key, -36) {JOIN_FOLDED} "  # noqa: S608
    "WHERE t.key = ? AND t.order_key > ? AND t.order_key < ? AND EXISTS (SELECT 1 FROM json_each(e.body, '$.values') v "
    "WHERE json_extract(v.value, '$.instrument') = ?)"
)


Span = tuple[str, str, str]  # an instrument, and two places in the order of the fold


def _counts(book: Book, spans: Sequence[Span]) -> dict[Span, int]:
    """Return by span the number of entries read with its instrument between its two places, in one statement."""
    if not spans:
        return {}
    rows = book.db.conn.execute(
        f"SELECT w.key, count(*) FROM json_each(?) w CROSS JOIN {_READ_IN_SPAN} GROUP BY w.key",  # noqa: S608
        (json.dumps([(f"i:{span[0]}", *span) for span in spans]),),
    )
    found = {spans[n]: many for n, many in rows}
    return {span: found.get(span, 0) for span in spans}


_READ_IN_SPAN = (  # joins are ours, values are bound
    "touches t ON t.key = json_extract(w.value, '$[0]') AND t.order_key > json_extract(w.value, '$[2]') "  # noqa: S608
    f"AND t.order_key < json_extract(w.value, '$[3]') JOIN entries e ON e.id = substr(t.order_key, -36) {JOIN_FOLDED} "
    "WHERE EXISTS (SELECT 1 FROM json_each(e.body, '$.values') v "
    "WHERE json_extract(v.value, '$.instrument') = json_extract(w.value, '$[1]'))"
)


def _checks_of(book: Book, ids: Sequence[str]) -> tuple[dict[str, tuple[Check, ...]], dict[str, int]]:
    """Return by instrument its checks newest first, as far back as the fold keeps them, and the count of its readings.
    """
    states = load_newest_of(book, (instrument_key(one) for one in ids))
    lines = {one: state["checks"] if (state := states.get(instrument_key(one))) else [] for one in ids}
    places = _places(book, [line["entry"] for some in lines.values() for line in some])
    spans: dict[str, Span] = {}
    for one, some in lines.items():
        since = ""
        for line in (line for line in some if line["entry"] in places):
            order_key = places[line["entry"]]["order_key"]
            if line["good"]:
                since = order_key
            else:
                spans[line["entry"]] = (one, since, order_key)
    always: dict[str, Span] = {one: (one, "", "~") for one in ids}
    counts = _counts(book, [*spans.values(), *always.values()])
    checks = {
        one: tuple(
            _check(line, places[line["entry"]], counts.get(spans.get(line["entry"], ("", "", "")), 0))
            for line in reversed(some)
            if line["entry"] in places
        )
        for one, some in lines.items()
    }
    return checks, {one: counts[span] for one, span in always.items()}


def _places(book: Book, entries: Sequence[str]) -> dict[str, _Place]:
    """Return by entry the place of its chain in the fold, and the person of the one that has effect."""
    rows = book.rows(
        _Place,
        "SELECT c.value AS entry, f.order_key, e.person FROM json_each(?) c "
        "LEFT JOIN amendments a ON a.id = c.value JOIN folded f ON f.root = coalesce(a.root, c.value) "
        "JOIN entries e ON e.id = f.entry",
        (json.dumps(list(entries)),),
    )
    return {row["entry"]: row for row in rows}


def _check(line: InstrumentCheck, place: _Place, doubtful: int) -> Check:
    return Check(line["entry"], place["order_key"], line["at"], line["good"], str(line.get("against") or ""),
                 in_use=str(line.get("in_use") or ""), person=place["person"], doubtful=doubtful,
                 expected=line["expected"], found=line["found"], correction=line["correction"], until=line["until"])


def standing_word(row: InstrumentRow, state: Instrument | None, today: str) -> tuple[str, str | None]:
    """Return the standing of an instrument and its due day, as its record has them, from its newest state alone.

    today: `2026-03-02`
    """
    lines = state["checks"] if state else []
    last = lines[-1] if lines else None
    is_good = any(line["good"] for line in lines)
    due = last["until"] if last and last["in_use"] == "until" else row["due_on"]
    is_out = row["state"] == "out of use" or bool(last and last["in_use"] == "no")
    return _word(is_out, last is None or last["good"], is_good, due, today), due


def _standing(row: InstrumentRow, last: Check | None, good: Check | None, due: str | None, today: str) -> str:
    is_out = row["state"] == "out of use" or bool(last and last.in_use == "no")
    return _word(is_out, last is None or last.good, good is not None, due, today)


def _word(is_out: bool, was_good: bool, has_good: bool, due: str | None, today: str) -> str:
    if is_out:
        return "out of use"
    if not was_good:
        return "failed"
    if due and due < today:
        return "due"
    return "good" if has_good else "unchecked"
