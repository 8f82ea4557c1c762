"""Checks of a stock count: another place than the book's, two that have changed places, and nothing there at all."""

from __future__ import annotations

from collections.abc import Iterable

from webapp.book.before.view import Query, View
from webapp.kinds.effects.other import place_of, swapped_with
from webapp.kinds.read import Read


def place_differs(read: Read, view: View) -> Iterable[Query]:
    """A vessel found where the book does not have it. Answered with "it stands", the book has it there."""
    place = (read.values.get("place") or "").strip()
    booked = place_of(view, read.mark) if read.mark else ""
    if read.values.get("found") != "here" or not read.mark or not place or place == booked:
        return
    name = _name(view, read.mark)
    other = swapped_with(view, booked, place)
    if other:
        words = (
            f"{name} was found at {place} and {_name(view, other)} at {booked}: they have changed places, nothing is "
            "short. If that is so, say that it stands, and the book has them so."
        )
        yield Query("places_swapped", "ask", "place", words)
        return
    where = f"the book has it at {booked}" if booked else "the book has no place for it"
    words = f"{name} was found at {place}; {where}. If it is there, say that it stands. Count what stands there too."
    yield Query("place_differs", "ask", "place", words)


def cask_missing(read: Read, view: View) -> Iterable[Query]:
    """Nothing where a vessel should be: looked for at once."""
    if read.values.get("found") != "nothing" or not read.mark:
        return
    held = view.state(read.mark)["holds"] or {}
    much = f", {held['lpa_l']:.1f} L of pure alcohol by the book" if held.get("lpa_l") else ""
    words = f"{_name(view, read.mark)} was not found{much}. Look for it now. If it is gone, log the loss and report it."
    yield Query("cask_missing", "ask", "found", words)


def not_in_book(read: Read, view: View) -> Iterable[Query]:
    """A vessel that stands there and that the book does not know."""
    if read.values.get("found") != "unknown":
        return
    place = (read.values.get("place") or "").strip()
    where = f" at {place}" if place else ""
    words = (
        f"Not in the book: \"{str(read.values.get('label') or '')[:60]}\"{where}. Weigh it, find its papers, and add "
        "it; look for one that the book has and nobody has found."
    )
    yield Query("not_in_book", "ask", "label", words)


def _name(view: View, mark: str) -> str:
    row = view.vessel(mark)
    return str(row["name"]) if row else mark
