"""± beside the figures of a form: it comes after the form, without signal too, and crowds nothing."""

from __future__ import annotations

import pytest
from playwright.sync_api import expect

from tests.browser.floor_house import Floor, far_floor, floor, near_floor
from webapp.trade.marks import make_mark

__all__ = ["far_floor", "floor", "near_floor"]

CASK = make_mark("C031")
SIZES = ((390, 844), (320, 568), (844, 390))


@pytest.mark.parametrize("size", SIZES, ids=lambda size: f"{size[0]}x{size[1]}")
def test_a_regauge_says_how_far_its_figures_may_be_off(floor: Floor, size: tuple[int, int]) -> None:
    """Scale of class III, e 0.1 kg; glass of class III: worked out with the same limits in tests/kinds."""
    floor.page.set_viewport_size({"width": size[0], "height": size[1]})
    page = floor.form(f"/m/{CASK}/log/cask_regauge")
    page.locator("[name=gross]").fill("231.5")
    page.locator("[name=glass]").fill("60.0")
    page.locator("[name=temp]").fill("14.0")
    figure = page.locator(".sum__figure", has=page.locator("[data-figure=true_strength]"))
    expect(figure.locator(".sum__off")).to_have_text("± 0.2")
    pure = page.locator(".sum__figure", has=page.locator("[data-figure=lpa]"))
    expect(pure.locator(".sum__off")).to_contain_text("± 0.")
    wide = page.evaluate("document.documentElement.scrollWidth > document.documentElement.clientWidth")
    assert not wide
    assert floor.faults == []
