"""The power fails at any point, the disk is full, read-only or broken at any write: what was acknowledged is there.

The app runs unchanged, over the SQLite that Python ships with; `recording_disk` says what is modelled of a power cut,
and what is not. A phone's receipt is the acknowledgement: on it the phone lets its entry go.
"""

from __future__ import annotations

import os
import random
import shutil
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest
from click.testing import CliRunner

from tests.book.conftest import fill_world
from tests.faults import recording_disk
from tests.faults.plain_phone import PlainPhone
from tests.faults.recording_disk import Disk, Replay
from tests.faults.tally import new_tally
from webapp import create_app
from webapp.book import verification
from webapp.book.fold import fold
from webapp.book.house import devices, journal, people
from webapp.book.opening import open_book
from webapp.book.record.damage import examine
from webapp.book.record.errors import BookError
from webapp.cli import main

MOODS = ("none", "all", "some", "some")
PASSWORD = "plum and pear and quince"


@pytest.fixture
def disk(tmp_path: Path) -> Iterator[Disk]:
    """A disk that keeps account, below `tmp_path`."""
    try:
        with recording_disk.install(tmp_path) as made:
            yield made
    except recording_disk.CannotRecord as error:
        pytest.skip(str(error))


class ShortWay(PlainPhone):
    """A phone whose batches go to the app without a network between; `acknowledged` after each receipt."""

    def __init__(self, house: House, seed: int) -> None:
        self.house = house
        token = devices.new_token(house.book, "JK", "PH-1")
        device, secret = devices.enrol_device(house.book, token, "", datetime.now(UTC))
        super().__init__("http://localhost", device["id"], secret, seed=seed)

    def _ask(self, method: str, path: str, body: dict[str, Any], timeout_s: float) -> dict[str, Any] | None:
        client = self.house.app.test_client()
        client.set_cookie("cellarslate_device", self.secret)
        reply = client.open(path, method=method, json=body)
        self.statuses[reply.status_code] += 1
        said = reply.get_json()
        self.last_error = said.get("error", "")
        return said if reply.status_code == 200 else None


class House:
    """The app over a book below the disk that keeps account."""

    def __init__(self, disk: Disk, folder: Path, seed: int) -> None:
        self.disk, self.folder = disk, folder
        self.start()
        fill_world(self.book)
        self.phone = ShortWay(self, seed)

    def start(self) -> None:
        """Open the book and make the app anew."""
        self.app = create_app(self.folder)
        self.book = self.app.extensions["book"]

    def hand_in(self, count: int) -> None:
        """Log so many, hand them in, and note what the book has acknowledged by now."""
        self.phone.log(count)
        assert self.phone.hand_in(), self.phone.last_error
        self.disk.note("acknowledged", mark=frozenset(self.phone.receipts))


def work(disk: Disk, folder: Path, seed: int, batches: int, each: int) -> House:
    """Begin a book, hand in, read, close and open again; the journal of access is written beside it."""
    house = House(disk, folder, seed)
    for number in range(batches):
        house.hand_in(each)
        journal.note(folder, "signed_in", "JK", "10.0.0.7")
        if number % 7 == 3:
            house.book.query("SELECT count(*) FROM entries")
        if number % 10 == 9:
            house.book.close()
            house.start()
    return house


def cut_often(disk: Disk, points: Iterator[tuple[int, str]], seed: int, scratch: Path) -> tuple[int, int, int]:
    """Cut the power at each point (event, mood; in order); return cuts, cuts that lost entries, broken books."""
    chance, replay, at = random.Random(seed), Replay(), 0
    acknowledged: frozenset[str] = frozenset()
    cuts = lost = broken = 0
    for point, mood in points:
        for event in disk.events[at:point]:
            replay.play(event)
            acknowledged = event.mark if event.what == "acknowledged" else acknowledged
        at = point
        with tempfile.TemporaryDirectory(dir=scratch) as left:
            replay.leave(Path(left), chance, mood)
            cuts += 1
            found, wrong = look_at(Path(left) / "book")
            broken += bool(wrong)
            lost += not acknowledged <= found
    return cuts, lost, broken


def look_at(folder: Path) -> tuple[set[str], list[str]]:
    """Open what a cut left as the next start does; return the entries that are there, and what does not hold."""
    try:
        with open_book(folder / "book.sqlite") as book:
            wrong = [*examine(book.path, is_quick=False), *verification.verify_as_it_is(book)]
            found = {row["id"] for row in book.query("SELECT id FROM entries")}
    except Exception as error:  # whatever it is: the book did not open
        return set(), [repr(error)]
    return found, wrong + journal.verify(folder)


def points_of(disk: Disk, count: int, seed: int) -> Iterator[tuple[int, str]]:
    """Yield points in order: around each receipt, where most is at stake, and others by chance."""
    chance = random.Random(seed)
    receipts = [at for at, event in enumerate(disk.events) if event.what == "acknowledged"]
    near = [max(0, at + chance.randrange(-3, 2)) for at in chance.sample(receipts, min(len(receipts), count // 2))]
    anywhere = [chance.randrange(len(disk.events) + 1) for _ in range(count - len(near))]
    for at in sorted([*near, *anywhere]):
        yield at, chance.choice(MOODS)


def test_after_a_power_cut_at_any_point_the_book_opens_with_all_that_was_acknowledged(
    disk: Disk, tmp_path: Path
) -> None:
    work(disk, tmp_path / "book", 1, 16, 8).book.close()
    assert len({event.name for event in disk.events if event.what == "write"}) >= 3, "book, its log, the journal"
    (tmp_path / "cut").mkdir()
    tally = new_tally("power cut, what was not synced lost or torn")
    points = [*points_of(disk, 22, 2), (len(disk.events), "none")]
    tally.faults, tally.lost, broken = cut_often(disk, iter(points), 3, tmp_path / "cut")
    tally.entries = 16 * 8
    tally.check()
    assert broken == 0


@pytest.mark.parametrize(
    ("how", "loses", "breaks"), [("FULL", False, False), ("NORMAL", True, False), ("OFF", True, True)]
)
def test_the_model_of_a_power_cut_tells_a_book_that_syncs_too_little(
    disk: Disk, tmp_path: Path, how: str, loses: bool, breaks: bool
) -> None:
    """With NORMAL the last commits may go, with OFF the file may be spoilt: SQLite's own words (pragma.html)."""
    house = House(disk, tmp_path / "book", 4)
    house.book._writer.conn.execute(f"PRAGMA synchronous = {how}")
    for number in range(4):
        house.hand_in(3)
        if number == 2:
            house.book._writer.conn.execute("PRAGMA wal_checkpoint(TRUNCATE)")
    acks = [at + 1 for at, event in enumerate(disk.events) if event.what == "acknowledged"]
    points = [(at, "none") for at in acks] + [(acks[-1], "some")] * 6
    house.book.close()
    (tmp_path / "cut").mkdir()
    _, lost, broken = cut_often(disk, iter(points), 5, tmp_path / "cut")
    assert (lost > 0, broken > 0) == (loses, breaks)


@pytest.mark.soak
@pytest.mark.timeout(0)  # FAULT_CUTS_OF_POWER says how many, FAULT_SEED with which stories
def test_power_cuts_by_the_thousand(disk: Disk, tmp_path: Path) -> None:
    tally = new_tally("power cut, what was not synced lost or torn")
    wanted, seed = int(os.environ.get("FAULT_CUTS_OF_POWER", 3000)), int(os.environ.get("FAULT_SEED", 100))
    (tmp_path / "cut").mkdir()
    broken = 0
    while tally.faults < wanted:
        seed += 1
        disk.events.clear()
        house = work(disk, tmp_path / "book", seed, 40, random.Random(seed).randrange(1, 30))
        house.book.close()
        tally.entries += len(house.phone.receipts)
        points = points_of(disk, min(250, wanted - tally.faults), seed)
        cuts, lost, torn = cut_often(disk, points, seed, tmp_path / "cut")
        tally.faults, tally.lost, broken = tally.faults + cuts, tally.lost + lost, broken + torn
        shutil.rmtree(tmp_path / "book")
    tally.check()
    assert broken == 0


@contextmanager
def refused(disk: Disk, after: int, code: int, of: str = "write", once: bool = False) -> Iterator[list[int]]:
    """Refuse each write (or sync) after so many; yields a list that grows with each that was refused."""
    done, refusals = 0, []

    def refuse(what: str) -> int:
        nonlocal done
        if what != of:
            return recording_disk.OK
        done += 1
        if done <= after or (once and refusals):
            return recording_disk.OK
        refusals.append(done)
        return code

    disk.refuse = refuse
    try:
        yield refusals
    finally:
        disk.refuse = lambda _what: recording_disk.OK


FAULTS = [
    (recording_disk.FULL, "write"), (recording_disk.READONLY, "write"), (recording_disk.IOERR_WRITE, "write"),
    (recording_disk.IOERR_FSYNC, "sync"),
]


def refuse_at_each(house: House, step: int, caplog: pytest.LogCaptureFixture) -> int:
    """Hand in with the disk in trouble at each write and sync in turn (each `step`-th); return how often it was."""
    times = 0
    for code, of in FAULTS:
        after = 0
        while True:
            house.phone.log(3)
            had = set(house.phone.receipts)
            with refused(house.disk, after, code, of) as refusals:
                came = house.phone.hand_in()
            if not refusals:
                break  # more writes than a hand-in has
            assert came or set(house.phone.receipts) == had
            if not came:
                times += 1
                assert house.phone.statuses[500] == 0, (after, code, house.phone.last_error)
                assert "Make room on the server's disk, or look at its rights" in house.phone.last_error
                assert house.phone.hand_in(), house.phone.last_error  # room again
            after += step if of == "write" else 1
    assert "Traceback" not in caplog.text
    return times


def judge(house: House) -> None:
    """Nothing was lost, nothing stands twice, all holds, and folded anew it is the same."""
    rows = [row["id"] for row in house.book.query("SELECT id FROM entries")]
    assert sorted(rows) == sorted(house.phone.kept)
    assert set(house.phone.receipts) == set(rows)
    assert examine(house.book.path, is_quick=False) == []
    assert verification.verify_as_it_is(house.book) == []
    before = fold.dump(house.book)
    fold.rebuild(house.book)
    assert fold.dump(house.book) == before


def test_a_disk_that_is_full_read_only_or_broken_at_a_write_is_said_and_nothing_is_lost(
    disk: Disk, tmp_path: Path, caplog: pytest.LogCaptureFixture
) -> None:
    house = House(disk, tmp_path / "book", 6)
    house.hand_in(20)
    assert refuse_at_each(house, 40, caplog) > 8
    judge(house)
    house.book.close()


@pytest.mark.soak
@pytest.mark.timeout(0)
def test_a_disk_in_trouble_at_each_write_and_sync(
    disk: Disk, tmp_path: Path, caplog: pytest.LogCaptureFixture
) -> None:
    house = House(disk, tmp_path / "book", 7)
    house.hand_in(20)
    tally = new_tally("disk full, read-only or broken at each write")
    tally.faults = refuse_at_each(house, 1, caplog)
    tally.entries = len(house.phone.receipts)
    tally.check()
    judge(house)
    house.book.close()


def test_people_are_let_in_and_told_while_the_disk_is_full(
    disk: Disk, tmp_path: Path, caplog: pytest.LogCaptureFixture
) -> None:
    """What stands beside the book keeps nobody out; what would be written in the book is refused in a sentence."""
    house = House(disk, tmp_path / "book", 8)
    people.put_person(house.book, {"code": "MD", "name": "M. D.", "access": "office"}, "MD")
    people.set_password(house.book, "MD", PASSWORD)
    house.app.config["WTF_CSRF_ENABLED"] = False
    client = house.app.test_client()
    with refused(disk, 0, recording_disk.FULL) as refusals:
        assert client.post("/sign-in", data={"code": "MD", "password": PASSWORD}).status_code == 302
        assert client.get("/desk/entries").status_code == 200
        answer = client.post("/sign-out")
    assert refusals
    assert answer.status_code == 422
    assert "Make room on the server&#39;s disk" in answer.text
    assert "Traceback" not in caplog.text
    assert client.post("/sign-out").status_code == 302
    house.book.close()


def test_a_disk_that_is_mounted_read_only_is_said_by_the_server_and_by_each_command(
    disk: Disk, tmp_path: Path
) -> None:
    House(disk, tmp_path / "book", 9).book.close()
    disk.refuse = lambda what: recording_disk.OK if what == "sync" else recording_disk.READONLY
    with pytest.raises(BookError, match="rights"):
        open_book(tmp_path / "book" / "book.sqlite")
    for command in (["verify"], ["backup", str(tmp_path / "copy.zip")], ["phones"], ["rebuild"], ["doctor"]):
        said = CliRunner().invoke(main, [*command, "--data", str(tmp_path / "book")])
        assert said.exit_code == 2, (command, said.output, said.exception)
        assert "rights" in said.output
    disk.refuse = lambda _what: recording_disk.OK
    assert look_at(tmp_path / "book") == (set(), [])
