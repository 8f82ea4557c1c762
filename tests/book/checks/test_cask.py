"""Checks of casks. Usual losses (2 to 4 % a year in large casks, 5 to 8 % in small): common practice, no source."""

import pytest

from tests.book.checks.ledger import Ledger, codes, hint, only


def filled(vessel: str = "C1", kg: str = "189.0", strength: str = "61.5", at: str = "2025-05-13 10:00") -> Ledger:
    book = Ledger()
    assert book.enter("gauge", vessel, at, what="plum", net_weight=kg, strength=strength, temp="12", purpose="opening",
                      typed_min=9000) == []
    return book


def regauge(book: Ledger, at: str, gross: str, strength: str = "", vessel: str = "C1", **more: str):
    if strength:
        more["strength"] = strength
    return book.enter("cask_regauge", vessel, at, gross=gross, condition="tight", **{"temp": "11.0", **more})


def test_an_ordinary_year_is_quiet():
    assert regauge(filled(), "2026-05-12 10:00", "234.8", "61.0") == []


def test_a_small_cask_at_seven_per_cent_is_quiet():
    # 23.0 kg at 58.2 % after 24.8 kg at 59.0 %: 7.2 % of its pure alcohol in a year
    book = filled("C2", "24.8", "59.0")
    assert regauge(book, "2026-05-13 10:00", "33.6", "58.2", "C2") == []


def test_a_leak_by_loss_and_usual_strength():
    query = only(regauge(filled(), "2026-05-13 10:00", "204.7", "60.9"), "cask_loss")
    assert query.weight == "ask"
    # 189.0 kg / 905.7 kg/m3 * 61.5 % = 128.3 L and 154.7 kg / 907.1 kg/m3 * 60.9 % = 103.9 L (OIML R 22 densities)
    assert query.words == (
        "19 % a year lost since May 2025: 128.5 L of pure alcohol then, 104.0 L now. Casks of this size lose 2 to 4 %. "
        "Its strength is usual (-0.6 points a year): a leak? Look at hoops, heads, bung and the floor."
    )


def test_a_loss_with_an_odd_strength_is_no_plain_leak():
    asked = regauge(filled(), "2026-05-13 10:00", "210.0", "55.0")
    assert codes(asked) == ["cask_strength_slip", "cask_loss"]
    assert asked[1].words.endswith("Its strength is odd too: is it the right cask? Weigh and read it again.")


def neighbours(gross: tuple[str, ...]) -> Ledger:
    """Five casks like C1, filled alike and regauged at these weights a year later."""
    book = filled()
    for n, kg in enumerate(gross, 1):
        book.enter("gauge", f"N{n}", "2025-05-13 11:00", what="plum", net_weight="189.0", strength="61.5", temp="12")
        assert regauge(book, f"2026-05-13 08:0{n}", kg, "61.0", f"N{n}") == []
    return book


def test_a_large_cask_at_six_per_cent_leaks_among_neighbours_at_three():
    # 179.0 kg / 906.8 kg/m3 * 61.0 % = 120.4 L, 6.1 % less than 128.3 L; 185.0 kg are 3.0 % less (OIML R 22 densities)
    book = neighbours(("234.8", "235.0", "235.2", "234.9", "235.1"))
    query = only(regauge(book, "2026-05-13 10:00", "229.0", "61.0"), "cask_loss")
    assert query.words.startswith(
        "6 % a year lost since May 2025: 128.5 L of pure alcohol then, 120.5 L now. "
        "Of the 5 casks most like it, most lost about 3 %. Its strength is usual"
    )
    assert regauge(filled(), "2026-05-13 10:00", "229.0", "61.0") == []  # alone it is within the plain bound


def test_a_warm_loft_where_all_lose_six_is_quiet():
    book = filled()
    for n, kg in enumerate(("229.4", "229.8", "230.4", "229.9", "230.2"), 1):
        book.enter("gauge", f"N{n}", "2025-05-13 11:00", what="plum", net_weight="189.0", strength="61.5", temp="12")
        regauge(book, f"2026-05-13 08:0{n}", kg, "61.0", f"N{n}")
    assert regauge(book, "2026-05-13 10:00", "229.0", "61.0") == []


def test_new_wood_drinks_in_its_first_year():
    book = filled("C3")
    assert regauge(book, "2025-11-13 10:00", "224.5", "61.3", "C3") == []  # 7.9 % in half a year
    book = filled("C1")
    assert codes(regauge(book, "2025-11-13 10:00", "224.5", "61.3", "C1")) == ["cask_loss"]


def test_swapped_digits_make_alcohol_out_of_nothing():
    book = filled(strength="60.2", kg="163.5")
    query = only(regauge(book, "2026-05-11 10:00", "210.1", "95.7"), "cask_grew")
    assert query.weight == "stop"
    assert query.field == "strength"
    assert query.words.endswith("(60.2 %) of 13 May 2025; a cask cannot gain.")
    assert [(s.field, s.raw, hint(s)) for s in query.suggestions] == [("strength", "59.7", "two digits swapped")]


def test_a_gross_weight_that_grew():
    book = filled()
    regauge(book, "2026-05-12 10:00", "234.8", "61.0")
    query = only(regauge(book, "2026-06-12 10:00", "235.3", "61.0"), "cask_grew")
    assert (query.weight, query.field) == ("ask", "gross")
    assert query.words == (
        "Gross 235.3 kg is above 234.8 kg of 12 May 10:00; it can only fall, unless the cask was topped up."
    )
    assert regauge(book, "2026-07-12 10:00", "235.0", "61.0") == []  # within a step of the scale


def test_a_gross_weight_with_swapped_digits():
    book = filled()
    regauge(book, "2025-11-12 10:00", "236.8", "61.2")
    query = only(regauge(book, "2026-05-12 10:00", "263.0", "61.0"), "cask_grew")
    assert (query.weight, query.field) == ("stop", "gross")
    assert ("236.0", "two digits swapped") in [(s.raw, hint(s)) for s in query.suggestions]


def test_a_raw_reading_typed_as_true():
    # True 60.8 % at 10.5 degC shows 57.5 on a glass made for 20 degC (OIML R 22, glass expansion 25e-6, computed).
    query = only(regauge(filled(), "2026-05-12 10:00", "234.8", "57.5", temp="10.5"), "cask_strength_slip")
    assert query.weight == "ask"
    assert query.words == (
        "Strength 57.5 % is 4.0 points below 61.5 % of 13 May 2025; less than a point a year is usual. "
        "As a glass reading at 10.5 °C it is 60.8 % true."
    )
    assert [(s.field, s.raw, s.unit) for s in query.suggestions] == [("glass", "57.5", "pct_glass")]


def test_the_same_figure_in_both_boxes_asks_once():
    query = only(
        regauge(filled(), "2026-05-12 10:00", "234.8", "57.5", temp="10.5", glass="57.5"), "raw_equals_corrected"
    )
    assert query.words.endswith("true would be 60.8 % vol.")


def test_a_misread_glass_against_its_history():
    book = filled()
    asked = regauge(book, "2026-05-12 10:00", "234.8", glass="67.5", temp="10.5")
    query = only(asked, "cask_grew")  # 70 % in 185 kg is more alcohol than was filled
    assert (query.weight, query.field) == ("stop", "glass")


def test_two_people_at_one_cask():
    book = filled(kg="193.0", strength="60.1")
    assert regauge(book, "2026-05-12 10:14", "239.3", "59.6", person="PR") == []
    query = only(regauge(book, "2026-05-12 14:02", "239.0", "59.7", person="NS"), "two_people")
    assert query.weight == "ask"
    assert query.words == (
        "Pavel R. gauged this vessel too, 10:14: 239.3 kg, 59.6 %. Noor S. has 239.0 kg, 59.7 %. "
        "Both are kept; which one counts?"
    )
    assert regauge(book, "2026-05-14 10:00", "239.0", "59.6", person="PR") == []


def test_two_people_in_pounds_and_proof():
    book = filled(kg="193.0", strength="60.1")
    regauge(book, "2026-05-12 10:14", "239.3", "59.6", person="PR")
    query = only(regauge(book, "2026-05-12 14:02", "526.9 lb", "119.2 proof", person="NS"), "two_people")
    # 239.3 kg / 0.45359237 = 527.6 lb; 119.2 proof at 60 degF is 59.7 % vol at 20 degC
    assert "10:14: 527.6 lb, 59.6 %. Noor S. has 526.9 lb, 59.7 %." in query.words


def test_a_regauge_of_an_empty_cask():
    assert codes(regauge(Ledger(), "2026-05-12 10:14", "239.3", "59.6")) == ["vessel_empty"]


@pytest.mark.parametrize(("kg", "weight"), [("196.0", None), ("230.0", "stop")])
def test_a_cask_filled_above_its_size(kg, weight):
    # 230 kg at 61.5 % are 253 L; a 225 L cask holds at most 1.02 of its size
    asked = Ledger().enter("gauge", "C1", "2025-11-20 10:00", what="plum", net_weight=kg, strength="61.5")
    assert [(q.code, q.weight) for q in asked] == ([("over_capacity", weight)] if weight else [])


def test_a_gross_weight_a_little_higher_may_be_two_digits_swapped():
    """234.8 kg in May, and a cask can only fall: 234.1 and 233.6 may be meant."""
    book = filled()
    regauge(book, "2026-05-12 10:00", "234.8", "61.0")
    query = only(regauge(book, "2026-06-12 10:00", "243.1", "60.9"), "cask_grew")
    assert (query.weight, query.field) == ("stop", "gross")
    assert [(s.raw, hint(s)) for s in query.suggestions] == [
        ("234.1", "two digits swapped"), ("233.1", "the key beside it"),
    ]
    query = only(regauge(book, "2026-07-12 10:00", "236.3", "60.9"), "cask_grew")
    assert (query.weight, query.field) == ("ask", "gross")
    assert [(s.raw, hint(s)) for s in query.suggestions] == [
        ("233.6", "two digits swapped"), ("233.3", "the key beside it"), ("230.3", "a digit taken for another"),
    ]


def test_a_loss_since_the_last_gauge_is_told_beside_that_of_the_whole_fill():
    """Filled in May 2024, regauged in May 2025 and a year later."""
    book = filled(at="2024-05-13 10:00")
    assert regauge(book, "2025-05-13 10:00", "234.8", "61.0") == []
    query = only(regauge(book, "2026-05-13 10:00", "204.7", "60.5"), "cask_loss")
    # 128.3 L filled; 184.8 kg at 61.0 % are 124.3 L; 154.7 kg at 60.5 % are 103.1 L: 17.0 % and, of all, 9.8 % a year.
    assert query.words.startswith("17 % a year lost since May 2025 (10 % a year since its fill): 124.5 L")
