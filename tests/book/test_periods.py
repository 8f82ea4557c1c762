"""Months and quarters: worked by hand, closed and adjusted, and as a chain that holds for any story."""

from __future__ import annotations

import itertools
import random
import sqlite3
from collections import Counter
from datetime import UTC, datetime, timedelta
from decimal import Decimal
from pathlib import Path
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from tests.book.conftest import C1, F1, NOW, R2, S1, T1, answer, entry, fill_world, gauge, send, settled
from tests.book.stories import make_any
from tests.closing import close_as_read
from webapp.book.fold import fold
from webapp.book.house import people, registry
from webapp.book.opening import open_book
from webapp.book.periods import closes, periods
from webapp.book.periods.ledger import load_ledger
from webapp.book.periods.warnings import warnings
from webapp.book.periods.words import party_words, rules_words
from webapp.book.record import months
from webapp.book.record.errors import BookError
from webapp.book.record.store import Book
from webapp.trade.proof import lpa_from_proof_gallons

LATER = datetime(2026, 6, 1, tzinfo=UTC)


class Teller:
    """A book told by days; the book gets each entry at once, or when `now` says."""

    def __init__(self, book: Book) -> None:
        self.book, self.seq = book, 0

    def say(self, day: str, make: Any, *args: Any, now: datetime | None = None, **more: Any) -> str:
        self.seq += 1
        read = datetime.fromisoformat(day).astimezone(UTC)
        if isinstance(make, str):
            make, args = entry, (make, *args)
        one = make(*args, read_at=read, seq=self.seq, **more)
        assert settled(send(self.book, one, now=now or read)) in (["entered"], ["queried"])
        return str(one["id"])

    def account(self, period: str, account: str, known: bool = False) -> periods.Account:
        found = periods.period(self.book, period, LATER, "us")
        return next(one for one in (found.known if known else found.accounts) if one.name == account)

    def close(self, period: str, by: str = "OL", now: datetime = LATER) -> str:
        return close_as_read(self.book, period, by, now)


@pytest.fixture
def told(book: Book) -> Teller:
    people.put_person(book, {"code": "OL", "name": "OL", "access": "office"}, "OL")
    registry.set_site(book, {"time_zone": "Europe/Paris", "accounts": "us"}, "OL")
    return Teller(book)


def lines(side: tuple[periods.Shown, ...]) -> dict[tuple[str, ...], float]:
    """Lines as (party, reason, sort, of) -> litres, without what is empty."""
    return {tuple(filter(None, (s.party, s.reason, s.sort, s.of))): s.ul / 1e6 for s in side}


def a_season(told: Teller) -> None:
    """40 L of hearts at 70 % are in R2 by the book: 28 L. 30 L of them (21 L) go to storage, 5 L (3.5 L) are spilt."""
    told.say("2025-10-10T10:00+02:00", gauge, R2, "40", "70", purpose="opening")
    told.say(
        "2025-10-20T10:00+02:00", "account_move", R2, serial="1", from_account="production", to_account="storage",
        to_vessel=T1, purpose="deposit", spirit="plum", distilling_strength="70 pct_vol", volume="30 L", temp="20 degC",
        strength="70 pct_vol",
    )
    told.say("2025-11-05T10:00+01:00", "loss", R2, cause="spill", volume="5 L", found="NS", done="pumped")


def test_months_worked_by_hand(told: Teller) -> None:
    a_season(told)
    october, november = told.account("2025-10", "production"), told.account("2025-11", "production")
    assert (october.opening, october.closing) == (0, 7_000_000)
    assert lines(october.ins) == {("out:opening", "gauge"): 28.0}
    # 70 % vol at 20 degC is 139.9 proof: well under 170.
    assert lines(october.outs) == {("storage", "deposit", "brandy at 170 proof and under"): 21.0}
    assert (november.opening, november.closing) == (7_000_000, pytest.approx(3_500_000, abs=1_000))
    assert lines(november.outs) == {("out:spill", "spill"): pytest.approx(3.5, abs=1e-3)}
    storage = told.account("2025-Q4", "storage")
    assert lines(storage.ins) == {("production", "deposit"): 21.0}
    assert (storage.opening, storage.closing, storage.outs) == (0, 21_000_000, ())


def test_one_warehouse_has_no_lines_of_its_own_moves(told: Teller) -> None:
    a_season(told)
    (house,) = periods.period(told.book, "2025-Q4", LATER, "warehouse").accounts
    assert lines(house.ins) == {("out:opening", "gauge"): 28.0}
    assert list(lines(house.outs)) == [("out:spill", "spill")]
    assert house.closing == pytest.approx(24_500_000, abs=1000)


def test_a_month_is_bounded_by_the_clock_of_the_house(told: Teller) -> None:
    """In Paris October 2025 ends with winter time, at 23:00 UTC: 22:59:59 UTC is October, 23:00 is November."""
    told.say("2025-10-31T22:59:59+00:00", gauge, R2, "10", "50", purpose="opening")
    told.say("2025-10-31T23:00:00+00:00", gauge, T1, "20", "50", purpose="opening")
    assert told.account("2025-10", "production").closing == 5_000_000
    assert told.account("2025-10", "processing").closing == 0
    assert told.account("2025-11", "processing").total_in == 10_000_000


@pytest.mark.parametrize(
    ("declared", "spirit", "sort"),
    [
        # 27 CFR 19.632 and the monthly report: brandy splits at 170 proof, whisky at 160. 85.06 % vol is 170 proof.
        ("84.9 pct_vol", "plum", "brandy at 170 proof and under"),
        ("170 proof", "plum", "brandy at 170 proof and under"),
        ("85.3 pct_vol", "plum", "brandy over 170 proof"),
        ("159 proof", "rye", "whisky at 160 proof and under"),
        ("161 proof", "rye", "whisky over 160 proof"),
    ],
)
def test_withdrawals_are_split_where_the_law_splits(told: Teller, declared: str, spirit: str, sort: str) -> None:
    told.say("2025-10-10T10:00+02:00", gauge, R2, "40", "70", purpose="opening")
    told.say(
        "2025-10-20T10:00+02:00", "account_move", R2, serial="1", from_account="production", to_account="storage",
        purpose="deposit", spirit=spirit, distilling_strength=declared, volume="40 L", temp="20 degC",
        strength="70 pct_vol",
    )
    assert [line.sort for line in told.account("2025-10", "production").outs] == [sort]


def test_without_a_word_the_run_says_the_distilling_strength(told: Teller) -> None:
    """Hearts of 86.0 % off the still are over 170 proof, though the cask is filled at less."""
    say = told.say
    say("2025-10-10T06:00+02:00", "charge", S1, from_vessel=F1, wash="450 L",
        wash_strength="6.0 pct_vol", hearts_to=R2)
    say("2025-10-10T12:00+02:00", "run_end", S1, reason="strength")
    say("2025-10-10T13:00+02:00", "fraction_gauge", R2, still=S1, fraction="hearts", remnant="0 L",
        remnant_strength="0 pct_vol", volume="25 L", temp="20 degC", strength="86 pct_vol",
        goes_to="stays")
    say("2025-10-11T09:00+02:00", "cask_fill", C1, from_vessel=R2, lot="L1", tare="46 kg", gross="60 kg",
        temp="20 degC", strength="86 pct_vol", use="used", soaked="yes", place="A1")
    outs = told.account("2025-10", "production").outs
    assert [line.sort for line in outs if line.party == "storage"] == ["brandy over 170 proof"]


def test_proof_gallons_are_stated_to_the_nearest_tenth() -> None:
    """27 CFR 30.64: 22,650.84 proof gallons are 22,650.8; 19.289 and 30.64: 0.05 and over goes up."""
    for exact, stated in (("22650.84", "22650.8"), ("0.050001", "0.1"), ("0.0499", "0.0"), ("-0.050001", "-0.1")):
        assert periods.proof_gallons(round(lpa_from_proof_gallons(float(exact)) * 1e6)) == Decimal(stated)
    # One proof gallon holds 1.9018 L of alcohol at 20 degC: 27 CFR 30.11, through OIML R 22 from 60 degF.
    assert periods.proof_gallons(190_180_000) == Decimal("100.0")
    assert periods.litres(1_005_000) == Decimal("1.01") and periods.litres(1_004_999) == Decimal("1.00")


def test_a_late_entry_falls_into_an_adjustment_and_never_into_the_past(told: Teller) -> None:
    a_season(told)
    told.close("2025-10")
    before = told.account("2025-10", "production")
    late = told.say(
        "2025-10-25T10:00+02:00", "destruction", R2, what="heads", volume="2 L", temp="20 degC", strength="70 pct_vol",
        place="yard", manner="poured out", withdrawn="no", watched_by="JK", now=LATER,
    )
    assert told.account("2025-10", "production") == before
    known = told.account("2025-10", "production", known=True)
    assert lines(known.outs)[("out:destroyed", "destruction")] == pytest.approx(1.4)
    assert periods.period(told.book, "2025-10", LATER, "us").differs
    november = told.account("2025-11", "production")
    assert november.opening == before.closing == 7_000_000
    assert lines(november.outs)[("out:destroyed", "destruction", "2025-10")] == pytest.approx(1.4)
    assert november.closing == told.account("2025-11", "production", known=True).closing
    assert [row["id"] for row in closes.late_entries(told.book)] == [late]
    # Once the next month is closed the adjustment is stated there, and falls due no more.
    told.close("2025-11")
    december = told.account("2025-12", "production")
    assert (december.opening, december.ins, december.outs) == (november.closing, (), ())
    assert closes.late_entries(told.book) == []
    # A strike undoes it: so much more is there again, as an `in`, since no figure is negative.
    told.seq += 1
    send(told.book, answer(late, "struck", read_at=LATER, seq=told.seq), now=LATER)
    (more,) = told.account("2025-12", "production").ins
    assert (more.party, more.of, more.ul) == ("out:destroyed", "2025-10", 1_400_000)
    assert len(closes.late_entries(told.book)) == 1
    assert closes.verify(told.book) == []


def test_a_period_is_closed_in_its_order_by_one_who_may_and_as_seen(told: Teller) -> None:
    a_season(told)
    assert closes.draft_close(told.book, "2025-11", LATER).months == ("2025-10", "2025-11")
    with pytest.raises(BookError, match="nothing in 2025-09"):
        told.close("2025-09")
    with pytest.raises(BookError, match="has not ended"):
        told.close("2025-10", now=datetime(2025, 10, 31, 22, 59, 59, tzinfo=UTC))
    with pytest.raises(BookError, match="Only a distiller or the office"):
        told.close("2025-10", by="NS")
    seen = closes.draft_close(told.book, "2025-10", LATER).digest
    told.say("2025-10-26T10:00+01:00", gauge, T1, "29", "70")
    with pytest.raises(BookError, match="changed while you looked"):
        closes.close_period(told.book, "2025-10", "OL", seen, LATER)
    told.close("2025-Q4")
    assert [row["month"] for row in closes.closes(told.book)] == ["2025-10", "2025-11", "2025-12"]
    with pytest.raises(BookError, match="closed already"):
        told.close("2025-11")
    with pytest.raises(BookError, match="no period"):
        told.close("2025-13")


def test_a_close_is_never_changed(told: Teller) -> None:
    a_season(told)
    told.close("2025-10")
    for sql in ("UPDATE closes SET person = 'NS'", "DELETE FROM closes"):
        with pytest.raises(sqlite3.IntegrityError), told.book.write() as database:
            database.conn.execute(sql)
    with told.book.write() as database:
        database.conn.execute("DROP TRIGGER closes_stay")
        database.conn.execute("UPDATE closes SET figures = replace(figures, '7000000', '7000001')")
    assert any("not those that were signed" in words for words in closes.verify(told.book))


def test_another_time_zone_leaves_closed_months_where_they_were(told: Teller) -> None:
    a_season(told)
    told.close("2025-10")
    registry.set_site(told.book, {"time_zone": "Pacific/Auckland"}, "OL")
    ledger = load_ledger(told.book, LATER)
    october, november = ledger.month("2025-10"), ledger.month("2025-11")
    assert october and november
    assert october.until == november.start == "2025-10-31T23:00:00"
    assert ledger.adjustments == {}


def test_what_stands_against_closing_is_said(told: Teller) -> None:
    """A tank of 100 L pure alcohol that loses 2 in a quarter lost 2.0 %: more than the 1.5 of 27 CFR 19.462."""
    told.say("2025-10-10T10:00+02:00", gauge, T1, "200", "50", purpose="opening")
    told.say("2025-11-10T10:00+02:00", gauge, T1, "196", "50")
    told.say("2025-11-11T10:00+02:00", "sample", C1, size="100 mL", number="1 count", purpose="analysis",
             went="destroyed")
    found = {one.code: one.words for one in warnings(told.book, periods.period(told.book, "2025-Q4", LATER, "us"))}
    assert "2.00 of 100.00 L" in found["tank_loss"] and "2.0 %" in found["tank_loss"]
    assert "tank_loss" not in {
        one.code for one in warnings(told.book, periods.period(told.book, "2025-11", LATER, "us"))
    }


def test_quarters_and_months_have_names() -> None:
    assert months.months_of("2025-Q4") == ["2025-10", "2025-11", "2025-12"]
    assert [months.quarter_of(f"2025-{m:02d}") for m in (1, 3, 4, 12)] == ["2025-Q1", "2025-Q1", "2025-Q2", "2025-Q4"]
    for wrong in ("2025-00", "2025-13", "2025-Q5", "2025", "1897-01", "2025-1", "2025-10\n"):
        with pytest.raises(BookError):
            months.months_of(wrong)
    assert party_words("in", "out:evaporation") != party_words("out", "out:evaporation")


@settings(max_examples=25, deadline=None, suppress_health_check=list(HealthCheck))
@given(chance=st.randoms(use_true_random=False))
def test_the_chain_holds_for_any_story(tmp_path_factory: pytest.TempPathFactory, chance: random.Random) -> None:
    """Opening = last closing; in - out is the difference, to the microlitre; late entries are adjusted in the open."""
    folder: Path = tmp_path_factory.mktemp("chain")
    with open_book(folder / "book.db") as book:
        fill_world(book)
        people.put_person(book, {"code": "OL", "name": "OL", "access": "office"}, "OL")
        registry.set_site(book, {"time_zone": chance.choice(("UTC", "Europe/Paris", "Asia/Kolkata"))}, "OL")
        story: list[dict[str, Any]] = []
        now = NOW
        for turn in range(6):
            for _ in range(chance.randrange(3, 12)):
                read = NOW - timedelta(days=chance.randrange(0, 200), minutes=chance.randrange(0, 1440))
                more: dict[str, Any] = {"read_at": read, "seq": len(story) + 1}
                if story and chance.random() < 0.25:
                    old = chance.choice(story)["id"]
                    if chance.random() < 0.5:
                        story.append(answer(old, chance.choice(("struck", "stands")), **more))
                        continue
                    more |= {"amends": old, "because": "misread"}
                story.append(make_any(chance, **more))
            now = NOW + timedelta(days=turn)
            send(book, *story[-15:], now=now)
            _check_chain(book, now)
            if chance.random() < 0.6:
                ledger = load_ledger(book, now)
                name = ledger.first_open
                month = ledger.month(name or "")
                if name and month and month.until < now.isoformat():
                    stated = periods.period(book, name, now, "us").accounts
                    close_as_read(book, name, "OL", now)
                    assert periods.period(book, name, now, "us").accounts == stated
                    _check_chain(book, now)
        assert closes.verify(book) == []


def _check_chain(book: Book, now: datetime) -> None:
    ledger = load_ledger(book, now)
    for how in ("us", "warehouse"):
        found = periods.periods(book, now, how)
        by_month = sorted((one for one in found if "Q" not in one.name), key=lambda one: one.name)
        for one in found:
            for account in (*one.accounts, *one.known):
                assert account.opening + account.total_in - account.total_out == account.closing
                assert all(line.ul > 0 for line in (*account.ins, *account.outs))
            for account in one.known:
                assert min(account.opening, account.closing) >= 0
        for earlier, later in itertools.pairwise(by_month):
            for which in ("accounts", "known"):
                closing = {one.name: one.closing for one in getattr(earlier, which)}
                opening = {one.name: one.opening for one in getattr(later, which)}
                assert closing == opening, (earlier.name, which)
        for one in found:
            if "Q" in one.name:
                inside = [each for each in by_month if each.name in one.months]
                assert [a.opening for a in one.accounts] == [a.opening for a in inside[0].accounts]
                assert [a.closing for a in one.accounts] == [a.closing for a in inside[-1].accounts]
        # As now known, and as stated with its adjustments: both end at what the vessels and runs hold.
        assert {a.name: a.closing for a in by_month[-1].accounts} == {a.name: a.closing for a in by_month[-1].known}
    stands: Counter[str] = Counter()
    for row in book.query("SELECT DISTINCT key FROM states WHERE key GLOB '[vrb]:*'"):
        state = fold.load_state(book, row["key"]) or {}
        held = state.get("holds") if row["key"][0] == "v" else state
        if held:
            account = {"r": "production", "b": "finished"}.get(row["key"][0]) or held["account"]
            stands[account] += held["lpa_ul"]
    last = periods.periods(book, now, "us")[1]
    assert {a.name: a.closing for a in last.known if a.closing} == {k: v for k, v in stands.items() if v}
    assert ledger.months[-1].name == last.name


def test_goods_that_touch_no_vessel_are_in_the_period_at_once(told: Teller) -> None:
    """No card changes with them: what was worked out for a page before must not be shown again."""
    a_season(told)
    assert told.account("2025-10", "finished").closing == 0
    told.say("2025-10-25T10:00+02:00", "goods_receipt", "", consignor="Hollow Hill", document="T-8", batch="K-26-03",
             spirit="plum", strength="45 pct_vol", bottle_size="0.5 L", per_case="6 count", cases="20 count",
             seals="yes")
    assert told.account("2025-10", "finished").closing == 27_000_000


def test_what_rules_have_in_common_is_said_once() -> None:
    assert rules_words(("27 CFR 19.585", "27 CFR 19.632")) == "27 CFR 19.585, 19.632"
    assert rules_words(("Dir. 92/83/EEC", "HMRC Notice 197")) == "Dir. 92/83/EEC; HMRC Notice 197"
    assert rules_words(()) == ""
