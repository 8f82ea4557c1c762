"""A crowd at the sign-in: passwords are looked at one at a time, few may wait, and the rest are sent away at once."""

from __future__ import annotations

import os
import sys
import threading
from collections.abc import Callable, Iterator

import pytest
from flask import Flask
from flask.testing import FlaskClient

from tests.access.conftest import PASSWORD, csrf_of
from webapp.access import pages
from webapp.access.tries import Tries, network_of
from webapp.book.house import hashing
from webapp.book.house.hashing import BEHIND_MOST, TooManyAtOnce, in_turn


@pytest.fixture
def crowd() -> Iterator[Callable[[], None]]:
    """A function that lets as many look and wait as there are places, until the test ends."""
    end, threads = threading.Event(), []

    def fill() -> None:
        inside = threading.Semaphore(0)

        def look() -> None:
            inside.release()
            end.wait(60)

        threads.extend(threading.Thread(target=in_turn, args=(look,)) for _ in range(1 + BEHIND_MOST))
        for thread in threads:
            thread.start()
        assert inside.acquire(timeout=30), "the first looks"
        while hashing._places._value:
            assert not end.wait(0.01)

    yield fill
    end.set()
    for thread in threads:
        thread.join(60)


def test_what_a_look_returns_or_raises_comes_back() -> None:
    assert in_turn(lambda: 42) == 42
    with pytest.raises(ZeroDivisionError):
        in_turn(lambda: 1 / 0)


def test_more_than_may_wait_are_sent_away_at_once_and_later_ones_get_in(crowd: Callable[[], None]) -> None:
    crowd()
    with pytest.raises(TooManyAtOnce, match="Wait a moment, then try again"):
        in_turn(lambda: 42)


def test_after_a_crowd_there_is_room_again() -> None:
    for _ in range(3 * (1 + BEHIND_MOST)):
        assert in_turn(lambda: True)


@pytest.mark.skipif(sys.platform != "linux", reason="elsewhere a niceness is the whole process's")
def test_passwords_are_looked_at_behind_all_else() -> None:
    """setpriority(2) of Linux: "PRIO_PROCESS with the id of a thread", and os.nice acts on the thread that calls it."""
    own = os.getpriority(os.PRIO_PROCESS, threading.get_native_id())
    looking = in_turn(lambda: os.getpriority(os.PRIO_PROCESS, threading.get_native_id()))
    assert looking == min(own + 10, 19)
    assert os.getpriority(os.PRIO_PROCESS, threading.get_native_id()) == own


def _post(client: FlaskClient, code: str) -> tuple[int, str | None, str]:
    token = csrf_of(client.get("/sign-in").text)
    answer = client.post("/sign-in", data={"code": code, "password": PASSWORD, "csrf_token": token})
    return answer.status_code, answer.headers.get("Retry-After"), answer.text


def test_who_is_sent_away_is_told_to_wait_and_no_guess_is_counted(
    app: Flask, crowd: Callable[[], None], monkeypatch: pytest.MonkeyPatch
) -> None:
    for name in ("by_name_here", "by_name", "by_address"):
        monkeypatch.setattr(pages, name, Tries(most=1, window_s=60))
    crowd()
    for _ in range(3):
        status, wait, words = _post(app.test_client(), "OL")
        assert (status, wait) == (503, "3")
        assert "Many sign in at this moment" in words


@pytest.mark.parametrize(("address", "network"), [
    ("192.0.2.7", "192.0.2.7"),
    ("2001:db8:1:2:aaaa::1", "2001:db8:1:2::/64"),  # RFC 6177: a site has at least a /64
    ("2001:db8:1:2:bbbb::9", "2001:db8:1:2::/64"),
    ("2001:db8:1:3::1", "2001:db8:1:3::/64"),
    ("::ffff:192.0.2.7", "192.0.2.7"),  # RFC 4291, 2.5.5.2: an IPv4 address as IPv6 writes it
    (None, "?"), ("unix", "?"),
])
def test_tries_from_ipv6_are_counted_by_network(address: str | None, network: str) -> None:
    assert network_of(address) == network
