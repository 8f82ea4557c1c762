"""Corrections: an amendment, an answer and a strike are entries; the original stays legible, the fold follows."""

from __future__ import annotations

from datetime import timedelta
from itertools import permutations
from typing import Any

import pytest

from tests.book.conftest import F1, F2, NOW, R1, S1, T1, answer, charge, entry, fruit, gauge, reading, send, settled
from webapp.book.fold import fold, queries
from webapp.book.record import log
from webapp.book.record.store import Book
from webapp.book.still import runs

HOUR = timedelta(hours=1)


def held(book: Book, mark: str) -> Any:
    return (fold.load_state(book, f"v:{mark}") or {}).get("holds")


def standing(book: Book, entry_id: str) -> str:
    row = log.load_entry(book, entry_id)
    assert row is not None
    return str(row["standing"])


def test_an_amendment_takes_the_place_of_what_it_amends_and_both_stay_legible(book: Book) -> None:
    first = fruit(gross="900")
    second = fruit(gross="960", amends=first["id"], because="misread", seq=2, typed_at=NOW)
    send(book, first)
    send(book, second)
    assert held(book, F1)["mass_kg"] == 900.0
    assert (standing(book, first["id"]), standing(book, second["id"])) == ("amended", "entered")
    family = log.load_family(book, first["id"])
    assert [row["id"] for row in family["members"]] == [first["id"], second["id"]]
    assert family["effective"] == second["id"]


def test_an_amendment_may_come_before_what_it_amends(book: Book) -> None:
    first = fruit(gross="900")
    second = fruit(gross="960", amends=first["id"], seq=2, typed_at=NOW)
    send(book, second)
    assert held(book, F1)["mass_kg"] == 900.0
    send(book, first)
    assert held(book, F1)["mass_kg"] == 900.0
    assert held(book, F1)["fill"] == first["id"]


def test_a_chain_of_amendments_gives_its_end_in_any_order(book: Book, tmp_path: Any) -> None:
    a = fruit(gross="900")
    b = fruit(gross="960", amends=a["id"], seq=2, typed_at=NOW - HOUR)
    c = fruit(gross="1060", amends=b["id"], seq=3, typed_at=NOW - 2 * HOUR)  # typed earlier, amends all the same
    from tests.book.conftest import fill_world
    from webapp.book.opening import open_book

    for n, order in enumerate(permutations((a, b, c))):
        with open_book(tmp_path / f"{n}.db") as other:
            fill_world(other)
            for one in order:
                send(other, one)
            assert held(other, F1)["mass_kg"] == 1000.0


def test_amending_the_vessel_takes_the_entry_out_of_the_wrong_one(book: Book) -> None:
    first = fruit(F1)
    send(book, first)
    send(book, fruit(F2, amends=first["id"], seq=2, typed_at=NOW))
    assert held(book, F1) is None
    assert held(book, F2)["mass_kg"] == 840.0


def test_an_amendment_at_the_desk_keeps_the_place_that_the_phones_slow_clock_gave(book: Book) -> None:
    """The phone is an hour slow: 08:00 on it is 09:00. A correction of the figure alone says 08:00 too."""
    slow = {"skew_s": -3600.0, "device": "d-two"}
    first = gauge(volume="400", device="d-two", read_at=NOW - 4 * HOUR)
    send(book, first, **slow)
    send(book, gauge(volume="300", read_at=NOW - 3.5 * HOUR, seq=1))
    assert held(book, T1)["volume_l"] == pytest.approx(400)
    send(book, gauge(volume="390", read_at=NOW - 4 * HOUR, amends=first["id"], seq=2, typed_at=NOW))
    assert held(book, T1)["volume_l"] == pytest.approx(390)


def test_striking_undoes_what_the_entry_did_and_answering_again_lifts_it(book: Book) -> None:
    one = gauge()
    send(book, one)
    send(book, answer(one["id"], "struck", read_at=NOW, seq=2))
    assert held(book, T1) is None
    assert standing(book, one["id"]) == "struck"
    assert book.query("SELECT * FROM flows") == []
    send(book, answer(one["id"], "stands", read_at=NOW + HOUR, seq=3))
    assert held(book, T1)["volume_l"] == pytest.approx(400)


def test_a_strike_may_come_before_what_it_strikes(book: Book) -> None:
    one = gauge()
    send(book, answer(one["id"], "struck", seq=2))
    send(book, one)
    assert held(book, T1) is None


def test_a_stop_query_moves_no_stock_until_it_is_answered(book: Book) -> None:
    one = gauge(strength="98.5", as_read=["strength"])
    result = send(book, one)["results"][0]
    stops = [q for q in result["queries"] if q["weight"] == "stop"]
    assert stops
    assert standing(book, one["id"]) == "stopped"
    assert held(book, T1) is None
    assert book.query("SELECT * FROM flows") == []
    name = stops[0]["id"].split(":", 1)[1]
    for n, stop in enumerate(stops):
        send(book, answer(one["id"], query=stop["id"].split(":", 1)[1], seq=2 + n, read_at=NOW))
    assert standing(book, one["id"]) == "entered"
    answered = {q["name"]: q["answer"] for q in queries.for_entry(book, one["id"])}
    assert answered[name]
    assert held(book, T1)["strength_pct"] == pytest.approx(98.5)


def test_an_ask_query_moves_stock_and_goes_from_the_list_when_answered(book: Book) -> None:
    one = gauge(volume="30000")
    send(book, one)
    waiting = [q for q in queries.open_queries(book) if q["entry"] == one["id"]]
    assert waiting
    for n, query in enumerate(waiting):
        send(book, answer(one["id"], query=query["name"], seq=2 + n, read_at=NOW))
    assert queries.open_queries(book) == []
    assert queries.count_open(book)["ask"] == 0


def test_amending_an_entry_under_a_stop_query_frees_it(book: Book) -> None:
    one = gauge(strength="98.5")
    send(book, one)
    send(book, gauge(strength="58.9", amends=one["id"], seq=2, typed_at=NOW))
    assert queries.open_queries(book, weight="stop") == []
    assert held(book, T1)["strength_pct"] == pytest.approx(58.9)


def test_an_amendment_after_a_strike_is_asked_about_and_counts_when_it_stands(book: Book) -> None:
    one = gauge()
    again = gauge(volume="410", amends=one["id"], seq=3, typed_at=NOW + HOUR)
    send(book, one, answer(one["id"], "struck", read_at=NOW, seq=2), again)
    assert held(book, T1) is None
    assert [q["code"] for q in queries.for_entry(book, again["id"])] == ["amended_after_strike"]
    send(book, answer(again["id"], query="amended_after_strike", read_at=NOW + 2 * HOUR, seq=4))
    assert held(book, T1)["volume_l"] == pytest.approx(410)


def test_entries_that_amend_each_other_do_no_harm(book: Book) -> None:
    a, b = gauge(volume="400"), gauge(volume="500", seq=2)
    a["amends"], b["amends"] = b["id"], a["id"]
    assert settled(send(book, a, b)) == ["entered", "entered"]
    assert len(book.query("SELECT * FROM folded")) == 1
    kept = fold.dump(book)
    fold.rebuild(book)
    assert fold.dump(book) == kept


def test_a_late_entry_lands_in_the_past(book: Book) -> None:
    send(book, fruit(read_at=NOW - 48 * HOUR))
    send(book, *[reading(gravity=f"1.0{50 - n}", read_at=NOW - (40 - n) * HOUR, seq=2 + n) for n in range(30)])
    assert held(book, F1)["og"] == 1.05
    send(book, reading(gravity="1.055", read_at=NOW - 47 * HOUR, seq=40))
    assert held(book, F1)["og"] == 1.055


def test_a_late_entry_asks_and_clears_questions_that_hang_on_it(book: Book) -> None:
    send(book, fruit(read_at=NOW - 48 * HOUR), reading(gravity="1.031", read_at=NOW - 30 * HOUR, seq=2))
    rise = reading(gravity="1.043", read_at=NOW - 20 * HOUR, seq=3)
    send(book, rise)
    assert [q["code"] for q in queries.open_queries(book)] == ["ferment_gravity_rose"]
    # More sugar, in truth a new fill: the charge that emptied it was typed a day late.
    send(book, charge(read_at=NOW - 25 * HOUR, seq=4), fruit(read_at=NOW - 24 * HOUR, seq=5))
    assert "ferment_gravity_rose" not in [q["code"] for q in queries.for_entry(book, rise["id"])]


def test_a_run_keeps_its_name_when_its_charge_is_amended(book: Book) -> None:
    start = charge(read_at=NOW - 10 * HOUR, seq=2)
    cut = entry("cut", S1, event="heads_cut", receiver=R1, read_at=NOW - 8 * HOUR, seq=3)
    send(book, fruit(read_at=NOW - 30 * HOUR), start, cut)
    assert len(runs.run(book, start["id"])["cuts"]) == 1  # type: ignore[index]
    again = charge(read_at=NOW - 10 * HOUR, seq=4, amends=start["id"], typed_at=NOW)
    again["values"]["wash"]["raw"] = "460"
    send(book, again)
    run = runs.run(book, start["id"])
    assert run is not None
    assert run["charge"]["wash_l"] == 460.0
    assert len(run["cuts"]) == 1
    assert [one["id"] for one in runs.runs(book)] == [start["id"]]


def test_a_run_whose_charge_is_struck_is_gone(book: Book) -> None:
    start = charge(read_at=NOW - 10 * HOUR, seq=2)
    send(book, start, entry("run_reading", S1, strength="70 pct_vol", read_at=NOW - 9 * HOUR, seq=3))
    send(book, answer(start["id"], "struck", read_at=NOW, seq=4))
    assert runs.runs(book) == []
    assert fold.load_state(book, f"r:{start['id']}") is None
