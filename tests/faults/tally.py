"""What the tests of faults count: faults put in, entries, entries lost, entries doubled. Printed at the end."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any


@dataclass
class Tally:
    """One scene's count. `notes` hold what else is worth a figure."""

    scene: str
    faults: int = 0
    entries: int = 0
    lost: int = 0
    doubled: int = 0
    notes: dict[str, int] = field(default_factory=dict)

    def line(self) -> str:
        """Return the count in one line of a table."""
        said = ", ".join(f"{count} {what}" for what, count in self.notes.items())
        return f"{self.scene:<44} {self.faults:>7} {self.entries:>8} {self.lost:>5} {self.doubled:>8}  {said}".rstrip()

    def check(self) -> None:
        """Fail where something was lost or doubled, or where no fault was put in at all."""
        assert self.faults and self.entries, self.line()
        assert (self.lost, self.doubled) == (0, 0), self.line()


def report(reporter: Any) -> None:
    """Print what was put in, and what came of it; once, from whichever folder of tests it was counted in."""
    if tallies:
        reporter.section("faults")
        reporter.write_line(HEAD)
        for tally in tallies:
            reporter.write_line(tally.line())
        tallies.clear()


HEAD = f"{'scene':<44} {'faults':>7} {'entries':>8} {'lost':>5} {'doubled':>8}"
tallies: list[Tally] = []


def new_tally(scene: str) -> Tally:
    """Return a fresh count that is printed at the end of the session."""
    tallies.append(Tally(scene))
    return tallies[-1]
