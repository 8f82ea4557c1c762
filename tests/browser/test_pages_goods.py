"""Bottled goods on a phone without signal: batches and cases are picked from what is there, counts have a large plus.

What is left is checked against what was told to the book: 60 cases of 6 in 2 fills, of which cases 1 to 20 left.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from typing import Any

import pytest

from tests.browser.floor_house import HEARTS, STILL, Floor, open_floor
from tests.browser.offline_world import bring_cards
from tests.browser.test_cellar_rounds import _entry, _no_axe, _tell
from webapp.book.house import registry
from webapp.book.opening import open_book
from webapp.book.record.store import Book
from webapp.kinds.tasting_texts import seal_of
from webapp.trade.marks import make_mark

pytestmark = pytest.mark.browser
T1, T2, C031 = make_mark("T1"), make_mark("T2"), make_mark("C031")


def fill(book: Book) -> None:
    """One batch bottled in two fills, cases 1 to 30 and 31 to 60; 1 to 20 left. Another tank stands full."""
    now = datetime.now(UTC).replace(microsecond=0)
    entries = []
    for base in (T1, T2):
        registry.put_vessel(book, {"mark": base, "sort": "tank", "place": "BLEND", "capacity_l": 500.0}, by="MD")
    pct = ("45.0", "pct_vol")
    for n, first in enumerate((1, 31)):
        day = now - timedelta(days=9 - n)
        entries += [
            _entry("bottling_gauge", T1, day, batch=("K-26-03",), volume=("91", "L"), temp=("20", "degC"), strength=pct,
                   label_strength=pct),
            _entry("bottling_close", T1, day + timedelta(hours=5), filled=("180", "count"), broken=("0", "count"),
                   bottle_size=("0.5", "L"), per_case=("6", "count"), case_from=(str(first),),
                   case_to=(str(first + 29),), lot_mark=("K2603",), loss=("1", "L"), tank_empty=("yes",)),
        ]
    entries += [
        _entry("dispatch", "", now - timedelta(days=5), batch=("K2603",), why=("tax_paid",), cases=("20", "count"),
               case_from=("1",), case_to=("20",), document=("D-1",), to_whom=("Corner shop",)),
        _entry("gauge", C031, now - timedelta(days=4), net_weight=("190.0", "kg"), strength=("61.0", "pct_vol"),
               temp=("12", "degC"), purpose=("opening",), what=("plum",)),
        _entry("bottling_gauge", T2, now - timedelta(hours=4), batch=("P-26-01",), volume=("120", "L"),
               temp=("20", "degC"), strength=pct, label_strength=pct),
        _entry("tasting_session", "", now - timedelta(hours=1), name=("T-1",), question=("Told apart?",),
               method=("triangle",), alpha=("5",), samples=(f"A {C031}; B {T2}",), reduced_to=("25", "pct_vol"),
               glasses=("NS 418 902 637; MD 271 550 803; NS 333 444 555",), seal=(seal_of("AAB BBA ABA 5eed"),)),
    ]
    _tell(book, *entries)


@pytest.fixture(scope="module")
def store(
    tmp_path_factory: pytest.TempPathFactory, playwright: Any, browser_options: dict[str, Any]
) -> Iterator[Floor]:
    with open_floor(tmp_path_factory.mktemp("store"), playwright, browser_options) as floor:
        with open_book(floor.world.book_path) as book:
            fill(book)
        bring_cards(floor.page)
        floor.world.server.stop()
        yield floor
        assert floor.faults == []


def _offers(page: Any, field: str) -> list[str]:
    return [" ".join(text.split()) for text in page.locator(f"[data-field={field}] .pick").all_inner_texts()]


def test_cases_leave_by_taps_alone(store: Floor) -> None:
    page = store.form("/log/dispatch")
    assert _offers(page, "batch") == [
        "K2603 spirit · 0.50 L · 45.0 % · cases 31 to 60 30 cases",
        "K2603 spirit · 0.50 L · 45.0 % · cases 1 to 30 10 cases",
    ]
    page.locator("[data-field=batch] .pick").nth(1).click()
    assert page.locator("[name=case_from]").input_value() == "21", "1 to 20 are gone"
    assert page.locator(".field[data-field=document]").is_hidden()
    page.locator("[name=why][value=tax_paid]").click()
    assert page.locator(".field[data-field=document]").is_visible()
    page.locator("[name=cases]").focus()
    plus = page.get_by_role("button", name="One more")
    assert min(plus.bounding_box()[side] for side in ("width", "height")) >= 64
    for _ in range(4):
        plus.click()
    page.get_by_role("button", name="One less").click()
    assert page.locator(".counter__said").inner_text().split() == ["Whole", "cases", "3"]
    _no_axe(page)
    assert "3 × 6 = 18 bottles; 7 cases left" in page.locator(".counted").inner_text()
    page.locator(".pair .pick", has_text="21 to 23").click()
    page.locator("[name=document]").fill("D-2")
    page.locator("[name=to_whom]").fill("Ferry house")
    page.locator("[data-part=log]").click()
    page.wait_for_url("**/")
    values = store.entries()[-1]["values"]
    assert {name: value["raw"] for name, value in values.items()} == {
        "batch": "K2603", "why": "tax_paid", "cases": "3", "case_from": "21", "case_to": "23", "document": "D-2",
        "to_whom": "Ferry house",
    }


def test_what_waits_on_the_phone_has_left_already_and_whom_it_went_to_is_offered(store: Floor) -> None:
    page = store.form("/log/dispatch")
    assert _offers(page, "batch")[1].endswith("7 cases")
    assert page.locator(".field[data-field=to_whom]").is_hidden(), "nobody is asked for while nothing leaves"
    page.locator("[name=why][value=in_bond]").click()
    assert _offers(page, "to_whom") == ["Ferry house"]


def test_a_count_is_not_told_what_the_book_expects(store: Floor) -> None:
    page = store.form("/log/bottled_count")
    assert [words.split("cases ")[1] for words in _offers(page, "batch")] == ["31 to 60", "1 to 30"]
    page.locator("[data-field=batch] .pick").first.click()
    assert page.locator(".field[data-field=case_from]").is_hidden(), "the pick says which of the two it is"
    page.locator("[name=cases]").focus()
    page.get_by_role("button", name="keys", exact=True).click()
    store.press("28")
    page.get_by_role("button", name="One more").click()
    assert page.locator("[name=cases]").input_value() == "29"
    page.locator("[data-field=signed] .pick").click()
    page.locator("[data-part=log]").click()
    page.wait_for_url("**/")
    values = store.entries()[-1]["values"]
    assert [values[name]["raw"] for name in ("cases", "case_from", "signed")] == ["29", "31", "NS, cellar hand"]


def test_a_close_follows_the_last_case_and_a_gauge_the_batch_that_stands(store: Floor) -> None:
    page = store.form(f"/m/{T2}/log/bottling_close")
    for name, figure in (("filled", "230"), ("broken", "2"), ("per_case", "6")):
        page.locator(f"[name={name}]").fill(figure)
    page.locator(".pair .pick", has_text="61").click()
    page.locator(".pair .pick", has_text="98").click()  # 228 good ones are 38 cases
    assert page.locator("[name=case_to]").input_value() == "98"
    page = store.form(f"/m/{T1}/log/bottling_gauge")
    assert _offers(page, "batch") == ["P-26-01 spirit · T2 120 L"]


def test_spirit_that_a_run_gave_stays_where_it_is_without_a_tap(store: Floor) -> None:
    page = store.form(f"/m/{HEARTS}/log/fraction_gauge?still={STILL}&fraction=hearts")
    assert page.locator("[name=goes_to]:checked").input_value() == "stays"
    page.locator("[name=fraction][value=stillage]").click()
    assert page.locator("[name=goes_to]:checked").count() == 0
    page.locator("[name=goes_to][value=drain]").click()
    page.locator("[name=fraction][value=heads]").click()
    assert page.locator("[name=goes_to]:checked").input_value() == "drain", "somebody's own answer stands"


_LINE = """async (at) => {
  const { speedOf, endOf, expectedNow, nextDue } = await import("/static/jobs/bottling/checks.js");
  const { begunTally, counted, speedByCases } = await import("/static/jobs/bottling/tally.js");
  const min = (n) => at + n * 60;
  const counts = [[min(-600), 900], [min(-90), 60], [min(-60), 140], [min(-30), 200]];
  const speed = speedOf(counts), fills = counts.slice(1).map(([when]) => [when, 100]);
  const now = at * 1000, due = (every) => nextDue(fills, counts, every, speed, now);
  const tapped = (...seconds) => seconds.reduce(
    (tally, s) => counted(tally, 1, (at + s) * 1000), begunTally("f", 6, 110));
  const slow = tapped(0, 150, 300, 450);
  return { cases: [speedByCases(slow, now + 460_000), slow.cases, counted(slow, -1, now).taps.length],
    hasty: speedByCases(tapped(0, 1, 2, 3), now), pause: speedByCases(slow, now + 3_600_000), speed,
    end: endOf(speed, 340), over: endOf(speed, 200), now: expectedNow(speed, now, 340),
    most: expectedNow(speed, now, 210), one: speedOf(counts.slice(0, 2)),
    byTime: due({ check_min: 45, check_bottles: 0 }), byCount: due({ check_min: 45, check_bottles: 84 }),
    late: due({ check_min: 20, check_bottles: 0 }), never: due({ check_min: 0, check_bottles: 0 }),
    first: nextDue([], [], { check_min: 30, check_bottles: 0 }, null, now) };
}"""


def test_the_lines_speed_its_end_and_the_next_check_by_time_or_by_count(store: Floor) -> None:
    """By hand: 60, 140 and 200 bottles at half-hours are 160 and 120 an hour, 140 on the whole; 140 more take an hour.

    The count before began anew, so it says nothing of this one.
    """
    at = 1_790_000_000
    told = store.page.evaluate(_LINE, at)
    half_hour_ago = at - 1800
    assert told["speed"] == pytest.approx(
        {"perHour": 140, "low": 120, "high": 160, "last": 200, "at": half_hour_ago}, abs=1e-9
    )
    ends = {name: told["end"][name] / 1000 - half_hour_ago for name in ("at", "soonest", "latest")}
    assert ends == pytest.approx({"at": 3600, "soonest": 3150, "latest": 4200}, abs=0.01)
    # 18 cases of 6 are in 110 bottles; a case each 150 s is 144 bottles an hour.
    by_cases, cases, taps = told["cases"]
    assert (by_cases["perHour"], by_cases["last"], cases, taps) == (pytest.approx(144), 132, 22, 3)
    assert (told["hasty"], told["pause"]) == (None, None)
    assert (told["over"], told["now"], told["most"], told["one"]) == (None, 270, 210, None)
    assert (told["byTime"]["inMin"], told["byTime"]["atBottle"], told["byTime"]["isByCount"]) == (15, None, False)
    assert (told["byCount"]["inMin"], told["byCount"]["atBottle"], told["byCount"]["isByCount"]) == (6, 284, True)
    assert (told["late"]["isLate"], told["late"]["inMin"]) == (True, -10)
    assert (told["never"]["dueAt"], told["first"]) == (None, None)


def test_the_count_of_a_check_brings_the_speed(store: Floor) -> None:
    page = store.open(f"/job/bottling?mark={T2}")
    assert page.locator("[data-figure=due]").inner_text() == "now"
    now = datetime.now(UTC)
    for minutes_ago, count in ((40, "40"), (10, "110")):
        page.get_by_role("button", name="Check bottles").click()
        page.locator("form.panel [name=filled_so_far]").fill(count)
        for name, figure in (("fill_found", "100"), ("tested", "5"), ("bottle_size", "0.5"), ("strength_found", "45")):
            page.locator(f"form.panel [name={name}]").evaluate("(box, figure) => { box.value = figure; }", figure)
        page.locator("form.panel [data-field=labels_right] .chip", has_text="yes").click()
        read_at = (now - timedelta(minutes=minutes_ago)).strftime("%Y-%m-%dT%H:%M")
        page.locator("form.panel [name=read_at]").evaluate("(box, at) => { box.value = at; }", read_at)
        page.get_by_role("button", name="Log it").click()
        page.get_by_role("button", name="Check bottles").wait_for()
    page.locator("[data-figure=speed]", has_text="140").wait_for()
    assert "110 of 240 counted" in page.locator(".line__bar").inner_text()
    assert "every 30 min" in page.locator("[data-due]").inner_text()
    page.locator("[name=line_per_case][value='6']").click()
    page.get_by_role("button", name="One more than 18 cases 108 bottles").click()
    page.get_by_role("button", name="One more than 19 cases 114 bottles").click()
    page.get_by_role("button", name="One less").click()
    assert page.locator("[data-figure=cases]").inner_text() == "19"
    _no_axe(page)


def test_a_stock_count_is_blind_can_be_left_and_ends_in_differences_that_are_signed(store: Floor) -> None:
    """By the book T2 holds 120 L at 45 %, which are 54 LPA; 118 L are 53.1. Of 180 and 42 bottles 179 and 42 stand."""
    store.phone.page.evaluate("() => localStorage.clear()")
    page = store.open("/job/count")
    before = len(store.entries())
    page.locator(".pick", has_text="BLEND").click()
    page.locator(f"form[data-ready='v:{T1}']").wait_for()
    page.get_by_role("button", name="Empty").click()
    page.locator(f"form[data-ready='v:{T2}']").wait_for()
    seen = page.locator("body").inner_text()
    assert not [word for word in ("120", "45.0", "54.0", "last ") if word in seen], "the count is blind"
    assert "1 of 2 counted" in seen
    _no_axe(page)
    store.open("/today")
    page = store.open("/job/count")  # left, and taken up again where it was
    page.locator(f"form[data-ready='v:{T2}']").wait_for()
    page.locator("[name=volume]").fill("118")
    page.locator("[name=temp]").fill("20")
    page.locator("summary", has_text="By weight").click()
    page.locator("[name=strength]").fill("45.0")
    page.get_by_role("button", name="Counted, next").click()
    page.locator("h2", has_text="Differences").wait_for()
    assert len(store.entries()) == before, "nothing is logged before it is signed"
    lines = [" ".join(text.split()) for text in page.locator(".counted-line").all_inner_texts()]
    assert lines[0].startswith("T2 118.0 L at 45.0 % vol −0.90 LPA book 120.0 L at 45.0 % vol")
    _no_axe(page)
    assert page.locator("[name=signed]").input_value() == "NS, cellar hand"
    page.get_by_role("button", name="Sign and log 2 counts").click()
    page.wait_for_url("**/slate")
    first, second = store.entries()[-2:]
    assert [one["mark"] for one in (first, second)] == [T1, T2]
    assert {name: value["raw"] for name, value in first["values"].items()} == {
        "found": "here", "net_weight": "0", "strength": "0", "signed": "NS, cellar hand",
    }
    assert (second["kind"], second["values"]["volume"]["raw"]) == ("stock_count", "118")


def test_a_round_of_bottles_and_one_of_casks(store: Floor) -> None:
    page = store.open("/job/count")
    page.locator(".pick", has_text="Bottled goods").click()
    before = ""
    for cases, loose in (("29", "5"), ("7", "")):
        form = page.locator(f"form.round[data-ready]:not([data-ready='{before}'])")
        form.wait_for()
        before = form.get_attribute("data-ready")
        page.locator("[name=cases]").fill(cases)
        page.locator("[name=bottles]").fill(loose)
        page.get_by_role("button", name="Counted, next").click()
    page.get_by_role("button", name="Sign and log 2 counts").wait_for()
    off = " ".join(page.locator(".counted-line").first.inner_text().split())
    assert off.startswith("K2603 179 bottles +5 bottles book 174")  # 174 were counted by the test before
    assert page.locator("summary", has_text="As the book has it").inner_text().endswith("1")
    page.get_by_role("button", name="Sign and log 2 counts").click()
    page.wait_for_url("**/slate")
    assert [one["values"]["case_from"]["raw"] for one in store.entries()[-2:]] == ["31", "1"]
    page = store.open("/job/count")
    page.locator(".pick", has_text="Elsewhere").click()
    while page.locator(".round__ask").count() == 0:
        page.get_by_role("button", name="Skip").click()
    assert page.locator(".head__mark").inner_text() == "C031"
    page.get_by_role("button", name="Not here").click()
    page.locator("form.round[data-ready]").wait_for()
    page.locator("summary", has_text="Another, or the end").click()
    page.get_by_role("button", name="To the differences").click()
    assert "Look for it at once" in page.locator(".counted-line[data-sort=missing]").inner_text()
    page.get_by_role("button", name="Sign and log the count").click()
    page.wait_for_url("**/")
    found = store.entries()[-1]
    assert (found["mark"], found["values"]["found"]["raw"]) == (C031, "nothing")


_PAD = """() => {
  const plus = document.querySelector(".counter__plus"), log = document.querySelector(".thumb .button--action");
  const inSight = (element) => {
    const { left, top, width, height } = element.getBoundingClientRect();
    const hit = document.elementFromPoint(left + width / 2, top + height * 0.8);
    return top >= 0 && Boolean(hit && element.contains(hit));
  };
  const { width, height } = plus.getBoundingClientRect();
  return { plus: inSight(plus), log: inSight(log), figure: inSight(document.querySelector(".counter__said strong")),
    least: Math.min(width, height), across: document.documentElement.scrollWidth - innerWidth };
}"""


def test_plus_figure_and_button_are_in_sight_at_any_size(store: Floor) -> None:
    """WCAG 2.2, 1.4.4 and 1.4.10: text at 200 %, and a window of 320 x 256."""
    store.page.evaluate("() => sessionStorage.clear()")  # what the page before would have said over this one
    page = store.form("/log/bottled_count")
    page.locator("[data-field=batch] .pick").first.click()
    try:
        for width, height, text_pct in ((390, 844, 100), (390, 844, 200), (844, 390, 100), (844, 390, 200),
                                        (320, 568, 100), (320, 568, 200), (1024, 768, 100), (320, 256, 100)):
            page.set_viewport_size({"width": width, "height": height})
            page.evaluate("pct => document.documentElement.style.setProperty('font-size', `${pct}%`)", text_pct)
            page.locator("[name=cases]").focus()
            for _ in range(60):  # the page settles after a change of its size
                page.wait_for_timeout(150)
                found = page.evaluate(_PAD)
                if found["plus"] and found["log"] and found["figure"] and found["across"] <= 0:
                    break
            assert found["least"] >= (56 if height < 300 else 64), (width, height, text_pct, found)
            assert (found["plus"], found["log"], found["figure"]) == (True, True, True), (width, height, text_pct)
            assert found["across"] <= 0, (width, height, text_pct)
    finally:
        page.set_viewport_size({"width": 390, "height": 844})


def test_a_blind_tasting_shows_codes_alone_and_each_set_is_answered_once(store: Floor) -> None:
    today = store.open("/today").locator("[data-due=tasting]")
    today.wait_for()
    assert today.locator(".list__end").inner_text() == "2 sets"
    page = store.open("/job/tasting")
    before = len(store.entries())
    glasses = page.locator(".tasted__glass")
    assert glasses.all_inner_texts() == ["418", "902", "637"]
    assert min(glasses.first.bounding_box()[side] for side in ("width", "height")) >= 64
    assert page.locator("[data-part=doing] .button").is_disabled(), "there is no answer before a glass is named"
    glasses.nth(2).click()
    page.get_by_role("button", name="fairly").click()
    page.locator(".chip", has_text="finish").click()
    _no_axe(page)
    known = page.evaluate("""async () => {
      const { getMeta } = await import("/static/slate/db.js");
      return JSON.stringify(await getMeta("tastings"));
    }""")
    assert C031 not in known and T2 not in known and "samples" not in known, "the phone is not told what is poured"
    page.get_by_role("button", name="637 is the odd one").click()
    page.get_by_text("333", exact=True).wait_for()
    values = store.entries()[-1]["values"]
    assert {name: value["raw"] for name, value in values.items()} == {
        "session": "T-1", "set_no": "1", "picked": "637", "sure": "fairly", "gave_away": "finish",
    }
    page.locator(".tasted__glass").first.click()
    page.get_by_role("button", name="333 is the odd one").click()
    page.get_by_text("All your sets are answered.").wait_for()
    store.open("/job/tasting").get_by_text("All your sets are answered.").wait_for()
    assert len(store.entries()) == before + 2, "sets of another taster are not offered"
