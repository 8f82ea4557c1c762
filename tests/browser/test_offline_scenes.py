"""Scenes of a phone without signal, against a real server process that is really stopped."""

from __future__ import annotations

import time
from typing import Any

import pytest

from tests.browser.offline_world import FERMENTER, STILL, Phone, World, reading, wait_until_started, wait_until_waiting


def _visible_form(page: Any) -> None:
    page.locator("form[data-kind=ferment_reading] input[name=gravity]").wait_for(state="visible")


@pytest.mark.parametrize(
    ("path", "seen"),
    [
        ("/", "[data-page=today] main"),
        ("/today?from=home", "[data-page=today] main"),
        (f"/m/{FERMENTER}", "[data-page=vessel] main"),
        (f"/M/{FERMENTER}", "[data-page=vessel] main"),
        (f"/M/{FERMENTER}?x=1&y=2", "[data-page=vessel] main"),
        (f"/m/{FERMENTER}/log/ferment_reading", "form[data-kind=ferment_reading]"),
        (f"/m/{STILL}/run", "[data-page=run] main"),
        ("/log/shift_note", "form[data-kind=shift_note]"),
        ("/scan", "[data-page=scan] main"),
        ("/slate", "[data-page=slate] main"),
        ("/more", "[data-page=more] main"),
        ("/who", "[data-page=who] main"),
        ("/start", "[data-page=enrol] main"),
        ("/desk/entries?q=F3", "[data-page=away] main"),  # not the browser's own error page
    ],
)
def test_every_floor_page_opens_with_the_server_stopped(path: str, seen: str, settled_phone: Phone) -> None:
    page = settled_phone.open(path)
    page.locator(seen).wait_for(state="attached")
    assert page.evaluate("navigator.onLine"), "the flag says online; nothing may lean on it"
    assert page.evaluate("performance.getEntriesByType('navigation')[0].workerStart > 0")


def test_a_reading_logged_offline_survives_a_killed_browser_and_is_in_the_book_once(world: World, phone: Phone) -> None:
    phone.close()  # let in on another day: the browser writes cookies down only every half minute
    phone.open("/today")
    world.server.stop()
    page = phone.open(f"/M/{FERMENTER}")
    kept = phone.log(reading())
    phone.kill()

    page = phone.open(f"/m/{FERMENTER}?again=1")
    assert [(one["id"], one["state"]) for one in phone.slate()] == [(kept["id"], "waiting")]
    shown = page.evaluate(
        """async mark => { const cards = await import("/static/slate/cards.js");
        await (await import("/static/kinds/kinds.js")).loadKinds();
        return cards.withWaiting(await cards.getCard(mark), await cards.unknownToCards()); }""",
        FERMENTER,
    )
    assert shown["last"]["ferment_reading"]["gravity"]["value"] == 1.031
    assert shown["recent"][0]["waiting"] is True

    world.server.start()
    assert phone.hand_in()["standing"] == "idle"
    (settled,) = phone.slate()
    assert settled["state"] in ("entered", "queried")
    (entry,) = world.entries(mark=FERMENTER)
    assert entry["id"] == kept["id"]
    assert phone.hand_in()["standing"] == "idle"
    assert len(world.entries()) == 1


def test_the_form_logs_offline_by_hand(world: World, phone: Phone) -> None:
    """The whole way of a cellar hand: label link, form, two figures, the button, gone home, handed in by itself."""
    world.server.stop()
    page = phone.open(f"/m/{FERMENTER}/log/ferment_reading")
    _visible_form(page)
    wait_until_started(page)
    page.fill("input[name=temp]", "14,6")
    page.fill("input[name=gravity]", "1,031")
    page.locator("[data-part=log]").click()
    page.wait_for_url(f"**/m/{FERMENTER}")  # the form moves on by itself once the entry is durable
    wait_until_waiting(page, 1)
    (kept,) = phone.slate()
    assert kept["entry"]["values"]["gravity"] == {"raw": "1,031", "unit": "SG"} | (
        {"instrument": kept["entry"]["values"]["gravity"]["instrument"]}
        if "instrument" in kept["entry"]["values"]["gravity"]
        else {}
    )
    assert kept["entry"]["person"] == "NS"
    world.server.start()
    page = phone.open("/today")  # coming up from the cellar and looking at the phone is enough
    phone.wait_until_settled()
    (settled,) = phone.slate()
    # "known" where the page was left before its hand-in was answered, and the next page asked again.
    assert settled["state"] in ("entered", "queried", "known"), settled["words"]
    (entry,) = world.entries(mark=FERMENTER)
    assert entry["id"] == kept["id"]


def test_two_hundred_and_fifty_entries_go_in_two_batches_in_order(world: World, phone: Phone) -> None:
    world.server.stop()
    phone.page.evaluate(
        """async draft => { const { log } = await import("/static/slate/queue.js");
        for (let i = 0; i < 250; i += 1) await log({ ...draft, remark: `round ${i}` }); }""",
        reading(),
    )
    world.server.start()
    assert phone.hand_in()["standing"] == "idle"
    found = sorted(world.entries(limit=1000), key=lambda entry: entry["book_no"])
    assert [entry["seq"] for entry in found] == list(range(1, 251))
    assert {one["state"] for one in phone.slate()} <= {"entered", "queried"}


def test_a_newer_version_waits_for_consent_and_touches_no_entry(world: World, proxy: Any, make_phone: Any) -> None:
    phone = make_phone(proxy.url)
    page = phone.get_ready(world.token())
    first = page.evaluate("""async () => (await import("/static/slate/worker.js")).workerVersion()""")
    # The book stays out of reach, so that the entries still wait while the version changes.
    proxy.barred = "/api/"
    kept = [phone.log(reading(remark=f"no {i}"))["id"] for i in range(3)]
    proxy.worker_suffix = "newer-version"
    page.evaluate("""async () => { await (await navigator.serviceWorker.ready).update(); }""")
    notice = page.locator(".notice")
    notice.wait_for()
    time.sleep(0.5)
    assert page.evaluate("""async () => (await import("/static/slate/worker.js")).workerVersion()""") == first
    with page.expect_navigation():
        notice.locator("button.button--main").click()
    wait_until_started(page)
    assert page.evaluate("""async () => (await import("/static/slate/worker.js")).workerVersion()""") == "newer-version"
    # What the phone held before is there in the newer version at once, and the older one is gone.
    names = page.evaluate("caches.keys()")
    assert sorted(name for name in names if "-floor-" in name or "-jobs-" in name) == [
        "cellarslate-floor-newer-version",
        "cellarslate-jobs-newer-version",
    ]
    assert {one["id"] for one in phone.slate() if one["state"] == "waiting"} == set(kept)
    proxy.barred = ""
    assert phone.hand_in()["standing"] == "idle"
    assert {entry["id"] for entry in world.entries()} == set(kept)


def test_a_slate_saved_to_a_file_is_handed_in_from_another_phone(world: World, phone: Phone, make_phone: Any) -> None:
    world.server.stop()
    kept = [phone.log(reading(remark=f"no {i}")) for i in range(3)]
    text = phone.page.evaluate("""async () => (await (await import("/static/slate/file.js")).saveSlate()).text()""")
    world.server.start()
    other = make_phone(world.server.url)
    other.get_ready(world.token("PH-3"))
    load = """async text => { const { loadSlate } = await import("/static/slate/file.js");
      try { return await loadSlate(new Blob([text])); } catch (error) { return error.message; } }"""
    damaged = text.replace("no 1", "no 7")
    assert "damaged" in other.page.evaluate(load, damaged)
    assert "damaged" in other.page.evaluate(load, text[: len(text) // 2])
    assert "no slate" in other.page.evaluate(load, '{"marker": "else"}')
    assert other.page.evaluate(load, text) == {"added": 3, "known": 0}
    assert other.hand_in()["standing"] == "idle"
    found = {entry["id"]: entry for entry in world.entries()}
    assert set(found) == {one["id"] for one in kept}
    assert {entry["device"] for entry in found.values()} == {kept[0]["device"]}
    # Then the first phone comes up too: the book knows them already.
    assert phone.hand_in()["standing"] == "idle"
    assert {one["state"] for one in phone.slate()} <= {"known", "entered", "queried"}
    assert len(world.entries()) == 3


@pytest.fixture(scope="module")
def settled_phone(tmp_path_factory: pytest.TempPathFactory, playwright: Any, browser_options: dict[str, Any]) -> Any:
    """A phone whose server has been stopped; shared by tests that only open pages."""
    from tests.server_process import ServerProcess

    folder = tmp_path_factory.mktemp("stopped")
    made = World(folder, lambda data_dir: ServerProcess(data_dir).start())
    shared = Phone(playwright, browser_options, folder / "profile", made.server.url)
    try:
        shared.get_ready(made.token())
        made.server.stop()
        yield shared
    finally:
        shared.close()
        made.server.close()
