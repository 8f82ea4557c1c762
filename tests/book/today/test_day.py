"""The day as a line, and the next cut: it is the forecast's own interval, or there is none."""

from __future__ import annotations

from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

import pytest

from tests.book.conftest import F1, F2, NOW, R2, R3, S1, charge, entry, fruit, reading
from tests.book.today.conftest import ask
from webapp.book.still import forecast, runs
from webapp.book.today import cuts, due
from webapp.book.today.day import day_of
from webapp.trade.cutdue import forecast_cut

MINUTE = timedelta(minutes=1)
BERLIN = ZoneInfo("Europe/Berlin")
# A stream that falls as a pot's does: minutes since the first drop, % vol.
STREAM = ((0, 82.0), (20, 80.5), (40, 79.0), (60, 77.2), (80, 75.1), (100, 72.8))


@pytest.fixture(autouse=True)
def patient(monkeypatch):
    """Wait for a forecast, however busy the machine is."""
    monkeypatch.setattr(cuts, "LONGEST_S", 60.0)


def started(minutes_ago: float = 130, seq: int = 1, source: str = F1):
    return charge(S1, source, read_at=NOW - minutes_ago * MINUTE, seq=seq)


def stream(upto: int = len(STREAM), begun: float = 110, flow: str = "12", seq: int = 10, **more):
    """Readings of the stream; the first drop so many minutes before NOW."""
    return [
        entry("run_reading", S1, NOW - (begun - minutes) * MINUTE, seq=seq + n, strength=f"{pct} pct_vol",
              **({"flow": f"{flow} L_h"} if flow else {}), **more)
        for n, (minutes, pct) in enumerate(STREAM[:upto])
    ]


def cut(event: str, minutes_ago: float, seq: int, strength: str = "81"):
    return entry("cut", S1, NOW - minutes_ago * MINUTE, seq=seq, event=event, strength=f"{strength} pct_vol",
                 receiver=R2 if event == "heads_cut" else R3)


def plan(hearts: str = "68", seq: int = 90):
    return entry("cut_plan", S1, NOW - 200 * MINUTE, seq=seq, what="plum", heads="1 L",
                 hearts_to=f"{hearts} pct_vol")


def today(book, now=NOW):
    facts = ask(book)
    return day_of(facts, {}, now, BERLIN, due.next_reading(facts, {}))


def the_run(book, now=NOW):
    (still,) = today(book, now).stills
    (run,) = still.runs
    return run


def test_the_next_cut_is_the_forecast_of_the_plan(book, hand):
    hand(fruit(F1, read_at=NOW - timedelta(days=9)), plan(), started(), cut("heads_cut", 105, 2), *stream())
    found = the_run(book).cut
    assert (found.part, found.to, found.target_pct, found.by, found.state) == ("hearts", "tails", 68.0, "plan", "due")
    kept = runs.runs(book)[0]
    told = forecast_cut(forecast.forecast_input(kept, 0.0), None, 68.0)
    zero = datetime.fromisoformat(cuts.first_drop(kept)).timestamp()
    assert found.at_s == {name: zero + told["minutes"][name] * 60 for name in ("at", "low", "high")}
    assert found.at_s["low"] < found.at_s["at"] < found.at_s["high"]


def test_without_a_plan_the_run_before_says_and_without_both_nobody(book, hand):
    hand(fruit(F1, read_at=NOW - timedelta(days=9)), started(), cut("heads_cut", 105, 2), *stream())
    assert the_run(book).cut is None
    hand(entry("run_end", S1, NOW + MINUTE, seq=30, reason="strength"))
    late = NOW + timedelta(days=2)
    before = [charge(S1, F1, read_at=late - 300 * MINUTE, seq=40),
              entry("cut", S1, late - 280 * MINUTE, seq=41, event="heads_cut", strength="81 pct_vol", receiver=R2),
              entry("cut", S1, late - 200 * MINUTE, seq=42, event="hearts_cut", strength="63 pct_vol", receiver=R3),
              entry("run_end", S1, late - 150 * MINUTE, seq=43, reason="strength"),
              charge(S1, F1, read_at=late - 130 * MINUTE, seq=44),
              entry("cut", S1, late - 105 * MINUTE, seq=45, event="heads_cut", strength="81 pct_vol", receiver=R2)]
    hand(*before)
    still = today(book, late).stills[0]
    found = still.runs[-1].cut
    assert (found.target_pct, found.by) == (63.0, "last")


def test_heads_have_no_time_and_few_readings_none_either(book, hand):
    hand(fruit(F1, read_at=NOW - timedelta(days=9)), plan(), started(), *stream(1))
    assert (the_run(book).cut.part, the_run(book).cut.at_s) == ("heads", None)
    hand(cut("heads_cut", 60, 40))
    found = the_run(book).cut
    assert (found.part, found.state, found.at_s) == ("hearts", "too_little", None)


def test_a_stream_that_was_dipped_and_not_timed_has_no_interval(book, hand):
    hand(fruit(F1, read_at=NOW - timedelta(days=9)), plan(), started(), cut("heads_cut", 105, 2),
         *stream(flow="", dip="8 L"))
    found = the_run(book).cut
    assert (found.part, found.target_pct, found.state, found.at_s) == ("hearts", 68.0, "too_little", None)


def test_a_cut_that_the_stream_has_reached(book, hand):
    hand(fruit(F1, read_at=NOW - timedelta(days=9)), plan(hearts="74"), started(), cut("heads_cut", 105, 2), *stream())
    assert (the_run(book).cut.state, the_run(book).cut.at_s) == ("past", None)


def test_the_stretches_of_a_run_go_from_cut_to_cut(book, hand):
    hand(fruit(F1, read_at=NOW - timedelta(days=9)), started(130), *stream(3, begun=110), cut("heads_cut", 100, 40))
    assert [(one.part, round((NOW.timestamp() - one.start_s) / 60)) for one in the_run(book).stretches] == [
        ("heating", 130), ("heads", 110), ("hearts", 100)]
    hand(cut("hearts_cut", 40, 41, "60"), entry("run_end", S1, NOW - 10 * MINUTE, seq=42, reason="strength"))
    run = the_run(book)
    assert run.is_over and run.cut is None
    assert [one.part for one in run.stretches] == ["heating", "heads", "hearts", "tails"]
    assert run.stretches[-1].end_s == (NOW - 10 * MINUTE).timestamp()


def test_a_run_of_the_day_before_is_not_of_this_day(book, hand):
    hand(fruit(F1, read_at=NOW - timedelta(days=9)), started(130), entry("run_end", S1, NOW, seq=5, reason="strength"))
    assert len(today(book).stills[0].runs) == 1
    # NOW is noon in UTC; the house's clock is two hours ahead, so midnight comes at 22:00 UTC.
    assert len(today(book, NOW + timedelta(hours=9)).stills[0].runs) == 1
    assert today(book, NOW + timedelta(hours=11)).stills[0].runs == ()


def test_rounds_are_by_person_and_without_a_long_pause(book, hand):
    hand(fruit(F1, read_at=NOW - timedelta(days=3)), fruit(F2, read_at=NOW - timedelta(days=3), seq=2))
    early = NOW - timedelta(hours=5)
    hand(reading(F1, "1.060", read_at=early, seq=3), reading(F2, "1.060", read_at=early + 3 * MINUTE, seq=4),
         reading(F1, "1.058", read_at=NOW - MINUTE, seq=5), reading(F1, "1.058", read_at=NOW, seq=6, person="JK"))
    found = today(book).rounds
    assert [(one.words, one.person, len(one.at_s)) for one in found] == [
        ("readings", "NS", 2), ("readings", "NS", 1), ("readings", "JK", 1)]


def test_a_ferment_is_to_be_read_at_the_houses_interval(book, hand):
    hand(fruit(F1, read_at=NOW - timedelta(days=3)), reading(F1, "1.060", read_at=NOW - timedelta(hours=14), seq=3))
    ((at_s, mark, _),) = today(book).reads
    assert (mark, at_s) == (F1, (NOW + timedelta(hours=6)).timestamp())
    assert R2 not in [still.mark for still in today(book).stills]
