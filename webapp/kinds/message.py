"""A sentence before it is made: the id of a message in the catalogue, and the parameters that stand in it.

A book keeps questions so, and a phone and the book hand them to one another so: `{"id": "ferment_gravity_rose",
"params": {"gravity": {"figure": "1.043", "unit": "SG"}, ...}}`. The sentence is made where it is read (webapp/words,
static/words), in the reader's language. What a parameter says is settled here, to its last digit: how a decimal comma,
a month or a plural is written is settled there. Twin of static/kinds/message.js.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from webapp.kinds.plain import Json


@dataclass(frozen=True, slots=True)
class Figure:
    """A figure as it is to be shown: digits with a decimal point, or whatever was typed; its unit, if it has one."""

    text: str
    unit: str = ""  # a key of trade/data/units.json


@dataclass(frozen=True, slots=True)
class Range:
    """From one figure to another; None where it is open. Never open at both ends."""

    low: str | None
    high: str | None
    unit: str = ""


@dataclass(frozen=True, slots=True)
class Unit:
    """A unit by itself."""

    code: str


@dataclass(frozen=True, slots=True)
class Time:
    """A time by the clock of the phone, `2025-09-24T08:10`, seen from a day by that clock, `2025-09-25`."""

    at: str
    seen: str


@dataclass(frozen=True, slots=True)
class Day:
    """A day, `2025-09-24`."""

    day: str


@dataclass(frozen=True, slots=True)
class Month:
    """A month, `2025-09`."""

    month: str


@dataclass(frozen=True, slots=True)
class Span:
    """A length of time in one part or two, the longer first: ((1, "h"), (30, "min")). Units: days, h, min, s."""

    parts: tuple[tuple[int, str], ...]


@dataclass(frozen=True, slots=True)
class Declared:
    """Words that a kind declares: ("label", kind, field), ("title", kind), ("choice", kind, field, value), ..."""

    path: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Several:
    """Parameters one after the other."""

    items: tuple[Param, ...]


@dataclass(frozen=True, slots=True)
class Message:
    """The id of a message, and its parameters by name. Of equal messages the book keeps equal bytes."""

    id: str
    params: tuple[tuple[str, Param], ...] = ()


# A text is said as it stands: a name, a mark, what somebody typed. A whole number counts something.
Param = str | int | Figure | Range | Unit | Time | Day | Month | Span | Declared | Several | Message


def message(id_: str, /, **params: Param) -> Message:
    """Return a message with its parameters, in the order of their names."""
    return Message(id_, tuple(sorted(params.items())))


def as_said(words: str) -> Message:
    """Return the message that says a sentence as it stands: of an older book, or of another program."""
    return message("as_said", words=words)


def to_json(param: Param) -> Json:
    """Return a message or a parameter as JSON-able data."""
    match param:
        case Figure(text, unit):
            return {"figure": text, "unit": unit} if unit else {"figure": text}
        case Range(low, high, unit):
            return {"from": low, "to": high, "unit": unit} if unit else {"from": low, "to": high}
        case Unit(code):
            return {"unit": code}
        case Time(at, seen):
            return {"time": at, "seen": seen}
        case Day(day):
            return {"day": day}
        case Month(month):
            return {"month": month}
        case Span(parts):
            return {"span": [list(part) for part in parts]}
        case Declared(path):
            return {"declared": list(path)}
        case Several(items):
            return {"list": [to_json(item) for item in items]}
        case Message(id_, params):
            return {"id": id_, "params": {name: to_json(value) for name, value in params}}
        case _:
            return param


def from_json(data: object) -> Param:
    """Return the parameter that stands in JSON-able data; ValueError where none does."""
    if isinstance(data, str | int):
        return data
    if not isinstance(data, Mapping):
        raise ValueError(f"no parameter of a message: {data!r}")
    unit = str(data.get("unit", ""))
    if "figure" in data:
        return Figure(str(data["figure"]), unit)
    if "from" in data:
        return Range(data["from"], data["to"], unit)
    if "time" in data:
        return Time(data["time"], data["seen"])
    if "day" in data:
        return Day(data["day"])
    if "month" in data:
        return Month(data["month"])
    if "span" in data:
        return Span(tuple((int(many), str(of)) for many, of in data["span"]))
    if "declared" in data:
        return Declared(tuple(data["declared"]))
    if "list" in data:
        return Several(tuple(from_json(item) for item in data["list"]))
    if "unit" in data:
        return Unit(unit)
    return message_from_json(data)


def message_from_json(data: object) -> Message:
    """Return the message that stands in JSON-able data; ValueError where none does."""
    if not isinstance(data, Mapping) or not isinstance(data.get("id"), str):
        raise ValueError(f"no message: {data!r}")
    return Message(data["id"], tuple(sorted((name, from_json(value)) for name, value in data["params"].items())))
