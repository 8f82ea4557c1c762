"""How fast sites hand in to the group. Runs with --bench."""

from __future__ import annotations

import time

import pytest

from tests.group.conftest import Group, Wire, tell
from webapp.book.intake import book_id
from webapp.book.record import log
from webapp.book.record.store import Book
from webapp.group import sites
from webapp.group.sender import send

SIZE = 20_000
TEN, TEN_SIZE = 10, 10_000


@pytest.mark.bench
@pytest.mark.timeout(1200)
def test_hand_in_rate(group: Group, make_site, capsys):
    book = make_site("North Hill")
    # Plain readings, spread over a year: the rate of hand-in is measured, not a tangle of late entries.
    from datetime import timedelta

    from tests.book.conftest import F1, NOW, reading
    from tests.book.conftest import send as log_at

    for at in range(0, SIZE, 200):
        log_at(book, *(reading(F1, seq=at + n + 1, read_at=NOW - timedelta(minutes=SIZE - at - n))
                       for n in range(200)))
    wire, figures = group.let_in(), {}
    begun = time.monotonic()
    send(book, wire)
    figures["hand-in, entries a second"] = SIZE / (time.monotonic() - begun)
    begun = time.monotonic()
    send(book, wire)
    figures["a round with nothing new, ms"] = (time.monotonic() - begun) * 1000
    begun = time.monotonic()
    group.folds.step()
    figures["fold and publish, entries a second"] = SIZE / (time.monotonic() - begun)
    tell(book, 25, 1)
    send(book, wire)
    begun = time.monotonic()
    group.folds.step()
    figures["fold and publish of 25 more, ms"] = (time.monotonic() - begun) * 1000
    begun = time.monotonic()
    assert sites.verify(group.store, book_id(book), 0) == (log.load_head(book)[0], [])
    figures["walk of the chain, entries a second"] = SIZE / (time.monotonic() - begun)
    held = group.store.one("SELECT sum(pg_total_relation_size(inhrelid)) AS n FROM pg_inherits "
                           "WHERE inhparent = 'entries'::regclass")
    figures["bytes an entry in PostgreSQL, with indexes"] = float(held["n"]) / SIZE
    with capsys.disabled():
        print()
        for name, value in figures.items():
            print(f"{name}: {value:,.0f}")
    assert figures["hand-in, entries a second"] > 200


@pytest.mark.bench
@pytest.mark.timeout(1200)
def test_ten_sites_to_one(group: Group, make_site, capsys):
    """Ten sites with as many entries together as one has by itself: what each further site costs."""
    from datetime import timedelta

    from tests.book.conftest import F1, NOW, reading
    from tests.book.conftest import send as log_at

    def told(name: str, many: int) -> tuple[Book, Wire]:
        book = make_site(name)
        for at in range(0, many, 200):
            log_at(book, *(reading(F1, seq=at + n + 1, read_at=NOW - timedelta(minutes=many - at - n))
                           for n in range(200)))
        return book, group.let_in()

    figures = {}
    for sites_many in (1, TEN):
        all_of_them = [told(f"Hill {sites_many}-{n}", TEN_SIZE // sites_many) for n in range(sites_many)]
        begun = time.monotonic()
        for book, wire in all_of_them:
            send(book, wire)
        figures[f"{sites_many}: hand-in, entries a second"] = TEN_SIZE / (time.monotonic() - begun)
        begun = time.monotonic()
        group.folds.step()
        figures[f"{sites_many}: fold and publish, entries a second"] = TEN_SIZE / (time.monotonic() - begun)
        begun = time.monotonic()
        for book, wire in all_of_them:
            send(book, wire)
        figures[f"{sites_many}: a round of all with nothing new, ms"] = (time.monotonic() - begun) * 1000
        begun = time.monotonic()
        group.folds.step()
        figures[f"{sites_many}: a look at the folds with nothing new, ms"] = (time.monotonic() - begun) * 1000
    with capsys.disabled():
        print()
        for name, value in figures.items():
            print(f"{name}: {value:,.0f}")
    assert figures[f"{TEN}: hand-in, entries a second"] > 100
