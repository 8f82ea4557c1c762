"""The demo, served by its own command in a process of its own."""

from __future__ import annotations

import os
import re
import subprocess
import sys
import time
import urllib.request
from contextlib import suppress
from pathlib import Path

from tests.server_process import ROOT_DIR, find_free_port

_START_WAIT_S = 90.0


class Demo:
    """`cellarslate demo`, as typed, with `more` behind it; where it is not laid yet, it lays itself first."""

    def __init__(self, folder: Path, *more: str) -> None:
        self.folder, self.port = folder, find_free_port()
        self.url = f"http://localhost:{self.port}"
        command = [sys.executable, "-m", "webapp", "demo", "--data", str(folder), "--port", str(self.port), *more]
        self.said = folder.parent / "said.txt"
        environment = {**os.environ, "PYTHONUNBUFFERED": "1"}
        with self.said.open("w") as out:
            self.process = subprocess.Popen(
                command, cwd=ROOT_DIR, stdout=out, stderr=subprocess.STDOUT, env=environment
            )
        deadline = time.monotonic() + _START_WAIT_S
        while time.monotonic() < deadline and self.process.poll() is None:
            here = re.search(r"^Here: +(\S+)/demo ", self.said.read_text(), re.MULTILINE)
            self.url = here[1] if here else self.url
            with suppress(OSError), urllib.request.urlopen(self.url + "/demo", timeout=10):
                return
            time.sleep(0.05)
        raise AssertionError(self.said.read_text())

    def close(self) -> None:
        """Stop it, as Ctrl+C does, and wait for its end."""
        self.process.terminate()
        self.process.wait(60)
