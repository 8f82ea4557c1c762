"""What a still's card carries beside any vessel's: the wishes for its fruits, and what its past runs have taught.

Kept small: one still, its last runs, each run's forecast inputs read once while the book stays as it is.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from webapp.book.checks.run import offset_of
from webapp.book.record.store import Book
from webapp.book.still import forecast, runs, wishes, yields
from webapp.kinds.effects.plan import fruit_of
from webapp.kinds.state import Vessel

PAST_RUNS = 3


def still_part(book: Book, mark: str, state: Vessel, current: Mapping[str, Any] | None) -> dict[str, Any]:
    """Return past_runs; still (plans, best, vapour_offset_c, vapour_runs); still_prior for the forecast of a cut."""
    plans, best = wishes.for_still(book, mark)
    past = _past_runs(book, mark, current, best)
    learned = state.get("vapour_offsets", [])
    taught = {
        "plans": plans, "best": best, "vapour_offset_c": round(offset_of(state), 2), "vapour_runs": len(learned),
    }
    what = (current or (past[0] if past else {})).get("what")
    return {"past_runs": past, "still": taught, "still_prior": forecast.prior_for(book, mark, what)}


def _past_runs(
    book: Book, mark: str, current: Mapping[str, Any] | None, best: Mapping[str, Any]
) -> list[dict[str, Any]]:
    """Return runs of this still that are over: of the same fruit where there are such, else the last; and the best."""
    what = (current or {}).get("what") or None
    past: list[dict[str, Any]] = []
    for wanted in (what, None) if what else (None,):
        past = [one for one in runs.runs(book, still=mark, what=wanted, limit=PAST_RUNS + 1) if one["ended_at"]]
        if past:
            break
    past = past[:PAST_RUNS]
    named = best.get(fruit_of(what or (past[0]["what"] if past else "")))
    if named and named["run"] not in {one["id"] for one in past}:
        found = runs.run(book, named["run"])
        past += [found] if found and found["ended_at"] else []
    return [one | {"yield": _yield(book, one)} for one in past]


def _yield(book: Book, run: dict[str, Any]) -> dict[str, Any] | None:
    found = yields.of_run(book, run)
    if found is None:
        return None
    beside = found["beside"]
    rate = {name: beside["rate"][name] for name in ("name", "de_l", "at_l")} if beside else None
    return {name: round(found[name], 3) for name in ("kg", "made_l", "per_100_kg", "per_100_l")} | {
        "rate": rate, "side": beside["side"] if beside else "",
    }


__all__ = ["still_part"]
