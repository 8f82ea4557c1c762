"""What stands at the head of every page of the desk: open questions, entries not yet judged, differences not yet read.

All of it comes in one statement, because every page asks for it.
"""

from __future__ import annotations

from dataclasses import dataclass

from webapp.book.fold import differences, queries, unjudged
from webapp.book.record.store import Book

_ALL = (
    f"SELECT 'left', * FROM ({unjudged.LEFT}) "  # noqa: S608
    f"UNION ALL SELECT 'open', *, NULL, NULL FROM ({queries.COUNTS}) "
    f"UNION ALL SELECT 'unread', *, NULL, NULL FROM ({differences.UNREAD})"
)


@dataclass(frozen=True, slots=True)
class Heading:
    """The head of a page. counts: open queries by weight; unread: differences by judging, the last first."""

    counts: dict[str, int]
    progress: str
    unread: dict[int, int]


def load_heading(book: Book) -> Heading:
    """Return the head of a page as the book stands now."""
    counts: list[tuple[str, int]] = []
    unread: list[tuple[int, int]] = []
    progress = ""
    for part, *row in book.db.conn.execute(_ALL):
        if part == "open":
            counts.append((row[0], row[1]))
        elif part == "unread":
            unread.append((row[0], row[1]))
        else:
            progress = unjudged.Left(*row).words
    return Heading(queries.as_counts(counts), progress, differences.as_unread(unread))
