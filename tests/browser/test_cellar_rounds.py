"""The cellar without signal, the server stopped: rounds of ten tanks and of casks, what is due, a cask's card."""

from __future__ import annotations

import re
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from tests.browser.floor_house import Floor, open_floor
from tests.browser.offline_world import bring_cards, wait_for
from webapp.book.house import registry
from webapp.book.intake import hand_in
from webapp.book.opening import open_book
from webapp.book.record.store import Book
from webapp.trade.marks import make_mark

pytestmark = pytest.mark.browser
AXE = (Path(__file__).parent.parent / "vendor" / "axe.min.js").read_text(encoding="utf-8")
TANKS = [f"F{n}" for n in range(11, 21)]
CASKS = [f"C1{n:02d}" for n in range(1, 7)]
_numbers = iter(range(1, 100_000))


def _entry(kind: str, mark: str, at: datetime, **values: tuple[str, ...]) -> dict[str, Any]:
    seq = next(_numbers)
    made = {name: dict(zip(("raw", "unit"), pair, strict=False)) for name, pair in values.items()}
    return {"id": f"01930000-0000-7000-8000-{seq:012x}", "kind": kind, "kind_version": 1, "mark": mark,
            "mark_by": "scanned", "read_at": at.isoformat(timespec="seconds"),
            "typed_at": at.isoformat(timespec="seconds"), "person": "NS", "device": "d-told", "seq": seq,
            "values": made}


def _tell(book: Book, *entries: dict[str, Any]) -> None:
    for one in sorted(entries, key=lambda one: one["read_at"]):
        at = datetime.fromisoformat(one["read_at"]) + timedelta(minutes=1)
        answer = hand_in(book, {"now": at.isoformat(), "device": "d-told", "entries": [one]}, via="phone", now=at)
        assert answer["results"][0]["settled"] in ("entered", "queried"), answer


def fill(book: Book) -> None:
    """Ten tanks a few days into their ferments, and six casks gauged two years and one year ago."""
    now = datetime.now(UTC).replace(microsecond=0)
    entries = []
    for base in TANKS:
        mark, set_at = make_mark(base), now - timedelta(days=5)
        registry.put_vessel(book, {"mark": mark, "sort": "fermenter", "place": "FERM", "capacity_l": 2000.0}, by="MD")
        load = {"gross": ("1700", "kg"), "tare": ("60", "kg"), "material": ("plum",), "grower_lot": ("G4",),
                "temp": ("14", "degC"), "rot": ("1", "pct"), "sugar": ("16", "Bx")}
        entries.append(_entry("fruit_intake", mark, set_at, **load))
        entries += [_entry("ferment_reading", mark, set_at + timedelta(days=day, hours=1), temp=("16.0", "degC"),
                           gravity=(gravity, "SG"))
                    for day, gravity in enumerate(("1.064", "1.061", "1.056", "1.049"))]
    for n, base in enumerate(CASKS):
        mark, filled = make_mark(base), now - timedelta(days=730 - n)
        row = {"mark": mark, "sort": "cask", "place": f"CELL-A{n + 1}", "capacity_l": 225.0, "tare_kg": 50.0}
        registry.put_vessel(book, row | {"size_class": "225 L", "wood": "oak", "use": "used"}, by="MD")
        entries += [
            _entry("gauge", mark, filled, net_weight=("190.0", "kg"), strength=("61.0", "pct_vol"), temp=("12", "degC"),
                   purpose=("opening",), what=("plum",)),
            _entry("cask_regauge", mark, filled + timedelta(days=365), gross=(f"{235.4 - n / 5:.1f}", "kg"),
                   strength=("60.5", "pct_vol"), temp=("12", "degC"), condition=("tight",)),
        ]
    _tell(book, *entries)
    registry.set_site(book, {"tasting": {"words": ["plum stone", "vanilla"], "scores": ["fruit", "depth"]}}, by="MD")


@pytest.fixture(scope="module")
def cellar(
    tmp_path_factory: pytest.TempPathFactory, playwright: Any, browser_options: dict[str, Any]
) -> Iterator[Floor]:
    with open_floor(tmp_path_factory.mktemp("cellar"), playwright, browser_options) as floor:
        with open_book(floor.world.book_path) as book:
            fill(book)
        bring_cards(floor.page)
        floor.world.server.stop()
        yield floor
        assert floor.faults == []


def _ready(floor: Floor, mark: str) -> Any:
    form = floor.page.locator(f"form[data-ready='{mark}']")
    form.wait_for()
    return form


def _no_axe(page: Any) -> None:
    """Run axe over the debugger: the page's own policy lets no script in."""
    client = page.context.new_cdp_session(page)
    client.send("Runtime.evaluate", {"expression": AXE})
    run = "axe.run().then(r => JSON.stringify(r.violations.map(v => [v.id, v.nodes[0].html])))"
    answer = client.send("Runtime.evaluate", {"awaitPromise": True, "returnByValue": True, "expression": run})
    assert answer["result"]["value"] == "[]"


def test_ten_tanks_in_a_row_without_going_back(cellar: Floor) -> None:
    page = cellar.open("/job/ferments")
    seen = []
    for n, base in enumerate(TANKS):
        form = _ready(cellar, make_mark(base))
        seen.append(page.locator(".head__mark").inner_text())
        assert f"{n} of 10 done" in page.locator(".head__about").inner_text()
        form.locator("[name=temp]").fill("17,0")
        form.locator("[name=gravity]").fill("1.041")
        if n == 0:
            assert "Ends about" in page.locator("[data-part='round-aside']").inner_text()
            _no_axe(page)
        page.get_by_role("button", name="Log it, next").click()
    page.get_by_text("All 10 tanks are done.").wait_for()
    assert seen == TANKS
    logged = [entry for entry in cellar.entries() if entry["kind"] == "ferment_reading"]
    assert [entry["mark"] for entry in logged] == [make_mark(base) for base in TANKS]
    assert logged[0]["values"] == {"temp": {"raw": "17,0", "unit": "degC"}, "gravity": {"raw": "1.041", "unit": "SG"}}


def test_a_tank_out_of_turn_and_a_second_look(cellar: Floor) -> None:
    page = cellar.open("/job/ferments")
    page.get_by_text("All 10 tanks are done.").wait_for()
    page.get_by_role("button", name="Begin a new round").last.click()
    _ready(cellar, make_mark("F11"))
    page.get_by_role("button", name="Skip").click()
    form = _ready(cellar, make_mark("F12"))
    page.locator("summary", has_text="Another tank").click()
    page.locator("[data-part='round-list'] button", has_text="F15").click()
    form = _ready(cellar, make_mark("F15"))
    form.locator("[name=temp]").fill("16.5")
    form.locator("[name=gravity]").fill("1.050")  # above the 1.041 that waits on the slate
    before = len(cellar.entries())
    # On a slow day the question is there first, and the button names the figure.
    page.get_by_role("button", name=re.compile("^Log (it, next|1.050 )")).click()
    page.get_by_text("can only fall").wait_for()
    assert len(cellar.entries()) == before
    page.get_by_role("button", name="Keep as read").click()
    page.get_by_role("button", name="Log it, next").click()
    _ready(cellar, make_mark("F16"))
    assert len(cellar.entries()) == before + 1


def test_casks_in_the_dark_with_their_loss_at_once(cellar: Floor) -> None:
    page = cellar.open("/job/casks")
    for n, base in enumerate(CASKS):
        form = _ready(cellar, make_mark(base))
        assert f"last {235.4 - n / 5:.1f} kg, " in form.locator("[data-field=gross] .field__last").inner_text()
        form.locator("[name=gross]").fill(f"{231.2 - n / 5:.1f}")
        form.locator("[name=glass]").fill("57.1")
        form.locator("[name=temp]").fill("12.0")
        said = page.locator("[data-loss]").inner_text()
        assert "% a year; casks like it" in said and "LPA now" in said
        form.locator("label", has_text="tight").first.click()
        if n == 0:
            _no_axe(page)
        page.get_by_role("button", name="Log it, next").click()
    page.get_by_text("All 6 casks are done.").wait_for()
    assert len([entry for entry in cellar.entries() if entry["kind"] == "cask_regauge"]) == 6


def test_a_leak_is_said_while_the_cask_is_still_on_the_scale(cellar: Floor) -> None:
    page = cellar.open("/job/casks")
    page.get_by_role("button", name="Begin a new round").last.click()
    form = _ready(cellar, make_mark(CASKS[0]))
    form.locator("[name=gross]").fill("190.0")
    form.locator("[name=glass]").fill("57.1")
    form.locator("[name=temp]").fill("12.0")
    assert "a leak?" in page.locator("[data-loss]").inner_text()
    form.locator("[name=glass]").fill("37.1")
    wait_for(page, "document.querySelector('[data-loss]').innerText.includes('right cask')")


def test_a_round_begins_where_the_day_page_sends_it(cellar: Floor) -> None:
    cellar.open(f"/job/casks?from={make_mark(CASKS[3])}")  # the round that the test before began
    _ready(cellar, make_mark(CASKS[3]))


def test_the_card_of_a_cask_tells_its_loss_beside_casks_like_it(cellar: Floor) -> None:
    page = cellar.open(f"/m/{make_mark(CASKS[2])}")
    page.locator(".vessel [data-loss]").wait_for()
    said = page.locator(".vessel").inner_text()
    assert "a year" in said and "compared" in said and "Gauges of this fill" in said
    # One picture: its sentence, the curve with what is expected, and the doubt of both.
    told = page.get_by_role("img").first.get_attribute("aria-label")
    assert re.fullmatch(r"C\S+: \d+\sL of 225\sL, \d+ % full, between \d+\sL and \d+\sL\.", told), told
    beside = page.get_by_role("img").nth(1).get_attribute("aria-label")
    assert re.fullmatch(r"C\S+ lost \d\.\d % of its pure alcohol a year; 5 casks like it lose .*", beside), beside
    assert "as casks like it" in page.locator("[data-part=curve] caption").inner_text()
    _no_axe(page)
    cellar.open(f"/m/{make_mark('F12')}")
    page.locator(".band", has_text="Ends about").wait_for()
    # 1700 - 60 kg of mash at 1.041, and 1.1 to 1.0 kg a litre.
    label = page.get_by_role("img").first.get_attribute("aria-label").replace("\u202f", "").replace("\xa0", " ")
    assert label.endswith("about 1575 L of 2000 L, 79 % full, between 1491 L and 1640 L."), label
    assert page.locator(".stand dl div").first.inner_text().split()[:2] == ["Gravity", "1.041"]
    assert "end: " in page.locator("[data-part=curve] caption").inner_text()
    # A lying cask: the share of its circle below a height, against numpy's trapezoids over the chords.
    heights = page.evaluate("""async shares => {
      const { lyingHeight } = await import("/static/jobs/draw/level.js");
      return shares.map(lyingHeight); }""", [0.05, 0.2, 0.5, 0.9])
    for share, height in zip([0.05, 0.2, 0.5, 0.9], heights, strict=True):
        rise = np.linspace(0, height, 20_001)
        assert float(np.trapezoid(2 * np.sqrt(rise - rise**2), rise)) / (np.pi / 4) == pytest.approx(share, abs=1e-4)


def test_today_says_what_is_due_and_why(cellar: Floor) -> None:
    page = cellar.open("/today")
    page.evaluate("localStorage.removeItem('round:ferments')")
    told = page.evaluate("""async () => {
      const { duesOf } = await import("/static/jobs/cellar/due.js");
      const { readCards } = await import("/static/shell/phone.js");
      const cards = await readCards();
      const meters = ["2026-07-01", "2027-07-01"].map((due_on, n) => (
        { id: `TH-${9 - n}`, sort: "thermometer", title: "probe", state: "in use", due_on }));
      const at = (text) => Date.parse(text);
      const lines = (group) => group.lines.map((line) => [line.name, line.why]);
      const of = (house, now) => Object.fromEntries(
        duesOf(cards, house, meters, now).map((group) => [group.key, lines(group)]));
      const us = { accounts: "us", due: { regauge_months: 0 } };
      return {
        now: of({}, Date.now()), later: of({}, Date.now() + 2 * 86400000), us: of(us, at("2026-06-28T12:00:00Z")),
        us10: of(us, at("2026-07-10T12:00:00Z")), plain: of({}, at("2026-07-10T12:00:00Z")),
      };
    }""")
    assert "ferments" not in told["now"] and "regauge" not in told["now"]  # all were read in this round
    assert len(told["later"]["ferments"]) == 10 and "Ends about" in told["later"]["ferments"][0][1]
    assert [line[0] for line in told["us"]["instruments"]] == ["TH-9"]
    assert [why for _, why in told["us"]["legal"]] == [
        "The quarter ends: count the storage tanks.",
        "Count of bottled stock; the bureau has notice five business days before.",
    ]
    assert told["us10"]["legal"][0] == ["15 July", "The three reports for June are due by the 15th."]
    assert "legal" not in told["plain"]


def test_a_tasting_by_dials_untouched_is_not_said(cellar: Floor) -> None:
    page = cellar.form(f"/m/{make_mark(CASKS[0])}/log/tasting_note")
    nose = page.get_by_role("slider", name="Nose")
    # Untouched is no zero: there is no entry yet, and whoever is sent to the figure comes to its slider.
    assert nose.get_attribute("aria-valuetext") == "not said"
    page.locator("[data-part=log]").click()
    page.locator("[data-field=nose_score] .field__error").wait_for()
    assert nose.evaluate("(slider) => slider === document.activeElement")
    page.keyboard.press("ArrowRight")  # by keys alone
    for _ in range(6):
        page.keyboard.press("ArrowRight")
    assert nose.get_attribute("aria-valuetext") == "7 of 10"
    page.get_by_role("slider", name="Mouth").fill("6")
    page.get_by_role("slider", name="Wood").fill("4")
    fault = page.get_by_role("slider", name="Fault")
    fault.click(position={"x": 20, "y": 28})  # on the thumb, where it stands: that says zero
    assert fault.get_attribute("aria-valuetext") == "0 of 10"
    box = fault.bounding_box()
    assert box is not None and box["height"] >= 56
    page.locator(".chip", has_text="hold").click()
    assert page.locator("[data-part=log]").inner_text().split("\n") == [
        "Log: hold", "nose 7 · mouth 6 · wood 4 · fault 0"]
    # The house's own words and scores; what was said by mistake is taken off again.
    for word in ("plum stone", "vanilla", "plum stone", "plum stone"):
        page.locator(".words .chip", has_text=word).click()
    assert page.locator("[name=words]").input_value() == "vanilla, plum stone"
    page.get_by_role("slider", name="fruit").fill("7")
    page.get_by_role("slider", name="depth").fill("5")
    assert page.locator("[name=house_scores]").input_value() == "fruit 7; depth 5"
    page.get_by_role("button", name="take off depth").click()
    _no_axe(page)
    page.locator("[name=reduced_to]").fill("22")
    page.locator("[data-part=log]").click()
    page.wait_for_url("**/m/*")
    values = cellar.entries()[-1]["values"]
    assert {name: values[name]["raw"] for name in values} == {
        "nose_score": "7", "mouth_score": "6", "wood_score": "4", "fault_score": "0", "words": "vanilla, plum stone",
        "house_scores": "fruit 7", "reduced_to": "22", "decision": "hold"}


def test_a_cask_is_moved_to_a_place_that_is_tapped_and_stands_there_at_once(cellar: Floor) -> None:
    """The list is made of what the phone has already; the server is stopped."""
    first, second = make_mark(CASKS[0]), make_mark(CASKS[1])
    page = cellar.form(f"/m/{first}/log/cask_move")
    _no_axe(page)
    picks = page.locator("[data-field=from_place] .pick")
    assert picks.all_inner_texts() == ["CELL-A1\nstands here"]
    picks.first.click()
    assert page.input_value("[name=from_place]") == "CELL-A1"
    page.fill("[name=to_place]", "a")
    offered = page.locator("[data-field=to_place] .pick").all_inner_texts()
    assert offered[:2] == [f"CELL-A2\n{CASKS[1]}", f"CELL-A3\n{CASKS[2]}"], "in order, with what stands there"
    page.fill("[name=to_place]", "LOFT-K10")
    page.locator("[data-part=log]").click()
    page.wait_for_url(re.compile(f"/m/{first}$"))
    about = page.locator(".head__about")
    about.get_by_text("LOFT-K10").wait_for()
    page = cellar.form(f"/m/{second}/log/cask_move")
    first_offer = page.locator("[data-field=to_place] .pick").first
    assert first_offer.inner_text() == "CELL-A1\nfree", "what was left is offered first"
    first_offer.click()
    assert page.input_value("[name=to_place]") == "CELL-A1"
    cellar.open(f"/m/{first}")
