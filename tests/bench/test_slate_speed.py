"""What logging costs with a long slate: `python -m tests.bench test_slate_speed.py`.

Two phones on a slowed computer (Chromium's throttling, four times), the server away: one with five entries waiting, one
with 5,000, in turns within one run, so that a busy computer is as slow for both. Logging is the tap until the entry is
on the disk and what waits is counted anew, as every page does it.
"""

from __future__ import annotations

import statistics
from collections.abc import Callable

import pytest

from tests.bench.table import Measured
from tests.browser.offline_world import Phone, World, reading

SLOWED, FEW, MANY, ROUNDS, TAPS = 4, 5, 5000, 12, 6
MOST_RATIO, MOST_P95_MS, MOST_SIGNED = 1.2, 25.0, 1.5
WHERE = f"slate, CPU slowed {SLOWED} times"

_FILL = """async ([draft, count]) => {
  const { write, ENTRIES, META } = await import("/static/slate/db.js");
  const { put, asKept } = await import("/static/slate/queue.js");
  const { makeEntry } = await import("/static/slate/entry.js");
  for (let done = 0; done < count; done += 500) {
    await write([ENTRIES, META], async (tx) => {
      const { id: device } = await tx.objectStore(META).get("device");
      const seq = (await tx.objectStore(META).get(`seq:${device}`)) ?? 0;
      const made = [];
      const share = Math.min(500, count - done);
      for (let at = 1; at <= share; at += 1) made.push(makeEntry(draft, { device, seq: seq + at }));
      await put(tx, made.map((entry) => ({ kept: asKept(entry) })));
      await tx.objectStore(META).put(seq + made.length, `seq:${device}`);
    });
  }
}"""
_TAPS = """async ([draft, rounds]) => {
  const { log, counts } = await import("/static/slate/queue.js");
  const took = [];
  for (let at = 0; at < rounds; at += 1) {
    const begun = performance.now();
    await log({ ...draft, remark: `round ${at}` });
    await counts();
    took.push(performance.now() - begun);
    await new Promise((go) => setTimeout(go, 60));
  }
  return took;
}"""

pytestmark = [pytest.mark.bench, pytest.mark.timeout(900)]


def p95(took: list[float]) -> float:
    return sorted(took)[int(len(took) * 0.95)]


def test_logging_costs_the_same_with_five_waiting_and_with_five_thousand(
    world: World, make_phone: Callable[..., Phone], measured: Measured
) -> None:
    phones: dict[int, Phone] = {}
    for waiting, name in ((FEW, "PH-2"), (MANY, "PH-3")):
        phones[waiting] = make_phone(world.server.url)
        phones[waiting].get_ready(world.token(name))
    world.server.stop()
    sessions = []
    for waiting, phone in phones.items():
        phone.page.evaluate(_FILL, [reading(), waiting])
        phone.open("/more")
        sessions.append(phone.context.new_cdp_session(phone.page))
    for session in sessions:
        session.send("Emulation.setCPUThrottlingRate", {"rate": SLOWED})
    took: dict[int, list[float]] = {FEW: [], MANY: []}
    for _ in range(ROUNDS):
        for waiting, phone in phones.items():
            took[waiting] += phone.page.evaluate(_TAPS, [reading(), TAPS])
    few, many = statistics.median(took[FEW]), statistics.median(took[MANY])
    for waiting in (FEW, MANY):
        measured.add(WHERE, f"tap to counted, {waiting} waiting, median", statistics.median(took[waiting]), "ms")
    slow = measured.add(WHERE, f"tap to counted, {MANY} waiting, p95", p95(took[MANY]), "ms", at_most=MOST_P95_MS)
    ratio = measured.add(WHERE, f"{MANY} waiting against {FEW}", many / few, "times", at_most=MOST_RATIO)
    assert ratio.holds and slow.holds


def test_logging_with_a_signature_costs_little_more_than_without(
    world: World, make_phone: Callable[..., Phone], measured: Measured
) -> None:
    phones: dict[str, Phone] = {}
    for signs, name in (("signed", "PH-2"), ("unsigned", "PH-3")):
        phones[signs] = make_phone(world.server.url)
        phones[signs].open("/today")
        if signs == "unsigned":
            phones[signs].context.add_init_script(
                "Object.defineProperty(crypto, 'subtle', { value: undefined, configurable: true })"
            )
        phones[signs].get_ready(world.token(name))
    world.server.stop()
    took: dict[str, list[float]] = {signs: [] for signs in phones}
    for phone in phones.values():
        phone.open("/more")
        phone.context.new_cdp_session(phone.page).send("Emulation.setCPUThrottlingRate", {"rate": SLOWED})
    for _ in range(ROUNDS):
        for signs, phone in phones.items():
            took[signs] += phone.page.evaluate(_TAPS, [reading(), TAPS])
    signed, unsigned = (statistics.median(took[signs]) for signs in ("signed", "unsigned"))
    for signs in phones:
        measured.add(WHERE, f"tap to counted, {signs}, median", statistics.median(took[signs]), "ms")
    assert all("signature" in kept["entry"] for kept in phones["signed"].slate())
    assert not any("signature" in kept["entry"] for kept in phones["unsigned"].slate())
    ratio = measured.add(WHERE, "signed against unsigned", signed / unsigned, "times", at_most=MOST_SIGNED)
    assert ratio.holds
