"""When the next cut is due: the minute and the litres at which the stream will have fallen to a chosen strength.

A forecast of strength alone. It knows nothing of what else is in the stream, and takes no cut for anybody.
``static/trade/still/cutdue.js`` is the same, step for step.
"""

from math import isfinite, sqrt
from typing import NamedTuple, NotRequired, TypedDict

from webapp.trade.batch import Moment, Pot, charge_pot, run_down
from webapp.trade.errors import OutOfDomain
from webapp.trade.maturing import Interval
from webapp.trade.numeric import brief, fixed
from webapp.trade.runfit import FADE, NUDGE, Fit, Vector, at_share, column_of, dot, fit_run, nudged, pot_at
from webapp.trade.runtrack import RunRead, Track, track
from webapp.trade.stillprior import Learnt, Usual, flow_now, prior_of
from webapp.trade.vle import exponential

TARGET_PCT = (5.0, 90.0)
LEAST_READINGS = 3
SIDE = 1.2815515655446004  # of a normal error: four in five lie within
STEPS = 80
# An interval may be this wide, this share of the run so far, or the time until the cut.
WIDE_MIN, WIDE_SHARE = 30.0, 0.25
CURVE_POINTS = 30
BEYOND = 1.12  # the curve is drawn this share of the way to the cut

WORDS = {
    "no_charge": "Too little to say: the charge of this run is not logged. Log litres and strength of the charge.",
    "few_readings": "Too little to say: log {more} of the stream.",
    "no_flow": "Too little to say: log the flow, or dip the receiver.",
    "odd_readings": "Too little to say: the readings rise and fall. Read the stream again.",
    "far": "Too little to say: the cut is still far off. Another reading will help.",
    "wide": "Too little to say: it could be any time within {width} minutes. Another reading will help.",
    "out_of_range": "No forecast at {target} % vol: it runs from {low} to {high} % vol.",
    "past": "The stream has passed {target} % vol.",
}


class CutForecast(TypedDict):
    """When a cut is due, or why there is none to say: `due`, `past` or `too_little`, and what goes with it."""

    state: str
    why: NotRequired[str]
    words: NotRequired[str]
    minutes: NotRequired[Interval]
    collected_l: NotRequired[Interval]
    curve: NotRequired[list[Vector]]
    strength_average_pct: NotRequired[float]
    left_out: NotRequired[list[int]]
    changed_at: NotRequired[float | None]


def forecast_cut(run: RunRead, prior: Learnt | None, target_pct: float) -> CutForecast:
    """Return when a run's stream will have fallen to a strength, or that there is too little to say, or that it has.

    Parameters
    ----------
    run : dict
        charge {volume_l, lpa_l} [L at 20 degC], readings {minutes, strength_pct, flow_l_h or None} [min since the
        first drop, % vol, L/h] in order of time, collected {minutes, volume_l} [min, L since the first drop; any
        number of dips], still {plates, height_m}, receiver_since [min; 0 if missing]; any lists
    prior : dict or None
        What learn_prior gave for this still. [JSON], any; None for a still without past runs
    target_pct : float
        True strength of the stream at the cut. [% vol at 20 degC], 5 to 90

    Returns
    -------
    forecast : dict
        [JSON] state "due" with minutes and collected_l (at, low, high: four in five cuts fall between low and high),
        curve (minutes, % vol, L, LPA since the first drop), strength_average_pct (of the open receiver at the cut),
        left_out (places of readings taken for slips), changed_at (minutes, if heat or water were changed);
        or state "too_little" with why and words; or state "past" with words

    Source
    ------
    webapp/trade/batch.py and runfit.py; docs/numbers.md says what it cannot know.
    """
    low, high = TARGET_PCT
    if not low <= target_pct <= high:
        return _too_little("out_of_range", target=brief(target_pct), low=brief(low), high=brief(high))
    usual = prior_of(prior, (run.get("still") or {}).get("plates"))
    seen = foresee(run, usual, target_pct)
    if isinstance(seen, str):
        if seen == "past":
            return {"state": "past", "words": WORDS["past"].format(target=brief(target_pct))}
        return _too_little(seen, more="the first readings" if not run["readings"] else "another reading")
    done, ahead, (at, soonest, latest) = seen.track, seen.ahead, seen.litres
    now_l, now_min = done.litres[-1], done.minutes[-1]
    minutes = _minutes(ahead, seen.litres, now_min, usual.flow_spread)
    if minutes["high"] - minutes["low"] > max(WIDE_MIN, WIDE_SHARE * now_min, minutes["at"] - now_min):
        return _too_little("wide", width=fixed(minutes["high"] - minutes["low"], 0))
    return {
        "state": "due",
        "minutes": minutes,
        "collected_l": {"at": now_l + at, "low": now_l + soonest, "high": now_l + latest},
        "curve": _curve(done, ahead, at),
        "strength_average_pct": _average(done, ahead, at, float(run.get("receiver_since") or 0.0)),
        "left_out": seen.left_out,
        "changed_at": done.minutes[done.since] if done.since else None,
    }


class Ahead(NamedTuple):
    """The stream from now on [L, L of pure alcohol, min, % vol]; strength as expected, at its low and its high side."""

    litres: Vector
    lpas: Vector
    minutes: Vector
    bands: tuple[Vector, Vector, Vector]


class Foreseen(NamedTuple):
    """A forecast before its words: the run, the stream ahead, litres from now (expected, soonest, latest), slips."""

    track: Track
    ahead: Ahead
    litres: tuple[float, float, float]
    left_out: list[int]


def foresee(run: RunRead, usual: Usual, target_pct: float) -> Foreseen | str:
    """Return the forecast in litres, however wide; or the word for why there is none, or "past"."""
    ready = make_ready(run, usual.flow_l_h)
    if isinstance(ready, str):
        return ready
    seen, pot, lpa = ready
    fit = fit_run(pot, lpa, seen, usual.still)
    if seen.places[-1] not in fit.slips and seen.strengths[-1] <= target_pct:
        return "past"
    flow_l_h = flow_now(seen, lpa, usual)
    if not flow_l_h or flow_l_h <= 0:
        return "no_flow"
    ahead = _ahead(pot, lpa, seen, fit, usual, target_pct, flow_l_h)
    if len(ahead.litres) < 2:
        return "odd_readings"
    at, soonest, latest = (_crossing(ahead.litres, strengths, target_pct) for strengths in ahead.bands)
    if at is None or soonest is None or latest is None:
        return "far"
    return Foreseen(seen, ahead, (at, soonest, latest), sorted([*seen.left_out, *fit.slips]))


def make_ready(run: RunRead, flow_l_h: float | None) -> tuple[Track, Pot, float] | str:
    """Return the track, the pot as charged and its litres of pure alcohol; or why there is too little."""
    charge = run.get("charge") or {}
    try:
        lpa = float(charge.get("lpa_l") or 0.0)
        pot = charge_pot(float(charge.get("volume_l") or 0.0), lpa)
    except OutOfDomain:
        return "no_charge"
    readings = run["readings"]
    if len(readings) < LEAST_READINGS:
        return "few_readings"
    if any(not (isfinite(r["strength_pct"]) and 0 <= r["strength_pct"] <= 97) for r in readings):
        return "odd_readings"
    if any(readings[i]["minutes"] < readings[i - 1]["minutes"] for i in range(1, len(readings))):
        return "odd_readings"
    seen = track(run, flow_l_h)
    if seen is None:
        return "no_flow"
    if len(seen.minutes) - seen.since < LEAST_READINGS:
        return "few_readings"
    return seen, pot, lpa


def _ahead(pot: Pot, lpa: float, seen: Track, fit: Fit, usual: Usual, target_pct: float, flow_l_h: float) -> Ahead:
    """Run the pot down from the last reading; give the expected stream and its band."""
    fade_l, now_lpa = FADE * lpa, seen.lpas[-1]
    left_l = max(lpa * exponential(fit.logs[2]) - now_lpa, 0.02 * lpa)
    off_l = 1.4 * left_l / (target_pct / 100.0)

    def run_with(logs: Vector, drift_pct: float) -> list[Moment]:
        def extra(off: float, lpa_off: float) -> float:
            habit = at_share(usual.still.habit_pct, (now_lpa + lpa_off) / lpa)
            return habit + drift_pct * exponential(-off / fade_l)

        there = pot_at(pot, logs, seen.ethanol_mol[-1], seen.water_mol[-1])
        return run_down(there, column_of(logs), off_l, STEPS, extra)

    middle = run_with(fit.logs, fit.drift_pct)
    # What the drift is taken to be moves with the still: a still that gives more leaves less to drift.
    sides = [
        [run_with(nudged(fit.logs, j, by), fit.drift_pct - by * fit.drift_slopes[j]) for by in (NUDGE, -NUDGE)]
        for j in range(3)
    ]
    count = min([len(middle)] + [len(side) for pair in sides for side in pair])
    found = Ahead([], [], [], ([], [], []))
    minute = gained = surest = 0.0
    for i in range(count):
        steep = [(more[i].strength_pct - less[i].strength_pct) / (2 * NUDGE) for more, less in sides]
        error = sqrt(_variance(fit, usual.still.drift_pct, middle[i].volume_l / fade_l, steep))
        surest = error if i == 0 else surest
        strength = middle[i].strength_pct + usual.lean * (error - surest)
        if i:
            share = (now_lpa + (middle[i].lpa + middle[i - 1].lpa) / 2) / lpa
            passed = middle[i].volume_l - middle[i - 1].volume_l
            minute += 60.0 * passed / (flow_l_h * at_share(usual.flow_shape, share))
            gained += passed * (found.bands[0][i - 1] + strength) / 200.0
        found.litres.append(middle[i].volume_l)
        found.lpas.append(gained)
        found.minutes.append(minute)
        off = SIDE * usual.widen * error
        for band, by in zip(found.bands, (0.0, -off, off), strict=True):
            band.append(strength + by)
    return found


def _variance(fit: Fit, drift_pct: float, faded: float, slopes: Vector) -> float:
    """Return the variance of the strength ahead: what is not known of the still, and what may drift until then."""
    fade = exponential(-faded)
    known = fit.drift_var * fade * fade + drift_pct * drift_pct * (1.0 - fade * fade)
    return known + dot(slopes, [dot(row, slopes) for row in fit.covariance])


def _crossing(litres: list[float], strengths: list[float], target_pct: float) -> float | None:
    """Return the litres from now at which a stream falls to the target; nought if it is below already."""
    for i, strength in enumerate(strengths):
        if strength <= target_pct:
            if i == 0:
                return 0.0
            fall = strengths[i - 1] - strength
            share = (strengths[i - 1] - target_pct) / fall if fall > 0 else 1.0
            return litres[i - 1] + share * (litres[i] - litres[i - 1])
    return None


def _between(xs: Vector, ys: Vector, x: float) -> float:
    """Return y at x on the lines between points, and level beyond the last."""
    k = 1
    while k < len(xs) - 1 and xs[k] < x:
        k += 1
    share = min((x - xs[k - 1]) / (xs[k] - xs[k - 1]), 1.0)
    return ys[k - 1] + share * (ys[k] - ys[k - 1])


def _minutes(ahead: Ahead, litres: tuple[float, float, float], now: float, flow_spread: float) -> Interval:
    """Return the minutes at those litres (expected, low, high); what is not known of the flow widens them."""
    at, soonest, latest = (_between(ahead.litres, ahead.minutes, off) for off in litres)
    by_flow = at * SIDE * flow_spread
    early, late = at - soonest, latest - at
    return {
        "at": now + at,
        "low": max(now + at - sqrt(early * early + by_flow * by_flow), now),
        "high": now + at + sqrt(late * late + by_flow * by_flow),
    }


def _curve(seen: Track, ahead: Ahead, at: float) -> list[Vector]:
    """Return the expected stream from now to a little past the cut: minutes, % vol, L, L of pure alcohol."""
    end, points = min(at * BEYOND, ahead.litres[-1]), []
    for i in range(CURVE_POINTS + 1):
        off = end * i / CURVE_POINTS
        minute, strength, lpa = (_between(ahead.litres, ys, off) for ys in (ahead.minutes, ahead.bands[0], ahead.lpas))
        points.append([seen.minutes[-1] + minute, strength, seen.litres[-1] + off, seen.lpas[-1] + lpa])
    return points


def _average(seen: Track, ahead: Ahead, at: float, since_min: float) -> float:
    """Return the strength of what the open receiver will hold at the cut. [% vol]"""
    litres = lpa = 0.0
    if since_min > 0:
        k = 0
        while k < len(seen.minutes) - 1 and seen.minutes[k] < since_min:
            k += 1
        before = seen.minutes[k - 1] if k else 0.0
        share = (since_min - before) / (seen.minutes[k] - before) if seen.minutes[k] > before else 1.0
        share = min(max(share, 0.0), 1.0)
        low_l, low_lpa = (seen.litres[k - 1], seen.lpas[k - 1]) if k else (0.0, 0.0)
        litres = low_l + share * (seen.litres[k] - low_l)
        lpa = low_lpa + share * (seen.lpas[k] - low_lpa)
    held_l, held_lpa = seen.litres[-1] + at - litres, seen.lpas[-1] + _between(ahead.litres, ahead.lpas, at) - lpa
    return 100.0 * held_lpa / held_l if held_l > 0 else seen.strengths[-1]


def _too_little(why: str, **parts: str) -> CutForecast:
    return {"state": "too_little", "why": why, "words": WORDS[why].format(**parts)}
