"""Is a book whole? Every proof it carries, in one walk; asked by whoever verifies, restores or takes a book in."""

from __future__ import annotations

from webapp.book import accounts, closes, log, month_sums
from webapp.book.store import Book


def verify(book: Book) -> list[str]:
    """Return a sentence for each thing that is not as it was or does not add up."""
    return [wrong for part in (log, accounts, closes, month_sums) for wrong in part.verify(book)]
