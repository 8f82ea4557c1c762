"""What a still's past teaches, each step by hand or by numpy: means, spreads, shapes, drift, and the trials."""

import json
import math
from typing import Any

import numpy as np
import pytest

from tests.trade.still_runs import Run, generated_run
from webapp.trade import stilllearn
from webapp.trade.runfit import sections_of
from webapp.trade.runtrack import middle
from webapp.trade.stilllearn import learn_prior
from webapp.trade.stillprior import flow_now, prior_of

STILL = 5


@pytest.fixture(scope="module")
def runs() -> list[Run]:
    return [generated_run(seed, STILL)[0] for seed in range(1, 5)]


@pytest.fixture(scope="module")
def done(runs: list[Run]) -> list[Any]:
    return [stilllearn._done(json.dumps(run, sort_keys=True)) for run in runs]


@pytest.fixture(scope="module")
def learnt(runs: list[Run]) -> dict[str, Any]:
    return learn_prior(runs)


def test_a_still_without_runs_is_the_still_as_first_taken_to_be() -> None:
    first = prior_of(None, None, 1.0)
    told = learn_prior([])
    assert told["runs"] == 0 and told["flow_l_h"] is None
    assert told["mean"] == pytest.approx(first.still.mean, abs=1e-5)
    assert np.array(told["spread"]) == pytest.approx(0.6 * np.array(first.still.spread), abs=1e-6)
    # The spread that two runs at half the first drift's square and at the first spread of flows would show.
    assert told["drift_pct"] == pytest.approx(2.0 / math.sqrt(2), abs=6e-4) and told["flow_spread"] == 0.2
    assert told["habit_pct"] == [0.0] * 11 and told["flow_shape"] == [1.0] * 11
    assert (told["lean"], told["widen"]) == (0.0, pytest.approx(1.0, abs=6e-4))
    assert (told["tried"], told["kept"]) == (0, 0)


def test_how_a_still_is_first_taken_to_be() -> None:
    """Common practice, no source: a plate works at 64 % of a stage and holds a litre, a helm gives a third of one."""
    bare, three, unknown = (prior_of(None, plates, 2.0) for plates in (0, 3, None))
    assert bare.still.mean == pytest.approx([math.log(0.3), math.log(0.4 * 2), 0.0, math.log(0.05), 0.0], abs=1e-12)
    assert three.still.mean == pytest.approx([math.log(0.64), math.log(1.8 * 2), 0.0, 0.0, 0.0], abs=1e-12)
    assert unknown.still.mean == three.still.mean
    assert np.sqrt(np.diag(three.still.spread)) == pytest.approx([0.35, 0.6, 0.1, 0.8, 0.8])
    assert np.sqrt(np.diag(unknown.still.spread)) == pytest.approx([0.7, 0.6, 0.1, 0.8, 0.8])
    assert np.count_nonzero(np.array(three.still.spread)) == 5
    assert (three.still.drift_pct, three.still.habit_pct) == (2.0, [0.0] * 11)
    assert three[1:] == (None, [1.0] * 11, 0.2, 0.0, 1.0)


def test_above_the_pot_stand_the_plates_and_the_helm() -> None:
    assert [sections_of(plates) for plates in (0, 1, 3.0, 7, 40, None)] == [1, 2, 4, 8, 8, 3]


def test_a_known_still_is_read_as_it_was_learnt(learnt: dict[str, Any]) -> None:
    usual = prior_of(learnt, 7, 2.0)
    assert list(usual.still) == [learnt[name] for name in ("mean", "spread", "drift_pct", "habit_pct")]
    assert list(usual[1:]) == [learnt[name] for name in ("flow_l_h", "flow_shape", "flow_spread", "lean", "widen")]


def test_mean_and_spread_are_those_of_the_runs_and_two_more(
    learnt: dict[str, Any], runs: list[Run], done: list[Any]
) -> None:
    """The still as first taken to be counts as two runs: the mean and covariance of a mixture, by numpy."""
    root = float(np.median([np.median(one.seen.root_flows) for one in done]))
    first, logs = prior_of(None, runs[-1]["still"]["plates"], root).still, np.array([one.fit.logs for one in done])
    n = 2 + len(logs)
    mean = (2 * np.array(first.mean) + logs.sum(axis=0)) / n
    off, apart = logs - mean, np.array(first.mean) - mean
    spread = (2 * (0.6 * np.array(first.spread) + np.outer(apart, apart)) + off.T @ off) / n
    assert learnt["mean"] == pytest.approx(mean, abs=1.1e-5)
    assert np.array(learnt["spread"]) == pytest.approx(spread, abs=1.1e-6)


def test_values_at_tenths_are_on_the_lines_between_and_level_beyond() -> None:
    points = [(0.05, 3.0), (0.3, 1.0), (0.3, 2.0), (0.72, -1.0)]
    xs, ys = zip(*[(0.05, 3.0), (0.3 - 1e-12, 1.0), (0.3, 2.0), (0.72, -1.0)], strict=True)
    told = stilllearn._at_tenths(points)
    assert len(told) == 11
    for tenth in (0, 1, 2, 4, 5, 6, 7, 8, 9, 10):
        assert told[tenth] == pytest.approx(np.interp(tenth / 10, xs, ys)), tenth
    assert stilllearn._at_tenths([(0.5, 4.0)]) == [4.0] * 11


def test_a_mean_is_drawn_to_its_beginning_as_by_one_run_more() -> None:
    assert stilllearn._shrunk([[3.0] * 11, [6.0] * 11], 0.0) == [3.0] * 11
    assert stilllearn._shrunk([[3.0] * 11], 1.0) == [2.0] * 11
    assert stilllearn._shrunk([], 1.0) == [1.0] * 11


def test_habit_and_drift_are_judged_by_the_other_runs(learnt: dict[str, Any], done: list[Any]) -> None:
    habits = np.array([stilllearn._at_tenths(one.fit.misses) for one in done])
    assert learnt["habit_pct"] == pytest.approx(habits.sum(axis=0) / (len(done) + 1), abs=0.0051)
    squares, count = 2 * 5 * 2.0**2 / 2, 2 * 5.0  # two runs of five readings at half the square of the first drift
    for i, one in enumerate(done):
        others = np.delete(habits, i, axis=0).sum(axis=0) / len(done)
        for share, miss in one.fit.misses:
            squares += (miss - np.interp(share, np.arange(11) / 10, others)) ** 2
            count += 1
    assert learnt["drift_pct"] == pytest.approx(min(max(math.sqrt(squares / count), 0.5), 5.0), abs=6e-4)


def test_the_usual_flow_is_the_middle_of_the_runs_middles(learnt: dict[str, Any], runs: list[Run]) -> None:
    by_run = [np.median([reading["flow_l_h"] for reading in run["readings"]]) for run in runs]
    assert learnt["flow_l_h"] == pytest.approx(float(np.median(by_run)), rel=0.02)  # slips' flows are left out
    assert middle([3.0, 1.0, 2.0]) == 2.0
    assert middle([4.0, 1.0, 2.0, 3.0]) == 2.5


def test_the_shape_of_the_flow_is_relative_to_each_runs_own_level(learnt: dict[str, Any], done: list[Any]) -> None:
    shapes = []
    for one in done:
        flows = np.array(one.seen.flows_l_h)
        shapes.append(np.interp(np.arange(11) / 10, np.array(one.seen.lpas) / one.lpa, flows / np.median(flows)))
    wanted = np.clip(1 + (np.array(shapes) - 1).sum(axis=0) / (len(done) + 1), 0.3, 3.0)
    assert learnt["flow_shape"] == pytest.approx(wanted, abs=6e-4)


def test_the_spread_of_the_flow_is_how_wrong_the_others_shape_was(learnt: dict[str, Any], done: list[Any]) -> None:
    """From a half and from two thirds of a run's readings on: time taken over time foreseen, each half a count."""
    shapes = [stilllearn._shape(one) for one in done]
    squares, count = 2 * 0.2**2, 2.0
    for i, one in enumerate(done):
        shape = np.clip(1 + (np.array(shapes[:i] + shapes[i + 1 :]) - 1).sum(axis=0) / len(done), 0.3, 3.0)
        seen, n = one.seen, len(one.seen.minutes)
        shares = np.array(seen.lpas) / one.lpa
        for k in (n // 2, n * 2 // 3):
            flow = np.median(
                [seen.flows_l_h[j] / np.interp(shares[j], np.arange(11) / 10, shape) for j in range(k)][-3:]
            )
            middles = (shares[k:] + shares[k - 1 : -1]) / 2
            hours = np.diff(seen.litres)[k - 1 :] / (flow * np.interp(middles, np.arange(11) / 10, shape))
            off = math.log((seen.minutes[-1] - seen.minutes[k - 1]) / (hours.sum() * 60))
            squares, count = squares + off * off / 2, count + 0.5
    assert learnt["flow_spread"] == pytest.approx(min(max(math.sqrt(squares / count), 0.04), 0.5), abs=1.1e-4)


def test_lean_and_width_come_from_trials_that_count_as_one_a_run(
    learnt: dict[str, Any], runs: list[Run], monkeypatch: pytest.MonkeyPatch
) -> None:
    """Three runs after the first, each tried at 0.6 and 0.8 of its litres by what those before it told."""
    asked: list[tuple[int, float]] = []

    def trial(known: str, run_text: str, share: float) -> float | None:
        asked.append((json.loads(known)["runs"], share))
        return {0.6: 1.5, 0.8: -0.5}[share] if len(asked) < 6 else None

    monkeypatch.setattr(stilllearn, "_trial", trial)
    told = stilllearn._lean_and_widen(runs)
    assert asked == [(1, 0.6), (1, 0.8), (2, 0.6), (2, 0.8), (3, 0.6), (3, 0.8)]
    offs = np.array([1.5, -0.5, 1.5, -0.5, 1.5])
    count = 2 + 2.5
    lean = offs.sum() / 2 / count
    assert told["lean"] == pytest.approx(lean, abs=6e-4)
    assert told["widen"] == pytest.approx(math.sqrt((2 * 1.0 + ((offs - lean) ** 2).sum() / 2) / count), abs=6e-4)
    # By the trials before each run an interval reaches 1.28, 1.31 and 1.30 standard errors from 0, 0.17 and 0.25: the
    # first two 1.5 fell outside, the third and each -0.5 within.
    assert (told["tried"], told["kept"]) == (5, 3)
    monkeypatch.setattr(stilllearn, "_trial", lambda *_: 40.0)
    told = stilllearn._lean_and_widen(runs)
    assert told == {"lean": 1.5, "widen": 3.0, "tried": 6, "kept": 0}, "no further, whatever the trials say"
    monkeypatch.setattr(stilllearn, "_trial", lambda *_: -40.0)
    assert stilllearn._lean_and_widen(runs)["lean"] == -1.5
    monkeypatch.setattr(stilllearn, "_trial", lambda *_: 0.0)
    assert stilllearn._lean_and_widen(runs)["widen"] == pytest.approx(max(math.sqrt(2 * 1.0 / 5), 0.6), abs=6e-4)


def test_a_trial_knows_at_most_the_five_runs_before_it(runs: list[Run], monkeypatch: pytest.MonkeyPatch) -> None:
    known: list[int] = []
    monkeypatch.setattr(stilllearn, "_trial", lambda text, *_: known.append(json.loads(text)["runs"]))
    stilllearn._lean_and_widen([*runs, *runs])
    assert known[::2] == [1, 2, 3, 4, 5, 5, 5]


def test_only_the_last_twelve_runs_with_five_readings_count(runs: list[Run], monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(stilllearn, "_lean_and_widen", lambda runs: {"lean": float(len(runs))})
    short, enough = (runs[0] | {"readings": runs[0]["readings"][:n]} for n in (4, 5))
    assert learn_prior([short])["runs"] == 0
    assert learn_prior([enough])["runs"] == 1
    assert learn_prior([runs[0] | {"charge": None}])["runs"] == 0
    many = [runs[0] | {"charge": {**runs[0]["charge"], "lpa_l": 10.0 + n / 10}} for n in range(14)]
    assert learn_prior(many)["runs"] == 12
    assert learn_prior(many) == learn_prior(many[2:]), "the earliest two are forgotten"
    assert learn_prior([short, *many[:1]])["lean"] == 1.0, "what does not count is not tried either"


def test_a_trial_forecasts_the_run_as_it_stood_and_says_how_late_the_cut_came(runs: list[Run]) -> None:
    """By hand: the run cut off where that share of the cut's litres had run off, and its error over one side."""
    from webapp.trade.cutdue import SIDE, foresee

    known, run = learn_prior(runs[:3]), runs[3] | {"cut_pct": 62.0}
    one = stilllearn._done(json.dumps(run, sort_keys=True))
    cut_l = stilllearn._cut_l(one.seen, 62.0)
    below = next(i for i, strength in enumerate(one.seen.strengths) if strength <= 62.0)
    assert cut_l == pytest.approx(np.interp(-62.0, [-x for x in one.seen.strengths[below - 1 : below + 1]],
                                            one.seen.litres[below - 1 : below + 1]))
    until = max(m for m, off in zip(one.seen.minutes, one.seen.litres, strict=True) if off <= 0.8 * cut_l)
    cut_off = run | {"readings": [r for r in run["readings"] if r["minutes"] <= until]}
    seen = foresee(cut_off, known, 62.0)
    at, soonest, latest = seen.litres
    off = cut_l - (seen.track.litres[-1] + at)
    wanted = off / ((latest - at if off > 0 else at - soonest) / SIDE)
    told = stilllearn._trial(json.dumps(known), json.dumps(run, sort_keys=True), 0.8)
    assert told == pytest.approx(wanted)
    assert stilllearn._trial(json.dumps(known), json.dumps(run | {"cut_pct": 5.0}, sort_keys=True), 0.8) is None
    assert stilllearn._trial(json.dumps(known), json.dumps(run | {"cut_pct": 96.0}, sort_keys=True), 0.8) is None
    usual = stilllearn._trial(json.dumps(known), json.dumps(runs[3], sort_keys=True), 0.8)
    assert usual == stilllearn._trial(json.dumps(known), json.dumps(runs[3] | {"cut_pct": 60.0}, sort_keys=True), 0.8)


def test_the_flow_of_now_is_the_middle_of_the_last_three_by_the_shape(done: list[Any]) -> None:
    seen, lpa = done[0].seen, done[0].lpa
    usual = prior_of(None, 3, 1.0)
    assert flow_now(seen, lpa, usual) == pytest.approx(float(np.median(seen.flows_l_h[-3:])) * seen.correction)
    half = usual._replace(flow_shape=[0.5] * 11)
    assert flow_now(seen, lpa, half) == pytest.approx(2 * flow_now(seen, lpa, usual))
    dipped = seen._replace(correction=1.2)
    assert flow_now(dipped, lpa, usual) == pytest.approx(1.2 * flow_now(seen, lpa, usual))


def test_without_a_flow_the_usual_one_is_taken_unless_dips_tell(done: list[Any]) -> None:
    seen, lpa = done[0].seen, done[0].lpa
    flowless = seen._replace(flows_l_h=[None] * len(seen.minutes))
    usual = prior_of(None, 3, 1.0)._replace(flow_l_h=7.5)
    assert flow_now(flowless, lpa, usual) == 7.5
    by_time = (seen.litres[-1] - seen.litres[0]) / (seen.minutes[-1] - seen.minutes[0]) * 60
    assert flow_now(flowless._replace(correction=1.2), lpa, usual) == pytest.approx(by_time)
    assert flow_now(flowless, lpa, prior_of(None, 3, 1.0)) == pytest.approx(by_time)
    still = flowless._replace(litres=[4.0] * len(seen.minutes), correction=1.2)
    assert flow_now(still, lpa, usual) == 7.5, "a still that stood tells no flow"
    at_once = flowless._replace(minutes=[9.0] * len(seen.minutes), correction=1.2)
    assert flow_now(at_once, lpa, usual) == 7.5
