"""A note hangs on its vessel until somebody has read it; one may be spoken."""

from __future__ import annotations

import re
from typing import Any

import pytest

from tests.browser.floor_house import FERMENTER, TIMEOUT_MS, Floor, far_floor, floor
from tests.browser.test_enclosures import _WIPE, files_of
from webapp.book.enclosures.content import sort_of_head

__all__ = ["far_floor", "floor"]

_MICROPHONE = """() => {
  const sound = new AudioContext();
  const tone = sound.createOscillator();
  const out = sound.createMediaStreamDestination();
  tone.connect(out);
  tone.start();
  navigator.mediaDevices.getUserMedia = async () => out.stream;
}"""


def leave(floor: Floor, text: str, mark: str = FERMENTER) -> None:
    floor.phone.log({"kind": "shift_note", "kind_version": 1, "mark": mark, "person": "BT",
                     "values": {"text": {"raw": text}}})


def test_a_note_hangs_on_its_vessel_and_under_today_until_it_is_read(floor: Floor) -> None:
    leave(floor, "Cap pushed down.\nRead it at six.")
    leave(floor, "Fruit comes at nine.", "")
    page = floor.open("/today")
    page.locator("[data-due=notes]", has_text="1").wait_for()
    page = floor.open(f"/m/{FERMENTER}")
    page.locator(".hanging", has_text="Read it at six.").get_by_role("button", name="Read").click()
    page.locator(".hanging").wait_for(state="detached")
    tap = floor.entries()[-1]
    assert (tap["kind"], tap["mark"], tap["person"]) == ("note_heard", FERMENTER, "NS")
    assert tap["values"]["note"]["raw"] == floor.entries()[0]["id"]
    page = floor.open("/job/notes")
    page.locator(".hanging", has_text="Read it at six.").locator("text=read by NS").wait_for()
    open_notes = page.locator("section", has_text="Not read yet")
    open_notes.locator(".hanging", has_text="Fruit comes at nine.").wait_for()
    assert open_notes.locator(".hanging").count() == 1
    page = floor.open("/today")
    page.locator("html[data-started]").wait_for(state="attached")
    assert page.locator("[data-due=notes]").count() == 0


def test_a_note_may_be_spoken_and_its_sound_is_kept_before_its_entry(floor: Floor) -> None:
    floor.page.evaluate(_WIPE)
    page = floor.form(f"/m/{FERMENTER}/log/shift_note")
    page.evaluate(_MICROPHONE)
    page.locator(".voice button").click()
    page.locator(".voice [aria-pressed=true]").wait_for()
    page.wait_for_timeout(1200)
    page.locator(".voice button").click()
    page.locator(".enclose .thumbs li").wait_for()
    assert re.match(r"Voice note, \d s", page.locator("[name=text]").input_value())
    page.locator("[data-part=log]").click()
    page.wait_for_url(re.compile(r"/m/[^/]+$"), timeout=TIMEOUT_MS)
    (kept,) = files_of(floor)
    (entry,) = floor.entries()
    assert entry["enclosed"] == [kept["sha256"]]
    sort = sort_of_head(bytes(kept["bytes"])[:64])
    assert sort and sort.type == kept["type"] and sort.type.startswith("audio/"), "the book takes what the phone made"
    page = floor.open(f"/m/{FERMENTER}")
    page.locator(".hanging").get_by_role("button", name="Listen").click()
    page.locator("dialog audio").wait_for()


@pytest.mark.parametrize("size", [(390, 844), (844, 390), (320, 568)])
def test_nothing_is_scrolled_sideways_and_targets_are_large(floor: Floor, size: tuple[int, int]) -> None:
    leave(floor, "Smells odd. " * 30)
    for path in (f"/m/{FERMENTER}", "/job/notes", f"/m/{FERMENTER}/log/shift_note"):
        page: Any = floor.open(path)
        page.set_viewport_size({"width": size[0], "height": size[1]})
        page.wait_for_timeout(400)
        assert page.evaluate("document.documentElement.scrollWidth - innerWidth") <= 0, path
        least = page.evaluate("""() => Math.min(...[...document.querySelectorAll(".hanging .button, .enclose .button")]
          .map((one) => one.getBoundingClientRect().height).filter(Boolean), 99)""")
        assert least >= 44, (path, least)
    floor.page.set_viewport_size({"width": 390, "height": 844})
