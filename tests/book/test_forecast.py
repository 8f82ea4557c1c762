"""What a still's last runs teach its card: a convenience, which never keeps the card itself from a phone."""

import logging
import threading
from pathlib import Path
from typing import Any

import pytest

from tests.book.conftest import S1, fill_world
from tests.book.test_run_wishes import tell, whole_run
from webapp.book import cards
from webapp.book.opening import open_book
from webapp.book.still import forecast


@pytest.fixture
def house(tmp_path: Path) -> Any:
    with open_book(tmp_path / "book.db") as book:
        fill_world(book)
        yield book


def test_runs_that_nothing_can_be_learnt_from_leave_the_card_without(house, monkeypatch, caplog):
    def fails(_runs):
        raise ZeroDivisionError("nobody foresaw this")

    monkeypatch.setattr(forecast, "learn_prior", fails)
    with caplog.at_level(logging.ERROR, "webapp"):
        assert forecast._learned(house, S1, '["a run of this test alone"]') is None
    assert "nobody foresaw this" in caplog.text


@pytest.fixture
def slow(monkeypatch):
    """Learning that ends when it is told to."""
    may_end = threading.Event()

    def learn(past):
        assert may_end.wait(60)
        return {"runs": len(past)}

    monkeypatch.setattr(forecast, "learn_prior", learn)
    monkeypatch.setattr(forecast, "LONGEST_S", 0.05)
    forecast.learning.cache_clear()
    yield may_end
    may_end.set()
    forecast.learning.cache_clear()


def learnt(book, past_ended):
    """Wait until the one thread that learns has done all that it was given."""
    past_ended.set()
    forecast.in_turn(lambda: None).result(timeout=60)


def test_a_card_does_not_wait_for_what_its_still_teaches(house, slow):
    """Learning takes its time on a busy computer; the card comes without it, and with it once it is known."""
    tell(house, *whole_run())
    assert cards.card(house, S1)["still_lessons"] is None
    learnt(house, slow)
    assert cards.card(house, S1)["still_lessons"] == {"runs": 1}


def test_two_phones_let_in_while_the_book_learns_end_with_one_forecast(house, slow):
    tell(house, *whole_run())
    early, again = cards.cards_since(house, 0), cards.cards_since(house, 0)
    for told in (early, again):
        assert next(card for card in told["cards"] if card["mark"] == S1)["still_lessons"] is None
    learnt(house, slow)
    late = cards.cards_since(house, 0)
    # The first phone asks for what has changed since: the still's card alone, and once.
    fetched = cards.cards_since(house, early["cursor"])
    assert [card["mark"] for card in fetched["cards"]] == [S1]
    one = fetched["cards"][0]
    assert one["still_lessons"] == {"runs": 1}
    assert one == next(card for card in late["cards"] if card["mark"] == S1)
    assert cards.cards_since(house, fetched["cursor"])["cards"] == []


def test_a_book_that_was_closed_meanwhile_keeps_its_peace(tmp_path, slow, caplog):
    with open_book(tmp_path / "other.db") as book:
        fill_world(book)
        tell(book, *whole_run())
        assert cards.card(book, S1)["still_lessons"] is None
    with caplog.at_level(logging.WARNING, "webapp"):
        learnt(book, slow)
    assert "without its earlier runs" in caplog.text


def line(minute: int, event: str = "", **more: Any) -> dict[str, Any]:
    said = {"event": event} if event else {}
    return {"entry": f"e{minute}{event}", "at": f"2025-10-13T{8 + minute // 60:02}:{minute % 60:02}:00Z",
            "true_strength": None, **said, **more}


def seen(*cuts: dict[str, Any], readings: list[dict[str, Any]]) -> Any:
    run = {"cuts": [line(0, "first_drop"), *cuts], "readings": readings, "started_at": line(-0)["at"], "charge": {}}
    return forecast.forecast_input(run, 0.0)  # type: ignore[arg-type]


def test_changes_that_were_told_go_into_the_forecast_with_the_plates_from_then_on():
    told = seen(
        line(20, "heat_changed"), line(40, "plate_in"), line(50, "plate_in"), line(70, "plate_out"),
        readings=[line(10, true_strength=80.0, plates=2.0), line(60, true_strength=76.0)],
    )
    assert told["still"]["plates"] == 2.0
    assert told["changes"] == [
        {"minutes": 20.0, "plates": None}, {"minutes": 40.0, "plates": 3.0}, {"minutes": 50.0, "plates": 4.0},
        {"minutes": 70.0, "plates": 3.0},
    ]


def test_plates_that_were_read_later_say_what_stood_before_the_change():
    told = seen(line(20, "plate_in"), readings=[line(10, true_strength=80.0), line(60, true_strength=76.0, plates=3.0)])
    assert (told["still"]["plates"], told["changes"]) == (2.0, [{"minutes": 20.0, "plates": 3.0}])


def test_without_a_word_of_plates_a_change_is_a_moment_alone():
    told = seen(line(20, "plate_in"), line(5, "other"), readings=[line(60, true_strength=76.0)])
    assert (told["still"]["plates"], told["changes"]) == (None, [{"minutes": 20.0, "plates": None}])
