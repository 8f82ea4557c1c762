"""A server that starts in a blink, to be killed thousands of times: the product's app, gate and HTTP server.

A parent that has imported everything forks a process for each start; the process that is killed is a whole server.
Left out against `serve`: its own parent, TLS and the lock on the folder. For Linux and macOS.
"""

from __future__ import annotations

import asyncio
import contextlib
import os
import signal
import socket
import subprocess
import sys
import time
from pathlib import Path
from typing import IO

from tests.server_process import PROGRAM_PATH, ROOT_DIR, find_free_port

_START_WAIT_S = 60.0


class QuickServer:
    """Stands in for ServerProcess: `start`, `kill`, `stop`, `close`, `url`, `port`. With a database: a group's."""

    def __init__(self, data_dir: Path, database: str = "") -> None:
        self.data_dir, self.port = data_dir, find_free_port()
        self.url = f"http://127.0.0.1:{self.port}"
        self._child: int | None = None
        command = [sys.executable, "-m", "tests.faults.quick_server", str(data_dir), str(self.port), database]
        environment = {**os.environ, "PYTHONPATH": PROGRAM_PATH}
        self._log = (data_dir.parent / f"{data_dir.name}-quick-server.log").open("ab")
        self._parent = subprocess.Popen(
            command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=self._log, env=environment, cwd=ROOT_DIR
        )

    def start(self) -> QuickServer:
        """Fork a server, and wait until it answers."""
        self._child = int(self._say("start"))
        deadline = time.monotonic() + _START_WAIT_S
        while time.monotonic() < deadline:
            with contextlib.suppress(OSError), socket.create_connection(("127.0.0.1", self.port), 1):
                return self
            time.sleep(0.005)
        raise RuntimeError(f"No answer within {_START_WAIT_S} s.")

    def kill(self) -> None:
        """Kill the server at once; returns when it is gone."""
        assert self._child is not None, "It does not run."
        os.kill(self._child, signal.SIGKILL)
        self._child = None
        said = self._say("bury")
        assert said == "-9", f"it had ended by itself: {said}"

    stop = kill

    def close(self) -> None:
        """End the server, if it runs, and its parent."""
        if self._child is not None:
            self.kill()
        self._parent.stdin.close()  # type: ignore[union-attr]
        self._parent.wait(30)
        self._parent.stdout.close()  # type: ignore[union-attr]
        self._log.close()

    def _say(self, word: str) -> str:
        stdin, stdout = _pipes(self._parent)
        stdin.write(f"{word}\n".encode())
        stdin.flush()
        return stdout.readline().decode().strip()


def _pipes(process: subprocess.Popen[bytes]) -> tuple[IO[bytes], IO[bytes]]:
    assert process.stdin and process.stdout
    return process.stdin, process.stdout


def serve(data_dir: Path, port: int, database: str) -> None:
    """In the forked process: serve until killed."""
    from granian.constants import Interfaces
    from granian.server.embed import Server

    from webapp import create_app
    from webapp.serving.gate import Gate
    from webapp.serving.server import THREADS

    if database:
        from webapp.group.app import create_app as create_group

        app = create_group(data_dir, DATABASE=database)
    else:
        app = create_app(data_dir)
    gate = Gate(app, threads=THREADS, body_most=app.config["MAX_CONTENT_LENGTH"])
    server = Server(gate, address="127.0.0.1", port=port, interface=Interfaces.RSGI)
    asyncio.run(server.serve())


def main(data_dir: Path, port: int, database: str) -> None:
    """Fork a server at each `start`, wait for its end at each `bury`."""
    import granian.server.embed  # noqa: F401 -- imported once, before any fork

    import webapp.desk
    import webapp.floor
    import webapp.serving.server

    if database:  # imported once, before any fork
        import webapp.group.app  # noqa: F401

    child = 0
    for line in sys.stdin:
        if line.strip() == "start":
            child = os.fork()
            if not child:
                os.close(0)
                os.dup2(2, 1)  # what the server prints is no answer of ours
                serve(data_dir, port, database)
                os._exit(1)
            print(child, flush=True)
        else:
            _, status = os.waitpid(child, 0)
            print(os.waitstatus_to_exitcode(status), flush=True)


if __name__ == "__main__":
    main(Path(sys.argv[1]), int(sys.argv[2]), sys.argv[3])
