"""Fixtures of the measurements: browser phones, and the one table at the end of a run."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from tests.bench.table import JSON_VARIABLE, Measured
from tests.browser.offline_world import make_phone, phone, proxy, world

__all__ = ["make_phone", "phone", "proxy", "world"]

_RUN = Measured()


@pytest.fixture
def measured() -> Measured:
    """Where a measurement puts its figures; printed together at the end."""
    return _RUN


def pytest_terminal_summary() -> None:
    """Print one table of all figures, and write them to the file that BENCH_JSON names."""
    if not _RUN.rows:
        return
    _RUN.show()
    if path := os.environ.get(JSON_VARIABLE):
        _RUN.write(Path(path))
