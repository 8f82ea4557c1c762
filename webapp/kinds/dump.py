"""A cask is emptied into a tank."""

from webapp.kinds.common import (
    GLASS_NEEDS_TEMP,
    GLASS_OR_STRENGTH,
    GLASS_TRUE,
    PURE_ALCOHOL,
    RAW_IS_NOT_TRUE,
    TRUE_STRENGTH,
    glass,
    spirit_temp,
    strength,
)
from webapp.kinds.effects import cask
from webapp.kinds.spec import Field, Figure, Kind, Rule

KIND = Kind(
    name="dump",
    version=1,
    title="Dump or vat",
    short="Dump",
    icon="receiver",
    about="A cask weighed full and empty; what left it went into the tank, what the wood keeps is soakage.",
    vessels=("cask",),
    role="blender",
    fields=(
        Field("gross", "Gross before", units=("kg", "lb"), usual=(20, 900), possible=(0, None), required=True,
              decimals=1, instrument="scale", ghost=False),
        Field("empty", "Empty weight now", units=("kg", "lb"), usual=(5, 130), possible=(0, None), required=True,
              decimals=1, instrument="scale", ghost=False, help="The wood keeps 3 to 8 kg in a cask of 200 L."),
        glass(required=False, usual=(40.0, 80.0)),
        spirit_temp(required=True, usual=(2.0, 25.0)),
        strength(),
        Field("to_vessel", "To tank", "mark", required=True, vessels=("tank",)),
        Field("tank_dip", "Tank dip after", units=("L", "gal"), usual=(0, 20000), possible=(0, None), decimals=1,
              aside=True,
              instrument="dip", ghost=False),
    ),
    rules=(
        Rule("empty_below_gross", "lt", "empty", "gross", "stop",
             "Empty weight {empty} is not below gross {gross}. Look at the scale again."),
        GLASS_OR_STRENGTH, GLASS_NEEDS_TEMP, RAW_IS_NOT_TRUE,
    ),
    figures=(
        TRUE_STRENGTH,
        GLASS_TRUE,
        Figure("net", "dumped", "kg", "net_mass", {"gross": ("gross",), "tare": ("empty",)}),
        Figure("volume_20", "volume at 20 °C", "L", "volume_from_mass",
               {"net": ("net",), "strength": ("true_strength",)}),
        PURE_ALCOHOL,
        Figure("soakage", "kept by the wood", "kg", "net_mass", {"gross": ("empty",), "tare": ("@tare_kg",)},
               only_shown=True),
    ),
    checks=("time_order", "clock", "late", "twice", "strength_ceiling", "glass_scale", "vessel_empty", "soakage",
            "cask_life", "dump_dip", "target_capacity", "emptied_vessel"),
    effect=cask.dump,
    summary="{net} at {true_strength} to {to_vessel}",
    cautions=("fire_zone", "lifting"),
    account="storage",
    feeds=("dump record", "age of blend", "soakage"),
)
