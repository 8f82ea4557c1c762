"""Faults between phone and book: nothing is lost, nothing is doubled, and the phone says what is going on."""

from __future__ import annotations

import shutil
import sqlite3
from datetime import UTC, datetime
from typing import Any

import pytest

from tests.browser.faulty_proxy import FaultyProxy
from tests.browser.offline_world import FERMENTER, Phone, World, reading, wait_for
from webapp.book.intake import hand_in
from webapp.book.opening import open_book


@pytest.fixture
def far_phone(world: World, proxy: FaultyProxy, make_phone: Any) -> Phone:
    """A phone that is let in, behind the faulty network."""
    made: Phone = make_phone(proxy.url)
    made.get_ready(world.token())
    return made


def test_an_answer_lost_after_the_commit_makes_nothing_twice(
    world: World, proxy: FaultyProxy, far_phone: Phone
) -> None:
    proxy.mode = "lose_answer"
    kept = far_phone.log(reading())
    assert far_phone.hand_in()["standing"] == "no_signal"
    assert proxy.lost >= 1
    assert len(world.entries()) == 1, "the book has it"
    assert far_phone.slate()[0]["state"] == "waiting", "the phone cannot know"
    proxy.mode = "pass"
    assert far_phone.hand_in()["standing"] == "idle"
    (settled,) = far_phone.slate()
    assert (settled["state"], settled["receipt"]["settled"]) in (("known", "known"), ("queried", "known"))
    (entry,) = world.entries()
    assert (entry["id"], entry["book_no"]) == (kept["id"], settled["receipt"]["book_no"])


@pytest.mark.parametrize("mode", ["portal", "redirect", "unreachable"])
def test_another_voice_on_the_line_settles_nothing(
    mode: Any, world: World, proxy: FaultyProxy, far_phone: Phone
) -> None:
    far_phone.log(reading())
    far_phone.wait_until_settled()
    proxy.mode = mode
    far_phone.log(reading(remark="behind the portal"))
    status = far_phone.hand_in()
    assert status["standing"] == {"portal": "foreign"}.get(mode, "no_signal")
    assert "keeps everything" in status["words"]
    assert status["next_at"], "it tries again by itself"
    assert far_phone.slate()[0]["state"] == "waiting"
    page = far_phone.open(f"/m/{FERMENTER}?behind=portal")
    page.locator("[data-page=vessel] main").wait_for(state="attached")  # the portal's page gets nowhere near the cache
    proxy.mode = "pass"
    assert far_phone.hand_in()["standing"] == "idle"
    assert len(world.entries()) == 2


def test_a_line_that_swallows_packets_is_given_up_after_eight_seconds(proxy: FaultyProxy, far_phone: Phone) -> None:
    far_phone.page.evaluate("""async () => { const { onHandin } = await import("/static/slate/handin.js");
        globalThis.heard = []; onHandin((status) => heard.push(status.standing)); }""")
    proxy.mode = "swallow"
    far_phone.log(reading())
    wait_for(far_phone.page, "globalThis.heard.includes('no_signal')")
    assert far_phone.slate()[0]["state"] == "waiting"
    proxy.mode = "pass"
    assert far_phone.hand_in()["standing"] == "idle", "a tap does not wait for the back-off"


def test_a_phone_shut_out_while_offline_keeps_all_and_goes_on_when_let_in_again(
    world: World, proxy: FaultyProxy, far_phone: Phone
) -> None:
    proxy.mode = "unreachable"
    kept = [far_phone.log(reading(remark=f"no {i}")) for i in range(3)]
    world.revoke_all()
    proxy.mode = "pass"
    status = far_phone.hand_in()
    assert status["standing"] == "signed_out"
    assert "Nothing is lost" in status["words"]
    assert [one["state"] for one in far_phone.slate()] == ["waiting"] * 3
    assert world.entries() == []
    far_phone.page.evaluate(
        """async token => (await import("/static/slate/device.js")).enrol(token, "PH-2b")""", world.token("PH-2b")
    )
    far_phone.wait_until_settled()
    found = world.entries()
    assert {entry["id"] for entry in found} == {one["id"] for one in kept}
    assert {entry["device"] for entry in found} == {kept[0]["device"]}, "they keep the name they were logged under"
    later = far_phone.log(reading(remark="after"))
    assert later["device"] != kept[0]["device"]
    assert later["seq"] == 1


def test_two_tabs_at_once_hand_each_entry_in_once(world: World, far_phone: Phone, proxy: FaultyProxy) -> None:
    first = far_phone.page
    second = far_phone.context.new_page()
    second.goto(far_phone.url + "/slate")
    proxy.mode = "unreachable"
    add = """async ([draft, who]) => { const { log } = await import("/static/slate/queue.js");
        await Promise.all(Array.from({ length: 40 }, (_, i) => log({ ...draft, remark: `${who} ${i}` }))); }"""
    first.evaluate(add, [reading(), "first"])
    second.evaluate(add, [reading(), "second"])
    seqs = sorted(one["seq"] for one in far_phone.slate())
    assert seqs == list(range(1, 81)), "one counter for both, without gaps"
    proxy.mode = "pass"
    start = """() => { globalThis.done = import("/static/slate/handin.js").then((handin) => handin.handInNow()); }"""
    first.evaluate(start)
    second.evaluate(start)
    first.evaluate("globalThis.done")
    second.evaluate("globalThis.done")
    far_phone.wait_until_settled()
    assert sorted(entry["seq"] for entry in world.entries(limit=500)) == seqs
    second.close()


def test_a_full_phone_says_so_at_once_and_keeps_the_form(world: World, browser: Any) -> None:
    context = browser.new_context(viewport={"width": 390, "height": 844})
    page = context.new_page()
    # Set before the database is opened, for the browser looks at it then; it holds as long as the session is kept.
    session = context.new_cdp_session(page)
    session.send("Storage.overrideQuotaForOrigin", {"origin": world.server.url, "quotaSize": 3_000_000})
    page.goto(world.server.url + "/slate", wait_until="load")
    log = """async draft => { const { log } = await import("/static/slate/queue.js");
        try { return (await log(draft)).id; } catch (error) { return `${error.name}: ${error.message}`; } }"""
    kept = [page.evaluate(log, reading())]
    session.send("Storage.overrideQuotaForOrigin", {"origin": world.server.url, "quotaSize": 1000})
    # The browser counts what is written with some delay: a few large entries may still pass.
    for _ in range(12):
        said = page.evaluate(log, reading(remark="x" * 2_000_000))
        if said.startswith("SlateFull: "):
            break
        kept.append(said)
    assert said.startswith("SlateFull: "), said
    assert "file" in said, "it says what to do"
    draft = page.evaluate(
        """async name => (await import("/static/slate/drafts.js")).getDraft(name)""",
        f"full:ferment_reading:{FERMENTER}",
    )
    assert draft["values"]["values"]["gravity"]["raw"] == "1,031", "what was typed is not lost"
    session.send("Storage.overrideQuotaForOrigin", {"origin": world.server.url, "quotaSize": 1_000_000_000})
    kept.append(page.evaluate(log, reading()))
    found = page.evaluate(
        """async () => (await (await import("/static/slate/queue.js")).all()).map((kept) => [kept.id, kept.seq])"""
    )
    in_order = [[one, at + 1] for at, one in enumerate(kept)]
    assert sorted(found, key=lambda one: one[1]) == in_order, "nothing is gone, and the failed one has left no gap"
    text = page.evaluate("""async () => (await (await import("/static/slate/file.js")).saveSlate()).text()""")
    assert all(one in text for one in kept), "the way out is open"
    session.detach()
    context.close()


@pytest.mark.parametrize(("off_s", "word"), [(3 * 3600, "3 hours ahead"), (-8 * 31_557_600, "8 years behind")])
def test_a_wrong_clock_is_measured_and_said_and_rewrites_nothing(
    off_s: int, word: str, world: World, make_phone: Any
) -> None:
    phone = make_phone(world.server.url)
    phone.open("/today")
    phone.context.add_init_script(
        f"""{{ const RealDate = Date, off = {off_s * 1000};
        globalThis.Date = class extends RealDate {{
          constructor(...parts) {{ if (parts.length) super(...parts); else super(RealDate.now() + off); }}
          static now() {{ return RealDate.now() + off; }}
        }}; }}"""
    )
    phone.get_ready(world.token())
    kept = phone.log(reading())
    assert phone.hand_in()["standing"] == "idle"
    assert phone.slate()[0]["state"] in ("entered", "queried")
    (entry,) = world.entries()
    assert entry["typed_at"] == kept["entry"]["typed_at"]
    assert entry["skew_s"] == pytest.approx(off_s, abs=30)
    said = phone.page.evaluate("""async () => (await import("/static/slate/device.js")).clockWords()""")
    assert word in said


def test_a_book_restored_from_an_older_backup_is_made_whole(world: World, phone: Phone) -> None:
    phone.log(reading(remark="before the backup"))
    phone.wait_until_settled()
    world.server.stop()
    backup = world.data_dir / "backup.sqlite"
    with sqlite3.connect(world.book_path) as book, sqlite3.connect(backup) as copy:
        book.backup(copy)
    world.server.start()
    for i in range(3):
        phone.log(reading(remark=f"after the backup {i}"))
    assert phone.hand_in()["standing"] == "idle"
    assert len(world.entries()) == 4
    world.server.stop()
    for part in world.data_dir.glob("book.sqlite*"):
        part.unlink()
    shutil.copy(backup, world.book_path)
    assert len(world.entries()) == 1, "three are gone"
    world.server.start()
    assert phone.hand_in()["standing"] == "idle"
    phone.wait_until_settled()
    assert {entry["id"] for entry in world.entries()} == {one["id"] for one in phone.slate()}
    assert len(world.entries()) == 4


def test_a_restored_book_gets_entries_whose_numbers_a_twin_has_used_meanwhile(world: World, phone: Phone) -> None:
    """The counter has no gap then: that the book lacks what it had is seen by its head. What it still has stays so."""
    first = phone.log(reading(remark="before the backup"))
    phone.log(reading(gravity="1,045", remark="asks: it rose"))
    phone.wait_until_settled()
    asked = [one["id"] for one in phone.slate() if one["state"] == "queried"]
    assert asked
    world.server.stop()
    backup = world.data_dir / "backup.sqlite"
    with sqlite3.connect(world.book_path) as book, sqlite3.connect(backup) as copy:
        book.backup(copy)
    world.server.start()
    lost = [phone.log(reading(remark=f"after the backup {i}")) for i in range(2)]
    assert phone.hand_in()["standing"] == "idle"
    world.server.stop()
    for part in world.data_dir.glob("book.sqlite*"):
        part.unlink()
    shutil.copy(backup, world.book_path)
    now = datetime.now(UTC)
    twins = [one["entry"] | {"id": f"0193{one['seq']:04x}-0000-7000-8000-00000000000a"} for one in lost]
    for twin in twins:
        twin.pop("signature", None)  # the twin has no key of the phone
    batch = {"now": now.isoformat(), "device": first["device"], "entries": twins}
    with open_book(world.book_path) as book:
        hand_in(book, batch, via="phone", now=now)
    world.server.start()
    assert phone.hand_in()["standing"] == "idle"
    phone.wait_until_settled()
    ids = {one["id"] for one in phone.slate()}
    assert {entry["id"] for entry in world.entries()} == ids | {one["id"] for one in twins}
    assert set(asked) <= {one["id"] for one in phone.slate() if one["state"] == "queried"}, "its questions stay open"
    times = [one["settled_at"] for one in phone.slate()]
    assert phone.hand_in()["standing"] == "idle"
    assert [one["settled_at"] for one in phone.slate()] == times, "it does not offer them for ever"


def test_a_phone_restored_from_an_older_copy_does_not_count_twice(world: World, phone: Phone) -> None:
    for i in range(3):
        phone.log(reading(remark=f"no {i}"))
    phone.wait_until_settled()
    phone.page.evaluate("""async () => { const { getMeta, setMeta } = await import("/static/slate/db.js");
        await setMeta(`seq:${(await getMeta("device")).id}`, 1); }""")
    assert phone.hand_in()["standing"] == "idle"  # looking is enough to learn where the counter stands
    assert phone.log(reading(remark="after"))["seq"] == 4


def test_a_phone_that_lost_its_slate_but_not_its_cookie_is_the_same_phone(world: World, phone: Phone) -> None:
    phone.log(reading())
    phone.wait_until_settled()
    name = phone.slate()[0]["device"]
    phone.open("/robots-nothing-here")  # a page of ours without the database open
    phone.page.evaluate("""() => new Promise((done, failed) => { const asked = indexedDB.deleteDatabase("cellarslate");
        asked.onsuccess = done; asked.onerror = failed; })""")
    phone.open("/slate")
    assert phone.hand_in()["standing"] == "idle"
    first = phone.log(reading(remark="logged after the loss"))
    assert phone.hand_in()["standing"] == "idle"
    second = phone.log(reading(remark="and another"))
    phone.wait_until_settled()
    assert second["device"] == name
    found = world.entries()
    assert len(found) == 3
    counters = [(entry["device"], entry["seq"]) for entry in found]
    assert len(set(counters)) == 3, f"{counters}: no counter twice ({first['device']})"


def test_one_entry_the_book_cannot_take_holds_nobody_up(world: World, proxy: FaultyProxy, far_phone: Phone) -> None:
    proxy.mode = "unreachable"
    good = far_phone.log(reading(remark="good"))
    bad = far_phone.log({**reading(remark="bad"), "kind": "no_such_kind"})
    huge = far_phone.log(reading(remark="x" * 600_000))
    last = far_phone.log(reading(remark="last"))
    proxy.mode = "pass"
    assert far_phone.hand_in()["standing"] == "idle"
    states = {one["id"]: one for one in far_phone.slate()}
    assert states[good["id"]]["state"] in ("entered", "queried")
    assert states[last["id"]]["state"] in ("entered", "queried")
    assert states[bad["id"]]["state"] == "refused"
    assert states[bad["id"]]["words"], "it says why"
    assert states[huge["id"]]["state"] == "refused"
    assert "too large" in states[huge["id"]]["words"]
    assert {entry["id"] for entry in world.entries()} == {good["id"], last["id"]}
