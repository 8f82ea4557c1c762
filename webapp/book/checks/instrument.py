"""Checks of the instrument itself: is it due, did it fail, and what a failed check casts doubt on (G11)."""

from __future__ import annotations

from collections.abc import Iterable

from webapp.book.before.limits import Limit, declare, limit
from webapp.book.before.view import Query
from webapp.book.checks.words import figure_text, local_text, local_time, typed
from webapp.kinds.corrections import put_right
from webapp.kinds.entry import Correction
from webapp.kinds.expected import Box, Expected, Suggestion
from webapp.kinds.key import instrument_key
from webapp.kinds.message import Day, Figure, Message, Param, message
from webapp.kinds.read import Read
from webapp.kinds.slips import show_number
from webapp.kinds.spec import Field
from webapp.kinds.view import View
from webapp.trade import units
from webapp.trade.errors import NotANumber, OutOfDomain

LIMITS = declare(
    Limit("check_left", 0.3, "", "A good check may leave this of an instrument uncorrected, in its own unit"),
    Limit("check_left_pct", 1.0, "%", "and this of what it should show"),
)


def instrument(read: Read, view: View) -> Iterable[Query]:
    """A reading made with an instrument that had failed its last check, was taken out of use, or was due for one."""
    named: set[str] = set()
    for spec in read.kind.fields:
        name = str(read.raw(spec.name).get("instrument") or "").strip()
        if not name or name in named or spec.name not in read.values:
            continue
        named.add(name)
        if failed := _failed(name, spec, read, view):
            yield failed
        elif doubt := _doubt(name, read, view):
            yield Query("instrument", "note", spec.name, doubt)


def _failed(name: str, spec: Field, read: Read, view: View) -> Query | None:
    """Return the question to a reading of an instrument that has failed its check, with what it would have been."""
    state = view.get(instrument_key(name))
    if not state or not state["failed_at"]:
        return None
    last, row, on = state["checks"][-1], view.instrument(name), _day(state["failed_at"], read)
    if last["correction"]:
        return None  # it is put right by what that check found
    boxes = []
    if last["found"] is not None and last["expected"] is not None and last["found"] != last["expected"]:
        off = last["found"] - last["expected"]
        drift: Correction = {"unit": (row["unit"] or "") if row else "", "table": [], "offset": -off}
        boxes = [box for one in read.kind.fields if (box := _would_be(one, name, drift, read))]
    if not boxes:
        return Query("instrument", "ask", spec.name, message("instrument-failed", instrument=name, on=on))
    first, *also = boxes
    said = message("instrument-would", instrument=name, on=on, figure=typed(read, first.field),
                   would=Figure(first.raw, first.unit))
    return Query("instrument", "ask", first.field, said,
                 suggestions=(Suggestion(first.field, first.raw, first.unit, None, tuple(also)),))


def _would_be(spec: Field, name: str, drift: Correction, read: Read) -> Box | None:
    """Return the box of a field as it would read with that drift taken off; None where another instrument read it."""
    raw = read.raw(spec.name)
    if spec.sort != "number" or spec.name not in read.values or str(raw.get("instrument") or "").strip() != name:
        return None
    unit = str(raw.get("unit") or spec.units[0])
    try:
        right = put_right(units.parse_number(raw["raw"]), unit, spec.units[0], drift)
    except (NotANumber, OutOfDomain, KeyError):
        return None
    return Box(spec.name, show_number(right, spec.decimals), unit)


def _doubt(name: str, read: Read, view: View) -> Message | None:
    state = view.get(instrument_key(name))
    row = view.instrument(name)
    last = state["checks"][-1] if state and state["checks"] else None
    if state and state["failed_at"]:
        return message("instrument-failed", instrument=name, on=_day(state["failed_at"], read))  # it is put right
    if last and last["in_use"] == "no":
        return message("instrument-out_of_use", instrument=name, since=_day(last["at"], read))
    due = last["until"] if last and last["in_use"] == "until" else row.get("due_on") if row else None
    if not due:
        return None
    today = local_time(view.at, read).date().isoformat()
    checked = local_time(state["last_good_at"], read).date().isoformat() if state and state["last_good_at"] else ""
    if checked < due < today:
        return message("instrument-due", instrument=name, on=Day(due))
    return None


def instrument_checked(read: Read, view: View) -> Iterable[Query]:
    """A failed check: every reading since the last good one is in doubt. The instrument's page lists them."""
    name = str(read.text("instrument") or "").strip()
    if not name:
        return
    if view.instrument(name) is None:
        said = message("unknown_instrument", instrument=name[:40])
        yield Query("unknown_instrument", "ask", "instrument", said)
    if read.text("result") != "failed":
        yield from _not_put_right(read, name, view)
        return
    state = view.get(instrument_key(name))
    since: Day | str = _day(state["last_good_at"], read) if state and state["last_good_at"] else "new"
    said = message("instrument_failed", instrument=name, since=since, **_off(read))
    yield Query("instrument_failed", "ask", "found", said)


def _not_put_right(read: Read, name: str, view: View) -> Iterable[Query]:
    """A check that is called good, though what the instrument shows with its correction is not what it should show."""
    expected, found, add = (read.number(field) for field in ("expected", "found", "correction"))
    if expected is None or found is None or add is None:
        return
    most = max(limit("check_left", view), abs(expected) * limit("check_left_pct", view) / 100)
    if abs(found + add - expected) <= most + 1e-9:
        return
    said = message(
        "check_left", instrument=name, found=_plain(found), correction=_plain(add), then=_plain(found + add),
        expected=_plain(expected),
    )
    yield Query("check_left", "ask", "found", said, (
        Expected("found", expected - add - most, expected - add + most, expected - add),
        Expected("expected", found + add - most, found + add + most, found + add),
        Expected("correction", expected - found - most, expected - found + most, expected - found),
    ))


def _plain(value: float) -> Figure:
    return Figure(f"{value:.3f}".rstrip("0").rstrip("."))


def _off(read: Read) -> dict[str, Param]:
    """Return by how much it was off, which way and against what, as parameters of a message."""
    expected, found = read.number("expected"), read.number("found")
    if expected is None or found is None:
        return {"off": "none", "side": "none", "against": "none"}
    off, against = found - expected, str(read.text("against") or "none")
    digits = figure_text(abs(off), 2).rstrip("0").rstrip(".")
    return {"off": Figure(digits), "side": "high" if off > 0 else "low", "against": against}


def _day(at: str, read: Read) -> Day:
    return Day(local_text(at, read)[:10])
