"""Limits of guesses on a clock of the test's own: how many, how long, whose, and that the memory stays small."""

from __future__ import annotations

import pytest

from webapp.access import tries
from webapp.access.tries import KEYS_MOST, Remembered, Tries


class Clock:
    """Seconds that pass when the test says so."""

    def __init__(self) -> None:
        self.now = 1000.0

    def __call__(self) -> float:
        return self.now


@pytest.fixture
def clock() -> Clock:
    return Clock()


def fail(some: Tries, key: str, times: int) -> None:
    for _ in range(times):
        some.failed(key)


def test_as_many_failures_as_allowed_and_not_one_more(clock: Clock) -> None:
    some = Tries(most=3, window_s=60, clock=clock)
    fail(some, "OL", 2)
    assert some.wait_s("OL") == 0
    some.failed("OL")
    assert some.wait_s("OL") == 61, "the whole window from the first failure, and the second that is cut off"


def test_the_wait_is_told_in_whole_seconds_and_never_as_none(clock: Clock) -> None:
    some = Tries(most=1, window_s=60, clock=clock)
    some.failed("OL")
    for passed, told in ((0.0, 61), (0.5, 60), (30.0, 31), (59.0, 2), (59.9, 1)):
        clock.now = 1000.0 + passed
        assert some.wait_s("OL") == told, passed


def test_after_the_window_a_key_may_try_again(clock: Clock) -> None:
    some = Tries(most=2, window_s=60, clock=clock)
    fail(some, "OL", 2)
    clock.now += 59.999
    assert some.wait_s("OL") > 0
    clock.now = 1060.0
    assert some.wait_s("OL") == 0, "a failure counts for the window, not for its last moment"


def test_the_window_slides_and_each_failure_leaves_it_by_itself(clock: Clock) -> None:
    some = Tries(most=2, window_s=60, clock=clock)
    some.failed("OL")
    clock.now += 40
    some.failed("OL")
    assert some.wait_s("OL") == 21, "until the first of them is a minute old"
    clock.now += 20
    assert some.wait_s("OL") == 0
    some.failed("OL")
    assert some.wait_s("OL") == 41, "the second is twenty seconds old"


def test_failures_that_have_left_the_window_are_not_kept(clock: Clock) -> None:
    some = Tries(most=5, window_s=60, clock=clock)
    for _ in range(100):
        fail(some, "OL", 1)
        clock.now += 61
    assert len(some._failed["OL"]) == 1


def test_one_keys_failures_are_not_anothers(clock: Clock) -> None:
    some = Tries(most=1, window_s=60, clock=clock)
    some.failed("OL")
    assert some.wait_s("OL") > 0
    assert some.wait_s("JK") == 0


def test_who_got_in_begins_anew(clock: Clock) -> None:
    some = Tries(most=2, window_s=60, clock=clock)
    fail(some, "OL", 2)
    some.passed("OL")
    assert some.wait_s("OL") == 0
    some.failed("OL")
    assert some.wait_s("OL") == 0
    some.passed("nobody who failed")


def test_a_failure_that_was_none_is_taken_back_and_those_before_it_stay(clock: Clock) -> None:
    some = Tries(most=2, window_s=60, clock=clock)
    some.failed("OL")
    clock.now += 10
    some.failed("OL")
    some.took_back("OL")
    assert some.wait_s("OL") == 0
    some.failed("OL")
    assert some.wait_s("OL") == 51, "the first is still there, ten seconds old"
    for _ in range(5):
        some.took_back("OL")
    some.took_back("nobody who failed")
    assert some.wait_s("OL") == 0


def test_without_a_clock_of_its_own_it_goes_by_time_that_is_never_set_back(monkeypatch: pytest.MonkeyPatch) -> None:
    import time

    assert Tries(most=1, window_s=60)._clock is time.monotonic


def test_asking_about_a_name_keeps_nothing_and_failing_pushes_the_oldest_out(
    clock: Clock, monkeypatch: pytest.MonkeyPatch
) -> None:
    assert KEYS_MOST == 10_000  # common practice, no source: a megabyte or two
    monkeypatch.setattr(tries, "KEYS_MOST", 3)
    some = Tries(most=1, window_s=60, clock=clock)
    for key in ("a", "b", "c"):
        some.failed(key)
    for number in range(10):
        assert some.wait_s(f"asked {number}") == 0
    assert set(some._failed) == {"a", "b", "c"}
    assert some.wait_s("a") > 0, "it was just looked at, so it is now the youngest"
    some.failed("d")
    assert list(some._failed) == ["c", "a", "d"]
    assert some.wait_s("b") == 0


def test_remembered_keys_are_the_latest_so_many() -> None:
    kept = Remembered(most=2)
    for key in ("a", "b", "a", "c"):
        kept.add(key)
    assert "a" in kept and "c" in kept
    assert "b" not in kept and "never" not in kept
    kept.add("d")
    assert "a" not in kept and "c" in kept and "d" in kept


def test_by_itself_it_remembers_as_many_as_the_tries() -> None:
    kept = Remembered()
    for number in range(KEYS_MOST + 1):
        kept.add(str(number))
    assert "0" not in kept and "1" in kept and str(KEYS_MOST) in kept
