"""Instruments: when each was checked, what to add to it, when it is due, and what a failed check casts doubt on."""

from __future__ import annotations

import json
from dataclasses import dataclass
from datetime import UTC, datetime

from flask import abort, render_template
from flask.typing import ResponseReturnValue

import webapp.kinds
from webapp.access import current, needs
from webapp.book.before.corrections import table_words
from webapp.book.house import instruments, registry
from webapp.desk.blueprint import bp, local_time
from webapp.desk.shown import entry_lines
from webapp.kinds.corrections import put_right
from webapp.kinds.entry import Correction
from webapp.kinds.slips import show_number
from webapp.trade import units
from webapp.trade.errors import NotANumber, OutOfDomain
from webapp.words.desk import Later, say


def _today() -> str:
    return local_time(datetime.now(UTC).isoformat(timespec="seconds"))[:10]


@bp.get("/instruments")
@needs("floor")
def instruments_page() -> ResponseReturnValue:
    """List every instrument with its standing."""
    today = _today()
    found = instruments.records(current.book, registry.instruments(current.book), today)
    return render_template("desk/house/instruments.html", found=found, BADGES=BADGES)


@bp.get("/instruments/<instrument_id>")
@needs("floor")
def instrument_page(instrument_id: str) -> ResponseReturnValue:
    """Show one instrument: its checks, and every reading in doubt since its last good one."""
    record = instruments.record(current.book, instrument_id, _today())
    if record is None:
        abort(404, say("desk-instrument-there_is_no_such_instrument"))
    failed = record.failed.entry if record.failed else ""
    rows, n = instruments.in_doubt(current.book, record, failed)
    return render_template(
        "desk/house/instrument.html", record=record, doubtful=entry_lines(current.book, rows), n=n,
        BADGES=BADGES, table_words=table_words,
        by_check={row["id"]: would_read(record, record.failed, row) for row in rows} if record.failed else {},
    )


@dataclass(frozen=True, slots=True)
class WouldRead:
    """A reading in doubt: its box and how that is called, as typed, and what it comes to by the check that failed."""

    field: str
    label: str
    typed: str
    raw: str
    unit: str


def would_read(record: instruments.Record, check: instruments.Check, row: instruments.DoubtfulRow) -> list[WouldRead]:
    """Return what an entry would have read, had the instrument been off as the check found it; nothing where unknown.

    A zero that has drifted has drifted all along the scale (as kinds/corrections.py).
    """
    kind, body = webapp.kinds.get(row["kind"]), json.loads(row["body"])
    if kind is None or not check.off:
        return []
    drift: Correction = {"unit": record.row["unit"] or "", "table": [], "offset": -check.off}
    found = []
    for spec in kind.fields:
        value = body["values"].get(spec.name) or {}
        if spec.sort != "number" or str(value.get("instrument") or "").strip() != record.row["id"]:
            continue
        unit = str(value.get("unit") or spec.units[0])
        try:
            right = put_right(units.parse_number(value["raw"]), unit, spec.units[0], drift)
        except (NotANumber, OutOfDomain, KeyError):
            continue
        found.append(WouldRead(spec.name, spec.label, value["raw"], show_number(right, spec.decimals), unit))
    return found


# A standing is a sign and a word (badge, words); no green tick: a good check says nothing about today.
BADGES = {
    "good": ("note", "checked"),
    "unchecked": ("note", Later("desk-instrument-no_check_in_the_book")),
    "due": ("ask", "due"),
    "failed": ("stop", "failed"),
    "out of use": ("stop", Later("desk-instrument-out_of_use")),
}
