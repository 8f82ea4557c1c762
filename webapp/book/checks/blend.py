"""Water and filter: the strength that was reached against the one wanted, by mass; and what the filter kept."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Any

from webapp.book.before.limits import limit
from webapp.book.before.view import Query, View
from webapp.book.checks.moves import named
from webapp.book.checks.words import about, plain
from webapp.kinds.read import Read
from webapp.kinds.stock import Amount, spirit_volume_ml
from webapp.trade.alcoholometry import litres_from_mass

LIKE_RULE_PCT = 1.0  # water so near to what the volume rule gives was reckoned by it


def reduce_target(read: Read, view: View) -> Iterable[Query]:
    """Measured strength against its target; where nothing is measured yet, water that was reckoned by volumes."""
    held, target = view.state(read.mark)["holds"], read.values.get("target")
    if not held or held["mash"] or target is None or not held["strength_pct"]:
        return
    after = _after(read, held)
    if "true_strength" in read.figures:
        yield from _measured(read, view, held, target)
    elif _strength(after) - target > limit("reduce_pct", view) and _by_volume_rule(read, held, target):
        yield from _volume_rule(read, held, target, after)


def _after(read: Read, held: Mapping[str, Any]) -> Amount:
    """Return what the book has in the tank with this water in it."""
    mass_g = held["mass_g"] + max(round((read.figures.get("water_mass") or 0.0) * 1000), 0)
    return Amount(held["lpa_ul"], spirit_volume_ml(held["lpa_ul"], mass_g), mass_g)


def _strength(amount: Amount) -> float:
    return amount.lpa_ul / amount.volume_ml / 10 if amount.volume_ml else 0.0


def _measured(read: Read, view: View, held: Mapping[str, Any], target: float) -> Iterable[Query]:
    now, at = read.figures["true_strength"], "strength" if "strength" in read.values else "glass"
    off = round(now - target, 2)
    if not limit("reduce_pct", view) < abs(off) <= limit("reduce_near_pct", view):
        return
    words = f"{about(now)} % measured, {plain(target, 1)} % wanted: {about(abs(off))} points "
    if off > 0:
        more = (read.figures.get("needed") or 0.0) - (read.figures.get("water_mass") or 0.0)  # by the book's own sum
        words += f"too strong. By mass {about(more)} kg of water more." if more > 0 else "too strong."
    else:
        words += "too weak. Spirit has to go in; water cannot come out."
    yield Query("reduce_target", "ask", at, words + _not_a_loss(read, view, held))


def _not_a_loss(read: Read, view: View, held: Mapping[str, Any]) -> str:
    """Say whether a dip that looks short of the plain sum of volumes has all its pure alcohol."""
    reduced = held.get("reduced") or {}
    dip, strength = read.figures.get("volume_20"), read.figures["true_strength"]
    before_l, water_l = reduced.get("before_l"), reduced.get("water_l")
    if read.figures.get("water_mass"):  # it went in by this very entry
        before_l, water_l = held["volume_l"], float(litres_from_mass(read.figures["water_mass"], 0.0))
    if dip is None:
        return ""
    pure, booked = dip * strength / 100, held["lpa_ul"] / 1e6
    balances = abs(pure - booked) <= booked * limit("move_pct", view) / 100
    has = f"Pure alcohol {about(pure)} L, {about(booked)} L by the book"
    if not balances:
        return f" {has}: look at the dip."
    if before_l and water_l and dip < before_l + water_l - 0.2:
        return (
            f" {about(before_l)} L and {about(water_l)} L of water make "
            f"{about(dip)} L, not {about(before_l + water_l)}: the mix shrinks. {has}: no loss."
        )
    return f" {has}: no loss."


def _by_volume_rule(read: Read, held: Mapping[str, Any], target: float) -> bool:
    water, needed = read.figures.get("water_mass") or 0.0, read.figures.get("needed") or 0.0
    simple = held["volume_l"] * (held["strength_pct"] / target - 1) if target else 0.0
    is_like = simple > 0 and abs(water - simple) <= simple * LIKE_RULE_PCT / 100
    return is_like and needed - water > needed * LIKE_RULE_PCT / 100


def _volume_rule(read: Read, held: Mapping[str, Any], target: float, after: Amount) -> Iterable[Query]:
    water, needed = read.figures["water_mass"], read.figures["needed"]
    sum_l = held["volume_l"] + float(litres_from_mass(water, 0.0))
    words = (
        f"{about(water)} kg of water is what volumes alone would ask for. Volumes do not add: "
        f"{about(after.volume_ml / 1000)} L will stand there, not {about(sum_l)}, at "
        f"{about(_strength(after))} %. For {plain(target, 1)} % it takes {about(needed)} kg: "
        f"{about(needed - water)} kg more. Pure alcohol stays what it was."
    )
    yield Query("contraction_forgotten", "ask", "water" if "water" in read.values else "water_volume", words)


def filter_loss(read: Read, view: View) -> Iterable[Query]:
    """What the filter kept, of what was there; and what was there, against the book."""
    before, after = read.figures.get("lpa_before"), read.figures.get("lpa_after")
    held = view.state(read.mark)["holds"]
    if not before or after is None or before <= 0:
        return
    lost, pct = before - after, (before - after) / before * 100
    sums = f"Before {about(before, 2)}, after {about(after, 2)}: "
    much = f"{about(abs(lost), 2)} L pure alcohol ({about(abs(pct))} %)"
    if pct > limit("filter_loss_pct", view):
        words = f"{sums}{much} kept by filter and line. Usual: 0.3 to 1 %. Look at the sheets, the heel and both dips."
        yield Query("filter_loss", "ask", "volume_after", words)
    elif pct < -limit("filter_gain_pct", view):
        words = f"{sums}{much} more than went in. A filter makes no spirit: look at both dips and strengths."
        yield Query("filter_gain", "ask", "volume_after", words)
    booked = held["lpa_ul"] / 1e6 if held and not held["mash"] else 0.0
    if booked and abs(before - booked) > booked * limit("dip_pct", view) / 100:
        words = (
            f"{about(before, 2)} L pure alcohol in {named(read.mark, view)} before the filter, "
            f"{about(booked, 2)} L by the book. Look at the dip before, then for a move that is not logged."
        )
        yield Query("filter_before", "ask", "volume_before", words)


def dump_dip(read: Read, view: View) -> Iterable[Query]:
    """The tank's dip after a dump, against what the book has in it with this cask."""
    dip, mark = read.values.get("tank_dip"), read.values.get("to_vessel") or ""
    litres, pure, net = (read.figures.get(name) for name in ("volume_20", "lpa", "net"))
    held = view.state(mark)["holds"] or {}
    if dip is None or litres is None or pure is None or net is None or held.get("mash"):
        return
    lpa_ul, mass_g = held.get("lpa_ul", 0) + round(pure * 1e6), held.get("mass_g", 0) + round(net * 1000)
    sum_l = spirit_volume_ml(lpa_ul, mass_g) / 1000
    if sum_l > 0 and abs(dip - sum_l) > max(sum_l * limit("dip_pct", view) / 100, limit("dip_least_l", view)):
        words = (
            f"{about(dip)} L dipped in {named(mark, view)}, {about(sum_l)} L by the sum of what went in: "
            f"{about(abs(dip - sum_l))} L apart. Look at the dip and at both weights."
        )
        yield Query("dip_sum", "ask", "tank_dip", words)
