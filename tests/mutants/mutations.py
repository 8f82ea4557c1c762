"""The mutants of a module: its source with one small fault each, as mutmut's operators make them.

mutmut itself leaves out what stands outside functions, and functions with decorators. Here the tables and limits
at the head of a module, and decorated functions, are mutated too: in this trade they are half of what can be wrong.
"""

from __future__ import annotations

import difflib
import re
from functools import cached_property
from pathlib import Path

import libcst
from libcst.metadata import MetadataWrapper, PositionProvider
from mutmut.mutation.mutators import mutation_operators

from tests.mutants.rooms import TOP

# Not part of what the program does: types, imports, and what a decorator is given as the module loads.
_LEFT_ALONE = (libcst.Annotation, libcst.Import, libcst.ImportFrom, libcst.Decorator)
_SQL = re.compile(r"\b(SELECT|INSERT|UPDATE|DELETE|FROM|WHERE|ORDER BY|CASE)\b")
# A call of these with another argument always fails, whatever the tests: such mutants say nothing.
_CALLS_LEFT_ALONE = {"len", "isinstance", "TypeVar", "NewType", "cast"}


class Mutant:
    """A module's source with one fault in it."""

    def __init__(self, source: Path, module: libcst.Module, was: libcst.CSTNode, becomes: libcst.CSTNode) -> None:
        """Take the parsed module, the node as it is and the node to put in its place."""
        self.source, self._module, self._was, self._becomes = source, module, was, becomes

    @property
    def path(self) -> str:
        """The module's path from the top of the repository."""
        return self.source.relative_to(TOP).as_posix()

    @cached_property
    def code(self) -> str:
        """The whole module with the fault in it."""
        return self._module.deep_replace(self._was, self._becomes).code  # type: ignore[union-attr]

    @cached_property
    def change(self) -> tuple[int, str, str]:
        """The number of the first changed line, its lines before and after: what tells this mutant from others."""
        before, after = self._module.code.splitlines(), self.code.splitlines()
        spans = [
            span for span in difflib.SequenceMatcher(None, before, after, autojunk=False).get_opcodes()
            if span[0] != "equal"
        ]
        if not spans:
            return 0, "", ""
        first, last = spans[0], spans[-1]
        was, becomes = before[first[1] : last[2]], after[first[3] : last[4]]
        return first[1] + 1, _join(was), _join(becomes)

    def is_program(self) -> bool:
        """Return whether Python can read it and it says something else; the rest are no mutants."""
        try:
            compile(self.code, str(self.source), "exec")
        except SyntaxError:
            return False
        return bool(self.change[0])

    def __str__(self) -> str:
        """Give place, line before and line after."""
        line, was, becomes = self.change
        return f"{self.path}:{line}\n  - {was}\n  + {becomes}"


def list_mutants(source: Path) -> list[Mutant]:
    """Return all mutants of a module, in the order of its text."""
    wrapper = MetadataWrapper(libcst.parse_module(source.read_text()))
    finder = _Finder()
    wrapper.visit(finder)
    return [Mutant(source, wrapper.module, was, becomes) for was, becomes in finder.found]


class _Finder(libcst.CSTVisitor):
    METADATA_DEPENDENCIES = (PositionProvider,)

    def __init__(self) -> None:
        super().__init__()
        self.found: list[tuple[libcst.CSTNode, libcst.CSTNode]] = []

    def on_visit(self, node: libcst.CSTNode) -> bool:
        if isinstance(node, _LEFT_ALONE) or _is_left_alone(node):
            return False
        for sort, operator in mutation_operators:
            if isinstance(node, sort):
                self.found.extend((node, becomes) for becomes in operator(node) if not _is_same_sql(node, becomes))
        return True


def _is_same_sql(was: libcst.CSTNode, becomes: libcst.CSTNode) -> bool:
    """Return whether a statement of SQL was only put into other letters: SQLite does not tell them apart."""
    if not isinstance(was, libcst.SimpleString) or not isinstance(becomes, libcst.SimpleString):
        return False
    return bool(_SQL.search(was.value)) and was.value.lower() == becomes.value.lower()


def _is_left_alone(node: libcst.CSTNode) -> bool:
    if isinstance(node, libcst.Call) and isinstance(node.func, libcst.Name):
        return node.func.value in _CALLS_LEFT_ALONE
    # `X = dict[str, Any]` and `__all__`: names for types and for readers.
    return isinstance(node, libcst.If) and isinstance(node.test, libcst.Name) and node.test.value == "TYPE_CHECKING"


def _join(lines: list[str]) -> str:
    return " ".join(line.strip() for line in lines)
