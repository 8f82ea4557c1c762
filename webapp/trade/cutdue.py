"""When the next cut is due: the minute and the litres at which the stream will have fallen to a chosen strength.

A forecast of strength alone. It knows nothing of what else is in the stream, and takes no cut for anybody.
``static/trade/still/cutdue.js`` is the same, step for step.
"""

from math import ceil, isfinite, sqrt
from typing import NamedTuple, NotRequired, TypedDict

from webapp.trade.batch import charge_pot, stream_moles
from webapp.trade.errors import OutOfDomain
from webapp.trade.matrices import Vector, dot
from webapp.trade.maturing import Interval
from webapp.trade.numeric import brief, fixed
from webapp.trade.runfit import NUDGE, Charged, Fit, at_share, fit_run, nudged, play, reflux_at, sections_of
from webapp.trade.runtrack import RunRead, Track, middle, track
from webapp.trade.stillprior import WANDER, Learnt, Usual, flow_now, prior_of
from webapp.trade.vle import exponential

TARGET_PCT = (5.0, 90.0)
LEAST_READINGS = 3
SIDE = 1.2815515655446004  # of a normal error: four in five lie within
STEPS_MOST = 150
BELOW_PCT = 30.0  # so far below the target the stream is followed, for the high side of its band
SHIFTED = 0.1  # of the log of the reflux: to see what another reflux would make of the stream
WIDEST_MIN = 55.0  # an interval beyond this says nothing that helps
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
    runs: NotRequired[int]
    tried: NotRequired[int]
    kept: NotRequired[int]


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
        left_out (places of readings taken for slips), changed_at (minutes, if heat or water were changed), runs
        (how many past runs it knows), tried and kept (how many of their forecasts, told again, held the cut);
        or state "too_little" with why and words; or state "past" with words

    Source
    ------
    webapp/trade/column.py and runfit.py; docs/numbers.md says what it cannot know.
    """
    low, high = TARGET_PCT
    if not low <= target_pct <= high:
        return _too_little("out_of_range", target=brief(target_pct), low=brief(low), high=brief(high))
    seen = foresee(run, prior, target_pct)
    if isinstance(seen, str):
        if seen == "past":
            return {"state": "past", "words": WORDS["past"].format(target=brief(target_pct))}
        return _too_little(seen, more="the first readings" if not run["readings"] else "another reading")
    done, ahead, (at, soonest, latest) = seen.track, seen.ahead, seen.litres
    now_l = done.litres[-1]
    minutes = _minutes(ahead, seen.litres, done.minutes[-1], seen.flow_spread)
    if minutes["high"] - minutes["low"] > WIDEST_MIN:
        return _too_little("wide", width=fixed(minutes["high"] - minutes["low"], 0))
    return {
        "state": "due",
        "minutes": minutes,
        "collected_l": {"at": now_l + at, "low": now_l + soonest, "high": now_l + latest},
        "curve": _curve(done, ahead, at),
        "strength_average_pct": _average(done, ahead, at, float(run.get("receiver_since") or 0.0)),
        "left_out": seen.left_out,
        "changed_at": done.minutes[done.since] if done.since else None,
        "runs": prior["runs"] if prior else 0,
        "tried": prior["tried"] if prior else 0,
        "kept": prior["kept"] if prior else 0,
    }


class Ahead(NamedTuple):
    """The stream from now on [L, L of pure alcohol, min, % vol]; strength as expected, at its low and its high side."""

    litres: Vector
    lpas: Vector
    minutes: Vector
    bands: tuple[Vector, Vector, Vector]


class Foreseen(NamedTuple):
    """A forecast before its words: the run, the stream ahead, litres from now (expected, soonest, latest), slips,
    and the spread of the flow.
    """

    track: Track
    ahead: Ahead
    litres: tuple[float, float, float]
    left_out: list[int]
    flow_spread: float


def foresee(run: RunRead, known: Learnt | None, target_pct: float) -> Foreseen | str:
    """Return the forecast in litres, however wide; or the word for why there is none, or "past"."""
    ready = make_ready(run, known["flow_l_h"] if known else None)
    if isinstance(ready, str):
        return ready
    seen, charged = ready
    usual = prior_of(known, (run.get("still") or {}).get("plates"), middle(seen.root_flows))
    fit = fit_run(charged, seen, usual.still)
    if seen.places[-1] not in fit.slips and seen.strengths[-1] <= target_pct:
        return "past"
    flow_l_h = flow_now(seen, charged.lpa, usual)
    if not flow_l_h or flow_l_h <= 0:
        return "no_flow"
    ahead = _ahead(charged, seen, fit, usual, target_pct, flow_l_h)
    if len(ahead.litres) < 2:
        return "odd_readings"
    at, soonest, latest = (_crossing(ahead.litres, strengths, target_pct) for strengths in ahead.bands)
    if at is None or soonest is None or latest is None:
        return "far"
    return Foreseen(seen, ahead, (at, soonest, latest), sorted([*seen.left_out, *fit.slips]), usual.flow_spread)


def make_ready(run: RunRead, flow_l_h: float | None) -> tuple[Track, Charged] | str:
    """Return the track and what the run began with; or why there is too little."""
    charge = run.get("charge") or {}
    try:
        volume_l, lpa = float(charge.get("volume_l") or 0.0), float(charge.get("lpa_l") or 0.0)
        pot = charge_pot(volume_l, lpa)
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
    if len(seen.minutes) < LEAST_READINGS:
        return "few_readings"
    return seen, Charged(pot, volume_l, lpa, sections_of((run.get("still") or {}).get("plates")))


class _Flow(NamedTuple):
    """The stream's flow from now on: a level [L/h], and its shape over the run."""

    level_l_h: float
    shape: Vector

    def at(self, share: float) -> float:
        return self.level_l_h * at_share(self.shape, share)


class _Moment(NamedTuple):
    """The stream after so much more: litres and litres of pure alcohol from now, strength by the model alone."""

    volume_l: float
    lpa: float
    strength_pct: float


class _View(NamedTuple):
    """What all that lies ahead is seen with."""

    charged: Charged
    seen: Track
    usual: Usual
    flow: _Flow
    target_pct: float

    def above(self, moment: _Moment, drift_pct: float) -> float:
        """Return what the stream reads above the model: habit, and the drift as it fades. [% vol]"""
        habit = at_share(self.usual.still.habit_pct, self.share(moment.lpa))
        return habit + drift_pct * exponential(-moment.volume_l / self.charged.fade_l)

    def share(self, lpa: float) -> float:
        return (self.seen.lpas[-1] + lpa) / self.charged.lpa


def _run_on(view: _View, logs: Vector, drift_pct: float, shift: float) -> list[_Moment]:
    """Run a still on from the last reading, with its log of the reflux moved by ``shift`` from now on."""
    charged, seen = view.charged, view.seen
    column, _ = play(charged, seen, logs)
    ethanol, both = seen.ethanol_mol[-1], seen.ethanol_mol[-1] + seen.water_mol[-1]
    left_l = max(charged.lpa * exponential(logs[2]) - seen.lpas[-1], 0.05 * charged.lpa)
    steps = min(ceil(1.4 * left_l / (view.target_pct / 100.0) / charged.step_l), STEPS_MOST)
    moments = [_Moment(0.0, 0.0, column.strength_pct)]
    moved = [logs[0], logs[1] + shift, *logs[2:]]
    ahead = [(off - seen.litres[-1], plates) for off, plates in seen.stands if off > seen.litres[-1]]
    for _ in range(steps):
        before = moments[-1]
        while ahead and ahead[0][0] <= before.volume_l:
            column.stand(sections_of(ahead.pop(0)[1]))
        reads = min(max(before.strength_pct + view.above(before, drift_pct), 1.0), 97.0)
        more_ethanol, more_water = stream_moles(charged.step_l, reads)
        ethanol, both = ethanol + more_ethanol, both + (more_ethanol + more_water)
        reflux = reflux_at(moved, sqrt(view.flow.at(view.share(before.lpa))))
        more = more_ethanol + more_water
        column.step(ethanol, both, more * (reflux + 1.0), more * reflux)
        now = _Moment(
            before.volume_l + charged.step_l, before.lpa + charged.step_l * reads / 100.0, column.strength_pct
        )
        moments.append(now)
        if now.strength_pct + view.above(now, drift_pct) < view.target_pct - BELOW_PCT:
            break
    return moments


def _ahead(charged: Charged, seen: Track, fit: Fit, usual: Usual, target_pct: float, flow_l_h: float) -> Ahead:
    """Run the still on from the last reading; give the expected stream and its band."""
    view = _View(charged, seen, usual, _Flow(flow_l_h, usual.flow_shape), target_pct)
    middle_ = _run_on(view, fit.logs, fit.drift_pct, 0.0)
    # What the drift is taken to be moves with the still: a still that gives more leaves less to drift.
    sides = [
        _run_on(view, nudged(fit.logs, j), fit.drift_pct - NUDGE * slope, 0.0)
        for j, slope in enumerate(fit.drift_slopes)
    ]
    other = _run_on(view, fit.logs, fit.drift_pct, SHIFTED)
    count = min(len(middle_), len(other), min(len(side) for side in sides))
    found = Ahead([], [], [], ([], [], []))
    minute = gained = surest = 0.0
    for i in range(count):
        now, fade = middle_[i], exponential(-middle_[i].volume_l / charged.fade_l)
        steep = [
            (side[i].strength_pct - now.strength_pct) / NUDGE - fit.drift_slopes[j] * fade
            for j, side in enumerate(sides)
        ]
        wander = (other[i].strength_pct - now.strength_pct) / SHIFTED * WANDER
        variance = _variance(fit, usual.still.drift_pct, fade, steep)
        error = sqrt(variance + wander * wander * min(now.volume_l / charged.fade_l, 1.0))
        surest = error if i == 0 else surest
        strength = now.strength_pct + view.above(now, fit.drift_pct) + usual.lean * (error - surest)
        if i:
            before = middle_[i - 1]
            passed = now.volume_l - before.volume_l
            minute += 60.0 * passed / view.flow.at(view.share((now.lpa + before.lpa) / 2))
            gained += passed * (found.bands[0][i - 1] + strength) / 200.0
        found.litres.append(now.volume_l)
        found.lpas.append(gained)
        found.minutes.append(minute)
        off = SIDE * usual.widen * error
        for band, by in zip(found.bands, (0.0, -off, off), strict=True):
            band.append(strength + by)
    return found


def _variance(fit: Fit, drift_pct: float, fade: float, slopes: Vector) -> float:
    """Return the variance of the strength ahead: what is not known of the still, and what may drift until then."""
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
