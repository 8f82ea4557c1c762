"""Exports that somebody changed, with the sums in book.json made to fit: refused in a sentence, nothing left behind."""

from __future__ import annotations

import hashlib
import json
import os
import random
import shutil
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest

from tests.book.conftest import F1, T1, fill_world, reading, send
from tests.book.conftest import entry as made_entry
from tests.closing import close_as_read
from webapp.backups import BOOK_NAME
from webapp.book import verification
from webapp.book.house import people
from webapp.book.opening import open_book
from webapp.book.periods import closes
from webapp.book.record import log
from webapp.book.record.errors import BookError
from webapp.book.record.log import canonical, chain_digest, sha256
from webapp.keeping.export import export_book
from webapp.keeping.take_in import take_in

LATER = datetime(2026, 1, 20, 12, 0, tzinfo=UTC)
Rows = list[dict[str, Any]]


@pytest.fixture(scope="module")
def exported(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """An export of a book with two readings, a gauge, and a quarter that somebody has signed."""
    folder = tmp_path_factory.mktemp("signed")
    with open_book(folder / BOOK_NAME) as book:
        fill_world(book)
        for seq in (1, 2):
            send(book, reading(F1, read_at=datetime(2025, 9, 20, 6 + seq, tzinfo=UTC), seq=seq))
        send(book, made_entry("gauge", T1, datetime(2025, 9, 22, 8, tzinfo=UTC), seq=3, volume="400 L", temp="20 degC",
                              strength="60 pct_vol", purpose="opening"))
        people.put_person(book, {"code": "OL", "name": "OL", "roles": ["office"], "access": "office"}, by="OL")
        for period in ("2025-09", "2025-Q4"):
            close_as_read(book, period, "OL", LATER)
        assert verification.verify(book) == []
        assert (len(list(log.walk_entries(book))), len(closes.closes(book))) == (3, 4)
    export_book(folder / BOOK_NAME, folder / "export")
    return folder / "export"


@pytest.fixture
def copy(exported: Path, tmp_path: Path) -> Path:
    """A copy of it, to be spoilt."""
    return Path(shutil.copytree(exported, tmp_path / "copy"))


def rewrite(folder: Path, table: str, change: Callable[[Rows], Any]) -> None:
    """Change the lines of a table, and make its sum and its count in book.json fit."""
    path = folder / "tables" / f"{table}.jsonl"
    rows = [json.loads(line) for line in path.read_text("utf-8").splitlines()]
    rows = change(rows) or rows
    path.write_text("".join(json.dumps(row, ensure_ascii=False) + "\n" for row in rows), "utf-8")
    fit(folder, f"tables/{table}.jsonl", rows={table: len(rows)})


def fit(folder: Path, name: str, rows: dict[str, int] | None = None) -> None:
    manifest = json.loads((folder / "book.json").read_text("utf-8"))
    manifest["files"][name] = hashlib.sha256((folder / name).read_bytes()).hexdigest()
    manifest["rows"] |= rows or {}
    (folder / "book.json").write_text(json.dumps(manifest), "utf-8")


def refused(folder: Path, match: str | None = None) -> None:
    """Take it in, which must fail with a sentence and leave nothing."""
    others = {path.name for path in folder.parent.iterdir()}
    with pytest.raises(BookError, match=match) as caught:
        take_in(folder, folder.parent / "new")
    assert str(caught.value).endswith(".") and "\n" not in str(caught.value)
    assert {path.name for path in folder.parent.iterdir()} == others


def test_the_untouched_export_is_taken_in_with_what_was_signed(exported: Path, tmp_path: Path) -> None:
    assert take_in(exported, tmp_path / "new")["is_same_fold"] is True
    with open_book(tmp_path / "new" / BOOK_NAME) as book:
        assert [row["month"] for row in closes.closes(book)] == ["2025-09", "2025-10", "2025-11", "2025-12"]
        assert verification.verify(book) == []


def figures_changed(rows: Rows) -> None:
    figures = json.loads(rows[1]["figures"])
    figures["closing"] = {name: ul + 1_000_000 for name, ul in figures["closing"].items()}
    rows[1]["figures"] = canonical(figures)


def signed_anew(rows: Rows) -> None:
    """Figures of all months halved, with every digest worked out anew: the log then says otherwise."""
    digest = ""
    for row in rows:
        figures = json.loads(row["figures"])
        figures["closing"] = {name: ul // 2 for name, ul in figures["closing"].items()}
        row["figures"] = canonical(figures)
        row["digest"] = digest = sha256(digest + row["figures"])


def set_in(at: int, **columns: Any) -> Callable[[Rows], None]:
    return lambda rows: rows[at].update(columns)


@pytest.mark.parametrize(
    "change",
    [
        figures_changed,
        signed_anew,
        set_in(0, digest="0" * 64),
        set_in(1, month="2031-01"),
        set_in(3, until="2027-01-01T00:00:00"),
        set_in(2, zone="Pacific/Auckland"),
        set_in(0, figures="[]"),
        set_in(0, figures="{"),
        set_in(0, figures="[" * 100_000),
        lambda rows: rows[1:],
        lambda rows: [rows[0], *rows[2:]],
    ],
)
def test_a_tampered_signed_close_is_refused(copy: Path, change: Callable[[Rows], Any]) -> None:
    rewrite(copy, "closes", change)
    refused(copy, "does not verify")


def swapped(rows: Rows) -> None:
    rows[0]["book_no"], rows[1]["book_no"] = rows[1]["book_no"], rows[0]["book_no"]


def body_changed(rows: Rows) -> None:
    rows[0]["body"]["values"]["gravity"]["raw"] = "1.011"


def body_and_its_sum_changed(rows: Rows) -> None:
    body_changed(rows)
    rows[0]["body_sha256"] = sha256(canonical(rows[0]["body"]))


def column_changed(rows: Rows) -> None:
    rows[2]["person"] = "OL"


def last_forged(rows: Rows) -> None:
    """The last entry and its digest worked out anew: only book.json still knows what it was."""
    rows[-1]["body"]["remark"] = "400 L were 40 L"
    rows[-1]["body_sha256"] = sha256(canonical(rows[-1]["body"]))
    rows[-1]["digest"] = chain_digest(rows[-2]["digest"], rows[-1])


@pytest.mark.parametrize(
    "change",
    [
        swapped, body_changed, body_and_its_sum_changed, column_changed, last_forged, lambda rows: rows[1:],
        lambda rows: rows[:-1], lambda rows: [rows[0], *rows[2:]], set_in(0, received_at="2020-01-01T00:00:00Z"),
        set_in(1, body=[]), set_in(1, body=None),
    ],
)
def test_tampered_missing_and_reordered_entries_are_refused(copy: Path, change: Callable[[Rows], Any]) -> None:
    rewrite(copy, "entries", change)
    refused(copy, "does not verify")


def test_lines_in_another_order_are_the_same_book(copy: Path, tmp_path: Path) -> None:
    """Each line says its number; where it stands in the file says nothing."""
    rewrite(copy, "entries", lambda rows: rows[::-1])
    assert take_in(copy, tmp_path / "new")["is_same_fold"] is True


@pytest.mark.parametrize("table", ["entries", "closes", "vessels", "people", "changes"])
@pytest.mark.parametrize(
    "line",
    ["null", "[]", "1", '"x"', "{}", "{", "[" * 100_000, '{"book_no": 99999999999999999999999}', '{"no": 1e400}',
     '{"mark": {"a": 1}}', '{"mark": "\\ud800"}', "\x00"],
)
def test_lines_that_are_none_are_refused_in_a_sentence(copy: Path, table: str, line: str) -> None:
    path = copy / "tables" / f"{table}.jsonl"
    path.write_text(path.read_text("utf-8") + line + "\n", "utf-8")
    fit(copy, f"tables/{table}.jsonl")
    refused(copy)


@pytest.mark.parametrize("table", ["entries", "closes", "vessels"])
def test_a_line_that_comes_twice_is_refused(copy: Path, table: str) -> None:
    rewrite(copy, table, lambda rows: [*rows, rows[-1]])
    refused(copy)


@pytest.mark.parametrize("table", ["closes", "vessels", "changes"])
def test_lines_taken_off_the_end_are_missed(copy: Path, table: str) -> None:
    """The chain of the closes does not tell where it ended; the manifest does."""
    path = copy / "tables" / f"{table}.jsonl"
    path.write_text("\n".join(path.read_text("utf-8").splitlines()[:-1]) + "\n", "utf-8")
    fit(copy, f"tables/{table}.jsonl")
    refused(copy, "lacks lines, or has one twice")


@pytest.mark.parametrize("what", ["files", "rows", "fold_sha256", "entries"])
@pytest.mark.parametrize("value", [None, [], "x", {"tables/x.jsonl": "1"}, {}, 3])
def test_a_spoilt_manifest_is_refused(copy: Path, what: str, value: Any) -> None:
    manifest = json.loads((copy / "book.json").read_text("utf-8")) | {what: value}
    if what == "entries" and value == 3:
        manifest.pop("entries")
    (copy / "book.json").write_text(json.dumps(manifest), "utf-8")
    refused(copy)


def test_a_table_beside_the_manifest_is_refused(copy: Path) -> None:
    """Else a table could be changed without a sum to betray it, once it is taken out of the manifest."""
    manifest = json.loads((copy / "book.json").read_text("utf-8"))
    del manifest["files"]["tables/closes.jsonl"]
    (copy / "book.json").write_text(json.dumps(manifest), "utf-8")
    refused(copy, "tables/closes.jsonl is not in book.json")


def test_files_that_are_no_tables_of_the_record_are_not_read(copy: Path, tmp_path: Path) -> None:
    """One-time codes and folds are made by the book itself: nobody plants them by an export."""
    token = {"token_sha256": sha256("x"), "name": "PH-1", "made_by": "OL", "made_at": "2026-01-01T00:00:00Z"}
    for table, row in (("tokens", token), ("people_extra", {"a": 1}), ("flows", {"entry": "x"})):
        (copy / "tables" / f"{table}.jsonl").write_text(json.dumps(row) + "\n", "utf-8")
        fit(copy, f"tables/{table}.jsonl", rows={table: 1})
    (copy / "tables" / "._entries.jsonl").write_bytes(b"left by a computer that the folder passed through")
    (copy / "more.txt").write_text("so was this")
    rewrite(copy, "people", lambda rows: [row | {"password": "$argon2id$x", "pin": "{}"} for row in rows])
    rewrite(copy, "devices", lambda rows: [*rows, {"id": "d-x", "name": "PH-X", "secret_sha256": sha256("secret")}])
    take_in(copy, tmp_path / "new")
    with open_book(tmp_path / "new" / BOOK_NAME) as book:
        assert book.query("SELECT * FROM tokens") == []
        assert book.query("SELECT * FROM people WHERE password IS NOT NULL OR pin IS NOT NULL") == []
        assert book.query("SELECT * FROM devices WHERE secret_sha256 IS NOT NULL") == []


@pytest.mark.parametrize(
    "name", ["tables/../../secret", "tables/../../../../../../etc/hostname", "tables//etc/hostname", "tables/none",
             "tables/", "tables/\x00"],
)
def test_names_that_lead_elsewhere_are_refused(copy: Path, name: str) -> None:
    (copy.parent / "secret").write_text("secret")
    manifest = json.loads((copy / "book.json").read_text("utf-8"))
    manifest["files"][name] = hashlib.sha256(b"secret").hexdigest()
    (copy / "book.json").write_text(json.dumps(manifest), "utf-8")
    refused(copy, "leads out of the export|missing, or is no file|cannot be read as an export")


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="this system has no pipes among its files")
def test_links_out_of_the_folder_and_pipes_are_refused(copy: Path, exported: Path) -> None:
    path = copy / "tables" / "vessels.jsonl"
    path.unlink()
    path.symlink_to(exported / "tables" / "vessels.jsonl")
    refused(copy, "leads out of the export")
    path.unlink()
    os.mkfifo(path)
    refused(copy, "missing, or is no file")
    shutil.rmtree(copy / "tables")
    (copy / "tables").symlink_to(exported / "tables")
    refused(copy, "leads out of the export")


def test_spoilt_at_random_it_is_refused_or_the_same_book(exported: Path, tmp_path: Path) -> None:
    """Single characters of the record changed, its sums made to fit: a sentence, or what was there before."""
    chance = random.Random(20)
    for n in range(60):
        folder = Path(shutil.copytree(exported, tmp_path / f"copy-{n}"))
        table = chance.choice(("entries", "closes"))
        path = folder / "tables" / f"{table}.jsonl"
        text = list(path.read_text("utf-8"))
        text[chance.randrange(len(text))] = chance.choice('0Z"{}[],:\\\n')
        path.write_text("".join(text), "utf-8")
        fit(folder, f"tables/{table}.jsonl")
        try:
            take_in(folder, tmp_path / f"new-{n}")
        except BookError:
            assert not (tmp_path / f"new-{n}").exists()
