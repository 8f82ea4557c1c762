"""The look of every screen: what assistive technology is given, sizes of targets, narrow phones, figures, motion.

Target sizes follow WCAG 2.2 (w3.org/TR/WCAG22); the pages are judged by axe-core besides.
"""

from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from tests.browser.gallery_pages import DESK, PHONE, gallery, open_page, wait_until
from tests.browser.gallery_server import serve_gallery

__all__ = ["gallery", "open_page"]

ROOT = Path(__file__).parents[2]
FLOOR_SCREENS = ("reading", "run", "slate", "today", "vessel", "parts", "parts&wrong=1")


@pytest.mark.parametrize(
    ("screen", "size"), [*((s, PHONE) for s in FLOOR_SCREENS), ("desk", DESK), ("run", DESK), ("desk", PHONE)]
)
def test_axe_finds_nothing(open_page: Callable[..., Any], screen: str, size: dict[str, int]) -> None:
    """By day with every rule, then the same page by night: nothing but its colours changes."""
    page = open_page(screen, size, color_scheme="light", bypass_csp=True, reduced_motion="reduce")
    if screen == "reading":
        page.focus("#gravity")
    page.add_script_tag(path=ROOT / "tests" / "vendor" / "axe.min.js")
    every = ["wcag2a", "wcag2aa", "wcag21aa", "wcag22aa", "best-practice"]
    for theme, rules in (("light", every), ("dark", ["color-contrast"])):
        page.emulate_media(color_scheme=theme, reduced_motion="reduce")  # a colour on its way is none
        found = page.evaluate("""async (rules) => (await axe.run({ runOnly: rules, resultTypes: ["violations"] }))
            .violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.html).join(" | ")}`)""", rules)
        assert found == [], theme


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
