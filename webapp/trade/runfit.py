"""Fit a still's stages, its reflux and the alcohol in its pot to a run. ``static/trade/still/fit.js`` is the same.

Least squares with a prior (Gauss and Newton's steps, damped), on readings whose departures from the model drift: next
to the scatter of a reading stands a slow error that forgets itself over FADE of the run (an Ornstein-Uhlenbeck process,
followed by Kalman's filter). What the filter holds at the last reading goes into the forecast and fades there.
"""

from math import sqrt
from typing import NamedTuple

from webapp.trade.batch import Column, Pot
from webapp.trade.runtrack import Track
from webapp.trade.vle import exponential

READ_PCT = 0.5  # scatter of one reading of the true strength; common practice, no source
FADE = 0.25  # of the litres of pure alcohol charged, in litres of distillate
NUDGE = 0.02
ROUNDS, SEARCHES, ENOUGH = 3, 12, 1e-6
SLIP = 4.5  # standard errors
LEAST_TO_JUDGE = 4  # readings, before one of them is taken for a slip
OUT = 1e4  # a slip's variance grows by this
STAGES_MOST, REFLUX_MOST = 6.0, 50.0
Vector = list[float]
Matrix = list[list[float]]


class Prior(NamedTuple):
    """What is known of the still: logs of stages above the pot, reflux, pot factor; their spread; drift [% vol].

    Its habit is what its past runs read above the model [% vol], at tenths of the pure alcohol charged.
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


def column_of(logs: Vector) -> Column:
    """Return the still of some logs."""
    return Column(
        1.0 + min(exponential(min(logs[0], 3.0)), STAGES_MOST), min(exponential(min(logs[1], 5.0)), REFLUX_MOST)
    )


def at_share(tenths: Vector, share: float) -> float:
    """Return what stands at a share of the pure alcohol charged, on the straight lines between tenths."""
    place = min(max(share, 0.0), 1.0) * 10.0
    i = min(int(place), 9)
    return tenths[i] + (place - i) * (tenths[i + 1] - tenths[i])


def pot_at(charge: Pot, logs: Vector, ethanol_mol: float, water_mol: float) -> Pot:
    """Return the pot after some has run off; a spent pot keeps a trace, so that the search can come back."""
    full = charge.ethanol_mol * exponential(logs[2])
    return Pot(max(full - ethanol_mol, full * 1e-6), max(charge.water_mol - water_mol, charge.water_mol * 1e-3))


def fit_run(charge: Pot, lpa: float, seen: Track, prior: Prior) -> Fit:
    """Return the still that explains the readings of a run best, given what is known of it."""
    noise = [READ_PCT * READ_PCT] * (len(seen.minutes) - seen.since)
    wanted = inverse(prior.spread)
    logs, off = _by_the_others(charge, lpa, seen, prior, wanted, noise)
    slips = [len(noise) - 1] if off else []
    for slip in slips:
        noise[slip] *= OUT
    for round_ in range(ROUNDS):
        logs, filtered = _search(charge, lpa, seen, prior, wanted, noise, logs)
        worst = max(range(len(noise)), key=lambda i: (abs(filtered.sizes[i]), -i))
        near = any(abs(worst - slip) <= 1 for slip in slips)
        if round_ == ROUNDS - 1 or abs(filtered.sizes[worst]) <= SLIP or near or len(noise) < LEAST_TO_JUDGE:
            break
        slips.append(worst)
        noise[worst] *= OUT
    covariance = inverse(_curvature(filtered.slopes, wanted))
    plain = _misses(charge, lpa, seen, prior, logs, column_of(logs))
    return Fit(logs, covariance, filtered.drift_pct, filtered.drift_var, filtered.drift_slopes,
               [seen.places[seen.since + i] for i in slips],
               [(seen.lpas[seen.since + i] / lpa, miss) for i, miss in enumerate(plain) if i not in slips])


def _by_the_others(
    charge: Pot, lpa: float, seen: Track, prior: Prior, wanted: Matrix, noise: Vector
) -> tuple[Vector, bool]:
    """Return the still by all readings but the last, and whether the last is too far off what they say.

    A last reading alone could bend the still to itself; there is none after it to tell.
    """
    if len(noise) < LEAST_TO_JUDGE:
        return list(prior.mean), False
    before = seen._replace(minutes=seen.minutes[:-1])
    logs, held = _search(charge, lpa, before, prior, wanted, noise[:-1], list(prior.mean))
    misses, slopes = _misses_and_slopes(charge, lpa, seen, prior, logs)
    fade = exponential(-max(seen.litres[-1] - seen.litres[-2], 0.0) / (FADE * lpa))
    steep = [slopes[j][-1] - fade * held.drift_slopes[j] for j in range(3)]
    covariance = inverse(_curvature(held.slopes, wanted))
    variance = fade * fade * held.drift_var + prior.drift_pct * prior.drift_pct * (1.0 - fade * fade) + noise[-1]
    variance += dot(steep, [dot(row, steep) for row in covariance])
    return logs, abs(misses[-1] - fade * held.drift_pct) > SLIP * sqrt(variance)


def _search(
    charge: Pot, lpa: float, seen: Track, prior: Prior, wanted: Matrix, noise: Vector, logs: Vector
) -> tuple[Vector, Seen]:
    damping = 1e-3
    now = _look(charge, lpa, seen, prior, noise, logs)
    cost = _cost(now, prior, wanted, logs)
    for _ in range(SEARCHES):
        pull = [
            dot(now.slopes[j], now.misses) - dot(wanted[j], [logs[i] - prior.mean[i] for i in range(3)])
            for j in range(3)
        ]
        curvature = _curvature(now.slopes, wanted)
        damped = [[curvature[i][j] * (1.0 + damping if i == j else 1.0) for j in range(3)] for i in range(3)]
        back = inverse(damped)
        step = [dot(row, pull) for row in back]
        tried = [logs[i] + min(max(step[i], -1.0), 1.0) for i in range(3)]
        then = _look(charge, lpa, seen, prior, noise, tried)
        new_cost = _cost(then, prior, wanted, tried)
        if new_cost <= cost:
            gained, damping = cost - new_cost, damping / 5.0
            logs, now, cost = tried, then, new_cost
            if gained <= ENOUGH * (1.0 + cost):
                break
        else:
            damping *= 8.0
    return logs, now


def _cost(now: Seen, prior: Prior, wanted: Matrix, logs: Vector) -> float:
    off = [logs[i] - prior.mean[i] for i in range(3)]
    return dot(now.misses, now.misses) + dot(off, [dot(row, off) for row in wanted])


def _curvature(slopes: list[Vector], wanted: Matrix) -> Matrix:
    return [[wanted[i][j] + dot(slopes[i], slopes[j]) for j in range(3)] for i in range(3)]


def _misses(charge: Pot, lpa: float, seen: Track, prior: Prior, logs: Vector, column: Column) -> Vector:
    """Return strength as read less model and habit at each reading under the present setting. [% vol]"""
    return [
        seen.strengths[i]
        - at_share(prior.habit_pct, seen.lpas[i] / lpa)
        - column.strength_pct(pot_at(charge, logs, seen.ethanol_mol[i], seen.water_mol[i]).mole_fraction)
        for i in range(seen.since, len(seen.minutes))
    ]


def nudged(logs: Vector, which: int, by: float) -> Vector:
    """Return the logs with one of them moved."""
    return [value + by if i == which else value for i, value in enumerate(logs)]


def _misses_and_slopes(charge: Pot, lpa: float, seen: Track, prior: Prior, logs: Vector) -> tuple[Vector, list[Vector]]:
    """Return the misses, and the slopes of the model at each reading for each of the logs."""
    column, slopes = column_of(logs), []
    for j in range(3):
        moved = [nudged(logs, j, by) for by in (NUDGE, -NUDGE)]
        # The last of the logs is the pot's: the column stays as it is.
        up, down = (_misses(charge, lpa, seen, prior, to, column if j == 2 else column_of(to)) for to in moved)
        slopes.append([(low - high) / (2 * NUDGE) for low, high in zip(down, up, strict=True)])
    return _misses(charge, lpa, seen, prior, logs, column), slopes


def _look(charge: Pot, lpa: float, seen: Track, prior: Prior, noise: Vector, logs: Vector) -> Seen:
    misses, slopes = _misses_and_slopes(charge, lpa, seen, prior, logs)
    litres = seen.litres[seen.since :]
    return _filter(litres, FADE * lpa, prior.drift_pct * prior.drift_pct, noise, misses, slopes)


def _filter(
    litres: Vector, fade_l: float, drift_var: float, noise: Vector, misses: Vector, columns: list[Vector]
) -> Seen:
    """Whiten misses and slopes alike: Kalman's filter of a drift that fades, read with noise."""
    held = [0.0] * 4  # the drift, and what it would be for each column
    variance, before = drift_var, litres[0]
    white: list[Vector] = [[], [], [], []]
    sizes = []
    for k in range(len(misses)):
        fade = exponential(-max(litres[k] - before, 0.0) / fade_l)
        before = litres[k]
        variance = fade * fade * variance + drift_var * (1.0 - fade * fade)
        error = sqrt(variance + noise[k])
        gain = variance / (variance + noise[k])
        values = (misses[k], columns[0][k], columns[1][k], columns[2][k])
        for j in range(4):
            expected = fade * held[j]
            white[j].append((values[j] - expected) / error)
            held[j] = expected + gain * (values[j] - expected)
            if j == 0:
                sizes.append((values[0] - expected) / sqrt(variance + READ_PCT * READ_PCT))
        variance *= 1.0 - gain
    return Seen(white[0], white[1:], sizes, held[0], variance, held[1:])


def dot(one: Vector, other: Vector) -> float:
    """Return the sum of products, added one by one: Python's own sum() adds with more care than the phone's."""
    total = 0.0
    for i in range(len(one)):
        total += one[i] * other[i]
    return total


def inverse(m: Matrix) -> Matrix:
    """Return the inverse of a symmetric matrix of three rows, by its minors."""
    a, b, c, d, e, f = m[0][0], m[0][1], m[0][2], m[1][1], m[1][2], m[2][2]
    one, two, three = d * f - e * e, c * e - b * f, b * e - c * d
    whole = a * one + b * two + c * three
    return [
        [one / whole, two / whole, three / whole],
        [two / whole, (a * f - c * c) / whole, (b * c - a * e) / whole],
        [three / whole, (b * c - a * e) / whole, (a * d - b * b) / whole],
    ]
