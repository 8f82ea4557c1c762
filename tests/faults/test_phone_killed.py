"""The phone's browser is killed while entries are being kept: what it had said was on the slate is on the slate."""

from __future__ import annotations

import os
import random
import re
import time

import pytest

from tests.browser.offline_world import Phone, World, reading
from tests.faults.tally import Tally, new_tally

# Logs as fast as it can, and says of each entry that it is kept only when it is.
_LOG_ON = """async draft => {
  const { log } = await import("/static/slate/queue.js");
  for (let i = 0; i < 10_000; i += 1) console.log(`kept ${(await log({ ...draft, remark: `no ${i}` })).id}`);
}"""
_KEPT = re.compile(r"kept (\S+)\Z")
_START = f"draft => {{ ({_LOG_ON})(draft).catch(() => {{}}); }}"


def kill_often(world: World, phone: Phone, kills: int, seed: int) -> None:
    """Kill the browser so many times in the middle of logging, look each time, and hand everything in at the end."""
    chance = random.Random(seed)
    tally = new_tally("phone killed while it logs")
    phone.close()  # let in on another day: the browser writes cookies down only every half minute
    world.server.stop()
    said: set[str] = set()
    until = time.monotonic() + 60 * float(os.environ.get("FAULT_MINUTES_MOST", 600))
    for number in range(kills):
        if time.monotonic() > until:
            break
        page = phone.open("/slate")
        heard: set[str] = set()
        page.on("console", lambda line, heard=heard: heard.update(_KEPT.findall(line.text)))
        page.evaluate(_START, reading())
        page.wait_for_timeout(chance.uniform(5, 400))
        phone.kill()
        tally.faults += 1
        said |= heard
        phone.open("/slate")
        found = {one["id"]: one for one in phone.slate()}
        tally.lost += len(said - found.keys())
        seqs = sorted(one["seq"] for one in found.values())
        assert seqs == list(range(1, len(seqs) + 1)), "the counter has a gap, or gave one number twice"
        phone.close()
        if number % 20 == 19:
            print(f"{number + 1} kills, {len(said)} entries said to be kept", flush=True)
    _hand_in(world, phone, tally, said)


def _hand_in(world: World, phone: Phone, tally: Tally, said: set[str]) -> None:
    world.server.start()
    phone.open("/slate")
    slate = {one["id"] for one in phone.slate()}
    assert phone.hand_in()["standing"] == "idle"
    phone.wait_until_settled()
    entered = [row["id"] for row in world.all_entries()]
    tally.entries = len(slate)
    tally.lost += len((slate | said) - set(entered))
    tally.doubled += len(entered) - len(set(entered))
    # Kept, and killed before the page could say so: more than said is right, less is not.
    tally.notes["said to be kept"] = len(said)
    tally.check()
    assert set(entered) == slate


def test_a_phone_killed_while_it_logs_has_what_it_said_it_had(world: World, phone: Phone) -> None:
    kill_often(world, phone, 2, 1)


@pytest.mark.soak
@pytest.mark.timeout(0)  # FAULT_PHONE_KILLS says how many, FAULT_MINUTES_MOST when to stop
def test_a_phone_killed_two_hundred_times_has_what_it_said_it_had(world: World, phone: Phone) -> None:
    kill_often(world, phone, int(os.environ.get("FAULT_PHONE_KILLS", 200)), 2)
