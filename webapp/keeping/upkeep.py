"""The server's work on its own book while it runs: it judges the entries that a change of limits or rules has put on
the list, and indexes for the search what an older book has.
"""

from __future__ import annotations

import logging
import threading

from webapp.book.fold import unjudged
from webapp.book.record.errors import BookError
from webapp.book.record.store import Book
from webapp.book.search import keeping

LOOK_EVERY_S = 1.0
YIELD_MOST = 40  # so many times in a row the judging lets hand-ins go first: what they bring may change it again
RETRY_S = 60.0
_log = logging.getLogger("webapp")


def start_upkeep(book: Book, stop: threading.Event | None = None) -> threading.Thread:
    """Look after the book in a thread of its own, until `stop` is set or the process ends."""
    ended = stop or threading.Event()

    def look() -> None:
        wait_s, yielded = LOOK_EVERY_S, 0
        while not ended.wait(wait_s):
            if book.line.is_waited_in and yielded < YIELD_MOST:
                yielded, wait_s = yielded + 1, unjudged.PAUSE_S
                continue
            yielded = 0
            try:
                is_more = unjudged.judge_slice(book) or keeping.index_slice(book)
                wait_s = unjudged.PAUSE_S if is_more else LOOK_EVERY_S
            except BookError as error:
                _log.warning("Entries wait to be judged or indexed: %s", error)
                wait_s = RETRY_S
            except Exception:
                # Nothing is lost: the list stands in the book. A thread that ended would leave it there for ever.
                _log.exception("entries could not be judged again or indexed")
                wait_s = RETRY_S

    thread = threading.Thread(target=look, name="upkeep", daemon=True)
    thread.start()
    return thread
