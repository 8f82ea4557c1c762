"""Rate limits for guesses: a few tries a minute for one name, more for one address. In memory: one server process."""

from __future__ import annotations

import ipaddress
import threading
import time
from collections import OrderedDict, deque

KEYS_MOST = 10_000


def network_of(address: str | None) -> str:
    """Return what tries from an address are counted under: of IPv6 its /64, which one household or phone has whole."""
    try:
        known = ipaddress.ip_address(address or "")
    except ValueError:
        return "?"
    if isinstance(known, ipaddress.IPv4Address):
        return str(known)
    if known.ipv4_mapped is not None:
        return str(known.ipv4_mapped)
    return str(ipaddress.ip_network((int(known), 64), strict=False))


class Tries:
    """Counts failed tries in a sliding window and says how long to wait. Bounded: the oldest keys are forgotten."""

    def __init__(self, most: int, window_s: float, clock: object = time.monotonic) -> None:
        """Allow `most` failures per `window_s` for each key."""
        self._most, self._window_s, self._clock = most, window_s, clock
        self._failed: OrderedDict[str, deque[float]] = OrderedDict()
        self._lock = threading.Lock()

    def wait_s(self, key: str) -> int:
        """Return the seconds to wait before this key may try again; 0 if it may now."""
        with self._lock:
            # Asking keeps nothing: names asked about by the thousand must not push out those that were tried.
            times = self._kept(key) if key in self._failed else deque()
            if len(times) < self._most:
                return 0
            return max(1, int(times[0] + self._window_s - self._clock()) + 1)  # type: ignore[operator]

    def failed(self, key: str) -> None:
        """Count one failure."""
        with self._lock:
            self._kept(key).append(self._clock())  # type: ignore[operator]

    def passed(self, key: str) -> None:
        """Forget the failures of a key that got in."""
        with self._lock:
            self._failed.pop(key, None)

    def took_back(self, key: str) -> None:
        """Take the last failure of a key back, because it was no failure after all. Earlier ones stay."""
        with self._lock:
            if times := self._failed.get(key):
                times.pop()

    def _kept(self, key: str) -> deque[float]:
        times = self._failed.setdefault(key, deque())
        self._failed.move_to_end(key)
        while len(self._failed) > KEYS_MOST:
            self._failed.popitem(last=False)
        while times and times[0] <= self._clock() - self._window_s:  # type: ignore[operator]
            times.popleft()
        return times


class Remembered:
    """Keys that got in, the latest of them; forgotten with the process, as the tries are."""

    def __init__(self, most: int = KEYS_MOST) -> None:
        """Remember at most so many."""
        self._most = most
        self._kept: OrderedDict[str, None] = OrderedDict()
        self._lock = threading.Lock()

    def add(self, key: str) -> None:
        """Remember this key."""
        with self._lock:
            self._kept[key] = None
            self._kept.move_to_end(key)
            while len(self._kept) > self._most:
                self._kept.popitem(last=False)

    def __contains__(self, key: str) -> bool:
        with self._lock:
            return key in self._kept
