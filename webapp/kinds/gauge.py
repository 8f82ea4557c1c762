"""How much stands in a tank, receiver or cask, and how strong."""

from webapp.kinds.common import (
    GLASS_NEEDS_TEMP,
    GLASS_OR_STRENGTH,
    GLASS_TRUE,
    RAW_IS_NOT_TRUE,
    TRUE_STRENGTH,
    glass,
    spirit_temp,
    strength,
)
from webapp.kinds.effects import gauge
from webapp.kinds.spec import Field, Figure, Kind, Rule

KIND = Kind(
    name="gauge",
    version=1,
    title="Gauge",
    icon="tank",
    about="Volume or net weight, strength and temperature of what a vessel holds.",
    vessels=("receiver", "tank", "can", "cask"),
    role="gauger",
    fields=(
        Field("what", "What it holds", "text", help="Spirit and lot, as the house names it."),
        Field("volume", "Volume", units=("L", "gal"), usual=(0, 20000), possible=(0, None), decimals=1, ghost=True,
              instrument="dip"),
        Field("net_weight", "or net weight", units=("kg", "lb"), usual=(0, 20000), possible=(0, None), decimals=1,
              instrument="scale"),
        glass(required=False),
        spirit_temp(required=False, usual=(5.0, 25.0)),
        strength(),
        Field("purpose", "Why", "choice", choices=(
            ("stock", "stock"), ("move", "before a move"), ("opening", "opening stock"), ("other", "other"))),
    ),
    rules=(
        Rule("some_quantity", "any_of", "volume", "net_weight", "refuse", "Type the volume or the net weight."),
        Rule("volume_needs_temp", "needs", "volume", "temp", "refuse",
             "A volume needs the temperature of the spirit. Type it too."),
        GLASS_OR_STRENGTH, GLASS_NEEDS_TEMP, RAW_IS_NOT_TRUE,
    ),
    figures=(
        TRUE_STRENGTH,
        GLASS_TRUE,
        Figure("volume_20", "volume at 20 °C", "L", "volume_20",
               {"volume": ("volume",), "strength": ("true_strength",), "temp": ("temp",)}),
        Figure("volume_20", "volume at 20 °C", "L", "volume_from_mass",
               {"net": ("net_weight",), "strength": ("true_strength",)}),
        Figure("lpa", "pure alcohol", "LPA", "lpa_volume",
               {"volume": ("volume_20",), "strength": ("true_strength",), "temp": ("=20",)}, decimals=2, big=True),
        Figure("proof_gallons", "proof gallons", "proof_gal", "proof_gallons", {"lpa": ("lpa",)}, decimals=1),
    ),
    checks=("time_order", "clock", "late", "twice", "over_capacity", "strength_ceiling", "glass_scale", "two_people",
            "dip_sum", "emptied_vessel"),
    effect=gauge.gauge,
    summary="{volume_20} at {true_strength}",
    curve=("true_strength",),
    cautions=("fire_zone",),
    account="any",
    feeds=("gauge record", "stock"),
)
