"""What a count found, and where."""

from webapp.kinds.common import (
    DENSITY_NEEDS_TEMP,
    GLASS_NEEDS_TEMP,
    RAW_IS_NOT_TRUE,
    density,
    glass,
    net_weight,
    quantity_figures,
    spirit_temp,
    strength,
    volume,
)
from webapp.kinds.effects import other
from webapp.kinds.spec import Field, Kind, Rule

KIND = Kind(
    name="stock_count",
    version=1,
    title="Stock count",
    short="Count",
    icon="search",
    about="Which vessel stands at which place, and how much a tank holds. A swap is a swap, not a shortage.",
    vessels=("cask", "tank", "can", "receiver"),
    needs_mark=False,
    role="any two",
    fields=(
        Field("place", "Place", "text", help="As its label says. For a tank leave it empty."),
        Field("found", "Found", "choice", required=True, ghost=False, choices=(
            ("here", "this vessel"), ("nothing", "nothing where it should be"),
            ("unknown", "one that is not in the book"))),
        Field("label", "What it says on it", "text", ghost=False),
        volume("Volume, if a tank"),
        net_weight(),
        glass(required=False),
        density(),
        spirit_temp(required=False, usual=(2.0, 25.0)),
        strength(),
        Field("signed", "Signed by counter", "text", required=True, help="Name and title."),
    ),
    rules=(
        Rule("unknown_is_described", "needs", "found=unknown", "label", "refuse", "Type what it says on it."),
        GLASS_NEEDS_TEMP, DENSITY_NEEDS_TEMP, RAW_IS_NOT_TRUE,
    ),
    figures=quantity_figures(),
    checks=("clock", "late", "over_capacity", "glass_scale", "place_differs", "cask_missing", "dip_sum",
            "not_in_book"),
    effect=other.stock_count,
    summary="{found} {place}",
    cautions=("confined",),
    account="any",
    feeds=("inventory record", "differences"),
)
