"""Notes to the next shift: the last ones, and those that hang until somebody has heard them."""

from __future__ import annotations

from datetime import timedelta

from tests.book.conftest import F1, F2, NOW, answer, entry, new_id, send
from tests.book.test_enclosures import ogg, sha
from webapp.book import notes
from webapp.book.enclosures import shelf
from webapp.book.record.store import Book

LATER = NOW.replace(year=2090)  # after this book was begun, by the computer's own clock


def note(text: str, mark: str = F1, **more: object) -> dict[str, object]:
    return entry("shift_note", mark, values={"text": {"raw": text}}, **more)


def heard(of: dict[str, object], **more: object) -> dict[str, object]:
    return entry("note_heard", str(of["mark"]), values={"note": {"raw": of["id"]}}, person="JK", **more)


def hanging(book: Book) -> list[str]:
    return [one["text"] for one in notes.load_notes(book) if not one["heard"] and one["mark"]]


def test_a_note_hangs_until_somebody_has_heard_it_and_says_who(book: Book) -> None:
    one, other = note("stir"), note("cooling is on", F2, seq=2)
    send(book, one, other, now=LATER)
    assert hanging(book) == ["cooling is on", "stir"]
    send(book, heard(one, seq=3, read_at=NOW - timedelta(hours=1)), now=LATER)
    assert hanging(book) == ["cooling is on"]
    (told,) = [line for line in notes.load_notes(book) if line["entry"] == one["id"]]
    assert (told["heard"], told["heard_at"]) == ("JK", "2025-09-24T11:00:00Z")


def test_it_may_be_heard_before_it_comes_and_more_than_once_the_first_counts(book: Book) -> None:
    one = note("stir", seq=3)
    send(book, heard(one, seq=1, read_at=NOW), {**heard(one, seq=2, read_at=NOW - timedelta(hours=2)), "person": "TB"},
         now=LATER)
    send(book, one, now=LATER)
    (told,) = notes.load_notes(book)
    assert told["heard"] == "TB"


def test_who_takes_it_back_has_not_heard_it(book: Book) -> None:
    one = note("stir")
    tap = heard(one, seq=2)
    send(book, one, tap, now=LATER)
    assert hanging(book) == []
    send(book, answer(str(tap["id"]), "struck", read_at=NOW, seq=3, id=new_id()), now=LATER)
    assert hanging(book) == ["stir"]


def test_an_unheard_one_stays_behind_a_hundred_newer_ones(book: Book) -> None:
    send(book, note("look at the bung"), now=LATER)
    for n in range(100):
        one = note(f"n{n}", F2, seq=2 * n + 2)
        send(book, one, heard(one, seq=2 * n + 3), now=LATER)
    assert hanging(book) == ["look at the bung"]
    assert len(notes.load_notes(book)) == notes.LAST_MOST + 1


def test_those_from_before_a_book_could_be_told_hang_no_longer(book: Book) -> None:
    for n in range(30):
        send(book, note(f"old {n}", seq=n + 1), now=NOW)  # received before this book was brought up to date
    assert len(notes.load_notes(book)) == notes.LAST_MOST


def test_a_voice_note_comes_with_its_sound_once_that_is_here(book: Book) -> None:
    one = note("Voice note, 4 s") | {"enclosed": [sha(ogg())]}
    send(book, one, now=LATER)
    assert notes.load_notes(book)[0]["enclosed"] == []
    shelf.take_whole(book, sha(ogg()), ogg(), via="phone d-one", now=NOW)
    assert notes.load_notes(book)[0]["enclosed"] == [{"sha256": sha(ogg()), "type": "audio/ogg"}]


def test_it_reads_in_two_statements_however_many_there_are(book: Book) -> None:
    for n in range(40):
        send(book, note(f"n{n}", seq=n + 1) | {"enclosed": [f"{n:064x}"]}, now=LATER)
    said: list[str] = []
    book.db.conn.set_trace_callback(lambda sql: said.append(sql) if not sql.startswith("--") else None)
    assert len(notes.load_notes(book)) == 40
    book.db.conn.set_trace_callback(None)
    assert len(said) == 2
