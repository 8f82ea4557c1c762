"""Reducing and the bottling line on a phone without signal: what is shown, worked out and logged.

The figures are those of the invented year's vatting K-26-03 (tests/trade/test_reducing.py says where from).
"""

import re
from datetime import UTC, datetime, timedelta

import pytest

from tests.browser.floor_house import _WIPE, ROOT, Floor, open_floor
from tests.browser.offline_world import wait_for
from webapp.book import intake
from webapp.book.house import registry
from webapp.book.opening import open_book
from webapp.trade.alcoholometry import mass_from_litres
from webapp.trade.marks import make_mark

pytestmark = pytest.mark.browser
T1, T3 = make_mark("T1"), make_mark("T3")
VAT = 217.84 / 362.9 * 100  # % vol of the vat, 329.9 kg
_REFRESHED = """async (mark) => {
  const { getCard, refresh } = await import("/static/slate/cards.js");
  await refresh();
  return ((await getCard(mark))?.curves.fill_found ?? []).length === 2;
}"""
AXE = (ROOT / "tests/vendor/axe.min.js").read_text(encoding="utf-8")
_FOUND = """async () => (await axe.run({ runOnly: ["wcag2a", "wcag2aa", "wcag21aa", "wcag22aa", "best-practice"] }))
  .violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.html.slice(0, 200)).join(" | ")}`)"""


def enter(book, kind, mark, minutes_ago, **values):
    now = datetime.now(UTC)
    at = now - timedelta(minutes=minutes_ago)
    made = {name: dict(zip(("raw", "unit"), pair, strict=False)) for name, pair in values.items()}
    result = intake.enter_page_entry(
        book, kind=kind, mark=mark, values=made, person="MD", role="blender",
        read_at=at.isoformat(timespec="seconds"), now=now,
    )
    assert result["settled"] in ("entered", "queried"), result


def furnish_tanks(world):
    with open_book(world.book_path) as book:
        for mark, litres in ((T1, 1000), (T3, 300)):
            registry.put_vessel(book, {"mark": mark, "name": mark[:2], "sort": "tank", "capacity_l": litres}, by="MD")
        # A balance in air shows 329.51 for 329.9 kg of it: OIML R 111, air of 1.2 kg/m3 against weights of 8000.
        enter(book, "gauge", T1, 3000, net_weight=("329.51", "kg"), strength=(f"{VAT:.4f}", "pct_vol"),
              temp=("20", "degC"), purpose=("opening",), what=("plum",))
        enter(book, "vat_plan", T1, 2900, name=("K-26-03",), draws=(f"{make_mark('C031')} 100",),
              water=("124.9", "kg"), target=("45.0", "pct_vol"), volume=("484.1", "L"))
        enter(book, "gauge", T3, 200, volume=("285", "L"), strength=("45.0", "pct_vol"), temp=("20", "degC"),
              purpose=("opening",), what=("plum",))
        enter(book, "bottling_gauge", T3, 190, batch=("K-26-03",), volume=("285", "L"), strength=("45.0", "pct_vol"),
              temp=("20", "degC"), label_strength=("45.0", "pct_vol"))
        for minutes, fill, strength in ((70, "100.2", "45.1"), (40, "99.8", "44.9")):
            enter(book, "bottle_check", T3, minutes, line=("1",), tested=("5", "count"), bottle_size=("0.5", "L"),
                  fill_found=(fill, "pct"), strength_found=(strength, "pct_vol"), labels_right=("yes",))


@pytest.fixture(scope="module")
def far_tanks(tmp_path_factory, playwright, browser_options):
    """A phone that knows the tanks, its server stopped."""
    with open_floor(tmp_path_factory.mktemp("tanks"), playwright, browser_options) as made:
        furnish_tanks(made.world)
        for _ in range(20):  # a round that was under way may have begun before the last entry
            if made.page.evaluate(_REFRESHED, T3):
                break
            made.page.wait_for_timeout(250)
        made.world.server.stop()
        yield made


@pytest.fixture
def tanks(far_tanks) -> Floor:
    far_tanks.open("/more")
    far_tanks.page.evaluate(_WIPE)
    far_tanks.faults.clear()
    yield far_tanks
    assert far_tanks.faults == []


def shown(page, name):
    return page.locator(f'[data-figure="{name}"]').first.inner_text()


def test_water_for_the_planned_strength_is_there_at_once(tanks):
    page = tanks.open(f"/job/reduce?mark={T1}")
    assert shown(page, "water") == "124.9"
    assert page.locator("input[name=target]").input_value() == "45.0"
    assert "Planned by MD" in page.locator("[data-part=worked]").inner_text()
    assert shown(page, "dip") == "484.1"
    page.locator("[data-part=boxes] input[name=temp]").fill("17,4")
    page.locator("input[name=water_temp]").fill("12")
    # At 17.4 degC a glass in spirit of 45.0 % shows 44.0, for 0.36 a degree near 45 % (OIML R 22, table VIII).
    assert abs(float(shown(page, "glass")) - 44.0) <= 0.1
    assert "by the can at 12" in page.locator("[data-part=worked]").inner_text()
    # The picture's sentence: what stands on each other, and what the mix is less than its parts.
    stack, warms = page.get_by_role("img").evaluate_all("all => all.map(one => one.getAttribute('aria-label'))")
    litres = [float(found) for found in re.findall(r"([\d.]+)\sL", stack)]
    assert litres[:2] == [362.9, 484.1] and "124.9\xa0kg of water" in stack
    assert litres[0] + 124.9 / 0.9982 - litres[1] == pytest.approx(litres[2], abs=0.15)  # water at 20 degC: 0.9982 kg/L
    assert warms.startswith("Water at 12, spirit at 17, mixed about")
    # Most of it first: no way leads back from too much.
    assert "Pour 110 kg first." in page.locator("[data-part=worked]").inner_text()
    page.get_by_role("button", name="A tenth more").click()
    assert page.locator("input[name=target]").input_value() == "45.1"


def test_the_target_says_where_it_comes_from_and_most_goes_in_first(tanks):
    told = tanks.open(f"/job/reduce?mark={T1}").evaluate("""async () => {
      const { aimOf } = await import("/static/jobs/reduce/aim.js");
      const { mostOf } = await import("/static/jobs/reduce/plan.js");
      const since = "2026-03-01T08:00:00Z";
      const tank = (more, last = {}) => ({ sort: "tank", mark: "T9", name: "T9", holds: { since, ...more }, last });
      const aimed = (at, value = 43) => ({ reduce: { target: { value, at } } });
      const label_strength = { value: 41.5, at: "2026-02-01T08:00:00Z" };
      const other = { ...tank({}, { bottling_gauge: { label_strength } }), name: "T8" };
      const aims = [
        aimOf({ ...tank({}), planned: { target_pct: 45 } }, []), aimOf(tank({ label_strength_pct: 42 }), []),
        ...["2026-03-02T08:00:00Z", "2026-01-02T08:00:00Z"].map((at) => aimOf(tank({}, aimed(at)), [other])),
        aimOf(tank({}), []),
      ];
      const said = aims.map((aim) => aim && [aim.pct, aim.words.split(",")[0]]);
      return [said, [191.5, 124.9, 55, 12.5, 4.2, 3.9].map(mostOf)];
    }""")
    assert told[0] == [
        [45, ""], [42, "Target: as its label says."], [43, "Target: as aimed at here"], [41.5, "Target: as last in T8"],
        None,
    ]
    assert told[1] == [180, 110, 50, 11, 3.5, 3.9]  # 94 %, down to a round amount; a little at once


def test_steps_share_the_water(tanks):
    page = tanks.open(f"/job/reduce?mark={T1}")
    page.locator("summary", has_text="In goes").click()
    page.locator(".chip", has_text=re.compile("^2$")).click()
    steps = page.locator("[aria-label='Step by step'] li")
    assert steps.count() == 2
    assert "62.4" in steps.first.inner_text() or "62.5" in steps.first.inner_text()


def test_a_target_above_the_tank_says_what_to_do(tanks):
    page = tanks.open(f"/job/reduce?mark={T1}")
    page.locator("input[name=target]").fill("75")
    assert "Water can only make it weaker" in page.locator("[data-part=worked]").inner_text()


def test_forgotten_contraction_is_found_on_the_spot_and_trimmed(tanks):
    page = tanks.open(f"/job/reduce?mark={T1}")
    page.get_by_role("button", name="110 kg are in").click()
    water = page.locator("form.panel input[name=water]")
    assert water.input_value() == "110.0"
    water.fill("121.0")  # as volumes alone would have it
    page.get_by_role("button", name="Log it").click()
    page.locator(".thumb .cuts, .thumb [data-part=doing] button", has_text="Measured").wait_for()
    wait_for(page, "document.querySelector('.head__about').textContent.includes('with what waits here')")
    assert shown(page, "water") == "3.9"
    page.get_by_role("button", name="Measured").click()
    page.locator("form.panel input[name=glass]").fill("44.4")
    page.locator("form.panel input[name=temp]").fill("17.4")
    page.locator("form.panel input[name=volume]").fill("479.3")  # 480.2 L at 20 degC
    trim = page.locator("[data-part=trim]").inner_text()
    assert "0.4 points too strong" in trim
    told = page.locator("[data-part=trim] [role=img]").get_attribute("aria-label")
    assert re.fullmatch(r"Target 45\.0, by the sum 45\.\d, read 45\.4 % vol\.", told), told
    assert re.search(r"[34]\.\d.kg of water more", trim)
    assert "The dip agrees with the sum" in trim
    page.get_by_role("button", name="Log it").click()
    wait_for(page, "/ kg are in/.test(document.querySelector('.thumb').textContent)")
    entries = [entry for entry in tanks.entries() if entry["kind"] == "reduce"]
    assert [entry["values"]["water"]["raw"] for entry in entries] == ["121.0", "0"]
    assert entries[1]["values"]["glass"]["raw"] == "44.4"
    assert all(entry["values"]["target"] == {"raw": "45.0", "unit": "pct_vol"} for entry in entries)


def test_without_a_mark_the_page_asks_which_tank(tanks):
    page = tanks.open("/job/reduce")
    assert page.locator(".list a").count() == 2
    page.locator(".list a").first.click()
    page.locator("[data-figure=water], [data-part=worked] .quiet").first.wait_for()


def test_the_line_shows_average_spread_limits_and_what_is_due(tanks):
    page = tanks.open(f"/job/bottling?mark={T3}")
    text = page.locator("[data-part=state]").inner_text().replace("\xa0", " ")
    assert shown(page, "fill") == "100.0"
    assert "2 checks, spread 0.28" in text  # of 100.2 and 99.8: their difference over the root of 2
    assert "The next check was due" in text
    assert shown(page, "bottles") == "570"
    assert "Each bottle 97.0 % full or more, 100 on average" in text  # 15 mL of 500: Directive 76/211/EEC, from memory
    assert "Strength 44.7 to 45.3 % vol for a label of 45.0" in text


def test_bottles_weighed_become_a_check(tanks):
    page = tanks.open(f"/job/bottling?mark={T3}")
    page.get_by_role("button", name="Check bottles").click()
    page.locator("input[name=empty]").fill("412")
    full = 412 + mass_from_litres(0.5, 45.0, in_air=True) * 1000
    for n, more in enumerate((0.0, 2.0, -2.0, 1.0, -1.0), 1):
        page.locator(f"input[name=gross_{n}]").fill(f"{full + more:.1f}")
    assert page.locator("[data-figure=weighed]").inner_text() == "100.0 % full"
    page.locator("input[name=strength_found]").fill("45.0")
    page.locator("[data-field=labels_right] .chip", has_text="yes").click()
    page.get_by_role("button", name="Log it").click()
    wait_for(page, "document.querySelector('[data-due]')?.textContent.includes('Next check')")
    values = tanks.entries()[-1]["values"]
    assert (values["fill_found"]["raw"], values["fill_least"]["raw"], values["fill_most"]["raw"]) == (
        "100.0",
        "99.6",
        "100.4",
    )
    assert values["tested"]["raw"] == "5"
    assert values["bottle_size"] == {"raw": "0.5", "unit": "L"}
    assert "3 checks" in page.locator("[data-part=state]").inner_text()


def test_a_bottle_out_of_limits_is_said_before_it_is_logged(tanks):
    page = tanks.open(f"/job/bottling?mark={T3}")
    page.get_by_role("button", name="Check bottles").click()
    page.locator("input[name=empty]").fill("412")
    page.locator("input[name=gross_1]").fill("865")
    assert "Outside what may be" in page.locator("[data-part=weighed]").inner_text()
    page.locator("input[name=gross_1]").fill("300")
    assert "lighter than a full one" in page.locator("[data-part=weighed]").inner_text()


def test_the_tanks_card_leads_to_both(tanks):
    page = tanks.open(f"/m/{T3}")
    for job in ("reduce", "bottling"):
        assert page.locator(f'a[href="/job/{job}?mark={T3}"]').count() == 1


@pytest.mark.parametrize("theme", ["dark", "light"])
def test_axe_finds_nothing_on_either_job(tanks, theme):
    wrong = []
    for path, button in (
        (f"/job/reduce?mark={T1}", "kg are in"),
        (f"/job/reduce?mark={T1}", "Measured"),
        (f"/job/bottling?mark={T3}", "Check bottles"),
        ("/job/reduce", ""),
        ("/job/bottling", ""),
    ):
        page = tanks.open(path)
        page.emulate_media(color_scheme=theme, reduced_motion="reduce")
        page.locator("[data-part=worked], [data-part=state]").first.wait_for()
        page.set_viewport_size({"width": 390, "height": 2600})  # tall: a target under the foot is no small target
        page.evaluate(AXE)
        wrong += [f"{path}: {found}" for found in page.evaluate(_FOUND)]
        if button:
            page.get_by_role("button", name=button).click()
            wrong += [f"{path}, {button}: {found}" for found in page.evaluate(_FOUND)]
        page.set_viewport_size({"width": 390, "height": 844})
        assert page.evaluate("document.documentElement.scrollWidth") == 390
    assert wrong == []
