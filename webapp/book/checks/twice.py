"""The same reading twice, and two people at one vessel."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping

from webapp.book.before.limits import Limit, declare, limit
from webapp.book.before.view import Query, seconds_between
from webapp.book.checks.words import figure, like_typed, time_span, when
from webapp.kinds.expected import Suggestion
from webapp.kinds.message import Param, Several, message
from webapp.kinds.read import Read, label
from webapp.kinds.state import Line, Value, figure_in
from webapp.kinds.view import View

LIMITS = declare(
    Limit("twice_min", 10, "min", "The same figures again within"),
    Limit("moved_twice_h", 24, "h", "The same figures of what moves stock again within"),
    Limit("two_people_h", 24, "h", "Two people at one vessel within"),
)

STOCK_MOVES = ("opening", "fruit_intake", "account_move", "top_up", "reduce", "chill_filter")
FIGURES_LEAST = 3  # so many figures of readings are not the same by chance
SOON_H = 3.0  # a vessel is hardly read twice in so short a time and found the same
WORDS_LEAST = 3
ONCE = ("run_name", "serial")


def _name(code: str, view: View) -> str:
    person = view.person(code)
    return str(person["name"]) if person else code


def _nearly_equal(read: Read, before: Mapping[str, Value], least: int = 1) -> bool:
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
    return numbers >= least


def _has_none(read: Read) -> bool:
    """Return whether an entry has no figures, and says enough in words to be known again."""
    return len(read.values) >= WORDS_LEAST and not any(isinstance(one, int | float) for one in read.values.values())


def _asked_as_two_people(read: Read, line: Line) -> bool:
    return "two_people" in read.kind.checks and line["person"] != read.entry["person"]


def twice(read: Read, view: View) -> Iterable[Query]:
    """Another entry of this kind with the same figures, minutes before."""
    for line in reversed(view.recent(read.mark, read.kind.name) if read.mark else ()):
        apart_s = seconds_between(line["at"], view.at)
        if apart_s > limit("twice_min", view) * 60:
            return
        if _nearly_equal(read, line["values"], 0 if _has_none(read) else 1) and not _asked_as_two_people(read, line):
            ago: Param = time_span(apart_s) if apart_s >= 1 else "none"
            by = "none" if line["person"] == read.entry["person"] else _name(line["person"], view)
            yield Query("twice", "ask", "", message("twice", at=when(line["at"], read, view), before=ago, by=by))
            return


def moved_twice(read: Read, view: View) -> Iterable[Query]:
    """The same figures of a move, or many of a reading, hours before: logged again, or the line before copied."""
    if not read.mark:
        return
    is_move, lines = read.kind.name in STOCK_MOVES, view.recent(read.mark, read.kind.name)
    least, within_h = (2, limit("moved_twice_h", view)) if is_move else (FIGURES_LEAST, SOON_H)
    for line in reversed(lines if is_move else lines[-1:]):
        if not _nearly_equal(read, line["values"], least):
            continue
        apart_s = seconds_between(line["at"], view.at)
        if apart_s > within_h * 3600:
            return
        if apart_s > limit("twice_min", view) * 60:
            yield Query("moved_twice", "ask", "", message("moved_twice", at=when(line["at"], read, view)))
            return


def named_twice(read: Read, view: View) -> Iterable[Query]:
    """A name or number that is given once, given again on this vessel; the next number is offered."""
    for name in ONCE:
        now, spec = read.text(name), read.kind.field(name)
        if not now or spec is None or not read.mark:
            continue
        lines = [line for line in view.recent(read.mark, read.kind.name) if line["values"].get(name) == now]
        if lines:
            said = message("named_twice", label=label(read.kind, spec), name=now[:20],
                           at=when(lines[-1]["at"], read, view))
            following = _next_name(now)
            offers = (Suggestion(name, following, ""),) if following else ()
            yield Query("named_twice", "ask", name, said, suggestions=offers)


def _next_name(name: str) -> str:
    """Return a name with its last number one higher, as wide as it was; empty where it ends in none."""
    digits = re.search(r"[0-9]{1,9}$", name)
    return f"{name[: digits.start()]}{int(digits[0]) + 1:0{len(digits[0])}d}" if digits else ""


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
