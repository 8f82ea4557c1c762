"""Bottled goods that stood in the store before the book began."""

from webapp.kinds.dispatch import batch, bottle_count
from webapp.kinds.effects import opening
from webapp.kinds.spec import Field, Kind, Rule

KIND = Kind(
    name="opening_goods",
    version=1,
    title="Opening stock in bottles",
    short="Opening bottles",
    icon="next",
    about="Cases and bottles of one bottling that stood in the store before the book began, and what papers say of it.",
    needs_mark=False,
    role="office",
    fields=(
        batch(),
        Field("lot_mark", "Lot mark", "text", ghost=False, help="Where the bottles carry another than the batch."),
        Field("spirit", "Kind of spirit", "text", required=True),
        Field("strength", "Strength on the label", units=("pct_vol", "proof"), usual=(15, 60), possible=(0, 97.2),
              required=True, decimals=1, ghost=False),
        Field("bottle_size", "Bottle size", units=("L", "mL"), usual=(0.02, 3), possible=(0.005, 100), required=True,
              decimals=2),
        bottle_count("per_case", "Bottles in a case", 24),
        bottle_count("cases", "Whole cases", 20000),
        bottle_count("bottles", "Loose bottles", 200),
        Field("case_from", "First case", "text", ghost=False),
        Field("case_to", "Last case", "text", ghost=False),
        Field("bottled_on", "Bottled on", "date", ghost=False),
        Field("origin", "Where from", "text", ghost=False, help="Own bottling, or from whom it came."),
        Field("papers", "Papers of it", "text", ghost=False, help="Which book or invoice, and its page."),
    ),
    rules=(
        Rule("some_bottles", "any_of", "cases", "bottles", "refuse", "Type how many cases, or how many loose bottles."),
        Rule("cases_hold_some", "needs", "cases", "per_case", "refuse", "Type how many bottles are in a case."),
        Rule("last_needs_first", "needs", "case_to", "case_from", "refuse", "Type the first case too."),
    ),
    checks=("time_order", "clock", "opening_goods"),
    effect=opening.opening_goods,
    summary="{batch}: {cases} cases of {spirit} before this book",
    account="processing",
    feeds=("finished goods", "recall list"),
)
