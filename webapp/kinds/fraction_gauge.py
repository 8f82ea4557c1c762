"""What one receiver got from a run."""

from webapp.kinds.common import (
    DENSITY_NEEDS_TEMP,
    GLASS_NEEDS_TEMP,
    GLASS_OR_STRENGTH,
    RAW_IS_NOT_TRUE,
    SOME_QUANTITY,
    density,
    glass,
    quantity_figures,
    spirit_temp,
    strength,
)
from webapp.kinds.effects import run
from webapp.kinds.spec import Field, Figure, Kind, Rule

KIND = Kind(
    name="fraction_gauge",
    version=1,
    title="Fraction gauge",
    short="Gauge a fraction",
    icon="receiver",
    about="Volume or weight, strength and temperature of heads, hearts, tails, low wines or stillage of a run.",
    vessels=("receiver", "still", "can", "tank"),
    role="still hand",
    fields=(
        Field("still", "Run on still", "mark", required=True, vessels=("still",)),
        Field("fraction", "Fraction", "choice", required=True, ghost=False, choices=(
            ("heads", "heads"), ("hearts", "hearts"), ("tails", "tails"), ("low_wines", "low wines"),
            ("stillage", "stillage"))),
        Field("remnant", "Remnant before", units=("L", "gal"), usual=(0, 5000), possible=(0, None), decimals=1,
              ghost=False, help="What stood in the receiver before collection. 0 if it was empty."),
        Field("remnant_strength", "Remnant strength", units=("pct_vol", "proof"), usual=(0, 90), possible=(0, 97.2),
              decimals=1, ghost=False),
        Field("volume", "Volume now", units=("L", "gal"), usual=(0, 20000), possible=(0, None), decimals=1,
              ghost=False, instrument="dip"),
        Field("net_weight", "or net weight now", units=("kg", "lb"), usual=(0, 20000), possible=(0, None), decimals=1,
              ghost=False, instrument="scale"),
        spirit_temp(required=True, usual=(5.0, 25.0)),
        glass(required=False),
        density(),
        strength(),
        Field("goes_to", "Goes to", "choice", required=True, choices=(
            ("stays", "stays here"), ("next_run", "next run"), ("destroyed", "destroyed"), ("drain", "drained"))),
    ),
    rules=(
        SOME_QUANTITY,
        Rule("remnant_needs_strength", "needs", "remnant", "remnant_strength", "refuse",
             "There was a remnant: type its strength too, or 0 litres."),
        GLASS_OR_STRENGTH, GLASS_NEEDS_TEMP, DENSITY_NEEDS_TEMP, RAW_IS_NOT_TRUE,
    ),
    figures=(
        *quantity_figures(),
        Figure("remnant_lpa", "of which remnant", "LPA", "lpa_volume",
               {"volume": ("remnant",), "strength": ("remnant_strength",), "temp": ("=20",)}, decimals=2),
    ),
    checks=("time_order", "clock", "late", "twice", "over_capacity", "strength_ceiling", "glass_scale",
            "fraction_again", "flow_sum", "hearts_share", "run_balance", "run_drift", "fraction_run", "remnant_off",
            "glass_habit", "fraction_left", "run_not_ended", "row_gap"),
    effect=run.fraction_gauge,
    summary="{fraction}: {volume_20} at {true_strength}",
    cautions=("fire_zone", "methanol"),
    account="production",
    feeds=("run balance", "production gauge"),
)
