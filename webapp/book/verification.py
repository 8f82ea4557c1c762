"""Is a book whole? Every proof it carries, in one walk; asked by whoever verifies, restores or takes a book in."""

from __future__ import annotations

from webapp.book.fold import month_sums, unjudged
from webapp.book.house import phone_keys, proof
from webapp.book.periods import accounts, closes
from webapp.book.record import evidence, log, seals
from webapp.book.record.store import Book


def verify(book: Book) -> list[str]:
    """Return a sentence for each thing that is not as it was or does not add up.

    What a change of limits has left to be judged again is judged first: until then stock is half one, half the other.
    """
    unjudged.judge_all(book)
    return verify_as_it_is(book)


def verify_as_it_is(book: Book) -> list[str]:
    """Return a sentence for each thing that does not hold; nothing is judged first, so nothing may wait to be."""
    parts = (log, seals, proof, phone_keys, evidence, accounts, closes, month_sums)
    return [wrong for part in parts for wrong in part.verify(book)]
