"""Cut plans and best runs, as the fold has them (kinds/effects/plan.py), for cards and pages."""

from __future__ import annotations

from webapp.book.fold.states import load_newest_of
from webapp.book.record.store import Book
from webapp.kinds.effects.plan import ANY_STILL, fruit_of
from webapp.kinds.key import WishKey, name_in
from webapp.kinds.run_state import BestRun, CutPlan, Wish

FRUITS_MOST = 60


def wishes(book: Book) -> dict[str, Wish]:
    """Return by fruit what the distiller wants of it: what, plans by still ("*" for any), best run by still."""
    keys = book.query(
        "SELECT DISTINCT key FROM states WHERE key >= 'c:' AND key < 'c;' ORDER BY key LIMIT ?", (FRUITS_MOST,)
    )
    wanted: list[WishKey] = [row["key"] for row in keys]
    states = load_newest_of(book, wanted)
    return {name_in(key): {**found} for key in wanted if (found := states.get(key))}


def plan_for(wish: Wish | None, still: str) -> CutPlan | None:
    """Return the plan that holds for a fruit on a still: the still's own, else that for any still."""
    plans = wish["plans"] if wish else {}
    return plans.get(still) or plans.get(ANY_STILL)


def for_still(book: Book, still: str) -> tuple[dict[str, CutPlan], dict[str, BestRun]]:
    """Return plans and best runs by fruit as they hold for one still."""
    found = wishes(book)
    plans = {fruit: plan for fruit, wish in found.items() if (plan := plan_for(wish, still))}
    return plans, {fruit: wish["best"][still] for fruit, wish in found.items() if still in wish["best"]}


__all__ = ["for_still", "fruit_of", "plan_for", "wishes"]
