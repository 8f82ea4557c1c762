"""A slow line between browser and server: bytes a second and a delay, for TLS as for plain http."""

from __future__ import annotations

import contextlib
import queue
import socket
import threading
import time

# 400 kbit/s each way and 400 ms there and back: what browsers' own tools call slow 3G (from memory).
SLOW_3G = {"bytes_s": 50_000, "delay_s": 0.2}
_PIECE = 1460


class SlowLine:
    """Listens on a port of its own, passes on to `server_port`; one pace for all connections together, each way."""

    def __init__(self, server_port: int, *, bytes_s: int, delay_s: float) -> None:
        self.server_port, self.bytes_s, self.delay_s = server_port, bytes_s, delay_s
        self._free_at = {"up": 0.0, "down": 0.0}
        self._turn = threading.Lock()
        self._open: list[socket.socket] = []
        self._listener = socket.create_server(("127.0.0.1", 0))
        self.port = self._listener.getsockname()[1]
        threading.Thread(target=self._accept, daemon=True).start()

    def close(self) -> None:
        """Stop listening, and cut what is open."""
        for sock in [self._listener, *self._open]:
            with contextlib.suppress(OSError):
                sock.shutdown(socket.SHUT_RDWR)
            sock.close()

    def _accept(self) -> None:
        while True:
            try:
                near, _ = self._listener.accept()
                self._open.append(near)
                far = socket.create_connection(("127.0.0.1", self.server_port))
                self._open.append(far)
            except OSError:
                return
            for way, source, target in (("up", near, far), ("down", far, near)):
                threading.Thread(target=self._carry, args=(way, source, target), daemon=True).start()

    def _carry(self, way: str, source: socket.socket, target: socket.socket) -> None:
        pieces: queue.SimpleQueue[tuple[float, bytes]] = queue.SimpleQueue()
        threading.Thread(target=_deliver, args=(pieces, target), daemon=True).start()
        with contextlib.suppress(OSError):
            while piece := source.recv(_PIECE):
                with self._turn:
                    self._free_at[way] = max(time.monotonic(), self._free_at[way]) + len(piece) / self.bytes_s
                    free_at = self._free_at[way]
                # The delay runs beside the next pieces' own; only the pace keeps them waiting for one another.
                pieces.put((free_at + self.delay_s, piece))
                time.sleep(max(0.0, free_at - time.monotonic()))
        pieces.put((time.monotonic() + self.delay_s, b""))


def _deliver(pieces: queue.SimpleQueue[tuple[float, bytes]], target: socket.socket) -> None:
    with contextlib.suppress(OSError):
        while True:
            due_at, piece = pieces.get()
            time.sleep(max(0.0, due_at - time.monotonic()))
            if not piece:
                target.shutdown(socket.SHUT_WR)
                return
            target.sendall(piece)
