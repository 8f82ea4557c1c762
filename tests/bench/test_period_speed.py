"""What the first page of periods costs over many flows. `--bench` runs it; PERIOD_FLOWS=1000000 sets another size."""

from __future__ import annotations

import os
import time
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

import pytest

from tests.bench.table import Measured
from webapp.book.fold import month_sums
from webapp.book.house import registry
from webapp.book.opening import open_book
from webapp.book.periods import ledger
from webapp.book.periods.periods import period
from webapp.book.periods.warnings import warnings

pytestmark = [pytest.mark.bench, pytest.mark.timeout(3600)]
FLOWS = int(os.environ.get("PERIOD_FLOWS", 1_000_000))
BEGAN, YEARS, NOW = datetime(2016, 1, 1, tzinfo=UTC), 10, datetime(2025, 12, 20, tzinfo=UTC)
LONGEST_MS = 200
SORTS = (
    ("v:a", "v:b", "production", "storage", "deposit", "brandy over 170 proof"),
    ("out:fermented", "v:a", "", "production", "closed", ""), ("v:b", "out:evaporation", "storage", "", "regauge", ""),
    ("v:b", "v:c", "storage", "processing", "dump", ""), ("v:c", "b:x", "processing", "finished", "5 bottles", ""),
    ("b:x", "out:removed", "finished", "", "tax_paid", ""), ("v:a", "out:stillage", "production", "", "stillage", ""),
    ("v:a", "v:d", "production", "production", "move", ""),
)


def flows() -> Iterator[tuple[Any, ...]]:
    """Ten years of flows, straight into the table: handing them in would take an hour and tell no more."""
    step = timedelta(days=365 * YEARS) / FLOWS
    for n in range(FLOWS):
        source, target, a, b, reason, sort = SORTS[n % len(SORTS)]
        at = (BEGAN + n * step).strftime("%Y-%m-%dT%H:%M:%SZ")
        fills = ("f" * bool(a), "g" * bool(b))
        yield (f"{n:032x}", 0, source, target, 1000 + n % 997, 10, 10, *fills, reason, a, b, at, sort)


def test_first_page_of_periods(tmp_path: Path, measured: Measured) -> None:
    with open_book(tmp_path / "book.db") as book:
        registry.set_site(book, {"time_zone": "America/Denver"}, "JK")
        with book.write() as database:
            sums = month_sums.MonthSums(book)
            for row in flows():
                sums.add(1, row[12], row[2], row[3], row[9], row[10], row[11], row[13], row[4])
            database.conn.executemany(f"INSERT INTO flows VALUES ({', '.join('?' * 14)})", flows())
            sums.write()
        began = time.process_time()  # other work on the machine is not counted
        found = ledger.load_ledger(book, NOW)
        ledger_ms = (time.process_time() - began) * 1000
        began = time.process_time()
        warnings(book, period(book, "2025-Q3", NOW))
        warnings_ms = (time.process_time() - began) * 1000
    room = f"periods over {FLOWS:,} flows, {len(found.months)} months"
    measured.add(room, "first page, processor time", ledger_ms, "ms", at_most=LONGEST_MS)
    measured.add(room, "warnings of a quarter, processor time", warnings_ms, "ms")
    assert ledger_ms < LONGEST_MS
