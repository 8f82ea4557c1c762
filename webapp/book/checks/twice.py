"""The same reading twice, and two people at one vessel."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from webapp.book.before.limits import Limit, declare, limit
from webapp.book.before.view import Query, seconds_between
from webapp.book.checks.words import figure, like_typed, time_span, when
from webapp.kinds.message import Param, Several, message
from webapp.kinds.read import Read
from webapp.kinds.state import Line, Value, figure_in
from webapp.kinds.view import View

LIMITS = declare(
    Limit("twice_min", 10, "min", "The same figures again within"),
    Limit("two_people_h", 24, "h", "Two people at one vessel within"),
)


def _name(code: str, view: View) -> str:
    person = view.person(code)
    return str(person["name"]) if person else code


def _nearly_equal(read: Read, before: Mapping[str, Value]) -> bool:
    shared = read.values.keys() & before.keys()
    numbers = 0
    for name in shared:
        one, other = read.values[name], before[name]
        spec = read.kind.field(name)
        if isinstance(one, int | float) and isinstance(other, int | float):
            numbers += 1
            step = 10 ** -(spec.decimals if spec and spec.decimals is not None else 1)
            if abs(one - other) > 0.51 * step:
                return False
        elif one != other:
            return False
    return numbers > 0


def _asked_as_two_people(read: Read, line: Line) -> bool:
    return "two_people" in read.kind.checks and line["person"] != read.entry["person"]


def twice(read: Read, view: View) -> Iterable[Query]:
    """Another entry of this kind with the same figures, minutes before."""
    for line in reversed(view.recent(read.mark, read.kind.name) if read.mark else ()):
        apart_s = seconds_between(line["at"], view.at)
        if apart_s > limit("twice_min", view) * 60:
            return
        if _nearly_equal(read, line["values"]) and not _asked_as_two_people(read, line):
            ago: Param = time_span(apart_s) if apart_s >= 1 else "none"
            by = "none" if line["person"] == read.entry["person"] else _name(line["person"], view)
            yield Query("twice", "ask", "", message("twice", at=when(line["at"], read, view), before=ago, by=by))
            return


def two_people(read: Read, view: View) -> Iterable[Query]:
    """One vessel gauged by two people within a day: both are kept."""
    for line in reversed(view.recent(read.mark, read.kind.name)):
        if seconds_between(line["at"], view.at) > limit("two_people_h", view) * 3600:
            return
        if line["person"] != read.entry["person"]:
            other, me = _name(line["person"], view), _name(read.entry["person"], view)
            theirs, mine = _said(read, line["values"], line["figures"]), _said(read, read.values, read.figures)
            at = when(line["at"], read, view)
            said = message("two_people", other=other, at=at, theirs=theirs, me=me, mine=mine)
            yield Query("two_people", "ask", "", said)
            return


def _said(read: Read, found: Mapping[str, Value], figures: Mapping[str, float]) -> Several:
    """The figures of a gauge, in the units of this entry."""
    names = ("gross", "net_weight", "volume")
    parts: list[Param] = [like_typed(read, name, one) for name in names if (one := figure_in(found, name)) is not None]
    if "true_strength" in figures:
        parts.append(figure(figures["true_strength"], 1, "pct"))
    return Several(tuple(parts))
