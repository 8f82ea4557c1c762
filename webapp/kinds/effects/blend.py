"""Moves between vessels and accounts, water, chilling and filtering."""

from __future__ import annotations

from typing import Any

from webapp.kinds.effects.cask import carried, youngest
from webapp.kinds.read import Read
from webapp.kinds.spec import Effect
from webapp.kinds.stock import Amount, Posting, spirit_of, spirit_read

PLANNED = (("water", "kg"), ("target", "pct"), ("volume", "l"))  # figures of a plan, with their units


def account_move(read: Read, view: Any) -> Effect:
    """A gauged quantity changes vessel, account or both: vessel -> vessel, vessel -> itself, or vessel -> removed."""
    post, values = Posting(view), read.values
    post.remember(read)
    account, purpose = values.get("to_account") or "", str(values.get("purpose") or "move")
    other = values.get("to_vessel") or ""
    held, here, amount = post.held(read.mark), f"v:{read.mark}", spirit_read(read)
    if held and values.get("from_account") and held["account"] != values["from_account"]:
        post.change_account(read.mark, values["from_account"], "as_gauged")
    post.declare(str(values.get("spirit") or ""), values.get("distilling_strength"))
    if account == "removed":
        post.draw(here, "out:removed", amount, purpose)
    elif other and other != read.mark:
        facts = {"lot": values.get("lot"), "distilled_pct": values.get("distilling_strength")}
        known = {name: value for name, value in facts.items() if value is not None}
        if any(amount):
            pour(post, other, held, known | {"account": account} | _what(values))
            post.draw(here, f"v:{other}", amount, purpose)
    else:
        if not held and any(amount):
            post.begin(read.mark, **_what(values))
        post.measure(read.mark, amount, "out:gauge_difference", "account_move")
        post.change_account(read.mark, account, purpose)
    return post.effect()


def _what(values: Any) -> dict[str, Any]:
    return {"what": values["spirit"]} if values.get("spirit") else {}


def pour(post: Posting, mark: str, held: Any, facts: dict[str, Any]) -> None:
    """Make a vessel ready for spirit of another fill: a new fill begins, or the present fill gets a younger part."""
    there = post.held(mark)
    if there:
        post.describe(mark, aged_since=youngest(there, held))
        if facts.get("account"):
            post.change_account(mark, facts["account"], "joined")
    else:
        post.begin(mark, **(carried(held or {}) | facts))


def receipt(read: Read, view: Any) -> Effect:
    """Spirit in bulk from elsewhere: received -> vessel as the consignor declared it, vessel -> transit what is short.

    More than was declared comes from transit; the two are never netted.
    """
    post, values, figures = Posting(view), read.values, read.figures
    post.remember(read)
    if figures.get("declared_lpa") is None or figures.get("lpa") is None:
        return post.effect()
    declared = spirit_of(figures.get("declared_20"), values.get("declared_strength"), values.get("declared_weight"))
    got, mark = spirit_read(read), f"v:{read.mark}"
    facts = {"lot": values.get("lot"), "distilled_pct": values.get("distilling_strength"), **_what(values)}
    known = {name: value for name, value in facts.items() if value is not None}
    pour(post, read.mark, {}, known | {"account": values.get("to_account") or ""})
    post.move("out:received", mark, declared, str(values.get("purpose") or "receipt"))
    post.move(mark, "out:transit", declared.less(got), "transit")
    return post.effect()


def reduce(read: Read, view: Any) -> Effect:
    """Water goes in by mass: water -> tank. Pure alcohol stays what it was, so nothing is gauged here.

    What was planned and what was measured after the rest is kept with the fill, for the checks.
    """
    post = Posting(view)
    post.remember(read)
    water_kg, before = read.figures.get("water_mass"), post.held(read.mark) or {}
    water = Amount(0, spirit_of(read.values.get("water_volume"), 0.0).volume_ml, spirit_of(None, None, water_kg).mass_g)
    if any(water) and post.held(read.mark):
        volume_ml = water.volume_ml or spirit_of(1.0, 0.0).volume_ml * water.mass_g // spirit_of(1.0, 0.0).mass_g
        post.move("out:water", f"v:{read.mark}", water._replace(volume_ml=volume_ml), "reduce")
        held = post.held(read.mark) or {}
        plan = {
            "at": view.at, "target_pct": read.values.get("target"), "planned_pct": held["strength_pct"],
            "planned_l": held["volume_l"], "measured_pct": read.figures.get("true_strength"),
            "measured_l": read.figures.get("volume_20"), "before_l": before.get("volume_l"),
            "water_l": volume_ml / 1000,
        }  # fmt: skip
        post.describe(read.mark, reduced=plan)
    return post.effect()


def chill_filter(read: Read, view: Any) -> Effect:
    """What the filter kept: tank -> filter_loss, by the volumes and strengths before and after.

    A gain is a gauge difference, never netted. Filtered into another tank, the rest goes there: tank -> tank.
    """
    post, values, figures = Posting(view), read.values, read.figures
    post.remember(read)
    here, held = f"v:{read.mark}", post.held(read.mark)
    before = spirit_of(figures.get("volume_before_20"), values.get("strength_before"))
    after = spirit_of(figures.get("volume_after_20"), values.get("strength_after"))
    lost = before.less(after)
    if held and figures.get("lpa_before") is not None and figures.get("lpa_after") is not None:
        post.move(here, "out:filter_loss", lost.above_nothing(), "filter")
        post.move("out:gauge_difference", here, Amount().less(lost).above_nothing(), "filter")
    other = values.get("to_vessel") or ""
    if other and other != read.mark and any(after):
        pour(post, other, held, {})
        post.draw(here, f"v:{other}", after, "filter")
    return post.effect()


def vat_plan(read: Read, view: Any) -> Effect:
    """A plan moves nothing. It stands with its tank until another takes its place."""
    post, values = Posting(view), read.values
    post.remember(read)
    plan = {
        "entry": read.entry["id"], "at": view.at, "person": read.entry["person"],
        "name": values.get("name") or "", "draws": values.get("draws") or "",
        **{f"{name}_{unit}": values.get(name) for name, unit in PLANNED},
    }  # fmt: skip
    post.put(f"v:{read.mark}", planned=plan)
    return post.effect()
