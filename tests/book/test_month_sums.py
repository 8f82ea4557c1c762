"""The kept sums of months are what the flows come to, between any two seconds: summed here row by row."""

from __future__ import annotations

import random
from collections import Counter
from datetime import UTC, datetime, timedelta

import pytest

from tests.book.conftest import fill_world, send
from tests.book.stories import make_any
from webapp.book.fold import month_sums
from webapp.book.fold.month_sums import Between, sums_between
from webapp.book.record.store import Book

HERE = datetime(2025, 9, 24, 12, 0, tzinfo=UTC)


def plainly(book: Book, start: str, until: str) -> Counter[Between]:
    sums: Counter[Between] = Counter()
    for row in book.query("SELECT * FROM flows"):
        if start <= row["at"] < until and row["source_account"] != row["target_account"]:
            reason = "bottles" if row["reason"].endswith(" bottles") else row["reason"]
            sides = row["source_account"] or row["source"], row["target_account"] or row["target"]
            sums[Between(*sides, reason, row["sort"])] += row["lpa_ul"]
    return Counter({key: ul for key, ul in sums.items() if ul})


@pytest.mark.parametrize("seed", range(4))
def test_sums_between_any_two_seconds(book: Book, seed: int) -> None:
    chance = random.Random(seed)
    fill_world(book)
    story = [
        make_any(chance, read_at=HERE - timedelta(minutes=chance.randrange(200 * 1440)), seq=n + 1) for n in range(150)
    ]
    send(book, *story, now=HERE)
    edges = [row["at"][:19] for row in book.query("SELECT at FROM flows ORDER BY at")]
    assert len(edges) > 30
    moments = ["0000", "2025-03-01T00:00:00", "2025-06-30T22:00:00", "2025-08-31T18:30:00", "2025-12-31T23:00:00"]
    moments += chance.sample(edges, 12)
    for start in moments:
        for until in moments:
            if start < until:
                assert sums_between(book, start, until) == plainly(book, start, until), (start, until)
    assert month_sums.verify(book) == []
