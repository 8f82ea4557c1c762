"""A reading in the row that it stands in: what each line before it had, what stays until somebody changes it, and how
a strength goes on.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from functools import cache

import webapp.kinds
from webapp.book.before.limits import Limit, declare, limit
from webapp.book.before.view import Query, seconds_between
from webapp.book.checks.run import vapour_apart, vapour_strength
from webapp.book.checks.words import figure, rounded, strength_field, typed, when
from webapp.kinds.cut import CHANGES
from webapp.kinds.expected import Expected
from webapp.kinds.message import message
from webapp.kinds.read import Read, label
from webapp.kinds.run_state import Run, RunLine
from webapp.kinds.spec import Field
from webapp.kinds.view import View

LIMITS = declare(
    Limit("row_lines", 2, "", "A figure that stood in each line before is missed from so many lines on"),
    Limit("row_times", 2.5, "", "Strength falls at most so many times as fast as before"),
    Limit("row_more_pct", 1.0, "% vol", "and by so much more in an hour"),
    Limit("row_noise_pct", 0.5, "% vol", "What two glasses and thermometers may pretend"),
    Limit("row_vapour_c", 0.45, "°C", "Vapour speaks against a strength out of its row from"),
)

LOOKED_BACK = 3
# Boxes of which one is enough.
INSTEAD = (
    frozenset(("glass", "strength", "density")), frozenset(("volume", "net_weight", "gross", "dip")),
    frozenset(("water", "water_volume")), frozenset(("cases", "bottles")),
)
OF_RUN = ("vapour_temp", "flow", "temp")
OF_READING = (*OF_RUN, "plates", "cooling_temp")
SHORTEST_H, LONGEST_H = 0.08, 1.5  # between readings of which a row is made


def row_gap(read: Read, view: View) -> Iterable[Query]:
    """A figure that each line before had, and this one has not: forgotten, or not read this time."""
    if read.kind.run:
        run = view.run_on(read.mark)
        if run and run["readings"]:
            yield from _gap_in_run(read, run, view)
        return
    lines = view.recent(read.mark, read.kind.name)[-LOOKED_BACK:] if read.mark else ()
    if not lines:
        return
    last, values = lines[-1]["values"], read.values
    for spec, others in _missed(read.kind.name):
        if spec.name not in last or spec.name in values or read.raw(spec.name).get("raw"):
            continue
        if len(lines) < limit("row_lines", view):
            return
        if all(spec.name in line["values"] for line in lines) and not others & read.values.keys():
            yield _gap(read, spec, len(lines))


@cache
def _missed(kind_name: str) -> tuple[tuple[Field, frozenset[str]], ...]:
    """Return the boxes of a kind that are missed where they stay empty, each with those that will do instead."""
    kind = webapp.kinds.get(kind_name)
    specs = [spec for spec in kind.fields if spec.sort == "number" and not spec.aside] if kind else []
    return tuple((spec, next((one for one in INSTEAD if spec.name in one), frozenset())) for spec in specs)


def _gap_in_run(read: Read, run: Run, view: View) -> Iterable[Query]:
    lines, names = run["readings"], OF_RUN if read.kind.name != "run_reading" else OF_READING
    last = lines[-1] if "event" not in lines[-1] else {**lines[-2:][0], **lines[-1]}
    if "true_strength" in read.figures and not any(name in last and name not in read.values for name in names):
        return  # so it is nearly always
    least = round(limit("row_lines", view))
    if len(lines) < least:
        return
    if "true_strength" not in read.figures:
        if any(spec.name in read.values for spec in read.kind.fields if spec.units):  # else it is no reading
            yield from _strength_gap(read, lines)
        return
    for name in names:
        if name in read.values or (name not in lines[-1] and name in OF_RUN) or read.raw(name).get("raw"):
            continue
        spec = read.kind.field(name)
        if spec is None:
            continue
        own = lines if name in OF_RUN else [line for line in lines if "event" not in line]
        if len(own) >= least and all(_in(line, name) for line in reversed(own)):
            yield _gap(read, spec, len(own))


def _strength_gap(read: Read, lines: Sequence[RunLine]) -> Iterable[Query]:
    is_unread = "dip" not in read.values and not any(read.raw(name).get("raw") for name in INSTEAD[0])
    spec = read.kind.field("glass" if "glass" in lines[-1] else "strength")
    if is_unread and spec and all(_in(line, "true_strength") for line in reversed(lines)):
        yield _gap(read, spec, len(lines))


def _in(line: Mapping[str, object], name: str) -> bool:
    return line.get(name) is not None


def _gap(read: Read, spec: Field, lines: int) -> Query:
    said = message("row_gap", label=label(read.kind, spec), lines=lines)
    return Query("row_gap", "ask", spec.name, said)


def plates_moved(read: Read, view: View) -> Iterable[Query]:
    """Other plates than at the readings before, where nobody logged that one was taken in or out."""
    run, now = view.run_on(read.mark), read.number("plates")
    if run is None or now is None:
        return
    lines = [line for line in run["readings"][-LOOKED_BACK:] if line.get("plates") is not None]
    if len(lines) < limit("row_lines", view) or len({line["plates"] for line in lines}) > 1:
        return
    last = lines[-1]
    since = [cut.get("event") or "" for cut in run["cuts"] if cut["at"] > last["at"]]
    wanted = (last.get("plates") or 0.0) + sum(CHANGES.get(event, 0) for event in since)
    if abs(now - wanted) > 1e-9:
        said = message("plates_moved", plates=typed(read, "plates"), last=figure(wanted, 0),
                       at=when(last["at"], read, view))
        yield Query("plates_moved", "ask", "plates", said, (Expected("plates", wanted, wanted, wanted),))


def strength_row(read: Read, view: View) -> Iterable[Query]:
    """A strength that leaves the row of this run while the vapour goes on as before: neither witness is for it.

    Without a vapour temperature a plunge may be real, so nothing is said of it here.
    """
    run, now = view.run_on(read.mark), read.figures.get("true_strength")
    if run is None or now is None or read.number("vapour_temp") is None:
        return
    lines = _since_change(run)
    if len(lines) < 2:
        return
    low, high, near = _goes_on(lines, view)
    noise = limit("row_noise_pct", view)
    if low - noise <= now <= high + noise:
        return
    apart = vapour_apart(read, view)
    if apart is None or abs(apart) < limit("row_vapour_c", view) or (apart < 0) is not (now < low):
        return  # what is too weak has its vapour below that of such a strength, what is too strong above
    if any(vapour_strength(read, view)):
        return
    said = message("strength_row", now=figure(now, 1, "pct_vol"), low=rounded(low, 1, "pct_vol"),
                   high=rounded(high, 1, "pct_vol"), vapour=typed(read, "vapour_temp"))
    yield Query("strength_row", "ask", strength_field(read), said,
                (Expected("true_strength", low - noise, high + noise, near),))


def _since_change(run: Run) -> list[RunLine]:
    """Return the last two readings with a strength, where the still was not changed since."""
    lines = [line for line in run["readings"][-6:] if line.get("true_strength") is not None][-2:]
    changed = max((cut["at"] for cut in run["cuts"] if cut.get("event") in CHANGES), default="")
    return lines if len(lines) == 2 and changed < lines[0]["at"] else []


def _goes_on(lines: Sequence[RunLine], view: View) -> tuple[float, float, float]:
    """Return how low and how high the strength may be by now, and where it would be at the same pace. [% vol]"""
    one, two = lines
    before, last = one["true_strength"] or 0.0, two["true_strength"] or 0.0
    hours, since = seconds_between(one["at"], two["at"]) / 3600, seconds_between(two["at"], view.at) / 3600
    if not SHORTEST_H <= hours <= LONGEST_H or not 0 <= since <= LONGEST_H:
        return 0.0, 100.0, last
    pace = max((before - last) / hours, 0.0)
    low = last - (limit("row_times", view) * pace + limit("row_more_pct", view)) * since
    return low, last, last - pace * since
