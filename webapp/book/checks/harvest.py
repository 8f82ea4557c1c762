"""What a ferment gave against the sugar that came over the scale, and the house's own ferments of that material.

Flat rates of a tax are averages of many houses, not this fruit: none is used.
"""

from __future__ import annotations

from collections.abc import Iterable
from statistics import median

import webapp.kinds
from webapp.book.before.limits import Limit, declare, is_grain, limit
from webapp.book.before.view import Query
from webapp.book.checks.words import figure, rounded
from webapp.kinds.expected import Expected
from webapp.kinds.harvest import Promise, promise_of
from webapp.kinds.key import yield_key
from webapp.kinds.message import Declared, Message, Param, message
from webapp.kinds.read import Read
from webapp.kinds.view import View

LIMITS = declare(
    Limit("yield_low_pct", 60, "%", "A ferment gives of what its sugar promised at least"),
    Limit("yield_high_pct", 140, "%", "A ferment gives of what its sugar promised at most"),
    Limit("yield_years", 3, "", "Ferments of one material that make a custom of the house"),
    Limit("grain_l_100kg", 29, "L", "100 kg of grain give"),
)


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
