"""What a phone of this version writes: its batches, the answers, and its slate as a file; by a real browser."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

from tests.browser.offline_world import RECEIVER, STILL, Phone, World, reading
from tests.find_browsers import CHROMIUM_FLAGS, find_chromium
from tests.server_process import ServerProcess
from webapp.book.house import people, registry
from webapp.book.opening import open_book

_SAVE = """async () => (await (await import("/static/slate/file.js")).saveSlate()).text()"""
_LISTEN = """() => { window.sent = []; const plain = window.fetch;
  window.fetch = async (where, how) => {
    const answer = await plain(where, how);
    if (String(where?.url ?? where).includes("/api/hand-in")) {
      const packed = typeof how.body !== "string";
      const whole = packed ? new Blob([how.body]).stream().pipeThrough(new DecompressionStream("gzip")) : how.body;
      window.sent.push({ body: await new Response(whole).json(), answer: await answer.clone().json() });
    }
    return answer;
  }; }"""


def record(folder: Path) -> tuple[dict[str, Any], dict[str, Any]]:
    """Return (the house, batches and answers of a phone; its slate as saved, waiting and settled)."""
    from playwright.sync_api import sync_playwright

    folder.mkdir()
    servers: list[ServerProcess] = []

    def serve(data_dir: Path) -> ServerProcess:
        servers.append(ServerProcess(data_dir))
        return servers[-1].start()

    options = {"executable_path": find_chromium(), "headless": True, "chromium_sandbox": False}
    world = World(folder, serve)
    try:
        with sync_playwright() as playwright:
            phone = Phone(playwright, {**options, "args": list(CHROMIUM_FLAGS)}, folder / "profile", world.server.url)
            try:
                return _log_and_hand_in(world, phone)
            finally:
                phone.close()
    finally:
        for server in servers:
            server.close()


def _log_and_hand_in(world: World, phone: Phone) -> tuple[dict[str, Any], dict[str, Any]]:
    page = phone.get_ready(world.token())
    page.evaluate(_LISTEN)
    world.server.stop()
    first = phone.log(reading(gravity="1,050", temp="14,6"))
    phone.log(reading(gravity="1,0501", temp="66,6", remark="Zwetschge, süß"))
    phone.log(reading(gravity="1.061", temp="15.0"))
    phone.log(reading(gravity="seven"))
    phone.log(reading(gravity="1.049", temp="14.6", amends=first["id"], reason="misread"))
    charge = {"from_vessel": {"raw": first["entry"]["mark"]}, "wash": {"raw": "450", "unit": "L"},
              "heads_to": {"raw": RECEIVER}, "wash_strength": {"raw": "6.0", "unit": "pct_vol"}}
    phone.log({**reading(), "kind": "charge", "mark": STILL, "mark_by": "scanned", "values": charge})
    waiting = json.loads(page.evaluate(_SAVE))
    world.server.start()
    phone.hand_in()
    phone.wait_until_settled()
    settled = json.loads(page.evaluate(_SAVE))
    with open_book(world.book_path) as book:
        house = {"site": registry.site(book), "vessels": registry.vessels(book), "people": people.people(book)}
    sent = [one for one in page.evaluate("() => window.sent") if one["body"]["entries"]]
    return {"house": house, "batches": sent}, {"waiting": waiting, "settled": settled}
