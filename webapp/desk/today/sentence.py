"""The day in one spoken sentence: answers that are owed, the next cut, ferments at their end, then what else is due."""

from __future__ import annotations

from collections.abc import Sequence

from webapp.book.today.day import Day
from webapp.book.today.due import Due, PhoneState
from webapp.book.today.standing import Standing
from webapp.desk.today import clock
from webapp.words.desk import say
from webapp.words.local import listed

CLAUSES_MOST = 3
# In the order in which they are named; each has its message, desk-day-<sort>.
_DUE = ("read", "stuck", "bottling", "regauge", "sample", "taste", "stands", "failed", "open_run", "still")
_NAMED = ("stuck", "stands", "read")  # one of these is called by its name: desk-day-one_<sort>


def heading(
    owed: int, day: Day, ends: Sequence[Standing], due: Sequence[Due], phones: Sequence[PhoneState], near_s: float
) -> str:
    """Return the heading. near_s: a ferment is near its end when that is expected within so many seconds."""
    clauses = [*_runs(day), *_ends(ends, day.now_s, near_s), *_dues(due), *_phones(phones)]
    if owed:
        clauses.insert(0, clock.count(owed, "desk-day-owed"))
    elif clauses:
        clauses.insert(0, say("desk-day-nothing_owed"))
    if not clauses:
        return say("desk-day-nothing_owed_next", next=_next(day))
    said = ", ".join(clauses[:CLAUSES_MOST])
    return f"{said[0].upper()}{said[1:]}."


def part_name(part: str) -> str:
    """Return the name of a part of a run: heads, hearts, tails."""
    return say(f"desk-part-{part.replace(' ', '_')}")


def _runs(day: Day) -> list[str]:
    found = []
    for still in day.stills:
        for run in still.runs:
            if run.is_over:
                continue
            cut = run.cut
            if cut and cut.at_s and cut.state == "due":
                state = "late" if day.now_s > cut.at_s["high"] else "now" if day.now_s >= cut.at_s["low"] else "coming"
                what = "cut" if cut.part == "hearts" else "end"
                found.append(say("desk-day-run_ends", still=still.name, what=what, state=state,
                                 at=clock.minute(cut.at_s["at"])))
            elif cut and cut.state == "past":
                found.append(say("desk-day-run_at_its_end", still=still.name,
                                 what="cut" if cut.part == "hearts" else "end"))
            elif run.part == "heating":
                found.append(say("desk-day-still_heats", still=still.name))
            else:
                found.append(say("desk-day-still_runs", still=still.name, part=part_name(run.part)))
    return found


def _ends(ends: Sequence[Standing], now_s: float, near_s: float) -> list[str]:
    ended = [one.shown for one in ends if one.end_state == "ended"]
    near = [one.shown for one in ends if one.end_state == "running" and one.end_s["at"] - now_s <= near_s]
    said = []
    if ended:
        said.append(say("desk-day-ended", n=len(ended), which=_and(ended)))
    if near:
        said.append(say("desk-day-near_end", n=len(near), which=_and(near)))
    return said


def _dues(due: Sequence[Due]) -> list[str]:
    found = []
    for key in _DUE:
        some = [each for each in due if each.key == key]
        if some:
            is_named = len(some) == 1 and key in _NAMED
            found.append(say(f"desk-day-one_{key}", name=some[0].name) if is_named
                         else clock.count(len(some), f"desk-day-{key}"))
    return found


def _phones(phones: Sequence[PhoneState]) -> list[str]:
    silent = [one.name for one in phones if one.is_silent]
    if not silent:
        return []
    return [say("desk-day-one_silent", name=silent[0]) if len(silent) == 1
            else clock.count(len(silent), "desk-day-silent")]


def _next(day: Day) -> str:
    coming = [(at, name) for at, _, name in day.reads if at > day.now_s]
    if not coming:
        return say("desk-day-nothing_due")
    at, name = coming[0]
    alike = sum(1 for other, _ in coming if other - at < 1800)
    what = (say("desk-day-to_read", name=name) if alike == 1
            else say("desk-day-round", ferments=clock.count(alike, "desk-count-ferment")))
    return say("desk-day-next", what=what, at=clock.minute(at))


def _and(names: Sequence[str]) -> str:
    if len(names) > 3:
        return clock.count(len(names), "desk-count-ferment")
    return listed(names)
