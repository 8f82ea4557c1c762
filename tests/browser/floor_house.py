"""A small house with fermenters, a still and receivers, and a phone's floor pages, for the tests of the pages."""

from __future__ import annotations

import contextlib
import re
import shutil
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from tests.browser.offline_world import Phone, World, lay
from tests.server_process import ServerProcess
from webapp.book.house import people, registry
from webapp.book.opening import open_book
from webapp.trade.marks import make_mark

ROOT = Path(__file__).parents[2]
FERMENTER, STILL = make_mark("F3"), make_mark("S1")
HEADS, HEARTS, TAILS = make_mark("R1"), make_mark("R2"), make_mark("R3")
TIMEOUT_MS = 45_000
_WIPE = """async () => {
  const { write, ENTRIES, DRAFTS, META } = await import("/static/slate/db.js");
  await write([ENTRIES, DRAFTS, META], async (tx) => {
    await tx.objectStore(ENTRIES).clear();
    await tx.objectStore(META).delete("tally");
    await tx.objectStore(DRAFTS).clear();
  });
  const own = /^(unit|instrument|cellarslate-draft|decimal|keypad|theme|run-far|help|jug)/;
  for (const name of Object.keys(localStorage)) if (own.test(name)) localStorage.removeItem(name);
  sessionStorage.clear();
}"""

# A vessel for each sort that the pages treat in a way of its own. (code, sort, title, more)
VESSELS: tuple[tuple[str, str, str, dict[str, Any]], ...] = (
    ("F1", "fermenter", "Fermenter 1", {}),
    ("F3", "fermenter", "Fermenter 3", {}),
    ("S1", "still", "Still 1", {"in_zone": True}),
    ("R1", "receiver", "Heads", {"in_zone": True}),
    ("R2", "receiver", "Hearts", {"in_zone": True}),
    ("R3", "receiver", "Tails", {"in_zone": True}),
    ("C031", "cask", "Cask 31", {"tare_kg": 48.5, "capacity_l": 225.0}),
)


class Floor:
    """The pages of one phone: opened by path, driven as a hand would."""

    def __init__(self, world: World, phone: Phone) -> None:
        self.world, self.phone = world, phone
        self.faults: list[str] = []
        self.watch(phone.page)

    @property
    def page(self) -> Any:
        """The page now open."""
        return self.phone.page

    def watch(self, page: Any) -> None:
        """Gather script errors and breaches of the policy."""
        page.on("pageerror", lambda error: self.faults.append(str(error)))
        page.on("console", lambda said: self.faults.append(said.text) if "Content Security" in said.text else None)

    def open(self, path: str) -> Any:
        """Open a page and wait until its module has done its work."""
        page = self.phone.open(path)
        page.wait_for_selector("html[data-started]", state="attached", timeout=TIMEOUT_MS)
        return page

    def choose(self, code: str = "NS") -> None:
        """Choose who logs, by a tap on the name."""
        self.open("/who?then=/today")
        self.page.locator(".person", has_text=code).click()
        self.page.wait_for_url(re.compile(r"//[^/]+/today$"))

    def form(self, path: str) -> Any:
        """Open a form, ready to be typed into."""
        page = self.open(path)
        page.wait_for_selector("form[data-ready]", timeout=TIMEOUT_MS)
        return page

    def press(self, keys: str) -> None:
        """Type on our own keypad, key by key."""
        for key in keys:
            name = "mark" if key in ",." else key
            self.page.locator(f"slate-keypad [data-key='{name}']").click()

    def clear_slate(self) -> None:
        """Take everything that was logged, begun or chosen off this phone."""
        self.open("/more")
        self.page.evaluate(_WIPE)

    def entries(self) -> list[dict[str, Any]]:
        """Return what is on the slate, oldest first, as it would travel."""
        return [kept["entry"] for kept in reversed(self.phone.slate())]


def furnish(world: World) -> None:
    """Put the vessels, people and instruments of this house into the book."""
    with open_book(world.book_path) as book:
        for code, sort, title, more in VESSELS:
            row = {"mark": make_mark(code), "name": code, "title": title, "sort": sort, "capacity_l": 2000.0}
            registry.put_vessel(book, {"place": ""} | row | more, by="MD")
        people.put_person(book, {"code": "BT", "name": "Bram T.", "roles": ["still hand"], "access": "floor"}, by="MD")
        registry.put_instrument(
            book, {"id": "TH-2", "sort": "thermometer", "title": "probe", "state": "in use"}, by="MD"
        )


# Phones of one laying know each other's server by its port, and would hand their own entries in there: a page that is
# open by itself, the browser's background sync without one.
_OPEN: list[Floor] = []


@contextlib.contextmanager
def open_floor(folder: Path, playwright: Any, options: dict[str, Any]) -> Iterator[Floor]:
    """Serve this house, and give a phone that is let in, works without signal and knows who logs."""
    laid, port = lay(playwright, options["executable_path"], _prepare)
    shutil.copytree(laid, folder, dirs_exist_ok=True)
    for other in _OPEN:
        other.clear_slate()
        other.page.goto("about:blank")
    with contextlib.ExitStack() as stack:

        def start(data_dir: Path, **more: Any) -> ServerProcess:
            server = ServerProcess(data_dir, **more)
            stack.callback(server.close)
            return server.start()

        world = World(folder, start, port)
        phone = Phone(playwright, options, folder / "profile", world.server.url)
        stack.callback(phone.close)
        phone.open("/today")
        floor = Floor(world, phone)
        floor.open("/today")
        _OPEN.append(floor)
        stack.callback(_OPEN.remove, floor)
        yield floor


def _prepare(world: World, phone: Phone) -> None:
    furnish(world)
    phone.get_ready(world.token())
    Floor(world, phone).choose()


@pytest.fixture(scope="module")
def far_floor(
    tmp_path_factory: pytest.TempPathFactory, playwright: Any, browser_options: dict[str, Any]
) -> Iterator[Floor]:
    """One phone for a module's tests, its server stopped: nothing it logs leaves it."""
    with open_floor(tmp_path_factory.mktemp("far"), playwright, browser_options) as floor:
        floor.world.server.stop()
        yield floor


@pytest.fixture
def floor(far_floor: Floor) -> Iterator[Floor]:
    """The far phone with a clean slate; script errors fail the test."""
    far_floor.clear_slate()
    far_floor.faults.clear()
    yield far_floor
    assert far_floor.faults == []


@pytest.fixture
def near_floor(tmp_path: Path, playwright: Any, browser_options: dict[str, Any]) -> Iterator[Floor]:
    """A phone and a server of its own that runs; script errors fail the test."""
    with open_floor(tmp_path, playwright, browser_options) as floor:
        yield floor
        assert floor.faults == []
