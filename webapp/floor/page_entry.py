"""The pages' dealings with the book: cards, last values, and one entry logged from a form without script."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime
from typing import TypedDict

from webapp.access import current
from webapp.book import cards, intake
from webapp.book.cards import Card, LastValue
from webapp.book.house import registry
from webapp.book.record.errors import BookError
from webapp.kinds.as_form import KindForm, entry_values
from webapp.kinds.spec import Kind
from webapp.words.desk import say


class Said(TypedDict):
    """What must be put right, and at which box; an empty name for the form as a whole."""

    field: str
    words: str


def all_cards() -> list[Card]:
    """Return every vessel's card."""
    found: list[Card] = []
    cursor, more = 0, True
    while more:
        part = cards.cards_since(current.book, cursor)
        found += part["cards"]
        cursor, more = part["cursor"], part["more"]
    return sorted(found, key=lambda card: str(card["mark"]))


def card(mark: str) -> Card | None:
    """Return the card of one vessel, or None where the book has no such vessel."""
    if registry.vessel(current.book, mark) is None:
        return None
    return cards.card(current.book, mark)


def last_values(mark: str, kind: Kind) -> Mapping[str, LastValue]:
    """Return the last values of this kind on this vessel, by field."""
    found = card(mark)
    return found["last"].get(kind.name, {}) if found else {}


def log(kind: Kind, mark: str, form: KindForm, now: datetime) -> list[Said]:
    """Hand the form's entry in; return what must be put right first, empty where it is in the book."""
    person = current.person
    if person is None:
        return [_problem("", say("floor-log-sign_in_first"))]
    try:
        read_at = _read_at(str(form.read_at.data or ""), now)
    except ValueError:
        return [_problem("read_at", say("floor-log-no_time"))]
    roles = person.get("roles") or []
    try:
        result = intake.enter_page_entry(
            current.book, kind=kind.name, mark=mark, values=entry_values(form), person=person["code"],
            role=str(form.role.data or "") or (roles[0] if roles else kind.role), read_at=read_at,
            remark=str(form.remark.data or ""), now=now,
        )
    except BookError as error:
        return [_problem("", str(error))]
    if result["settled"] != "refused":
        return []
    problems = [_problem(str(one.get("field", "")), str(one["words"])) for one in result.get("problems", [])]
    _show_at_fields(form, problems)
    return problems


def _problem(field: str, words: str) -> Said:
    return {"field": field, "words": words}


def _show_at_fields(form: KindForm, problems: list[Said]) -> None:
    for problem in problems:
        if problem["field"] in form:
            box = form[problem["field"]]
            box.errors = [*box.errors, problem["words"]]


def _read_at(typed: str, now: datetime) -> str:
    """Return the minute as typed, in the site's own time, or now. Raises ValueError where it is no time."""
    if typed:
        return registry.at_house(current.book, typed)
    return now.astimezone(registry.zone(current.book)).isoformat(timespec="seconds")
