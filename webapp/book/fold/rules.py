"""The rules of this program: all that decides what comes of an entry, as one digest.

Source files are hashed as they lie on the disk, which takes some milliseconds at a start. Only where that differs from
what a book was judged by are they hashed by their meaning: comments, docstrings and layout do not count there.
"""

from __future__ import annotations

import ast
import hashlib
import json
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache, cached_property
from pathlib import Path

# Counted up by hand where something else than these files changes what comes of an entry: a library, or Python.
NUMBER = 1
WEBAPP_DIR = Path(__file__).resolve().parents[2]
# Folders are taken whole, with their tables; a test holds that the fold imports nothing else that decides.
PARTS: dict[str, tuple[str, ...]] = {
    "kinds": ("kinds",),
    "checks": ("book/checks", "book/before"),
    "sums": ("trade",),
    "fold": (
        *(f"book/fold/{name}.py" for name in (
            "evaluate", "families", "fold", "month_sums", "reader_tables", "registry_rows", "replay", "states",
        )),
        *(f"book/record/{name}.py" for name in ("clock", "kept_json", "log", "months", "rows", "upcast", "way")),
    ),
}
_WITH_DOCSTRING = (ast.Module, ast.ClassDef, ast.FunctionDef, ast.AsyncFunctionDef)
# Forms, pages and descriptions derived from the kinds decide nothing.
_LEFT_OUT = "kinds/as_"


@dataclass(frozen=True)
class Rules:
    """The rules of a program. `source` is the digest of its files as they lie there. [64 hexadecimal digits]"""

    number: int
    source: str

    @cached_property
    def parts(self) -> dict[str, str]:
        """The digest of the meaning of each part, by its name. [16 hexadecimal digits]"""
        return {name: _digest(name, _meaning).hexdigest()[:16] for name in PARTS}

    @property
    def digest(self) -> str:
        """The digest of all parts and the number. [64 hexadecimal digits]"""
        return hashlib.sha256(json.dumps([self.number, sorted(self.parts.items())]).encode()).hexdigest()


@cache
def current_rules() -> Rules:
    """Return the rules of the program that runs."""
    whole = hashlib.sha256()
    for part in PARTS:
        whole.update(_digest(part, _plain).digest())
    return Rules(NUMBER, whole.hexdigest())


def files_of(part: str) -> Iterator[Path]:
    """Yield the files of a part in their order: Python and tables."""
    for name in PARTS[part]:
        path = WEBAPP_DIR / name
        found = [path] if path.suffix else sorted(path.rglob("*"))
        for file in found:
            is_left_out = file.relative_to(WEBAPP_DIR).as_posix().startswith(_LEFT_OUT)
            if file.suffix in (".py", ".json", ".csv") and not is_left_out:
                yield file


def _digest(part: str, read: object) -> hashlib._Hash:
    made = hashlib.sha256()
    assert callable(read)
    for file in files_of(part):
        made.update(f"{file.relative_to(WEBAPP_DIR).as_posix()}\n".encode())
        made.update(read(file))
    return made


def _plain(file: Path) -> bytes:
    return file.read_bytes()


def _meaning(file: Path) -> bytes:
    text = file.read_text("utf-8")  # ends of lines are the same on every system
    if file.suffix != ".py":
        return text.encode()
    tree = ast.parse(text)
    for node in ast.walk(tree):
        if isinstance(node, _WITH_DOCSTRING) and _is_text(node.body[:1]):
            node.body = node.body[1:]
    return ast.dump(tree).encode()


def _is_text(body: list[ast.stmt]) -> bool:
    return bool(body) and isinstance(body[0], ast.Expr) and isinstance(getattr(body[0].value, "value", None), str)
