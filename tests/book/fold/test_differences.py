"""What other rules changed, entry by entry, and by which rules a book is judged: rows alone."""

from __future__ import annotations

import json
from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest

from tests.book.conftest import F1, reading, send
from webapp.book.fold import differences, judgings, rules, unjudged
from webapp.book.fold.differences import Asked, Difference, Moved, Said, Watch
from webapp.book.fold.heading import Heading, load_heading
from webapp.book.fold.judgings import Judging
from webapp.book.opening import open_book
from webapp.book.record.errors import BookError
from webapp.book.record.store import Book

NOW = datetime(2025, 10, 2, 12, 0, tzinfo=UTC)
RISE, HOT = Asked("rise", "rise", "ask"), Asked("hot", "hot", "ask")
FLOW = Moved("v:A", "v:B", 5, 6, 7, "f1", "f2", "reason", "storage", "processing", "2025-10-02T08:00:00Z", "sort")
ASKED = ("rise", "rise", "ask")


@pytest.fixture(scope="module")
def opened(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Book]:
    with open_book(Path(tmp_path_factory.mktemp("differences")) / "book.db") as book:
        send(book, *(reading(F1, seq=n + 1) for n in range(3)))
        yield book


@pytest.fixture
def book(opened: Book) -> Book:
    with opened.write() as database:
        for table in ("differences", "queries", "flows", "unjudged"):
            database.conn.execute(f"DELETE FROM {table}")
        database.conn.execute("DELETE FROM rules WHERE no > 1")
        database.conn.execute("UPDATE rules SET done_at = '2025-10-01T00:00:00Z', read_at = NULL, read_by = NULL")
    return opened


def judging(no: int = 9, done_at: str | None = None) -> Judging:
    return Judging(no, 1, "s", "d" * 64, "{}", "0.2", "2025-10-02T00:00:00Z", done_at, None, None)


def kept_rows(book: Book) -> list[dict[str, Any]]:
    return book.query("SELECT * FROM differences ORDER BY entry")


def kept(book: Book) -> dict[str, tuple[Any, Any]]:
    found = kept_rows(book)
    assert {row["rules"] for row in found} <= {9}
    return {row["entry"]: (json.loads(row["before"]), json.loads(row["after"])) for row in found}


def say(book: Book, entry: str, code: str = "rise") -> None:
    """Let the file have this question of an entry, with whatever else a row of it has."""
    row = {"entry": entry, "name": code, "code": code, "weight": "ask", "field": "", "message": "{}",
           "suggestions": "[]", "mark": "", "kind": "gauge", "person": "", "at": "", "answer": ""}
    book.db.conn.execute(
        f"INSERT INTO queries ({', '.join(row)}) VALUES ({', '.join(f':{name}' for name in row)})", row
    )


NOTHING: Any = [[], []]
ROSE: Any = [[list(RISE)], []]


def test_outside_a_judging_nothing_is_kept(book: Book) -> None:
    with book.write():
        for none in (Watch(book, None), Watch(book, judging(done_at="2025-10-02T01:00:00Z"))):
            assert not none
            none.leave_out("e1")
            none.hold_results("e1", "e2")
        assert Watch(book, judging())
    assert kept(book) == {}


def test_a_question_that_is_no_more_is_a_difference_and_one_that_stays_is_none(book: Book) -> None:
    with book.write():
        watch = Watch(book, judging())
        say(book, "e1")
        say(book, "e2")
        watch.compare_results("e1", [], [], is_new=False)
        watch.compare_results("e2", [ASKED], [], is_new=False)
        watch.compare_results("e3", [ASKED], [], is_new=True)
    assert kept(book) == {"e1": (ROSE, NOTHING)}


def test_what_was_before_the_judging_stays_what_it_is_compared_with(book: Book) -> None:
    """Judged twice while others are corrected: gone, then there again. It is a row still, and no difference."""
    with book.write():
        watch = Watch(book, judging())
        say(book, "e1")
        watch.compare_results("e1", [], [FLOW], is_new=False)
        book.db.conn.execute("DELETE FROM queries")
        assert kept(book) == {"e1": (ROSE, [[], [list(FLOW)]])}
        watch.compare_results("e1", [ASKED], [], is_new=True)
    assert kept(book) == {"e1": (ROSE, ROSE)}


def test_an_entry_that_leaves_its_place_says_nothing_until_it_comes_back(book: Book) -> None:
    with book.write():
        watch = Watch(book, judging())
        say(book, "e1")
        watch.hold_results("e1", "e2")
        assert kept(book) == {"e1": (ROSE, NOTHING), "e2": (NOTHING, NOTHING)}
        watch.compare_results("e2", [ASKED], [], is_new=True)
        watch.hold_results("e1", "e2")
    assert kept(book) == {"e1": (ROSE, NOTHING), "e2": (NOTHING, NOTHING)}


def test_what_a_person_has_amended_meanwhile_is_left_out(book: Book) -> None:
    with book.write():
        watch = Watch(book, judging())
        for entry in ("e1", "e2"):
            say(book, entry)
            watch.compare_results(entry, [], [], is_new=False)
        watch.leave_out("e1")
    assert set(kept(book)) == {"e2"}


def test_a_fold_made_anew_is_compared_with_the_one_before(book: Book) -> None:
    columns = [row["name"] for row in book.query("PRAGMA table_info(flows)")]

    def flow(entry: str, lpa_ul: int) -> None:
        line = {"entry": entry, "n": 0, **FLOW._asdict(), "lpa_ul": lpa_ul}
        assert set(line) == set(columns)
        places = ", ".join(f":{name}" for name in line)
        book.db.conn.execute(f"INSERT INTO flows ({', '.join(line)}) VALUES ({places})", line)

    with book.write() as database:
        assert differences.keep_fold(book) is None, "no judging is under way"
        database.conn.execute("UPDATE rules SET done_at = NULL")
        for entry in ("gone", "same"):
            say(book, entry)
        flow("more", 5)
        flow("as much", 5)
        watch = differences.keep_fold(book)
        assert watch
        for table in ("queries", "flows"):
            database.conn.execute(f"DELETE FROM {table}")
        for entry in ("same", "new"):
            say(book, entry)
        flow("more", 6)
        flow("as much", 5)
        differences.compare_fold(book, watch)
        found = {row["entry"]: (json.loads(row["before"]), json.loads(row["after"]))
                 for row in kept_rows(book)}
        # Once more in the same connection: nothing of the first is left lying about.
        again = differences.keep_fold(book)
        assert again
        differences.compare_fold(book, again)
    assert found == {
        "gone": (ROSE, NOTHING), "new": (NOTHING, ROSE),
        "more": ([[], [list(FLOW)]], [[], [list(FLOW._replace(lpa_ul=6))]]),
    }


def test_a_difference_says_what_came_what_went_and_whether_a_sum_changed() -> None:
    heavy = Asked("rise", "rise", "stop")
    one = Difference("e1", "gauge", F1, "NS", "", Said((RISE, HOT), (FLOW,)), Said((heavy, HOT), (FLOW,)))
    assert (one.went, one.came, one.is_sum_changed) == ([RISE], [heavy], False)
    other = Difference("e1", "gauge", F1, "NS", "", Said((RISE,), (FLOW,)), Said((RISE,), ()))
    assert (other.went, other.came, other.is_sum_changed) == ([], [], True)
    assert Said((RISE,), (FLOW,)).as_text() == json.dumps([[list(RISE)], [list(FLOW)]], separators=(",", ":"))
    assert "Zwätschge" in Said((), (FLOW._replace(reason="Zwätschge"),)).as_text()


def test_differences_are_listed_until_a_person_has_read_them(book: Book) -> None:
    ids = [row["id"] for row in book.query("SELECT id FROM entries ORDER BY read_at, id")]
    last = judgings.last_judging(book)
    assert last is not None
    with book.write() as database:
        for entry, before, after in ((ids[1], ROSE, NOTHING), (ids[0], NOTHING, ROSE), (ids[2], ROSE, ROSE)):
            line = (last.no, entry, json.dumps(before), json.dumps(after))
            database.conn.execute("INSERT INTO differences VALUES (?, ?, ?, ?)", line)
    listed = differences.list_differences(book, last)
    assert [(one.entry, one.kind, one.mark, one.person) for one in listed] == [
        (entry, "ferment_reading", F1, "NS") for entry in ids[:2]
    ]
    assert listed[0].before == Said((), ()) and listed[0].after == Said((RISE,), ())
    assert listed[0].read_at == "2025-09-24T08:00:00+00:00"
    with book.write():
        judgings.end_judging(book)
    assert len(kept_rows(book)) == 2, "what is as it was is forgotten at the end"
    assert differences.count_unread(book) == {last.no: 2}
    with pytest.raises(BookError) as refused:
        differences.note_read(book, last.no + 1, "JK", NOW)
    assert str(refused.value) == "There is nothing to read of it. Look at the list again."
    differences.note_read(book, last.no, "JK", NOW)
    assert differences.count_unread(book) == {}
    now = judgings.last_judging(book)
    assert now is not None and (now.read_by, now.read_at) == ("JK", "2025-10-02T12:00:00Z")
    with pytest.raises(BookError, match="nothing to read"):
        differences.note_read(book, last.no, "JK", NOW)


def test_the_head_of_a_page_says_in_one_statement_what_the_lists_say(book: Book) -> None:
    last = judgings.last_judging(book)
    assert last is not None
    assert load_heading(book) == Heading({"stop": 0, "ask": 0, "note": 0}, "", {})
    ids = [row["id"] for row in book.query("SELECT id FROM entries ORDER BY book_no")]
    with book.write() as database:
        say(book, "e1")
        say(book, "e2", "hot")
        database.conn.execute("INSERT INTO differences VALUES (?, ?, '[]', '[1]')", (last.no, ids[0]))
        database.conn.execute("INSERT INTO unjudged SELECT order_key FROM folded LIMIT 2")
    told = "2 of 3 entries are still to be judged by the limits and settings as they are now."
    assert load_heading(book) == Heading({"stop": 0, "ask": 2, "note": 0}, told, {last.no: 1})
    asked: list[str] = []
    book.db.conn.set_trace_callback(asked.append)
    load_heading(book)
    book.db.conn.set_trace_callback(None)
    assert len([sql for sql in asked if sql.startswith("SELECT")]) == 1


def test_a_judging_says_its_rules_in_a_few_words(book: Book) -> None:
    mine = rules.current_rules()
    last = judgings.last_judging(book)
    assert last is not None and last.is_by_me and last.parts == mine.parts
    assert judging().words == f"rules 1 of version 0.2, digest {'d' * 16}"
    assert not judging().is_by_me
    assert judgings.say_how_judged(book) == f"All is judged by {last.words}."
    with book.write() as database:
        database.conn.execute("INSERT INTO unjudged VALUES ('place')")
    assert judgings.say_how_judged(book) == f"Not all is judged yet by {last.words}."
    with book.write() as database:
        database.conn.execute("DELETE FROM unjudged")
        database.conn.execute("UPDATE rules SET done_at = NULL")
    assert judgings.say_how_judged(book) == f"Not all is judged yet by {last.words}."
    assert unjudged.describe_progress(book) == ""


def test_the_parts_that_changed_are_those_that_differ_from_the_judging_before(book: Book) -> None:
    first = judgings.last_judging(book)
    assert first is not None
    assert judgings.changed_parts(book, first) == []
    with book.write() as database:
        parts = {**first.parts, "new part": "1"}
        changed = next(iter(first.parts))
        parts[changed] = "other"
        line = "INSERT INTO rules (number, source, digest, parts, version, begun_at) VALUES (2, 's', 'd', ?, '9', 'b')"
        database.conn.execute(line, (json.dumps(parts),))
    last = judgings.last_judging(book)
    assert last is not None and last.no > first.no
    assert [one.no for one in judgings.judgings(book)] == [last.no, first.no]
    assert judgings.changed_parts(book, last) == [changed, "new part"]
