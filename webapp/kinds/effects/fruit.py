"""Fruit and ferment: what comes over the scale, and what it has become when it is fermented out."""

from __future__ import annotations

from datetime import datetime

from webapp.kinds.amount import Amount, amount_of
from webapp.kinds.goods_state import Fall, Falls, Yield, Yields
from webapp.kinds.harvest import CLOSES, ENDED, promise_of
from webapp.kinds.key import FERMENTED, GROWER, NOT_ACCOUNTED, fall_key, vessel_key, yield_key
from webapp.kinds.read import Read
from webapp.kinds.spec import Effect
from webapp.kinds.spirits import is_grain
from webapp.kinds.state import NO_FILL, figure_in
from webapp.kinds.stock import Posting
from webapp.kinds.view import View


def fruit_intake(read: Read, view: View) -> Effect:
    """Fruit joins what the fermenter holds, or begins a new fill: grower -> fermenter, by mass.

    Spirit, closed wash or charged wash takes no fruit: what is left of it goes to not_accounted, and a fill begins.
    """
    post = Posting(view)
    post.remember(read)
    held = post.held(read.mark)
    if held and (held["lpa_ul"] or held.get("charged") or not held["mash"]):
        post.clear(vessel_key(read.mark), NOT_ACCOUNTED, "left_over")
    if not post.held(read.mark):
        what = read.text("variety") or read.text("material") or "fruit"
        material = read.text("material")
        post.begin(read.mark, mash=True, what=what, material=material, name=read.text("batch") or "")
    sources = (post.held(read.mark) or NO_FILL)["sources"]
    post.describe(read.mark, sources=[*sources, view.root])
    post.move(GROWER, vessel_key(read.mark), amount_of(None, None, read.figures.get("net")), "fruit")
    return post.effect()


def addition(read: Read, view: View) -> Effect:
    """An addition moves no stock; sugar leaves a mark on the fill, for good."""
    post = Posting(view)
    post.remember(read)
    if read.text("is_sugar") == "yes":
        post.describe(read.mark, sugar_added=True)
    return post.effect()


def ferment_reading(read: Read, view: View) -> Effect:
    """The first gravity of a fill is its original gravity."""
    post = Posting(view)
    post.remember(read)
    held = post.held(read.mark)
    gravity = read.number("gravity")
    if held and held["og"] is None and gravity is not None:
        post.describe(read.mark, og=gravity)
    return post.effect()


def ferment_closed(read: Read, view: View) -> Effect:
    """The wash is measured: fermented -> fermenter for its alcohol and volume, back for the mass that went as gas."""
    post = Posting(view)
    post.remember(read)
    if not post.held(read.mark):
        post.begin(read.mark, mash=True, what="wash")
    gravity, volume = read.number("final_gravity"), read.number("volume")
    post.describe(read.mark, closed=True, final_gravity=gravity)
    amount = amount_of(read.figures.get("wash_lpa"), volume, (volume or 0.0) * (gravity or 1.0)).above_nothing()
    _remember_yield(post, read, view)
    _remember_fall(post, read, view)
    post.measure(read.mark, amount, FERMENTED, "closed")
    return post.effect()


def _remember_yield(post: Posting, read: Read, view: View) -> None:
    """Keep the yield of this material as a share of its promise: the house's own custom, key `y:<material>`."""
    held, made = post.held(read.mark) or NO_FILL, read.figures.get("wash_lpa")
    material = held["material"] or ""
    loads = [line for line in view.recent(read.mark, "fruit_intake") if line["at"] >= held["since"]]
    promise = promise_of(loads, grain=is_grain(material)) if material and loads else None
    if promise is None or not made or made <= 0 or (promise.most_l and made > promise.most_l):
        return
    key = yield_key(material)
    line: Yield = {"root": view.root, "at": view.at, "by": promise.by, "share": made / promise.measure}
    known: Yields = view.get(key) or {"closes": []}
    known = {**known, "closes": [*known["closes"], line][-CLOSES:]}
    post.keep(key, known)


def _remember_fall(post: Posting, read: Read, view: View) -> None:
    """Keep how the gravity of this material fell: ferments to come are weighed by it, key `e:<material>`."""
    held = post.held(read.mark) or NO_FILL
    falls = [
        (line["at"], gravity) for line in view.recent(read.mark, "ferment_reading")
        if line["at"] >= held["since"] and (gravity := figure_in(line["values"], "gravity")) is not None
    ]
    if not held["material"] or not falls:
        return
    if held["og"] is not None and falls[0][1] < held["og"]:  # the vessel remembers its last readings only
        falls.insert(0, (held["since"], held["og"]))
    times = [datetime.fromisoformat(at).timestamp() / 86_400 for at, _ in falls]
    fall: Fall = {
        "root": view.root, "days": [round(at - times[0], 4) for at in times], "gravities": [each for _, each in falls],
    }
    key = fall_key(held["material"])
    known: Falls = view.get(key) or {"ended": []}
    known = {"ended": [*known["ended"], fall][-ENDED:]}
    post.keep(key, known)


def wash_taken(post: Posting, mark: str, volume_l: float | None, lpa_l: float | None) -> Amount:
    """Return wash as an amount that leaves a fermenter: its mass by its share of the mash, or 1 kg/L if unknown.

    The alcohol of a ferment that nobody has closed is booked now: fermented -> fermenter.
    """
    held = post.held(mark) or NO_FILL
    wash = amount_of(lpa_l, volume_l, None).above_nothing()
    if held["volume_ml"]:
        mass_g = Amount(0, 0, held["mass_g"]).share(wash.volume_ml, held["volume_ml"]).mass_g
    else:
        mass_g = min(wash.volume_ml, held["mass_g"])
    if not held.get("closed"):
        post.move(FERMENTED, vessel_key(mark), wash, "charged")
    return wash._replace(mass_g=mass_g)
