"""Intake of the group: a batch of a site's rows is settled row by row, in one transaction.

A row is proved by its own digest: it goes over the one before, so a row follows from what the group has, or it does
not. What follows from an older number differently is another branch of that site's book, kept beside the first until
a person decides. What follows from nothing is kept aside. Nothing is overwritten.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping
from datetime import datetime
from typing import NotRequired, TypedDict

from webapp.book.record.clock import measured_skew, utc_text
from webapp.book.record.errors import BookError
from webapp.book.record.log import FIRST_DIGEST, canonical, chain_digest, sha256
from webapp.book.record.soundness import check_entry
from webapp.group import registry, sites
from webapp.group.sites import SITE_ID, Conn, SentRow, SiteState
from webapp.group.store import Store
from webapp.words import sentence

BATCH_MOST = 200
BRANCHES_MOST = 100
NAME_MOST = 80
HEADS_MOST, HEAD_MOST = 20, 600  # lines, characters
_TEXTS = {"body": 64_000, "received_at": 40, "via": 20, "digest": 64}


class Place(TypedDict):
    """How much of a site's book the group has."""

    cursor: int
    digest: str
    branch: int


class PlaceAsked(Place):
    """The same, with the digest at a number that was asked about, and the signed heads that came with it last."""

    at: str | None
    heads: list[str]


class Said(TypedDict):
    """What is wrong with a row."""

    code: str
    field: str
    words: str


class Result(TypedDict):
    """A receipt for one row: `entered`, `known`, `gap`, `clash` or `refused`."""

    id: str | None
    settled: str
    book_no: NotRequired[int]
    received_at: NotRequired[str]
    digest: NotRequired[str]
    gap: NotRequired[list[int]]
    problems: NotRequired[list[Said]]


class Answer(Place):
    """The answer to a batch, as docs/hand-in.md has it."""

    server_now: str
    skew_s: float
    results: list[Result]
    trouble: str


class Held(TypedDict):
    """A row that the group has, of any branch."""

    branch: int
    book_no: int
    id: str
    body_sha256: str
    digest: str


def hand_in(
    store: Store, batch: object, *, device: str, now: datetime, is_out: Callable[[str], bool] = lambda _: False
) -> Answer:
    """Settle a batch and return the answer as docs/hand-in.md has it, without `marker` and `ok`.

    `is_out` says whether a device was shut out. Raises BookError where it is no batch, sites.Stranger where the device
    is another site's; that too is kept.
    """
    said = batch if isinstance(batch, dict) else {}
    site, rows, items = _read(said)
    at = utc_text(now)
    name = str(said.get("name") or site)[:NAME_MOST].replace("\x00", "")
    try:
        with store.write() as conn:
            state = sites.lock(conn, site, device, name, at, is_out)
            desk = _Desk(conn, state, at)
            results = desk.settle(rows)
            turn = registry.keep(conn, site, items, at)
            skew_s = measured_skew(said.get("now"), now)
            head_no, head_digest = _head(said)
            trouble = desk.trouble or desk.compare(head_no, head_digest)
            conn.execute(
                "UPDATE sites SET name = %s, heard_at = %s, skew_s = %s, head_no = %s, head_digest = %s, trouble = %s, "
                "tip = %s, registry_turn = %s WHERE site = %s",
                (name, at, skew_s, head_no, head_digest, trouble, desk.tip, turn, site),
            )
            if heads := _heads(said):
                conn.execute("UPDATE sites SET heads = %s WHERE site = %s", (heads, site))
            return {**desk.place(), "server_now": at, "skew_s": skew_s, "results": results, "trouble": trouble}
    except sites.Stranger as error:
        with store.write() as conn:
            sites.put_aside(conn, site, "stranger", {"device": device, "book_id": site}, str(error), at)
        raise


def load_place(store: Store, site: str, book_no: int | None = None) -> PlaceAsked:
    """Return the part of a site's book that the group has: cursor and digest; also the digest at another number, if
    one is asked about.
    """
    row = store.one("SELECT tip, registry_turn, heads FROM sites WHERE site = %s", (site,))
    if row is None:
        return {"cursor": 0, "digest": FIRST_DIGEST, "branch": 0, "at": None, "heads": []}
    tip = sites.branches(store.connection(), site)[row["tip"]]
    asked = None if book_no is None else sites.digest_at(store, site, row["tip"], book_no)
    return {"cursor": tip["cursor"], "digest": tip["digest"], "branch": row["tip"], "at": asked,
            "heads": row["heads"].splitlines()}


class _Desk:
    """One batch on its way in. Inside a write, with the site's row locked."""

    def __init__(self, conn: Conn, state: SiteState, at: str) -> None:
        self.trouble = ""
        self.tip = int(state["tip"])
        self._conn, self._site, self._at = conn, str(state["site"]), at
        self._effective = int(state["effective"])
        self._branches = sites.branches(conn, self._site)
        self._fresh: list[tuple[object, ...]] = []
        self._held: dict[int, dict[str, Held]] = {}  # book number -> digest -> row, of every branch
        self._ids: dict[str, list[Held]] = {}  # id -> its rows, of every branch

    def settle(self, rows: list[object]) -> list[Result]:
        """Judge each row, write what is to be kept, and return a result for each, in order."""
        read = [_row(row) for row in rows]
        self._look_up([row for row, _, _ in read if row])
        results = [self._judge(raw, *one) for raw, one in zip(rows, read, strict=True)]
        with self._conn.cursor() as cursor:
            cursor.executemany(
                "INSERT INTO entries (site, branch, book_no, id, body, body_sha256, received_at, skew_s, via, digest) "
                "VALUES (%s, %s, %s, %s, %s, %s, %s, %s, %s, %s)",
                self._fresh,
            )
            cursor.executemany(
                "UPDATE branches SET cursor = %s, digest = %s WHERE site = %s AND branch = %s",
                [(one["cursor"], one["digest"], self._site, number) for number, one in self._branches.items()],
            )
        return results

    def place(self) -> Place:
        """Return the part of this site's book that the group has: the last number and its digest."""
        tip = self._branches[self.tip]
        return {"cursor": tip["cursor"], "digest": tip["digest"], "branch": self.tip}

    def compare(self, head_no: int, head_digest: str) -> str:
        """Return a sentence where a site's book is shorter than the group's copy of it; empty where it is not."""
        tip = self._branches[self.tip]
        if self.tip != self._effective:
            return f"The site's book went on differently from number {tip['fork_no'] + 1}. A person decides."
        if head_digest and head_no < tip["cursor"]:
            return f"The site's book ends at number {head_no}; the group has it to {tip['cursor']}. Was it restored?"
        return ""

    def _look_up(self, rows: list[SentRow]) -> None:
        numbers = {row["book_no"] for row in rows} | {row["book_no"] - 1 for row in rows}
        found = self._conn.execute(
            "SELECT branch, book_no, id, body_sha256, digest, received_at FROM entries "
            "WHERE site = %s AND (book_no = ANY(%s) OR id = ANY(%s))",
            (self._site, list(numbers), [row["id"] for row in rows]),
        ).fetchall()
        for row in found:
            self._hold({
                "branch": row["branch"], "book_no": row["book_no"], "id": row["id"],
                "body_sha256": row["body_sha256"], "digest": row["digest"],
            })

    def _hold(self, row: Held) -> None:
        self._held.setdefault(row["book_no"], {})[row["digest"]] = row
        self._ids.setdefault(row["id"], []).append(row)

    def _judge(self, raw: object, row: SentRow | None, problem: str, code: str) -> Result:
        if row is None:
            return self._refuse(raw, None, code, problem)
        number, digest = row["book_no"], row["digest"]
        known = self._held.get(number, {}).get(digest)
        before = self._before(row)
        # A digest goes over all that came before: where it is the same, the whole past is the same.
        if known and known["body_sha256"] == row["body_sha256"] and chain_digest(before or "", row) == digest:
            return self._result(row, "known")
        if before is None:
            cursor = self._branches[self.tip]["cursor"]
            if number > cursor + 1 and number - 1 not in self._held:
                gap = [cursor + 1, number - 1]
                self.trouble = self.trouble or f"Book numbers {gap[0]} to {gap[1]} have not come."
                return {**self._result(row, "gap"), "gap": gap}
            words = f"The digest of book number {number} does not follow from the one before it."
            return self._refuse(raw, row, "bad_digest", words)
        branch = self._branch_for(row, before)
        if branch is None:
            return self._refuse(raw, row, "too_many", "This book has gone on differently too often. Ask the group.")
        for twice in self._ids.get(row["id"], []):
            if twice["body_sha256"] != row["body_sha256"] or self._is_on(branch, twice):
                words = f"This id is in the book already, under number {twice['book_no']}. A person decides."
                return self._refuse(raw, row, "clash", words, "clash")
        self._enter(branch, row)
        # Off the branch in effect it is kept, and no more: a person decides which of the two is the book.
        return self._result(row, "entered" if branch == self._effective else "clash")

    def _before(self, row: SentRow) -> str | None:
        """Return the digest, of any branch, that this row follows from; None where there is none."""
        if row["book_no"] == 1:
            return FIRST_DIGEST if chain_digest(FIRST_DIGEST, row) == row["digest"] else None
        for digest in self._held.get(row["book_no"] - 1, ()):
            if chain_digest(digest, row) == row["digest"]:
                return digest
        return None

    def _branch_for(self, row: SentRow, before: str) -> int | None:
        """Return the branch that this row lengthens.

        A row that forks begins a new branch; None where there are too many.
        """
        fork_no = row["book_no"] - 1
        for number in [self.tip, *(number for number in self._branches if number != self.tip)]:
            if (self._branches[number]["cursor"], self._branches[number]["digest"]) == (fork_no, before):
                self.tip = number
                return number
        if len(self._branches) >= BRANCHES_MOST:
            return None
        made = max(self._branches) + 1
        parent = self._held[fork_no][before]["branch"] if fork_no else None
        sites.open_branch(self._conn, self._site, made, parent, fork_no, before, self._at)
        self._branches[made] = {"fork_no": fork_no, "parent": parent, "cursor": fork_no, "digest": before}
        self.tip = made
        return made

    def _is_on(self, branch: int, row: Held) -> bool:
        """Return whether a row belongs to a branch or to the stretch that the branch goes back to."""
        at: int | None = branch
        most = row["book_no"]
        while at is not None and at != row["branch"]:
            most = min(most, self._branches[at]["fork_no"])
            at = self._branches[at]["parent"]
        return at is not None and row["book_no"] <= most

    def _enter(self, branch: int, row: SentRow) -> None:
        self._branches[branch] |= {"cursor": row["book_no"], "digest": row["digest"]}
        self._hold({
            "branch": branch, "book_no": row["book_no"], "id": row["id"], "body_sha256": row["body_sha256"],
            "digest": row["digest"],
        })
        self._fresh.append((
            self._site, branch, row["book_no"], row["id"], row["body"], row["body_sha256"], row["received_at"],
            row["skew_s"], row["via"], row["digest"],
        ))

    def _result(self, row: SentRow, settled: str) -> Result:
        return {
            "id": row["id"], "book_no": row["book_no"], "received_at": row["received_at"], "digest": row["digest"],
            "settled": settled,
        }

    def _refuse(
        self, raw: object, row: SentRow | None, code: str, words: str, settled: str = "refused"
    ) -> Result:
        self.trouble = self.trouble or words
        sites.put_aside(self._conn, self._site, settled, raw, words, self._at)
        result: Result = {
            "id": row["id"] if row else None, "settled": settled,
            "problems": [{"code": code, "field": "", "words": words}],
        }
        if row:
            result["book_no"] = row["book_no"]
        return result


def _read(said: Mapping[str, object]) -> tuple[str, list[object], list[object]]:
    site, rows, items = said.get("book_id"), said.get("entries"), said.get("registry", [])
    if not isinstance(site, str) or not SITE_ID.match(site):
        raise BookError("The batch names no book. Hand in from a site's book, with `cellarslate group-send`.")
    if not isinstance(rows, list) or not isinstance(items, list):
        raise BookError("The batch holds no list of entries. Update the program at the site and send again.")
    if len(rows) > BATCH_MOST or len(items) > BATCH_MOST:
        raise BookError(f"A batch has at most {BATCH_MOST} entries. Send it in halves.")
    return site, rows, items


def _heads(batch: Mapping[str, object]) -> str:
    """Return the signed heads of a batch as lines, as they came; the site alone reads them."""
    heads = batch.get("heads")
    lines = [line for line in heads[:HEADS_MOST] if isinstance(line, str)] if isinstance(heads, list) else []
    return "\n".join(line for line in lines if line.isascii() and line.isprintable() and len(line) <= HEAD_MOST)


def _head(batch: Mapping[str, object]) -> tuple[int, str]:
    head = batch.get("head")
    if isinstance(head, list) and len(head) == 2 and isinstance(head[0], int) and 0 <= head[0] < 2**53:
        return head[0], str(head[1])[:64].replace("\x00", "")
    return 0, ""


def _row(raw: object) -> tuple[SentRow | None, str, str]:
    """Return (row as the group keeps it, "", ""), or (None, reason, code) where it cannot be kept."""
    said = raw if isinstance(raw, dict) else {}
    number, skew = said.get("book_no"), said.get("skew_s")
    is_row = type(skew) in (int, float) and all(_is_text(said, *limit) for limit in _TEXTS.items())
    if type(number) is not int or not 0 < number < 2**53 or not is_row:
        return None, "This is no row of a book. Update the program at the site.", "malformed"
    try:
        body = json.loads(said["body"])
        is_same = isinstance(body, dict) and canonical(body) == said["body"]
    except (ValueError, RecursionError):
        is_same = False
    if not is_same:
        return None, f"The body of book number {number} is not in its canonical form.", "malformed"
    problems, _ = check_entry(body)
    if problems:
        return None, f"Book number {number}: {sentence(problems[0].message)}", problems[0].code
    row: SentRow = {
        "body": said["body"], "received_at": said["received_at"], "via": said["via"], "digest": said["digest"],
        "book_no": number, "skew_s": float(skew or 0), "id": body["id"], "body_sha256": sha256(said["body"]),
    }
    return row, "", ""


def _is_text(said: Mapping[str, object], name: str, most: int) -> bool:
    text = said.get(name)
    return isinstance(text, str) and len(text) <= most and "\x00" not in text
