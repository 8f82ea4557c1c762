"""What is asked of bottled goods and of bulk that comes in. Common practice, no source, where a check names none."""

import pytest

from tests.book.checks.bottled import DAY, bottle, come_in, count, out
from tests.book.checks.ledger import Ledger, only
from webapp.book.before.limits import COMMON_PRACTICE
from webapp.book.before.view import Query
from webapp.book.checks.goods import LIMITS, SOURCES

# Sixty bottles of another house in ten boxes; nobody has said how many are in each.
LOOSE = {"consignor": "Northhill", "document": "D-7", "batch": "K2603", "spirit": "kirsch", "strength": "45",
         "bottle_size": "0.5", "bottles": "60", "case_from": "1", "case_to": "10", "seals": "yes"}


def asked(query: Query) -> tuple[str, str, str]:
    return query.code, query.weight, query.field


def bottled(**more: str | None) -> Ledger:
    book = Ledger()
    bottle(book, **more)
    return book


def test_a_name_that_no_bottling_has_stops_the_removal():
    query = only(out(bottled(), batch="K-99", bottles="2"), "unknown_bottling")
    assert asked(query) == ("unknown_bottling", "stop", "batch")
    assert query.words.startswith("No bottling in the book is called K-99")
    with_case = only(out(bottled(), batch="K-99", bottles="2", case_from="7"), "unknown_bottling")
    assert with_case.words != query.words and "case 7" in with_case.words


def test_a_name_of_any_length_is_repeated_up_to_forty_characters_and_a_case_up_to_twenty():
    query = only(out(bottled(), batch="x" * 41, bottles="2", case_from="9" * 21), "unknown_bottling")
    said = dict(query.message.params)
    assert said == {"batch": "x" * 40, "case": "9" * 20}


def test_two_bottlings_of_a_name_are_told_apart_by_a_case():
    book = bottled()
    bottle(book, 61, at="09:00")
    query = only(out(book, batch="K-26-03", bottles="2"), "unknown_bottling")
    assert asked(query) == ("unknown_bottling", "stop", "batch")
    assert query.words.startswith("2 bottlings answer to K-26-03. Type the first case too")
    assert out(book, batch="K-26-03", bottles="2", case_from="61") == []
    # A case that neither has: nobody can say which.
    assert only(out(book, batch="K-26-03", bottles="2", case_from="121"), "unknown_bottling").weight == "stop"


def test_the_last_bottle_may_leave_and_one_more_is_asked_about():
    book = bottled()
    assert out(book, cases="58", case_from="1", case_to="58") == []
    assert out(book, bottles="12") == []
    book = bottled()
    assert out(book, cases="58", case_from="1", case_to="58") == []
    query = only(out(book, bottles="13"), "more_than_bottled")
    assert asked(query) == ("more_than_bottled", "ask", "bottles")
    assert query.words.startswith(
        "K2603: 360 bottled, 348 gone, 12 on hand by the book; 13 now are 1 more than there are."
    )


def test_the_question_stands_at_the_cases_where_cases_were_typed():
    query = only(out(bottled(), cases="61"), "more_than_bottled")
    assert query.field == "cases"
    back = only(out(bottled(), "returned", cases="1", case_from="1"), "more_than_bottled")
    assert asked(back) == ("more_than_bottled", "ask", "cases")
    assert back.words.startswith("K2603: 360 bottled, 360 on hand by the book; 6 cannot all come back.")
    assert only(out(bottled(), "returned", bottles="1"), "more_than_bottled").field == "bottles"


def test_as_many_as_left_may_come_back():
    book = bottled()
    assert out(book, cases="2", case_from="1", case_to="2") == []
    assert out(book, "returned", cases="2", case_from="1", case_to="2") == []


def test_a_bottling_without_a_lot_mark_is_called_by_its_batch():
    query = only(out(bottled(lot_mark=None), batch="K-26-03", bottles="361"), "more_than_bottled")
    assert query.words.startswith("K-26-03: 360 bottled, 0 gone")


@pytest.mark.parametrize(
    ("first", "last", "wrong", "field"),
    [
        ("61", "61", "61", "case_from"), ("0", "1", "0", "case_from"), ("60", "61", "61", "case_to"),
        ("box", "2", "box", "case_from"), ("A-1", "A-2", "A-1", "case_from"), ("1", "x" * 25, "x" * 20, "case_to"),
    ],
)
def test_a_case_that_is_none_of_the_bottling(first: str, last: str, wrong: str, field: str):
    asked_now = out(bottled(), cases="2", case_from=first, case_to=last)
    query = next(query for query in asked_now if query.code == "other_case")
    assert asked(query) == ("other_case", "ask", field)
    assert query.words == (
        f"Case {wrong} is none of this bottling: it has 1 to 60. Look at the case again."
    )
    assert [q.code for q in asked_now] == ["other_case"], "of cases that are not there nothing else is asked"


def test_the_odd_case_is_one_of_the_bottling():
    """359 bottles: 59 cases of 6 and one of 5, which has an R after its number."""
    book = bottled(filled="359", case_to="59", odd_case="60R")
    assert out(book, bottles="5", case_from="60r ") == []
    assert only(out(book, bottles="5", case_from="60"), "other_case").field == "case_from"


def test_numbers_of_cases_against_how_many_are_typed():
    assert out(bottled(), cases="10", case_from="1", case_to="10") == []
    query = only(out(bottled(), cases="11", case_from="1", case_to="10"), "case_numbers")
    assert asked(query) == ("case_numbers", "ask", "cases")
    assert query.words == "Cases 1 to 10 are 10; 11 are typed. Which is right?"
    # One number alone is one case.
    assert only(out(bottled(), cases="2", case_from="7"), "case_numbers").words.startswith("Cases 7 to 7 are 1; 2 are")
    assert out(bottled(), cases="1", case_from="7") == []
    # Where nobody has said what a case holds, cases count for nothing, and their number is not asked about.
    book = Ledger()
    assert book.enter("goods_receipt", "", f"{DAY} 09:00", **LOOSE) == []
    assert out(book, cases="11", case_from="1", case_to="10") == []


@pytest.mark.parametrize(
    ("first", "last", "words"),
    [
        ("14", "20", None), ("31", "40", None), ("20", "21", "Case 21 has"), ("30", "31", "Case 30 has"),
        ("24", "26", "Cases 24 to 26 have"), ("19", "33", "Cases 21 to 30 have"),
    ],
)
def test_cases_that_have_left_already(first: str, last: str, words: str | None):
    book = bottled()
    assert out(book, cases="10", case_from="21", case_to="30") == []
    asked_now = out(book, cases=str(int(last) - int(first) + 1), case_from=first, case_to=last)
    if words is None:
        assert asked_now == []
        return
    query = only(asked_now, "case_gone")
    assert asked(query) == ("case_gone", "ask", "case_from")
    assert query.words.startswith(f"{words} left already by the book.")


def test_what_came_back_had_left():
    book = bottled()
    assert out(book, cases="10", case_from="21", case_to="30") == []
    assert out(book, "returned", cases="10", case_from="21", case_to="30") == []
    assert out(book, cases="10", case_from="21", case_to="30") == []


def test_a_case_of_the_same_number_and_another_name_is_another_case():
    book = bottled(case_from="A1", case_to="A60")
    assert out(book, cases="1", case_from="a 1") == []
    assert only(out(book, cases="1", case_from="1"), "other_case").words.startswith("Case 1 is none of this bottling")
    assert only(out(book, cases="1", case_from="A1"), "case_gone").words.startswith("Case 1 has left already")


@pytest.mark.parametrize(
    ("bottles", "code", "words"),
    [("6", None, ""), ("5", "bottles_short", "360 bottles on hand by the book, 359 counted: 1 missing."),
     ("8", "bottles_over", "360 bottles on hand by the book, 362 counted: 2 more.")],
)
def test_a_count_of_bottles_is_met_exactly(bottles: str, code: str | None, words: str):
    """27 CFR 19.465 taxes an unexplained shortage of bottled spirits: not one bottle is let go."""
    found = count(bottled(), cases="59", bottles=bottles)
    if code is None:
        assert found == []
        return
    query = only(found, code)
    assert asked(query) == (code, "ask", "cases")
    assert query.words.startswith(words)
    assert SOURCES["bottles_short"] == "27 CFR 19.465"


def test_a_count_of_what_nobody_knows_asks_that_alone():
    found = Ledger().enter("bottled_count", "", f"{DAY} 11:00", batch="K2603", signed="NS", cases="59")
    assert [query.code for query in found] == ["unknown_bottling"]


def test_bottles_short_of_the_papers():
    assert come_in(Ledger()) == []
    assert come_in(Ledger(), short="0") == []
    query = only(come_in(Ledger(), short="1"), "goods_short")
    assert asked(query) == ("goods_short", "ask", "short")
    assert query.words.startswith("1 of 120 bottles were missing or broken.")


def test_seals_that_were_not_whole_are_asked_about_at_once():
    """27 CFR 19.621 has what arrives with seals broken."""
    query = only(come_in(Ledger(), seals="no"), "seals_broken")
    assert asked(query) == ("seals_broken", "ask", "seals")
    assert SOURCES["seals_broken"] == "27 CFR 19.621"


def receive(**more: str) -> list[Query]:
    """Receive bulk into a tank: 900 L at 60 % by its papers, 540 L of pure alcohol."""
    said = {"consignor": "Hollow-Hill", "document": "T-26-4", "purpose": "in_bond", "spirit": "apple brandy",
            "to_account": "storage", "declared_volume": "900", "declared_strength": "60", "strength": "60",
            "temp": "20", "seals": "yes", **more}
    return Ledger().enter("receipt", "T1", f"{DAY} 09:00", **said)


@pytest.mark.parametrize(
    ("volume", "code", "words"),
    [
        ("900", None, ""), ("891.1", None, ""),
        ("890.9", "transit_loss", "Sent 540.00, received 534.54: 5.46 L pure alcohol (1.0 %) lost in transit. Above"),
        ("902.6", None, ""),
        ("902.8", "transit_gain", "Sent 540.00, received 541.68: 1.68 L pure alcohol (0.3 %) more than the papers"),
    ],
)
def test_what_is_lost_on_the_way_and_what_is_gained(volume: str, code: str | None, words: str):
    """27 CFR 19.462: a loss of bulk above one per cent is reported. 0.3 % gained: common practice, no source."""
    found = receive(volume=volume)
    if code is None:
        assert found == []
        return
    query = only(found, code)
    assert asked(query) == (code, "ask", "volume")
    assert query.words.startswith(words)


def test_bulk_that_is_weighed_is_asked_about_at_its_weight():
    """OIML R 22 (1975): spirit of 60 % vol is 909.1 kg/m3 at 20 degC, so 900 L weigh 818.2 kg."""
    query = only(receive(net_weight="800"), "transit_loss")
    assert query.field == "net_weight"
    assert receive(net_weight="818.2") == []


def test_what_may_be_lost_or_gained_says_where_it_comes_from():
    assert [(one.name, one.default, one.unit) for one in LIMITS] == [
        ("transit_loss_pct", 1.0, "%"), ("transit_gain_pct", 0.3, "%"),
    ]
    assert LIMITS[0].source.startswith("27 CFR 19.462")
    assert LIMITS[1].source == COMMON_PRACTICE


def test_goods_to_one_place_leave_under_one_duty():
    book = bottled()
    out(book, why="tax_paid", bottles="2", to_whom="Shop One", document="D-1")
    query = only(out(book, why="in_bond", bottles="2", to_whom="Shop One", document="D-2"), "removed_otherwise")
    assert [one.raw for one in query.suggestions] == ["tax_paid"]
    assert out(book, why="in_bond", bottles="2", to_whom="Another Still", document="D-3") == []


def test_a_document_is_that_of_one_load():
    book = bottled()
    out(book, why="tax_paid", bottles="2", to_whom="Shop One", document="D-1")
    assert out(book, why="tax_paid", bottles="1", to_whom="Shop One", document="D-1") == []  # its second line
    query = only(out(book, why="tax_paid", bottles="2", to_whom="Shop Two", document="D-1"), "document_again")
    assert (query.field, query.words) == (
        "document", "Document D-1 stands at goods that left before. Look at its number.",
    )


def test_a_count_is_logged_once():
    book = bottled()
    assert count(book, cases="60") == []
    query = only(count(book, cases="60"), "counted_again")
    assert query.words == "360 were counted at 11:00 already. Is it one count, logged twice?"
    book = bottled()
    count(book, cases="60")
    later = book.enter("bottled_count", "", f"{DAY} 14:05", batch="K2603", signed="Noor S., cellar hand", cases="60")
    assert later == []
