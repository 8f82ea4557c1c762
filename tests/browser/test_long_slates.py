"""A slate that has grown long, and one of an older phone: counted right, handed in whole, in its order."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import Any

import pytest

from tests.browser.faulty_proxy import FaultyProxy
from tests.browser.offline_world import Phone, World, reading, wait_for

# The layout of version 0.1.0, with entries of every state as it kept them.
_OLD_SLATE = """(kept) => new Promise((done, failed) => {
  const gone = indexedDB.deleteDatabase("cellarslate");
  gone.onerror = failed;
  gone.onsuccess = () => {
    const asked = indexedDB.open("cellarslate", 1);
    asked.onerror = failed;
    asked.onupgradeneeded = () => {
      const entries = asked.result.createObjectStore("entries", { keyPath: "id" });
      entries.createIndex("state", "state");
      entries.createIndex("device_seq", ["device", "seq"]);
      asked.result.createObjectStore("cards", { keyPath: "mark" });
      asked.result.createObjectStore("meta");
      asked.result.createObjectStore("drafts");
    };
    asked.onsuccess = () => {
      const tx = asked.result.transaction(["entries", "meta"], "readwrite");
      for (const one of kept) tx.objectStore("entries").add(one);
      tx.objectStore("meta").put({ id: "PH-2", name: "PH-2", enrolled: true }, "device");
      tx.objectStore("meta").put(kept.length, "seq:PH-2");
      tx.oncomplete = () => { asked.result.close(); done(); };
    };
  };
})"""
_COUNTS = """async () => {
  const { counts, waiting, all } = await import("/static/slate/queue.js");
  const { unknownToCards } = await import("/static/slate/cards.js");
  const held = await all();
  const states = (name) => held.filter((one) => one.state === name && !one.seen).length;
  return { told: await counts(), waiting: (await waiting()).map((one) => one.seq),
    counted: Object.fromEntries(["waiting", "refused", "queried", "clash"].map((name) => [name, states(name)])),
    unknown: (await unknownToCards()).map((one) => one.seq), all: held.length,
    oldest: held.filter((one) => one.state === "waiting").at(-1)?.logged_at ?? null };
}"""
_LOG_MANY = """async ([draft, count]) => {
  const { log } = await import("/static/slate/queue.js");
  for (let at = 0; at < count; at += 1) await log({ ...draft, remark: `no ${at}` });
}"""
_LOAD = "async (text) => (await import('/static/slate/file.js')).loadSlate(new Blob([text]))"
_UNKNOWN = """async () => {
  const { unknownToCards } = await import("/static/slate/cards.js");
  return (await unknownToCards()).map((one) => one.entry.remark);
}"""
STATES = ["waiting", "entered", "queried", "refused", "clash", "waiting", "known", "refused"]


def kept(seq: int, state: str, **more: Any) -> dict[str, Any]:
    """An entry as a phone keeps it; the later ones have ids that sort the other way."""
    ident = f"0199{9999 - seq:04}-0000-7000-8000-{seq:012}"
    at = (datetime.now(UTC) - timedelta(days=1)).replace(microsecond=0) + timedelta(seconds=seq)
    entry = {**reading(remark=f"old {seq}"), "id": ident, "kind_version": 1, "read_at": at.isoformat(),
             "typed_at": at.isoformat(), "seen_by": "", "device": "PH-2", "seq": seq, "as_read": [],
             "looked_again": [], "amends": None, "reason": ""}
    return {"id": ident, "device": "PH-2", "seq": seq, "state": state, "entry": entry,
            "logged_at": f"{at:%Y-%m-%dT%H:%M:%S}.000Z", "receipt": None, "words": "", "seen": False, "offered": 0,
            "settled_at": None if state == "waiting" else f"{at:%Y-%m-%dT%H:%M:%S}.900Z", **more}


def consistent(phone: Phone) -> dict[str, Any]:
    """What the slate says of itself, where its tally is what its entries come to."""
    found: dict[str, Any] = phone.page.evaluate(_COUNTS)
    assert {name: found["told"][name] for name in found["counted"]} == found["counted"]
    assert found["told"]["oldest_at"] == found["oldest"]
    return found


def test_the_slate_of_an_older_phone_is_kept_counted_and_handed_in(world: World, phone: Phone) -> None:
    old = [kept(seq, state) for seq, state in enumerate(STATES, 1)]
    old.append(kept(9, "refused", seen=True))
    phone.open("/robots-nothing-here")  # a page of ours without the database open
    phone.page.evaluate(_OLD_SLATE, old)
    world.server.stop()
    phone.open("/slate")
    found = consistent(phone)
    assert found["all"] == 9
    assert found["counted"] == {"waiting": 2, "refused": 2, "queried": 1, "clash": 1}
    assert found["waiting"] == [1, 6], "in the order logged, not that of the ids"
    assert phone.log(reading(remark="new"))["seq"] == 10
    assert consistent(phone)["waiting"] == [1, 6, 10]
    world.server.start()
    phone.hand_in()
    phone.wait_until_settled()
    assert consistent(phone)["counted"]["waiting"] == 0
    assert [entry["seq"] for entry in world.all_entries()] == [1, 6, 10]


def test_a_tally_follows_whatever_happens_to_an_entry(world: World, phone: Phone) -> None:
    world.server.stop()
    for count in range(3):
        phone.log(reading(remark=f"no {count}"))
    bad = phone.log({**reading(), "kind": "no_such_kind"})
    assert consistent(phone)["counted"]["waiting"] == 4
    saved = phone.page.evaluate("async () => (await (await import('/static/slate/file.js')).saveSlate()).text()")
    world.server.start()
    phone.hand_in()
    wait_for(phone.page, "!(await (await import('/static/slate/queue.js')).counts()).waiting")
    assert consistent(phone)["counted"]["refused"] == 1
    for step in ("markSeen", "tryAgain"):
        phone.page.evaluate(f"async (id) => (await import('/static/slate/queue.js')).{step}(id)", bad["id"])
        consistent(phone)
    phone.page.evaluate("async (ms) => (await import('/static/slate/queue.js')).prune(ms)", 4e12)
    after = consistent(phone)
    assert after["all"] == 1, "what is settled and old is gone; what waits or nobody has seen stays"
    again = phone.page.evaluate(_LOAD, saved)
    assert again == {"added": 3, "known": 1}
    consistent(phone)


@pytest.mark.parametrize("mode", ["pass", "lose_answer"])
def test_a_long_slate_goes_in_batch_after_batch_and_nothing_is_lost_or_doubled(
    world: World, proxy: FaultyProxy, make_phone: Any, mode: Any
) -> None:
    """The next batch is on its way while the answer to the last is being written down; also where answers are lost."""
    phone: Phone = make_phone(proxy.url)
    phone.get_ready(world.token())
    proxy.mode = "unreachable"
    phone.page.evaluate(_LOG_MANY, [reading(), 450])
    assert consistent(phone)["counted"]["waiting"] == 450
    proxy.mode = mode
    phone.hand_in()
    proxy.mode = "pass"
    assert phone.hand_in()["standing"] == "idle"
    phone.wait_until_settled()
    found = consistent(phone)
    assert found["counted"]["waiting"] == 0 and found["all"] == 450
    entries = world.all_entries()
    assert [entry["seq"] for entry in entries] == list(range(1, 451))
    assert len({entry["id"] for entry in entries}) == 450


def test_a_page_shows_what_another_tab_has_logged_and_settled(world: World, phone: Phone) -> None:
    beside = phone.context.new_page()
    beside.goto(phone.url + "/slate")
    world.server.stop()
    phone.log(reading(remark="first"))
    assert beside.evaluate(_UNKNOWN) == ["first"]
    phone.log(reading(remark="second"))
    wait_for(beside, f"(await ({_UNKNOWN})()).length === 2")
    assert beside.evaluate(_UNKNOWN) == ["second", "first"]
    world.server.start()
    phone.hand_in()
    phone.wait_until_settled()
    wait_for(beside, f"!(await ({_UNKNOWN})()).length")
