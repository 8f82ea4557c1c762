"""A passkey in Chromium: made at the desk, used to sign in and once more, by a device that the browser plays.

The device is that of the Chrome DevTools Protocol, domain WebAuthn (chromedevtools.github.io/devtools-protocol).
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from tests.server_process import ServerProcess
from webapp.book.house import people, registry
from webapp.book.opening import open_book

pytestmark = pytest.mark.browser
PASSWORD = "a long enough secret"
DEVICE = {"protocol": "ctap2", "transport": "internal", "hasResidentKey": True, "hasUserVerification": True,
          "isUserVerified": True}


def test_a_passkey_is_made_and_opens_the_desk(
    browser: Any, make_server: Callable[..., ServerProcess], tmp_path: Path
) -> None:
    folder = tmp_path / "book"
    folder.mkdir()
    with open_book(folder / "book.sqlite") as book:
        registry.set_site(book, {"name": "Tarrowdene Orchard Stills", "units": "metric"}, by="OL")
        people.put_person(book, {"code": "OL", "name": "Odette L.", "roles": [], "access": "office"}, by="OL")
        people.set_password(book, "OL", PASSWORD)
    url = f"http://localhost:{make_server(folder).port}"
    context = browser.new_context(service_workers="block", viewport={"width": 390, "height": 844})
    try:
        page = context.new_page()
        cdp = context.new_cdp_session(page)
        cdp.send("WebAuthn.enable")
        device = cdp.send("WebAuthn.addVirtualAuthenticator", {"options": DEVICE})["authenticatorId"]
        page.goto(f"{url}/sign-in")
        page.fill("[name=code]", "OL")
        page.fill("[name=password]", PASSWORD)
        page.click("text='Sign in'")
        page.goto(f"{url}/desk/you")
        page.click("text='Add a passkey'")
        page.fill("[name=name]", "This phone")
        page.click("text='Make it'")
        page.wait_for_selector("th:has-text('This phone')")
        context.clear_cookies()
        page.goto(f"{url}/sign-in")
        page.click("text='Sign in with a passkey'")
        page.wait_for_url("**/desk/")
        page.goto(f"{url}/again?next=/desk/you")
        page.click("text='Use a passkey'")
        page.wait_for_url("**/desk/you")
        # A finger that is not theirs: nothing opens, and the page says what to do.
        cdp.send("WebAuthn.setUserVerified", {"authenticatorId": device, "isUserVerified": False})
        context.clear_cookies()
        page.goto(f"{url}/sign-in")
        page.click("text='Sign in with a passkey'")
        page.wait_for_selector("text='No passkey was used. Try once more, or type your password.'")
        page.goto(url.replace("localhost", "127.0.0.1") + "/sign-in")
        assert page.locator("text='Sign in with a passkey'").count() == 0
    finally:
        context.close()
