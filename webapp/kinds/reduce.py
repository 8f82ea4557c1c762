"""Water is added to a tank of spirit."""

from webapp.kinds.common import (
    BY_DENSITY,
    DENSITY_NEEDS_TEMP,
    GLASS_NEEDS_TEMP,
    GLASS_TRUE,
    RAW_IS_NOT_TRUE,
    TRUE_STRENGTH,
    density,
    glass,
    spirit_temp,
    strength,
)
from webapp.kinds.effects import blend
from webapp.kinds.spec import Field, Figure, Kind, Rule

_BEFORE = {"net": ("@mass_kg",), "strength": ("@strength_pct",)}

KIND = Kind(
    name="reduce",
    version=1,
    title="Reduce",
    short="Add water",
    icon="plus",
    about="Water by weight, the strength it should give, and the strength after it has rested.",
    vessels=("tank", "can"),
    role="blender",
    fields=(
        Field("target", "Target strength", units=("pct_vol", "proof"), usual=(37.5, 65), possible=(1, 97),
              required=True,
              decimals=1),
        Field("water", "Water by weight", units=("kg", "lb"), usual=(0, 5000), possible=(0, None), decimals=1,
              ghost=False, instrument="scale", help="Reckon water by weight: volumes do not add."),
        Field("water_volume", "or by volume", units=("L", "gal"), usual=(0.1, 5000), possible=(0, None), decimals=1,
              ghost=False),
        Field("rest_until", "Rest until", "text", aside=True, ghost=False),
        glass(required=False, usual=(31.0, 70.0)),  # 37.5 % at 5 °C shows so little
        density(),
        spirit_temp(required=False, usual=(5.0, 25.0)),
        strength(),
        Field("volume", "Dip after the rest", units=("L", "gal"), usual=(0, 20000), possible=(0, None), decimals=1,
              ghost=False, instrument="dip"),
    ),
    rules=(
        Rule("some_water", "any_of", "water", "water_volume", "refuse",
             "Type how much water went in, by weight or by volume. 0 if it is only measured after the rest."),
        GLASS_NEEDS_TEMP, DENSITY_NEEDS_TEMP, RAW_IS_NOT_TRUE,
    ),
    figures=(
        Figure("needed", "water for the target", "kg", "water_to_reduce", {**_BEFORE, "target": ("target",)}, big=True,
               only_shown=True),
        Figure("water_mass", "water", "kg", "water_mass", {"water_volume": ("water_volume",)}, given="water"),
        Figure("planned_strength", "strength by the sum", "pct_vol", "reduced_strength",
               {**_BEFORE, "water": ("water_mass",)}, only_shown=True),
        Figure("planned_volume", "volume by the sum", "L", "reduced_volume", {**_BEFORE, "water": ("water_mass",)},
               only_shown=True),
        TRUE_STRENGTH, BY_DENSITY,
        GLASS_TRUE,
        Figure("volume_20", "dip at 20 °C", "L", "volume_20",
               {"volume": ("volume",), "strength": ("true_strength",), "temp": ("temp", "=20")}),
    ),
    checks=("time_order", "clock", "late", "twice", "strength_ceiling", "glass_scale", "vessel_empty",
            "reduce_target", "emptied_vessel", "source_strength", "moved_twice", "glass_habit", "over_capacity",
            "target_moved", "water_unread"),
    effect=blend.reduce,
    summary="{water_mass} water, target {target}",
    cautions=("fire_zone",),
    account="processing",
    feeds=("blend sum", "contraction note"),
)
