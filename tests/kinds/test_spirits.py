"""Classes of spirit at the edges where the monthly report of production splits (27 CFR 19.632 and its form)."""

import pytest

from webapp.kinds.spirits import class_of, mixed_pct
from webapp.trade.proof import strength_from_proof


@pytest.mark.parametrize(
    ("words", "proof", "wanted"),
    [
        ("plum", 170.0, "brandy at 170 proof and under"), ("plum", 170.2, "brandy over 170 proof"),
        ("rye", 160.0, "whisky at 160 proof and under"), ("Corn whiskey", 161.0, "whisky over 160 proof"),
        ("rum", 175.0, "rum"), ("cane spirit", 120.0, "rum"), ("plum drum", 120.0, "brandy at 170 proof and under"),
        ("gin", 180.0, "gin"), ("original pear", 150.0, "brandy at 170 proof and under"),
        ("vodka of rye", 191.0, "vodka"),
        ("neutral spirits", 190.0, "neutral spirits at 190 proof and over"),
        ("neutral grape spirit", 189.8, "neutral spirits under 190 proof"),
    ],
)
def test_classes(words: str, proof: float, wanted: str) -> None:
    assert class_of(words, float(strength_from_proof(proof))) == wanted


def test_an_unknown_strength_is_said() -> None:
    assert class_of("plum", None) == "brandy, distilling strength not known"
    assert class_of("gin", None) == "gin"


def test_a_mix_is_pure_alcohol_over_volume() -> None:
    """80 L at 80 % and 60 L at 60 %: 140 L of pure alcohol in 200 L."""
    assert mixed_pct(80, 80.0, 60, 60.0) == pytest.approx(140 / 2.0)
    assert mixed_pct(80, None, 60, 60.0) == 60.0
