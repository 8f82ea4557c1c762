"""How fast and how small the floor is: `python -m tests.bench test_floor_speed.py`.

Held on a slowed computer (Chromium's throttling, four times): the tap to a durable entry, and an offline start.
"""

from __future__ import annotations

import gzip
import http.client
import json
import re
import statistics
import time
from collections.abc import Callable
from typing import Any

import brotli
import pytest

from tests.bench.slow_line import SLOW_3G, SlowLine
from tests.bench.table import Measured
from tests.browser.offline_world import FERMENTER, READY, Phone, World, reading

SLOWED = 4
TAP_P95_MS = 50.0
START_MS = 500.0
INSTALL_KB = 150.0
ROUNDS = 60
STARTS = 10

_TAPS = """async ([draft, rounds]) => {
  const { log } = await import("/static/slate/queue.js");
  const took = [];
  for (let i = 0; i < rounds; i += 1) {
    const begun = performance.now();
    await log({ ...draft, remark: `round ${i}` });
    took.push(performance.now() - begun);
    await new Promise((go) => setTimeout(go, 30));
  }
  return took; }"""

pytestmark = pytest.mark.bench


def _slowed(phone: Phone) -> Any:
    session = phone.context.new_cdp_session(phone.page)
    session.send("Emulation.setCPUThrottlingRate", {"rate": SLOWED})
    return session


def test_from_the_tap_to_durable(world: World, phone: Phone, measured: Measured) -> None:
    world.server.stop()
    phone.open("/more")
    _slowed(phone)
    took = sorted(phone.page.evaluate(_TAPS, [reading(), ROUNDS]))
    p95 = took[int(len(took) * 0.95)]
    measured.add("floor, CPU slowed 4 times", "tap to durable, median", statistics.median(took), "ms")
    assert measured.add("floor, CPU slowed 4 times", "tap to durable, p95", p95, "ms", at_most=TAP_P95_MS).holds


def test_a_warm_start_without_signal(world: World, phone: Phone, measured: Measured) -> None:
    path = f"/m/{FERMENTER}/log/ferment_reading"
    phone.open(path)
    world.server.stop()
    _slowed(phone)
    took = []
    for _ in range(STARTS):
        begun = time.perf_counter()
        phone.page.goto(phone.url + path, wait_until="commit")
        phone.page.locator("form[data-ready]").wait_for(state="attached")
        took.append((time.perf_counter() - begun) * 1000)
    measured.add("floor, CPU slowed 4 times", f"warm start without signal, slowest of {STARTS}", max(took), "ms")
    median = statistics.median(took)
    row = measured.add("floor, CPU slowed 4 times", "warm start without signal, median", median, "ms", at_most=START_MS)
    assert row.holds


@pytest.mark.parametrize("encoding", ["gzip, br", "gzip"])
def test_the_first_install(world: World, encoding: str, measured: Measured) -> None:
    """What the worker fetches before it stands, counted as sent. Browsers take `br` over TLS, as phones are served."""
    sizes: dict[str, int] = {}

    def fetch(url: str) -> bytes:
        connection = http.client.HTTPConnection("127.0.0.1", world.server.port, timeout=30)
        connection.request("GET", url, headers={"Accept-Encoding": encoding})
        answer = connection.getresponse()
        body, packed_by = answer.read(), answer.getheader("Content-Encoding")
        connection.close()
        assert answer.status == 200, url
        sizes[url] = len(body)
        unpack = {"br": brotli.decompress, "gzip": gzip.decompress, None: bytes}[packed_by]
        return bytes(unpack(body))

    constants = dict(re.findall(r"^const ([A-Z]+) = (.*);$", fetch("/sw.js").decode(), re.MULTILINE))
    floor, *right_after = json.loads(constants["PARTS"])

    def fetch_part(part: dict[str, Any]) -> None:
        for url in [f"/pack/{part['pack']}", *(url for url, _ in part["files"])]:
            fetch(url)

    fetch_part(floor)
    first = sum(sizes.values()) / 1024
    for part in right_after:
        fetch_part(part)
    later = sum(sizes.values()) / 1024 - first
    over = "as sent over TLS" if "br" in encoding else "as sent over plain http"
    texts = f"pack of {len(floor['texts'])} text files, {over}"
    measured.add("first install", texts, sizes[f"/pack/{floor['pack']}"] / 1024, "KB")
    measured.add("first install", f"what comes right after, the reader of labels in it, {over}", later, "KB")
    # Held where phones are: over TLS.
    bound = {"at_most": INSTALL_KB} if "br" in encoding else {}
    assert measured.add("first install", over, first, "KB", **bound).holds is not False


def test_the_first_install_and_a_start_on_a_slow_line(
    world: World, make_phone: Callable[..., Phone], measured: Measured
) -> None:
    """A slow phone on slow 3G: until it can work without signal, and how long a start takes then."""
    line = SlowLine(world.server.port, **SLOW_3G)
    room = "floor, CPU slowed 4 times, slow 3G"
    try:
        phone = make_phone(f"http://127.0.0.1:{line.port}")
        phone.open("/today")
        _slowed(phone)
        begun = time.perf_counter()
        phone.page.evaluate(READY)
        measured.add(room, "first page to ready without signal, plain http", time.perf_counter() - begun, "s")
        phone.get_ready(world.token())
        _slowed(phone)
        took = []
        for _ in range(STARTS):
            begun = time.perf_counter()
            phone.page.goto(f"{phone.url}/m/{FERMENTER}/log/ferment_reading", wait_until="commit")
            phone.page.locator("form[data-ready]").wait_for(state="attached")
            took.append((time.perf_counter() - begun) * 1000)
        measured.add(room, "warm start, median", statistics.median(took), "ms", at_most=START_MS)
    finally:
        line.close()
