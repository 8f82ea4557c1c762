"""What had run off by each reading, by hand: by flow, by dips, by both, and which reading is a slip."""

from typing import Any

import pytest

from webapp.trade import runtrack
from webapp.trade.batch import moles_in
from webapp.trade.runtrack import tidy, track


def reading(minutes: float, strength: float, flow: float | None = None) -> dict[str, Any]:
    return {"minutes": minutes, "strength_pct": strength, "flow_l_h": flow}


def run_of(*readings: dict[str, Any], dips: list[tuple[float, float]] | None = None) -> dict[str, Any]:
    return {"readings": list(readings), "collected": [{"minutes": m, "volume_l": v} for m, v in dips or []]}


def litres_of(run: dict[str, Any], usual: float | None = None) -> list[float]:
    seen = track(run, usual)
    assert seen is not None
    return seen.litres


def test_by_flow_the_litres_are_the_area_under_straight_lines() -> None:
    """12 L/h for ten minutes is 2 L; from 12 to 6 L/h in the next twenty 3 L; level after the last for thirty: 3 L."""
    run = run_of(reading(10, 80, 12), reading(30, 76, 6), reading(60, 70))
    assert litres_of(run) == pytest.approx([2.0, 5.0, 8.0])


def test_a_reading_between_two_flows_lies_on_the_line_between_them() -> None:
    """At minute 20 the flow is 9 L/h: 2 L, and ten minutes of 12 to 9 on the mean are 1.75 L."""
    run = run_of(reading(10, 80, 12), reading(20, 78), reading(30, 76, 6))
    assert litres_of(run) == pytest.approx([2.0, 3.75, 5.0])


def test_a_second_flow_at_the_same_minute_is_the_one_that_counts_from_there() -> None:
    run = run_of(reading(0, 80, 30), reading(0, 79, 12), reading(60, 76, 12))
    assert litres_of(run) == pytest.approx([0.0, 0.0, 12.0])


def test_pure_alcohol_is_litres_at_the_mean_strength_and_the_first_at_its_own() -> None:
    seen = track(run_of(reading(10, 80, 12), reading(30, 70, 12)), None)
    assert seen is not None
    assert seen.lpas == pytest.approx([2 * 0.80, 2 * 0.80 + 4 * 0.75])
    # moles_in goes by OIML R 22; the table that the track reads is within 0.03 % of it.
    first, then = moles_in(2.0, 80.0), moles_in(4.0, 75.0)
    assert seen.ethanol_mol == pytest.approx([first[0], first[0] + then[0]], rel=3e-4)
    assert seen.water_mol == pytest.approx([first[1], first[1] + then[1]], rel=3e-4)
    assert seen.minutes == [10.0, 30.0] and seen.strengths == [80.0, 70.0]
    assert seen.flows_l_h == [12.0, 12.0]
    assert (seen.places, seen.left_out, seen.since, seen.correction) == ([0, 1], [], 0, 1.0)


def test_without_any_flow_the_usual_one_of_the_still_is_taken_and_without_that_nothing() -> None:
    run = run_of(reading(10, 80), reading(30, 76))
    assert litres_of(run, 6.0) == pytest.approx([1.0, 3.0])
    assert track(run, None) is None
    assert track(run, 0.0) is None
    flowing = run_of(reading(10, 80, 12), reading(30, 76))
    assert litres_of(flowing, 6.0) == pytest.approx([2.0, 6.0]), "a flow that was read comes first"


def test_dips_say_how_much_and_flows_say_how_it_was_spread() -> None:
    """By flow 2 L by minute 10 and 4 by 20; the dip at 20 found 5: each litre of flow was 1.25."""
    run = run_of(reading(10, 80, 12), reading(20, 76, 12), reading(40, 70, 12), dips=[(20, 5.0)])
    seen = track(run, None)
    assert seen is not None
    assert seen.litres == pytest.approx([2.5, 5.0, 5.0 + 4.0 * 1.25])
    assert seen.correction == pytest.approx(1.25)


def test_two_dips_each_hold_for_their_own_time() -> None:
    run = run_of(reading(10, 80, 12), reading(30, 76, 12), reading(40, 70, 12), dips=[(40, 9.0), (20, 5.0)])
    seen = track(run, None)
    assert seen is not None
    # 5 L by minute 20, then 4 L by minute 40 as the flow says: 2 of them by minute 30.
    assert seen.litres == pytest.approx([2.5, 7.0, 9.0])
    assert seen.correction == pytest.approx(9 / 8)


def test_without_flows_dips_alone_spread_evenly_in_time() -> None:
    run = run_of(reading(10, 80), reading(30, 76), reading(50, 70), dips=[(20, 4.0), (40, 10.0)])
    seen = track(run, None)
    assert seen is not None
    assert seen.litres == pytest.approx([2.0, 7.0, 13.0])
    assert seen.correction == 1.0
    once = track(run_of(reading(10, 80), reading(30, 76), dips=[(20, 4.0)]), None)
    assert once is not None and once.litres == pytest.approx([2.0, 6.0])


def test_a_dip_that_found_less_than_the_one_before_is_left_out() -> None:
    run = run_of(reading(20, 80, 12), reading(40, 76, 12), dips=[(20, 4.0), (30, 3.0), (40, 8.0)])
    assert litres_of(run) == pytest.approx([4.0, 8.0])
    same = run_of(reading(20, 80, 12), reading(40, 76, 12), dips=[(20, 4.0), (40, 4.0)])
    assert litres_of(same) == pytest.approx([4.0, 4.0]), "as much as before is a still that stood"
    at_once = run_of(reading(20, 80, 12), dips=[(0, 1.0)])
    assert litres_of(at_once) == pytest.approx([4.0]), "before the first drop there was nothing to dip"


@pytest.mark.parametrize(("dipped", "share"), [(2.4, 0.6), (2.39, 1.0), (6.4, 1.6), (6.41, 1.0), (4.0, 1.0)])
def test_after_the_last_dip_flows_are_corrected_by_what_it_found_within_reason(dipped: float, share: float) -> None:
    """From 3/5 to 8/5 of the flow's 4 L; beyond, the flow is taken as read. Common practice, no source."""
    seen = track(run_of(reading(20, 80, 12), reading(40, 76, 12), dips=[(20, dipped)]), None)
    assert seen is not None
    assert seen.litres == pytest.approx([dipped, dipped + 4.0 * share])
    assert seen.correction == pytest.approx(share)


def test_nothing_has_run_off_before_the_first_drop() -> None:
    assert runtrack._run_off([(0.0, 12.0)], 0.0) == 0.0
    assert runtrack._run_off([(0.0, 12.0)], -5.0) == 0.0
    assert runtrack._run_off([], 30.0) == 0.0
    assert runtrack._run_off([(0.0, 12.0)], 0.5) == pytest.approx(0.1)


@pytest.mark.parametrize(
    ("strengths", "slips"),
    [
        ([80.0, 82.0, 78.0], []),  # two points up is within what a glass may scatter (common practice, no source)
        ([80.0, 82.1, 78.0], [1]),
        ([80.0, 90.0], []),  # of two alone nobody can say which
        ([70.0, 80.0, 79.0, 78.0], [0]),
        ([80.0, 79.0, 95.0, 77.0, 96.0, 75.0, 97.0, 73.0], [2, 4]),  # at most two are left out
    ],
)
def test_which_readings_are_slips(strengths: list[float], slips: list[int]) -> None:
    kept, left_out, _ = tidy(strengths)
    assert left_out == slips
    assert kept == [i for i in range(len(strengths)) if i not in slips]


def test_a_stream_that_rises_and_stays_up_counts_from_there() -> None:
    """Another heat or water: after minute 30 all readings are higher, so none of them is a slip."""
    assert tidy([80.0, 78.0, 76.0, 84.0, 82.0, 80.0]) == ([0, 1, 2, 3, 4, 5], [], 3)
    assert tidy([80.0, 79.0, 78.0, 84.0, 83.0, 82.0, 90.0, 89.0, 88.0])[2] == 6, "the last of two such changes"
    seen = track(run_of(*(reading(10.0 * i, s, 12) for i, s in enumerate((80, 78, 76, 84, 82, 80)))), None)
    assert seen is not None and seen.since == 3


def test_the_slip_is_the_reading_farther_off_the_line_through_its_neighbours() -> None:
    assert tidy([80.0, 70.0, 78.0, 77.0, 76.0])[1] == [1]
    assert tidy([80.0, 79.0, 78.0, 88.0, 76.0])[1] == [3]
    assert runtrack._departure([80.0, 79.0, 90.0, 77.0], 2, 1, 2) == pytest.approx(12.0)  # the line says 78
    assert runtrack._departure([80.0, 90.0, 78.0], 1, 0, 1) == pytest.approx(12.0)  # one other is left: its height


def test_a_slip_adds_nothing_to_what_has_run_off() -> None:
    seen = track(run_of(reading(10, 80, 12), reading(20, 40, 12), reading(30, 76, 12)), None)
    assert seen is not None
    assert (seen.places, seen.left_out) == ([0, 2], [1])
    assert seen.litres == pytest.approx([2.0, 6.0])
    assert seen.lpas[-1] == pytest.approx(2 * 0.80 + 4 * 0.78)


def changed(run: dict[str, Any], *changes: tuple[float, float | None]) -> dict[str, Any]:
    return {**run, "changes": [{"minutes": minutes, "plates": plates} for minutes, plates in changes]}


def test_a_told_change_explains_a_rise_and_is_where_the_drift_may_leap() -> None:
    strengths = [80.0, 79.0, 78.0, 84.0, 76.0, 75.0]
    run = run_of(*(reading(10 * k, pct, 12) for k, pct in enumerate(strengths)))
    plain, told = track(run, None), track(changed(run, (25, None)), None)
    assert plain is not None and told is not None
    assert plain.left_out == [3] and told.left_out == [], "without a word of it the reading is a slip"
    assert (plain.leaps, told.leaps) == ([], [3])
    at_its_minute = track(changed(run, (30, None)), None)
    assert at_its_minute is not None and at_its_minute.leaps == [3], "the reading of that minute is of the new setting"


def test_a_change_after_the_last_reading_leaps_after_it() -> None:
    run = run_of(reading(10, 80, 12), reading(20, 78, 12), reading(30, 76, 12))
    told = track(changed(run, (5, None), (31, None), (32, None)), None)
    assert told is not None
    assert told.leaps == [3] and told.settings == [1, 1, 1], "one before the first reading is how the still stands"


def test_flows_are_smoothed_among_those_of_one_setting() -> None:
    """The middle one of 9, 9 and 25 is 9; after a change before the third it stands alone: roots 3 and 5."""
    run = run_of(reading(10, 80, 9), reading(20, 78, 9), reading(30, 76, 25))
    plain, told = track(run, None), track(changed(run, (25, None)), None)
    assert plain is not None and told is not None
    assert plain.root_flows == pytest.approx([3.0, 3.0, 3.0])
    assert told.root_flows == pytest.approx([3.0, 3.0, 5.0])


def test_plates_count_from_the_litres_of_their_minute() -> None:
    """At 12 L/h ten minutes are 2 L, and so on past the last reading."""
    run = run_of(reading(10, 80, 12), reading(30, 76, 12))
    told = track(changed(run, (40, 2), (15, 3), (20, None)), None)
    assert told is not None
    assert told.stands == [(pytest.approx(3.0), 3.0), (pytest.approx(8.0), 2.0)]
