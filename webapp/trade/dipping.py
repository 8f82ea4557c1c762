"""Litres from a dip: by the strapping table of a tank, or by the dimensions of a cask.

How a vessel is dipped is JSON text in the registry, so that it travels with the vessel's card and means the same there.
A table: `points` of [cm, L], `of` what is measured ("dip" up from the bottom, "ullage" down from the top), `shell_c`
the temperature that it holds at, `per_c` the cubic expansion of shell and tape, `tilt_cm` what is added to each
reading. A cask: `bung_cm`, `head_cm`, `length_cm`, all inside, `lies` whether it lies, `of` as above.
"""

import json
import math
from functools import lru_cache
from typing import TypedDict, cast

from webapp.trade.datafiles import load_data
from webapp.trade.numeric import check_range

# Steel: 12e-6 a degree along a line, austenitic 16e-6; three times that of a space. From memory, handbooks.
STEEL_PER_C, STAINLESS_PER_C = 36e-6, 48e-6
STRIPS = 400  # of a lying cask; the error of Simpson's rule is below a millilitre then
CASK_SHARE = 0.03
_SLOPE_CM = 0.05


class Dips(TypedDict, total=False):
    """How a vessel is dipped; the docstring of the module says what each part means."""

    points: list[tuple[float, float]]
    shell_c: float
    per_c: float
    tilt_cm: float
    bung_cm: float
    head_cm: float
    length_cm: float
    lies: bool
    of: str


def volume_of_dip(dips: str, dip_cm: float, temp_c: float) -> float:
    """Return the volume in a vessel from its dip or ullage.

    Parameters
    ----------
    dips : str
        How the vessel is dipped. [JSON text], any that the registry has taken
    dip_cm : float
        What was read. [cm], within the table, or 0 to the height of the cask
    temp_c : float
        Temperature of the spirit, and with it of the shell. [degC], -20 to 40

    Returns
    -------
    volume_l : float
        [L at temp_c]

    Raises
    ------
    OutOfDomain
        Outside these ranges.

    Notes
    -----
    Between two lines of a table the litres follow a straight line. A shell that is warmer than its table holds more:
    litres times 1 + per_c (temp - shell_c). A steel tape or a scale on the wall grows alike, hence the cubic figure.

    Source
    ------
    Shell: the form 1 + beta (t - 20) of Czech decree 141/1997, annex 1, which has 36e-6 for steel. Cask:
    volume_of_cask.
    """
    vessel = _read(dips)
    check_range("temperature", float(temp_c), -20, 40, "degC", "check_thermometer")
    if "points" not in vessel:
        return _of_cask(vessel, float(dip_cm))
    points = vessel["points"]
    at = float(dip_cm) + vessel["tilt_cm"]
    check_range("dip", at, points[0][0], points[-1][0], "cm", "dip_in_table")
    n = next(n for n in range(1, len(points)) if at <= points[n][0])
    (low, less), (high, more) = points[n - 1], points[n]
    return (less + (more - less) * (at - low) / (high - low)) * (1.0 + vessel["per_c"] * (temp_c - vessel["shell_c"]))


def _of_cask(vessel: Dips, dip_cm: float) -> float:
    tall = vessel["bung_cm"] if vessel["lies"] else vessel["length_cm"]
    check_range("dip", dip_cm, 0, tall, "cm", "dip_in_cask")
    depth = tall - dip_cm if vessel["of"] == "ullage" else dip_cm
    return volume_of_cask(vessel["bung_cm"], vessel["head_cm"], vessel["length_cm"], depth, lies=vessel["lies"])


def volume_of_cask(bung_cm: float, head_cm: float, length_cm: float, depth_cm: float, lies: bool) -> float:
    """Return the volume of the wet part of a cask whose staves are bent as parabolas.

    Parameters
    ----------
    bung_cm : float
        Diameter inside, at the bung. [cm], 5 to 400
    head_cm : float
        Diameter inside, at the heads. [cm], 5 to bung_cm
    length_cm : float
        From head to head, inside. [cm], 5 to 600
    depth_cm : float
        Depth of the liquid: at the bung of a lying cask, along the axis of a standing one. [cm], 0 to the height
    lies : bool
        Whether the cask lies. [yes or no], either

    Returns
    -------
    volume_l : float
        [L]; of a real cask an estimate, expected error 3 % of what it holds when full

    Raises
    ------
    OutOfDomain
        Outside these ranges.

    Notes
    -----
    Standing: the integral of pi r^2 along the axis, in closed form. Lying: the integral of the wetted segment of each
    circle, by Simpson's rule over half the length, with the strips set close where the surface leaves the circle.

    Source
    ------
    Geometry: r = R - (R - h)(2 x / L)^2; full it is the textbook's pi L (8 D^2 + 4 D d + 3 d^2) / 60.
    """
    check_range("bung_diameter", float(bung_cm), 5, 400, "cm", "measure_cask")
    check_range("head_diameter", float(head_cm), 5, float(bung_cm), "cm", "measure_cask")
    check_range("length", float(length_cm), 5, 600, "cm", "measure_cask")
    check_range("dip", float(depth_cm), 0, float(bung_cm if lies else length_cm), "cm", "dip_in_cask")
    middle, less, half = bung_cm / 2.0, (bung_cm - head_cm) / 2.0, length_cm / 2.0
    if not lies:
        return (_standing(middle, less, half, depth_cm - half) - _standing(middle, less, half, -half)) / 1000.0
    level = depth_cm - middle
    # Past `end` the level is above or below the whole circle.
    end = half if less == 0 else half * math.sqrt(min(max(middle - abs(level), 0.0) / less, 1.0))
    whole = 0.0 if level <= 0 else _standing(middle, less, half, half) - _standing(middle, less, half, end)
    # x = end (1 - s^2): the segment ends as a root of the distance to `end`, which s makes smooth.
    total = 0.0
    for n in range(STRIPS + 1):
        s = n / STRIPS
        weight = 1 if n in (0, STRIPS) else 4 if n % 2 else 2
        share = (1.0 - s * s) * end / half
        total += weight * _segment(middle - less * share * share, level) * 2.0 * s
    return 2.0 * (total * end / (3.0 * STRIPS) + whole) / 1000.0


def _standing(middle: float, less: float, half: float, x: float) -> float:
    """Return the integral of pi (middle - less (x/half)^2)^2 from 0 to x. [cm3]"""
    u = (x / half) * (x / half)
    return math.pi * x * (middle * middle - 2.0 * middle * less * u / 3.0 + less * less * u * u / 5.0)


def _segment(radius: float, level: float) -> float:
    """Return the area of a circle below a level, from its centre. [cm2]"""
    cosine = min(max(level / radius, -1.0), 1.0)
    return radius * radius * (math.pi - math.acos(cosine) + cosine * math.sqrt(1.0 - cosine * cosine))


def dip_limits_cm(dips: str, dip_cm: float, temp_c: float) -> tuple[float, float]:
    """Return the limits of error of a dip in a vessel whose litres follow from it: of the vessel, and of the surface.

    Parameters
    ----------
    dips : str
        How the vessel is dipped. [JSON text], any that the registry has taken
    dip_cm : float
        What was read. [cm], the range of volume_of_dip
    temp_c : float
        Temperature of the spirit. [degC], -20 to 40

    Returns
    -------
    limits : tuple
        What 0.3 % of the litres is worth by a table, 3 % of the full cask by dimensions; 2 mm. [cm], [cm]

    Raises
    ------
    OutOfDomain
        As volume_of_dip.

    Source
    ------
    Tables of storage tanks for alcohol, 0.3 %: French order of 18 December 1996, article 18. Casks: half a
    centimetre in each dimension of one of 225 L is 2 to 3 %, staves are no parabolas; surface 2 mm. The house's own
    rules, no source.
    """
    litres = volume_of_dip(dips, dip_cm, temp_c)
    vessel, tank = _read(dips), load_data("instruments")["tank"]
    if "points" in vessel:
        off = tank["table_share"] * litres
    else:
        full = vessel["bung_cm"] if vessel["lies"] else vessel["length_cm"]
        off = CASK_SHARE * volume_of_cask(
            vessel["bung_cm"], vessel["head_cm"], vessel["length_cm"], full, lies=vessel["lies"]
        )
    slope = _litres_per_cm(vessel, dips, dip_cm, temp_c)
    return (off / slope if slope > 0 else 0.0), tank["surface_m"] * 100.0


def _litres_per_cm(vessel: Dips, dips: str, dip_cm: float, temp_c: float) -> float:
    if "points" in vessel:
        low, high = (end[0] - vessel["tilt_cm"] for end in (vessel["points"][0], vessel["points"][-1]))
    else:
        low, high = 0.0, vessel["bung_cm"] if vessel["lies"] else vessel["length_cm"]
    before, after = max(dip_cm - _SLOPE_CM, low), min(dip_cm + _SLOPE_CM, high)
    return abs(volume_of_dip(dips, after, temp_c) - volume_of_dip(dips, before, temp_c)) / (after - before)


@lru_cache(maxsize=256)
def _read(dips: str) -> Dips:
    return cast(Dips, json.loads(dips))  # checked where the registry takes it
