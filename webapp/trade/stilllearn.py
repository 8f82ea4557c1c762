"""Learn from a still's past runs what the forecast of its next cut begins with. The book alone does this.

Fits and trials of past runs are kept in the process: when a still has one run more, only that one is new.
"""

import json
from functools import lru_cache
from math import log, sqrt
from typing import NamedTuple

from webapp.trade.cutdue import SIDE, foresee, make_ready
from webapp.trade.matrices import Matrix, Vector
from webapp.trade.runfit import LOGS, Fit, Prior, at_share, fit_run
from webapp.trade.runtrack import RunRead, Track, middle
from webapp.trade.stillprior import DRIFT_PCT, FLOW_SPREAD, TENTHS, Learnt, Told, flow_now, prior_of

FIRST_COUNTS = 2.0  # a still as it is first taken to be weighs as much as two runs
FIRST_SPREAD, FIRST_DRIFT, FIRST_WIDE = 0.6, 0.5, 1.0  # and how its spread, drift and width (squared) count in it
RUNS_MOST, LEAST_READINGS = 12, 5
KEPT = 512
TRIED_AT = (0.6, 0.8)  # of the litres of the cut: there past runs are forecast again
TRIED_BY = 5  # earlier runs that such a trial may know
TRIED_PCT = 60.0  # the cut of a trial where the run tells none [% vol]
DRIFT_RANGE, FLOW_SPREAD_RANGE = (0.5, 5.0), (0.04, 0.5)
SHAPE_RANGE, WIDEN_RANGE, LEAN_RANGE = (0.3, 3.0), (0.6, 3.0), (-1.5, 1.5)


class _Done(NamedTuple):
    """A past run: its fit, its track, its litres of pure alcohol charged."""

    fit: Fit
    seen: Track
    lpa: float


def learn_prior(past_runs: list[RunRead]) -> Learnt:
    """Return what past runs of one still say of it, small enough for the still's card.

    Parameters
    ----------
    past_runs : list of dict
        Runs as forecast_cut takes them, the latest last, with all their readings; cut_pct, if there, is the strength
        at which the distiller took the cut. [JSON], any number; of the last 12 those with at least 5 readings count

    Returns
    -------
    prior : dict
        [JSON] runs (how many counted), mean and spread of the logs of share of a stage, reflux, pot factor, litres
        held and filling,
        drift_pct [% vol], habit_pct [% vol above the model at tenths of the pure alcohol charged], flow_l_h [L/h,
        None if never read], flow_shape [1, at the same tenths], flow_spread [1], lean [1], widen [1], tried and kept
        (how many trials there were, and in how many of them the cut fell within the interval as then told)

    Source
    ------
    Mean and covariance of the runs' own fits, the still as it is first taken to be counting as two runs. Drift and
    flow are judged on each run by what the others say; the width of intervals by trials: each run forecast again,
    as it stood at two moments, by what the runs before it told.
    """
    counted = [run for run in past_runs[-RUNS_MOST:] if _done(_text(run))]
    return {**_learn(counted), **_lean_and_widen(counted)}


def _learn(runs: list[RunRead]) -> Learnt:
    """Return all that learn_prior gives but what trials say."""
    done = [one for one in (_done(_text(run)) for run in runs) if one]
    plates = (runs[-1].get("still") or {}).get("plates") if runs else None
    first = prior_of(None, plates, middle([middle(one.seen.root_flows) for one in done]) if done else 1.0)
    mean, spread = _together(first.still, [one.fit.logs for one in done])
    habits = [_at_tenths(one.fit.misses) for one in done]
    shapes = [_shape(one) for one in done]
    flows = [level for level in (_level(one) for one in done) if level]
    return {
        "runs": len(done),
        "mean": _round(mean, 5),
        "spread": [_round(row, 6) for row in spread],
        "drift_pct": round(_drift(done, habits), 3),
        "habit_pct": _round(_shrunk(habits, 0.0), 2),
        "flow_l_h": round(middle(flows), 2) if flows else None,
        "flow_shape": _round(_flow_shape(shapes), 3),
        "flow_spread": round(_flow_spread(done, shapes), 4),
        "lean": 0.0,
        "widen": 1.0,
        "tried": 0,
        "kept": 0,
    }


def _lean_and_widen(runs: list[RunRead]) -> Told:
    """Return by how many standard errors the trials' cuts came late, how many times wider intervals are to be, and
    how many of the trials the intervals held that the trials before them would have made.
    """
    offs, kept = list[float](), 0
    for i in range(1, len(runs)):
        known = json.dumps(_learn(runs[max(i - TRIED_BY, 0) : i]))
        lean, widen = _by_trials(offs)
        more = [off for off in (_trial(known, _text(runs[i]), share) for share in TRIED_AT) if off is not None]
        kept += sum(abs(off - lean) <= SIDE * widen for off in more)
        offs += more
    lean, widen = _by_trials(offs)
    return {"lean": round(lean, 3), "widen": round(widen, 3), "tried": len(offs), "kept": kept}


def _by_trials(offs: list[float]) -> tuple[float, float]:
    # The trials of one run are alike: they count as one.
    count = FIRST_COUNTS + len(offs) / len(TRIED_AT)
    lean = _within(sum(offs) / len(TRIED_AT) / count, LEAN_RANGE)
    squares = FIRST_COUNTS * FIRST_WIDE + sum((off - lean) * (off - lean) for off in offs) / len(TRIED_AT)
    return lean, _within(sqrt(squares / count), WIDEN_RANGE)


@lru_cache(maxsize=KEPT)
def _trial(known: str, run_text: str, share: float) -> float | None:
    """Return how far the cut of a past run fell from its forecast, in standard errors, when this much had run off."""
    run: RunRead = json.loads(run_text)
    one = _done(run_text)
    target = float(run.get("cut_pct") or TRIED_PCT)
    if one is None or target <= 5.0:
        return None
    litres = _cut_l(one.seen, target)
    if litres is None:
        return None
    until = [one.seen.minutes[i] for i, off in enumerate(one.seen.litres) if off <= share * litres]
    readings = [reading for reading in run["readings"] if until and reading["minutes"] <= until[-1]]
    dips = [dip for dip in run.get("collected") or [] if until and dip["minutes"] <= until[-1]]
    changes = [change for change in run.get("changes") or [] if until and change["minutes"] <= until[-1]]
    then: RunRead = {**run, "readings": readings, "collected": dips, "changes": changes}
    seen = foresee(then, json.loads(known), target)
    if isinstance(seen, str):
        return None
    at, soonest, latest = seen.litres
    off = litres - seen.track.litres[-1] - at
    side = latest - at if off > 0 else at - soonest
    return SIDE * off / max(side, 0.01 * at) if at > 0 else None


def _cut_l(seen: Track, target_pct: float) -> float | None:
    """Return the litres at which a run's stream fell to the target, on the line between two readings."""
    for i in range(1, len(seen.strengths)):
        before, after = seen.strengths[i - 1], seen.strengths[i]
        if before > target_pct >= after:
            share = (before - target_pct) / (before - after)
            return seen.litres[i - 1] + share * (seen.litres[i] - seen.litres[i - 1])
    return None


def _text(run: RunRead) -> str:
    return json.dumps(run, sort_keys=True)


@lru_cache(maxsize=KEPT)
def _done(run_text: str) -> _Done | None:
    run: RunRead = json.loads(run_text)
    ready = make_ready(run, None)
    if isinstance(ready, str):
        return None
    seen, charged = ready
    if len(seen.minutes) < LEAST_READINGS:
        return None
    first = prior_of(None, (run.get("still") or {}).get("plates"), middle(seen.root_flows))
    return _Done(fit_run(charged, seen, first.still), seen, charged.lpa)


def _together(first: Prior, logs: list[Vector]) -> tuple[Vector, Matrix]:
    n = FIRST_COUNTS + len(logs)
    mean = [(FIRST_COUNTS * first.mean[i] + sum(one[i] for one in logs)) / n for i in range(LOGS)]
    spread = [[0.0] * LOGS for _ in range(LOGS)]
    for i in range(LOGS):
        for j in range(LOGS):
            off = (first.mean[i] - mean[i]) * (first.mean[j] - mean[j])
            total = FIRST_COUNTS * (FIRST_SPREAD * first.spread[i][j] + off)
            spread[i][j] = (total + sum((one[i] - mean[i]) * (one[j] - mean[j]) for one in logs)) / n
    return mean, spread


def _at_tenths(points: list[tuple[float, float]]) -> Vector:
    """Return values at tenths of the pure alcohol charged, on the lines between (share, value) in rising order."""
    found = []
    for tenth in range(TENTHS):
        share, k = tenth / 10.0, 0
        while k < len(points) - 1 and points[k + 1][0] < share:
            k += 1
        (a, low), (b, high) = points[k], points[min(k + 1, len(points) - 1)]
        there = (share - a) / (b - a) if b > a else 0.0
        found.append(low + min(max(there, 0.0), 1.0) * (high - low))
    return found


def _shrunk(each: list[Vector], to: float) -> Vector:
    """Return the mean over runs, drawn to a value as if one more run had stood there."""
    return [to + sum(one[k] - to for one in each) / (len(each) + 1.0) for k in range(TENTHS)]


def _drift(done: list[_Done], habits: list[Vector]) -> float:
    """Return how far the runs read from model and habit: each by the habit of the others. [% vol]"""
    count = FIRST_COUNTS * LEAST_READINGS
    squares = count * FIRST_DRIFT * DRIFT_PCT * DRIFT_PCT
    for i, one in enumerate(done):
        habit = _shrunk(habits[:i] + habits[i + 1 :], 0.0)
        for share, miss in one.fit.misses:
            off = miss - at_share(habit, share)
            squares, count = squares + off * off, count + 1.0
    return _within(sqrt(squares / count), DRIFT_RANGE)


def _level(one: _Done) -> float | None:
    """Return the middle flow of a run. [L/h]"""
    flows = [flow for flow in one.seen.flows_l_h if flow]
    return middle(flows) if flows else None


def _shape(one: _Done) -> Vector | None:
    level = _level(one)
    if not level:
        return None
    return _at_tenths([(one.seen.lpas[i] / one.lpa, flow / level) for i, flow in enumerate(one.seen.flows_l_h) if flow])


def _flow_shape(shapes: list[Vector | None]) -> Vector:
    return [_within(value, SHAPE_RANGE) for value in _shrunk([shape for shape in shapes if shape], 1.0)]


def _flow_spread(done: list[_Done], shapes: list[Vector | None]) -> float:
    """Return the spread of the log of (time the rest of a run took / time by the shape of the other runs)."""
    squares, count = FIRST_COUNTS * FLOW_SPREAD * FLOW_SPREAD, FIRST_COUNTS
    for i, one in enumerate(done):
        usual = prior_of(None, None, 1.0)._replace(flow_shape=_flow_shape(shapes[:i] + shapes[i + 1 :]))
        seen = one.seen
        for k in (len(seen.minutes) // 2, len(seen.minutes) * 2 // 3):
            before = seen._replace(flows_l_h=seen.flows_l_h[:k], correction=1.0)
            flow = flow_now(before, one.lpa, usual) if any(before.flows_l_h) else None
            if not flow:
                continue
            took = expected = 0.0
            for j in range(k, len(seen.minutes)):
                passed, share = seen.litres[j] - seen.litres[j - 1], (seen.lpas[j] + seen.lpas[j - 1]) / 2 / one.lpa
                took += seen.minutes[j] - seen.minutes[j - 1]
                expected += passed / (flow * at_share(usual.flow_shape, share)) * 60.0
            if took > 0 and expected > 0:
                off = log(took / expected)
                squares, count = squares + off * off / 2, count + 0.5
    return _within(sqrt(squares / count), FLOW_SPREAD_RANGE)


def _within(value: float, ends: tuple[float, float]) -> float:
    return min(max(value, ends[0]), ends[1])


def _round(values: Vector, decimals: int) -> Vector:
    return [round(value, decimals) for value in values]
