"""What was meant? From what a question expected to at most three figures to tap. Twin: static/kinds/meant.js.

Each way in which a box is typed wrongly (slips.py) or a figure lands in another box is tried on the entry as read.
What brings an expected figure is likely; the likelier, the nearer it comes to all that was expected and the oftener
that slip happens. Then the whole entry is judged with it: it is offered where its question is silent, and counts for
less where another speaks up.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from math import inf, isfinite, prod
from typing import NamedTuple, Protocol

from webapp.kinds.corrections import put_right
from webapp.kinds.entry import Entry, Typed
from webapp.kinds.expected import Box, Expected, Suggestion
from webapp.kinds.figures import figures_of
from webapp.kinds.message import Message, message
from webapp.kinds.read import Read, label, limits_of, measured
from webapp.kinds.slips import show_number, slips_of
from webapp.kinds.spec import Field, Kind
from webapp.kinds.state import Value
from webapp.trade import units
from webapp.trade.errors import NotANumber, OutOfDomain

MOST = 3
TRIED_MOST = 6  # what is judged with the whole entry
LEAST = 0.2  # beside a likelier one, what is less likely than this part of it is not offered
BY_RANGE = ("unusual", "impossible")  # questions of one code about more than one field
# The box that a figure was meant for, and the unit that it has there.
OTHER_BOX = {
    "strength": ("glass", {"pct_vol": "pct_glass", "proof": "proof_glass"}),
    "glass": ("strength", {"pct_glass": "pct_vol", "proof_glass": "proof"}),
    "cases": ("bottles", {}), "bottles": ("cases", {}),
}
SPEAKS_UP = 0.5  # for each question that would be put anew
# How often it is this, against two digits swapped; common practice, no source.
BOX, NET, ULLAGE, EXCHANGED, BY_CASE = 0.7, 0.7, 0.6, 0.5, 0.6


class Asked(Protocol):
    """A question or a problem: its code, the field it is about, its weight, what it expected."""

    @property
    def code(self) -> str: ...
    @property
    def field(self) -> str: ...
    @property
    def weight(self) -> str: ...
    @property
    def expects(self) -> tuple[Expected, ...]: ...


Judge = Callable[[Entry], Iterable[Asked]]


class _Likely(NamedTuple):
    weight: float
    boxes: tuple[Box, ...]
    message: Message
    fits: tuple[bool, ...]  # by question: whether it brings what that one expected


def offers(read: Read, asked: Sequence[Asked], judge: Judge) -> list[tuple[Suggestion, ...]]:
    """Return for each question at most three figures that may have been meant, the likeliest first.

    asked: the questions to the entry as read; judge: those to it as it would be.
    """
    others = names_of(asked)
    kept: list[list[_Likely]] = [[] for _ in asked]
    for one in _likeliest(read, asked):
        then = names_of(judge(with_boxes(read.entry, one.boxes)))
        weight = one.weight * SPEAKS_UP ** len(then - others)
        for n, question in enumerate(asked):
            if one.fits[n] and name_of(question) not in then:
                kept[n].append(one._replace(weight=weight))
    return [_best(found) for found in kept]


def _best(found: list[_Likely]) -> tuple[Suggestion, ...]:
    ranked = sorted(found, key=lambda one: -one.weight)
    return tuple(
        Suggestion(first.field, first.raw, first.unit, one.message, tuple(also))
        for one in ranked[:MOST] if one.weight >= ranked[0].weight * LEAST for first, *also in [one.boxes]
    )


def names_of(questions: Iterable[Asked]) -> frozenset[str]:
    """Return the names of the questions that want an answer."""
    return frozenset(name_of(one) for one in questions if one.weight in ("ask", "stop"))


def name_of(asked: Asked) -> str:
    """Return the code of a question, with its field where one code may speak of several."""
    return f"{asked.code}:{asked.field}" if asked.code in BY_RANGE else asked.code


def with_boxes(entry: Entry, boxes: Iterable[Box]) -> Entry:
    """Return the entry with these boxes filled in or left empty; instruments and all else stay."""
    values: dict[str, Typed] = dict(entry["values"])
    for box in boxes:
        if not box.raw:
            values.pop(box.field, None)
            continue
        value: Typed = {**values.get(box.field, {}), "raw": box.raw}
        if box.unit:
            value["unit"] = box.unit
        values[box.field] = value
    return {**entry, "values": values}


def _likeliest(read: Read, asked: Sequence[Asked]) -> list[_Likely]:
    """Return what is worth judging, the likeliest first, each entry once."""
    made = [made_of(read.kind, expected.of) for one in asked for expected in one.expects]
    fields = frozenset[str]().union(*(fields for fields, _ in made))
    figures = frozenset[str]().union(*(figures for _, figures in made))
    wanted = {expected.of for one in asked for expected in one.expects}
    found: dict[frozenset[Box], _Likely] = {}
    best: list[float] = []  # the weights of what would be tried so far, the least first
    for weight, boxes, why in sorted(_ways(read, fields), key=lambda way: -way[0]):
        if best and (weight < best[-1] * LEAST or (len(best) == TRIED_MOST and weight <= best[0])):
            break  # none weighs more than how often it is so
        key = frozenset(boxes)
        values = _values_with(read, boxes) if key not in found else None
        if values is None:
            continue
        there = with_boxes(read.entry, boxes)
        known = _as_measured(values, there, wanted)
        if figures:
            known |= figures_of(read.kind, there, values, read.context, figures)
        fits = tuple(any(_closeness(known, expected)[1] for expected in one.expects) for one in asked)
        if any(fits):
            near = prod(max(_closeness(known, expected)[0] for expected in one.expects) for one in asked if one.expects)
            found[key] = _Likely(weight * near, boxes, why, fits)
            best = sorted([*best, weight * near])[-TRIED_MOST:]
    ranked = sorted(found.values(), key=lambda one: -one.weight)
    return [one for one in ranked[:TRIED_MOST] if one.weight >= ranked[0].weight * LEAST]


def _as_measured(values: Mapping[str, Value], entry: Entry, wanted: Iterable[str]) -> dict[str, Value]:
    """Return those canonical values that are wanted, as ranges look at them."""
    return {
        name: measured(value, entry["values"][name].get("unit") or "") if isinstance(value, int | float) else value
        for name in wanted if (value := values.get(name)) is not None
    }


def made_of(kind: Kind, name: str) -> tuple[frozenset[str], frozenset[str]]:
    """Return the fields and the figures that a figure is worked out from, itself among them; or the field alone."""
    fields, figures, open_names = set[str](), set[str](), [name]
    while open_names:
        one = open_names.pop()
        if kind.field(one):
            fields.add(one)
        elif one not in figures:
            figures.add(one)
            for figure in kind.figures:
                if figure.name == one:
                    open_names += [source for sources in figure.inputs.values() for source in sources]
                    open_names += [figure.given] if figure.given else []
    return frozenset(fields), frozenset(figures)


def _closeness(known: Mapping[str, Value], expected: Expected) -> tuple[float, bool]:
    """Return how near a figure comes to what was expected of it, 0 to 1, and whether it would do."""
    value, low, high = known.get(expected.of), expected.low, expected.high
    if not isinstance(value, int | float):
        return 0.0, False
    near = expected.near if expected.near is not None else (low + high) / 2
    width = max(high - near, near - low)
    if not isfinite(width):
        return 1.0, low <= value <= high
    return 1.0 / (1.0 + ((value - near) / (width or 1.0)) ** 2), low <= value <= high


def _ways(read: Read, fields: frozenset[str]) -> Iterator[tuple[float, tuple[Box, ...], Message]]:
    """Yield what may have been meant: how often it is so, the boxes as they would be, and what happened."""
    typed = {spec.name: number for spec in read.kind.fields if (number := _typed(read, spec)) is not None}
    for spec in read.kind.fields:
        if spec.name not in fields or spec.name not in typed or spec.name == "density":
            continue  # of six figures and a small range nobody can tell which of them slipped
        unit = read.raw(spec.name).get("unit") or ""
        for slip in slips_of(spec, _text(read, spec), typed[spec.name], unit):
            yield slip.weight, (Box(spec.name, slip.raw, slip.unit),), slip.message
        yield from _other_boxes(read, spec, typed, unit)
        for weight, number, why in _reckoned(read, spec, typed[spec.name], unit):
            yield weight, (Box(spec.name, show_number(number, spec.decimals), unit),), message(why)


def _other_boxes(
    read: Read, spec: Field, typed: Mapping[str, float], unit: str
) -> Iterator[tuple[float, tuple[Box, ...], Message]]:
    """Yield the figure in a box that is empty, and exchanged with that of each other box."""
    raw = _text(read, spec)
    name, in_it = OTHER_BOX.get(spec.name, ("", {}))
    other = read.kind.field(name) if name not in typed else None
    if other:
        there = Box(other.name, raw, in_it.get(unit, other.units[0]))
        yield BOX, (there, Box(spec.name, "")), message("slip-box", label=label(read.kind, other))
    for each in read.kind.fields:
        if each.name in typed and each.name != spec.name:
            its_unit = read.raw(each.name).get("unit") or ""
            boxes = (Box(spec.name, _text(read, each), _unit_in(spec, its_unit, unit)),
                     Box(each.name, raw, _unit_in(each, unit, its_unit)))
            yield EXCHANGED, boxes, message("slip-exchanged", label=label(read.kind, each))


def _reckoned(read: Read, spec: Field, typed: float, unit: str) -> Iterator[tuple[float, float, str]]:
    """Yield figures that follow from another one: net for gross, what is empty for what is full, cases for bottles."""
    tare = read.number("tare") if read.number("tare") is not None else read.context.get("tare_kg")
    if spec.name in ("gross", "net_weight") and tare:
        tare_typed = float(units.from_canonical(tare, unit))
        yield (NET, typed + tare_typed, "slip-net") if spec.name == "gross" else (NET, typed - tare_typed, "slip-gross")
    capacity = read.context.get("capacity_l")
    if spec.instrument == "dip" and capacity:
        yield ULLAGE, float(units.from_canonical(capacity, unit)) - typed, "slip-ullage"
    per_case = read.number("per_case")
    if spec.name in ("filled", "bottles") and per_case:
        yield BY_CASE, typed * per_case, "slip-cases"


def _typed(read: Read, spec: Field) -> float | None:
    raw = read.raw(spec.name)
    if spec.sort != "number" or not raw.get("raw") or raw.get("unit") not in spec.units:
        return None
    try:
        return units.parse_number(raw["raw"])
    except NotANumber:
        return None


def _text(read: Read, spec: Field) -> str:
    return read.raw(spec.name)["raw"].strip()


def _unit_in(spec: Field, wanted: str, else_unit: str) -> str:
    return wanted if wanted in spec.units else else_unit


def _values_with(read: Read, boxes: Iterable[Box]) -> dict[str, Value] | None:
    """Return the canonical values with these boxes, or None where one of them cannot be."""
    values = dict(read.values)
    for box in boxes:
        spec = read.kind.field(box.field)
        if not box.raw or spec is None:
            values.pop(box.field, None)
            continue
        named = str(read.raw(box.field).get("instrument") or "").strip()
        correction = (read.context.get("corrections") or {}).get(named)
        try:
            number = units.parse_number(box.raw)
            right = put_right(number, box.unit, spec.units[0], correction) if correction else number
            value = float(units.to_canonical(right, box.unit))
        except (OutOfDomain, NotANumber):
            return None
        low, high = limits_of(spec, read.context)[1]
        if not (-inf if low is None else low) <= measured(value, box.unit) <= (inf if high is None else high):
            return None
        values[box.field] = value
    return values
