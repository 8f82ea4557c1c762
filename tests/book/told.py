"""A book told line by line, for worked examples of what each kind moves."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

import pytest

from tests.book.conftest import C1, C2, NOW, T1, entry, send, settled
from webapp.book.fold import fold
from webapp.book.fold.queries import for_entry
from webapp.book.house import registry
from webapp.book.periods import accounts
from webapp.book.record.store import Book


class Told:
    """A book told line by line, ten minutes after one another; each line must be entered."""

    def __init__(self, book: Book) -> None:
        self.book, self.minutes, self.seq = book, 24 * 60, 0

    def say(self, make: Any, *args: Any, **more: Any) -> str:
        """Hand in one entry; return its id. A kind's name stands for an entry of it."""
        self.minutes -= 10
        self.seq += 1
        make, args = (entry, (make, *args)) if isinstance(make, str) else (make, args)
        one = make(*args, read_at=NOW - timedelta(minutes=self.minutes), seq=self.seq, **more)
        assert settled(send(self.book, one))[0] in ("entered", "queried"), send(self.book, one)
        standing = self.book.one("SELECT standing FROM folded WHERE entry = ?", (one["id"],))
        assert standing is None or standing["standing"] == "entered", for_entry(self.book, one["id"])
        assert accounts.verify(self.book) == []
        return str(one["id"])

    def flows(self, entry_id: str) -> list[tuple[str, str, float, float]]:
        """Return (source, target, litres of pure alcohol, kg) of the flows of an entry."""
        rows = self.book.query("SELECT * FROM flows WHERE entry = ? ORDER BY n", (entry_id,))
        return [(row["source"], row["target"], row["lpa_ul"] / 1e6, row["mass_g"] / 1e3) for row in rows]

    def holds(self, mark: str) -> Any:
        """Return what a vessel holds."""
        return fold.load_state(self.book, f"v:{mark}")["holds"]

    def sum_of(self, account: str) -> float:
        """Return the pure alcohol on an account. [L]"""
        return accounts.balances(self.book).get(account, (0, 0, 0))[0] / 1e6


def start(book: Book) -> Told:
    """Return the story of a book whose two casks have a tare and a place."""
    registry.put_vessel(book, {"mark": C1, "tare_kg": 46.3, "place": "CELL-A1"}, "JK")
    registry.put_vessel(book, {"mark": C2, "tare_kg": 49.8, "place": "CELL-A6"}, "JK")
    return Told(book)


def about(*flow: Any, rel: float = 1e-3, abs: float = 0.006) -> Any:
    """A flow as expected: accounts exactly, amounts about."""
    return (*flow[:2], pytest.approx(flow[2], rel=rel, abs=abs), pytest.approx(flow[3], rel=rel, abs=0.06))


def fill(told: Told, mark: str, tare: str, gross: str, pct: str) -> str:
    return told.say("cask_fill", mark, from_vessel=T1, lot="L-01", what="plum", tare=f"{tare} kg", gross=f"{gross} kg",
                    temp="14 degC", strength=f"{pct} pct_vol", use="used", soaked="yes", place="CELL-A1")
