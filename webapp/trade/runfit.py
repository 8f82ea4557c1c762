"""Fit a still and its charge to a run. ``static/trade/still/fit.js`` and ``filter.js`` are the same.

Five numbers are fitted, as logs: the share of a full stage that each section gives, the reflux, a factor on the alcohol
charged, the litres that each section holds, and how far the sections were enriched before the first drop. Least squares
with a prior (Gauss and Newton's steps, damped), on readings whose departures from the model drift: next to the scatter
of a reading stands a slow error that forgets itself over FADE of the run (an Ornstein-Uhlenbeck process, followed by
Kalman's filter). What the filter holds at the last reading goes into the forecast and fades there.
"""

from math import ceil, sqrt
from typing import NamedTuple

from webapp.trade.batch import Pot
from webapp.trade.column import Column, Make
from webapp.trade.matrices import Matrix, Vector, dot, inverse, solve
from webapp.trade.runtrack import Track
from webapp.trade.vle import exponential

READ_PCT = 0.5  # scatter of one reading of the true strength; common practice, no source
FADE = 0.25  # of the litres of pure alcohol charged, in litres of distillate
SHIFT_PCT = 3.0  # by how much a still may read otherwise after a change of heat or water
NUDGE = 0.03
ROUNDS, SEARCHES, ENOUGH, FURTHEST = 2, 6, 1e-3, 0.7
SLIP, SUSPECT = 4.5, 1.5  # standard errors
LEAST_TO_JUDGE = 4  # readings, before one of them is taken for a slip
OUT = 1e4  # a slip's variance grows by this
STEPS = 60  # of a run, while its alcohol runs off at 70 % vol
STEPS_MOST = 60  # from one reading to the next
EFFICIENCY_MOST, REFLUX_RANGE, HELD_SHARE = 1.15, (0.02, 50.0), 0.02  # the last: of the charge, on each section
HIGHEST = (1.0, 6.0, 1.0, 4.0, 4.0)  # of each log: beyond, nothing more comes of it
LOGS = 5
PLATES_UNKNOWN, SECTIONS_MOST = 2, 8  # common practice, no source


class Charged(NamedTuple):
    """What a run began with: the pot [mol], litres and litres of pure alcohol charged, sections above the pot."""

    pot: Pot
    volume_l: float
    lpa: float
    sections: int

    @property
    def step_l(self) -> float:
        """Litres of distillate in a step of the model."""
        return self.lpa / 0.7 / STEPS

    @property
    def fade_l(self) -> float:
        """Litres of distillate in which a drift fades to a third."""
        return FADE * self.lpa


class Prior(NamedTuple):
    """What is known of the still: means of the five logs, their spread; drift [% vol]; habit [% vol].

    Its habit is what its past runs read above the model, at tenths of the pure alcohol charged.
    """

    mean: Vector
    spread: Matrix
    drift_pct: float
    habit_pct: Vector


class Fit(NamedTuple):
    """The fitted logs, their covariance; the drift now [% vol], its variance, its slopes; readings taken for slips."""

    logs: Vector
    covariance: Matrix
    drift_pct: float
    drift_var: float
    drift_slopes: Vector
    slips: list[int]
    misses: list[tuple[float, float]]  # (share of the pure alcohol charged, % vol above the model)


class Seen(NamedTuple):
    """The filter's answer: whitened misses and slopes, plain standard errors, and what it holds at the end."""

    misses: Vector
    slopes: list[Vector]
    sizes: Vector
    drift_pct: float
    drift_var: float
    drift_slopes: Vector


class Given(NamedTuple):
    """What a search is given: charge, readings, prior, the inverse of its spread, the variance of each reading."""

    charged: Charged
    seen: Track
    prior: Prior
    wanted: Matrix
    noise: Vector


def sections_of(plates: float | None) -> int:
    """Return how many sections stand above the pot: the plates, and the helm or dephlegmator."""
    return min(max(int((PLATES_UNKNOWN if plates is None else plates) + 0.5), 0) + 1, SECTIONS_MOST)


def at_share(tenths: Vector, share: float) -> float:
    """Return what stands at a share of the pure alcohol charged, on the straight lines between tenths."""
    place = min(max(share, 0.0), 1.0) * 10.0
    i = min(int(place), 9)
    return tenths[i] + (place - i) * (tenths[i + 1] - tenths[i])


def column_of(charged: Charged, logs: Vector) -> Column:
    """Return the still of some logs as the first drop comes."""
    efficiency, _, pot, held, filled = (exponential(min(logs[i], HIGHEST[i])) for i in range(LOGS))
    make = Make(charged.sections, min(efficiency, EFFICIENCY_MOST), min(held, HELD_SHARE * charged.volume_l), filled)
    return Column(Pot(charged.pot.ethanol_mol * pot, charged.pot.water_mol), make)


def reflux_at(logs: Vector, root_flow: float) -> float:
    """Return the moles that flow back for each that runs off, at a root of the flow.

    More heat lets more run off beside the same reflux; a flow that was read wrong changes nothing. Its root stands
    between the two.
    """
    return min(max(exponential(min(logs[1], HIGHEST[1])) / root_flow, REFLUX_RANGE[0]), REFLUX_RANGE[1])


def play(charged: Charged, seen: Track, logs: Vector) -> tuple[Column, Vector]:
    """Run a still down along the readings; return it as it stands at the last, and its strength at each. [% vol]"""
    column, strengths = column_of(charged, logs), []
    litres = ethanol = both = 0.0
    turned = 0
    for i in range(len(seen.minutes)):
        reflux = reflux_at(logs, seen.root_flows[i])
        steps = min(max(ceil((seen.litres[i] - litres) / charged.step_l), 1), STEPS_MOST)
        more_ethanol = (seen.ethanol_mol[i] - ethanol) / steps
        more = (seen.ethanol_mol[i] + seen.water_mol[i] - both) / steps
        step_l = (seen.litres[i] - litres) / steps
        for k in range(1, steps + 1):
            while turned < len(seen.stands) and seen.stands[turned][0] <= seen.litres[i] - step_l * (steps - k):
                column.stand(sections_of(seen.stands[turned][1]))
                turned += 1
            column.step(ethanol + more_ethanol * k, both + more * k, more * (reflux + 1.0), more * reflux)
        litres, ethanol, both = seen.litres[i], seen.ethanol_mol[i], seen.ethanol_mol[i] + seen.water_mol[i]
        strengths.append(column.strength_pct)
    return column, strengths


def fit_run(charged: Charged, seen: Track, prior: Prior) -> Fit:
    """Return the still that explains the readings of a run best, given what is known of it."""
    given = Given(charged, seen, prior, inverse(prior.spread), [READ_PCT * READ_PCT] * len(seen.minutes))
    noise, slips = given.noise, list[int]()
    logs, filtered = _search(given, list(prior.mean))
    if len(noise) >= LEAST_TO_JUDGE and abs(filtered.sizes[-1]) > SUSPECT:
        others, off = _by_the_others(given)
        if off:
            slips, logs = [len(noise) - 1], others
            noise[-1] *= OUT
            logs, filtered = _search(given, logs)
    for _ in range(ROUNDS):
        worst = max(range(len(noise)), key=lambda i: (abs(filtered.sizes[i]), -i))
        near = any(abs(worst - slip) <= 1 for slip in slips)
        if abs(filtered.sizes[worst]) <= SLIP or near or len(noise) < LEAST_TO_JUDGE:
            break
        slips.append(worst)
        noise[worst] *= OUT
        logs, filtered = _search(given, logs)
    covariance = inverse(_curvature(filtered.slopes, given.wanted))
    plain = _misses(given, logs)
    leapt = SHIFT_PCT * SHIFT_PCT if len(noise) in seen.leaps else 0.0
    return Fit(logs, covariance, filtered.drift_pct, filtered.drift_var + leapt, filtered.drift_slopes,
               [seen.places[i] for i in slips],
               [(seen.lpas[i] / charged.lpa, miss) for i, miss in enumerate(plain) if i not in slips])


def _by_the_others(given: Given) -> tuple[Vector, bool]:
    """Return the still by all readings but the last, and whether the last is too far off what they say.

    A last reading alone could bend the still to itself; there is none after it to tell.
    """
    charged, seen, prior, wanted, noise = given
    before = given._replace(seen=seen._replace(minutes=seen.minutes[:-1]), noise=noise[:-1])
    logs, held = _search(before, list(prior.mean))
    misses = _misses(given, logs)
    slopes = _slopes(given, logs, misses)
    fade = exponential(-max(seen.litres[-1] - seen.litres[-2], 0.0) / charged.fade_l)
    steep = [slopes[j][-1] - fade * held.drift_slopes[j] for j in range(LOGS)]
    covariance = inverse(_curvature(held.slopes, wanted))
    variance = fade * fade * held.drift_var + prior.drift_pct * prior.drift_pct * (1.0 - fade * fade) + noise[-1]
    variance += dot(steep, [dot(row, steep) for row in covariance])
    variance += SHIFT_PCT * SHIFT_PCT if len(noise) - 1 in seen.leaps else 0.0
    return logs, abs(misses[-1] - fade * held.drift_pct) > SLIP * sqrt(variance)


def _search(given: Given, logs: Vector) -> tuple[Vector, Seen]:
    """Return the best still, and the filter's answer to it. Slopes are those of the last still but one: they move
    little, and cost the most.
    """
    prior, wanted, damping = given.prior, given.wanted, 1e-3
    misses = _misses(given, logs)
    slopes = _slopes(given, logs, misses)
    now = _filtered(given, misses, slopes)
    cost = _cost(now, prior, wanted, logs)
    for _ in range(SEARCHES):
        off = [logs[i] - prior.mean[i] for i in range(LOGS)]
        pull = [dot(now.slopes[j], now.misses) - dot(wanted[j], off) for j in range(LOGS)]
        curvature = _curvature(now.slopes, wanted)
        damped = [[curvature[i][j] * (1.0 + damping if i == j else 1.0) for j in range(LOGS)] for i in range(LOGS)]
        step = solve(damped, pull)
        tried = [logs[i] + min(max(step[i], -FURTHEST), FURTHEST) for i in range(LOGS)]
        misses = _misses(given, tried)
        then = _filtered(given, misses, slopes)
        new_cost = _cost(then, prior, wanted, tried)
        if not new_cost <= cost:
            damping *= 8.0
            continue
        gained, damping = cost - new_cost, damping / 5.0
        logs, now, cost = tried, then, new_cost
        if gained <= ENOUGH * (1.0 + cost):
            break
        slopes = _slopes(given, logs, misses)
        now = _filtered(given, misses, slopes)
    return logs, now


def _cost(now: Seen, prior: Prior, wanted: Matrix, logs: Vector) -> float:
    off = [logs[i] - prior.mean[i] for i in range(LOGS)]
    return dot(now.misses, now.misses) + dot(off, [dot(row, off) for row in wanted])


def _curvature(slopes: list[Vector], wanted: Matrix) -> Matrix:
    return [[wanted[i][j] + dot(slopes[i], slopes[j]) for j in range(LOGS)] for i in range(LOGS)]


def nudged(logs: Vector, which: int) -> Vector:
    """Return the logs with one of them moved by NUDGE."""
    return [value + NUDGE if i == which else value for i, value in enumerate(logs)]


def _misses(given: Given, logs: Vector) -> Vector:
    """Return strength as read less model and habit at each reading. [% vol]"""
    charged, seen, habit_pct = given.charged, given.seen, given.prior.habit_pct
    _, strengths = play(charged, seen, logs)
    return [
        seen.strengths[i] - at_share(habit_pct, seen.lpas[i] / charged.lpa) - strength
        for i, strength in enumerate(strengths)
    ]


def _slopes(given: Given, logs: Vector, misses: Vector) -> list[Vector]:
    """Return the slopes of the model at each reading for each of the logs."""
    slopes = []
    for j in range(LOGS):
        moved = _misses(given, nudged(logs, j))
        slopes.append([(misses[i] - moved[i]) / NUDGE for i in range(len(misses))])
    return slopes


def _filtered(given: Given, misses: Vector, slopes: list[Vector]) -> Seen:
    drift_var = given.prior.drift_pct * given.prior.drift_pct
    return _filter(given.seen.litres, given.charged.fade_l, drift_var, given.noise, misses, slopes, given.seen.leaps)


def _filter(
    litres: Vector, fade_l: float, drift_var: float, noise: Vector, misses: Vector, columns: list[Vector],
    leaps: list[int],
) -> Seen:
    """Whiten misses and slopes alike: Kalman's filter of a drift that fades, read with noise.

    Where heat, water or plates were changed, the drift may leap.
    """
    held = [0.0] * (LOGS + 1)  # the drift, and what it would be for each column
    variance, before = drift_var, litres[0]
    white: list[Vector] = [[] for _ in range(LOGS + 1)]
    sizes = []
    for k in range(len(misses)):
        fade = exponential(-max(litres[k] - before, 0.0) / fade_l)
        before = litres[k]
        variance = fade * fade * variance + drift_var * (1.0 - fade * fade)
        if k in leaps:
            variance += SHIFT_PCT * SHIFT_PCT
        error = sqrt(variance + noise[k])
        gain = variance / (variance + noise[k])
        for j in range(LOGS + 1):
            value = columns[j - 1][k] if j else misses[k]
            expected = fade * held[j]
            white[j].append((value - expected) / error)
            held[j] = expected + gain * (value - expected)
            if j == 0:
                sizes.append((value - expected) / sqrt(variance + READ_PCT * READ_PCT))
        variance *= 1.0 - gain
    return Seen(white[0], white[1:], sizes, held[0], variance, held[1:])
