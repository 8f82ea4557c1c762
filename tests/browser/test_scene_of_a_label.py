"""The first scene whole: a printed label before the camera, no server, a dead phone, and the entry once in the book."""

from __future__ import annotations

import time
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

import pytest

from tests.browser.offline_world import FERMENTER, Phone, World, wait_for, wait_until_started, wait_until_waiting
from tests.labels.camera_feed import blank_frame, camera_flags, make_camera_feed
from webapp.book.intake import hand_in
from webapp.book.opening import open_book

pytestmark = pytest.mark.browser
HOLDS_FRUIT = f"""(await (await import("/static/slate/cards.js")).getCard("{FERMENTER}"))?.holds"""


def test_scan_log_die_and_hand_in(
    world: World, playwright: Any, browser_options: dict[str, Any], tmp_path: Path
) -> None:
    feed = make_camera_feed([FERMENTER], tmp_path / "camera.mjpeg", kind="perspective")
    options = {**browser_options, "args": [*browser_options["args"], *camera_flags(feed)], "permissions": ["camera"]}
    phone = Phone(playwright, options, tmp_path / "profile", world.server.url)
    try:
        scene(world, phone)
    finally:
        phone.close()


# A torch as a phone's track has one: it obeys, and keeps what it was told.
TORCH = """
  globalThis.wishes = [];
  MediaStreamTrack.prototype.getCapabilities = () => ({ torch: true });
  MediaStreamTrack.prototype.applyConstraints = async ({ advanced: [{ torch }] }) => { globalThis.wishes.push(torch); };
"""


def test_in_the_dark_the_torch_is_lit_until_a_hand_turns_it_off(
    world: World, playwright: Any, browser_options: dict[str, Any], tmp_path: Path
) -> None:
    feed = make_camera_feed([blank_frame(12)], tmp_path / "camera.mjpeg")
    options = {**browser_options, "args": [*browser_options["args"], *camera_flags(feed)], "permissions": ["camera"]}
    phone = Phone(playwright, options, tmp_path / "profile", world.server.url)
    try:
        phone.get_ready(world.token())
        page = phone.open("/today")
        page.add_init_script(TORCH)
        page.goto(phone.url + "/scan")
        page.locator("[data-part=torch][aria-pressed=true]").wait_for()
        page.locator("[data-part=torch]").click()
        page.locator("[data-part=torch][aria-pressed=false]").wait_for()
        page.wait_for_timeout(1500)
        assert page.evaluate("wishes") == [True, False]
    finally:
        phone.close()


def set_fruit(world: World) -> None:
    """Let the fermenter hold plums since yesterday."""
    at = (datetime.now(UTC) - timedelta(days=1)).isoformat()
    values = {
        "gross": ("1652", "kg"),
        "tare": ("32", "kg"),
        "temp": ("15", "degC"),
        "rot": ("2", "pct"),
        "material": ("plum", ""),
        "grower_lot": ("D-2507", ""),
    }
    entry = {
        "id": "01930001-0000-7000-8000-000000000001",
        "kind": "fruit_intake",
        "kind_version": 1,
        "mark": FERMENTER,
        "mark_by": "typed",
        "read_at": at,
        "typed_at": at,
        "person": "NS",
        "role": "",
        "seen_by": "",
        "device": "",
        "seq": 1,
        "values": {name: {"raw": raw, "unit": unit} for name, (raw, unit) in values.items()},
        "as_read": [],
        "looked_again": [],
        "remark": "",
        "amends": None,
        "reason": "",
    }
    with open_book(world.book_path) as book:
        now = datetime.now(UTC)
        answer = hand_in(book, {"now": now.isoformat(), "device": "", "entries": [entry]}, via="phone", now=now)
    assert answer["results"][0]["settled"] == "entered"


def scene(world: World, phone: Phone) -> None:
    phone.get_ready(world.token())
    phone.close()  # Chromium writes a new cookie down only after a while; a day lies between here and the cellar
    page = phone.open("/today")
    page.goto(phone.url + "/scan")  # once with signal, so that the reader of labels is on the phone
    page.wait_for_url(f"**/m/{FERMENTER}")
    set_fruit(world)
    phone.open("/slate")
    wait_for(page, HOLDS_FRUIT)
    world.server.stop()

    began = time.monotonic()
    page.goto(phone.url + "/scan")
    page.wait_for_url(f"**/m/{FERMENTER}/log/ferment_reading")  # a ferment that goes on: its label is its form
    wait_until_started(page)
    page.locator("input[name=temp]").fill("14,6")
    page.locator("input[name=gravity]").fill("1,031")
    page.get_by_role("button", name="Log it").click()
    page.wait_for_url(f"**/m/{FERMENTER}")
    took_s = time.monotonic() - began
    wait_until_waiting(page, 1)
    phone.kill()

    phone.open("/slate")
    (kept,) = phone.slate()
    assert kept["entry"]["mark_by"] == "scanned"
    assert kept["entry"]["values"]["gravity"]["raw"] == "1,031"
    world.server.start()
    phone.open("/slate")
    phone.wait_until_settled()
    (entered,) = world.entries(kind="ferment_reading")
    assert entered["id"] == kept["id"]
    print(f"scan to logged, driven by the test: {took_s:.1f} s")
