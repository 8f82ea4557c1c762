"""A small house with a server, a book and a phone, for the tests of what works without signal."""

from __future__ import annotations

import atexit
import contextlib
import functools
import os
import shutil
import signal
import tempfile
import time
from collections.abc import Callable, Iterator
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest

from tests.browser.faulty_proxy import FaultyProxy
from tests.find_browsers import chromium_options
from tests.server_process import ServerProcess
from webapp.book.house import devices, people, registry
from webapp.book.opening import open_book
from webapp.book.record import log
from webapp.book.record.store import Book
from webapp.trade.marks import make_mark

PHONE = {"viewport": {"width": 390, "height": 844}, "device_scale_factor": 2, "has_touch": True}
FERMENTER, STILL, RECEIVER = make_mark("F3"), make_mark("S1"), make_mark("R2")
WAIT_MS = 45_000  # long: test machines are often busy with more than one thing

_LOG = """async draft => (await import("/static/slate/queue.js")).log(draft)"""
_ALL = """async () => (await import("/static/slate/queue.js")).all()"""
_HAND_IN = """async () => (await import("/static/slate/handin.js")).handInNow()"""
_ENROL = """async ([token, name]) => (await import("/static/slate/device.js")).enrol(token, name)"""
_CHOOSE = """async code => (await import("/static/slate/who.js")).choose(code)"""
_BRING_CARDS = """async () => {
  const { refresh } = await import("/static/slate/cards.js");
  await refresh();
  await refresh();
}"""
_NOTHING_MISSING = """!(await (await import("/static/slate/worker.js")).missingParts()).length"""
_WAITING = """(await (await import("/static/slate/queue.js")).waiting()).length"""
READY = """async () => { await navigator.serviceWorker.ready;
  if (!navigator.serviceWorker.controller)
    await new Promise(done => navigator.serviceWorker.addEventListener("controllerchange", done, { once: true })); }"""


def reading(gravity: str = "1,031", temp: str = "14,6", mark: str = FERMENTER, **more: Any) -> dict[str, Any]:
    """Return the draft of a ferment reading, as a form makes it."""
    values = {"temp": {"raw": temp, "unit": "degC"}, "gravity": {"raw": gravity, "unit": "SG"}}
    return {"kind": "ferment_reading", "mark": mark, "mark_by": "typed", "person": "NS", "role": "cellar hand",
            "values": values, **more}


def wait_for(page: Any, expression: str, wait_s: float = WAIT_MS / 1000) -> None:
    """Wait until an expression is true in the page; it may await. Asked from here: the page's policy forbids eval."""
    deadline = time.monotonic() + wait_s
    while not page.evaluate(f"async () => Boolean({expression})"):
        assert time.monotonic() < deadline, f"never true: {expression}"
        time.sleep(0.05)


def bring_cards(page: Any) -> None:
    """Fetch the cards as the book has them now. Twice: the first may join a round that began before the last change."""
    page.evaluate(_BRING_CARDS)


def wait_until_all_is_there(page: Any) -> None:
    """Wait until the phone keeps what is fetched right after the first install too."""
    wait_for(page, _NOTHING_MISSING)


def wait_until_started(page: Any) -> None:
    """Wait until the page's own script has done its work."""
    page.locator("html[data-started]").wait_for(state="attached")


def wait_until_waiting(page: Any, count: int) -> None:
    """Wait until so many entries wait on the slate."""
    wait_for(page, f"{_WAITING} === {count}")


class Phone:
    """A browser of phone size with a profile of its own, which a kill does not take away."""

    def __init__(self, playwright: Any, options: dict[str, Any], profile: Path, url: str) -> None:
        self._playwright, self._options, self.profile, self.url = playwright, options, profile, url
        self.context: Any = None
        self.page: Any = None

    def open(self, path: str = "/today") -> Any:
        """Open the browser, if it is not open, and go there."""
        if self.context is None:
            self.context = self._playwright.chromium.launch_persistent_context(
                str(self.profile), **self._options, **PHONE
            )
            self.context.set_default_timeout(WAIT_MS)
            self.page = self.context.pages[0] if self.context.pages else self.context.new_page()
        self.page.goto(self.url + path, wait_until="load")
        return self.page

    def get_ready(self, token: str) -> Any:
        """Let the phone in, and wait until it can work without signal."""
        page = self.open("/today")
        page.evaluate(READY)
        wait_until_all_is_there(page)
        page.evaluate(_ENROL, [token, "PH-2"])
        bring_cards(page)
        page.evaluate(_CHOOSE, "NS")
        return page

    def log(self, draft: dict[str, Any], page: Any = None) -> dict[str, Any]:
        """Log as a form does: returns once the entry is durable."""
        kept: dict[str, Any] = (page or self.page).evaluate(_LOG, draft)
        return kept

    def slate(self) -> list[dict[str, Any]]:
        """Return everything on the slate, newest first."""
        found: list[dict[str, Any]] = self.page.evaluate(_ALL)
        return found

    def hand_in(self) -> dict[str, Any]:
        """Tap "hand in", and return what it says afterwards."""
        status: dict[str, Any] = self.page.evaluate(_HAND_IN)
        return status

    def wait_until_settled(self) -> None:
        """Wait until nothing waits on the slate any more."""
        wait_for(self.page, _WAITING + " === 0")

    def kill(self) -> None:
        """Kill the browser's main process at once, as an empty battery does."""
        os.kill(self._main_pid(), signal.SIGKILL)
        with contextlib.suppress(Exception):
            self.context.close()
        self.context = self.page = None

    def close(self) -> None:
        """Close the browser in the usual way."""
        if self.context is not None:
            with contextlib.suppress(Exception):
                self.context.close()
            self.context = self.page = None

    def _main_pid(self) -> int:
        for folder in Path("/proc").iterdir():
            if folder.name.isdigit():
                with contextlib.suppress(OSError):
                    command = (folder / "cmdline").read_bytes().decode(errors="replace")
                    if f"--user-data-dir={self.profile}" in command and "--type=" not in command:
                        return int(folder.name)
        raise AssertionError("The browser's main process was not found.")


class World:
    """The server and its book, with one fermenter, one still, one receiver and one cellar hand."""

    def __init__(self, tmp_path: Path, make_server: Callable[..., ServerProcess], port: int | None = None) -> None:
        self.data_dir = tmp_path / "book"
        if not self.data_dir.exists():
            self.data_dir.mkdir()
            with open_book(self.book_path) as book:
                _furnish(book)
        self.server = make_server(self.data_dir, port=port) if port else make_server(self.data_dir)

    @property
    def book_path(self) -> Path:
        """The book's file."""
        return self.data_dir / "book.sqlite"

    def token(self, name: str = "PH-2") -> str:
        """Return a fresh one-time code."""
        with open_book(self.book_path) as book:
            return str(devices.new_token(book, "MD", name))

    def entries(self, **wanted: Any) -> list[dict[str, Any]]:
        """Return what the book has."""
        with open_book(self.book_path) as book:
            return list(log.find_entries(book, **wanted))

    def all_entries(self) -> list[dict[str, Any]]:
        """Return all that the book has, however much."""
        with open_book(self.book_path) as book:
            return book.query("SELECT book_no, id, device, seq FROM entries ORDER BY book_no")

    def revoke_all(self) -> None:
        """Take every phone's leave away."""
        with open_book(self.book_path) as book:
            for device in devices.devices(book):
                devices.revoke_device(book, device["id"], "MD")


def _furnish(book: Book) -> None:
    registry.set_site(book, {"name": "Obsthof Test", "units": "metric"}, by="MD")
    for base, sort, title in (
        ("F3", "fermenter", "Fermenter 3"),
        ("S1", "still", "Still 1"),
        ("R2", "receiver", "Hearts"),
    ):
        row = {"mark": make_mark(base), "name": base, "title": title, "sort": sort, "place": "", "capacity_l": 2000.0}
        registry.put_vessel(book, row, by="MD")
    for code, access in (("MD", "office"), ("NS", "floor")):
        people.put_person(book, {"code": code, "name": code, "roles": ["cellar hand"], "access": access}, by="MD")
    people.set_password(book, "MD", "plum and pear and quince")


@functools.cache
def lay(playwright: Any, browser: Path, prepare: Callable[[World, Phone], None]) -> tuple[Path, int]:
    """Return a folder with a book and a phone's profile, prepared and closed, for copies, and the port of the copies.

    A phone looks for its book at the port where it was let in. Letting one in takes ten times as long as opening one.
    """
    folder = Path(tempfile.mkdtemp(prefix="laid-"))
    atexit.register(shutil.rmtree, folder, ignore_errors=True)
    with contextlib.ExitStack() as stack:

        def start(data_dir: Path, **more: Any) -> ServerProcess:
            server = ServerProcess(data_dir, **more)
            stack.callback(server.close)
            return server.start()

        world = World(folder, start)
        phone = Phone(playwright, chromium_options(browser), folder / "profile", world.server.url)
        stack.callback(phone.close)
        prepare(world, phone)
    return folder, world.server.port


def _let_in(world: World, phone: Phone) -> None:
    phone.get_ready(world.token())


@pytest.fixture
def world(
    tmp_path: Path, make_server: Callable[..., ServerProcess], request: pytest.FixtureRequest
) -> World:
    """A furnished book, served by a real process; where the test wants `phone` too, one that has let it in."""
    if "phone" not in request.fixturenames:
        return World(tmp_path, make_server)
    folder, port = lay(request.getfixturevalue("playwright"), request.getfixturevalue("chromium_path"), _let_in)
    shutil.copytree(folder, tmp_path, dirs_exist_ok=True)
    return World(tmp_path, make_server, port)


@pytest.fixture
def make_phone(playwright: Any, browser_options: dict[str, Any], tmp_path: Path) -> Iterator[Callable[..., Phone]]:
    """A function that makes a phone for an address; all are closed with the test."""
    made: list[Phone] = []

    def make(url: str) -> Phone:
        made.append(Phone(playwright, browser_options, tmp_path / f"profile-{len(made)}", url))
        return made[-1]

    yield make
    for phone in made:
        phone.close()


@pytest.fixture
def phone(world: World, make_phone: Callable[..., Phone]) -> Phone:
    """A phone that is let in and can work without signal, straight at the server."""
    made = make_phone(world.server.url)
    (world.data_dir.parent / "profile").rename(made.profile)
    wait_until_started(made.open("/today"))
    return made


@pytest.fixture
def proxy(world: World) -> Iterator[FaultyProxy]:
    """A faulty network in front of the server."""
    made = FaultyProxy(world.server.port)
    yield made
    made.close()


def book_time(text: str) -> datetime:
    """Return one of the book's UTC texts as a moment."""
    return datetime.fromisoformat(text).astimezone(UTC)
