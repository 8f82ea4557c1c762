"""A real server in a process of its own, to be stopped, killed and started again by tests."""

import contextlib
import http.client
import os
import signal
import socket
import subprocess
import sys
import time
from pathlib import Path

ROOT_DIR = Path(__file__).resolve().parent.parent
# Stands before the libraries that only tests bring, so that programs under test start as those of a house do.
WITHOUT_DIR = ROOT_DIR / "tests" / "without"
PROGRAM_PATH = os.pathsep.join(map(str, (WITHOUT_DIR, ROOT_DIR)))
# Long: test machines are often busy with more than one thing.
_START_WAIT_S = 60.0


def find_free_port() -> int:
    """Return a port that is free at this moment."""
    with contextlib.closing(socket.socket()) as sock:
        sock.bind(("127.0.0.1", 0))
        return int(sock.getsockname()[1])


class ServerProcess:
    """`python -m webapp serve` on a data folder; keeps its port over a stop and a new start.

    `arguments` go to the command, `serve` or another server's; `environment` is added to the process's own; `under`:
    a program, with its arguments, that starts it.
    """

    def __init__(
        self,
        data_dir: Path,
        *,
        host: str = "127.0.0.1",
        port: int | None = None,
        arguments: tuple[str, ...] = (),
        environment: dict[str, str] | None = None,
        command: str = "serve",
        under: tuple[str, ...] = (),
    ) -> None:
        self.data_dir = data_dir
        self.host = host
        self.port = port or find_free_port()
        self.command = command
        self.arguments = arguments
        self.environment = environment or {}
        self.under = under
        self.log_path = data_dir.parent / f"{data_dir.name}-server.log"
        self.process: subprocess.Popen[bytes] | None = None

    @property
    def url(self) -> str:
        """Where the server answers, without a slash at the end."""
        scheme = "https" if "--tls" in self.arguments else "http"
        return f"{scheme}://{self.host}:{self.port}"

    @property
    def log(self) -> str:
        """All that the server has printed so far, over all its starts."""
        return self.log_path.read_text("utf-8", "replace") if self.log_path.exists() else ""

    def start(self) -> "ServerProcess":
        """Start the server and wait until it answers."""
        assert self.process is None, "It runs already."
        self.data_dir.mkdir(parents=True, exist_ok=True)
        command = [*self.under, sys.executable, "-m", "webapp", self.command, "--data", str(self.data_dir)]
        command += ["--host", self.host, "--port", str(self.port), *self.arguments]
        environment = {**os.environ, "PYTHONUNBUFFERED": "1", "PYTHONPATH": PROGRAM_PATH, **self.environment}
        with self.log_path.open("ab") as log:
            # A session of its own: one signal then reaches the server and its worker together.
            self.process = subprocess.Popen(
                command, stdout=log, stderr=log, env=environment, start_new_session=True, cwd=ROOT_DIR
            )
        self._wait_until_it_answers()
        return self

    def stop(self) -> int:
        """Ask the server to stop, wait for it, and return its exit code."""
        process = self._take()
        process.terminate()
        try:
            return process.wait(30)
        except subprocess.TimeoutExpired:
            _kill_all(process)
            raise

    def kill(self) -> None:
        """Kill the server and its worker at once, with no chance to tidy up."""
        _kill_all(self._take())
        # The worker is no child of ours: its end shows only in the port that it lets go.
        deadline = time.monotonic() + 10
        while self._port_is_open():
            assert time.monotonic() < deadline, f"Port {self.port} is still open 10 s after the kill."
            time.sleep(0.01)

    def close(self) -> None:
        """End the server if it still runs; for the end of a test."""
        if self.process is not None:
            self.kill()

    def _take(self) -> subprocess.Popen[bytes]:
        assert self.process is not None, "It does not run."
        process, self.process = self.process, None
        return process

    def _wait_until_it_answers(self) -> None:
        assert self.process is not None
        deadline = time.monotonic() + _START_WAIT_S
        while time.monotonic() < deadline:
            code = self.process.poll()
            if code is not None:
                self.process = None
                raise RuntimeError(f"The server ended with code {code}:\n{self.log}")
            if self._answers():
                return
            time.sleep(0.03)
        self.kill()
        raise RuntimeError(f"No answer within {_START_WAIT_S} s:\n{self.log}")

    def _answers(self) -> bool:
        if "--tls" in self.arguments:
            # The port is open only once the worker serves; the tests of trust look closer.
            return self._port_is_open()
        connection = http.client.HTTPConnection(self.host, self.port, timeout=5)
        try:
            connection.request("GET", "/")
            connection.getresponse().read()
        except (OSError, http.client.HTTPException):
            return False
        finally:
            connection.close()
        return True

    def _port_is_open(self) -> bool:
        with contextlib.suppress(OSError), socket.create_connection((self.host, self.port), 1):
            return True
        return False


def _kill_all(process: subprocess.Popen[bytes]) -> None:
    if sys.platform == "win32":
        subprocess.run(["taskkill", "/F", "/T", "/PID", str(process.pid)], capture_output=True, check=False)
    else:
        with contextlib.suppress(ProcessLookupError):
            os.killpg(process.pid, signal.SIGKILL)
    process.wait(30)
