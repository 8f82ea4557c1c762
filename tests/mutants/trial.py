"""One mutant's trial: a process of its own loads the mutant in the module's place and runs the tests that answer.

The process is a fork of one that has the libraries loaded but nothing of the program, so a trial costs what its
tests cost. Time is counted in the trial's own processor time: a busy machine kills nobody.
"""

from __future__ import annotations

import contextlib
import importlib
import json
import os
import resource
import signal
import sys
import tempfile
import time
from collections.abc import Callable, Generator, Iterable, Sequence
from importlib.machinery import ModuleSpec, SourceFileLoader
from importlib.util import spec_from_file_location
from pathlib import Path
from typing import Any, NamedTuple

import pytest
from hypothesis import Phase, settings

from tests.mutants.rooms import TOP

_MOST_MEMORY = 6 << 30
_LEAST_CPU_S, _TIMES_CPU, _TIMES_WALL = 10.0, 4.0, 40.0
# Tests that take longer are not asked: they are back-tests over many runs, and one trial must stay cheap.
MOST_OF_A_TEST_S = 4.0
_QUIETLY = ["-qq", "--tb=no", "-p", "no:cacheprovider", "-W", "ignore::pytest.PytestAssertRewriteWarning"]
# Of the program itself: never loaded before the trial.
_PROGRAM = ("webapp", "tests", "static", "demo_data", "conftest")


class Outcome(NamedTuple):
    """What became of a trial: "killed", "survived" or "too long" (which is killed too), and its processor time."""

    word: str
    cpu_s: float


class Usual(NamedTuple):
    """What test files cost without a mutant: their processor time in a trial, and that of each test."""

    cpu_s: float
    lasted: dict[str, float]


class _Loader(SourceFileLoader):
    """Loads a module from another text than its file's."""

    def __init__(self, name: str, path: str, code: str) -> None:
        super().__init__(name, path)
        self._text = code

    def get_code(self, fullname: str):  # type: ignore[no-untyped-def]
        return compile(self._text, self.path, "exec", dont_inherit=True)


class _InItsPlace:
    """Finds the mutant where the module is asked for."""

    def __init__(self, source: Path, code: str) -> None:
        parts = source.relative_to(TOP).with_suffix("").parts
        self._name = ".".join(parts[:-1] if parts[-1] == "__init__" else parts)
        self._path, self._code = str(source), code

    def find_spec(self, name: str, path: object = None, target: object = None) -> ModuleSpec | None:
        if name != self._name:
            return None
        return spec_from_file_location(name, self._path, loader=_Loader(name, self._path, self._code))


class _Economical:
    """Runs the quickest tests first and the longest not at all; hypothesis gives the same examples each time."""

    def __init__(self, lasted: dict[str, float], notes: Path | None) -> None:
        """Take the processor time of each test; with a file for notes, note it for the next."""
        self._lasted, self._notes = dict(lasted), notes

    def pytest_sessionstart(self) -> None:
        settings.register_profile(
            "mutants", parent=settings(), derandomize=True, database=None, phases=(Phase.explicit, Phase.generate)
        )
        settings.load_profile("mutants")

    @pytest.hookimpl(trylast=True)
    def pytest_collection_modifyitems(self, items: list[pytest.Item]) -> None:
        items[:] = [item for item in items if self._lasted.get(item.nodeid, 0.0) <= MOST_OF_A_TEST_S]
        items.sort(key=lambda item: self._lasted.get(item.nodeid, 0.0))

    @pytest.hookimpl(wrapper=True)
    def pytest_runtest_call(self, item: pytest.Item) -> Generator[None, object, object]:
        began = time.process_time()
        try:
            return (yield)
        finally:
            self._lasted[item.nodeid] = time.process_time() - began

    def pytest_sessionfinish(self) -> None:
        if self._notes is not None:
            self._notes.write_text(json.dumps(self._lasted))


def load_libraries(tests: Sequence[str]) -> None:
    """Load what the tests need, except the program: found out by a process that collects them and is gone."""
    with tempfile.NamedTemporaryFile("r") as told:
        process = os.fork()
        if not process:
            with contextlib.suppress(BaseException):
                _silence()
                pytest.main(["--collect-only", "-n", "0", *_QUIETLY, *tests])
                names = [name for name in sys.modules if name.split(".")[0] not in _PROGRAM]
                Path(told.name).write_text("\n".join(names))
            os._exit(0)
        os.waitpid(process, 0)
        for name in told.read().split():
            with contextlib.suppress(Exception):
                importlib.import_module(name)


def measure(test_file: str) -> Usual:
    """Run a test file with the program as it is; it must pass."""
    with tempfile.NamedTemporaryFile("r") as notes:
        outcome = wait(_fork(lambda: _run_tests([test_file], _Economical({}, Path(notes.name)))), None)
        if outcome.word != "survived":
            sys.exit(f"This fails without any mutant: {test_file}")
        lasted = json.loads(notes.read())
        left_out = sum(s for s in lasted.values() if s > MOST_OF_A_TEST_S)
        return Usual(outcome.cpu_s - left_out, lasted)


def add_up(parts: Iterable[Usual]) -> Usual:
    """Return what several test files cost together."""
    some = list(parts)
    return Usual(sum(one.cpu_s for one in some), {test: s for one in some for test, s in one.lasted.items()})


def start(source: Path, code: str, tests: Sequence[str], usual: Usual) -> int:
    """Start a mutant's trial and return its process."""

    def run() -> int:
        most = int(_LEAST_CPU_S + _TIMES_CPU * usual.cpu_s)
        resource.setrlimit(resource.RLIMIT_CPU, (most, most + 5))
        resource.setrlimit(resource.RLIMIT_AS, (_MOST_MEMORY, _MOST_MEMORY))
        sys.meta_path.insert(0, _InItsPlace(source, code))  # type: ignore[arg-type]
        _show_as_text(source, code)
        return _run_tests(tests, _Economical(usual.lasted, None))

    return _fork(run)


def _show_as_text(source: Path, code: str) -> None:
    """Let tests that read the program as text read the mutant."""
    plain = Path.read_text

    def read_text(self: Path, *more: Any, **named: Any) -> str:
        return code if self.name == source.name and self.resolve() == source else plain(self, *more, **named)

    Path.read_text = read_text  # type: ignore[method-assign]


def _fork(run: Callable[[], int]) -> int:
    process = os.fork()
    if process:
        return process
    status = 70
    try:
        os.setsid()
        os.nice(10)
        _silence()
        status = run()
    finally:
        os._exit(status)


def wait(process: int, cpu_s: float | None) -> Outcome:
    """Wait for a trial's end and say what became of it."""
    ends = time.monotonic() + (_TIMES_WALL * (cpu_s + _LEAST_CPU_S) if cpu_s is not None else 3600)
    while True:
        done, status, used = os.wait4(process, os.WNOHANG)
        if done:
            break
        if time.monotonic() > ends:
            # It sleeps for ever: no processor time, and no end.
            os.killpg(process, signal.SIGKILL)
        time.sleep(0.02)
    spent = used.ru_utime + used.ru_stime
    if os.WIFSIGNALED(status):
        return Outcome("too long", spent)
    return Outcome("survived" if os.WEXITSTATUS(status) == 0 else "killed", spent)


def _run_tests(tests: Sequence[str], economical: _Economical) -> int:
    given = [*tests, "-x", "-n", "0", "--timeout=0", "-m", "not browser", *_QUIETLY]
    return int(pytest.main(given, plugins=[economical]))


def _silence() -> None:
    sys.stdout.flush()
    sys.stderr.flush()
    nowhere = os.open(os.devnull, os.O_RDWR)
    for stream in (0, 1, 2):
        os.dup2(nowhere, stream)
