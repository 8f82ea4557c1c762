"""Blind tastings: what cannot be held as it is set out, answers that cannot count, and the key that was sealed."""

from __future__ import annotations

from typing import Any

import pytest

from tests.book.checks.ledger import Ledger, codes, only
from webapp.kinds.tasting_texts import seal_of
from webapp.trade.marks import make_mark

DAY = "2025-11-03"
C1, C4, R1, T1 = (make_mark(name) for name in ("C1", "C4", "R1", "T1"))
KEY = "AAB BBA ABA 5eed"
GLASSES = "NS 418 902 637; PR 271 550 803; NS 333 444 555"


def set_out(book: Ledger, at: str = "09:00", **other: str) -> list[Any]:
    said = {"name": "T-1", "question": "Is 64 % told from 60 %?", "method": "triangle", "alpha": "5",
            "samples": f"A {C1}; B {C4}, from the loft", "reduced_to": "25", "glasses": GLASSES, "seal": seal_of(KEY)}
    return book.enter("tasting_session", "", f"{DAY} {at}", **said | other)


def say(book: Ledger, at: str, person: str = "NS", set_no: str = "1", **given: str) -> list[Any]:
    said = {"session": "T-1", "set_no": set_no, **(given or {"picked": "637"})}
    return book.enter("tasting_answer", "", f"{DAY} {at}", person=person, **said)


def held(book: Ledger) -> dict[str, Any]:
    return book.states["t:t-1"]


def test_a_tasting_is_kept_with_its_samples_and_glasses_and_without_its_key():
    book = Ledger()
    assert set_out(book) == []
    found = held(book)
    assert [one["letter"] + one["name"] + one["words"] for one in found["samples"]] == [f"A{C1}", f"B{C4}from the loft"]
    assert [(one["person"], one["set_no"]) for one in found["servings"]] == [("NS", 1), ("PR", 1), ("NS", 2)]
    assert "opened" not in found and "AAB" not in str(book.states)
    assert [line["values"]["name"] for line in book.states[f"v:{C1}"]["recent"]["tasting_session"]] == ["T-1"]


def test_heads_are_never_tasted():
    book = Ledger()
    book.enter("charge", "S1", f"{DAY} 06:00", from_vessel="F1", wash="450", wash_strength="6", heads_to="R1")
    book.enter("fraction_gauge", "R1", f"{DAY} 08:00", still="S1", fraction="heads", volume="3",
               strength="78", temp="20", goes_to="stays")
    (query,) = [one for one in set_out(book, samples=f"A {R1}; B {C4}") if one.code == "tasting_heads"]
    assert (query.weight, query.field) == ("stop", "samples")
    assert query.words == "R1 holds heads. Heads are never tasted: take it out, and throw away what was poured."
    assert "t:t-1" not in book.states


@pytest.mark.parametrize(("other", "code", "field"), [
    ({"samples": f"A {C1}; two casks"}, "tasting_part", "samples"), ({"samples": f"A {C1}; A {C4}"}, "tasting_part",
                                                                      "samples"),
    ({"samples": f"A {C1}; B {make_mark('Z9')}"}, "tasting_vessel", "samples"),
    ({"glasses": "NS 418 902 637; PR 418 550 803"}, "tasting_part", "glasses"),
    ({"glasses": "NS 418 902 63"}, "tasting_part", "glasses"),
    ({"glasses": "NS 418 418 637"}, "tasting_part", "glasses"),
    ({"glasses": "NS 418 902 637; PR 271 550"}, "tasting_glasses", "glasses"),
    ({"method": "ranking"}, "tasting_glasses", "glasses"),
])
def test_what_cannot_be_held_as_it_is_set_out_is_asked_about(other: dict[str, str], code: str, field: str):
    query = only(set_out(Ledger(), **other), code)
    assert (query.weight, query.field) == ("ask", field)


def test_runs_and_batches_are_samples_that_need_no_vessel():
    assert set_out(Ledger(), samples="A run PL-31, 64 to 60 % vol; B batch MB-25-02") == []


def test_of_two_tastings_with_one_name_the_first_stands():
    book = Ledger()
    set_out(book)
    query = only(set_out(book, "10:00", name=" t-1 ", samples=f"A {T1}; B {C1}"), "tasting_named")
    assert query.weight == "stop" and held(book)["samples"][0]["name"] == C1


def test_answers_count_once_for_each_taster_and_set():
    book = Ledger()
    set_out(book)
    assert say(book, "10:00") == say(book, "10:05", set_no="2", picked="333") == say(book, "10:05", "PR", picked="271")
    assert only(say(book, "10:10", picked="418"), "tasting_twice").field == "set_no"
    assert [one["picked"] for one in held(book)["answers"]] == ["637", "333", "271"]


@pytest.mark.parametrize(("given", "code", "field"), [
    ({"session": "T-9"}, "tasting_unknown", "session"), ({"person": "JK"}, "tasting_taster", "person"),
    ({"set_no": "3"}, "tasting_set", "set_no"), ({"picked": "271"}, "tasting_code", "picked"),
    ({"order": "418 902 637"}, "tasting_code", "picked"),
])
def test_answers_that_cannot_count_are_asked_about(given: dict[str, str], code: str, field: str):
    book = Ledger()
    set_out(book)
    given = {"session": "T-1", "set_no": "1"} | ({} if "order" in given else {"picked": "637"}) | given
    person = given.pop("person", "NS")
    query = only(book.enter("tasting_answer", "", f"{DAY} 10:00", person=person, **given), code)
    assert (query.weight, query.field) == ("ask", field) and held(book)["answers"] == []


def test_an_order_names_each_glass_once():
    book = Ledger()
    set_out(book, method="ranking", samples=f"A {C1}; B {C4}; C {T1}", seal=seal_of("ABC CBA BCA 5eed"))
    assert only(say(book, "10:00", order="418 902 418"), "tasting_order").field == "order"
    assert say(book, "10:01", order="902 418 637") == []
    assert held(book)["answers"][0]["order"] == ["902", "418", "637"]


def open_it(book: Ledger, at: str = "11:00", key: str = KEY) -> list[Any]:
    return book.enter("tasting_result", "", f"{DAY} {at}", session="T-1", key=key, decision="cut at 62")


def test_only_the_key_that_was_sealed_opens_it_and_only_once():
    book = Ledger()
    assert codes(open_it(book)) == ["tasting_unknown"]
    set_out(book)
    say(book, "10:00")
    for wrong in ("AAB BBA BAA 5eed", "AAB BBA 5eed", "5eed"):
        assert only(open_it(book, key=wrong), "tasting_seal").weight == "stop" and "opened" not in held(book)
    early = only(open_it(book), "tasting_early")
    assert early.weight == "note" and early.words.startswith("Opened with 1 of 3 answers.")
    assert held(book)["opened"]["key"] == KEY and held(book)["opened"]["decision"] == "cut at 62"
    assert only(open_it(book, "12:00"), "tasting_again").weight == "ask"
    assert only(say(book, "11:30", "PR", picked="271"), "tasting_after").weight == "ask"
    assert len(held(book)["answers"]) == 1


def test_a_key_with_letters_of_no_sample_does_not_open_it():
    book = Ledger()
    set_out(book, seal=seal_of("AAC BBA ABA 5eed"))
    assert only(open_it(book, key="AAC BBA ABA 5eed"), "tasting_seal").field == "key"


def test_a_plan_rests_on_a_tasting_that_is_opened():
    book = Ledger()
    set_out(book)
    cited = {"what": "plum", "hearts_to": "62", "tasting": "T-1"}
    assert only(book.enter("cut_plan", "", f"{DAY} 10:00", **cited), "tasting_cited").field == "tasting"
    for person, number, picked in (("NS", "1", "637"), ("NS", "2", "333"), ("PR", "1", "271")):
        say(book, "10:30", person, number, picked=picked)
    assert open_it(book) == []
    assert book.enter("cut_plan", "", f"{DAY} 12:00", **cited) == []
    assert only(book.enter("cut_plan", "", f"{DAY} 12:01", **cited | {"tasting": "T-2"}), "tasting_cited")
