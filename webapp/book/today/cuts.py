"""Runs under way and their next cut: by the plan or as last time, with the interval that the forecast has, or none.

As the phone at the still works it out (static/jobs/run/due.js), from what has been handed in. It takes no cut for
anybody. Heads are cut by volume and by nose: no time is said of them here.
"""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from concurrent.futures import Future
from dataclasses import dataclass
from datetime import datetime
from functools import lru_cache

from webapp.book.checks.run_balance import is_stripping
from webapp.book.still import forecast
from webapp.book.still.runs import KnownRun
from webapp.book.still.wishes import fruit_of, plan_for
from webapp.kinds.rows import SiteSettings
from webapp.kinds.run_state import Run, RunLine, Wish
from webapp.trade.cutdue import CutForecast, forecast_cut
from webapp.trade.errors import OutOfDomain
from webapp.trade.maturing import Interval

LONGEST_S = 0.8  # that a page waits for a forecast after a new reading; else it is there the next time


@dataclass(frozen=True, slots=True)
class NextCut:
    """The cut that comes next. target_pct: the strength that the stream falls to [% vol at 20 degC], None for heads.

    state: due, past, too_little, or working while it is still being worked out; at_s: [s since 1970], where it is due.
    """

    part: str
    to: str
    target_pct: float | None
    by: str  # plan or last
    state: str
    at_s: Interval | None = None


def part_now(run: Run) -> str:
    """Return the fraction that runs now: heads, hearts or tails; low wines of a stripping run."""
    events = {cut.get("event") for cut in run["cuts"]}
    if is_low_wines(run):
        return "low wines"
    return "tails" if "hearts_cut" in events else "hearts" if "heads_cut" in events else "heads"


def is_low_wines(run: Run) -> bool:
    """Whether all that comes goes into one receiver, without cuts."""
    to = run["receivers"]
    events = {cut.get("event") for cut in run["cuts"]}
    one = bool(to.get("hearts")) and not (to.get("heads") or to.get("tails"))
    return is_stripping(run) and one and not events & {"heads_cut", "hearts_cut"}


def first_drop(run: Run) -> str:
    """Return the time that the forecast counts from, as UTC text: the first drop, else the first reading."""
    drop = next((cut["at"] for cut in reversed(run["cuts"]) if cut.get("event") == "first_drop"), None)
    return drop or min((line["at"] for line in _read(run)), default=run["started_at"])


def last_read(run: Run) -> RunLine | None:
    """Return the last line of a run with a true strength, or None."""
    return max(_read(run), key=lambda line: line["at"], default=None)


def next_cut(
    run: KnownRun, past: Sequence[KnownRun], wishes: Mapping[str, Wish], site: SiteSettings
) -> NextCut | None:
    """Return the cut that comes next in a run under way; None where neither a plan nor a run before says.

    past: the runs of its still before it, newest first.
    """
    part = part_now(run)
    to = {"heads": "hearts", "hearts": "tails"}.get(part, "its end")
    if part == "heads":
        return NextCut(part, to, None, "", "too_little")
    target, by = _target(run, past, wishes.get(fruit_of(run["what"])), part)
    if target is None:
        return None
    if _goes_by_dips(run):
        return NextCut(part, to, target, by, "too_little")
    told = _foretold(run, past, target, site.get("height_m"))
    if told is None:
        return NextCut(part, to, target, by, "working")
    zero = datetime.fromisoformat(first_drop(run)).timestamp()
    minutes = told.get("minutes")
    at_s: Interval | None = None
    if minutes:
        at_s = {"at": zero + minutes["at"] * 60, "low": zero + minutes["low"] * 60, "high": zero + minutes["high"] * 60}
    return NextCut(part, to, target, by, told["state"], at_s)


def _target(
    run: KnownRun, past: Sequence[KnownRun], wish: Wish | None, part: str
) -> tuple[float | None, str]:
    plan = plan_for(wish, run["still"])
    planned = {"hearts": plan["hearts_to_pct"], "tails": plan["tails_to_pct"]}.get(part) if plan else None
    if planned:
        return planned, "plan"
    before = _model(run, past, wish)
    if before is None:
        return None, ""
    if part == "hearts":
        cut = next((cut for cut in reversed(before["cuts"]) if cut.get("event") == "hearts_cut"), None)
        return (cut["true_strength"] if cut else None), "last"
    end = before.get("end")
    return (end["true_strength"] if end else None), "last"


def _model(run: KnownRun, past: Sequence[KnownRun], wish: Wish | None) -> KnownRun | None:
    """Return the run that this one is held against: the best of its fruit, else the last of it, else the last."""
    over = [one for one in past if one["ended_at"]]
    alike = [one for one in over if fruit_of(one["what"]) == fruit_of(run["what"])]
    best = wish["best"].get(run["still"]) if wish else None
    named = next((one for one in over if best and one["id"] == best["run"]), None)
    return named or next(iter(alike or over), None)


def _read(run: Run) -> list[RunLine]:
    lines = {line["entry"]: line for line in [*run["cuts"], *run["readings"]]}
    return [line for line in lines.values() if line.get("true_strength") is not None]


def _goes_by_dips(run: Run) -> bool:
    """Whether dips of the receivers say what has run off, and not the flow: then the phone alone can add it up."""
    lines = {line["entry"]: line for line in [*run["cuts"], *run["readings"]]}.values()
    return any("dip" in line for line in lines) and sum(line.get("flow") is not None for line in lines) < 2


def _foretold(
    run: KnownRun, past: Sequence[KnownRun], target: float, height_m: float | None
) -> CutForecast | None:
    text = json.dumps(forecast.forecast_input(run, float(height_m or 0)))
    try:
        taught = forecast.teaching_text(past, run["what"], height_m)
        return _foretelling(text, taught, target).result(timeout=LONGEST_S)
    except TimeoutError:
        return None


@lru_cache(maxsize=32)
def _foretelling(run: str, taught: str, target: float) -> Future[CutForecast]:
    learnt = forecast.learning(taught) if taught else None
    # The learner's one thread does the runs before first, then this.

    def work() -> CutForecast:
        try:
            return forecast_cut(json.loads(run), learnt.result() if learnt else None, target)
        except OutOfDomain:
            return {"state": "too_little"}

    return forecast.in_turn(work)
