"""The corrections in force when an entry was read: its instruments' certificates, moved by their last checks before."""

from __future__ import annotations

import json
from collections.abc import Callable

from webapp.book.record.errors import BookError
from webapp.kinds.corrections import offset_of
from webapp.kinds.entry import Correction, Entry
from webapp.kinds.key import InstrumentKey, instrument_key
from webapp.kinds.rows import InstrumentRow
from webapp.kinds.spec import Kind
from webapp.kinds.state import Instrument
from webapp.trade import units
from webapp.trade.errors import NotANumber

POINTS_MOST = 40


def corrections_for(
    kind: Kind, entry: Entry, row_of: Callable[[str], InstrumentRow | None],
    state_of: Callable[[InstrumentKey], Instrument | None],
) -> dict[str, Correction]:
    """Return by id the corrections of the instruments that an entry names; those without one are left out.

    row_of: the registry's row of an instrument; state_of: the fold's state of a key just before the entry.
    """
    found: dict[str, Correction] = {}
    for named in instruments_in(kind, entry):
        correction = in_force(row_of(named), state_of(instrument_key(named)))
        if correction:
            found[named] = correction
    return found


def instruments_in(kind: Kind, entry: Entry) -> list[str]:
    """Return the ids of the instruments that an entry names, each once."""
    said = [(entry["values"].get(spec.name) or {}).get("instrument") for spec in kind.fields if spec.units]
    return list(dict.fromkeys(name for one in said if (name := str(one or "").strip())))


def in_force(row: InstrumentRow | None, state: Instrument | None) -> Correction | None:
    """Return the correction of an instrument by its row and state: unit, table, offset; None where there is none."""
    table = table_of(row.get("corrections") if row else None)
    last = state["checks"][-1] if state and state["checks"] else None
    offset = offset_of(table, last["found"], last["correction"]) if last else 0.0
    if not table and not offset:
        return None
    return {"unit": (row["unit"] or "") if row else "", "table": table, "offset": offset}


def table_of(kept: str | None) -> list[list[float]]:
    """Return a certificate's table as it is kept, or an empty one."""
    table: list[list[float]] = json.loads(kept) if kept else []
    return table


def table_typed(text: str) -> str:
    """Return a typed table, `0: -0.1; 20: 0; 40: 0.2`, as it is kept. BookError says what is wrong."""
    points = []
    for part in (one for one in text.replace("\n", ";").split(";") if one.strip()):
        shown, _, add = part.partition(":")
        try:
            points.append([units.parse_number(shown), units.parse_number(add)])
        except (NotANumber, ValueError) as error:
            words = f"{part.strip()[:30]} is no point of a table. Type what it shows, a colon, what to add: 20: -0.1"
            raise BookError(words) from error
    points.sort()
    if len({shown for shown, _ in points}) < len(points):
        raise BookError("One reading stands twice in the corrections. Keep one of the two.")
    if len(points) > POINTS_MOST:
        raise BookError(f"A table of corrections has {POINTS_MOST} points at most. Leave some out.")
    return json.dumps(points) if points else ""


def table_words(kept: str | None) -> str:
    """Return a kept table as it is typed."""
    return "; ".join(f"{shown:g}: {add:+g}" for shown, add in table_of(kept))
