"""A new book of what is left of a damaged one: read what can be read, fill the rest from backups, say what is missing.

Each entry keeps its number, its text and its digests. It is taken where its body has its digest and its columns say
what the body says; the chain chooses between a book and its backups. The rest of the record has no digest by the line:
it is taken from the damaged book, and from the newest backup where the damaged one could not be read to its end.
"""

from __future__ import annotations

import json
import shutil
import sqlite3
import tempfile
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from pathlib import Path

from webapp.backups import BOOK_NAME, SERVER_FILES, restore_backup
from webapp.book import verification
from webapp.book.enclosures import shelf
from webapp.book.enclosures.copies import bring_in
from webapp.book.fold import fold
from webapp.book.house import proof
from webapp.book.house.devices import DESK
from webapp.book.opening import open_book
from webapp.book.record import counters, log
from webapp.book.record.errors import BookError
from webapp.book.record.schema import REGISTRY_STATED
from webapp.book.record.store import Book
from webapp.book.search import keeping as search
from webapp.keeping.copied_rows import read_rows
from webapp.keeping.tables import ENTRIES, all_columns
from webapp.keeping.wreck import Row, Table, as_log_row, copy_readable, is_sound, read_tables

_SEEN = "seen"  # worked out anew: what is missing is then a gap, which phones are asked to fill
PHONE_DAYS = 30
_ALONE_MOST = 100


@dataclass
class Salvaged:
    """What became of each number: where it was read (`""`: the book itself), what is missing and damaged; and the rest.

    `unproved`: whole in themselves, beside a gap or a damaged line, so that the chain does not prove how they came.
    """

    sources: dict[int, str] = field(default_factory=dict)
    received: dict[int, str] = field(default_factory=dict)
    damaged: list[int] = field(default_factory=list)
    unproved: list[int] = field(default_factory=list)
    tables: list[str] = field(default_factory=list)
    notes: list[str] = field(default_factory=list)
    troubles: list[str] = field(default_factory=list)
    is_same_book: bool = True

    @property
    def missing(self) -> list[int]:
        """The numbers up to the last known one that are in the new book from nowhere."""
        last = max([*self.sources, *self.damaged], default=0)
        return [number for number in range(1, last + 1) if number not in self.sources]


def salvage(
    wreck: Path, data_dir: Path, backups: Sequence[Path] = (), identity: Path | None = None,
    copies: Sequence[Path] = (),
) -> Salvaged:
    """Make a new book in an empty data folder of what is left of a damaged one; return what became of its entries.

    wreck: the damaged book or its folder; it is only read. copies: files of rows that the group wrote. Raises
    BookError where nothing at all is left, or a backup or copy is one of another book; nothing is left behind then.
    """
    path = wreck / BOOK_NAME if wreck.is_dir() else wreck
    if not path.is_file():
        raise BookError(f"There is no book in {wreck}. Name the damaged file, or its folder.")
    if data_dir.exists() and (not data_dir.is_dir() or any(data_dir.iterdir())):
        raise BookError(f"{data_dir} is not empty. Salvage into a new folder, then serve that one with --data.")
    said = Salvaged()
    data_dir.parent.mkdir(parents=True, exist_ok=True)
    with tempfile.TemporaryDirectory(dir=data_dir.parent, prefix=".salvage-") as scratch:
        made = Path(scratch) / "data"
        made.mkdir(mode=0o700)
        folders = [path.parent]
        with open_book(made / BOOK_NAME) as book:
            known = all_columns(book)
        sources = _read_wreck(path, Path(scratch), known)
        for at, backup in enumerate(backups):
            folder = Path(scratch) / f"backup-{at}"
            try:
                restore_backup(backup, folder, identity)
            except BookError as error:
                said.notes.append(f"Not used: {error}")
                continue
            folders.append(folder)
            sources.append((backup.name, read_tables(folder / BOOK_NAME, known)))
        for copied in copies:
            sources.append((copied.name, read_rows(copied)))
        _refuse_strangers(sources)
        entries = _choose(sources, said)
        if not entries and not any(tables for _, tables in sources):
            raise BookError(f"Nothing of {path} can be read. Give a backup: --backup FILE.")
        with open_book(made / BOOK_NAME) as book:
            _fill(book, sources, entries, said)
            search.rebuild(book)
            bring_in(book, [folder / shelf.FOLDER for folder in folders])
            try:
                said.troubles = verification.verify(book)
            except (sqlite3.Error, ValueError, TypeError, LookupError, AttributeError) as error:
                said.troubles = [f"It cannot be verified, a line of its registry or changes cannot be read: {error}."]
        _carry_keys(folders, made)
        if data_dir.exists():
            data_dir.rmdir()
        shutil.move(made, data_dir)
    return said


def _read_wreck(path: Path, scratch: Path, known: dict[str, list[str]]) -> list[tuple[str, dict[str, Table]]]:
    """Return what can be read of the book with its write-ahead log, and after it without, where it has one."""
    copy = scratch / "wreck.sqlite"
    wal = path.with_name(f"{path.name}-wal")
    found = []
    copy_readable(path, copy)
    if wal.is_file():
        shutil.copyfile(wal, copy.with_name(f"{copy.name}-wal"))
        found.append(("", read_tables(copy, known)))
        for left in scratch.glob(f"{copy.name}*"):
            left.unlink()
        copy_readable(path, copy)
    found.append(("", read_tables(copy, known)))
    return found


def _refuse_strangers(sources: list[tuple[str, dict[str, Table]]]) -> None:
    ids = {row["value"]: name for name, tables in reversed(sources)
           for key, row in tables.get("settings", Table()).rows.items() if key == ("book_id",)}
    if len(ids) > 1:
        raise BookError(f"{next(iter(ids.values())) or 'A backup'} is of another book. Give backups of this one alone.")


def _choose(sources: list[tuple[str, dict[str, Table]]], said: Salvaged) -> dict[int, Row]:
    """Return the entries of the new book by number: of each, the one that the chain proves, else a sound one."""
    found: dict[int, list[tuple[str, Row]]] = {}
    unsound: set[int] = set()
    for name, tables in sources:
        for row in tables.get(ENTRIES, Table()).rows.values():
            if is_sound(row):
                found.setdefault(row["book_no"], []).append((name, row))
            elif isinstance(row["book_no"], int) and 0 < row["book_no"] < 2**40:
                unsound.add(row["book_no"])
    _put_back_numbers(found)
    chosen: dict[int, Row] = {}
    ids: set[str] = set()
    before: str | None = log.FIRST_DIGEST
    for number in sorted(found):
        if number > 1 and number - 1 not in chosen:
            before = None
        proved = [one for one in found[number] if before is not None and log.is_linked(before, as_log_row(one[1]))]
        # Beside a gap the next line may tell which of several is the one that it goes on from.
        later = [one for one in found[number] if any(
            log.is_linked(one[1]["digest"], as_log_row(after)) for _, after in found.get(number + 1, []))]
        name, row = (proved or later or found[number])[0]
        if row["id"] in ids:
            unsound.add(number)
            continue
        if not proved:
            said.unproved.append(number)
        ids.add(row["id"])
        chosen[number], before = row, row["digest"]
        said.sources[number], said.received[number] = name, row["received_at"]
    last = max(found, default=0)
    # A number far beyond all others is itself what was damaged.
    said.damaged = sorted(number for number in unsound if number not in chosen and number <= last + len(unsound))
    return chosen


def _put_back_numbers(found: dict[int, list[tuple[str, Row]]]) -> None:
    """Give entries under a number of nobody's neighbourhood the one that the chain proves: SQLite keeps it apart."""
    alone = [number for number in found if number - 1 not in found and number + 1 not in found and number > 1]
    for gap in [number + 1 for number in found if number + 1 not in found]:
        for number in alone[:_ALONE_MOST]:
            for name, row in found.get(number, []):
                moved = {**row, "book_no": gap}
                if any(log.is_linked(before["digest"], as_log_row(moved)) for _, before in found[gap - 1]):
                    found.setdefault(gap, []).append((name, moved))
                    found[number].remove((name, row))
                    break
    for number in [number for number in alone if not found[number]]:
        del found[number]


def _fill(
    book: Book, sources: list[tuple[str, dict[str, Table]]], entries: dict[int, Row], said: Salvaged
) -> None:
    with book.write() as database:
        for table, columns in all_columns(book).items():
            if table == ENTRIES:
                continue
            for row in _rows_of(table, sources, said):
                if table == _SEEN and row.get("device") != DESK:  # the desk offers nothing again
                    continue
                _put(book, table, columns, row, said)
        columns = all_columns(book)[ENTRIES]
        for number in sorted(entries):
            _put(book, ENTRIES, columns, entries[number], said)
        counted: dict[str, set[int]] = {}
        for row in book.query("SELECT device, seq FROM entries UNION SELECT device, seq FROM aside"):
            if isinstance(row["seq"], int) and row["device"]:
                counted.setdefault(row["device"], set()).add(row["seq"])
        for device, numbers in counted.items():
            counters.note_seen(book, device, numbers)
        if gaps := spans(said.missing):
            database.conn.execute("INSERT OR REPLACE INTO settings VALUES (?, ?)", (log.SALVAGED, json.dumps(gaps)))
        fold.rebuild(book)
        # What was lost is reported; the new book goes on from what there is.
        database.conn.execute("DELETE FROM settings WHERE name IN (?, ?)", (REGISTRY_STATED, log.LAST))
        proof.state_registry(book)  # where changes are lost too, it is held from here on
    said.is_same_book = any(("book_id",) in tables.get("settings", Table()).rows for _, tables in sources)


def _rows_of(table: str, sources: list[tuple[str, dict[str, Table]]], said: Salvaged) -> Iterable[Row]:
    """Return the lines of a table: of the first source that holds it whole, else of all, the earlier before later."""
    rows: dict[tuple[object, ...], Row] = {}
    filled_by: list[str] = []
    for name, tables in sources:
        found = tables.get(table)
        if found is None:
            continue
        count = len(rows)
        rows = found.rows | rows
        if name and len(rows) > count:
            filled_by.append(f"{len(rows) - count} lines from {name}")
        if found.is_whole:
            break
    if filled_by:
        said.tables.append(f"{table}: not whole in the book; {', '.join(filled_by)}.")
    elif not any(tables.get(table, Table(is_whole=False)).is_whole for _, tables in sources):
        said.tables.append(f"{table}: not whole; {len(rows)} lines could be read.")
    return rows.values()


def _put(book: Book, table: str, columns: list[str], row: Row, said: Salvaged) -> None:
    names = [name for name in columns if name in row]
    marks = ", ".join(f":{name}" for name in names)
    sql = f"INSERT OR REPLACE INTO {table} ({', '.join(names)}) VALUES ({marks})"  # noqa: S608 -- of our own schema
    try:
        book.db.conn.execute(sql, row)
    except sqlite3.IntegrityError:  # a line that the schema of the book never took
        if table == ENTRIES:
            said.damaged.append(row["book_no"])
            del said.sources[row["book_no"]]
        else:
            said.tables.append(f"{table}: a damaged line was left out.")


def _carry_keys(folders: list[Path], made: Path) -> None:
    for name in SERVER_FILES:
        for folder in folders:
            if (folder / name).is_file():
                (made / name).parent.mkdir(mode=0o700, exist_ok=True)
                shutil.copyfile(folder / name, made / name)
                (made / name).chmod(0o600)
                break


def spans(numbers: Iterable[int]) -> list[tuple[int, int]]:
    """Return the ranges (first, last) that sorted numbers make up."""
    found: list[tuple[int, int]] = []
    for number in numbers:
        if found and number == found[-1][1] + 1:
            found[-1] = (found[-1][0], number)
        else:
            found.append((number, number))
    return found


def describe(said: Salvaged) -> list[str]:
    """Return the report, a line for each run of entries of one fate, and what to do last."""
    lines: list[str] = []
    runs: list[tuple[int, int, str]] = []
    fates = {number: f"from {name}" if name else "read" for number, name in said.sources.items()}
    fates |= dict.fromkeys(said.missing, "missing") | dict.fromkeys(said.damaged, "damaged, and missing")
    for number in sorted(fates):
        if runs and runs[-1][1] == number - 1 and runs[-1][2] == fates[number]:
            runs[-1] = (runs[-1][0], number, fates[number])
        else:
            runs.append((number, number, fates[number]))
    for low, high, fate in runs:
        days = _days(said, low, high) if "missing" in fate else ""
        lines.append(f"Entries {low} to {high}: {fate}{days}." if low < high else f"Entry {low}: {fate}{days}.")
    if said.unproved:
        shown = ", ".join(str(low) if low == high else f"{low} to {high}" for low, high in spans(said.unproved))
        lines.append(f"Whole in themselves, but the chain does not prove how they came: {shown}.")
    lines += [*said.tables, *said.notes]
    lines += [f"In the new book: {trouble}" for trouble in said.troubles]
    last = max(said.sources, default=0)
    lines.append(f"{len(said.sources)} entries are in the new book, {len(said.missing)} known ones are missing. "
                 f"Whether there were any after {last} is not known here.")
    if said.is_same_book:
        lines.append(f"Phones still hold what they handed in during the last {PHONE_DAYS} days, and offer again what "
                     "this book lacks as soon as they reach it: serve it, and let every phone come by.")
    else:
        lines.append("The name by which phones know the book was lost: they offer nothing again that they handed in "
                     "before; hand in a slate saved from each phone.")
    return lines


def _days(said: Salvaged, low: int, high: int) -> str:
    earlier = [said.received[number][:10] for number in sorted(said.received) if number < low][-1:]
    later = [said.received[number][:10] for number in sorted(said.received) if number > high][:1]
    parts = [f"after {day}" for day in earlier] + [f"before {day}" for day in later]
    if earlier and later:
        return f", received between {earlier[0]} and {later[0]}"
    return f", received {parts[0]}" if parts else ""
