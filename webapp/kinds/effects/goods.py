"""Goods in bottles: each bottling is a stock of its own, found by batch or lot mark; what leaves it and comes back.

States: `b:<root>` the bottling with its counts, what is on hand and which cases are gone; `l:<name>` which bottlings
answer to a batch or lot mark; `o:<root>` one removal, for the list of where cases went.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from typing import Any, NamedTuple

from webapp.kinds.effects.cask import youngest
from webapp.kinds.read import Read
from webapp.kinds.spec import Effect
from webapp.kinds.stock import Amount, Posting, spirit_of

_CASE = re.compile(r"\s*(.*?)(\d{1,12})\s*(R?)\s*", re.IGNORECASE | re.DOTALL)
NAME_MOST = 80
RANGES_MOST = 200
OUT_TO = {
    "tax_paid": "out:removed", "in_bond": "out:removed", "export": "out:removed", "sample": "out:sample",
    "broken": "out:spill", "destroyed": "out:destroyed", "missing": "out:shortage",
}  # fmt: skip


class Found(NamedTuple):
    """The bottling that an entry speaks of, or how many answer to what it says."""

    root: str
    bottling: Mapping[str, Any] | None
    many: int


def case_of(text: str | None) -> tuple[str, int] | None:
    """Return a case number as (what stands before it, number), or None where it holds none; an R after it is let go."""
    found = _CASE.fullmatch(text or "")
    return (found[1].strip().casefold(), int(found[2])) if found else None


def is_odd_case(text: str | None, bottling: Mapping[str, Any]) -> bool:
    """Return whether a case is the odd one of a bottling."""
    odd = str(bottling.get("odd_case") or "").strip().casefold()
    return bool(odd) and (text or "").strip().casefold() == odd


def holds_case(text: str | None, bottling: Mapping[str, Any]) -> bool:
    """Return whether a case number is one of a bottling's cases, its odd case among them."""
    case, first, last = case_of(text), case_of(bottling.get("case_from")), case_of(bottling.get("case_to"))
    if is_odd_case(text, bottling):
        return True
    return bool(case and first and last and case[0] == first[0] and first[1] <= case[1] <= last[1])


def cases_of(values: Mapping[str, Any]) -> tuple[str, int, int] | None:
    """Return the whole cases that an entry names as (what stands before the numbers, first, last), or None."""
    if not _count(values.get("cases")):
        return None
    first = case_of(values.get("case_from"))
    last = case_of(values.get("case_to")) or first
    return (first[0], first[1], last[1]) if first and last and first[0] == last[0] and first[1] <= last[1] else None


def find(values: Mapping[str, Any], view: Any) -> Found:
    """Return the bottling of this batch or lot mark. Where several match, it is the one with the first case named."""
    roots = (view.get(_named(values.get("batch"))) or {}).get("bottlings", [])
    known = [(root, one) for root in roots if (one := view.get(f"b:{root}"))]
    if values.get("case_from") and len(known) > 1:
        known = [(root, one) for root, one in known if holds_case(values["case_from"], one)]
    return Found(*known[0], 1) if len(known) == 1 else Found("", None, len(known))


def bottles_of(values: Mapping[str, Any], bottling: Mapping[str, Any]) -> int:
    """Return the number of bottles that an entry names: whole cases and loose ones. 0 or more."""
    in_case = max(round(bottling.get("per_case") or 0), 0)
    return _count(values.get("cases")) * in_case + _count(values.get("bottles"))


def _count(value: float | None) -> int:
    return max(round(value), 0) if value is not None and abs(value) < 1e9 else 0


def begin(post: Posting, about: dict[str, Any], amount: Amount, source: str, reason: str) -> None:
    """Put the good bottles of a bottling on an account of their own: tank, or received -> bottling."""
    key = f"b:{post.view.root}"
    post.put(
        key, **about, bottled_ul=amount.lpa_ul, on_hand=about["good"], gone=[], lpa_ul=0, volume_ml=0, mass_g=0
    )
    post.move(source, key, amount, reason)
    for name in {_named(about["batch"]), _named(about["lot_mark"])} - {_named("")}:
        roots = (post.view.get(name) or {}).get("bottlings", [])
        post.put(name, bottlings=[*(root for root in roots if root != post.view.root), post.view.root][-40:])


def _named(name: str | None) -> str:
    return f"l:{(name or '').strip().casefold()[:NAME_MOST]}"


def removal(read: Read, view: Any) -> Effect:
    """Bottles leave: bottling -> removed, sample, spill, destroyed, shortage, or a tank; or they come back.

    More than there are: the rest comes first from overage. Where nobody knows which bottling it is, nothing moves.
    """
    values, found = read.values, find(read.values, view)
    if found.bottling is None:
        return Effect()
    post, key, held = Posting(view), f"b:{found.root}", found.bottling
    many, why = bottles_of(values, held), str(values.get("why") or "")
    if why == "returned":
        post.move("out:returned", key, _of_bottles(held, many), why)
        post.put(key, on_hand=held["on_hand"] + many, gone=_without(held["gone"], cases_of(values)))
    elif many:
        tank = values.get("to_vessel") or ""
        into = f"v:{tank}" if why == "dumped_back" and tank else OUT_TO.get(why, "out:not_accounted")
        if into[:2] == "v:":
            _make_ready(post, tank, held)
        post.move(key, into, _of_stock(post.stock(key), held, many), why)
        gone = _with(held["gone"], cases_of(values))
        post.put(key, on_hand=max(held["on_hand"] - many, 0), gone=gone)
        if many >= held["on_hand"]:
            post.clear(key, into, why)  # what rounding left
    said = ("document", "to_whom", "case_from", "case_to")
    line = {"entry": read.entry["id"], "bottling": found.root, "at": view.at, "why": why, "bottles": many,
            "cases": _count(values.get("cases")), **{name: values.get(name) or "" for name in said}}  # fmt: skip
    return post.effect(**{f"o:{view.root}": line})


def receipt(read: Read, view: Any) -> Effect:
    """Bottles come from elsewhere: received -> bottling as the papers declare, bottling -> transit what is short.

    They are a bottling of their own here, which answers to the same batch or lot mark and leaves as any other does.
    """
    post, values = Posting(view), read.values
    declared = bottles_of(values, values)
    short = min(_count(values.get("short")), declared)
    about = {
        "entry": read.entry["id"], "tank": "", "fill": "", "at": view.at, "what": values.get("spirit") or "",
        "batch": values.get("batch") or "", "lot_mark": "", "strength_pct": min(values.get("strength") or 0.0, 100.0),
        "label_strength_pct": values.get("strength"), "size_l": values.get("bottle_size") or 0.0, "good": declared,
        "filled": declared, "broken": 0, "reworked": 0, "library": 0, "odd_case": None,
        "consignor": values.get("consignor") or "", "document": values.get("document") or "",
        **{name: values.get(name) for name in ("per_case", "case_from", "case_to")},
    }  # fmt: skip
    begin(post, about, _of_bottles(about, declared), "out:received", "in_bond")
    if short:
        key = f"b:{view.root}"
        post.move(key, "out:transit", _of_stock(post.stock(key), about | {"on_hand": declared}, short), "transit")
        post.put(key, on_hand=declared - short)
    return post.effect()


def count(read: Read, view: Any) -> Effect:
    """A count of bottles: the bottling holds what was found; bottling -> shortage, or overage -> bottling."""
    found = find(read.values, view)
    if found.bottling is None:
        return Effect()
    post, key, held = Posting(view), f"b:{found.root}", found.bottling
    many = bottles_of(read.values, held)
    short = held["on_hand"] - many
    if short > 0:
        post.move(key, "out:shortage", _of_stock(post.stock(key), held, short), "count")
    elif short < 0:
        post.move("out:overage", key, _of_bottles(held, -short), "count")
    if not many:
        post.clear(key, "out:shortage", "count")
    post.put(key, on_hand=many, counted={"at": view.at, "bottles": many, "entry": read.entry["id"]})
    return post.effect()


def _of_bottles(held: Mapping[str, Any], many: int) -> Amount:
    return spirit_of(many * (held["size_l"] or 0.0), held["strength_pct"])


def _of_stock(stock: Amount, held: Mapping[str, Any], many: int) -> Amount:
    """Return so many bottles as a part of what stands there; what there is not as bottles of this strength."""
    there = min(many, held["on_hand"])
    part = stock.share(there, held["on_hand"]) if there else Amount()
    more = _of_bottles(held, many - there)
    return Amount(*(a + b for a, b in zip(part, more, strict=True)))


def _make_ready(post: Posting, tank: str, held: Mapping[str, Any]) -> None:
    there = post.held(tank)
    if there:
        post.describe(tank, aged_since=youngest(there, {}))
    else:
        post.begin(tank, what=held["what"], name=held["batch"], account="processing")


def _with(gone: Iterable[list[Any]], cases: tuple[str, int, int] | None) -> list[list[Any]]:
    """Return ranges of cases with one more, joined where they touch; the oldest fall out of a very long list."""
    if cases is None:
        return list(gone)
    before, first, last = cases
    kept = []
    for name, low, high in gone:
        if name == before and low <= last + 1 and first <= high + 1:
            first, last = min(first, low), max(last, high)
        else:
            kept.append([name, low, high])
    return [*kept, [before, first, last]][-RANGES_MOST:]


def _without(gone: Iterable[list[Any]], cases: tuple[str, int, int] | None) -> list[list[Any]]:
    if cases is None:
        return list(gone)
    before, first, last = cases
    kept = []
    for name, low, high in gone:
        if name != before or high < first or low > last:
            kept.append([name, low, high])
            continue
        kept += [[name, low, first - 1]] if low < first else []
        kept += [[name, last + 1, high]] if high > last else []
    return kept
