"""The limit that holds for a vessel is one in the book and on the phone, whoever has set it, and where nobody has."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest

from tests.labels.browser import serve
from webapp.book.before.limits import held_limit, vessel_scopes
from webapp.book.limits import ALL

CASES = json.loads(Path("tests/vectors/held_limits.json").read_text("utf-8"))["cases"]
PAGE = b"<!doctype html><html lang=en><meta charset=utf-8><title>limits</title>"
HELD_ON_PHONE = """async cases => {
  const { heldLimit, useSiteLimits } = await import("/static/kinds/limits.js");
  return cases.map(({ site, card, name }) => {
    useSiteLimits(site);
    return heldLimit(name, card);
  });
}"""
DECLARED_ON_PHONE = """async names => {
  const { heldLimit } = await import("/static/kinds/limits.js");
  return names.map((name) => heldLimit(name) ?? null);
}"""


@pytest.mark.parametrize("case", CASES, ids=lambda case: case["why"])
def test_the_book_finds_the_limit_that_holds(case: dict[str, Any]) -> None:
    card = case["card"]
    scopes = ()
    if card:
        holds, run = card.get("holds") or {}, card.get("run") or {}
        products = (holds.get("what"), holds.get("material"), run.get("what"))
        scopes = vessel_scopes(card["mark"], card.get("sort"), products)
    assert held_limit(case["name"], case["site"] or {}, scopes)[0] == case["value"]


def test_the_phone_finds_the_same(browser: Any) -> None:
    with serve({"/page": ("text/html", PAGE)}) as origin:
        page = browser.new_page()
        page.goto(f"{origin}/page")
        found = page.evaluate(HELD_ON_PHONE, CASES)
        page.close()
    assert {case["why"]: value for case, value in zip(CASES, found, strict=True)} == {
        case["why"]: case["value"] for case in CASES
    }


def test_what_the_phone_takes_where_nobody_has_set_one_is_what_the_check_declares(browser: Any) -> None:
    with serve({"/page": ("text/html", PAGE)}) as origin:
        page = browser.new_page()
        page.goto(f"{origin}/page")
        found = dict(zip(ALL, page.evaluate(DECLARED_ON_PHONE, list(ALL)), strict=True))
        page.close()
    known = {name: value for name, value in found.items() if value is not None}
    assert len(known) > 10
    assert known == {name: ALL[name].default for name in known}
