"""Moves between vessels and accounts, water, chilling and filtering."""

from __future__ import annotations

from webapp.kinds.amount import Amount, spirit_of
from webapp.kinds.effects.cask import facts_carried, mixed_age
from webapp.kinds.key import FILTER_LOSS, GAUGE_DIFFERENCE, RECEIVED, REMOVED, TRANSIT, WATER, vessel_key
from webapp.kinds.read import Read
from webapp.kinds.spec import Effect
from webapp.kinds.state import NO_FILL, Fill, FillChanges, PlannedVat, Reduced
from webapp.kinds.stock import Posting, spirit_read
from webapp.kinds.view import View


def account_move(read: Read, view: View) -> Effect:
    """A gauged quantity changes vessel, account or both: vessel -> vessel, vessel -> itself, or vessel -> removed."""
    post = Posting(view)
    post.remember(read)
    account, purpose = read.text("to_account") or "", str(read.text("purpose") or "move")
    other = read.text("to_vessel") or ""
    held, here, amount = post.held(read.mark), vessel_key(read.mark), spirit_read(read)
    gauged_as = read.text("from_account")
    if held and gauged_as and held["account"] != gauged_as:
        post.change_account(read.mark, gauged_as, "as_gauged")
    post.declare(str(read.text("spirit") or ""), read.number("distilling_strength"))
    if account == "removed":
        post.draw(here, REMOVED, amount, purpose)
    elif other and other != read.mark:
        if any(amount):
            prepare_vessel(post, other, held, {**_told(read), "account": account})
            post.draw(here, vessel_key(other), amount, purpose)
    else:
        if not held and any(amount):
            post.begin(read.mark, **_what(read))
        post.measure(read.mark, amount, GAUGE_DIFFERENCE, "account_move")
        post.change_account(read.mark, account, purpose)
    return post.effect()


def _what(read: Read) -> FillChanges:
    spirit = read.text("spirit")
    return {"what": spirit} if spirit else {}


def _told(read: Read) -> FillChanges:
    """Return the spirit by the document of a move or a receipt."""
    told, lot, strength = _what(read), read.text("lot"), read.number("distilling_strength")
    if lot is not None:
        told["lot"] = lot
    if strength is not None:
        told["distilled_pct"] = strength
    return told


def prepare_vessel(post: Posting, mark: str, held: Fill | None, facts: FillChanges) -> None:
    """Make a vessel ready for spirit of another fill: a new fill begins, or the present fill gets a younger part."""
    there = post.held(mark)
    if there:
        post.describe(mark, **mixed_age(there, held))
        if account := facts.get("account"):
            post.change_account(mark, account, "joined")
    else:
        post.begin(mark, **(facts_carried(held) | facts))


def receipt(read: Read, view: View) -> Effect:
    """Spirit in bulk from elsewhere: received -> vessel as the consignor declared it, vessel -> transit what is short.

    More than was declared comes from transit; the two are never netted.
    """
    post, figures = Posting(view), read.figures
    post.remember(read)
    if figures.get("declared_lpa") is None or figures.get("lpa") is None:
        return post.effect()
    declared = spirit_of(figures.get("declared_20"), read.number("declared_strength"))
    got, mark = spirit_read(read), vessel_key(read.mark)
    prepare_vessel(post, read.mark, NO_FILL, {**_told(read), "account": read.text("to_account") or ""})
    post.move(RECEIVED, mark, declared, str(read.text("purpose") or "receipt"))
    post.move(mark, TRANSIT, declared.less(got), "transit")
    return post.effect()


def reduce(read: Read, view: View) -> Effect:
    """Water goes in by mass: water -> tank. Pure alcohol stays what it was, so nothing is gauged here.

    What was planned and what was measured after the rest is kept with the fill, for the checks.
    """
    post = Posting(view)
    post.remember(read)
    water_kg, before = read.figures.get("water_mass"), post.held(read.mark) or NO_FILL
    water = Amount(0, spirit_of(read.number("water_volume"), 0.0).volume_ml, spirit_of(None, None, water_kg).mass_g)
    if any(water) and post.held(read.mark):
        volume_ml = water.volume_ml or spirit_of(1.0, 0.0).volume_ml * water.mass_g // spirit_of(1.0, 0.0).mass_g
        post.move(WATER, vessel_key(read.mark), water._replace(volume_ml=volume_ml), "reduce")
        held = post.held(read.mark) or NO_FILL
        plan: Reduced = {
            "at": view.at, "target_pct": read.number("target"), "planned_pct": held["strength_pct"],
            "planned_l": held["volume_l"], "measured_pct": read.figures.get("true_strength"),
            "measured_l": read.figures.get("volume_20"), "before_l": before["volume_l"],
            "water_l": volume_ml / 1000,
        }
        post.describe(read.mark, reduced=plan)
    return post.effect()


def chill_filter(read: Read, view: View) -> Effect:
    """What the filter kept: tank -> filter_loss, by the volumes and strengths before and after.

    A gain is a gauge difference, never netted. Filtered into another tank, the rest goes there: tank -> tank.
    """
    post, figures = Posting(view), read.figures
    post.remember(read)
    here, held = vessel_key(read.mark), post.held(read.mark)
    before = spirit_of(figures.get("volume_before_20"), read.number("strength_before"))
    after = spirit_of(figures.get("volume_after_20"), read.number("strength_after"))
    lost = before.less(after)
    if held and figures.get("lpa_before") is not None and figures.get("lpa_after") is not None:
        post.move(here, FILTER_LOSS, lost.above_nothing(), "filter")
        post.move(GAUGE_DIFFERENCE, here, Amount().less(lost).above_nothing(), "filter")
    other = read.text("to_vessel") or ""
    if other and other != read.mark and any(after):
        prepare_vessel(post, other, held, {})
        post.draw(here, vessel_key(other), after, "filter")
    return post.effect()


def vat_plan(read: Read, view: View) -> Effect:
    """A plan moves nothing. It stands with its tank until another takes its place."""
    post = Posting(view)
    post.remember(read)
    plan: PlannedVat = {
        "entry": read.entry["id"], "at": view.at, "person": read.entry["person"],
        "name": read.text("name") or "", "draws": read.text("draws") or "",
        "water_kg": read.number("water"), "target_pct": read.number("target"), "volume_l": read.number("volume"),
    }
    post.put(vessel_key(read.mark), planned=plan)
    return post.effect()
