"""Passwords looked at one at a time: hashing is slow on purpose, and a crowd at the door must not hold up phones."""

from __future__ import annotations

import os
import sys
import threading
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from typing import TypeVar

from webapp.book.record.errors import BookError

T = TypeVar("T")
# How many may stand behind the one whose password is looked at: each holds a thread of the server, of which most stay
# free for phones (webapp/serving/server.py, THREADS).
BEHIND_MOST = 2
WAIT_S = 3  # what a person who was sent away is asked to wait
_NICENESS = 10

_places = threading.BoundedSemaphore(1 + BEHIND_MOST)


class TooManyAtOnce(BookError):
    """More people sign in than passwords can be looked at; `str(error)` says what to do."""


def in_turn(look: Callable[[], T]) -> T:
    """Return what `look` returns or raises, run when it is its turn. TooManyAtOnce where too many wait already."""
    if not _places.acquire(blocking=False):
        raise TooManyAtOnce("Many sign in at this moment. Wait a moment, then try again. Phones go on meanwhile.")
    try:
        return _pool.submit(look).result()
    finally:
        _places.release()


def _step_back() -> None:
    # Linux keeps a niceness for each thread, and those that argon2 starts inherit it; elsewhere it is the process's.
    if sys.platform == "linux":
        os.nice(_NICENESS)


_pool = ThreadPoolExecutor(1, "passwords", _step_back)
