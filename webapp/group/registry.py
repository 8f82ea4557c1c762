"""A site's registry in the group: each row a version, the newest counts. The fold needs it; secrets never travel."""

from __future__ import annotations

import json
from collections.abc import Iterable
from typing import TypedDict

from webapp.book.record.log import canonical, sha256
from webapp.group.parts import SORTS
from webapp.group.sites import Conn
from webapp.group.store import Store

BODY_MOST = 200_000


class Item(TypedDict):
    """A version of a row of a site's registry; its body as JSON, or None where it was taken out."""

    sort: str
    key: str
    version: int
    turn: int
    body: str | None
    sha256: str


def keep(conn: Conn, site: str, items: Iterable[object], at: str) -> int:
    """Keep the rows that are new or changed, inside the site's write; return the site's turn after it."""
    row = conn.execute("SELECT registry_turn FROM sites WHERE site = %s", (site,)).fetchone()
    turn = int((row or {"registry_turn": 0})["registry_turn"])
    for item in items:
        read = _read(item)
        if read is None:
            continue
        sort, key, body = read
        last = conn.execute(
            "SELECT version, body FROM registry WHERE site = %s AND sort = %s AND key = %s "
            "ORDER BY version DESC LIMIT 1",
            (site, sort, key),
        ).fetchone()
        if (last["body"] if last else None) == body:
            continue
        turn += 1
        conn.execute(
            "INSERT INTO registry VALUES (%s, %s, %s, %s, %s, %s, %s, %s)",
            (site, sort, key, last["version"] + 1 if last else 1, turn, body, sha256(body or ""), at),
        )
    return turn


def newest(store: Store, site: str, after_turn: int = 0) -> list[Item]:
    """Return the newest version of every row that has changed after a turn."""
    rows = store.rows(
        Item,
        "SELECT DISTINCT ON (sort, key) sort, key, version, turn, body, sha256 FROM registry WHERE site = %s "
        "ORDER BY sort, key, version DESC",
        (site,),
    )
    return [row for row in rows if row["turn"] > after_turn]


def _read(item: object) -> tuple[str, str, str | None] | None:
    """Return (sort, key, body) of an item that can be kept, or None. Unknown columns are left out."""
    said = item if isinstance(item, dict) else {}
    sort, key, body = said.get("sort"), said.get("key"), said.get("body")
    if sort not in SORTS or not isinstance(key, str) or len(key) > 400 or "\x00" in key:
        return None
    if body is None:
        return sort, key, None
    try:
        row = json.loads(body) if isinstance(body, str) and len(body) <= BODY_MOST else None
    except ValueError:
        row = None
    if not isinstance(row, dict) or "\\u0000" in body or set(SORTS[sort].columns) - set(row):
        return None
    return sort, key, canonical({name: row[name] for name in SORTS[sort].columns})
