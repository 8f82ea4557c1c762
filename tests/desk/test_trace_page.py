"""The trace page: pictures with a twin in words, files, the search, and nothing that axe would find."""

from __future__ import annotations

import csv
import io
import re
import threading
from pathlib import Path
from typing import Any
from xml.etree import ElementTree

import pytest
from werkzeug.serving import make_server

from tests.desk.conftest import F1, PASSWORD, House, token
from tests.desk.trace_world import C1, GROWERS, S1, T2, tell
from webapp.desk.trace.picture import percent

AXE = Path(__file__).parents[1] / "vendor" / "axe.min.js"
SIZES = {"phone": {"width": 390, "height": 844}, "wide": {"width": 1280, "height": 900}}
_AXE = """async () => (await axe.run({ runOnly: ["wcag2a", "wcag2aa", "wcag21aa", "wcag22aa", "best-practice"] }))
  .violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.html.slice(0, 200)).join(" | ")}`)"""


@pytest.fixture
def told(house: House) -> dict[str, str]:
    return tell(house)


def test_a_bottling_is_shown_back_to_the_growers(house: House, told: dict[str, str]) -> None:
    page = house.client("NS").get(f"/desk/trace/{told['bottled']}").text
    words = page.split('<ul class="lineage-list">')[1]
    for shown in ("Vats", "Casks", "Runs", "R-25-01", "R-25-02", "Ferments", *GROWERS, "before this book began", C1):
        assert shown in words, shown
    assert "style=" not in page
    assert page.count("<svg class=\"lineage") == 2, "one to lie, one to stand"
    for svg in re.findall(r'<svg class="lineage.*?</svg>', page, re.DOTALL):
        ElementTree.fromstring(svg)


def test_the_loads_shares_of_a_bottling_add_up_with_the_opening_stock(house: House, told: dict[str, str]) -> None:
    made = house.client("NS").get(f"/desk/trace/{told['bottled']}.json").json
    leaves = made["back"]["leaves"]
    assert set(leaves) == {f"i:{told[name]}" for name in ("one", "two", "three")} | {f"o:{told['opening']}"}
    assert sum(leaves.values()) == pytest.approx(1.0)
    # 840 kg and 420 kg lay in the one fermenter
    assert leaves[f"i:{told['one']}"] == pytest.approx(2 * leaves[f"i:{told['two']}"])


def test_the_recall_list_of_a_load_names_cases(house: House, told: dict[str, str]) -> None:
    client = house.client("NS")
    page = client.get(f"/desk/trace/load-{told['one']}").text
    assert "In these bottles" in page
    assert "101 to 173, odd 174R" in page
    answer = client.get(f"/desk/trace/load-{told['one']}.csv")
    assert "attachment" in answer.headers["Content-Disposition"]
    rows = list(csv.DictReader(io.StringIO(answer.text.lstrip("\ufeff"))))
    bottled = next(row for row in rows if row["sort"] == "bottling")
    assert (bottled["case_from"], bottled["case_to"], bottled["odd_case"], bottled["lot_mark"]) == (
        "101", "173", "174R", "L2603",
    )
    back = client.get(f"/desk/trace/{told['bottled']}.json").json["back"]["leaves"][f"i:{told['one']}"]
    assert float(bottled["share_pct"]) == pytest.approx(100 * back, abs=1e-4)
    assert {row["name"] for row in rows} >= {"kept by the wood", "not accounted"}


@pytest.mark.parametrize("text", ["K-26-03", "k-26-03", "L2603", "150", "174R"])
def test_a_batch_a_lot_mark_or_a_case_leads_to_its_bottling(house: House, told: dict[str, str], text: str) -> None:
    answer = house.client("NS").get(f"/desk/trace?q={text}")
    found = answer.headers.get("Location", "") if answer.status_code == 302 else answer.text
    assert f"/desk/trace/{told['bottled']}" in found


def test_marks_runs_and_deliveries_are_found(house: House, told: dict[str, str]) -> None:
    client = house.client("NS")
    assert client.get(f"/desk/trace?q={C1.lower()}").headers["Location"].endswith(told["cask1"])
    assert client.get("/desk/trace?q=R-25-02").headers["Location"].endswith(told["run2"])
    both = client.get("/desk/trace?q=ostrey").text
    assert f"load-{told['one']}" in both
    assert f"load-{told['three']}" in both
    for nothing in ("999", "no such thing", "%", "<script>alert(1)</script>"):
        page = client.get("/desk/trace", query_string={"q": nothing}).text
        assert "nothing by that name" in page, nothing
        assert "<script>alert" not in page
    assert client.get("/desk/trace/nothing").status_code == 404
    assert client.get("/desk/trace/nothing.json").status_code == 404


def test_vessels_runs_and_entries_lead_to_their_trace(house: House, told: dict[str, str]) -> None:
    client = house.client("NS")
    assert f"/desk/trace/{T2}" in client.get(f"/desk/vessels/{T2}").text
    assert client.get(f"/desk/trace/{T2}").status_code == 200, "a vessel that is empty now: its last fill"
    assert f"/desk/trace/{told['run1']}" in client.get(f"/desk/runs/{told['run1']}").text
    assert f"/desk/trace/load-{told['one']}" in client.get(f"/desk/entries/{told['one']}").text
    assert f"/desk/trace/{told['bottled']}" in client.get(f"/desk/entries/{told['bottled']}").text
    for mark in (F1, S1):
        assert client.get(f"/desk/trace/{mark}").status_code == 200
    assert house.app.test_client().get(f"/desk/trace/{T2}").status_code == 302, "not without signing in"


def test_a_struck_load_leaves_the_trace(house: House, told: dict[str, str]) -> None:
    client = house.client("IM")
    data = {"verdict": "struck", "reason": "wrong ticket", "query": "", "csrf_token": token(client, "/desk/")}
    assert client.post(f"/desk/entries/{told['two']}/answer", data=data).status_code == 302
    page = client.get(f"/desk/trace/{told['bottled']}").text
    assert GROWERS[1] not in page
    assert GROWERS[0] in page
    assert client.get(f"/desk/trace/load-{told['two']}").status_code == 404


def test_hostile_names_stay_text_in_the_picture(house: House) -> None:
    evil = '<script>alert("x")</script>"'
    house.log("fruit_intake", F1, -60, gross=("900", "kg"), tare=("60", "kg"), material="plum", grower_lot=evil,
              temp=("14", "degC"), rot=("1", "pct"))
    page = house.client("NS").get(f"/desk/trace/{F1}").text
    assert "alert(" in page
    assert "<script>alert" not in page


@pytest.mark.parametrize(
    ("share", "words"),
    [(100, "100 %"), (99.96, "100 %"), (99.9, "100 %"), (54.3, "54 %"), (9.96, "10 %"), (9.94, "9.9 %"),
     (0.14, "0.1 %"), (0.05, "under 0.1 %")],
)
def test_shares_are_said_in_two_figures_and_never_as_nothing(share: float, words: str) -> None:
    assert percent(share) == words


@pytest.fixture
def served(house: House, told: dict[str, str], monkeypatch: pytest.MonkeyPatch) -> Any:
    """The house on a port of its own, in this process."""
    server = make_server("127.0.0.1", 0, house.app, threaded=True)
    thread = threading.Thread(target=server.serve_forever)
    thread.start()
    yield f"http://127.0.0.1:{server.server_port}", told
    server.shutdown()
    thread.join()
    server.server_close()


@pytest.mark.browser
def test_axe_finds_nothing_and_nothing_stands_out_of_the_page(served: Any, browser: Any, tmp_path: Path) -> None:
    url, told = served
    for size, theme in ((size, theme) for size in SIZES for theme in ("light", "dark")):
        # axe is put into the page by the test, which the page's own policy rightly forbids.
        context = browser.new_context(viewport=SIZES[size], color_scheme=theme, bypass_csp=True)
        page = context.new_page()
        page.goto(f"{url}/sign-in")
        page.fill("[name=code]", "NS")
        page.fill("[name=password]", PASSWORD)
        page.locator("form button[type=submit]").first.click()
        page.wait_for_load_state()
        page.evaluate(f"document.documentElement.dataset.theme = '{theme}'")
        for key in (told["bottled"], f"load-{told['one']}", told["run2"], "?q=ostrey"):
            page.goto(f"{url}/desk/trace{key}" if key.startswith("?") else f"{url}/desk/trace/{key}")
            page.evaluate(f"document.documentElement.dataset.theme = '{theme}'")
            if not key.startswith("?"):
                assert page.locator("svg.lineage:visible").count() >= 1
                drawn = page.locator("svg.lineage:visible").first.get_attribute("class")
                assert ("tall" if size == "phone" else "wide") in str(drawn)
            page.add_script_tag(path=AXE)
            assert page.evaluate(_AXE) == [], (key, size, theme)
            too_wide = page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth")
            assert too_wide <= 0, (key, size)
            page.screenshot(path=tmp_path / f"{key[:12].strip('?')}-{size}-{theme}.png", full_page=True)
        context.close()
