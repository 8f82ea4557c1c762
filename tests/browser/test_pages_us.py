"""A phone set to US units: what is typed and what is computed both stand in lb, gallons, degF and proof."""

from __future__ import annotations

import re
from typing import Any

from playwright.sync_api import expect

from tests.browser.floor_house import FERMENTER, HEARTS, STILL, Floor, far_floor, floor
from webapp.trade.marks import make_mark

__all__ = ["far_floor", "floor"]

CASK = make_mark("C031")


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
        expect(_figure(page, "volume_20")).to_have_text(re.compile(r"^\s*(9\.9|10\.0)\d\sgal$"))
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


METRIC = re.compile(r"% vol|°C|(?<=[0-9] )(?:L|kg|LPA)\b|\bL/h|L pure|\b[Ll]itres?\b")
# What is spoken counts like what is seen: names of pictures, and the tables behind them. Pickers name every unit.
_SAID = """() => {
  document.querySelectorAll("select, .field__unit, [data-switch], .chips, #cautions").forEach((one) => one.remove());
  const spoken = [...document.querySelectorAll("[aria-label]")].map((one) => one.getAttribute("aria-label"));
  const tables = [...document.querySelectorAll(".hidden-text")].map((one) => one.textContent);
  return [document.body.innerText, ...spoken, ...tables].join(" | ").replace(/[\\s\\u00a0\\u202f]+/g, " ");
}"""


def _draft(kind: str, mark: str, **values: tuple[str, str] | str) -> dict[str, Any]:
    pairs = ((name, one if isinstance(one, tuple) else (one, "")) for name, one in values.items())
    made = {name: {"raw": raw, "unit": unit} if unit else {"raw": raw} for name, (raw, unit) in pairs}
    return {"kind": kind, "kind_version": 1, "mark": mark, "mark_by": "typed", "person": "BT", "role": "still hand",
            "values": made}


def test_the_main_screens_of_a_us_phone_have_no_metric_figure(floor: Floor) -> None:
    floor.open("/more")
    floor.page.evaluate("localStorage.setItem('units', 'us')")
    try:
        for draft in (
            _draft("gauge", HEARTS, volume=("60", "gal"), strength=("139", "proof"), temp=("66", "degF")),
            _draft("charge", STILL, from_vessel=FERMENTER, wash=("127", "gal"), wash_strength=("10.2", "proof")),
            _draft("run_reading", STILL, strength=("156", "proof"), temp=("61", "degF"), flow=("2.9", "gal_h")),
            _draft("cask_regauge", CASK, gross=("430", "lb"), strength=("124", "proof"), temp=("60", "degF")),
            _draft("ferment_reading", FERMENTER, temp=("58", "degF"), gravity=("1.049", "SG")),
        ):
            floor.phone.log(draft)
        found, whole = [], ""
        for path in ("/today", "/slate", f"/m/{HEARTS}", f"/m/{STILL}", f"/m/{STILL}/run", f"/m/{CASK}",
                     f"/m/{FERMENTER}", f"/m/{HEARTS}/log/gauge", f"/m/{CASK}/log/dump", "/job/casks"):
            said = str(floor.open(path).evaluate(_SAID))
            whole += said
            found += [(path, said[max(0, at.start() - 40):at.end() + 20]) for at in METRIC.finditer(said)]
        assert found == []
        assert {"156.0 proof", "2.90 gal/h", "124.0 proof"} <= set(re.findall(r"[\d.]+ (?:proof|gal/h)", whole))
    finally:
        floor.page.evaluate("localStorage.removeItem('units')")
