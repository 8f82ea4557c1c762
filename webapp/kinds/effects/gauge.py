"""Gauges: what is measured holds, and the difference to the book is booked."""

from __future__ import annotations

from typing import Any

from webapp.kinds.read import Read
from webapp.kinds.spec import Effect
from webapp.kinds.state import CHECKS
from webapp.kinds.stock import Posting, spirit_read


def gauge(read: Read, view: Any) -> Effect:
    """The measured stock holds: vessel <-> gauge_difference, or opening -> vessel. Nothing measured: it is empty."""
    is_opening = read.values.get("purpose") == "opening"
    return _measured(read, view, "out:opening" if is_opening else "out:gauge_difference")


def cask_regauge(read: Read, view: Any) -> Effect:
    """The measured stock holds: cask -> evaporation, or -> leak where the cask was found leaking."""
    leaks = read.values.get("condition") == "leaking"
    return _measured(read, view, "out:leak" if leaks else "out:evaporation")


def bottling_gauge(read: Read, view: Any) -> Effect:
    """The tank as it is bottled: vessel <-> gauge_difference; batch and label strength stay with the fill."""
    facts = {"name": read.values.get("batch") or "", "label_strength_pct": read.values.get("label_strength")}
    return _measured(read, view, "out:gauge_difference", **facts)


def _measured(read: Read, view: Any, outside: str, **facts: Any) -> Effect:
    post = Posting(view)
    post.remember(read)
    if read.figures.get("lpa") is None:
        return post.effect()
    amount = spirit_read(read)
    if not post.held(read.mark) and any(amount):
        post.begin(read.mark)
    if read.values.get("what"):
        facts["what"] = read.values["what"]
    post.describe(read.mark, **facts)
    post.measure(read.mark, amount, outside, read.kind.name)
    return post.effect()


def instrument_check(read: Read, view: Any) -> Effect:
    """The instrument remembers its checks: key `i:<id>`. Entries read with it lie among the touches of that key."""
    key = f"i:{read.values.get('instrument') or ''}"
    state = view.get(key) or {"checks": [], "last_good_at": None, "failed_at": None}
    good = read.values.get("result") == "good"
    line = {"entry": read.entry["id"], "at": view.at, "good": good}
    line |= {name: read.values.get(name) for name in ("against", "expected", "found", "correction", "in_use", "until")}
    # After a failure the first good check clears the instrument again; until then the last good one is kept.
    times = {"last_good_at": view.at, "failed_at": None} if good else {"failed_at": state["failed_at"] or view.at}
    return Effect({key: {**state, **times, "checks": [*state["checks"], line][-CHECKS:]}})
