"""The day in one spoken sentence: answers that are owed, the next cut, ferments at their end, then what else is due."""

from __future__ import annotations

from collections.abc import Sequence

from webapp.book.today.day import Day
from webapp.book.today.due import Due, PhoneState
from webapp.book.today.standing import Standing
from webapp.desk.today import clock

CLAUSES_MOST = 3
_DUE = {
    "read": ("ferment is to be read", "ferments are to be read"),
    "stuck": ("ferment is stuck", "ferments are stuck"),
    "bottling": ("bottling waits for its close", "bottlings wait for their close"),
    "regauge": ("cask is to be regauged", "casks are to be regauged"),
    "sample": ("cask is to be sampled", "casks are to be sampled"),
    "taste": ("cask is to be tasted", "casks are to be tasted"),
    "stands": ("tank stands long", "tanks stand long"),
    "failed": ("instrument failed its check", "instruments failed their checks"),
    "open_run": ("run has no end", "runs have no end"),
    "still": ("wash waits for a still", "washes wait for a still"),
}


def say(
    owed: int, day: Day, ends: Sequence[Standing], due: Sequence[Due], phones: Sequence[PhoneState], near_s: float
) -> str:
    """Return the heading. near_s: a ferment is near its end when that is expected within so many seconds."""
    clauses = [*_runs(day), *_ends(ends, day.now_s, near_s), *_dues(due), *_phones(phones)]
    if owed:
        clauses.insert(0, f"{clock.count(owed, 'answer')} {'is' if owed == 1 else 'are'} owed")
    elif clauses:
        clauses.insert(0, "nothing is owed")
    if not clauses:
        return f"Nothing is owed. {_next(day)}".strip()
    said = ", ".join(clauses[:CLAUSES_MOST])
    return f"{said[0].upper()}{said[1:]}."


def _runs(day: Day) -> list[str]:
    found = []
    for still in day.stills:
        for run in still.runs:
            if run.is_over:
                continue
            cut = run.cut
            if cut and cut.at_s and cut.state == "due":
                does = "cut" if cut.part == "hearts" else "end"
                at = f"at {clock.minute(cut.at_s['at'])}"
                if day.now_s > cut.at_s["high"]:
                    found.append(f"{still.name} was to {does} {at}")
                else:
                    found.append(f"{still.name} {does}s {'any minute' if day.now_s >= cut.at_s['low'] else at}")
            elif cut and cut.state == "past":
                found.append(f"{still.name} is at its {'cut' if cut.part == 'hearts' else 'end'}")
            else:
                found.append(f"{still.name} {'is heating' if run.part == 'heating' else f'runs {run.part}'}")
    return found


def _ends(ends: Sequence[Standing], now_s: float, near_s: float) -> list[str]:
    ended = [one.shown for one in ends if one.end_state == "ended"]
    near = [one.shown for one in ends if one.end_state == "running" and one.end_s["at"] - now_s <= near_s]
    said = []
    if ended:
        said.append(f"{_and(ended)} {'has' if len(ended) == 1 else 'have'} ended")
    if near:
        said.append(f"{_and(near)} {'is near its end' if len(near) == 1 else 'are near their end'}")
    return said


def _dues(due: Sequence[Due]) -> list[str]:
    found = []
    for key, (one, many) in _DUE.items():
        some = [each for each in due if each.key == key]
        if some:
            is_named = len(some) == 1 and key in ("stuck", "stands", "read")
            verb = {"stuck": "is stuck", "stands": "stands long", "read": "is to be read"}.get(key, "")
            found.append(f"{some[0].name} {verb}" if is_named else clock.count(len(some), one, many))
    return found


def _phones(phones: Sequence[PhoneState]) -> list[str]:
    silent = [one.name for one in phones if one.is_silent]
    if not silent:
        return []
    return [f"{silent[0]} is silent" if len(silent) == 1 else f"{clock.count(len(silent), 'phone')} are silent"]


def _next(day: Day) -> str:
    coming = [(at, name) for at, _, name in day.reads if at > day.now_s]
    if not coming:
        return "Nothing is due today."
    at, name = coming[0]
    alike = sum(1 for other, _ in coming if other - at < 1800)
    what = f"{name} to read" if alike == 1 else f"the round of {clock.count(alike, 'ferment')}"
    return f"Next is {what} at {clock.minute(at)}."


def _and(names: Sequence[str]) -> str:
    if len(names) > 3:
        return clock.count(len(names), "ferment")
    return names[0] if len(names) == 1 else f"{', '.join(names[:-1])} and {names[-1]}"
