"""From an entry as handed in to canonical figures and problems: pure, the same on the phone (static/kinds/read.js).

As read: `values[field] = {"raw": "14,6", "unit": "degC", "instrument": "TH-2"}` with raw always the text as typed.
As computed: floats in the canonical unit of the field, and the kind's figures.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date
from typing import Any

from webapp.kinds.corrections import put_right
from webapp.kinds.slips import likely_slips, show_number
from webapp.kinds.spec import Field, Figure, Kind, Range, Rule
from webapp.trade import sums, units
from webapp.trade.errors import OutOfDomain

TEXT_MAX = 2000


@dataclass(frozen=True, slots=True)
class Suggestion:
    """A likely figure to tap: what the field would hold, as it would be typed."""

    field: str
    raw: str
    unit: str
    words: str = ""


@dataclass(frozen=True, slots=True)
class Problem:
    """What is wrong or odd with an entry. `refuse`: no number at all; `stop`, `ask`, `note`: kept, and queried."""

    code: str
    weight: str
    field: str
    words: str
    suggestions: tuple[Suggestion, ...] = ()


@dataclass(frozen=True, slots=True)
class Read:
    """One entry, read: canonical values, figures, problems. `context` is what the book knew of the vessel."""

    entry: Mapping[str, Any]
    kind: Kind
    values: Mapping[str, Any]
    figures: Mapping[str, float]
    problems: tuple[Problem, ...]
    context: Mapping[str, Any] = field(default_factory=dict)
    corrected: Mapping[str, float] = field(default_factory=dict)  # field -> what was added to it, in the unit typed

    @property
    def mark(self) -> str:
        """The vessel's mark, or an empty text."""
        return self.entry.get("mark") or ""

    def get(self, name: str) -> Any:
        """Return a canonical value or a figure by name, or None."""
        return self.figures[name] if name in self.figures else self.values.get(name)

    def raw(self, name: str) -> Mapping[str, Any]:
        """Return the field as it was read: raw, unit, instrument. Empty where it was not."""
        value: Mapping[str, Any] = self.entry["values"].get(name) or {}
        return value

    def shown(self, name: str) -> str:
        """Return a field as typed with its unit, or a figure rounded with its unit, for sentences."""
        raw = self.raw(name)
        if raw.get("raw"):
            spec = self.kind.field(name)
            if spec and spec.sort in ("choice", "yes_no"):
                return dict(spec.choices).get(raw["raw"], raw["raw"])
            # A unit that the field does not have is somebody's text: one such entry would stop every list it is in.
            has_unit = spec is not None and raw.get("unit") in spec.units
            return f"{raw['raw']} {units.symbol(raw['unit'])}".strip() if has_unit else str(raw["raw"])
        for figure in self.kind.figures:
            if figure.name == name and name in self.figures:
                return f"{self.figures[name]:.{figure.decimals}f} {units.symbol(figure.unit)}"
        return "–"


def read_entry(kind: Kind, entry: Mapping[str, Any], context: Mapping[str, Any] | None = None) -> Read:
    """Return the entry read by its kind: values and figures in canonical units, and every problem found.

    `context` holds what the card knows of the vessel: `og`, `tare_kg`, `last` (field -> canonical), `limits`
    (field -> {"usual": [lo, hi], "possible": [lo, hi]}), which replace the kind's own ranges, and `corrections` of
    instruments by id (corrections.py): the canonical figure has it, what was typed stays what the instrument showed.
    """
    context = context or {}
    problems: list[Problem] = []
    corrected: dict[str, float] = {}
    values = _fields(kind, entry, context, problems, corrected)
    figures = _figures(kind, entry, values, context, problems)
    known = Read(entry, kind, values, figures, (), context)
    problems.extend(p for rule in kind.rules if (p := _check_rule(rule, known)))
    return Read(entry, kind, values, figures, tuple(problems), context, corrected)


def read_plainly(kind: Kind, entry: Mapping[str, Any]) -> Read:
    """Return the entry with its values and what refuses it, without figures: all that the book's door asks about."""
    problems: list[Problem] = []
    values = _fields(kind, entry, {}, problems, {})
    known = Read(entry, kind, values, {}, ())
    problems.extend(p for rule in kind.rules if rule.weight == "refuse" and (p := _check_rule(rule, known)))
    return Read(entry, kind, values, {}, tuple(p for p in problems if p.weight == "refuse"))


def _fields(
    kind: Kind, entry: Mapping[str, Any], context: Mapping[str, Any], problems: list[Problem],
    corrected: dict[str, float],
) -> dict[str, Any]:  # fmt: skip
    values: dict[str, Any] = {}
    for spec in kind.fields:
        value = _read_field(spec, entry["values"].get(spec.name) or {}, context, problems, corrected)
        if value is not None:
            values[spec.name] = value
    return values


_ASKS = {"choice": "Pick one.", "yes_no": "Pick one.", "mark": "Pick, scan or type it.", "date": "Pick the day."}


def _read_field(
    spec: Field, given: Mapping[str, Any], context: Mapping[str, Any], problems: list[Problem],
    corrected: dict[str, float],
) -> Any:  # fmt: skip
    raw = str(given.get("raw") or "").strip()
    if not raw:
        if spec.required:
            missing = "" if spec.label.endswith("?") else " is missing."  # a question is its own sentence
            words = f"{spec.label}{missing} {_ASKS.get(spec.sort, 'Type it.')}"
            problems.append(Problem("missing", "refuse", spec.name, words))
        return None
    if spec.sort == "number":
        return _read_number(spec, raw, given, context, problems, corrected)
    if spec.sort == "choice" and raw not in dict(spec.choices):
        problems.append(Problem("no_such_choice", "refuse", spec.name, f"{spec.label}: pick one of the choices."))
        return None
    if spec.sort == "yes_no" and raw not in ("yes", "no"):
        problems.append(Problem("no_such_choice", "refuse", spec.name, f"{spec.label}: yes or no."))
        return None
    if spec.sort == "date" and not _is_date(raw):
        problems.append(Problem("no_date", "refuse", spec.name, f"{spec.label}: {raw[:20]} is no date. Pick the day."))
        return None
    if len(raw) > TEXT_MAX:
        words = f"{spec.label} is longer than {TEXT_MAX} characters. Shorten it; the rest can go into a note."
        problems.append(Problem("too_long", "refuse", spec.name, words))
        return None
    return raw


def _read_number(
    spec: Field, raw: str, given: Mapping[str, Any], context: Mapping[str, Any], problems: list[Problem],
    corrected: dict[str, float],
) -> float | None:  # fmt: skip
    unit = given.get("unit") or ""
    correction = (context.get("corrections") or {}).get(str(given.get("instrument") or "").strip())
    if unit not in spec.units:
        named = ", ".join(units.symbol(u) for u in spec.units)
        problems.append(Problem("no_such_unit", "refuse", spec.name, f"{spec.label} is read in {named}. Pick one."))
        return None
    try:
        typed = units.parse_number(raw)
    except ValueError as error:
        problems.append(Problem("no_number", "refuse", spec.name, f"{spec.label}: {error}"))
        return None
    try:
        right = put_right(typed, unit, spec.units[0], correction) if correction else typed
        value = units.to_canonical(right, unit)
    except OutOfDomain as error:
        problems.append(Problem("impossible", "stop", spec.name, f"{spec.label}: {error}"))
        return None
    if right != typed:
        corrected[spec.name] = right - typed
    problem = _check_range(spec, value, typed, unit, context)
    if problem:
        problems.append(problem)
    return value


def limits_of(spec: Field, context: Mapping[str, Any]) -> tuple[Range, Range]:
    """Return the usual and the possible range that hold here: the vessel's own before the kind's. [canonical unit]"""
    own = (context.get("limits") or {}).get(spec.name) or {}
    usual, possible = own.get("usual") or spec.usual, own.get("possible") or spec.possible
    return (usual[0], usual[1]), (possible[0], possible[1])


def _outside(value: float, limits: Range) -> bool:
    low, high = limits
    return (low is not None and value < low) or (high is not None and value > high)


def _check_range(
    spec: Field, value: float, typed: float, unit: str, context: Mapping[str, Any]
) -> Problem | None:
    usual, possible = limits_of(spec, context)
    # A proof reading is about twice the percentage: good enough to ask, never used as a strength.
    measured = value / 2 if unit == "proof_glass" else value
    is_impossible = _outside(measured, possible)
    act = [words for least, words in spec.danger if value >= least]
    if act and not is_impossible:
        # A figure that may mean danger is never talked down: nothing smaller is offered beside it.
        shown = f"{show_number(typed, spec.decimals)} {units.symbol(unit)}".strip()
        return Problem("danger", "ask", spec.name, f"{spec.label} {shown}. {act[-1]}")
    if not is_impossible and not _outside(measured, usual):
        return None
    last = (context.get("last") or {}).get(spec.name)
    shown = f"{show_number(typed, spec.decimals)} {units.symbol(unit)}".strip()
    suggestions = tuple(
        Suggestion(spec.name, slip.raw, slip.unit, slip.words) for slip in likely_slips(spec, typed, unit, usual, last)
    )
    if is_impossible:
        words = f"{spec.label} {shown} cannot be: {_span(possible, spec)} is possible. Look again, or keep it as read."
        return Problem("impossible", "stop", spec.name, words, suggestions)
    words = f"{spec.label} {shown} is unusual: {_span(usual, spec)} is usual here. Look again."
    return Problem("unusual", "ask", spec.name, words, suggestions)


def _span(limits: Range, spec: Field) -> str:
    low, high = limits
    symbol = units.symbol(spec.units[0])
    show = [show_number(x, None) for x in limits if x is not None]
    if low is None:
        text = f"up to {show[0]}"
    elif high is None:
        text = f"{show[0]} or more"
    else:
        text = f"{show[0]} to {show[1]}"
    return f"{text} {symbol}".strip()


def _figures(
    kind: Kind,
    entry: Mapping[str, Any],
    values: Mapping[str, Any],
    context: Mapping[str, Any],
    problems: list[Problem],
) -> dict[str, float]:
    figures: dict[str, float] = {}
    done: dict[Any, float | None] = {}  # two figures may be the same sum of the same inputs: it is worked out once
    for figure in kind.figures:
        if figure.name in figures:
            continue
        if figure.given and figure.given in values:
            figures[figure.name] = values[figure.given]
            continue
        inputs = {name: _input(sources, entry, values, figures, context) for name, sources in figure.inputs.items()}
        key = (figure.sum, tuple(inputs.values()))
        try:
            found = done[key] if key in done else sums.compute(figure.sum, inputs)
        except OutOfDomain as error:
            if not figure.only_shown:
                at = _first_field(kind, figure)
                problems.append(Problem("outside_tables", "stop", at, f"{figure.label}: {error}"))
            continue
        done[key] = found
        if found is not None:
            figures[figure.name] = found
    return figures


def _input(
    sources: tuple[str, ...],
    entry: Mapping[str, Any],
    values: Mapping[str, Any],
    figures: Mapping[str, float],
    context: Mapping[str, Any],
) -> sums.Quantity | float | None:
    """Return the first source that is there: a bare number is canonical, a field keeps its (canonical) unit."""
    for source in sources:
        if source.startswith("="):
            return float(source[1:])
        unit = ""
        if source.startswith("@"):
            value = context.get(source[1:])
        elif source in figures:
            value = figures[source]
        else:
            value, unit = values.get(source), (entry["values"].get(source) or {}).get("unit") or ""
        if isinstance(value, int | float):
            return sums.Quantity(float(value), units.canonical_unit(unit)) if unit else float(value)
    return None


def _first_field(kind: Kind, figure: Figure) -> str:
    names = [source for sources in figure.inputs.values() for source in sources]
    return next((name for name in names if kind.field(name)), "")


def _check_rule(rule: Rule, read: Read) -> Problem | None:
    left, right = _side(rule.left, read), _side(rule.right, read)
    if rule.op == "any_of":
        broken = left is None and right is None
    elif rule.op == "needs":
        broken = left not in (None, False) and right is None and left != 0
    elif left is None or right is None:
        broken = False
    elif rule.op == "lt":
        broken = not left < right
    elif rule.op == "le":
        broken = not left <= right
    else:
        broken = left == right and not _near(rule, read)
    return Problem(rule.code, rule.weight, rule.right.split("|")[0], fill(rule.words, read)) if broken else None


def _side(name: str, read: Read) -> Any:
    if "=" in name:  # `event=heads_cut|hearts_cut`: true where the field holds one of these
        field_name, wanted = name.split("=", 1)
        return read.values.get(field_name) in wanted.split("|") or None
    # `volume|net_weight`: the first of them that is there
    return next((value for each in name.split("|") if (value := read.get(each)) is not None), None)


def _near(rule: Rule, read: Read) -> bool:
    if not rule.near:
        return False
    name, centre, half = rule.near
    value = read.get(name)
    return value is None or abs(value - centre) <= half


def fill(words: str, read: Read) -> str:
    """Return the sentence with `{field}` replaced by what was read, or by the figure."""
    filled = re.sub(r"\{(\w+)\}", lambda match: read.shown(match[1]), words)
    return re.sub("(, | at )\u2013$", "", filled)  # "heat on", not "heat on, –"


def _is_date(raw: str) -> bool:
    try:
        date.fromisoformat(raw)
    except ValueError:
        return False
    return len(raw) == 10
