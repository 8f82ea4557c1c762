"""Every page of the desk, in both themes and on a phone too: axe-core finds nothing, nothing foreign is loaded."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from tests.server_process import ServerProcess
from webapp import demo
from webapp.trade.marks import make_mark

pytestmark = pytest.mark.browser
AXE = (Path(__file__).parent.parent / "vendor" / "axe.min.js").read_text(encoding="utf-8")
_FOUND = """async (rules) => (await axe.run({...rules, resultTypes: ["violations"]}))
  .violations.map(v => [v.id, v.nodes[0].html])"""
SIZES = {"desk": {"width": 1280, "height": 800}, "phone": {"width": 390, "height": 844}}
PAGES = [
    "/desk/", "/desk/queries", "/desk/queries?weight=note", "/desk/entries", "/desk/vessels", "/desk/vessels/new",
    "/desk/runs", "/desk/labels",
    "/desk/address", "/desk/parties", "/desk/parties/edit",
    "/desk/phones", "/desk/access", "/desk/people", "/desk/people/IM", "/desk/people/new", "/desk/settings",
    "/desk/you", "/again",
    "/desk/limits",
    "/desk/instruments/new", "/desk/instruments", "/desk/instruments/TH-2", "/desk/periods", "/desk/periods/2026-Q3",
    "/desk/periods/2026-Q3/close", "/desk/periods/2026-Q3/held", "/desk/records", "/desk/bottled",
    "/desk/seasons", "/desk/casks-by-year",
    "/desk/casks-by-year?month=2026-05", "/desk/trace", "/desk/trace?q=K-26-03", "/desk/trace?q=C031",
    "/desk/runs/yields", "/desk/runs/feints", "/desk/runs/plans", "/desk/runs/beside",
    "/desk/blending", "/desk/blending/plan?what=plum", "/desk/bottlings?batch=K-26-03",
    "/desk/blending/plan?solve=1&what=plum&strength=43&volume=400&within=3&youngest=2&soak=5.5&aim=fewest"
    f"&use={make_mark('C020')}&use={make_mark('C022')}&use={make_mark('C034')}",
    "/desk/cellar", "/desk/cellar/casks", "/desk/cellar/map", "/desk/cellar/ready",
    "/desk/cellar/house", "/desk/sheets", "/desk/certificates",
    "/desk/tastings", "/desk/tastings/new", "/desk/tastings/T-26-01", "/desk/tastings/T-26-02",
    "/desk/search", "/desk/search?q=plum", "/desk/search?q=c&in=vessel", "/desk/search?q=ostery",
]
# Found by following the first link of that form on a page.
FOLLOWED = [
    ("/desk/queries", r"/desk/entries/[0-9a-f-]{36}"), ("/desk/queries", r"/desk/entries/[0-9a-f-]{36}/amend"),
    ("/desk/vessels?q=F3", r"/desk/vessels/F3-."), ("/desk/vessels?q=C031", r"/desk/vessels/C031-."),
    ("/desk/runs", r"/desk/runs/[0-9a-f-]{36}"), ("/desk/bottled", r"/desk/trace/[0-9a-f-]{36}"),
    ("/desk/cellar", r"/desk/cellar/ferments/[0-9a-f-]{36}"),
    ("/desk/cellar/casks", r"/desk/cellar/casks/C0[0-9A-Z-]+"),
]


@pytest.fixture(scope="module")
def demo_server(tmp_path_factory: pytest.TempPathFactory) -> Iterator[str]:
    """The demo's year, served."""
    folder = tmp_path_factory.mktemp("demo")
    demo.load(folder)
    server = ServerProcess(folder)
    server.start()
    yield server.url
    server.close()


def signed_in(browser: Any, url: str, size: str) -> Any:
    """Return a page signed in as the office."""
    # The policy forbids what axe is brought in by; the pages' own scripts are judged by test_no_foreign_requests.
    context = browser.new_context(
        viewport=SIZES[size], bypass_csp=True, service_workers="block", reduced_motion="reduce"
    )
    page = context.new_page()
    page.goto(url + "/sign-in")
    page.fill("[name=code]", "OL")
    page.fill("[name=password]", "odette-demo-2025")
    page.click("button[type=submit]")
    page.wait_for_url(re.compile("/desk/"))
    return page


@pytest.fixture(scope="module", params=list(SIZES))
def page(request: pytest.FixtureRequest, browser: Any, demo_server: str) -> Iterator[Any]:
    """A page of each size, signed in."""
    page = signed_in(browser, demo_server, request.param)
    yield page
    page.context.close()


def _is_sound(page: Any, url: str) -> None:
    """By day with every rule, then the same page by night: nothing but its colours changes."""
    wrong: list[str] = []
    grounds = set()
    page.emulate_media(color_scheme="light")
    page.goto(url)
    page.evaluate(AXE)
    for theme, rules in (("light", {}), ("dark", {"runOnly": ["color-contrast"]})):
        page.emulate_media(color_scheme=theme)
        grounds.add(page.evaluate("getComputedStyle(document.documentElement).backgroundColor"))
        wrong += [f"{theme}: {rule} {html}" for rule, html in page.evaluate(_FOUND, rules)]
    wide = page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth")
    assert not wrong, "\n".join(wrong)
    assert wide <= 0, f"{wide} px wider than the screen"
    assert len(grounds) == 2, "one by day, one by night"


@pytest.mark.parametrize("path", PAGES)
def test_axe_finds_nothing(page: Any, demo_server: str, path: str) -> None:
    _is_sound(page, demo_server + path)


@pytest.mark.parametrize(("source", "pattern"), FOLLOWED)
def test_axe_finds_nothing_one_link_on(page: Any, demo_server: str, source: str, pattern: str) -> None:
    page.goto(demo_server + source)
    _is_sound(page, demo_server + re.findall(pattern + r'(?=")', page.content())[0])


def test_the_desk_loads_nothing_foreign_and_breaks_no_policy(browser: Any, demo_server: str) -> None:
    context = browser.new_context(viewport=SIZES["desk"], service_workers="block")
    page = context.new_page()
    said: list[str] = []
    page.on("console", lambda message: said.append(message.text) if message.type in ("error", "warning") else None)
    page.on("pageerror", lambda error: said.append(str(error)))
    page.on("request", lambda request: said.append(request.url) if not request.url.startswith(demo_server) else None)
    page.goto(demo_server + "/sign-in")
    page.fill("[name=code]", "OL")
    page.fill("[name=password]", "odette-demo-2025")
    page.click("button[type=submit]")
    for path in PAGES:
        page.goto(demo_server + path)
    page.goto(demo_server + "/desk/runs")
    page.click("tbody th a")
    page.locator(".chart canvas").wait_for()
    context.close()
    assert not said
