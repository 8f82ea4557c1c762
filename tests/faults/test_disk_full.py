"""The server's disk is full: it says so and keeps nothing by halves; with room again everything comes in."""

from __future__ import annotations

import contextlib
import os
import random
import subprocess
import sys
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from tests.book.conftest import fill_world
from tests.faults.judge import judge
from tests.faults.plain_phone import PlainPhone, let_in
from tests.faults.tally import new_tally
from tests.server_process import ServerProcess
from webapp.book.opening import open_book

DISK_MB = 128  # an entry takes about 5 KB of book with its fold
pytestmark = pytest.mark.skipif(not sys.platform.startswith("linux"), reason="a small disk is made the Linux way")


class SmallDisk:
    """A disk of a few megabytes (tmpfs, for root), or else a limit on how long a file of the server may get."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        folder.mkdir()
        mount = ["mount", "-t", "tmpfs", "-o", f"size={DISK_MB}m", "tmpfs", str(folder)]
        self.is_mounted = os.geteuid() == 0 and subprocess.run(mount, capture_output=True, check=False).returncode == 0

    def fill(self, server: ServerProcess, leave: int) -> None:
        """Leave so many bytes of room, and no more."""
        if self.is_mounted:
            room = os.statvfs(self.folder)
            with (self.folder / "filler").open("wb") as file:
                file.write(b"x" * max(0, room.f_bavail * room.f_frsize - leave))
        else:
            self._limit(server, max(path.stat().st_size for path in server.data_dir.glob("book.sqlite*")) + leave)

    def free(self, server: ServerProcess) -> None:
        """Make room again."""
        if self.is_mounted:
            (self.folder / "filler").unlink(missing_ok=True)
        elif server.process is not None:
            self._limit(server, -1)

    def _limit(self, server: ServerProcess, most: int) -> None:
        import resource

        assert server.process is not None
        children = Path(f"/proc/{server.process.pid}/task/{server.process.pid}/children").read_text().split()
        for child in children:
            resource.prlimit(int(child), resource.RLIMIT_FSIZE, (most, -1))  # type: ignore[attr-defined]

    def close(self) -> None:
        """Take the disk away."""
        if self.is_mounted:
            subprocess.run(["umount", "-l", str(self.folder)], check=False)


@pytest.fixture
def disk(tmp_path: Path) -> Iterator[SmallDisk]:
    """A small disk, taken away after the test."""
    made = SmallDisk(tmp_path / "disk")
    yield made
    made.close()


def _hand_in_until_full(phone: PlainPhone, chance: random.Random) -> bool:
    for _ in range(200):
        if len(phone.waiting) < 60:
            phone.log(chance.randrange(10, 60))
        if not phone.hand_in():
            return True
    return False


def fill_often(disk: SmallDisk, make_server: Callable[..., ServerProcess], times: int, seed: int) -> None:
    """Fill the disk so many times in the middle of hand-ins; every other time the server is killed while it is full."""
    chance = random.Random(seed)
    tally = new_tally("server's disk full")
    data_dir = disk.folder / "book"
    data_dir.mkdir()
    with open_book(data_dir / "book.sqlite") as book:
        fill_world(book)
    server = make_server(data_dir)
    (phone,) = let_in(data_dir / "book.sqlite", server.url, 1, seed=seed)
    for number in range(times):
        disk.fill(server, chance.randrange(0, 200_000))
        if _hand_in_until_full(phone, chance):
            tally.faults += 1
            assert phone.statuses[500] == 0, phone.last_error
            assert "disk" in phone.last_error, phone.last_error
        if number % 2:
            server.kill()
        disk.free(server)
        if server.process is None:
            server.start()
        phone.hand_in_all()
    server.stop()
    with contextlib.suppress(OSError):
        (disk.folder / "filler").unlink()
    judge(data_dir / "book.sqlite", list(phone.kept.values()), tally)


def test_a_full_disk_is_said_and_nothing_is_kept_by_halves(
    disk: SmallDisk, make_server: Callable[..., ServerProcess]
) -> None:
    fill_often(disk, make_server, 2, 5)


@pytest.mark.soak
@pytest.mark.timeout(0)  # FAULT_FULL says how often
def test_a_disk_that_is_full_again_and_again(disk: SmallDisk, make_server: Callable[..., ServerProcess]) -> None:
    fill_often(disk, make_server, int(os.environ.get("FAULT_FULL", 60)), 6)
