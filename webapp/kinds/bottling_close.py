"""The bottling is over: bottles, cases, and what did not get into a bottle."""

from webapp.kinds.effects import bottle
from webapp.kinds.spec import Field, Figure, Kind, Rule


def _count(name: str, label: str, required: bool, most: int) -> Field:
    return Field(name, label, units=("count",), usual=(0, most), possible=(0, 1_000_000), required=required, decimals=0,
                 ghost=False)


KIND = Kind(
    name="bottling_close",
    version=1,
    title="Bottling close",
    short="Close bottling",
    icon="close",
    about="Counts, case numbers and the rest of the tank. Bottled spirit leaves the tank here.",
    vessels=("tank",),
    role="bottling lead",
    fields=(
        _count("filled", "Bottles filled", True, 20000),
        _count("broken", "Broken", True, 100),
        _count("reworked", "Poured back", False, 100),
        _count("library", "Of the good ones, for the library", False, 24),
        Field("bottle_size", "Bottle size", units=("L", "mL"), usual=(0.02, 3), possible=(0.005, 100), required=True,
              decimals=2),
        _count("per_case", "Bottles in a case", True, 24),
        Field("case_from", "First case", "text", required=True, ghost=False),
        Field("case_to", "Last case", "text", required=True, ghost=False),
        Field("odd_case", "Odd case", "text", ghost=False, help="Its number with an R.", source="27 CFR 19.490"),
        Field("lot_mark", "Lot mark on the bottles", "text"),
        Field("loss", "Heel, line and filter", units=("L", "gal"), usual=(0, 50), possible=(0, None), required=True,
              decimals=1, ghost=False),
        Field("tank_empty", "Is the tank empty now?", "yes_no", required=True, ghost=False),
    ),
    rules=(
        Rule("broken_of_filled", "le", "broken", "filled", "stop",
             "{broken} broken of {filled} filled cannot be. Count again."),
    ),
    figures=(
        Figure("in_bottles", "filled", "L", "volume_of_count", {"size": ("bottle_size",), "number": ("filled",)},
               big=True),
        Figure("lpa", "pure alcohol filled", "LPA", "lpa_volume",
               {"volume": ("in_bottles",), "strength": ("@strength_pct",), "temp": ("=20",)}, decimals=2,
               only_shown=True),
    ),
    checks=("time_order", "clock", "late", "twice", "vessel_empty", "bottling_balance", "case_count",
            "emptied_vessel", "bottling_ungauged"),
    effect=bottle.bottling_close,
    summary="{filled} bottles, cases {case_from} to {case_to}",
    account="processing",
    feeds=("bottling record", "finished stock", "loss or gain"),
)
