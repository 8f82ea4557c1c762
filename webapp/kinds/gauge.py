"""How much stands in a tank, receiver or cask, and how strong."""

from webapp.kinds.common import (
    DENSITY_NEEDS_TEMP,
    DIP_NEEDS_TEMP,
    GLASS_NEEDS_TEMP,
    GLASS_OR_STRENGTH,
    PROOF_GALLONS,
    RAW_IS_NOT_TRUE,
    SOME_QUANTITY_OR_DIP,
    density,
    dip,
    glass,
    quantity_figures,
    spirit_temp,
    strength,
)
from webapp.kinds.effects import gauge
from webapp.kinds.spec import Field, Kind

KIND = Kind(
    name="gauge",
    version=1,
    title="Gauge",
    icon="tank",
    about="Volume or net weight, strength and temperature of what a vessel holds.",
    vessels=("receiver", "tank", "can", "cask"),
    role="gauger",
    fields=(
        Field("what", "What it holds", "text", aside=True, help="Spirit and lot, as the house names it."),
        Field("volume", "Volume", units=("L", "gal"), usual=(0, 20000), possible=(0, None), decimals=1, ghost=True,
              instrument="dip"),
        dip(),
        Field("net_weight", "or net weight", units=("kg", "lb"), usual=(0, 20000), possible=(0, None), decimals=1,
              instrument="scale"),
        glass(required=False),
        density(),
        spirit_temp(required=False, usual=(5.0, 25.0)),
        strength(),
        Field("purpose", "Why", "choice", aside=True, choices=(
            ("stock", "stock"), ("move", "before a move"), ("opening", "opening stock"), ("other", "other"))),
    ),
    rules=(
        SOME_QUANTITY_OR_DIP,
        DIP_NEEDS_TEMP,
        GLASS_OR_STRENGTH, GLASS_NEEDS_TEMP, DENSITY_NEEDS_TEMP, RAW_IS_NOT_TRUE,
    ),
    figures=(
        *quantity_figures(by_dip=True),
        PROOF_GALLONS,
    ),
    checks=("time_order", "clock", "late", "twice", "over_capacity", "strength_ceiling", "held_strength",
            "glass_scale", "two_people", "dip_sum", "emptied_vessel", "neat_round", "glass_habit", "gauged_empty",
            "moved_twice"),
    effect=gauge.gauge,
    summary="{volume_20} at {true_strength}",
    curve=("true_strength",),
    cautions=("fire_zone",),
    account="any",
    feeds=("gauge record", "stock"),
)
