"""The look: contrast, sizes, the pieces' behaviour, and what assistive technology is given.

Contrast and target sizes follow WCAG 2.2 (w3.org/TR/WCAG22, success criteria 1.4.3 and 1.4.11; relative luminance as
defined there); the pages are judged by axe-core besides.
"""

import hashlib
import json
import re
import time
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any
from xml.etree import ElementTree

import pytest

from tests.browser.gallery_server import serve_gallery
from tests.browser.webkit_session import open_webkit
from tests.find_browsers import WebKit

ROOT = Path(__file__).parents[2]
STATIC = ROOT / "static"
PHONE = {"width": 390, "height": 844}
DESK = {"width": 1280, "height": 800}
FLOOR_SCREENS = ("reading", "run", "slate", "today", "vessel", "parts", "parts&wrong=1")
GROUNDS = ("ground", "sheet", "raised")
INKS = ("chalk", "dust", "copper", "stop", "ask", "note", "well", "heads", "tails")


@pytest.fixture(scope="module")
def gallery() -> Iterator[str]:
    with serve_gallery() as address:
        yield address


@pytest.fixture
def open_page(browser: Any, gallery: str) -> Iterator[Callable[..., Any]]:
    """A function that opens one screen; a broken policy, a foreign request or a script's error fails the test."""
    contexts, faults = [], []

    def open_screen(screen: str, size: dict[str, int] = PHONE, more: str = "", **options: Any) -> Any:
        context = browser.new_context(viewport=size, locale="en-GB", **options)
        contexts.append(context)
        page = context.new_page()
        page.on("console", lambda message: faults.append(message.text) if message.type == "error" else None)
        page.on("pageerror", lambda error: faults.append(str(error)))
        page.on("request", lambda request: None if request.url.startswith(gallery) else faults.append(request.url))
        page.goto(f"{gallery}/gallery?screen={screen}{more}")
        if options.get("java_script_enabled", True):
            wait_until(page, "globalThis.gallery?.ready && document.fonts.status === 'loaded'")
        return page

    yield open_screen
    for context in contexts:
        context.close()
    # The manifest is served by the application, not by the gallery.
    assert [fault for fault in faults if "404" not in fault] == []


def wait_until(page: Any, fact: str, longest_s: float = 45.0) -> None:
    """Wait for a fact of the page; the drivers' own waits need eval, which the policy forbids."""
    until = time.monotonic() + longest_s
    ask = page.evaluate if hasattr(page, "evaluate") else lambda words: page.execute_script(f"return {words}")
    while not ask(f"Boolean({fact})"):
        assert time.monotonic() < until, f"never came true: {fact}"
        ask("new Promise((resolve) => setTimeout(resolve, 20))")


# --- colours ---------------------------------------------------------------------------------------------------------


def read_themes() -> dict[str, list[dict[str, str]]]:
    css = (STATIC / "style" / "tokens.css").read_text()
    blocks = re.findall(r"color-scheme: (light|dark);(.*?)\}", css, re.S)
    themes: dict[str, list[dict[str, str]]] = {"light": [], "dark": []}
    for name, body in blocks:
        themes[name].append(dict(re.findall(r"--([\w-]+): (#[0-9a-f]{6});", body)))
    return themes


def compute_contrast(one: str, other: str) -> float:
    def luminance(colour: str) -> float:
        parts = [int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5)]
        red, green, blue = (p / 12.92 if p <= 0.04045 else ((p + 0.055) / 1.055) ** 2.4 for p in parts)
        return 0.2126 * red + 0.7152 * green + 0.0722 * blue

    low, high = sorted((luminance(one), luminance(other)))
    return (high + 0.05) / (low + 0.05)


def test_contrast_formula_gives_the_known_ratios() -> None:
    # Black on white is 21:1 by definition; #767676 on white is the lightest grey that passes 4.5 (4.54, from memory).
    assert compute_contrast("#000000", "#ffffff") == pytest.approx(21.0)
    assert compute_contrast("#767676", "#ffffff") == pytest.approx(4.54, abs=0.005)


def test_dark_theme_is_the_same_by_system_and_by_choice() -> None:
    themes = read_themes()
    assert len(themes["light"]) == 1
    assert len(themes["dark"]) == 2
    assert themes["dark"][0] == themes["dark"][1]
    assert themes["dark"][0].keys() == themes["light"][0].keys()


@pytest.mark.parametrize("theme", ["dark", "light"])
def test_every_text_pair_is_legible(theme: str) -> None:
    tokens = read_themes()[theme][0]
    pairs = [(ink, ground) for ink in INKS for ground in GROUNDS] + [("on-copper", "copper")]
    poor = {pair: compute_contrast(tokens[pair[0]], tokens[pair[1]]) for pair in pairs}
    assert {pair: ratio for pair, ratio in poor.items() if ratio < 4.5} == {}


@pytest.mark.parametrize("theme", ["dark", "light"])
def test_edges_of_controls_can_be_found(theme: str) -> None:
    tokens = read_themes()[theme][0]
    assert min(compute_contrast(tokens["edge"], tokens[ground]) for ground in GROUNDS) >= 3.0


# --- files -----------------------------------------------------------------------------------------------------------


def test_vendored_files_are_the_ones_listed() -> None:
    rows = json.loads((STATIC / "vendor" / "vendor.json").read_text())
    listed = {file["path"]: file["sha256"] for row in rows for file in row["files"]}
    assert all(row["version"] and row["licence"] and row["source"] for row in rows)
    wrong = [
        path for path, digest in listed.items() if hashlib.sha256((ROOT / path).read_bytes()).hexdigest() != digest
    ]
    assert wrong == []
    present = {str(path.relative_to(ROOT)) for path in (STATIC / "vendor").glob("*/*") if path.is_file()}
    assert present - listed.keys() == set()


def test_templates_and_modules_ask_only_for_icons_that_exist() -> None:
    symbols = {symbol.get("id") for symbol in ElementTree.parse(STATIC / "icons" / "sprite.svg").getroot()}
    sources = [*(ROOT / "webapp").rglob("*.html"), *(STATIC / "ui").glob("*.js"), *(STATIC / "pages").glob("*.js")]
    asked = {name for path in sources for name in re.findall(r"\bicon(?:Element)?\(\"([\w-]+)\"", path.read_text())}
    assert asked
    assert asked - symbols == set()


def test_no_style_or_script_stands_inside_a_template() -> None:
    inline = re.compile(r"<style|\sstyle=|\son[a-z]+=\"|<script(?![^>]*\ssrc=)", re.I)
    assert [path.name for path in (ROOT / "webapp").rglob("*.html") if inline.search(path.read_text())] == []


# --- every screen ----------------------------------------------------------------------------------------------------


@pytest.mark.parametrize("theme", ["dark", "light"])
@pytest.mark.parametrize(
    ("screen", "size"), [*((s, PHONE) for s in FLOOR_SCREENS), ("desk", DESK), ("run", DESK), ("desk", PHONE)]
)
def test_axe_finds_nothing(open_page: Callable[..., Any], screen: str, size: dict[str, int], theme: str) -> None:
    page = open_page(screen, size, color_scheme=theme, bypass_csp=True)
    if screen == "reading":
        page.focus("#gravity")
    page.add_script_tag(path=ROOT / "tests" / "vendor" / "axe.min.js")
    found = page.evaluate("""async () => (await axe.run({
            runOnly: ["wcag2a", "wcag2aa", "wcag21aa", "wcag22aa", "best-practice"],
        })).violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.html).join(" | ")}`)""")
    assert found == []


@pytest.mark.parametrize("screen", FLOOR_SCREENS)
def test_targets_on_the_floor_are_48_px(open_page: Callable[..., Any], screen: str) -> None:
    page = open_page(screen)
    if screen == "reading":
        page.focus("#gravity")
    # A field is pressed anywhere on its card, a radio on its chip, a pill on the area drawn around it;
    # links in sentences are exempt.
    small = page.evaluate("""() => {
        const around = (one) => {
            const after = getComputedStyle(one, "::after");
            return after.content === "none" ? 0 : parseFloat(after.height) || 0;
        };
        const sorts = "button, a[href], .field, .chip, .tick, select.field__value, select.field__unit";
        return [...document.querySelectorAll(sorts)]
            .filter((one) => one.checkVisibility() && !one.closest(".skip, .band > ul"))
            .filter((one) => {
                const box = one.getBoundingClientRect();
                return box.width < 48 || Math.max(box.height, around(one)) < 48;
            })
            .map((one) => one.outerHTML.slice(0, 80));
    }""")
    assert small == []


def test_keys_action_and_cuts_have_their_heights(open_page: Callable[..., Any]) -> None:
    page = open_page("reading")
    page.focus("#gravity")
    heights = page.eval_on_selector_all(".key", "(keys) => keys.map((key) => key.getBoundingClientRect().height)")
    assert len(heights) == 16
    assert min(heights) >= 56
    assert page.locator(".button--action").bounding_box()["height"] >= 64
    assert open_page("run").locator(".cut--due").bounding_box()["height"] >= 84


@pytest.mark.parametrize("screen", [*FLOOR_SCREENS, "desk"])
def test_nothing_runs_off_a_narrow_phone(open_page: Callable[..., Any], screen: str) -> None:
    page = open_page(screen, {"width": 320, "height": 640})
    assert page.evaluate("document.documentElement.scrollWidth") <= 320


def test_figures_stand_under_each_other_in_our_own_font(open_page: Callable[..., Any]) -> None:
    page = open_page("slate")
    widths = page.evaluate("""() => [..."0123456789"].map((digit) => {
        const probe = document.createElement("p");
        probe.className = "hidden-text";
        probe.textContent = digit.repeat(20);
        document.body.append(probe);
        const range = document.createRange();
        range.selectNodeContents(probe);
        return range.getBoundingClientRect().width;
    })""")
    assert max(widths) == pytest.approx(min(widths))
    assert page.evaluate("[...document.fonts].filter((font) => font.status === 'loaded').length") == 2


def test_motion_stops_where_it_is_not_wanted(open_page: Callable[..., Any]) -> None:
    page = open_page("parts", reduced_motion="reduce")
    durations = page.evaluate(
        "[...document.querySelectorAll('*')].map((one) => getComputedStyle(one).transitionDuration)"
    )
    assert set(durations) == {"0s"}


def test_icons_draw_from_the_kept_copy_with_the_server_gone(browser: Any) -> None:
    context = browser.new_context(viewport=PHONE)
    with serve_gallery() as address:
        page = context.new_page()
        page.goto(f"{address}/gallery?screen=slate")
        page.evaluate("""async () => {
            const taken = new Promise((resolve) =>
                navigator.serviceWorker.addEventListener("controllerchange", resolve));
            await navigator.serviceWorker.register("/look-worker.js");
            await taken;
        }""")
    page.reload()
    wait_until(page, "document.querySelector('.foot .icon use').getBBox().width > 5")
    context.close()


# --- pieces ----------------------------------------------------------------------------------------------------------


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
    assert "heads: 6 Oct 2025 08:30 to 6 Oct 2025 09:21" in table.locator("caption").text_content()
    assert table.get_by_role("row").nth(1).locator("td").first.text_content() == "80.5"
    assert table.get_by_role("row").count() == 24


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
