"""The page of the checks names tests and limits that there are, with the figures that hold."""

from __future__ import annotations

import re
from pathlib import Path

from webapp.book.limits import ALL as LIMITS

ROOT = Path(__file__).parent.parent
PAGE = (ROOT.parent / "docs" / "checks.md").read_text(encoding="utf-8")
ROWS = [line for line in PAGE.splitlines() if re.match(r"\| [BFG]\d|\| (more|a removal|bottles) ", line)]


def test_every_row_names_a_test_that_there_is() -> None:
    assert len(ROWS) >= 30
    for row in ROWS:
        path, name = re.findall(r"`([a-z_/]+\.py)::(test_\w+)`", row)[0]
        assert f"def {name}(" in (ROOT / path).read_text(encoding="utf-8"), row


def test_every_query_named_is_asked_somewhere() -> None:
    code = "".join(path.read_text(encoding="utf-8") for path in (ROOT.parent / "webapp").rglob("*.py"))
    for row in ROWS:
        for name in re.findall(r"`(\w+)`", row.split("|")[2]):
            assert f'"{name}"' in code, name


def test_limits_on_the_page_are_those_of_the_table() -> None:
    named = 0
    for row in ROWS:
        for name, figure in re.findall(r"`(\w+)` ([\d.]+)", row.split("|")[4]):
            assert LIMITS[name].default == float(figure), name
            named += 1
    assert named >= 20


def test_no_check_of_the_three_lists_is_left_out() -> None:
    told = {name for row in ROWS for name in re.findall(r"^\| ([BFG]\d+) ", row)}
    wanted = {f"B{n}" for n in range(1, 15)} | {f"F{n}" for n in range(1, 10)}
    assert told >= wanted | {f"G{n}" for n in (1, 2, 3, 9, 10, 11, 12, 13, 14)}
