"""The large keys: what each place shows, and what a key does there."""

from __future__ import annotations

from typing import Any

from tests.browser.floor_house import FERMENTER, STILL, Floor, far_floor, floor, near_floor
from tests.browser.offline_world import bring_cards
from webapp.book.house import people
from webapp.book.opening import open_book

__all__ = ["far_floor", "floor", "near_floor"]

SHEET = f"/m/{STILL}/run"


def _shown(page: Any) -> list[str]:
    keys = page.locator("slate-keypad .key")
    return [key.get_attribute("data-key") for key in keys.all() if key.is_visible()]


def test_a_pin_is_typed_with_digits_alone(near_floor: Floor) -> None:
    with open_book(near_floor.world.book_path) as book:
        people.set_pin(book, "BT", "2468", by="MD")
    page = near_floor.open("/today")
    bring_cards(page)
    page = near_floor.open("/who?then=/more")
    page.locator(".person", has_text="BT").click()
    assert sorted(_shown(page)) == sorted([*"0123456789", "erase"])
    near_floor.press("2468")
    page.get_by_role("button", name="Bram T. logs").click()
    page.wait_for_url("**/more")


def test_the_remark_key_opens_the_fold_it_lies_in(floor: Floor) -> None:
    page = floor.form(f"/m/{FERMENTER}/log/ferment_reading")
    page.locator("slate-keypad [data-key=remark]").click()
    page.keyboard.type("cap firm")
    assert page.locator("[name=remark]").input_value() == "cap firm"


def test_a_remark_at_the_still_travels_with_the_reading(floor: Floor) -> None:
    page = floor.open(SHEET)
    page.get_by_role("button", name="Reading", exact=True).click()
    page.locator("[name=glass]").fill("62")
    page.locator("[name=temp]").fill("15")
    page.locator("[name=temp]").focus()
    page.locator("slate-keypad [data-key=remark]").click()
    page.keyboard.type("clear, pear on the nose")
    page.get_by_role("button", name="Log it").click()
    page.locator(".panel").wait_for(state="detached")
    assert floor.entries()[0]["remark"] == "clear, pear on the nose"


def test_receivers_are_offered_before_cans_and_each_charge_offers_the_last_one(floor: Floor) -> None:
    def picks(field: str) -> list[str]:
        return page.locator(f"[data-field={field}] .pick").all_inner_texts()

    page = floor.form(f"/m/{STILL}/log/charge")
    assert [text.split()[0] for text in picks("heads_to")] == ["R1", "R2", "R3"]
    page.locator("[data-field=from_vessel] .pick", has_text="F3").click()
    page.locator("[name=wash]").fill("480")
    page.locator("[name=wash_strength]").fill("5.2")
    page.locator("[data-field=hearts_to] .pick", has_text="R3").click()
    page.get_by_role("button", name="Log it").click()
    page.wait_for_url(f"**{SHEET}")
    page = floor.form(f"/m/{STILL}/log/charge")
    page.locator("[data-field=hearts_to] .pick").first.wait_for()
    first = picks("hearts_to")[0]
    assert first.startswith("R3") and "as last time" in first


def test_a_danger_is_said_and_nothing_smaller_is_offered(floor: Floor) -> None:
    page = floor.form(f"/m/{FERMENTER}/log/ferment_reading")
    page.locator("[data-part=more] summary").click()
    page.locator("[name=room_co2]").fill("6000")
    page.locator("[name=gravity]").focus()
    band = page.locator(".look")
    band.wait_for()
    assert "Danger." in band.inner_text() and "Leave, ventilate" in band.inner_text()
    assert band.get_by_role("button").all_inner_texts() == ["Keep as read"]
