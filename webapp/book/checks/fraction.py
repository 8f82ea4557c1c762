"""A gauge of a fraction against the run that it is of: where it ran, how strong it ran, what stood there before."""

from __future__ import annotations

from collections.abc import Iterable
from itertools import pairwise
from statistics import median

from webapp.book.before.limits import Limit, declare, limit
from webapp.book.before.view import Query, seconds_between
from webapp.book.checks.instruments import dip_apart
from webapp.book.checks.moves import vessel_name
from webapp.book.checks.run_balance import account_of, expected, fraction_name, is_stripping, part_of, run_of
from webapp.book.checks.run_flow import SPANS, WIDEST_GAP_S
from webapp.book.checks.words import figure, rounded, strength_field
from webapp.kinds.expected import Expected
from webapp.kinds.key import run_key
from webapp.kinds.message import message
from webapp.kinds.read import Read
from webapp.kinds.rows import NO_ROW
from webapp.kinds.run_state import Run
from webapp.kinds.state import NO_FILL, figure_in
from webapp.kinds.view import View

LIMITS = declare(
    Limit("fraction_off_pct", 3.0, "% vol", "A fraction off what ran over the safe, by"),
    Limit("fraction_about_pct", 8.0, "% vol", "A fraction of one or two readings off them, by"),
    Limit("stillage_most_pct", 2.0, "% vol", "Stillage is run down to at most"),
    Limit("remnant_pct", 3.0, "%", "A remnant off what the book has there, by"),
    Limit("remnant_least_l", 1.0, "L", "A remnant off by less is not asked about"),
    Limit("remnant_off_pct", 2.0, "% vol", "Strength of a remnant off that in the book, by"),
    Limit("ungauged_pct", 3.0, "%", "A run before that is not accounted for by more"),
)


def fraction_run(read: Read, view: View) -> Iterable[Query]:
    """A fraction in another receiver than the cuts say, or of another strength than ran over the safe."""
    _, run = run_of(read, view)
    part = part_of(read)
    name = str(read.text("fraction"))
    if run is not None and name == "low_wines" and not is_stripping(run):
        yield Query("fraction_uncut", "ask", "fraction", message("fraction_uncut", run=run["name"] or "none"))
    if name == "stillage":
        yield from _stillage(read, view)
    if run is None or name not in SPANS:
        return
    opened = _opened(run, name)
    if opened and opened != read.mark:
        said = message("fraction_receiver", fraction=fraction_name(name), vessel=vessel_name(read.mark, view),
                       opened=vessel_name(opened, view))
        yield Query("fraction_receiver", "ask", "fraction", said)
        return
    ran, most = _ran_at(run, name), limit("fraction_off_pct", view)
    if ran is None:
        ran, most = _ran_about(run, name), limit("fraction_about_pct", view)
    if part is None or ran is None or part["volume_l"] <= 0:
        return
    now = part["lpa_l"] / part["volume_l"] * 100
    if abs(now - ran) > most:
        said = message("fraction_strength", fraction=fraction_name(name), now=rounded(now, 1, "pct_vol"),
                       ran=rounded(ran, 1, "pct_vol"))
        alone = not read.number("remnant")
        yield Query("fraction_strength", "ask", strength_field(read), said,
                    (Expected("true_strength", ran - most, ran + most, ran),) if alone else ())


def _opened(run: Run, name: str) -> str | None:
    """Return the receiver that was open for a fraction, by the cuts, else by the charge; None where nobody said it."""
    if name == "heads":
        return run["receivers"].get("heads")
    return next((cut.get("receiver") for cut in reversed(run["cuts"]) if cut.get("event") == SPANS[name][0]), None)


def _ran_at(run: Run, name: str) -> float | None:
    """Return the strength of a fraction by the readings of its time, weighed by flow; None where they are few."""
    at = {cut.get("event"): cut["at"] for cut in run["cuts"]}
    first, last = (at.get(event) if event else run["ended_at"] for event in SPANS[name])
    if not first or not last:
        return None
    end = [run["end"]] if run.get("end") else []
    lines = {line["at"]: line for line in [*run["readings"], *run["cuts"], *end]
             if first <= line["at"] <= last and line["true_strength"] is not None}
    times = sorted(lines)
    if len(times) < 3 or max(seconds_between(a, b) for a, b in pairwise([first, *times, last])) > WIDEST_GAP_S:
        return None
    weight = pure = 0.0
    for one, two in pairwise(times):
        flow = ((lines[one].get("flow") or 1.0) + (lines[two].get("flow") or 1.0)) / 2 * seconds_between(one, two)
        weight += flow
        pure += flow * ((lines[one]["true_strength"] or 0.0) + (lines[two]["true_strength"] or 0.0)) / 2
    return pure / weight if weight > 0 else None


def _ran_about(run: Run, name: str) -> float | None:
    """Return the middle strength of the one or two readings of a fraction; None without any. [% vol]"""
    at = {cut.get("event"): cut["at"] for cut in run["cuts"]}
    first, last = (at.get(event) if event else run["ended_at"] for event in SPANS[name])
    end = [run["end"]] if run.get("end") else []
    lines = [*run["readings"], *end] if first and last else []
    read = [pct for line in lines if (first or "") <= line["at"] <= (last or "")
            and (pct := line["true_strength"]) is not None]
    return median(read) if read and name != "tails" else None  # tails fall by half of what they begin with


def _stillage(read: Read, view: View) -> Iterable[Query]:
    """Stillage that would be worth another run: its strength is that of another line."""
    now, most = read.figures.get("true_strength"), limit("stillage_most_pct", view)
    if now is not None and now > most:
        said = message("stillage_strong", now=figure(now, 1, "pct_vol"), most=figure(most, 1, "pct_vol"))
        yield Query("stillage_strong", "ask", strength_field(read), said, (Expected("true_strength", 0.0, most, 0.2),))


def remnant_off(read: Read, view: View) -> Iterable[Query]:
    """What stood in the receiver before, against what the book has there: finds a move that nobody logged."""
    if read.text("fraction") == "stillage":
        return
    held, remnant = view.state(read.mark)["holds"] or NO_FILL, read.number("remnant")
    booked = held["volume_l"] or 0.0
    if remnant is None or not held["fill"] or held["mash"]:
        return
    capacity = (view.vessel(read.mark) or NO_ROW).get("capacity_l")
    dip = dip_apart(max(remnant, booked), capacity)
    most = max(booked * limit("remnant_pct", view) / 100, limit("remnant_least_l", view), dip)
    if abs(remnant - booked) > most:
        said = message("remnant_off", remnant=rounded(remnant, 1, "L"), vessel=vessel_name(read.mark, view),
                       booked=rounded(booked, 1, "L"))
        yield Query("remnant_off", "ask", "remnant", said, (Expected("remnant", booked - most, booked + most, booked),))
        return
    strength, there = read.number("remnant_strength"), held["strength_pct"]
    most = limit("remnant_off_pct", view)
    if strength is not None and there is not None and remnant > most and abs(strength - there) > most:
        said = message("remnant_off-strength", now=figure(strength, 1, "pct_vol"), held=rounded(there, 1, "pct_vol"),
                       vessel=vessel_name(read.mark, view))
        found = (Expected("remnant_strength", there - most, there + most, there),)
        yield Query("remnant_off", "ask", "remnant_strength", said, found)


def receiver_held(read: Read, view: View) -> Iterable[Query]:
    """A run into a receiver that was moved empty before each run until now, and by the book is not."""
    mark = read.text("hearts_to") or ""
    held = view.state(mark)["holds"] if mark else None
    if not held or held["mash"] or not held["lpa_ul"]:
        return
    lines = view.recent(mark, "fraction_gauge")
    rest = max((line["figures"].get("lpa", 0.0) for line in lines), default=0.0) * limit("move_rest_pct", view) / 100
    was_empty = lines and not any(line["values"].get("remnant") for line in lines)
    if was_empty and view.recent(mark, "account_move") and held["lpa_ul"] / 1e6 > rest:
        there = rounded(held["lpa_ul"] / 1e6, 1, "LPA")
        said = message("receiver_held", vessel=vessel_name(mark, view), held=there)
        yield Query("receiver_held", "ask", "hearts_to", said)
        return
    came = [line["figures"].get("volume_20", 0.0) - (figure_in(line["values"], "remnant") or 0.0)
            for line in lines if line["values"].get("fraction") == "hearts"]
    usual = median(came) if came else 0.0
    capacity = (view.vessel(mark) or NO_ROW).get("capacity_l") or 0.0
    room = capacity - (held["volume_l"] or 0.0)
    if capacity and room < usual:
        said = message("receiver_full", vessel=vessel_name(mark, view), held=rounded(held["volume_l"] or 0.0, 1, "L"),
                       room=rounded(max(room, 0.0), 1, "L"), usual=rounded(usual, 1, "L"))
        yield Query("receiver_full", "ask", "hearts_to", said)


def run_ungauged(read: Read, view: View) -> Iterable[Query]:
    """A charge while fractions of the run before are not gauged: what they hold would count as lost."""
    before = view.state(read.mark)["runs"][-1:]
    run = view.get(run_key(before[0])) if before else None
    charged = (run["charge"]["lpa_l"] or 0.0) if run else 0.0
    if run is None or charged <= 0 or not run["fractions"] or account_of(run, run["fractions"], view):
        return
    left = run["lpa_ul"] / 1e6
    missing = sorted(expected(run) - {str(part["fraction"]) for part in run["fractions"]})
    if missing and left > charged * limit("ungauged_pct", view) / 100:
        said = message("run_ungauged", run=run["name"] or "none", fraction=fraction_name(missing[0]),
                       left=rounded(left, 1, "LPA"))
        yield Query("run_ungauged", "ask", "", said)
