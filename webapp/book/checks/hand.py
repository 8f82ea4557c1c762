"""Checks of who logged an entry: what was found at its hand-in (record/way.py), and how long that took."""

from __future__ import annotations

from collections.abc import Iterable

from webapp.book.before.limits import Limit, declare, limit
from webapp.book.before.view import Query, seconds_between
from webapp.book.checks.words import time_span
from webapp.book.record import way
from webapp.kinds.message import message
from webapp.kinds.read import Read
from webapp.kinds.view import View

LIMITS = declare(
    Limit("received_note_h", 72, "h", "Received from a phone later than this after it was typed is shown"),
    # Phones offer again what is younger than 30 days where a book was restored from an older backup.
    Limit("received_ask_h", 744, "h", "Received from a phone later than this after it was typed is asked about"),
)


def hand(read: Read, view: View) -> Iterable[Query]:
    """Whether a phone's entry bears its signature, and its person had typed their PIN there."""
    findings, person = way.read_way(view.via).findings, read.entry.get("person") or ""
    if way.UNSIGNED in findings:
        yield Query("hand_unsigned", "ask", "", message("hand_unsigned", person=person[:20]))
    if way.NOT_SHOWN in findings:
        yield Query("hand_not_shown", "ask", "", message("hand_not_shown", person=person[:20]))
    if way.NOT_SHOWN_NOW in findings:
        yield Query("hand_second", "ask", "", message("hand_second", person=person[:20]))
    if way.WITNESS_NOT_SHOWN in findings:
        seen_by = str(read.entry.get("seen_by") or "")
        yield Query("hand_witness", "ask", "", message("hand_witness", person=seen_by[:20]))


def received(read: Read, view: View) -> Iterable[Query]:
    """Received from a phone long after it was typed."""
    if way.read_way(view.via).how != way.PHONE:
        return
    after_s = seconds_between(view.typed_at, view.received_at)
    if after_s > limit("received_note_h", view) * 3600:
        asks = after_s > limit("received_ask_h", view) * 3600
        yield Query("received", "ask" if asks else "note", "", message("received", after=time_span(after_s)))
