"""Checks of a still run: plum on a plated pot still at 310 m. Limits: common practice, no source, if not cited.

Vapour temperature against strength: vapour-liquid data from memory, 0.7 degC either way, 1 degC lower for 300 m.
"""

import pytest

from tests.book.checks.ledger import Ledger, codes, hint, only

DAY = "2025-09-25"


def started(**site) -> Ledger:
    """A run charged at 08:05 with its heads running into R1."""
    book = Ledger(**site)
    book.enter("fruit_intake", "F1", "2025-09-04 10:40", gross="1652", tare="32", material="plum", grower_lot="x",
               temp="21.4", rot="2")
    closed(book)
    asked = book.enter("charge", "S1", f"{DAY} 08:05", run_name="R-25-02", from_vessel="F1", wash="482",
                       wash_strength="5.1", feints="14.9", feints_strength="28.8", heads_to="R1", hearts_to="R2",
                       tails_to="R3")
    assert asked == []
    return book


def closed(book: Ledger) -> None:
    """Close the ferment in F1 the evening before, as it is charged."""
    book.enter("ferment_closed", "F1", "2025-09-24 18:00", final_gravity="1.011", volume="1550", wash_strength="5.1",
               method="lab")


def cut(book: Ledger, at: str, event: str, **values: str):
    return book.enter("cut", "S1", f"{DAY} {at}", event=event, **values)


def read(book: Ledger, at: str, glass: str, temp: str, **values: str):
    return book.enter("run_reading", "S1", f"{DAY} {at}", glass=glass, temp=temp, **values)


def in_hearts() -> Ledger:
    """The same run after its heads cut at 09:21; last true strength 70.8 at 10:45."""
    book = started()
    assert cut(book, "08:11", "heat_on") == []
    assert cut(book, "09:03", "first_drop", vapour_temp="79.4") == []
    assert read(book, "09:15", "78.0", "15.8", vapour_temp="82.9") == []
    assert cut(book, "09:21", "heads_cut", receiver="R2", reason="nose", glass="77.5", temp="15.4") == []
    assert read(book, "10:45", "69.2", "15.2", vapour_temp="87.4") == []
    return book


def test_a_run_in_order_is_quiet():
    book = in_hearts()
    assert cut(book, "11:47", "hearts_cut", receiver="R3", glass="56.5", temp="16.3") == []
    assert read(book, "12:53", "8.4", "18.6", vapour_temp="98.3") == []
    assert book.enter("run_end", "S1", f"{DAY} 13:01", reason="strength", glass="8.7", temp="18.8") == []
    assert cut(book, "14:00", "still_opened") == []


def test_strength_that_rises_in_hearts_with_its_slip():
    query = only(read(in_hearts(), "11:10", "86.5", "15.5"), "strength_slope")
    assert query.weight == "ask"
    assert query.words.startswith("True strength 87.")
    assert "is above 70.8 % of 10:45; after the heads cut it can only fall" in query.words
    # 65.8 was read: swapped digits of 86.5 give 68.5, whose true strength is still below the last one.
    assert [(s.raw, hint(s)) for s in query.suggestions] == [
        ("68.5", "two digits swapped"), ("66.5", "a digit taken for another"),
    ]


def test_strength_that_plunges_in_hearts_with_its_slip():
    """69.2 read, 26.9 typed four minutes after it; 58 could be, and so could anything after an hour or the cut."""
    query = only(read(in_hearts(), "10:49", "26.9", "15.5"), "strength_fell")
    assert query.words.endswith("points below 70.8 % of 4 min before: a run falls slower. Look again.")
    assert [(s.raw, hint(s)) for s in query.suggestions] == [("62.9", "two digits swapped")]
    assert codes(read(in_hearts(), "10:49", "58.0", "15.5")) == []
    assert codes(read(in_hearts(), "11:06", "26.9", "15.5")) == []
    assert codes(cut(in_hearts(), "10:49", "hearts_cut", receiver="R3", glass="26.9", temp="15.5")) == []


def test_strength_may_rise_when_plates_or_water_were_changed():
    book = in_hearts()
    read(book, "11:00", "68.0", "15.2", plates="2")
    assert codes(read(book, "11:10", "71.5", "15.5", plates="3")) == []


def test_strength_may_rise_and_plunge_when_a_change_was_told_since_the_last_reading():
    for event in ("heat_changed", "water_changed", "plate_in", "plate_out"):
        book = in_hearts()
        assert cut(book, "10:50", event) == []
        assert codes(read(book, "11:10", "71.5", "15.5")) == []
        book = in_hearts()
        cut(book, "10:50", event)
        assert codes(read(book, "10:52", "26.9", "15.5")) == []
    book = in_hearts()
    cut(book, "10:40", "heat_changed")  # read since: what it changed is known
    only(read(book, "11:10", "71.5", "15.5"), "strength_slope")


def test_strength_may_rise_in_the_heads():
    book = started()
    read(book, "09:07", "74.0", "16.2")
    assert read(book, "09:15", "78.0", "15.8") == []


def test_events_out_of_order_and_twice():
    book = in_hearts()
    assert only(cut(book, "10:50", "first_drop"), "run_order").words == (
        "First drop was logged at 09:03 already. Which one counts?"
    )
    book = started()
    cut(book, "09:21", "heads_cut", receiver="R2")
    query = only(cut(book, "09:30", "heat_on"), "run_order")
    assert query.words == "Heat on comes after heads cut, hearts begin of 09:21. Look at the times."
    book = started()
    assert only(cut(book, "09:30", "hearts_cut", receiver="R3"), "run_order").words.startswith("Hearts are cut but")


def test_a_cut_must_change_the_receiver():
    query = only(cut(started(), "09:21", "heads_cut", receiver="R1"), "run_receiver_same")
    assert query.words.startswith("R1 was open before this cut already. Which receiver is open now?")


def test_a_run_that_ends_in_hearts():
    query = only(in_hearts().enter("run_end", "S1", f"{DAY} 13:01", reason="strength"), "run_order")
    assert query.words.startswith("The run ends but no hearts cut is logged; hearts began 09:21.")


def test_reading_and_end_without_a_run():
    book = Ledger()
    assert only(read(book, "09:15", "78.0", "15.8"), "run_not_open").words.startswith("No run is open on S1")
    assert codes(book.enter("run_end", "S1", f"{DAY} 13:01", reason="time")) == ["run_not_open"]


def test_a_charge_on_a_still_that_runs():
    query = only(
        in_hearts().enter("charge", "S1", f"{DAY} 11:00", from_vessel="F1", wash="480", wash_strength="5.1"),
        "run_still_open",
    )
    assert query.words.startswith("S1 already has R-25-02 open since 08:05.")


def test_wash_that_no_ferment_gives_and_a_vessel_without_wash():
    book = started()
    book.enter("run_end", "S1", f"{DAY} 13:01", reason="time")
    asked = book.enter("charge", "S1", f"{DAY} 14:00", from_vessel="F1", wash="480", wash_strength="41")
    query = next(one for one in asked if one.code == "wash_strength")
    assert query.weight == "stop"
    assert [(s.raw, hint(s)) for s in query.suggestions] == [("4.1", "the point slipped")]
    asked = book.enter("charge", "S1", f"{DAY} 14:00", from_vessel="F1", wash="480", wash_strength="12")
    query = next(one for one in asked if one.code == "wash_strength")
    assert (query.weight, query.field) == ("ask", "wash_strength")
    asked = book.enter("charge", "S1", f"{DAY} 18:00", from_vessel="R3", wash="90", wash_strength="24")
    assert codes(asked) == ["run_still_open", "source_empty", "charge_low"]  # 24 % is usual out of a receiver


def test_overfilled_still():
    book = started()
    book.enter("run_end", "S1", f"{DAY} 13:01", reason="time")
    query = only(
        book.enter("charge", "S1", f"{DAY} 14:00", from_vessel="F1", wash="530", wash_strength="5.1", feints="20",
                   feints_strength="28"),
        "over_working_level",
    )
    assert query.words == (
        "A charge of 550.0 L (530.0 wash and 20.0 feints) is above the working level of S1, 530 L. Look again."
    )
    book.enter("run_end", "S1", f"{DAY} 15:00", reason="time")
    query = only(
        book.enter("charge", "S1", f"{DAY} 15:30", from_vessel="F1", wash="4820", wash_strength="5.1"), "over_capacity"
    )
    assert query.weight == "stop"
    assert (query.suggestions[0].raw, hint(query.suggestions[0])) == ("482.0", "the point slipped")


def test_warm_distillate():
    query = only(read(in_hearts(), "11:10", "69.0", "26.1"), "distillate_warm")
    assert query.words.startswith("Spirit runs at 26.1 °C, above 25.0 °C. More condenser water now, and the heat down")


def test_vapour_and_strength_do_not_go_together():
    book = in_hearts()
    # 68.4 % true condenses near 89.4 - 1.0 = 88.4 at 310 m; 86.4 would be near 80.3 - 1.0.
    query = only(read(book, "11:00", "67.0", "15.2", vapour_temp="98.4"), "vapour_strength")
    assert query.words.startswith("Vapour 98.4 °C and spirit of 68.")
    assert [(s.field, s.raw) for s in query.suggestions] == [("vapour_temp", "89.4")]
    assert read(book, "11:00", "67.0", "15.2", vapour_temp="89.0") == []


def test_above_the_azeotrope_is_a_stop():
    # Ethanol-water azeotrope 97.2 % vol (95.6 % by mass).
    asked = in_hearts().enter("run_reading", "S1", f"{DAY} 11:10", strength="98.1", plates="9", temp="15")
    query = next(q for q in asked if q.code == "strength_impossible")
    assert query.weight == "stop"
    assert "impossible" not in codes(asked)


def test_class_of_a_fruit_spirit_is_lost_at_86():
    # Regulation (EU) 2019/787, Annex I, fruit spirit: distilled at less than 86 % vol.
    query = only(started().enter("run_reading", "S1", f"{DAY} 09:10", strength="87.5"), "strength_class")
    assert query.weight == "ask"
    assert query.words.startswith("True strength 87.5 % off plum: at 86 % or more it is no fruit spirit in the EU")
    assert started().enter("run_reading", "S1", f"{DAY} 09:10", strength="85.9") == []


def test_class_in_the_us_is_by_proof():
    # 27 CFR 5.145: brandy under 190 degrees proof.
    book = started(units="us")
    assert book.enter("run_reading", "S1", f"{DAY} 09:10", strength="87.5") == []
    asked = book.enter("run_reading", "S1", f"{DAY} 09:12", strength="95.5")
    assert codes(asked) == ["strength_class"]
    assert "no brandy in the US (27 CFR 5.145)" in asked[0].words


def test_glass_out_of_its_scale():
    book = in_hearts()
    query = only(read(book, "11:47", "56.5 pct_glass AH-1", "16.3"), "glass_scale")
    assert query.weight == "ask"
    assert query.words == "AH-1 shows 60.0 to 80.0; 56.5 % (glass) cannot be read on it. Which instrument was it?"
    assert read(in_hearts(), "11:10", "65.8 pct_glass AH-1", "15.5") == []


def test_raw_reading_typed_as_true_names_what_true_would_be():
    query = only(read(in_hearts(), "11:10", "65.8", "15.5", strength="65.8"), "raw_equals_corrected")
    # 65.8 on the glass at 15.5 degC is 67.3 % vol at 20 degC (OIML R 22, computed).
    assert query.words == (
        "65.8 % (glass) stands in both boxes at 15.5 °C. That is what the glass shows; true would be 67.3 % vol."
    )
    assert read(in_hearts(), "11:10", "67.1", "19.8", strength="67.1") == []


def with_flows() -> Ledger:
    """Hearts open since 09:21; 12 L/h read at 09:21, 10:00, 10:40 and 11:20: 23.8 L by 11:20, by hand 12 * 119/60."""
    book = started()
    assert cut(book, "09:03", "first_drop") == []
    cut(book, "09:21", "heads_cut", receiver="R2", reason="nose", glass="77.5", temp="15.4", flow="12")
    read(book, "10:00", "74.0", "15.2", flow="12")
    read(book, "10:40", "70.0", "15.2", flow="12")
    return book


def dip(book: Ledger, at: str, litres: str):
    return book.enter("run_reading", "S1", f"{DAY} {at}", dip=litres, flow="12")


def test_a_dip_of_the_open_receiver_that_agrees_with_the_flow_is_quiet():
    assert dip(with_flows(), "11:20", "24.6") == []  # 3 % more than 23.8


def test_a_dip_far_from_the_flow_asks_for_a_late_cut_or_another_receiver():
    query = only(dip(with_flows(), "11:20", "19.8"), "dip_flow")  # (23.8 - 19.8) / 19.8 = 20 %
    assert (query.weight, query.field) == ("ask", "dip")
    assert query.words == (
        "Flow times minutes gives 23.8 L since this receiver was opened, the dip 19.8 L: 20 % less in it, where 7 % "
        "may be. Is another receiver open, or was the cut logged at another minute?"
    )


def test_what_stood_in_the_receiver_before_is_not_of_the_run():
    book = with_flows()
    book.enter("gauge", "R2", f"{DAY} 07:00", volume="10", temp="20", strength="68")
    assert codes(dip(book, "11:20", "33.8")) == []  # 10 L stood there before


def test_a_dip_needs_no_glass_and_a_reading_needs_something():
    assert read_problems(flow="12") == ["some_reading"]
    assert read_problems(dip="12", flow="12") == []


def read_problems(**values: str) -> list[str]:
    from webapp.kinds.read import read_entry
    from webapp.kinds.run_reading import KIND

    units = {"dip": "L", "flow": "L_h"}
    given = {name: {"raw": raw, "unit": units[name]} for name, raw in values.items()}
    return [p.code for p in read_entry(KIND, {"mark": "S1-Y", "values": given}).problems]


def run_with_vapour(book: Ledger, day: str, off: float) -> None:
    """A whole run whose vapour thermometer stands `off` from what the strengths say at 310 m."""
    from webapp.trade.still import vapour_temp_c

    book.enter("charge", "S1", f"{day} 08:05", from_vessel="F1", wash="300", wash_strength="5.1", heads_to="R1",
               hearts_to="R2", tails_to="R3")
    book.enter("cut", "S1", f"{day} 09:00", event="first_drop")
    book.enter("cut", "S1", f"{day} 09:20", event="heads_cut", receiver="R2")
    for clock, pct in (("09:40", 74), ("10:10", 70), ("10:40", 64), ("11:10", 58)):
        vapour = f"{vapour_temp_c(pct, 310) + off:.1f}"
        book.enter("run_reading", "S1", f"{day} {clock}", strength=str(pct), vapour_temp=vapour)
    book.enter("run_end", "S1", f"{day} 12:00", reason="strength")


def test_the_stills_own_offset_is_learnt_from_two_runs_and_then_expected():
    """At 310 m a spirit of 60 % goes with about 90.7 degC (VLE from memory, 1 degC lower for 300 m)."""
    book = Ledger(height_m=310)
    for day in ("2025-09-20", "2025-09-21"):
        run_with_vapour(book, day, -1.5)
    book.enter("charge", "S1", "2025-09-22 08:05", from_vessel="F1", wash="300", wash_strength="5.1", heads_to="R1",
               hearts_to="R2", tails_to="R3")
    usual = book.enter("run_reading", "S1", "2025-09-22 10:00", strength="60", vapour_temp="88.0")  # 2.7 low, 1.2 own
    assert "vapour_strength" not in codes(usual)
    asked = book.enter("run_reading", "S1", "2025-09-22 10:20", strength="59", vapour_temp="92.0")  # usual without it
    assert "about 89" in only(asked, "vapour_strength").words


def test_spirit_at_the_safe_may_be_as_warm_as_the_limit():
    assert "distillate_warm" not in codes(read(in_hearts(), "11:10", "69.0", "25.0"))
    assert codes(read(in_hearts(), "11:10", "69.0", "25.1")) == ["distillate_warm"]


def test_vapour_that_no_slip_explains_may_be_a_slip_of_the_strength():
    """At 310 m vapour of 88.4 degC goes with 64.8 to 68 % (VLE from memory, within 2 degC): 46.8 was typed."""
    asked = started().enter("run_reading", "S1", f"{DAY} 09:10", strength="46.8", vapour_temp="88.4")
    query = only(asked, "vapour_strength")
    assert query.field == "vapour_temp"
    assert [(s.field, s.raw, hint(s)) for s in query.suggestions] == [("strength", "64.8", "two digits swapped")]
    # 84.6 would go with 80.8 degC at sea level, and with less up here.
    asked = started().enter("run_reading", "S1", f"{DAY} 09:10", strength="48.6", vapour_temp="84.0")
    assert only(asked, "vapour_strength").suggestions == ()


@pytest.mark.parametrize(("pct", "is_asked"), [("85.9", False), ("86.0", True), ("86.1", True)])
def test_a_fruit_spirit_of_just_86_is_none(pct: str, is_asked: bool):
    """Regulation (EU) 2019/787, Annex I: distilled at less than 86 % vol."""
    asked = started().enter("run_reading", "S1", f"{DAY} 09:10", strength=pct)
    assert codes(asked) == ["strength_class"] * is_asked
    assert all(query.field == "strength" for query in asked)


@pytest.mark.parametrize(("pct", "is_asked"), [("94.9", False), ("95.1", True)])
def test_a_brandy_comes_off_below_190_proof(pct: str, is_asked: bool):
    """27 CFR 5.145: less than 190 degrees proof."""
    asked = started(units="us").enter("run_reading", "S1", f"{DAY} 09:10", strength=pct)
    assert ("strength_class" in codes(asked)) is is_asked


def test_of_what_is_no_reading_off_the_still_no_class_is_asked():
    """A receiver may hold what a run of before gave; only what runs now is held against its class."""
    assert started().enter("gauge", "R2", f"{DAY} 10:00", volume="10", strength="90", temp="20") == []


def on_its_scale(gravity: str) -> bool:
    book = Ledger()
    book.enter("fruit_intake", "F1", "2025-09-16 09:20", gross="1731", tare="40", material="pear", grower_lot="x",
               temp="17.2", rot="1")
    asked = book.enter("ferment_reading", "F1", "2025-09-16 12:00", gravity=f"{gravity} SG-1", temp="16")
    return "glass_scale" not in codes(asked)


@pytest.mark.parametrize(
    ("gravity", "is_on"),
    [("0.990 SG", True), ("0.989 SG", False), ("1.100 SG", True), ("1.101 SG", False), ("20.0 Bx_hydrometer", True),
     ("26.0 Bx_hydrometer", False)],
)
def test_a_scale_is_compared_in_its_own_unit(gravity: str, is_on: bool):
    """SG-1 goes from 0.990 to 1.100. 20 degrees Brix are 1.083 and 26 are 1.110 (sugar tables, from memory)."""
    assert on_its_scale(gravity) is is_on


def test_a_glass_in_proof_is_not_held_against_a_scale_in_per_cent():
    """They are read at 60 degF and at 20 degC: the figures are no two of one scale (27 CFR 30.11; OIML R 44)."""
    for reading in ("119 proof_glass", "70 proof_glass"):
        asked = started().enter("run_reading", "S1", f"{DAY} 09:10", glass=f"{reading} AH-1", temp="15.5")
        assert "glass_scale" not in codes(asked)


def test_a_figure_of_another_quantity_is_not_held_against_a_scale():
    """A saccharometer of gravities beside a figure in per cent: nothing can be said."""
    asked = started().enter("run_reading", "S1", f"{DAY} 09:10", glass="70 pct_glass SG-1", temp="15.5")
    assert "glass_scale" not in codes(asked)


@pytest.mark.parametrize("instrument", ["TH-9", ""])
def test_each_figure_of_an_entry_is_held_against_its_own_instrument(instrument: str):
    """An instrument that nobody knows does not hide the next, nor does a figure without one."""
    book = Ledger()
    book.enter("fruit_intake", "F1", "2025-09-16 09:20", gross="1731", tare="40", material="pear", grower_lot="x",
               temp="17.2", rot="1")
    given = {"temp": f"16 degC {instrument}".strip(), "ph": "3.4", "gravity": "1.101 SG SG-1"}
    assert "glass_scale" in codes(book.enter("ferment_reading", "F1", "2025-09-16 12:00", **given))
