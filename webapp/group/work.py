"""A site's fold in the group: its entries and registry in a working book of this machine, folded by the book's code.

The file can be thrown away at any time: it is made again from the group's record. What a settling has changed is noted
in it by triggers, so that exactly that is published, even where the program ended in between.
"""

from __future__ import annotations

import json
import secrets
from pathlib import Path

from webapp.book.fold import fold, unjudged
from webapp.book.fold.families import Fresh
from webapp.book.opening import open_book
from webapp.book.record import log
from webapp.book.record.rows import LogRow, row_of
from webapp.book.record.store import Book
from webapp.group.parts import SORTS
from webapp.group.registry import Item
from webapp.group.sites import StoredRow
from webapp.kinds.entry import Entry
from webapp.kinds.key import neighbours_key, vessel_key

# Published table -> the column that its changes are noted by.
NOTED = {"flows": "entry", "fills": "id", "bottlings": "id", "runs": "id", "month_sums": "month"}
_OTHER = """
CREATE TABLE IF NOT EXISTS group_work (name TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS to_publish (tab TEXT NOT NULL, key TEXT NOT NULL, PRIMARY KEY (tab, key))
    STRICT, WITHOUT ROWID;
"""
_OWN = ("id", "kind", "kind_version", "read_at", "typed_at", "person", "device", "seq")


class Work:
    """The working book of one site. One thread writes; pages read `book`."""

    def __init__(self, folder: Path, site: str) -> None:
        self.site, self.path = site, folder / f"{site}.sqlite"
        self.book = self._open()

    def begin_anew(self) -> None:
        """Throw the file away and begin with an empty one."""
        self.book.close()
        for path in self.path.parent.glob(f"{self.path.name}*"):
            path.unlink()
        self.book = self._open()

    @property
    def id(self) -> str:
        """The id of this very file: a new file is published whole."""
        return self._said("id")

    @property
    def registry_turn(self) -> int:
        """The last turn of the registry that has been taken in."""
        return int(self._said("registry_turn"))

    def take(self, rows: list[StoredRow], items: list[Item], registry_turn: int) -> None:
        """Take in rows of the group's log that follow on, and changed rows of the registry, and fold them."""
        with self.book.write() as database:
            for item in items:
                self._register(item)
            fresh = Fresh()
            made = [_entry_row(row, fresh) for row in rows]
            log.append_rows(self.book, made)
            for row, mine in zip(rows, made, strict=True):
                assert row["digest"] == mine["digest"], "rows that do not follow on"
                fold.note_entry(self.book, mine, fresh[mine["id"]][1])
            fold.settle(self.book, fresh)
            database.conn.execute("REPLACE INTO group_work VALUES ('registry_turn', ?)", (str(registry_turn),))

    def changed(self) -> dict[str, list[str]]:
        """Return the keys that have changed since they were last published, by table."""
        found: dict[str, list[str]] = {table: [] for table in NOTED}
        for row in self.book.query("SELECT tab, key FROM to_publish"):
            found[row["tab"]].append(row["key"])
        return found

    def note_all(self) -> None:
        """Note every key as changed: the group has nothing of this file yet."""
        with self.book.write() as database:
            for table, key in NOTED.items():
                database.conn.execute(
                    f"INSERT OR IGNORE INTO to_publish SELECT DISTINCT '{table}', {key} FROM {table}"  # noqa: S608
                )

    def published(self) -> None:
        """Forget the noted changes: they are published."""
        with self.book.write() as database:
            database.conn.execute("DELETE FROM to_publish")

    def _open(self) -> Book:
        book = open_book(self.path)
        with book.write() as database:
            database.executescript(_OTHER)
            for table, key in NOTED.items():
                for event, side in (("INSERT", "new"), ("DELETE", "old"), ("UPDATE", "new")):
                    # Not "or ignore": the statement that sets a trigger off says what happens at a conflict in it.
                    noting = (
                        f"INSERT INTO to_publish SELECT '{table}', {side}.{key} WHERE NOT EXISTS "  # noqa: S608
                        f"(SELECT 1 FROM to_publish WHERE tab = '{table}' AND key = {side}.{key})"
                    )
                    name = f"noted_{table}_{event}"
                    database.conn.execute(
                        f"CREATE TRIGGER IF NOT EXISTS {name} AFTER {event} ON {table} BEGIN {noting}; END"
                    )
            lines = [("id", secrets.token_hex(8)), ("registry_turn", "0")]
            database.conn.executemany("INSERT OR IGNORE INTO group_work VALUES (?, ?)", lines)
        return book

    def _said(self, name: str) -> str:
        return str((self.book.one("SELECT value FROM group_work WHERE name = ?", (name,)) or {})["value"])

    def _register(self, item: Item) -> None:
        """Write one row of the registry as the site has it, and mark the entries that it concerns to be worked out
        again.
        """
        book, sort = self.book, SORTS[item["sort"]]
        row = json.loads(item["body"]) if item["body"] is not None else None
        if item["sort"] == "vessel":
            old = book.one("SELECT size_class FROM vessels WHERE mark = ?", (item["key"],))
            sizes = {str(one["size_class"]) for one in (old, row) if one}
            unjudged.note_keys(book, vessel_key(item["key"]), *map(neighbours_key, sizes))
        elif item["sort"] in ("instrument", "person"):
            unjudged.note_keys(book, f"{item['sort'][0]}:{item['key']}")
        elif item["sort"] in ("limit", "site"):
            unjudged.note_places(book, unjudged.ALL)
        if row is None:
            self._take_out(sort.table, sort.key, item["key"])
        else:
            columns = list(sort.columns)
            marks = ", ".join(f":{name}" for name in columns)
            verb = "INSERT OR IGNORE" if item["sort"] in ("close", "clash") else "INSERT OR REPLACE"
            book.db.conn.execute(f"{verb} INTO {sort.table} ({', '.join(columns)}) VALUES ({marks})", row)
            if item["sort"] == "clash" and row["id"]:
                fold.note_clash(book, row["id"])
        book.memory.registry.clear()

    def _take_out(self, table: str, key: tuple[str, ...], value: str) -> None:
        if table in ("closes", "aside"):
            return  # part of the record: never taken out
        joined = " || '/' || ".join(key)
        self.book.db.conn.execute(f"DELETE FROM {table} WHERE {joined} = ?", (value,))  # noqa: S608


def _entry_row(row: StoredRow, fresh: Fresh) -> LogRow:
    """Return a row of the group's log as the book's own log has it."""
    entry: Entry = json.loads(row["body"])
    made = row_of(
        entry, row["body"], received_at=row["received_at"], via=row["via"], body_sha256=row["body_sha256"],
        skew_s=row["skew_s"],
    )
    fresh[made["id"]] = (made, entry)
    return made
