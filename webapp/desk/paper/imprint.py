"""What every paper says of itself: house, when and by whom it was printed, the book's state, its page's address."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime

from flask import current_app, request

from webapp.access import current
from webapp.book.record import log
from webapp.desk.blueprint import local_time
from webapp.words.desk import say
from webapp.words.houseunits import US

DIGEST_SHOWN = 12


@dataclass(frozen=True, slots=True)
class Imprint:
    """The imprint of a paper. `book` names the last entry and the head of the chain when it was printed."""

    house: str
    printed: str
    by: str
    book: str
    address: str
    is_letter: bool


def imprint_of(path: str) -> Imprint:
    """Return the imprint of a paper about the page at `path`, as of now."""
    assert current.person
    number, digest = log.load_head(current.book)
    return Imprint(
        house=str(current.site.get("name") or "Cellarslate"),
        printed=local_time(datetime.now(UTC).isoformat()),
        by=str(current.person.get("name") or current.person["code"]),
        book=say("paper-imprint-book_up_to_no_chain", number=number, digest=digest[:DIGEST_SHOWN]),
        address=address_of(path),
        is_letter=current.house == US,
    )


def address_of(path: str) -> str:
    """Return the whole address of a page, as a symbol carries it."""
    host = current_app.config["PUBLIC_HOST"]
    root = f"https://{host}" if host else request.host_url.rstrip("/")
    return f"{root}{path}"
