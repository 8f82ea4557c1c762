"""What the measurements of one run come to: one table, and a file to compare a later run with."""

from __future__ import annotations

import json
import os
import platform
import sqlite3
from dataclasses import asdict, dataclass
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

from rich.console import Console
from rich.table import Table

JSON_VARIABLE, AGAINST_VARIABLE = "BENCH_JSON", "BENCH_AGAINST"


@dataclass(frozen=True)
class Row:
    """One figure: what was measured, the unit, and the bound that is to hold, if there is one."""

    room: str
    what: str
    value: float
    unit: str
    at_most: float | None = None
    at_least: float | None = None

    @property
    def name(self) -> str:
        """What two runs are compared by."""
        return f"{self.room}: {self.what}"

    @property
    def holds(self) -> bool | None:
        """Whether the bound holds; None where there is none."""
        if self.at_most is not None:
            return self.value <= self.at_most
        return None if self.at_least is None else self.value >= self.at_least


class Measured:
    """The rows of a run."""

    def __init__(self) -> None:
        self.rows: list[Row] = []

    def add(self, room: str, what: str, value: float, unit: str, **bound: float) -> Row:
        """Keep a figure and return its row; `at_most` or `at_least` names the bound."""
        row = Row(room, what, float(value), unit, **bound)
        self.rows = [one for one in self.rows if one.name != row.name] + [row]
        return row

    def show(self) -> None:
        """Print the table, beside an earlier run's figures where a file of them is named."""
        earlier = _earlier()
        heads = ["what", "measured", "to hold", ""] + (["before", "now to before"] if earlier else [])
        table = Table(*heads, title=f"Measured on {machine()['processors']} processors, load {os.getloadavg()[0]:.1f}")
        for row in self.rows:
            bound = f"at most {_short(row.at_most)}" if row.at_most is not None else ""
            bound = f"at least {_short(row.at_least)}" if row.at_least is not None else bound
            holds = {True: "holds", False: "MISSED", None: ""}[row.holds]
            cells = [row.name, f"{_short(row.value)} {row.unit}", bound, holds]
            if earlier:
                before = earlier.get(row.name)
                cells += [_short(before), f"{row.value / before:.2f}" if before else ""]
            table.add_row(*cells)
        Console(width=150).print(table)

    def write(self, path: Path) -> None:
        """Write the run as JSON."""
        made = {"at": datetime.now(UTC).isoformat(timespec="seconds"), "machine": machine()}
        path.write_text(json.dumps({**made, "rows": [asdict(row) for row in self.rows]}, indent=1) + "\n", "utf-8")


def machine() -> dict[str, Any]:
    """Return what the run was made on."""
    return {
        "system": platform.platform(), "processors": os.cpu_count(), "python": platform.python_version(),
        "sqlite": sqlite3.sqlite_version, "load": round(os.getloadavg()[0], 2),
    }


def _earlier() -> dict[str, float]:
    path = os.environ.get(AGAINST_VARIABLE)
    if not path:
        return {}
    rows = [Row(**row) for row in json.loads(Path(path).read_text("utf-8"))["rows"]]
    return {row.name: row.value for row in rows}


def _short(value: float | None) -> str:
    return "" if value is None else f"{value:,.0f}" if abs(value) >= 1000 else f"{value:.3g}"
