"""A real PostgreSQL of the system's packages, in a folder of its own, on a unix socket, for one session of tests."""

from __future__ import annotations

import contextlib
import os
import shutil
import signal
import subprocess
import sys
import tempfile
import time
from pathlib import Path

import pytest

MISSING = "PostgreSQL is not installed (Debian: apt-get install postgresql); the group book is not tested."


def find_programs() -> Path | None:
    """Return the folder of initdb and pg_ctl, or None."""
    found = shutil.which("initdb")
    places = [Path(found).parent] if found else []
    places += sorted(Path("/usr/lib/postgresql").glob("*/bin"), reverse=True)
    return next((place for place in places if (place / "pg_ctl").exists()), None)


def _place() -> str:
    """Return where the server's folder goes: memory where there is much, since every test's database is 300 files.

    What dies here are processes, so a disk would prove no more; only --bench measures one.
    """
    memory = Path("/dev/shm")
    has_room = os.access(memory, os.W_OK) and shutil.disk_usage(memory).free > 4 << 30
    return str(memory) if has_room and "--bench" not in sys.argv else "/tmp"


def _runuser() -> str:
    """Return the program by which root becomes the database's own user; it may lie beside an ordinary path."""
    found = shutil.which("runuser", path=os.pathsep.join([os.environ.get("PATH", ""), "/usr/sbin", "/sbin"]))
    return found or pytest.skip("PostgreSQL does not run as root, and there is no runuser to become another user.")


class Postgres:
    """One server; each test makes a database of its own. As root it runs as the system's own user for it."""

    def __init__(self, programs: Path) -> None:
        import psycopg  # noqa: F401

        self._programs = programs
        self._as_user = [_runuser(), "-u", "postgres", "--"] if os.geteuid() == 0 else []
        self.folder = Path(tempfile.mkdtemp(prefix="cs-pg-", dir=_place()))
        self._count = 0
        if self._as_user:
            shutil.chown(self.folder, "postgres")
        data, log = str(self.folder / "data"), str(self.folder / "log")
        self._run("initdb", "-D", data, "-A", "trust", "-U", "postgres", "--no-locale", "-E", "UTF8")
        options = f"-c listen_addresses='' -c unix_socket_directories={self.folder} -c max_connections=60"
        if sys.platform == "linux":  # one call after a crash, where else every file of every test's database is synced
            options += " -c recovery_init_sync_method=syncfs"
        self._start = ("pg_ctl", "-D", data, "-l", log, "-o", options, "-w", "start")
        self._stop = ("pg_ctl", "-D", data, "-w", "-m", "immediate", "stop")
        self._run(*self._start)

    def make(self) -> str:
        """Return the address of a new database."""
        import psycopg

        self._count += 1
        with contextlib.closing(psycopg.connect(self.address("postgres"), autocommit=True)) as conn:
            conn.execute(f"CREATE DATABASE group_{self._count}".encode())
        return self.address(f"group_{self._count}")

    def address(self, name: str) -> str:
        """Return the address of a database."""
        return f"postgresql://postgres@/{name}?host={self.folder}"

    def crash(self) -> None:
        """End the server as a power cut would."""
        self._run(*self._stop)

    def kill_in_transaction(self, url: str, wait_s: float = 1.0) -> bool:
        """SIGKILL the process of a client of this database that is in a transaction; False where none was in time.

        The server then ends all its other processes and recovers, as after a crash.
        """
        import psycopg

        deadline = time.monotonic() + wait_s
        with contextlib.closing(psycopg.connect(url, autocommit=True)) as conn:
            while time.monotonic() < deadline:
                row = conn.execute(
                    "SELECT pid FROM pg_stat_activity WHERE datname = current_database() AND xact_start IS NOT NULL "
                    "AND backend_type = 'client backend' AND backend_xid IS NOT NULL AND pid <> pg_backend_pid()"
                ).fetchone()
                if row:
                    self._kill(row[0])
                    break
            else:
                return False
            # Gone for all: the server has noticed, and begins to recover.
            with contextlib.suppress(psycopg.OperationalError):
                while time.monotonic() < deadline + 30:
                    conn.execute("SELECT 1")
                    time.sleep(0.005)
        return True

    def wait(self, wait_s: float = 60.0) -> None:
        """Wait until it answers."""
        import psycopg

        deadline = time.monotonic() + wait_s
        while True:
            try:
                psycopg.connect(self.address("postgres"), connect_timeout=5).close()
                return
            except psycopg.OperationalError:
                assert time.monotonic() < deadline, "PostgreSQL does not come back."
                time.sleep(0.02)

    def _kill(self, pid: int) -> None:
        # Whoever runs the server may end its processes; so may root.
        with contextlib.suppress(ProcessLookupError):
            os.kill(pid, signal.SIGKILL)

    def start(self) -> None:
        """Start it again."""
        self._run(*self._start)

    def close(self) -> None:
        """End it and take its folder away."""
        with contextlib.suppress(subprocess.CalledProcessError):
            self.crash()
        shutil.rmtree(self.folder, ignore_errors=True)

    def _run(self, program: str, *arguments: str) -> None:
        command = [*self._as_user, str(self._programs / program), *arguments]
        with (self.folder.parent / f"{self.folder.name}.out").open("ab") as out:
            subprocess.run(command, stdout=out, stderr=out, check=True, cwd="/")
        (self.folder.parent / f"{self.folder.name}.out").unlink()


def postgres_or_skip() -> Postgres:
    """Return a running server; skips with a clear word where there is none."""
    programs = find_programs()
    if programs is None:
        pytest.skip(MISSING)
    pytest.importorskip("psycopg", reason="psycopg is not installed: pip install '.[group]'")
    return Postgres(programs)
