"""The group and its database die at any point, again and again; sites go on alone, and all arrives once.

Real processes: a server for each of two sites, the group's server, PostgreSQL. SIGKILL for a server; for PostgreSQL the
process of a client in an open transaction is killed, or all of it at once. Not a power cut.
"""

from __future__ import annotations

import os
import random
import threading
import time
from collections import Counter
from collections.abc import Callable, Iterator
from datetime import UTC, datetime
from pathlib import Path

import pytest

from tests.book.conftest import fill_world
from tests.faults.judge import judge
from tests.faults.plain_phone import let_in
from tests.faults.quick_server import QuickServer
from tests.faults.tally import Tally, new_tally
from tests.group.postgres import Postgres
from webapp.backups import BOOK_NAME
from webapp.book.fold import fold
from webapp.book.house import devices, registry
from webapp.book.intake import book_id
from webapp.book.opening import open_book
from webapp.book.record import log
from webapp.book.record.backup import backup
from webapp.book.record.store import Book
from webapp.group import sites, way
from webapp.group.sender import NoAnswer, send
from webapp.group.store import GroupBusy, Store, open_store

BATCH = 5  # entries a hand-in to the group: small, so that most faults fall into one
ENTRIES_MOST = 40  # a fault, of one phone
pytestmark = pytest.mark.skipif(not hasattr(os, "fork"), reason="this system cannot fork")


class House:
    """One site: its server, a phone that logs and hands in without a pause, and what hands in to the group."""

    def __init__(self, name: str, folder: Path, group: QuickServer, seed: int) -> None:
        self.name, self.path = name, folder / BOOK_NAME
        folder.mkdir()
        with open_book(self.path) as book:
            fill_world(book)
            registry.set_site(book, {"name": name}, by="JK")
            self.id = book_id(book)
        with open_book(group.data_dir / BOOK_NAME) as keeper:
            code = devices.new_token(keeper, by="OL", name=name)
        way.join(folder, group.url, code, name)
        self.server = QuickServer(folder).start()
        self.phone = let_in(self.path, self.server.url, 1, seed=seed)[0]
        self.cut_off = 0  # rounds with the group that a fault ended
        self.chance = random.Random(seed)
        self.failures: list[BaseException] = []
        self.go_on()

    def go_on(self) -> None:
        """Begin to log, and to hand in to the group."""
        self._is_over = threading.Event()
        self._threads = [threading.Thread(target=self._guard, args=(run,)) for run in (self._log, self._send)]
        for thread in self._threads:
            thread.start()

    def rest(self) -> None:
        """Let both come to an end."""
        self._is_over.set()
        for thread in self._threads:
            thread.join(60)
            assert not thread.is_alive()
        assert not self.failures, self.failures

    def catch_up(self, wait_s: float = 60.0) -> None:
        """Hand in to the group until it has all."""
        carrier, deadline = way.load_way(self.path.parent), time.monotonic() + wait_s
        assert carrier
        with open_book(self.path) as book:
            while True:
                try:
                    send(book, carrier)
                    return
                except NoAnswer:
                    assert time.monotonic() < deadline, "the group does not come back"
                    time.sleep(0.05)

    def _guard(self, run: Callable[[], None]) -> None:
        try:
            run()
        except BaseException as error:
            self.failures.append(error)

    def _log(self) -> None:
        while not self._is_over.is_set():
            if len(self.phone.waiting) < ENTRIES_MOST:
                self.phone.log(self.chance.randrange(1, 8))
            self.phone.hand_in(self.chance.randrange(1, 12))
            time.sleep(0.12)

    def _send(self) -> None:
        carrier = way.load_way(self.path.parent)
        assert carrier
        with open_book(self.path) as book:
            while not self._is_over.is_set():
                try:
                    send(book, carrier, batch_most=BATCH)
                    time.sleep(0.01)
                except NoAnswer:
                    self.cut_off += 1
                    time.sleep(0.03)


class World:
    """Two sites and their group; and what goes wrong with it."""

    def __init__(self, folder: Path, postgres: Postgres, seed: int) -> None:
        self.postgres, self.url, self.chance = postgres, postgres.make(), random.Random(seed)
        (folder / "group").mkdir()
        self.group = QuickServer(folder / "group", self.url).start()
        names = ("North Hill", "South Bank")
        self.houses = [House(name, folder / name, self.group, seed + n) for n, name in enumerate(names)]
        self.alone = 0  # entries that sites took while the group was away

    def fault(self, number: int, tally: Tally) -> None:
        """Let one thing die at a random moment, and come back."""
        time.sleep(self.chance.uniform(0.01, 0.15))
        before = sum(len(house.phone.receipts) for house in self.houses)
        cut_off = sum(house.cut_off for house in self.houses)
        what = ("group's server killed", "PostgreSQL killed in a transaction", "PostgreSQL ended at once")[
            1 if number % 2 else 2 if number % 10 == 4 else 0
        ]
        if what == "group's server killed":
            self.group.kill()
        elif what == "PostgreSQL ended at once":
            self.postgres.crash()
        elif not self.postgres.kill_in_transaction(self.url):
            return
        if what != "PostgreSQL killed in a transaction":  # that comes back by itself
            time.sleep(self.chance.uniform(0.02, 0.2))
            self.alone += sum(len(house.phone.receipts) for house in self.houses) - before
        if what == "group's server killed":
            self.group.start()
        elif what == "PostgreSQL ended at once":
            self.postgres.start()
        self.postgres.wait()
        tally.notes[what] = tally.notes.get(what, 0) + 1
        tally.faults += 1
        tally.notes["rounds cut off"] = (
            tally.notes.get("rounds cut off", 0) + sum(house.cut_off for house in self.houses) - cut_off
        )

    def close(self) -> None:
        """End all of it."""
        for house in self.houses:
            house._is_over.set()
            house.server.close()
        self.group.close()


@pytest.fixture
def make_world(tmp_path: Path, postgres: Postgres) -> Iterator[Callable[[int], World]]:
    """A function that makes the world; it is ended with the test."""
    made: list[World] = []

    def make(seed: int) -> World:
        made.append(World(tmp_path, postgres, seed))
        return made[-1]

    yield make
    for world in made:
        world.close()


def settle(world: World, branches: dict[str, int]) -> None:
    """Let every phone hand in what it has, and wait until the group has it and has worked it out."""
    for house in world.houses:
        house.rest()
        house.phone.hand_in_all()
        house.catch_up()
    store, deadline = open_store(world.url), time.monotonic() + 90
    try:
        while True:
            rows = store.query("SELECT b.site, b.branch, b.cursor, f.book_no, f.branch AS folded, f.trouble FROM "
                               "branches b LEFT JOIN folds f ON f.site = b.site")
            done = {row["site"] for row in rows if row["branch"] == branches.get(row["site"], 0) == row["folded"]
                    and row["cursor"] == row["book_no"] == _head(world, row["site"])}
            if done == {house.id for house in world.houses}:
                return
            assert time.monotonic() < deadline, rows
            time.sleep(0.1)
    finally:
        store.close()


def _head(world: World, site: str) -> int:
    with open_book(next(house.path for house in world.houses if house.id == site)) as book:
        return log.load_head(book)[0]


def count(world: World, tally: Tally, branches: dict[str, int]) -> None:
    """Hold the group's record against each site's own, row by row, and its fold to the byte."""
    store = open_store(world.url)
    try:
        for house in world.houses:
            with open_book(house.path) as book:
                _count(store, book, tally, branches.get(house.id, 0), world.group.data_dir)
            received = Tally(house.name, faults=1)
            judge(house.path, house.phone.kept.values(), received, lambda book, name=house.name: _furnish(book, name))
            assert len(house.phone.receipts) == len(house.phone.kept)
    finally:
        store.close()
    tally.notes["taken by sites meanwhile"] = world.alone
    tally.check()


def _furnish(book: Book, name: str) -> None:
    fill_world(book)
    registry.set_site(book, {"name": name}, by="JK")


def _count(store: Store, book: Book, tally: Tally, branch: int, group_folder: Path) -> None:
    names = ("book_no", "id", "body", "body_sha256", "received_at", "skew_s", "via", "digest")
    own = book.query(f"SELECT {', '.join(names)} FROM entries ORDER BY book_no")
    rows = sites.rows_of(store, book_id(book), branch, 0, 1_000_000)
    held = Counter(row["id"] for row in rows)
    tally.entries += len(own)
    tally.lost += len({row["id"] for row in own} - held.keys())
    tally.doubled += sum(held.values()) - len(held)
    assert [{name: row[name] for name in names} for row in rows] == own
    assert sites.verify(store, book_id(book), branch) == (len(own), [])
    assert store.query("SELECT * FROM aside") == []
    with open_book(group_folder / "sites" / f"{book_id(book)}.sqlite") as work:
        assert fold.dump(work) == fold.dump(book)
    flows = store.one("SELECT count(*) AS n, sum(lpa_ul) AS ul FROM flows WHERE site = %s", (book_id(book),))
    assert flows == book.one("SELECT count(*) AS n, sum(lpa_ul) AS ul FROM flows")


def kill_often(world: World, faults: int, scene: str) -> None:
    """Let so many things go wrong, then look."""
    tally = new_tally(scene)
    for number in range(2 * faults):
        if tally.faults < faults:
            world.fault(number, tally)
    settle(world, {})
    count(world, tally, {})
    assert tally.faults == faults
    assert world.alone, "no site took anything while the group was away"


def restored(world: World, rounds: int, scene: str) -> None:
    """Put one site back to a backup that is older than the group's receipts, while the group dies now and then."""
    tally, house, branches = new_tally(scene), world.houses[0], dict[str, int]()
    older = {}  # branch -> digest of its head when it was left
    for number in range(rounds):
        kept = house.path.parent / f"backup-{number}.sqlite"
        world.fault(4 * number, tally)
        with open_book(house.path) as book:
            backup(book, kept)
            copied = log.load_head(book)[0]
        deadline = time.monotonic() + 60
        while _group_has(world, house, branches.get(house.id, 0)) < copied + 2 * BATCH:
            assert time.monotonic() < deadline, "the group does not follow"
            time.sleep(0.02)
        world.fault(4 * number + 1, tally)
        house.rest()
        house.server.kill()
        _put_back(house, kept)
        tally.notes["restored"] = number + 1
        house.server.start()
        house.phone.offer_again()
        house.go_on()
        world.fault(4 * number + 2, tally)
        deadline = time.monotonic() + 60
        while not (found := _waiting(world, house)):
            assert time.monotonic() < deadline, "the group does not see that the book was put back"
            time.sleep(0.05)
        branch, older[branches.get(house.id, 0)] = found
        world.fault(4 * number + 3, tally)
        branches[house.id] = branch
        _take(world, house, branch)
    settle(world, branches)
    count(world, tally, branches)
    store = open_store(world.url)
    try:
        held = sites.branches(store.connection(), house.id)
        assert {number: held[number]["digest"] for number in older} == older, "overwritten"
    finally:
        store.close()


def _put_back(house: House, kept: Path) -> None:
    for path in house.path.parent.glob(f"{BOOK_NAME}*"):
        path.unlink()
    house.path.write_bytes(kept.read_bytes())


def _ask(world: World, text: str, site: str) -> dict[str, object]:
    store = Store(world.url)
    try:
        return store.one(text, (site,)) or {}
    except GroupBusy:
        return {}
    finally:
        store.close()


def _group_has(world: World, house: House, branch: int) -> int:
    text = f"SELECT cursor FROM branches WHERE site = %s AND branch = {branch}"
    return int(str(_ask(world, text, house.id).get("cursor", 0)))


def _waiting(world: World, house: House) -> tuple[int, str] | None:
    """Return the branch that a person is asked about, and the head of the one in effect."""
    text = (
        "SELECT s.tip, b.digest FROM sites s JOIN branches b ON b.site = s.site AND b.branch = s.effective "
        "WHERE s.site = %s AND s.tip <> s.effective"
    )
    row = _ask(world, text, house.id)
    return (int(str(row["tip"])), str(row["digest"])) if row else None


def _take(world: World, house: House, branch: int) -> None:
    store = open_store(world.url, wait_s=30)
    try:
        sites.take(store, house.id, branch, "OL", datetime.now(UTC))
    finally:
        store.close()


def test_sites_go_on_alone_and_all_arrives_once(make_world: Callable[[int], World]) -> None:
    kill_often(make_world(21), 16, "group or its database killed, two sites")


def test_a_site_put_back_to_an_older_backup_loses_nothing_and_overwrites_nothing(
    make_world: Callable[[int], World],
) -> None:
    restored(make_world(22), 1, "one of two sites restored, group killed")


@pytest.mark.soak
@pytest.mark.timeout(0)  # GROUP_KILLS says how many
def test_a_group_killed_hundreds_of_times(make_world: Callable[[int], World]) -> None:
    kill_often(make_world(23), int(os.environ.get("GROUP_KILLS", 300)), "group or its database killed, two sites")


@pytest.mark.soak
@pytest.mark.timeout(0)  # GROUP_RESTORES says how many
def test_a_site_put_back_again_and_again(make_world: Callable[[int], World]) -> None:
    restored(make_world(24), int(os.environ.get("GROUP_RESTORES", 10)), "one of two sites restored, group killed")
