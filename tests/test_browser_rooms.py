"""In the browser, too, dependencies run one way, and no files stand in a circle.

In short: pages -> jobs -> form -> shell -> slate, ui -> words -> kinds -> trade.
"""

import posixpath
import re
from graphlib import CycleError, TopologicalSorter

from webapp.places import STATIC_DIR

_IMPORT = re.compile(
    r"""^\s*(?:import|export)\b[^;"'`]*?["'](\.{1,2}/[^"']+\.js)["']|\bimport\(\s*["'](\.{1,2}/[^"']+\.js)["']\s*\)""",
    re.MULTILINE,
)
_COMMENT = re.compile(r"/\*.*?\*/|^\s*//[^\n]*", re.DOTALL | re.MULTILINE)
# What each room may take from another. Vendored modules import nothing of ours and may be taken by every room.
MAY = {
    "trade": set(),
    "desk": set(),
    "icons": set(),
    "ui": {"icons", "words"},
    "scan": {"trade", "words"},
    "kinds": {"trade"},
    "words": {"kinds", "trade"},
    "slate": {"kinds", "trade", "words"},
    "doors": {"slate"},
    "shell": {"slate", "kinds", "trade", "scan", "ui", "icons", "words"},
    "form": {"shell", "slate", "kinds", "trade", "ui", "icons", "words"},
    "jobs": {"form", "shell", "slate", "kinds", "trade", "ui", "icons", "words"},
    "pages": {"jobs", "form", "shell", "slate", "kinds", "trade", "scan", "ui", "icons", "words"},
}
# Entries and folders without modules of their own.
ENTRIES = {"floor.js", "desk.js", "sw-body.js"}
BESIDE = {"fonts", "screens", "style", "vendor"}


def imports_by_module():
    """Return the modules that each module of ours imports, at its start or later, by names below static."""
    found = {}
    for path in sorted(STATIC_DIR.rglob("*.js")):
        name = path.relative_to(STATIC_DIR).as_posix()
        if not name.startswith("vendor/"):
            text = _COMMENT.sub("", path.read_text(encoding="utf-8"))
            targets = [match[1] or match[2] for match in _IMPORT.finditer(text)]
            found[name] = [posixpath.normpath(posixpath.join(posixpath.dirname(name), one)) for one in targets]
    return found


def room_of(name):
    return name.split("/", 1)[0]


def test_every_folder_of_static_is_a_room_or_holds_no_module():
    folders = {path.name for path in STATIC_DIR.iterdir() if path.is_dir()}
    files = {path.name for path in STATIC_DIR.iterdir() if path.is_file() and path.suffix == ".js"}
    assert folders == set(MAY) | BESIDE
    assert files == ENTRIES


def test_no_room_of_the_browser_takes_from_what_stands_above_it():
    wrong = [
        f"{name} imports {target}"
        for name, targets in imports_by_module().items()
        if name not in ENTRIES
        for target in targets
        if room_of(target) not in {room_of(name), "vendor", *MAY[room_of(name)]}
    ]
    assert not wrong


def test_only_the_slate_names_the_stores_of_the_phone():
    takers = {name for name, targets in imports_by_module().items() if "vendor/idb/idb.js" in targets}
    assert takers == {"slate/db.js"}


def test_no_modules_of_the_browser_import_each_other_in_a_circle():
    # What is imported later, inside a function, may lead back: it is asked for when it is there.
    graph = {
        name: [target for target in targets if not target.startswith("vendor/")]
        for name, targets in imports_by_module().items()
    }
    try:
        list(TopologicalSorter(graph).static_order())
    except CycleError as circle:
        raise AssertionError(f"a circle of modules: {' -> '.join(circle.args[1])}") from None
