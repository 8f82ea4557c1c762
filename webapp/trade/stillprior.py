"""What is known of a still before its run; webapp/trade/stilllearn.py learns it from past runs.

``static/trade/still/prior.js`` is the same, step for step.
"""

from typing import NamedTuple, TypedDict

from webapp.trade.matrices import Matrix, Vector
from webapp.trade.runfit import LOGS, Prior, at_share
from webapp.trade.runtrack import Track, middle
from webapp.trade.vle import logarithm

# Before any run is known. Common practice, no source: a plate of a fruit still works at some 64 % of a full stage, the
# helm of a bare pot at a third; with plates some two parts flow back for one that runs off; a plate holds a litre, and
# its liquid has risen once as vapour before the first drop. Of the pot: how well a charge is gauged.
STILL, BARE = (0.64, 1.8, 1.0, 1.0, 1.0), (0.3, 0.4, 1.0, 0.05, 1.0)  # stage, reflux, pot, litres held, filling
STILL_SPREAD, UNKNOWN_SPREAD = (0.35, 0.6, 0.1, 0.8, 0.8), 0.7
DRIFT_PCT, FLOW_SPREAD, WANDER = 2.0, 0.2, 0.05  # the last: of the log of the reflux, in the time that a drift fades
FLOWS_OF = 3  # the flow of now is taken from this many readings
TENTHS = 11


class Told(TypedDict):
    """What trials of a still's past runs tell of its forecasts."""

    lean: float
    widen: float
    tried: int
    kept: int


class Learnt(Told):
    """What past runs of a still tell of it (stilllearn.learn_prior). JSON, as its card carries it."""

    runs: int
    mean: Vector
    spread: Matrix
    drift_pct: float
    habit_pct: Vector
    flow_l_h: float | None
    flow_shape: Vector
    flow_spread: float


class Usual(NamedTuple):
    """A still as known before its run: the prior of the fit; its flow [L/h], its shape over the run, its spread."""

    still: Prior
    flow_l_h: float | None
    flow_shape: Vector
    flow_spread: float
    lean: float  # by how many standard errors earlier forecasts of this still's cuts came too early
    widen: float  # how many times wider than worked out its intervals are to be, by the same forecasts


def prior_of(known: Learnt | None, plates: float | None, root_flow: float) -> Usual:
    """Return what is known of a still, from what learn_prior gave or, without it, from its plates and its flow."""
    if known:
        still = Prior(known["mean"], known["spread"], known["drift_pct"], known["habit_pct"])
        return Usual(still, known["flow_l_h"], known["flow_shape"], known["flow_spread"], known["lean"], known["widen"])
    spread = [[0.0] * LOGS for _ in range(LOGS)]
    for i, value in enumerate(STILL_SPREAD):
        spread[i][i] = value * value
    if plates is None:
        spread[0][0] = UNKNOWN_SPREAD * UNKNOWN_SPREAD
    mean = [logarithm(value) for value in (BARE if plates == 0 else STILL)]
    mean[1] += logarithm(root_flow)
    return Usual(Prior(mean, spread, DRIFT_PCT, [0.0] * TENTHS), None, [1.0] * TENTHS, FLOW_SPREAD, 0.0, 1.0)


def flow_now(seen: Track, lpa: float, usual: Usual) -> float | None:
    """Return the flow that the shape of the run is to be multiplied by [L/h]: the middle one of the last readings."""
    shares = [share / lpa for share in seen.lpas]
    read = [
        (seen.settings[i], flow / at_share(usual.flow_shape, shares[i]))
        for i, flow in enumerate(seen.flows_l_h)
        if flow
    ]
    if read:
        since = [flow for setting, flow in read if setting == read[-1][0]]
        return middle(since[-FLOWS_OF:]) * seen.correction
    if seen.correction == 1.0 and usual.flow_l_h:
        return usual.flow_l_h
    run_min, run_l = seen.minutes[-1] - seen.minutes[0], seen.litres[-1] - seen.litres[0]
    return run_l / run_min * 60.0 if run_min > 0 and run_l > 0 else usual.flow_l_h
