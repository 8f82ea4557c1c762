"""Instruments: when each was checked, what to add to it, when it is due, and what a failed check casts doubt on."""

from __future__ import annotations

from datetime import UTC, datetime

from flask import abort, render_template
from flask.typing import ResponseReturnValue

from webapp.access import current, needs
from webapp.book.before.corrections import table_words
from webapp.book.house import instruments, registry
from webapp.desk.blueprint import bp, local_time
from webapp.desk.shown import entry_lines


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
        abort(404, "There is no such instrument. Look for it in the list.")
    failed = record.failed.entry if record.failed else ""
    rows, n = instruments.in_doubt(current.book, record, failed)
    return render_template(
        "desk/house/instrument.html", record=record, doubtful=entry_lines(current.book, rows), n=n,
        BADGES=BADGES, table_words=table_words,
    )


# A standing is a sign and a word (badge, words); no green tick: a good check says nothing about today.
BADGES = {
    "good": ("note", "checked"),
    "unchecked": ("note", "no check in the book"),
    "due": ("ask", "due"),
    "failed": ("stop", "failed"),
    "out of use": ("stop", "out of use"),
}
