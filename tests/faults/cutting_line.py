"""A line between phone and book that breaks at a byte: on the way in, on the way back, or that only drips."""

from __future__ import annotations

import contextlib
import random
import socket
import threading
import time
from collections import Counter
from dataclasses import dataclass

FAULTS = ("cut_request", "cut_answer", "lose_answer", "drip_request", "drip_answer")


@dataclass
class _Plan:
    fault: str
    after: int  # bytes that pass before the fault


class CuttingLine:
    """Serves on a port of its own and passes bytes to `port`; each connection meets a fault of chance, or none.

    `calm` lets everything through. `injected` counts what was really done: a cut behind the last byte is none.
    """

    def __init__(self, port: int, seed: int, *, share: float = 0.8) -> None:
        self.calm = False
        self.injected: Counter[str] = Counter()
        self._port, self._share = port, share
        self._chance = random.Random(seed)
        self._server = socket.create_server(("127.0.0.1", 0))
        threading.Thread(target=self._take_calls, daemon=True).start()

    @property
    def url(self) -> str:
        """Where the phone goes."""
        return f"http://127.0.0.1:{self._server.getsockname()[1]}"

    def close(self) -> None:
        """Take no more calls."""
        self._server.close()

    def _take_calls(self) -> None:
        with contextlib.suppress(OSError):
            while True:
                caller, _ = self._server.accept()
                plan = self._plan()
                threading.Thread(target=self._carry, args=(caller, plan), daemon=True).start()

    def _plan(self) -> _Plan:
        if self.calm or self._chance.random() > self._share:
            return _Plan("", 0)
        fault = self._chance.choice(FAULTS)
        # Evenly over the magnitudes: heads are some hundred bytes, bodies up to tens of thousands.
        return _Plan(fault, int(10 ** self._chance.uniform(0, 4.3)))

    def _carry(self, caller: socket.socket, plan: _Plan) -> None:
        with contextlib.suppress(OSError), caller, socket.create_connection(("127.0.0.1", self._port), 20) as book:
            caller.settimeout(20)
            back = threading.Thread(target=self._pass, args=(book, caller, plan, "answer"), daemon=True)
            back.start()
            self._pass(caller, book, plan, "request")
            back.join(30)

    def _pass(self, source: socket.socket, target: socket.socket, plan: _Plan, way: str) -> None:
        passed = 0
        is_mine = plan.fault.endswith(way)
        with contextlib.suppress(OSError):
            while data := source.recv(4096):
                if is_mine and plan.fault.startswith("lose"):
                    # The book has written all down and answered: nobody hears it.
                    self._cut(plan, source, target)
                    return
                if is_mine and plan.fault.startswith("cut") and passed + len(data) > plan.after:
                    target.sendall(data[: plan.after - passed])
                    self._cut(plan, source, target)
                    return
                if is_mine and plan.fault.startswith("drip"):
                    self.injected[plan.fault] += passed == 0
                    for at in range(0, len(data), 256):
                        target.sendall(data[at : at + 256])
                        time.sleep(0.001)
                else:
                    target.sendall(data)
                passed += len(data)
            target.shutdown(socket.SHUT_WR)

    def _cut(self, plan: _Plan, *ends: socket.socket) -> None:
        self.injected[plan.fault] += 1
        for end in ends:
            with contextlib.suppress(OSError):
                end.shutdown(socket.SHUT_RDWR)
