"""What stands in a catalogue, by the parser of the reference implementation, apart from both renderers."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from fluent.syntax import FluentParser
from fluent.syntax import ast as ftl

import webapp
from webapp.words.catalogue import catalogue_text

ROOMS = Path(webapp.__file__).parent


def messages(language: str) -> dict[str, ftl.Message]:
    """Return the messages of a language by id; no line of it may be junk, and none may come twice."""
    body = FluentParser().parse(catalogue_text(language)).body
    assert [entry.content for entry in body if isinstance(entry, ftl.Junk)] == []
    found = [entry for entry in body if isinstance(entry, ftl.Message)]
    assert len({one.id.name for one in found}) == len(found)
    return {one.id.name: one for one in found}


def nodes(node: Any, of: type) -> Iterator[Any]:
    """Yield the nodes of a sort below a node."""
    if isinstance(node, of):
        yield node
    inner = vars(node).values() if isinstance(node, ftl.BaseNode) else node if isinstance(node, list) else ()
    for one in inner:
        if isinstance(one, ftl.BaseNode | list):
            yield from nodes(one, of)


def parts_of(id_: str, known: dict[str, ftl.Message]) -> set[str]:
    """Return the ids of the messages that stand within a message, however deep."""
    inner = {one.id.name for one in nodes(known[id_], ftl.MessageReference)}
    return inner | {deeper for one in inner for deeper in parts_of(one, known)}


def params_of(id_: str, known: dict[str, ftl.Message]) -> set[str]:
    """Return the names of the parameters that a message uses, itself or by a message within it."""
    whole = [known[each] for each in (id_, *parts_of(id_, known))]
    return {one.id.name for each in whole for one in nodes(each, ftl.VariableReference)}


def asked_for() -> Iterator[tuple[str, re.Pattern[str], set[str] | None]]:
    """Yield (where, pattern of the id, names of the parameters if they all stand there) of each message in the program.

    An id that is put together (`law-{...}`) is a pattern; parameters that come by `**` are not known here.
    """
    for path in sorted(ROOMS.rglob("*.py")):
        for node in ast.walk(ast.parse(path.read_text("utf-8"))):
            if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id == "message":
                where = f"{path.relative_to(ROOMS)}:{node.lineno}"
                names = {one.arg for one in node.keywords}
                for pattern in _ids(node.args[0]) if node.args else ():
                    yield where, pattern, None if None in names else {str(name) for name in names}


def _ids(node: ast.expr) -> Iterator[re.Pattern[str]]:
    if isinstance(node, ast.Constant):
        yield re.compile(re.escape(str(node.value)))
    elif isinstance(node, ast.JoinedStr):
        parts = (re.escape(one.value) if isinstance(one, ast.Constant) else ".+" for one in node.values)
        yield re.compile("".join(map(str, parts)))
    elif isinstance(node, ast.IfExp):
        yield from _ids(node.body)
        yield from _ids(node.orelse)


def refused_by_sums() -> Iterator[tuple[str, str]]:
    """Yield (what sort of code, code) of each code that stands where a sum of the book refuses a figure."""
    for path in sorted((ROOMS / "trade").glob("*.py")):
        for node in ast.walk(ast.parse(path.read_text("utf-8"))):
            if not isinstance(node, ast.Call) or not isinstance(node.func, ast.Name) or not node.args:
                continue
            if node.func.id == "check_range":
                *_, unit, advice = node.args
                yield from _codes("measured", node.args[0])
                yield from _codes("measure", unit)
                yield from _codes("advice", advice)
            elif node.func.id == "OutOfDomain":
                yield from _codes("reason", node.args[4])
            elif node.func.id == "NotANumber":
                yield from _codes("number", node.args[0])


def _codes(sort: str, node: ast.expr) -> Iterator[tuple[str, str]]:
    if isinstance(node, ast.Constant):
        yield sort, str(node.value)
    elif isinstance(node, ast.IfExp):
        yield from _codes(sort, node.body)
        yield from _codes(sort, node.orelse)


def texts_in_program(room: str = "") -> set[str]:
    """Return every text that stands by itself in the program, or in a room of it."""
    trees = (ast.parse(path.read_text("utf-8")) for path in (ROOMS / room).rglob("*.py"))
    constants = (node for tree in trees for node in ast.walk(tree) if isinstance(node, ast.Constant))
    return {node.value for node in constants if isinstance(node.value, str)}
