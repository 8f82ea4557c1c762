"""The slate's page, who logs, this phone's ways, marks that nobody knows: what a person reads and can do."""

from __future__ import annotations

import gzip
import json
import re
from typing import Any

import pytest
from playwright.sync_api import expect

from tests.browser.floor_house import FERMENTER, STILL, Floor, far_floor, floor, near_floor
from tests.browser.offline_world import bring_cards, reading
from webapp.book.house import people
from webapp.book.opening import open_book
from webapp.trade.marks import make_mark

__all__ = ["far_floor", "floor", "near_floor"]

NOBODYS = make_mark("Q7")


def test_the_slate_says_what_waits_and_that_it_is_safe(floor: Floor) -> None:
    for _ in range(3):
        floor.phone.log(reading())
    page = floor.open("/slate")
    band = page.locator(".way")
    expect(band).to_contain_text("3 entries wait on this phone.")
    page.get_by_role("button", name="Hand in now").click()
    expect(band).to_contain_text("The book cannot be reached from here. The slate keeps everything")
    expect(page.locator("[data-part=signal]")).to_have_text("no signal")
    expect(page.locator("[data-state=waiting]")).to_have_count(3)


def test_a_refused_entry_says_why_and_can_be_read_and_put_aside(near_floor: Floor) -> None:
    near_floor.phone.log(reading(gravity="seven"))
    near_floor.phone.wait_until_settled()
    page = near_floor.open("/slate")
    line = page.locator("[data-state=refused]")
    expect(line).to_contain_text("refused")
    expect(page.locator(".way")).to_contain_text("1 line wants a look.")
    expect(line.locator(".list__why")).to_contain_text("no plain number")
    expect(line.get_by_role("link", name="Put it right")).to_be_visible()
    line.get_by_role("button", name="I have read it").click()
    expect(line.get_by_role("button")).to_have_count(0)
    assert [kept["state"] for kept in near_floor.phone.slate()] == ["refused"], "it stays on the phone"
    expect(page.locator(".way")).not_to_contain_text("All in the book")
    expect(page.get_by_role("heading", name="Put aside, not in the book")).to_be_visible()
    # While a round goes on, the way is dotted and says so; the answer is held until it was looked at.
    held: list[Any] = []
    page.route("**/api/hand-in", lambda route: held.append(route))
    near_floor.phone.log(reading())
    expect(page.locator(".way")).to_contain_text("Handing in.")
    expect(page.locator(".way__track--sends")).to_be_visible()
    # What the book said that it holds goes back to it with the next batch.
    body = json.loads(gzip.decompress(held[0].request.post_data_buffer))
    lists = [json.loads(head)["tree"] for head in body["heads"]]
    assert sorted(lists) == ["aside", "changes", "closes", "entries", "takings"]
    held[0].continue_()
    page.unroute("**/api/hand-in")
    expect(page.locator(".way")).to_have_attribute("data-way", "in")


def test_a_queried_entry_is_put_right_by_a_new_one_that_names_it(near_floor: Floor) -> None:
    near_floor.phone.log(reading(gravity="1.030", read_at="2026-03-01T08:00:00+00:00"))
    near_floor.phone.log(reading(gravity="1.043", read_at="2026-03-02T08:00:00+00:00"))
    near_floor.phone.wait_until_settled()
    page = near_floor.open("/slate")
    line = page.locator("[data-state=queried]", has_text="1.043").first
    expect(line).to_contain_text("can only fall")
    line.get_by_role("link", name="Put it right").click()
    page.wait_for_selector("form[data-ready]")
    assert page.locator("[name=gravity]").input_value() == "1.043"
    page.locator(".chip", has_text="misread").click()
    page.locator("[name=gravity]").fill("1.028")
    page.get_by_role("button", name="Log it").click()
    page.wait_for_url(re.compile(rf"/m/{FERMENTER}$"))
    near_floor.phone.wait_until_settled()
    newest = near_floor.phone.slate()[0]["entry"]
    assert newest["amends"] and newest["reason"] == "misread"
    assert newest["read_at"].startswith("2026-03-02T08:00")
    assert len(near_floor.world.entries(mark=FERMENTER)) == 3, "the first one stays legible"


def test_a_pin_is_asked_without_signal(near_floor: Floor) -> None:
    with open_book(near_floor.world.book_path) as book:
        people.set_pin(book, "BT", "2468")
        people.set_pin(book, "MD", "1357")
    bring_cards(near_floor.page)
    page = near_floor.open("/who?then=/more")
    page.locator(".person", has_text="BT").click()
    near_floor.press("2468")  # the first time by the book; from then on this phone can look at it
    page.get_by_role("button", name="Bram T. logs").click()
    page.wait_for_url(re.compile(r"//[^/]+/more$"))
    near_floor.world.server.stop()
    page = near_floor.open("/who?then=/more")
    page.locator(".person", has_text="BT").click()
    page.locator("#pin").fill("1111")
    page.get_by_role("button", name="Bram T. logs").click()
    expect(page.locator(".field__error")).to_contain_text("not this person's PIN")
    near_floor.press("2468")
    page.get_by_role("button", name="Bram T. logs").click()
    page.wait_for_url(re.compile(r"//[^/]+/more$"))
    expect(page.locator("[data-part=body]")).to_contain_text("Bram T.")
    assert _who(page) == ["BT", "pin"]
    page = near_floor.open("/who?then=/more")
    page.locator(".person", has_text="MD").click()
    near_floor.press("2468")  # nobody can say: it was never typed here
    page.locator("[data-part=doing] button").click()
    page.wait_for_url(re.compile(r"//[^/]+/more$"))
    expect(page.locator(".toast")).to_contain_text("No signal, so this PIN was not looked at.")
    assert _who(page) == ["MD", "unseen"]


def _who(page: Any) -> list[str]:
    found: list[str] = page.evaluate("""async () => {
      const who = await (await import("/static/slate/who.js")).current();
      return [who.code, who.shown];
    }""")
    return found


@pytest.mark.parametrize("then", ["https://elsewhere.example/", "//elsewhere.example", "/\\elsewhere.example"])
def test_the_way_back_never_leads_elsewhere(floor: Floor, then: str) -> None:
    page = floor.open("/who")
    page.evaluate("""then => history.replaceState(null, "", `/who?then=${encodeURIComponent(then)}`)""", then)
    page.locator(".person", has_text="NS").click()
    page.wait_for_url(re.compile(rf"^{re.escape(floor.world.server.url)}/$"))


def test_a_phone_may_write_figures_and_units_its_own_way(floor: Floor) -> None:
    page = floor.open("/more")
    page.locator("[data-field=decimal] .chip", has_text="1,5").click()
    page.locator("[data-field=units] .chip", has_text="US").click()
    page = floor.form(f"/m/{FERMENTER}/log/ferment_reading")
    assert page.locator("slate-keypad [data-key=mark]").inner_text() == ","
    assert page.locator("[name=temp_unit]").input_value() == "degF"
    floor.press("57,2")
    assert page.locator("[name=temp]").input_value() == "57,2"


def test_a_right_mark_that_nobody_knows_can_be_noted(floor: Floor) -> None:
    page = floor.open(f"/m/{NOBODYS}")
    expect(page.locator(".band")).to_contain_text("This phone knows no vessel with this mark.")
    page.get_by_role("link", name="Note it").click()
    page.wait_for_selector("form[data-ready]")
    assert page.locator("[name=text]").input_value() == f"At {NOBODYS}: "
    page.get_by_role("button", name="Leave it for the next shift").click()
    page.wait_for_url(re.compile(r"//[^/]+/$"))
    assert [entry["kind"] for entry in floor.entries()] == ["shift_note"]


def test_a_note_is_pinned_with_ready_words(floor: Floor) -> None:
    page = floor.form(f"/m/{FERMENTER}/log/shift_note")
    expect(page.get_by_label("Pinned to")).to_contain_text("Pinned to F3")
    text = page.locator("[name=text]")
    for word in ("Cap pushed down.", "Not finished.", "Cap pushed down."):  # the third takes the first out again
        page.locator(".words .chip", has_text=word).click()
    assert text.input_value() == "Not finished."
    text.press_sequentially(" Stir at six.")
    page.locator(".words .chip", has_text="Read it first.").click()
    page.get_by_role("button", name="Pin it to F3").click()
    page.wait_for_url(re.compile(rf"/m/{FERMENTER}$"))
    (note,) = floor.entries()
    assert (note["mark"], note["values"]["text"]["raw"]) == (FERMENTER, "Not finished. Stir at six.\nRead it first.")


def test_today_has_the_open_run_and_what_is_to_be_read(near_floor: Floor) -> None:
    near_floor.world.server.stop()
    page = near_floor.page
    log: Any = near_floor.phone.log
    weighed = {"gross": ("820", "kg"), "tare": ("20", "kg"), "temp": ("14", "degC"), "rot": ("1", "pct")}
    values = {name: {"raw": raw, "unit": unit} for name, (raw, unit) in weighed.items()}
    values |= {"material": {"raw": "plum"}, "grower_lot": {"raw": "Hollow Farm, lot 3"}}
    log({"kind": "fruit_intake", "mark": FERMENTER, "person": "NS", "values": values})
    wash = {"from_vessel": {"raw": FERMENTER}, "wash": {"raw": "482", "unit": "L"}}
    wash |= {"wash_strength": {"raw": "5.2", "unit": "pct_vol"}}
    log({"kind": "charge", "mark": STILL, "person": "NS", "values": wash})
    glass = {"glass": {"raw": "61.6", "unit": "pct_glass"}, "temp": {"raw": "15.9", "unit": "degC"}}
    log({"kind": "run_reading", "mark": STILL, "person": "NS", "values": glass})
    page = near_floor.open("/today")
    expect(page.locator(".running")).to_contain_text("S1")
    expect(page.locator(".running__figure")).to_contain_text("63.0")
    page.locator("[type=search]").fill("cask")
    expect(page.locator("main .list--links a", has_text="C031")).to_be_visible()
    expect(page.locator("details a", has_text="F1")).to_have_count(0)
    page.locator("[type=search]").fill("nothing of the kind")
    expect(page.get_by_text("No vessel here is called that.")).to_be_visible()
