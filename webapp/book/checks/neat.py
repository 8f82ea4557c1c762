"""Figures too neat to have been read each time."""

from __future__ import annotations

from collections.abc import Iterable
from typing import NamedTuple

from webapp.book.before.limits import Limit, declare, limit
from webapp.book.before.view import Query, seconds_between
from webapp.book.checks.words import typed
from webapp.kinds.key import Key, RoundKey, round_key
from webapp.kinds.message import message
from webapp.kinds.read import Read, label
from webapp.kinds.state import Round, State
from webapp.kinds.view import View

LIMITS = declare(
    Limit("neat_count", 10, "", "The same figure so many times running"),
    Limit("round_gap_min", 60, "min", "Readings of one round follow within"),
)

LOOKED_AT = ("temp", "glass", "strength", "vapour_temp")
ON_ROUNDS = ("ferment_reading", "cask_regauge", "gauge")  # logged vessel after vessel by one person
OF_A_ROUND = ("temp", "glass", "strength")


def too_neat(read: Read, view: View) -> Iterable[Query]:
    """The same temperature or strength, to its last figure, so many times running on one vessel."""
    count = round(limit("neat_count", view))
    before = view.recent(read.mark, read.kind.name)[-(count - 1) :] if read.mark and count > 1 else ()
    if len(before) < count - 1:
        return
    for name in LOOKED_AT:
        now, spec = read.values.get(name), read.kind.field(name)
        if spec is not None and now is not None and all(line["values"].get(name) == now for line in before):
            said = message("too_neat", label=label(read.kind, spec), figure=typed(read, name), times=count)
            yield Query("too_neat", "note", name, said)


def neat_round(read: Read, view: View) -> Iterable[Query]:
    """The same temperature or strength on one vessel after the other: said when they are as many as the limit."""
    if read.kind.name not in ON_ROUNDS:
        return
    count = round(limit("neat_count", view))
    before = _round_of(read, view)
    now = _next(read, view, before)
    for name in now:
        spec = read.kind.field(name)
        if spec is not None and _turn(now, name).vessels == count and _turn(before, name).vessels < count:
            said = message("neat_round", label=label(read.kind, spec), figure=typed(read, name), vessels=count)
            yield Query("neat_round", "note", name, said)


def round_state(read: Read, view: View) -> dict[Key, State]:
    """Return the state of the person's round after this entry, where it is one of a round: {key: ...} or {}."""
    if read.kind.name not in ON_ROUNDS or not read.mark:
        return {}
    return {_key(read): _next(read, view, _round_of(read, view))}


def _key(read: Read) -> RoundKey:
    return round_key(str(read.entry["person"]))


def _round_of(read: Read, view: View) -> Round:
    return view.get(_key(read)) or {}


class _Turn(NamedTuple):
    value: float | str | None
    vessels: int  # on how many running
    at: str
    mark: str


def _turn(of: Round, name: str) -> _Turn:
    """Return a figure of a round; one that is not in it yet is on no vessel."""
    if name not in of:
        return _Turn(None, 0, "", "")
    value, vessels, at, mark = of[name]
    return _Turn(value, int(vessels), str(at), str(mark))


def _next(read: Read, view: View, before: Round) -> Round:
    """Return figure -> [value, on how many vessels running, at, mark]; counting stops just above the limit."""
    most, gap_s = round(limit("neat_count", view)) + 1, limit("round_gap_min", view) * 60
    after = {name: list(line) for name, line in before.items()}
    for name in OF_A_ROUND:
        now, last = read.number(name), _turn(before, name)
        if now is None:
            continue
        goes_on = last.value == now and seconds_between(last.at, view.at) <= gap_s
        step = 0 if goes_on and last.mark == read.mark else 1
        after[name] = [now, min(last.vessels + step, most) if goes_on else 1, view.at, read.mark]
    return after
