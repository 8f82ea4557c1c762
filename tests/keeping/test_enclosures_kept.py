"""Pictures in backups, exports and salvaged books: each once, whole, and told of where it is lost."""

from click.testing import CliRunner

from tests.book.conftest import F1, NOW, entry, fill_world, send
from tests.book.test_enclosures import picture_of, sha
from webapp.backups import BOOK_NAME, restore_backup, write_backup
from webapp.book.enclosures import shelf
from webapp.book.opening import open_book
from webapp.cli import main
from webapp.keeping.export import export_book
from webapp.keeping.rehearsal import rehearse
from webapp.keeping.salvage import salvage
from webapp.keeping.take_in import take_in
from webapp.sealed import keep_recipient, make_key

FILES = [picture_of(colour=(80 * n, 0, 0)) for n in range(3)]


def house(tmp_path):
    """Make a data folder whose book has an entry with three pictures, of which two have come."""
    data_dir = tmp_path / "house"
    data_dir.mkdir()
    with open_book(data_dir / BOOK_NAME) as book:
        fill_world(book)
        send(book, entry("shift_note", F1, text="look") | {"enclosed": [sha(file) for file in FILES]})
        for file in FILES[:2]:
            shelf.take_whole(book, sha(file), file, via="phone d-one", now=NOW)
    return data_dir


def files_in(data_dir):
    return sorted(path.name for path in (data_dir / "enclosures").glob("??/*"))


def test_a_backup_has_them_beside_it_once_and_a_restore_has_them_back(tmp_path):
    data_dir, disk = house(tmp_path), tmp_path / "disk"
    disk.mkdir()
    write_backup(data_dir, disk / "one.zip")
    first = {path: path.stat().st_mtime_ns for path in (disk / "enclosures").rglob("*") if path.is_file()}
    assert sorted(path.name for path in first) == sorted(sha(file) for file in FILES[:2])
    write_backup(data_dir, disk / "two.zip")
    assert {path: path.stat().st_mtime_ns for path in (disk / "enclosures").rglob("*") if path.is_file()} == first
    restore_backup(disk / "two.zip", tmp_path / "new")
    assert files_in(tmp_path / "new") == files_in(data_dir)
    with open_book(tmp_path / "new" / BOOK_NAME) as book:
        assert shelf.verify(book) == []
        assert shelf.find_file(book, sha(FILES[0]))["via"] == "phone d-one"


def test_closed_backups_have_closed_pictures(tmp_path):
    data_dir, disk = house(tmp_path), tmp_path / "disk"
    disk.mkdir()
    keep_recipient(data_dir, make_key(tmp_path / "key"))
    write_backup(data_dir, disk / "one.zip.age")
    closed = [path for path in (disk / "enclosures").rglob("*") if path.is_file()]
    assert len(closed) == 2 and all(path.read_bytes().startswith(b"age-encryption.org/") for path in closed)
    restore_backup(disk / "one.zip.age", tmp_path / "new", tmp_path / "key")
    assert files_in(tmp_path / "new") == files_in(data_dir)


def test_a_picture_that_is_not_beside_the_backup_is_told_of_and_holds_nothing_up(tmp_path):
    data_dir, disk = house(tmp_path), tmp_path / "disk"
    disk.mkdir()
    write_backup(data_dir, disk / "one.zip")
    shelf.path_in(disk / "enclosures", sha(FILES[0])).unlink()
    said = CliRunner().invoke(main, ["restore", str(disk / "one.zip"), "--data", str(tmp_path / "new")])
    assert said.exit_code == 0 and "1 pictures and papers are not beside the backup" in said.output
    verified = CliRunner().invoke(main, ["verify", "--data", str(tmp_path / "new")])
    assert verified.exit_code != 0 and "is lost" in verified.output
    assert any("is lost" in line for line in rehearse(disk / "one.zip", data_dir))
    assert CliRunner().invoke(main, ["verify", "--data", str(data_dir)]).exit_code == 0


def test_an_export_has_them_by_digest_and_is_taken_in_with_them(tmp_path):
    data_dir = house(tmp_path)
    manifest = export_book(data_dir / BOOK_NAME, tmp_path / "out")
    names = sorted(name for name in manifest["files"] if name.startswith("enclosures/"))
    assert names == sorted(f"enclosures/{sha(file)}.jpg" for file in FILES[:2])
    assert (tmp_path / "out" / names[0]).read_bytes() in FILES
    take_in(tmp_path / "out", tmp_path / "new")
    assert files_in(tmp_path / "new") == files_in(data_dir)
    with open_book(tmp_path / "new" / BOOK_NAME) as book:
        assert shelf.verify(book) == []


def test_a_salvaged_book_has_what_lies_beside_the_wreck(tmp_path):
    data_dir = house(tmp_path)
    salvage(data_dir, tmp_path / "new")
    assert files_in(tmp_path / "new") == files_in(data_dir)
    with open_book(tmp_path / "new" / BOOK_NAME) as book:
        assert shelf.verify(book) == []
