"""Opening stock: what stood there before the book comes in from outside, with what the papers say of its past."""

from __future__ import annotations

from typing import Final, cast

from webapp.kinds.amount import spirit_of
from webapp.kinds.effects.cask import put_at, wood_of
from webapp.kinds.effects.goods import begin_bottling, bottles_in
from webapp.kinds.goods_state import BottlingFacts
from webapp.kinds.key import OPENING, vessel_key
from webapp.kinds.read import Read
from webapp.kinds.spec import Effect
from webapp.kinds.state import FillChanges
from webapp.kinds.stock import Posting, spirit_read
from webapp.kinds.view import View

NOON: Final = "T12:00:00Z"  # a day is the same day in every zone


def opening(read: Read, view: View) -> Effect:
    """Opening stock: opening -> vessel. What the book has in the vessel already gets its past, and no flow."""
    post = Posting(view)
    post.remember(read)
    facts = _past(read, view)
    if post.held(read.mark):
        post.describe(read.mark, **facts)
        if account := read.text("to_account"):
            post.change_account(read.mark, account, "opening")
    elif read.figures.get("lpa") is not None and any(amount := spirit_read(read)):
        if account := read.text("to_account"):
            facts["account"] = account
        post.begin(read.mark, **(wood_of(post, read.mark) | facts))
        post.move(OPENING, vessel_key(read.mark), amount, "opening")
    if place := read.text("place"):
        put_at(post, read.mark, place)
    return post.effect()


def _past(read: Read, view: View) -> FillChanges:
    """Return the past of a fill by its entry. Its age is known by papers only: this book has not seen it."""
    row, filled = view.vessel(read.mark), read.text("filled_on")
    aged = read.text("aged_since") or (filled if row and row["sort"] == "cask" else None)
    said = {
        "what": read.text("spirit"), "material": read.text("material"), "lot": read.text("lot"),
        "wood": read.text("wood"), "use": read.text("use"), "origin": read.text("origin"),
        "tare_kg": read.number("tare"), "distilled_pct": read.number("distilling_strength"),
        "fill_strength_pct": read.number("filled_strength"), "filled_lpa_l": read.figures.get("fill_lpa"),
        "since": _noon(filled, view), "aged_since": _noon(aged, view),
        "by_papers": read.text("papers") or "", "opened_at": view.at,
    }
    known = {name: value for name, value in said.items() if value is not None}
    return cast(FillChanges, known)  # these are facts of a fill


def _noon(day: str | None, view: View) -> str | None:
    """Return the noon of a day of the papers, or the time of the entry where that was earlier."""
    return min(day + NOON, view.at) if day else None


def opening_goods(read: Read, view: View) -> Effect:
    """Bottles that stood in the store: opening -> bottling. They leave as those of any other bottling do."""
    post, strength, many = Posting(view), read.number("strength"), bottles_in(read)
    size, bottled = read.number("bottle_size") or 0.0, read.text("bottled_on")
    about: BottlingFacts = {
        "entry": read.entry["id"], "tank": "", "fill": "", "what": read.text("spirit") or "",
        "batch": read.text("batch") or "", "lot_mark": read.text("lot_mark") or "",
        "strength_pct": min(strength or 0.0, 100.0), "label_strength_pct": strength, "size_l": size, "good": many,
        "filled": many, "broken": 0, "reworked": 0, "library": 0, "odd_case": None,
        "per_case": read.number("per_case"), "case_from": read.text("case_from"), "case_to": read.text("case_to"),
        "at": _noon(bottled, view) or view.at, "opened": True, "origin": read.text("origin") or "",
        "papers": read.text("papers") or "",
    }
    begin_bottling(post, about, spirit_of(many * size, strength), OPENING, "opening")
    return post.effect()
