"""The demo: an invented distillery, a year and a half of it, loaded through the real intake as if by its phones."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from pathlib import Path

from webapp.backups import BOOK_NAME
from webapp.book.intake import hand_in
from webapp.book.opening import open_book
from webapp.book.record.errors import BookError
from webapp.book.record.store import Book
from webapp.demo import blending, cellar, faults, goods, living, lots, notes, own, season, still, tasting, warehouse
from webapp.demo.phones import HandIn, Phone, hand_ins
from webapp.demo.setting import let_phones_in, put_house
from webapp.demo.story import Draft, day, zoned
from webapp.demo.story import load as read_file
from webapp.places import DEMO_DIR

Progress = Callable[[int, int, str], None]


def load(data_dir: Path, progress: Progress | None = None, today: datetime | None = None) -> str:
    """Load the demo into the book of a folder, unless it is there; return how to sign in.

    `today` (aware) adds a living moment: ferments under way and a run in its hearts just then; without it the year
    alone is loaded, always the same. A load that was broken off goes on. `progress` is told (done, total, words).
    BookError where the folder has a book of somebody's own.
    """
    if not DEMO_DIR.is_dir():
        raise BookError("The demo's data is not installed. Install the program again, or take the whole repository.")
    with open_book(data_dir / BOOK_NAME) as book:
        if not own.is_whole(book):
            if not own.may_lay(book):
                raise BookError(f"{data_dir} holds a book of your own. Name another folder for the demo with --data.")
            _load(book, progress or (lambda done, total, words: None), today)
    return how_to_sign_in()


def how_to_sign_in() -> str:
    """Return the sentence with codes and passwords of the demo's two people of the desk."""
    ways = [f"{one['code']} with {one['password']} ({one['name']})" for one in read_file("people") if "password" in one]
    return f"Sign in as {' or '.join(ways)}. On the floor: code BT, PIN 2468."


def year() -> list[Draft]:
    """Return the whole year of the story, slips included, in no order."""
    told = [
        *season.drafts(), *still.drafts(), *lots.drafts(), *warehouse.drafts(), *cellar.drafts(), *blending.drafts(),
        *goods.drafts(), *notes.drafts(), *tasting.drafts(),
    ]
    return faults.plant(told)


def send(book: Book, sent: HandIn) -> None:
    """Hand one batch in. An entry of the demo that is refused is a fault of the demo."""
    answer = hand_in(book, sent.body, via="demo", now=sent.now)
    for result in answer["results"]:
        assert result["settled"] in ("entered", "queried", "known"), result


def _load(book: Book, progress: Progress, today: datetime | None) -> None:
    progress(0, 1, "Setting up the house")
    own.mark(book, own.BEGUN)
    put_house(book)
    tasting.keep_keys(book)
    phones = let_phones_in(book, zoned(day(warehouse.BOOK_BEGAN, "08:00")))
    batches = hand_ins(year(), phones)
    if today:
        batches += _after(batches, living.hand_ins(phones, today))
    total = sum(len(sent.body["entries"]) for sent in batches)
    done = 0
    for sent in batches:
        progress(done, total, f"{sent.now.day} {sent.now:%B %Y}, {sent.phone.name}")
        send(book, sent)
        done += len(sent.body["entries"])
    own.mark(book, own.WHOLE, today)
    progress(total, total, "The book is whole")


def _after(batches: list[HandIn], more: list[HandIn]) -> list[HandIn]:
    """Leave the living moment out where the computer's clock stands before the end of the story's year."""
    return [sent for sent in more if sent.now > batches[-1].now]


__all__ = ["Draft", "Phone", "how_to_sign_in", "load", "year"]
