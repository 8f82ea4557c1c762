"""From an entry as handed in to canonical figures and problems: pure, the same on the phone (static/kinds/read.js).

As read: `values[field] = {"raw": "14,6", "unit": "degC", "instrument": "TH-2"}` with raw always the text as typed.
As computed: floats in the canonical unit of the field, and the kind's figures.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date
from math import inf

from webapp.kinds.corrections import put_right
from webapp.kinds.entry import Context, Entry, Typed
from webapp.kinds.expected import Expected
from webapp.kinds.figures import work_out
from webapp.kinds.message import Declared, Figure, Param, Several, Unit, message
from webapp.kinds.message import Range as FromTo
from webapp.kinds.problem import Problem
from webapp.kinds.reasons import reason_of
from webapp.kinds.slips import show_number
from webapp.kinds.spec import Field, Kind, Range, Rule
from webapp.kinds.state import Value, figure_in, text_in
from webapp.trade import units
from webapp.trade.errors import NotANumber, OutOfDomain

TEXT_MAX = 2000


@dataclass(frozen=True, slots=True)
class Read:
    """One entry, read: canonical values, figures, problems. `context` is what the book knew of the vessel."""

    entry: Entry
    kind: Kind
    values: Mapping[str, Value]
    figures: Mapping[str, float]
    problems: tuple[Problem, ...]
    context: Context = field(default_factory=Context)
    corrected: Mapping[str, float] = field(default_factory=dict)  # field -> what was added to it, in the unit typed
    answered: frozenset[str] = frozenset()  # codes of the questions to this entry that somebody has let stand

    @property
    def mark(self) -> str:
        """The vessel's mark, or an empty text."""
        return self.entry.get("mark") or ""

    def get(self, name: str) -> Value | None:
        """Return a canonical value or a figure by name, or None."""
        return self.figures[name] if name in self.figures else self.values.get(name)

    def number(self, name: str) -> float | None:
        """Return the figure that was read in a field, or None. [canonical unit]"""
        return figure_in(self.values, name)

    def text(self, name: str) -> str | None:
        """Return the text, choice or mark in a field, or None."""
        return text_in(self.values, name)

    def raw(self, name: str) -> Typed:
        """Return the field as it was read: raw, unit, instrument. Empty where it was not."""
        return self.entry["values"].get(name) or {}

    def param(self, name: str) -> Param:
        """Return a field as typed with its unit, or a figure rounded with its unit, as a parameter of a message."""
        raw, spec = self.raw(name), self.kind.field(name)
        if raw.get("raw"):
            if spec and spec.sort in ("choice", "yes_no"):
                return Declared(("choice", self.kind.name, name, raw["raw"]))
            return Figure(str(raw["raw"]), raw["unit"] if spec is not None and raw.get("unit") in spec.units else "")
        for figure in self.kind.figures:
            if figure.name == name and name in self.figures:
                return Figure(f"{self.figures[name]:.{figure.decimals}f}", figure.unit)
        return "–"

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


def read_entry(kind: Kind, entry: Entry, context: Context | None = None) -> Read:
    """Return the entry read by its kind: values and figures in canonical units, and every problem found.

    `context` holds what the card knows of the vessel: `og`, `tare_kg`, `last` (field -> canonical), `limits`
    (field -> {"usual": [lo, hi], "possible": [lo, hi]}), which replace the kind's own ranges, and `corrections` of
    instruments by id (corrections.py): the canonical figure has it, what was typed stays what the instrument showed.
    """
    context = context or {}
    problems: list[Problem] = []
    corrected: dict[str, float] = {}
    values = _fields(kind, entry, context, problems, corrected)
    figures = work_out(kind, entry, values, context, problems)
    known = Read(entry, kind, values, figures, (), context)
    problems.extend(p for rule in kind.rules if (p := _check_rule(rule, known)))
    return Read(entry, kind, values, figures, tuple(problems), context, corrected)


def read_plainly(kind: Kind, entry: Entry) -> Read:
    """Return the entry with its values and what refuses it, without figures: all that the book's door asks about."""
    problems: list[Problem] = []
    values = _fields(kind, entry, {}, problems, None)
    known = Read(entry, kind, values, {}, ())
    problems.extend(p for rule in kind.rules if rule.weight == "refuse" and (p := _check_rule(rule, known)))
    return Read(entry, kind, values, {}, tuple(p for p in problems if p.weight == "refuse"))


def _fields(
    kind: Kind, entry: Entry, context: Context, problems: list[Problem], corrected: dict[str, float] | None,
) -> dict[str, Value]:
    """Return the values of an entry. corrected: where it is None, only what refuses the entry is looked for."""
    values: dict[str, Value] = {}
    for spec in kind.fields:
        given = entry["values"].get(spec.name)
        if not given and not spec.required:
            continue
        value = _read_field(kind, spec, given or {}, context, problems, corrected)
        if value is not None:
            values[spec.name] = value
    return values


def label(kind: Kind, spec: Field) -> Declared:
    """Return the words on a field's box, as a parameter of a message."""
    return Declared(("label", kind.name, spec.name))


def _read_field(
    kind: Kind, spec: Field, given: Typed, context: Context, problems: list[Problem],
    corrected: dict[str, float] | None,
) -> Value | None:
    raw = str(given.get("raw") or "").strip()
    if not raw:
        if spec.required:
            id_ = "missing-question" if spec.label.endswith("?") else "missing"  # a question is its own sentence
            said = message(id_, label=label(kind, spec), sort=spec.sort)
            problems.append(Problem("missing", "refuse", spec.name, said))
        return None
    if spec.sort == "number":
        return _read_number(kind, spec, raw, given, context, problems, corrected)
    refused = _refused_text(spec, raw, label(kind, spec))
    if refused:
        problems.append(refused)
        return None
    return raw


def _refused_text(spec: Field, raw: str, called: Declared) -> Problem | None:
    if spec.sort == "choice" and raw not in dict(spec.choices):
        return Problem("no_such_choice", "refuse", spec.name, message("no_such_choice", label=called))
    if spec.sort == "yes_no" and raw not in ("yes", "no"):
        return Problem("no_such_choice", "refuse", spec.name, message("no_such_choice-yes_no", label=called))
    if spec.sort == "date" and not _is_date(raw):
        return Problem("no_date", "refuse", spec.name, message("no_date", label=called, typed=raw[:20]))
    if len(raw) > TEXT_MAX:
        return Problem("too_long", "refuse", spec.name, message("too_long", label=called, most=TEXT_MAX))
    return None


def _read_number(
    kind: Kind, spec: Field, raw: str, given: Typed, context: Context, problems: list[Problem],
    corrected: dict[str, float] | None,
) -> float | None:
    unit = given.get("unit") or ""
    corrections = context.get("corrections")
    correction = corrections.get(str(given.get("instrument") or "").strip()) if corrections else None
    if unit not in spec.units:
        said = message("no_such_unit", label=label(kind, spec), units=Several(tuple(map(Unit, spec.units))))
        problems.append(Problem("no_such_unit", "refuse", spec.name, said))
        return None
    try:
        typed = units.parse_number(raw)
    except NotANumber as error:
        said = message("no_number", label=label(kind, spec), reason=reason_of(error))
        problems.append(Problem("no_number", "refuse", spec.name, said))
        return None
    try:
        right = put_right(typed, unit, spec.units[0], correction) if correction else typed
        value: float = units.to_canonical(right, unit)
    except OutOfDomain as error:
        said = message("impossible-outside", label=label(kind, spec), reason=reason_of(error))
        problems.append(Problem("impossible", "stop", spec.name, said))
        return None
    if corrected is None:
        return value
    if right != typed:
        corrected[spec.name] = right - typed
    problem = _check_range(kind, spec, value, typed, unit, context)
    if problem:
        problems.append(problem)
    return value


def limits_of(spec: Field, context: Context) -> tuple[Range, Range]:
    """Return the usual and the possible range that hold here: the vessel's own before the kind's. [canonical unit]"""
    own = (context.get("limits") or {}).get(spec.name) or {}
    if not own:
        return spec.usual, spec.possible
    usual, possible = own.get("usual") or spec.usual, own.get("possible") or spec.possible
    return (usual[0], usual[1]), (possible[0], possible[1])


def _outside(value: float, limits: Range) -> bool:
    low, high = limits
    return (low is not None and value < low) or (high is not None and value > high)


def _check_range(
    kind: Kind, spec: Field, value: float, typed: float, unit: str, context: Context
) -> Problem | None:
    usual, possible = limits_of(spec, context)
    shown_as = measured(value, unit)
    is_impossible = _outside(shown_as, possible)
    act = [n for n, (least, _) in enumerate(spec.danger) if value >= least] if spec.danger else []
    if not is_impossible and not act and not _outside(shown_as, usual):
        return None  # as most figures are
    called, shown = label(kind, spec), Figure(show_number(typed, spec.decimals), unit)
    if act and not is_impossible:
        # A figure that may mean danger is never talked down: nothing smaller is offered beside it.
        danger = Declared(("danger", kind.name, spec.name, str(act[-1])))
        return Problem("danger", "ask", spec.name, message("danger", label=called, figure=shown, act=danger))
    last = figure_in(context.get("last") or {}, spec.name)
    expects = (_expected(spec, usual, last),)
    if is_impossible:
        said = message("impossible", label=called, figure=shown, possible=_span(possible, spec))
        return Problem("impossible", "stop", spec.name, said, expects)
    said = message("unusual", label=called, figure=shown, usual=_span(usual, spec))
    return Problem("unusual", "ask", spec.name, said, expects)


def _expected(spec: Field, usual: Range, last: float | None) -> Expected:
    """Return what is usual in a field: near its last value, and not above it where it can only fall."""
    low, high = -inf if usual[0] is None else usual[0], inf if usual[1] is None else usual[1]
    if last is not None and spec.falls is not None:
        high = min(high, last + spec.falls)
    return Expected(spec.name, low, high, last)


def measured(value: float, unit: str) -> float:
    """Return a canonical value as ranges look at it: a proof reading is about twice the percentage."""
    return value / 2 if unit == "proof_glass" else value  # good enough to ask, never used as a strength


def _span(limits: Range, spec: Field) -> FromTo:
    low, high = (None if end is None else show_number(end, None) for end in limits)
    return FromTo(low, high, spec.units[0])


def _check_rule(rule: Rule, read: Read) -> Problem | None:
    left, right = _side(rule.left, read), _side(rule.right, read)
    if rule.op == "any_of":
        broken = left is None and right is None
    elif rule.op == "needs":
        broken = left not in (None, False) and right is None and left != 0
    elif left is None or right is None:
        broken = False
    elif rule.op == "lt":
        broken = _order(left, right) >= 0
    elif rule.op == "le":
        broken = _order(left, right) > 0
    else:
        broken = left == right and not _near(rule, read)
    if not broken:
        return None
    said = message(f"rule-{read.kind.name}-{rule.code}", **{name: read.param(name) for name in _named_in(rule.words)})
    return Problem(rule.code, rule.weight, rule.right.split("|")[0], said, _exchanged(rule, read))


def _exchanged(rule: Rule, read: Read) -> tuple[Expected, ...]:
    """Return what two figures in the wrong order would be if each stood in the box of the other."""
    left, right = read.number(rule.left), read.number(rule.right)
    if rule.op not in ("lt", "le") or left is None or right is None or left == right:
        return ()
    return Expected(rule.left, right, right), Expected(rule.right, left, left)


def _order(left: Value | bool, right: Value | bool) -> int:
    """Return -1, 0 or 1: two figures by their size, two texts (days) by their letters."""
    if isinstance(left, str) and isinstance(right, str):
        return (left > right) - (left < right)
    assert not isinstance(left, str), "a rule sets a figure against a text"
    assert not isinstance(right, str), "a rule sets a figure against a text"
    return (left > right) - (left < right)


def _named_in(words: str) -> list[str]:
    return re.findall(r"\{(\w+)\}", words)


def _side(name: str, read: Read) -> Value | bool | None:
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
    return value is None or (not isinstance(value, str) and abs(value - centre) <= half)


def fill_sentence(words: str, read: Read) -> str:
    """Return the sentence with `{field}` replaced by what was read, or by the figure."""
    filled = re.sub(r"\{(\w+)\}", lambda match: read.shown(match[1]), words)
    # What was not read is left out with what led to it: "heat on", not "heat on, –"; "spill", not "spill: –".
    return re.sub("(, |: | at | to | from )\u2013(?=$|,| at | to | from )", "", filled)


def _is_date(raw: str) -> bool:
    try:
        date.fromisoformat(raw)
    except ValueError:
        return False
    return len(raw) == 10
