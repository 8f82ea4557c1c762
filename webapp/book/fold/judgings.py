"""By which rules a book has been judged. Other rules put every entry on the list of what is to be judged again.

Each row of the table `rules` is one judging: begun when a program with other rules opened the book, done when nothing
was left on the list, read when a person has seen what came out otherwise (differences.py).
"""

from __future__ import annotations

import json
from dataclasses import dataclass
from datetime import UTC, datetime

from webapp.book.fold import rules
from webapp.book.record.clock import utc_text
from webapp.book.record.store import Book
from webapp.version import VERSION

_COLUMNS = "no, number, source, digest, parts, version, begun_at, done_at, read_by, read_at"


@dataclass(frozen=True, slots=True)
class Judging:
    """One judging of the whole book. Times are UTC texts, None where it has not come to that yet."""

    no: int
    number: int
    source: str
    digest: str
    parts_text: str
    version: str
    begun_at: str
    done_at: str | None
    read_by: str | None
    read_at: str | None

    @property
    def parts(self) -> dict[str, str]:
        """The digest of each part of the rules, by its name."""
        parts: dict[str, str] = json.loads(self.parts_text)
        return parts

    @property
    def words(self) -> str:
        """The rules in a few words, as a person can compare them."""
        return f"rules {self.number} of version {self.version}, digest {self.digest[:16]}"

    @property
    def is_by_me(self) -> bool:
        """Whether these are the rules of the program that runs."""
        mine = rules.current_rules()
        return (self.number, self.source) == (mine.number, mine.source)


def judgings(book: Book) -> list[Judging]:
    """Return every judging, the last first."""
    rows = book.db.conn.execute(f"SELECT {_COLUMNS} FROM rules ORDER BY no DESC")  # noqa: S608
    return [Judging(*row) for row in rows]


def last_judging(book: Book) -> Judging | None:
    """Return the last judging, under way or done; None in a book that has not been opened yet."""
    row = book.db.conn.execute(f"SELECT {_COLUMNS} FROM rules ORDER BY no DESC LIMIT 1").fetchone()  # noqa: S608
    return Judging(*row) if row else None


def adopt_rules(book: Book) -> bool:
    """Put every entry on the list where the book was last judged by other rules, inside a write; say whether it was.

    Whoever changes how families are tied (amendments, rings) adds a step that folds all anew besides: schema.py.
    """
    mine, last = rules.current_rules(), last_judging(book)
    if last and last.is_by_me:
        return False
    conn = book.db.conn
    if last and (last.number, last.digest) == (mine.number, mine.digest):
        conn.execute("UPDATE rules SET source = ? WHERE no = ?", (mine.source, last.no))
        return False
    end_judging(book)  # what was not worked off under the rules before is worked off under these
    now = utc_text(datetime.now(UTC))
    conn.execute(
        "INSERT INTO rules (number, source, digest, parts, version, begun_at) VALUES (?, ?, ?, ?, ?, ?)",
        (mine.number, mine.source, mine.digest, json.dumps(mine.parts), VERSION, now),
    )
    conn.execute("INSERT OR IGNORE INTO unjudged SELECT order_key FROM folded")
    if not conn.execute("SELECT EXISTS (SELECT 1 FROM unjudged)").fetchone()[0]:
        end_judging(book)
    return True


def end_judging(book: Book) -> None:
    """Note that all is judged by the last rules, inside a write."""
    book.db.conn.execute("DELETE FROM differences WHERE before = after")
    now = utc_text(datetime.now(UTC))
    book.db.conn.execute("UPDATE rules SET done_at = ? WHERE done_at IS NULL", (now,))


def say_how_judged(book: Book) -> str:
    """Return by which rules the book is judged, and whether all of it is, in a sentence."""
    last = last_judging(book)
    if last is None:
        return "Not judged by any rules yet."
    is_any = book.db.conn.execute("SELECT EXISTS (SELECT 1 FROM unjudged)").fetchone()[0]
    how_far = "Not all is judged yet" if last.done_at is None or is_any else "All is judged"
    return f"{how_far} by {last.words}."


def changed_parts(book: Book, judging: Judging) -> list[str]:
    """Return the names of the parts in which the rules of a judging differ from those before; empty for the first."""
    before = next((one for one in judgings(book) if one.no < judging.no), None)
    if before is None:
        return []
    return [name for name, digest in judging.parts.items() if before.parts.get(name) != digest]
