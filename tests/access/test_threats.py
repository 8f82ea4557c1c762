"""docs/threats.md names the test behind each claim: every one of them is there, and no row of a table goes without."""

import re
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
PAGE = (ROOT / "docs" / "threats.md").read_text("utf-8")
FILES = {path.relative_to(ROOT).as_posix(): path.read_text("utf-8") for path in (ROOT / "tests").rglob("test_*.py")}
TESTS = {name for text in FILES.values() for name in re.findall(r"^ *(?:async )?def (test_\w+)", text, re.MULTILINE)}
NAMED = sorted({name for name in re.findall(r"`([^`]+)`", PAGE) if name.startswith(("test_", "tests/"))})
ROWS = [line for line in PAGE.splitlines() if line.startswith("| ") and not re.match(r"\| (threat|---)", line)]


@pytest.mark.parametrize("name", NAMED)
def test_what_the_page_names_is_there(name):
    if name.endswith(".py"):
        assert any(path == name or path.endswith(f"/{name}") for path in FILES), "no such file of tests"
    elif name.endswith("…"):
        assert any(test.startswith(name[:-1]) for test in TESTS), "no test begins so"
    else:
        assert name in TESTS, "no such test"


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row[2:40].strip())
def test_each_row_names_a_test(row):
    assert any(f"`{name}`" in row for name in NAMED)


def test_the_page_is_read_as_it_is_written():
    assert len(NAMED) > 25
    assert len(ROWS) > 10
