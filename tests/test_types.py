"""What the type checker is told stays told: strict in every room, nothing waved through under another name."""

from __future__ import annotations

import ast
import re
import tokenize
import tomllib
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent
FILES = sorted((ROOT / "webapp").rglob("*.py"))
ANY_MOST = 100  # where a value really may be anything: rows of any SELECT, JSON of other programs, untyped libraries


def test_mypy_is_strict_and_no_room_is_let_off():
    told = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["tool"]["mypy"]
    assert told["strict"] is True
    assert told["packages"] == ["webapp"]
    for override in told.get("overrides", []):
        ours = [name for name in override["module"] if name.startswith("webapp")]
        # Only that a class may stand on one of Flask-WTF, which has no types.
        assert not ours or set(override) == {"module", "disallow_subclassing_any"}, override
        assert not any(name.startswith(("webapp.book", "webapp.kinds", "webapp.trade")) for name in ours), override


def test_any_is_the_exception():
    found = {file.relative_to(ROOT).as_posix(): len(re.findall(r"\bAny\b", file.read_text("utf-8"))) for file in FILES}
    assert sum(found.values()) <= ANY_MOST, {file: many for file, many in found.items() if many}


def test_any_has_no_other_name():
    for file in FILES:
        for node in ast.walk(ast.parse(file.read_text("utf-8"))):
            value = node.value if isinstance(node, ast.Assign | ast.AnnAssign) else None
            assert not (isinstance(value, ast.Name) and value.id == "Any"), f"{file.name}:{node.lineno}"
            if isinstance(node, ast.ImportFrom):
                assert not any(one.name == "Any" and one.asname for one in node.names), f"{file.name}:{node.lineno}"


CASTING = [file for file in FILES if re.search(r"\bcast\(", file.read_text("utf-8"))]


@pytest.mark.parametrize("file", CASTING, ids=lambda file: file.stem)
def test_every_cast_says_why(file):
    with file.open("rb") as lines:
        commented = {token.start[0] for token in tokenize.tokenize(lines.readline) if token.type == tokenize.COMMENT}
    for node in ast.walk(ast.parse(file.read_text("utf-8"))):
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id == "cast":
            assert commented & {node.lineno - 1, node.lineno, node.end_lineno}, f"{file.name}:{node.lineno}"
