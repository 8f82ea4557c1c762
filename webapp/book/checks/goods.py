"""Goods in bottles: which bottling, are there so many, which cases are gone; and bulk spirit on its way here."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Any

from webapp.book.before.limits import limit
from webapp.book.before.view import Query, View
from webapp.book.checks.words import about, plain
from webapp.kinds.effects.goods import bottles_of, cases_of, find, holds_case
from webapp.kinds.read import Read


def bottling_named(read: Read, view: View) -> Iterable[Query]:
    """No bottling answers to the batch or lot mark, or more than one does."""
    found, said = find(read.values, view), str(read.values.get("batch") or "")[:40]
    if found.bottling is not None:
        return
    if found.many:
        words = f"{found.many} bottlings answer to {said}. Type the first case too, as it stands on the case."
    else:
        words = f"No bottling in the book is called {said}"
        case = str(read.values.get("case_from") or "")[:20]
        words += f" and holds case {case}. " if case else ". "
        words += "Look at the lot mark, or hand in the bottling close first."
    yield Query("unknown_bottling", "stop", "batch", words)


def cases_gone(read: Read, view: View) -> Iterable[Query]:
    """More bottles than there are, cases that are none of this bottling, or that left before; numbers against count."""
    held, values = find(read.values, view).bottling, read.values
    if held is None:
        return
    name = str(held.get("lot_mark") or held.get("batch") or "The bottling")
    many, is_back = bottles_of(values, held), values.get("why") == "returned"
    if not is_back and many > held["on_hand"]:
        gone = held["good"] - held["on_hand"]
        words = (
            f"{name}: {held['good']} bottled, {gone} gone, {held['on_hand']} on hand by the book; {many} now are "
            f"{many - held['on_hand']} more than there are. Count them, and look for a removal that was logged twice."
        )
        yield Query("more_than_bottled", "ask", "cases" if "cases" in values else "bottles", words)
    if is_back and held["on_hand"] + many > held["good"]:
        words = (
            f"{name}: {held['good']} bottled, {held['on_hand']} on hand by the book; {many} cannot all come back. "
            "Is it this batch?"
        )
        yield Query("more_than_bottled", "ask", "cases" if "cases" in values else "bottles", words)
    yield from _numbers(read, held, is_back)


def _numbers(read: Read, held: Mapping[str, Any], is_back: bool) -> Iterable[Query]:
    values, cases = read.values, cases_of(read.values)
    for name in ("case_from", "case_to"):
        if values.get(name) and not holds_case(values[name], held):
            words = (
                f"Case {str(values[name])[:20]} is none of this bottling: it has {held.get('case_from')} to "
                f"{held.get('case_to')}. Look at the case again."
            )
            yield Query("other_case", "ask", name, words)
            return
    if cases is None:
        return
    before, first, last = cases
    said = values.get("cases")
    if said is not None and round(said) != last - first + 1 and held.get("per_case"):
        words = f"Cases {first} to {last} are {last - first + 1}; {plain(said, 0)} are typed. Which is right?"
        yield Query("case_numbers", "ask", "cases", words)
    twice = [[low, high] for name, low, high in held["gone"] if name == before and low <= last and first <= high]
    if twice and not is_back:
        low, high = max(twice[0][0], first), min(twice[0][1], last)
        which = f"Case {low} has" if low == high else f"Cases {low} to {high} have"
        words = f"{which} left already by the book. Was this removal logged twice? Else look at the numbers."
        yield Query("case_gone", "ask", "case_from", words)


def bottles_short(read: Read, view: View) -> Iterable[Query]:
    """A count of bottles against the book's."""
    held = find(read.values, view).bottling
    if held is None:
        return
    many = bottles_of(read.values, held)
    off = many - held["on_hand"]
    if off:
        rule = " An unexplained shortage of bottled spirits is taxed in the US (27 CFR 19.465)." if off < 0 else ""
        words = (
            f"{held['on_hand']} bottles on hand by the book, {many} counted: {abs(off)} "
            f"{'more' if off > 0 else 'missing'}. Count again, then look for a removal that is not logged.{rule}"
        )
        yield Query("bottles_short" if off < 0 else "bottles_over", "ask", "cases", words)


def transit_loss(read: Read, view: View) -> Iterable[Query]:
    """Sent against received: a loss on the way above what is to be reported, or a gain."""
    sent, got = read.figures.get("declared_lpa"), read.figures.get("lpa")
    if not sent or got is None:
        return
    lost, pct = sent - got, (sent - got) / sent * 100
    at = "volume" if "volume" in read.values else "net_weight"
    much = f"{about(abs(lost), 2)} L pure alcohol ({about(abs(pct))} %)"
    sums = f"Sent {about(sent, 2)}, received {about(got, 2)}: {much} "
    if pct > limit("transit_loss_pct", view):
        words = (
            f"{sums}lost in transit. Above {plain(limit('transit_loss_pct', view), 1)} % is to be reported "
            "(27 CFR 19.462). Look at the seals and gauge it again, then report it."
        )
        yield Query("transit_loss", "ask", at, words)
    elif -pct > limit("transit_gain_pct", view):
        words = f"{sums}more than the papers say. Look at strength, temperature and what stood in the vessel before."
        yield Query("transit_gain", "ask", at, words)


def goods_short(read: Read, view: View) -> Iterable[Query]:
    """Bottles that the papers declare and that did not come whole."""
    short = round(read.values.get("short") or 0)
    if short > 0:
        words = (
            f"{short} of {bottles_of(read.values, read.values)} bottles were missing or broken. Count them again, note "
            "it on the papers, and tell the consignor: duty may be due on what is missing."
        )
        yield Query("goods_short", "ask", "short", words)


def seals_broken(read: Read, view: View) -> Iterable[Query]:
    """Seals that were not whole: theft and tampering are reported at once."""
    if read.values.get("seals") == "no":
        words = "The seals were not whole. Keep the load apart, gauge it, and tell the consignor and the authority now."
        yield Query("seals_broken", "ask", "seals", words)
