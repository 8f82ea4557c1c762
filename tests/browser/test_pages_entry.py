"""The entry form under the thumb: comma figures, typed marks, the second look, what is kept over a reload."""

from __future__ import annotations

import re
from datetime import UTC, datetime
from typing import Any
from zoneinfo import ZoneInfo

import pytest
from playwright.sync_api import expect

from tests.browser.floor_house import FERMENTER, Floor, far_floor, floor, near_floor

__all__ = ["far_floor", "floor", "near_floor"]

FORM = f"/m/{FERMENTER}/log/ferment_reading"


def _log(page: Any) -> None:
    page.get_by_role("button", name="Log it").click()


def _wait_for_vessel(page: Any) -> None:
    page.wait_for_url(re.compile(rf"/m/{FERMENTER}$"))


def test_comma_figures_are_kept_as_typed_and_reckoned_as_figures(floor: Floor) -> None:
    page = floor.form(FORM)
    page.keyboard.type("14,6")
    page.locator("[name=gravity]").fill("1,031")
    # The range check takes the comma for what it is, or it would ask about 1031.
    assert page.locator(".look").count() == 0
    _log(page)
    _wait_for_vessel(page)
    (entry,) = floor.entries()
    assert entry["values"]["temp"]["raw"] == "14,6"
    assert entry["values"]["gravity"] == {"raw": "1,031", "unit": "SG"}
    assert "1.031" in page.locator(".readings").inner_text()
    said = page.locator(".undo__words > span")
    said.first.wait_for()  # it is said with the first idle moment of the page, not before it stands
    assert said.all_inner_texts() == ["On the slate. It waits on this phone.", "F3: 1.031 SG at 14.6 °C"]


def test_from_the_label_to_the_slate_in_two_taps_and_two_figures(floor: Floor) -> None:
    """Scene 1 after the scan: the card, its form, two figures on our own keys, log. Counted in taps of the thumb."""
    page = floor.open(f"/M/{FERMENTER}")
    page.get_by_role("link", name="Reading", exact=True).click()
    page.wait_for_selector("form[data-ready]")
    assert page.locator("slate-keypad").is_visible(), "the keys stand ready without a tap"
    floor.press("14.6")
    floor.press("031")  # the field has advanced by itself, and "1." stands there
    _log(page)
    _wait_for_vessel(page)
    (entry,) = floor.entries()
    assert entry["mark_by"] == "scanned"
    assert {name: value["raw"] for name, value in entry["values"].items()} == {"temp": "14.6", "gravity": "1.031"}


def _choose_scale(page: Any, name: str) -> None:
    page.locator("slate-keypad [data-key=unit]").click()
    page.locator(".keypad__units .key", has_text=name).click()


def test_the_keys_know_what_leads_a_gravity_and_when_a_figure_is_complete(floor: Floor) -> None:
    page = floor.form(FORM)
    box, focused = page.locator("[name=gravity]"), "() => document.activeElement.name"
    box.focus()
    assert box.input_value() == "1."
    page.locator("[name=temp]").focus()
    assert box.input_value() == "", "a lead alone is no figure"
    floor.press("14")
    assert page.evaluate(focused) == "temp"
    floor.press(".6")
    assert page.evaluate(focused) == "gravity"
    floor.press("1.031")  # somebody who types it whole
    assert (box.input_value(), page.evaluate(focused)) == ("1.031", "gravity")
    for _ in range(3):
        page.locator("slate-keypad [data-key=erase]").click()
    page.locator("slate-keypad [data-key=erase]").click()
    assert box.input_value() == "", "the lead goes at once"
    floor.press("0.998")
    _choose_scale(page, "°Bx")
    box.fill("")
    page.locator("[name=temp]").focus()
    box.focus()
    assert box.input_value() == "", "no degrees Brix begin with 1."
    _choose_scale(page, "SG")
    assert box.input_value() == "1."
    page.keyboard.type("1.042")  # a keyboard that types it whole
    assert box.input_value() == "1.042"
    _log(page)
    _wait_for_vessel(page)
    (entry,) = floor.entries()
    assert {name: value["raw"] for name, value in entry["values"].items()} == {"temp": "14.6", "gravity": "1.042"}


def test_a_second_look_offers_the_likely_figure_and_a_tap_takes_it(floor: Floor) -> None:
    page = floor.form(FORM)
    page.locator("[name=temp]").fill("41,6")  # 14.6 with two digits swapped; the usual range ends at 20
    page.locator("[name=gravity]").fill("1.031")
    # What may have been meant comes from the jobs' part: the question stands before it is there.
    page.locator(".look .button", has_text="14.6").wait_for()
    offer = page.locator(".look .button").first
    assert "14.6" in offer.inner_text()
    offer.click()
    assert page.locator("[name=temp]").input_value() == "14.6"
    page.locator(".look").wait_for(state="detached")
    _log(page)
    _wait_for_vessel(page)
    (entry,) = floor.entries()
    assert entry["values"]["temp"]["raw"] == "14.6"
    assert entry["as_read"] == entry["looked_again"] == []


def test_what_cannot_be_waits_for_a_choice_and_says_what_was_kept(floor: Floor) -> None:
    page = floor.form(FORM)
    page.locator("[name=temp]").fill("52")  # above 45: called impossible
    page.locator("[name=gravity]").fill("1.2")  # above 1.15: called impossible
    page.locator(".look").wait_for()
    for _ in range(3):  # a tap that was meant for the form, and an impatient one, choose nothing
        page.locator("[data-part=log]").click()
        page.wait_for_timeout(700)
    assert floor.entries() == []
    page.get_by_role("button", name="Keep as read").click()
    page.locator("[data-part=log]").click()  # the other one is shown now
    expect(page.locator(".look")).to_contain_text("1.2")
    page.get_by_role("button", name="Keep as read").click()
    _log(page)
    _wait_for_vessel(page)
    (entry,) = floor.entries()
    assert sorted(entry["as_read"]) == ["gravity", "temp"]
    assert entry["values"]["temp"]["raw"] == "52"


def test_while_a_question_stands_the_button_says_what_it_would_log(floor: Floor) -> None:
    page = floor.form(FORM)
    page.locator("[name=temp]").fill("27")  # above the usual 20: asked
    page.locator("[name=gravity]").fill("1,031")
    button = page.locator("[data-part=log]")
    expect(button).to_have_text("Log 27 °C as read")
    page.wait_for_timeout(700)
    button.click()
    _wait_for_vessel(page)
    (entry,) = floor.entries()
    assert (entry["looked_again"], entry["as_read"]) == (["temp"], [])


def test_a_tap_that_was_on_its_way_when_a_question_came_is_no_answer(floor: Floor) -> None:
    page = floor.form(FORM)
    page.locator("[name=gravity]").fill("1.031")
    page.locator("[name=temp]").fill("27")  # in the midst of typing: nothing is asked yet
    page.locator("[data-part=log]").evaluate("button => { button.click(); button.click(); }")
    expect(page.locator(".look")).to_be_visible()
    assert floor.entries() == []


def test_what_is_missing_is_said_at_its_box_and_nothing_is_logged(floor: Floor) -> None:
    page = floor.form(FORM)
    page.locator("[name=temp]").fill("14")
    _log(page)
    error = page.locator("[data-field=gravity] .field__error")
    error.wait_for()
    assert "missing" in error.inner_text()
    assert page.locator("[name=gravity]").evaluate("box => box === document.activeElement")
    assert floor.entries() == []


def test_a_begun_form_says_so_and_speaks_for_nobody(floor: Floor) -> None:
    page = floor.form(FORM)
    page.locator("[name=temp]").fill("14,6")
    page.wait_for_timeout(700)
    page = floor.form(FORM)
    band = page.locator("[data-begun-band]")
    assert re.search(r"Begun \d\d:\d\d by NS: 14,6 °C\. Go on, or start clean\?", band.inner_text())
    assert page.locator("[name=temp]").input_value() == "", "until its person has answered"
    band.get_by_role("button", name="Go on").click()
    assert page.locator("[name=temp]").input_value() == "14,6"
    page.locator("[name=gravity]").fill("1.030")
    _log(page)
    _wait_for_vessel(page)
    page = floor.form(FORM)
    assert page.locator("[data-begun-band]").count() == 0, "what is logged is no draft any more"
    assert page.locator("[name=temp]").get_attribute("placeholder") == " "
    last = page.locator("[data-field=temp] .field__last").inner_text()
    assert last.startswith("last 14.6 °C, "), "the last value, in words"


@pytest.mark.parametrize("by", ["our own keys", "a keyboard"])
def test_the_first_key_replaces_what_was_begun(floor: Floor, by: str) -> None:
    page = floor.form(FORM)
    page.locator("[name=temp]").fill("24.1")
    page.wait_for_timeout(700)
    page = floor.form(FORM)
    page.get_by_role("button", name="Go on").click()
    page.locator("[name=temp]").click()
    if by == "our own keys":
        floor.press("15.8")
    else:
        page.keyboard.type("15.8")
    assert page.locator("[name=temp]").input_value() == "15.8"


def test_typing_on_is_starting_clean(floor: Floor) -> None:
    page = floor.form(FORM)
    page.locator("[name=temp]").fill("24.1")
    page.locator("[name=gravity]").fill("1.03")
    page.wait_for_timeout(700)
    page = floor.form(FORM)
    floor.press("15.8")
    assert page.locator("[data-begun-band]").count() == 0
    assert page.locator("[name=temp]").input_value() == "15.8"
    assert page.locator("[name=gravity]").input_value() == "1.", "the lead, and nothing of what was begun"


def test_what_one_began_is_not_offered_to_another_nor_the_next_day(floor: Floor) -> None:
    page = floor.form(FORM)
    page.locator("[name=temp]").fill("14,6")
    page.wait_for_timeout(700)
    asked = """async ([name, person, hours]) => {
      const { getDraft } = await import("/static/slate/drafts.js");
      const real = Date.now;
      Date.now = () => real() + hours * 3_600_000;
      try { return Boolean(await getDraft(name, person)); } finally { Date.now = real; }
    }"""
    name = f"ferment_reading:{FERMENTER}"
    assert page.evaluate(asked, [name, "NS", 0])
    assert not page.evaluate(asked, [name, "BT", 0])
    assert not page.evaluate(asked, [name, "NS", 11])


def test_a_swapped_unit_travels_with_the_figure_and_does_not_stick(floor: Floor) -> None:
    page = floor.form(FORM)
    floor.press("57")
    page.locator("slate-keypad [data-key=unit]").click()
    page.locator("[name=gravity]").fill("1.031")
    assert page.locator(".look").count() == 0, "57 °F is 13.9 °C"
    _log(page)
    _wait_for_vessel(page)
    assert floor.entries()[0]["values"]["temp"] == {"raw": "57", "unit": "degF"}
    assert "57 °F" in page.locator(".readings").inner_text()
    page = floor.form(FORM)
    assert page.locator("[name=temp_unit]").input_value() == "degC", "the house's"
    assert page.locator("[data-field=temp] .field__last").inner_text().startswith("last 57 °F, ")


def test_a_scale_of_many_is_chosen_by_one_tap_and_stays_with_its_instrument(floor: Floor) -> None:
    page = floor.form(FORM)
    page.locator("[name=gravity]").focus()
    page.locator("slate-keypad [data-key=unit]").click()
    scales = page.locator(".keypad__units .key")
    scales.nth(4).wait_for()
    assert scales.all_inner_texts() == ["SG", "°Bx", "°P", "°Oe", "°KMW"]
    assert [scale.get_attribute("aria-pressed") for scale in scales.all()].index("true") == 0
    scales.nth(3).click()
    assert page.locator(".keypad__units").count() == 0
    floor.press("44")
    assert page.locator("[name=gravity]").input_value() == "44", "no 1. leads degrees Oechsle"
    page.locator("[name=temp]").fill("14")
    _log(page)
    _wait_for_vessel(page)
    assert floor.entries()[0]["values"]["gravity"]["unit"] == "degOe"
    page = floor.form(FORM)
    assert page.locator("[name=gravity_unit]").input_value() == "degOe", "the hydrometer has no other scale"
    assert page.locator("[name=temp_unit]").input_value() == "degC"


def test_the_list_of_scales_goes_with_the_field_and_fits_a_small_phone(floor: Floor) -> None:
    page = floor.form(FORM)
    page.set_viewport_size({"width": 320, "height": 568})
    page.locator("[name=gravity]").focus()
    page.locator("slate-keypad [data-key=unit]").click()
    page.locator(".keypad__units .key").nth(4).wait_for()
    inside = """() => [...document.querySelectorAll(".keypad__units .key")].every((key) => {
      const box = key.getBoundingClientRect();
      return box.height >= 44 && box.top >= 0 && box.bottom <= innerHeight && box.right <= innerWidth;
    })"""
    assert page.evaluate(inside)
    page.locator("[name=temp]").focus()
    assert page.locator(".keypad__units").count() == 0


def test_a_reading_made_earlier_has_its_own_minute(floor: Floor) -> None:
    page = floor.form(FORM)
    page.locator("[name=temp]").fill("14")
    page.locator("[name=gravity]").fill("1.030")
    page.locator("summary", has_text="Refractometer, pH, cap, …").click()
    page.locator("[name=read_at]").fill("2026-03-01T07:45")
    _log(page)
    _wait_for_vessel(page)
    assert floor.entries()[0]["read_at"].startswith("2026-03-01T07:45:00")


def test_a_minute_is_typed_by_the_houses_clock_wherever_the_phone_thinks_it_is(floor: Floor) -> None:
    """06:45 in St John's in summer is 09:15 UTC (IANA database, by Python's zoneinfo)."""
    page = floor.form(FORM)
    page.evaluate("""() => { document.documentElement.dataset.zone = "America/St_Johns"; }""")
    page.locator("summary", has_text="Refractometer, pH, cap, …").click()
    page.locator("[name=read_at]").fill("2026-07-01T06:45")
    page.locator("[name=temp]").fill("14.6")
    page.locator("[name=gravity]").fill("1.031")
    _log(page)
    _wait_for_vessel(page)
    read_at = datetime.fromisoformat(floor.entries()[0]["read_at"])
    assert read_at == datetime(2026, 7, 1, 6, 45, tzinfo=ZoneInfo("America/St_Johns"))
    assert read_at == datetime(2026, 7, 1, 9, 15, tzinfo=UTC)


@pytest.mark.parametrize(("typed", "meant"), [("F3-9", FERMENTER), ("3F8", FERMENTER), ("f3", FERMENTER)])
def test_a_typed_mark_with_a_slip_offers_what_was_meant(floor: Floor, typed: str, meant: str) -> None:
    page = floor.open("/scan")
    page.locator("[name=mark]").fill(typed)
    page.locator("[data-part=mark-offers] button", has_text=meant).click()
    page.wait_for_url(f"**/m/{meant}")
    expect(page.locator(".head__mark")).to_have_text("F3")


def test_a_wrong_mark_is_not_opened(floor: Floor) -> None:
    page = floor.open("/scan")
    page.locator("[name=mark]").fill("F3-9")
    page.get_by_role("button", name="Open").click()
    assert "is no mark" in page.locator("[data-part=mark-says]").inner_text()
    assert page.url.endswith("/scan")
    page.locator("[name=mark]").fill("F3")
    assert "Letters, digits" in page.locator("[data-part=mark-says]").inner_text()
    page.get_by_role("button", name="Open").click()
    assert "The last character is missing" in page.locator("[data-part=mark-says]").inner_text()


def test_a_full_phone_keeps_the_figures_in_the_form(floor: Floor) -> None:
    page = floor.form(FORM)
    page.locator("[name=temp]").fill("14,6")
    page.locator("[name=gravity]").fill("1.031")
    page.wait_for_timeout(600)
    # The disk fills up under the page: every further write of the database fails as the standard says.
    page.evaluate("""() => {
      IDBObjectStore.prototype.add = () => { throw new DOMException("full", "QuotaExceededError"); };
    }""")
    _log(page)
    band = page.get_by_role("alert")
    band.wait_for()
    assert "Not on the slate." in band.inner_text()
    assert page.locator("[name=gravity]").input_value() == "1.031"
    assert band.get_by_role("button", name="Save the slate to a file").is_visible()
    assert floor.entries() == []


def test_the_form_posts_and_enters_without_script(near_floor: Floor, browser: Any) -> None:
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()
    url = near_floor.world.server.url
    page.goto(f"{url}/sign-in")
    page.locator("[name=code], [name=person]").first.fill("MD")
    page.locator("[name=password]").fill("plum and pear and quince")
    page.locator("[name=password]").press("Enter")
    page.goto(url + FORM)
    page.locator("[name=temp]").fill("14,6")
    page.locator("[name=gravity]").fill("1.031")
    page.get_by_role("button", name="Log it").click()
    page.wait_for_url(re.compile(rf"/m/{FERMENTER}$"))
    context.close()
    (entry,) = near_floor.world.entries(mark=FERMENTER)
    assert entry["kind"] == "ferment_reading"
