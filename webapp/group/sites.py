"""The sites of a group: let in once, known by the id of their book, each with its branches and its place in the log."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from datetime import datetime, timedelta
from typing import TypedDict

import psycopg
from psycopg.rows import DictRow

from webapp.book.record.clock import utc_text
from webapp.book.record.errors import BookError
from webapp.book.record.log import FIRST_DIGEST, canonical, chain_digest, sha256
from webapp.book.record.rows import LinkedRow
from webapp.group import schema
from webapp.group.store import Store

SITE_ID = re.compile(r"b-[0-9a-f]{8,32}\Z")
WALK = 1000
Conn = psycopg.Connection[DictRow]


class SiteState(TypedDict):
    """A site under its lock: the branch that it lengthens, and the one that is its book."""

    site: str
    tip: int
    effective: int


class Branch(TypedDict):
    """A branch of a site's book: the number at which it left its parent, and how far it goes."""

    fork_no: int
    parent: int | None
    cursor: int
    digest: str


class SentRow(LinkedRow):
    """A row of a site's book, as it is handed in and kept."""

    id: str
    body: str


class StoredRow(SentRow):
    """A row as the group keeps it."""

    site: str
    branch: int


class Waiting(TypedDict):
    """The facts that a person needs to decide about a branch."""

    branch: int
    fork_no: int
    cursor: int
    missing: int


class SiteRow(SiteState):
    """A site."""

    name: str
    no: int
    device: str
    let_in_at: str
    heard_at: str
    skew_s: float
    head_no: int
    head_digest: str
    trouble: str
    registry_turn: int
    checked_at: str
    checked_no: int
    checked: str


class _Listed(SiteRow):
    cursor: int
    digest: str
    folded_no: int | None
    fold_trouble: str | None
    folded_at: str | None
    this_week: int
    aside: int


class Listed(_Listed):
    """A site with its progress, the state of its fold, and the branch that waits for a person."""

    waiting: Waiting | None


class Stranger(BookError):
    """A device that hands in for a site which is not its own."""


def lock(conn: Conn, site: str, device: str, name: str, at: str, is_out: Callable[[str], bool]) -> SiteState:
    """Return the site's row, locked until the transaction ends: one hand-in of a site at a time.

    A site is let in at its first hand-in and belongs to that device, until somebody has shut that device out.
    Raises Stranger for any other.
    """
    row = conn.execute("SELECT * FROM sites WHERE site = %s FOR UPDATE", (site,)).fetchone()
    other = conn.execute("SELECT site FROM sites WHERE device = %s AND site <> %s", (device, site)).fetchone()
    if other or (row and row["device"] != device and not is_out(row["device"])):
        raise Stranger(
            "This code lets in another site than the book that was handed in. Ask the group's office for a code of "
            "your own; if the computer is new, they shut the old one out first."
        )
    if row and row["device"] != device:
        conn.execute("UPDATE sites SET device = %s WHERE site = %s", (device, site))
    elif not row:
        # Two first batches side by side: the second waits here, then finds the site let in.
        conn.execute("SELECT pg_advisory_xact_lock(%s)", (schema.LOCK_NO,))
        conn.execute(
            "INSERT INTO sites (site, name, device, let_in_at, heard_at, skew_s) VALUES (%s, %s, %s, %s, %s, 0) "
            "ON CONFLICT DO NOTHING",
            (site, name, device, at, at),
        )
        row = conn.execute("SELECT * FROM sites WHERE site = %s FOR UPDATE", (site,)).fetchone()
        if not row or row["device"] != device:
            raise Stranger("Another site was let in at the same moment. Try again.")
        if not conn.execute("SELECT 1 FROM branches WHERE site = %s", (site,)).fetchone():
            schema.make_room(conn, site, row["no"])
            open_branch(conn, site, 0, None, 0, FIRST_DIGEST, at)
    assert row is not None
    return {"site": row["site"], "tip": row["tip"], "effective": row["effective"]}


def open_branch(conn: Conn, site: str, branch: int, parent: int | None, fork_no: int, digest: str, at: str) -> None:
    """Begin a branch that goes on from a number of its parent; none is ever overwritten."""
    conn.execute(
        "INSERT INTO branches (site, branch, parent, fork_no, cursor, digest, opened_at) "
        "VALUES (%s, %s, %s, %s, %s, %s, %s)",
        (site, branch, parent, fork_no, fork_no, digest, at),
    )


def branches(conn: Conn, site: str) -> dict[int, Branch]:
    """Return the branches of a site by number."""
    rows = conn.execute("SELECT * FROM branches WHERE site = %s ORDER BY branch", (site,)).fetchall()
    return {
        row["branch"]: {
            "fork_no": row["fork_no"], "parent": row["parent"], "cursor": row["cursor"], "digest": row["digest"],
        }
        for row in rows
    }


def path(found: dict[int, Branch], branch: int) -> tuple[str, list[int]]:
    """Return the test, and its parameters, that picks the rows which make up a branch back to the first entry."""
    tests, params, most = [], list[int](), found[branch]["cursor"]
    at: int | None = branch
    while at is not None:
        one = found[at]
        tests.append("(branch = %s AND book_no > %s AND book_no <= %s)")
        params += [at, one["fork_no"], most]
        at, most = one["parent"], min(most, one["fork_no"])
    return f"({' OR '.join(tests)})", params


def rows_of(store: Store, site: str, branch: int, after: int, limit: int) -> list[StoredRow]:
    """Return the rows of a branch above a book number, in their order."""
    test, params = path(branches(store.connection(), site), branch)
    return store.rows(
        StoredRow,
        f"SELECT * FROM entries WHERE site = %s AND book_no > %s AND {test} ORDER BY book_no LIMIT %s",  # noqa: S608
        (site, after, *params, limit),
    )


def digest_at(store: Store, site: str, branch: int, book_no: int) -> str | None:
    """Return the digest that a branch has at a book number; None where it has no such number."""
    if book_no == 0:
        return FIRST_DIGEST
    found = rows_of(store, site, branch, book_no - 1, 1)
    return str(found[0]["digest"]) if found and found[0]["book_no"] == book_no else None


def verify(store: Store, site: str, branch: int) -> tuple[int, list[str]]:
    """Walk a branch's whole chain; return how far it goes and what is broken, in sentences."""
    troubles: list[str] = []
    before, expected = FIRST_DIGEST, 1
    for row in walk(store, site, branch):
        number = row["book_no"]
        if number != expected:
            troubles.append(f"Book numbers {expected} to {number - 1} are missing.")
        if sha256(row["body"]) != row["body_sha256"]:
            troubles.append(f"The body of book number {number} is not what was handed in.")
        if chain_digest(before, row) != row["digest"]:
            troubles.append(f"The chain is broken at book number {number}.")
        before, expected = row["digest"], number + 1
        if len(troubles) >= 20:
            break
    return expected - 1, troubles


def check(store: Store, site: str, branch: int, now: datetime) -> list[str]:
    """Verify a site, note the result and return sentences about faults."""
    number, troubles = verify(store, site, branch)
    with store.write() as conn:
        conn.execute(
            "UPDATE sites SET checked_at = %s, checked_no = %s, checked = %s WHERE site = %s",
            (utc_text(now), number, " ".join(troubles[:3]), site),
        )
    return troubles


def listed(store: Store, now: datetime) -> list[Listed]:
    """Return all sites with their progress, the state of their fold, and the branches that wait for a person."""
    week = utc_text(now - timedelta(days=7))
    rows = store.rows(
        _Listed,
        "SELECT s.*, b.cursor, b.digest, f.book_no AS folded_no, f.trouble AS fold_trouble, f.at AS folded_at, "
        "(SELECT count(*) FROM entries e WHERE e.site = s.site AND e.branch = s.effective AND e.received_at >= %s) "
        "AS this_week, (SELECT count(*) FROM aside a WHERE a.site = s.site) AS aside FROM sites s "
        "JOIN branches b ON b.site = s.site AND b.branch = s.effective LEFT JOIN folds f ON f.site = s.site "
        "ORDER BY s.name, s.site",
        (week,),
    )
    return [{**row, "waiting": _waiting(store, row) if row["tip"] != row["effective"] else None} for row in rows]


def take(store: Store, site: str, branch: int, by: str, now: datetime) -> None:
    """Make a branch the site's book from now on, by a person's choice; the other branch stays as it is.

    BookError if there is no such branch.
    """
    with store.write() as conn:
        conn.execute("SELECT 1 FROM sites WHERE site = %s FOR UPDATE", (site,))
        if branch not in branches(conn, site):
            raise BookError("There is no such branch of this site. Look at the list again.")
        conn.execute("UPDATE sites SET effective = %s WHERE site = %s", (branch, site))
        conn.execute(
            "UPDATE branches SET taken_at = %s, taken_by = %s WHERE site = %s AND branch = %s",
            (utc_text(now), by, site, branch),
        )


def put_aside(conn: Conn, site: str, settled: str, row: object, words: str, at: str) -> None:
    """Keep rows that were refused or came from a stranger; each once."""
    said = row if isinstance(row, dict) else {}
    number = said.get("book_no")
    text = canonical(row).replace("\\u0000", "\\ufffd")[:100_000]
    conn.execute(
        "INSERT INTO aside (site, settled, book_no, id, row, row_sha256, words, received_at) "
        "VALUES (%s, %s, %s, %s, %s, %s, %s, %s) ON CONFLICT DO NOTHING",
        (site, settled, number if isinstance(number, int) and 0 < number < 2**53 else None, None, text, sha256(text),
         words, at),
    )


def _waiting(store: Store, row: _Listed) -> Waiting:
    """Return the facts that a person needs to decide about a branch: its beginning, and the entries of the other branch
    that it lacks.
    """
    found = branches(store.connection(), row["site"])
    (mine, mine_params), (its, its_params) = path(found, row["effective"]), path(found, row["tip"])
    missing = store.one(
        f"SELECT count(*) AS n FROM (SELECT id FROM entries WHERE site = %s AND {mine} EXCEPT "  # noqa: S608
        f"SELECT id FROM entries WHERE site = %s AND {its}) x",
        (row["site"], *mine_params, row["site"], *its_params),
    )
    tip = found[row["tip"]]
    return {
        "branch": row["tip"], "fork_no": tip["fork_no"], "cursor": tip["cursor"],
        "missing": missing["n"] if missing else 0,
    }


def walk(store: Store, site: str, branch: int) -> Iterator[StoredRow]:
    at = 0
    while rows := rows_of(store, site, branch, at, WALK):
        yield from rows
        at = rows[-1]["book_no"]
