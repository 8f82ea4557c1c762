"""Casks by kind of spirit and the year they were filled at the end of a day: how many, how much pure alcohol, and how
well that is known.

Source: 27 CFR 19.590-19.591 ask for a summary of packages by kind and season or year filled.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass

from webapp.book.fold.states import NEWEST, load_before_each
from webapp.book.house.uncertain import load_holdings, sum_of
from webapp.book.record.store import Book
from webapp.kinds.key import vessel_key
from webapp.trade.uncertainty import Uncertain

WOOD = {"new": "new", "used_once": "used", "used": "used", "refill": "used"}


@dataclass(frozen=True, slots=True)
class Row:
    """One kind and year, empty where nobody knows it. account: the tax account it stands in; lpa_ul: pure alcohol
    [uL at 20 degC]; by_papers: of so many casks only papers say the year, this book has not seen them filled; known:
    how well the pure alcohol is known [LPA], None where it was not asked or one of the casks was not measured.
    """

    kind: str
    year: str
    account: str
    wood: str
    casks: int
    lpa_ul: int
    by_papers: int
    known: Uncertain | None = None


def by_kind_and_year(book: Book, until: str = "", *, is_known: bool = False) -> list[Row]:
    """Return the rows, by kind, then year. until: UTC text without Z before which it is asked; empty for now.

    is_known: how well they are known is worked out too, a millisecond a cask.
    """
    casks: Counter[tuple[str, str, str, str]] = Counter()
    told: Counter[tuple[str, str, str, str]] = Counter()
    pure: Counter[tuple[str, str, str, str]] = Counter()
    vessels = book.query("SELECT mark, use FROM vessels WHERE sort = 'cask' ORDER BY mark")
    place = until or NEWEST
    marks = [vessel["mark"] for vessel in vessels]
    found = load_before_each(book, ((vessel_key(mark), place) for mark in marks))
    states = {mark: state for mark in marks if (state := found.get((vessel_key(mark), place)))}
    known = load_holdings(book, states, place) if is_known else {}
    parts: dict[tuple[str, str, str, str], list[Uncertain | None]] = {}
    for vessel in vessels:
        state = states.get(vessel["mark"])
        held = state["holds"] if state else None
        if not held:
            continue
        wood = WOOD.get(str(held.get("use") or vessel["use"]), "not said")
        year = str(held["since"])[:4] if held["since"] != held.get("opened_at") else ""
        about = (str(held.get("what") or "not said"), year, held["account"], wood)
        casks[about] += 1
        told[about] += int(bool(year) and held.get("by_papers") is not None)
        pure[about] += held["lpa_ul"]
        parts.setdefault(about, []).append(known.get(vessel["mark"]))
    return [Row(*about, casks[about], pure[about], told[about], sum_of(parts[about])) for about in sorted(casks)]
