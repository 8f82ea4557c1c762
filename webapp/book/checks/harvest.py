"""What a ferment gave against the sugar that came over the scale, and the house's own ferments of that material.

Flat rates of a tax are averages of many houses, not this fruit: none is used.
"""

from __future__ import annotations

from collections.abc import Iterable
from math import sqrt
from statistics import median

import webapp.kinds
from webapp.book.before.limits import Limit, declare, is_grain, limit
from webapp.book.before.view import Query
from webapp.book.checks.words import figure, like_typed, rounded, typed
from webapp.kinds.expected import Expected
from webapp.kinds.harvest import Promise, promise_of
from webapp.kinds.key import yield_key
from webapp.kinds.message import Declared, Message, Param, message
from webapp.kinds.read import Read
from webapp.kinds.state import figure_in
from webapp.kinds.view import View

LIMITS = declare(
    Limit("yield_low_pct", 60, "%", "A ferment gives of what its sugar promised at least"),
    Limit("yield_high_pct", 140, "%", "A ferment gives of what its sugar promised at most"),
    Limit("yield_years", 3, "", "Ferments of one material that make a custom of the house"),
    Limit("tare_share_pct", 30, "%", "Of a first load the tare is asked about above this part of the gross weight"),
    Limit("tare_times", 3, "", "Tare as a part of the gross weight, times off that of the load before"),
    Limit("sugar_apart", 4, "Bx", "Sugar of two loads of one fruit apart by"),
    Limit("grain_l_100kg", 29, "L", "100 kg of grain give"),
)

# Of an agent, for 100 kg of mash [g]: makers' sheets lie within; common practice, no source.
DOSES_G = {
    "enzyme": (0.5, 30.0), "acid": (10.0, 800.0), "yeast": (3.0, 60.0), "yeast_food": (3.0, 100.0),
    "sulphite": (0.5, 30.0), "antifoam": (0.2, 50.0),
}
SMALL_TARE = 0.15  # of the gross weight: a few boxes beside a whole load have so much; common practice, no source
FIRST_TARE = 0.08  # of the gross weight, where nothing else is known


def fruit_mixed(read: Read, view: View) -> Iterable[Query]:
    """Another fruit than the one that lies in the fermenter: the spirit is named by all that went in, with shares."""
    held, material, net = view.state(read.mark)["holds"], read.text("material"), read.figures.get("net") or 0.0
    if not held or not held["mash"] or not material or not held["material"] or held["material"] == material:
        return
    lies = held["mass_kg"] or 0.0
    said = message(
        "fruit_mixed", fruit=_fruit(material), other=_fruit(held["material"]), net=figure(round(net), 0, "kg"),
        lies=figure(round(lies), 0, "kg"), share=rounded(net / max(net + lies, 1e-9) * 100, 0, "pct"),
    )
    yield Query("fruit_mixed", "ask", "material", said)


def load_off(read: Read, view: View) -> Iterable[Query]:
    """A load against the load before in the same fermenter: its tare as a part of the gross weight, and its sugar."""
    held, gross, tare = view.state(read.mark)["holds"], read.number("gross"), read.number("tare")
    lines = view.recent(read.mark, "fruit_intake") if held else ()
    last = lines[-1]["values"] if lines and held and lines[-1]["at"] >= held["since"] else {}
    if gross and tare and tare < gross:
        yield from _tare_share(read, view, tare / gross, figure_in(last, "gross"), figure_in(last, "tare"))
    sugar, before, most = read.number("sugar"), figure_in(last, "sugar"), limit("sugar_apart", view)
    if sugar is None or before is None or last.get("material") != read.text("material") or abs(sugar - before) <= most:
        return
    said = message("sugar_unlike", sugar=typed(read, "sugar"), last=like_typed(read, "sugar", before))
    yield Query("sugar_unlike", "ask", "sugar", said, (Expected("sugar", before - most, before + most, before),))


def _tare_share(read: Read, view: View, share: float, gross: float | None, tare: float | None) -> Iterable[Query]:
    """Ask about an odd tare. share: of the gross weight now; gross, tare: of the load before [kg]"""
    now, times = rounded(share * 100, 0, "pct"), limit("tare_times", view)
    typed_kg = read.number("gross") or 0.0
    if gross and tare:
        usual = tare / gross
        if usual / times / 2 <= share <= max(usual * times, SMALL_TARE):
            return
        said = message("tare_share", share=now, usual=rounded(usual * 100, 0, "pct"))
        low, high, near = (typed_kg * one for one in (usual / times, usual * times, usual))
    else:
        most = limit("tare_share_pct", view)
        if share * 100 <= most:
            return
        said = message("tare_share-first", share=now, most=figure(most, 0, "pct"))
        low, high, near = 0.0, typed_kg * most / 100, typed_kg * FIRST_TARE
    yield Query("tare_share", "ask", "tare", said, (Expected("tare", low, high, near),))


def dose_off(read: Read, view: View) -> Iterable[Query]:
    """What is put into a mash, for 100 kg of it, against what is usual of that agent."""
    held, kg = view.state(read.mark)["holds"], read.number("amount")
    low, high = DOSES_G.get(read.text("what") or "", (0.0, 0.0))
    mash = held["mass_kg"] if held and held["mash"] else None
    if not mash or not kg or not high or is_grain(held["material"] if held else None):
        return
    dose = kg * 1000 / mash * 100
    if low <= dose <= high:
        return
    least, most = (one * mash / 1e5 for one in (low, high))
    said = message(
        "dose_off", amount=typed(read, "amount"), what=Declared(("choice", "addition", "what", str(read.text("what")))),
        mash=figure(round(mash), 0, "kg"), low=rounded(least * 1000, 0, "g"), high=rounded(most * 1000, 0, "g"),
    )
    yield Query("dose_off", "ask", "amount", said, (Expected("amount", least, most, sqrt(least * most)),))


def _fruit(material: str) -> Declared | str:
    kind = webapp.kinds.get("fruit_intake")
    spec = kind.field("material") if kind else None
    named = spec and material in dict(spec.choices)
    return Declared(("choice", "fruit_intake", "material", material)) if named else material


def ferment_yield(read: Read, view: View) -> Iterable[Query]:
    """Pure alcohol in the wash, far above or below what the fruit's sugar and the house's own years promise."""
    made, held = read.figures.get("wash_lpa"), view.state(read.mark)["holds"]
    if made is None or made <= 0 or not held:
        return
    loads = [line for line in view.recent(read.mark, "fruit_intake") if line["at"] >= held["since"]]
    promise = promise_of(loads, grain=is_grain(held.get("material")))
    if promise is None:
        return
    most, told, material = promise.most_l, _told(promise), str(held.get("material") or "")
    if most and made > most:
        said = message("ferment_yield-most", made=rounded(made, 1, "LPA"), load=told, most=rounded(most, 1, "LPA"))
        expects = (_around(_wanted(promise, material, view)[0], view),)
        yield Query("ferment_yield", "ask", "wash_strength", said, expects)
        return
    wanted, custom = _wanted(promise, material, view)
    share = made / wanted * 100
    if not limit("yield_low_pct", view) <= share <= limit("yield_high_pct", view):
        low, high = (figure(limit(name, view), 0, "pct") for name in ("yield_low_pct", "yield_high_pct"))
        said = message(
            "ferment_yield", made=rounded(made, 1, "LPA"), load=told, wanted=rounded(wanted, 1, "LPA"),
            side="much" if share > 100 else "little", share=figure(round(share), 0, "pct"), low=low, high=high,
            **custom,
        )
        yield Query("ferment_yield", "ask", "wash_strength", said, (_around(wanted, view),))


def _around(wanted_l: float, view: View) -> Expected:
    low, high = (wanted_l * limit(name, view) / 100 for name in ("yield_low_pct", "yield_high_pct"))
    return Expected("wash_lpa", low, high, wanted_l)


def _wanted(promise: Promise, material: str, view: View) -> tuple[float, dict[str, Param]]:
    """Return the alcohol to be expected [L], and the source of that figure: the house's own past ferments, else the
    plain sum.
    """
    past = (view.get(yield_key(material)) or {"closes": []})["closes"] if material else []
    shares = [line["share"] for line in past if line["by"] == promise.by]
    if len(shares) >= limit("yield_years", view):
        return median(shares) * promise.measure, {"years": len(shares), "what": material}
    none: dict[str, Param] = {"years": 0, "what": "none"}
    if promise.by == "weight":
        return promise.kg * limit("grain_l_100kg", view) / 100, none
    return promise.wanted_l, none


def _told(promise: Promise) -> Message:
    kg = figure(round(promise.kg), 0, "kg")
    if promise.by == "weight":
        return message("load-grain", weight=kg)
    return message("load-fruit", weight=kg, sugar=rounded(promise.sugar_kg / promise.kg * 100, 1, "Bx"))
