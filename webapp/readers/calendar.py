"""What is due, as a calendar that other calendars look at: one day's event for each thing (iCalendar, RFC 5545)."""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta

from flask import Response
from flask.typing import ResponseReturnValue

from webapp.access import current
from webapp.book import intake
from webapp.book.today import due, facts
from webapp.desk.today import clock
from webapp.desk.today.dues import sentence_of
from webapp.readers.guard import bp, reads
from webapp.words.desk import say

LOOK_AGAIN = timedelta(hours=1)


@bp.get("/due.ics")
@reads("calendar")
def due_calendar() -> ResponseReturnValue:
    """Send what is due as all-day events: what is late stands on today, what is to come on its day."""
    from icalendar import Calendar, Event

    now, site = datetime.now(UTC), current.site
    today = clock.at_house(now.timestamp()).date()
    registry = facts.load_registry(current.book)
    known, book_id = facts.load_facts(current.book, registry, current.house), intake.book_id(current.book)
    calendar = Calendar()
    calendar.add("prodid", "-//Cellarslate//due//EN")
    calendar.add("version", "2.0")
    calendar.add("name", say("desk-readers-calendar_name", house=str(site.get("name") or "Cellarslate")))
    calendar.add("refresh-interval", LOOK_AGAIN)

    def add(uid: str, day: date, words: str, place: str) -> None:
        event = Event()
        event.add("uid", f"{uid}@{book_id}")
        event.add("dtstamp", now)
        event.add("dtstart", day)
        event.add("summary", words)
        if place:
            event.add("location", place)
        calendar.add_component(event)

    for one in due.all_due(known, registry, site, now, today.isoformat()):
        standing = known.standings.get(one.mark)
        day = today + timedelta(days=max(0, round(-one.days)))
        add(f"{one.key}-{one.mark or one.name}", day, sentence_of(one), standing.place if standing else "")
    for standing in due.near_ends(known):
        if standing.end_state == "running" and "at" in standing.end_s:
            day = max(today, clock.at_house(standing.end_s["at"]).date())
            add(f"end-{standing.mark}", day, say("desk-readers-ferment_ends", name=standing.shown), standing.place)
    return Response(calendar.to_ical(), mimetype="text/calendar")
