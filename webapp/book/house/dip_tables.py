"""How a vessel is dipped, as the office types or pastes it: looked over line by line, and kept as one text."""

from __future__ import annotations

import json
import re
from itertools import pairwise
from statistics import median

from webapp.book.record.errors import BookError
from webapp.trade import units
from webapp.trade.dipping import volume_of_cask
from webapp.trade.errors import NotANumber, OutOfDomain

LINES_MOST = 2000
LENGTHS = {"cm": 1.0, "mm": 0.1, "in": 2.54}  # [cm]
VOLUMES = {"L": 1.0, "hL": 100.0, "gal": 3.785411784}  # [L]
GAP_TIMES = 3.5  # a step so many times the middle one is a line left out
JUMP_TIMES = 4.0  # litres a centimetre so many times those on either side are a slip
SLIM_MOST = 6.0
CAPACITY_SHARE = (0.5, 1.3)  # of what the registry says, that a table may end at; an unit is off by 10 at least
_APART = re.compile(r"[;\t]")


def table_typed(
    text: str, *, length: str, volume: str, of: str, shell_c: float, per_c: float, tilt_mm: float,
    capacity_l: float | None,
) -> str:
    """Return a strapping table as the registry keeps it. BookError names the line that is wrong, and what to do.

    text: lines of dip and litres, apart by a semicolon, a tab, blanks or a comma; heads are passed over. `length` and
    `volume` are their units; `of` is "dip" or "ullage". Temperature of the shell [degC, -20 to 40], its cubic expansion
    [1/degC, 0 to 1e-4], and what the tilt of the tank adds to each reading [mm, -200 to 200].
    """
    if length not in LENGTHS or volume not in VOLUMES or of not in ("dip", "ullage"):
        raise BookError("Say in which units the table is, and whether it is by dip or by ullage.")
    points = [(dip * LENGTHS[length], litres * VOLUMES[volume]) for dip, litres in _lines(text)]
    _check_order(points, of, length)
    _check_steps(points, length)
    _check_size(points, capacity_l, length, volume)
    for what, value, low, high in (
        ("The temperature of the shell [°C]", shell_c, -20, 40), ("The expansion of the shell", per_c, 0, 1e-4),
        ("The tilt [mm]", tilt_mm, -200, 200),
    ):
        if not low <= value <= high:
            raise BookError(f"{what} lies between {low} and {high}. Type it again.")
    made = {"points": points, "of": of, "shell_c": shell_c, "per_c": per_c, "tilt_cm": tilt_mm / 10.0}
    return json.dumps(made, separators=(",", ":"))


def cask_typed(bung: float | None, head: float | None, length: float | None, *, unit: str, lies: bool, of: str) -> str:
    """Return the dimensions of a cask as the registry keeps them. BookError says what is wrong with them."""
    if bung is None or head is None or length is None or unit not in LENGTHS or of not in ("dip", "ullage"):
        raise BookError("Type all three: the diameter at the bung, that of a head, and the length, all inside.")
    sizes = [size * LENGTHS[unit] for size in (bung, head, length)]
    if sizes[1] > sizes[0]:
        raise BookError("The head is wider than the bung. A cask is widest at its bung: swap the two.")
    try:
        volume_of_cask(sizes[0], sizes[1], sizes[2], 0.0, lies=lies)
    except OutOfDomain as error:
        raise BookError(f"A cask is 5 to 400 cm wide and 5 to 600 cm long inside, and this is {brief(error.value)} cm. "
                        "Look at the unit.") from error
    made = {"bung_cm": sizes[0], "head_cm": sizes[1], "length_cm": sizes[2], "lies": lies, "of": of}
    return json.dumps(made, separators=(",", ":"))


def brief(value: float) -> str:
    """Return a figure without needless digits."""
    return units.format_number(value, 2).rstrip("0").rstrip(".") if abs(value) <= 1e9 else f"{value:.0f}"


def _lines(text: str) -> list[tuple[float, float]]:
    found: list[tuple[float, float]] = []
    for n, line in enumerate(text.splitlines(), 1):
        if not line.strip() or (not found and not any(char.isdigit() for char in line)):
            continue
        try:
            dip, litres = (units.parse_number(part) for part in _parts(line))
        except (ValueError, NotANumber):
            raise BookError(
                f"Line {n}, “{line.strip()[:40]}”, is not a dip and a volume. Type two figures, apart by a semicolon."
            ) from None
        found.append((dip, litres))
        if len(found) > LINES_MOST:
            raise BookError(f"A table has at most {LINES_MOST} lines. Leave every other line out.")
    if len(found) < 2:
        raise BookError("A table needs two lines at least: its lowest and its highest.")
    return found


def _parts(line: str) -> list[str]:
    if _APART.search(line):
        parts = _APART.split(line.strip().strip(";\t"))
    elif len(line.split()) == 2:
        parts = line.split()
    else:
        parts = line.strip().split(",")
    return [part.strip() for part in parts]


def _check_order(points: list[tuple[float, float]], of: str, length: str) -> None:
    way = -1.0 if of == "ullage" else 1.0
    for (low, less), (high, more) in pairwise(points):
        at = brief(high / LENGTHS[length])
        if not high > low:
            raise BookError(f"At {at} {length} the table goes back or stands twice. Each line is deeper than the one "
                            "before it: sort them, and leave one of two out.")
        if not (more - less) * way >= 0:
            turned = "fall, and a dip is measured from the bottom" if way > 0 else "rise, and ullage is what is empty"
            raise BookError(f"At {at} {length} the litres {turned}. Look at that line, or say that the table is by "
                            f"{'ullage' if way > 0 else 'dip'}.")
    if min(points[0][0], points[0][1], points[-1][1]) < 0:
        raise BookError("No dip and no volume lies below nothing. Look at the first and the last line.")
    if points[0][1] == points[-1][1]:
        raise BookError("All lines have the same litres. Look whether the two columns are the right ones.")


def _check_steps(points: list[tuple[float, float]], length: str) -> None:
    steps = [high - low for (low, _), (high, _) in pairwise(points)]
    usual = median(steps)
    for (low, _), (high, _) in pairwise(points):
        if len(steps) > 2 and high - low > GAP_TIMES * usual:
            ends = f"{brief(low / LENGTHS[length])} and {brief(high / LENGTHS[length])} {length}"
            raise BookError(f"Between {ends} lines are missing: the others are {brief(usual / LENGTHS[length])} "
                            f"{length} apart. Type them, or leave the table's end out.")
    slopes = [abs(more - less) / (high - low) for (low, less), (high, more) in pairwise(points)]
    for n in range(1, len(slopes) - 1):
        beside = max(slopes[n - 1], slopes[n + 1])
        if slopes[n] > JUMP_TIMES * beside and beside > 0:
            raise BookError(f"Up to {brief(points[n + 1][0] / LENGTHS[length])} {length} the table gains "
                            f"{brief(slopes[n])} L a centimetre, and {brief(beside)} beside it. A digit may be wrong: "
                            "look at that line and the one before it.")


def _check_size(points: list[tuple[float, float]], capacity_l: float | None, length: str, volume: str) -> None:
    deep, most = points[-1][0], max(points[0][1], points[-1][1])
    if capacity_l and not CAPACITY_SHARE[0] * capacity_l <= most <= CAPACITY_SHARE[1] * capacity_l:
        raise BookError(f"The table ends at {brief(most)} L, and the vessel holds {brief(capacity_l)} L. Choose the "
                        f"unit of its second column (it says {volume}), or put the capacity right first.")
    # Against a cube of the same litres: a column in the wrong unit makes a vessel ten times too slim or too flat.
    slim = deep / (most * 1000.0) ** (1 / 3)
    if not 1 / SLIM_MOST <= slim <= SLIM_MOST:
        raise BookError(f"By this table the vessel is {brief(deep)} cm deep and holds {brief(most)} L. Choose the unit "
                        f"of its first column: it says {length}.")
