"""What the tests of faults share: the houses and phones of the browser's tests, and a table at the end."""

from __future__ import annotations

from typing import Any

import pytest

from tests.browser.offline_world import make_phone, phone, proxy, world
from tests.faults.tally import report

__all__ = ["make_phone", "phone", "proxy", "world"]


@pytest.hookimpl(trylast=True)
def pytest_terminal_summary(terminalreporter: Any) -> None:
    """Print what was put in, and what came of it."""
    report(terminalreporter)
