"""Moves and dips of tanks. Common practice, no source; 1.5 % from receiver to store: Spirits Act 1880, from memory."""

from math import floor, sqrt

import pytest

from tests.book.checks.ledger import Ledger, codes, only
from webapp.trade.marks import make_mark

DAY = "2025-10-02"


def holding(vessel: str, litres: str, strength: str, book: Ledger | None = None, at: str = "08:00") -> Ledger:
    book = book or Ledger()
    assert book.enter("gauge", vessel, f"{DAY} {at}", volume=litres, strength=strength, temp="20") == []
    return book


def move(book: Ledger, source: str, target: str, litres: str, strength: str, at: str = "10:00", **more: str):
    held = "processing" if source[0] == "T" else "production"  # as the book takes it by the sort of vessel
    given = {"serial": "1", "from_account": held, "to_account": "processing", "purpose": "move",
             "spirit": "plum", "distilling_strength": "70.5", "temp": "20", **more}
    return book.enter("account_move", source, f"{DAY} {at}", to_vessel=target, volume=litres, strength=strength,
                      **given)


def test_a_move_of_all_and_a_move_of_a_part_are_quiet():
    assert move(holding("R2", "100.0", "70.0"), "R2", "T1", "100.0", "70.0") == []
    assert move(holding("R2", "100.0", "70.0"), "R2", "T1", "60.0", "70.0") == []


def test_from_receiver_to_store_one_and_a_half_per_cent_may_stay_behind():
    assert move(holding("R2", "100.0", "70.0"), "R2", "T1", "98.7", "70.0") == []
    query = only(move(holding("R2", "100.0", "70.0"), "R2", "T1", "97.0", "70.0"), "move_balance")
    assert query.words == (
        "In R2 70.00 by the book, into T1 67.90: 2.10 L pure alcohol (3.0 %) left behind. Up to 1.5 % is usual. "
        "Is it in the line or still in the vessel? Gauge it."
    )


def test_from_tank_to_tank_half_a_per_cent():
    assert move(holding("T1", "200.0", "60.0"), "T1", "T3", "199.2", "60.0") == []
    assert only(move(holding("T1", "200.0", "60.0"), "T1", "T3", "196.0", "60.0"), "move_balance").words.startswith(
        "In T1 120.00 by the book, into T3 117.60: 2.40 L pure alcohol (2.0 %) left behind."
    )


def test_what_does_not_fit_into_the_other_vessel():
    asked = move(holding("T1", "400.0", "45.0"), "T1", "T3", "290.0", "45.0")
    assert only(asked, "target_working_level").weight == "ask"
    query = only(move(holding("T1", "400.0", "45.0"), "T1", "T3", "320.0", "45.0"), "target_capacity")
    assert query.weight == "stop"
    assert query.words.startswith("320.0 L then stands in T3 (holds 300 L, working level 285 L).")


def test_dip_against_the_sum():
    book = holding("T1", "200.0", "60.0")
    assert book.enter("gauge", "T1", f"{DAY} 15:00", volume="198.5", strength="60.1", temp="20") == []
    book = holding("T1", "200.0", "60.0")
    asked = book.enter("gauge", "T1", f"{DAY} 15:00", volume="195.0", strength="60.0", temp="20")
    assert only(asked, "dip_sum").words == (
        "195.0 L in T1, 200.0 L by the book: 5.0 L short of the sum (2.5 %). "
        "Look at the dip, then for a move that is not logged."
    )


def blended() -> Ledger:
    """100 L at 70 % and 100 L at 60 % in an empty tank: 130 L pure alcohol in 199.8 L, a mix shrinks."""
    book = holding("T3", "100.0", "60.0", holding("R2", "100.0", "70.0"), "08:30")
    assert move(book, "R2", "T1", "100.0", "70.0", "09:30") == []
    assert move(book, "T3", "T1", "100.0", "60.0", "10:00") == []
    return book


def test_a_blend_against_what_went_in():
    assert blended().enter("gauge", "T1", f"{DAY} 15:00", volume="199.8", strength="65.1", temp="20") == []
    # 199.8 L * 63.5 % = 126.87 L
    asked = blended().enter("gauge", "T1", f"{DAY} 15:00", volume="199.8", strength="63.5", temp="20")
    assert only(asked, "blend_sum").words == (
        "In 130.00, measured 126.87: 3.13 L pure alcohol (2.4 %) less than went into the blend. 0.3 % is usual. "
        "Is it mixed? Read it again."
    )


def test_a_vessel_that_another_phone_has_emptied_is_held_for_a_look():
    book = Ledger()
    book.enter("gauge", "C4", "2025-05-13 10:00", net_weight="160", strength="60", temp="12")
    book.enter("dump", "C4", f"{DAY} 09:00", gross="200.0", empty="52.0", strength="59.8", temp="12", to_vessel="T1")
    asked = book.enter("cask_regauge", "C4", f"{DAY} 10:00", gross="200.1", strength="59.8", temp="12",
                       condition="tight", device="d-2")
    query = only(asked, "emptied_vessel")
    assert query.weight == "stop"
    assert query.words == (
        "C4 was dumped at 09:00 by Noor S. and is empty by the book. Was this read before that? Then amend its time. "
        "Or was it another vessel?"
    )
    assert book.states["v:" + asked_mark(book)]["holds"] is None


def asked_mark(book: Ledger) -> str:
    return next(key[2:] for key in book.states if key.startswith("v:C4"))


def test_the_same_phone_or_days_later_it_is_an_ordinary_question():
    book = Ledger()
    book.enter("gauge", "C4", "2025-05-13 10:00", net_weight="160", strength="60", temp="12")
    book.enter("dump", "C4", f"{DAY} 09:00", gross="200.0", empty="52.0", strength="59.8", temp="12", to_vessel="T1")
    given = {"gross": "200.1", "strength": "59.8", "temp": "12", "condition": "tight"}
    assert codes(book.enter("cask_regauge", "C4", f"{DAY} 10:00", **given)) == ["vessel_empty"]
    book = Ledger()
    assert codes(book.enter("cask_regauge", "C4", f"{DAY} 10:00", device="d-2", **given)) == ["vessel_empty"]


def test_a_vessel_that_is_not_in_the_book():
    asked = Ledger().enter("stock_count", "C4", DAY + " 10:00", found="unknown", label="C 99, pear", place="CELL-B2",
                           signed="Noor S., cellar hand")
    assert only(asked, "not_in_book").words.startswith('Not in the book: "C')


def test_figures_too_neat_to_be_read():
    book = Ledger()
    book.enter("fruit_intake", "F1", "2025-09-01 10:00", gross="1652", tare="32", material="plum", grower_lot="x",
               temp="15", rot="2")
    asked = []
    for n in range(10):
        asked = book.enter("ferment_reading", "F1", f"2025-09-{n + 2:02d} 08:00", temp="17.0",
                           gravity=f"1.0{60 - 3 * n}")
    query = only(asked, "too_neat")
    assert (query.weight, query.field) == ("note", "temp")
    assert query.words == "Mash temperature 17.0 °C, 10 times running. Is it read each time?"
    assert book.enter("ferment_reading", "F1", "2025-09-12 08:00", temp="17.1", gravity="1.030") == []


@pytest.mark.parametrize(
    ("kind", "values"),
    [
        ("ferment_reading", {"gravity": "1.011", "temp": "14"}),
        ("tasting_note", {"reduced_to": "22", "nose_score": "6", "mouth_score": "6", "wood_score": "6",
                          "fault_score": "0", "decision": "hold"}),
        ("sample", {"size": "0.1", "number": "1", "purpose": "analysis", "went": "destroyed"}),
        ("destruction", {"what": "heads", "volume": "2", "strength": "60", "place": "yard", "manner": "poured out",
                         "withdrawn": "no", "watched_by": "NS"}),
    ],
)
def test_every_kind_that_reads_an_emptied_vessel_is_held(kind, values):
    """Emptied by an entry on another vessel: a charge of the still took it all."""
    book = Ledger()
    book.enter("fruit_intake", "F1", f"{DAY} 06:00", gross="600", tare="60", material="plum", grower_lot="G", temp="14",
               rot="0", batch="B")
    book.enter("ferment_closed", "F1", f"{DAY} 07:00", final_gravity="1.010", volume="450", wash_strength="6.0")
    book.enter("charge", "S1", f"{DAY} 08:00", from_vessel="F1", wash="450", wash_strength="6.0", heads_to="R1",
               hearts_to="R2", tails_to="R3")
    asked = book.enter(kind, "F1", f"{DAY} 09:00", device="d-2", **values)
    query = next(query for query in asked if query.code == "emptied_vessel")
    assert query.weight == "stop"
    assert query.words.startswith("F1 was charged to a still at 08:00 by Noor S. and is empty by the book.")
    own = book.enter(kind, "F1", f"{DAY} 09:30", **values)
    assert "emptied_vessel" not in codes(own)


def test_a_vessel_filled_again_is_not_held():
    book = Ledger()
    book.enter("gauge", "T1", f"{DAY} 06:00", volume="100", strength="60", temp="20")
    book.enter("gauge", "T1", f"{DAY} 07:00", volume="0", strength="60", temp="20")
    book.enter("gauge", "T1", f"{DAY} 08:00", volume="50", strength="60", temp="20")
    asked = book.enter("gauge", "T1", f"{DAY} 09:00", volume="50", strength="60", temp="20", device="d-2")
    assert "emptied_vessel" not in codes(asked)


def test_a_move_of_more_than_was_there():
    """100 L at 60 %: 60.00 L. 100.2 L sent is within reading, 101 L within two dips, 102 L is two per cent more."""
    for litres, wanted in (("100.2", []), ("101.0", []), ("102.0", ["move_gain"])):
        book = Ledger()
        book.enter("gauge", "T3", f"{DAY} 06:00", volume="100", strength="60", temp="20")
        asked = book.enter("account_move", "T3", f"{DAY} 07:00", serial="1", from_account="processing",
                           to_account="processing", to_vessel="T1", purpose="move", spirit="plum",
                           distilling_strength="70", volume=litres, strength="60", temp="20")
        assert codes(asked) == wanted
    assert asked[0].words.startswith("In T3 60.00 by the book, 61.20 moved: 1.20 L pure alcohol (2.0 %) more than was")


def test_how_far_a_dip_may_be_from_the_sum():
    """One per cent, or two litres where that is more: common practice, no source. Never less than two dips of a tank of
    1000 L leave open: 0.3 % of what stands there and 2 mm, 2 L, both rectangular (JCGM 100), k = 2.
    """
    from webapp.book.before.limits import LIMITS

    pct, least = LIMITS["dip_pct"].default, LIMITS["dip_least_l"].default
    for booked in (100.0, 400.0, 900.0):
        dip = sqrt((booked * 0.003) ** 2 + 2.0**2) / sqrt(3.0)
        most = floor(max(booked * pct / 100, least, 2 * sqrt(2.0) * dip) * 10) / 10
        for off, is_asked in ((most, False), (most + 0.1, True), (-most, False), (-most - 0.1, True)):
            asked = holding("T1", f"{booked:.1f}", "60.0").enter(
                "gauge", "T1", f"{DAY} 15:00", volume=f"{booked + off:.1f}", strength="60.0", temp="20"
            )
            asked = [query for query in asked if query.code != "over_working_level"]
            assert codes(asked) == ["dip_sum"] * is_asked, (booked, off)
            assert all(("above" in query.words) is (off > 0) and query.field == "volume" for query in asked)


def test_a_blend_that_gained_is_told_with_its_share():
    """199.8 L at 66.6 % are 133.07 L, of 130.00 that went in: 3.07 L, 2.4 % more."""
    asked = blended().enter("gauge", "T1", f"{DAY} 15:00", volume="199.8", strength="66.6", temp="20")
    assert only(asked, "blend_sum").words.startswith(
        "In 130.00, measured 133.07: 3.07 L pure alcohol (2.4 %) more than went into the blend."
    )


def offered(asked) -> list[tuple[str, str]]:
    return [(one.field, one.raw) for query in asked for one in query.suggestions]


def test_a_dip_off_the_sum_offers_the_one_that_comes_to_it():
    """200.0 L stand there: digits swapped give 109.5 for 190.5, a point slipped 20.0, one key 100.0 or 300.0."""
    book = holding("T1", "195.0", "60.0")
    asked = book.enter("gauge", "T1", f"{DAY} 15:00", volume="159.0", strength="60.0", temp="20")
    assert ("volume", "195.0") in offered(asked)
    book = holding("T1", "200.0", "60.0")
    asked = book.enter("gauge", "T1", f"{DAY} 15:00", volume="20.0", strength="60.0", temp="20")
    assert offered(asked)[0] == ("volume", "200.0")


def test_a_move_that_leaves_a_little_or_takes_more_offers_all_that_was_there():
    """96.8 L at 70 % stand there, and 98.6 was typed: the digits swapped are near all of it."""
    asked = move(holding("R2", "96.8", "70.0"), "R2", "T1", "98.6", "70.0")
    assert ("volume", "96.8") in offered(asked)
    asked = move(holding("R2", "98.6", "70.0"), "R2", "T1", "96.8", "70.0")
    assert ("volume", "98.6") in offered(asked)


def test_a_blend_off_its_sum_offers_the_figure_that_comes_to_it():
    """198.9 L at 65.3 % are 129.88 L of 130.00 that went in; 63.5 is its digits changed about and gives 126.30 L."""
    asked = blended().enter("gauge", "T1", f"{DAY} 15:00", volume="198.9", strength="63.5", temp="20")
    assert codes(asked) == ["blend_sum"]
    assert ("strength", "65.3") in offered(asked)


def emptied_before(times: int, **last: str) -> list:
    """Ask about a move out of R2, whose hearts of 100 L at 70 % vol went to T1 whole so many times before."""
    book = Ledger()
    given = {"from_account": "production", "to_account": "storage", "to_vessel": "T1", "purpose": "deposit",
             "spirit": "plum", "distilling_strength": "70", "volume": "100", "strength": "70", "temp": "20"}
    for day in range(times + 1):
        book.enter("fraction_gauge", "R2", f"2025-09-{10 + day} 13:00", still="S1", fraction="hearts", remnant="0",
                   volume="100", strength="70", temp="20", goes_to="stays")
        more = {"serial": str(day + 1), **(last if day == times else {})}
        asked = book.enter("account_move", "R2", f"2025-09-{10 + day} 14:00", **{**given, **more})
    return asked


def test_a_move_of_a_part_is_asked_about_where_all_of_it_went_so_far_or_a_slip_explains_it():
    assert codes(emptied_before(0, volume="60")) == []  # a part, as a house may
    assert only(emptied_before(0, volume="10"), "move_part").suggestions[0].raw == "100.0"  # the point slipped
    query = only(emptied_before(2, volume="60"), "move_part")
    assert query.words.startswith("42.00 of 70.00 L of pure alcohol in R2 go, and 28.00 L pure alcohol stay.")


def test_a_move_goes_where_those_before_it_went():
    assert codes(emptied_before(1)) == []
    query = only(emptied_before(1, to_vessel="T4", volume="100"), "moved_elsewhere")
    assert query.words == "To T4; what went from here before went to T1, which has room. Which tank is it?"
    assert [one.raw for one in query.suggestions] == [make_mark("T1")]
    assert "moved_elsewhere" not in codes(emptied_before(1, to_vessel="T4", spirit="pear"))  # another spirit
    elsewhere = emptied_before(1, to_account="processing", to_vessel="T4")
    query = next(one for one in elsewhere if one.code == "account_habit")
    assert [one.raw for one in query.suggestions] == ["storage"]
    assert "account_same" in codes(emptied_before(0, to_account="production"))


def gauged_three_times(*strengths: str, last: str = "gauge", **more: str) -> list:
    """Ask about the last of some gauges of T1, a day apart; between them nothing was moved."""
    book = Ledger()
    for day, strength in enumerate(strengths, 10):
        kind = last if day == 9 + len(strengths) else "gauge"
        given = {"volume": "400", "strength": strength, "temp": "20"} | (more if kind == last else {})
        asked = book.enter(kind, "T1", f"2026-08-{day} 08:00", **given)
    return asked


def test_of_three_gauges_of_a_tank_the_one_that_stands_alone_is_asked_about():
    query = only(gauged_three_times("61.3", "36.1", "61.2"), "gauge_earlier")
    assert query.words == (
        "36.1 % of 08:00 the day before stand alone: 61.3 before and 61.2 now. Look at that entry; this one goes "
        "together with all the others."
    )
    assert "held_strength" in codes(gauged_three_times("61.3", "61.3", "36.1"))  # this one is it
    assert "held_strength" in codes(gauged_three_times("61.3", "36.1", "52.0"))  # none goes with another
    assert "gauge_earlier" not in codes(gauged_three_times("61.3", "36.1"))


def test_what_is_taken_out_of_a_tank_tells_which_of_its_gauges_was_odd():
    book = Ledger()
    for day, strength in (("10", "61.3"), ("11", "36.1")):
        book.enter("gauge", "T1", f"2026-08-{day} 08:00", volume="400", strength=strength, temp="20")
    asked = book.enter("cask_fill", "C4", "2026-08-12 09:00", from_vessel="T1", lot="L-1", tare="46.3", gross="220",
                       temp="20", strength="61.2", use="used", soaked="yes", place="CELL-A1")
    assert "gauge_earlier" in codes(asked) and "source_strength" not in codes(asked)
