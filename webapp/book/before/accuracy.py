"""What is known of an instrument's limits of error when an entry was read: its class, and whether it was in doubt."""

from __future__ import annotations

from collections.abc import Callable, Iterable

from webapp.kinds.entry import Accuracy
from webapp.kinds.key import InstrumentKey, instrument_key
from webapp.kinds.rows import InstrumentRow
from webapp.kinds.state import Instrument


def accuracies_for(
    named: Iterable[str], day: str, row_of: Callable[[str], InstrumentRow | None],
    state_of: Callable[[InstrumentKey], Instrument | None],
) -> dict[str, Accuracy]:
    """Return by id what is known of the instruments that an entry names. day: of its reading, `2026-03-02`."""
    rows = ((name, row_of(name)) for name in named)
    return {name: accuracy_of(row, state_of(instrument_key(name)), day) for name, row in rows if row}


def accuracy_of(row: InstrumentRow, state: Instrument | None, day: str) -> Accuracy:
    """Return class and interval of an instrument, and whether it was overdue, failed or out of use on that day."""
    last = state["checks"][-1] if state and state["checks"] else None
    due = last["until"] if last and last["in_use"] == "until" else row.get("due_on")
    is_bad = bool(last and (not last["good"] or last["in_use"] == "no")) or row.get("state") == "out of use"
    return {
        "unit": row.get("unit") or "", "accuracy": row.get("accuracy") or "", "interval": row.get("interval"),
        "doubtful": is_bad or bool(due and due < day),
    }
