"""The whole book out as open files, and in again: nothing secret, nothing lost, the same to the byte."""

import csv
import hashlib
import json
import random
import shutil
import sqlite3
from contextlib import closing

import pytest

import webapp.kinds
from tests.book.conftest import fill_world, reading, send
from tests.book.test_convergence import hand_in_shuffled, make_story
from webapp.backups import BOOK_NAME
from webapp.book.fold import fold
from webapp.book.fold.fold import DERIVED
from webapp.book.house import devices, people, registry
from webapp.book.opening import open_book
from webapp.book.record import log
from webapp.book.record.errors import BookError
from webapp.keeping import tables
from webapp.keeping.export import export_book
from webapp.keeping.take_in import take_in

SECRET = "plum and pear and quince"


@pytest.fixture(scope="module")
def told(tmp_path_factory):
    """A data folder with a book that tells of much: all kinds, four clocks, refused ones, secrets."""
    data_dir = tmp_path_factory.mktemp("told") / "book"
    data_dir.mkdir()
    with open_book(data_dir / BOOK_NAME) as book:
        fill_world(book)
        hand_in_shuffled(book, make_story(random.Random(5), 120), random.Random(6))
        odd = reading(seq=9_000, remark="Zwetschge \u2013 \u202e\U0001f351 =1+1")
        send(book, odd, {"id": "no entry"}, skew_s=-0.03)
        people.set_password(book, "NS", SECRET)
        people.set_pin(book, "NS", "4711")
        devices.new_token(book, "JK", "PH-9")
        registry.set_site(book, {"name": "Tarrowdene"}, "JK")
    return data_dir


@pytest.fixture(scope="module")
def exported(told, tmp_path_factory):
    folder = tmp_path_factory.mktemp("out") / "export"
    return folder, export_book(told / BOOK_NAME, folder)


def rows_of(path, table, columns):
    with closing(sqlite3.connect(path)) as conn:
        return conn.execute(f"SELECT {', '.join(columns)} FROM {table} ORDER BY 1, 2").fetchall()


def test_what_comes_in_is_what_went_out_to_the_byte(told, exported, tmp_path):
    folder, manifest = exported
    assert manifest["entries"] > 100
    said = take_in(folder, tmp_path / "new")
    assert said["is_same_fold"] is True
    with open_book(told / BOOK_NAME) as old, open_book(tmp_path / "new" / BOOK_NAME) as new:
        assert fold.dump(new) == fold.dump(old)
        assert log.load_head(new) == log.load_head(old)
        assert log.verify(new) == []
        for table, columns in tables.record_tables(old).items():
            if table == "settings":
                columns = ["name", "value"]
                ours = [[row for row in rows_of(b.path, table, columns) if row[0] != "turn"] for b in (old, new)]
            else:
                ours = [rows_of(b.path, table, columns) for b in (old, new)]
            assert ours[0] == ours[1], table
    again = export_book(tmp_path / "new" / BOOK_NAME, tmp_path / "again")
    same = lambda one: {n: d for n, d in one["files"].items() if n != "tables/settings.jsonl"}  # noqa: E731
    assert same(again) == same(manifest), "the files of a second export are the same"


def test_phones_fetch_every_card_of_an_imported_book_anew(told, exported, tmp_path):
    take_in(exported[0], tmp_path / "new")
    turn = "SELECT value FROM settings WHERE name = 'turn'"
    with open_book(told / BOOK_NAME) as old, open_book(tmp_path / "new" / BOOK_NAME) as new:
        assert int(new.one(turn)["value"]) >= int(old.one(turn)["value"])


def test_no_secret_is_in_it(told, exported):
    with open_book(told / BOOK_NAME) as book:
        secrets = [row["password"] for row in book.query("SELECT password FROM people WHERE password IS NOT NULL")]
        pins = book.query("SELECT pin FROM people WHERE pin IS NOT NULL")
        secrets += [json.loads(row["pin"])["hash"] for row in pins]
        secrets += [row["token_sha256"] for row in book.query("SELECT token_sha256 FROM tokens")]
    assert len(secrets) == 3
    for path in exported[0].rglob("*"):
        if path.is_file():
            text = path.read_text("utf-8")
            assert not [one for one in (*secrets, SECRET, "argon2") if one in text], path


def test_every_table_is_known_to_travel_or_not_to(told):
    """A new table travels by itself; one that must not has to be named."""
    with open_book(told / BOOK_NAME) as book:
        names = {row["name"] for row in book.query("SELECT name FROM sqlite_master WHERE type = 'table'")}
        travels = tables.record_tables(book)
    left = names - travels.keys() - {name for name in names if name.startswith("sqlite_")}
    index = {name for name in left if name.startswith("search_")}
    assert index >= {"search_names", "search_remarks", "search_due", "search_state"}
    own = {"card_turns", "migrations", "ended_sessions", "tokens", "passkeys", "rules", "differences"}
    assert left - index == {*DERIVED, *own}
    hidden = [c for columns in travels.values() for c in columns if any(w in c for w in ("password", "pin", "secret"))]
    assert hidden == []


def test_the_files_can_be_read_without_this_program(exported):
    """The chain worked out anew from the README's words alone."""
    folder, manifest = exported
    before = "0" * 64
    lines = (folder / "tables" / "entries.jsonl").read_text("utf-8").splitlines()
    for line in lines:
        row = json.loads(line)
        body = json.dumps(row["body"], sort_keys=True, ensure_ascii=False, separators=(",", ":"))
        assert hashlib.sha256(body.encode()).hexdigest() == row["body_sha256"]
        parts = (before, row["book_no"], row["body_sha256"], row["received_at"], f"{row['skew_s']:.1f}", row["via"])
        before = hashlib.sha256("\n".join(map(str, parts)).encode()).hexdigest()
        assert before == row["digest"]
    assert before == manifest["last_digest"]
    counted = 0
    for kind in webapp.kinds.ALL:
        with (folder / "csv" / f"{kind.name}.csv").open(encoding="utf-8-sig", newline="") as file:
            found = list(csv.reader(file))
        assert all(len(row) == len(found[0]) for row in found)
        assert not [cell for row in found for cell in row if cell[:1] in tuple("=@")]
        counted += len(found) - 1
    assert counted == manifest["entries"] == len(lines)
    assert "cellarslate import" in (folder / "README.txt").read_text("utf-8")


@pytest.mark.parametrize(
    ("name", "old", "new"),
    [("tables/entries.jsonl", "NS", "XX"), ("tables/vessels.jsonl", "2000", "2001"), ("book.json", "entries", "e")],
)
def test_an_export_that_was_changed_is_not_taken_in(exported, tmp_path, name, old, new):
    folder = tmp_path / "copy"
    shutil.copytree(exported[0], folder)
    text = (folder / name).read_text("utf-8")
    assert old in text
    (folder / name).write_text(text.replace(old, new, 1), "utf-8")
    with pytest.raises(BookError):
        take_in(folder, tmp_path / "new")
    assert not (tmp_path / "new").exists()
    assert [path.name for path in tmp_path.iterdir()] == ["copy"], "nothing is left behind"


def test_entries_changed_with_their_digests_of_files_are_still_found(exported, tmp_path):
    """Whoever rewrites book.json too has still to rewrite the chain."""
    folder = tmp_path / "copy"
    shutil.copytree(exported[0], folder)
    path = folder / "tables" / "entries.jsonl"
    path.write_text(path.read_text("utf-8").replace('"person":"NS"', '"person":"TB"', 1), "utf-8")
    manifest = json.loads((folder / "book.json").read_text("utf-8"))
    manifest["files"]["tables/entries.jsonl"] = hashlib.sha256(path.read_bytes()).hexdigest()
    (folder / "book.json").write_text(json.dumps(manifest), "utf-8")
    with pytest.raises(BookError, match="does not verify"):
        take_in(folder, tmp_path / "new")


def test_nothing_is_written_over(told, exported, tmp_path):
    (tmp_path / "there").mkdir()
    (tmp_path / "there" / "file").write_text("mine")
    with pytest.raises(BookError, match="not empty"):
        export_book(told / BOOK_NAME, tmp_path / "there")
    with pytest.raises(BookError, match="not empty"):
        take_in(exported[0], tmp_path / "there")
    assert (tmp_path / "there" / "file").read_text() == "mine"
