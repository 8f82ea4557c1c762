"""What casks lose: worked examples by hand, SciPy for the posterior, and warehouses whose truth is known."""

import json
import math
import statistics
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from scipy import integrate, stats

from tests.trade.cask_truths import Cask, warehouse
from tests.trade.gauge_gaps import Followed, house
from webapp.trade import caskloss, maturing
from webapp.trade.caskloss import judge_loss, loss_rates, share_lost, usual_of, year_share
from webapp.trade.errors import OutOfDomain
from webapp.trade.maturing import forecast_cask, lacks_of

DEMO = json.loads((Path(__file__).parents[2] / "demo_data" / "casks.json").read_text(encoding="utf-8"))


def gauge(years: float, lpa: float, strength: float = 60.0, drawn: float = 0.0) -> dict[str, float]:
    return {"years": years, "lpa": lpa, "strength_pct": strength, "drawn_l": drawn}


def test_loss_a_year_by_hand() -> None:
    """120 L, two years at 5 % each: 108.3 L. A litre drawn as a sample is no loss; two poured in are none either."""
    left = 120 * 0.95 * 0.95
    assert year_share(loss_rates([gauge(0, 120), gauge(2, left)])["last"]["lpa_pct_year"]) == pytest.approx(5.0)
    drawn = loss_rates([gauge(0, 120), gauge(2, left - 1, drawn=1.0)])["last"]
    assert year_share(drawn["lpa_pct_year"]) == pytest.approx(5.0)
    poured = loss_rates([gauge(0, 120), gauge(1, 122 * 0.97, drawn=-2.0)])["last"]
    assert year_share(poured["lpa_pct_year"]) == pytest.approx(3.0)
    drifted = loss_rates([gauge(0, 120, 60), gauge(1, 117, 59)])["last"]
    assert year_share(drifted["volume_pct_year"]) == pytest.approx((200 - 117 / 0.59) / 2)
    sampled = loss_rates([gauge(0, 120, 60), gauge(1, 114, 57, drawn=1.14)])["last"]
    assert sampled["volume_pct_year"] == pytest.approx(-math.log(202 / 200) * 100), "2 L at 57 % were drawn"
    assert drifted["strength_year"] == pytest.approx(-1.0)


def test_since_the_last_gauge_and_since_the_fill() -> None:
    rates = loss_rates([gauge(0, 120), gauge(1, 114), gauge(2, 111.72)])
    assert year_share(rates["last"]["lpa_pct_year"]) == pytest.approx(2.0)
    assert rates["fill"]["lpa_pct_year"] == pytest.approx(-math.log(0.931) * 50)
    assert loss_rates([gauge(0, 120), gauge(0.1, 119.9)]) == {"last": None, "fill": None}
    near = loss_rates([gauge(0, 120), gauge(1, 114), gauge(1.05, 114)])  # three weeks make no rate
    assert near["last"]["years"] == pytest.approx(1.05)


def test_rates_are_added_over_years_and_say_the_same_whatever_the_gap() -> None:
    """A cask that loses 6 % each year is found to lose 6 % a year from gauges one, two, three or five years apart."""
    for gap in (0.5, 1, 2, 3, 5):
        rate = loss_rates([gauge(0, 120), gauge(gap, 120 * 0.94**gap)])["last"]["lpa_pct_year"]
        assert year_share(rate) == pytest.approx(6.0)
        assert share_lost(120, 120 * 0.94**gap, gap) == pytest.approx(6.0)
        told = forecast_cask([gauge(0, 120), gauge(gap, 120 * 0.94**gap)], {"middle": rate, "spread": 1.0}, 5)
        assert told["lpa"]["at"] == pytest.approx(120 * 0.94 ** (gap + 5))
    assert share_lost(120, 0, 2) == 100 and share_lost(100, 103, 1) == pytest.approx(-3)


def test_a_top_up_above_what_is_gauged_is_no_end_of_the_sum() -> None:
    """More poured in than found: a slip of the pen, or a leak. A figure comes out, and a high one."""
    rate = loss_rates([gauge(0, 20), gauge(1, 60, drawn=-80.0)])["last"]
    assert year_share(rate["lpa_pct_year"]) == pytest.approx(40.0)
    assert forecast_cask([gauge(0, 20), gauge(1, 60, drawn=-80.0)], {"middle": 3.0, "spread": 1.0}, 1)["lpa"]["at"] > 0


def test_a_group_counts_by_its_size() -> None:
    """Two groups by hand: middle and spread go n / (n + 4) of the way to the group's own."""
    usual = usual_of([[2.0, 3.0, 4.0, 3.0], []], 200)
    assert usual["middle"] == pytest.approx(0.5 * 3.0 + 0.5 * 3.0)
    alone = usual_of([[6.0]], 200)
    assert alone["middle"] == pytest.approx(0.2 * 6 + 0.8 * 3.0)
    nested = usual_of([[2.0] * 12, [5.0] * 4], 200)
    assert nested["middle"] == pytest.approx(0.5 * 5 + 0.5 * (0.75 * 2 + 0.25 * 3))
    many = usual_of([[2.0 + 0.1 * n for n in range(-10, 11)]], 200)
    assert many["middle"] == pytest.approx(2.0, abs=0.2)
    assert usual_of([], 50)["middle"] > usual_of([], 225)["middle"]


def test_one_leaker_among_neighbours_counts_little() -> None:
    healthy = usual_of([[2.6, 2.8, 3.0, 3.1, 3.2, 2.9]], 225)
    leaking = usual_of([[2.6, 2.8, 3.0, 3.1, 3.2, 19.0]], 225)
    assert leaking["middle"] - healthy["middle"] < 0.2
    assert leaking["most"] < 8


def test_borrowing_beats_the_group_alone() -> None:
    """The classical shrinkage: on small groups of known middles the pooled guess is nearer than the bare median."""
    chance = np.random.default_rng(3)
    pooled, bare = [], []
    for _ in range(400):
        middles = chance.normal(3.0, 0.6, 4)
        groups = [list(chance.normal(m, 1.0, size)) for m, size in zip(middles, (2, 3, 5, 8), strict=True)]
        whole = [rate for group in groups for rate in group]
        for middle, group in zip(middles, groups, strict=True):
            pooled.append(usual_of([whole, group], 200)["middle"] - middle)
            bare.append(statistics.median(group) - middle)
    assert np.sqrt(np.mean(np.square(pooled))) < 0.8 * np.sqrt(np.mean(np.square(bare)))


def test_leak_slip_other_cask_and_usual() -> None:
    assert judge_loss(3.0, 2.5, 1.0, 5.0, 60.0, 59.5) == "usual"
    assert judge_loss(19.0, 18.0, 1.0, 5.0, 59.4, 58.8) == "leak"  # weight falls, strength as ever
    assert judge_loss(8.9, 3.1, 1.0, 5.0, 61.3, 57.5) == "slip"  # a raw glass taken for the truth: weight as ever
    assert judge_loss(-6.0, 3.0, 1.0, 5.0, 60.0, 65.7) == "slip"
    assert judge_loss(19.0, 14.0, 1.0, 5.0, 60.0, 52.0) == "other_cask"
    assert judge_loss(-6.0, -6.0, 1.0, 5.0, 60.0, 60.0) == "gain"
    assert judge_loss(5.5, 5.5, 0.2, 5.0, 60.0, 60.0) == "usual"  # two gauges near each other prove little


def test_posterior_is_that_of_the_integral() -> None:
    """Prior times likelihood integrated by scipy.integrate, no formula of ours."""
    gauges, usual = [gauge(0, 120), gauge(2, 112.8)], {"middle": 2.5, "spread": 0.8}
    told = forecast_cask(gauges, usual, 1.0)
    own = -math.log(112.8 / 120) * 100 / 2
    a_year = maturing.YEAR_SD_PCT**2 + (maturing.YEAR_SHARE * 2.5) ** 2
    sd = math.sqrt(2 * maturing.GAUGE_SD_PCT**2 / 4 + a_year / 2)

    def density(rate: float) -> float:
        return float(stats.norm.pdf(rate, 2.5, 0.8) * stats.norm.pdf(own, rate, sd))

    whole = integrate.quad(density, -5, 12)[0]
    assert told["loss_pct_year"] == pytest.approx(integrate.quad(lambda r: r * density(r), -5, 12)[0] / whole, rel=1e-6)
    assert told["lpa"]["at"] == pytest.approx(112.8 * math.exp(-told["loss_pct_year"] / 100))
    assert stats.norm.cdf(caskloss.Z_80) == pytest.approx(0.9)


def test_many_years_outweigh_the_neighbours_and_none_leans_on_them() -> None:
    usual = {"middle": 2.5, "spread": 0.8}
    assert forecast_cask([gauge(0, 120)], usual, 1)["loss_pct_year"] == 2.5
    long = [gauge(year, 120 * 0.95**year) for year in range(9)]
    assert forecast_cask(long, usual, 1)["loss_pct_year"] == pytest.approx(-math.log(0.95) * 100, abs=0.3)


def test_new_wood_drinks_once() -> None:
    drunk = [gauge(0, 120), gauge(1, 113), gauge(2, 110.2), gauge(3, 107.5)]
    usual = {"middle": 2.5, "spread": 1.0}
    assert forecast_cask(drunk, usual, 1, is_new_wood=True)["loss_pct_year"] == pytest.approx(2.5, abs=0.1)
    assert forecast_cask(drunk, usual, 1)["loss_pct_year"] > 2.9


def test_ready_by_the_rule() -> None:
    rule = {"age_years": 2, "strength_low": 55, "score_low": 7, "loss_high": 6}
    cask = {"age_years": 3.1, "strength_pct": 59.0, "score": 7.5, "loss_pct_year": 3.0}
    assert lacks_of(rule, cask) == []
    assert lacks_of(rule, cask | {"age_years": 1.9}) == ["too_young"]  # fruit brandy: two years at least, no source
    assert lacks_of(rule, {"age_years": 3, "strength_pct": None, "score": None, "loss_pct_year": None}) == [
        "not_gauged", "not_tasted"]
    assert lacks_of({"strength_high": 58}, cask) == ["too_strong"]
    assert lacks_of({}, {}) == []


def test_refusals() -> None:
    for gauges in ([gauge(1, 100), gauge(0, 90)], [gauge(0, 0)], [gauge(0, 100, 0)], [gauge(0, float("nan"))]):
        with pytest.raises(OutOfDomain):
            loss_rates(gauges)
    with pytest.raises(OutOfDomain):
        forecast_cask([], {"middle": 3, "spread": 1}, 1)
    with pytest.raises(OutOfDomain):
        forecast_cask([gauge(0, 100)], {"middle": 3, "spread": 1}, 80)


def told_of(casks: list[Cask], ahead: float) -> list[dict[str, Any]]:
    """Every cask forecast with what the others of its warehouse lose, against what truly stood there."""
    rates = [(cask, rate["lpa_pct_year"]) for cask in casks if (rate := loss_rates(cask.gauges)["fill"])]
    drifts = [(cask, rate["strength_year"]) for cask in casks if (rate := loss_rates(cask.gauges)["fill"])]
    found = []
    for cask in casks:
        others = [(one, rate) for one, rate in rates if one is not cask]
        groups = [
            [rate for one, rate in others if one.capacity_l == cask.capacity_l],
            [rate for one, rate in others if one.group == cask.group],
        ]
        drift = statistics.median(rate for one, rate in drifts if one is not cask and one.group == cask.group)
        told = forecast_cask(cask.gauges, usual_of(groups, cask.capacity_l), ahead, drift_year=drift)
        at, low, high = (told["lpa"][name] for name in ("at", "low", "high"))
        strength = told["strength_pct"]
        found.append({
            "followed": len(cask.gauges) - 1, "lpa_off": (at / cask.later["lpa"] - 1) * 100,
            "lpa_held": low <= cask.later["lpa"] <= high,
            "strength_off": strength["at"] - cask.later["strength_pct"],
            "strength_held": strength["low"] <= cask.later["strength_pct"] <= strength["high"],
        })
    return found


def test_intervals_hold_about_four_times_in_five() -> None:
    told = [one for seed in range(6) for one in told_of(warehouse(seed), 2.0)]
    assert 0.72 < statistics.mean(one["lpa_held"] for one in told) < 0.92
    assert 0.72 < statistics.mean(one["strength_held"] for one in told) < 0.95
    assert abs(statistics.mean(one["lpa_off"] for one in told)) < 0.4


def demo_year() -> list[dict[str, float]]:
    """The regauge of May 2026 of each cask forecast from its fill and May 2025."""
    from webapp.trade.alcoholometry import litres_from_mass

    def lpa(net: float, strength: float) -> float:
        return float(litres_from_mass(net, strength)) * strength / 100

    past, later = {}, {}
    for cask in DEMO:
        fill, lines = cask.get("fill"), cask.get("regauges", [])
        if not fill or len(lines) < 2:
            continue
        year = [int(on[:4]) + (int(on[5:7]) - 1) / 12 + int(on[8:]) / 365 for on in
                (fill["on"], lines[0]["on"], lines[1]["on"])]
        made = [gauge(year[0], lpa(fill["net_kg"], fill["strength_pct"]), fill["strength_pct"])]
        made += [gauge(at, lpa(one["gross_kg"] - cask["tare_kg"], one["strength_pct"]), one["strength_pct"])
                 for at, one in zip(year[1:], lines, strict=True)]
        past[cask["base"]], later[cask["base"]] = (cask, made[:2]), made[2]
    found = []
    for base, (cask, gauges) in past.items():
        mine = loss_rates(gauges)
        rates = {other: rate["lpa_pct_year"] for other, (_, some) in past.items()
                 if other != base and (rate := loss_rates(some)["fill"])}
        same = [rate for other, rate in rates.items() if past[other][0]["size_class"] == cask["size_class"]]
        area = [rates[other] for other in rates if past[other][0]["size_class"] == cask["size_class"]
                and past[other][0]["place"][:4] == cask["place"][:4]]
        drift = statistics.median(rate["strength_year"] for other, (one, some) in past.items() if other != base
                                  and one["place"][:4] == cask["place"][:4] and (rate := loss_rates(some)["fill"]))
        ahead = later[base]["years"] - gauges[-1]["years"]
        told = forecast_cask(gauges, usual_of([same, area], cask["capacity_l"]), ahead, drift_year=drift)
        assert mine["fill"] or len(gauges) < 2
        found.append({
            "base": base, "lpa_off": (told["lpa"]["at"] / later[base]["lpa"] - 1) * 100,
            "lpa_held": told["lpa"]["low"] <= later[base]["lpa"] <= told["lpa"]["high"],
            "strength_off": told["strength_pct"]["at"] - later[base]["strength_pct"],
            "strength_held": told["strength_pct"]["low"] <= later[base]["strength_pct"] <= told["strength_pct"]["high"],
        })
    return found


def test_the_invented_year_of_regauges_is_forecast_but_for_the_leak() -> None:
    """Mechanics only: the figures are invented. C031 leaked, which no forecast may foresee; it must stand out."""
    told = demo_year()
    assert len(told) > 35
    outside = [one["base"] for one in told if not one["lpa_held"]]
    assert "C031" in outside and len(outside) <= 0.3 * len(told)
    assert statistics.median(abs(one["lpa_off"]) for one in told) < 1.0
    assert statistics.median(abs(one["strength_off"]) for one in told) < 0.3


@pytest.mark.bench
def test_bench_of_the_forecast(capsys: pytest.CaptureFixture[str]) -> None:
    """Print the back-test: bias and coverage by years followed, and the invented year."""
    with capsys.disabled():
        print("\nforecast of casks: made warehouses (40 x 60 casks) and the invented year; 80 % intervals")
        print("| casks | years followed | years ahead | forecasts | alcohol off, % | held | strength off | held |")
        print("|---|---|---|---|---|---|---|---|")
        for ahead in (1.0, 2.0, 5.0):
            told = [one for seed in range(60) for one in told_of(warehouse(100 + seed, 40, ahead), ahead)]
            for followed in (1, 2, 3, 4):
                _print("made", followed, ahead, [one for one in told if one["followed"] == followed])
            assert 0.7 < statistics.mean(one["lpa_held"] for one in told) < 0.93
        _print("demo year", "1 to 4", 1.0, demo_year())


def told_by_gap(law: str, seeds: range, gap: float, ahead: float) -> list[tuple[float, bool, float, bool]]:
    """Return of each cask by how much the forecast is off [%] and whether it held: by its own gauges and those of its
    house, then as if it had just been filled, by its house alone.
    """
    found = []
    for seed in seeds:
        casks = house(law, seed, gap, ahead)
        rates = [loss_rates(one.gauges)["fill"]["lpa_pct_year"] for one in casks]
        for cask in casks:
            usual = usual_of(_groups(cask, casks, rates), cask.size_l)
            line: list[Any] = []
            for gauges in (cask.gauges, cask.gauges[-1:]):
                told = forecast_cask(gauges, usual, ahead)["lpa"]
                line += [(told["at"] / cask.later_lpa - 1) * 100, told["low"] <= cask.later_lpa <= told["high"]]
            found.append(tuple(line))
    return found


def _groups(cask: Followed, casks: list[Followed], rates: list[float]) -> list[list[float]]:
    others = [(one, rate) for one, rate in zip(casks, rates, strict=True) if one is not cask and
              one.size_l == cask.size_l]
    same = [rate for _, rate in others]
    area = [rate for one, rate in others if one.place == cask.place]
    return [same, same, area, area]


@pytest.mark.parametrize("gap", [1.0, 2.0, 3.0, 5.0])
def test_what_casks_like_one_lose_is_foreseen_alike_whatever_the_gap_between_gauges(gap: float) -> None:
    """Five years ahead a simple share of the years was 4 to 6 % off here, and its interval held in 54 %."""
    told = told_by_gap("even", range(40, 46), gap, 5.0)
    assert abs(statistics.mean(one[2] for one in told)) < 1.0
    assert statistics.mean(one[3] for one in told) > 0.74 and statistics.mean(one[1] for one in told) > 0.74


@pytest.mark.bench
def test_bench_by_gap_between_gauges(capsys: pytest.CaptureFixture[str]) -> None:
    """Print error and interval kept by the gap between gauges, for three laws of loss; `litres` was not tuned on."""
    with capsys.disabled():
        print("\n| law | gap, years | ahead | casks | off, %, mean and median | held | as just filled: off | held |")
        print("|---|---|---|---|---|---|---|---|")
        for law in ("even", "seasons", "litres"):
            for gap in (1.0, 2.0, 3.0, 5.0):
                for ahead in (1.0, 2.0, 5.0):
                    told = told_by_gap(law, range(500, 520), gap, ahead)
                    off, new = ([one[n] for one in told] for n in (0, 2))
                    held, new_held = (statistics.mean(one[n] for one in told) for n in (1, 3))
                    print(f"| {law} | {gap:g} | {ahead:g} | {len(told)} | {statistics.mean(off):+.1f}, "
                          f"{statistics.median(map(abs, off)):.1f} | {held:.0%} | {statistics.mean(new):+.1f} | "
                          f"{new_held:.0%} |")


def _print(name: str, followed: Any, ahead: float, some: list[dict[str, Any]]) -> None:
    off, strength = (statistics.mean(one[key] for one in some) for key in ("lpa_off", "strength_off"))
    held, strength_held = (statistics.mean(one[key] for one in some) for key in ("lpa_held", "strength_held"))
    print(f"| {name} | {followed} | {ahead:g} | {len(some)} | {off:+.2f} | {held:.0%} | {strength:+.2f} | "
          f"{strength_held:.0%} |")


def test_a_strength_is_never_foreseen_below_one_nor_an_interval_outside_the_scale() -> None:
    weak = forecast_cask([gauge(0, 100, 40)], {"middle": 3.0, "spread": 1.0}, 20, drift_year=-5)
    assert (weak["strength_pct"]["at"], weak["strength_pct"]["low"]) == (1.0, 0.0)
    assert weak["volume_l"]["at"] == pytest.approx(weak["lpa"]["at"] * 100)
    strong = forecast_cask([gauge(0, 100, 95)], {"middle": 3.0, "spread": 1.0}, 20, drift_year=5)
    assert (strong["strength_pct"]["at"], strong["strength_pct"]["high"]) == (100.0, 100.0)


def test_by_the_rule_what_just_reaches_it_is_ready_and_what_just_misses_it_is_not() -> None:
    rule = {"age_years": 3.0, "strength_low": 50.0, "strength_high": 60.0, "score_low": 6.0, "loss_high": 4.0}
    just = {"age_years": 3.0, "strength_pct": 50.0, "score": 6.0, "loss_pct_year": 4.0}
    assert lacks_of(rule, just) == [] == lacks_of(rule, just | {"strength_pct": 60.0})
    for name, value, lack in (
        ("age_years", 2.999, "too_young"), ("age_years", None, "too_young"), ("strength_pct", 49.9, "too_weak"),
        ("strength_pct", 60.1, "too_strong"), ("strength_pct", None, "not_gauged"), ("score", 5.9, "score_low"),
        ("score", None, "not_tasted"), ("loss_pct_year", 4.1, "loses_much"),
    ):
        assert lacks_of(rule, just | {name: value}) == [lack]
        assert lacks_of({}, just | {name: value}) == [], "no rule, no lack"
    assert lacks_of(rule, just | {"loss_pct_year": None}) == [], "what is not known is not held against it"
    for name in ("strength_low", "strength_high"):
        assert lacks_of({name: 55.0}, {}) == ["not_gauged"]
