"""One server for one book: a lock on the data folder that the system lets go of when the process ends."""

import os
import sys
import time
from pathlib import Path
from typing import IO


class AlreadyServed(Exception):
    """Another server has this data folder; `str(error)` is a sentence for whoever started this one."""


def hold_folder(data_dir: Path, wait_s: float = 0.0) -> IO[bytes]:
    """Take the folder for this process and return the open lock file; keep it for as long as you serve.

    Waits up to `wait_s` seconds [s] for a server that is just ending; then raises AlreadyServed.
    """
    file = (data_dir / "serving.lock").open("ab")
    deadline = time.monotonic() + wait_s
    while True:
        try:
            _lock(file)
            return file
        except OSError as error:
            if time.monotonic() >= deadline:
                file.close()
                raise AlreadyServed(
                    f"Another server has the book in {data_dir}. Stop that one first: a book has one server."
                ) from error
            time.sleep(0.05)


if sys.platform == "win32":
    import msvcrt

    def _lock(file: IO[bytes]) -> None:
        file.seek(0)
        msvcrt.locking(file.fileno(), msvcrt.LK_NBLCK, 1)

else:
    import fcntl

    def _lock(file: IO[bytes]) -> None:
        fcntl.flock(file, fcntl.LOCK_EX | fcntl.LOCK_NB)
        os.set_inheritable(file.fileno(), False)
