"""Gauges: what is measured holds, and the difference to the book is booked."""

from __future__ import annotations

from typing import Unpack

from webapp.kinds.key import EVAPORATION, GAUGE_DIFFERENCE, LEAK, OPENING, Key, instrument_key
from webapp.kinds.read import Read
from webapp.kinds.spec import Effect
from webapp.kinds.state import CHECKS, FillChanges, Instrument, InstrumentCheck
from webapp.kinds.stock import Posting, spirit_read
from webapp.kinds.view import View


def gauge(read: Read, view: View) -> Effect:
    """The measured stock holds: vessel <-> gauge_difference, or opening -> vessel. Nothing measured: it is empty."""
    is_opening = read.text("purpose") == "opening"
    return _measured(read, view, OPENING if is_opening else GAUGE_DIFFERENCE)


def cask_regauge(read: Read, view: View) -> Effect:
    """The measured stock holds: cask -> evaporation, or -> leak where the cask was found leaking."""
    leaks = read.text("condition") == "leaking"
    return _measured(read, view, LEAK if leaks else EVAPORATION)


def bottling_gauge(read: Read, view: View) -> Effect:
    """The tank as it is bottled: vessel <-> gauge_difference; batch and label strength stay with the fill."""
    name, label = read.text("batch") or "", read.number("label_strength")
    return _measured(read, view, GAUGE_DIFFERENCE, name=name, label_strength_pct=label)


def _measured(read: Read, view: View, other: Key, **facts: Unpack[FillChanges]) -> Effect:
    post = Posting(view)
    post.remember(read)
    if read.figures.get("lpa") is None:
        return post.effect()
    amount = spirit_read(read)
    if not post.held(read.mark) and any(amount):
        post.begin(read.mark)
    if what := read.text("what"):
        facts["what"] = what
    post.describe(read.mark, **facts)
    post.measure(read.mark, amount, other, read.kind.name)
    return post.effect()


def instrument_check(read: Read, view: View) -> Effect:
    """The instrument remembers its checks: key `i:<id>`. Entries read with it lie among the touches of that key."""
    key = instrument_key(read.text("instrument") or "")
    state: Instrument = view.get(key) or {"checks": [], "last_good_at": None, "failed_at": None}
    good = read.text("result") == "good"
    line: InstrumentCheck = {
        "entry": read.entry["id"], "at": view.at, "good": good, "against": read.text("against"),
        "expected": read.number("expected"), "found": read.number("found"), "correction": read.number("correction"),
        "in_use": read.text("in_use"), "until": read.text("until"),
    }
    # After a failure the first good check clears the instrument again; until then the last good one is kept.
    last_good_at, failed_at = (view.at, None) if good else (state["last_good_at"], state["failed_at"] or view.at)
    checks = [*state["checks"], line][-CHECKS:]
    return Effect({key: {**state, "last_good_at": last_good_at, "failed_at": failed_at, "checks": checks}})
