"""Corrections of instruments: worked by hand; the phone's twin is held to the same in test_read_agreement.py."""

import pytest

import webapp.kinds
from webapp.kinds.corrections import of_table, offset_of, put_right
from webapp.kinds.read import read_entry

TABLE = [[0.0, -0.1], [20.0, 0.0], [40.0, 0.2]]


@pytest.mark.parametrize(
    ("shown", "add"), [(-5, -0.1), (0, -0.1), (10, -0.05), (20, 0.0), (30, 0.1), (40, 0.2), (55, 0.2)]
)
def test_a_table_goes_straight_between_its_points_and_flat_beyond(shown: float, add: float) -> None:
    assert of_table(TABLE, shown) == pytest.approx(add)
    assert of_table([], shown) == 0.0


def test_a_later_check_moves_the_whole_table() -> None:
    """In ice it shows 0.3 and is to be taken for 0.0: add -0.3 there, where the certificate had -0.0985 (at 0.3)."""
    offset = offset_of(TABLE, 0.3, -0.3)
    assert offset == pytest.approx(-0.3 + 0.0985)
    assert put_right(0.3, "degC", "degC", {"unit": "degC", "table": TABLE, "offset": offset}) == pytest.approx(0.0)
    assert put_right(30.0, "degC", "degC", {"unit": "degC", "table": TABLE, "offset": offset}) == pytest.approx(29.8985)


def test_a_correction_in_degrees_celsius_of_a_reading_typed_in_fahrenheit() -> None:
    """50 degF is 10 degC; with +0.5 degC it is 10.5 degC, 50.9 degF."""
    correction = {"unit": "degC", "table": [], "offset": 0.5}
    assert put_right(50.0, "degF", "degC", correction) == pytest.approx(50.9)
    assert put_right(50.0, "degF", "degC", {**correction, "unit": "whatever"}) == pytest.approx(50.9)


def test_a_percent_correction_is_not_put_on_a_proof_glass_as_such() -> None:
    """Its own unit is none that this reading can be turned into: the figure typed is taken for its own."""
    assert put_right(120.0, "proof_glass", "pct_glass", {"unit": "kg", "table": [], "offset": 0.2}) == 120.2


def test_what_was_typed_stays_and_the_figures_have_the_correction() -> None:
    """62.0 on the glass at 15.0 degC; the probe shows 0.4 too high: as if 14.6 degC had been read."""
    kind = webapp.kinds.get("gauge")
    assert kind

    def read(temp: str, corrections: dict) -> object:
        values = {"volume": {"raw": "100", "unit": "L"}, "glass": {"raw": "62.0", "unit": "pct_glass"},
                  "temp": {"raw": temp, "unit": "degC", "instrument": "TH-2"}}
        return read_entry(kind, {"mark": "T1", "values": values}, {"corrections": corrections})

    put = read("15.0", {"TH-2": {"unit": "degC", "table": [], "offset": -0.4}})
    plain = read("14.6", {})
    assert put.figures == pytest.approx(plain.figures)
    assert put.values["temp"] == pytest.approx(14.6)
    assert put.shown("temp") == "15.0 °C"
    assert put.corrected == {"temp": pytest.approx(-0.4)}
    assert plain.corrected == {}
