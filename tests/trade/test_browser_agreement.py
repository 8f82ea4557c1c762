"""The phone's sums against the book's: the same figures to 1e-9, the same refusals, in a real browser.

Each case is a function with its arguments. The book computes all of them, the page computes all of them, and the
two lists are compared: a figure with a figure, a refusal with a refusal of the same input in the same words.
"""

import json
import math
import threading
from collections.abc import Iterator
from functools import partial
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from typing import Any

import pytest

from tests.trade.agreement_cases import FAMILIES, LATER_MODULES, PAIRS
from tests.trade.book_answers import STILL_PAIRS, answer_sum
from webapp.trade import sums
from webapp.trade.datafiles import DATA_FOLDER

pytestmark = pytest.mark.browser
ROOT = Path(__file__).parents[2]
AGREEMENT = 1e-9


# JSON has no NaN and no infinity; they travel as names.
TO_PAGE = {"nan": "NaN", "inf": "Infinity", "-inf": "-Infinity"}


def for_page(value: Any) -> Any:
    if isinstance(value, float) and not math.isfinite(value):
        return {"odd": TO_PAGE[str(value)]}
    if isinstance(value, list | tuple):
        return [for_page(x) for x in value]
    if isinstance(value, dict):
        return {k: for_page(v) for k, v in value.items()}
    return value


IN_PAGE = """async ([cases, beside]) => {
  const trade = { ...(await import("/static/trade/index.js")) };
  for (const name of beside) Object.assign(trade, await import(`/static/trade/${name}`));
  const { reasonOf } = await import("/static/kinds/reasons.js");
  await trade.initTrade(async (name) => (await fetch(`/data/${name}`)).json());
  const { loadLater } = await import("/static/trade/datafiles.js");
  await Promise.all(["table1", "instruments"].map(loadLater));
  const revive = (x) => x && typeof x === "object"
    ? ("odd" in x ? Number(x.odd) : Array.isArray(x) ? x.map(revive)
      : Object.fromEntries(Object.entries(x).map(([k, v]) => [k, revive(v)]))) : x;
  return JSON.stringify(JSON.parse(cases).map(([name, ...given]) => {
    try {
      const found = trade[name](...given.map(revive));
      return Number.isNaN(found) ? "NaN" : found;
    } catch (reason) {
      if (reason instanceof trade.OutOfDomain) return { refused: reason.what, reason: reasonOf(reason) };
      if (reason instanceof trade.NotANumber) return { reason: reasonOf(reason) };
      return { broken: String(reason) };
    }
  }));
}"""


class QuietHandler(SimpleHTTPRequestHandler):
    """Serves static/ and the tables; the page itself is empty."""

    extensions_map = SimpleHTTPRequestHandler.extensions_map | {".js": "text/javascript"}

    def do_GET(self) -> None:
        if self.path == "/":
            self.send_response(200)
            self.send_header("Content-Type", "text/html")
            self.end_headers()
            self.wfile.write(b"<!doctype html><title>sums</title>")
        else:
            super().do_GET()

    def translate_path(self, path: str) -> str:
        if path.startswith("/data/"):
            return str(DATA_FOLDER / Path(path).name)
        return super().translate_path(path)

    def log_message(self, format: str, *args: object) -> None:
        pass


@pytest.fixture(scope="module")
def page(browser: Any) -> Iterator[Any]:
    with ThreadingHTTPServer(("127.0.0.1", 0), partial(QuietHandler, directory=str(ROOT))) as server:
        thread = threading.Thread(target=server.serve_forever)
        thread.start()
        context = browser.new_context()
        page = context.new_page()
        page.goto(f"http://127.0.0.1:{server.server_address[1]}/")
        yield page
        context.close()
        server.shutdown()
        thread.join()


def agrees(book: Any, phone: Any) -> bool:
    if isinstance(book, float) and isinstance(phone, int | float):
        return book == phone or math.isclose(book, phone, rel_tol=AGREEMENT, abs_tol=1e-12)
    if isinstance(book, tuple) and isinstance(phone, list):
        return len(book) == len(phone) and all(map(agrees, book, phone))
    return bool(book == phone)


@pytest.mark.parametrize("family", FAMILIES)
def test_phone_and_book_agree(page: Any, family: str) -> None:
    cases = list(FAMILIES[family]())
    book = [answer_sum(case) for case in cases]
    phone = json.loads(page.evaluate(IN_PAGE, [json.dumps(for_page(cases)), LATER_MODULES]))
    differ = [(c, b, p) for c, b, p in zip(cases, book, phone, strict=True) if not agrees(b, p)]
    assert not differ, f"{len(differ)} of {len(cases)} differ, such as {differ[:5]}"
    figures = sum(isinstance(x, float | int | str) for x in book)
    refusals = sum(isinstance(x, dict) for x in book)
    worst = max(
        (abs(b - p) / abs(b) for b, p in zip(book, phone, strict=True) if isinstance(b, float) and b), default=0.0
    )
    print(f"{family}: {figures} figures, {refusals} refusals, at most {worst:.1e} apart")
    assert figures > 100
    assert refusals > 5


OF_TASTINGS = ("webapp.trade.sensory", "webapp.trade.ranking")  # a tasting is opened at the desk


def test_every_public_function_of_the_book_is_compared(page: Any) -> None:
    from tests.trade.test_docstrings import FUNCTIONS

    # Worked out in the book alone; a card brings what they give.
    server_only = {"load_data", "learn_prior", "lacks_of", "strength_by_attenuation_1880", "vapour_offset_c",
                   "tell_shape", "weigh_past", "label_low_pct", "label_high_pct", "forecast_cask", "share_lost",
                   *(f.__name__ for f in FUNCTIONS if f.__module__ in OF_TASTINGS),
                   # of a laboratory's paper
                   "per_pure_alcohol", "usual_spread_pct", "verdict_at_least", "verdict_at_most",
                   "methanol_by_volume", "per_litre"}
    pots = {"charge_pot"}  # inside every forecast of a cut
    of_cellar = {"forecast_end", "loss_rates", "usual_of", "judge_loss", "year_share"}  # test_cellar_agreement.py
    compared_here = {f.__name__ for f in PAIRS.values()}
    compared_there = {f.__name__ for f in STILL_PAIRS.values()}
    # The sums of uncertainty are held against each other entry by entry: tests/kinds/test_uncertainty.py.
    own = [f for f in FUNCTIONS if f.__module__ not in ("webapp.trade.uncertainty", "webapp.trade.error_limits")]
    assert {f.__name__ for f in own} - server_only - pots == compared_here | compared_there | of_cellar
    compared = {name for cases in FAMILIES.values() for name, *_ in cases()}
    assert compared == set(PAIRS)


def test_the_two_registries_of_sums_are_the_same(page: Any) -> None:
    phone = page.evaluate(
        """async () => {
          const { SUMS, INPUT_UNITS } = await import("/static/trade/index.js");
          return { sums: Object.values(SUMS).map((s) => [s.name, s.inputs, s.unit, s.decimals]), INPUT_UNITS };
        }"""
    )
    assert phone["sums"] == [[s.name, list(s.inputs), s.unit, s.decimals] for s in sums.SUMS.values()]
    assert phone["INPUT_UNITS"] == sums.INPUT_UNITS


def test_before_the_tables_are_there_the_sums_say_so(page: Any) -> None:
    # A module read under another address is a module of its own, with nothing loaded.
    page.reload()
    said = page.evaluate(
        """async () => {
          const trade = await import("/static/trade/index.js");
          const said = [];
          const ask = (f) => { try { said.push(String(f())); } catch (reason) { said.push(reason.message); } };
          ask(() => trade.strengthFromProof(100));
          await trade.initTrade(async (name) => (await fetch(`/data/${name}`)).json());
          ask(() => trade.hasTable1());
          ask(() => trade.trueProof(100, 60));
          await trade.loadTable1();
          ask(() => trade.trueProof(100, 60));
          return said;
        }"""
    )
    assert said == ["initTrade comes first", "false", "loadTable1 comes first", "100"]
