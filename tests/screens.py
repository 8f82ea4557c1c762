"""Make the screenshots of the manifest from the demo: `python -m tests.screens`, anew when the look has changed."""

from __future__ import annotations

import io
import sys
import tempfile
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

from PIL import Image
from playwright.sync_api import sync_playwright

from tests.browser.offline_world import READY, wait_until_all_is_there
from tests.find_browsers import CHROMIUM_FLAGS, find_chromium
from tests.server_process import ServerProcess
from webapp import demo
from webapp.book.house import devices
from webapp.book.opening import open_book
from webapp.places import STATIC_DIR
from webapp.shipping.assets import SCREENSHOTS

_FOLDER = STATIC_DIR / "screens"
_COLOURS = 64  # flat areas and text: more are not seen
_OFFICE, _HAND, _PIN = "IM", "NS", "3579"  # of demo_data/people.json
_GET_IN = """async ([token, code, pin]) => {
  await (await import("/static/slate/device.js")).enrol(token, "Screens");
  await (await import("/static/slate/cards.js")).refresh();
  await (await import("/static/slate/who.js")).choose(code, pin);
}"""


def main() -> None:
    """Load the demo, show its pages to a phone and to a tablet, and write what they look like."""
    chromium = find_chromium()
    if chromium is None:
        sys.exit("No Chromium was found: install one, or name it in CELLARSLATE_CHROMIUM.")
    _FOLDER.mkdir(exist_ok=True)
    with tempfile.TemporaryDirectory() as folder:
        data_dir = Path(folder)
        demo.load(data_dir, today=datetime.now(UTC).astimezone())
        with open_book(data_dir / "book.sqlite") as book:
            token = str(devices.new_token(book, _OFFICE, "Screens"))
        server = ServerProcess(data_dir).start()
        try:
            with sync_playwright() as playwright:
                options = {"executable_path": chromium, "chromium_sandbox": False, "args": CHROMIUM_FLAGS}
                browser = playwright.chromium.launch(**options)
                _take_all(browser, server.url, token)
                browser.close()
        finally:
            server.close()


def _take_all(browser: Any, url: str, token: str) -> None:
    context = browser.new_context(color_scheme="light", has_touch=True, device_scale_factor=1)
    page = context.new_page()
    page.goto(url + "/today")
    page.evaluate(READY)
    wait_until_all_is_there(page)
    page.evaluate(_GET_IN, [token, _HAND, _PIN])
    for shot in SCREENSHOTS:
        page.set_viewport_size({"width": shot.width, "height": shot.height})
        page.goto(url + shot.path)
        page.locator("html[data-started]").wait_for(state="attached")
        page.wait_for_timeout(1500)  # curves are drawn, and what the page before said has gone
        _write(page.screenshot(), _FOLDER / shot.name)
    context.close()


def _write(png: bytes, path: Path) -> None:
    picture = Image.open(io.BytesIO(png)).convert("RGB").quantize(_COLOURS, dither=Image.Dither.NONE)
    picture.save(path, optimize=True)
    print(f"{path.name}: {path.stat().st_size} bytes")


if __name__ == "__main__":
    main()
