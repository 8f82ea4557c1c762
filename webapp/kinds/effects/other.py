"""Samples, losses, destruction, counts, and what moves no stock at all."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from webapp.kinds.effects.cask import put_at
from webapp.kinds.read import Read
from webapp.kinds.spec import NOTHING, Effect
from webapp.kinds.stock import Amount, Posting, amount_of, spirit_of, spirit_read

LOST_TO = {"leak": "out:leak", "spill": "out:spill", "broken": "out:spill"}  # every other cause: out:missing


def remembered(read: Read, view: Any) -> Effect:
    """It moves no stock; it is remembered with its vessel, if it names one."""
    if not read.mark:
        return NOTHING
    post = Posting(view)
    post.remember(read)
    return post.effect()


def sample(read: Read, view: Any) -> Effect:
    """A sample: vessel -> sample, at the strength of the vessel. One that goes back moves nothing."""
    post = Posting(view)
    post.remember(read)
    volume = read.figures.get("taken")
    if read.values.get("went") != "returned" and volume:
        held = post.held(read.mark)
        post.move(f"v:{read.mark}", "out:sample", part_of(read, held, volume, None), read.values.get("purpose") or "")
    return post.effect()


def loss(read: Read, view: Any) -> Effect:
    """A loss: vessel, or the run on a still, -> leak, spill or missing. `whole` empties the vessel."""
    post, values = Posting(view), read.values
    post.remember(read)
    cause = str(values.get("cause"))
    outside = LOST_TO.get(cause, "out:missing")
    if values.get("whole") == "yes":
        post.clear(read.mark, outside, cause)
        return post.effect()
    run = post.state(f"v:{read.mark}")["run"]
    source = f"r:{run}" if run else f"v:{read.mark}"
    held = post.state(source) if run else post.held(read.mark)
    amount = part_of(read, held, values.get("volume"), values.get("net_weight"))
    post.draw(source, outside, amount, cause)
    return post.effect()


def destruction(read: Read, view: Any) -> Effect:
    """Destroyed before witnesses: vessel -> destroyed."""
    post, values = Posting(view), read.values
    post.remember(read)
    held = post.held(read.mark)
    amount = part_of(read, held, values.get("volume"), values.get("net_weight"))
    post.draw(f"v:{read.mark}", "out:destroyed", amount, "destruction")
    return post.effect()


def part_of(read: Read, held: Mapping[str, Any] | None, volume_l: float | None, mass_kg: float | None) -> Amount:
    """Return an amount by its own strength where one was read, else as a part of what it was taken from."""
    if held and not held.get("mash") and "true_strength" in read.figures and read.figures.get("volume_20") is not None:
        return spirit_read(read)
    asked = amount_of(None, volume_l, mass_kg).above_nothing()
    if held is None:
        return spirit_of(volume_l, read.figures.get("true_strength"), mass_kg)
    stock = Amount(*(held.get(name) or 0 for name in Amount._fields))
    if mass_kg is not None and stock.mass_g:
        return _more(stock, asked.mass_g, stock.mass_g)
    if volume_l is not None and stock.volume_ml:
        return _more(stock, asked.volume_ml, stock.volume_ml)
    return asked._replace(mass_g=asked.mass_g or asked.volume_ml)  # a mash that nobody has dipped


def _more(stock: Amount, part: int, whole: int) -> Amount:
    """Return part/whole of a stock, also where that is more than there is."""
    return Amount(*(each * part // whole for each in stock))


def stock_count(read: Read, view: Any) -> Effect:
    """What was found where. A tank's measured amount holds: vessel <-> gauge_difference.

    A vessel found at another place than the book's gets that place once somebody has answered the question: two that
    have changed places change them in the book, and nothing is short. Until then the finding is kept with the place.
    """
    values, mark = read.values, read.mark
    if not mark:
        return NOTHING
    post = Posting(view)
    post.remember(read)
    found, place = values.get("found"), (values.get("place") or "").strip()
    if found == "here" and read.figures.get("lpa") is not None:
        if not post.held(mark) and any(spirit_read(read)):
            post.begin(mark)
        post.measure(mark, spirit_read(read), "out:gauge_difference", "stock_count")
    booked = place_of(view, mark)
    if found == "here" and place and place != booked:
        other = swapped_with(view, booked, place)
        if "places_swapped" in view.answered and other:
            put_at(post, mark, place)
            put_at(post, other, booked)
        elif "place_differs" in view.answered:
            put_at(post, mark, place)
    if found == "here" and place:
        finding = {"mark": mark, "at": view.at, "booked": booked}
        return post.effect(**{f"p:{place}": finding})
    return post.effect()


def place_of(view: Any, mark: str) -> str:
    """Return the place of a vessel by the book: where an entry put it last, or the registry's."""
    return str(view.state(mark).get("place") or (view.vessel(mark) or {}).get("place") or "")


def swapped_with(view: Any, booked: str, place: str) -> str | None:
    """Return the vessel that a count found at `booked` although it belongs at `place`: the other of a swapped pair."""
    finding = view.get(f"p:{booked}") if booked else None
    return str(finding["mark"]) if finding and finding["booked"] == place else None
