"""The warehouse as a map: place codes such as CELL-A1 are area, row and position. Geometry alone, no page."""

from __future__ import annotations

import re
from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, field

from webapp.book.cellar.casks import Cask
from webapp.kinds.state import NO_FILL

PLACE = re.compile(r"(?P<area>[^-]+)-(?P<row>[A-Z]+)-?(?P<position>\d{1,3})\Z", re.IGNORECASE)
POSITIONS_MOST = 60


@dataclass(slots=True)
class Area:
    """One area: rows of positions, each with the casks that lie there, and casks without a position."""

    id: str
    name: str
    positions: list[int] = field(default_factory=list)
    rows: dict[str, dict[int, list[Cask]]] = field(default_factory=dict)
    loose: list[Cask] = field(default_factory=list)
    lpa: float = 0.0
    count: int = 0
    asked: set[str] = field(default_factory=set)


def areas_of(casks: Sequence[Cask], names: Mapping[str, str], asked: Collection[str] = ()) -> list[Area]:
    """Return the areas in which casks lie, each with its rows and positions in order; `asked` are marks in question."""
    found: dict[str, Area] = {}
    for cask in casks:
        at = PLACE.match(cask.place.strip())
        key = (at["area"] if at else cask.place.strip() or "").upper()
        area = found.setdefault(key, Area(key, names.get(key, key or "No place")))
        area.count += 1
        area.lpa += (cask.holds or NO_FILL)["lpa_l"] or 0.0
        if cask.row["mark"] in asked:
            area.asked.add(cask.row["mark"])
        if at and int(at["position"]) <= POSITIONS_MOST:
            area.rows.setdefault(at["row"].upper(), {}).setdefault(int(at["position"]), []).append(cask)
        else:
            area.loose.append(cask)
    for area in found.values():
        most = max((position for row in area.rows.values() for position in row), default=0)
        area.positions = list(range(1, most + 1))
        area.rows = dict(sorted(area.rows.items()))
    return [found[key] for key in sorted(found, key=lambda key: (not found[key].rows, key))]
