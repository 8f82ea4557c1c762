"""What all tests share: the header, the browsers, and a real server process."""

import os
import platform
import sqlite3
import sys
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest
from hypothesis import HealthCheck, settings

from tests.find_browsers import WebKit, chromium_options, find_chromium, find_firefox, find_webkit, read_version
from tests.server_process import ROOT_DIR, WITHOUT_DIR, ServerProcess
from webapp import __version__

# For all programs that tests start, however they do.
_SEEN = os.environ.get("PYTHONPATH", "").split(os.pathsep)
os.environ["PYTHONPATH"] = os.pathsep.join([str(WITHOUT_DIR), *(seen for seen in _SEEN if seen != str(WITHOUT_DIR))])
sys.path[:] = [folder for folder in sys.path if folder != str(WITHOUT_DIR)]  # the tests themselves see everything
if os.environ.pop("PYTHONDONTWRITEBYTECODE", ""):
    # They start some thousand times: compiling the whole program anew each time would be most of what the tests cost.
    os.environ["PYTHONPYCACHEPREFIX"] = str(ROOT_DIR / ".pytest_cache" / "bytecode")

# Test machines are busy with other things; how long an example takes says nothing.
settings.register_profile("patient", deadline=None, suppress_health_check=[HealthCheck.too_slow])
settings.load_profile("patient")

_BY_FLAG = ("soak", "bench")
_NO_CHROMIUM = "No Chromium was found. Run the tests with `python -m tests`, which finds or fetches one."


def pytest_addoption(parser: pytest.Parser) -> None:
    for name in _BY_FLAG:
        parser.addoption(f"--{name}", action="store_true", help=f"run the tests marked {name} as well")
    parser.addoption("--record", action="store_true", help="write down anew what the phone's sums answer")


def pytest_collection_modifyitems(config: pytest.Config, items: list[pytest.Item]) -> None:
    left_out = {name for name in _BY_FLAG if not config.getoption(f"--{name}")}
    dropped = [item for item in items if any(item.get_closest_marker(name) for name in left_out)]
    if dropped:
        config.hook.pytest_deselected(items=dropped)
        items[:] = [item for item in items if item not in set(dropped)]


def pytest_report_header() -> list[str]:
    chromium = find_chromium()
    webkit, firefox = find_webkit(), find_firefox()
    return [
        f"Cellarslate {__version__}, Python {platform.python_version()}, SQLite {sqlite3.sqlite_version}",
        f"Chromium: {f'{read_version(chromium)} ({chromium})' if chromium else 'not found'}",
        f"WebKitGTK: {webkit.browser_path if webkit else 'not found, its tests are skipped'}",
        f"Firefox: {f'{read_version(firefox)} ({firefox})' if firefox else 'not found, its tests are skipped'}",
    ]


@pytest.fixture(scope="session", autouse=True)
def product_hasher() -> Iterator[Any]:
    """How the product hashes passwords. It is slow on purpose, so tests in this process hash cheaply instead."""
    from argon2 import PasswordHasher

    from webapp.book.house import people

    quick = PasswordHasher(time_cost=1, memory_cost=64, parallelism=1)
    with pytest.MonkeyPatch.context() as patch:
        product = people._hasher
        patch.setattr(people, "_hasher", quick)
        people._nobodys_password.cache_clear()
        yield product


@pytest.fixture(scope="session")
def chromium_path() -> Path:
    """The Chromium to drive."""
    path = find_chromium()
    if path is None:
        pytest.fail(_NO_CHROMIUM)
    return path


@pytest.fixture(scope="session")
def playwright() -> Iterator[Any]:
    """Playwright's own handle, one a session."""
    from playwright.sync_api import expect, sync_playwright

    # Five seconds are Playwright's own; test machines are often busy with more than one thing.
    expect.set_options(timeout=45_000)
    with sync_playwright() as handle:
        yield handle


@pytest.fixture(scope="session")
def browser_options(chromium_path: Path) -> dict[str, Any]:
    """How to launch Chromium; for tests that need a browser, profile or flags of their own."""
    return chromium_options(chromium_path)


@pytest.fixture(scope="session")
def browser(playwright: Any, browser_options: dict[str, Any]) -> Iterator[Any]:
    """One Chromium for the session; make a context of your own in each test, and close it."""
    handle = playwright.chromium.launch(**browser_options)
    yield handle
    handle.close()


@pytest.fixture(scope="session")
def webkit_parts() -> WebKit:
    """The programs that drive WebKitGTK; skips where they are missing."""
    parts = find_webkit()
    if parts is None:
        pytest.skip("WebKitGTK's driver is not installed (Debian: webkit2gtk-driver and xvfb).")
    return parts


@pytest.fixture
def make_server(tmp_path: Path) -> Iterator[Callable[..., ServerProcess]]:
    """A function that starts a real server; all are ended with the test.

    Without a data folder it takes `tmp_path / "book"`. Options as of ServerProcess.
    """
    started: list[ServerProcess] = []

    def start(data_dir: Path | None = None, **options: Any) -> ServerProcess:
        server = ServerProcess(data_dir or tmp_path / "book", **options)
        started.append(server)
        return server.start()

    yield start
    for server in started:
        server.close()
