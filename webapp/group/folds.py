"""Keeps every site's fold in step with its entries, and publishes changes into the group's tables."""

from __future__ import annotations

import json
import logging
import threading
from datetime import UTC, datetime, timedelta
from pathlib import Path

from psycopg import sql

from webapp.book.fold import unjudged
from webapp.book.record import log
from webapp.book.record.clock import utc_text
from webapp.group import registry, sites
from webapp.group.sites import SiteRow
from webapp.group.store import GroupBusy, Store
from webapp.group.work import NOTED, Work

FOLD_LOCK = 0x43534C46  # "CSLF": one server publishes
ROWS_MOST = 1000
LOOK_EVERY_S = 5.0
CHECK_EVERY = timedelta(hours=24)
_log = logging.getLogger("cellarslate.group")
_PAPERS = {
    "account_move": ("serial", "to_whom"), "receipt": ("document", "consignor"),
    "dispatch": ("document", "to_whom"), "goods_receipt": ("document", "consignor"),
}  # document, the other side


class Folds:
    """The working books of all sites. `step` brings one up to date; `run` does so for as long as the server runs."""

    def __init__(self, store: Store, folder: Path) -> None:
        folder.mkdir(parents=True, exist_ok=True, mode=0o700)
        self._store, self._folder = store, folder
        self._works: dict[str, Work] = {}
        self._door = threading.Lock()
        self.wake, self._stopped = threading.Event(), threading.Event()
        self._lock_holder: sites.Conn | None = None

    def work(self, site: str) -> Work:
        """Return the working book of a site."""
        with self._door:
            if site not in self._works:
                self._works[site] = Work(self._folder, site)
            return self._works[site]

    def all_works(self) -> list[tuple[SiteRow, Work]]:
        """Return every site's row with its working book, by name."""
        rows = self._store.rows(SiteRow, "SELECT * FROM sites ORDER BY name, site")
        return [(row, self.work(row["site"])) for row in rows]

    def step(self, *, is_publishing: bool = True) -> None:
        """Bring every site up to date once."""
        for row in self._store.rows(SiteRow, "SELECT * FROM sites ORDER BY site"):
            try:
                self._follow(row, is_publishing)
            except GroupBusy:
                raise
            except Exception as error:
                # One site's trouble must not hold up the others; it is shown beside its name.
                _log.exception("fold of %s", row["site"])
                self._note_trouble(row["site"], f"Its fold stopped: {error}")

    def run(self) -> None:
        """Follow the log until stopped."""
        while not self._stopped.is_set():
            try:
                self.step(is_publishing=self._may_publish())
                self._check_one()
            except GroupBusy as error:  # it may be away for a while
                _log.warning("folds: %s", error)
            except Exception:
                _log.exception("folds")
            self.wake.wait(LOOK_EVERY_S)
            self.wake.clear()

    def stop(self) -> None:
        """End after the site under way."""
        self._stopped.set()
        self.wake.set()

    def close(self) -> None:
        """Close the working books."""
        with self._door:
            for work in self._works.values():
                work.book.close()
            self._works.clear()
        if self._lock_holder is not None:
            self._lock_holder.close()

    def _follow(self, row: SiteRow, is_publishing: bool) -> None:
        site, branch = row["site"], row["effective"]
        work = self.work(site)
        number, digest = log.load_head(work.book)
        if sites.digest_at(self._store, site, branch, number) != digest:
            work.begin_anew()  # another branch counts now, or the group itself was restored
            number = 0
        while True:
            rows = sites.rows_of(self._store, site, branch, number, ROWS_MOST)
            is_behind = work.registry_turn < row["registry_turn"]
            items = registry.newest(self._store, site, work.registry_turn) if is_behind else []
            if not rows and not items:
                break
            work.take(rows, items, max([work.registry_turn, *(item["turn"] for item in items)]))
            number = rows[-1]["book_no"] if rows else number
        unjudged.judge_all(work.book)
        if is_publishing:
            self._publish(work, row)

    def _publish(self, work: Work, row: SiteRow) -> None:
        site = work.site
        held = self._store.one("SELECT * FROM folds WHERE site = %s", (site,))
        number, digest = log.load_head(work.book)
        is_new = not held or held["work_id"] != work.id
        if is_new:
            work.note_all()
        changed = work.changed()
        place = (row["effective"], number, digest, work.registry_turn)
        if not is_new and held and not any(changed.values()) and place == (
            held["branch"], held["book_no"], held["digest"], held["registry_turn"]
        ) and not held["trouble"]:
            return
        with self._store.write() as conn:
            for table, keys in changed.items():
                _replace(conn, work, table, keys, is_whole=is_new)
            conn.execute(
                "INSERT INTO folds VALUES (%s, %s, %s, %s, %s, %s, 1, %s, '') ON CONFLICT (site) DO UPDATE SET "
                "work_id = excluded.work_id, branch = excluded.branch, book_no = excluded.book_no, trouble = '', "
                "digest = excluded.digest, registry_turn = excluded.registry_turn, turn = folds.turn + 1, "
                "at = excluded.at",
                (site, work.id, *place, utc_text(datetime.now(UTC))),
            )
        work.published()

    def _note_trouble(self, site: str, words: str) -> None:
        with self._store.write() as conn:
            conn.execute(
                "INSERT INTO folds VALUES (%s, '', 0, 0, '', 0, 1, '', %s) ON CONFLICT (site) DO UPDATE SET "
                "trouble = excluded.trouble",
                (site, words[:300].replace("\x00", "")),
            )

    def _check_one(self) -> None:
        """Verify the chain of the site that was checked longest ago, once a day."""
        now = datetime.now(UTC)
        row = self._store.one(
            "SELECT site, effective FROM sites WHERE checked_at < %s ORDER BY checked_at LIMIT 1",
            (utc_text(now - CHECK_EVERY),),
        )
        if row:
            sites.check(self._store, row["site"], row["effective"], now)

    def _may_publish(self) -> bool:
        """Take the lock of the one publisher, or keep it where this process has it already."""
        conn = self._store.connection()
        if conn is not self._lock_holder:
            found = conn.execute("SELECT pg_try_advisory_lock(%s) AS got", (FOLD_LOCK,)).fetchone()
            self._lock_holder = conn if found and found["got"] else None
        return self._lock_holder is conn


def _replace(conn: sites.Conn, work: Work, table: str, keys: list[str], *, is_whole: bool) -> None:
    """Replace the group's rows of these keys by the site's own."""
    key = NOTED[table]
    if is_whole:
        conn.execute(f"DELETE FROM {table} WHERE site = %s".encode(), (work.site,))  # noqa: S608
    elif keys:
        conn.execute(f"DELETE FROM {table} WHERE site = %s AND {key} = ANY(%s)".encode(), (work.site, keys))  # noqa: S608
    for at in range(0, len(keys), 500):
        some = keys[at : at + 500]
        marks = ", ".join("?" * len(some))
        rows = work.book.query(f"SELECT * FROM {table} WHERE {key} IN ({marks})", some)  # noqa: S608
        if table == "flows":
            _dress(work, rows)
        if not rows:
            continue
        columns = ["site", *rows[0]]
        names = sql.SQL(", ").join(map(sql.Identifier, columns))
        with conn.cursor().copy(sql.SQL("COPY {} ({}) FROM STDIN").format(sql.Identifier(table), names)) as copy:
            for row in rows:
                copy.write_row((work.site, *row.values()))


def _dress(work: Work, rows: list[dict[str, object]]) -> None:
    """Add to each flow its place in the fold, and to flows over the border the names on their papers."""
    for row in rows:
        found = work.book.one(
            "SELECT f.order_key, e.kind, e.body FROM entries e LEFT JOIN amendments a ON a.id = e.id "
            "LEFT JOIN folded f ON f.root = coalesce(a.root, e.id) WHERE e.id = ?",
            (row["entry"],),
        ) or {"order_key": None, "kind": "", "body": "{}"}
        row |= {"order_key": found["order_key"] or f"{row['at']}|{row['entry']}", "document": "", "whom": ""}
        names = _PAPERS.get(found["kind"])
        is_border = row["target"] == "out:removed" or row["source"] in ("out:received", "out:returned")
        if names and is_border:
            said = json.loads(found["body"])["values"]
            row["document"], row["whom"] = (str((said.get(n) or {}).get("raw") or "").strip() for n in names)
