"""Which labels were printed, when, and with which words: so that those which are missing can be printed. House data."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime
from typing import Final

from webapp.book.house.places import LAST_PUT, PlacedVessel
from webapp.book.record.clock import utc_text
from webapp.book.record.store import Book
from webapp.trade.placenames import room_of, sort_key

WHICH: Final[dict[str, str]] = {
    "all": "all", "missing": "without a label", "changed": "label says something else by now",
}


class Labelled(PlacedVessel):
    """A vessel with its label: `printed_at` is empty where none was printed; `words` are those on it.

    `is_scanned` is 1 where its label was read by a phone, so that it has one, whoever printed it.
    """

    printed_at: str
    words: str
    is_scanned: int


def words_of(vessel: PlacedVessel) -> str:
    """Return the words on a vessel's label beside its mark: its title or name, and its place."""
    return "\n".join(filter(None, (vessel["title"] or vessel["name"], vessel["stands"])))


def find_labels(
    book: Book, *, which: str = "all", sort: str = "", room: str | None = None, text: str = "",
    marks: Iterable[str] | None = None,
) -> list[Labelled]:
    """Return vessels in use, in the order of places, with what is known of their labels.

    Parameters
    ----------
    book : Book
        The book.
    which : str
        `all`; `missing`, where none was printed and none was scanned; `changed`, where name or place are others than
        those on the label. [WHICH]
    sort : str
        A sort of vessel, or an empty text for all.
    room : str or None
        A room as places name it; an empty text for places without one; None for all.
    text : str
        A part of mark, name or place. [text]
    marks : iterable of str or None
        These vessels alone, or None for all.

    Returns
    -------
    found : list of Labelled
        At most some thousands. [Labelled]
    """
    wanted = set(marks) if marks is not None else None
    found = [
        one for one in book.rows(Labelled, _FIND, {"sort": sort, "text": text, "which": which})
        if (wanted is None or one["mark"] in wanted)
        and (room is None or sort_key(room_of(one["stands"])) == sort_key(room))
        and _is_in(which, one)
    ]
    return sorted(found, key=lambda one: (sort_key(one["stands"]), one["stands"], one["sort"], sort_key(one["name"])))


# Whether a label was scanned is asked only where it decides: it looks at entries.
_FIND = f"""
SELECT v.*, coalesce(p.place, v.place) AS stands, coalesce(l.at, '') AS printed_at, coalesce(l.words, '') AS words,
    :which = 'missing' AND l.mark IS NULL AND EXISTS (
        SELECT 1 FROM entries e WHERE e.mark = v.mark AND e.body ->> 'mark_by' = 'scanned'
    ) AS is_scanned
FROM vessels v LEFT JOIN ({LAST_PUT}) p ON p.mark = v.mark LEFT JOIN label_prints l ON l.mark = v.mark
WHERE NOT v.retired AND (:sort = '' OR v.sort = :sort) AND (
    :text = '' OR instr(lower(v.mark || ' ' || v.title || ' ' || coalesce(p.place, v.place)), lower(:text))
) ORDER BY v.sort, v.name LIMIT 5000
"""  # noqa: S608


def _is_in(which: str, one: Labelled) -> bool:
    if which == "missing":
        return not one["printed_at"] and not one["is_scanned"]
    if which == "changed":
        return bool(one["printed_at"]) and one["words"] != words_of(one)
    return True


def note_prints(book: Book, vessels: Iterable[PlacedVessel], by: str, now: datetime) -> None:
    """Note that the labels of these vessels were printed now, with their words as they are."""
    lines = [(one["mark"], words_of(one), utc_text(now), by) for one in vessels]
    with book.write() as database:
        database.conn.executemany("INSERT OR REPLACE INTO label_prints VALUES (?, ?, ?, ?)", lines)
