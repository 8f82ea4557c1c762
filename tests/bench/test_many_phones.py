"""Fifty phones that come up from the cellar in the same minute, against a real server."""

from __future__ import annotations

import http.client
import json
import threading
import time
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from itertools import islice
from pathlib import Path

import pytest

from tests.bench.book_season import entries, fill_house
from tests.bench.table import Measured
from tests.server_process import ServerProcess
from webapp.book.house import devices
from webapp.book.opening import open_book

pytestmark = [pytest.mark.bench, pytest.mark.timeout(600)]
PHONES, SHIFT_H = 50, 8
PATIENCE_MS = 8000  # after which a phone gives the line up and asks again with half as many (static/slate/ask.js)


@pytest.mark.parametrize("each", [20, 200])
def test_fifty_phones_hand_in_at_once(
    tmp_path: Path, make_server: Callable[..., ServerProcess], measured: Measured, each: int
) -> None:
    """One shift of one house, dealt out: each phone has every fiftieth entry, so all vessels come from many hands."""
    folder = tmp_path / "book"
    folder.mkdir()
    began = datetime.now(UTC) - timedelta(hours=SHIFT_H)
    with open_book(folder / "book.sqlite") as book:
        marks = fill_house(book)
        tokens = [devices.new_token(book, "JK", f"PH-{n}") for n in range(PHONES)]
    server = make_server(folder)
    shift = list(islice(entries(marks, began, SHIFT_H * 3600 / (PHONES * each)), PHONES * each))
    stories = [shift[n::PHONES] for n in range(PHONES)]
    took: list[float] = []
    settled: list[str] = []
    together = threading.Barrier(PHONES + 1)

    def hand_in(token: str, story: list[dict[str, object]]) -> None:
        line = http.client.HTTPConnection(server.host, server.port, timeout=600)
        head = {"Content-Type": "application/json", "Origin": server.url}
        line.request("POST", "/api/enrol", json.dumps({"token": token, "name": "PH"}), head)
        answer = line.getresponse()
        cookie = answer.getheader("Set-Cookie", "").split(";")[0]
        device = json.loads(answer.read())["device"]["id"]
        for number, entry in enumerate(story, 1):
            entry |= {"device": device, "seq": number}
        together.wait()
        body = json.dumps({"now": datetime.now(UTC).isoformat(), "device": device, "entries": story})
        begun = time.perf_counter()
        line.request("POST", "/api/hand-in", body, head | {"Cookie": cookie})
        answer = line.getresponse()
        text = answer.read()
        took.append((time.perf_counter() - begun) * 1000)
        assert answer.status == 200, text[:300]
        settled.extend(result["settled"] for result in json.loads(text)["results"])
        line.close()

    threads = [threading.Thread(target=hand_in, args=pair) for pair in zip(tokens, stories, strict=True)]
    for thread in threads:
        thread.start()
    together.wait()
    begun = time.perf_counter()
    for thread in threads:
        thread.join()
    all_s = time.perf_counter() - begun
    assert len(settled) == PHONES * each
    assert set(settled) <= {"entered", "queried"}
    room = f"{PHONES} phones at once, {each} entries each, real server"
    measured.add(room, "until all are handed in", all_s, "s")
    measured.add(room, "together", len(settled) / all_s, "entries/s")
    measured.add(room, "one phone's wait, median", sorted(took)[len(took) // 2], "ms")
    bound = {"at_most": PATIENCE_MS} if each == 20 else {}
    measured.add(room, "one phone's wait, longest", max(took), "ms", **bound)
    if (peak := _peak_mb(server)) is not None:
        measured.add(room, "server's memory at its peak", peak, "MB")


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
