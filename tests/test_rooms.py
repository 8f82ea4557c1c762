"""Dependencies run one way: desk, floor, access, labels -> book -> kinds -> trade."""

import ast
from pathlib import Path

import webapp

ROOMS = Path(webapp.__file__).parent
TESTS = Path(__file__).parent
# Only the command line knows the group: a site needs neither it nor its database.
SITE_ROOMS = ("trade", "kinds", "labels", "book", "floor", "desk", "access", "demo")
MAY_NOT = {
    "trade": (
        "webapp.kinds", "webapp.book", "webapp.floor", "webapp.desk", "webapp.access", "flask", "sqlite3",
        "sqlite_utils", "wtforms",
    ),
    "kinds": ("webapp.book", "webapp.floor", "webapp.desk", "webapp.access", "sqlite3", "sqlite_utils"),
    "labels": ("webapp.kinds", "webapp.book", "webapp.floor", "webapp.desk", "webapp.access", "flask"),
    "book": ("webapp.floor", "webapp.desk", "webapp.access", "flask", "wtforms"),
    "floor": ("webapp.desk",),
    "desk": ("webapp.floor",),
}  # fmt: skip


def imports_of(path):
    """Return the names of the modules a file imports, wherever in it."""
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom) and node.module:
            yield node.module


def test_no_room_imports_what_stands_above_it():
    wrong = [
        f"{path.relative_to(ROOMS)} imports {name}"
        for room, forbidden in MAY_NOT.items()
        for path in sorted((ROOMS / room).rglob("*.py"))
        for name in imports_of(path)
        if any(name == bad or name.startswith(bad + ".") for bad in forbidden)
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
    # The phone that is frozen is driven by a command of its own, outside of any session.
    assert starters == {"conftest.py", "find_browsers.py", "frozen/phone.py"}
