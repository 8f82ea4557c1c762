"""A cask against casks like it, and an earlier gauge at fault. Common practice, no source.

Densities at 20 degC: OIML R 22 (63 %: 0.902 kg/L).
"""

from tests.book.checks.ledger import Ledger, codes, only


def filled(book: Ledger, cask: str, gross: str, day: str = "2024-03-01") -> list:
    return book.enter("cask_fill", cask, f"{day} 10:00", from_vessel="T1", lot="L-24", tare="50.0", gross=gross,
                      strength="63.0", temp="20", use="used", place="CELL-A1", tight="yes",
                      soaked="yes")


def level_asked(asked: list) -> list:
    return [query for query in asked if query.code == "fill_level"]


def test_a_cask_filled_less_than_casks_are_is_asked_about_with_the_weight_that_fits():
    """225 L at 63 %, 0.902 kg/L (OIML R 22): 197.8 kg net are 219 L, 97 %; of 147.8 gross 97.8 are net, 108 L, 48 %."""
    assert level_asked(filled(Ledger(), "N1", "247.8")) == []
    query = level_asked(filled(Ledger(), "N1", "147.8"))[0]
    assert query.words.startswith("108.5 L in N1, 48 % of what it holds. A cask is filled to 50 % at least.")
    # 197.8 is the net weight of a full cask: it is no cask filled to 73 %, and its gross weight is offered.
    query = level_asked(filled(Ledger(), "N1", "197.8"))[0]
    assert ("gross", "247.8") in [(one.field, one.raw) for one in query.suggestions]
    assert level_asked(filled(Ledger(), "N1", "170.0")) == []  # 59 %, and as a net weight 84 %: a cask partly filled


def test_casks_like_it_draw_the_line_closer():
    """Five casks filled to 97.5 %, a sixth to 87.7, a seventh to 84.6: below 97.5 less 3.5 times 3 %."""
    book = Ledger()
    for cask in ("C1", "C3", "N1", "N2", "N3"):
        assert level_asked(filled(book, cask, "247.8")) == []
    assert level_asked(filled(book, "N4", "228.0")) == []  # 87.7 %
    query = level_asked(filled(book, "N5", "221.5"))[0]  # 84.5 %
    assert "The 6 casks most like it were filled to about 98 %." in query.words


def aged(book: Ledger, cask: str, *readings: tuple[str, str, str]) -> list:
    """Gauge a cask of 225 L on some days; return what the last reading was asked."""
    asked: list = []
    for day, gross, strength in readings:
        asked = book.enter("cask_regauge", cask, f"{day} 10:00", gross=gross, strength=strength, temp="20",
                           condition="tight")
    return asked


def test_a_mistyped_gauge_is_asked_about_when_the_next_good_one_comes():
    """63.1 typed as 36.1: the reading after, 62.9 with less weight, goes together with the fill. 36.1 stands alone."""
    book = Ledger()
    filled(book, "N1", "247.8")
    assert "cask_strength_slip" in codes(aged(book, "N1", ("2025-03-01", "242.0", "36.1")))
    query = only(aged(book, "N1", ("2025-06-01", "240.5", "62.9")), "cask_earlier")
    assert query.weight == "ask" and not query.suggestions
    assert query.words.startswith("36.1 % and ") and "stand alone: 63.0 and " in query.words


def test_a_weight_that_was_too_low_is_asked_about_in_the_place_of_the_next():
    """199.8 for 241.8 kg: a quarter gone and back again is no cask's doing."""
    book = Ledger()
    filled(book, "N1", "247.8")
    aged(book, "N1", ("2025-03-01", "199.8", "62.9"))
    assert codes(aged(book, "N1", ("2025-06-01", "240.5", "62.8"))) == ["cask_earlier"]


def test_a_bad_reading_after_good_ones_is_blamed_itself():
    book = Ledger()
    filled(book, "N1", "247.8")
    aged(book, "N1", ("2025-03-01", "242.0", "62.9"))
    assert "cask_earlier" not in codes(aged(book, "N1", ("2025-06-01", "240.5", "36.1")))
    book = Ledger()
    filled(book, "N1", "247.8")
    aged(book, "N1", ("2025-03-01", "240.0", "62.9"))
    assert codes(aged(book, "N1", ("2025-06-01", "258.5", "62.8"))) == ["cask_grew"]  # above all that ever was in it


def test_a_strength_that_went_otherwise_than_that_of_casks_like_it():
    """Five casks went from 63.0 to 62.8 in a year: 60.9 would be usual by itself, but not among them."""
    book = Ledger()
    for cask in ("C1", "C3", "N1", "N2", "N3", "N4", "N5"):
        filled(book, cask, "247.8")
    for cask in ("C1", "C3", "N1", "N2", "N3"):
        aged(book, cask, ("2025-03-01", "242.0", "62.8"))
    assert codes(aged(book, "N4", ("2025-03-01", "242.0", "62.0"))) == []
    query = next(one for one in aged(book, "N5", ("2025-03-01", "242.0", "60.9")) if one.code == "cask_unlike")
    assert query.field == "strength" and "of the 6 casks most like it" in query.words
    asked = aged(book, "N4", ("2026-03-01", "236.0", "63.9"))
    query = next(one for one in asked if one.code == "cask_unlike")  # too good is as wrong
    assert "above" in query.words
