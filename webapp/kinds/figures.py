"""The figures of an entry, worked out by its kind from what was read. Part of the twin of static/kinds/read.js."""

from __future__ import annotations

from collections.abc import Container, Mapping

from webapp.kinds.entry import Context, Entry
from webapp.kinds.message import Declared, message
from webapp.kinds.problem import Problem
from webapp.kinds.reasons import reason_of
from webapp.kinds.spec import Figure as Sum
from webapp.kinds.spec import Kind
from webapp.kinds.state import Value, figure_in
from webapp.trade import sums, units
from webapp.trade.errors import OutOfDomain


def figures_of(
    kind: Kind, entry: Entry, values: Mapping[str, Value], context: Context, only: Container[str] | None = None,
) -> dict[str, float]:
    """Return the figures of an entry as they would be with these canonical values; what has no answer is left out.

    only: the names of those that are wanted, and of those that they are worked out from.
    """
    return work_out(kind, entry, values, context, [], only)


def work_out(
    kind: Kind,
    entry: Entry,
    values: Mapping[str, Value],
    context: Context,
    problems: list[Problem],
    only: Container[str] | None = None,
) -> dict[str, float]:
    """Return the figures of an entry; a figure that its tables do not hold is added to `problems`."""
    figures: dict[str, float] = {}
    # Two figures may be the same sum of the same inputs: it is worked out once.
    done: dict[tuple[str, tuple[sums.Given | None, ...]], float | None] = {}
    for figure in kind.figures:
        if figure.name in figures or (only is not None and figure.name not in only):
            continue
        if not _is_typed_so(figure, entry, values):
            continue
        given = figure_in(values, figure.given) if figure.given else None
        if given is not None:
            figures[figure.name] = given
            continue
        inputs = {name: _input(sources, entry, values, figures, context) for name, sources in figure.inputs.items()}
        key = (figure.sum, tuple(inputs.values()))
        try:
            found = done[key] if key in done else sums.compute(figure.sum, inputs)
        except OutOfDomain as error:
            if not figure.only_shown:
                at = _first_field(kind, figure)
                called = Declared(("figure", kind.name, figure.name))
                said = message("outside_tables", label=called, reason=reason_of(error))
                problems.append(Problem("outside_tables", "stop", at, said))
            continue
        done[key] = found
        if found is not None:
            figures[figure.name] = found
    return figures


def _input(
    sources: tuple[str, ...],
    entry: Entry,
    values: Mapping[str, Value],
    figures: Mapping[str, float],
    context: Context,
) -> sums.Given | None:
    """Return the first source that is there: a bare number is canonical, a field keeps its (canonical) unit.

    What the registry says of a vessel in more than a number comes as its text.
    """
    for source in sources:
        if source.startswith("="):
            return float(source[1:])
        unit = ""
        if source.startswith("@"):
            value = context.get(source[1:])
            if isinstance(value, str):
                return value
        elif source in figures:
            value = figures[source]
        else:
            value, unit = values.get(source), (entry["values"].get(source) or {}).get("unit") or ""
        if isinstance(value, (int, float)):
            return sums.Quantity(float(value), units.canonical_unit(unit)) if unit else float(value)
    return None


def _is_typed_so(figure: Sum, entry: Entry, values: Mapping[str, Value]) -> bool:
    if figure.typed is None:
        return True
    names, unit = figure.typed
    first = next((name for name in names.split("|") if name in values), None)
    return first is not None and (entry["values"].get(first) or {}).get("unit") == unit


def _first_field(kind: Kind, figure: Sum) -> str:
    names = [source for sources in figure.inputs.values() for source in sources]
    return next((name for name in names if kind.field(name)), "")
