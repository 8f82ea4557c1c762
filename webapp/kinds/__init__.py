"""The registry: every kind of entry, listed by hand. A new kind is one file here and one line below."""

from __future__ import annotations

from webapp.kinds import (
    account_move,
    addition,
    answer,
    best_run,
    bottle_check,
    bottled_count,
    bottling_close,
    bottling_gauge,
    cask_fill,
    cask_move,
    cask_regauge,
    charge,
    chill_filter,
    cleaning,
    cut,
    cut_plan,
    destruction,
    dispatch,
    distilled_gauge,
    dump,
    enclosure,
    ferment_closed,
    ferment_reading,
    fraction_gauge,
    fruit_intake,
    gauge,
    goods_receipt,
    instrument_check,
    lab_certificate,
    loss,
    note_heard,
    opening,
    opening_goods,
    receipt,
    reduce,
    run_end,
    run_reading,
    sample,
    shift_note,
    stock_count,
    tasting_answer,
    tasting_note,
    tasting_result,
    tasting_session,
    top_up,
    vat_plan,
)
from webapp.kinds.spec import Kind

ALL: list[Kind] = [
    fruit_intake.KIND,
    addition.KIND,
    ferment_reading.KIND,
    ferment_closed.KIND,
    charge.KIND,
    run_reading.KIND,
    cut.KIND,
    run_end.KIND,
    fraction_gauge.KIND,
    cut_plan.KIND,
    best_run.KIND,
    gauge.KIND,
    distilled_gauge.KIND,
    opening.KIND,
    account_move.KIND,
    receipt.KIND,
    cask_fill.KIND,
    cask_move.KIND,
    cask_regauge.KIND,
    top_up.KIND,
    sample.KIND,
    lab_certificate.KIND,
    tasting_note.KIND,
    tasting_session.KIND,
    tasting_answer.KIND,
    tasting_result.KIND,
    loss.KIND,
    vat_plan.KIND,
    dump.KIND,
    reduce.KIND,
    chill_filter.KIND,
    bottling_gauge.KIND,
    bottle_check.KIND,
    bottling_close.KIND,
    dispatch.KIND,
    goods_receipt.KIND,
    opening_goods.KIND,
    bottled_count.KIND,
    stock_count.KIND,
    cleaning.KIND,
    instrument_check.KIND,
    destruction.KIND,
    shift_note.KIND,
    note_heard.KIND,
    enclosure.KIND,
    answer.KIND,
]


def by_name() -> dict[str, Kind]:
    """Return the kinds by name. [dict of Kind], any number; refuses two kinds of one name."""
    kinds = {kind.name: kind for kind in ALL}
    assert len(kinds) == len(ALL), "two kinds share a name"
    return kinds


def get(name: str) -> Kind | None:
    """Return the kind of that name, or None where the registry has none."""
    return next((kind for kind in ALL if kind.name == name), None)
