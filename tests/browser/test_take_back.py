"""Taking back and putting right, with the server stopped: at once, and later on the line itself."""

from __future__ import annotations

import re
from typing import Any

import pytest
from playwright.sync_api import expect

from tests.browser.floor_house import FERMENTER, STILL, Floor, far_floor, floor, near_floor

__all__ = ["far_floor", "floor", "near_floor"]

VESSEL = f"/m/{FERMENTER}"
FORM = f"{VESSEL}/log/ferment_reading"


def _log_reading(floor: Floor, temp: str, gravity: str) -> Any:
    page = floor.form(FORM)
    page.locator("[name=temp]").fill(temp)
    page.locator("[name=gravity]").fill(gravity)
    page.get_by_role("button", name="Log it").click()
    page.wait_for_url(re.compile(rf"{VESSEL}$"))
    return page


def _raw(entry: dict[str, Any]) -> dict[str, str]:
    return {name: value["raw"] for name, value in entry["values"].items()}


def test_what_was_just_logged_is_taken_back_in_one_tap(floor: Floor) -> None:
    page = _log_reading(floor, "16.4", "1.031")
    assert page.locator(".readings").inner_text().startswith("Gravity")
    page.locator(".undo").get_by_role("button", name="Take it back").click()
    expect(page.locator(".undo")).to_have_count(0)
    expect(page.locator(".toast")).to_contain_text("Taken back")
    reading, answer = floor.entries()
    assert answer["kind"] == "answer"
    assert _raw(answer) == {"entry": reading["id"], "verdict": "struck", "reason": "taken back at once"}
    assert (answer["person"], answer["device"]) == (reading["person"], reading["device"])
    expect(page.locator(".list__what", has_text="1.031")).to_have_count(0)
    expect(page.locator(".readings")).to_have_count(0)
    page = floor.open("/slate")
    line = page.locator(f"[data-entry='{reading['id']}']")
    expect(line).to_contain_text("taken back")
    assert page.locator("[data-entry]").count() == 1, "the answer shows on the line that it strikes"


def test_the_way_back_is_offered_for_ten_seconds_and_then_stays_on_the_line(floor: Floor) -> None:
    floor.page.clock.install()
    page = _log_reading(floor, "16.4", "1.032")
    expect(page.locator(".undo")).to_be_visible()
    page.clock.fast_forward(11_000)
    expect(page.locator(".undo")).to_have_count(0)
    page.locator(".list__pen").first.click()
    dialog = page.locator("dialog[open]")
    expect(dialog).to_contain_text("1.032 SG")
    dialog.get_by_role("button", name="Take it back").click()
    assert len(floor.entries()) == 1, "nothing before somebody says why"
    dialog.get_by_role("button", name="wrong vessel").click()
    expect(page.locator(".list__what", has_text="1.032")).to_have_count(0)
    assert _raw(floor.entries()[1])["reason"] == "wrong vessel"


def test_a_waiting_line_is_put_right_and_both_stay(floor: Floor) -> None:
    page = _log_reading(floor, "16.4", "1.043")
    page.locator(".list__pen").first.click()
    page.locator("dialog[open]").get_by_role("link", name="Put it right").click()
    page.wait_for_selector("form[data-ready]")
    assert page.locator("[name=gravity]").input_value() == "1.043"
    page.locator("[name=gravity]").fill("1.034")
    page.get_by_role("button", name="Log it").click()
    page.wait_for_url(re.compile(rf"{VESSEL}$"))
    wrong, right = floor.entries()
    assert (right["amends"], right["reason"]) == (wrong["id"], "mistyped")
    assert right["read_at"] == wrong["read_at"]
    expect(page.locator(".list__what", has_text="1.034")).to_have_count(1)
    expect(page.locator(".list__what", has_text="1.043")).to_have_count(0)


def test_a_cut_is_taken_back_at_once_and_the_run_is_where_it_was(floor: Floor) -> None:
    page = floor.form(f"/m/{STILL}/log/charge")
    page.locator("[data-field=from_vessel] .pick", has_text="F3").click()
    page.locator("[name=wash]").fill("482")
    page.locator("[name=wash_strength]").fill("5.2")
    for part, code in (("heads", "R1"), ("hearts", "R2"), ("tails", "R3")):
        page.locator(f"[data-field={part}_to] .pick", has_text=code).click()
    page.get_by_role("button", name="Log it").click()
    page.wait_for_url(re.compile(rf"/m/{STILL}/run$"))
    page.get_by_role("button", name="Cut to hearts").click()
    page.locator(".panel .chip", has_text="nose").first.click()
    page.get_by_role("button", name="Log the cut").click()
    expect(page.get_by_role("button", name="Cut to tails")).to_be_visible()
    page.locator(".undo").get_by_role("button", name="Take it back").click()
    expect(page.get_by_role("button", name="Cut to hearts")).to_be_visible()
    assert [entry["kind"] for entry in floor.entries()] == ["charge", "cut", "answer"]


def test_what_was_taken_back_without_signal_is_struck_in_the_book(near_floor: Floor) -> None:
    floor = near_floor
    floor.world.server.stop()
    page = _log_reading(floor, "16.4", "1.031")
    page.locator(".undo").get_by_role("button", name="Take it back").click()
    expect(page.locator(".toast")).to_contain_text("Taken back")
    reading = floor.entries()[0]["id"]
    floor.world.server.start()
    page = floor.open("/slate")
    expect(page.locator("[data-part=body]")).to_contain_text("All in the book.", timeout=20_000)
    found = {entry["id"]: entry["standing"] for entry in floor.world.entries()}
    assert found[reading] == "struck"


@pytest.mark.parametrize("hours", [1, 73])
def test_an_old_line_is_put_right_but_no_more_taken_back(floor: Floor, hours: int) -> None:
    page = _log_reading(floor, "16.4", "1.031")
    may = page.evaluate("""async ([id, hours]) => {
      const { mayTakeBack } = await import("/static/slate/takeback.js");
      return mayTakeBack(id, new Set(), Date.now() + hours * 3_600_000);
    }""", [floor.entries()[0]["id"], hours])
    assert may is (hours == 1)
