"""The line before the write door: whoever comes to it first takes along those who wait behind.

A write costs a wait for the disk, and late entries cost a walk through what follows from them. Taken together, both are
paid once. Nobody is let go before what was written for all of them is durable.
"""

from __future__ import annotations

import logging
import threading
import time
from collections import deque
from collections.abc import Callable
from math import inf
from typing import Generic, TypeVar

FIRST_PACE_S = 0.001  # of processor time for a unit of weight, before any group was served
_log = logging.getLogger("cellarslate.book")


class Turn:
    """One who waits. `weight`: how much there is to write for them, in any unit that adds up."""

    def __init__(self, weight: int) -> None:
        self.weight = weight
        self.is_over = False
        self.is_served = False


T = TypeVar("T", bound=Turn)


class Line(Generic[T]):
    """The line of one book.

    most: so much weight is taken along at once, but always one; most_s: and so much as holds the door no longer than
    that, by what the last group took. [s of processor time]
    """

    def __init__(self, most: int, most_s: float = inf) -> None:
        self._most, self._most_s = most, most_s
        self._pace_s = FIRST_PACE_S
        self._change = threading.Condition()
        self._waiting: deque[T] = deque()
        self._is_somebody_serving = False

    @property
    def is_waited_in(self) -> bool:
        """Whether anybody waits, so that what can be put off may be."""
        return bool(self._waiting)

    @property
    def waiting(self) -> int:
        """The number of those who wait behind the ones that are served."""
        return len(self._waiting)

    @property
    def is_served(self) -> bool:
        """Whether somebody's turn is being taken."""
        return self._is_somebody_serving

    def stand(self, mine: T, serve: Callable[[list[T]], None]) -> bool:
        """Wait until `serve` has been called with this turn among others, by this thread or another's.

        Return False where it failed for all of them: then each tries alone, so that nobody suffers for another.
        """
        with self._change:
            self._waiting.append(mine)
        while True:
            with self._change:
                self._change.wait_for(lambda: mine.is_over or not self._is_somebody_serving)
                if mine.is_over:
                    return mine.is_served
                self._is_somebody_serving = True
                group = self._next_group()
            self._serve(group, serve)

    def _next_group(self) -> list[T]:
        group = [self._waiting.popleft()]
        weight = group[0].weight
        most = min(self._most, self._most_s / self._pace_s)
        while self._waiting and weight + self._waiting[0].weight <= most:
            group.append(self._waiting.popleft())
            weight += group[-1].weight
        return group

    def _serve(self, group: list[T], serve: Callable[[list[T]], None]) -> None:
        is_served, begun_s = False, time.thread_time()
        try:
            serve(group)
            is_served = True
        except Exception:
            if len(group) > 1:
                _log.warning("%d hand-ins could not be taken together; each is tried alone", len(group), exc_info=True)
        finally:
            with self._change:
                self._is_somebody_serving = False
                took_s = max(time.thread_time() - begun_s, 1e-6)
                self._pace_s = took_s / max(sum(turn.weight for turn in group), 1)
                for turn in group:
                    turn.is_over, turn.is_served = True, is_served
                self._change.notify_all()
