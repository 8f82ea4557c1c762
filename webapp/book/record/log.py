"""The log: the only module that writes entries. Appended once, chained by digest, never changed."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterable, Iterator, Sequence
from typing import Final, Unpack

from webapp.book.record import seals
from webapp.book.record.kept_json import from_text
from webapp.book.record.rows import Aside, AsideRow, Family, LinkedRow, Logged, LogRow, Wanted
from webapp.book.record.store import Book
from webapp.book.record.upcast import stored_mark
from webapp.words.travel import with_words

FIRST_DIGEST = "0" * 64
LIST_MOST = 1000
NUMBER_MOST = 2**53 - 1  # the largest whole number that every JSON reader takes
LAST = "last_entry"  # the setting that says where the book ends, so that entries cut off are missed
SALVAGED = "salvaged"  # the setting that names the gaps of a book that was salvaged
_COLUMNS = (
    "book_no", "id", "kind", "kind_version", "mark", "read_at", "typed_at", "person", "role", "device", "seq", "body",
    "body_sha256", "received_at", "skew_s", "via", "digest",
)
# The fold is found by its root: it has no index by entry, and a list must not read the whole of it.
JOIN_FOLDED = (
    "LEFT JOIN amendments a ON a.id = e.id LEFT JOIN folded f ON f.root = coalesce(a.root, e.id) AND f.entry = e.id"
)
# An entry that was amended has no standing of its own, and is read at the place of its family; without one, after all.
_SELECT = (
    "SELECT e.*, coalesce(a.root, e.id) AS root, CASE WHEN f.entry = e.id THEN f.standing END AS standing, "
    "coalesce(f.order_key, '~') AS order_key "
    "FROM entries e LEFT JOIN amendments a ON a.id = e.id LEFT JOIN folded f ON f.root = coalesce(a.root, e.id)"
)
_OPEN = "e.id IN (SELECT entry FROM queries WHERE answer = '' AND weight {})"


class _Selected(LogRow):
    root: str
    order_key: str
    standing: str | None


class _AsideFound(AsideRow):
    no: int


def canonical(value: object) -> str:
    """Return the JSON text that is kept and hashed: keys sorted, no spaces. ValueError where it holds a NaN."""
    return json.dumps(value, sort_keys=True, ensure_ascii=False, separators=(",", ":"), allow_nan=False)


def sha256(text: str) -> str:
    """Return the SHA-256 of a text. [64 hexadecimal digits]"""
    return hashlib.sha256(text.encode()).hexdigest()


def chain_digest(before: str, row: LinkedRow) -> str:
    """Return the digest of a row. It covers the digest before it, its number, its body's hash, and the way it came."""
    return _digest_with_skew(before, row, f"{float(row['skew_s']) + 0.0:.1f}")


def is_linked(before: str, row: LinkedRow) -> bool:
    """Return whether a row's digest follows from the digest before it and from the row's own columns."""
    if row["digest"] == chain_digest(before, row):
        return True
    # Once a clock a few hundredths of a second behind was hashed as -0.0; the database has kept that as 0.0.
    return not row["skew_s"] and row["digest"] == _digest_with_skew(before, row, "-0.0")


def _digest_with_skew(before: str, row: LinkedRow, skew: str) -> str:
    return sha256("\n".join((before, str(row["book_no"]), row["body_sha256"], row["received_at"], skew, row["via"])))


def load_head(book: Book) -> tuple[int, str]:
    """Return the last book number and its digest."""
    row = book.db.conn.execute("SELECT book_no, digest FROM entries ORDER BY book_no DESC LIMIT 1").fetchone()
    return (row[0], row[1]) if row else (0, FIRST_DIGEST)


def has_head(book: Book, head: Sequence[int | str]) -> bool:
    """Return whether the book has ever had this head. Then it still has every entry up to it."""
    number, digest = head
    row = book.one("SELECT digest FROM entries WHERE book_no = ?", (number,)) if number else {"digest": FIRST_DIGEST}
    return row is not None and row["digest"] == digest


def append_rows(book: Book, rows: list[LogRow]) -> None:
    """Append rows, inside a write: numbers and digests are given here and set in the rows."""
    book_no, digest = load_head(book)
    for row in rows:
        book_no += 1
        row["book_no"] = book_no
        digest = row["digest"] = chain_digest(digest, row)
    marks = ", ".join(f":{name}" for name in _COLUMNS)
    book.db.conn.executemany(f"INSERT INTO entries ({', '.join(_COLUMNS)}) VALUES ({marks})", rows)  # noqa: S608
    if rows:
        last = json.dumps([book_no, digest])
        book.db.conn.execute("INSERT OR REPLACE INTO settings VALUES (?, ?)", (LAST, last))


def load_entry(book: Book, entry_id: str) -> Logged | None:
    """Return one entry, or None."""
    row = book.row(_Selected, f"{_SELECT} WHERE e.id = ?", (entry_id,))
    return _dressed(row) if row else None


def get_all(book: Book, ids: Iterable[str]) -> dict[str, Logged]:
    """Return these entries as `get` does, by id, in one statement; one that is not in the book is left out."""
    wanted = json.dumps(sorted(set(ids)))
    rows = book.rows(_Selected, f"{_SELECT} WHERE e.id IN (SELECT value FROM json_each(?))", (wanted,))  # noqa: S608
    return {row["id"]: _dressed(row) for row in rows}


def find_entries(
    book: Book, *, kind: str | None = None, mark: str | None = None, person: str | None = None,
    device: str | None = None, since: str | None = None, until: str | None = None, weight: str | None = None,
    limit: int = 100, before: int | None = None,
) -> list[Logged]:
    """Return entries, newest book number first; `before` is the book number to go on below.

    `since` and `until` bound `received_at` (UTC texts, or days); `weight` keeps those with such a query open
    (`any` for stop or ask). At most LIST_MOST.
    """
    where: list[str] = ["1"]
    params: list[object] = []
    wanted: dict[str, object] = {
        "e.kind =": kind, "e.mark =": mark, "e.person =": person, "e.device =": device, "e.received_at >=": since,
        "e.received_at <": until, "e.book_no <": before,
    }
    for test, value in wanted.items():
        if value is not None:
            where.append(f"{test} ?")
            params.append(value)
    if weight == "any":
        where.append(_OPEN.format("<> 'note'"))
    elif weight:
        where.append(_OPEN.format("= ?"))
        params.append(weight)
    params.append(max(1, min(limit, LIST_MOST)))
    rows = book.rows(_Selected, f"{_SELECT} WHERE {' AND '.join(where)} ORDER BY e.book_no DESC LIMIT ?", params)
    return [_dressed(row) for row in rows]


def find_after(book: Book, after: int, kind: str | None = None, limit: int = 100) -> list[Logged]:
    """Return entries of a kind, or of all, with a book number above `after`, the smallest first. At most LIST_MOST."""
    sql = f"{_SELECT} WHERE e.book_no > ? AND ? IN (e.kind, '') ORDER BY e.book_no LIMIT ?"
    rows = book.rows(_Selected, sql, (after, kind or "", max(1, min(limit, LIST_MOST))))
    return [_dressed(row) for row in rows]


def find_standing(book: Book, mark: str, since: str, until: str = "~", limit: int = LIST_MOST) -> list[Logged]:
    """Return the entries about a vessel that have effect between two times (UTC texts), in the order of the fold."""
    sql = (
        f"{_SELECT} WHERE e.mark = ? AND f.entry = e.id AND f.order_key >= ? AND f.order_key <= ? || '~' "
        "ORDER BY f.order_key LIMIT ?"
    )
    return [_dressed(row) for row in book.rows(_Selected, sql, (mark, since, until, limit))]


def walk_entries(book: Book, **wanted: Unpack[Wanted]) -> Iterator[Logged]:
    """Yield every entry that `find` would, newest first, however many; a page of them is in memory at a time."""
    for rows in walk_pages(book, **wanted):
        yield from rows


def walk_pages(book: Book, **wanted: Unpack[Wanted]) -> Iterator[list[Logged]]:
    """Yield every entry that `find` would, newest first, in lists of LIST_MOST."""
    before: int | None = None
    while rows := find_entries(book, **wanted, before=before, limit=LIST_MOST):
        yield rows
        if len(rows) < LIST_MOST:
            return
        before = rows[-1]["book_no"]


def load_family(book: Book, entry_id: str) -> Family:
    """Return the family of an entry: `entry`, `root`, `effective` (its id), `members` (the chain of amendments, oldest
    book number first) and `answers` (to any of them).
    """
    parts = book.query(_FAMILY, (entry_id,))
    root = next((row["root"] for row in parts if row["root"]), entry_id)
    ids = [root, *(row["id"] for row in parts if row["part"] == "amends")]
    answering = [row["id"] for row in parts if row["part"] == "answers"]
    rows = get_all(book, [*ids, *answering, entry_id])
    effective = next((row["id"] for row in parts if row["part"] == "folded"), None)

    def in_order(some: list[str]) -> list[Logged]:
        return sorted((rows[one] for one in some if one in rows), key=lambda row: row["book_no"])

    return {
        "entry": rows.get(entry_id), "root": root, "effective": effective,
        "members": in_order(ids), "answers": in_order(answering),
    }


_ROOT = "coalesce((SELECT root FROM amendments WHERE id = ?1), ?1)"
_FAMILY = f"""
SELECT 'amends' AS part, id, root FROM amendments WHERE root = {_ROOT}
UNION ALL SELECT 'folded', entry, root FROM folded WHERE root = {_ROOT}
UNION ALL SELECT 'answers', id, NULL FROM answers WHERE entry = {_ROOT}
UNION ALL SELECT 'answers', id, NULL FROM answers WHERE entry IN (SELECT id FROM amendments WHERE root = {_ROOT})
"""  # noqa: S608


def root_of(book: Book, entry_id: str) -> str:
    """Return the id that its chain of amendments goes back to; its own where it amends nothing."""
    row = book.db.conn.execute("SELECT root FROM amendments WHERE id = ?", (entry_id,)).fetchone()
    return str(row[0]) if row else entry_id


def put_aside(book: Book, rows: Iterable[AsideRow]) -> None:
    """Keep refused and clashing bodies, each once, inside a write."""
    rows = list(rows)
    if not rows:
        return
    book.db.conn.executemany(
        "INSERT OR IGNORE INTO aside (id, device, seq, settled, body, body_sha256, problems, received_at, via) "
        "VALUES (:id, :device, :seq, :settled, :body, :body_sha256, :problems, :received_at, :via)",
        rows,
    )
    seals.carry_on(book, "aside")


def load_aside(
    book: Book, *, settled: str | None = None, entry_id: str | None = None, limit: int = 100
) -> list[Aside]:
    """Return the bodies that were put aside, newest first: refused ones and clashes, with `problems`."""
    rows = book.rows(
        _AsideFound,
        "SELECT * FROM aside WHERE (:settled IS NULL OR settled = :settled) AND (:id IS NULL OR id = :id) "
        "ORDER BY no DESC LIMIT :limit",
        {"settled": settled, "id": entry_id, "limit": max(1, min(limit, LIST_MOST))},
    )
    return [{**row, "problems": [with_words(one) for one in json.loads(row["problems"])]} for row in rows]


def verify(book: Book, *, but_salvaged: bool = False) -> list[str]:
    """Walk the whole chain and return what is broken, in sentences; an empty list where it holds.

    but_salvaged: without the gaps that were there when the book was salvaged; else it could never be backed up again.
    """
    troubles: list[str] = []
    known = _salvaged_gaps(book) if but_salvaged else set()
    before, expected_no = FIRST_DIGEST, 1
    for row in _walk_rows(book):
        number = row["book_no"]
        is_known = (expected_no, number - 1) in known
        if number != expected_no and not is_known:
            troubles.append(f"Book numbers {expected_no} to {number - 1} are missing.")
        if sha256(row["body"]) != row["body_sha256"]:
            troubles.append(f"The body of book number {number} is not what was entered.")
        troubles += find_strayed(row)
        if not is_known and not is_linked(before, row):
            troubles.append(f"The chain is broken at book number {number}: it, or one before it, was changed.")
        before, expected_no = row["digest"], number + 1
        if len(troubles) >= 20:
            return [*troubles, "There may be more. Compare with a backup."]
    last = book.one("SELECT value FROM settings WHERE name = ?", (LAST,))
    left_at = json.loads(last["value"])[0] if last else expected_no - 1
    if left_at != expected_no - 1:
        troubles.append(f"The book ends at number {expected_no - 1}; it was left at {left_at}.")
    return troubles


def _salvaged_gaps(book: Book) -> set[tuple[int, int]]:
    row = book.one("SELECT value FROM settings WHERE name = ?", (SALVAGED,))
    return {(low, high) for low, high in json.loads(row["value"])} if row else set()


def find_strayed(row: LogRow) -> list[str]:
    """Return a sentence for each column that no longer says what the body says."""
    try:
        body = json.loads(row["body"])
    except ValueError:
        return []
    if not isinstance(body, dict):
        return [f"The body of book number {row['book_no']} is no entry."]
    same: Final = ("id", "kind", "kind_version", "read_at", "typed_at", "person", "device", "seq")
    strayed: list[str] = [name for name in same if body.get(name) != row[name]]
    # These two are kept as they are used, not as they were handed in (rows.py).
    strayed += ["mark"] if (stored_mark(str(body.get("mark") or "")) or "") != row["mark"] else []
    strayed += ["role"] if (body.get("role") or "") != row["role"] else []
    return [f"Column {name} of book number {row['book_no']} does not say what its body says." for name in strayed]


def _walk_rows(book: Book) -> Iterator[LogRow]:
    at = 0
    while rows := book.rows(LogRow, "SELECT * FROM entries WHERE book_no > ? ORDER BY book_no LIMIT 500", (at,)):
        yield from rows
        at = rows[-1]["book_no"]


def _dressed(row: _Selected) -> Logged:
    standing = row["standing"]
    if standing is None:
        standing = "answer" if row["kind"] == "answer" else "amended"
    return {**row, "entry": from_text(row["body"]), "standing": standing}
