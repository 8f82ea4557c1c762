"""How well the balance of a run is known: the uncertainty of what is not accounted for."""

from __future__ import annotations

from webapp.book.house.uncertain import load_by_entry
from webapp.book.record.store import Book
from webapp.book.still.run_account import Balance
from webapp.kinds.run_state import Run
from webapp.trade.uncertainty import Uncertain, combine, standard_from_limit


def load_open(book: Book, run_id: str, run: Run, balance: Balance) -> Uncertain | None:
    """Return the pure alcohol that a run leaves open, with its uncertainty; None where its charge says nothing.

    Stillage that nobody has read is taken to be off by as much as it is. [L of pure alcohol at 20 degC]
    """
    # A run is named by the first entry of its charge's family.
    known = load_by_entry(book, [run_id, *(part["entry"] for part in run["fractions"])])
    charge = known.get(run_id, {}).get("charge_lpa")
    if charge is None:
        return None
    parts = [(-1.0, lpa) for part in run["fractions"] if (lpa := known.get(part["entry"], {}).get("lpa"))]
    if not balance.is_stillage_read:
        guessed = standard_from_limit(dict(balance.out).get("stillage", 0.0))
        parts.append((1.0, Uncertain(0.0, {}, guessed * guessed)))
    return combine([(1.0, charge), *parts])._replace(value=balance.open)
