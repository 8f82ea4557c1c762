"""One server for one book, by whatever name its folder or file is reached.

Two locks that the system lets go of when the process ends: on a file in the book's real folder, and on a byte of the
book itself, so that neither a second name nor another folder lets a second server in. Where a network share passes no
locks on, the server on another computer is known by a note in the folder that it writes anew every few seconds.
"""

from __future__ import annotations

import contextlib
import json
import os
import platform
import secrets
import struct
import sys
import threading
import time
from pathlib import Path
from typing import IO

BOOK_NAME = "book.sqlite"
LOCK_NAME = "serving.lock"
NOTE_NAME = "serving.note"
BEAT_S = 4.0
# SQLite keeps its own locks on the first 512 bytes of the page at 1 GiB, and writes nothing on that page, whatever the
# size of the book (sqlite.org, fileformat2.html, "The Lock-Byte Page"); ours is behind them.
_OUR_BYTE = 0x40000000 + 1024


class AlreadyServed(Exception):
    """Another server has this book; `str(error)` is a sentence for whoever started this one."""


class Held:
    """A folder that is held for this process; close it, or use it as a context manager, to let it go.

    Nothing else in this process may open and close the book's file by itself meanwhile: on POSIX systems that lets go
    of SQLite's own locks (fcntl(2), "Advisory record locking").
    """

    def __init__(self, data_dir: Path, files: list[IO[bytes]]) -> None:
        self._data_dir, self._files = data_dir, files
        self._has_book = False
        self._ended = threading.Event()
        self._beat: threading.Thread | None = None

    def take_book(self) -> None:
        """Lock the book itself, as soon as there is one. Raises AlreadyServed; a second call does nothing."""
        path = self._data_dir / BOOK_NAME
        if self._has_book or sys.platform not in ("linux", "win32") or not path.exists():
            return
        file = path.open("r+b")
        self._files.append(file)
        try:
            _lock_byte(file, _OUR_BYTE)
        except OSError as error:
            raise _served(self._data_dir) from error
        self._has_book = True

    def beat(self) -> None:
        """Go on writing the note until closed, so that a server on another computer sees that this one lives."""
        note = self._data_dir / NOTE_NAME

        def write() -> None:
            # Full or read-only for a moment: the locks hold all the same.
            with contextlib.suppress(OSError):
                note.write_text(json.dumps({**_this_computer(), "beat": secrets.token_hex(8)}), "utf-8")

        def go_on() -> None:
            while not self._ended.wait(BEAT_S):
                write()
            with contextlib.suppress(OSError):
                note.unlink()

        write()
        self._beat = threading.Thread(target=go_on, name="folder held", daemon=True)
        self._beat.start()

    def close(self) -> None:
        """Let the folder go."""
        self._ended.set()
        if self._beat:
            self._beat.join()
        for file in reversed(self._files):
            file.close()

    def __enter__(self) -> Held:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()


def hold_folder(data_dir: Path, wait_s: float = 0.0) -> Held:
    """Take the folder, and the book in it, for this process; keep what is returned for as long as you serve.

    Waits up to `wait_s` seconds [s] for a server that is just ending; then raises AlreadyServed. OSError where nothing
    can be written in the folder.
    """
    # A link in the place of the book leads to the folder that counts; SQLite goes there too.
    folders = dict.fromkeys([data_dir.resolve(), (data_dir / BOOK_NAME).resolve().parent])
    deadline = time.monotonic() + wait_s
    while True:
        held = Held(data_dir, [])
        try:
            for folder in folders:
                file = (folder / LOCK_NAME).open("ab")
                held._files.append(file)
                try:
                    _lock(file)
                except OSError as error:
                    raise _served(data_dir) from error
            held.take_book()
            _see_whether_another_computer_serves(data_dir)
            return held
        except BaseException as error:
            held.close()
            if not isinstance(error, AlreadyServed) or time.monotonic() >= deadline:
                raise
        time.sleep(0.05)


def _served(data_dir: Path) -> AlreadyServed:
    return AlreadyServed(
        f"Another server has the book in {data_dir}. Stop that one first: a book has one server."
    )


def _see_whether_another_computer_serves(data_dir: Path) -> None:
    """Raise AlreadyServed where a note by another computer changes while it is looked at.

    No clock is compared: those of two computers differ, and a note that stays as it is was left by one that is gone.
    """
    first, own = _read_note(data_dir), _this_computer()
    # After a power cut the run is another, and the name the same. Containers on one computer share its run, and locks.
    if not first or any(first.get(name) == said for name, said in own.items()):
        return
    until = time.monotonic() + 3 * BEAT_S
    while time.monotonic() < until:
        time.sleep(0.1)
        now = _read_note(data_dir)
        if not now:
            return
        if now.get("beat") != first.get("beat"):
            raise AlreadyServed(
                f"The computer {now.get('name')} serves the book in {data_dir}. Stop its server first: a book has one. "
                "And let the folder lie on a disk of the computer that serves it, not on a share."
            )


def _read_note(data_dir: Path) -> dict[str, str]:
    try:
        note = json.loads((data_dir / NOTE_NAME).read_text("utf-8"))
        return note if isinstance(note, dict) else {}
    except FileNotFoundError:
        return {}
    except (OSError, ValueError):
        return {"beat": "half written"}


def _this_computer() -> dict[str, str]:
    """Return what tells this computer from others: its name, and on Linux the run of its kernel."""
    with contextlib.suppress(OSError):
        return {"name": platform.node(), "run": Path("/proc/sys/kernel/random/boot_id").read_text("ascii").strip()}
    return {"name": platform.node()}


if sys.platform == "win32":
    import msvcrt

    def _lock(file: IO[bytes]) -> None:
        _lock_byte(file, 0)

    def _lock_byte(file: IO[bytes], at: int) -> None:
        file.seek(at)
        msvcrt.locking(file.fileno(), msvcrt.LK_NBLCK, 1)

else:
    import fcntl

    def _lock(file: IO[bytes]) -> None:
        fcntl.flock(file, fcntl.LOCK_EX | fcntl.LOCK_NB)
        os.set_inheritable(file.fileno(), False)

    def _lock_byte(file: IO[bytes], at: int) -> None:
        """Lock one byte of an open file for as long as it is open (Linux).

        By a lock of the open file, not of the process: that one would go with the first connection that SQLite closes.
        """
        # struct flock: type, whence, start, length, process, which is 0 here. [fcntl(2), F_OFD_SETLK]
        fcntl.fcntl(file, fcntl.F_OFD_SETLK, struct.pack("hhqqi4x", fcntl.F_WRLCK, os.SEEK_SET, at, 1, 0))
