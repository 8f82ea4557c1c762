"""Fruit and ferment: what comes over the scale, and what it has become when it is fermented out."""

from __future__ import annotations

from typing import Any

from webapp.kinds.harvest import CLOSES, custom_key, promise_of
from webapp.kinds.read import Read
from webapp.kinds.spec import Effect
from webapp.kinds.spirits import is_grain
from webapp.kinds.stock import Amount, Posting, amount_of


def fruit_intake(read: Read, view: Any) -> Effect:
    """Fruit joins what the fermenter holds, or begins a new fill: grower -> fermenter, by mass.

    Spirit, closed wash or charged wash takes no fruit: what is left of it goes to not_accounted, and a fill begins.
    """
    post = Posting(view)
    post.remember(read)
    held = post.held(read.mark)
    if held and (held["lpa_ul"] or held.get("charged") or not held["mash"]):
        post.clear(read.mark, "out:not_accounted", "left_over")
    if not post.held(read.mark):
        what = read.values.get("variety") or read.values.get("material") or "fruit"
        material = read.values.get("material")
        post.begin(read.mark, mash=True, what=what, material=material, name=read.values.get("batch") or "")
    sources = (post.held(read.mark) or {})["sources"]
    post.describe(read.mark, sources=[*sources, view.root])
    post.move("out:grower", f"v:{read.mark}", amount_of(None, None, read.get("net")), "fruit")
    return post.effect()


def addition(read: Read, view: Any) -> Effect:
    """An addition moves no stock; sugar leaves a mark on the fill, for good."""
    post = Posting(view)
    post.remember(read)
    if read.values.get("is_sugar") == "yes":
        post.describe(read.mark, sugar_added=True)
    return post.effect()


def ferment_reading(read: Read, view: Any) -> Effect:
    """The first gravity of a fill is its original gravity."""
    post = Posting(view)
    post.remember(read)
    held = post.held(read.mark)
    if held and held["og"] is None and read.values.get("gravity") is not None:
        post.describe(read.mark, og=read.values["gravity"])
    return post.effect()


def ferment_closed(read: Read, view: Any) -> Effect:
    """The wash is measured: fermented -> fermenter for its alcohol and volume, back for the mass that went as gas."""
    post = Posting(view)
    post.remember(read)
    if not post.held(read.mark):
        post.begin(read.mark, mash=True, what="wash")
    gravity, volume = read.values.get("final_gravity"), read.values.get("volume")
    post.describe(read.mark, closed=True, final_gravity=gravity)
    amount = amount_of(read.figures.get("wash_lpa"), volume, (volume or 0.0) * (gravity or 1.0)).above_nothing()
    _remember_yield(post, read, view)
    post.measure(read.mark, amount, "out:fermented", "closed")
    return post.effect()


def _remember_yield(post: Posting, read: Read, view: Any) -> None:
    """Keep the yield of this material as a share of its promise: the house's own custom, key `y:<material>`."""
    held, made = post.held(read.mark) or {}, read.figures.get("wash_lpa")
    material = str(held.get("material") or "")
    loads = [line for line in view.recent(read.mark, "fruit_intake") if line["at"] >= (held.get("since") or "")]
    promise = promise_of(loads, grain=is_grain(material)) if material and loads else None
    if promise is None or not made or made <= 0 or (promise.most_l and made > promise.most_l):
        return
    key = custom_key(material)
    line = {"root": view.root, "at": view.at, "by": promise.by, "share": made / promise.measure}
    closes = (view.get(key) or {"closes": []})["closes"]
    post.put(key, closes=[*closes, line][-CLOSES:])


def wash_taken(post: Posting, mark: str, volume_l: float | None, lpa_l: float | None) -> Amount:
    """Return wash as an amount that leaves a fermenter: its mass by its share of the mash, or 1 kg/L if unknown.

    The alcohol of a ferment that nobody has closed is booked now: fermented -> fermenter.
    """
    held = post.held(mark) or {}
    wash = amount_of(lpa_l, volume_l, None).above_nothing()
    if held.get("volume_ml"):
        mass_g = Amount(0, 0, held["mass_g"]).share(wash.volume_ml, held["volume_ml"]).mass_g
    else:
        mass_g = min(wash.volume_ml, held.get("mass_g", 0))
    if not held.get("closed"):
        post.move("out:fermented", f"v:{mark}", wash, "charged")
    return wash._replace(mass_g=mass_g)
