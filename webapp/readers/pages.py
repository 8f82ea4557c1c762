"""The parts of the book that a key can read: entries by cursor, what stands where, periods, traces, cards."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterable
from datetime import UTC, datetime

from flask import Response, jsonify, request
from flask.typing import ResponseReturnValue

import webapp.kinds
from webapp.access import current
from webapp.access.errors import error_answer
from webapp.book import cards, intake
from webapp.book.record import log
from webapp.book.record.clock import utc_text
from webapp.book.record.rows import Wanted
from webapp.book.today import facts
from webapp.desk.entries.entries import csv_lines
from webapp.desk.periods.pages import period_csv_text, period_facts, period_names
from webapp.desk.trace import files as trace_files
from webapp.desk.trace.pages import find_trace, removals_of
from webapp.isolate import isolate_shown
from webapp.readers.guard import bp, reads

LIMIT = 100
STOCK_HEADS = ("mark", "name", "sort", "place", "fill", "what", "batch", "account", "mash", "pure_alcohol_l", "since")


@bp.get("/entries")
@reads("entries")
def entries() -> ResponseReturnValue:
    """Send entries as handed in, the oldest first, from a cursor on; of one kind where `kind` names it."""
    after, limit = _whole("after", 0, log.NUMBER_MOST), _whole("limit", LIMIT, log.LIST_MOST)
    if after is None or not limit:
        return error_answer(400, f"`after` is the cursor of the last answer, `limit` 1 to {log.LIST_MOST}.")
    kind = request.args.get("kind")
    if kind is not None and webapp.kinds.get(kind) is None:
        return error_answer(404, "There is no kind of entry with that name. See /api/openapi.json.")
    rows = log.find_after(current.book, after, kind, limit)
    return _answer(
        entries=[row["entry"] | {"book": {name: row[name] for name in ("book_no", "received_at", "digest", "via")}}
                 for row in rows],
        cursor=rows[-1]["book_no"] if rows else after, more=len(rows) == limit,
    )


@bp.get("/entries.csv")
@reads("entries")
def entries_csv() -> ResponseReturnValue:
    """Send the entries of one kind as CSV: as read, canonical, worked out, side by side; the newest first."""
    kind = webapp.kinds.get(request.args.get("kind", ""))
    if kind is None:
        return error_answer(400, "Name one `kind`: each has columns of its own. See /api/openapi.json.")
    since = request.args.get("since")
    if since is not None and not _is_day(since):
        return error_answer(400, "`since` is a day, such as 2026-09-01.")
    wanted: Wanted = {
        "kind": kind.name, "mark": None, "person": None, "device": None, "since": since, "until": None,
    }
    return Response(csv_lines(current.book, kind, wanted), mimetype="text/csv")


@bp.get("/stock")
@reads("stock")
def stock() -> ResponseReturnValue:
    """Send what stands in which vessel."""
    return _answer(stock=[dict(zip(STOCK_HEADS, row, strict=True)) for row in _stock()])


@bp.get("/stock.csv")
@reads("stock")
def stock_csv() -> ResponseReturnValue:
    """Send the same as CSV."""
    return _csv([STOCK_HEADS, *_stock()])


@bp.get("/periods")
@reads("periods")
def periods() -> ResponseReturnValue:
    """Send the names of the periods, the newest first, and whether each is closed."""
    return _answer(periods=period_names())


@bp.get("/periods/<name>")
@reads("periods")
def period(name: str) -> ResponseReturnValue:
    """Send a period: every line in microlitres, as stated and as now known, with notices and closes."""
    return _answer(period=period_facts(name))


@bp.get("/periods/<name>.csv")
@reads("periods")
def period_csv(name: str) -> ResponseReturnValue:
    """Send a period as CSV, one row a line."""
    return Response(period_csv_text(name), mimetype="text/csv")


@bp.get("/trace/<key>")
@reads("trace")
def trace(key: str) -> ResponseReturnValue:
    """Send a whole trace: nodes, links with litres of pure alcohol, leaves, bottlings, what stands, what is gone."""
    made = find_trace(key)
    return _answer(trace=trace_files.as_json(made, removals_of(made)))


@bp.get("/cards")
@reads("cards")
def changed_cards() -> ResponseReturnValue:
    """Send the cards of the vessels that have changed since a cursor, without the list of people."""
    since = _whole("since", 0, log.NUMBER_MOST)
    if since is None:
        return error_answer(400, "`since` is the cursor of the last answer. Leave it out for all.")
    made = cards.cards_since(current.book, 0 if since > intake.cursor(current.book) else since)
    return _answer(cursor=made["cursor"], more=made["more"], cards=isolate_shown(made["cards"]), gone=made["gone"])


def _stock() -> list[tuple[object, ...]]:
    known = facts.load_facts(current.book, facts.load_registry(current.book), current.house)
    return [
        (one.mark, one.name, one.sort, one.place, held.fill, held.what, held.name, held.account, held.mash,
         round(held.lpa_ul / 1e6, 6), held.since)
        for one in sorted(known.standings.values(), key=lambda one: one.mark) if (held := one.holds)
    ]


def _answer(**parts: object) -> Response:
    about = {"book_id": intake.book_id(current.book), "server_now": utc_text(datetime.now(UTC))}
    return jsonify({"marker": "cellarslate", "ok": True, **about, **parts})


def _csv(rows: Iterable[Iterable[object]]) -> Response:
    out = io.StringIO()
    csv.writer(out).writerows(rows)
    return Response("\ufeff" + out.getvalue(), mimetype="text/csv")


def _whole(name: str, default: int, most: int) -> int | None:
    """Return a whole number of the address, the default where it is left out, None where it is none or too large."""
    text = request.args.get(name, str(default))
    return int(text) if text.isascii() and text.isdecimal() and len(text) <= 16 and int(text) <= most else None


def _is_day(text: str) -> bool:
    try:
        return datetime.strptime(text, "%Y-%m-%d") is not None  # noqa: DTZ007
    except ValueError:
        return False
