"""A batch in bottles: the gauge and what its label may say, the checks of the line, cases, and what was lost."""

from __future__ import annotations

import json
from typing import TypedDict

from flask import abort, render_template, request
from flask.typing import ResponseReturnValue

from webapp.access import current, needs
from webapp.book.checks.product_limits import CAUTION, bottled_at_least, limit_sentence
from webapp.book.goods import bottlings
from webapp.book.goods.bottlings import Batch, LineEntry
from webapp.desk.blueprint import bp
from webapp.desk.figures import sign, value_of
from webapp.desk.goods.caselabels import case_form
from webapp.kinds.state import Value
from webapp.trade.bottling import bottles_of, label_high_pct, label_low_pct
from webapp.trade.errors import OutOfDomain
from webapp.trade.proof import proof_from_strength
from webapp.words import sentence
from webapp.words.desk import say
from webapp.words.language import language

Levels = list[tuple[float, str]]


class Level(TypedDict):
    """A level of a chart that matters, and what it is."""

    y: float
    label: str


class LineChart(TypedDict):
    """Checks of the line over time."""

    title: str
    unit: str
    decimals: int
    points: list[list[str | Value]]
    levels: list[Level]


@bp.get("/bottlings")
@needs("floor")
def bottling_page() -> ResponseReturnValue:
    """Show one batch by its name: gauges, checks, closes, and where its pure alcohol went."""
    name = request.args.get("batch", "").strip()[:80]
    found = bottlings.batch(current.book, name, current.site) if name else None
    if found is None:
        abort(404, say("desk-bottling-the_book_has_no_batch"))
    return render_template(
        "desk/goods/bottling.html", batch=found, labels=[_label(found, gauge) for gauge in found["gauges"]],
        charts=[{**chart, "json": json.dumps(chart)} for chart in _charts(found)], balance=batch_balance(found),
        caution=sentence(CAUTION, language()), case_form=case_form(found),
    )


def _label(batch: Batch, gauge: LineEntry) -> dict[str, object] | None:
    """Return the strength for a label by a tank gauge, and the number of bottles it fills.

    None where it has no strength.
    """
    strength, volume = gauge["figures"].get("true_strength"), gauge["figures"].get("volume_20")
    if strength is None or not 1 <= strength <= 97.2:
        return None
    least = bottled_at_least(batch["what"], current.site)
    size_l = batch["limits"]["size_l"]
    try:
        bottles = bottles_of(volume, size_l * 1000.0) if volume is not None and size_l else None
    except OutOfDomain:
        bottles = None
    return {
        "gauge": gauge, "strength": strength, "proof": proof_from_strength(strength), "volume": volume,
        "low": label_low_pct(strength), "high": label_high_pct(strength), "bottles": bottles,
        "least": sentence(limit_sentence(least), language(), house=current.house) if least else "",
        "said": gauge["values"].get("label_strength"),
    }


def _charts(batch: Batch) -> list[LineChart]:
    """Return fill and strength over time, with the label and what may be."""
    limits, found = batch["limits"], []
    fill, label, off = limits["fill_pct"], limits["label_pct"], limits["strength_pct"]
    levels = [(100.0, "label")]
    if fill:
        levels += [(100.0 - fill, "least")] + ([(100.0 + fill, "most")] if limits["is_us"] else [])
    found.append(
        _chart(batch, "fill_found", say("desk-bottling-fill_on_average"), say("desk-bottling-of_the_label"), levels),
    )
    levels = [(label, "label"), (label - off, "least"), (label + off, "most")] if label else []
    found.append(
        _chart(
            batch, "strength_found", say("desk-bottling-strength_in_the_bottles"), sign("pct_vol"), levels, "pct_vol",
        ),
    )
    return [chart for chart in found if len(chart["points"]) > 1]


def _chart(batch: Batch, name: str, title: str, sign_of: str, levels: Levels, unit: str = "pct") -> LineChart:
    read = [check for check in batch["checks"] if name in check["values"]]
    points: list[list[str | Value]] = [[check["at"], value_of(float(check["values"][name]), unit)] for check in read]
    shown: list[Level] = [{"y": value_of(y, unit), "label": words} for y, words in levels]
    return {"title": title, "unit": sign_of, "decimals": 1, "points": points, "levels": shown}


def batch_balance(batch: Batch) -> dict[str, float] | None:
    """Return the first gauge against all that went out of the batch. [L pure alcohol]; None before a close."""
    first = next((gauge["figures"].get("lpa") for gauge in batch["gauges"] if gauge["figures"].get("lpa")), None)
    if not first or not batch["closes"]:
        return None
    bottled = batch["sums"]["lpa_l"]
    return {"gauged": first, "bottled": bottled, "off": first - bottled, "off_pct": (first - bottled) / first * 100.0}
