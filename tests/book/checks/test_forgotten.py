"""Steps that nobody wrote. What is forgotten where is common practice, no source; limits are tried on both sides."""

from tests.book.checks.ledger import Ledger, codes, only
from tests.book.checks.test_run_balance import gauged, run, whole

FRUIT = {"gross": "1652", "tare": "32", "material": "plum", "grower_lot": "x", "temp": "15", "rot": "2"}
WASH = {"from_vessel": "F1", "wash": "482", "wash_strength": "5.1"}
CLOSED = {"final_gravity": "1.011", "volume": "1550", "wash_strength": "5.1", "method": "lab"}


def test_a_ferment_is_closed_before_it_is_charged():
    book = Ledger()
    book.enter("fruit_intake", "F1", "2025-09-10 07:00", **FRUIT)
    query = only(book.enter("charge", "S1", "2025-09-25 08:00", run_name="R-1", **WASH), "wash_open")
    assert (query.weight, query.field) == ("ask", "from_vessel")
    assert query.words.startswith("The ferment in F1 is not closed: its wash is not measured.")
    again = book.enter("charge", "S1", "2025-09-26 08:00", run_name="R-2", **WASH)
    assert "wash_open" not in codes(again)  # said once of a fill
    book.enter("cleaning", "F1", "2025-09-27 08:00", agent="caustic", rinse_ph="7.1", entered="no")
    book.enter("fruit_intake", "F1", "2025-09-28 07:00", **FRUIT)
    third = book.enter("charge", "S1", "2025-10-12 08:00", run_name="R-3", **WASH)
    assert "wash_open" not in codes(third)  # this house closes none
    book = Ledger()
    book.enter("fruit_intake", "F1", "2025-09-10 07:00", **FRUIT)
    book.enter("ferment_closed", "F1", "2025-09-24 18:00", **CLOSED)
    assert codes(book.enter("charge", "S1", "2025-09-25 08:00", run_name="R-1", **WASH)) == []


def watered() -> Ledger:
    book = Ledger()
    book.enter("gauge", "T1", "2026-08-10 08:00", volume="400", strength="61.0", temp="20")
    assert book.enter("reduce", "T1", "2026-08-10 09:00", target="58", water="19.9") == []
    return book


FILL = {"from_vessel": "T1", "lot": "L-1", "tare": "46.3", "gross": "215", "temp": "20", "strength": "58.0",
        "use": "used", "soaked": "yes", "place": "CELL-A1"}


def test_water_is_measured_before_the_next_step():
    query = only(watered().enter("cask_fill", "C4", "2026-08-12 09:00", **FILL), "water_unread")
    assert query.words.startswith("Water went into T1 at 10 August 09:00, and nobody has measured what it came to.")
    assert "water_unread" in codes(watered().enter("reduce", "T1", "2026-08-12 09:00", target="50", water="50"))
    book = watered()
    book.enter("reduce", "T1", "2026-08-12 08:00", target="58", water="0", strength="58.0", temp="20", volume="421")
    assert "water_unread" not in codes(book.enter("cask_fill", "C4", "2026-08-12 09:00", **FILL))
    book = watered()
    book.enter("gauge", "T1", "2026-08-12 08:00", volume="421", strength="58.0", temp="20")
    assert "water_unread" not in codes(book.enter("cask_fill", "C4", "2026-08-12 09:00", **FILL))


def test_a_tank_is_gauged_for_bottling_before_its_bottles():
    given = {"line": "1", "tested": "6", "fill_found": "100", "strength_found": "40.0", "labels_right": "yes"}
    book = Ledger()
    book.enter("gauge", "T1", "2026-08-10 08:00", volume="400", strength="40.0", temp="20")
    query = only(book.enter("bottle_check", "T1", "2026-08-11 08:00", **given), "bottling_ungauged")
    assert query.words.startswith("T1 is not gauged for bottling")
    book.enter("bottling_gauge", "T1", "2026-08-11 09:00", volume="400", strength="40.0", temp="20", batch="K-1",
               label_strength="40")
    assert codes(book.enter("bottle_check", "T1", "2026-08-11 10:00", **given)) == []


def test_parts_of_a_run_are_gauged_in_the_order_of_the_house():
    book = run(Ledger(), "2025-09-20")
    whole(book, "32.0", "2025-09-20")
    run(book)
    query = only(gauged(book, "hearts", "R2", "32.3", "70.5", "13:26"), "fraction_left")
    assert query.words == "The hearts are gauged, and the heads of R-25-02 are not. Gauge them too, with their time."
    assert codes(gauged(book, "heads", "R1", "1.4", "79.4", "13:30")) == []
    first = run()
    assert codes(gauged(first, "hearts", "R2", "32.3", "70.5", "13:26")) == []  # of a first run nobody knows
    assert "fraction_left" in codes(gauged(first, "stillage", "S1", "449", "0.15", "14:00"))


def test_a_run_that_is_gauged_to_its_end_has_ended():
    book = Ledger()
    book.enter("charge", "S1", "2025-09-25 08:05", run_name="R-1", heads_to="R1", hearts_to="R2", tails_to="R3", **WASH)
    for event, at, receiver in (("heads_cut", "09:21", "R2"), ("hearts_cut", "11:47", "R3")):
        book.enter("cut", "S1", f"2025-09-25 {at}", event=event, receiver=receiver)
    assert "run_not_ended" not in codes(gauged(book, "hearts", "R2", "32.3", "70.5", "12:26"))
    assert "run_not_ended" in codes(gauged(book, "tails", "R3", "14.3", "28.2", "13:32"))


def test_a_vessel_that_is_cleaned_is_empty():
    clean = {"agent": "caustic 2 %", "rinse_ph": "7.1", "entered": "no"}
    book = Ledger()
    book.enter("fruit_intake", "F1", "2025-09-10 07:00", **FRUIT)
    query = only(book.enter("cleaning", "F1", "2025-09-11 07:00", **clean), "cleaned_full")
    assert query.words.startswith("F1 is cleaned, and the book has ")
    book.enter("charge", "S1", "2025-09-25 08:00", run_name="R-1", **WASH)
    assert codes(book.enter("cleaning", "F1", "2025-09-26 07:00", **clean)) == []  # what is left there is lees
    assert codes(Ledger().enter("cleaning", "F1", "2025-09-11 07:00", **clean)) == []


def test_yeast_goes_in_once():
    yeast = {"what": "yeast", "lot_no": "Y4", "amount": "250 g", "is_sugar": "no"}
    book = Ledger()
    book.enter("fruit_intake", "F1", "2025-09-10 07:00", **FRUIT)
    book.enter("addition", "F1", "2025-09-10 09:00", **yeast)
    assert only(book.enter("addition", "F1", "2025-09-11 09:00", **yeast), "added_again").weight == "ask"
    assert codes(book.enter("addition", "F1", "2025-09-12 09:00", **{**yeast, "amount": "300 g"})) == []
    assert codes(book.enter("addition", "F1", "2025-09-18 09:00", **yeast)) == []  # a week later it is another start
    food = {**yeast, "what": "yeast_food"}
    book.enter("addition", "F1", "2025-09-18 10:00", **food)
    assert codes(book.enter("addition", "F1", "2025-09-19 10:00", **food)) == []  # food is given in parts


def test_a_cask_that_is_emptied_into_another_leaves_no_more_than_its_wood_keeps():
    def poured(kg: str, work: str = "recask") -> list:
        book = Ledger()
        for cask in ("C4", "C5"):
            book.enter("opening", cask, "2026-05-02 09:00", spirit="plum", gross="136.3", tare="46.3", strength="60",
                       filled_on="2024-11-21")
        return book.enter("top_up", "C4", "2026-05-03 09:00", work=work, from_vessel="C5", net_weight=kg, strength="60",
                          temp="20")

    query = only(poured("20"), "recask_rest")
    assert (query.weight, query.field) == ("ask", "work")
    assert codes(poured("20", "top_up")) == []
    assert "recask_rest" not in codes(poured("83"))  # wood keeps up to 8 kg: 83 + 7 = 90
    assert "recask_rest" in codes(poured("79"))


def test_hearts_are_moved_when_all_of_their_run_is_gauged_as_before():
    move = {"from_account": "production", "to_account": "storage", "to_vessel": "T1", "purpose": "deposit",
            "spirit": "plum", "distilling_strength": "70.5", "volume": "32", "strength": "70.5", "temp": "20"}
    book = run(Ledger(), "2025-09-20")
    whole(book, "32.0", "2025-09-20")
    assert codes(book.enter("account_move", "R2", "2025-09-20 15:00", serial="1", **move)) == []
    run(book)
    gauged(book, "heads", "R1", "1.4", "79.4", "13:20")
    gauged(book, "hearts", "R2", "32.0", "70.5", "13:26")
    query = only(book.enter("account_move", "R2", "2025-09-25 15:00", serial="2", **move), "fraction_left")
    assert query.words == "R2 is emptied, and the tails of R-25-02 are not gauged. Gauge them too."
