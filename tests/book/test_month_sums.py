"""The kept sums of months are what the flows come to, between any two seconds: summed here row by row."""

from __future__ import annotations

import random
from collections import Counter
from datetime import UTC, datetime, timedelta

import pytest

from tests.book.conftest import R1, T1, T2, answer, entry, fill_world, gauge, send
from tests.book.stories import make_any
from webapp.book.fold import month_sums
from webapp.book.fold.month_sums import Between, Reading
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
                assert Reading(book).between(start, until) == plainly(book, start, until), (start, until)
    assert month_sums.verify(book) == []


def rows(book: Book) -> list[tuple[str, str, str, int, int]]:
    """The kept rows: month, from, to, microlitres of pure alcohol, how many flows."""
    kept = book.query("SELECT month, a, b, lpa_ul, n FROM month_sums ORDER BY month, a, b")
    return [tuple(row.values()) for row in kept]


def test_a_month_whose_only_entry_is_struck_is_emptied(book: Book) -> None:
    """400 L at 62 % vol are 248 L of pure alcohol; struck, no row of that month is left, not even one of nought."""
    july = gauge(T1, "400", "62", read_at=datetime(2025, 7, 10, 9, 0, tzinfo=UTC), purpose="opening", seq=1)
    august = gauge(T2, "100", "50", read_at=datetime(2025, 8, 10, 9, 0, tzinfo=UTC), purpose="opening", seq=2)
    send(book, july, august, now=HERE)
    assert [(month, ul, n) for month, _, _, ul, n in rows(book)] == [
        ("2025-07", 248_000_000, 1), ("2025-08", 50_000_000, 1),
    ]
    send(book, answer(july["id"], "struck", read_at=HERE, seq=3), now=HERE)
    assert [(month, ul, n) for month, _, _, ul, n in rows(book)] == [("2025-08", 50_000_000, 1)]
    send(book, answer(july["id"], "stands", read_at=HERE + timedelta(minutes=1), seq=4), now=HERE)
    assert month_sums.verify(book) == []


def test_what_moves_to_another_month_leaves_its_first_one(book: Book) -> None:
    july = gauge(T1, "400", "62", read_at=datetime(2025, 7, 10, 9, 0, tzinfo=UTC), purpose="opening", seq=1)
    send(book, july, now=HERE)
    june = july["read_at"].replace("-07-", "-06-")
    again = gauge(T1, "400", "60", read_at=june, amends=july["id"], because="misread", purpose="opening", seq=2)
    send(book, again, now=HERE)
    assert [(month, ul, n) for month, _, _, ul, n in rows(book)] == [("2025-06", 240_000_000, 1)]


def test_two_flows_of_one_key_are_one_row_that_counts_both(book: Book) -> None:
    """A gauge that finds 2 L less of 60 % vol books 1.2 L as a loss: twice, on two days of one month."""
    for n, volume in enumerate(("400", "398", "396"), 1):
        at = datetime(2025, 7, n, 9, 0, tzinfo=UTC)
        send(book, gauge(T1, volume, "60", read_at=at, purpose="opening" if n == 1 else "stock", seq=n), now=HERE)
    assert [(ul, n) for _, a, b, ul, n in rows(book) if b.startswith("out:")] == [(2_400_000, 2)]
    # From its second up to the next.
    lost = Reading(book).between("2025-07-02T09:00:00", "2025-07-03T09:00:00")
    assert sum(ul for key, ul in lost.items() if key.b.startswith("out:")) == 1_200_000


def test_a_sum_that_is_wrong_is_found_and_named_by_its_month(book: Book) -> None:
    send(book, gauge(T1, "400", "62", read_at=datetime(2025, 7, 10, 9, 0, tzinfo=UTC), purpose="opening"), now=HERE)
    assert month_sums.verify(book) == []
    with book.write() as database:
        database.conn.execute("UPDATE month_sums SET lpa_ul = lpa_ul + 1")
    words = "The sums of 2025-07 are not those of its flows. Run `cellarslate rebuild`."
    assert month_sums.verify(book) == [words]
    with book.write() as database:
        database.conn.execute("UPDATE month_sums SET lpa_ul = lpa_ul - 1, n = n + 1")
    assert month_sums.verify(book) == [words], "how many flows it counts is held too"
    with book.write() as database:
        database.conn.execute("UPDATE month_sums SET n = n - 1")
        database.conn.execute("INSERT INTO month_sums VALUES ('2025-03', 'a', 'b', 'leak', '', 5, 1)")
    assert month_sums.verify(book) == [words.replace("2025-07", "2025-03")]


def test_what_moves_within_one_tax_account_is_not_summed(book: Book) -> None:
    """Fifty litres go from one vessel of the storage account to another: in the flows, and in no sum."""
    opening = gauge(T1, "400", "62", read_at=HERE - timedelta(days=9), purpose="opening", seq=1)
    move = entry("account_move", T1, read_at=HERE - timedelta(days=8), serial="1", from_account="storage",
                 to_account="storage", purpose="deposit", spirit="plum", distilling_strength="70 pct_vol",
                 volume="50 L", temp="20 degC", strength="62 pct_vol", to_vessel=R1, seq=2)
    send(book, opening, move, now=HERE)
    within = book.query("SELECT lpa_ul FROM flows WHERE source_account = 'storage' AND target_account = 'storage'")
    assert within == [{"lpa_ul": 31_000_000}]
    assert [row[1:] for row in rows(book)] == [
        ("out:opening", "processing", 248_000_000, 1), ("processing", "storage", 248_000_000, 1),
    ]


@pytest.mark.parametrize(
    ("at", "month"),
    [
        ("0000", "0000"),
        ("2025-07-01T00:00:00", "2025-07"),
        ("2025-07-15T23:59:59", "2025-07"),
        ("2025-07-16T00:00:00", "2025-08"),
        ("2025-12-31T23:00:00", "2026-01"),
    ],
)
def test_the_nearest_beginning_of_a_month(at: str, month: str) -> None:
    assert month_sums._month_near(at) == month
