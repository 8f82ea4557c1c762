"""What the house holds against the sum of all flows, which is the book's own double entry."""

from __future__ import annotations

from datetime import datetime, timedelta

import pytest

from tests.book.conftest import C1, F1, NOW, R2, S1, T1, charge, entry, fruit, gauge
from tests.book.today.conftest import ask
from webapp.book.fold.registry_rows import load_site
from webapp.book.periods import accounts, notices
from webapp.book.today.holds import holds

DAY = timedelta(days=1)


def held(book, now=NOW):
    whole = notices.load_whole(book, now, load_site(book))
    return holds(ask(book), whole.ledger, whole.seasons, now)


def by_flows(book):
    """Pure alcohol that is anywhere inside, by the flows alone. [uL]"""
    return sum(one.lpa_ul for name, one in accounts.balances(book).items() if not name.startswith("out:"))


def year(hand):
    """Opening stock of plum, 30 L of pear from a run, a cask of it, a bottling."""
    hand(
        gauge(T1, read_at=NOW - 400 * DAY, seq=1, purpose="opening", what="plum"),
        fruit(F1, read_at=NOW - 20 * DAY, seq=2), charge(S1, F1, read_at=NOW - 10 * DAY, seq=3),
        entry("fraction_gauge", R2, NOW - 10 * DAY + timedelta(hours=5), seq=4, still=S1, fraction="hearts",
              volume="30 L", temp="20 degC", strength="80 pct_vol", goes_to="stays"),
        entry("run_end", S1, NOW - 10 * DAY + timedelta(hours=6), seq=5, reason="strength"),
        entry("cask_fill", C1, NOW - 9 * DAY, seq=6, from_vessel=T1, lot="L-01", what="plum", tare="45 kg",
              gross="200 kg", temp="20 degC", strength="62 pct_vol", use="used", soaked="yes", place="CELL-A1"),
        entry("bottling_gauge", T1, NOW - 8 * DAY, seq=7, batch="K-25-01", volume="200 L", strength="62 pct_vol",
              temp="20 degC", label_strength="62 pct_vol"),
        entry("bottling_close", T1, NOW - 7 * DAY, seq=8, filled="200 count", broken="0 count", reworked="0 count",
              library="0 count", per_case="6 count", bottle_size="0.5 L", case_from="1", case_to="33", lot_mark="L1",
              loss="1 L", tank_empty="no"),
        entry("dispatch", "", NOW - 6 * DAY, seq=9, batch="L1", why="tax_paid", document="D-1", to_whom="Shop",
              cases="2 count"),
    )


def test_total_accounts_and_spirits_come_to_the_flows(book, hand):
    year(hand)
    found = held(book)
    assert found.total == by_flows(book) > 0
    assert sum(found.accounts.values()) == found.total
    assert {one.name for one in found.spirits} == {"plum"}
    assert sum(one.ul for one in found.spirits) + found.in_work == found.total
    plum = found.spirits[0]
    bottles = sum(one.lpa_ul for name, one in accounts.balances(book).items() if name.startswith("b:"))
    assert plum.bottled == bottles > 0 and plum.oldest == "2025"


def test_the_line_begins_with_the_book_and_ends_now(book, hand):
    year(hand)
    found = held(book)
    assert found.line[-1][0] == NOW.timestamp() and sum(found.line[-1][1].values()) == found.total
    # 400 L of 62 % are all there was until the run of this month.
    first = datetime.fromtimestamp(found.line[0][0], NOW.tzinfo)
    assert (first.year, first.month) == (2024, 9)
    assert sum(found.line[0][1].values()) / 1e6 == pytest.approx(248.0, abs=0.1)
    since, more = found.year_ago
    assert since == "2024-10" and more == found.total - by_flows_until(book, "2024-10-01")


def by_flows_until(book, day):
    row = book.one(
        "SELECT sum(CASE WHEN target LIKE 'out:%' THEN 0 ELSE lpa_ul END) "
        "- sum(CASE WHEN source LIKE 'out:%' THEN 0 ELSE lpa_ul END) AS ul FROM flows WHERE at < ?", (day,))
    return row["ul"]


def test_what_the_season_brought_and_took(book, hand):
    year(hand)
    moved = held(book).moved
    assert (moved.season, moved.fruit_g) == ("2025/26", 840_000)
    assert moved.bottled / 1e6 == pytest.approx(200 * 0.5 * 0.62, abs=0.01)
    assert moved.left / 1e6 == pytest.approx(12 * 0.5 * 0.62, abs=0.01)
    assert moved.made > 0


def test_an_empty_book_holds_nothing(book):
    found = held(book)
    assert (found.total, found.spirits, found.in_work, found.moved, found.year_ago) == (0, [], 0, None, None)
