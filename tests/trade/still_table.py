"""The table of the forecast of a cut on simulated stills, by the book's own path, beside two cheap competitors."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator, Sequence
from datetime import datetime
from statistics import median
from typing import Any, NamedTuple

import numpy as np

from tests.trade.still_truths import CLASSES, Simulated, make_still, simulate
from webapp.book.still import forecast
from webapp.trade.cutdue import forecast_cut
from webapp.trade.stilllearn import learn_prior

RUNS, KNOWN = 8, 3  # runs of a still; from the fourth on its past is known
SHARES = {"2/3": 2 / 3, "5/6": 5 / 6}
LEAST_HEARTS_MIN = 30.0


class Asked(NamedTuple):
    """A run as it stood at a moment of its hearts, its still's runs before it (newest first), and what came."""

    sort: str
    share: str
    run: dict[str, Any]
    past: list[dict[str, Any]]
    cut_pct: float
    cut_min: float
    now_min: float


class Told(NamedTuple):
    """What somebody said of it: minutes off (late is above nought) or None for silence, whether held, how wide."""

    off_min: float | None
    held: bool = False
    width_min: float = 0.0


def runs_of(structure: str, sort: str, stills: Sequence[int]) -> list[list[Simulated | None]]:
    """Return the runs of some stills of a class, in order."""
    made = [make_still(k, sort, structure) for k in stills]
    seeds = [k * 100 + j for k in stills for j in range(RUNS)]
    all_runs = simulate([still for still in made for _ in range(RUNS)], seeds)
    return [all_runs[i * RUNS : (i + 1) * RUNS] for i in range(len(made))]


def questions(sort: str, stills: list[list[Simulated | None]], with_past: bool) -> Iterator[Asked]:
    """Ask each run at two moments of its hearts: with the runs before it, or the first of a still without any."""
    for runs in stills:
        for i, one in enumerate(runs):
            if one is None or one.cut_min - one.heads_min < LEAST_HEARTS_MIN or (i < KNOWN) == with_past:
                continue
            past = [each.run for each in reversed(runs[:i]) if each] if with_past else []
            for name, share in SHARES.items():
                now = one.heads_min + share * (one.cut_min - one.heads_min)
                yield Asked(sort, name, seen_until(one.run, now), past, one.cut_pct, one.cut_min, now)


def _drop(run: dict[str, Any]) -> datetime:
    return datetime.fromisoformat(next(cut["at"] for cut in run["cuts"] if cut["event"] == "first_drop"))


def seen_until(run: dict[str, Any], minute: float) -> dict[str, Any]:
    """Return the run as it stood so many minutes after its first drop."""
    zero = _drop(run)

    def lines(name: str) -> list[dict[str, Any]]:
        return [one for one in run[name] if (datetime.fromisoformat(one["at"]) - zero).total_seconds() <= 60 * minute]

    return {**run, "ended_at": None, "readings": lines("readings"), "cuts": lines("cuts")}


def by_the_book(asked: Asked) -> Told:
    """The product's own forecast, by the book's path."""
    text = forecast.teaching_text(asked.past, asked.run["what"], 0.0)
    told = forecast_cut(
        json.loads(json.dumps(forecast.forecast_input(asked.run, 0.0))),
        learn_prior(json.loads(text)) if text else None, asked.cut_pct,
    )
    at = told.get("minutes")
    if at is None:
        return Told(None)
    return Told(at["at"] - asked.cut_min, at["low"] <= asked.cut_min <= at["high"], at["high"] - at["low"])


def _points(run: dict[str, Any]) -> tuple[Any, Any]:
    read = forecast.forecast_input(run, 0.0)["readings"]
    return np.array([r["minutes"] for r in read]), np.array([r["strength_pct"] for r in read])


def straight_line(asked: Asked) -> Told:
    """The line through the last three readings."""
    minutes, strengths = _points(asked.run)
    if len(minutes) < 3:
        return Told(None)
    slope, level = np.polyfit(minutes[-3:], strengths[-3:], 1)
    if slope >= -1e-6:
        return Told(None)
    at = max((asked.cut_pct - level) / slope, asked.now_min)
    return Told(float(min(at, 1e4) - asked.cut_min))


def nearest_runs(asked: Asked) -> Told:
    """The two past runs nearest in strength since the heads cut, without any physics: their cut, as long after it."""
    def since_heads(run: dict[str, Any]) -> tuple[Any, Any]:
        heads = next(cut["at"] for cut in run["cuts"] if cut["event"] == "heads_cut")
        moved = (datetime.fromisoformat(heads) - _drop(run)).total_seconds() / 60
        minutes, strengths = _points(run)
        return minutes - moved, strengths

    now = since_heads(asked.run)
    found = []
    for run in asked.past[:8]:
        minutes, strengths = since_heads(run)
        low = np.flatnonzero((strengths <= asked.cut_pct) & (minutes > 0))
        if not len(low) or low[0] == 0:
            continue
        i = low[0]
        share = (strengths[i - 1] - asked.cut_pct) / max(strengths[i - 1] - strengths[i], 1e-6)
        cut = minutes[i - 1] + min(max(share, 0), 1) * (minutes[i] - minutes[i - 1])
        off = np.interp(now[0], minutes, strengths) - now[1]
        found.append((float(np.median(np.abs(off))), cut))
    if not found:
        return Told(None)
    best = [cut for _, cut in sorted(found)[:2]]
    heads_min = _points(asked.run)[0][0] - now[0][0]
    return Told(float(max(np.mean(best) + heads_min, asked.now_min) - asked.cut_min))


ASKED: dict[str, Callable[[Asked], Told]] = {
    "forecast": by_the_book, "straight line": straight_line, "nearest runs": nearest_runs,
}


class Line(NamedTuple):
    """A line of the table: all in minutes or shares."""

    count: int
    median_min: float
    p90_min: float
    held: float
    silent: float
    widest_min: float


def line_of(told: list[Told]) -> Line:
    """Sum up what somebody said of many runs."""
    said = [one for one in told if one.off_min is not None]
    offs = sorted(abs(one.off_min or 0.0) for one in said) or [float("nan")]
    return Line(
        len(told), median(offs), offs[min(int(len(offs) * 0.9), len(offs) - 1)],
        sum(one.held for one in said) / max(len(said), 1), 1 - len(said) / max(len(told), 1),
        max((one.width_min for one in said), default=0.0),
    )


__all__ = ["ASKED", "CLASSES", "line_of", "questions", "runs_of"]
