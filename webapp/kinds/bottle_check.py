"""Some bottles are taken from the line and tried."""

from webapp.kinds.effects import other
from webapp.kinds.spec import Field, Kind

KIND = Kind(
    name="bottle_check",
    version=3,
    title="Bottle check",
    short="Check bottles",
    icon="check",
    about="Every half hour or so: fill, strength, label and closure of a few bottles.",
    vessels=("tank",),
    role="bottling lead",
    fields=(
        Field("line", "Line", "text", required=True),
        Field("filled_so_far", "Bottles filled so far", units=("count",), usual=(1, 20000), possible=(0, 1_000_000),
              decimals=0, help="As the line counts them, since the tank was begun or closed last."),
        Field("tested", "Bottles tested", units=("count",), usual=(5, 20), possible=(1, 100000), required=True,
              decimals=0),
        Field("bottle_size", "Bottle size", units=("L", "mL"), usual=(0.02, 3), possible=(0.005, 100), decimals=2,
              typed_in="L"),
        Field("fill_found", "Fill found, on average", units=("pct",), usual=(98.5, 101.5), possible=(90, 110),
              required=True, decimals=1, help="In percent of what the label says.",
              source="27 CFR 19.356 at 1 L; by size elsewhere"),
        Field("fill_least", "Least full of them", units=("pct",), usual=(97, 103), possible=(50, 150), decimals=1,
              ghost=False, source="27 CFR 19.356 at 1 L; by size elsewhere"),
        Field("fill_most", "Fullest of them", units=("pct",), usual=(97, 103), possible=(50, 150), decimals=1,
              ghost=False, source="27 CFR 19.356 at 1 L; by size elsewhere"),
        Field("strength_found", "Strength found", units=("pct_vol", "proof"), usual=(15, 70), possible=(0, 97.2),
              required=True, decimals=1, instrument="density meter"),
        Field("label_strength", "Label strength", units=("pct_vol", "proof"), usual=(15, 70), possible=(1, 97.2),
              decimals=1),
        Field("labels_right", "Labels and closures right", "yes_no", required=True, ghost=False),
        Field("done", "Done if wrong", "text", ghost=False),
    ),
    checks=("time_order", "clock", "late", "vessel_empty", "bottle_off", "fill_off", "emptied_vessel",
            "bottling_ungauged", "row_gap", "twice"),
    effect=other.remembered,
    summary="{tested} bottles: {fill_found}, {strength_found}",
    curve=("fill_found", "strength_found", "filled_so_far"),
    account="processing",
    feeds=("fill and strength test record",),
)
