"""Checks of time: the phone's clock, late typing, times that cannot be. All times are kept as they came."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime

from webapp.book.before.limits import Limit, declare, limit
from webapp.book.before.view import Query
from webapp.book.checks.words import DAY_S, local_text, time_span
from webapp.kinds.key import Key, PhoneKey, phone_key
from webapp.kinds.message import Time, message
from webapp.kinds.read import Read
from webapp.kinds.state import PhoneClock, State
from webapp.kinds.view import View

LIMITS = declare(
    Limit("clock_note_s", 60, "s", "A phone's clock off by more is shown"),
    Limit("clock_ask_s", 600, "s", "A phone's clock off by more is asked about"),
    Limit("late_note_min", 30, "min", "Typed later than this after it was read"),
    Limit("late_ask_h", 36, "h", "Typed on a phone later than this is asked about"),
    Limit("future_min", 5, "min", "Read later than it was typed, by"),
)

AT_THE_DESK = "desk"  # where papers are typed up


def _written_after_reading_s(read: Read) -> float:
    """Seconds from reading to typing, both by the same clock, so a wrong clock does not matter."""
    entry = read.entry
    typed_at, read_at = datetime.fromisoformat(entry["typed_at"]), datetime.fromisoformat(entry["read_at"])
    return (typed_at - read_at).total_seconds()


def device_state(read: Read, view: View) -> dict[Key, State]:
    """Return the state the fold keeps of a phone's clock, only where it changed: {key: {"skew_s": ...}} or {}. [s]

    A stop keeps an entry from the stock, not from saying how its phone's clock stood.
    """
    if "clock" not in read.kind.checks:
        return {}
    key = phone_key(read.entry["device"])
    if abs(view.skew_s - _known_s(key, view)) <= limit("clock_note_s", view):
        return {}
    now: PhoneClock = {"skew_s": view.skew_s}
    return {key: now}


def _known_s(key: PhoneKey, view: View) -> float:
    known = view.get(key)
    return known["skew_s"] if known else 0.0


def clock(read: Read, view: View) -> Iterable[Query]:
    """The phone's clock against the book's at hand-in: said once for each size of error, not with every entry."""
    skew, device = view.skew_s, read.entry["device"]
    known_s = _known_s(phone_key(device), view)
    if abs(skew) <= limit("clock_note_s", view) or abs(skew - known_s) <= limit("clock_note_s", view):
        return
    way = "slow" if skew < 0 else "fast"
    if abs(skew) <= limit("clock_ask_s", view):
        yield Query("clock", "note", "read_at", message("clock", off=time_span(skew), way=way))
    else:
        ordered = local_text(view.at, read)
        told = Time(read.entry["read_at"][:16], ordered[:10])
        said = message("clock-ask", off=time_span(skew), way=way, told=told, ordered=Time(ordered, ordered[:10]))
        yield Query("clock", "ask", "read_at", said)


def late(read: Read, view: View) -> Iterable[Query]:
    """Typed well after it was read, or at the same hour of another day. Opening stock comes from older papers."""
    after_s = _written_after_reading_s(read)
    if after_s > limit("late_note_min", view) * 60 and read.text("purpose") != "opening":
        by_phone = read.entry["device"] != AT_THE_DESK
        days = round(after_s / DAY_S)
        if by_phone and days and abs(after_s - days * DAY_S) <= limit("late_note_min", view) * 60:
            said = message("late-same_hour", after=time_span(days * DAY_S))
            yield Query("late", "ask", "read_at", said)
            return
        asks = by_phone and after_s > limit("late_ask_h", view) * 3600
        yield Query("late", "ask" if asks else "note", "read_at", message("late", after=time_span(after_s)))


def time_order(read: Read, view: View) -> Iterable[Query]:
    """Read later than it was typed."""
    early_s = -_written_after_reading_s(read)
    if early_s > limit("future_min", view) * 60:
        yield Query("time_order", "stop", "read_at", message("time_order", after=time_span(early_s)))
