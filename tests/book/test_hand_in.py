"""What a phone is answered: one result per entry, in order, and never a loss."""

from __future__ import annotations

import copy
import json
from concurrent.futures import ThreadPoolExecutor
from datetime import timedelta
from typing import Any

import pytest

from tests.book.conftest import F1, F2, NOW, S1, answer, entry, fruit, gauge, new_id, reading, send, settled
from webapp.book.fold import fold, queries, unjudged
from webapp.book.house import devices
from webapp.book.intake import BATCH_MOST, enter_page_entry, hand_in
from webapp.book.record import counters, log
from webapp.book.record.store import Book, BookError
from webapp.kinds.as_schema import ReceiptSchema
from webapp.trade.marks import make_mark


def test_a_sound_entry_is_entered_with_a_receipt(book: Book) -> None:
    one = fruit()
    given = send(book, one)
    result = given["results"][0]
    assert result["settled"] == "entered"
    assert result["book_no"] == 1
    assert result["received_at"] == "2025-09-24T12:00:00Z"
    kept = log.load_entry(book, one["id"])
    assert kept is not None
    assert kept["entry"] == one
    assert kept["digest"] == result["digest"]


def test_the_answer_has_the_shape_that_the_protocol_promises(book: Book) -> None:
    given = send(book, fruit(), reading(gravity="1.9", seq=2), {"id": "x"})
    assert ReceiptSchema().validate(given | {"marker": "cellarslate", "ok": True}) == {}
    json.dumps(given)


def test_an_odd_entry_is_queried_with_words_and_suggestions(book: Book) -> None:
    early = fruit(read_at=NOW - timedelta(hours=40))
    send(book, early, reading(gravity="1.031", read_at=NOW - timedelta(hours=26), seq=2))
    result = send(book, reading(gravity="1.043", seq=3))["results"][0]
    assert result["settled"] == "queried"
    query = next(q for q in result["queries"] if q["code"] == "ferment_gravity_rose")
    assert query["id"] == f"{result['id']}:ferment_gravity_rose"
    assert "1.043" in query["words"]
    assert "1.031" in query["words"]


def test_an_answer_lost_on_the_way_is_given_again_with_the_same_receipt(book: Book) -> None:
    batch = [fruit(), reading(seq=2)]
    first = send(book, *batch)
    dump = fold.dump(book)
    second = send(book, *copy.deepcopy(batch), now=NOW + timedelta(hours=3))
    assert settled(second) == ["known", "known"]
    for before, after in zip(first["results"], second["results"], strict=True):
        assert all(after[name] == before[name] for name in ("id", "book_no", "received_at", "digest"))
    assert fold.dump(book) == dump


def test_the_same_entry_with_its_keys_in_another_order_is_known(book: Book) -> None:
    one = fruit()
    send(book, one)
    assert settled(send(book, dict(reversed(one.items())))) == ["known"]


def test_one_id_with_two_bodies_is_a_clash_and_both_are_kept(book: Book) -> None:
    one = fruit()
    other = {**one, "remark": "another"}
    send(book, one)
    given = send(book, other)
    assert settled(given) == ["clash"]
    assert given["results"][0]["book_no"] == 1
    assert settled(send(book, other)) == ["clash"]
    kept = log.load_entry(book, one["id"])
    assert kept is not None
    assert kept["entry"] == one
    aside = log.load_aside(book, settled="clash")
    assert [json.loads(row["body"]) for row in aside] == [other]
    assert [query["code"] for query in queries.open_queries(book)] == ["clash"]
    send(book, answer(one["id"], query="clash", read_at=NOW, seq=2))
    assert queries.open_queries(book) == []


def test_one_id_twice_in_one_batch_is_entered_once(book: Book) -> None:
    one = fruit()
    given = send(book, one, copy.deepcopy(one), {**one, "remark": "another"})
    assert settled(given) == ["queried", "known", "clash"]
    assert given["results"][0]["digest"] == given["results"][1]["digest"]


def test_a_bad_entry_does_not_hold_up_its_neighbours(book: Book) -> None:
    bad: list[Any] = [
        None, [], "x", 7, {}, {"id": "1"}, {**fruit(), "kind": "no_such"}, {**fruit(), "mark": "F1-9"},
        {**fruit(), "mark": ""}, {**fruit(), "read_at": "yesterday"}, {**fruit(), "seq": 0},
        {**fruit(), "values": {"gross": {"raw": "many", "unit": "kg"}}}, {**fruit(), "kind_version": 99},
    ]
    given = send(book, fruit(seq=1), *bad, reading(seq=2))
    assert settled(given) == ["entered", *["refused"] * len(bad), "entered"]
    for result in given["results"][1:-1]:
        assert result["problems"], result
        assert all(problem["words"] for problem in result["problems"])
    assert len(log.load_aside(book, settled="refused")) == len(bad)
    assert log.verify(book) == []


def test_a_refused_entry_is_kept_aside_once_and_may_come_mended(book: Book) -> None:
    bad = fruit()
    del bad["values"]["gross"]
    assert settled(send(book, bad, bad)) == ["refused", "refused"]
    assert len(log.load_aside(book)) == 1
    assert settled(send(book, {**bad, "values": fruit()["values"]})) == ["entered"]


@pytest.mark.parametrize(
    "text",
    [
        "<script>alert(1)</script>",
        "'; DROP TABLE entries;--",
        "\u202eabc",
        "🍐" * 400,
        "x" * 2000,
        "é\u0301\u200f",
        "NaN",
    ],
    ids=["script", "sql", "right to left", "emoji", "long", "combining", "nan"],
)
def test_any_text_a_person_can_type_is_kept_as_it_came(book: Book, text: str) -> None:
    one = entry("shift_note", text=None, values={"text": {"raw": text}}, remark=text)
    one["person"] = text[:40]
    assert settled(send(book, one))[0] in ("entered", "queried")
    kept = log.load_entry(book, one["id"])
    assert kept is not None
    assert kept["entry"] == one
    fold.rebuild(book)


@pytest.mark.parametrize(
    "hurt",
    [
        {"remark": "x" * 10_000_000}, {"remark": "\ud800"}, {"remark": "\x00"}, {"extra": float("nan")},
        {"extra": float("inf")}, {"seq": 1e999}, {"seq": True}, {"kind": ["x"]}, {"values": {"gross": "9"}},
        {"values": {"gross": {"raw": 9, "unit": "kg"}}}, {"id": "../../etc"}, {"read_at": "2025-13-01T00:00:00Z"},
        {"read_at": "2025-09-24T08:05:00"}, {"amends": "x"}, {"device": None},
    ],
    ids=lambda hurt: next(iter(hurt)),
)
def test_what_cannot_be_an_entry_is_refused_in_words(book: Book, hurt: dict[str, Any]) -> None:
    if len(str(hurt)) > 1_000_000:
        with pytest.raises(BookError, match="512 KB"):
            send(book, {**fruit(), **hurt}, reading(seq=2))
        return
    given = send(book, {**fruit(), **hurt}, reading(seq=2))
    assert settled(given)[0] == "refused"
    assert settled(given)[1] in ("entered", "queried")
    assert given["results"][0]["problems"][0]["words"].endswith((".", "?"))


def test_nested_too_deep_is_refused(book: Book) -> None:
    deep: Any = []
    for _ in range(100_000):
        deep = [deep]
    assert settled(send(book, {**fruit(), "extra": deep})) == ["refused"]


@pytest.mark.parametrize("raw", ["1e999", "NaN", "inf", "1.2.3", "٣", "0x10", "", "1,000.5"])
def test_what_is_no_number_is_refused(book: Book, raw: str) -> None:
    one = fruit()
    one["values"]["gross"]["raw"] = raw
    assert settled(send(book, one)) == ["refused"]


def test_an_amendment_of_itself_is_refused(book: Book) -> None:
    one = fruit()
    assert settled(send(book, {**one, "amends": one["id"]})) == ["refused"]


def test_too_many_entries_and_no_list_are_turned_away_as_a_whole(book: Book) -> None:
    with pytest.raises(BookError, match="200"):
        send(book, *[fruit() for _ in range(BATCH_MOST + 1)])
    with pytest.raises(BookError, match="list"):
        hand_in(book, {"entries": "x"}, via="phone", now=NOW)
    assert book.query("SELECT * FROM aside") == []


def test_a_vessel_that_nobody_has_entered_stops_the_entry_and_does_not_lose_it(book: Book) -> None:
    from webapp.book.house import registry

    mark = make_mark("Z9")
    given = send(book, fruit(mark))
    assert [q["code"] for q in given["results"][0]["queries"]] == ["unknown_vessel"]
    assert book.query("SELECT * FROM flows") == []
    registry.put_vessel(book, {"mark": mark, "sort": "fermenter"}, "JK")
    assert queries.open_queries(book) == []
    assert fold.load_state(book, f"v:{mark}")["holds"]["mass_kg"] == 840.0


def test_a_stranger_is_asked_about_until_somebody_adds_them(book: Book) -> None:
    from webapp.book.house import people

    assert settled(send(book, fruit(person="QQ"))) == ["queried"]
    assert [q["code"] for q in queries.open_queries(book)] == ["unknown_person"]
    people.put_person(book, {"code": "QQ", "name": "Quirin"}, "JK")
    assert queries.open_queries(book) == []


def test_a_reading_in_the_wrong_sort_of_vessel_is_asked_about(book: Book) -> None:
    codes = [q["code"] for q in send(book, reading(S1))["results"][0]["queries"]]
    assert "wrong_sort" in codes


def test_counters_left_out_are_reported_as_gaps(book: Book) -> None:
    given = send(book, fruit(seq=1), reading(seq=2), reading(seq=5), reading(seq=9))
    assert given["devices"] == {"d-one": {"seen": 9, "gaps": [[3, 4], [6, 8]]}}
    given = send(book, reading(seq=3), reading(seq=4), reading(seq=7))
    assert given["devices"]["d-one"] == {"seen": 9, "gaps": [[6, 6], [8, 8]]}


def test_a_refused_entry_leaves_no_gap(book: Book) -> None:
    bad = fruit(seq=1)
    bad["values"] = {}
    given = send(book, bad, reading(seq=2))
    assert given["devices"]["d-one"] == {"seen": 2, "gaps": []}


def test_a_wild_counter_costs_nothing(book: Book) -> None:
    given = send(book, fruit(seq=2**53 - 1), reading(seq=1), {**reading(), "seq": 2**53})
    assert settled(given)[2] == "refused"
    assert given["devices"]["d-one"] == {"seen": 1, "gaps": []}, "no leap that would leave the phone no numbers"


def test_counters_match_a_plain_count(book: Book) -> None:
    import random

    chance, seen = random.Random(3), set()
    with book.write():
        for _ in range(300):
            some = {chance.randrange(1, 400) for _ in range(chance.randrange(1, 6))}
            seen |= some
            counters.note_seen(book, "d-x", some)
    report = counters.report_seen(book, "d-x")
    missing = {n for low, high in report["gaps"] for n in range(low, high + 1)}
    assert report["seen"] == max(seen)
    assert missing == set(range(1, max(seen))) - seen


def test_a_book_restored_from_an_older_backup_is_made_whole(book: Book, tmp_path: Any) -> None:
    from webapp.book.opening import open_book
    from webapp.book.record.backup import backup

    batch = [fruit(seq=1), reading(seq=2), gauge(seq=3)]
    send(book, batch[0])
    copy_path = backup(book, tmp_path / "backup.db")
    send(book, *batch[1:])
    with open_book(copy_path) as restored:
        report = send(restored, batch[0])
        assert report["devices"]["d-one"]["seen"] == 1  # so the phone offers 2 and 3 again
        assert report["book_id"] == send(book, batch[0])["book_id"]
        send(restored, *batch[1:])
        assert fold.dump(restored) == fold.dump(book)


def test_the_skew_is_measured_kept_and_shown(book: Book) -> None:
    given = send(book, fruit(), skew_s=-3661.2)
    assert given["skew_s"] == -3661.2
    row = book.one("SELECT skew_s, read_at FROM entries")
    assert row == {"skew_s": -3661.2, "read_at": fruit()["read_at"]}
    assert devices.report_devices(book)[0]["skew_s"] == -3661.2


def test_a_slate_that_another_phone_carries_keeps_the_skew_of_its_own_clock(book: Book) -> None:
    send(book, fruit(seq=1), skew_s=600.0)
    send(book, reading(seq=2), reading(F2, device="d-two"), skew_s=0.0, device="d-two")
    rows = book.query("SELECT device, skew_s FROM entries ORDER BY book_no")
    assert [tuple(row.values()) for row in rows] == [("d-one", 600.0), ("d-one", 600.0), ("d-two", 0.0)]


@pytest.mark.parametrize("now", [None, "", "noon", 7, "9999-12-31T23:59:59+00:00", "0001-01-01T00:00:00+14:00"])
def test_a_phone_whose_clock_says_nonsense_is_heard_all_the_same(book: Book, now: Any) -> None:
    given = hand_in(book, {"now": now, "device": "d-one", "entries": [fruit()]}, via="phone", now=NOW)
    assert settled(given)[0] in ("entered", "queried")
    fold.rebuild(book)


def test_the_same_batch_from_two_tabs_at_once_is_entered_once(book: Book) -> None:
    batch = [reading(seq=n, id=new_id()) for n in range(1, 41)]
    with ThreadPoolExecutor(4) as pool:
        given = list(pool.map(lambda _: send(book, *copy.deepcopy(batch)), range(4)))
    states = sorted({state for one in given for state in settled(one)})
    assert "known" in states
    assert sum(settled(one)[0] != "known" for one in given) == 1
    assert book.one("SELECT count(*) AS n FROM entries") == {"n": 40}
    assert log.verify(book) == []


def test_two_phones_may_write_about_one_vessel_in_the_same_minute(book: Book) -> None:
    with ThreadPoolExecutor(2) as pool:
        phones = ("d-one", "d-two")
        list(pool.map(lambda d: [send(book, reading(device=d, seq=n), device=d) for n in range(1, 15)], phones))
    unjudged.judge_all(book)  # what follows from one that others wait behind is worked out afterwards
    kept = fold.dump(book)
    fold.rebuild(book)
    assert fold.dump(book) == kept
    assert len(fold.load_state(book, f"v:{F1}")["recent"]["ferment_reading"]) == 20


def test_a_page_enters_with_a_counter_of_the_desk(book: Book) -> None:
    for _ in range(2):
        result = enter_page_entry(
            book, kind="shift_note", mark="", values={"text": {"raw": "pump leaks"}}, person="JK", role="distiller",
            read_at=NOW.isoformat(), now=NOW,
        )
        assert result["settled"] == "entered"
    assert counters.report_seen(book, "desk") == {"seen": 2, "gaps": []}
    assert [row["via"] for row in book.query("SELECT via FROM entries")] == ["page", "page"]


def test_a_lower_case_mark_finds_its_vessel_and_stays_as_it_was_typed(book: Book) -> None:
    one = fruit(F1.replace("-", " ").lower())
    send(book, one)
    kept = log.load_entry(book, one["id"])
    assert kept is not None
    assert (kept["mark"], kept["entry"]["mark"]) == (F1, one["mark"])
    assert fold.load_state(book, f"v:{F1}")["holds"]


def test_an_answer_to_nothing_is_kept(book: Book) -> None:
    assert settled(send(book, answer(new_id()))) == ["entered"]


def test_what_is_sent_again_hears_again_what_the_book_asks(book: Book) -> None:
    """The phone may have missed the first answer, and its question with it."""
    odd = reading(mark=make_mark("F99"))
    first, again = (send(book, odd)["results"][0] for _ in range(2))
    assert (first["settled"], again["settled"]) == ("queried", "known")
    assert again["queries"] == first["queries"]
    send(book, answer(odd["id"], "struck", seq=2))
    assert "queries" not in send(book, odd)["results"][0]


def test_a_phone_hears_whether_the_book_still_has_the_head_it_had(book: Book) -> None:
    def said(head: Any) -> Any:
        batch = {"now": NOW.isoformat(), "device": "d-one", "entries": [], "head": head}
        return hand_in(book, batch, via="phone", now=NOW).get("has_head")

    begin = send(book)["head"]
    assert tuple(begin) == (0, log.FIRST_DIGEST)
    first = send(book, reading(seq=1))["head"]
    last = send(book, reading(seq=2), reading(seq=3))["head"]
    assert (first[0], last[0]) == (1, 3)
    assert tuple(last) == log.load_head(book)
    assert [said(head) for head in (begin, first, last, list(last))] == [True] * 4
    assert [said(head) for head in ((4, last[1]), (2, last[1]), (3, first[1]), (0, last[1]))] == [False] * 4
    assert said(None) is None
    assert "has_head" not in send(book)
