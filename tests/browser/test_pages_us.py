"""A phone set to US units: what is typed and what is computed both stand in lb, gallons, degF and proof."""

from __future__ import annotations

import re
from typing import Any

from playwright.sync_api import expect

from tests.browser.floor_house import HEARTS, Floor, far_floor, floor

__all__ = ["far_floor", "floor"]


def _figure(page: Any, name: str) -> Any:
    return page.locator(f"[data-figure={name}]")


def test_a_gauge_in_gallons_and_proof_is_answered_in_proof_gallons(floor: Floor) -> None:
    floor.open("/more")
    floor.page.evaluate("localStorage.setItem('units', 'us')")
    try:
        page = floor.form(f"/m/{HEARTS}/log/gauge")
        page.locator("[name=volume]").fill("10")
        page.locator("[name=glass]").fill("193")
        page.locator("[name=temp]").fill("75")
        # 27 CFR 30.61: 193 proof read at 75 degF is 189.5 proof by Table 1.
        expect(_figure(page, "true_strength")).to_have_text(re.compile(r"^189\.5\sproof$"))
        # Ten gallons at 75 degF shrink to 9.9 at 60: 9.9 x 1.895 = 18.8 proof gallons.
        expect(_figure(page, "lpa")).to_have_text(re.compile(r"^18\.[78]\d\sproof gal$"))
        expect(_figure(page, "volume_20")).to_have_text(re.compile(r"^\s*(9\.9|10\.0)\sgal$"))
    finally:
        floor.page.evaluate("localStorage.removeItem('units')")


def test_the_same_gauge_on_a_metric_phone_stays_metric(floor: Floor) -> None:
    page = floor.form(f"/m/{HEARTS}/log/gauge")
    page.locator("[name=volume]").fill("37,9")
    page.locator("[name=glass]").fill("62")
    page.locator("[name=temp]").fill("15")
    # 63.7 % vol: OIML R 22 with glass expansion.
    expect(_figure(page, "true_strength")).to_have_text(re.compile(r"^63[.,]7\s% vol$"))
    expect(_figure(page, "lpa")).to_have_text(re.compile(r"LPA|L$"))
