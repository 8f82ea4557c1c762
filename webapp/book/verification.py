"""Is a book whole? Every proof it carries, in one walk; asked by whoever verifies, restores or takes a book in."""

from __future__ import annotations

from webapp.book.fold import month_sums, unjudged
from webapp.book.periods import accounts, closes
from webapp.book.record import evidence, log
from webapp.book.record.store import Book


def verify(book: Book) -> list[str]:
    """Return a sentence for each thing that is not as it was or does not add up.

    What a change of limits has left to be judged again is judged first: until then stock is half one, half the other.
    """
    unjudged.judge_all(book)
    return [wrong for part in (log, evidence, accounts, closes, month_sums) for wrong in part.verify(book)]
