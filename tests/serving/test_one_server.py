"""One book, one server, by whatever name the book is reached: link, second name, moved file, share of another computer.

What a second name of a database does is SQLite's own word: sqlite.org, howtocorrupt.html, "Multiple links to the same
file".
"""

from __future__ import annotations

import json
import os
import subprocess
import sys
import threading
from pathlib import Path

import pytest

from tests.server_process import PROGRAM_PATH, ROOT_DIR, ServerProcess
from webapp.book.opening import open_book
from webapp.book.record.errors import BookError
from webapp.keeping import folder_lock
from webapp.keeping.folder_lock import BOOK_NAME, LOCK_NAME, NOTE_NAME, AlreadyServed, hold_folder

TRY = """
import sys
from pathlib import Path
from webapp.keeping.folder_lock import AlreadyServed, hold_folder
try:
    hold_folder(Path(sys.argv[1])).close()
    print("let in")
except AlreadyServed as error:
    print(error)
"""


def second(folder: Path) -> str:
    """Return the output of a second process that tries to serve this folder."""
    environment = {**os.environ, "PYTHONPATH": PROGRAM_PATH}
    done = subprocess.run([sys.executable, "-c", TRY, str(folder)], capture_output=True, text=True, timeout=60,
                          env=environment, cwd=ROOT_DIR, check=True)
    return done.stdout.strip()


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    made = tmp_path / "book"
    made.mkdir()
    with open_book(made / BOOK_NAME):
        pass
    return made


needs_links = pytest.mark.skipif(sys.platform == "win32", reason="links want a right on Windows that tests have not")


@needs_links
def test_a_link_in_the_place_of_the_folder_or_of_the_book_lets_no_second_server_in(folder: Path) -> None:
    by_folder, by_book = folder.with_name("linked"), folder.with_name("another")
    by_folder.symlink_to(folder)
    by_book.mkdir()
    (by_book / BOOK_NAME).symlink_to(folder / BOOK_NAME)
    with hold_folder(folder):
        for name in (by_folder, by_book):
            assert "Another server has the book" in second(name)
    for name in (by_folder, by_book):
        assert second(name) == "let in"
    with hold_folder(by_book):
        assert "Another server has the book" in second(folder)


@needs_links
def test_a_second_name_of_the_book_is_refused_before_anything_reads_it(folder: Path) -> None:
    elsewhere = folder.with_name("elsewhere")
    elsewhere.mkdir()
    os.link(folder / BOOK_NAME, elsewhere / BOOK_NAME)
    for name in (folder, elsewhere):
        with pytest.raises(BookError, match="second name"):
            open_book(name / BOOK_NAME)
    # The step that the sentence names: a copy in its place.
    copy = folder / "copy"
    copy.write_bytes((folder / BOOK_NAME).read_bytes())
    copy.replace(folder / BOOK_NAME)
    for name in (folder, elsewhere):
        open_book(name / BOOK_NAME).close()


@needs_links
def test_a_server_says_so_and_ends(folder: Path) -> None:
    os.link(folder / BOOK_NAME, folder / "second.sqlite")
    with pytest.raises(RuntimeError, match=r"(?s)ended with code 2.*second name"):
        ServerProcess(folder).start()


@pytest.mark.skipif(sys.platform not in ("linux", "win32"), reason="a byte of the book is locked on Linux and Windows")
@pytest.mark.skipif(sys.platform == "win32", reason="Windows renames no file that is open")
def test_neither_a_lost_lock_file_nor_a_moved_book_lets_a_second_server_in(folder: Path) -> None:
    with hold_folder(folder):
        (folder / LOCK_NAME).unlink()
        assert "Another server has the book" in second(folder)
        moved = folder.with_name("moved")
        moved.mkdir()
        (folder / BOOK_NAME).rename(moved / BOOK_NAME)
        assert "Another server has the book" in second(moved)
    assert second(moved) == "let in"


def test_the_lock_is_in_no_way_of_those_who_read_and_write_the_book(folder: Path) -> None:
    with hold_folder(folder), open_book(folder / BOOK_NAME) as book:
        program = "import sys\nfrom pathlib import Path\nfrom webapp.book.opening import open_book\n" \
                  "with open_book(Path(sys.argv[1])) as book, book.write():\n    print('written')\n"
        done = subprocess.run([sys.executable, "-c", program, str(folder / BOOK_NAME)], capture_output=True, text=True,
                              timeout=60, env={**os.environ, "PYTHONPATH": PROGRAM_PATH}, cwd=ROOT_DIR, check=False)
        assert done.stdout.strip() == "written", done.stderr
        with book.write():
            pass


def test_a_book_that_is_made_while_the_folder_is_held_is_locked_too(tmp_path: Path) -> None:
    with hold_folder(tmp_path) as held:
        open_book(tmp_path / BOOK_NAME).close()
        held.take_book()
        (tmp_path / LOCK_NAME).unlink(missing_ok=True) if sys.platform != "win32" else None
        assert "Another server has the book" in second(tmp_path)


def note_of(folder: Path, name: str, beat: str) -> None:
    (folder / NOTE_NAME).write_text(json.dumps({"name": name, "run": f"run of {name}", "beat": beat}), "utf-8")


def test_a_share_that_passes_no_locks_on_is_told_by_the_note_of_the_other_computer(
    folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The other computer writes its note anew; no lock of it is seen here."""
    monkeypatch.setattr(folder_lock, "BEAT_S", 0.2)
    ended = threading.Event()

    def beat() -> None:
        number = 0
        while not ended.wait(0.1):
            number += 1
            note_of(folder, "cellar-two", str(number))

    note_of(folder, "cellar-two", "0")
    other = threading.Thread(target=beat)
    other.start()
    try:
        with pytest.raises(AlreadyServed, match="The computer cellar-two serves the book"):
            hold_folder(folder)
    finally:
        ended.set()
        other.join()


def test_a_note_that_was_left_behind_keeps_nobody_out(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(folder_lock, "BEAT_S", 0.1)
    note_of(folder, "cellar-gone", "7")
    with hold_folder(folder) as held:
        held.beat()
        own = json.loads((folder / NOTE_NAME).read_text("utf-8"))
        assert own["name"] != "cellar-gone"
    assert not (folder / NOTE_NAME).exists()


def test_a_note_of_this_computer_is_not_waited_for_after_a_kill_or_a_power_cut(
    folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    with hold_folder(folder) as held:
        held.beat()
        left = (folder / NOTE_NAME).read_text("utf-8")
    monkeypatch.setattr(folder_lock.time, "sleep", lambda _s: pytest.fail("it waited"))
    (folder / NOTE_NAME).write_text(left, "utf-8")  # killed
    hold_folder(folder).close()
    (folder / NOTE_NAME).write_text(json.dumps({**json.loads(left), "run": "before the cut"}), "utf-8")
    hold_folder(folder).close()
