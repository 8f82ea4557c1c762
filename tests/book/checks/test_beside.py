"""A figure against what the book has beside it: the readings before, the vessel it comes from, the run it is of.

Limits are the house's own, common practice, no source; each is tried on both sides. Sums stand beside the figures.
"""

from tests.book.checks.ledger import Ledger, codes, only
from tests.book.checks.test_run_balance import DAY, gauged, run


def in_hearts() -> Ledger:
    """A run whose hearts have three readings at 12 L/h and 15 degC, falling a point in twenty minutes."""
    book = Ledger()
    book.enter("fruit_intake", "F1", f"{DAY} 07:00", gross="1652", tare="32", material="plum", grower_lot="x",
               temp="15", rot="2")
    book.enter("charge", "S1", f"{DAY} 08:05", from_vessel="F1", wash="482", wash_strength="5.1", heads_to="R1",
               hearts_to="R2", tails_to="R3")
    book.enter("cut", "S1", f"{DAY} 09:03", event="first_drop")
    book.enter("cut", "S1", f"{DAY} 09:20", event="heads_cut", receiver="R2")
    for at, pct, vapour in (("09:40", "74.0", "84.8"), ("10:00", "73.0", "85.1"), ("10:20", "72.0", "85.5")):
        assert reading(book, at, pct, vapour_temp=vapour) == []
    return book


def reading(book: Ledger, at: str, pct: str, temp: str = "15.0", flow: str = "12.0", **more: str):
    return book.enter("run_reading", "S1", f"{DAY} {at}", strength=pct, temp=temp, flow=flow, **more)


def test_what_is_taken_is_as_strong_as_its_vessel():
    def filled(pct: str):
        book = Ledger()
        book.enter("gauge", "T1", "2026-08-10 08:00", volume="400", strength="61.0", temp="20")
        return book.enter("cask_fill", "C4", "2026-08-10 09:00", from_vessel="T1", lot="L-1", tare="46.3", gross="220",
                          temp="20", strength=pct, use="used", soaked="yes", place="CELL-A1")

    assert codes(filled("62.0")) == []
    query = only(filled("62.1"), "source_strength")
    assert query.field == "strength"
    assert query.words.startswith("True strength 62.1 %, 61.0 % in T1 by the book: 1.1 points apart.")
    assert [s.raw for s in only(filled("16.0"), "source_strength").suggestions] == ["61.0"]


def test_a_wash_is_as_strong_as_its_closed_ferment():
    def charged(pct: str):
        book = Ledger()
        book.enter("fruit_intake", "F1", "2025-09-10 07:00", gross="1652", tare="32", material="plum", grower_lot="x",
                   temp="15", rot="2")
        book.enter("ferment_closed", "F1", "2025-09-24 07:00", final_gravity="1.011", volume="1540",
                   wash_strength="5.1")
        return book.enter("charge", "S1", f"{DAY} 08:05", from_vessel="F1", wash="482", wash_strength=pct)

    assert codes(charged("5.6")) == []
    assert only(charged("5.7"), "source_strength").field == "wash_strength"


def test_water_that_overshoots_and_water_that_a_slip_explains():
    """34.4 kg bring 100 L of 60 % to 45 %."""
    def water(kg: str):
        book = Ledger()
        book.enter("gauge", "T1", "2026-08-10 08:00", volume="100.0", strength="60.0", temp="20")
        return book.enter("reduce", "T1", "2026-08-10 09:00", target="45", water=kg)

    assert codes(water("35.5")) == codes(water("15.0")) == []
    assert only(water("43.4"), "water_off").field == "water"
    assert only(water("0"), "water_off").field == "water"  # and nothing measured
    assert [s.raw for s in only(water("3.4"), "water_off").suggestions] == ["34.0"]


def test_a_fraction_is_where_its_cut_sent_it_and_as_strong_as_it_ran():
    assert only(gauged(run(), "hearts", "R3", "32.3", "70.5", "13:20"), "fraction_receiver").field == "fraction"
    assert only(gauged(run(), "low_wines", "R2", "32.3", "70.5", "13:20"), "fraction_uncut").field == "fraction"
    for pct, asked in (("75.5", []), ("76.5", ["fraction_strength"])):  # 73 on average, three off
        book = in_hearts()
        book.enter("cut", "S1", f"{DAY} 10:40", event="hearts_cut", receiver="R3")
        found = gauged(book, "hearts", "R2", "16.0", pct, "13:20")
        assert [code for code in codes(found) if code == "fraction_strength"] == asked


def test_a_remnant_is_what_the_book_has_there():
    def after(remnant: str, pct: str = "70.5"):
        book = run()
        gauged(book, "hearts", "R2", "32.3", "70.5", "13:26")
        book = run(book, "2025-09-26", "R-25-03")
        more = {"remnant_strength": pct} if remnant != "0" else {}
        return codes(gauged(book, "hearts", "R2", "64.0", "70.5", "13:26", "2025-09-26", remnant=remnant, **more))

    assert "remnant_off" not in after("32.3")
    assert "remnant_off" in after("0")
    assert "remnant_off" not in after("32.3", "72.4")
    assert "remnant_off" in after("32.3", "72.7")


def test_a_charge_before_the_run_before_is_gauged():
    book = run()
    gauged(book, "heads", "R1", "1.4", "79.4", "13:20")
    again = {"from_vessel": "F1", "wash": "482", "wash_strength": "5.1"}
    query = only([one for one in book.enter("charge", "S1", "2025-09-26 08:00", run_name="R-25-03", **again)
                  if one.code == "run_ungauged"], "run_ungauged")
    assert query.words.startswith("Of the run before, R-25-02, the hearts are not gauged:")


def test_a_name_given_twice_and_the_next_one_offered():
    book = run()
    asked = book.enter("charge", "S1", "2025-09-26 08:00", run_name="R-25-02", from_vessel="F1", wash="482",
                       wash_strength="5.1")
    query = only([one for one in asked if one.code == "named_twice"], "named_twice")
    assert [s.raw for s in query.suggestions] == ["R-25-03"]


def test_the_same_load_hours_later():
    def load(at: str, gross: str = "1652"):
        book = Ledger()
        given = {"tare": "32", "material": "plum", "grower_lot": "x", "temp": "15", "rot": "2"}
        book.enter("fruit_intake", "F1", "2025-09-10 07:00", gross="800", **given)
        return codes(book.enter("fruit_intake", "F1", at, gross=gross, **given))

    assert load("2025-09-10 09:00", "800") == ["moved_twice"]
    assert load("2025-09-10 09:00", "801") == []
    assert load("2025-09-11 07:01", "800") == []


def ferment(gravity: str, temp: str = "15.0", **more: str):
    """The first reading of 1620 kg of plums of 13 degrees Brix: 1.0525 (ICUMSA 1974 by way of trade/scales.py)."""
    book = Ledger()
    book.enter("fruit_intake", "F1", "2025-09-10 07:00", gross="1652", tare="32", material="plum", grower_lot="x",
               sugar="13.0", temp="15", rot="2")
    return book, book.enter("ferment_reading", "F1", "2025-09-11 08:00", gravity=gravity, temp=temp, **more)


def test_a_first_gravity_is_that_of_the_sugar():
    assert ferment("1.058")[1] == ferment("1.039")[1] == []
    assert only(ferment("1.059")[1], "sugar_gravity").field == "gravity"
    assert only(ferment("1.038")[1], "sugar_gravity").field == "gravity"


def test_a_mash_that_jumps():
    def then(temp: str):
        begun = ferment("1.052", temp="19.0")[0]
        return codes(begun.enter("ferment_reading", "F1", "2025-09-12 08:00", gravity="1.050", temp=temp))

    # Within 12 to 20 degrees C, which is usual: beyond it one question speaks of both.
    assert "ferment_jump" not in then("13.0")
    assert "ferment_jump" in then("12.9")


def test_a_ferment_closes_where_it_stood():
    def close(gravity: str = "1.050", litres: str = "1540"):
        return codes(ferment("1.052")[0].enter(
            "ferment_closed", "F1", "2025-09-12 08:00", final_gravity=gravity, volume=litres, wash_strength="6.0"))

    assert "close_gravity" not in close("1.048")
    assert "close_gravity" in close("1.047")
    assert "close_volume" not in close(litres="1240")  # 1543 L of mash, a fifth less is 1234
    assert "close_volume" in close(litres="1230")


def test_typed_days_later_on_a_phone():
    for hours, weight in ((36, "note"), (37, "ask")):
        book = Ledger()
        book.enter("gauge", "T1", "2026-08-09 08:00", volume="100.0", strength="60.0", temp="20")
        asked = book.enter("gauge", "T1", "2026-08-10 08:00", volume="100.0", strength="60.0", temp="20",
                           typed_min=hours * 60)
        assert only(asked, "late").weight == weight


def test_a_remnant_is_held_against_two_dips_by_squares():
    """However narrow the limits: 0.3 % of 32.3 L and 2 mm of a cube's bottom of 150 L, 0.56 L, each over sqrt(3) and by
    squares, twice, for two dips (JCGM 100, 4.3.7 and 5.1.2): 0.94 L.
    """
    for remnant, asked in (("31.45", []), ("31.30", ["remnant_off"])):
        book = run()
        book.site_values["checks"] = {"remnant_pct": 0.0, "remnant_least_l": 0.0}
        gauged(book, "hearts", "R2", "32.3", "70.5", "13:26")
        book = run(book, "2025-09-26", "R-25-03")
        found = gauged(book, "hearts", "R2", "64.0", "70.5", "13:26", "2025-09-26", remnant=remnant,
                       remnant_strength="70.5")
        assert [code for code in codes(found) if code == "remnant_off"] == asked, remnant


def falling(*gravities: str, temp: str = "17.0") -> list:
    """Ask about the last of some gravities, a day apart, in a mash of plums at an even temperature."""
    book = Ledger()
    book.enter("fruit_intake", "F1", "2025-09-01 07:00", gross="1652", tare="32", material="plum", grower_lot="x",
               temp="15", rot="2")
    for day, gravity in enumerate(gravities, 2):
        is_last = day == len(gravities) + 1
        asked = book.enter("ferment_reading", "F1", f"2025-09-{day:02d} 08:00", gravity=gravity,
                           temp=temp if is_last else "17.0")
    return asked


def test_a_gravity_that_falls_goes_on_falling():
    """It fell 0.010 in a day; a fifth of that is 0.002."""
    assert codes(falling("1.060", "1.050", "1.048")) == []
    query = only(falling("1.060", "1.050", "1.050"), "ferment_row")
    assert query.words == (
        "Gravity 1.050: it fell 0.010 a day, and now hardly. Is it this reading, or that of the line before?"
    )
    assert codes(falling("1.060", "1.055", "1.055")) == []  # so slow a fall may stop


def test_a_gravity_that_has_slowed_does_not_plunge():
    """It fell 0.010 and then 0.006 a day: at most 1.5 times 0.006 and 0.004 more, 0.013."""
    assert codes(falling("1.060", "1.050", "1.044", "1.031")) == []
    query = only(falling("1.060", "1.050", "1.044", "1.030"), "ferment_row")
    assert query.words.startswith("Gravity 1.030: it fell 0.006 a day and had slowed, and now 0.014 a day.")


def test_a_mash_is_as_warm_as_in_its_last_readings():
    """Four readings at 17.0 °C; the least spread is 0.8, and three and a half of it 2.8 °C."""
    row = ("1.060", "1.058", "1.056", "1.054", "1.052")
    assert codes(falling(*row, temp="19.7")) == []
    query = only(falling(*row, temp="19.9"), "ferment_jump")
    assert query.words == "Mash of 19.9 °C, and 17.0 °C in the middle of the last 4 readings. Look again."
    assert codes(falling(*row[:4], temp="19.9")) == []  # three are no row


def test_stillage_is_run_out():
    def left(pct: str) -> list:
        book = run()
        for fraction, vessel, litres, strength in (("heads", "R1", "1.4", "79.4"), ("hearts", "R2", "32.3", "70.5"),
                                                   ("tails", "R3", "14.3", "28.2")):
            gauged(book, fraction, vessel, litres, strength, "13:20")
        return gauged(book, "stillage", "S1", "449", pct, "14:00")

    assert "stillage_strong" not in codes(left("2.0"))
    query = next(one for one in left("6.2") if one.code == "stillage_strong")
    assert query.words.startswith("Stillage of 6.2 %, above 2.0 %: is it run out?")
    assert "0.2" in [one.raw for one in query.suggestions], "a digit taken for another"


def test_heads_of_one_reading_are_about_as_strong_as_it():
    def heads(pct: str) -> list:
        book = Ledger()
        book.enter("fruit_intake", "F1", f"{DAY} 07:00", gross="1652", tare="32", material="plum", grower_lot="x",
                   temp="15", rot="2")
        book.enter("charge", "S1", f"{DAY} 08:05", from_vessel="F1", wash="482", wash_strength="5.1", heads_to="R1",
                   hearts_to="R2", tails_to="R3")
        book.enter("cut", "S1", f"{DAY} 09:03", event="first_drop")
        reading(book, "09:10", "79.0")
        book.enter("cut", "S1", f"{DAY} 09:20", event="heads_cut", receiver="R2")
        return gauged(book, "heads", "R1", "1.4", pct, "13:20")

    assert "fraction_strength" not in codes(heads("71.5"))
    assert "fraction_strength" in codes(heads("70.9"))


def test_a_receiver_has_room_for_the_hearts_that_come():
    """Hearts of 85 L came into R2, which holds 150 L: beside 64 L there is room for as many, beside 66 L there is not.
    """
    def charged(left: str) -> list:
        book = run()
        gauged(book, "hearts", "R2", "85", "70.5", "13:26")
        book.enter("gauge", "R2", f"{DAY} 15:00", volume=left, strength="70.5", temp="20")
        return book.enter("charge", "S1", "2025-09-26 08:05", run_name="R-2", from_vessel="F1", wash="482",
                          wash_strength="5.1", heads_to="R1", hearts_to="R2", tails_to="R3")

    assert "receiver_full" not in codes(charged("64"))
    query = next(one for one in charged("66") if one.code == "receiver_full")
    assert query.words == (
        "R2 holds 66.0 L and has room for 84.0 L; hearts of 85.0 L came into it before. Is a move not logged?"
    )
