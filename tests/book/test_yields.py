"""What a ferment gives, through the real intake: judged by the sugar taken in and by the house's own years.

Common practice, no source: a cold fruit ferment held under 60 degF takes about ten days; about 130 US gallons of
fermented fruit in the pot give 54 to 55 L of spirit at 140 proof, which is 70 % vol; fruit brandy stands two years in
oak at least. That is more than one and a half times the flat rates of a tax (4.6 L from 100 L of plum mash, the German
official rate of the former order): flat rates are safe averages, and no check may go by them.
"""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from functools import partial

import pytest

from tests.book.conftest import C1, F1, F2, F3, R1, R2, R3, S1, answer, entry, send
from webapp.book import cards
from webapp.book.cellar.endings import past_weights
from webapp.book.fold import fold, queries
from webapp.book.fold.states import load_newest
from webapp.book.record.store import Book
from webapp.kinds.key import fall_key
from webapp.trade.ferment import tell_shape, weigh_past

BEGAN = datetime(2025, 9, 1, 8, tzinfo=UTC)
NIGHTS_F = ("58.5", "58.0", "57.5", "58.0", "58.5", "58.0", "57.0", "57.5", "57.0", "57.5", "57.0")
FALL = ("1.078", "1.074", "1.068", "1.061", "1.053", "1.045", "1.037", "1.029", "1.022", "1.016", "1.012")


def season(book: Book, mark: str, strength: str, *, brix: str = "20", after: int = 0, seq: int = 1) -> list[str]:
    """One ferment of 517 kg of plums, ten cold days; the wash is 130 gallons at this strength. Return what is asked."""
    begin = BEGAN + timedelta(days=after)
    entries = [entry("fruit_intake", mark, begin, seq=seq, gross="577 kg", tare="60 kg", material="plum",
                     grower_lot="G4", temp="14 degC", rot="1 pct", batch=f"B-{after}", sugar=f"{brix} Bx")]
    for day, (gravity, temp) in enumerate(zip(FALL, NIGHTS_F, strict=True)):
        at = begin + timedelta(days=day, hours=2)
        read = {"gravity": f"{gravity} SG", "temp": f"{temp} degF"}
        entries.append(entry("ferment_reading", mark, at, seq=seq + 1 + day, **read))
    at = begin + timedelta(days=11)
    entries.append(entry("ferment_closed", mark, at, seq=seq + 20, final_gravity="1.012 SG", volume="130 gal",
                         wash_strength=f"{strength} pct_vol", method="lab"))
    asked = []
    for one in entries:
        send(book, one, now=datetime.fromisoformat(one["read_at"]) + timedelta(minutes=2))
        rows = book.query("SELECT code FROM queries WHERE entry = ? AND weight <> 'note'", (one["id"],))
        asked += [row["code"] for row in rows]
    return asked


def words(book: Book, mark: str) -> str:
    asked = [query for query in queries.open_queries(book) if query["mark"] == mark]
    return str(next(query["words"] for query in asked if query["code"] == "ferment_yield"))


def test_an_ordinary_rich_season_is_not_asked_about(book: Book) -> None:
    assert season(book, F1, "8.8") == []
    # 43.3 L from 492 L of mash is 8.8 L in 100 L: nearly twice the flat 4.6.
    assert 130 * 3.785411784 * 0.088 / 492 * 100 > 1.5 * 4.6


def test_its_spirit_is_54_to_55_litres_at_140_proof_and_the_run_asks_nothing(book: Book) -> None:
    season(book, F1, "8.8")
    at = BEGAN + timedelta(days=11, hours=1)
    run = [
        entry("charge", S1, at, seq=41, run_name="R", from_vessel=F1, wash="130 gal", wash_strength="8.8 pct_vol",
              heads_to=R1, hearts_to=R2, tails_to=R3),
        entry("cut", S1, at + timedelta(hours=1), seq=42, event="heads_cut", receiver=R2, reason="nose"),
        entry("cut", S1, at + timedelta(hours=4), seq=43, event="hearts_cut", receiver=R3, reason="nose"),
        entry("run_end", S1, at + timedelta(hours=5), seq=44, reason="strength"),
        *(entry("fraction_gauge", mark, at + timedelta(hours=6, minutes=20 * n), seq=45 + n, still=S1, fraction=name,
                volume=f"{litres} L", strength=strength, temp="20 degC", goes_to="stays")
          for n, (name, mark, litres, strength) in enumerate((
              ("heads", R1, "1.4", "79 pct_vol"), ("hearts", R2, "54.5", "140 proof"),
              ("tails", R3, "13.0", "25 pct_vol")))),
    ]
    for one in run:
        send(book, one, now=datetime.fromisoformat(one["read_at"]) + timedelta(minutes=2))
    assert [query["code"] for query in queries.open_queries(book) if query["weight"] != "note"] == []
    hearts = fold.load_state(book, f"v:{R2}")["holds"]
    assert hearts["strength_pct"] == pytest.approx(70.0, abs=0.15)
    assert hearts["lpa_l"] == pytest.approx(38.2, abs=0.2)


def test_twice_as_good_and_half_as_good_are_asked_about(book: Book) -> None:
    assert "ferment_yield" in season(book, F1, "17.6")
    assert season(book, F2, "4.4", seq=101) == ["ferment_yield"]
    assert "about 44.2 L could be expected. That is little: 49 %" in words(book, F2)


def test_the_houses_own_years_are_the_measure_once_there_are_three(book: Book) -> None:
    """A house whose plums give two thirds of the plain sum: half of the sum is its ordinary, the whole sum is much."""
    for n, strength in enumerate(("5.8", "6.0", "5.9")):
        assert season(book, (F1, F2, F3)[n], strength, after=12 * n, seq=1 + 100 * n) == []
    # 4.4 % is 49 % of the plain sum, and was asked about in the house above; by its own years it is 75 %.
    assert season(book, F1, "4.4", after=40, seq=501) == []
    assert season(book, F2, "8.8", after=54, seq=601) == ["ferment_yield"]
    assert "could be expected by your last 4 of plum. That is much" in words(book, F2)


def test_twice_and_half_of_the_houses_own(book: Book) -> None:
    for n in range(3):
        season(book, (F1, F2, F3)[n], "6.0", after=12 * n, seq=1 + 100 * n)
    assert "ferment_yield" in season(book, F1, "12.0", after=40, seq=501)
    assert season(book, F2, "2.9", after=54, seq=601) == ["ferment_yield"]


def test_a_late_ferment_changes_what_is_said_of_the_later_ones(book: Book) -> None:
    """The house's custom is folded in the order of what was read, not of arrival."""
    for n in (0, 2, 3):
        season(book, (F1, F2, F3, F1)[n], "6.0", after=12 * n, seq=1 + 100 * n)
    before = fold.dump(book)
    season(book, F2, "6.0", after=1, seq=901)
    assert fold.dump(book) != before
    late = fold.dump(book)
    fold.rebuild(book)
    assert fold.dump(book) == late
    assert [line["at"] for line in fold.load_state(book, "y:plum")["closes"]] == sorted(
        line["at"] for line in fold.load_state(book, "y:plum")["closes"])


def test_an_amended_close_counts_once(book: Book) -> None:
    season(book, F1, "6.0")
    closed = book.one("SELECT e.id FROM entries e WHERE e.kind = 'ferment_closed'")["id"]
    at = BEGAN + timedelta(days=11)
    again = entry("ferment_closed", F1, at, seq=60, final_gravity="1.012 SG", volume="130 gal", method="lab",
                  wash_strength="6.4 pct_vol", amends=closed, because="read again")
    send(book, again, now=at + timedelta(hours=1))
    closes = fold.load_state(book, "y:plum")["closes"]
    assert len(closes) == 1
    assert closes[0]["share"] == pytest.approx(130 * 3.785411784 * 0.064 / 44.2, rel=0.01)


def test_a_struck_close_is_no_custom(book: Book) -> None:
    season(book, F1, "9.0")
    closed = book.one("SELECT e.id FROM entries e WHERE e.kind = 'ferment_closed'")["id"]
    at = BEGAN + timedelta(days=12)
    assert len(fold.load_state(book, "y:plum")["closes"]) == 1
    send(book, answer(closed, "struck", read_at=at, seq=70), now=at)
    assert not (fold.load_state(book, "y:plum") or {"closes": []})["closes"]


def test_what_sugar_cannot_give_is_no_custom(book: Book) -> None:
    season(book, F1, "17.6")
    assert fold.load_state(book, "y:plum") is None


def test_two_years_in_oak_ask_nothing(book: Book) -> None:
    filled = datetime(2023, 5, 1, 9, tzinfo=UTC)
    sent = [entry("gauge", C1, filled, seq=1, net_weight="160 kg", strength="61 pct_vol", temp="12 degC",
                  purpose="opening"),
            entry("cask_regauge", C1, filled + timedelta(days=760), seq=2, gross="197.0 kg", strength="60.2 pct_vol",
                  temp="12 degC", condition="tight")]
    for one in sent:
        send(book, one, now=datetime.fromisoformat(one["read_at"]) + timedelta(minutes=2))
    assert [query["code"] for query in queries.open_queries(book)] == []




def test_how_past_ferments_fell_weighs_the_forecast_of_the_next(book: Book) -> None:
    """The card brings the weights: after a season each they lean to how those fell, and another fruit has none."""
    season(book, F1, "8.8")
    season(book, F2, "8.7", after=400, seq=101)
    kept = load_newest(book, fall_key("plum"))
    assert kept is not None
    assert [one["gravities"] for one in kept["ended"]] == [[float(gravity) for gravity in FALL]] * 2
    assert kept["ended"][0]["days"] == pytest.approx(range(11))
    begin = BEGAN + timedelta(days=800)
    send(book, entry("fruit_intake", F3, begin, seq=201, gross="577 kg", tare="60 kg", material="plum",
                     grower_lot="G4", temp="14 degC", rot="1 pct", batch="B-3", sugar="20 Bx"))
    part = (cards.card(book, F3) or {})["ferment"]
    told = tell_shape(list(range(11)), [float(gravity) for gravity in FALL])
    assert told is not None
    assert part["past"] == pytest.approx(weigh_past([told, told]), abs=1e-6)
    assert past_weights(partial(load_newest, book), "pear") is None
