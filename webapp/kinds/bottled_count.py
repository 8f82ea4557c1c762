"""Bottled goods are counted: what a bottling still has on hand."""

from webapp.kinds.dispatch import batch, bottle_count
from webapp.kinds.effects import goods
from webapp.kinds.spec import Field, Kind, Rule

KIND = Kind(
    name="bottled_count",
    version=1,
    title="Count of bottled goods",
    short="Count bottles",
    icon="search",
    about="Cases and bottles of one bottling that stand in the store. The difference is a shortage or an overage.",
    needs_mark=False,
    role="any two",
    fields=(
        batch(),
        bottle_count("cases", "Whole cases", 20000),
        bottle_count("bottles", "Loose bottles", 200),
        Field("case_from", "A case of them", "text", ghost=False, help="Only where two bottlings share the batch."),
        Field("signed", "Signed by counter", "text", required=True, help="Name and title."),
    ),
    rules=(
        Rule("some_bottles", "any_of", "cases", "bottles", "refuse", "Type how many cases or bottles, or 0."),
    ),
    checks=("time_order", "clock", "late", "bottling_named", "bottles_short"),
    effect=goods.count,
    summary="{batch}: {cases} cases on hand",
    account="processing",
    feeds=("inventory record", "finished goods", "differences"),
)
