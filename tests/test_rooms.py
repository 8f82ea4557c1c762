"""Dependencies run one way: every room of webapp/ and every arrow between rooms is named here."""

import ast
from functools import cache
from graphlib import CycleError, TopologicalSorter
from pathlib import Path

import pytest

import webapp

ROOMS = Path(webapp.__file__).parent
TESTS = Path(__file__).parent
# Only the command line knows the group: a site needs neither it nor its database.
SITE_ROOMS = ("trade", "kinds", "words", "labels", "book", "floor", "desk", "access", "keeping", "serving", "demo",
              "sheets", "doors", "doctor", "readers")
# Beside the rooms: the factory, the commands and what they share.
ROOT = "webapp"
# Below all rooms, and free to all: the version, the places of shipped files, and how a file is written that must stay.
# They import nothing of the program.
GROUND = {"webapp.version", "webapp.places", "webapp.durable"}
_WINGS = ("lineage", "periods", "vats", "cellar", "still", "goods", "search", "today", "enclosures")
_RECORD = {"kinds", "words", "trade"}
_FOLD = {"book.record", "book.before", "book.checks", *_RECORD}
_HOUSE = {"book.fold", *_FOLD}
_BOOK = {"book", "book.house", *_HOUSE, *(f"book.{wing}" for wing in _WINGS)}
# [room: the rooms that it may import]. A room of the book is named with its wing; `book` is what lies at its root.
MAY = {
    "trade": set(),
    "kinds": {"trade"},
    "words": {"kinds", "trade"},
    "labels": {"words", "trade"},
    "book.record": _RECORD,
    "book.before": {"book.record", *_RECORD},
    "book.checks": {"book.record", "book.before", *_RECORD},
    "book.fold": _FOLD,
    "book.house": _HOUSE,
    "book.still": {"book.house", *_HOUSE},
    "book.cellar": {"book.house", "book.still", *_HOUSE},
    "book.lineage": {"book.house", "book.still", *_HOUSE},
    "book.goods": {"book.house", *_HOUSE},
    "book.vats": {"book.house", *_HOUSE},
    "book.search": {"book.house", *_HOUSE},
    "book.enclosures": {"book.house", *_HOUSE},
    "book.periods": {"book.house", *_HOUSE},
    "book.today": {"book.house", "book.cellar", "book.goods", "book.periods", "book.still", *_HOUSE},
    "book": _BOOK - {"book"},
    "keeping": {ROOT, *_BOOK},
    "sheets": {ROOT, *_BOOK},
    "serving": {ROOT, "keeping", *_BOOK},
    "doctor": {ROOT, "keeping", "serving", *_BOOK},
    "access": {ROOT, "keeping", "serving", *_BOOK},
    "shipping": {ROOT, "access", *_RECORD},
    "floor": {ROOT, "access", "keeping", "labels", "shipping", *_BOOK},
    "desk": {ROOT, "access", "keeping", "labels", "serving", "sheets", *_BOOK},
    "readers": {ROOT, "access", "desk", *_BOOK},
    "demo": {ROOT, *_BOOK},
    "doors": {ROOT, "access", "demo", "labels", "sheets", *_BOOK},
    "group": {ROOT, "access", "desk", "floor", "keeping", "serving", *_BOOK},
}
# What a room may not import besides, from outside the program.
WITHOUT = {
    "trade": ("flask", "sqlite3", "sqlite_utils", "wtforms", "marshmallow"),
    "kinds": ("sqlite3", "sqlite_utils"),
    "words": ("flask", "sqlite3", "sqlite_utils"),
    "labels": ("flask", "sqlite3"),
    "book": ("flask", "wtforms"),
    "sheets": ("flask", "wtforms", "sqlite3"),
}


def imports_of(path):
    """Return the names of the modules a file imports, wherever in it; a module taken from a package by its own name."""
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom) and node.module:
            yield node.module
            yield from (f"{node.module}.{alias.name}" for alias in node.names)


@cache
def modules():
    """Return the path of every module of the program by its dotted name; a package by its own."""
    found = {}
    for path in sorted(ROOMS.rglob("*.py")):
        dotted = ".".join(("webapp", *path.relative_to(ROOMS).with_suffix("").parts))
        found[dotted.removesuffix(".__init__")] = path
    return found


@cache
def arrows():
    """Return the modules of the program that each of its modules imports; a package only for what is its own."""
    every, found = modules(), {}
    for name, path in every.items():
        wanted = {one for one in imports_of(path) if one in every and one != name}
        # `from webapp.book import log` names the package only where something of the package's own is taken.
        own = {
            node.module
            for node in ast.walk(ast.parse(path.read_text(encoding="utf-8")))
            if isinstance(node, ast.ImportFrom) and any(f"{node.module}.{one.name}" not in every for one in node.names)
        }
        plain = {one for one in wanted if every[one].name != "__init__.py"}
        found[name] = plain | (wanted & own)
    return found


def room_of(name):
    """Return the room a module lies in."""
    parts = name.split(".")
    is_package = (ROOMS / Path(*parts[1:])).is_dir()
    if len(parts) == 1 or (len(parts) == 2 and not is_package):
        return ROOT
    if parts[1] != "book":
        return parts[1]
    return ".".join(parts[1:3]) if len(parts) > 3 or (len(parts) == 3 and is_package) else "book"


def test_every_folder_with_modules_is_a_room():
    assert {room_of(name) for name in modules()} == {ROOT, *MAY}


@pytest.mark.parametrize("room", MAY)
def test_a_room_imports_only_the_rooms_below_it(room):
    wrong = [
        f"{name} imports {target}"
        for name, targets in arrows().items()
        if room_of(name) == room
        for target in sorted(targets - GROUND)
        if room_of(target) not in {room, *MAY[room]}
    ]
    assert not wrong


def test_the_ground_imports_nothing_of_the_program():
    assert not any(arrows()[name] for name in GROUND)


def test_no_rooms_lead_to_each_other_in_a_circle():
    rooms = {room: beside - {room, ROOT} for room, beside in MAY.items()}
    assert list(TopologicalSorter(rooms).static_order())


def test_no_files_import_each_other_in_a_circle():
    # The face of a room with pages is left out: it makes the blueprint, then names the modules that hang routes on it.
    faces = {"webapp.floor", "webapp.desk", "webapp.doors", "webapp.readers", "webapp.shipping"}
    graph = {name: targets - faces for name, targets in arrows().items() if name not in faces}
    try:
        list(TopologicalSorter(graph).static_order())
    except CycleError as circle:
        raise AssertionError(f"a circle of files: {' -> '.join(circle.args[1])}") from None


@pytest.mark.parametrize("room", WITHOUT)
def test_a_room_does_without_what_it_has_no_use_for(room):
    wrong = [
        f"{path.relative_to(ROOMS)} imports {name}"
        for path in sorted((ROOMS / room).rglob("*.py"))
        for name in imports_of(path)
        if name.split(".")[0] in WITHOUT[room]
    ]
    assert not wrong


def test_a_site_knows_nothing_of_the_group_book():
    wrong = [
        f"{path.relative_to(ROOMS)} imports {name}"
        for room in SITE_ROOMS
        for path in sorted((ROOMS / room).rglob("*.py"))
        for name in imports_of(path)
        if name.split(".")[0] == "psycopg" or name.startswith("webapp.group")
    ]
    assert not wrong


def test_declarations_need_no_web_and_no_database():
    names = ("spec", "state", "stock", "read", "slips", "common")
    for path in [*(ROOMS / "kinds" / f"{name}.py" for name in names), *(ROOMS / "kinds" / "effects").glob("*.py")]:
        found = set(imports_of(path))
        assert not any(module.split(".")[0] in ("flask", "flask_wtf", "wtforms", "marshmallow") for module in found)


def test_only_the_session_starts_playwright():
    """A second one beside the session's fails, and only when the rooms run together."""
    starters = {
        path.relative_to(TESTS).as_posix()
        for path in TESTS.rglob("*.py")
        if any(
            isinstance(node, ast.ImportFrom) and any(alias.name == "sync_playwright" for alias in node.names)
            for node in ast.walk(ast.parse(path.read_text(encoding="utf-8")))
        )
    }
    # The phone that is frozen and the pictures of the manifest come of commands of their own, outside of any session.
    assert starters == {"conftest.py", "find_browsers.py", "frozen/phone.py", "screens.py", "tour.py"}
