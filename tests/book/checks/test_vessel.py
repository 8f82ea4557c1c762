"""Vessels: what they hold, and what is in them. Limits: common practice, no source."""

import pytest

from tests.book.checks.ledger import Ledger, codes, hint, only

DAY = "2025-10-02"


def gauge(vessel: str, litres: str):
    return Ledger().enter("gauge", vessel, f"{DAY} 10:00", volume=litres, strength="60", temp="20")


@pytest.mark.parametrize(
    ("litres", "code", "weight"),
    [("950", "", ""), ("950.1", "over_working_level", "ask"), ("1000", "over_working_level", "ask"),
     ("1000.1", "over_capacity", "stop")],
)
def test_a_tank_has_a_working_level_and_a_brim(litres: str, code: str, weight: str):
    """1000 L to the brim, worked to 950 L; 50 mL more is rounding."""
    asked = gauge("T1", litres)
    assert [(query.code, query.weight, query.field) for query in asked] == ([(code, weight, "volume")] if code else [])


def test_both_are_said_with_what_would_be_in_it():
    (query,) = gauge("T1", "1010")
    assert query.words.startswith("1010.0 L")
    assert "T1" in query.words and "1000 L" in query.words
    (query,) = gauge("T1", "980")
    assert query.words.startswith("980.0 L")
    assert "T1" in query.words and "950 L" in query.words


def test_a_figure_ten_times_too_large_is_guessed():
    """Of 4800 L in a vessel of 1000 L, the point left out is the likeliest."""
    query = only(gauge("T1", "4800"), "over_capacity")
    assert "480.0" in [slip.raw for slip in query.suggestions]
    assert all(hint(slip) for slip in query.suggestions)


@pytest.mark.parametrize(("litres", "is_asked"), [("229.5", False), ("229.6", True)])
def test_a_cask_holds_two_per_cent_more_than_its_size(litres: str, is_asked: bool):
    """225 L x 1.02 = 229.5 L."""
    assert codes(gauge("C1", litres)) == ["over_capacity"] * is_asked


def test_a_weight_is_asked_about_at_the_weight():
    asked = Ledger().enter("gauge", "C1", f"{DAY} 10:00", net_weight="230", strength="60", temp="20")
    assert [(query.code, query.field) for query in asked] == [("over_capacity", "net_weight")]


def load(book: Ledger, gross: str, at: str = "10:00"):
    return book.enter("fruit_intake", "F1", f"{DAY} {at}", gross=gross, tare="0", material="plum", grower_lot="x",
                      temp="15", rot="2")


@pytest.mark.parametrize(
    ("kilograms", "code"), [("1785", ""), ("1786", "over_working_level"), ("2100", "over_working_level"),
                            ("2101", "over_capacity")]
)
def test_a_litre_of_mash_weighs_one_and_a_twentieth_kilograms(kilograms: str, code: str):
    """1700 L x 1.05 = 1785 kg; 2000 L x 1.05 = 2100 kg."""
    assert codes(load(Ledger(), kilograms)) == ([code] if code else [])


def test_loads_of_one_ferment_add_up():
    book = Ledger()
    assert load(book, "1000") == []
    (query,) = load(book, "900", "11:00")
    assert (query.code, query.field) == ("over_working_level", "gross")
    assert "1900 kg" in query.words and "1000 kg" in query.words
    book = Ledger()
    (query,) = load(book, "1900")
    assert "1900 kg" in query.words and "1000 kg" not in query.words


def charged(book: Ledger, wash: str, **more: str):
    return book.enter("charge", "S1", f"{DAY} 12:00", from_vessel="F1", wash=wash, heads_to="R1", hearts_to="R2",
                      tails_to="R3", **{"wash_strength": "6.0", **more})


@pytest.mark.parametrize(
    ("wash", "feints", "code"), [("530", "", ""), ("500", "30", ""), ("500", "31", "over_working_level"),
                                 ("620", "31", "over_capacity")]
)
def test_a_still_holds_wash_and_feints(wash: str, feints: str, code: str):
    """650 L to the brim, worked to 530 L."""
    book = Ledger()
    load(book, "1500")
    more = {"feints": feints, "feints_strength": "28"} if feints else {}
    asked = [query for query in charged(book, wash, **more) if query.code.startswith("over")]
    assert [(query.code, query.field) for query in asked] == ([(code, "wash")] if code else [])
    if asked:
        whole = f"{int(wash) + int(feints)}.0 L"
        assert asked[0].words.startswith(f"A charge of {whole} ({wash}.0 wash and {feints}.0 feints) ")


@pytest.mark.parametrize(
    ("strength", "code", "weight"),
    [("10", "", ""), ("10.1", "wash_strength", "ask"), ("18", "wash_strength", "ask"),
     ("18.1", "wash_strength", "stop")],
)
def test_a_ferment_gives_hardly_more_than_ten_per_cent(strength: str, code: str, weight: str):
    book = Ledger()
    load(book, "1500")
    asked = [query for query in charged(book, "450", wash_strength=strength) if query.field == "wash_strength"]
    assert [(query.code, query.weight) for query in asked] == ([(code, weight)] if code else [])
    if asked:
        assert f"{strength} % vol" in asked[0].words and "F1" in asked[0].words


def test_a_charge_out_of_an_empty_vessel():
    query = only(charged(Ledger(), "450"), "source_empty")
    assert (query.weight, query.field) == ("ask", "from_vessel")
    assert "F1" in query.words


def test_a_reading_on_an_empty_vessel():
    query = only(Ledger().enter("ferment_reading", "F1", f"{DAY} 10:00", temp="17", gravity="1.050"), "vessel_empty")
    assert (query.weight, query.field) == ("ask", "")
    assert "F1" in query.words


def fill(book: Ledger):
    return book.enter("cask_fill", "C4", f"{DAY} 12:00", from_vessel="T1", lot="L-01", what="plum", tare="46.3",
                      gross="146.3", temp="20", strength="60", use="used", soaked="yes", place="CELL-A1")


def test_a_cask_that_is_filled_is_empty_before():
    """100 kg at 59 % vol, 911.3 kg/m3 by OIML R 22 (1975): 109.7 L, 64.7 L of pure alcohol."""
    book = Ledger()
    book.enter("gauge", "T1", f"{DAY} 08:00", volume="400", strength="60", temp="20")
    assert fill(book) == []
    book = Ledger()
    book.enter("gauge", "T1", f"{DAY} 08:00", volume="400", strength="60", temp="20")
    book.enter("gauge", "C4", f"{DAY} 08:10", net_weight="100", strength="59", temp="20")
    query = next(query for query in fill(book) if query.code == "vessel_not_empty")
    assert (query.weight, query.field) == ("ask", "")
    assert query.words == (
        "C4 is not empty by the book: 64.8 L of pure alcohol, spirit. Right cask? Was it dumped?"
    )
