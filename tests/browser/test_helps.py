"""What the phone's system helps with: each where it exists, silent where not."""

from __future__ import annotations

import json
import random
import time
from pathlib import Path
from typing import Any

import pytest
from num2words import num2words

from tests.browser.floor_house import FERMENTER, STILL, Floor, far_floor, floor, near_floor
from tests.browser.offline_world import reading, wait_for
from tests.browser.test_heights import _IN_SIGHT

__all__ = ["far_floor", "floor", "near_floor"]

FORM = f"/m/{FERMENTER}/log/ferment_reading"
VECTORS = Path(__file__).parents[1] / "vectors" / "spoken_figures.json"
_PARSE = """async texts => {
  const { parseSpoken } = await import("/static/jobs/helps/spoken.js");
  return texts.map(parseSpoken);
}"""
# A phone that has all of it: what it is asked to do is written down.
_SYSTEM = """window.done = { badge: [], buzz: [], said: [], heard: [] };
  navigator.setAppBadge = async (count) => { done.badge.push(count); };
  navigator.clearAppBadge = async () => { done.badge.push(0); };
  navigator.vibrate = (pattern) => done.buzz.push(pattern);
  const media = globalThis.matchMedia;
  globalThis.matchMedia = (query) => (query === "(pointer: coarse)" ? { matches: true } : media(query));
  const voice = (name, lang, localService) => ({ name, lang, localService });
  const voices = [voice("far", "en-GB", false), voice("near", "en-US", true)];
  globalThis.SpeechSynthesisUtterance = class { constructor(text) { this.text = text; } };
  Object.defineProperty(globalThis, "speechSynthesis", { value: {
    getVoices: () => voices, cancel() {}, speak: ({ text, voice }) => done.said.push([voice.name, text]) } });
  globalThis.SpeechRecognition = class extends EventTarget {
    static available = async (wish) => (wish.processLocally && wish.langs[0] === "en-GB" ? "available" : "unavailable");
    start() {
      const results = [(globalThis.spoken ?? []).map((transcript) => ({ transcript }))];
      done.heard.push([this.lang, this.processLocally]);
      this.dispatchEvent(Object.assign(new Event("result"), { results }));
      this.dispatchEvent(new Event("end"));
    }
  };"""
_EMPTY = """async () => {
  const { write, ENTRIES, META } = await import("/static/slate/db.js");
  await write([ENTRIES, META], async (tx) => {
    await tx.objectStore(ENTRIES).clear();
    await tx.objectStore(META).delete("tally");
  });
  (await import("/static/slate/news.js")).tell("slate");
}"""
_BARE = """for (const name of ["setAppBadge", "clearAppBadge", "vibrate"]) delete Navigator.prototype[name];
  Object.defineProperty(globalThis, "speechSynthesis", { value: undefined });
  delete globalThis.SpeechRecognition;
  delete globalThis.webkitSpeechRecognition;
  delete globalThis.SyncManager;"""


def _open_with(floor: Floor, script: str, path: str, on: tuple[str, ...] = ()) -> Any:
    """Open a page of the same phone in another tab, whose system is as the script makes it."""
    page = floor.phone.context.new_page()
    floor.watch(page)
    page.add_init_script(script)
    page.add_init_script("".join(f"localStorage.setItem('help:{name}', 'on');" for name in on))
    page.goto(floor.phone.url + path)
    page.locator("html[data-started]").wait_for(state="attached")
    return page


def test_spoken_figures_are_read_as_written_in_the_vectors(floor: Floor) -> None:
    vectors = json.loads(VECTORS.read_text("utf-8"))
    found = floor.page.evaluate(_PARSE, [text for text, _, _ in vectors])
    assert [one and [one["raw"], one["units"]] for one in found] == [raw and [raw, units] for _, raw, units in vectors]


def test_figures_in_the_words_of_another_library_are_read(floor: Floor) -> None:
    """num2words writes figures as English speakers say them."""
    few = random.Random(20)
    figures = [*(str(n) for n in range(1300)), *(str(few.randrange(1300, 100_000)) for _ in range(200))]
    figures += [f"{n / 1000}" for n in range(981, 1120) if n != 1000] + [f"-{n / 10}" for n in range(11, 99) if n % 10]
    found = floor.page.evaluate(_PARSE, [num2words(float(one) if "." in one else int(one)) for one in figures])
    assert [one and one["raw"] for one in found] == figures


def test_helps_that_the_phone_has_not_are_not_shown_and_nothing_fails(floor: Floor) -> None:
    page = _open_with(floor, _BARE, "/job/helps", on=("aloud", "spoken"))
    page.locator("fieldset[data-field=gloves]").wait_for()
    assert page.locator("fieldset").count() == 1
    assert page.locator("[data-part=body]").inner_text().startswith("Gloves")
    page.close()


def test_badge_buzz_voice_and_microphone_do_their_part(floor: Floor) -> None:
    page = _open_with(floor, _SYSTEM, "/more", on=("aloud", "spoken"))
    page.get_by_role("link", name="Helps").click()
    page.locator("fieldset[data-field=spoken]").wait_for()
    assert page.locator("fieldset").evaluate_all("all => all.map(one => one.dataset.field)") == [
        "gloves", "buzz", "aloud", "spoken",
    ]
    page.goto(floor.phone.url + FORM)
    page.wait_for_selector("form[data-ready]")
    page.locator("[name=gravity]").focus()
    page.locator("[data-part=speak]").wait_for()
    page.evaluate("window.spoken = ['what', 'one point oh three one']")
    page.locator("[data-part=speak]").click()
    assert page.locator("[name=gravity]").input_value() == "1.031"
    page.evaluate("window.spoken = ['fourteen litres']")
    page.locator("[name=temp]").focus()
    page.locator("[data-part=speak]").click()
    page.locator(".toast", has_text="takes °C").wait_for()
    assert page.locator("[name=temp]").input_value() == ""
    assert floor.entries() == [], "what was heard is in the box, and nowhere else"
    page.locator("[name=temp]").fill("27")  # above the usual 20
    page.locator("[name=gravity]").focus()
    page.locator(".look").wait_for()
    done = page.evaluate("done")
    assert done["heard"] == [["en-GB", True]] * 2
    assert done["buzz"] == [[40, 90, 40]]
    assert {voice for voice, _ in done["said"]} == {"near"}
    said = [words for _, words in done["said"]]
    assert any(one.endswith(": 1.031") for one in said) and "Mash temperature: 27 degrees" in said
    wait_for(page, "done.said.some(([, words]) => words.startsWith('Look again?'))")
    page.evaluate("async draft => (await import('/static/slate/queue.js')).log(draft)", reading())
    wait_for(page, "done.badge.at(-1) === 1 && done.buzz.length === 2")
    assert page.evaluate("done.buzz[1]") == [25]
    page.evaluate(_EMPTY)
    wait_for(page, "done.badge.at(-1) === 0")
    page.close()


_SHARE = """navigator.canShare = ({ files }) => files.every((file) => file.type === "text/plain");
  navigator.share = async ({ files }) => {
    if (globalThis.refuses) throw new DOMException("", "NotAllowedError");
    globalThis.shared = { name: files[0].name, text: await files[0].text() };
  };"""


def test_the_slates_file_is_shared_or_else_saved(floor: Floor) -> None:
    kept = floor.phone.log(reading())
    page = _open_with(floor, _SYSTEM + _SHARE, "/slate")
    page.locator("summary", has_text="Keeping it safe").click()
    page.get_by_role("button", name="Save the slate to a file").click()
    wait_for(page, "globalThis.shared")
    shared = page.evaluate("shared")
    assert shared["name"].startswith("cellarslate-slate-") and shared["name"].endswith(".txt")
    assert [line["entry"]["id"] for line in json.loads(shared["text"])["entries"]] == [kept["id"]]
    load = "async text => (await import('/static/slate/file.js')).loadSlate(new Blob([text]))"
    assert page.evaluate(load, shared["text"]) == {"added": 0, "known": 1}
    page.evaluate("globalThis.refuses = true")
    with page.expect_download() as saved:
        page.get_by_role("button", name="Save the slate to a file").click()
    assert saved.value.suggested_filename == shared["name"].replace(".txt", ".json")
    page.close()


_GLOVED = [(390, 844, 100), (320, 568, 100), (320, 568, 200), (844, 390, 100)]


@pytest.mark.parametrize(("width", "height", "text_pct"), _GLOVED)
def test_gloves_have_larger_keys_and_fewer_boxes_in_sight(floor: Floor, width: int, height: int, text_pct: int) -> None:
    page = floor.open("/job/helps")
    page.locator("fieldset[data-field=gloves] .chip", has_text="on").click()
    try:
        page = floor.form(FORM)
        page.set_viewport_size({"width": width, "height": height})
        page.evaluate("pct => document.documentElement.style.setProperty('font-size', `${pct}%`)", text_pct)
        page.locator("[name=temp]").fill("27")
        page.locator("[name=gravity]").focus()
        page.keyboard.type("1.0")
        page.locator(".look").wait_for()
        wanted = ("field", "lead", "answer", "log")
        deadline = time.monotonic() + 10  # the page settles round what has grown
        while not all((found := page.evaluate(_IN_SIGHT))[one] for one in wanted) and time.monotonic() < deadline:
            page.wait_for_timeout(100)
        assert found["across"] <= 0 and found["keys"] == []
        assert [one for one in wanted if not found[one]] == []
        if (width, text_pct) == (390, 100):
            assert page.locator(".key[data-key='5']").bounding_box()["height"] >= 72
            page = floor.form(f"/m/{STILL}/log/charge")
            boxes = page.locator(".entry > :is(.field, .chips):visible")
            shown = "all => all.map(one => one.dataset.field)"
            assert boxes.evaluate_all(shown) == ["from_vessel", "wash", "wash_strength"]
            page.locator("[data-part=all-fields]").click()
            assert page.locator("[name=run_name]").is_visible()
    finally:
        page.set_viewport_size({"width": 390, "height": 844})
        page.evaluate("localStorage.removeItem('help:gloves')")


def test_what_waits_is_handed_in_once_after_the_app_was_closed(near_floor: Floor) -> None:
    world, phone = near_floor.world, near_floor.phone
    own = "(await navigator.serviceWorker.getRegistration('/static/jobs/helps/'))"
    page = near_floor.open("/today")
    wait_for(page, f"{own}?.active && {own}.scope.endsWith('/helps/')")
    world.server.stop()
    page.reload()
    kept = phone.log(reading())
    wait_for(page, f"(await {own}.sync.getTags()).length")
    devtools = phone.context.new_cdp_session(page)
    found: list[dict[str, Any]] = []
    devtools.on("ServiceWorker.workerRegistrationUpdated", lambda event: found.extend(event["registrations"]))
    devtools.send("ServiceWorker.enable")
    page.goto("about:blank")
    world.server.start()
    deadline = time.monotonic() + 45
    while not world.entries() and time.monotonic() < deadline:
        for one in (one for one in found if one["scopeURL"].endswith("/static/jobs/helps/")):
            wake = {"origin": phone.url + "/", "registrationId": one["registrationId"], "tag": "hand-in"}
            devtools.send("ServiceWorker.dispatchSyncEvent", {**wake, "lastChance": False})
        page.wait_for_timeout(300)
    assert [one["id"] for one in world.entries()] == [kept["id"]]
    page.goto(phone.url + "/slate")
    assert [one["state"] for one in phone.slate()] in (["entered"], ["queried"])
