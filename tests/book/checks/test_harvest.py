"""What a ferment gives. All of it common practice, no source: a season that a distiller calls ordinary asks nothing.

About 130 US gallons of fermented fruit in the pot give 54 to 55 L of spirit at 140 proof (70 % vol); a cold ferment
under 60 degF takes about ten days; fruit brandy lies two years in oak at least.
"""

import pytest

from tests.book.checks.ledger import Ledger, codes, only

NIGHT_F = ("58.5", "58.0", "57.5", "58.0", "58.5", "58.0", "57.0", "57.5", "57.0", "57.5", "57.0")
FALL = ("1.078", "1.074", "1.068", "1.061", "1.053", "1.045", "1.037", "1.029", "1.022", "1.016", "1.012")


def ferment(strength: str = "8.8", kg: str = "517"):
    """Half a ton of ripe plums at 20 degBx, ten days under 60 degF; then the wash: 130 gallons at this strength."""
    book = Ledger()
    assert book.enter("fruit_intake", "F1", "2025-09-04 09:00", gross=kg, tare="0", material="plum", grower_lot="x",
                      temp="16", rot="2", sugar="20 Bx") == []
    for n, (gravity, temp) in enumerate(zip(FALL, NIGHT_F, strict=True)):
        read = book.enter("ferment_reading", "F1", f"2025-09-{4 + n:02d} 12:00", gravity=gravity, temp=f"{temp} degF")
        assert read == []
    return book, book.enter("ferment_closed", "F1", "2025-09-15 09:00", final_gravity="1.012", volume="130 gal",
                            wash_strength=strength, method="lab")


def test_an_ordinary_season_asks_nothing_from_fruit_to_spirit():
    book, asked = ferment()  # 492 L at 8.8 %: 43.3 L; 517 kg * 0.85 * 16.5 % * 0.61 = 44.2 L
    assert asked == []
    charged = book.enter("charge", "S1", "2025-09-15 10:00", run_name="R", from_vessel="F1", wash="130 gal",
                         wash_strength="8.8", heads_to="R1", hearts_to="R2", tails_to="R3")
    assert charged == []
    book.enter("cut", "S1", "2025-09-15 11:30", event="heads_cut", receiver="R2")
    book.enter("cut", "S1", "2025-09-15 15:30", event="hearts_cut", receiver="R3")
    book.enter("run_end", "S1", "2025-09-15 16:30", reason="strength")
    gauged = [("heads", "R1", "1.4", "79"), ("hearts", "R2", "54.5", "140 proof"), ("tails", "R3", "13.0", "25")]
    for n, (fraction, vessel, litres, strength) in enumerate(gauged):  # 1.1 + 38.1 + 3.3 L, and 0.8 L in the stillage
        assert book.enter("fraction_gauge", vessel, f"2025-09-15 17:{10 * n:02d}", still="S1", fraction=fraction,
                          volume=litres, strength=strength, temp="20", goes_to="stays") == []
    spirit = next(state["holds"] for key, state in book.states.items() if key.startswith("v:R2"))
    assert spirit["strength_pct"] == pytest.approx(70.0, abs=0.15)  # 140 proof at 60 degF, 27 CFR 30: about 70 % vol
    assert spirit["lpa_l"] == pytest.approx(38.15, abs=0.1)


@pytest.mark.parametrize("share", [0.7, 0.85, 1.15, 1.3])
def test_better_and_worse_years_are_ordinary(share: float):
    # Above 10 % vol the strength by itself is asked about; the yield is not.
    assert set(codes(ferment(f"{8.8 * share:.1f}", "537")[1])) <= {"unusual"}


def test_twice_as_good_and_half_as_good_are_asked_about():
    twice = ferment("17.6")[1]
    query = next(q for q in twice if q.code == "ferment_yield")
    assert query.words == (  # 517 kg * 20 % * 0.65 L/kg = 67.2 L
        "86.6 L pure alcohol in the wash, from 517 kg of fruit at 20.0 °Bx: all of its sugar could not give more than "
        "67.2 L. Look at the strength, the dip and the weights; was sugar added?"
    )
    assert only(ferment("4.4")[1], "ferment_yield").words == (
        "21.7 L pure alcohol in the wash, from 517 kg of fruit at 20.0 °Bx: about 44.2 L could be expected. "
        "That is little: 49 %, where 60 to 140 % is usual. Look at strength, dip and weights."
    )


def test_much_though_possible():
    assert "That is much: 146 %" in next(q.words for q in ferment("13.1")[1] if q.code == "ferment_yield")


def test_without_sugar_read_nothing_is_said():
    book = Ledger()
    book.enter("fruit_intake", "F1", "2025-09-04 09:00", gross="517", tare="0", material="plum", grower_lot="x",
               temp="16", rot="2")
    asked = book.enter("ferment_closed", "F1", "2025-09-15 09:00", final_gravity="1.012", volume="492",
                       wash_strength="4")
    assert asked == []


def test_grain_by_its_weight():
    for strength, found in (("6.9", []), ("3.4", ["ferment_yield"])):  # 103.5 and 51 L of 370 kg; 29 L a 100 kg
        book = Ledger()
        book.enter("fruit_intake", "F1", "2026-01-12 09:00", gross="370", tare="0", material="rye", grower_lot="x",
                   temp="16", rot="0")
        asked = book.enter("ferment_closed", "F1", "2026-01-16 09:00", final_gravity="1.003", volume="1500",
                           wash_strength=strength)
        assert codes(asked) == found


def test_two_years_in_oak_ask_nothing():
    book = Ledger()
    book.enter("gauge", "C4", "2023-11-20 10:00", net_weight="160", strength="61.0", temp="12", purpose="opening")
    assert book.enter("dump", "C4", "2025-12-10 09:00", gross="199.0", empty="52.0", strength="60.0", temp="12",
                      to_vessel="T1") == []


def test_another_fruit_in_a_fermenter_is_asked_about_with_its_share():
    """1200 kg of plums and 400 kg of cherries: a quarter. A name by one fruit alone: Regulation (EU) 2019/787, annex I,
    category 9 (fruit spirit of two or more fruits is called so), from memory.
    """
    book = Ledger()
    given = {"grower_lot": "x", "temp": "15", "rot": "2"}
    assert book.enter("fruit_intake", "F1", "2025-09-24 07:00", gross="910", tare="10", material="plum", **given) == []
    assert book.enter("fruit_intake", "F1", "2025-09-24 07:30", gross="310", tare="10", material="plum", **given) == []
    asked = book.enter("fruit_intake", "F1", "2025-09-24 08:00", gross="410", tare="10", material="cherry", **given)
    assert [(query.code, query.weight, query.field) for query in asked] == [("fruit_mixed", "ask", "material")]
    assert "400 kg of cherry go to 1200 kg of plum: 25 % of the mash." in asked[0].words
