"""Figures in the units of a US house. Sources: NIST SP 811 (2008), appendix B.8 (gallon, pound); 27 CFR 30.11."""

from __future__ import annotations

import pytest

from webapp.words.houseunits import METRIC, US, text_in, value_in


@pytest.mark.parametrize(
    ("value", "unit", "is_apart", "wanted"),
    [
        (3.785412, "L", False, 1.0),  # SP 811: gallon (US) 3.785 412 E-03 m3
        (0.4535924, "kg", False, 1.0),  # SP 811: pound (avoirdupois) 4.535 924 E-01 kg
        (100.0, "degC", False, 212.0),  # SP 811, B.8: t/degC = (t/degF - 32)/1.8
        (2.0, "degC", True, 3.6),  # the same without the 32
        (3.785412, "L_h", False, 1.0),
        (40.0, "pct_vol", True, 80.0),  # 27 CFR 30.11: proof is twice the percentage
        (1.0, "SG", False, 1.0),
        (12.0, "Bx", False, 12.0),
    ],
)
def test_a_figure_goes_over_by_the_published_factor(value: float, unit: str, is_apart: bool, wanted: float) -> None:
    assert value_in(value, unit, US, is_apart=is_apart) == pytest.approx(wanted, rel=1e-6)
    assert value_in(value, unit, METRIC, is_apart=is_apart) == value


@pytest.mark.parametrize("unit", ["L", "kg", "degC", "pct_vol", "LPA", "L_h"])
def test_a_round_figure_of_the_house_comes_back_round_from_what_the_book_keeps(unit: str) -> None:
    from webapp.trade import units
    from webapp.words.houseunits import unit_in

    for whole in (40, 50, 66, 80, 125, 190):
        kept = f"{units.to_canonical(float(whole), unit_in(unit, US)):.1f}"
        assert float(text_in(kept, unit, US)) == whole, kept


def test_what_is_no_figure_or_no_strength_is_said_all_the_same() -> None:
    assert text_in("no number", "L", US) == "no number"
    assert text_in("120", "pct_vol", US) == "240"
    assert text_in("+0.5", "pct_vol", US, is_apart=True) == "+1.0"
    assert text_in("0.001", "L", US) == "0.0003"
