"""The list of rooms and of equivalent mutants stays true to the program as that changes. Needs no mutants."""

import pytest

from tests.mutants.equivalents import Equivalent, read_equivalents
from tests.mutants.rooms import ROOMS, TOP, Room


@pytest.mark.parametrize("room", ROOMS.values(), ids=lambda room: room.name)
def test_the_modules_of_a_room_and_their_tests_are_there(room: Room) -> None:
    for module, tests in room.tests_of.items():
        assert (TOP / module).is_file(), module
        assert tests, f"{module} has no tests"
        for test in tests:
            assert (TOP / test.split("::")[0]).is_file(), test


@pytest.mark.parametrize(
    ("folder", "left_out"),
    [
        ("webapp/trade", {"__init__"}), ("webapp/book/fold", {"__init__", "reader_rows"}),
        ("webapp/book/checks", set()), ("webapp/book/goods", {"__init__"}),
    ],
)
def test_every_module_of_a_folder_is_tried(folder: str, left_out: set[str]) -> None:
    modules = {path.relative_to(TOP).as_posix() for path in (TOP / folder).glob("*.py")}
    tried = {module for room in ROOMS.values() for module in room.tests_of}
    assert modules - tried == {f"{folder}/{module}.py" for module in left_out}


@pytest.mark.parametrize("one", read_equivalents(), ids=lambda one: f"{one.path}: {one.becomes}"[:90])
def test_an_equivalent_mutant_names_a_line_that_stands_and_says_why(one: Equivalent) -> None:
    text = " ".join(line.strip() for line in (TOP / one.path).read_text().splitlines())
    assert one.was in text, "The line has changed: look again whether it is equivalent."
    assert one.was != one.becomes
    assert len(one.why) > 25
