"""Fifty phones that come up from the cellar in the same minute, against a real server."""

from __future__ import annotations

import http.client
import json
import threading
import time
from collections.abc import Callable
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from itertools import islice
from pathlib import Path
from typing import Any

import pytest

from tests.bench.book_season import fill_house, plausible
from tests.bench.table import Measured
from tests.server_process import ServerProcess
from webapp.book.fold import unjudged
from webapp.book.house import devices
from webapp.book.opening import open_book

pytestmark = [pytest.mark.bench, pytest.mark.timeout(600)]
PHONES, SHIFT_H = 50, 8
PATIENCE_MS = 8000  # after which a phone gives the line up and asks again with half as many (static/slate/ask.js)


@pytest.mark.parametrize("each", [20, 200])
def test_fifty_phones_hand_in_at_once(
    tmp_path: Path, make_server: Callable[..., ServerProcess], measured: Measured, each: int
) -> None:
    """One shift of one house, dealt out: each phone has every fiftieth entry, so all vessels come from many hands.

    Beside it the same entries in their order: each phone has its stretch, and one hands in after the other.
    """
    room = f"{PHONES} phones at once, {each} entries each, real server"
    in_order = _hand_in(tmp_path / "order", make_server, lambda shift: [
        shift[n * each : (n + 1) * each] for n in range(PHONES)
    ], each, at_once=False)
    dealt = _hand_in(tmp_path / "dealt", make_server, lambda shift: [
        shift[n::PHONES] for n in range(PHONES)
    ], each, at_once=True)
    measured.add(room, "until all are handed in", dealt.all_s, "s")
    measured.add(room, "together", PHONES * each / dealt.all_s, "entries/s")
    measured.add(room, "times the same entries in order", dealt.all_s / in_order.all_s, "", at_most=1.5)
    measured.add(room, "until all is judged, times the same in order", dealt.judged_s / in_order.judged_s, "")
    measured.add(room, "one phone's wait, median", sorted(dealt.took)[len(dealt.took) // 2], "ms")
    measured.add(room, "one phone's wait, longest", max(dealt.took), "ms", at_most=PATIENCE_MS)
    if dealt.peak_mb is not None:
        measured.add(room, "server's memory at its peak", dealt.peak_mb, "MB")


@dataclass
class _Shift:
    """How a shift came in: until all was handed in, and judged [s]; each phone's wait [ms]; memory [MB]."""

    all_s: float
    judged_s: float
    took: list[float]
    peak_mb: float | None


def _hand_in(
    folder: Path, make_server: Callable[..., ServerProcess],
    deal: Callable[[list[dict[str, Any]]], list[list[dict[str, Any]]]], each: int, *, at_once: bool,
) -> _Shift:
    folder.mkdir()
    began = datetime.now(UTC) - timedelta(hours=SHIFT_H)
    with open_book(folder / "book.sqlite") as book:
        marks = fill_house(book)
        tokens = [devices.new_token(book, "JK", f"PH-{n}") for n in range(PHONES)]
    server = make_server(folder)
    stories = deal(list(islice(plausible(marks, began, SHIFT_H * 3600 / (PHONES * each)), PHONES * each)))
    took: list[float] = []
    settled: list[str] = []
    together = threading.Barrier(PHONES + 1)
    turns = [threading.Event() for _ in range(PHONES + 1)]
    turns[0].set()

    def hand_in(turn: int, token: str, story: list[dict[str, Any]]) -> None:
        line = http.client.HTTPConnection(server.host, server.port, timeout=600)
        head = {"Content-Type": "application/json", "Origin": server.url}
        line.request("POST", "/api/enrol", json.dumps({"token": token, "name": "PH"}), head)
        answer = line.getresponse()
        cookie = answer.getheader("Set-Cookie", "").split(";")[0]
        device = json.loads(answer.read())["device"]["id"]
        for number, entry in enumerate(story, 1):
            entry |= {"device": device, "seq": number}
        together.wait()
        if not at_once:
            turns[turn].wait()
        body = json.dumps({"now": datetime.now(UTC).isoformat(), "device": device, "entries": story})
        begun = time.perf_counter()
        line.request("POST", "/api/hand-in", body, head | {"Cookie": cookie})
        answer = line.getresponse()
        text = answer.read()
        took.append((time.perf_counter() - begun) * 1000)
        turns[turn + 1].set()
        assert answer.status == 200, text[:300]
        settled.extend(result["settled"] for result in json.loads(text)["results"])
        line.close()

    threads = [
        threading.Thread(target=hand_in, args=(turn, token, story))
        for turn, (token, story) in enumerate(zip(tokens, stories, strict=True))
    ]
    for thread in threads:
        thread.start()
    together.wait()
    begun = time.perf_counter()
    for thread in threads:
        thread.join()
    all_s = time.perf_counter() - begun
    assert len(settled) == PHONES * each
    assert set(settled) <= {"entered", "queried"}
    with open_book(folder / "book.sqlite") as book:
        while unjudged.count_left(book):
            time.sleep(0.1)
    judged_s = time.perf_counter() - begun
    peak = _peak_mb(server)
    server.stop()
    return _Shift(all_s, judged_s, took, peak)


def _peak_mb(server: ServerProcess) -> float | None:
    """Return the largest of the server's processes. [MB]; None where the system does not say."""
    assert server.process is not None
    found = []
    for folder in Path("/proc").glob("[0-9]*"):
        try:
            status = (folder / "status").read_text()
            parent = (folder / "stat").read_text().rsplit(")", 1)[1].split()[1]
        except OSError:
            continue
        if str(server.process.pid) in (folder.name, parent) and "VmHWM:" in status:
            found.append(int(status.split("VmHWM:")[1].split()[0]) / 1024)
    return max(found) if found else None
