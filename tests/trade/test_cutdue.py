"""When the next cut is due: on generated runs whose truth is known, and on the invented year's runs."""

import json
import math
import statistics
from itertools import pairwise
from typing import Any

import numpy as np
import pytest
from scipy.optimize import minimize

from tests.trade.still_runs import Run, demo_runs, falls, forecast_again, generated_run, seen_until
from webapp.trade import runfit
from webapp.trade.cutdue import WORDS, forecast_cut, make_ready
from webapp.trade.matrices import inverse
from webapp.trade.runtrack import middle, tidy, track
from webapp.trade.stilllearn import learn_prior
from webapp.trade.stillprior import prior_of

TARGET, STILL = 60.0, 5


def a_run(seed: int = 0, still: int = STILL) -> tuple[Run, float, float]:
    run, minute, litres = generated_run(seed, still)
    assert minute > 40
    return run, minute, litres


@pytest.fixture(scope="module")
def known() -> dict[str, Any]:
    return learn_prior([generated_run(seed, STILL)[0] for seed in range(1, 6)])


def with_readings(run: Run, **changes: Any) -> Run:
    """The run with what each reading says changed by functions of (place, reading)."""
    return run | {"readings": [r | {k: f(i, r) for k, f in changes.items()} for i, r in enumerate(run["readings"])]}


# Against what came.


def test_generated_runs_end_within_the_interval_as_often_as_it_says() -> None:
    runs = [("", f"S{still}", *generated_run(seed, still)) for still in (0, 13, 20) for seed in range(5)]
    given = [(a, b, run, TARGET, minute, litres) for a, b, run, minute, litres in runs if minute > 40]
    tried = [one for share in (0.6, 0.8) for one in forecast_again(given, share) if one.runs_before >= 2]
    due = [one for one in tried if one.state == "due"]
    assert len(due) >= 12
    assert statistics.mean(one.within for one in due) >= 0.75  # four in five, of few
    assert statistics.median(abs(one.off_min) for one in due) < 8


def test_the_invented_years_runs_forecast_again_with_the_last_third_hidden() -> None:
    # Their curves were invented for the demonstration, not distilled: this checks the mechanics.
    tried = forecast_again(demo_runs()[:8], 0.67)
    due = [one for one in tried if one.state == "due"]
    assert len(due) >= 6
    assert statistics.mean(one.within for one in due) >= 0.5
    assert statistics.median(abs(one.off_min) for one in due) < 20


def test_later_readings_narrow_the_interval(known: dict[str, Any]) -> None:
    run, minute, _ = a_run()
    widths = []
    for share in (0.5, 0.7, 0.9):
        found = forecast_cut(seen_until(run, share * minute), known, TARGET)
        assert found["state"] == "due"
        assert found["minutes"]["low"] <= found["minutes"]["at"] <= found["minutes"]["high"]
        assert found["collected_l"]["low"] <= found["collected_l"]["at"] <= found["collected_l"]["high"]
        widths.append(found["minutes"]["high"] - found["minutes"]["low"])
    assert falls(widths)


def test_the_stills_past_narrows_the_interval(known: dict[str, Any]) -> None:
    run, minute, _ = a_run()
    seen = seen_until(run, 0.85 * minute)
    alone, informed = (forecast_cut(seen, prior, TARGET) for prior in (None, known))
    assert informed["state"] == alone["state"] == "due"
    assert informed["collected_l"]["high"] - informed["collected_l"]["low"] < (
        alone["collected_l"]["high"] - alone["collected_l"]["low"]
    )


def test_the_curve_runs_from_the_last_reading_past_the_cut(known: dict[str, Any]) -> None:
    run, minute, _ = a_run()
    seen = seen_until(run, 0.7 * minute)
    found = forecast_cut(seen, known, TARGET)
    curve = np.array(found["curve"])
    assert curve[0, 0] == seen["readings"][-1]["minutes"]
    assert falls(list(-curve[:, 0])) and falls(list(curve[:, 1])) and falls(list(-curve[:, 3]))
    assert curve[-1, 0] > found["minutes"]["at"]
    assert np.interp(found["minutes"]["at"], curve[:, 0], curve[:, 1]) == pytest.approx(TARGET, abs=0.2)
    assert np.interp(found["collected_l"]["at"], curve[:, 2], curve[:, 1]) == pytest.approx(TARGET, abs=0.2)
    # Pure alcohol along the curve is the integral of strength over litres.
    gained = np.trapezoid(curve[:, 1] / 100, curve[:, 2])
    assert curve[-1, 3] - curve[0, 3] == pytest.approx(gained, rel=2e-3)


def test_a_lower_strength_comes_later(known: dict[str, Any]) -> None:
    run, minute, _ = a_run()
    seen = seen_until(run, 0.6 * minute)
    found = [forecast_cut(seen, known, target) for target in (66, 62, 58, 54)]
    assert all(one["state"] == "due" for one in found)
    assert falls([-one["minutes"]["at"] for one in found])


def test_the_average_in_the_receiver(known: dict[str, Any]) -> None:
    run, minute, _ = a_run()
    seen = seen_until(run, 0.9 * minute)
    whole, late = (forecast_cut(seen | {"receiver_since": since}, known, TARGET) for since in (0, 0.5 * minute))
    readings = [(r["minutes"], r["strength_pct"]) for r in run["readings"] if r["minutes"] <= minute]
    # The stream only falls, so what comes later is weaker, and an average lies between the ends.
    assert TARGET < late["strength_average_pct"] < whole["strength_average_pct"] < readings[0][1] + 1
    times, strengths = zip(*readings, strict=True)
    by_time = np.interp(np.linspace(0, minute, 500), times, strengths).mean()
    assert whole["strength_average_pct"] == pytest.approx(by_time, abs=1.0)


# What may go wrong with readings.


@pytest.mark.parametrize(("place", "typed"), [(1, 45.2), (3, 96.0), (4, 37.7), (2, 93.4)])
def test_one_slip_does_not_move_the_forecast(known: dict[str, Any], place: int, typed: float) -> None:
    run, minute, _ = a_run()
    seen = seen_until(run, 0.8 * minute)
    assert len(seen["readings"]) >= 6
    slipped = with_readings(seen, strength_pct=lambda i, r: typed if i == place else r["strength_pct"])
    found, right = forecast_cut(slipped, known, TARGET), forecast_cut(seen, known, TARGET)
    assert found["left_out"] == [place] and right["left_out"] == []
    assert found["minutes"]["at"] == pytest.approx(right["minutes"]["at"], abs=3)


def test_a_last_reading_far_below_is_not_taken_for_the_cut(known: dict[str, Any]) -> None:
    run, minute, _ = a_run()
    seen = seen_until(run, 0.7 * minute)
    last = len(seen["readings"]) - 1
    slipped = with_readings(seen, strength_pct=lambda i, r: 27.5 if i == last else r["strength_pct"])
    found = forecast_cut(slipped, known, TARGET)
    assert found["state"] == "due" and found["left_out"] == [last]


def test_which_of_two_readings_is_the_slip() -> None:
    for strengths, slips in (
        ([79, 78, 77, 75], []),
        ([79, 78, 97, 75], [2]),
        ([79, 78, 57, 75], [2]),
        ([70, 79, 78, 77], [0]),  # the first drops, before the column is warm
        ([79, 85, 77, 76], [1]),
        ([79, 58, 77, 85, 75, 74], [1, 3]),
        ([79, 78, 76, 77.5], []),  # within what a glass may scatter
    ):
        assert tidy(strengths)[1] == slips


def test_a_stream_that_rises_for_good_begins_anew(known: dict[str, Any]) -> None:
    assert tidy([70, 66, 62, 58, 76, 73, 70])[2] == 4
    run, minute, _ = a_run()
    seen = seen_until(run, 0.9 * minute)
    raised = with_readings(seen, strength_pct=lambda i, r: min(r["strength_pct"] + (14 if i > 2 else 0), 93.0))
    found = forecast_cut(raised, known, TARGET)
    assert found["state"] != "due" or found["changed_at"] == seen["readings"][3]["minutes"]
    # Two readings since then tell little: what came before still counts, and the interval says so.
    few, plain = (forecast_cut(one | {"readings": one["readings"][:5]}, known, TARGET) for one in (raised, seen))
    assert few["state"] == plain["state"] == "due"
    assert few["changed_at"] == seen["readings"][3]["minutes"]
    assert few["minutes"]["high"] - few["minutes"]["low"] > plain["minutes"]["high"] - plain["minutes"]["low"]


def test_dips_correct_a_flow_that_is_read_wrong(known: dict[str, Any]) -> None:
    run, minute, litres = a_run()
    seen = seen_until(run, 0.8 * minute)
    wrong = with_readings(seen, flow_l_h=lambda i, r: r["flow_l_h"] * 0.75)
    right, blind = (forecast_cut(given, known, TARGET) for given in (seen, wrong))
    times = [0.0] + [reading["minutes"] for reading in seen["readings"]]
    flows = [seen["readings"][0]["flow_l_h"]] + [reading["flow_l_h"] for reading in seen["readings"]]
    dipped = float(np.trapezoid(flows, times)) / 60
    dip = {"minutes": times[-1], "volume_l": dipped}
    helped = forecast_cut(wrong | {"collected": [dip]}, known, TARGET)
    assert helped["collected_l"]["at"] == pytest.approx(right["collected_l"]["at"], rel=0.02)
    assert helped["minutes"]["at"] == pytest.approx(right["minutes"]["at"], abs=4)
    assert abs(blind["collected_l"]["at"] - litres) > abs(helped["collected_l"]["at"] - litres)


def test_a_dip_that_shows_less_than_one_before_is_left_out() -> None:
    run, minute, _ = a_run()
    seen = seen_until(run, 0.8 * minute)
    good = [{"minutes": 30.0, "volume_l": 4.0}, {"minutes": 60.0, "volume_l": 9.0}]
    shown = [track(seen | {"collected": dips}, None) for dips in (good, [*good, {"minutes": 75.0, "volume_l": 3.0}])]
    assert shown[0] is not None and shown[0] == shown[1]
    assert all(b >= a for a, b in pairwise(shown[0].litres))


def test_without_a_flow_the_stills_usual_is_taken(known: dict[str, Any]) -> None:
    run, minute, _ = a_run()
    seen = with_readings(seen_until(run, 0.8 * minute), flow_l_h=lambda i, r: None)
    assert forecast_cut(seen, None, TARGET)["why"] == "no_flow"
    found = forecast_cut(seen, known, TARGET)
    assert found["state"] == "due"
    assert found["minutes"]["at"] == pytest.approx(minute, abs=0.3 * minute)


# What it does not say.


def test_too_little_to_say_and_why() -> None:
    run, minute, _ = generated_run(0, 2)
    far = seen_until(run, 0.5 * minute)
    run, minute, _ = a_run()
    seen = seen_until(run, 0.6 * minute)
    for given, target, why in (
        (seen | {"charge": None}, TARGET, "no_charge"),
        (seen | {"charge": {"volume_l": 100, "lpa_l": 0}}, TARGET, "no_charge"),
        (seen | {"charge": {"volume_l": 10, "lpa_l": 20}}, TARGET, "no_charge"),
        (seen | {"readings": []}, TARGET, "few_readings"),
        (seen | {"readings": seen["readings"][:2]}, TARGET, "few_readings"),
        (seen, 3.0, "out_of_range"),
        (seen, 95.0, "out_of_range"),
        (seen, float("nan"), "out_of_range"),
        (with_readings(seen, strength_pct=lambda i, r: float("nan")), TARGET, "odd_readings"),
        (with_readings(seen, minutes=lambda i, r: -r["minutes"]), TARGET, "odd_readings"),
        (far | {"still": {"plates": None}}, 50.0, "wide"),
    ):
        found = forecast_cut(given, None, target)
        assert (found["state"], found["why"]) == ("too_little", why)
        assert found["words"].endswith(".") and "{" not in found["words"]


def test_a_stream_below_the_target_has_passed(known: dict[str, Any]) -> None:
    run, minute, _ = a_run()
    found = forecast_cut(seen_until(run, minute + 25), known, TARGET)
    assert found == {"state": "past", "words": "The stream has passed 60 % vol."}


def test_the_words_speak_of_strength_alone() -> None:
    for words in WORDS.values():
        for word in ("methanol", "safe", "heads", "pure", "congener", "quality"):
            assert word not in words.lower()


# How it is worked out.


def _problem() -> runfit.Given:
    run, minute, _ = a_run()
    ready = make_ready(seen_until(run, 0.8 * minute), None)
    assert not isinstance(ready, str)
    seen, charged = ready
    prior = prior_of(None, run["still"]["plates"], middle(seen.root_flows)).still
    return runfit.Given(charged, seen, prior, inverse(prior.spread), [runfit.READ_PCT**2] * len(seen.minutes))


def test_the_fit_is_the_least_that_a_library_finds() -> None:
    given = _problem()

    def cost(logs: Any) -> float:
        there = [float(value) for value in logs]
        misses = runfit._misses(given, there)
        # Slopes do not enter the cost.
        seen = runfit._filtered(given, misses, [misses] * runfit.LOGS)
        return runfit._cost(seen, given.prior, given.wanted, there)

    fit = runfit.fit_run(given.charged, given.seen, given.prior)
    best = minimize(cost, fit.logs, method="Nelder-Mead", options={"xatol": 1e-4, "fatol": 1e-7, "maxiter": 4000})
    assert fit.slips == []
    assert cost(fit.logs) == pytest.approx(best.fun, abs=0.02)
    sizes = np.sqrt(np.diag(fit.covariance))
    assert np.all(np.abs(np.array(fit.logs) - best.x) < 0.25 * sizes)


def test_the_filter_is_the_joint_normal_distribution() -> None:
    # The same drift written out as one covariance of all readings: exp(-litres apart / fade), plus the scatter.
    given = _problem()
    misses = runfit._misses(given, given.prior.mean)
    columns = runfit._slopes(given, given.prior.mean, misses)
    found = runfit._filtered(given, misses, columns)
    litres, drift = np.array(given.seen.litres), given.prior.drift_pct**2
    apart = np.abs(litres[:, None] - litres[None, :]) / given.charged.fade_l
    slow = drift * np.exp(-apart)
    weights = np.linalg.inv(slow + np.diag(given.noise))
    assert np.dot(found.misses, found.misses) == pytest.approx(misses @ weights @ misses)
    assert np.dot(found.slopes[1], found.misses) == pytest.approx(np.array(columns[1]) @ weights @ misses)
    assert found.drift_pct == pytest.approx(slow[-1] @ weights @ misses)
    assert found.drift_slopes[2] == pytest.approx(slow[-1] @ weights @ np.array(columns[2]))
    assert found.drift_var == pytest.approx(drift - slow[-1] @ weights @ slow[-1])


def test_where_heat_or_water_were_changed_the_drift_may_leap() -> None:
    given = _problem()
    changed = given._replace(seen=given.seen._replace(since=3))
    misses = [0.0, 0.0, 0.0, *[4.0] * (len(given.noise) - 3)]
    plain, leapt = (runfit._filtered(one, misses, [misses] * runfit.LOGS) for one in (given, changed))
    assert abs(leapt.sizes[3]) < 0.7 * abs(plain.sizes[3])
    assert leapt.drift_pct > plain.drift_pct


def test_what_flows_back_goes_with_the_root_of_the_flow() -> None:
    # Half of what moves a flow is taken for heat: twice the flow, 1 / sqrt(2) of the reflux; within bounds.
    logs = [0.0, math.log(6.0), 0.0, 0.0, 0.0]
    assert runfit.reflux_at(logs, 3.0) == pytest.approx(2.0)
    assert runfit.reflux_at(logs, 3.0 * math.sqrt(2)) == pytest.approx(2.0 / math.sqrt(2))
    assert (runfit.reflux_at(logs, 1e3), runfit.reflux_at([0.0, 6.0], 0.05)) == (0.02, 50.0)


# What past runs teach.


def test_what_is_learnt_is_small_and_always_the_same(known: dict[str, Any]) -> None:
    again = learn_prior([generated_run(seed, STILL)[0] for seed in range(1, 6)])
    assert again == known == json.loads(json.dumps(known))
    assert known["runs"] == 5
    assert len(json.dumps(known)) < 700
    assert np.all(np.linalg.eigvalsh(np.array(known["spread"])) > 0)


def test_runs_that_tell_nothing_teach_nothing() -> None:
    run, _, _ = a_run()
    flowless, spilt = with_readings(run, flow_l_h=lambda i, r: None), run | {"charge": {"volume_l": 1, "lpa_l": 9}}
    short = [run | {"readings": run["readings"][:count]} for count in (0, 3)]
    nothing = [run | {"charge": None}, *short, flowless, spilt]
    empty = learn_prior([])
    assert empty["runs"] == 0 and empty["flow_l_h"] is None and empty["tried"] == 0
    backward, lost = (with_readings(run, **{key: f}) for key, f in (
        ("minutes", lambda i, r: 100.0 - r["minutes"]), ("strength_pct", lambda i, r: float("nan"))))
    assert learn_prior([*nothing, backward, lost])["runs"] == 0


def test_a_still_that_departs_from_the_model_teaches_its_habit_and_wider_intervals() -> None:
    def bent(run: Run) -> Run:
        # A still that reads higher than any column of constant reflux late in its hearts.
        whole = run["readings"][-1]["minutes"]

        def more(minute: float) -> float:
            return 8 * math.exp(-(((minute / whole - 0.6) / 0.12) ** 2))

        return with_readings(run, strength_pct=lambda i, r: min(r["strength_pct"] + more(r["minutes"]), 96))

    plain = [generated_run(seed, STILL)[0] for seed in range(5)]
    straight, curved = learn_prior(plain), learn_prior([bent(run) for run in plain])
    apart = [there - here for here, there in zip(straight["habit_pct"], curved["habit_pct"], strict=True)]
    assert max(apart) > 1.0
    assert curved["drift_pct"] * curved["widen"] > straight["drift_pct"] * straight["widen"]


def test_a_slip_is_told_from_four_readings_on(known: dict[str, Any]) -> None:
    run, _, _ = a_run()
    four = run | {"readings": [dict(reading) for reading in run["readings"][:4]]}
    four["readings"][-1]["strength_pct"] = 27.5
    assert forecast_cut(four, known, TARGET)["left_out"] == [3]
    three = four | {"readings": [four["readings"][i] for i in (0, 1, 3)]}
    assert forecast_cut(three, known, TARGET)["state"] == "past", "of three nobody can tell: the last one counts"


def test_a_cut_that_the_stream_ahead_does_not_reach_is_far(
    known: dict[str, Any], monkeypatch: pytest.MonkeyPatch
) -> None:
    run, minute, _ = a_run()
    monkeypatch.setattr("webapp.trade.cutdue._crossing", lambda *_: None)
    found = forecast_cut(seen_until(run, 0.7 * minute), known, TARGET)
    assert found == {
        "state": "too_little", "why": "far",
        "words": "Too little to say: the cut is still far off. Another reading will help.",
    }
