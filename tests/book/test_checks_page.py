"""The page of the checks leaves nothing out: every code that a book has asked, every limit and what is said of it."""

from __future__ import annotations

import importlib.util
import json
import lzma
import re
from collections.abc import Iterator
from pathlib import Path
from types import ModuleType
from typing import Any

import pytest

from webapp.book.asked import asked_by, asked_in, example
from webapp.book.checks import CHECKS
from webapp.book.limits import ALL

TESTS = Path(__file__).parents[1]
PAGE = (TESTS.parent / "docs" / "checks.md").read_text(encoding="utf-8")
ROWS = {tuple(cell.strip() for cell in line.strip("|").split(" | ")) for line in PAGE.splitlines() if line[:3] == "| `"}
CODES = {row[0].strip("`") for row in ROWS if {*row[1].split(", ")} <= {"refuse", "stop", "ask", "note"}}


def _asked(told: Any) -> Iterator[str]:
    """Yield every code of a question in what a frozen book says of itself."""
    if isinstance(told, dict):
        if {"code", "weight"} <= set(told):
            yield told["code"]
        told = list(told.values())
    for each in told if isinstance(told, list) else ():
        yield from _asked(each)


def test_every_code_that_the_frozen_book_asked_is_on_the_page() -> None:
    """The book was made by an older program, with every kind in it and all of its checks at work."""
    said = json.loads(lzma.decompress((TESTS / "frozen" / "0.1.0" / "said.json.xz").read_bytes()))
    codes = {re.sub(r"^(wrong_sort|unknown_vessel)_\w+$", r"\1_‹field›", code) for code in _asked(said)}
    assert len(codes) > 80
    assert codes <= CODES


def test_every_code_that_stands_in_the_source_is_on_the_page() -> None:
    """By the plain text of the files, which knows nothing of how the page is made."""
    book = TESTS.parent / "webapp" / "book"
    text = "".join(path.read_text(encoding="utf-8") for path in book.rglob("*.py"))
    codes = set(re.findall(r'\b(?:Query|Problem|Notice|_problem)\(\s*"(\w+)"', text))
    assert len(codes) > 70
    assert codes <= CODES


def test_every_limit_stands_there_with_default_words_and_source() -> None:
    for one in ALL.values():
        assert (f"`{one.name}`", f"{one.default:g} {one.unit}".strip(), one.words, one.source) in ROWS, one.name
        assert f"Limits: `{one.name}`" in PAGE or f", `{one.name}`" in PAGE or one.name in _ELSEWHERE, one.name


# A season's sum, the planner of vats, the page of the day: no entry is asked.
_ELSEWHERE = {
    "season_close_pct", "vat_youngest_years", "stands_days", "bottling_days", "run_open_h", "near_end_days",
    "phone_silent_h", "disk_free_gb",
}


def test_every_check_has_its_head_its_kinds_and_a_code() -> None:
    for name, check in CHECKS.items():
        assert f"### `{name}`\n" in PAGE
        assert asked_by(check).weights, name
    assert "Asked of: ." not in PAGE and "its own reason" not in PAGE


def test_weights_and_limits_of_one_check() -> None:
    """Of checks whose ways are long: over two files, and with a weight that goes with its code."""
    both = asked_by(CHECKS["target_capacity"]).weights
    assert both == {"target_capacity": {"stop"}, "target_working_level": {"ask"}}
    assert asked_by(CHECKS["dump_dip"]).limits == {"dip_pct", "dip_least_l"}
    assert asked_by(CHECKS["run_drift"]).limits >= {"run_loss_high_pct", "stillage_pct", "run_noise_l"}
    assert example("late") == "Typed ‹after› after it was read."


def _file(tmp_path: Path, text: str) -> ModuleType:
    path = tmp_path / "a_check.py"
    path.write_text(text, encoding="utf-8")
    spec = importlib.util.spec_from_file_location("a_check", path)
    assert spec and spec.loader
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


def test_a_code_that_cannot_be_told_is_an_error(tmp_path: Path) -> None:
    hidden = _file(tmp_path, "def check(read):\n    code = read.name()\n    yield Query(code, 'ask', '', None)\n")
    with pytest.raises(LookupError, match=r"a_check.check: nobody can tell what read.name\(\) is"):
        asked_in(hidden)
