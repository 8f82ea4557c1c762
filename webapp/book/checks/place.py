"""Checks of a stock count: another place than the book's, two that have changed places, and nothing there at all."""

from __future__ import annotations

from collections.abc import Iterable

from webapp.book.before.view import Query
from webapp.kinds.effects.other import place_of, swapped_with
from webapp.kinds.message import Figure, message
from webapp.kinds.read import Read
from webapp.kinds.state import NO_FILL
from webapp.kinds.view import View


def place_differs(read: Read, view: View) -> Iterable[Query]:
    """A vessel found where the book does not have it. Answered with "it stands", the book has it there."""
    place = (read.text("place") or "").strip()
    booked = place_of(view, read.mark) if read.mark else ""
    is_here = read.text("found") == "here" or (read.kind.name == "opening" and bool(booked))
    if not is_here or not read.mark or not place or place == booked:
        return
    name = _name(view, read.mark)
    other = swapped_with(view, booked, place)
    if other:
        said = message("places_swapped", vessel=name, place=place, other=_name(view, other), booked=booked)
        yield Query("places_swapped", "ask", "place", said)
        return
    said = message("place_differs", vessel=name, place=place, booked=booked or "none")
    yield Query("place_differs", "ask", "place", said)


def place_from(read: Read, view: View) -> Iterable[Query]:
    """A vessel moved from where the book does not have it: another vessel, or moved already."""
    place, booked = (read.text("from_place") or "").strip(), place_of(view, read.mark)
    if place and booked and place.casefold() != booked.casefold():
        said = message("place_from", vessel=_name(view, read.mark), place=place, booked=booked)
        yield Query("place_from", "ask", "from_place", said)


def cask_missing(read: Read, view: View) -> Iterable[Query]:
    """Nothing where a vessel should be: looked for at once."""
    if read.text("found") != "nothing" or not read.mark:
        return
    held = view.state(read.mark)["holds"] or NO_FILL
    much = Figure(f"{held['lpa_l']:.1f}", "LPA") if held["lpa_l"] else "none"
    yield Query("cask_missing", "ask", "found", message("cask_missing", vessel=_name(view, read.mark), booked=much))


def not_in_book(read: Read, view: View) -> Iterable[Query]:
    """A vessel that stands there and that the book does not know."""
    if read.text("found") != "unknown":
        return
    place = (read.text("place") or "").strip()
    said = message("not_in_book", label=str(read.text("label") or "")[:60], place=place or "none")
    yield Query("not_in_book", "ask", "label", said)


def _name(view: View, mark: str) -> str:
    row = view.vessel(mark)
    return str(row["name"]) if row else mark
