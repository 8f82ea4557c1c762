"""Every page of the desk, in both themes and on a phone too: axe-core finds nothing, nothing foreign is loaded."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from tests.server_process import ServerProcess
from webapp import demo

pytestmark = pytest.mark.browser
AXE = (Path(__file__).parent.parent / "vendor" / "axe.min.js").read_text(encoding="utf-8")
SIZES = {"desk": {"width": 1280, "height": 800}, "phone": {"width": 390, "height": 844}}
PAGES = [
    "/desk/", "/desk/?weight=note", "/desk/entries", "/desk/vessels", "/desk/vessels/new", "/desk/runs", "/desk/labels",
    "/desk/phones", "/desk/people", "/desk/people/IM", "/desk/people/new", "/desk/settings", "/desk/limits",
    "/desk/instruments/new", "/desk/instruments", "/desk/instruments/TH-2", "/desk/periods", "/desk/periods/2026-Q3",
    "/desk/periods/2026-Q3/close", "/desk/records", "/desk/bottled", "/desk/seasons", "/desk/casks-by-year",
    "/desk/casks-by-year?month=2026-05", "/desk/trace", "/desk/trace?q=K-26-03", "/desk/trace?q=C031",
]  # fmt: skip
# Found by following the first link of that form on a page.
FOLLOWED = [
    ("/desk/", r"/desk/entries/[0-9a-f-]{36}"), ("/desk/", r"/desk/entries/[0-9a-f-]{36}/amend"),
    ("/desk/vessels?q=F3", r"/desk/vessels/F3-."), ("/desk/vessels?q=C031", r"/desk/vessels/C031-."),
    ("/desk/runs", r"/desk/runs/[0-9a-f-]{36}"), ("/desk/bottled", r"/desk/trace/[0-9a-f-]{36}"),
]  # fmt: skip


@pytest.fixture(scope="module")
def demo_server(tmp_path_factory: pytest.TempPathFactory) -> Iterator[str]:
    """The demo's year, served."""
    folder = tmp_path_factory.mktemp("demo")
    demo.load(folder)
    server = ServerProcess(folder)
    server.start()
    yield server.url
    server.close()


def signed_in(browser: Any, url: str, theme: str, size: str) -> Any:
    """Return a page signed in as the office."""
    # The policy forbids what axe is brought in by; the pages' own scripts are judged by test_no_foreign_requests.
    context = browser.new_context(
        viewport=SIZES[size], color_scheme=theme, bypass_csp=True, service_workers="block", reduced_motion="reduce"
    )
    page = context.new_page()
    page.goto(url + "/sign-in")
    page.fill("[name=code]", "OL")
    page.fill("[name=password]", "odette-demo-2025")
    page.click("button[type=submit]")
    page.wait_for_url(re.compile("/desk/"))
    return page


@pytest.mark.parametrize("theme", ["light", "dark"])
@pytest.mark.parametrize("size", ["desk", "phone"])
def test_axe_finds_nothing(browser: Any, demo_server: str, theme: str, size: str) -> None:
    page = signed_in(browser, demo_server, theme, size)
    paths = list(PAGES)
    for source, pattern in FOLLOWED:
        page.goto(demo_server + source)
        paths.append(re.findall(pattern + r'(?=")', page.content())[0])
    wrong: list[str] = []
    for path in paths:
        page.goto(demo_server + path)
        page.evaluate(AXE)
        found = page.evaluate("async () => (await axe.run()).violations.map(v => [v.id, v.nodes[0].html])")
        wrong += [f"{path}: {rule} {html}" for rule, html in found]
        wide = page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth")
        if wide > 0:
            wrong.append(f"{path}: {wide} px wider than the screen")
    page.context.close()
    assert not wrong, "\n".join(wrong)


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
