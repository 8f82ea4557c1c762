"""Height is a budget: field, question and the button that logs are in sight on any screen and at any size of text.

WCAG 2.2: 1.4.4 (text at 200 %), 1.4.10 (reflow: 320 x 256 is a window of 1280 x 1024 enlarged four times), 2.4.11
(focus not obscured), 2.5.8 (targets).
"""

from __future__ import annotations

from typing import Any

import pytest

from tests.browser.floor_house import FERMENTER, STILL, Floor, far_floor, floor
from webapp.trade.marks import make_mark

__all__ = ["far_floor", "floor"]

CASK = make_mark("C031")
FORM = f"/m/{FERMENTER}/log/ferment_reading"
SIZES = [(390, 844), (844, 390), (667, 375), (375, 667), (320, 568), (320, 256), (1024, 768)]
_IN_SIGHT = """() => {
  const boxOf = (element) => element.closest(".field");
  const sizeOf = (element) => element.getBoundingClientRect();
  const seen = (element, part) => {
    const { left, top, width, height } = sizeOf(element);
    const [x, y] = [left + width / 2, top + height * part];
    if (!height || y < 0 || y > innerHeight || x > innerWidth) return false;
    const hit = document.elementFromPoint(x, y);
    return Boolean(hit && (element.contains(hit) || (boxOf(element) && boxOf(hit) === boxOf(element))));
  };
  const all = (what) => [...document.querySelectorAll(what)];
  const field = document.activeElement;
  const echo = document.querySelector(".keypad__echo");
  const look = document.querySelector(".look");
  const log = document.querySelector(".thumb .button--action");
  const keys = all(".key:enabled").filter((key) => getComputedStyle(key).visibility === "visible");
  const least = all(".key, .thumb .button").map((one) => Math.min(sizeOf(one).width, sizeOf(one).height));
  return {
    field: seen(field, 0.5) || (seen(echo, 0.5) && echo.textContent.includes(field.value)),
    lead: seen(look.querySelector(".band__lead"), 0.5),
    answer: seen(look.querySelector(".band__offers .button"), 0.2),
    log: seen(log, 0.1) && seen(log, 0.9),
    keys: keys.filter((key) => !seen(key, 0.5)).map((key) => key.dataset.key),
    across: document.documentElement.scrollWidth - innerWidth,
    least: Math.min(...least.filter(Boolean)),
  };
}"""


def _in_sight(page: Any, width: int, height: int) -> dict[str, Any]:
    page.set_viewport_size({"width": width, "height": height})
    page.wait_for_timeout(300)
    found: dict[str, Any] = page.evaluate(_IN_SIGHT)
    return found


@pytest.fixture
def at_rest(floor: Floor) -> Any:
    """The phone as it was, whatever size it is given in between."""
    yield floor
    floor.page.set_viewport_size({"width": 390, "height": 844})


@pytest.mark.parametrize("text_pct", [100, 200])
@pytest.mark.parametrize(("width", "height"), SIZES)
def test_field_question_and_button_are_in_sight(at_rest: Floor, width: int, height: int, text_pct: int) -> None:
    if text_pct == 200 and height < 300:
        pytest.skip("320 x 256 is enlarged four times already")
    page = at_rest.form(FORM)
    page.evaluate("pct => document.documentElement.style.setProperty('font-size', `${pct}%`)", text_pct)
    page.locator("[name=temp]").fill("27")  # above the usual 20
    page.locator("[name=gravity]").focus()
    page.keyboard.type("1.0")
    page.locator(".look").wait_for()
    found = _in_sight(page, width, height)
    assert found["across"] <= 0, "nothing is scrolled sideways"
    assert found["keys"] == []
    assert (found["field"], found["lead"], found["answer"], found["log"]) == (True, True, True, True)
    assert found["least"] >= 24


@pytest.mark.parametrize(("width", "height"), SIZES)
def test_a_refusal_is_scrolled_to(at_rest: Floor, width: int, height: int) -> None:
    page = at_rest.form(FORM)
    page.set_viewport_size({"width": width, "height": height})
    page.locator("[data-part=more] summary").click()
    page.locator("[name=ph]").focus()
    page.wait_for_timeout(200)
    page.locator("[data-part=log]").click()
    error = page.locator("[data-field=temp] .field__error")
    error.wait_for()
    page.wait_for_timeout(200)
    assert page.locator("[name=temp]").evaluate("box => box === document.activeElement")
    hit = error.evaluate("""line => { const { left, top, height } = line.getBoundingClientRect();
      return line.contains(document.elementFromPoint(left + 24, top + height / 2)); }""")
    assert hit, "what is wrong is not under the keys"


@pytest.mark.parametrize(("width", "height"), SIZES)
def test_the_run_sheets_panel_fits_with_its_question(at_rest: Floor, width: int, height: int) -> None:
    page = at_rest.open(f"/m/{STILL}/run")
    page.set_viewport_size({"width": width, "height": height})
    page.get_by_role("button", name="Reading", exact=True).click()
    page.locator("[name=glass]").fill("61")
    page.locator("[name=temp]").fill("27")  # warmer than spirit should run
    page.locator("[name=glass]").focus()
    page.locator(".look").wait_for()
    found = _in_sight(page, width, height)
    assert found["across"] <= 0
    assert (found["field"], found["lead"], found["log"]) == (True, True, True)


_TURNS = """() => {
  window.turns = 0;
  let before = null;
  const look = () => {
    const now = document.documentElement.hasAttribute("data-tight");
    if (before !== null && now !== before) window.turns += 1;
    before = now;
    requestAnimationFrame(look);
  };
  look();
}"""


@pytest.mark.parametrize(("width", "height"), [(320, 568), (375, 667), (320, 480)])
def test_what_follows_from_a_figure_chooses_the_layout_once(at_rest: Floor, width: int, height: int) -> None:
    """The sums of a form that is full leave its field no room; without them there is room again, and so on for ever."""
    page = at_rest.form(f"/m/{CASK}/log/cask_regauge")
    page.set_viewport_size({"width": width, "height": height})
    page.evaluate(_TURNS)
    turns = []
    for name, raw in (("gross", "235.4"), ("glass", "61.2"), ("temp", "12.0"), ("gross", "")):
        page.locator(f"[name={name}]").focus()
        page.evaluate("() => { window.turns = 0; }")
        page.keyboard.type(raw)
        page.wait_for_timeout(600)
        turns.append((name, page.evaluate("() => window.turns")))
    assert all(count <= 2 for _, count in turns), turns
