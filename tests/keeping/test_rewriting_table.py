"""The table of rewritings in docs/proof.md, cell by cell: which proof finds what somebody with the file did to it.

The list is the house's own, by what an insider could want; nothing outside the project has one.
"""

from __future__ import annotations

import hashlib
import json
import re
import shutil
import sqlite3
from collections.abc import Callable
from contextlib import closing
from datetime import UTC, datetime
from pathlib import Path

import pytest

from tests.book.conftest import C1, T1, fill_world, fruit, gauge, reading, send
from webapp import signed_heads
from webapp.backups import BOOK_NAME
from webapp.book import verification
from webapp.book.fold import fold
from webapp.book.house import people, registry
from webapp.book.opening import open_book
from webapp.book.record import log
from webapp.book.record.store import Book
from webapp.keeping import witnesses

PAGE = Path(__file__).parents[2] / "docs" / "proof.md"
NOW = datetime(2026, 3, 1, 6, 0, tzinfo=UTC)
Rewriting = Callable[[sqlite3.Connection, bool], None]


@pytest.fixture(scope="module")
def told(tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, list[str]]:
    """A folder with a book, and the signed heads that it gave out."""
    folder = tmp_path_factory.mktemp("told")
    with open_book(folder / BOOK_NAME) as book:
        fill_world(book)
        people.put_person(book, {"code": "ZZ", "name": "Zita", "roles": ["hand"], "access": "floor"}, by="OL")
        registry.put_vessel(book, {"mark": C1, "tare_kg": 46.3}, by="OL")
        registry.set_limit(book, "vessel", T1, "gauge", "strength", (40, 70), None, by="OL")
        send(book, fruit(), gauge(seq=2), *[reading(seq=n) for n in range(3, 50)])
        send(book, {"id": "x"}, {"id": "y"})
        assert verification.verify(book) == []
        keeper = witnesses.Witnesses(book, folder)
        keeper.look(NOW)
        given = keeper.give(NOW)
        send(book, reading(seq=50))
    return folder, given


def set_body(conn: sqlite3.Connection, number: int, is_insider: bool, **changed: object) -> None:
    """Change columns of an entry; an insider changes its body with them."""
    body = json.loads(conn.execute("SELECT body FROM entries WHERE book_no = ?", (number,)).fetchone()[0])
    for name, value in changed.items():
        if is_insider or name == "values":
            body[name] = value
        if name != "values":
            conn.execute(f"UPDATE entries SET {name} = ? WHERE book_no = ?", (value, number))
    conn.execute("UPDATE entries SET body = ? WHERE book_no = ?", (log.canonical(body), number))


def rewrite_a_gauge(conn: sqlite3.Connection, is_insider: bool) -> None:
    body = json.loads(conn.execute("SELECT body FROM entries WHERE book_no = 2").fetchone()[0])
    values = {name: {**one, "raw": "390"} if one["raw"] == "400" else one for name, one in body["values"].items()}
    assert values != body["values"]
    set_body(conn, 2, is_insider, values=values)


def cut_off_the_last_40(conn: sqlite3.Connection, is_insider: bool) -> None:
    conn.execute("DELETE FROM entries WHERE book_no > (SELECT max(book_no) - 40 FROM entries)")


def change_a_mark(conn: sqlite3.Connection, is_insider: bool) -> None:
    set_body(conn, 3, is_insider, mark=T1)


def change_a_role(conn: sqlite3.Connection, is_insider: bool) -> None:
    set_body(conn, 3, is_insider, role="distiller")


def write_in_anothers_name(conn: sqlite3.Connection, is_insider: bool) -> None:
    set_body(conn, 3, is_insider, person="OL")


def date_it_back(conn: sqlite3.Connection, is_insider: bool) -> None:
    conn.execute("UPDATE entries SET received_at = '2026-01-01T00:00:00Z' WHERE book_no = 3")


def use_a_counter_again(conn: sqlite3.Connection, is_insider: bool) -> None:
    set_body(conn, 4, is_insider, seq=3)


def delete_the_refused(conn: sqlite3.Connection, is_insider: bool) -> None:
    assert conn.execute("DELETE FROM aside").rowcount == 2


def delete_half_of_the_changes(conn: sqlite3.Connection, is_insider: bool) -> None:
    assert conn.execute("DELETE FROM changes WHERE no % 2").rowcount > 5


def make_a_floor_hand_office(conn: sqlite3.Connection, is_insider: bool) -> None:
    conn.execute("UPDATE people SET access = 'office' WHERE code = 'ZZ'")
    if is_insider:
        conn.execute("UPDATE changes SET after = replace(after, '\"floor\"', '\"office\"') WHERE key = 'ZZ'")


def put_in_a_person(conn: sqlite3.Connection, is_insider: bool) -> None:
    sql = "INSERT INTO people (code, name, roles, access, retired) VALUES ('XX', 'Xeno', '[]', 'office', 0)"
    conn.execute(sql)


def change_a_tare(conn: sqlite3.Connection, is_insider: bool) -> None:
    conn.execute("UPDATE vessels SET tare_kg = 40 WHERE mark = ?", (C1,))
    if is_insider:
        conn.execute("UPDATE changes SET after = replace(after, '46.3', '40.0') WHERE key = ?", (C1,))


def take_out_a_limit(conn: sqlite3.Connection, is_insider: bool) -> None:
    assert conn.execute("DELETE FROM limits").rowcount == 1
    if is_insider:
        assert conn.execute("DELETE FROM changes WHERE what = 'limit'").rowcount == 1


ROWS: dict[str, Rewriting] = {
    "a gauge rewritten": rewrite_a_gauge,
    "the last 40 entries cut off": cut_off_the_last_40,
    "the vessel of an entry changed": change_a_mark,
    "the role of an entry changed": change_a_role,
    "an entry put in another's name": write_in_anothers_name,
    "when an entry was received changed": date_it_back,
    "a counter used twice": use_a_counter_again,
    "the refused entries deleted": delete_the_refused,
    "half of the changes deleted": delete_half_of_the_changes,
    "a floor hand made office": make_a_floor_hand_office,
    "a person put in": put_in_a_person,
    "the tare of a vessel changed": change_a_tare,
    "a limit taken out": take_out_a_limit,
}


def make_anew(conn: sqlite3.Connection) -> None:
    """Make all digests of the file anew, as an insider does who knows the program."""
    conn.row_factory = sqlite3.Row
    before = log.FIRST_DIGEST
    for row in [dict(row) for row in conn.execute("SELECT * FROM entries ORDER BY book_no")]:
        row["body_sha256"] = log.sha256(row["body"])
        before = log.chain_digest(before, row)  # type: ignore[arg-type]
        conn.execute("UPDATE entries SET body_sha256 = ?, digest = ? WHERE book_no = ?",
                     (row["body_sha256"], before, row["book_no"]))
    for table, columns in (
        ("changes", "no, at, person, what, key, before, after"),
        ("aside", "no, id, device, seq, settled, body_sha256, problems, received_at, via"),
    ):
        last, digest = 0, "0" * 64
        for row in conn.execute(f"SELECT {columns} FROM {table} ORDER BY no"):
            text = json.dumps([digest, *row], ensure_ascii=False, separators=(",", ":"))
            last, digest = row["no"], hashlib.sha256(text.encode()).hexdigest()
        conn.execute("UPDATE settings SET value = ? WHERE name = ?", (json.dumps([last, digest]), f"seal_{table}"))
    last, digest = conn.execute("SELECT book_no, digest FROM entries ORDER BY book_no DESC LIMIT 1").fetchone()
    conn.execute("UPDATE settings SET value = ? WHERE name = 'last_entry'", (json.dumps([last, digest]),))
    # So that the program states the registry anew, as that of an older book.
    conn.execute("DELETE FROM settings WHERE name = 'registry_stated'")


def rewritten(told: tuple[Path, list[str]], to: Path, row: str, *, is_insider: bool) -> Path:
    shutil.copytree(told[0], to)
    with closing(sqlite3.connect(to / BOOK_NAME)) as conn:
        for (name,) in conn.execute("SELECT name FROM sqlite_master WHERE type = 'trigger'").fetchall():
            conn.execute(f"DROP TRIGGER {name}")
        ROWS[row](conn, is_insider)
        if is_insider:
            make_anew(conn)
        conn.commit()
    return to


def written(row: str) -> list[str]:
    """Return the cells of a row of the table in docs/proof.md, without its name."""
    (line,) = re.findall(rf"^\| {re.escape(row)} \|(.*)\|$", PAGE.read_text("utf-8"), re.MULTILINE)
    return [cell.strip() for cell in line.split("|")]


def said(is_found: bool) -> str:
    return "found" if is_found else "not found"


@pytest.mark.parametrize("row", ROWS)
def test_the_table_says_what_finds_a_rewriting(told: tuple[Path, list[str]], tmp_path: Path, row: str) -> None:
    with open_book(rewritten(told, tmp_path / "plain", row, is_insider=False) / BOOK_NAME) as book:
        cells = [said(bool(verification.verify(book)))]
    folder = rewritten(told, tmp_path / "insider", row, is_insider=True)
    with open_book(folder / BOOK_NAME) as book:
        fold.rebuild(book)
        cells.append(said(bool(verification.verify(book))))
        cells.append(said(bool(signed_heads.compare(book, signed_heads.read_signed("\n".join(told[1]))))))
        cells.append(said(is_witnessed(book, folder, told[1])))
    assert cells == written(row)


def is_witnessed(book: Book, folder: Path, heads: list[str]) -> bool:
    keeper = witnesses.Witnesses(book, folder)
    keeper.take("d-one", heads, NOW)
    return bool(keeper.look(NOW))


def test_a_book_that_nobody_touched_is_whole_to_all_of_them(told: tuple[Path, list[str]], tmp_path: Path) -> None:
    shutil.copytree(told[0], tmp_path / "copy")
    with open_book(tmp_path / "copy" / BOOK_NAME) as book:
        assert verification.verify(book) == []
        assert signed_heads.compare(book, signed_heads.read_signed("\n".join(told[1]))) == []
        assert not is_witnessed(book, tmp_path / "copy", told[1])


def test_the_table_has_no_other_rows() -> None:
    table = PAGE.read_text("utf-8").split("## The table")[1].split("\n## ")[0]
    assert re.findall(r"^\| ([^|]+?) \|", table, re.MULTILINE)[2:] == [*ROWS]
