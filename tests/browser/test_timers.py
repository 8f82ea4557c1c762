"""Reminders of a phone, its server stopped: set by a tap, kept over reloads, moved on by readings, rung once."""

from __future__ import annotations

import re
from datetime import UTC, datetime, timedelta
from typing import Any

from playwright.sync_api import expect

from tests.browser.floor_house import FERMENTER, STILL, Floor, far_floor, floor
from tests.browser.offline_world import wait_for
from tests.browser.test_pages_run_full import SHEET, in_hearts, log, open_sheet

__all__ = ["far_floor", "floor"]

_KEPT = "async () => (await import('/static/slate/timers.js')).timers()"
_DUE = """async (ago) => { const kept = await import("/static/slate/timers.js");
  const [one] = await kept.timers();
  await kept.setTimer({ ...one, at: new Date(Date.now() - ago * 1000).toISOString() }); }"""
_DROP_ALL = """async () => { const kept = await import("/static/slate/timers.js");
  await kept.dropTimers((await kept.timers()).map((one) => one.mark)); }"""


def _kept(floor: Floor) -> list[dict[str, Any]]:
    found: list[dict[str, Any]] = floor.page.evaluate(_KEPT)
    return found


def test_a_reminder_at_the_still_outlives_a_reload_and_begins_anew_with_each_reading(floor: Floor) -> None:
    in_hearts(floor)
    page = open_sheet(floor)
    page.evaluate(_DROP_ALL)
    chip = page.locator("[data-timer]")
    expect(chip).to_contain_text("Remind me")
    chip.click()
    page.get_by_role("button", name=re.compile("^10 min")).click()
    expect(chip).to_contain_text(re.compile(r"Next reading \d\d:\d\d\s+in (9|10).min"))
    page = open_sheet(floor)
    expect(page.locator("[data-timer]")).to_contain_text("Next reading")
    page = floor.open("/today")
    expect(page.locator("[data-timers]")).to_contain_text(re.compile(r"S1\s+Next reading \d\d:\d\d"))
    page = floor.open(f"/m/{STILL}")
    expect(page.locator("[data-timer]")).to_contain_text("Next reading")

    page.evaluate(_DUE, 1)
    expect(page.locator(".ring")).to_contain_text("Next reading of S1")
    log(floor, "run_reading", -0.1, strength=69, flow=12)  # read just now: ten minutes from here on
    expect(page.locator(".ring")).to_have_count(0)
    expect(page.locator("[data-timer]")).to_contain_text(re.compile("in 1[01].min"))
    log(floor, "run_end", -0.2, reason="strength")
    wait_for(page, f"!(await ({_KEPT})()).length")  # the run is over


def test_it_rings_once_on_whatever_page_is_open_and_its_bar_stands_until_it_is_answered(floor: Floor) -> None:
    in_hearts(floor)
    page = floor.open("/today")
    page.context.grant_permissions(["notifications"], origin=floor.phone.url)
    page.evaluate(_DROP_ALL)
    page.evaluate("""async (mark) => { const kept = await import("/static/slate/timers.js");
      const { readCard } = await import("/static/shell/phone.js");
      globalThis.buzzes = [];
      navigator.vibrate = (how) => globalThis.buzzes.push(how);
      Object.defineProperty(document, "visibilityState", { configurable: true, get: () => "hidden" });
      const { run } = await readCard(mark);
      const at = new Date(Date.now() + 400).toISOString();
      await kept.setTimer({ mark, name: "S1", run: run.id, minutes: 0, at }); }""", STILL)
    bar = page.locator(".ring")
    expect(bar).to_contain_text("Next reading of S1")
    expect(bar.get_by_role("link", name="Read")).to_have_attribute("href", SHEET)
    assert page.evaluate("globalThis.buzzes.length") == 1
    told = """async () => (await (await navigator.serviceWorker.getRegistration()).getNotifications())
      .map((one) => [one.title, one.tag, one.data.path])"""
    wait_for(page, f"(await ({told})()).length")
    assert page.evaluate(told) == [["Next reading of S1", f"timer:{STILL}", SHEET]]
    (kept,) = _kept(floor)
    assert kept["rung_for"] == kept["at"]
    page = floor.open("/slate")  # nobody answered: it stands, and rings no second time
    expect(bar).to_contain_text("Next reading of S1")
    claim = "async (at) => (await import('/static/slate/timers.js')).claimRing(at[0], at[1])"
    assert page.evaluate(claim, [STILL, kept["at"]]) is False
    bar.get_by_role("button", name="5 min more").click()
    expect(bar).to_have_count(0)
    left = datetime.fromisoformat(_kept(floor)[0]["at"]) - datetime.now(UTC)
    assert timedelta(minutes=4) < left < timedelta(minutes=6)
    wait_for(page, f"!(await ({told})()).length")
    page.evaluate(_DUE, 7200)
    expect(bar).to_be_visible()
    bar.get_by_role("button", name="Drop the reminder").click()
    expect(bar).to_have_count(0)
    assert _kept(floor) == []
    floor.phone.context.service_workers[0].evaluate("async path => { await lead(path); }", SHEET)
    page.wait_for_url(f"**{SHEET}")  # as a tap on the notice does, in the tab that is open


def test_offers_of_a_ferment_go_by_the_sites_clock_and_a_reading_near_its_time_ends_one(floor: Floor) -> None:
    page = floor.open("/today")
    found = page.evaluate("""async (mark) => {
      const { offersFor, standing, nextAt, whenWords } = await import("/static/jobs/timers/times.js");
      const zone = document.documentElement.dataset.zone;
      document.documentElement.dataset.zone = "Europe/Berlin";
      const iso = (at) => new Date(at).toISOString();
      const told = (now) => offersFor("fermenter", Date.parse(now)).map((one) => [one.words, iso(one.at)]);
      const timer = { mark, name: "F3", run: "", at: "2026-03-28T17:00:00.000Z", minutes: 0,
        set_at: "2026-03-28T08:00:00.000Z" };
      const after = (at) => standing(timer, { recent: [{ at }] });
      const still = { ...timer, run: "r", minutes: 10 };
      const answer = {
        noon: told("2026-03-28T11:00Z"), night: told("2026-03-28T20:30Z"),
        early: after("2026-03-28T12:00:00Z")?.at, near: after("2026-03-28T16:45:00Z"),
        moved: standing(still, { run: { id: "r", readings: [{ at: "2026-03-28T08:04:00Z" }], cuts: [] } }).at,
        other: standing(still, { run: { id: "s", readings: [], cuts: [] } }), blind: standing(still, null)?.at,
        clock: ["06:30", "22:00"].map((clock) => iso(nextAt(clock, Date.parse("2026-03-28T20:30Z")))),
        words: whenWords({ at: "2026-03-29T05:00:00Z" }, Date.parse("2026-03-28T20:30Z")),
      };
      document.documentElement.dataset.zone = zone;
      return answer;
    }""", FERMENTER)
    # Clocks go forward in the night to the 29th: 18:00 is 17:00 UTC, and 7:00 next morning is 5:00 UTC.
    assert found["noon"] == [["In 1 h", "2026-03-28T12:00:00.000Z"], ["In 3 h", "2026-03-28T14:00:00.000Z"],
                             ["This evening", "2026-03-28T17:00:00.000Z"],
                             ["Tomorrow morning", "2026-03-29T05:00:00.000Z"]]
    assert [words for words, _ in found["night"]] == ["In 1 h", "In 3 h", "Tomorrow morning"]
    assert (found["early"], found["near"]) == ("2026-03-28T17:00:00.000Z", None)
    assert found["moved"] == "2026-03-28T08:14:00.000Z"
    assert (found["other"], found["blind"]) == (None, "2026-03-28T17:00:00.000Z")
    assert found["clock"] == ["2026-03-29T04:30:00.000Z", "2026-03-28T21:00:00.000Z"]
    assert found["words"] == "tomorrow 07:00"
