"""Goods in bottles: which bottling, are there so many, which cases are gone; and bulk spirit on its way here."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from webapp.book.before.limits import Limit, declare, limit
from webapp.book.before.view import Query, seconds_between
from webapp.book.checks.words import DAY_S, figure, rounded, when
from webapp.kinds.effects.goods import bottles_of, cases_of, find_bottling, holds_case
from webapp.kinds.expected import Expected, Suggestion
from webapp.kinds.goods_state import Bottling
from webapp.kinds.message import Declared, Param, message
from webapp.kinds.read import Read
from webapp.kinds.view import View

LIMITS = declare(
    Limit(
        "transit_loss_pct", 1.0, "%", "Bulk spirit lost in transit",
        "27 CFR 19.462: a loss of bulk spirit in transit above it is reported",
    ),
    Limit("transit_gain_pct", 0.3, "%", "Bulk spirit received above what was declared"),
)
DOCUMENT_DAYS = 1.0
COUNTED_H = 3.0  # nobody counts a store twice in so short a time
DUTIES = ("tax_paid", "in_bond", "export")
SOURCES = {"seals_broken": "27 CFR 19.621", "bottles_short": "27 CFR 19.465"}


def bottling_named(read: Read, view: View) -> Iterable[Query]:
    """No bottling answers to the batch or lot mark, or more than one does."""
    found, said = find_bottling(read, view), str(read.text("batch") or "")[:40]
    if found.bottling is not None:
        return
    if found.many:
        told = message("unknown_bottling-several", bottlings=found.many, batch=said)
    else:
        told = message("unknown_bottling", batch=said, case=str(read.text("case_from") or "")[:20] or "none")
    yield Query("unknown_bottling", "stop", "batch", told)


def cases_gone(read: Read, view: View) -> Iterable[Query]:
    """More bottles than there are, cases that are none of this bottling, or that left before; numbers against count."""
    held, values = find_bottling(read, view).bottling, read.values
    if held is None:
        return
    name = str(held["lot_mark"] or held["batch"] or "none")
    many, is_back = bottles_of(read, held["per_case"]), read.text("why") == "returned"
    if not is_back and many > held["on_hand"]:
        said = message(
            "more_than_bottled", bottling=name, good=held["good"], gone=held["good"] - held["on_hand"],
            on_hand=held["on_hand"], now=many, more=many - held["on_hand"],
        )
        yield Query("more_than_bottled", "ask", "cases" if "cases" in values else "bottles", said)
    if is_back and held["on_hand"] + many > held["good"]:
        said = message(
            "more_than_bottled-back", bottling=name, good=held["good"], on_hand=held["on_hand"], back=many
        )
        yield Query("more_than_bottled", "ask", "cases" if "cases" in values else "bottles", said)
    yield from _numbers(read, held, is_back)
    yield from _removed(read, view, held)


def _removed(read: Read, view: View, held: Bottling) -> Iterable[Query]:
    """A document that stands already, and another duty than the last goods of this bottling to the same place."""
    why, to_whom, document = (str(read.text(name) or "") for name in ("why", "to_whom", "document"))
    lines = held.get("removed") or []
    last = next((line for line in reversed(lines) if line["to_whom"] == to_whom), None)
    if last and to_whom and why in DUTIES and last["why"] in DUTIES and last["why"] != why:
        said = message("removed_otherwise", to_whom=to_whom[:60], why=read.param("why"),
                       usual=Declared(("choice", "dispatch", "why", last["why"])))
        yield Query("removed_otherwise", "ask", "why", said, suggestions=(Suggestion("why", last["why"], ""),))
    others = [line for line in lines if line["to_whom"] != to_whom
              or seconds_between(line["at"], view.at) > DOCUMENT_DAYS * DAY_S]  # of one lorry there may be two lines
    if document and any(line["document"] == document for line in others):
        said = message("document_again", document=document[:40])
        yield Query("document_again", "ask", "document", said)


def _numbers(read: Read, held: Bottling, is_back: bool) -> Iterable[Query]:
    if (none := read.number("cases")) is not None and none <= 0 and read.text("case_from"):
        named = cases_of(replace(read, values={**read.values, "cases": 1.0}))
        if named:
            first, last = named[1:]
            told = message("case_numbers", first=first, last=last, cases=last - first + 1, typed=figure(none, 0))
            many = float(last - first + 1)
            yield Query("case_numbers", "ask", "cases", told, (Expected("cases", many, many),))
    cases = cases_of(read)
    for name in ("case_from", "case_to"):
        case = read.text(name)
        if case and not holds_case(case, held):
            ends: dict[str, Param] = {"first": str(held.get("case_from")), "last": str(held.get("case_to"))}
            yield Query("other_case", "ask", name, message("other_case", case=case[:20], **ends))
            return
    if cases is None:
        return
    before, first, last = cases
    said = read.number("cases")
    if said is not None and round(said) != last - first + 1 and held.get("per_case"):
        typed = figure(said, 0)
        told = message("case_numbers", first=first, last=last, cases=last - first + 1, typed=typed)
        many = float(last - first + 1)
        yield Query("case_numbers", "ask", "cases", told, (Expected("cases", many, many),))
    gone = ((name, int(low), int(high)) for name, low, high in held["gone"])
    twice = [[low, high] for name, low, high in gone if name == before and low <= last and first <= high]
    if twice and not is_back:
        low, high = max(twice[0][0], first), min(twice[0][1], last)
        one = message("case_gone", case=low) if low == high else message("case_gone-several", first=low, last=high)
        yield Query("case_gone", "ask", "case_from", one)


def bottles_short(read: Read, view: View) -> Iterable[Query]:
    """A count of bottles against the book's."""
    held = find_bottling(read, view).bottling
    if held is None:
        return
    many = bottles_of(read, held["per_case"])
    last = held.get("counted")
    if last and last["bottles"] == many and seconds_between(last["at"], view.at) <= COUNTED_H * 3600:
        yield Query("counted_again", "ask", "", message("counted_again", counted=many, at=when(last["at"], read, view)))
    off = many - held["on_hand"]
    if off:
        code = "bottles_short" if off < 0 else "bottles_over"
        said = message(code, on_hand=held["on_hand"], counted=many, off=abs(off))
        yield Query(code, "ask", "cases", said, tuple(_as_booked(read, held)))


def _as_booked(read: Read, held: Bottling) -> Iterable[Expected]:
    """Yield the whole cases, and the loose bottles, with which a count would be the book's."""
    per_case, there = held["per_case"] or 0, held["on_hand"]
    cases, loose = round(read.number("cases") or 0), round(read.number("bottles") or 0)
    if per_case > 0:
        yield Expected("cases", float(there // per_case), float(there // per_case))
        if there >= loose and (there - loose) % per_case == 0:
            yield Expected("cases", float((there - loose) // per_case), float((there - loose) // per_case))
    if there >= cases * per_case:
        yield Expected("bottles", float(there - cases * per_case), float(there - cases * per_case))


def transit_loss(read: Read, view: View) -> Iterable[Query]:
    """Sent against received: a loss on the way above what is to be reported, or a gain."""
    sent, got = read.figures.get("declared_lpa"), read.figures.get("lpa")
    if not sent or got is None:
        return
    lost, pct = sent - got, (sent - got) / sent * 100
    at = "volume" if "volume" in read.values else "net_weight"
    sums: dict[str, Param] = {
        "sent": rounded(sent, 2, "LPA"), "received": rounded(got, 2, "LPA"), "off": rounded(abs(lost), 2, "LPA"),
        "share": rounded(abs(pct), 1, "pct"),
    }
    if pct > limit("transit_loss_pct", view):
        most = figure(limit("transit_loss_pct", view), 1, "pct")
        yield Query("transit_loss", "ask", at, message("transit_loss", most=most, **sums))
    elif -pct > limit("transit_gain_pct", view):
        yield Query("transit_gain", "ask", at, message("transit_gain", **sums))


def goods_short(read: Read, view: View) -> Iterable[Query]:
    """Bottles that the papers declare and that did not come whole."""
    short = round(read.number("short") or 0)
    if short > 0:
        said = message("goods_short", short=short, bottles=bottles_of(read, read.number("per_case")))
        yield Query("goods_short", "ask", "short", said)


def seals_broken(read: Read, view: View) -> Iterable[Query]:
    """Seals that were not whole: theft and tampering are reported at once."""
    if read.text("seals") == "no":
        yield Query("seals_broken", "ask", "seals", message("seals_broken"))
