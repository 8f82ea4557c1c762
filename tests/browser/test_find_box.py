"""The search box in a browser: by keyboard alone, without script, and its list judged by axe-core.

The keys are those of the combobox with a listbox (w3.org/WAI/ARIA/apg/patterns/combobox).
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from tests.browser.test_desk_axe import AXE, signed_in
from tests.server_process import ServerProcess
from webapp import demo
from webapp.trade.marks import make_mark

pytestmark = pytest.mark.browser
C001, C002 = make_mark("C001"), make_mark("C002")
_FOUND = """async () => (await axe.run({resultTypes: ["violations"]})).violations.map(v => [v.id, v.nodes[0].html])"""


@pytest.fixture(scope="module")
def served(tmp_path_factory: pytest.TempPathFactory) -> Iterator[str]:
    """The demo's year, served."""
    folder: Path = tmp_path_factory.mktemp("find")
    demo.load(folder)
    server = ServerProcess(folder)
    server.start()
    yield server.url
    server.close()


@pytest.fixture
def page(browser: Any, served: str) -> Iterator[Any]:
    page = signed_in(browser, served, "desk")
    page.goto(served + "/desk/runs")
    yield page
    page.context.close()


def typed(page: Any, text: str) -> None:
    """Go to the box by its key, type, and wait for the list."""
    page.keyboard.press("/")
    page.keyboard.type(text)
    page.wait_for_selector("#find-list:not([hidden]) [role=option]")


def chosen(page: Any) -> str:
    """Return the words of the option that the box says is active; empty where none is."""
    found = page.evaluate(
        "document.getElementById(document.querySelector('#find').getAttribute('aria-activedescendant'))?.textContent"
    )
    return str(found or "")


def test_the_list_is_walked_by_keys_and_leads_to_a_page(page: Any) -> None:
    typed(page, "c-00")
    assert page.input_value("#find") == "c-00", "the slash itself is not typed"
    assert page.get_attribute("#find", "aria-expanded") == "true"
    assert chosen(page) == ""
    page.keyboard.press("ArrowDown")
    assert chosen(page).startswith("C-001")
    page.keyboard.press("ArrowDown")
    assert chosen(page).startswith("C-002")
    page.keyboard.press("ArrowUp")
    page.keyboard.press("ArrowUp")
    assert chosen(page) == ""
    page.keyboard.press("ArrowUp")
    assert chosen(page).startswith("All that answers")
    page.keyboard.press("ArrowDown")
    page.keyboard.press("ArrowDown")
    page.keyboard.press("Enter")
    page.wait_for_url(re.compile(f"/desk/vessels/{C001}"))


def test_escape_closes_the_list_and_keeps_what_was_typed(page: Any) -> None:
    typed(page, "plum")
    page.keyboard.press("Escape")
    assert page.is_hidden("#find-list")
    assert page.input_value("#find") == "plum"
    assert page.get_attribute("#find", "aria-expanded") == "false"
    page.keyboard.press("ArrowDown")
    page.wait_for_selector("#find-list:not([hidden])")
    page.keyboard.press("Tab")
    assert page.is_hidden("#find-list"), "whoever leaves the box leaves no list behind"


def test_enter_leads_to_the_vessel_or_to_all_that_answers(page: Any, served: str) -> None:
    page.keyboard.press("/")
    page.keyboard.type("c 2")
    page.keyboard.press("Enter")
    page.wait_for_url(re.compile(f"/desk/vessels/{C002}"))
    page.keyboard.press("/")
    page.keyboard.type("ostrey")
    page.keyboard.press("Enter")
    page.wait_for_url(re.compile(r"/desk/search\?q=ostrey"))
    assert page.locator("mark").first.text_content().strip() == "Ostrey"


def test_the_slash_is_typed_where_somebody_writes(page: Any, served: str) -> None:
    page.goto(served + "/desk/trace")
    box = page.locator("main input[name=q]")
    box.click()
    page.keyboard.type("12/13")
    assert box.input_value() == "12/13"


def test_it_works_without_script(browser: Any, served: str) -> None:
    page = signed_in(browser, served, "desk")
    cookies = page.context.cookies()
    page.context.close()
    context = browser.new_context(java_script_enabled=False)
    context.add_cookies(cookies)
    page = context.new_page()
    page.goto(served + "/desk/runs")
    page.fill("#find", "hesk bank")
    page.press("#find", "Enter")
    page.wait_for_url(re.compile("/desk/search"))
    page.click(".found__name >> nth=0")
    page.wait_for_url(re.compile("/desk/trace/load-"))
    context.close()


@pytest.mark.parametrize("scheme", ["light", "dark"])
@pytest.mark.parametrize("width", [1280, 390, 320])
def test_axe_finds_nothing_in_the_open_list(page: Any, scheme: str, width: int) -> None:
    page.set_viewport_size({"width": width, "height": 700})
    page.emulate_media(color_scheme=scheme)
    typed(page, "r-26")
    page.keyboard.press("ArrowDown")
    page.evaluate(AXE)
    assert page.evaluate(_FOUND) == []
    assert page.evaluate("document.documentElement.scrollWidth <= document.documentElement.clientWidth")


def test_what_takes_longer_than_its_page_comes_after_it(page: Any, served: str) -> None:
    for address in ("/desk/periods/2026-Q3", "/desk/periods/2026-Q3/close", "/desk/casks-by-year"):
        page.goto(served + address)
        page.wait_for_selector("td:has-text('±')", state="attached")
    page.route("**/desk/casks-by-year?known=1", lambda route: route.abort())
    page.goto(served + "/desk/casks-by-year")
    page.wait_for_load_state("networkidle")
    assert page.locator("td:has-text('±')").count() == 0
