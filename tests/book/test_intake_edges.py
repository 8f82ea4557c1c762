"""The one way into the book, at its edges: how much, from whom, in which words it is turned away, and what is kept."""

from __future__ import annotations

import json
from datetime import timedelta
from typing import Any

import pytest

import webapp.kinds
from tests.book.conftest import F1, F2, F3, NOW, answer, fruit, reading, send
from webapp.book import intake
from webapp.book.intake import BATCH_MOST, BYTES_MOST, enter_page_entry, hand_in
from webapp.book.record.errors import BookError
from webapp.book.record.store import Book

# docs/hand-in.md says how much a batch may hold and what each word of an answer means.


def batch_of(*entries: Any, device: str = "d-one", **more: Any) -> dict[str, Any]:
    return {"now": NOW.isoformat(), "device": device, "entries": list(entries)} | more


def take(book: Book, *entries: Any, device: str = "d-one", **more: Any) -> dict[str, Any]:
    return hand_in(book, batch_of(*entries, device=device), via="phone", now=NOW, **more)


def aside(book: Book) -> list[dict[str, Any]]:
    return book.query("SELECT * FROM aside ORDER BY rowid")


def test_two_hundred_entries_are_a_batch_and_one_more_is_not(book: Book) -> None:
    assert (BATCH_MOST, BYTES_MOST) == (200, 524_288)
    many = [reading(seq=n + 1) for n in range(201)]
    with pytest.raises(BookError) as refused:
        take(book, *many)
    assert str(refused.value) == "A batch has at most 200 entries. Send it in halves."
    assert book.one("SELECT count(*) AS n FROM entries") == {"n": 0}
    assert len(take(book, *many[:200])["results"]) == 200


def test_a_batch_without_a_list_is_turned_away_in_words(book: Book) -> None:
    for entries in (None, {}, "entries"):
        with pytest.raises(BookError) as refused:
            hand_in(book, {"now": NOW.isoformat(), "device": "d-one", "entries": entries}, via="phone", now=NOW)
        told = "The batch holds no list of entries. Update the app on the phone and send again."
        assert str(refused.value) == told


def test_half_a_megabyte_is_a_batch_and_a_byte_more_is_not(book: Book) -> None:
    def sized(count: int) -> list[dict[str, Any]]:
        return [reading(seq=n + 1, remark="x" * 4000) for n in range(count)]

    from webapp.book.record.soundness import check_entry

    one = len(check_entry(sized(1)[0])[1])
    most = BYTES_MOST // one
    assert 100 < most < 200
    assert len(take(book, *sized(most))["results"]) == most
    with pytest.raises(BookError) as refused:
        take(book, *sized(most + 1))
    assert str(refused.value) == "The batch is larger than 512 KB. Send it in halves."


def test_the_limit_of_bytes_is_met_exactly(book: Book, monkeypatch: pytest.MonkeyPatch) -> None:
    from webapp.book.record.soundness import check_entry

    first, second = reading(seq=1), reading(seq=2)
    monkeypatch.setattr(intake, "BYTES_MOST", sum(len(check_entry(one)[1]) for one in (first, second)))
    assert len(take(book, first, second)["results"]) == 2
    monkeypatch.setattr(intake, "BYTES_MOST", intake.BYTES_MOST - 1)
    with pytest.raises(BookError, match="512 KB"):
        take(book, first, second)


def test_only_who_may_answer_answers(book: Book) -> None:
    made = reading(seq=1)
    take(book, made)
    told = take(book, answer(made["id"], seq=2), may_answer=False)["results"][0]
    assert told["settled"] == "refused"
    problem = told["problems"][0]
    assert (problem["code"], problem["weight"], problem["field"]) == ("may_not_answer", "refuse", "kind")
    assert "Answers are given at the desk, by a distiller or the office. Sign in there, then answer." in json.dumps(
        told
    )
    assert take(book, answer(made["id"], seq=3))["results"][0]["settled"] == "entered"


def test_nobody_but_the_desk_uses_the_desks_counter(book: Book) -> None:
    told = take(book, reading(device="desk", seq=7))
    problem = told["results"][0]["problems"][0]
    assert (problem["code"], problem["weight"], problem["field"]) == ("not_the_desk", "refuse", "device")
    words = "It says that it was logged at the desk. Log it anew, at the desk or on the phone."
    assert words in json.dumps(told["results"][0])
    assert "desk" not in told["devices"], "and its counter is not moved by it"
    own = take(book, reading(device="desk", seq=1), device="desk", is_desk=True)
    assert own["results"][0]["settled"] in ("entered", "queried") and own["devices"]["desk"]["seen"] == 1


def test_a_clash_says_which_number_has_the_id_and_that_a_person_decides(book: Book) -> None:
    made = reading(seq=1)
    number = take(book, made)["results"][0]["book_no"]
    told = take(book, made | {"remark": "other"})["results"][0]
    assert told["settled"] == "clash"
    (problem,) = told["problems"]
    assert (problem["code"], problem["weight"], problem["field"]) == ("clash", "stop", "")
    words = f"This id is in the book with another body, under number {number}. A person decides."
    assert problem["words"] == words
    twice = reading(seq=2)
    told = take(book, twice, twice | {"remark": "other"})["results"][1]
    assert told["problems"][0]["words"] == (
        "This id comes twice in one batch with two bodies. The first is in the book. A person decides."
    )
    kept = aside(book)
    assert [row["settled"] for row in kept] == ["clash", "clash"]
    assert [json.loads(row["body"])["remark"] for row in kept] == ["other", "other"]
    assert [row["seq"] for row in kept] == [1, 2]
    assert all(row["via"] == "phone" and row["device"] == "d-one" for row in kept)


def test_what_is_put_aside_is_kept_with_what_can_be_read_of_it(book: Book) -> None:
    odd: list[Any] = [None, 7, "text", [], {"id": 5, "device": 6, "seq": True}, {"id": "x" * 70, "device": "d\n"}]
    told = take(book, *odd)
    assert [one["settled"] for one in told["results"]] == ["refused"] * 6
    assert [one["id"] for one in told["results"]] == [None] * 5 + ["x" * 60]
    rows = aside(book)
    assert [json.loads(row["body"]) for row in rows] == odd
    assert [(row["id"], row["device"], row["seq"]) for row in rows] == [(None, None, None)] * 5 + [
        ("x" * 60, None, None)
    ]


@pytest.mark.parametrize(
    ("value", "counted"),
    [(1, 1), (2**53 - 1, 2**53 - 1), (0, None), (2**53, None), (-1, None), (True, None), (1.0, None), ("1", None)],
)
def test_a_counter_is_a_whole_number_that_a_browser_holds_exactly(value: Any, counted: int | None) -> None:
    """2^53 - 1 is Number.MAX_SAFE_INTEGER of ECMA-262."""
    assert intake._counter(value) == counted


@pytest.mark.parametrize(
    ("value", "kept"),
    [("d-one", "d-one"), ("x" * 61, "x" * 60), ("", None), ("a\tb", None), (5, None), (None, None), ("Ärmel", "Ärmel")],
)
def test_a_short_text_is_printable_and_at_most_sixty_characters(value: Any, kept: str | None) -> None:
    assert intake._short_text(value) == kept


def test_what_is_nested_too_deep_is_kept_by_the_names_of_its_parts() -> None:
    deep: Any = []
    for _ in range(100_000):
        deep = [deep]
    told = json.loads(intake._ascii_text({"id": "a", "seq": 4, "values": deep}))
    assert told == {"id": "a", "seq": 4, "values": "(nested too deep)"}
    assert json.loads(intake._ascii_text(deep)) == {}
    assert intake._ascii_text({"b": 1, "a": "ä"}) == '{"a": "\\u00e4", "b": 1}'


def test_a_carrier_is_the_phone_that_brings_the_batch_and_its_clock_is_the_one_that_is_measured(book: Book) -> None:
    send(book, reading(device="d-two", seq=1), skew_s=-90.0, device="d-two")
    later = {"now": (NOW + timedelta(seconds=40)).isoformat(), "device": "d-two",
             "entries": [reading(device="d-two", seq=2), reading(device="d-new", seq=1)]}
    told = hand_in(book, later, via="file", now=NOW, carrier="d-one")
    assert told["skew_s"] == pytest.approx(40.0)
    assert set(told["devices"]) == {"d-one", "d-two", "d-new"}
    kept = book.query("SELECT device, seq, skew_s, via FROM entries ORDER BY book_no")
    assert [(row["device"], row["skew_s"], row["via"]) for row in kept] == [
        ("d-two", pytest.approx(-90.0), "phone"), ("d-two", pytest.approx(-90.0), "file"), ("d-new", 0.0, "file"),
    ]


def test_the_name_of_a_phone_is_cut_at_forty_characters(book: Book) -> None:
    told = take(book, device="p" * 50)
    assert set(told["devices"]) == {"p" * 40}
    assert set(hand_in(book, {"now": NOW.isoformat(), "entries": []}, via="phone", now=NOW)["devices"]) == set()


def test_an_answer_names_book_time_cursor_and_head(book: Book) -> None:
    told = take(book, reading(seq=1))
    assert set(told) == {"book_id", "server_now", "skew_s", "results", "devices", "cursor", "head"}
    assert told["book_id"] == intake.book_id(book)
    assert told["server_now"] == "2025-09-24T12:00:00Z"
    assert told["cursor"] == intake.cursor(book) > 0
    again = hand_in(book, batch_of(head=told["head"]), via="phone", now=NOW)
    assert again["has_head"] is True
    strange = dict(told["head"]) | {"digest": "0" * 64} if isinstance(told["head"], dict) else told["head"]
    assert hand_in(book, batch_of(head=strange), via="phone", now=NOW)["has_head"] is (strange == told["head"])


def test_an_entry_of_a_page_is_a_whole_entry_of_the_desk(book: Book) -> None:
    given = {"text": {"raw": "stir at six"}}
    common = {"kind": "shift_note", "values": given, "person": "NS", "role": "distiller", "now": NOW}
    first = enter_page_entry(book, mark=F1, read_at="2025-09-24T11:00:00+00:00", **common)
    then = enter_page_entry(book, mark="", read_at="2025-09-24T11:30:00+00:00", amends=first["id"], reason="misread",
                            remark="again", mark_by="typed", **common)
    assert [one["settled"] for one in (first, then)] == ["entered", "entered"]
    bodies = [json.loads(row["body"]) for row in book.query("SELECT body FROM entries ORDER BY book_no")]
    assert bodies[0] == {
        "id": first["id"], "kind": "shift_note", "kind_version": webapp.kinds.get("shift_note").version, "mark": F1,
        "mark_by": "picked", "read_at": "2025-09-24T11:00:00+00:00", "typed_at": "2025-09-24T12:00:00+00:00",
        "person": "NS", "role": "distiller", "seen_by": "", "device": "desk", "seq": 1, "values": given,
        "as_read": [], "looked_again": [], "remark": "", "amends": None, "reason": "",
    }
    assert {name: bodies[1][name] for name in ("mark", "mark_by", "seq", "remark", "amends", "reason")} == {
        "mark": "", "mark_by": "", "seq": 2, "remark": "again", "amends": first["id"], "reason": "misread",
    }
    rows = book.query("SELECT via, device, role, skew_s, received_at FROM entries")
    assert rows == [{"via": "page", "device": "desk", "role": "distiller", "skew_s": 0.0,
                     "received_at": "2025-09-24T12:00:00Z"}] * 2


def test_a_receipt_of_what_is_known_says_again_what_is_asked(book: Book) -> None:
    odd = reading(gravity="1.4", seq=1)
    first = take(book, odd)["results"][0]
    assert first["settled"] == "queried"
    again = take(book, odd)["results"][0]
    assert again["settled"] == "known"
    assert {name: again[name] for name in ("book_no", "received_at", "digest")} == {
        name: first[name] for name in ("book_no", "received_at", "digest")
    }
    assert again["queries"] == first["queries"]
    plain = fruit(F2, seq=2, read_at=NOW - timedelta(hours=3))
    assert take(book, plain)["results"][0]["settled"] == "entered"
    assert "queries" not in take(book, plain)["results"][0]
    twice = reading(F3, seq=3)
    results = take(book, twice, dict(twice))["results"]
    assert [one["settled"] == "known" for one in results] == [False, True]
    assert results[1]["book_no"] == results[0]["book_no"], "known from the same batch has the same receipt"
