"""A phone speaks the language that is chosen on it: at once, without signal where it has it, and alone of all."""

from __future__ import annotations

import threading
import time
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import expect
from werkzeug.serving import make_server

from tests.words.invented import catalogues_of
from webapp import create_app

HEAD = "### Only the desk reads what follows.\n"
# Invented, so that no real catalogue is in the way; what they lack is said in English.
SPOKEN = {
    "de": f"floor-more-language = Zunge\nlabel-shift_note-text = Zeilen\n{HEAD}floor-frame-today = Jetzund\n",
    "es": f"floor-more-language = Lengüeta\n{HEAD}floor-frame-today = Ahorita\n",
}
HELD = """async () => (await caches.keys()).filter((name) => /-(words|talk)-/.test(name))
  .map((name) => name.split("-").slice(1, 3).join("-")).sort()"""


@pytest.fixture
def spoken(tmp_path_factory: pytest.TempPathFactory, monkeypatch: pytest.MonkeyPatch) -> Iterator[None]:
    """Let there be two more languages."""
    yield from catalogues_of(SPOKEN, tmp_path_factory.mktemp("words"), monkeypatch)


@pytest.fixture
def house(spoken: None, tmp_path: Path) -> Iterator[tuple[str, Any]]:
    """Serve a book in three languages; give its address, and what stops it."""
    app = create_app(tmp_path / "book", testing=True)
    server = make_server("127.0.0.1", 0, app, threaded=True)
    thread = threading.Thread(target=server.serve_forever, daemon=True)
    thread.start()

    def stop() -> None:
        server.shutdown()
        server.server_close()
        thread.join()

    yield f"http://127.0.0.1:{server.server_port}", stop
    if thread.is_alive():
        stop()
    app.extensions["book"].close()


def wait_for(page: Any, part: str) -> None:
    """Wait until a part is on the phone."""
    until = time.monotonic() + 60
    while part not in page.evaluate(HELD):
        assert time.monotonic() < until, part
        time.sleep(0.1)


def test_the_language_is_changed_on_the_phone_and_needs_no_signal_once_it_is_there(
    house: tuple[str, Any], browser: Any
) -> None:
    origin, stop = house
    context = browser.new_context(viewport={"width": 390, "height": 844}, locale="en-GB")
    page = context.new_page()
    page.goto(f"{origin}/more")
    page.evaluate("navigator.serviceWorker.ready")
    wait_for(page, "talk-en")
    assert page.evaluate(HELD) == ["talk-en", "words-en"], "no other language than its own"
    page.goto(f"{origin}/more")
    page.locator("[name=language][value=de]").check()
    expect(page.locator("html")).to_have_attribute("lang", "de")
    expect(page.locator(".foot")).to_contain_text("Jetzund")
    expect(page.get_by_text("Zunge")).to_be_visible()
    wait_for(page, "talk-de")
    assert {one["name"]: one["value"] for one in context.cookies()}["cellarslate_language"] == "de"
    stop()
    page.goto(f"{origin}/log/shift_note")
    expect(page.locator("form")).to_contain_text("Zeilen")
    page.goto(f"{origin}/more")
    page.locator("[name=language][value=es]").check()  # never fetched
    expect(page.locator(".toast")).to_contain_text("not on this phone yet")
    expect(page.locator("html")).to_have_attribute("lang", "de")
    page.locator("[name=language][value=en]").check()
    expect(page.locator("html")).to_have_attribute("lang", "en-GB")
    expect(page.locator(".foot")).to_contain_text("Today")
    assert page.evaluate(HELD) == ["talk-de", "talk-en", "words-de", "words-en"]
    context.close()


def test_a_new_phone_speaks_as_its_system_does(house: tuple[str, Any], browser: Any) -> None:
    origin, _ = house
    context = browser.new_context(viewport={"width": 390, "height": 844}, locale="es-ES")
    page = context.new_page()
    page.goto(f"{origin}/today")
    page.evaluate("navigator.serviceWorker.ready")
    wait_for(page, "talk-es")
    assert page.evaluate(HELD) == ["talk-es", "words-es"]
    page.goto(f"{origin}/today")
    expect(page.locator("html")).to_have_attribute("lang", "es")
    expect(page.locator(".foot")).to_contain_text("Ahorita")
    context.close()
