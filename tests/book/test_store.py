"""The file: nothing half written, nothing written over, whatever happens to the program."""

from __future__ import annotations

import os
import signal
import sqlite3
import subprocess
import sys
import threading
import time
from contextlib import closing
from pathlib import Path
from typing import Any

import pytest

from tests.book.conftest import fill_world, fruit, new_id, reading, send, settled
from webapp.book.fold import fold
from webapp.book.opening import open_book
from webapp.book.record import log
from webapp.book.record.backup import backup
from webapp.book.record.store import Book, BookError

ROOT = Path(__file__).parents[2]
KILLS = 24

# A process of its own: hands in one reading after another and prints each receipt only when it has it.
WRITER = """
import sys
from datetime import timedelta
from tests.book.conftest import NOW, reading, send
from webapp.book.opening import open_book
from webapp.words import sentence
from webapp.kinds.message import message
sentence(message("late", after=0))  # what a first sentence loads is loaded before it says that it is ready
path, device, first, last, size = sys.argv[1], sys.argv[2], *map(int, sys.argv[3:])
with open_book(path) as book:
    print("ready", flush=True)
    for seq in range(first, last, size):
        batch = [
            reading(id=f"0000000{device[2:]}-0000-7000-8000-{n:012d}", device=device, seq=n,
                    read_at=NOW - timedelta(seconds=n))
            for n in range(seq, min(seq + size, last))
        ]
        given = send(book, *batch, device=device)
        print(*[f"{r['id']} {r['book_no']} {r['digest']}" for r in given["results"]], sep="\\n", flush=True)
"""


def start_writer(path: Path, device: str, first: int, last: int, size: int) -> subprocess.Popen[str]:
    arguments = [sys.executable, "-c", WRITER, str(path), device, str(first), str(last), str(size)]
    return subprocess.Popen(arguments, cwd=ROOT, stdout=subprocess.PIPE, text=True)


def test_a_new_book_has_what_must_never_be_lowered(book: Book) -> None:
    with book.write() as database:
        ask = {
            name: database.conn.execute(f"PRAGMA {name}").fetchone()[0]
            for name in ("journal_mode", "synchronous", "foreign_keys")
        }
    assert ask == {"journal_mode": "wal", "synchronous": 2, "foreign_keys": 1}
    strict = book.query(
        "SELECT name FROM pragma_table_list WHERE schema = 'main' AND type = 'table' AND NOT strict "
        "AND name NOT LIKE 'sqlite%'"
    )
    assert strict == []


def test_opening_again_finds_everything(book: Book) -> None:
    send(book, fruit(), reading(seq=2))
    dump = fold.dump(book)
    with open_book(book.path) as again:
        assert fold.dump(again) == dump
        assert again.query("SELECT name FROM migrations ORDER BY name") == book.query(
            "SELECT name FROM migrations ORDER BY name"
        )


def test_a_book_of_a_newer_program_is_left_alone_with_a_sentence(book: Book) -> None:
    with book.write() as database:
        database.conn.execute("INSERT INTO migrations VALUES ('of_next_year', '2027-01-01T00:00:00Z')")
    with pytest.raises(BookError, match=r"newer Cellarslate\. Update the program"):
        open_book(book.path)


@pytest.mark.parametrize("what", ["text", "other database", "folder"])
def test_what_is_no_book_is_not_touched(tmp_path: Path, what: str) -> None:
    path = tmp_path / "thing.db"
    if what == "text":
        path.write_text("Dear diary. " * 500)
    elif what == "folder":
        path.mkdir()
    else:
        with closing(sqlite3.connect(path)) as conn:
            conn.execute("CREATE TABLE pears (kg)")
            conn.commit()
    before = path.read_bytes()[100:] if path.is_file() else b""
    with pytest.raises(BookError):
        open_book(path)
    assert path.is_dir() or path.read_bytes()[100:] == before


@pytest.mark.parametrize("table", ["entries", "aside", "changes"])
def test_the_record_cannot_be_changed_or_taken_out(book: Book, table: str) -> None:
    send(book, fruit(), {"id": "x"})
    for sql in (f"UPDATE {table} SET rowid = 99", f"DELETE FROM {table}"):
        with pytest.raises(sqlite3.IntegrityError), book.write() as database:
            database.conn.execute(sql)


def test_readers_cannot_write(book: Book) -> None:
    with pytest.raises(sqlite3.OperationalError):
        book.db.conn.execute("DELETE FROM settings")


def test_a_failed_write_leaves_no_trace_in_file_or_memory(book: Book, monkeypatch: pytest.MonkeyPatch) -> None:
    send(book, fruit())
    dump = fold.dump(book)

    def fail(*_: Any) -> None:
        raise OSError("disk full")

    with monkeypatch.context() as patch:
        patch.setattr("webapp.book.intake.devices.note_heard", fail)
        with pytest.raises(OSError, match="disk full"):
            send(book, reading(seq=2))
    assert fold.dump(book) == dump
    send(book, reading(gravity="1.049", seq=3))
    kept = fold.dump(book)
    fold.rebuild(book)
    assert fold.dump(book) == kept


def test_a_reader_sees_the_book_before_or_after_a_write_never_between(book: Book) -> None:
    seen = []
    with book.write():
        send(book, fruit())
        thread = threading.Thread(target=lambda: seen.append(book.one("SELECT count(*) AS n FROM entries")))
        thread.start()
        thread.join()
        assert book.one("SELECT count(*) AS n FROM entries") == {"n": 1}
    assert seen == [{"n": 0}]
    assert book.one("SELECT count(*) AS n FROM entries") == {"n": 1}


def test_connections_of_threads_that_ended_are_closed(book: Book) -> None:
    for _ in range(20):
        thread = threading.Thread(target=lambda: book.query("SELECT 1"))
        thread.start()
        thread.join()
    assert len(book._readers) <= 2


def test_a_closed_book_says_so(tmp_path: Path) -> None:
    book = open_book(tmp_path / "b.db")
    book.close()
    book.close()
    with pytest.raises(BookError, match="closed"), book.write():
        pass
    with pytest.raises(BookError, match="closed"):
        book.query("SELECT 1")


@pytest.mark.parametrize("column", [
    "body", "body_sha256", "received_at", "skew_s", "via", "digest", "id", "kind", "kind_version", "mark", "read_at",
    "typed_at", "person", "role", "device", "seq",
])
def test_a_byte_that_was_changed_behind_our_back_is_found(book: Book, column: str) -> None:
    send(book, *[reading(seq=n) for n in range(1, 6)])
    assert log.verify(book) == []
    changed = {"body": "replace(body, '15.0', '15.1')", "skew_s": "skew_s + 1",
               "kind_version": "kind_version + 1", "seq": "seq + 100"}.get(
        column, f"'x' || substr({column}, 2)"
    )
    with closing(sqlite3.connect(book.path)) as conn:
        conn.execute("DROP TRIGGER entries_stay")
        conn.execute(f"UPDATE entries SET {column} = {changed} WHERE book_no = 3")
        conn.commit()
    troubles = log.verify(book)
    assert troubles
    assert "number 3" in troubles[0]
    assert "number 2" not in " ".join(troubles)


def test_a_clock_a_hair_behind_does_not_break_the_chain(book: Book) -> None:
    """Its skew rounds to -0.0, which the database gives back as 0.0."""
    send(book, reading(seq=1), skew_s=-0.03)
    assert log.verify(book) == []


def test_a_chain_that_was_hashed_over_minus_nothing_holds(book: Book) -> None:
    """So the digests of such entries were made once. What the zero stands for must not be changed with it."""
    send(book, reading(seq=1))
    row = book.query("SELECT * FROM entries")[0]
    parts = (log.FIRST_DIGEST, "1", row["body_sha256"], row["received_at"], "-0.0", row["via"])
    with closing(sqlite3.connect(book.path)) as conn:
        conn.execute("DROP TRIGGER entries_stay")
        conn.execute("UPDATE entries SET digest = ?", (log.sha256("\n".join(parts)),))
        conn.commit()
        assert log.verify(book) == []
        conn.execute("UPDATE entries SET skew_s = 0.4")
        conn.commit()
    assert "number 1" in log.verify(book)[0]


def test_an_entry_taken_out_behind_our_back_is_found(book: Book) -> None:
    send(book, *[reading(seq=n) for n in range(1, 6)])
    with closing(sqlite3.connect(book.path)) as conn:
        conn.execute("DROP TRIGGER entries_remain")
        conn.execute("DELETE FROM entries WHERE book_no = 3")
        conn.commit()
    assert log.verify(book)[0] == "Book numbers 3 to 3 are missing."


def test_a_backup_is_whole_and_taken_while_others_write(book: Book, tmp_path: Path) -> None:
    send(book, fruit())
    stop = threading.Event()

    def write_on() -> None:
        seq = 2
        while not stop.is_set():
            send(book, reading(seq=seq, id=new_id()))
            seq += 1

    thread = threading.Thread(target=write_on)
    thread.start()
    try:
        path = backup(book, tmp_path / "far" / "copy.db")
    finally:
        stop.set()
        thread.join()
    assert sorted(file.name for file in path.parent.iterdir()) == ["copy.db"]
    with open_book(path) as copy:
        assert log.verify(copy) == []
        kept = fold.dump(copy)
        fold.rebuild(copy)
        assert fold.dump(copy) == kept
    with pytest.raises(BookError, match="there already"):
        backup(book, path)


def test_a_backup_of_a_tampered_book_is_not_given_its_name(book: Book, tmp_path: Path) -> None:
    send(book, fruit())
    with closing(sqlite3.connect(book.path)) as conn:
        conn.execute("DROP TRIGGER entries_stay")
        conn.execute("UPDATE entries SET person = 'XX'")
        conn.commit()
    with pytest.raises(BookError, match="not whole"):
        backup(book, tmp_path / "copy.db")
    assert not (tmp_path / "copy.db").exists()


def test_two_processes_may_write_in_one_book(tmp_path: Path) -> None:
    path = tmp_path / "book.db"
    with open_book(path) as book:
        fill_world(book)
    writers = [start_writer(path, f"d-{n}", 1, 41, 4) for n in (1, 2)]
    printed = [writer.communicate(timeout=100)[0] for writer in writers]
    assert [writer.returncode for writer in writers] == [0, 0]
    with open_book(path) as book:
        assert book.one("SELECT count(*) AS n FROM entries") == {"n": 80}
        check_receipts(book, "".join(printed))


@pytest.mark.timeout(300)
def test_a_process_killed_at_any_moment_loses_and_doubles_nothing(tmp_path: Path) -> None:
    """Kill it hard, two dozen times; then hand everything in again, as phones without a receipt do."""
    path = tmp_path / "book.db"
    with open_book(path) as book:
        fill_world(book)
    printed, kills, last = "", 0, 4000
    for turn in range(KILLS):
        writer = start_writer(path, "d-7", 1 + turn * 20, last, 3 + turn % 7)
        assert writer.stdout is not None
        assert writer.stdout.readline() == "ready\n"
        time.sleep(0.02 + turn % 8 * 0.03)
        os.kill(writer.pid, signal.SIGKILL)
        out, _ = writer.communicate()
        kills += writer.returncode == -signal.SIGKILL
        printed += "".join(line for line in out.splitlines(keepends=True) if line.endswith("\n"))
    assert kills == KILLS
    with open_book(path) as book:
        check_receipts(book, printed)
        held = {row["id"] for row in book.query("SELECT id FROM entries")}
        resent = start_writer(path, "d-7", 1, 700, 50).communicate(timeout=100)[0]
        check_receipts(book, resent)
        held |= {line.split()[0] for line in resent.splitlines() if line != "ready"}
        assert book.one("SELECT count(*) AS n FROM entries") == {"n": len(held)}


def check_receipts(book: Book, printed: str) -> None:
    """Every receipt that was given is in the book as it was given; the chain holds; the fold is a rebuild's."""
    kept_rows = {
        row["id"]: f"{row['id']} {row['book_no']} {row['digest']}" for row in book.query("SELECT * FROM entries")
    }
    receipts = [line for line in printed.splitlines() if line.count(" ") == 2]
    assert receipts
    assert all(kept_rows.get(line.split()[0]) == line for line in receipts)
    assert log.verify(book) == []
    dump = fold.dump(book)
    fold.rebuild(book)
    assert fold.dump(book) == dump


def test_a_write_of_another_program_is_seen_by_the_next_fold(book: Book) -> None:
    """Newest states are held in memory; they are old as soon as somebody else has written."""
    send(book, fruit(), reading(seq=2))
    with open_book(book.path) as other:
        send(other, reading(gravity="1.048", seq=3))
    assert settled(send(book, reading(gravity="1.047", seq=4)))
    kept = fold.dump(book)
    fold.rebuild(book)
    assert fold.dump(book) == kept
