"""A phone whose camera does not scan: its code is typed, a slip is told, and what waited on it goes in."""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import Any

import pytest
from playwright.sync_api import expect

from tests.browser.offline_world import READY, Phone, World, reading
from webapp.book.house import codes, devices
from webapp.book.opening import open_book

pytestmark = pytest.mark.browser


def test_a_phone_joins_by_typing_and_what_it_logged_before_is_handed_in(
    world: World, make_phone: Callable[..., Phone]
) -> None:
    with open_book(world.book_path) as book:
        grant = devices.new_grant(book, "MD", "PH-5")
    phone = make_phone(world.server.url)
    page: Any = phone.open("/today")
    page.evaluate(READY)
    phone.log(reading())
    expect(page.locator("main")).to_contain_text("The book does not know this phone yet.")
    page.get_by_role("link", name="Let this phone in").first.click()
    page.wait_for_url("**/start")
    wrong = grant.code[:-1] + ("2" if grant.code[-1] != "2" else "3")
    page.locator("[name=token]").fill(wrong)
    page.get_by_role("button", name="Let it in").click()
    expect(page.locator("[data-part=says]")).to_contain_text("One character of this code is not right")
    page.locator("[name=token]").fill(codes.show_code(grant.code).lower())
    page.get_by_role("button", name="Let it in").click()
    page.wait_for_url(re.compile("/who"))
    phone.wait_until_settled()
    assert [row["kind"] for row in world.entries()] == ["ferment_reading"]
    with open_book(world.book_path) as book:
        assert [one["name"] for one in devices.devices(book) if one["enrolled_at"]] == ["PH-5"]
