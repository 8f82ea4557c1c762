"""What is left of a damaged book is brought into a new one: every line that can be read, or that a backup holds.

What can be read is asked of SQLite itself, one number at a time (sqlite.org, fileformat2.html: a damaged page loses the
lines on it; the others are still found). What was written is known from a copy made before the damage.
"""

from __future__ import annotations

import random
import shutil
import sqlite3
from contextlib import closing, suppress
from datetime import timedelta
from pathlib import Path
from typing import Any

import pytest
from click.testing import CliRunner
from uuid6 import uuid7

from tests.desk.conftest import F1, House
from tests.keeping.test_damage import NOW, overwrite, page_of
from webapp.backups import BOOK_NAME, restore_backup, write_backup
from webapp.book import intake, verification
from webapp.book.fold import fold
from webapp.book.opening import open_book
from webapp.book.record import log
from webapp.book.record.errors import BookError
from webapp.cli import main
from webapp.keeping import scrub
from webapp.keeping.copied_rows import write_rows
from webapp.keeping.salvage import describe, salvage
from webapp.sealed import keep_recipient, make_key

SEEDS = 24
SOAK_SEEDS = 3000
COMMANDS = (("verify",), ("rebuild",), ("backup", "new.zip"), ("export", "new"))
WAL = f"{BOOK_NAME}-wal"
Whole = tuple[Path, Path, dict[int, tuple[Any, ...]], bytes]


@pytest.fixture(scope="module")
def whole(tmp_path_factory: pytest.TempPathFactory) -> Whole:
    """A book as a power cut leaves it, its last entries in the write-ahead log; a backup of half of it; its entries by
    number; and its fold.
    """
    base = tmp_path_factory.mktemp("whole")
    house = House(base / "made")
    house.log("fruit_intake", F1, -60, gross=("1700", "kg"), tare=("9", "kg"), material="pear", grower_lot="G4",
              sugar=("12.9", "Bx"), temp=("15", "degC"), rot=("1", "pct"))
    for n in range(50):
        if n == 25:
            write_backup(base / "made", base / "backup.zip")
        if n == 40:
            house.book.db.conn.execute("PRAGMA wal_checkpoint(TRUNCATE)")
        house.log("ferment_reading", F1, 600 * n, temp=("14.0", "degC"), gravity=(f"{1.05 - n / 2000:.4f}", "SG"))
    shutil.copytree(base / "made", base / "left")
    house.book.close()
    with open_book(base / "made" / BOOK_NAME) as book:
        fold.rebuild(book)
        return base / "left", base / "backup.zip", rows_of(base / "made" / BOOK_NAME), fold.dump(book)


@pytest.fixture
def folder(whole: Whole, tmp_path: Path) -> Path:
    shutil.copytree(whole[0], tmp_path / "book")
    return tmp_path / "book"


def rows_of(path: Path) -> dict[int, tuple[Any, ...]]:
    """Return the entries that SQLite finds by their number, each asked for alone; none where the file does not open."""
    found = {}
    with closing(sqlite3.connect(path)) as conn:
        for number in range(1, 80):
            try:
                row = conn.execute("SELECT * FROM entries WHERE book_no = ?", (number,)).fetchone()
            except (sqlite3.Error, UnicodeDecodeError):
                continue
            if row:
                found[number] = row
    return found


def damage(folder: Path, chance: random.Random) -> str:
    """Do one harm to the files of a book; return what."""
    file, wal = folder / BOOK_NAME, folder / WAL
    pages = file.stat().st_size // 4096
    how = chance.choice(["bytes", "pages", "cut", "torn", "no wal", "swapped"])
    if how == "bytes":
        for _ in range(chance.randint(1, 20)):
            overwrite(folder, chance.randrange(pages * 4096), chance.randbytes(1))
    elif how == "pages":
        for _ in range(chance.randint(1, 4)):
            overwrite(folder, 4096 * chance.randrange(pages), chance.choice((chance.randbytes(4096), bytes(4096))))
    elif how == "cut":
        with file.open("r+b") as left:
            left.truncate(chance.randrange(pages * 4096))
    elif how == "torn":
        with wal.open("r+b") as left:
            left.seek(chance.randrange(wal.stat().st_size))
            left.write(chance.randbytes(chance.randint(1, 4096)))
    elif how == "no wal":
        wal.unlink()
    else:
        one, other = (4096 * chance.randrange(pages) for _ in range(2))
        overwrite(folder, one, file.read_bytes()[other : other + 4096])
    return how


def note(seq: int) -> dict[str, Any]:
    return {"id": str(uuid7()), "kind": "shift_note", "kind_version": 1, "mark": F1, "read_at": NOW.isoformat(),
            "typed_at": NOW.isoformat(), "person": "NS", "device": "d-page", "seq": seq,
            "values": {"note": {"raw": "rain"}}}


def hand_in(book: Any, *entries: dict[str, Any], now: Any = NOW) -> Any:
    batch = {"now": now.isoformat(), "device": "d-page", "entries": list(entries)}
    return intake.hand_in(book, batch, via="phone", now=now)


def nothing_is_entered_into_damage(folder: Path) -> None:
    """Open, read through, hand in: `entered` is said only where nothing was found."""
    try:
        book = open_book(folder / BOOK_NAME)
    except BookError:
        return  # the server says so and ends
    with book:
        scrub.run_due(book, folder, NOW)
        found = book.damage
        try:
            answer = hand_in(book, note(1))["results"][0]["settled"]
        except BookError:
            return
        assert answer not in ("entered", "queried") or not found


def ends_in_a_sentence(folder: Path, aside: Path, command: tuple[str, ...]) -> None:
    name, *files = command
    said = CliRunner().invoke(main, [name, "--data", str(folder), *(str(aside / one) for one in files)])
    assert said.exception is None or isinstance(said.exception, SystemExit), (name, repr(said.exception))
    assert said.exit_code in (0, 2), name
    if "file is damaged" in said.output:
        assert "cellarslate salvage" in said.output


def brings_all_back(folder: Path, whole: Whole, new: Path, is_backed_up: bool) -> None:
    _, backup, written, dump = whole
    copy = new.with_name("asked")
    shutil.copytree(folder, copy)
    intact = {number for number, row in rows_of(copy / BOOK_NAME).items() if row == written.get(number)}
    before = {path.name: path.read_bytes() for path in folder.iterdir() if path.is_file()}
    said = None
    with suppress(BookError):
        said = salvage(folder, new, [backup] if is_backed_up else [])
    if said is None:
        assert not intact and not is_backed_up
        assert not new.exists()
        return
    assert {path.name: path.read_bytes() for path in folder.iterdir() if path.is_file()} == before
    found = rows_of(new / BOOK_NAME)
    wanted = intact | (set(range(1, 27)) if is_backed_up else set())
    assert wanted <= found.keys(), sorted(wanted - found.keys())
    assert found.keys() == said.sources.keys()
    for number, row in found.items():
        if number not in said.unproved:
            assert row == written[number], number
    assert describe(said)[-1].startswith(("Phones still hold", "The name by which"))
    if found == written and not said.tables and not said.troubles:
        with open_book(new / BOOK_NAME) as book:
            assert fold.dump(book) == dump


def survives(folder: Path, whole: Whole, tmp_path: Path, seed: int, commands: tuple[tuple[str, ...], ...]) -> None:
    chance = random.Random(seed)
    damage(folder, chance)
    brings_all_back(folder, whole, tmp_path / "new", is_backed_up=bool(seed % 3))
    for at, command in enumerate(commands):
        tried = tmp_path / f"tried-{at}"
        shutil.copytree(folder, tried)
        (tmp_path / f"aside-{at}").mkdir()
        ends_in_a_sentence(tried, tmp_path / f"aside-{at}", command)
    nothing_is_entered_into_damage(folder)


@pytest.mark.parametrize("seed", [*range(SEEDS), 1753])  # the last: a name in the schema is no text
def test_random_damage_is_survived(folder: Path, whole: Whole, tmp_path: Path, seed: int) -> None:
    survives(folder, whole, tmp_path, seed, (COMMANDS[seed % 4],))


@pytest.mark.soak
@pytest.mark.parametrize("seed", range(SEEDS, SEEDS + SOAK_SEEDS))
def test_much_random_damage_is_survived(folder: Path, whole: Whole, tmp_path: Path, seed: int) -> None:
    survives(folder, whole, tmp_path, seed, COMMANDS)


def test_a_whole_book_comes_out_as_it_was(folder: Path, whole: Whole, tmp_path: Path) -> None:
    said = salvage(folder, tmp_path / "new")
    assert (said.missing, said.damaged, said.unproved, said.tables, said.troubles) == ([], [], [], [], [])
    assert rows_of(tmp_path / "new" / BOOK_NAME) == whole[2]
    with open_book(tmp_path / "new" / BOOK_NAME) as book:
        assert fold.dump(book) == whole[3]
        assert verification.verify(book) == []


def test_what_is_missing_is_said_and_offered_again_and_the_new_book_can_be_backed_up(
    folder: Path, whole: Whole, tmp_path: Path
) -> None:
    """The body of one entry reads well and is another; nothing else holds it but the phone that logged it."""
    at = (folder / BOOK_NAME).read_bytes().index(b'"1.0400"')
    overwrite(folder, at, b'"1.0040"')
    said = CliRunner().invoke(main, ["salvage", str(folder), "--into", str(tmp_path / "new")])
    assert said.exit_code == 0, said.output
    assert "Entry 22: damaged, and missing, received between" in said.output
    assert "Phones still hold" in said.output.splitlines()[-1]
    columns = dict(zip(("book_no", "id"), whole[2][22], strict=False))
    with open_book(tmp_path / "new" / BOOK_NAME) as book:
        assert log.verify(book)[0] == "Book numbers 22 to 22 are missing."
        body = log.json.loads(whole[2][22][11])
        gaps = book.query("SELECT low, high FROM seen WHERE device = ?", (body["device"],))
        assert not any(gap["low"] <= body["seq"] <= gap["high"] for gap in gaps), "its phone is asked for it"
        carried = {"now": NOW.isoformat(), "device": body["device"], "entries": [body]}
        answer = intake.hand_in(book, carried, via="phone", now=NOW + timedelta(days=300), is_desk=True)
        assert answer["results"][0]["settled"] in ("entered", "queried"), answer
        assert book.one("SELECT max(book_no) AS n FROM entries WHERE id = ?", (columns["id"],)) == {"n": 52}
    assert write_backup(tmp_path / "new", tmp_path / "next.zip") == 52
    assert restore_backup(tmp_path / "next.zip", tmp_path / "again") == 52


def test_a_closed_backup_fills_what_the_first_page_took_with_it(folder: Path, whole: Whole, tmp_path: Path) -> None:
    held = tmp_path / "held"
    restore_backup(whole[1], held)
    keep_recipient(held, make_key(tmp_path / "key.txt"))
    write_backup(held, tmp_path / "closed.age")
    (folder / WAL).unlink()
    overwrite(folder, 0, b"\x5a" * 4096)
    asked = ["salvage", str(folder), "--into", str(tmp_path / "new"), "--backup", str(tmp_path / "closed.age")]
    said = CliRunner().invoke(main, asked)
    assert said.exit_code == 2 and not (tmp_path / "new").exists()
    said = CliRunner().invoke(main, [*asked, "--identity", str(tmp_path / "key.txt")])
    assert said.exit_code == 0, said.output
    assert "Entries 1 to 26: from closed.age." in said.output
    assert rows_of(tmp_path / "new" / BOOK_NAME) == {n: row for n, row in whole[2].items() if n <= 26}


def test_what_the_group_holds_fills_the_gaps_and_only_what_its_digests_prove(
    folder: Path, whole: Whole, tmp_path: Path
) -> None:
    with closing(sqlite3.connect(folder / BOOK_NAME)) as conn:
        names = [row[1] for row in conn.execute("PRAGMA table_info(entries)")]
        (book_id,) = conn.execute("SELECT value FROM settings WHERE name = 'book_id'").fetchone()
    held = [dict(zip(names, whole[2][number], strict=True)) for number in sorted(whole[2])]
    held[29] = {**held[29], "body": held[29]["body"].replace("14.0", "15.0")}  # number 30, as no digest has it
    assert write_rows(tmp_path / "rows", book_id, held) == 51
    write_rows(tmp_path / "strange", "b-0123456789abcdef", held)
    (folder / WAL).unlink(missing_ok=True)
    overwrite(folder, 0, b"\x5a" * 4096)
    asked = ["salvage", str(folder), "--into", str(tmp_path / "new"), "--backup", str(whole[1])]
    said = CliRunner().invoke(main, [*asked, "--rows", str(tmp_path / "strange")])
    assert said.exit_code == 2 and "of another book" in said.output
    said = CliRunner().invoke(main, [*asked, "--rows", str(whole[1])])
    assert said.exit_code == 2 and "holds no rows of a book" in said.output
    said = CliRunner().invoke(main, [*asked, "--rows", str(tmp_path / "rows")])
    assert said.exit_code == 0, said.output
    assert "Entries 27 to 29: from rows." in said.output and "Entry 30: damaged, and missing" in said.output
    assert rows_of(tmp_path / "new" / BOOK_NAME) == {n: row for n, row in whole[2].items() if n != 30}


def test_a_backup_of_another_book_is_refused(folder: Path, tmp_path: Path) -> None:
    House(tmp_path / "other").book.close()
    write_backup(tmp_path / "other", tmp_path / "other.zip")
    with pytest.raises(BookError, match="of another book"):
        salvage(folder, tmp_path / "new", [tmp_path / "other.zip"])
    assert not (tmp_path / "new").exists()


@pytest.mark.parametrize("command", COMMANDS)
def test_a_state_that_is_no_text_any_more_is_said_to_be_damage(
    folder: Path, tmp_path: Path, command: tuple[str, ...]
) -> None:
    """No page is broken and every entry has its digest: what was worked out of them cannot be read."""
    with closing(sqlite3.connect(folder / BOOK_NAME)) as conn, conn:
        conn.execute("UPDATE states SET body = '{' || substr(body, 3)")
    ends_in_a_sentence(folder, tmp_path, command)


@pytest.mark.parametrize(("table", "old", "new"), [
    ("closes", b"signed_at TEXT", b"sign\xa5d_at TEXT"),  # no text: Python ends at the heading of such lines
    ("entries", b"digest TEXT", b"dig\xa5st TEXT"),
    ("entries", b"book_no INTEGER", b"book_mo INTEGER"),
    ("entries", b"body TEXT", b"bodx TEXT"),
    ("entries", b"entriesentries", b"entrhesentries"),  # the list's line of a table: its name, and the table it is of
])
def test_a_name_of_the_schema_that_is_damaged_takes_no_line_with_it(
    folder: Path, whole: Whole, tmp_path: Path, table: str, old: bytes, new: bytes
) -> None:
    """SQLite reads each line of such a table by its place: nothing of the record is lost, without any backup."""
    open_book(folder / BOOK_NAME).close()  # all in one file
    content = (folder / BOOK_NAME).read_bytes()
    line = content.index(f"CREATE TABLE {table} (".encode())
    at = content.index(old, line - 50)
    assert at < line + 1000
    overwrite(folder, at, new)
    said = salvage(folder, tmp_path / "new")
    assert rows_of(tmp_path / "new" / BOOK_NAME) == whole[2]
    assert (said.missing, said.damaged, said.tables, said.troubles) == ([], [], [], [])


def test_a_torn_root_of_the_log_is_filled_from_the_backup(folder: Path, whole: Whole, tmp_path: Path) -> None:
    open_book(folder / BOOK_NAME).close()  # all in one file
    overwrite(folder, page_of(folder, "entries"), bytes(4096))
    said = salvage(folder, tmp_path / "new", [whole[1]])
    assert sorted(said.sources) == list(range(1, 27))
    assert set(said.sources.values()) == {"backup.zip"}
