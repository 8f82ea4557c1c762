"""What is due, as lines of the page: when, what, and the list or page it leads to. Alike things share one line."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime
from itertools import groupby

from flask import url_for

from webapp.access import current
from webapp.book.periods.ledger import Ledger
from webapp.book.periods.periods import accounts_of
from webapp.book.periods.warnings import Notice
from webapp.book.record import months
from webapp.book.record.clock import utc_text
from webapp.book.today.due import CASK_ROUNDS, Due
from webapp.desk.today import clock
from webapp.words.desk import say

TOGETHER = 3  # more of one sort share a line
NAMED_MOST = 5
LATE_DAYS = 1 / 24  # what is due for less is due now
US_DAY = 15  # 27 CFR 19.632: reports of a month by the 15th of the next


@dataclass(frozen=True, slots=True)
class Row:
    """A line: when, what, the sentence behind it, where it leads. weight: ask where it is late, else empty."""

    key: str
    when: str
    words: str
    more: str
    href: str
    go: str
    weight: str = ""
    source: str = ""


# Where a line of many leads; what it says is the message desk-due-many_<sort>.
_MANY = {
    "read": "desk.ferments_page", "close": "desk.ferments_page", "still": "desk.ferments_page",
    "regauge": "desk.casks_page", "sample": "desk.casks_page", "taste": "desk.casks_page",
    "stands": "desk.vessels_page", "bottling": "desk.bottled_page", "failed": "desk.instruments_page",
    "instrument": "desk.instruments_page", "open_run": "desk.runs_page", "stuck": "desk.ferments_page",
}
_ORDER = ("stuck", "open_run", "failed", "read", "close", "still", "bottling", "period", "regauge", "sample", "taste",
          "stands", "instrument")
_LATE = ("stuck", "open_run", "failed")


def due_rows(found: Iterable[Due], ledger: Ledger, notices: Sequence[Notice], now: datetime) -> list[Row]:
    """Return the lines of what is due, the weightiest sort first."""
    rows = [row for key, some in groupby(sorted(found, key=lambda one: _ORDER.index(one.key)), lambda one: one.key)
            for row in _of_sort(key, sorted(some, key=lambda one: -one.days), now.timestamp())]
    rows += _period(ledger, now)
    rows = sorted(rows, key=lambda row: _ORDER.index(row.key))
    return [*(_notice(one) for one in notices), *rows]


def _of_sort(key: str, some: list[Due], now: float) -> list[Row]:
    if len(some) <= TOGETHER:
        return [_row(one, now) for one in some]
    page = _MANY[key]
    named = ", ".join(each.name for each in some[:NAMED_MOST])
    more = say("desk-due-and_more", named=named, more=len(some) - NAMED_MOST) if len(some) > NAMED_MOST else named
    said = clock.count(len(some), f"desk-due-many_{key}")
    return [Row(key, _when(some[0]), f"{said[0].upper()}{said[1:]}", more,
                _list_of(key, page), say("desk-due-all_of_them"), "ask" if key in _LATE or _is_late(some[0]) else "")]


def _list_of(key: str, page: str) -> str:
    if key in CASK_ROUNDS:
        return url_for(page, due=key)
    return url_for(page, sort="tank") if key == "stands" else url_for(page)


def _row(one: Due, now: float) -> Row:
    weight = "ask" if one.key in _LATE or _is_late(one) else ""
    return Row(one.key, _when(one), sentence_of(one), _more(one, now), _href(one), say("desk-due-look"), weight)


def _is_late(one: Due) -> bool:
    return one.key == "instrument" and one.days > 0


def _when(one: Due) -> str:
    if one.key == "instrument":
        return clock.day(f"{one.last[:10]}T12:00:00+00:00")
    is_round = one.key == "read" or one.key in CASK_ROUNDS
    is_late = is_round and one.days >= LATE_DAYS
    return say("desk-due-late", time=clock.long(one.days)) if is_late else say("desk-due-now")


def sentence_of(one: Due) -> str:
    """Return the sentence about one thing that is due, by the message desk-due-one_<sort>."""
    if one.key == "instrument":
        key = "instrument" if one.days <= 0 else "instrument_late"
        return say(f"desk-due-one_{key}", name=one.name, time=clock.long(one.days))
    return say(f"desk-due-one_{one.key}", name=one.name, what=one.what or "", time=clock.long(one.days))


def _more(one: Due, now: float) -> str:
    what = one.what or ""
    if one.key in ("instrument", "failed"):
        return what
    if one.key == "open_run":
        return say("desk-due-begun", when=clock.near(one.last, now))
    last = say("desk-due-last", when=clock.near(one.last, now)) if one.last else say("desk-due-never_yet")
    if one.key in ("stands", "bottling", "still", "close", "stuck"):
        last = say("desk-due-last_entry", when=clock.near(one.last, now)) if one.last else ""
    return ", ".join(part for part in (what, last) if part)


def _href(one: Due) -> str:
    if one.key == "open_run":
        return url_for("desk.run_page", run_id=one.mark)
    if one.key in ("instrument", "failed"):
        return url_for("desk.instrument_page", instrument_id=one.mark)
    if one.key in ("regauge", "sample", "taste"):
        return url_for("desk.cask_page", mark=one.mark)
    return url_for("desk.vessel_page", mark=one.mark)


def _period(ledger: Ledger, now: datetime) -> list[Row]:
    """The first month that is over and not closed, with its day where the law of the house's accounts names one."""
    first, this = ledger.first_open, months.month_at(utc_text(now), str(current.site.get("time_zone") or "UTC"))
    if first is None or first >= this:
        return []
    is_us = accounts_of(current.site) == "us"
    open_ones = [month.name for month in ledger.months if month.name not in ledger.closed and month.name < this]
    name = clock.month_words(first)
    words = (say("desk-due-months_open", first=name, last=clock.month_words(open_ones[-1])) if len(open_ones) > 1
             else say("desk-due-month_open", month=name))
    due = f"{months.next_month(first)}-{US_DAY:02d}"
    is_late = is_us and due < clock.at_house(now.timestamp()).date().isoformat()
    when = clock.day(f"{due}T12:00:00+00:00") if is_us else say("desk-due-now")
    more = say("desk-due-us_reports") if is_us else ""
    return [Row("period", when, words, more, url_for("desk.period_page", name=first), say("desk-due-look"),
                "ask" if is_late else "", "27 CFR 19.632" if is_us else "")]


def _notice(one: Notice) -> Row:
    return Row(one.code, say("desk-due-now"), one.words, "", one.href, say("desk-due-look"), one.weight)
