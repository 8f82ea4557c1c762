"""Samples, losses, destruction, counts, and what moves no stock at all."""

from __future__ import annotations

from webapp.kinds.amount import Amount, Stock, amount_of, spirit_of, weighed_amount
from webapp.kinds.effects.cask import put_at
from webapp.kinds.key import (
    DESTROYED,
    GAUGE_DIFFERENCE,
    LEAK,
    MISSING,
    SAMPLE,
    SPILL,
    Key,
    place_key,
    run_key,
    vessel_key,
)
from webapp.kinds.read import Read
from webapp.kinds.spec import NOTHING, Effect
from webapp.kinds.state import Fill, Finding
from webapp.kinds.stock import Posting, spirit_read, unit_weighed
from webapp.kinds.view import View

LOST_TO = {"leak": LEAK, "spill": SPILL, "broken": SPILL}  # every other cause: out:missing


def remembered(read: Read, view: View) -> Effect:
    """It moves no stock; it is remembered with its vessel, if it names one."""
    if not read.mark:
        return NOTHING
    post = Posting(view)
    post.remember(read)
    return post.effect()


def sample(read: Read, view: View) -> Effect:
    """A sample: vessel -> sample, at the strength of the vessel. One that goes back moves nothing."""
    post = Posting(view)
    post.remember(read)
    volume = read.figures.get("taken")
    if read.text("went") != "returned" and volume:
        held = post.held(read.mark)
        amount = part_of(read, held, volume, None, mash=_is_mash(held))
        post.move(vessel_key(read.mark), SAMPLE, amount, read.text("purpose") or "")
    return post.effect()


def loss(read: Read, view: View) -> Effect:
    """A loss: vessel, or the run on a still, -> leak, spill or missing. `whole` empties the vessel."""
    post = Posting(view)
    post.remember(read)
    cause = str(read.text("cause"))
    outside = LOST_TO.get(cause, MISSING)
    if read.text("whole") == "yes":
        post.clear(vessel_key(read.mark), outside, cause)
        return post.effect()
    run = post.vessel(read.mark)["run"]
    source: Key = run_key(run) if run else vessel_key(read.mark)
    fill = None if run else post.held(read.mark)
    held: Stock | None = post.state(run_key(run)) if run else fill
    amount = part_of(read, held, read.number("volume"), read.number("net_weight"), mash=_is_mash(fill))
    post.draw(source, outside, amount, cause)
    return post.effect()


def destruction(read: Read, view: View) -> Effect:
    """Destroyed before witnesses: vessel -> destroyed."""
    post = Posting(view)
    post.remember(read)
    held = post.held(read.mark)
    amount = part_of(read, held, read.number("volume"), read.number("net_weight"), mash=_is_mash(held))
    post.draw(vessel_key(read.mark), DESTROYED, amount, "destruction")
    return post.effect()


def part_of(read: Read, held: Stock | None, volume_l: float | None, mass_kg: float | None, *, mash: bool) -> Amount:
    """Return an amount by its own strength where one was read, else as a part of what it was taken from."""
    if held and not mash and "true_strength" in read.figures and read.figures.get("volume_20") is not None:
        return spirit_read(read)
    asked = amount_of(None, volume_l, mass_kg).above_nothing()
    if held is None:
        strength = read.figures.get("true_strength")
        if mass_kg is None or strength is None:  # a weight without a strength has no volume
            return spirit_of(volume_l, strength, mass_kg)
        return weighed_amount(mass_kg, strength, unit_weighed(read))
    if mass_kg is not None and not mash:
        asked = weighed_amount(mass_kg, _strength_of(held), unit_weighed(read))
    stock = Amount(held["lpa_ul"], held["volume_ml"], held["mass_g"])
    if mass_kg is not None and stock.mass_g:
        return _more(stock, asked.mass_g, stock.mass_g)
    if volume_l is not None and stock.volume_ml:
        return _more(stock, asked.volume_ml, stock.volume_ml)
    return asked._replace(mass_g=asked.mass_g or asked.volume_ml)  # a mash that nobody has dipped


def _strength_of(held: Stock) -> float:
    return held["lpa_ul"] / held["volume_ml"] / 10 if held["volume_ml"] else 0.0


def _is_mash(held: Fill | None) -> bool:
    return held is not None and held["mash"]


def _more(stock: Amount, part: int, whole: int) -> Amount:
    """Return part/whole of a stock, also where that is more than there is."""
    return Amount(*(each * part // whole for each in stock))


def stock_count(read: Read, view: View) -> Effect:
    """What was found where. A tank's measured amount holds: vessel <-> gauge_difference.

    A vessel found at another place than the book's gets that place once somebody has answered the question: two that
    have changed places change them in the book, and nothing is short. Until then the finding is kept with the place.
    """
    mark = read.mark
    if not mark:
        return NOTHING
    post = Posting(view)
    post.remember(read)
    found, place = read.text("found"), (read.text("place") or "").strip()
    if found == "here" and read.figures.get("lpa") is not None:
        if not post.held(mark) and any(spirit_read(read)):
            post.begin(mark)
        post.measure(mark, spirit_read(read), GAUGE_DIFFERENCE, "stock_count")
    booked = place_of(view, mark)
    if found == "here" and place and place != booked:
        other = swapped_with(view, booked, place)
        if "places_swapped" in read.answered and other:
            put_at(post, mark, place)
            put_at(post, other, booked)
        elif "place_differs" in read.answered:
            put_at(post, mark, place)
    if found == "here" and place:
        finding: Finding = {"mark": mark, "at": view.at, "booked": booked}
        post.keep(place_key(place), finding)
    return post.effect()


def place_of(view: View, mark: str) -> str:
    """Return the place of a vessel by the book: where an entry put it last, or the registry's."""
    return view.state(mark)["place"] or _listed_place(view, mark)


def _listed_place(view: View, mark: str) -> str:
    row = view.vessel(mark)
    return (row.get("place") or "") if row else ""


def swapped_with(view: View, booked: str, place: str) -> str | None:
    """Return the vessel that a count found at `booked` although it belongs at `place`: the other of a swapped pair."""
    finding = view.get(place_key(booked)) if booked else None
    return finding["mark"] if finding and finding["booked"] == place else None
