"""History checks: pure functions (read, view) -> queries. A kind names its checks; this table finds them.

A check sees the entry as read and the fold just before it, nothing else. So the same entries give the same queries, in
whatever order they arrive. A new check is one function and one line below.
Its limits are declared at the head of its file.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import replace

from webapp.book.before.limits import site_limit
from webapp.book.before.view import Query
from webapp.book.checks import (
    alike,
    blend,
    bottling,
    cask,
    cask_fill,
    cask_loss,
    charged,
    clock,
    ferment,
    ferment_jump,
    forgotten,
    fraction,
    goods,
    habit,
    hand,
    harvest,
    instrument,
    laboratory,
    moves,
    neat,
    opening,
    place,
    planned,
    product,
    row,
    run,
    run_balance,
    run_flow,
    source,
    strength,
    tasting,
    twice,
    vat,
    vessel,
)
from webapp.kinds.entry import Entry
from webapp.kinds.meant import BY_RANGE, offers
from webapp.kinds.read import Read, read_entry
from webapp.kinds.view import View

Check = Callable[[Read, View], Iterable[Query]]

CHECKS: dict[str, Check] = {
    "clock": clock.clock,
    "late": clock.late,
    "time_order": clock.time_order,
    "hand": hand.hand,
    "received": hand.received,
    "twice": twice.twice,
    "glass_habit": habit.glass_habit,
    "typed_oddly": habit.typed_oddly,
    "moved_twice": twice.moved_twice,
    "named_twice": twice.named_twice,
    "two_people": twice.two_people,
    "ferment_gravity_rose": ferment.gravity_rose,
    "ferment_stuck": ferment.stuck,
    "ferment_ended": ferment.ended,
    "ferment_heat": ferment.heat,
    "ferment_temp_sense": ferment.temp_sense,
    "ferment_jump": ferment_jump.ferment_jump,
    "ferment_close": ferment_jump.ferment_close,
    "fruit_mixed": harvest.fruit_mixed,
    "load_off": harvest.load_off,
    "dose_off": harvest.dose_off,
    "ferment_yield": harvest.ferment_yield,
    "run_ungauged": fraction.run_ungauged,
    "receiver_held": fraction.receiver_held,
    "fraction_run": fraction.fraction_run,
    "remnant_off": fraction.remnant_off,
    "source_strength": source.source_strength,
    "run_still_open": run.run_still_open,
    "run_order": run.run_order,
    "strength_slope": run.strength_slope,
    "strength_fell": run.strength_fell,
    "distillate_warm": run.distillate_warm,
    "vapour_strength": run.vapour_strength,
    "instrument": instrument.instrument,
    "instrument_checked": instrument.instrument_checked,
    "strength_ceiling": strength.strength_ceiling,
    "held_strength": strength.held_strength,
    "glass_scale": strength.glass_scale,
    "over_capacity": vessel.over_capacity,
    "fill_off": bottling.fill_off,
    "bottled_low": product.bottled_low,
    "barrelled_high": product.barrelled_high,
    "lab_result": laboratory.lab_result,
    "vat_draws": vat.vat_draws,
    "tasting_set_out": tasting.tasting_set_out,
    "tasting_answered": tasting.tasting_answered,
    "tasting_opened": tasting.tasting_opened,
    "tasting_cited": tasting.tasting_cited,
    "vessel_empty": vessel.vessel_empty,
    "source_empty": vessel.source_empty,
    "vessel_not_empty": vessel.vessel_not_empty,
    "place_differs": place.place_differs,
    "place_from": place.place_from,
    "cask_missing": place.cask_missing,
    "wash_strength": vessel.wash_strength,
    "cask_grew": cask.cask_grew,
    "cask_earlier": cask.cask_earlier,
    "cask_strength_slip": cask.cask_strength_slip,
    "cask_loss": cask_loss.cask_loss,
    "fill_level": alike.fill_level,
    "cask_drift": cask_fill.cask_drift,
    "cask_life": cask_fill.cask_life,
    "tare_off": cask_fill.tare_off,
    "soakage": cask_fill.soakage,
    "run_balance": run_balance.run_balance,
    "run_drift": run_balance.run_drift,
    "fraction_again": run_balance.fraction_again,
    "fraction_twice": run_balance.fraction_twice,
    "flow_sum": run_flow.flow_sum,
    "dip_flow": run_flow.dip_flow,
    "flow_jump": run_flow.flow_jump,
    "hearts_share": run_flow.hearts_share,
    "move_balance": moves.move_balance,
    "target_capacity": moves.target_capacity,
    "account_changes": moves.account_changes,
    "opening_stock": opening.opening_stock,
    "opening_past": opening.opening_past,
    "opening_goods": opening.opening_goods,
    "dip_sum": moves.dip_sum,
    "gauged_empty": moves.gauged_empty,
    "distilled_off": moves.distilled_off,
    "emptied_vessel": moves.emptied_vessel,
    "dump_dip": blend.dump_dip,
    "reduce_target": blend.reduce_target,
    "filter_loss": blend.filter_loss,
    "label_gauge": bottling.label_gauge,
    "bottle_off": bottling.bottle_off,
    "bottling_balance": bottling.bottling_balance,
    "case_count": bottling.case_count,
    "not_in_book": place.not_in_book,
    "bottling_named": goods.bottling_named,
    "cases_gone": goods.cases_gone,
    "bottles_short": goods.bottles_short,
    "goods_short": goods.goods_short,
    "transit_loss": goods.transit_loss,
    "seals_broken": goods.seals_broken,
    "too_neat": neat.too_neat,
    "neat_round": neat.neat_round,
    "row_gap": row.row_gap,
    "plates_moved": row.plates_moved,
    "strength_row": row.strength_row,
    "charge_size": charged.charge_size,
    "feints_part": charged.feints_part,
    "account_habit": moves.account_habit,
    "opening_weak": opening.opening_weak,
    "receiver_planned": planned.receiver_planned,
    "receivers_named": planned.receivers_named,
    "target_moved": planned.target_moved,
    "label_planned": planned.label_planned,
    "dump_planned": planned.dump_planned,
    "vat_sum": planned.vat_sum,
    "cut_planned": planned.cut_planned,
    "wash_open": forgotten.wash_open,
    "water_unread": forgotten.water_unread,
    "bottling_ungauged": forgotten.bottling_ungauged,
    "fraction_left": forgotten.fraction_left,
    "parts_left": forgotten.parts_left,
    "run_not_ended": forgotten.run_not_ended,
    "cleaned_full": forgotten.cleaned_full,
    "added_again": forgotten.added_again,
    "recask_rest": forgotten.recask_rest,
}

# They hold a figure against others, and say nothing of its range: that question stays, with the answer it may have.
BESIDE = frozenset((
    "source_strength",
    "ferment_jump", "sugar_gravity", "close_gravity", "close_volume", "fraction_receiver", "fraction_strength",
    "fraction_uncut", "remnant_off", "water_off", "glass_habit", "unit_odd", "flow_jump", "distilled_off", "lab_off",
    "dose_off", "tare_share", "sugar_unlike", "row_gap", "plates_moved", "strength_row", "charge_low", "charge_unlike",
    "feints_part", "move_part", "target_moved", "target_planned", "label_planned", "vat_sum", "ferment_row",
    "cut_planned", "lab_far", "stillage_strong", "instrument",
))
# Asked of every kind: of the instruments that an entry names, of emptied vessels, of units and counts, of who logged
# it and how it came.
ALWAYS = ("instrument", "emptied_vessel", "typed_oddly", "hand", "received")


def questions(read: Read, view: View) -> list[Query]:
    """Return every question to an entry: its own problems first, then its history, one question for one cause.

    Where a check has a reason of its own about a field, the plain range question about that field gives way; if the
    range called the figure impossible, the reason weighs `stop` too. Of checks that suggest the same slip first, one
    speaks. What may have been meant is judged as the entry itself is. The view has the scopes that limits may be set
    for (before/limits.py).
    """
    asked = _asked(read, view)
    if not any(query.expects for query in asked):
        return asked

    def judge(entry: Entry) -> list[Query]:
        return _asked(read_entry(read.kind, entry, read.context), view)

    found = offers(read, asked, judge)
    offered = zip(asked, found, strict=True)
    return _one_for_one_slip([replace(one, suggestions=some or one.suggestions) for one, some in offered])


def _asked(read: Read, view: View) -> list[Query]:
    names = dict.fromkeys((*read.kind.checks, *ALWAYS))
    found = [query for name in names for query in CHECKS[name](read, view)]
    reasons = {query.field for query in found if query.field and query.weight != "note" and _about_figure(query)}
    stopped = {p.field for p in read.problems if p.code == "impossible"}
    own = [
        Query(p.code, p.weight, p.field, p.message, p.expects)
        for p in read.problems
        if p.weight != "refuse" and not (p.code in BY_RANGE and p.field in reasons)
    ]
    heavy = stopped & reasons
    return own + [
        replace(one, weight="stop") if one.field in heavy and one.code not in BESIDE else one for one in found
    ]


def _one_for_one_slip(found: list[Query]) -> list[Query]:
    kept: dict[object, Query] = {}
    for n, query in enumerate(found):
        is_of_figure = query.suggestions and query.code != "glass_scale"  # that one asks which instrument it was
        key: object = (query.field, query.suggestions[0]) if is_of_figure else n
        if key not in kept or (query.weight == "stop" and kept[key].weight != "stop"):
            kept[key] = query
    return list(kept.values())


def _about_figure(query: Query) -> bool:
    return query.code != "glass_scale" and query.code not in BESIDE


__all__ = ["ALWAYS", "CHECKS", "Check", "Query", "questions", "site_limit"]
