"""Clocks that are years off and jump, books restored from old backups, phones of which there are two."""

from __future__ import annotations

import os
import random
import shutil
from collections.abc import Callable
from pathlib import Path

import pytest

from tests.book.conftest import fill_world
from tests.faults.judge import judge
from tests.faults.plain_phone import PlainPhone, let_in
from tests.faults.tally import Tally, new_tally
from tests.server_process import ServerProcess
from webapp.backups import restore_backup, write_backup
from webapp.book.house import devices
from webapp.book.opening import open_book

YEAR_S = 31_557_600.0
CLOCKS_S = (0.0, -3 * YEAR_S, 10 * YEAR_S, -7200.0, 40.0, 86_400.0)


class House:
    """A served book and the phones that hand in to it."""

    def __init__(self, folder: Path, make_server: Callable[..., ServerProcess], phones: int, seed: int) -> None:
        self.folder, self.chance = folder, random.Random(seed)
        self.data_dir = folder / "book"
        self.data_dir.mkdir()
        with open_book(self.book_path) as book:
            fill_world(book)
        self.server = make_server(self.data_dir)
        self.phones = let_in(self.book_path, self.server.url, phones, seed=seed)

    @property
    def book_path(self) -> Path:
        """The book's file."""
        return self.data_dir / "book.sqlite"

    def work(self, rounds: int) -> None:
        """Let phones log and hand in, in turns of chance; some entries stay on the slates."""
        for _ in range(rounds):
            phone = self.chance.choice(self.phones)
            phone.at_s = max(each.at_s for each in self.phones)
            phone.log(self.chance.randrange(1, 15))
            if self.chance.random() < 0.7:
                assert phone.hand_in(self.chance.randrange(1, 40))

    def judge(self, tally: Tally) -> None:
        """Hand in what is left, and look."""
        for phone in self.phones:
            phone.hand_in_all()
        self.server.stop()
        judge(self.book_path, [entry for phone in self.phones for entry in phone.kept.values()], tally)


def jump_often(house: House, jumps: int) -> Tally:
    """Put clocks somewhere else so many times, between logging and handing in too."""
    tally = new_tally("clocks off by years, and jumping")
    for _ in range(jumps):
        phone = house.chance.choice(house.phones)
        phone.clock_off_s = house.chance.choice(CLOCKS_S)
        tally.faults += 1
        house.work(2)
    house.judge(tally)
    return tally


def test_clocks_that_are_years_off_and_jump(tmp_path: Path, make_server: Callable[..., ServerProcess]) -> None:
    jump_often(House(tmp_path, make_server, 2, 7), 12)


@pytest.mark.soak
@pytest.mark.timeout(0)  # FAULT_JUMPS says how many
def test_clocks_that_jump_for_long(tmp_path: Path, make_server: Callable[..., ServerProcess]) -> None:
    jump_often(House(tmp_path, make_server, 3, 8), int(os.environ.get("FAULT_JUMPS", 500)))


def restore_often(house: House, times: int) -> Tally:
    """Back up while phones hand in, go on, lose the book, restore: the phones bring what it has lost."""
    tally = new_tally("book restored, older than the receipts")
    tally.notes["entries the backup had not"] = 0
    house.phones[-1].minds_head = True
    for number in range(times):
        house.work(6)
        backup = house.folder / f"{number}.zip"
        had = write_backup(house.data_dir, backup)
        house.work(6)
        house.server.kill()
        tally.notes["entries the backup had not"] += sum(len(phone.receipts) for phone in house.phones) - had
        shutil.rmtree(house.data_dir)
        restore_backup(backup, house.data_dir)
        backup.unlink()
        house.server.start()
        for phone in house.phones:
            phone.offer_again()
            phone.hand_in_all()
        tally.faults += 1
    house.judge(tally)
    assert tally.notes["entries the backup had not"] > 0
    return tally


def test_a_book_restored_from_an_old_backup_is_made_whole_by_the_phones(
    tmp_path: Path, make_server: Callable[..., ServerProcess]
) -> None:
    restore_often(House(tmp_path, make_server, 2, 9), 1)


@pytest.mark.soak
@pytest.mark.timeout(0)  # FAULT_RESTORES says how often
def test_a_book_restored_again_and_again(tmp_path: Path, make_server: Callable[..., ServerProcess]) -> None:
    restore_often(House(tmp_path, make_server, 3, 10), int(os.environ.get("FAULT_RESTORES", 40)))


def test_two_phones_with_one_name_and_one_secret_lose_nothing_and_are_told_of(
    tmp_path: Path, make_server: Callable[..., ServerProcess]
) -> None:
    """A phone set up from a copy of another: both count on from the same number, until they hear from the book."""
    house = House(tmp_path, make_server, 1, 11)
    (first,) = house.phones
    house.work(3)
    first.hand_in_all()
    twin = PlainPhone(first.url, first.device, first.secret, seed=12)
    twin.seq, twin.at_s = first.seq, first.at_s
    house.phones.append(twin)
    tally = new_tally("phone cloned, one secret and one counter")
    for _ in range(6):
        for phone in house.phones:
            phone.log(house.chance.randrange(1, 10))
            tally.faults += 1
        for phone in house.phones:
            phone.hand_in_all()
    house.server.stop()
    kept = {entry["id"]: entry for phone in house.phones for entry in phone.kept.values()}
    with open_book(house.book_path) as book:
        rows = book.query("SELECT id, seq FROM entries")
        (said,) = (one for one in devices.report_devices(book) if one["id"] == first.device)
    tally.entries = len(kept)
    tally.lost, tally.doubled = len(kept.keys() - {row["id"] for row in rows}), len(rows) - len({r["id"] for r in rows})
    tally.notes["numbers given twice, and said"] = said["given_twice"]
    tally.check()
    assert said["given_twice"] == len(rows) - len({row["seq"] for row in rows}) > 0
    assert said["gaps"] == []


def test_two_phones_with_one_name_bring_both_their_entries_to_a_restored_book(
    tmp_path: Path, make_server: Callable[..., ServerProcess]
) -> None:
    """Their numbers are the same: that one of the two is in the book says nothing of the other. The head does."""
    house = House(tmp_path, make_server, 1, 13)
    (first,) = house.phones
    first.minds_head = True
    first.log(4)
    first.hand_in_all()
    twin = PlainPhone(first.url, first.device, first.secret, seed=14)
    twin.seq, twin.at_s, twin.minds_head = first.seq, first.at_s, True
    house.phones.append(twin)
    had = write_backup(house.data_dir, tmp_path / "backup.zip")
    for phone in house.phones:
        phone.log(6)  # both count 5 to 10
    for phone in house.phones:
        phone.hand_in_all()
    house.server.kill()
    shutil.rmtree(house.data_dir)
    assert restore_backup(tmp_path / "backup.zip", house.data_dir) == had == 4
    house.server.start()
    for phone in house.phones:
        phone.offer_again()
        assert len(phone.waiting) >= 6
        phone.hand_in_all()
        phone.offer_again()
        assert phone.waiting == [], "once is enough"
    house.server.stop()
    with open_book(house.book_path) as book:
        ids = {row["id"] for row in book.query("SELECT id FROM entries")}
    assert ids == {*first.kept, *twin.kept}
    assert len(ids) == 16
