"""The first scene whole: a printed label before the camera, no server, a dead phone, and the entry once in the book."""

from __future__ import annotations

import time
from pathlib import Path
from typing import Any

import pytest

from tests.browser.offline_world import FERMENTER, Phone, World, wait_until_started, wait_until_waiting
from tests.labels.camera_feed import camera_flags, make_camera_feed

pytestmark = pytest.mark.browser


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


def scene(world: World, phone: Phone) -> None:
    phone.get_ready(world.token())
    phone.close()  # Chromium writes a new cookie down only after a while; a day lies between here and the cellar
    page = phone.open("/today")
    page.goto(phone.url + "/scan")  # once with signal, so that the reader of labels is on the phone
    page.wait_for_url(f"**/m/{FERMENTER}")
    world.server.stop()

    began = time.monotonic()
    page.goto(phone.url + "/scan")
    page.wait_for_url(f"**/m/{FERMENTER}")
    page.get_by_role("link", name="Reading").click()
    page.wait_for_url(f"**/m/{FERMENTER}/log/ferment_reading**")
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
    (entered,) = world.entries(mark=FERMENTER)
    assert entered["id"] == kept["id"]
    print(f"scan to logged, driven by the test: {took_s:.1f} s")
