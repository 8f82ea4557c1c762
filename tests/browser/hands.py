"""One way to work the floor's pages in any of three engines: open, tap, write, look."""

from __future__ import annotations

import contextlib
import time
from typing import Any, Protocol

from tests.browser.offline_world import WAIT_MS

_MARK_BY_WORDS = """const seen = (one) => one.getClientRects().length > 0;
  const text = (one) => one.textContent.replace(/\\s+/g, " ").trim();
  const all = [...document.querySelectorAll(args[0])].filter(seen);
  const found = all.find((one) => text(one) === args[1]) ?? all.find((one) => text(one).startsWith(args[1]));
  document.querySelector("[data-hand]")?.removeAttribute("data-hand");
  found?.setAttribute("data-hand", "");
  return Boolean(found);"""

# A finger waits until what it goes for stands still and nothing lies over it. Returns its middle.
STAND_STILL = """const one = document.querySelector(args[0]);
  one.scrollIntoView({ block: "center", behavior: "instant" });
  const middle = () => {
    const { left, top, width, height } = one.getBoundingClientRect();
    return [left + width / 2, top + height / 2];
  };
  for (let turn = 0, before = ""; turn < 100; turn += 1) {
    const [x, y] = middle();
    const hit = document.elementFromPoint(x, y);
    if (before === `${x} ${y}` && hit && (one.contains(hit) || hit.contains(one))) break;
    before = `${x} ${y}`;
    await new Promise((go) => setTimeout(go, 50));
  }
  return middle().map(Math.round);"""


class PageGone(Exception):
    """The page was left while it was asked."""


class Hand(Protocol):
    """A browser's page under a hand."""

    def open(self, url: str) -> None:
        """Go to an address, and wait until the page has loaded."""

    def run(self, body: str, *arguments: Any) -> Any:
        """Run the body of an async function in the page and return what it returns; `args` holds the arguments."""

    def tap(self, css: str) -> None:
        """Tap an element."""

    def write(self, css: str, text: str) -> None:
        """Type into a field."""

    def picture(self) -> bytes:
        """Return a PNG of what is seen."""


class Chromium:
    """A page of Playwright's."""

    def __init__(self, page: Any) -> None:
        self._page = page

    def open(self, url: str) -> None:
        """Go to an address, and wait until the page has loaded."""
        self._page.goto(url, wait_until="load")

    def run(self, body: str, *arguments: Any) -> Any:
        """Run the body of an async function in the page and return what it returns; `args` holds the arguments."""
        from playwright.sync_api import Error

        try:
            return self._page.evaluate(f"async (args) => {{ {body} }}", list(arguments))
        except Error as error:
            if "navigation" not in error.message:
                raise
            raise PageGone from error

    def tap(self, css: str) -> None:
        """Tap an element."""
        self._page.locator(css).first.tap()

    def write(self, css: str, text: str) -> None:
        """Type into a field."""
        self._page.locator(css).first.focus()
        self._page.keyboard.type(text)

    def picture(self) -> bytes:
        """Return a PNG of what is seen."""
        shot: bytes = self._page.screenshot()
        return shot


class WebKit:
    """A page of WebKitGTK's, through Selenium."""

    def __init__(self, driver: Any) -> None:
        driver.set_script_timeout(WAIT_MS / 1000)
        self._driver = driver

    def open(self, url: str) -> None:
        """Go to an address, and wait until the page has loaded."""
        self._driver.get(url)

    def run(self, body: str, *arguments: Any) -> Any:
        """Run the body of an async function in the page and return what it returns; `args` holds the arguments."""
        script = f"""const done = arguments[arguments.length - 1], args = [...arguments].slice(0, -1);
          const work = async () => {{ {body} }};
          work().then((value) => done({{ value }}), (error) => done({{ error: String(error) }}));"""
        from selenium.common.exceptions import JavascriptException

        try:
            answer = self._driver.execute_async_script(script, *arguments)
        except JavascriptException as error:  # what the body itself throws comes as an answer
            raise PageGone from error
        assert "error" not in answer, answer["error"]
        return answer.get("value")

    def tap(self, css: str) -> None:
        """Tap an element."""
        from selenium.common.exceptions import ElementClickInterceptedException

        for _ in range(20):  # a bar that says what was logged may lie over it for a while
            self.run(STAND_STILL, css)
            with contextlib.suppress(ElementClickInterceptedException):
                return self._driver.find_element("css selector", css).click()
        raise AssertionError(f"something lies over {css}")

    def write(self, css: str, text: str) -> None:
        """Type into a field."""
        self._driver.find_element("css selector", css).send_keys(text)

    def picture(self) -> bytes:
        """Return a PNG of what is seen."""
        shot: bytes = self._driver.get_screenshot_as_png()
        return shot


def wait_for(hand: Hand, expression: str, *arguments: Any) -> None:
    """Wait until an expression is true in the page; it may await."""
    deadline = time.monotonic() + WAIT_MS / 1000
    while True:
        with contextlib.suppress(PageGone):
            if hand.run(f"return Boolean({expression})", *arguments):
                return
        if time.monotonic() > deadline:
            seen = hand.run("return [location.href, document.body.innerText]")
            raise AssertionError(f"never true: {expression} {arguments}; the page: {seen}")
        time.sleep(0.05)


def wait_at(hand: Hand, path: str) -> None:
    """Wait until the page at a path has done its work."""
    wait_for(hand, """location.pathname === args[0] && "started" in (document.documentElement?.dataset ?? {})""", path)


def tap_words(hand: Hand, words: str, among: str = "button, a") -> None:
    """Tap what is seen with these words on it: the same ones, else what begins with them."""
    deadline = time.monotonic() + WAIT_MS / 1000
    while not hand.run(_MARK_BY_WORDS, among, words):
        assert time.monotonic() < deadline, f"nothing says {words!r} among {among}"
        time.sleep(0.05)
    hand.tap("[data-hand]")
