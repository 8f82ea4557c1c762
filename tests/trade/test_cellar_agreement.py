"""The phone's forecasts of ferments and casks against the book's, in a real browser: to 1e-9 for sums, 1e-6 for fits.

A fit ends where its cost no longer falls: rounding may stop the two a step apart, far below what a hydrometer tells.
"""

import json
import math
import threading
from collections.abc import Iterator
from functools import partial
from http.server import ThreadingHTTPServer
from typing import Any

import pytest

from tests.trade.book_answers import answer_cellar
from tests.trade.cask_truths import warehouse
from tests.trade.ferment_truths import ending, made, of_the_demo
from tests.trade.test_browser_agreement import ROOT, QuietHandler
from webapp.trade import caskloss

pytestmark = pytest.mark.browser
IN_PAGE = """async (cases) => {
  const own = {...await import("/static/trade/ferment.js"), ...await import("/static/trade/caskloss.js")};
  const { initTrade } = await import("/static/trade/index.js");
  const { reasonOf } = await import("/static/kinds/reasons.js");
  await initTrade(async (name) => (await fetch(`/data/${name}`)).json());
  return JSON.parse(cases).map(([name, ...given]) => {
    try { return own[name](...given); } catch (reason) { return { refused: reason.what, reason: reasonOf(reason) }; }
  });
}"""


@pytest.fixture(scope="module")
def page(browser: Any) -> Iterator[Any]:
    server = ThreadingHTTPServer(("127.0.0.1", 0), partial(QuietHandler, directory=str(ROOT)))
    threading.Thread(target=server.serve_forever, daemon=True).start()
    context = browser.new_context()
    page = context.new_page()
    page.goto(f"http://127.0.0.1:{server.server_port}/page")
    yield page
    context.close()
    server.shutdown()
    server.server_close()


def both(page: Any, cases: list[tuple[Any, ...]]) -> tuple[list[Any], list[Any]]:
    ours = [answer_cellar(case) for case in cases]
    return page.evaluate(IN_PAGE, json.dumps([list(case) for case in cases])), ours


def near(phone: Any, book: Any, rel: float, where: str = "") -> None:
    if isinstance(book, dict):
        assert set(phone) == set(book), where
        for key in book:
            near(phone[key], book[key], rel, f"{where}.{key}")
    elif isinstance(book, list | tuple):
        assert len(phone) == len(book), where
        for i, (one, other) in enumerate(zip(phone, book, strict=True)):
            near(one, other, rel, f"{where}[{i}]")
    elif isinstance(book, float):
        assert math.isclose(phone, book, rel_tol=rel, abs_tol=rel), f"{where}: {phone} {book}"
    else:
        assert phone == book, where


def test_ferments_agree(page: Any) -> None:
    cases = []
    for one in [*of_the_demo(), *made(24, seed=3)]:
        cases += [("forecastEnd", one.days[:n], one.gravities[:n], one.usual_end, {"isGrain": one.is_grain})
                  for n in range(0, len(one.days) + 1)]
    for one in ending("sharp", 2, seed=3):
        cases += [("forecastEnd", one.days[:n], one.gravities[:n], one.usual_end, {"isGrain": False, "past": past})
                  for n in range(4, len(one.days) + 1, 2) for past in ([0.1, 0.1, 0.1, 0.7], [0.4, 0.4, 0.2, 0.0])]
    cases += [("forecastEnd", [0, 2, 1], [1.06, 1.05, 1.04], 1.0, {"isGrain": False}),
              ("forecastEnd", [0, 1], [1.06, 0.4], 1.0, {"isGrain": False})]
    phone, book = both(page, cases)
    assert {one["state"] for one in book if "state" in one} == {"running", "ended", "stuck", "too_little"}
    near(phone, book, 1e-6)


def test_casks_agree(page: Any) -> None:
    cases: list[tuple[Any, ...]] = []
    casks = warehouse(5)
    rates = [rate["lpa_pct_year"] for cask in casks if (rate := caskloss.loss_rates(cask.gauges)["fill"])]
    for n, cask in enumerate(casks):
        groups = [rates[: n % 9], rates[n % 7 : n % 7 + n % 4]]
        cases += [
            ("lossRates", cask.gauges), ("usualOf", groups, cask.capacity_l),
            ("judgeLoss", n - 3.0, n / 2 - 2.0, 0.3 + n / 9, 5.0, 60.0, 60.0 - n / 6),
        ]
    for drawn in (0.4, 0.0, -3.0, -150.0):  # a sample, nothing, a top-up, one above what was there
        gauges = [{"years": n, "lpa": 120.0 - 3 * n, "strength_pct": 60.0 - n / 2, "drawn_l": n and drawn}
                  for n in (0, 1, 3)]
        cases.append(("lossRates", gauges))
    cases += [("yearShare", rate) for rate in (-3.0, 0.0, 2.5, 40.0, 400.0)]
    cases += [("lossRates", [{"years": 0, "lpa": 0, "strength_pct": 60}]), ("usualOf", [[1.0]], 0)]
    near(*both(page, cases), 1e-9)
