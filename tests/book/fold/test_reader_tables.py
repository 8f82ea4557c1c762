"""The tables that readers ask: whole rows, as their names say; and which cards turn when an entry comes."""

from __future__ import annotations

import json
from datetime import timedelta
from typing import Any

from tests.book.conftest import F1, NOW, R2, S1, T1, answer, charge, entry, fruit, gauge, reading, send
from tests.book.told import start
from webapp.book.fold.reader_tables import turn_cards
from webapp.book.record.store import Book


def rows(book: Book, table: str) -> list[dict[str, Any]]:
    return book.query(f"SELECT * FROM {table}")


def test_a_bottling_its_fill_and_its_removals_are_found_by_what_they_are_called(book: Book) -> None:
    told = start(book)
    gauged = told.say("bottling_gauge", T1, batch="K-26-03", volume="181 L", temp="20 degC", strength="45 pct_vol",
                      label_strength="45 pct_vol")
    close = told.say("bottling_close", T1, filled="359 count", broken="0 count", bottle_size="0.5 L", loss="1 L",
                     per_case="6 count", case_from="1", case_to="59", odd_case="60R", lot_mark="K2603",
                     tank_empty="yes")
    left = told.say("dispatch", batch="K2603", why="tax_paid", cases="2 count", bottles="1 count", case_from="1",
                    case_to="2", document="D-1", to_whom="Shop")
    (bottling,), (removal,) = rows(book, "bottlings"), rows(book, "dispatches")
    at = bottling.pop("at")
    assert bottling == {"id": close, "tank": T1, "fill": gauged, "batch": "K-26-03", "lot_mark": "K2603",
                        "case_from": "1", "case_to": "59", "odd_case": "60R"}
    assert removal.pop("at") > at
    assert removal == {"id": left, "bottling": close, "why": "tax_paid", "document": "D-1", "to_whom": "Shop",
                       "case_from": "1", "case_to": "2", "cases": "2", "bottles": "13"}
    (fill,) = rows(book, "fills")
    since = fill.pop("since")
    assert since < at == fill.pop("ended_at")
    assert fill == {"id": gauged, "mark": T1, "what": "spirit", "name": "K-26-03", "lot": ""}
    send(book, answer(close, "struck", read_at=NOW, seq=90))
    assert rows(book, "bottlings") == [] and rows(book, "fills")[0]["ended_at"] == ""


def test_a_flow_is_written_whole_and_one_of_nothing_is_left_out(book: Book) -> None:
    """400 L at 62 % vol, then 398: 2 L less are 1.24 L of pure alcohol. The second gauge of 398 moves nothing."""
    one, two, three = (gauge(T1, litres, "62", seq=n, read_at=NOW - timedelta(hours=9 - n), purpose="opening")
                       for n, litres in enumerate(("400", "398", "398"), 1))
    send(book, one, two, three)
    first, second = rows(book, "flows")
    assert (first["entry"], first["source"], first["target"], first["lpa_ul"]) == (
        one["id"], "out:opening", f"v:{T1}", 248_000_000,
    )
    assert (first["n"], first["target_fill"], first["target_account"], first["at"]) == (
        0, one["id"], "processing", "2025-09-24T04:00:00Z",
    )
    assert (second["entry"], second["source"], second["source_fill"], second["source_account"], second["lpa_ul"]) == (
        two["id"], f"v:{T1}", one["id"], "processing", 1_240_000,
    )


def test_a_question_is_written_whole(book: Book) -> None:
    one = reading(F1, "1.4", person="XY")
    send(book, one)
    found = {row["name"]: row for row in rows(book, "queries")}
    assert {row["entry"] for row in found.values()} == {one["id"]}
    unknown = found["unknown_person"]
    message = unknown.pop("message")
    assert json.loads(message) == {"id": "unknown_person", "params": {"code": "XY"}}
    assert unknown == {"entry": one["id"], "name": "unknown_person", "code": "unknown_person", "weight": "ask",
                       "field": "", "suggestions": "[]", "mark": F1, "kind": "ferment_reading", "person": "XY",
                       "at": "2025-09-24T08:00:00Z", "answer": ""}
    assert any(json.loads(row["suggestions"]) for row in found.values()), "a point that slipped: 1.4 for 1.04"
    (standing,) = rows(book, "folded")
    keys = json.loads(standing.pop("keys"))
    assert keys == sorted(keys) and f"v:{F1}" in keys
    assert (standing["root"], standing["entry"], standing["mark"], standing["standing"]) == (
        one["id"], one["id"], F1, "stopped",
    )


def test_a_run_is_listed_by_its_still_until_its_charge_is_struck(book: Book) -> None:
    begun = charge(read_at=NOW - timedelta(hours=5), seq=2)
    send(book, fruit(read_at=NOW - timedelta(hours=9)), begun)
    assert rows(book, "runs") == [
        {"id": begun["id"], "still": S1, "what": "plum", "started_at": "2025-09-24T07:00:00Z"}
    ]
    send(book, answer(begun["id"], "struck", read_at=NOW, seq=3))
    assert rows(book, "runs") == []


def turned(book: Book, *entries: Any) -> set[str]:
    """Hand in and return the marks of the cards that have turned by it."""
    before = {row["mark"]: row["turn"] for row in rows(book, "card_turns")}
    send(book, *entries)
    return {row["mark"] for row in rows(book, "card_turns") if row["turn"] != before.get(row["mark"])}


def test_the_cards_turn_that_show_what_has_changed(book: Book) -> None:
    assert turned(book, fruit(read_at=NOW - timedelta(hours=9))) == {F1}
    assert turned(book, charge(read_at=NOW - timedelta(hours=5), seq=2)) == {F1, S1}
    hearts = entry("fraction_gauge", R2, still=S1, fraction="hearts", volume="30 L", temp="20 degC", goes_to="stays",
                   strength="70 pct_vol", read_at=NOW - timedelta(hours=3), seq=3)
    assert turned(book, hearts) == {R2, S1}, "a run shows what came of it on the card of its still"
    assert turned(book, entry("shift_note", values={"text": {"raw": "hm"}}, seq=4)) == set()
    assert turned(book, entry("cut_plan", what="plum", hearts_to="55 pct_vol", seq=5)) == {S1}, "a still runs plums"


def test_each_card_has_a_turn_of_its_own_and_the_book_knows_the_last(book: Book) -> None:
    last = int(book.query("SELECT value FROM settings WHERE name = 'turn'")[0]["value"])
    with book.write():
        turn_cards(book, {"B", "A"})
        turn_cards(book, {"A"})
        turn_cards(book, set())
    turns = {row["mark"]: row["turn"] for row in rows(book, "card_turns") if row["mark"] in ("A", "B")}
    assert turns == {"B": last + 2, "A": last + 3}
    assert book.query("SELECT value FROM settings WHERE name = 'turn'") == [{"value": str(last + 3)}]
