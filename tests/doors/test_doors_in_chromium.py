"""The demo's front in a real browser: the signal cut and put back, every page judged by axe-core, and the words."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path
from shutil import copytree
from typing import Any

import pytest

from tests.doors.served import Demo
from webapp.book.opening import open_book
from webapp.book.record import log

pytestmark = pytest.mark.browser
AXE = (Path(__file__).parent.parent / "vendor" / "axe.min.js").read_text("utf-8")
_FOUND = """async () => (await axe.run({
  runOnly: ["wcag2a", "wcag2aa", "wcag21aa", "wcag22aa", "best-practice"], resultTypes: ["violations"],
})).violations.map((one) => [one.id, one.nodes.map((node) => node.html)])"""
SIZES = [(390, 844), (844, 390), (320, 568), (1440, 900)]
AXE_AT = (390, 1440)  # the others are the same marks in other places
WAITING = """async () => (await (await import("/static/slate/queue.js")).waiting()).length"""


@pytest.fixture(scope="module")
def served(laid: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Demo]:
    folder = tmp_path_factory.mktemp("served") / "demo"
    copytree(laid, folder)
    demo = Demo(folder)
    yield demo
    demo.close()


@pytest.fixture
def context(browser: Any) -> Iterator[Any]:
    made = browser.new_context(viewport={"width": 390, "height": 844}, has_touch=True)
    made.set_default_timeout(45_000)
    yield made
    made.close()


def test_the_printed_address_is_the_front(served: Demo, context: Any) -> None:
    printed = re.search(r"Address: (\S+)", served.said.read_text())
    assert printed
    page = context.new_page()
    page.goto(printed[1])
    assert page.locator("h2").first.inner_text() == "The desk"
    # Whoever types the bare address comes there too.
    page.goto(served.url)
    assert page.url == f"{served.url}/demo/"


def test_a_reading_waits_while_the_signal_is_cut_and_goes_in_when_it_is_back(served: Demo, context: Any) -> None:
    from playwright.sync_api import expect

    page = context.new_page()
    faults: list[str] = []
    page.on("pageerror", lambda error: faults.append(str(error)))
    page.goto(served.url)
    proposed = re.search(r"type (\S+) and (\S+), and log it", page.inner_text("main"))
    assert proposed
    page.click("form[action$='/reading'] button")
    page.wait_for_url(re.compile("/log/ferment_reading$"))
    page.wait_for_selector("form[data-ready]")
    page.locator("[name=temp]").fill(proposed[1])
    page.locator("[name=gravity]").fill(proposed[2])
    page.click("[data-part=log]")
    page.wait_for_url(re.compile(r"/m/F4-6$"))
    assert page.evaluate(WAITING) == 1
    page.goto(served.url + "/slate")
    expect(page.locator("[data-part=signal]")).to_have_text("no signal")
    with open_book(served.folder / "book.sqlite") as book:
        before = len(log.find_entries(book, kind="ferment_reading", limit=500))
    page.goto(served.url + "/demo/")
    assert "The signal is cut" in page.inner_text("main")
    page.click("text=Put the signal back")
    page.goto(served.url + "/slate")
    expect(page.locator(".way__lead")).to_have_text("All in the book.")
    with open_book(served.folder / "book.sqlite") as book:
        found = log.find_entries(book, kind="ferment_reading", limit=500)
        assert len(found) == before + 1
        assert max(found, key=lambda row: row["book_no"])["person"] == "NS"
    assert faults == []


def test_a_phone_opens_in_the_hand_of_the_person_named_and_works_alone(served: Demo, context: Any) -> None:
    page = context.new_page()
    page.goto(served.url + "/demo/")
    page.click("text=Open a phone here")
    page.wait_for_url(re.compile("/today$"))
    who = page.evaluate("""async () => (await (await import("/static/slate/who.js")).current()).name""")
    assert who == "Bram T."
    assert page.evaluate("Boolean(navigator.serviceWorker.controller)") or page.evaluate(
        "navigator.serviceWorker.ready.then((one) => Boolean(one.active))"
    )
    # Tapped again it is the same phone, in another hand where the thing to try says so.
    page.goto(served.url + "/demo/")
    page.click("form[action$='/run'] button")
    page.wait_for_url(re.compile(r"/m/S1-Y/run$"))


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_axe_finds_nothing_and_nothing_runs_over_the_edge(served: Demo, browser: Any, theme: str) -> None:
    context = browser.new_context(bypass_csp=True, service_workers="block", color_scheme=theme, reduced_motion="reduce")
    page = context.new_page()
    foreign: list[str] = []
    page.on("request", lambda request: None if request.url.startswith(served.url) else foreign.append(request.url))
    wrong = []
    for path in ("/demo/", "/demo/labels", "/demo/join"):
        for width, height in SIZES:
            page.set_viewport_size({"width": width, "height": height})
            page.goto(served.url + path)
            if width in AXE_AT:
                page.evaluate(AXE)
                wrong += [(path, width, *one) for one in page.evaluate(_FOUND)]
            assert page.evaluate("document.documentElement.scrollWidth") <= width, (path, width)
            small = page.evaluate("""() => [...document.querySelectorAll("button, a.button")]
                .filter((one) => one.checkVisibility() && one.getBoundingClientRect().height < 48)
                .map((one) => one.innerText)""")
            assert small == [], (path, width)
    context.close()
    assert wrong == []
    assert foreign == []


def test_every_door_is_reached_and_opened_by_the_keyboard(served: Demo, browser: Any) -> None:
    context = browser.new_context(viewport={"width": 1440, "height": 900})
    page = context.new_page()
    page.goto(served.url + "/demo/")
    reached = []
    for _ in range(24):
        page.keyboard.press("Tab")
        reached.append(page.evaluate("document.activeElement.innerText.trim().split('\\n')[0]"))
    wanted = ["Sit down at the desk", "Open a phone here", "Log without signal", "Take a sheet in"]
    assert [one for one in wanted if one not in reached] == []
    page.goto(served.url + "/demo/")
    page.focus("text=Sit down at the desk")
    page.keyboard.press("Enter")
    page.wait_for_url(re.compile("/desk/"))
    context.close()


def test_a_phone_that_is_not_let_in_says_so_and_not_that_there_is_no_signal(served: Demo, context: Any) -> None:
    from playwright.sync_api import expect

    page = context.new_page()
    page.goto(served.url + "/today")
    expect(page.locator(".head .pill")).to_have_text("not let in")
    expect(page.locator("main")).to_contain_text("The book does not know this phone yet.")
    expect(page.locator("main a", has_text="Let this phone in")).to_be_visible()
