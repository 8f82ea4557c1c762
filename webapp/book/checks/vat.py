"""A planned vat: every draw names a vessel of the book and a weight, and none more than stands there."""

from __future__ import annotations

from collections.abc import Iterable

from webapp.book.before.vat_draws import read_draws
from webapp.book.before.view import Query, View
from webapp.book.checks.moves import named
from webapp.book.checks.words import about
from webapp.kinds.read import Read


def vat_draws(read: Read, view: View) -> Iterable[Query]:
    """Parts of a plan that nobody can read, vessels that the book does not have, and draws of more than there is."""
    draws, odd = read_draws(str(read.values.get("draws") or ""))
    if odd:
        words = f"“{odd[0]}” names no vessel with a weight. Write mark and kilograms, such as C001-Z 153.7."
        yield Query("vat_draws", "ask", "draws", words)
    for mark, kg in draws.items():
        if view.vessel(mark) is None:
            yield Query("vat_vessel", "ask", "draws", f"No vessel {mark} is in the book. Look at the mark again.")
            return
        held = view.state(mark)["holds"] or {}
        there = held.get("mass_g", 0) / 1000.0
        if kg > there + 0.05:
            words = f"{about(kg)} kg planned out of {named(mark, view)}, {about(there)} kg by the book. Plan it again."
            yield Query("vat_short", "ask", "draws", words)
            return
