"""What is known of a still before its run; webapp/trade/stilllearn.py learns it from past runs.

``static/trade/still/prior.js`` is the same, step for step.
"""

from typing import NamedTuple, TypedDict

from webapp.trade.runfit import Matrix, Prior, Vector, at_share
from webapp.trade.runtrack import Track
from webapp.trade.vle import logarithm

# Before any run is known. Common practice, no source: a plate of a fruit still works at about 70 % of a full stage,
# the helm of a bare pot at a third; with plates some two parts flow back for one that runs off.
PLATE_SHARE, HELM_SHARE, PLATES_UNKNOWN = 0.7, 0.3, 1.5
REFLUX, REFLUX_BARE = 2.0, 0.4
STILL_SPREAD, STAGES_UNKNOWN_SPREAD = (0.5, 0.7, 0.12), 0.9
DRIFT_PCT, FLOW_SPREAD = 2.0, 0.2
FLOWS_OF = 3  # the flow of now is taken from this many readings
TENTHS = 11


class Told(TypedDict):
    """What trials of a still's past runs tell of its forecasts."""

    lean: float
    widen: float


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


def prior_of(known: Learnt | None, plates: float | None) -> Usual:
    """Return what is known of a still, from what learn_prior gave or, without it, from its plates."""
    if known:
        still = Prior(known["mean"], known["spread"], known["drift_pct"], known["habit_pct"])
        return Usual(still, known["flow_l_h"], known["flow_shape"], known["flow_spread"], known["lean"], known["widen"])
    above = HELM_SHARE + PLATE_SHARE * (PLATES_UNKNOWN if plates is None else float(plates))
    stages = STAGES_UNKNOWN_SPREAD if plates is None else STILL_SPREAD[0]
    spread = [[0.0] * 3 for _ in range(3)]
    for i, value in enumerate((stages, *STILL_SPREAD[1:])):
        spread[i][i] = value * value
    mean = [logarithm(above), logarithm(REFLUX_BARE if plates == 0 else REFLUX), 0.0]
    return Usual(Prior(mean, spread, DRIFT_PCT, [0.0] * TENTHS), None, [1.0] * TENTHS, FLOW_SPREAD, 0.0, 1.0)


def flow_now(seen: Track, lpa: float, usual: Usual) -> float | None:
    """Return the flow that the shape of the run is to be multiplied by [L/h]: the middle one of the last readings."""
    shares = [share / lpa for share in seen.lpas]
    read = [flow / at_share(usual.flow_shape, shares[i]) for i, flow in enumerate(seen.flows_l_h) if flow]
    if read:
        return middle(read[-FLOWS_OF:]) * seen.correction
    if seen.correction == 1.0 and usual.flow_l_h:
        return usual.flow_l_h
    run_min, run_l = seen.minutes[-1] - seen.minutes[0], seen.litres[-1] - seen.litres[0]
    return run_l / run_min * 60.0 if run_min > 0 and run_l > 0 else usual.flow_l_h


def middle(values: list[float]) -> float:
    """Return the middle value, or the mean of the two in the middle."""
    ordered, half = sorted(values), len(values) // 2
    return ordered[half] if len(ordered) % 2 else (ordered[half - 1] + ordered[half]) / 2
