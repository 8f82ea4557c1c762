"""History checks: pure functions (read, view) -> queries. A kind names its checks; this table finds them.

A check sees the entry as read and the fold just before it, nothing else. So the same entries give the same queries, in
whatever order they arrive. A new check is one function and one line below.
Its limits are declared at the head of its file.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable

from webapp.book.before.limits import site_limit
from webapp.book.before.view import Query
from webapp.book.checks import (
    blend,
    bottling,
    cask,
    cask_fill,
    cask_loss,
    clock,
    ferment,
    goods,
    harvest,
    instrument,
    moves,
    neat,
    opening,
    place,
    product,
    run,
    run_balance,
    run_flow,
    strength,
    twice,
    vat,
    vessel,
)
from webapp.kinds.read import Read
from webapp.kinds.view import View

Check = Callable[[Read, View], Iterable[Query]]

CHECKS: dict[str, Check] = {
    "clock": clock.clock,
    "late": clock.late,
    "time_order": clock.time_order,
    "twice": twice.twice,
    "two_people": twice.two_people,
    "ferment_gravity_rose": ferment.gravity_rose,
    "ferment_stuck": ferment.stuck,
    "ferment_ended": ferment.ended,
    "ferment_heat": ferment.heat,
    "ferment_temp_sense": ferment.temp_sense,
    "ferment_yield": harvest.ferment_yield,
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
    "vat_draws": vat.vat_draws,
    "vessel_empty": vessel.vessel_empty,
    "source_empty": vessel.source_empty,
    "vessel_not_empty": vessel.vessel_not_empty,
    "place_differs": place.place_differs,
    "cask_missing": place.cask_missing,
    "wash_strength": vessel.wash_strength,
    "cask_grew": cask.cask_grew,
    "cask_strength_slip": cask.cask_strength_slip,
    "cask_loss": cask_loss.cask_loss,
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
    "hearts_share": run_flow.hearts_share,
    "move_balance": moves.move_balance,
    "target_capacity": moves.target_capacity,
    "account_changes": moves.account_changes,
    "opening_stock": opening.opening_stock,
    "opening_past": opening.opening_past,
    "opening_goods": opening.opening_goods,
    "dip_sum": moves.dip_sum,
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
}

RANGE_CODES = ("unusual", "impossible")
# Asked of every kind: the first looks only at the instruments that an entry names, the second at emptied vessels.
ALWAYS = ("instrument", "emptied_vessel")


def questions(read: Read, view: View) -> list[Query]:
    """Return every question to an entry: its own problems first, then its history, one question for one cause.

    Where a check has a reason of its own about a field, the plain range question about that field gives way; if the
    range called the figure impossible, the reason weighs `stop` too. Of checks that suggest the same slip, one speaks.
    The view has the scopes that limits may be set for (before/limits.py).
    """
    names = dict.fromkeys((*read.kind.checks, *ALWAYS))
    found = _one_for_one_slip([query for name in names for query in CHECKS[name](read, view)])
    reasons = {query.field for query in found if query.field and query.weight != "note" and _about_figure(query)}
    stopped = {p.field for p in read.problems if p.code == "impossible"}
    own = [
        Query(p.code, p.weight, p.field, p.message, p.suggestions)
        for p in read.problems
        if p.weight != "refuse" and not (p.code in RANGE_CODES and p.field in reasons)
    ]
    return own + [_as_stop(query) if query.field in stopped & reasons else query for query in found]


def _one_for_one_slip(found: list[Query]) -> list[Query]:
    kept: dict[object, Query] = {}
    for n, query in enumerate(found):
        key: object = (query.field, query.suggestions) if query.suggestions else n
        if key not in kept or (query.weight == "stop" and kept[key].weight != "stop"):
            kept[key] = query
    return list(kept.values())


def _about_figure(query: Query) -> bool:
    return query.code != "glass_scale"


def _as_stop(query: Query) -> Query:
    return Query(query.code, "stop", query.field, query.message, query.suggestions)


__all__ = ["ALWAYS", "CHECKS", "Check", "Query", "questions", "site_limit"]
