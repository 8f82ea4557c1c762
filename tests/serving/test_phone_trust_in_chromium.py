"""A browser that trusts our authority gets a secure context; one that does not is kept out."""

import os
import subprocess
import sys
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest

from tests.server_process import ServerProcess
from tests.serving import trust_store
from webapp.serving.phone_trust import start_trust_listener

pytestmark = [
    pytest.mark.browser,
    pytest.mark.skipif(
        sys.platform != "linux" or trust_store.find_library() is None,
        reason="needs the trust store that Chromium reads on Linux (libnss3)",
    ),
]

REGISTER = "() => navigator.serviceWorker.register('/sw.js').then(it => it.scope)"

HAND_IN = """() => fetch('/api/hand-in', {
    method: 'POST', headers: {'Content-Type': 'application/json'}, body: '{}'
}).then(answer => answer.status)"""


def launch(playwright: Any, browser_options: dict[str, Any], home_dir: Path) -> Any:
    return playwright.chromium.launch(**browser_options, env={**os.environ, "HOME": str(home_dir)})


def trusting_home(server: ServerProcess, folder: Path) -> Path:
    """Return a home folder whose trust store holds the authority of this server."""
    home_dir = folder / "home"
    program = [sys.executable, trust_store.__file__, str(home_dir / ".pki" / "nssdb")]
    subprocess.run([*program, str(server.data_dir / "tls" / "authority.pem")], check=True, timeout=60)
    return home_dir


IPHONE = "Mozilla/5.0 (iPhone; CPU iPhone OS 18_1 like Mac OS X) AppleWebKit/605.1.15 Version/18.1 Mobile Safari/604.1"
ANDROID = "Mozilla/5.0 (Linux; Android 15; K) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/131.0 Mobile Safari/537.36"
AXE = (Path(__file__).parent.parent / "vendor" / "axe.min.js").read_text("utf-8")
_FOUND = """async () => (await axe.run({
  runOnly: ["wcag2a", "wcag2aa", "wcag21aa", "wcag22aa", "best-practice"], resultTypes: ["violations"],
})).violations.map((one) => [one.id, one.nodes.map((node) => node.html)])"""
Listen = Callable[[ServerProcess], str]


@pytest.fixture
def listen() -> Iterator[Listen]:
    """A function that serves a site's trust page over plain http, and returns its address."""
    started: list[Any] = []

    def start(server: ServerProcess) -> str:
        listener = start_trust_listener(server.data_dir, f"{server.url}/today", "127.0.0.1", 0)
        started.append(listener)
        return f"http://127.0.0.1:{listener.server_port}/trust"

    yield start
    for listener in started:
        listener.shutdown()
        listener.server_close()


def test_the_trust_page_sees_that_the_phone_trusts_and_goes_on(
    make_server: Callable[..., ServerProcess], playwright: Any, browser_options: dict[str, Any], tmp_path: Path,
    listen: Listen,
) -> None:
    server = make_server(arguments=("--tls",))
    browser = launch(playwright, browser_options, trusting_home(server, tmp_path))
    try:
        page = browser.new_page(user_agent=IPHONE)
        page.goto(listen(server))
        page.get_by_text("This phone trusts the house.").wait_for()
        assert not page.locator("[data-step]").first.is_visible()
        page.wait_for_url(f"{server.url}/today")
    finally:
        browser.close()


@pytest.mark.parametrize(
    ("agent", "steps", "likely"), [(IPHONE, 3, "the switch is not on"), (ANDROID, 3, "filed as a Wi-Fi certificate")]
)
def test_the_trust_page_goes_step_by_step_and_says_what_is_most_often_missing(
    make_server: Callable[..., ServerProcess], playwright: Any, browser_options: dict[str, Any], tmp_path: Path,
    listen: Listen, agent: str, steps: int, likely: str,
) -> None:
    from playwright.sync_api import expect

    server = make_server(arguments=("--tls",))
    browser = launch(playwright, browser_options, tmp_path / "other-home")
    try:
        page = browser.new_page(user_agent=agent, viewport={"width": 320, "height": 568})
        page.goto(listen(server))
        for step in range(1, steps + 1):
            expect(page.locator("[data-part=state]")).to_have_text(f"Step {step} of {steps}")
            assert [one.is_visible() for one in page.locator("[data-step]").all()].count(True) == 1
            assert likely not in page.inner_text("main")
            page.get_by_role("button", name="Done").click()
        expect(page.locator("[data-part=state]")).to_have_text("It does not trust the house yet.")
        assert likely in page.inner_text("main")
        assert "This page cannot tell the two apart." in page.inner_text("main")
        assert page.evaluate("document.documentElement.scrollWidth") <= 320
        page.get_by_role("button", name="Back one step").click()
        expect(page.locator("[data-part=state]")).to_have_text(f"Step {steps - 1} of {steps}")
        assert page.url.endswith("/trust"), "it goes nowhere by itself"
    finally:
        browser.close()


def test_the_trust_page_is_whole_without_script_and_axe_finds_nothing(
    make_server: Callable[..., ServerProcess], browser: Any, listen: Listen
) -> None:
    server = make_server(arguments=("--tls",))
    address = listen(server)
    plain = browser.new_context(java_script_enabled=False, user_agent=IPHONE)
    page = plain.new_page()
    page.goto(address)
    assert [one.is_visible() for one in page.locator("[data-step]").all()] == [True] * 3
    assert not page.locator("[data-part=wrong]").is_visible()
    assert page.get_by_role("link", name="Go on").is_visible()
    plain.close()
    for theme in ("light", "dark"):
        context = browser.new_context(bypass_csp=True, color_scheme=theme, viewport={"width": 390, "height": 844})
        page = context.new_page()
        page.goto(f"{address}?for=android")
        page.evaluate(AXE)
        assert page.evaluate(_FOUND) == [], theme
        small = page.evaluate("""() => [...document.querySelectorAll("button, .button, .trust__kinds a")]
            .filter((one) => one.checkVisibility() && one.getBoundingClientRect().height < 48)
            .map((one) => one.innerText)""")
        assert small == []
        context.close()


def test_worker_registers_over_tls_once_our_authority_is_trusted(
    make_server: Callable[..., ServerProcess],
    playwright: Any,
    browser_options: dict[str, Any],
    tmp_path: Path,
) -> None:
    server = make_server(arguments=("--tls",))
    browser = launch(playwright, browser_options, trusting_home(server, tmp_path))
    try:
        page = browser.new_page()
        page.goto(server.url)
        assert page.evaluate("isSecureContext")
        assert page.evaluate(REGISTER) == f"{server.url}/"
        # Over TLS the server still knows its own pages: not let in (401), yet no foreign site (403).
        assert page.evaluate(HAND_IN) == 401
    finally:
        browser.close()


def test_browser_that_does_not_trust_us_is_kept_out(
    make_server: Callable[..., ServerProcess],
    playwright: Any,
    browser_options: dict[str, Any],
    tmp_path: Path,
) -> None:
    from playwright.sync_api import Error

    server = make_server(arguments=("--tls",))
    browser = launch(playwright, browser_options, tmp_path / "other-home")
    try:
        page = browser.new_page()
        with pytest.raises(Error, match="ERR_CERT_AUTHORITY_INVALID"):
            page.goto(server.url)
    finally:
        browser.close()
