"""What the tests of the checks tell, told again into a book: each history with vessels and a phone of its own.

So a frozen book holds nearly every question that the book knows, and a new check with tests comes in by itself.
"""

from __future__ import annotations

import contextlib
import json
import os
import subprocess
import sys
import tempfile
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime, timedelta
from pathlib import Path
from typing import Any

import webapp.kinds
from tests.book.checks import ledger
from tests.book.conftest import new_id
from webapp.trade.marks import BadMark, make_mark

CHECKS_DIR = Path(ledger.__file__).parent
_TOLD_TO = "FROZEN_TOLD_TO"
# Each ledger is held beside what it was told, so that no number of one comes twice.
_told: dict[int, tuple[ledger.Ledger, list[tuple[dict[str, Any], float]]]] = {}


@dataclass(frozen=True, slots=True)
class History:
    """The entries of one ledger, as handed in, with how far its phone's clock is off [s], and its vessels' rows."""

    name: str
    entries: tuple[tuple[dict[str, Any], float], ...]
    vessels: tuple[dict[str, Any], ...]
    person: str


def histories() -> list[History]:
    """Return the history of every ledger that the tests of the checks tell, in their order."""
    with tempfile.TemporaryDirectory() as folder:
        told = Path(folder) / "told.json"
        command = ["-m", "pytest", "-q", "-n", "0", "-p", "no:cacheprovider", "-p", __name__, str(CHECKS_DIR)]
        env = {**os.environ, _TOLD_TO: str(told)}
        run = subprocess.run([sys.executable, *command], env=env, capture_output=True, text=True, check=False)
        assert run.returncode == 0, f"The tests of the checks do not pass.\n{run.stdout}"
        return [_history(n, entries) for n, entries in enumerate(json.loads(told.read_text("utf-8")), 1)]


def pytest_configure() -> None:
    """As a plugin of pytest: note what each ledger is told."""
    plain = ledger.Ledger.take

    def take(book: ledger.Ledger, read: Any, skew_s: float = 0) -> Any:
        _told.setdefault(id(book), (book, []))[1].append((dict(read.entry), skew_s))
        return plain(book, read, skew_s)

    ledger.Ledger.take = take  # type: ignore[method-assign]


def pytest_collection_modifyitems(items: list[Any]) -> None:
    """Leave out odd entries by the thousand: they are no history."""
    items[:] = [item for item in items if "never_fails" not in item.nodeid]


def pytest_sessionfinish() -> None:
    """Write down what was told."""
    Path(os.environ[_TOLD_TO]).write_text(json.dumps([entries for _, entries in _told.values()]), "utf-8")


def _history(n: int, told: list[tuple[dict[str, Any], float]]) -> History:
    marks: dict[str, str] = {}
    persons = {code: f"{code[0]}{n}"[:4] for code in {entry["person"] for entry, _ in told}}
    entries = tuple(
        (_as_sent(entry, n, seq, marks, persons), skew_s) for seq, (entry, skew_s) in enumerate(told, 1)
    )
    vessels = tuple(
        {"size_class": f"K{n}", "wood": "oak", **ledger.VESSELS[name], "mark": mark, "name": mark.partition("-")[0]}
        for name, mark in marks.items() if name in ledger.VESSELS
    )
    return History(f"d-k{n}", entries, vessels, sorted(persons.values())[0])


def _as_sent(
    entry: Mapping[str, Any], n: int, seq: int, marks: dict[str, str], persons: Mapping[str, str]
) -> dict[str, Any]:
    kind = webapp.kinds.get(entry["kind"])
    assert kind is not None
    values = {name: dict(value) for name, value in entry["values"].items()}
    for spec in kind.fields:
        if spec.sort == "mark" and spec.name in values:
            values[spec.name]["raw"] = _mark(values[spec.name]["raw"], n, marks)
    for value in values.values():
        if not value.get("instrument"):
            value.pop("instrument", None)
    return {
        "id": new_id(), "kind": kind.name, "kind_version": kind.version, "mark": _mark(entry["mark"], n, marks),
        "mark_by": "scanned" if entry["mark"] else "", "read_at": entry["read_at"], "typed_at": entry["typed_at"],
        "person": persons[entry["person"]], "role": "cellar hand", "seen_by": "", "device": f"d-k{n}", "seq": seq,
        "values": values, "as_read": [], "looked_again": [], "remark": "", "amends": None, "reason": "",
    }


def _mark(mark: str, n: int, marks: dict[str, str]) -> str:
    name = mark.partition("-")[0]
    if name and name not in marks:
        for letter in "KLMN":
            with contextlib.suppress(BadMark):
                marks[name] = make_mark(f"{name}{letter}{n}")
                break
    return marks.get(name, mark)


def received_at(history: History) -> datetime:
    """Return when a history is handed in: after its last entry was typed."""
    last = max(datetime.fromisoformat(entry["typed_at"]) for entry, _ in history.entries)
    return last + timedelta(hours=1)
