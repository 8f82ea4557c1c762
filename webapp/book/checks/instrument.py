"""Checks of the instrument itself: is it due, did it fail, and what a failed check casts doubt on (G11)."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from webapp.book.before.view import Query, View
from webapp.book.checks.words import local, plain
from webapp.kinds.read import Read


def instrument(read: Read, view: View) -> Iterable[Query]:
    """A reading made with an instrument that had failed its last check, was taken out of use, or was due for one."""
    named: set[str] = set()
    for spec in read.kind.fields:
        name = str(read.raw(spec.name).get("instrument") or "").strip()
        if not name or name in named or spec.name not in read.values:
            continue
        named.add(name)
        words = _doubt(name, read, view)
        if words:
            yield Query("instrument", "note", spec.name, words)


def _doubt(name: str, read: Read, view: View) -> str:
    state: Any = view.get(f"i:{name}") or {}
    row = view.instrument(name) or {}
    last = state["checks"][-1] if state.get("checks") else {}
    if state.get("failed_at"):
        return f"{name} failed its check on {_day(state['failed_at'], read)}. Read it again with another."
    if last.get("in_use") == "no":
        return f"{name} is out of use since {_day(last['at'], read)}. Which instrument was it?"
    today = local(view.at, read).date().isoformat()
    due = last.get("until") if last.get("in_use") == "until" else row.get("due_on")
    checked = local(state["last_good_at"], read).date().isoformat() if state.get("last_good_at") else ""
    if due and checked < due < today:
        return f"{name} was due for a check on {due}. Check it."
    return ""


def instrument_checked(read: Read, view: View) -> Iterable[Query]:
    """A failed check: every reading since the last good one is in doubt. The instrument's page lists them."""
    name = str(read.values.get("instrument") or "").strip()
    if not name:
        return
    if view.instrument(name) is None:
        words = f"The book knows no instrument {name[:40]}. Add it, or amend the entry."
        yield Query("unknown_instrument", "ask", "instrument", words)
    if read.values.get("result") != "failed":
        return
    state: Any = view.get(f"i:{name}") or {}
    since = f"its last good check on {_day(state['last_good_at'], read)}" if state.get("last_good_at") else "it was new"
    words = f"{name} {_off(read)}. Every reading with it since {since} is in doubt: look through the list on its page."
    yield Query("instrument_failed", "ask", "found", words)


def _off(read: Read) -> str:
    expected, found = read.values.get("expected"), read.values.get("found")
    if expected is None or found is None:
        return "failed"
    off = found - expected
    against = str(read.values.get("against") or "")
    where = {"ice": " in ice", "boiling": " in boiling water"}.get(against, "")
    return f"shows {plain(abs(off), 2).rstrip('0').rstrip('.')} too {'high' if off > 0 else 'low'}{where}"


def _day(at: str, read: Read) -> str:
    then = local(at, read)
    return f"{then.day} {then:%B %Y}"
