"""What the documents name is there: links, commands and options of `cellarslate`, and the rooms as they are drawn."""

import ast
import re
import shlex
from functools import cache
from pathlib import Path

import pytest

from tests.test_browser_rooms import imports_by_module
from webapp.book.as_docs import checks_page
from webapp.cli import main

ROOT = Path(__file__).parents[1]
DOCUMENTS = sorted([ROOT / "README.md", ROOT / "DEVELOPERS.md", *(ROOT / "docs").rglob("*.md")])
_COMMAND = re.compile(r"(?:^|[\s`/\\=])cellarslate ((?:[a-z-]+)(?: [^`\n#]*)?)", re.MULTILINE)


@cache
def anchors(path):
    """Return the anchors of a document's headings, as Git forges make them."""
    heads = re.findall(r"^#+ (.*)$", path.read_text("utf-8"), re.MULTILINE)
    return {re.sub(r"[^\w\- ]", "", head.lower()).strip().replace(" ", "-") for head in heads}


def code_of(text):
    """Return the lines of code blocks and what stands between backticks in a line."""
    blocks = re.findall(r"^ *```\w*\n(.*?)^ *```$", text, re.DOTALL | re.MULTILINE)
    rest = re.sub(r"^ *```\w*\n.*?^ *```$", "", text, flags=re.DOTALL | re.MULTILINE)
    return "\n".join([*blocks, *re.findall(r"`([^`]+)`", rest)])


@pytest.mark.parametrize("path", DOCUMENTS, ids=lambda path: path.relative_to(ROOT).as_posix())
def test_every_link_leads_somewhere(path):
    for link in re.findall(r"\]\(([^)\s]+)\)", path.read_text("utf-8")):
        if "://" in link:
            continue
        name, _, anchor = link.partition("#")
        target = (path.parent / name).resolve() if name else path
        assert target.exists(), f"{path.name}: {link}"
        assert not anchor or anchor in anchors(target), f"{path.name}: no heading for {link}"


def test_every_command_and_option_exists():
    found = set()
    for path in DOCUMENTS:
        for line in _COMMAND.findall(code_of(path.read_text("utf-8"))):
            name, *words = shlex.split(line.split("&&")[0].split(";")[0])
            assert name in main.commands, f"{path.name}: cellarslate {name}"
            options = {option for part in main.commands[name].params for option in (*part.opts, *part.secondary_opts)}
            for word in words:
                assert not word.startswith("--") or word.split("=")[0] in options, f"{path.name}: {name} {word}"
            found.add(name)
    assert found >= {"set-up", "serve", "backup", "restore", "rehearse", "export", "import", "verify", "demo"}


def test_every_option_named_alone_is_one_of_ours():
    options = {option for command in main.commands.values() for part in command.params for option in part.opts}
    for word in re.findall(r"`(--[a-z-]+)", (ROOT / "docs" / "operate.md").read_text("utf-8")):
        assert word in options | {"--help"}, word


def test_every_file_that_the_architecture_names_exists():
    text = re.sub(
        r"^```.*?^```$", "", (ROOT / "docs" / "architecture.md").read_text("utf-8"), flags=re.DOTALL | re.MULTILINE
    )
    named = set(re.findall(r"`((?:webapp|static|tests)/[\w./-]+\.\w+)`", text))
    assert len(named) > 40
    assert sorted(name for name in named if not (ROOT / name).is_file()) == []


def drawn_floors(name):
    """Return the floor of each room in a drawing of docs/architecture.md, counted from the top."""
    text = (ROOT / "docs" / "architecture.md").read_text("utf-8")
    drawing = re.search(rf"^```rooms of {name}\n(.*?)^```$", text, re.DOTALL | re.MULTILINE)[1]
    lines = [re.match(r"[ |]*([a-z_/.]+(?:, [a-z_/.]+)*)(?: {2,}|\n|$)", line) for line in drawing.splitlines()]
    return {room: floor for floor, found in enumerate(lines) if found for room in found[1].split(", ")}


def server_imports():
    """Yield (room, file, room of a module that it imports) for all of webapp; a wing of the book is a room."""
    for path in sorted((ROOT / "webapp").rglob("*.py")):
        file = path.relative_to(ROOT).as_posix()
        for node in ast.walk(ast.parse(path.read_text("utf-8"))):
            names = [alias.name for alias in node.names] if isinstance(node, ast.Import) else []
            if isinstance(node, ast.ImportFrom) and node.module:
                names = [f"{node.module}.{alias.name}" for alias in node.names]
            for target in names:
                if target.startswith("webapp."):
                    yield server_room(file), file, server_room(target.replace(".", "/"))


def server_room(name):
    """Return the room that a path below webapp belongs to; empty for the few files beside the rooms."""
    _, *parts = name.split("/")
    wing = len(parts) > 1 and parts[0] == "book" and (ROOT / "webapp" / "book" / parts[1]).is_dir()
    return "/".join(parts[: 2 if wing else 1]) if parts and (ROOT / "webapp" / parts[0]).is_dir() else ""


def test_the_drawing_shows_every_room_of_the_server_above_what_it_imports():
    floors = drawn_floors("webapp")
    folders = [path.parent.relative_to(ROOT).as_posix() for path in (ROOT / "webapp").rglob("*.py")]
    assert {server_room(name) for name in folders} - {""} - {"kinds/effects"} <= set(floors)
    arrows = {(room, target, file) for room, file, target in server_imports() if room and target}
    assert len(arrows) > 200
    assert sorted(file for room, target, file in arrows if floors[room] > floors[target]) == []


def test_the_drawing_shows_every_room_of_the_phone_above_what_it_imports():
    floors = drawn_floors("static")
    arrows = {
        (name.split("/")[0], target.split("/")[0], name)
        for name, targets in imports_by_module().items()
        for target in targets
        if not target.startswith("vendor/")
    }
    assert len(arrows) > 100
    assert {room for arrow in arrows for room in arrow[:2]} <= set(floors)
    assert sorted(name for room, target, name in arrows if floors[room] > floors[target]) == []


def test_the_page_of_the_checks_is_what_the_checks_say():
    """Said here too, where a document is looked at first: tests/book/test_checks_page.py holds what stands in it."""
    page = (ROOT / "docs" / "checks.md").read_text("utf-8")
    assert page == checks_page(page), "run: cellarslate write-docs"
