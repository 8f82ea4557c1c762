"""Checks of water and filter: the strength reached against the strength wanted, by mass; and the loss in the filter."""

from __future__ import annotations

from collections.abc import Iterable
from math import hypot

from webapp.book.before.limits import Limit, declare, limit
from webapp.book.before.view import Query
from webapp.book.checks.instruments import apart, dip_apart, held_off_pct, off_by
from webapp.book.checks.moves import vessel_name
from webapp.book.checks.words import figure, rounded, strength_field, typed
from webapp.kinds.amount import Amount, spirit_volume_ml
from webapp.kinds.expected import Expected
from webapp.kinds.meant import offers
from webapp.kinds.message import Message, Param, message
from webapp.kinds.read import Read
from webapp.kinds.rows import NO_ROW
from webapp.kinds.state import NO_FILL, Fill
from webapp.kinds.stock import spirit_read
from webapp.kinds.view import View
from webapp.trade.alcoholometry import litres_from_mass

LIMITS = declare(
    Limit("reduce_pct", 0.1, "% vol", "Measured strength off its target"),
    Limit("reduce_near_pct", 1.0, "% vol", "Farther off is a step on the way"),
    Limit("water_off_pct", 0.5, "% vol", "Water brings a tank off its target by"),
    Limit("filter_loss_pct", 1.5, "%", "A filter keeps at most"),
    Limit("filter_gain_pct", 0.3, "%", "More after the filter than before"),
)

AS_TARGET_PCT = 0.15  # a target so near to what water gives is the one that it was reckoned for
LIKE_RULE_PCT = 1.0  # water so near to what the volume rule gives was reckoned by it


def reduce_target(read: Read, view: View) -> Iterable[Query]:
    """Measured strength against its target; where nothing is measured yet, water that was reckoned by volumes."""
    held, target = view.state(read.mark)["holds"], read.number("target")
    if not held or held["mash"] or target is None or not held["strength_pct"]:
        return
    after = _after(read, held)
    if "true_strength" in read.figures:
        yield from _measured(read, view, held, target)
        yield from _dip_after(read, view, after)
        now = read.figures["true_strength"]
        if read.figures.get("water_mass") and abs(now - _strength(after)) > max(abs(now - target), held_off_pct()):
            yield from _water_off(read, view, held, target, _strength(after))
    elif _too_strong(after, target, held, view) and _by_volume_rule(read, held, target):
        yield from _volume_rule(read, held, target, after)
    else:
        yield from _water_off(read, view, held, target, _strength(after))


def _dip_after(read: Read, view: View, after: Amount) -> Iterable[Query]:
    """Ask about a dip after the water that is not what the book has there by mass, its contraction with it."""
    litres, sum_l = read.figures.get("volume_20"), after.volume_ml / 1000
    if litres is None or sum_l <= 0:
        return
    least = max(sum_l * limit("dip_pct", view) / 100, limit("dip_least_l", view))
    if abs(litres - sum_l) > least and abs(litres - sum_l) > apart(read, view, "volume_20"):
        said = message(
            "dip_sum", dipped=rounded(litres, 1, "L"), vessel=vessel_name(read.mark, view),
            booked=rounded(sum_l, 1, "L"), off=rounded(abs(litres - sum_l), 1, "L"),
            side="above" if litres > sum_l else "below", share=rounded(abs(litres - sum_l) / sum_l * 100, 1, "pct"),
        )
        yield Query("dip_sum", "ask", "volume", said, (Expected("volume_20", sum_l - least, sum_l + least, sum_l),))


def _too_strong(after: Amount, target: float, held: Fill, view: View) -> bool:
    """Return whether the tank would stay above its target by more than the reading that it is reckoned from is off."""
    thinned = _strength(after) / (held["strength_pct"] or 1.0)
    return _strength(after) - target > max(limit("reduce_pct", view), held_off_pct() * thinned)


def _water_off(read: Read, view: View, held: Fill, target: float, after: float) -> Iterable[Query]:
    """Ask about water that takes the tank below its target; and about less of it only where a slip explains that,
    since water may go in by steps.
    """
    needed, name = read.figures.get("needed") or 0.0, "water" if "water" in read.values else "water_volume"
    most = max(limit("water_off_pct", view), held_off_pct() * after / (held["strength_pct"] or 1.0))
    expects = (Expected(name, needed * 0.97, needed * 1.03, needed) if needed > 0 else Expected(name),
               Expected("target", after - AS_TARGET_PCT, after + AS_TARGET_PCT, after))
    said = message(
        "water_off", water=typed(read, name), strength=rounded(after, 1, "pct_vol"),
        target=figure(target, 1, "pct_vol"), needed=rounded(needed, 1, "kg"),
    )
    query = Query("water_off", "ask", name, said, expects)
    is_nothing = not read.figures.get("water_mass")  # and nothing is measured either
    if after < target - most or (after > target + most and (is_nothing or any(offers(read, [query], lambda _: [])[0]))):
        yield query


def _after(read: Read, held: Fill) -> Amount:
    """Return the contents of the tank with this water in it, by the book."""
    mass_g = held["mass_g"] + max(round((read.figures.get("water_mass") or 0.0) * 1000), 0)
    return Amount(held["lpa_ul"], spirit_volume_ml(held["lpa_ul"], mass_g), mass_g)


def _strength(amount: Amount) -> float:
    return amount.lpa_ul / amount.volume_ml / 10 if amount.volume_ml else 0.0


def _measured(read: Read, view: View, held: Fill, target: float) -> Iterable[Query]:
    now, at = read.figures["true_strength"], strength_field(read)
    off = round(now - target, 2)
    if not limit("reduce_pct", view) < abs(off) <= limit("reduce_near_pct", view):
        return
    # The water was reckoned from a strength that was read before, which is as far off.
    if abs(off) <= hypot(off_by(read, view, "true_strength"), held_off_pct()):
        return
    more = (read.figures.get("needed") or 0.0) - (read.figures.get("water_mass") or 0.0)  # by the book's own sum
    said = message(
        "reduce_target", now=rounded(now, 1, "pct_vol"), target=figure(target, 1, "pct_vol"),
        off=rounded(abs(off), 1, "pct_vol"), side="strong" if off > 0 else "weak",
        water=rounded(more, 1, "kg") if off > 0 and more > 0 else "none", balance=_not_a_loss(read, view, held),
    )
    yield Query("reduce_target", "ask", at, said)


def _not_a_loss(read: Read, view: View, held: Fill) -> Message | str:
    """Say whether a dip that looks short of the plain sum of volumes has all its pure alcohol; "none" without a dip."""
    reduced = held.get("reduced")
    dip, strength = read.figures.get("volume_20"), read.figures["true_strength"]
    before_l, water_l = (reduced["before_l"], reduced["water_l"]) if reduced else (None, None)
    if read.figures.get("water_mass"):  # it went in by this very entry
        before_l, water_l = held["volume_l"], float(litres_from_mass(read.figures["water_mass"], 0.0))
    if dip is None:
        return "none"
    pure, booked = dip * strength / 100, held["lpa_ul"] / 1e6
    balances = abs(pure - booked) <= booked * limit("move_pct", view) / 100
    has: dict[str, Param] = {"pure": rounded(pure, 1, "LPA"), "booked": rounded(booked, 1, "LPA")}
    if not balances:
        return message("reduced-dip", **has)
    if before_l and water_l and dip < before_l + water_l - 0.2:
        return message(
            "reduced-shrinks", before=rounded(before_l, 1, "L"), water=rounded(water_l, 1, "L"),
            dip=rounded(dip, 1, "L"), sum=rounded(before_l + water_l, 1, "L"), **has,
        )
    return message("reduced-no_loss", **has)


def _by_volume_rule(read: Read, held: Fill, target: float) -> bool:
    water, needed = read.figures.get("water_mass") or 0.0, read.figures.get("needed") or 0.0
    simple = (held["volume_l"] or 0.0) * ((held["strength_pct"] or 0.0) / target - 1) if target else 0.0
    is_like = simple > 0 and abs(water - simple) <= simple * LIKE_RULE_PCT / 100
    return is_like and needed - water > needed * LIKE_RULE_PCT / 100


def _volume_rule(read: Read, held: Fill, target: float, after: Amount) -> Iterable[Query]:
    water, needed = read.figures["water_mass"], read.figures["needed"]
    sum_l = (held["volume_l"] or 0.0) + float(litres_from_mass(water, 0.0))
    said = message(
        "contraction_forgotten", water=rounded(water, 1, "kg"), volume=rounded(after.volume_ml / 1000, 1, "L"),
        sum=rounded(sum_l, 1, "L"), strength=rounded(_strength(after), 1, "pct_vol"),
        target=figure(target, 1, "pct_vol"), needed=rounded(needed, 1, "kg"), more=rounded(needed - water, 1, "kg"),
    )
    yield Query("contraction_forgotten", "ask", "water" if "water" in read.values else "water_volume", said)


def filter_loss(read: Read, view: View) -> Iterable[Query]:
    """What the filter kept, of what was there; and what was there, against the book."""
    before, after = read.figures.get("lpa_before"), read.figures.get("lpa_after")
    held = view.state(read.mark)["holds"]
    if not before or after is None or before <= 0:
        return
    lost, pct = before - after, (before - after) / before * 100
    is_known = abs(lost) > off_by(read, view, "lost")
    sums: dict[str, Param] = {
        "before": rounded(before, 2, "LPA"), "after": rounded(after, 2, "LPA"), "off": rounded(abs(lost), 2, "LPA"),
        "share": rounded(abs(pct), 1, "pct"),
    }
    if pct > limit("filter_loss_pct", view) and is_known:
        yield Query("filter_loss", "ask", "volume_after", message("filter_loss", **sums), _filtered(before, view))
    elif pct < -limit("filter_gain_pct", view) and is_known:
        yield Query("filter_gain", "ask", "volume_after", message("filter_gain", **sums), _filtered(before, view))
    booked = held["lpa_ul"] / 1e6 if held and not held["mash"] else 0.0
    most = max(booked * limit("dip_pct", view) / 100, apart(read, view, "lpa_before"))
    if booked and abs(before - booked) > most:
        there, by_book = rounded(before, 2, "LPA"), rounded(booked, 2, "LPA")
        said = message("filter_before", before=there, vessel=vessel_name(read.mark, view), booked=by_book)
        yield Query("filter_before", "ask", "volume_before", said,
                    (Expected("lpa_before", booked - most, booked + most, booked),))


def _filtered(before_l: float, view: View) -> tuple[Expected, ...]:
    """Return the pure alcohol expected after a filter. before_l: before it [L]"""
    least, most = 1 - limit("filter_loss_pct", view) / 100, 1 + limit("filter_gain_pct", view) / 100
    return (Expected("lpa_after", before_l * least, before_l * most, before_l * (least + 1) / 2),)


def dump_dip(read: Read, view: View) -> Iterable[Query]:
    """The tank's dip after a dump, against what the book has in it with this cask."""
    dip, mark = read.number("tank_dip"), read.text("to_vessel") or ""
    litres, pure = read.figures.get("volume_20"), read.figures.get("lpa")
    held = view.state(mark)["holds"] or NO_FILL
    if dip is None or litres is None or pure is None or held.get("mash"):
        return
    more = spirit_read(read)
    sum_l = spirit_volume_ml(held.get("lpa_ul", 0) + more.lpa_ul, held.get("mass_g", 0) + more.mass_g) / 1000
    if sum_l > 0 and abs(dip - sum_l) > max(sum_l * limit("dip_pct", view) / 100, limit("dip_least_l", view)):
        if abs(dip - sum_l) <= dip_apart(sum_l, (view.vessel(mark) or NO_ROW).get("capacity_l")):
            return
        said = message(
            "dip_sum-dump", dipped=rounded(dip, 1, "L"), vessel=vessel_name(mark, view), sum=rounded(sum_l, 1, "L"),
            off=rounded(abs(dip - sum_l), 1, "L"),
        )
        least = max(sum_l * limit("dip_pct", view) / 100, limit("dip_least_l", view))
        came = dip - (held.get("volume_l") or 0.0)  # by the dip itself
        yield Query("dip_sum", "ask", "tank_dip", said, (
            Expected("tank_dip", sum_l - least, sum_l + least, sum_l),
            *((Expected("volume_20", came - least, came + least, came),) if came > 0 else ()),
        ))
