"""Units and typed numbers; the vectors are read by the browser too (test_browser_agreement.py)."""

import json
import re
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.trade.properties import steady
from tests.trade.refusal_words import words_of
from webapp.trade.datafiles import load_data
from webapp.trade.errors import NotANumber, OutOfDomain
from webapp.trade.units import (
    CURVES,
    canonical_unit,
    format_number,
    from_canonical,
    parse_number,
    quantity_of,
    symbol,
    to_canonical,
)

VECTORS = json.loads((Path(__file__).parents[1] / "vectors" / "trade_numbers.json").read_text(encoding="utf-8"))


@pytest.mark.parametrize(("text", "number"), VECTORS["texts"], ids=lambda x: repr(x))
def test_typed_text(text: str, number: float | None) -> None:
    if number is None:
        with pytest.raises(NotANumber) as refused:
            parse_number(text)
        assert re.search(r"Type .*\.$", words_of(refused.value))
    else:
        parsed = parse_number(text)
        assert parsed == number
        assert not (parsed == 0 and str(parsed).startswith("-"))


def test_a_pasted_page_is_refused_at_once() -> None:
    for page in ("1" * 10_000_000, " " * 10_000_000, "9" * 5000 + "." + "1" * 5000):
        with pytest.raises(NotANumber, match="too_long"):
            parse_number(page)


@steady
@given(st.text(max_size=20))
def test_any_text_is_a_finite_number_or_a_sentence(text: str) -> None:
    try:
        number = parse_number(text)
    except NotANumber:
        return
    assert abs(number) < 1e15
    assert any(digit in text for digit in "0123456789")


@steady
@given(st.decimals(-99999, 99999, places=3))
def test_point_and_comma_mean_the_same(number: object) -> None:
    assert parse_number(str(number)) == parse_number(str(number).replace(".", ",")) == float(str(number))


@pytest.mark.parametrize(("value", "decimals", "text"), VECTORS["formats"], ids=str)
def test_figure_for_the_screen(value: float, decimals: int, text: str) -> None:
    assert format_number(value, decimals) == text


@pytest.mark.parametrize(("value", "decimals"), [(float("nan"), 1), (float("inf"), 1), (2e9, 1), (1, 7), (1, -1)])
def test_what_is_no_figure_is_not_shown(value: float, decimals: int) -> None:
    with pytest.raises(ValueError, match="cannot show"):
        format_number(value, decimals)


# Definitions: international pound and inch (1959), US gallon of 231 cubic inches, Fahrenheit and Celsius scales.
KNOWN = [
    (212, "degF", 100), (32, "degF", 0), (-40, "degF", -40), (1, "lb", 0.45359237), (1, "gal", 3.785411784),
    (750, "mL", 0.75), (1, "in", 2.54), (2, "gal_h", 7.570823568), (1.05, "SG", 1.05), (60.5, "pct_glass", 60.5),
    (121, "proof_glass", 121), (3.4, "pH", 3.4), (12.5, "Bx", 12.5), (17, "pct_vol", 17),
]


@pytest.mark.parametrize(("value", "unit", "canonical"), KNOWN)
def test_conversions_by_definition(value: float, unit: str, canonical: float) -> None:
    assert to_canonical(value, unit) == pytest.approx(canonical, rel=1e-15, abs=1e-13)
    assert from_canonical(canonical, unit) == pytest.approx(value, rel=1e-15, abs=1e-13)


def test_curves() -> None:
    # 15.7 Bx is 1.064; 89.87 proof is 45.0 % vol at 20 °C; a proof gallon is 1.9018 LPA (test_scales, test_gauging).
    assert to_canonical(15.7, "Bx_hydrometer") == pytest.approx(1.064, abs=0.0002)
    assert to_canonical(89.87, "proof") == pytest.approx(45, abs=0.001)
    assert to_canonical(10, "proof_gal") == pytest.approx(19.018, abs=0.0001)
    with pytest.raises(OutOfDomain):
        to_canonical(201, "proof")


@pytest.mark.parametrize("unit", load_data("units"))
def test_every_unit_goes_there_and_back(unit: str) -> None:
    top = 30.0 if unit in ("degP", "KMW", "KMW_refractometer") else 40.0  # where these scales end
    values = np.array([1.0, 5.0, 12.5, top]) if unit != "SG" else np.array([1.0, 1.05])
    assert from_canonical(to_canonical(values, unit), unit) == pytest.approx(values, rel=1e-11)
    home = canonical_unit(unit)
    assert canonical_unit(home) == home
    assert quantity_of(home) == quantity_of(unit)
    assert to_canonical(values, home) is not None
    assert (symbol(unit) == "") == (unit in ("count", "plain"))
    assert load_data("units")[unit].get("via") in {None, *CURVES}


def test_raw_glass_readings_do_not_convert_into_one_another() -> None:
    assert quantity_of("pct_glass") != quantity_of("proof_glass")
    assert canonical_unit("proof_glass") == "proof_glass"


def test_refractometer_and_hydrometer_brix_do_not_mix() -> None:
    assert quantity_of("Bx") != quantity_of("Bx_hydrometer")


def test_an_unknown_unit_is_a_programmer_error() -> None:
    for name in ("stone", "", "__proto__", "toString"):
        with pytest.raises(KeyError):
            to_canonical(1, name)
