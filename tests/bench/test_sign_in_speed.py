"""How long a phone waits for its answer while fifty strangers a second try passwords, against how long without them.

`python -m tests --bench -s tests/bench/test_sign_in_speed.py`. Each stranger comes from an address of its own, so that
no limit for one address sends it away before its password is looked at.
"""

from __future__ import annotations

import http.client
import itertools
import json
import statistics
import sys
import threading
import time
import urllib.parse
from collections.abc import Callable
from pathlib import Path

import pytest

from tests.bench.table import Measured
from tests.server_process import ServerProcess
from webapp.book.house import devices, people
from webapp.book.opening import open_book

pytestmark = [
    pytest.mark.bench, pytest.mark.timeout(300),
    pytest.mark.skipif(sys.platform != "linux", reason="only Linux has all of 127.0.0.0/8 to come from"),
]
HOSTILE_A_SECOND, EVERY_S, LAST_S = 50, 0.05, 15.0
MOST = 1.5


def test_a_phone_beside_a_crowd_at_the_sign_in(
    tmp_path: Path, make_server: Callable[..., ServerProcess], measured: Measured
) -> None:
    folder = tmp_path / "book"
    folder.mkdir()
    with open_book(folder / "book.sqlite") as book:
        people.put_person(book, {"code": "MD", "name": "M. D.", "access": "office"}, "MD")
        people.set_password(book, "MD", "plum and pear and quince")
        token = devices.new_token(book, "MD", "PH-1")
    server = make_server(folder)
    line = http.client.HTTPConnection(server.host, server.port, timeout=60)
    head = {"Content-Type": "application/json", "Origin": server.url}
    line.request("POST", "/api/enrol", json.dumps({"token": token, "name": "PH-1"}), head)
    answer = line.getresponse()
    cookie = answer.getheader("Set-Cookie", "").split(";")[0]
    answer.read()

    def waits() -> list[float]:
        took, until = [], time.monotonic() + LAST_S
        while time.monotonic() < until:
            begun = time.perf_counter()
            line.request("GET", "/api/cards", headers={"Cookie": cookie})
            got = line.getresponse()
            got.read()
            assert got.status == 200
            took.append((time.perf_counter() - begun) * 1000)
            time.sleep(EVERY_S)
        return sorted(took)

    quiet = waits()
    ended, seen = threading.Event(), []
    strangers = [threading.Thread(target=_stranger, args=(server, n, ended, seen)) for n in range(10)]
    for thread in strangers:
        thread.start()
    time.sleep(1)
    crowded = waits()
    ended.set()
    for thread in strangers:
        thread.join(60)
    line.close()
    room = f"a phone beside {HOSTILE_A_SECOND} hostile sign-ins a second"
    tried = len(seen) / (LAST_S + 1)
    assert tried > 0.8 * HOSTILE_A_SECOND, f"only {tried:.0f} a second"
    measured.add(room, "sign-ins a second", tried, "")
    measured.add(room, "of them looked at", seen.count(401) / (LAST_S + 1), "")
    for name, at in (("middle", 0.5), ("nine in ten", 0.9)):
        before, after = (took[int(at * (len(took) - 1))] for took in (quiet, crowded))
        measured.add(room, f"{name}, without them", before, "ms")
        measured.add(room, f"{name}, beside them", after, "ms")
        measured.add(room, f"{name}, ratio", after / before, "", **({"at_most": MOST} if at == 0.5 else {}))
    assert statistics.median(crowded) <= MOST * statistics.median(quiet)


def _stranger(server: ServerProcess, place: int, ended: threading.Event, seen: list[int]) -> None:
    """One of ten that together come fifty times a second, each time from another address and with a fresh form."""
    due = time.monotonic() + place / HOSTILE_A_SECOND
    for turn in itertools.count():
        if ended.wait(max(0.0, due - time.monotonic())):
            return
        due += 10 / HOSTILE_A_SECOND
        line = http.client.HTTPConnection(
            server.host, server.port, timeout=60, source_address=(f"127.{place + 1}.{turn // 250}.{turn % 250 + 1}", 0)
        )
        line.request("GET", "/sign-in")
        form = line.getresponse()
        cookie, text = form.getheader("Set-Cookie", "").split(";")[0], form.read().decode()
        token = text.split('name="csrf_token"', 1)[1].split('value="', 1)[1].split('"', 1)[0]
        body = urllib.parse.urlencode({"code": f"X{place}{turn}", "password": "a guess of mine", "csrf_token": token})
        head = {"Content-Type": "application/x-www-form-urlencoded", "Cookie": cookie, "Origin": server.url}
        line.request("POST", "/sign-in", body, head)
        answer = line.getresponse()
        answer.read()
        seen.append(answer.status)
        line.close()
