"""Hand-ins that wait for the write door at the same time: one write, each its own answer, none spoilt by another."""

from __future__ import annotations

import threading
import time
from collections.abc import Sequence
from concurrent.futures import Future, ThreadPoolExecutor
from datetime import timedelta
from typing import Any

import pytest

from tests.book.conftest import F1, NOW, T1, fruit, gauge, reading, send, settled
from webapp.book import intake
from webapp.book.cards import card
from webapp.book.fold import fold, replay, unjudged
from webapp.book.record import log
from webapp.book.record.line import Line, Turn
from webapp.book.record.store import Book, BookError

Entries = Sequence[dict[str, Any]]
DEVICES = ("d-one", "d-two", "d-three", "d-four")


def hand_in_together(book: Book, *batches: Entries) -> list[Future[dict[str, Any]]]:
    """Hand batches in while the door is shut: one waits at it, the others are taken together after it."""
    with ThreadPoolExecutor(len(batches)) as threads:
        with book.write():
            under_way = []
            for device, batch in zip(DEVICES, batches, strict=False):
                under_way.append(threads.submit(send, book, *batch, device=device))
                while not (book.line.is_served or book.line.is_waited_in):
                    time.sleep(0.002)
            while book.line.waiting < len(batches) - 1:
                time.sleep(0.002)
        return under_way


def count_writes(book: Book) -> list[int]:
    """A list that grows by one with each write that is about to become durable."""
    writes: list[int] = []
    plain = book.before_commit

    def counted(one: Book) -> None:
        writes.append(1)
        if plain:
            plain(one)

    book.before_commit = counted
    return writes


def readings(device: str, many: int = 2) -> list[dict[str, Any]]:
    first = NOW - timedelta(hours=9, minutes=DEVICES.index(device))
    return [
        reading(device=device, seq=n + 1, gravity=f"1.05{9 - n}", read_at=first + timedelta(hours=2 * n))
        for n in range(many)
    ]


def test_those_who_wait_are_taken_in_one_write_and_each_has_its_own_answer(book: Book) -> None:
    send(book, fruit(read_at=NOW - timedelta(days=1), seq=1, device="d-five"))
    writes = count_writes(book)
    batches = [readings(device) for device in DEVICES]
    answers = [one.result() for one in hand_in_together(book, *batches)]
    assert len(writes) == 3, "the one that shut the door, the first in the line, all others"
    for batch, given, device in zip(batches, answers, DEVICES, strict=True):
        assert [result["id"] for result in given["results"]] == [one["id"] for one in batch]
        assert set(settled(given)) <= {"entered", "queried"}
        assert given["devices"][device]["seen"] == 2
        for result in given["results"]:
            kept = log.load_entry(book, result["id"])
            assert kept is not None and kept["digest"] == result["digest"] and kept["book_no"] == result["book_no"]
    assert log.verify(book) == []
    kept_fold = fold.dump(book)
    fold.rebuild(book)
    assert fold.dump(book) == kept_fold


def test_one_that_is_too_large_or_says_another_thing_under_an_id_spoils_no_other(book: Book) -> None:
    large = [{"id": "x", "kind": "y" * intake.BYTES_MOST}]
    mine = readings("d-four")
    other = [{**mine[0], "remark": "another body"}]
    first, second, third, fourth = hand_in_together(book, readings("d-one"), large, mine, other)
    with pytest.raises(BookError, match="larger than 512 KB"):
        second.result()
    assert set(settled(first.result())) | set(settled(third.result())) <= {"entered", "queried"}
    assert settled(fourth.result()) == ["clash"]
    assert book.one("SELECT count(*) AS n FROM entries") == {"n": 4}
    assert book.one("SELECT count(*) AS n FROM aside WHERE settled = 'clash'") == {"n": 1}


def test_where_they_cannot_be_taken_together_each_is_tried_alone(
    book: Book, monkeypatch: pytest.MonkeyPatch
) -> None:
    plain = fold.settle

    def settle(book: Book, fresh: Any = None, **more: Any) -> Any:
        devices = {row["device"] for row, _ in fresh.values()}
        if "d-three" in devices:
            raise RuntimeError("a fault of ours")
        return plain(book, fresh, **more)

    monkeypatch.setattr(fold, "settle", settle)
    one, two, three, four = hand_in_together(book, *[readings(device) for device in DEVICES])
    for fine in (one, two, four):
        assert set(settled(fine.result())) <= {"entered", "queried"}
    with pytest.raises(RuntimeError, match="a fault of ours"):
        three.result()
    assert book.one("SELECT count(*) AS n FROM entries") == {"n": 6}
    assert log.verify(book) == []


def test_no_more_is_taken_at_once_than_the_line_allows() -> None:
    line: Line[Turn] = Line(10)
    taken: list[list[int]] = []
    begun, go_on = threading.Event(), threading.Event()

    def serve(group: list[Turn]) -> None:
        taken.append([turn.weight for turn in group])
        begun.set()
        go_on.wait(60)

    with ThreadPoolExecutor(7) as threads:
        first = threads.submit(line.stand, Turn(1), serve)
        begun.wait(60)
        others = []
        for n, weight in enumerate((4, 6, 1, 30, 2, 2), 1):
            others.append(threads.submit(line.stand, Turn(weight), serve))
            while line.waiting < n:
                time.sleep(0.002)
        go_on.set()
        assert first.result() and all(one.result() for one in others)
    assert taken == [[1], [4, 6], [1], [30], [2, 2]]


def test_no_more_is_taken_at_once_than_holds_the_door_for_so_long(monkeypatch: pytest.MonkeyPatch) -> None:
    """What the last group took says how many the next may be; one is always taken."""
    line: Line[Turn] = Line(1000, 2.0)
    taken: list[list[int]] = []
    begun, go_on, spent_s = threading.Event(), threading.Event(), [0.0]
    monkeypatch.setattr("webapp.book.record.line.time.thread_time", lambda: spent_s[0])

    def serve(group: list[Turn]) -> None:
        taken.append([turn.weight for turn in group])
        begun.set()
        go_on.wait(60)
        spent_s[0] += sum(turn.weight for turn in group) * (0.09 if len(taken) < 3 else 0.45)

    with ThreadPoolExecutor(9) as threads:
        first = threads.submit(line.stand, Turn(1), serve)
        begun.wait(60)
        others = []
        for n, weight in enumerate((10, 10, 10, 30, 2, 2, 2, 9), 1):
            others.append(threads.submit(line.stand, Turn(weight), serve))
            while line.waiting < n:
                time.sleep(0.002)
        go_on.set()
        assert first.result() and all(one.result() for one in others)
    assert taken == [[1], [10, 10], [10], [30], [2, 2], [2], [9]]


def test_a_receipt_does_not_wait_for_the_past_and_the_rest_is_worked_off(
    book: Book, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(replay, "FOLLOW_S", 0.0)
    monkeypatch.setattr(replay, "FOLLOW_LEAST", 3)
    send(book, *[gauge(T1, "300", seq=n, read_at=NOW - timedelta(days=30 - n)) for n in range(1, 13)])
    late = gauge(T1, "250", seq=20, read_at=NOW - timedelta(days=29, hours=12))
    result = send(book, late)["results"][0]
    assert result["settled"] in ("entered", "queried")
    assert book.one("SELECT standing FROM folded WHERE entry = ?", (late["id"],)) == {"standing": "entered"}
    assert unjudged.count_left(book) == 1
    shown = card(book, T1)
    assert shown is not None and shown["judging"]
    other = card(book, F1)
    assert other is not None and not other["judging"]
    said = "Consequences of late entries or changes are still to be worked out, from one place in the past on."
    assert unjudged.describe_progress(book) == said
    unjudged.judge_all(book)
    now = card(book, T1)
    assert now is not None and not now["judging"] and now["rev"] > shown["rev"], "a phone fetches it again"
    assert unjudged.describe_progress(book) == ""
    kept = fold.dump(book)
    fold.rebuild(book)
    assert fold.dump(book) == kept


def test_families_that_become_one_across_what_is_passed_over_are_there_once(
    book: Book, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The link between an entry and its last amendment comes late: the first place is left, the last one stays."""
    monkeypatch.setattr(replay, "FOLLOW_S", 0.0)
    monkeypatch.setattr(replay, "FOLLOW_LEAST", 0)
    days = [NOW - timedelta(days=9 - n) for n in range(6)]
    first = gauge(T1, "300", seq=1, read_at=days[0])
    link = gauge(T1, "310", seq=5, read_at=days[1], amends=first["id"], reason="typed wrongly")
    last = gauge(T1, "320", seq=6, read_at=days[4], amends=link["id"], reason="typed wrongly")
    send(book, first, gauge(T1, "305", seq=2, read_at=days[2]), gauge(T1, "306", seq=3, read_at=days[3]), last)
    send(book, link)
    assert unjudged.count_left(book) > 0
    unjudged.judge_all(book)
    assert book.query("SELECT entry FROM folded WHERE mark = ? AND entry IN (?, ?)", (T1, first["id"], last["id"])) == [
        {"entry": last["id"]}
    ]
    kept = fold.dump(book)
    fold.rebuild(book)
    assert fold.dump(book) == kept
