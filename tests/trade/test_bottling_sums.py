"""The bottling line's sums against the published limits, the standard library's statistics, and plain counting."""

import statistics
from itertools import pairwise

import pytest

from tests.trade.reference_files import read_json
from tests.trade.refusal_words import words_of
from webapp.trade import alcoholometry, bottling
from webapp.trade.errors import OutOfDomain

LIMITS = read_json("legal_limits.json")


def test_us_fill_tolerances_of_27_cfr_19_356():
    # 27 CFR 19.356 as read in a stored copy (tests/trade/reference/legal_limits.json).
    for line in LIMITS["us_27cfr19"]["19.356"]["fill_plus_minus_pct"]:
        for size in (max(line["mL_from"], 5), line["mL_to"] or 3000):
            assert bottling.us_fill_allowed_pct(size) == line["pct"], size


def test_eu_fill_errors_of_the_directive():
    # Directive 76/211/EEC, Annex I, 2.4, from memory; 500 to 1000 mL: 15 mL stands in two public summaries as well.
    wanted = {50: 9.0, 70: 6.43, 100: 4.5, 200: 4.5, 350: 3.0, 500: 3.0, 700: 2.143, 1000: 1.5, 1750: 1.5}
    for size, pct in wanted.items():
        assert bottling.eu_fill_allowed_pct(size) == pytest.approx(pct, abs=0.005), size


def test_the_eu_error_never_jumps_up_with_size():
    # The directive's steps meet: a larger pack never may be off by less than a smaller one, in mL.
    errors = [bottling.eu_fill_allowed_pct(size) * size / 100 for size in range(5, 10_001)]
    assert all(b >= a - 1e-9 for a, b in pairwise(errors))


def test_strength_tolerance_of_both_laws():
    allowed = LIMITS["eu_label_tolerance"]["spirits_abv_plus_minus"]
    assert allowed == LIMITS["us_27cfr19"]["19.356"]["abv_plus_minus"] == bottling.STRENGTH_ALLOWED_PCT
    # 27 CFR 19.356 (c), its own example: a label of 40.0 holds from 39.7 to 40.3.
    example = LIMITS["us_27cfr19"]["19.356"]["example"]
    for gauge in (example["min"], example["max"]):
        assert bottling.label_low_pct(gauge) <= example["label"] <= bottling.label_high_pct(gauge)
    assert bottling.label_low_pct(example["max"] + 0.01) > example["label"]
    assert bottling.label_high_pct(example["min"] - 0.01) < example["label"]


def test_labels_that_a_gauge_allows_by_trying_every_tenth():
    for hundredths in range(1500, 9000, 7):
        gauge = hundredths / 100
        fit = [tenths for tenths in range(100, 1000) if abs(tenths * 10 - hundredths) <= 30]
        assert round(bottling.label_low_pct(gauge) * 10) == fit[0]
        assert round(bottling.label_high_pct(gauge) * 10) == fit[-1]


def test_average_and_spread_are_those_of_the_standard_library():
    for values in ([100.0, 100.4], [99.2, 100.0, 101.1, 100.3, 99.7], [45.0] * 6):
        assert bottling.mean_of(values) == pytest.approx(statistics.fmean(values), abs=1e-12)
        assert bottling.spread_of(values) == pytest.approx(statistics.stdev(values), abs=1e-12)


def test_a_bottle_weighed_holds_what_was_poured_in():
    for strength in (37.5, 45.0, 62.0):
        poured_g = alcoholometry.mass_from_litres(0.5, strength, in_air=True) * 1000
        assert bottling.fill_from_weight_pct(412.0 + poured_g, 412.0, strength, 500.0) == pytest.approx(100.0, abs=1e-9)


def test_air_makes_a_tenth_of_a_percent():
    # Buoyancy: 1.2 / 943 - 1.2 / 8000 = 0.11 % (OIML R 22, table XII, as the sums have it).
    by_mass = alcoholometry.mass_from_litres(0.5, 45.0) * 1000
    assert bottling.fill_from_weight_pct(412.0 + by_mass, 412.0, 45.0, 500.0) == pytest.approx(100.112, abs=0.002)


def test_bottles_by_pouring_them_one_by_one():
    tanks = ((284.5, 500), (195.0, 500), (481.2, 700), (0.5, 500), (0.4999, 500), (10.0, 375), (3.498, 500))
    for litres, size in tanks:
        left_ul, count = round(litres * 1e6) + 1000, 0
        while left_ul >= size * 1000:
            left_ul -= size * 1000
            count += 1
        assert bottling.bottles_of(litres, size) == count


@pytest.mark.parametrize(
    ("function", "given"),
    [
        (bottling.fill_from_weight_pct, (400.0, 412.0, 45.0, 500.0)),
        (bottling.us_fill_allowed_pct, (4.9,)),
        (bottling.eu_fill_allowed_pct, (20_000.0,)),
        (bottling.mean_of, ([],)),
        (bottling.spread_of, ([1.0],)),
        (bottling.mean_of, ([1.0, float("inf")],)),
        (bottling.label_low_pct, (99.0,)),
        (bottling.bottles_of, (-1.0, 500.0)),
    ],
)
def test_what_cannot_be_is_refused_with_what_to_do(function, given):
    with pytest.raises(OutOfDomain) as refused:
        function(*given)
    assert words_of(refused.value).endswith(".")
