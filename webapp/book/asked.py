"""What a check asks, read out of its own source: codes, weights, sentences and limits, so that no list repeats them.

A check is followed into the functions that it calls, of its own file and of the other checks. A code or a weight that
cannot be told from the source is an error: the page of the checks would have a hole.
"""

from __future__ import annotations

import ast
import inspect
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from functools import cache
from importlib import import_module
from itertools import product
from types import ModuleType

from webapp.book.limits import ALL
from webapp.kinds.message import message
from webapp.words import sentence
from webapp.words.catalogue import ENGLISH, catalogue_text

# What makes a question of its code and its weight, and what makes one that refuses.
_MAKERS = {"Query": True, "Problem": True, "Notice": True, "_problem": False}
_FOLLOWED = "webapp.book.checks."
_REFUSE = "refuse"


@dataclass
class Asked:
    """What is asked somewhere: weights by code, ids of messages, names of limits."""

    weights: dict[str, set[str]] = field(default_factory=dict)
    messages: set[str] = field(default_factory=set)
    limits: set[str] = field(default_factory=set)

    def sentences(self, code: str) -> list[str]:
        """Return the sentences that a question of this code may be, with ‹names› where its parameters stand."""
        plain = code.split("_‹")[0]
        ids = sorted(id_ for id_ in self.messages if id_ == plain or id_.startswith(f"{plain}-"))
        of_field = [id_ for id_ in ids if id_.endswith("-field")]
        if "‹" in code and of_field:
            ids = of_field
        return [example(id_) for id_ in ids if id_ in _ids()]


def asked_by(check: Callable[..., object]) -> Asked:
    """Return the questions that a function asks, with all that it calls of the checks."""
    module = import_module(check.__module__)
    asked, seen = Asked(), set[tuple[str, str]]()
    _follow(module, check.__name__, asked, seen)
    return asked


def asked_in(*modules: ModuleType) -> Asked:
    """Return the questions of whole files."""
    asked = Asked()
    for module in modules:
        for name in _functions(module):
            _read(module, _functions(module)[name], asked)
    return asked


def example(id_: str) -> str:
    """Return a message of the catalogue with ‹name› in place of each parameter."""
    return sentence(message(id_, **{name: f"‹{name}›" for name in _parameters()}))


def _follow(module: ModuleType, name: str, asked: Asked, seen: set[tuple[str, str]]) -> None:
    if (module.__name__, name) in seen:
        return
    seen.add((module.__name__, name))
    function = _functions(module)[name]
    _read(module, function, asked)
    for node in ast.walk(function):
        if not isinstance(node, ast.Name):
            continue
        if node.id in _functions(module):
            _follow(module, node.id, asked, seen)
            continue
        found = getattr(module, node.id, None)
        if inspect.isfunction(found) and found.__module__.startswith(_FOLLOWED):
            _follow(import_module(found.__module__), found.__name__, asked, seen)


def _read(module: ModuleType, function: ast.FunctionDef, asked: Asked) -> None:
    for node in ast.walk(function):
        if isinstance(node, ast.Constant) and node.value in ALL:
            asked.limits.add(str(node.value))
        if not isinstance(node, ast.Call) or not isinstance(node.func, ast.Name):
            continue
        if node.func.id == "message" and node.args:
            asked.messages |= set(_texts(node.args[0], function, module))
        if node.func.id in _MAKERS and not _is_handed_on(node.args[0], function):
            for code, weight in _pairs(node, function, module):
                asked.weights.setdefault(code, set()).add(weight)


def _pairs(node: ast.Call, function: ast.FunctionDef, module: ModuleType) -> Iterator[tuple[str, str]]:
    """Yield each code with its weight. What was set as a pair stays a pair: not every code has every weight."""
    code = node.args[0]
    weight = node.args[1] if _MAKERS[getattr(node.func, "id", "")] else ast.Constant(_REFUSE)
    both: list[tuple[ast.expr, ast.expr]] = [(code, weight)]
    if isinstance(code, ast.Name) and isinstance(weight, ast.Name):
        both = list(zip(_assigned(code.id, function), _assigned(weight.id, function), strict=True))
    for one, its in both:
        yield from product(_texts(one, function, module), list(_texts(its, function, module)))


def _is_handed_on(code: ast.expr, function: ast.FunctionDef) -> bool:
    """Whether a question only passes on what another has asked: `p.code`, or a parameter of the function."""
    if isinstance(code, ast.Attribute):
        return code.attr == "code"
    return isinstance(code, ast.Name) and code.id in {each.arg for each in function.args.args}


def _texts(node: ast.expr, function: ast.FunctionDef, module: ModuleType) -> Iterator[str]:
    """Yield every text that an expression may come to; what is worked out stands as ‹name›."""
    if isinstance(node, ast.Constant):
        yield str(node.value)
    elif isinstance(node, ast.IfExp):
        yield from _texts(node.body, function, module)
        yield from _texts(node.orelse, function, module)
    elif isinstance(node, ast.BoolOp):
        for value in node.values:
            yield from _texts(value, function, module)
    elif isinstance(node, ast.JoinedStr):
        yield from _joined(node, function, module)
    elif isinstance(node, ast.Name):
        found = list(_assigned(node.id, function))
        if found:
            for value in found:
                yield from _texts(value, function, module)
        elif isinstance(known := getattr(module, node.id, None), str):
            yield known
        else:
            raise LookupError(f"{module.__name__}.{function.name}: nobody can tell what {node.id} is")
    else:
        raise LookupError(f"{module.__name__}.{function.name}: nobody can tell what {ast.unparse(node)} is")


def _joined(node: ast.JoinedStr, function: ast.FunctionDef, module: ModuleType) -> Iterator[str]:
    made = [""]
    for part in node.values:
        if isinstance(part, ast.FormattedValue):
            try:
                ends = list(_texts(part.value, function, module))
            except LookupError:
                ends = [f"‹{ast.unparse(part.value).split('.')[0].replace('spec', 'field').removesuffix('_name')}›"]
        else:
            ends = list(_texts(part, function, module))
        made = [begun + end for begun in made for end in ends]
    yield from made


def _assigned(name: str, function: ast.FunctionDef) -> Iterator[ast.expr]:
    for node in ast.walk(function):
        if not isinstance(node, ast.Assign):
            continue
        for target in node.targets:
            if isinstance(target, ast.Name) and target.id == name:
                yield node.value
            if isinstance(target, ast.Tuple) and (at := _place_of(name, target)) is not None:
                yield from _parts(node.value, at)


def _place_of(name: str, target: ast.Tuple) -> int | None:
    return next((n for n, each in enumerate(target.elts) if isinstance(each, ast.Name) and each.id == name), None)


def _parts(value: ast.expr, at: int) -> Iterator[ast.expr]:
    if isinstance(value, ast.Tuple):
        yield value.elts[at]
    elif isinstance(value, ast.IfExp):
        yield from _parts(value.body, at)
        yield from _parts(value.orelse, at)


@cache
def _functions(module: ModuleType) -> dict[str, ast.FunctionDef]:
    tree = ast.parse(inspect.getsource(module))
    return {node.name: node for node in ast.walk(tree) if isinstance(node, ast.FunctionDef)}


@cache
def _ids() -> frozenset[str]:
    return frozenset(line.partition(" = ")[0] for line in catalogue_text(ENGLISH).splitlines() if " = " in line)


@cache
def _parameters() -> tuple[str, ...]:
    """Return the names of all parameters of the catalogue."""
    text = catalogue_text(ENGLISH)
    return tuple(sorted({part.split()[0].rstrip(",)}") for part in text.split("$")[1:]}))
