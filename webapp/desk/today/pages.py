"""The desk's first page: a sentence says the day, what needs somebody comes by weight, the house's stock beside it."""

from __future__ import annotations

import json
from datetime import UTC, datetime
from pathlib import Path
from typing import Final

from flask import current_app, redirect, render_template, request, session, url_for
from flask.typing import ResponseReturnValue

from webapp.access import current, needs
from webapp.book.before.limits import site_limit
from webapp.book.periods import notices
from webapp.book.today import day as days
from webapp.book.today import due, facts, holds
from webapp.book.today.since import load_since
from webapp.desk.blueprint import bp, read_heading
from webapp.desk.today import clock, sentence
from webapp.desk.today.dayline import day_line
from webapp.desk.today.dues import due_rows
from webapp.desk.today.ends import SLIP_HIGH, SLIP_WIDE, ends_line, slip_picture
from webapp.desk.today.house import panel_of
from webapp.desk.today.upkeep import Tile, backup_tile, disk_tile, scrub_tile

AWAY_S: Final = 1800  # whoever comes back sooner was not away
PHONES_MOST = 6


@bp.get("/")
@needs("floor")
def today_page() -> ResponseReturnValue:
    """Show the day; an address of the time when the questions stood here leads on to them."""
    if {"weight", "mark"} & request.args.keys():
        return redirect(url_for("desk.queries_page", **request.args.to_dict()))  # type: ignore[arg-type]
    now, site = datetime.now(UTC), current.site
    registry = facts.load_registry(current.book)
    known = facts.load_facts(current.book, registry, current.house)
    whole = notices.load_whole(current.book, now, site)
    today = clock.at_house(now.timestamp()).date().isoformat()
    found = due.all_due(known, registry, site, now, today)
    ends = due.near_ends(known)
    day = days.day_of(known, site, now, current.zone, due.next_reading(known, site))
    phones = due.phone_states(registry.phones, site, now) if current.may("office") else []
    counts = read_heading().counts
    owed = counts["stop"] + counts["ask"]
    ticks, lines = ends_line(ends, now.timestamp())
    before_no, before_at = _last_visit(registry.entries, now)
    panel = panel_of(holds.holds(known, whole.ledger, whole.seasons, now))
    return render_template(
        "desk/today/today.html",
        heading=sentence.heading(owed, day, ends, found, phones, site_limit("near_end_days", site) * 86_400),
        date=clock.at_house(now.timestamp()),
        now_s=now.timestamp(),
        clock=clock,
        owed=owed,
        counts=counts,
        asked=[(one, slip_picture(one.slip) if one.slip else None) for one in known.asked],
        slip_size=(SLIP_WIDE, SLIP_HIGH),
        line=day_line(day),
        ticks=ticks,
        ends=lines,
        due=due_rows(found, whole.ledger, whole.notices, now),
        panel=panel,
        charts=json.dumps([panel.chart]) if panel.chart else "",
        since=load_since(current.book, before_no, current.house),
        before_at=before_at,
        phones=phones[:PHONES_MOST],
        more_phones=max(len(phones) - PHONES_MOST, 0),
        tiles=_tiles(now) if current.may("office") else [],
        entries=registry.entries,
    )


def _last_visit(entries: int, now: datetime) -> tuple[int, str]:
    """Return the number of the book's last entry when this browser was here before, and when that was.

    An empty text at the first visit: then nothing is new. Looks within AWAY_S of each other are one visit.
    """
    kept = session.get("here") or {}
    last_at, last_no = str(kept.get("at") or ""), int(kept.get("no") or 0)
    before_no, before_at = int(kept.get("before_no", entries)), str(kept.get("before_at") or "")
    if last_at and (now - datetime.fromisoformat(last_at)).total_seconds() > AWAY_S:
        before_no, before_at = last_no, last_at
    session["here"] = {
        "at": now.isoformat(timespec="seconds"), "no": entries, "before_no": before_no, "before_at": before_at,
    }
    return min(before_no, entries), before_at


def _tiles(now: datetime) -> list[Tile]:
    data_dir = Path(current_app.config["DATA_DIR"])
    settings = url_for("desk.settings_page")
    return [
        backup_tile(data_dir, now, settings), scrub_tile(data_dir, now, settings),
        disk_tile(data_dir, current.site, settings),
    ]
