"""Casks by kind of spirit and the year they were filled: how many, and how much pure alcohol, at the end of a day.

Source: 27 CFR 19.590-19.591 ask for a summary of packages by kind and season or year filled.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass

from webapp.book.fold.states import NEWEST, load_before_each
from webapp.book.record.store import Book
from webapp.kinds.key import vessel_key

WOOD = {"new": "new", "used_once": "used", "used": "used", "refill": "used"}


@dataclass(frozen=True, slots=True)
class Row:
    """One kind and year, empty where nobody knows it. account: the tax account it stands in; lpa_ul: pure alcohol
    [uL at 20 degC]; by_papers: of so many casks only papers say the year, this book has not seen them filled.
    """

    kind: str
    year: str
    account: str
    wood: str
    casks: int
    lpa_ul: int
    by_papers: int


def by_kind_and_year(book: Book, until: str = "") -> list[Row]:
    """Return the rows, by kind, then year. until: UTC text without Z before which it is asked; empty for now."""
    casks: Counter[tuple[str, str, str, str]] = Counter()
    told: Counter[tuple[str, str, str, str]] = Counter()
    pure: Counter[tuple[str, str, str, str]] = Counter()
    vessels = book.query("SELECT mark, use FROM vessels WHERE sort = 'cask' ORDER BY mark")
    place = until or NEWEST
    states = load_before_each(book, ((vessel_key(vessel["mark"]), place) for vessel in vessels))
    for vessel in vessels:
        state = states.get((vessel_key(vessel["mark"]), place))
        held = state["holds"] if state else None
        if not held:
            continue
        wood = WOOD.get(str(held.get("use") or vessel["use"]), "not said")
        year = str(held["since"])[:4] if held["since"] != held.get("opened_at") else ""
        about = (str(held.get("what") or "not said"), year, held["account"], wood)
        casks[about] += 1
        told[about] += int(bool(year) and held.get("by_papers") is not None)
        pure[about] += held["lpa_ul"]
    return [Row(*about, casks[about], pure[about], told[about]) for about in sorted(casks)]
