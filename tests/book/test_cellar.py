"""Casks and ferments as the cellar reads them out of the book: gauges, neighbours, counts of one alcohol."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest

from tests.book.conftest import C1, C2, F1, R1, R2, R3, S1, entry, send
from webapp.book import cards
from webapp.book.cellar import casks, ferments
from webapp.book.house.check_limits import set_check_limit
from webapp.book.record.store import Book
from webapp.trade.alcoholometry import litres_from_mass

FILLED = datetime(2023, 5, 1, 9, tzinfo=UTC)
SET = datetime(2025, 9, 1, 8, tzinfo=UTC)


def later(one: dict) -> datetime:
    return datetime.fromisoformat(one["read_at"]) + timedelta(minutes=3)


def hand(book: Book, *entries: dict) -> None:
    for one in entries:
        send(book, one, now=later(one))


def opened(mark: str, net: float, seq: int) -> dict:
    return entry("gauge", mark, FILLED, seq=seq, net_weight=f"{net} kg", strength="61 pct_vol", temp="12 degC",
                 purpose="opening", what="plum")


def regauge(mark: str, years: float, gross: float, strength: float, seq: int) -> dict:
    at = FILLED + timedelta(days=round(years * 365.25))
    return entry("cask_regauge", mark, at, seq=seq, gross=f"{gross} kg", strength=f"{strength} pct_vol",
                 temp="12 degC", condition="tight")


def lpa(net: float, strength: float) -> float:
    return float(litres_from_mass(net, strength, in_air=True)) * strength / 100


def test_a_casks_gauges_rates_and_sample(book: Book) -> None:
    sample = entry("sample", C1, FILLED + timedelta(days=400), seq=3, size="100 mL", number="5 count",
                   purpose="tasting", went="destroyed")
    hand(book, opened(C1, 160, 1), regauge(C1, 1, 201.0, 60.5, 2), sample, regauge(C1, 2, 197.0, 60.0, 4))
    cask = next(one for one in casks.casks(book) if one.row["mark"] == C1)
    assert [round(one["lpa"], 2) for one in cask.gauges] == pytest.approx(
        [lpa(160, 61), lpa(156, 60.5), lpa(152, 60)], abs=0.02)
    drawn = 0.5 * 0.605
    assert cask.gauges[2]["drawn_l"] == pytest.approx(drawn, abs=0.005)
    then, now = lpa(156, 60.5), lpa(152, 60)
    assert cask.loss == pytest.approx((then - drawn - now) / then * 100, abs=0.05)
    part = cards.card(book, C1)["cask"]
    assert [len(gauge) for gauge in part["gauges"]] == [4, 4, 4]
    assert part["gauges"][2][3] == pytest.approx(drawn, abs=0.005)
    assert len(str(part)) < 400  # small: thousands of casks lie on a phone


def test_a_leak_stands_out_among_casks_like_it(book: Book) -> None:
    hand(book, opened(C1, 160, 1), opened(C2, 160, 2), regauge(C1, 1, 200.5, 60.5, 3), regauge(C2, 1, 175.0, 60.6, 4))
    found = {cask.row["mark"]: cask for cask in casks.casks(book)}
    assert found[C1].verdict == "usual"
    assert found[C2].verdict == "leak"
    assert found[C1].usual["count"] == 1
    ahead = found[C1].at(FILLED + timedelta(days=round(2 * 365.25)))
    assert ahead["lpa"]["low"] < ahead["lpa"]["at"] < lpa(155.5, 60.5)
    assert found[C1].at(FILLED) is None


def test_the_houses_own_limits_decide_what_a_leak_is(book: Book) -> None:
    hand(book, opened(C1, 160, 1), opened(C2, 160, 2), regauge(C1, 1, 200.5, 60.5, 3), regauge(C2, 1, 175.0, 60.6, 4))
    set_check_limit(book, "vessel", C2, "loss_noise_pct", 40, by="MD")
    found = {cask.row["mark"]: cask for cask in casks.casks(book)}
    assert (found[C1].verdict, found[C2].verdict) == ("usual", "usual")  # its own scale is known to be poor
    set_check_limit(book, "vessel", C2, "loss_noise_pct", None, by="MD")
    set_check_limit(book, "site", "", "drift_pct", 0, by="MD")
    set_check_limit(book, "product", "plum", "drift_pct_year", 0.1, by="MD")
    assert {cask.verdict for cask in casks.casks(book) if cask.rates["last"]} <= {"slip", "other_cask"}


def test_the_house_says_which_cask_is_small(book: Book) -> None:
    hand(book, opened(C1, 160, 1), opened(C2, 160, 2))
    large = next(one for one in casks.casks(book) if one.row["mark"] == C1).usual["middle"]
    set_check_limit(book, "site", "", "small_l", 500, by="MD")
    small = next(one for one in casks.casks(book) if one.row["mark"] == C1).usual["middle"]
    assert (large, small) == (3.0, 6.5)  # the plain figures for either size, where no cask is like it


def test_scores_go_with_the_fill(book: Book) -> None:
    note = entry("tasting_note", C1, FILLED + timedelta(days=200), seq=2, nose_score="7 count", mouth_score="8 count",
                 wood_score="6 count", fault_score="0 count", reduced_to="23 pct_vol", decision="hold")
    note["values"] |= {"words": {"raw": "plum stone"}, "house_scores": {"raw": "fruit 7; depth 5"}}
    hand(book, opened(C1, 160, 1), note)
    cask = next(one for one in casks.casks(book) if one.row["mark"] == C1)
    assert cask.score == 7.0  # nose, mouth and wood; a fault is no merit
    assert cask.tastings[0]["house"] == "fruit 7; depth 5"
    assert cards.card(book, C1)["cask"]["score"] == 7.0


def a_ferment(book: Book) -> str:
    fall = ("1.064", "1.059", "1.049", "1.0325", "1.019", "1.0135", "1.0115")
    entries = [entry("fruit_intake", F1, SET, seq=1, gross="1600 kg", tare="60 kg", material="plum", grower_lot="G4",
                     temp="14 degC", rot="1 pct", batch="B-1", sugar="16 Bx")]
    for n, (day, gravity) in enumerate(zip((0, 2, 4, 6, 8, 10, 12), fall, strict=True)):
        entries.append(entry("ferment_reading", F1, SET + timedelta(days=day, hours=3), seq=2 + n,
                             gravity=f"{gravity} SG", temp="16 degC"))
    hand(book, *entries)
    return str(book.one("SELECT id FROM fills WHERE mark = ?", (F1,))["id"])


def test_a_ferments_readings_and_forecast(book: Book) -> None:
    found = ferments.ferment(book, a_ferment(book))
    assert found and [line["gravity"] for line in found["readings"]][:2] == [1.064, 1.059]
    assert found["forecast"]["state"] == "running"
    at = datetime.fromtimestamp(found["forecast"]["at_s"]["at"], UTC)
    assert SET + timedelta(days=10) < at < SET + timedelta(days=15)
    assert cards.card(book, F1)["ferment"] == {"end": 1.011, "grain": False}
    assert ferments.ferment(book, "nothing") is None


def test_counts_of_one_alcohol_side_by_side(book: Book) -> None:
    fill, day = a_ferment(book), SET + timedelta(days=14)
    hand(
        book,
        entry("ferment_closed", F1, day, seq=20, final_gravity="1.0115 SG", volume="1500 L",
              wash_strength="5.2 pct_vol", method="lab"),
        entry("charge", S1, day + timedelta(hours=1), seq=21, run_name="R", from_vessel=F1, wash="450 L",
              wash_strength="5.2 pct_vol", heads_to=R1, hearts_to=R2, tails_to=R3),
        entry("cut", S1, day + timedelta(hours=2), seq=22, event="heads_cut", receiver=R2, reason="nose"),
        entry("cut", S1, day + timedelta(hours=5), seq=23, event="hearts_cut", receiver=R3, reason="nose"),
        entry("run_end", S1, day + timedelta(hours=6), seq=24, reason="strength"),
        *(entry("fraction_gauge", mark, day + timedelta(hours=7, minutes=20 * n), seq=25 + n, still=S1, fraction=name,
                volume=f"{litres} L", strength=f"{strength} pct_vol", temp="20 degC", goes_to="stays")
          for n, (name, mark, litres, strength) in enumerate((
              ("heads", R1, "1.2", "78"), ("hearts", R2, "28.0", "70"), ("tails", R3, "10.0", "25")))),
    )
    found = ferments.ferment(book, fill)
    assert found
    counts = {one["key"]: one for one in ferments.count_alcohol(book, found)}
    by_gravity = (1.064 - 1.0115) * 131 * 0.85  # common practice, no source
    assert counts["gravity"]["pct"] == pytest.approx(by_gravity)
    assert counts["gravity"]["lpa"] == pytest.approx(by_gravity / 100 * 1500)
    assert counts["law_1880"]["pct"] == pytest.approx(52.5 / 5 * 0.571)  # Spirits Act 1880 s. 46
    assert counts["wash"]["lpa"] == pytest.approx(78.0, abs=0.01)
    received = 1.2 * 0.78 + 28 * 0.7 + 10 * 0.25
    assert counts["spirits"]["lpa"] == pytest.approx(received / (450 * 0.052) * 78.0, rel=0.002)
    greatest = "gravity" if by_gravity * 15 > received / 23.4 * 78 else "spirits"
    assert [key for key, one in counts.items() if one.get("greatest")] == [greatest]
    assert counts["spirits"]["share"] == pytest.approx(received / 23.4 * 100, abs=0.2)
