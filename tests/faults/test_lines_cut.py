"""The line breaks at any byte, both ways, or drips; answers are lost after the book has written everything down."""

from __future__ import annotations

import os
import random
from collections.abc import Callable
from pathlib import Path

import pytest

from tests.book.conftest import fill_world
from tests.faults.cutting_line import FAULTS, CuttingLine
from tests.faults.judge import judge
from tests.faults.plain_phone import let_in
from tests.faults.tally import new_tally
from tests.server_process import ServerProcess
from webapp.book.opening import open_book


def cut_often(folder: Path, make_server: Callable[..., ServerProcess], faults: int, seed: int) -> None:
    """Hand in over a bad line until so many faults were met; then over a good one, and look."""
    chance = random.Random(seed)
    data_dir = folder / "book"
    data_dir.mkdir()
    with open_book(data_dir / "book.sqlite") as book:
        fill_world(book)
    server = make_server(data_dir)
    line = CuttingLine(server.port, seed)
    phones = let_in(data_dir / "book.sqlite", line.url, 2, seed=seed)
    while line.injected.total() < faults:
        phone = chance.choice(phones)
        phone.at_s = max(each.at_s for each in phones)
        if len(phone.waiting) < 60:
            phone.log(chance.randrange(1, 30))
        phone.hand_in(chance.randrange(1, 60))
    line.calm = True
    for phone in phones:
        phone.hand_in_all()
    line.close()
    server.stop()
    tally = new_tally("line cut, answer lost, dripping")
    tally.faults = line.injected.total()
    tally.notes = dict(sorted(line.injected.items()))
    tally.notes["written, and the answer never heard"] = sum(phone.known_again for phone in phones)
    judge(data_dir / "book.sqlite", [entry for phone in phones for entry in phone.kept.values()], tally)
    assert set(line.injected) == set(FAULTS), "some fault never came"
    assert tally.notes["written, and the answer never heard"]


def test_a_line_that_breaks_anywhere_loses_and_doubles_nothing(
    tmp_path: Path, make_server: Callable[..., ServerProcess]
) -> None:
    cut_often(tmp_path, make_server, 30, 3)


@pytest.mark.soak
@pytest.mark.timeout(0)  # FAULT_CUTS says how many
def test_a_line_that_breaks_thousands_of_times_loses_and_doubles_nothing(
    tmp_path: Path, make_server: Callable[..., ServerProcess]
) -> None:
    cut_often(tmp_path, make_server, int(os.environ.get("FAULT_CUTS", 5000)), 4)
