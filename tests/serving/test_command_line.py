"""The commands, as typed: each in a process of its own on a real data folder."""

import contextlib
import os
import subprocess
import sys
import time
import urllib.request
import zipfile
from pathlib import Path

import pytest

from tests.server_process import ROOT_DIR, find_free_port
from webapp.backups import BOOK_NAME
from webapp.book.opening import open_book
from webapp.keeping.folder_lock import hold_folder


def run(*arguments: str | Path, typed: str = "") -> subprocess.CompletedProcess[str]:
    command = [sys.executable, "-m", "webapp", *map(str, arguments)]
    return subprocess.run(
        command, input=typed, capture_output=True, text=True, timeout=90, cwd=ROOT_DIR, check=False
    )


@pytest.fixture
def book_dir(tmp_path: Path) -> Path:
    folder = tmp_path / "book"
    folder.mkdir()
    open_book(folder / BOOK_NAME).close()
    return folder


def test_help_lists_every_command() -> None:
    done = run("--help")
    assert done.returncode == 0
    commands = "serve demo set-up set-password new-phone phones verify rebuild backup restore rehearse export import"
    for command in commands.split():
        assert f"  {command} " in done.stdout
        assert run(command, "--help").returncode == 0


@pytest.mark.parametrize("command", [["verify"], ["rebuild"], ["phones"], ["backup", "x.zip"]])
def test_command_without_a_book_says_where_it_looked(tmp_path: Path, command: list[str]) -> None:
    done = run(*command, "--data", tmp_path / "none")
    assert done.returncode == 2
    assert f"There is no book in {tmp_path / 'none'}" in done.stderr
    assert not (tmp_path / "none").exists()


def test_verify_holds_for_a_new_book(book_dir: Path) -> None:
    done = run("verify", "--data", book_dir)
    assert done.returncode == 0
    assert "0 entries, the chain holds" in done.stdout


def test_verify_holds_a_book_to_heads_that_were_noted(book_dir: Path, tmp_path: Path) -> None:
    noted = tmp_path / "noted.txt"
    noted.write_text(run("verify", "--data", book_dir).stdout, "utf-8")
    assert "begins as 5 noted heads" in run("verify", "--data", book_dir, "--heads", noted).stdout
    noted.write_text(f"entries 3 {'0' * 64}\n", "utf-8")
    done = run("verify", "--data", book_dir, "--heads", noted)
    assert done.returncode == 2
    assert "3 were noted, and the book has only 0" in done.stderr
    noted.write_text("nothing", "utf-8")
    assert "There is no head in" in run("verify", "--data", book_dir, "--heads", noted).stderr


def test_file_that_is_no_book_is_said_in_one_sentence(tmp_path: Path) -> None:
    (tmp_path / BOOK_NAME).write_bytes(b"this is no database" * 100)
    done = run("verify", "--data", tmp_path)
    assert done.returncode == 2
    assert "Traceback" not in done.stderr
    assert str(tmp_path) in done.stderr


def test_book_of_a_newer_program_is_said_in_one_sentence(book_dir: Path) -> None:
    with open_book(book_dir / BOOK_NAME) as book, book.write() as database:
        database.conn.execute("INSERT INTO migrations VALUES ('from_the_future', '2030-01-01T00:00:00Z')")
    for command in (["verify"], ["serve", "--host", "127.0.0.1", "--port", "0"]):
        done = run(*command, "--data", book_dir)
        assert done.returncode == 2, command
        assert "newer Cellarslate" in done.stderr
        assert "Traceback" not in done.stderr


def test_backup_restores_into_a_new_folder_with_its_keys(book_dir: Path, tmp_path: Path) -> None:
    (book_dir / "tls").mkdir()
    for name in ("authority", "server"):
        (book_dir / "tls" / f"{name}.key").write_text("key")
    archive_path, restored_dir = tmp_path / "copy.zip", tmp_path / "restored"
    assert run("backup", archive_path, "--data", book_dir).returncode == 0
    assert run("restore", archive_path, "--data", restored_dir).returncode == 0
    with open_book(book_dir / BOOK_NAME) as first, open_book(restored_dir / BOOK_NAME) as second:
        select = "SELECT value FROM settings WHERE name = 'book_id'"
        assert first.one(select) == second.one(select) is not None
    assert (restored_dir / "tls" / "server.key").read_text() == "key"
    assert not (restored_dir / "tls" / "authority.key").exists(), "the authority's key is kept apart from backups"
    if os.name != "nt":
        assert archive_path.stat().st_mode & 0o077 == 0
        assert (restored_dir / "tls" / "server.key").stat().st_mode & 0o077 == 0


def test_backup_never_overwrites_and_restore_wants_an_empty_folder(book_dir: Path, tmp_path: Path) -> None:
    archive_path = tmp_path / "copy.zip"
    assert run("backup", archive_path, "--data", book_dir).returncode == 0
    before = archive_path.read_bytes()
    again = run("backup", archive_path, "--data", book_dir)
    assert (again.returncode, archive_path.read_bytes()) == (2, before)
    onto = run("restore", archive_path, "--data", book_dir)
    assert onto.returncode == 2
    assert "is not empty" in onto.stderr


@pytest.mark.parametrize("command", [["backup", "gone/b.zip"], ["restore", "b.zip", "--data", "file/in/it"]])
def test_a_place_that_is_none_is_said_in_one_sentence(book_dir: Path, tmp_path: Path, command: list[str]) -> None:
    (tmp_path / "file").write_text("in the way")
    here = {"gone/b.zip": tmp_path / "gone" / "b.zip", "file/in/it": tmp_path / "file" / "in" / "it"}
    data = [] if "--data" in command else ["--data", book_dir]
    done = run(*[here.get(word, word) for word in command], *data)
    assert done.returncode == 2
    assert done.stderr.startswith("Error: ") and len(done.stderr.splitlines()) == 1



@pytest.mark.parametrize("content", [b"no zip at all", None])
def test_file_that_is_no_backup_leaves_nothing_behind(tmp_path: Path, content: bytes | None) -> None:
    archive_path = tmp_path / "copy.zip"
    if content is None:
        with zipfile.ZipFile(archive_path, "w") as archive:
            archive.writestr("../evil.txt", "climbed out")
    else:
        archive_path.write_bytes(content)
    done = run("restore", archive_path, "--data", tmp_path / "deep" / "book")
    assert done.returncode == 2
    assert "Traceback" not in done.stderr
    assert sorted(path.name for path in tmp_path.rglob("*") if path.is_file()) == ["copy.zip"]


def test_set_up_then_serve_asks_nothing_more(tmp_path: Path) -> None:
    typed = "Tarrowdene Orchard Stills\nmetric\nIlka M.\nim\nplum and pear 26\nplum and pear 26\n"
    done = run("set-up", "--data", tmp_path, typed=typed)
    assert done.returncode == 0, done.stderr
    assert (tmp_path / "tls" / "authority.pem").exists()
    again = run("set-up", "--data", tmp_path, typed=typed)
    assert again.returncode == 2
    assert "set up already" in again.stderr


def test_reference_pages_are_what_the_declarations_say() -> None:
    done = run("write-docs", "--check")
    assert done.returncode == 0, done.stderr


def test_rebuild_is_refused_while_a_server_has_the_book(book_dir: Path) -> None:
    with hold_folder(book_dir):
        done = run("rebuild", "--data", book_dir)
    assert done.returncode == 2
    assert "Stop that one first" in done.stderr
    assert run("rebuild", "--compare", "--data", book_dir).returncode == 0


def test_demo_opens_on_this_computer_and_says_how_to_sign_in(tmp_path: Path) -> None:
    port = find_free_port()
    command = [sys.executable, "-m", "webapp", "demo", "--data", str(tmp_path), "--port", str(port)]
    output_path = tmp_path / "said.txt"
    with output_path.open("w") as output:
        process = subprocess.Popen(command, cwd=ROOT_DIR, stdout=output, stderr=subprocess.STDOUT)
    try:
        status = wait_for_answer(process, f"http://127.0.0.1:{port}/sign-in")
        assert status == 200, output_path.read_text()
    finally:
        process.terminate()
        process.wait(60)
    said = output_path.read_text()
    assert "Sign in as " in said
    assert f"Address: http://127.0.0.1:{port}/" in said
    # What the demo left behind is a whole book: chained, and folded as a fresh fold would be.
    assert "the chain holds" in run("verify", "--data", tmp_path).stdout
    assert "It came out as it was" in run("rebuild", "--compare", "--data", tmp_path).stdout
    assert "PH-3" in run("phones", "--data", tmp_path).stdout


def wait_for_answer(process: subprocess.Popen[bytes], url: str) -> int | None:
    """Return the status of the first answer, or None where the process ends or nothing answers in time."""
    deadline = time.monotonic() + 100
    while process.poll() is None and time.monotonic() < deadline:
        with contextlib.suppress(OSError), urllib.request.urlopen(url, timeout=10) as answer:
            return int(answer.status)
        time.sleep(0.1)
    return None


def test_a_book_goes_out_as_open_files_and_in_again_and_people_get_in_anew(tmp_path: Path) -> None:
    typed = "Tarrowdene Orchard Stills\nmetric\nIlka M.\nim\nplum and pear 26\nplum and pear 26\n"
    assert run("set-up", "--data", tmp_path / "old", typed=typed).returncode == 0
    out = run("export", tmp_path / "files", "--data", tmp_path / "old")
    assert out.returncode == 0, out.stderr
    taken = run("import", tmp_path / "files", "--data", tmp_path / "new")
    assert taken.returncode == 0, taken.stderr
    assert "came out as they were" in taken.stdout
    assert "set-password" in taken.stdout
    nobody = run("set-password", "zz", "--data", tmp_path / "new", typed="pear and plum 27\npear and plum 27\n")
    assert nobody.returncode == 2
    assert "nobody with the code ZZ" in nobody.stderr
    done = run("set-password", "im", "--data", tmp_path / "new", typed="pear and plum 27\npear and plum 27\n")
    assert done.returncode == 0, done.stderr
    with open_book(tmp_path / "new" / BOOK_NAME) as book:
        from webapp.book.house import people

        assert people.check_password(book, "IM", "pear and plum 27")
    assert run("backup", tmp_path / "new.zip", "--data", tmp_path / "new").returncode == 0
    tried = run("rehearse", tmp_path / "new.zip", "--data", tmp_path / "new")
    assert tried.returncode == 0, tried.stderr
    assert "can be restored" in tried.stdout
