"""How fast sites hand in to the group. Runs with --bench."""

from __future__ import annotations

import time

import pytest

from tests.group.conftest import Group, tell
from webapp.book.intake import book_id
from webapp.book.record import log
from webapp.group import sites
from webapp.group.sender import send

SIZE = 20_000


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
