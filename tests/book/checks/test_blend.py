"""Water and filter. Worked example: 100 L of 60 % to 45 % takes 34.36 kg of water and gives 133.33 L; the volume rule

says 33.33 L and leaves the tank too strong (OIML R 22 densities 909.11, 939.54 and 998.20 kg/m3).
"""

from tests.book.checks.ledger import Ledger, codes, only

DAY = "2026-08-10"


def tank(litres: str = "100.0", strength: str = "60.0") -> Ledger:
    book = Ledger()
    assert book.enter("gauge", "T1", f"{DAY} 08:00", volume=litres, strength=strength, temp="20") == []
    return book


def water(book: Ledger, kg: str, at: str = "09:00", target: str = "45", **more: str):
    return book.enter("reduce", "T1", f"{DAY} {at}", target=target, water=kg, **more)


def test_the_right_water_is_quiet_and_so_is_its_reading():
    book = tank()
    assert water(book, "34.4") == []
    assert water(book, "0", "15:00", strength="45.0", volume="133.4", temp="20") == []


def test_water_reckoned_by_volumes_is_told_at_once():
    query = only(water(tank(), "33.3"), "contraction_forgotten")
    assert (query.weight, query.field) == ("ask", "water")
    # 124.21 kg with 60 L pure alcohol: 132.27 L at 45.4 %; volumes alone say 100 + 33.36
    assert query.words == (
        "33.3 kg of water is what volumes alone would ask for. Volumes do not add: 132.3 L will stand there, not "
        "133.4, at 45.4 %. For 45.0 % it takes 34.4 kg: 1.1 kg more. Pure alcohol stays what it was."
    )


def test_a_first_step_far_from_the_target_is_quiet():
    assert water(tank(), "15.0") == []


def test_too_strong_after_the_rest_is_no_loss():
    book = tank()
    water(book, "33.3")
    query = only(water(book, "0", "15:00", strength="45.4", volume="132.2", temp="20"), "reduce_target")
    assert query.words == (
        "45.4 % measured, 45.0 % wanted: 0.4 points too strong. By mass 1.1 kg of water more. "
        "100.0 L and 33.4 L of water make 132.2 L, not 133.4: the mix shrinks. "
        "Pure alcohol 60.0 L, 60.0 L by the book: no loss."
    )


def test_too_weak():
    book = tank()
    assert codes(water(book, "35.5")) == []
    query = only(water(book, "0", "15:00", strength="44.7"), "reduce_target")
    assert query.words == (
        "44.7 % measured, 45.0 % wanted: 0.3 points too weak. Spirit has to go in; water cannot come out."
    )


def test_a_dip_that_lacks_pure_alcohol_says_so():
    book = tank()
    water(book, "33.3")
    asked = water(book, "0", "15:00", strength="45.4", volume="129.0", temp="20")
    assert only(asked, "reduce_target").words.endswith("Pure alcohol 58.6 L, 60.0 L by the book: look at the dip.")


def filtered(after: str, strength: str = "45.0", before: str = "200.0"):
    return tank("200.0", "45.0").enter(
        "chill_filter", "T1", f"{DAY} 15:00", temp="-2", sheets="lot 1", volume_before=before, strength_before="45.0",
        volume_after=after, strength_after=strength,
    )


def test_what_a_filter_keeps():
    assert filtered("198.8") == []  # 0.6 %
    assert only(filtered("194.0"), "filter_loss").words == (
        "Before 90.00, after 87.30: 2.70 L pure alcohol (3.0 %) kept by filter and line. Usual: 0.3 to 1 %. "
        "Look at the sheets, the heel and both dips."
    )
    assert only(filtered("205.0"), "filter_gain").words == (
        "Before 90.00, after 92.25: 2.25 L pure alcohol (2.5 %) more than went in. A filter makes no spirit: "
        "look at both dips and strengths."
    )


def test_a_filter_that_begins_with_another_figure_than_the_book():
    assert only(filtered("189.0", before="190.0"), "filter_before").words.startswith(
        "85.50 L pure alcohol in T1 before the filter, 90.00 L by the book."
    )


def dumped(dip: str):
    book = Ledger()
    book.enter("gauge", "C4", "2026-05-13 10:00", net_weight="160", strength="60", temp="12")
    # 153.7 kg at 59.6 %, 910.0 kg/m3: 168.9 L
    return book.enter("dump", "C4", f"{DAY} 09:00", gross="205.7", empty="52.0", strength="59.6", temp="12",
                      to_vessel="T1", tank_dip=dip)


def test_tank_dip_after_a_dump():
    assert dumped("169.5") == []
    assert only(dumped("162.0"), "dip_sum").words == (
        "162.0 L dipped in T1, 169.1 L by the sum of what went in: 7.1 L apart. Look at the dip and at both weights."
    )


def test_water_that_only_looks_like_the_volume_rule():
    """100 L of 60 % to 45 %: volumes ask for 33.33 kg, mass for 34.36. Within a hundredth it was the first."""
    assert codes(water(tank(), "33.0")) == ["contraction_forgotten"]
    assert water(tank(), "32.9") == []
    assert codes(water(tank(), "33.6")) == ["contraction_forgotten"]
    assert water(tank(), "33.7") == []


def test_near_its_own_strength_both_rules_come_to_the_same():
    """45.2 % to 45 %: volumes ask for 0.44 L, mass for 0.46 kg. What is left too strong is less than a glass reads."""
    assert water(tank(strength="45.2"), "0.4") == []


def test_water_that_went_in_with_this_very_reading_is_in_its_sum():
    """100 L of 60 % and 33.3 kg of water, 33.4 L, read at once: 132.2 L, not 133.4."""
    asked = water(tank(), "33.3", strength="45.4", volume="132.2", temp="20")
    assert only(asked, "reduce_target").words.endswith(
        "100.0 L and 33.4 L of water make 132.2 L, not 133.4: the mix shrinks. "
        "Pure alcohol 60.0 L, 60.0 L by the book: no loss."
    )


def test_a_dip_of_the_plain_sum_is_no_loss_and_nothing_to_explain():
    book = tank()
    water(book, "33.3")
    words = only(water(book, "0", "15:00", strength="45.2", volume="133.3", temp="20"), "reduce_target").words
    assert words.endswith("Pure alcohol 60.3 L, 60.0 L by the book: no loss.")
    assert "shrinks" not in words


def test_a_strength_within_a_tenth_of_its_target_is_quiet_and_one_point_off_is_a_step():
    for strength, is_asked in (("45.1", False), ("45.2", True), ("44.9", False), ("44.8", True), ("46.0", True),
                               ("46.1", False), ("44.0", True), ("43.9", False)):
        book = tank()
        water(book, "34.4")
        asked = water(book, "0", "15:00", strength=strength)
        assert (codes(asked) == ["reduce_target"]) is is_asked, strength
        assert all(query.field == "strength" for query in asked)


def test_a_dip_after_a_dump_into_a_tank_with_spirit_counts_what_stood_there():
    """100 L of 60 % and 168.9 L of 59.6 %: 268.9 L, for they are nearly one strength."""
    for dip, is_asked in (("268.9", False), ("168.9", True)):
        book = Ledger()
        book.enter("gauge", "T1", "2026-05-12 10:00", volume="100", strength="60", temp="20")
        book.enter("gauge", "C4", "2026-05-13 10:00", net_weight="160", strength="60", temp="12")
        asked = book.enter("dump", "C4", f"{DAY} 09:00", gross="205.7", empty="52.0", strength="59.6", temp="12",
                           to_vessel="T1", tank_dip=dip)
        assert (codes(asked) == ["dip_sum"]) is is_asked
    assert asked[0].field == "tank_dip"
    assert asked[0].words.startswith("168.9 L dipped in T1, 269.1 L by the sum of what went in: 100.2 L apart.")


def test_what_a_filter_may_keep_and_give():
    """1.5 % kept and 0.3 % given are still reading, and so is what two dips of one tank of 1000 L leave open: 2 mm, 2 L
    each (rectangular, JCGM 100), k = 2: 2 x 1.155 x sqrt(2), 3.3 L of the 200, and the strengths.
    """
    assert filtered("196.6") == []
    assert codes(filtered("196.4")) == ["filter_loss"]
    assert filtered("203.4") == []
    assert codes(filtered("203.6")) == ["filter_gain"]
    assert {query.field for litres in ("196.4", "203.6") for query in filtered(litres)} == {"volume_after"}
    assert only(filtered("189.0", before="190.0"), "filter_before").field == "volume_before"


def test_a_strength_off_its_target_by_less_than_its_glass_is_off_is_quiet():
    """A glass of class III (0.1 % vol) and a thermometer (0.2 degC), read to their steps: some 0.16 % vol at k = 2."""
    for glass, is_asked in (("44.9", False), ("45.1", False), ("45.3", True)):
        book = tank()
        water(book, "34.4")
        asked = water(book, "0", "15:00", glass=f"{glass} pct_glass", temp="20")
        assert (codes(asked) == ["reduce_target"]) is is_asked, glass


def test_a_dump_s_dip_offers_the_one_that_comes_to_the_sum():
    """168.9 L come out of the cask; 196.8 are its digits changed about, 16.89 its point."""
    asked = dumped("1689")
    assert [(one.field, one.raw) for one in only(asked, "dip_sum").suggestions][:1] == [("tank_dip", "168.9")]


def test_before_a_filter_two_dips_of_one_tank_may_differ():
    """0.3 % of 197 L and 2 mm of 1 m2, 0.34 and 1.15 L; 45 % of it and the glass: 2 u = 1.11, of two 1.57."""
    for before, asked in (("196.6", []), ("196.4", ["filter_before"])):
        book = Ledger(checks={"dip_pct": 0.1})
        book.enter("gauge", "T1", f"{DAY} 08:00", volume="200", strength="45", temp="20")
        found = book.enter("chill_filter", "T1", f"{DAY} 15:00", temp="-2", sheets="lot 1", volume_before=before,
                           strength_before="45.0", volume_after=before, strength_after="45.0")
        assert [code for code in codes(found) if code == "filter_before"] == asked, before


def test_water_is_not_asked_about_within_what_the_strength_before_leaves_open():
    """Glass of class III, 0.1 % vol and its interval: 2 u = 0.13 % vol at 60, thinned to 45 0.10 (JCGM 100, 5.1.2)."""
    for kilograms, asked in (("34.2", []), ("34.8", ["water_off"])):
        book = Ledger(checks={"water_off_pct": 0.0})
        book.enter("gauge", "T1", f"{DAY} 08:00", volume="100", strength="60", temp="20")
        assert codes(book.enter("reduce", "T1", f"{DAY} 15:00", target="45", water=kilograms)) == asked, kilograms
