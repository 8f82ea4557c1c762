"""Goods in bottles come in bond from another site: as the papers declare them, and what was missing or broken."""

from webapp.kinds.dispatch import batch, bottle_count
from webapp.kinds.effects import goods
from webapp.kinds.spec import Field, Kind, Rule

KIND = Kind(
    name="goods_receipt",
    version=1,
    title="Bottled goods received",
    short="Cases in",
    icon="next",
    about="Cases or bottles come in bond from another site: what the papers declare, and what was missing or broken.",
    needs_mark=False,
    role="office",
    fields=(
        Field("consignor", "From whom", "text", required=True, help="Name and address, plant or warehouse number."),
        Field("document", "Document number", "text", required=True, ghost=False, source="27 CFR 19.620"),
        batch(),
        Field("spirit", "Kind of spirit", "text", required=True),
        Field("strength", "Strength on the label", units=("pct_vol", "proof"), usual=(15, 60), possible=(0, 97.2),
              required=True, decimals=1, ghost=False),
        Field("bottle_size", "Bottle size", units=("L", "mL"), usual=(0.02, 3), possible=(0.005, 100), required=True,
              decimals=2),
        bottle_count("per_case", "Bottles in a case", 24),
        bottle_count("cases", "Whole cases", 2000),
        bottle_count("bottles", "Loose bottles", 200),
        bottle_count("short", "Missing or broken bottles", 200),
        Field("case_from", "First case", "text", ghost=False),
        Field("case_to", "Last case", "text", ghost=False),
        Field("seals", "Seals whole?", "yes_no", required=True, ghost=False, source="27 CFR 19.621"),
    ),
    rules=(
        Rule("some_bottles", "any_of", "cases", "bottles", "refuse",
             "Type how many cases, or how many loose bottles, the papers declare."),
        Rule("cases_hold_some", "needs", "cases", "per_case", "refuse", "Type how many bottles are in a case."),
        Rule("last_needs_first", "needs", "case_to", "case_from", "refuse", "Type the first case too."),
    ),
    checks=("time_order", "clock", "late", "goods_short", "seals_broken"),
    effect=goods.receipt,
    summary="{document}: {cases} cases of {batch} from {consignor}",
    account="processing",
    taxed=True,
    feeds=("finished goods", "receipt record", "recall list"),
)
