"""Sums of the still log: what the vapour thermometer should show, and what the flow has collected."""

from collections.abc import Sequence
from statistics import median

from webapp.trade.datafiles import load_data
from webapp.trade.numeric import N, as_number, check_range, interpolate

OFFSET_PAIRS = 3


def vapour_temp_c(strength_pct: N, height_m: float = 0.0) -> N:
    """Return the temperature of vapour that condenses to spirit of a given strength.

    A check on slips of the pen: more than 2 degC away, ask. Holds with no reflux between thermometer and
    condenser; every still has its own offset, and heads read low.

    Parameters
    ----------
    strength_pct : float or array
        True strength of the distillate. [% vol at 20 degC], 20 to 95
    height_m : float or array
        Height above the sea. [m], 0 to 3000

    Returns
    -------
    temp_c : float or array
        Vapour temperature. [degC], expected error 0.7 and 1 more at 3000 m

    Raises
    ------
    OutOfDomain
        Outside these ranges.

    Source
    ------
    Vapour-liquid data of ethanol and water at 101.325 kPa, from memory; 1 degC lower for 300 m is common
    practice.
    """
    strength_pct, height_m, data = as_number(strength_pct), as_number(height_m), load_data("still")
    strengths, (least_m, most_m) = data["vapour_strength_pct"], data["height_m"]
    check_range(
        "strength", strength_pct, strengths[0], strengths[-1], "pct_vol", "no_check"
    )
    check_range("height", height_m, least_m, most_m, "m", "give_height")
    return interpolate(strength_pct, strengths, data["vapour_temp_c"]) - height_m / data["metres_per_degree"]


def vapour_offset_c(pairs: Sequence[tuple[float, float]], height_m: float = 0.0) -> float | None:
    """Return how far a still's vapour thermometer stands off what its strengths say: its own offset.

    The middle of the differences, so that one slip does not move it.

    Parameters
    ----------
    pairs : sequence of (float, float)
        True strength and vapour temperature read together. [% vol at 20 degC] and [degC], 20 to 95 and any; pairs
        outside the strengths are left out
    height_m : float
        Height above the sea. [m], 0 to 3000

    Returns
    -------
    offset_c : float or None
        Read less expected. [degC], None for fewer than three pairs

    Raises
    ------
    OutOfDomain
        If the height is outside its range.

    Source
    ------
    Common practice: learn each still's own offset; three pairs at least is a choice of ours.
    """
    low, high = load_data("still")["vapour_strength_pct"][0], load_data("still")["vapour_strength_pct"][-1]
    off = [temp - float(vapour_temp_c(pct, height_m)) for pct, temp in pairs if low <= pct <= high]
    return median(off) if len(off) >= OFFSET_PAIRS else None
