"""Every floor page under axe-core, on a phone and on a wide screen, dark and light, with the server stopped."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Any

import pytest

from tests.browser.floor_house import FERMENTER, HEARTS, ROOT, STILL, Floor, open_floor

PAGES = {
    "today": "/today",
    "scan": "/scan?mark=F3-9",
    "vessel": f"/m/{FERMENTER}",
    "still": f"/m/{STILL}",
    "strange mark": "/m/Q7-X",
    "ferment reading": f"/m/{FERMENTER}/log/ferment_reading",
    "fruit intake": f"/m/{FERMENTER}/log/fruit_intake",
    "charge": f"/m/{STILL}/log/charge",
    "fraction gauge": f"/m/{HEARTS}/log/fraction_gauge",
    "certificate": "/log/lab_certificate",
    "note": "/log/shift_note",
    "notes": "/job/notes",
    "run": f"/m/{STILL}/run",
    "after a run": f"/job/run?still={STILL}",
    "slate": "/slate",
    "who": "/who",
    "more": "/more",
    "blind tasting": "/job/tasting",
    "let in": "/start",
}
# Tall: a target half under the foot of a scrolled page is no small target.
SIZES = {"phone": {"width": 390, "height": 2600}, "wide": {"width": 1280, "height": 2600}}
_RULES = ["wcag2a", "wcag2aa", "wcag21aa", "wcag22aa", "best-practice"]
_AXE = """async (rules) => (await axe.run({ runOnly: rules, resultTypes: ["violations"] }))
  .violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.html.slice(0, 200)).join(" | ")}`)"""
_WORK = """async ([fermenter, still, receiver]) => {
  const { log } = await import("/static/slate/queue.js");
  const at = (minutes) => ({
    mark_by: "typed", person: "NS", role: "cellar hand", read_at: new Date(Date.now() - minutes * 60_000).toISOString(),
  });
  const glass = (raw, temp) => ({ glass: { raw, unit: "pct_glass" }, temp: { raw: temp, unit: "degC" } });
  const ferment = (raw) => ({ temp: { raw: "14", unit: "degC" }, gravity: { raw, unit: "SG" } });
  const wash = {
    from_vessel: { raw: fermenter }, hearts_to: { raw: receiver },
    wash: { raw: "482", unit: "L" }, wash_strength: { raw: "5.2", unit: "pct_vol" },
  };
  await log({ ...at(1500), kind: "ferment_reading", mark: fermenter, values: ferment("1.040") });
  await log({ ...at(60), kind: "ferment_reading", mark: fermenter, values: ferment("1.031") });
  await log({ ...at(120), kind: "charge", mark: still, values: wash });
  await log({ ...at(60), kind: "run_reading", mark: still, values: glass("78.6", "16.2") });
  const cut = { event: { raw: "heads_cut" }, receiver: { raw: receiver } };
  await log({ ...at(50), kind: "cut", mark: still, values: cut });
  await log({ ...at(20), kind: "run_reading", mark: still, values: glass("72.1", "15.4") });
}"""


@pytest.fixture(scope="module")
def working_floor(
    tmp_path_factory: pytest.TempPathFactory, playwright: Any, browser_options: dict[str, Any]
) -> Iterator[Floor]:
    """A far phone with a ferment and an open run on its slate."""
    # axe is put into the page by the test, which the page's own policy rightly forbids.
    with open_floor(tmp_path_factory.mktemp("axe"), playwright, {**browser_options, "bypass_csp": True}) as floor:
        floor.page.evaluate(_WORK, [FERMENTER, STILL, HEARTS])
        floor.world.server.stop()
        yield floor


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("name", PAGES)
def test_axe_finds_nothing(working_floor: Floor, name: str, size: str) -> None:
    """By day with every rule, then the same page by night: nothing but its colours changes."""
    page = working_floor.page
    page.emulate_media(color_scheme="light", reduced_motion="reduce")  # a colour on its way is none
    page.set_viewport_size(SIZES[size])
    working_floor.open(PAGES[name])
    assert _violations(page) == []
    page.emulate_media(color_scheme="dark", reduced_motion="reduce")
    assert _violations(page, ["color-contrast"]) == []
    too_wide = page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth")
    assert too_wide <= 0, "nothing may stand out of the page's side"


@pytest.mark.parametrize("theme", ["dark", "light"])
def test_axe_finds_nothing_while_something_is_asked(working_floor: Floor, theme: str) -> None:
    page = working_floor.page
    page.emulate_media(color_scheme=theme, reduced_motion="reduce")  # a colour on its way is none
    page.set_viewport_size(SIZES["phone"])
    working_floor.form(f"/m/{FERMENTER}/log/ferment_reading")
    page.locator("[name=gravity]").fill("1.082")
    page.locator(".look").wait_for()
    assert _violations(page) == []
    page.locator("[data-part=log]").click()  # its words name the figure while a question stands
    page.locator(".field__error").first.wait_for()
    assert _violations(page) == []
    working_floor.open(f"/m/{STILL}/run")
    for words in ("Reading", "Cut to tails"):
        page.get_by_role("button", name=re.compile(f"^{words}")).click()
        assert _violations(page) == []
        page.get_by_role("button", name="Leave it").click()


def _violations(page: Any, rules: list[str] = _RULES) -> list[str]:
    if not page.evaluate("Boolean(window.axe)"):
        page.add_script_tag(path=ROOT / "tests" / "vendor" / "axe.min.js")
    found: list[str] = page.evaluate(_AXE, rules)
    return found
