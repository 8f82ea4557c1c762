"""The server is killed at any point of a hand-in, again and again. SIGKILL: a process that dies, not a power cut."""

from __future__ import annotations

import os
import random
import time
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from tests.book.conftest import fill_world
from tests.faults.judge import judge
from tests.faults.plain_phone import Handing, let_in
from tests.faults.quick_server import QuickServer
from tests.faults.tally import new_tally
from tests.server_process import ServerProcess
from webapp.book.opening import open_book

# A clock that is right, one an hour behind, one ten years ahead.
CLOCKS_S = (0.0, -3661.0, 10 * 31_557_600.0)
needs_fork = pytest.mark.skipif(not hasattr(os, "fork"), reason="this system cannot fork")


def kill_often(
    folder: Path, make_server: Callable[[Path], ServerProcess | QuickServer], kills: int, seed: int, scene: str
) -> None:
    """Kill the server so many times while three phones hand in, then look."""
    chance = random.Random(seed)
    tally = new_tally(scene)
    data_dir = folder / "book"
    data_dir.mkdir()
    with open_book(data_dir / "book.sqlite") as book:
        fill_world(book)
    server = make_server(data_dir)
    phones = let_in(data_dir / "book.sqlite", server.url, 3, seed=seed, clocks_s=CLOCKS_S)
    until = time.monotonic() + 60 * float(os.environ.get("FAULT_MINUTES_MOST", 600))
    for number in range(kills):
        if time.monotonic() > until:
            break
        for phone in phones:
            phone.at_s = max(each.at_s for each in phones)
        handing = [Handing(phone, seed * 10_000 + number * 3 + at) for at, phone in enumerate(phones)]
        for each in handing:
            each.start()
        time.sleep(chance.uniform(0.002, 0.4))
        missed = sum(phone.answers_missed for phone in phones)
        server.kill()
        for each in handing:
            each.join(60)
            assert not each.is_alive()
        # Only a kill that cut an answer off counts.
        tally.faults += sum(phone.answers_missed for phone in phones) > missed
        server.start()
        if number % 100 == 99:
            print(f"{number + 1} kills, {sum(len(phone.kept) for phone in phones)} entries", flush=True)
    for phone in phones:
        phone.hand_in_all()
    server.stop()
    tally.notes["written before the kill, answered after it"] = sum(phone.known_again for phone in phones)
    judge(data_dir / "book.sqlite", [entry for phone in phones for entry in phone.kept.values()], tally)


@pytest.fixture
def make_quick_server() -> Iterator[Callable[[Path], QuickServer]]:
    """A function that starts a quick server; all are ended with the test."""
    made: list[QuickServer] = []

    def start(data_dir: Path) -> QuickServer:
        made.append(QuickServer(data_dir))
        return made[-1].start()

    yield start
    for server in made:
        server.close()


def test_a_server_killed_in_a_hand_in_loses_and_doubles_nothing(
    tmp_path: Path, make_server: Callable[..., ServerProcess]
) -> None:
    kill_often(tmp_path, make_server, 2, 1, "`serve` killed in a hand-in")


@needs_fork
def test_a_server_killed_twenty_times_loses_and_doubles_nothing(
    tmp_path: Path, make_quick_server: Callable[[Path], QuickServer]
) -> None:
    kill_often(tmp_path, make_quick_server, 20, 3, "server killed in a hand-in")


@pytest.mark.soak
@pytest.mark.timeout(0)  # FAULT_SERVE_KILLS says how many, FAULT_MINUTES_MOST when to stop
def test_serve_killed_hundreds_of_times_loses_and_doubles_nothing(
    tmp_path: Path, make_server: Callable[..., ServerProcess]
) -> None:
    kills = int(os.environ.get("FAULT_SERVE_KILLS", 300))
    kill_often(tmp_path, make_server, kills, 2, "`serve` killed in a hand-in")


@needs_fork
@pytest.mark.soak
@pytest.mark.timeout(0)  # FAULT_SERVER_KILLS says how many, FAULT_MINUTES_MOST when to stop
def test_a_server_killed_a_thousand_times_loses_and_doubles_nothing(
    tmp_path: Path, make_quick_server: Callable[[Path], QuickServer]
) -> None:
    kills = int(os.environ.get("FAULT_SERVER_KILLS", 1000))
    kill_often(tmp_path, make_quick_server, kills, 4, "server killed in a hand-in")
