"""A season in one sum, and what is said when it does not close."""

from datetime import UTC, datetime, timedelta
from typing import Any

import pytest

from tests.book.conftest import NOW, R1, R2, S1, charge, entry, gauge, send
from tests.book.told import Told, start
from webapp.book.house import registry
from webapp.book.periods import notices, season
from webapp.book.record.store import Book


@pytest.fixture
def told(book: Book) -> Told:
    return start(book)


def fraction(told: Told, name: str, mark: str, volume: str, strength: str) -> str:
    return told.say("fraction_gauge", mark, still=S1, fraction=name, volume=f"{volume} L", temp="20 degC",
                    strength=f"{strength} pct_vol", goes_to="drain" if name == "stillage" else "stays")


def run(told: Told, hearts: str = "30") -> None:
    """450 L of wash at 6 %: 27 L in; 30 L of hearts at 80 %, 24 L; 2 L of heads at 75 %, 1.5 L; stillage 0.8 L."""
    told.say(charge, S1)
    fraction(told, "heads", R1, "2", "75")
    fraction(told, "hearts", R2, hearts, "80")
    fraction(told, "stillage", S1, "400", "0.2")


def only(book: Book) -> season.Season:
    found = season.seasons(book, NOW)
    assert len(found) == 1
    return found[0]


def test_a_season_in_words(told: Told) -> None:
    run(told)
    one = only(told.book)
    assert one.name == "2025/26"
    assert one.words == (
        "Wash 27.00 L of pure alcohol = hearts 24.00 + heads 1.50 + feints on hand 0.00 + stillage 0.80 + not "
        "accounted for 0.70."
    )
    assert one.verdict == "Out by 0.00 L (0.0 % of the wash): within 1.0 %."
    assert not one.is_odd


def test_runs_that_lose_too_much(told: Told) -> None:
    run(told, hearts="28")
    one = only(told.book)
    assert one.is_odd
    assert one.verdict.startswith("The runs leave 8.5 % not accounted for, more than 3.0 %.")
    assert [notice.code for notice in notices.notices(told.book, NOW)] == ["season"]


def test_a_receiver_gauged_lower_later(told: Told) -> None:
    run(told)
    told.say(gauge, R2, "29", "80")
    one = only(told.book)
    assert one.words.endswith(" Gauges after collection found 0.80 less.")
    assert one.closes_by_pct == pytest.approx(0.8 / 27 * 100)
    assert one.verdict.startswith("Out by 0.80 L (3.0 % of the wash): more than 1.0 %.")


@pytest.mark.parametrize(("month", "first", "name"), [
    ("2026-06", 7, "2025/26"), ("2026-07", 7, "2026/27"), ("2026-01", 1, "2026"), ("2099-12", 7, "2099/00"),
])
def test_names_of_seasons(month: str, first: int, name: str) -> None:
    assert season.season_of(month, first) == name


def test_a_house_sets_its_month(told: Told) -> None:
    run(told)
    registry.set_site(told.book, {"season_month": 10}, "JK")
    assert only(told.book).name == "2024/25"


def test_an_empty_book_has_no_season(book: Book) -> None:
    assert season.seasons(book, NOW) == []
    assert notices.notices(book, NOW) == []


def test_tank_losses_of_the_last_quarter_stand_beside_the_queries(book: Book) -> None:
    """27 CFR 19.462: above 1.5 % of what was in tanks in a calendar quarter. 2 of 100 L at 60 %, in the summer."""
    from tests.book.conftest import T1

    def at(days: int) -> Any:
        return NOW - timedelta(days=days)

    send(book, gauge(T1, "100", "60", purpose="opening", read_at=at(60), seq=1),
         gauge(T1, "98", "60", read_at=at(40), seq=2))
    assert notices.notices(book, NOW) == []  # the quarter is not over
    found = notices.notices(book, datetime(2025, 10, 2, tzinfo=UTC))
    assert [notice.code for notice in found] == ["tank_loss"]
    assert found[0].words.startswith("2025-Q3: Tanks lost 1.20 of 60.00 L of pure alcohol in them this quarter: 2.0")
    assert found[0].href == "/desk/periods/2025-Q3"
    send(book, entry("loss", T1, cause="leak", volume="1 L", found="NS", done="pumped", read_at=at(39), seq=3))
    words = notices.notices(book, datetime(2025, 10, 2, tzinfo=UTC))[0].words
    assert "lost 1.80 of 60.00 L" in words
