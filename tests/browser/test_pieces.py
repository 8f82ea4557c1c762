"""The pieces of the look at work: keypad, fields, dialog, notices, theme, chart, written figures, paper."""

from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from typing import Any
from zoneinfo import ZoneInfo

import pytest

from tests.browser.gallery_pages import DESK, PHONE, gallery, open_page, wait_until
from tests.browser.webkit_session import open_webkit
from tests.find_browsers import WebKit

__all__ = ["gallery", "open_page"]


def press(page: Any, *keys: str) -> None:
    for key in keys:
        page.click(f"slate-keypad [data-key='{key}']")


def test_keypad_types_at_the_caret_and_leaves_the_focus(open_page: Callable[..., Any]) -> None:
    page = open_page("reading")
    assert page.locator("slate-keypad").is_hidden()
    page.focus("#gravity")
    assert page.get_attribute("#gravity", "inputmode") == "none"
    page.evaluate("globalThis.heard = 0; document.addEventListener('input', () => heard++)")
    press(page, "1", "mark", "mark", "0", "3")
    assert page.input_value("#gravity") == "1.03"
    assert page.evaluate("heard") == 4
    page.keyboard.press("ArrowLeft")
    press(page, "4")
    page.keyboard.type("9")
    assert page.input_value("#gravity") == "1.0493"
    press(page, "erase", "sign")
    assert page.input_value("#gravity") == "-1.043"
    press(page, "sign")
    assert page.input_value("#gravity") == "1.043"
    assert page.evaluate("[document.activeElement.id, document.activeElement.selectionStart]") == ["gravity", 4]


def test_keypad_replaces_a_selection(open_page: Callable[..., Any]) -> None:
    page = open_page("reading", more="&decimal=,")
    page.fill("#temp", "14,6")
    page.locator("#temp").select_text()
    press(page, "9", "mark", "5")
    assert page.input_value("#temp") == "9,5"


def test_unit_swap_changes_the_unit_and_never_the_figure(open_page: Callable[..., Any]) -> None:
    page = open_page("reading")
    page.fill("#temp", "57.2")
    assert page.inner_text("[data-key=unit]") == "swap °F"
    page.evaluate("document.addEventListener('keypad:unit', (event) => globalThis.unit = event.detail.unit)")
    press(page, "unit")
    assert page.input_value("[name=temp_unit]") == "°F"
    assert page.input_value("#temp") == "57.2"
    assert page.evaluate("unit") == "°F"
    assert page.inner_text("[data-key=unit]") == "swap °C"
    page.focus("#gravity")
    assert page.is_disabled("[data-key=unit]")


def test_next_walks_the_form_and_remark_brings_the_system_keyboard(open_page: Callable[..., Any]) -> None:
    page = open_page("reading")
    page.focus("#temp")
    press(page, "next")
    assert page.evaluate("document.activeElement.id") == "gravity"
    press(page, "remark")
    assert page.evaluate("document.activeElement.id") == "remark"
    assert page.locator("slate-keypad").is_hidden()
    page.focus("#ph")
    press(page, "next")
    assert page.evaluate("document.activeElement.id") == "remark"


def test_keypad_serves_tab_and_screen_readers(open_page: Callable[..., Any]) -> None:
    page = open_page("reading")
    page.focus("#gravity")
    page.get_by_role("group", name="Keypad").get_by_role("button", name="7", exact=True).focus()
    page.keyboard.press("Enter")
    page.get_by_role("button", name="Decimal point").focus()
    page.keyboard.press("Space")
    assert page.input_value("#gravity") == "7."
    for name in ("Erase", "Plus or minus", "remark", "next"):
        assert page.get_by_role("button", name=name, exact=True).count() == 1


def test_system_keyboard_by_setting_lasts(open_page: Callable[..., Any]) -> None:
    page = open_page("reading")
    page.focus("#temp")
    page.evaluate("gallery.keypad.setKeypadChoice('system')")
    assert page.locator("slate-keypad").is_hidden()
    page.reload()
    page.focus("#temp")
    assert page.get_attribute("#temp", "inputmode") == "decimal"
    assert page.locator("slate-keypad").is_hidden()


def test_field_in_hand_is_not_hidden_by_the_keypad(open_page: Callable[..., Any]) -> None:
    page = open_page("reading")
    page.focus("#ph")
    page.wait_for_timeout(100)
    field, thumb = page.locator(".field[data-field=ph]").bounding_box(), page.locator(".thumb").bounding_box()
    assert field["y"] + field["height"] <= thumb["y"] + 1


def test_form_stands_without_script(open_page: Callable[..., Any]) -> None:
    page = open_page("parts&wrong=1", java_script_enabled=False)
    page.get_by_label("Strength by the glass").fill("61,6")
    page.get_by_label("true at 20 °C").check()
    page.get_by_label("Unit of Mash temperature").select_option("°F")
    page.get_by_label("Jar rinsed").check()
    assert page.get_attribute("#strength", "inputmode") == "decimal"
    described = page.get_attribute("#strength", "aria-describedby").split()
    texts = [page.locator(f"[id='{name}']").inner_text() for name in described]
    assert texts == ["As the glass shows it, not corrected.", "Type the strength as the glass shows it.", "% vol"]
    assert page.get_attribute("#strength", "aria-invalid") == "true"
    page.get_by_role("button", name="Log it").click()
    for part in ("strength=61%2C6", "basis=true", "temp_unit=%C2%B0F", "is_rinsed=y"):
        assert part in page.url


def test_untouched_field_shows_the_last_value_and_holds_none(open_page: Callable[..., Any]) -> None:
    page = open_page("reading")
    assert page.get_attribute("#ph", "placeholder") == "3.35"
    assert page.inner_text(".field[data-field=ph] [data-last]") == "4 days ago 3.35"
    assert page.evaluate("new FormData(document.getElementById('reading')).get('ph')") == ""


def test_dialog_gives_the_answer_and_the_focus_back(open_page: Callable[..., Any]) -> None:
    page = open_page("parts")
    for how, answer in (("button", "strike"), ("Escape", "")):
        page.click("#ask")
        dialog = page.get_by_role("dialog", name="Strike this reading?")
        dialog.get_by_role("button", name="Strike").click() if how == "button" else page.keyboard.press(how)
        line = page.get_by_text(f"Answer: {answer}", exact=True)
        line.wait_for()
        assert page.evaluate("document.activeElement.id") == "ask"
    assert page.locator("dialog").count() == 0
    assert page.get_attribute(".toasts", "aria-live") == "polite"


def test_update_notice_says_that_the_slate_is_safe(open_page: Callable[..., Any]) -> None:
    page = open_page("parts")
    page.click("#update")
    assert page.get_by_text("A newer Cellarslate is ready. Nothing on the slate is touched.").is_visible()
    page.get_by_role("button", name="Later").click()
    assert page.locator(".notice").count() == 0


def test_theme_choice_overrides_the_system_and_lasts(open_page: Callable[..., Any]) -> None:
    page = open_page("run", color_scheme="dark")
    ground = "getComputedStyle(document.documentElement).backgroundColor"
    assert page.evaluate(ground) == "rgb(18, 24, 27)"
    page.evaluate("gallery.theme.setTheme('light')")
    page.reload()
    assert page.evaluate(ground) == "rgb(236, 231, 220)"
    wait_until(page, "globalThis.gallery?.ready")
    page.evaluate("gallery.theme.setTheme('system')")
    assert page.evaluate(ground) == "rgb(18, 24, 27)"


def test_chart_follows_width_and_theme_and_speaks_its_figures(open_page: Callable[..., Any]) -> None:
    page = open_page("run", color_scheme="dark")
    picture = "document.querySelector('.chart canvas').toDataURL()"
    before = page.evaluate(picture)
    page.evaluate("gallery.theme.setTheme('light')")
    page.wait_for_timeout(100)
    assert page.evaluate(picture) != before
    page.set_viewport_size({"width": 340, "height": 844})
    wait_until(page, "document.querySelector('.chart canvas').getBoundingClientRect().right <= 340")
    table = page.get_by_role("table")
    told = table.locator("caption").text_content()
    assert ", 6 Oct 2025. 80.5 % vol at 08:30, to " in told
    assert "heads: 08:30 to 09:21. hearts: 09:21 to " in told
    rows = [table.get_by_role("row").nth(n).locator("td").all_text_contents() for n in (1, 10)]
    assert (rows[0][:2], rows[1][0]) == (["heads", "80.5"], "hearts")  # the part stands beside each reading
    assert table.get_by_role("row").count() == 24


def test_ticks_are_round_by_the_sites_clock_and_never_one_alone_nor_two_alike(open_page: Callable[..., Any]) -> None:
    """Spans from half a minute to forty years, in zones with half hours and changes of the clock."""
    page = open_page("parts")
    found = page.evaluate("""async () => {
      const { ticksOf, writeX, xRange } = await import("/static/ui/chartaxes.js");
      const wrong = [];
      const range = (xIsTime, ...xs) => xRange({ xIsTime, series: [{ points: xs.map((x) => [x, 1]) }] })();
      for (const zone of ["Europe/Berlin", "Asia/Kolkata", "Australia/Lord_Howe"]) {
        document.documentElement.dataset.zone = zone;
        for (let span = 30; span < 1.3e9; span *= 1.7)
        for (const begin of [1759.3e6, 1774.66e6, 1791e6]) for (const most of [2, 4, 9]) {
          const [low, high] = range(true, begin, begin + span);
          const ticks = ticksOf(low, high, most, true);
          const words = writeX(ticks, { xIsTime: true });
          const isFine = ticks.length > 1 && ticks.length < most * 3
            && ticks.every((at, n) => at >= low && at <= high && (!n || at > ticks[n - 1]))
            && words.every((one, n) => one !== words[n - 1]);
          if (!isFine) wrong.push([zone, begin, span, most, words]);
        }
      }
      document.documentElement.dataset.zone = "Europe/Berlin";
      const at = (text) => Date.parse(text) / 1000;
      const told = (from, to, most) => writeX(ticksOf(at(from), at(to), most, true), { xIsTime: true });
      const lone = range(true, at("2026-03-01T09:21Z"));
      return { wrong, lone: writeX(ticksOf(...lone, 5, true), { xIsTime: true }),
        night: told("2026-03-01T16:10Z", "2026-03-02T08:10Z", 5),
        week: told("2026-03-26T10:00Z", "2026-03-31T10:00Z", 5),
        figures: [ticksOf(69.7, 78.9, 5), ticksOf(0, 15, 4), ticksOf(78.97, 78.98, 3), ticksOf(1.1, 2.9, 2)],
        one: range(false, 3), none: range(false) };
    }""")
    assert found["wrong"] == []
    assert found["lone"] == ["10:20", "10:25"]
    assert found["night"] == ["18:00", "2 Mar", "06:00"]
    assert found["week"] == ["27 Mar", "28 Mar", "29 Mar", "30 Mar", "31 Mar"]  # the clock changes on the 29th
    assert found["figures"] == [[70, 72, 74, 76, 78], [0, 5, 10, 15], [78.97, 78.975, 78.98], [1.5, 2, 2.5]]
    assert (found["one"], found["none"]) == ([1.5, 4.5], [-0.5, 0.5])


def test_one_line_at_a_time_is_said_and_one_tick_has_its_decimals(open_page: Callable[..., Any]) -> None:
    page = open_page("parts")
    said = """async () => {
      const { toast } = await import("/static/ui/toast.js");
      toast("one");
      toast("two");
      return document.querySelector(".toasts").innerText; }"""
    assert page.evaluate(said) == "two"
    places = """async () => {
      const { decimalsOf } = await import("/static/ui/chartaxes.js");
      return [[1.04], [80], [1.02, 1.04], [10, 12.5]].map(decimalsOf); }"""
    assert page.evaluate(places) == [2, 0, 2, 1]


WRITTEN = {
    "figures.formatNumber(1610)": "1\u202f610",
    "figures.formatNumber(0.998, 3)": "0,998",
    "figures.formatNumber(-3.5, 1)": "\u22123,5",
    "figures.formatNumber(-0.04, 1)": "0,0",
    "figures.formatNumber(NaN)": "–",
    "figures.formatQuantity(28.1, 1, 'L')": "28,1\u00a0L",
    "figures.parseNumber(' 1 610,5 ')": 1610.5,
    "figures.parseNumber('\u22123.5')": -3.5,
    "String(figures.parseNumber('1.2.3'))": "NaN",
    "String(figures.parseNumber('1e999'))": "NaN",
    "String(figures.parseNumber(''))": "NaN",
    "figures.formatTime(Date.UTC(2025, 9, 6, 8, 11))": "08:11",
    "figures.formatDuration(3 * 3600 + 19 * 60)": "3\u00a0h\u00a019",
    "figures.formatDuration(720)": "12\u00a0min",
    "figures.formatDay('2025-09-16T22:00Z', '2025-09-21T01:00Z')": "day 6",
    "figures.formatAgo('2025-09-20T23:59Z', '2025-09-21T00:01Z')": "yesterday",
    "figures.formatAgo('2025-09-17T12:00Z', '2025-09-21T00:01Z')": "4 days ago",
}


def test_minutes_go_there_and_back_by_the_sites_clock(open_page: Callable[..., Any]) -> None:
    """Held against Python's zoneinfo (the IANA database), around changes of the clock and far from UTC."""
    page = open_page("parts")
    zones = ("Europe/Berlin", "America/St_Johns", "Pacific/Auckland", "Australia/Lord_Howe", "UTC")
    for name in zones:
        zone = ZoneInfo(name)
        page.evaluate("name => { document.documentElement.dataset.zone = name; }", name)
        for month, day in ((3, 28), (4, 4), (9, 26), (10, 24)):
            moments = [datetime(2026, month, day, tzinfo=UTC) + timedelta(minutes=45 * n) for n in range(64)]
            wanted = [moment.astimezone(zone).strftime("%Y-%m-%dT%H:%M") for moment in moments]
            stamps = [moment.timestamp() * 1000 for moment in moments]
            assert page.evaluate("stamps => stamps.map((one) => gallery.format.formatMinute(one))", stamps) == wanted
            back = page.evaluate("minutes => minutes.map((one) => +gallery.format.parseMinute(one))", wanted)
            # An hour that comes twice may be either of the two.
            assert [datetime.fromtimestamp(one / 1000, zone).strftime("%Y-%m-%dT%H:%M") for one in back] == wanted
            assert sum(one != stamp for one, stamp in zip(back, stamps, strict=True)) <= 2
    assert page.evaluate("['', 'soon', '2026-13-01T00:00'].map((one) => String(gallery.format.parseMinute(one)))") == [
        "Invalid Date"
    ] * 3


def test_figures_and_times_are_written_as_the_site_writes_them(open_page: Callable[..., Any]) -> None:
    page = open_page("parts", more="&decimal=,")
    assert {call: page.evaluate(f"((figures) => {call})(gallery.format)") for call in WRITTEN} == WRITTEN


def test_figures_stand_where_the_curve_cannot_be_drawn(browser: Any, gallery: str) -> None:
    context = browser.new_context(viewport=PHONE)
    page = context.new_page()
    page.route("**/uplot.min.js", lambda route: route.abort())
    page.goto(f"{gallery}/gallery?screen=run")
    wait_until(page, "globalThis.gallery?.ready")
    assert page.get_by_role("table").get_by_role("row").count() == 24
    assert page.locator(".chart .table-wrap").bounding_box()["height"] > 200
    context.close()


@pytest.mark.webkit
def test_keypad_icons_and_curve_serve_in_webkit(webkit_parts: WebKit, gallery: str) -> None:
    with open_webkit(webkit_parts) as driver:
        driver.get(f"{gallery}/gallery?screen=reading")
        wait_until(driver, "globalThis.gallery?.ready")
        driver.execute_script("document.getElementById('gravity').focus()")
        for key in ("1", "mark", "0", "3", "erase"):
            driver.find_element("css selector", f"slate-keypad [data-key='{key}']").click()
        field = "const field = document.getElementById('gravity'); "
        typed = driver.execute_script(f"{field} return [field.value, field.inputMode, document.activeElement.id]")
        assert typed == ["1.0", "none", "gravity"]
        wait_until(driver, "document.querySelector('.head__back use').getBBox().width > 5")
        driver.get(f"{gallery}/gallery?screen=run")
        wait_until(driver, "globalThis.gallery?.ready && document.querySelector('.chart canvas')")


def test_paper_carries_the_work_and_not_the_buttons(open_page: Callable[..., Any]) -> None:
    page = open_page("desk", DESK, color_scheme="dark")
    page.emulate_media(media="print")
    assert page.locator(".top__rooms").is_hidden()
    assert page.locator(".list__answers").first.is_hidden()
    assert page.get_by_role("table", name="Casks").is_visible()
    assert page.evaluate("getComputedStyle(document.documentElement).backgroundColor") == "rgb(255, 255, 255)"
