"""Several people, one phone: a tap and the next one logs, the PIN where the tap was; a wide screen has two panes."""

from __future__ import annotations

import re
from pathlib import Path
from typing import Any

from playwright.sync_api import expect

from tests.browser.floor_house import FERMENTER, Floor, far_floor, floor, near_floor
from tests.browser.offline_world import wait_for
from webapp.book.house import people, registry
from webapp.book.opening import open_book
from webapp.trade.marks import make_mark

__all__ = ["far_floor", "floor", "near_floor"]
CASK = make_mark("C031")
AXE = (Path(__file__).parent.parent / "vendor" / "axe.min.js").read_text(encoding="utf-8")
NOW = """async () => (await (await import("/static/slate/who.js")).current()).code"""
HAND_IN = """async () => { await (await import("/static/slate/handin.js")).handInNow(); }"""
HAS_PIN = """(await (await import("/static/slate/cards.js")).people()).find(({ code }) => code === "BT").has_pin"""


def test_one_tap_changes_hands_and_keeps_what_is_typed(floor: Floor) -> None:
    floor.choose("BT")
    floor.choose("NS")
    page = floor.form(f"/m/{FERMENTER}/log/ferment_reading")
    floor.press("14.6031")
    page.get_by_role("button", name="BT, Bram T.").click()
    expect(page.get_by_role("button", name="BT, Bram T.")).to_have_attribute("aria-pressed", "true")
    page.get_by_role("button", name="Log it").click()
    page.wait_for_url(re.compile(rf"/m/{FERMENTER}$"))
    (entry,) = floor.entries()
    assert (entry["person"], entry["values"]["gravity"]["raw"]) == ("BT", "1.031")


def test_a_pin_is_typed_where_the_tap_was(near_floor: Floor) -> None:
    near_floor.choose("BT")
    near_floor.choose("NS")
    with open_book(near_floor.world.book_path) as book:
        people.set_pin(book, "BT", "2468", by="MD")
    page = near_floor.open("/slate")
    page.evaluate(HAND_IN)
    wait_for(page, HAS_PIN)
    page = near_floor.open("/today")
    tap = page.get_by_role("button", name="BT, Bram T.")
    tap.click()
    page.locator("#hands-pin").fill("1111")
    page.get_by_role("button", name="Take it").click()
    expect(page.locator("#hands-says")).to_have_text("That is not this person's PIN. Try again.")
    assert page.evaluate(NOW) == "NS"
    page.locator("#hands-pin").fill("2468")
    page.get_by_role("button", name="Take it").click()
    expect(tap).to_have_attribute("aria-pressed", "true")
    expect(page.locator("#hands-pin")).to_have_count(0)
    assert page.evaluate(NOW) == "BT"


def test_what_concerns_tax_wants_the_pin_again_where_the_house_says_so(near_floor: Floor) -> None:
    near_floor.choose("BT")
    near_floor.choose("NS")
    with open_book(near_floor.world.book_path) as book:
        people.set_pin(book, "BT", "2468", by="MD")
        registry.set_site(book, {"pin_at_tax": True}, by="MD")
    page = near_floor.open("/slate")
    page.evaluate(HAND_IN)
    wait_for(page, HAS_PIN)
    page = near_floor.open("/today")
    page.get_by_role("button", name="BT, Bram T.").click()
    page.locator("#hands-pin").fill("2468")
    page.get_by_role("button", name="Take it").click()
    expect(page.locator("#hands-pin")).to_have_count(0)
    page = near_floor.form(f"/m/{CASK}/log/loss")
    for name, choice in (("cause", "spill"), ("done", "cleaned")):
        page.locator(f"[name={name}][value={choice}]").check(force=True)
    for name, figure in (("volume", "2"), ("strength", "60"), ("found", "BT")):
        page.locator(f"[name={name}]").fill(figure)
    page.get_by_role("button", name="Log it").click()
    box = page.get_by_label("PIN of BT")
    expect(box).to_be_visible()
    box.fill("1111")
    page.get_by_role("dialog").get_by_role("button", name="Log it").click()
    expect(page.get_by_role("alert").filter(has_text="not this person's PIN")).to_be_visible()
    assert near_floor.entries() == []
    page.get_by_label("PIN of BT").fill("2468")
    page.get_by_role("dialog").get_by_role("button", name="Log it").click()
    page.wait_for_url(re.compile(rf"/m/{CASK}$"))
    (entry,) = near_floor.entries()
    assert (entry["kind"], entry["person"], entry["shown"]) == ("loss", "BT", "now")


def test_a_wide_screen_has_people_and_vessels_beside_the_work(floor: Floor) -> None:
    floor.choose("NS")
    floor.page.set_viewport_size({"width": 1180, "height": 820})
    page = floor.open(f"/m/{FERMENTER}")
    expect(page.locator(".pane .hands__one[aria-pressed=true]")).to_have_text("NS")
    expect(page.locator(".pane a[aria-current=page]")).to_contain_text("F3")
    work: Any = page.locator("main").bounding_box()
    pane: Any = page.locator(".pane").bounding_box()
    assert pane["x"] + pane["width"] <= work["x"]
    page.evaluate(AXE)
    assert page.evaluate("async () => (await axe.run('.pane')).violations.map(one => one.id)") == []
    page.locator(".pane a", has_text="C031").click()
    page.wait_for_url(re.compile("/m/C031"))
    assert floor.faults == []
