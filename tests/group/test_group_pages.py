"""The group's pages, light on a phone and dark on a wide screen: axe-core finds nothing, nothing is too wide."""

from __future__ import annotations

import re
import time
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from tests.book.conftest import send as log_at
from tests.browser.test_desk_axe import AXE, SIZES
from tests.group.test_bottles_over_the_border import bottled, come_in, key_of, out
from tests.group.test_group_server import code_for, serve
from webapp.backups import BOOK_NAME
from webapp.book.house import people
from webapp.book.opening import open_book
from webapp.book.record.store import Book
from webapp.group import way
from webapp.group.sender import send
from webapp.group.store import open_store

pytestmark = pytest.mark.browser
PASSWORD = "a long enough secret"


def test_axe_finds_nothing(postgres: Any, make_site: Callable[..., Book], tmp_path: Path, browser: Any) -> None:
    url = postgres.make()
    server = serve(tmp_path / "group", url)
    try:
        with open_book(server.data_dir / BOOK_NAME) as keeper:
            people.put_person(keeper, {"code": "OL", "name": "Ola", "access": "office"}, by="OL")
            people.set_password(keeper, "OL", PASSWORD)
        north, south = make_site("North Hill and its orchards"), make_site("South Bank")
        log_at(north, *bottled(), out(60, 4, case_to="20"))
        log_at(south, come_in(50, 1, "19", short="2 count"), come_in(49, 2, "3", batch="K2699"))
        for book in (north, south):
            folder = tmp_path / f"way-{book.path.name}"
            folder.mkdir()
            way.join(folder, server.url, code_for(server.data_dir, folder.name), folder.name)
            carrier = way.load_way(folder)
            assert carrier
            send(book, carrier)
        paths = ["/group/sites", "/group/trace", "/group/trace?q=K2603", "/group/trace?q=nothing", "/group/periods",
                 "/group/periods/2025-09", "/group/people", f"/group/trace/{key_of(south, 'goods_receipt')}",
                 f"/group/trace/{key_of(north, 'gauge')}"]
        worked_out(url, 2)
        wrong = look(browser, server.url, "light", "phone", paths) + look(browser, server.url, "dark", "desk", paths)
    finally:
        server.close()
    assert not wrong, "\n".join(wrong)


def worked_out(url: str, count: int) -> None:
    """Wait until so many sites are folded to their ends."""
    store, deadline = open_store(url), time.monotonic() + 60
    text = "SELECT count(*) AS n FROM folds f JOIN branches b USING (site, branch) WHERE f.book_no = b.cursor"
    while (store.one(text) or {})["n"] < count:
        assert time.monotonic() < deadline
        time.sleep(0.05)
    store.close()


def look(browser: Any, url: str, theme: str, size: str, paths: list[str]) -> list[str]:
    """Return what axe-core finds on these pages, and which are wider than the screen."""
    context = browser.new_context(viewport=SIZES[size], color_scheme=theme, bypass_csp=True, service_workers="block")
    page = context.new_page()
    page.goto(url + "/sign-in")
    page.fill("[name=code]", "OL")
    page.fill("[name=password]", PASSWORD)
    page.click("button[type=submit]")
    page.wait_for_url(re.compile("/group/"))
    page.fill("main [name=name]", "West Mill")
    page.click("main .button--main")
    page.wait_for_selector("main code")
    wrong = []
    for path in ["", *paths]:  # the first is what the one-time code is shown on
        if path:
            assert page.goto(url + path).status == 200, path
        page.evaluate(AXE)
        found = page.evaluate("async () => (await axe.run()).violations.map(v => [v.id, v.nodes[0].html])")
        wrong += [f"{theme}, {size}, {path}: {rule} {html}" for rule, html in found]
        wide = page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth")
        if wide > 0:
            wrong.append(f"{theme}, {size}, {path}: {wide} px wider than the screen")
    context.close()
    return wrong
