"""Classes of spirit as the monthly report of production splits them: by what they are and how strong they came over.

Source: 27 CFR 19.632 and the report it names (columns as its public filling-in help lists them); 27 CFR part 5 for what
the names mean. Which words of a house speak of which class is common practice, no source.
"""

from __future__ import annotations

import re

from webapp.trade.proof import proof_from_strength

GRAIN = ("rye", "grain", "barley", "wheat", "malt")
BRANDY_PROOF, WHISKY_PROOF, NEUTRAL_PROOF = 170.0, 160.0, 190.0
_UNSPLIT = (
    ("vodka", r"vodka"),
    ("gin", r"gin|geneva|genever|jenever"),
    ("rum", r"rum|molasses|cane|cacha[çc]a"),
)
_NEUTRAL = re.compile(r"\b(neutral|rectified)\b", re.IGNORECASE)
_WHISKY = re.compile(r"\b(whisk(e?)y|corn|maize|oats?|spelt)\b", re.IGNORECASE)


def is_grain(what: str | None) -> bool:
    """Return whether a material or the name of a spirit speaks of grain."""
    return any(grain in (what or "").lower() for grain in GRAIN)


def class_of(words: str, distilled_pct: float | None) -> str:
    """Return the class of a spirit by its names and the strength at which it came off the still. [% vol at 20 degC]"""
    for name, said in _UNSPLIT:
        if re.search(rf"\b({said})\b", words, re.IGNORECASE):
            return name
    if _NEUTRAL.search(words):
        return _split("neutral spirits", NEUTRAL_PROOF, distilled_pct, over="and over", under="under")
    if is_grain(words) or _WHISKY.search(words):
        return _split("whisky", WHISKY_PROOF, distilled_pct)
    return _split("brandy", BRANDY_PROOF, distilled_pct)


def mixed_pct(one_ul: int, one_pct: float | None, other_ul: int, other_pct: float | None) -> float | None:
    """Return the distilling strength of a mix: pure alcohol over volume, of the parts whose strength is known."""
    parts = [(ul, pct) for ul, pct in ((one_ul, one_pct), (other_ul, other_pct)) if pct and ul > 0]
    if not parts:
        return one_pct or other_pct
    return sum(ul for ul, _ in parts) / sum(ul / pct for ul, pct in parts)


def _split(name: str, proof: float, pct: float | None, over: str = "over", under: str = "") -> str:
    if pct is None:
        return f"{name}, distilling strength not known"
    found = round(float(proof_from_strength(min(max(pct, 0.0), 100.0))), 6)
    if over == "and over":
        return f"{name} at {proof:.0f} proof and over" if found >= proof else f"{name} {under} {proof:.0f} proof"
    return f"{name} over {proof:.0f} proof" if found > proof else f"{name} at {proof:.0f} proof and under"
