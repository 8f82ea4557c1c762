"""Kinds -> docs/kinds.md, the reference page. Written by `cellarslate write-docs`, checked by a test."""

from __future__ import annotations

import webapp.kinds
from webapp.kinds.spec import Field, Kind, Range
from webapp.trade import units

HEAD = """# Kinds of entry

Made from the declarations in `webapp/kinds/` by `cellarslate write-docs`; do not edit by hand. Ranges are the kinds'
own and are editable per site and vessel: outside *usual* draws a second look and a query *ask*, outside *possible*
is kept as read with a query *stop*.
"""


def kinds_page() -> str:
    """Return the reference page as Markdown text."""
    parts = [HEAD, *(_section(kind) for kind in webapp.kinds.ALL)]
    return "\n".join(parts).rstrip() + "\n"


def _section(kind: Kind) -> str:
    where = ", ".join(kind.vessels) or "no vessel needed"
    lines = [
        f"## {kind.title}",
        "",
        f"`{kind.name}`, version {kind.version}. {kind.about} On: {where}."
        + (f" Usually by: {kind.role}." if kind.role else "")
        + ("" if kind.floor else " From the desk."),
        "",
        "| field | label | read in | usual | possible | needed | source of the range |",
        "| --- | --- | --- | --- | --- | --- | --- |",
        *(_row(spec) for spec in kind.fields),
        "",
    ]
    if kind.figures:
        lines += ["Computed: " + "; ".join(f"{g.label} [{units.symbol(g.unit)}]" for g in kind.figures) + ".", ""]
    if kind.rules:
        lines += ["Between fields: " + " ".join(rule.words for rule in kind.rules), ""]
    if kind.checks:
        lines += ["Checked by the book: " + ", ".join(f"`{name}`" for name in kind.checks) + ".", ""]
    return "\n".join(lines)


def _row(spec: Field) -> str:
    if spec.sort == "number":
        read_in = " or ".join(units.symbol(u) or u for u in spec.units)
    elif spec.sort == "choice":
        read_in = ", ".join(label for _, label in spec.choices)
    else:
        read_in = spec.sort.replace("_", "/")
    ranged = spec.source if spec.usual != (None, None) or spec.possible != (None, None) else ""
    needed = "yes" if spec.required else ""
    cells = [f"`{spec.name}`", spec.label, read_in, _span(spec.usual), _span(spec.possible), needed, ranged]
    return "| " + " | ".join(cells) + " |"


def _span(limits: Range) -> str:
    low, high = limits
    if low is None and high is None:
        return ""
    if high is None:
        return f"from {low:g}"
    return f"to {high:g}" if low is None else f"{low:g} to {high:g}"
