"""Opening the gallery's screens: any broken policy, foreign request or script's error fails the test."""

import time
from collections.abc import Callable, Iterator
from typing import Any

import pytest

from tests.browser.gallery_server import serve_gallery

PHONE = {"width": 390, "height": 844}
DESK = {"width": 1280, "height": 800}


@pytest.fixture(scope="module")
def gallery() -> Iterator[str]:
    with serve_gallery() as address:
        yield address


@pytest.fixture
def open_page(browser: Any, gallery: str) -> Iterator[Callable[..., Any]]:
    """A function that opens one screen; a broken policy, a foreign request or a script's error fails the test."""
    contexts, faults = [], []

    def open_screen(screen: str, size: dict[str, int] = PHONE, more: str = "", **options: Any) -> Any:
        context = browser.new_context(viewport=size, locale="en-GB", **options)
        contexts.append(context)
        page = context.new_page()
        page.on("console", lambda message: faults.append(message.text) if message.type == "error" else None)
        page.on("pageerror", lambda error: faults.append(str(error)))
        page.on("request", lambda request: None if request.url.startswith(gallery) else faults.append(request.url))
        page.goto(f"{gallery}/gallery?screen={screen}{more}")
        if options.get("java_script_enabled", True):
            wait_until(page, "globalThis.gallery?.ready && document.fonts.status === 'loaded'")
        return page

    yield open_screen
    for context in contexts:
        context.close()
    # The manifest is served by the application, not by the gallery.
    assert [fault for fault in faults if "404" not in fault] == []


def wait_until(page: Any, fact: str, longest_s: float = 45.0) -> None:
    """Wait for a fact of the page; the drivers' own waits need eval, which the policy forbids."""
    until = time.monotonic() + longest_s
    ask = page.evaluate if hasattr(page, "evaluate") else lambda words: page.execute_script(f"return {words}")
    while not ask(f"Boolean({fact})"):
        assert time.monotonic() < until, f"never came true: {fact}"
        ask("new Promise((resolve) => setTimeout(resolve, 20))")
