"""What a still's last runs teach its card: a convenience, which never keeps the card itself from a phone."""

import logging

from webapp.book.still import forecast


def test_runs_that_nothing_can_be_learnt_from_leave_the_card_without(monkeypatch, caplog):
    def fails(_runs):
        raise ZeroDivisionError("nobody foresaw this")

    monkeypatch.setattr(forecast, "learn_prior", fails)
    with caplog.at_level(logging.ERROR, "webapp"):
        assert forecast._learned('["a run of this test alone"]') is None
    assert "nobody foresaw this" in caplog.text
