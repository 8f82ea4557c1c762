"""Goods in bottles: each bottling is a stock of its own, found by batch or lot mark; what leaves it and comes back.

States: `b:<root>` the bottling with its counts, what is on hand and which cases are gone; `l:<name>` which bottlings
answer to a batch or lot mark; `o:<root>` one removal, for the list of where cases went.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from typing import NamedTuple

from webapp.kinds.amount import Amount, spirit_of
from webapp.kinds.effects.cask import mixed_age
from webapp.kinds.goods_state import Bottling, BottlingFacts, Cases, Named, Removal, Removed
from webapp.kinds.key import (
    DESTROYED,
    NOT_ACCOUNTED,
    OVERAGE,
    RECEIVED,
    REMOVED,
    RETURNED,
    SAMPLE,
    SHORTAGE,
    SPILL,
    TRANSIT,
    Key,
    bottling_key,
    is_vessel,
    name_key,
    removal_key,
    vessel_key,
)
from webapp.kinds.read import Read
from webapp.kinds.spec import Effect
from webapp.kinds.state import NO_FILL
from webapp.kinds.stock import Posting
from webapp.kinds.view import View

_CASE = re.compile(r"\s*(.*?)(\d{1,12})\s*(R?)\s*", re.IGNORECASE | re.DOTALL)
RANGES_MOST = 200
REMOVED_MOST = 12
OUT_TO = {
    "tax_paid": REMOVED, "in_bond": REMOVED, "export": REMOVED, "sample": SAMPLE,
    "broken": SPILL, "destroyed": DESTROYED, "missing": SHORTAGE,
}


class Found(NamedTuple):
    """The bottling that an entry speaks of, or how many answer to what it says."""

    root: str
    bottling: Bottling | None
    many: int


def case_of(text: str | None) -> tuple[str, int] | None:
    """Return a case number as (what stands before it, number), or None where it holds none; an R after it is let go."""
    found = _CASE.fullmatch(text or "")
    return (found[1].strip().casefold(), int(found[2])) if found else None


def is_odd_case(text: str | None, bottling: BottlingFacts) -> bool:
    """Return whether a case is the odd one of a bottling."""
    odd = (bottling["odd_case"] or "").strip().casefold()
    return bool(odd) and (text or "").strip().casefold() == odd


def holds_case(text: str | None, bottling: BottlingFacts) -> bool:
    """Return whether a case number is one of a bottling's cases, its odd case among them."""
    case, first, last = case_of(text), case_of(bottling["case_from"]), case_of(bottling["case_to"])
    if is_odd_case(text, bottling):
        return True
    return bool(case and first and last and case[0] == first[0] and first[1] <= case[1] <= last[1])


def cases_of(read: Read) -> tuple[str, int, int] | None:
    """Return the whole cases that an entry names as (what stands before the numbers, first, last), or None."""
    if not _count(read.number("cases")):
        return None
    first = case_of(read.text("case_from"))
    last = case_of(read.text("case_to")) or first
    return (first[0], first[1], last[1]) if first and last and first[0] == last[0] and first[1] <= last[1] else None


def find_bottling(read: Read, view: View) -> Found:
    """Return the bottling of this batch or lot mark. Where several match, it is the one with the first case named."""
    named, case = view.get(name_key(read.text("batch"))), read.text("case_from")
    roots = named["bottlings"] if named else []
    known = [(root, one) for root in roots if (one := view.get(bottling_key(root)))]
    if case and len(known) > 1:
        known = [(root, one) for root, one in known if holds_case(case, one)]
    return Found(*known[0], 1) if len(known) == 1 else Found("", None, len(known))


def bottles_of(read: Read, per_case: float | None) -> int:
    """Return the number of bottles that an entry names: whole cases of so many, and loose ones. 0 or more."""
    in_case = max(round(per_case or 0), 0)
    return _count(read.number("cases")) * in_case + _count(read.number("bottles"))


def bottles_in(read: Read) -> int:
    """Return the number of bottles of an entry that says itself how many are in a case. 0 or more."""
    return bottles_of(read, read.number("per_case"))


def _count(value: float | None) -> int:
    return max(round(value), 0) if value is not None and abs(value) < 1e9 else 0


def begin_bottling(post: Posting, about: BottlingFacts, amount: Amount, source: Key, reason: str) -> None:
    """Put the good bottles of a bottling on an account of their own: tank, or received -> bottling."""
    key = bottling_key(post.view.root)
    bottling: Bottling = {
        **about, "bottled_ul": amount.lpa_ul, "on_hand": about["good"], "gone": [], "removed": [], "lpa_ul": 0,
        "volume_ml": 0, "mass_g": 0,
    }
    post.keep(key, bottling)
    post.move(source, key, amount, reason)
    for name in {name_key(about["batch"]), name_key(about["lot_mark"])} - {name_key("")}:
        known: Named = post.view.get(name) or {"bottlings": []}
        others = [root for root in known["bottlings"] if root != post.view.root]
        known = {**known, "bottlings": [*others, post.view.root][-40:]}
        post.keep(name, known)


def removal(read: Read, view: View) -> Effect:
    """Bottles leave: bottling -> removed, sample, spill, destroyed, shortage, or a tank; or they come back.

    More than there are: the rest comes first from overage. Where nobody knows which bottling it is, nothing moves.
    """
    found = find_bottling(read, view)
    if found.bottling is None:
        return Effect()
    post, key, held = Posting(view), bottling_key(found.root), found.bottling
    many, why = bottles_of(read, held["per_case"]), read.text("why") or ""
    if why == "returned":
        post.move(RETURNED, key, _of_bottles(held, many), why)
        post.put(key, on_hand=held["on_hand"] + many, gone=_without(held["gone"], cases_of(read)))
    elif many:
        tank = read.text("to_vessel") or ""
        into: Key = vessel_key(tank) if why == "dumped_back" and tank else OUT_TO.get(why, NOT_ACCOUNTED)
        if is_vessel(into):
            _make_ready(post, tank, held)
        post.move(key, into, _of_stock(post.stock(key), held, held["on_hand"], many), why)
        gone = _with(held["gone"], cases_of(read))
        left: Removed = {"at": view.at, "why": why, "to_whom": read.text("to_whom") or "",
                         "document": read.text("document") or ""}
        removed = [*held.get("removed", []), left][-REMOVED_MOST:]
        post.put(key, on_hand=max(held["on_hand"] - many, 0), gone=gone, removed=removed)
        if many >= held["on_hand"]:
            post.clear(key, into, why)  # what rounding left
    line: Removal = {
        "entry": read.entry["id"], "bottling": found.root, "at": view.at, "why": why, "bottles": many,
        "cases": _count(read.number("cases")), "document": read.text("document") or "",
        "to_whom": read.text("to_whom") or "", "case_from": read.text("case_from") or "",
        "case_to": read.text("case_to") or "",
    }
    post.keep(removal_key(view.root), line)
    return post.effect()


def receipt(read: Read, view: View) -> Effect:
    """Bottles come from elsewhere: received -> bottling as the papers declare, bottling -> transit what is short.

    They are a bottling of their own here, which answers to the same batch or lot mark and leaves as any other does.
    """
    post, strength = Posting(view), read.number("strength")
    declared = bottles_in(read)
    short = min(_count(read.number("short")), declared)
    about: BottlingFacts = {
        "entry": read.entry["id"], "tank": "", "fill": "", "at": view.at, "what": read.text("spirit") or "",
        "batch": read.text("batch") or "", "lot_mark": "", "strength_pct": min(strength or 0.0, 100.0),
        "label_strength_pct": strength, "size_l": read.number("bottle_size") or 0.0, "good": declared,
        "filled": declared, "broken": 0, "reworked": 0, "library": 0, "odd_case": None,
        "consignor": read.text("consignor") or "", "document": read.text("document") or "",
        "per_case": read.number("per_case"), "case_from": read.text("case_from"), "case_to": read.text("case_to"),
    }
    begin_bottling(post, about, _of_bottles(about, declared), RECEIVED, "in_bond")
    if short:
        key = bottling_key(view.root)
        post.move(key, TRANSIT, _of_stock(post.stock(key), about, declared, short), "transit")
        post.put(key, on_hand=declared - short)
    return post.effect()


def count(read: Read, view: View) -> Effect:
    """A count of bottles: the bottling holds what was found; bottling -> shortage, or overage -> bottling."""
    found = find_bottling(read, view)
    if found.bottling is None:
        return Effect()
    post, key, held = Posting(view), bottling_key(found.root), found.bottling
    many = bottles_of(read, held["per_case"])
    short = held["on_hand"] - many
    if short > 0:
        post.move(key, SHORTAGE, _of_stock(post.stock(key), held, held["on_hand"], short), "count")
    elif short < 0:
        post.move(OVERAGE, key, _of_bottles(held, -short), "count")
    if not many:
        post.clear(key, SHORTAGE, "count")
    post.put(key, on_hand=many, counted={"at": view.at, "bottles": many, "entry": read.entry["id"]})
    return post.effect()


def _of_bottles(held: BottlingFacts, many: int) -> Amount:
    return spirit_of(many * (held["size_l"] or 0.0), held["strength_pct"])


def _of_stock(stock: Amount, held: BottlingFacts, on_hand: int, many: int) -> Amount:
    """Return so many bottles as a part of what stands there; what there is not as bottles of this strength."""
    there = min(many, on_hand)
    part = stock.share(there, on_hand) if there else Amount()
    more = _of_bottles(held, many - there)
    return Amount(*(a + b for a, b in zip(part, more, strict=True)))


def _make_ready(post: Posting, tank: str, held: Bottling) -> None:
    there = post.held(tank)
    if there:
        post.describe(tank, **mixed_age(there, NO_FILL))
    else:
        post.begin(tank, what=held["what"], name=held["batch"], account="processing")


def _with(gone: Iterable[Cases], cases: tuple[str, int, int] | None) -> list[Cases]:
    """Return ranges of cases with one more, joined where they touch; the oldest fall out of a very long list."""
    if cases is None:
        return list(gone)
    before, first, last = cases
    kept: list[Cases] = []
    for name, low, high in _spans(gone):
        if name == before and low <= last + 1 and first <= high + 1:
            first, last = min(first, low), max(last, high)
        else:
            kept.append([name, low, high])
    kept.append([before, first, last])
    return kept[-RANGES_MOST:]


def _without(gone: Iterable[Cases], cases: tuple[str, int, int] | None) -> list[Cases]:
    if cases is None:
        return list(gone)
    before, first, last = cases
    kept: list[Cases] = []
    for name, low, high in _spans(gone):
        if name != before or high < first or low > last:
            kept.append([name, low, high])
            continue
        kept += [[name, low, first - 1]] if low < first else []
        kept += [[name, last + 1, high]] if high > last else []
    return kept


def _spans(gone: Iterable[Cases]) -> Iterator[tuple[str, int, int]]:
    for name, low, high in gone:
        yield str(name), int(low), int(high)
