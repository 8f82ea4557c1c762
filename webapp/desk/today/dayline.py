"""The day line as geometry: what ran on each still, the rounds, and what is expected of the day.

Places along a line are shares of its width [%], so that its words keep their size on every screen. What was read is
solid, what is expected dotted, and its doubt hatched.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from datetime import timedelta

from webapp.book.today.day import Day, RunDay, StillDay
from webapp.desk.today import clock
from webapp.desk.today.sentence import part_name
from webapp.words.desk import Later, say

FROM_H, UNTIL_H = 6, 22  # of the day line, where nothing lies beyond
TICK_H = 2
WORDS_H = 2.5  # as wide as the words beside the next cut
NEAR_PCT, NEARER_PCT = 12.0, 4.5  # of now: a full hour as near has no room beside it on a phone, or at a desk
LETTER = 0.68  # about as wide as a letter at the width that words are shown from [% of the line]
RING_PCT = 3.0  # rings nearer than this are one


@dataclass(frozen=True, slots=True)
class Bar:
    """A stretch of a run, or a doubt. [%]"""

    part: str
    x: float
    width: float
    label: str = ""


@dataclass(frozen=True, slots=True)
class Mark:
    """A sign on the line: dot, ring, stroke or end, with its words. [%]; is_before: the words stand before it."""

    sign: str
    x: float
    label: str = ""
    second: str = ""
    is_before: bool = False


@dataclass(frozen=True, slots=True)
class Lane:
    """A still, or the cellar: its bars and signs, dotted stretches [%], and all of it in words."""

    name: str
    href: str
    words: str
    bars: list[Bar] = field(default_factory=list)
    marks: list[Mark] = field(default_factory=list)
    dotted: list[tuple[float, float]] = field(default_factory=list)


@dataclass(frozen=True, slots=True)
class DayLine:
    """The day line: full hours with their places, the place of now [%], its lanes."""

    ticks: list[tuple[float, str, str]]  # place, hour, and how near to now: near, nearer or empty
    now: float
    now_words: str
    lanes: list[Lane]


class Scale:
    """Times as shares of a width."""

    def __init__(self, start_s: float, end_s: float) -> None:
        self.start_s, self.end_s = start_s, end_s

    def __call__(self, at_s: float) -> float:
        return min(100.0, max(0.0, (at_s - self.start_s) / (self.end_s - self.start_s) * 100))


def day_line(day: Day) -> DayLine:
    """Return the day line of a day."""
    scale = _span(day)
    lanes = [_still_lane(still, day, scale) for still in day.stills]
    cellar = _cellar_lane(day, scale)
    now = scale(day.now_s)
    ticks = [(x, words, _nearness(abs(x - now))) for x, words in _ticks(scale)]
    return DayLine(ticks, now, clock.minute(day.now_s), [*lanes, *([cellar] if cellar else [])])


def _nearness(apart: float) -> str:
    return "nearer" if apart < NEARER_PCT else "near" if apart < NEAR_PCT else ""


def _span(day: Day) -> Scale:
    """Return the hours that are shown: the working day, and what lies beyond it, with room for the next cut's words."""
    times = [day.now_s, *(at for at, _, _ in day.reads), *(at for one in day.rounds for at in one.at_s)]
    for still in day.stills:
        for run in still.runs:
            times += [edge for one in run.stretches for edge in (one.start_s, one.end_s)]
            if run.cut and run.cut.at_s:
                times += [run.cut.at_s["low"], run.cut.at_s["high"] + WORDS_H * 3600]
            elif run.cut:
                times.append(day.now_s + WORDS_H * 3600)
    hours = [(at - day.start_s) / 3600 for at in times]
    first = max(0, min(FROM_H, *hours) // TICK_H * TICK_H)
    midnight = clock.at_house(day.start_s)
    return Scale((midnight + timedelta(hours=first)).timestamp(),
                 (midnight + timedelta(hours=max(UNTIL_H, *hours))).timestamp())


def _ticks(scale: Scale) -> list[tuple[float, str]]:
    begun = clock.at_house(scale.start_s)
    at = begun.replace(minute=0) + timedelta(hours=begun.hour % TICK_H)
    found: list[tuple[float, str]] = []
    while at.timestamp() <= scale.end_s:
        if at.timestamp() >= scale.start_s:
            found.append((scale(at.timestamp()), f"{at:%H:%M}"))
        at += timedelta(hours=TICK_H)
    return found


def _still_lane(still: StillDay, day: Day, scale: Scale) -> Lane:
    lane = Lane(still.name, f"/desk/vessels/{still.mark}", _still_words(still, day))
    if not still.runs and not still.cleaned:
        lane.marks.append(Mark("words", 0.0, lane.words))
    for at_s, _ in still.cleaned:
        lane.marks.append(Mark("dot", scale(at_s), say("desk-line-cleaned")))
    for run in still.runs:
        for one in run.stretches:
            x = scale(one.start_s)
            width = max(scale(one.end_s) - x, 0.4)
            label = next((text for text in _bar_labels(run, one.part) if len(text) * LETTER < width - 0.8), "")
            lane.bars.append(Bar(one.part.replace(" ", "_"), x, width, label))
        end = scale(run.stretches[-1].end_s) if run.stretches else 0.0
        if run.is_over:
            is_last = run is still.runs[-1]
            words = ""
            if run.stretches and is_last:
                words = say("desk-line-off", at=clock.minute(run.stretches[-1].end_s))
            lane.marks.append(Mark("end", end, words))
        elif run.cut and run.cut.at_s and run.cut.state == "due":
            _expect(lane, run, day, scale)
        elif run.cut and run.cut.part != "heads":
            lane.marks.append(Mark("words", scale(day.now_s), _cut_name(run), str(_WITHOUT[run.cut.state])))
    return lane


# What is said of a cut that has no interval.
_WITHOUT = {
    "past": Later("desk-line-reached"), "too_little": Later("desk-line-too_little"),
    "working": Later("desk-line-working"),
}


def _bar_labels(run: RunDay, part: str) -> Iterable[str]:
    """Yield the words of a bar, the fullest first."""
    if part != "heating" and run.part == part and run.name:
        yield f"{run.name} {run.what}: {part_name(part)}"
        yield f"{run.name} {part_name(part)}"
    yield part_name(part)


def _cut_name(run: RunDay) -> str:
    """Return the name of the event that ends a part of a run: the cut to hearts or tails, or the end."""
    assert run.cut
    return say("desk-line-cut_to", part=part_name(run.cut.to)) if run.cut.part == "hearts" else say("desk-line-end")


def _expect(lane: Lane, run: RunDay, day: Day, scale: Scale) -> None:
    """Add the next cut: dotted until its interval, hatched as wide as it is, one stroke for the best guess."""
    assert run.cut
    assert run.cut.at_s
    low, at, high = (run.cut.at_s[name] for name in ("low", "at", "high"))
    lane.dotted.append((scale(day.now_s), scale(max(low, day.now_s))))
    lane.bars.append(Bar("doubt", scale(low), max(scale(high) - scale(low), 0.4)))
    span = say("desk-line-span", low=clock.minute(low), high=clock.minute(high))
    lane.marks.append(Mark("stroke", scale(at)))
    lane.marks.append(Mark("words", scale(high), f"{_cut_name(run)} {clock.minute(at)}", span))


def _still_words(still: StillDay, day: Day) -> str:
    said = [say("desk-line-cleaned_at", at=clock.minute(at_s), person=person) for at_s, person in still.cleaned]
    for run in still.runs:
        name = " ".join(part for part in (run.name, run.what) if part)
        if run.is_over:
            said.append(say("desk-line-off_since", run=name, at=clock.minute(run.stretches[-1].end_s)) if run.stretches
                        else name)
            continue
        begun = clock.minute(run.stretches[-1].start_s) if run.stretches else ""
        said.append(say("desk-line-since", run=name, part=part_name(run.part), at=begun).strip())
        said += _cut_words(run, day)
    return "; ".join(said) if said else say("desk-line-nothing")


def _cut_words(run: RunDay, day: Day) -> list[str]:
    cut = run.cut
    if cut is None or cut.part == "heads":
        return []
    what = say("desk-line-cut_to", part=part_name(cut.to)) if cut.part == "hearts" else say("desk-line-end_of_run")
    by = say("desk-line-by_plan") if cut.by == "plan" else say("desk-line-as_last")
    if cut.state == "due" and cut.at_s:
        low, at, high = (clock.minute(cut.at_s[name]) for name in ("low", "at", "high"))
        if day.now_s > cut.at_s["high"]:
            return [say("desk-line-was_expected", what=what, at=at, by=by)]
        return [say("desk-line-expected", what=what, at=at, low=low, high=high, by=by)]
    if cut.state == "past":
        return [say("desk-line-is_reached", what=what, by=by)]
    if cut.state == "working":
        return [say("desk-line-is_working", what=what)]
    return [say("desk-line-is_unknown", what=what)]


def _cellar_lane(day: Day, scale: Scale) -> Lane | None:
    said: list[str] = []
    lane_marks: list[Mark] = []
    for one in day.rounds:
        names = list(dict.fromkeys(one.names))
        named = names[0] if len(names) == 1 else clock.count(len(names), "desk-count-vessel")
        words = f"{say(f'desk-day-round_{one.words}')}, {named}, {one.person}"
        said.append(f"{clock.minute(one.at_s[0])} {words}")
        for n, at_s in enumerate(one.at_s):
            is_last = n == len(one.at_s) - 1
            lane_marks.append(Mark("dot", scale(at_s), words if is_last else ""))
    for x, names, at_s in _rings(day, scale):
        named = names[0] if len(names) == 1 else clock.count(len(names), "desk-count-ferment")
        words = say("desk-day-to_read", name=named)
        said.append(f"{clock.minute(at_s)} {words}")
        lane_marks.append(Mark("ring", x, words, is_before=x > 85))
    if not said:
        return None
    marks = _unlabelled_where_tight(lane_marks)
    return Lane(say("desk-cellar_parts-cellar"), "/desk/cellar", "; ".join(said), marks=marks)


def _rings(day: Day, scale: Scale) -> list[tuple[float, list[str], float]]:
    found: list[tuple[float, list[str], float]] = []
    for at_s, _, name in day.reads:
        x = scale(at_s)
        if found and x - found[-1][0] < RING_PCT:
            found[-1][1].append(name)
        else:
            found.append((x, [name], at_s))
    return found


def _unlabelled_where_tight(marks: list[Mark]) -> list[Mark]:
    """Return signs whose words do not run into the next sign; the sentence of the lane has them all."""
    placed = sorted(marks, key=lambda mark: mark.x)
    found = []
    for n, mark in enumerate(placed):
        until = placed[n + 1].x if n + 1 < len(placed) else 100.0
        since = placed[n - 1].x if n else 0.0
        room = mark.x - since if mark.is_before else until - mark.x
        fits = len(mark.label) * LETTER + 1.5 < room
        found.append(mark if fits else Mark(mark.sign, mark.x))
    return found
