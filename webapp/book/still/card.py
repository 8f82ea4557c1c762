"""What a still's card carries beside any vessel's: the wishes for its fruits, and what its past runs have taught.

Kept small: one still, its last runs, each run's forecast inputs read once while the book stays as it is.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import TypedDict

from webapp.book.checks.run import offset_of
from webapp.book.record.store import Book
from webapp.book.still import forecast, runs, wishes, yields
from webapp.book.still.runs import KnownRun
from webapp.kinds.effects.plan import fruit_of
from webapp.kinds.run_state import BestRun, CutPlan
from webapp.kinds.state import Vessel
from webapp.trade.stillprior import Learnt

PAST_RUNS = 3


class RateOnCard(TypedDict):
    """An official flat rate, as a card names it. [L]"""

    name: str
    de_l: float
    at_l: float | None


class YieldOnCard(TypedDict):
    """The yield of a past run. [kg, L, L from 100 kg, L from 100 L]"""

    kg: float
    made_l: float
    per_100_kg: float
    per_100_l: float
    rate: RateOnCard | None
    side: str


_Yielded = TypedDict("_Yielded", {"yield": YieldOnCard | None})


class PastRun(KnownRun, _Yielded):
    """A run that is over, with its yield."""


class Taught(TypedDict):
    """What is wished of the still's fruits, and how far its vapour thermometer has stood off. [degC]"""

    plans: dict[str, CutPlan]
    best: dict[str, BestRun]
    vapour_offset_c: float
    vapour_runs: int


class StillPart(TypedDict):
    """What a still's card carries beside any vessel's."""

    past_runs: list[PastRun]
    still: Taught
    still_lessons: Learnt | None


def still_part(book: Book, mark: str, state: Vessel, current: KnownRun | None) -> StillPart:
    """Return past_runs; still (plans, best, vapour_offset_c, vapour_runs); still_lessons for the forecast of a cut."""
    plans, best = wishes.for_still(book, mark)
    past = _past_runs(book, mark, current, best)
    learned = state.get("vapour_offsets", [])
    taught: Taught = {
        "plans": plans, "best": best, "vapour_offset_c": round(offset_of(state), 2), "vapour_runs": len(learned),
    }
    what = current["what"] if current else past[0]["what"] if past else None
    return {"past_runs": past, "still": taught, "still_lessons": forecast.prior_for(book, mark, what)}


def _past_runs(
    book: Book, mark: str, current: KnownRun | None, best: Mapping[str, BestRun]
) -> list[PastRun]:
    """Return runs of this still that are over: of the same fruit where there are such, else the last; and the best."""
    what = (current["what"] if current else None) or None
    past: list[KnownRun] = []
    for wanted in (what, None) if what else (None,):
        past = [one for one in runs.runs(book, still=mark, what=wanted, limit=PAST_RUNS + 1) if one["ended_at"]]
        if past:
            break
    past = past[:PAST_RUNS]
    named = best.get(fruit_of(what or (past[0]["what"] if past else "")))
    if named and named["run"] not in {one["id"] for one in past}:
        found = runs.run(book, named["run"])
        past += [found] if found and found["ended_at"] else []
    found_yields = yields.of_runs(book, past)
    return [{**one, "yield": _yield(found_yields.get(one["id"]))} for one in past]


def _yield(found: yields.RunYield | None) -> YieldOnCard | None:
    if found is None:
        return None
    beside = found["beside"]
    rate = beside["rate"] if beside else None
    return {
        "kg": round(found["kg"], 3), "made_l": round(found["made_l"], 3),
        "per_100_kg": round(found["per_100_kg"], 3), "per_100_l": round(found["per_100_l"], 3),
        "rate": {"name": rate["name"], "de_l": rate["de_l"], "at_l": rate["at_l"]} if rate else None,
        "side": beside["side"] if beside else "",
    }


__all__ = ["still_part"]
