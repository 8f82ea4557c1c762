"""What is offered for a figure that cannot have been meant, from what was expected of it.

The slips are those of the keypad and of the trade; common practice, no source. Units: NIST Handbook 44, Appendix C.
"""

from __future__ import annotations

from typing import Any

import webapp.kinds
from webapp.kinds.expected import Expected, Suggestion
from webapp.kinds.meant import offers
from webapp.kinds.message import message
from webapp.kinds.problem import Problem
from webapp.kinds.read import read_entry
from webapp.kinds.slips import slips_of

GIVEN = {"temp": ("20.0", "degC"), "strength": ("60.0", "pct_vol")}


def offered(
    kind_name: str, of: str, low: float, high: float, near: float | None = None, context: Any = None,
    **values: tuple[str, str],
) -> list[Suggestion]:
    """Return the offers for an entry of which one check asks, for as long as it is not what that check expected."""
    kind = webapp.kinds.get(kind_name)
    assert kind
    expects = (Expected(of, low, high, near),)

    def judge(tried: Any) -> list[Problem]:
        found = read_entry(kind, tried, context or {}).get(of)
        does = isinstance(found, float) and low <= found <= high
        return [] if does else [Problem("odd", "ask", of, message("slip-point"), expects)]

    typed = {name: {"raw": raw, "unit": unit} for name, (raw, unit) in values.items()}
    entry: Any = {"kind": kind_name, "mark": "T1-X", "values": typed}
    (found,) = offers(read_entry(kind, entry, context or {}), judge(entry), judge)
    return list(found)


def told(found: list[Suggestion]) -> list[tuple[str, str, str, str]]:
    return [(one.field, one.raw, one.unit, one.message.id if one.message else "") for one in found]


def test_a_volume_in_the_other_unit() -> None:
    """119 US gallons are 450.5 L (231 cubic inches each)."""
    found = offered("gauge", "volume_20", 440, 460, 450, volume=("119", "L"), **GIVEN)
    assert told(found)[0] == ("volume", "119", "gal", "slip-meant")


def test_proof_typed_as_percent() -> None:
    found = offered("gauge", "true_strength", 38, 42, 40, volume=("100", "L"), temp=("20", "degC"),
                    strength=("80", "pct_vol"))
    assert told(found)[0] == ("strength", "80", "proof", "slip-meant")


def test_net_typed_as_gross_wants_the_cask_added() -> None:
    found = offered("cask_regauge", "gross", 230, 236, 234, {"tare_kg": 50.0}, gross=("184.1", "kg"), **GIVEN)
    assert told(found)[0] == ("gross", "234.1", "kg", "slip-net")


def test_what_is_empty_typed_as_what_is_full() -> None:
    found = offered("gauge", "volume_20", 640, 660, 650, {"capacity_l": 1000.0}, volume=("350", "L"), **GIVEN)
    assert ("volume", "650.0", "L", "slip-ullage") in told(found)


def test_two_figures_in_each_others_boxes_are_exchanged_together() -> None:
    found = offered("cask_fill", "net", 180, 190, 184, gross=("50.0", "kg"), tare=("234.0", "kg"), **GIVEN)
    (first, *_) = found
    assert first.message and first.message.id == "slip-exchanged"
    boxes = {(box.field, box.raw, box.unit) for box in (first, *first.also)}
    assert boxes == {("gross", "234.0", "kg"), ("tare", "50.0", "kg")}


def test_a_glass_reading_in_the_box_of_the_true_strength_leaves_that_box_empty() -> None:
    found = offered("gauge", "true_strength", 55.5, 56.5, 56.0, volume=("100", "L"), temp=("10", "degC"),
                    strength=("52.0", "pct_vol"))
    (first, *_) = found
    assert told([first]) == [("glass", "52.0", "pct_glass", "slip-box")]
    assert [(box.field, box.raw) for box in first.also] == [("strength", "")]


def test_a_key_beside_the_right_one_a_digit_too_many_and_the_other_sign() -> None:
    kind = webapp.kinds.get("gauge")
    assert kind
    spec = kind.field("temp")
    assert spec
    found = {slip.raw: slip.message.id for slip in slips_of(spec, "14.4", 14.4, "degC")}
    assert (found["17.4"], found["11.4"], found["-14.4"]) == ("slip-key", "slip-key", "slip-sign")
    assert found["1.4"] == found["144.0"] == "slip-point"
    assert {slip.raw for slip in slips_of(spec, "11.5", 11.5, "degC")} >= {"1.5", "15.1"}


def test_what_raises_another_question_comes_after_what_raises_none() -> None:
    kind = webapp.kinds.get("gauge")
    assert kind
    expects = (Expected("temp", 10, 30, 20.0),)
    odd = Problem("odd", "ask", "temp", message("slip-point"), expects)
    other = Problem("other", "ask", "temp", message("slip-point"))

    def judge(tried: Any) -> list[Problem]:
        raw = tried["values"]["temp"]["raw"]
        return [odd] if raw == "91.0" else [other] if raw == "19.0" else []

    typed = {"temp": {"raw": "91.0", "unit": "degC"}, "volume": {"raw": "100", "unit": "L"},
             "strength": {"raw": "60", "unit": "pct_vol"}}
    entry: Any = {"kind": "gauge", "mark": "T1-X", "values": typed}
    ((first, *rest),) = offers(read_entry(kind, entry, {}), [odd], judge)
    assert "19.0" in [one.raw for one in (first, *rest)]
    assert all(one.raw != "91.0" for one in (first, *rest))


def test_no_more_than_three_and_none_where_nothing_brings_it() -> None:
    assert len(offered("gauge", "volume_20", 1, 9000, None, volume=("9999", "L"), **GIVEN)) <= 3
    assert offered("gauge", "volume_20", 777.1, 777.2, None, volume=("12", "L"), **GIVEN) == []


def test_a_digit_taken_for_another_and_a_digit_left_out() -> None:
    found = offered("cask_regauge", "gross", 230.0, 236.0, 234.0, gross=("284.1", "kg"), **GIVEN)
    assert told(found)[0] == ("gross", "234.1", "kg", "slip-misread")
    found = offered("cask_regauge", "gross", 230.0, 236.0, 234.0, gross=("24.1", "kg"), **GIVEN)
    assert told(found)[0] == ("gross", "234.1", "kg", "slip-lost")


def test_two_figures_in_the_wrong_order_are_exchanged_in_one_tap() -> None:
    kind = webapp.kinds.get("fruit_intake")
    assert kind
    entry: Any = {"kind": "fruit_intake", "mark": "F1-C", "values": {
        "gross": {"raw": "61.5", "unit": "kg"}, "tare": {"raw": "1040.0", "unit": "kg"}}}

    def judge(tried: Any) -> list[Problem]:
        return [one for one in read_entry(kind, tried, {}).problems if one.code == "tare_below_gross"]

    (found,) = offers(read_entry(kind, entry, {}), judge(entry), judge)
    assert [(one.field, one.raw, one.also[0].field, one.also[0].raw) for one in found] == [
        ("gross", "1040.0", "tare", "61.5")]
