"""Casks: filled, moved, topped up or put into another, emptied."""

from __future__ import annotations

from typing import Final, cast

from webapp.kinds.amount import Amount, spirit_of, weighed_amount
from webapp.kinds.key import EVAPORATION, NOT_ACCOUNTED, SOAKAGE, VesselKey, vessel_key
from webapp.kinds.read import Read
from webapp.kinds.spec import Effect
from webapp.kinds.state import NO_FILL, Fill, FillChanges
from webapp.kinds.stock import Posting, spirit_read, unit_weighed
from webapp.kinds.view import View

# What of a fill goes along when all of it goes into another vessel.
CARRIED: Final = (
    "what", "material", "name", "lot", "aged_since", "by_papers", "fill_strength_pct", "distilled_pct",
    "label_strength_pct",
)
PAPERS_MOST = 300


def cask_fill(read: Read, view: View) -> Effect:
    """A fill begins: tank -> cask, by weight. What the book still had in the cask goes to not_accounted."""
    post = Posting(view)
    post.remember(read)
    post.clear(vessel_key(read.mark), NOT_ACCOUNTED, "left_over")
    source = _other(read.text("from_vessel"), read)
    amount, what = spirit_read(read), read.text("what")
    if any(amount):
        facts: FillChanges = {
            **facts_carried(post.held(source)), **wood_of(post, read.mark), "lot": read.text("lot"),
            "cooperage": read.text("cooperage"), "tare_kg": read.number("tare"),
            "fill_strength_pct": read.figures.get("true_strength"), "aged_since": view.at,
        }
        if use := read.text("use"):
            facts["use"] = use
        if what:
            facts["what"] = what
        post.begin(read.mark, **facts)
        post.draw(vessel_key(source), vessel_key(read.mark), amount, "cask_fill")
    if place := read.text("place"):
        put_at(post, read.mark, place)
    return post.effect()


def _other(source: str | None, read: Read) -> str:
    """Return the vessel it came from; from itself nothing comes, and the book is asked where it did come from."""
    return source if source and source != read.mark else ""


def cask_move(read: Read, view: View) -> Effect:
    """Give a cask another place. Its stock stays."""
    post = Posting(view)
    post.remember(read)
    put_at(post, read.mark, read.text("to_place") or "")
    return post.effect()


def put_at(post: Posting, mark: str, place: str) -> None:
    """Note the place of a vessel."""
    post.put(vessel_key(mark), place=place.strip() or None)


def top_up(read: Read, view: View) -> Effect:
    """Spirit from one vessel into a cask: vessel -> cask. The age of the mix is that of its youngest part.

    A recask takes all there is: the rest is the wood's, cask -> soakage.
    """
    post = Posting(view)
    post.remember(read)
    source = _other(read.text("from_vessel"), read)
    held, key = post.held(source), vessel_key(source)
    amount = _amount(read, held)
    _pour(post, read.mark, held, amount, key, "recask" if read.text("work") == "recask" else "top_up")
    if read.text("work") == "recask" and post.held(source):
        post.clear(key, SOAKAGE, "recask")
    return post.effect()


def _pour(post: Posting, mark: str, held: Fill | None, amount: Amount, source: VesselKey, reason: str) -> None:
    if not any(amount):
        return
    here = post.held(mark)
    if here:
        post.describe(mark, **mixed_age(here, held))
    else:
        post.begin(mark, **(facts_carried(held) | wood_of(post, mark)))
    post.draw(source, vessel_key(mark), amount, reason)


def wood_of(post: Posting, mark: str) -> FillChanges:
    """Return the wood that a fill begins in, by the registry."""
    row = post.view.vessel(mark)
    return {"use": row.get("use") if row else None, "wood": row.get("wood") if row else None,
            "toast": row.get("toast") if row else None}


def _amount(read: Read, held: Fill | None) -> Amount:
    """Return the amount poured. Without a strength of its own it has the strength of the vessel it came from."""
    if "true_strength" in read.figures:
        return spirit_read(read)
    strength, net = (held or NO_FILL)["strength_pct"] or 0.0, read.number("net_weight")
    if net is not None:
        return weighed_amount(net, strength, unit_weighed(read))
    return spirit_of(read.number("volume"), strength)


def mixed_age(one: Fill, other: Fill | None) -> FillChanges:
    """Return the age of a mix. Where that of a part is known by papers only, so is that of the mix."""
    aged: FillChanges = {"aged_since": youngest(one, other)}
    papers = [papers for part in (one, other) if part and (papers := part.get("by_papers")) is not None]
    if papers and aged["aged_since"]:
        aged["by_papers"] = "; ".join(dict.fromkeys(filter(None, papers)))[:PAPERS_MOST]
    return aged


def youngest(one: Fill, other: Fill | None) -> str | None:
    """Return since when the youngest part of a mix is in wood; None where a part never was."""
    if other is None:
        return one.get("aged_since")
    if not one["lpa_ul"]:
        return other.get("aged_since")
    mine, theirs = one.get("aged_since"), other.get("aged_since")
    return max(mine, theirs) if mine and theirs else None


def facts_carried(held: Fill | None) -> FillChanges:
    """Return the facts of a fill that go along with its spirit."""
    facts = {name: held[name] for name in CARRIED if held.get(name) is not None} if held else {}
    return cast(FillChanges, facts)  # CARRIED are keys of it


def dump(read: Read, view: View) -> Effect:
    """A cask is emptied: cask -> tank by weight.

    What went since the last gauge is booked before it, cask -> evaporation; what the wood keeps after it, cask ->
    soakage. Without a tare nobody can tell the two apart, and both are evaporation.
    """
    post = Posting(view)
    post.remember(read)
    held, key = post.held(read.mark), vessel_key(read.mark)
    strength, dumped = read.figures.get("true_strength"), read.figures.get("net")
    tare, gross, unit = read.context.get("tare_kg"), read.number("gross") or 0.0, unit_weighed(read)
    if held and tare is not None and strength is not None and gross > tare:
        post.measure(read.mark, weighed_amount(gross - tare, strength, unit), EVAPORATION, "dump_gauge")
    amount = weighed_amount(dumped, strength, unit)
    tank = read.text("to_vessel") or ""
    there = post.held(tank)
    if any(amount):
        if there:
            post.describe(tank, **mixed_age(there, held))
        else:
            post.begin(tank, **facts_carried(held))
        post.move(key, vessel_key(tank), amount, "dump")
    kept = SOAKAGE if tare is not None else EVAPORATION
    if post.held(read.mark):
        post.clear(key, kept, "dump")
    return post.effect()

