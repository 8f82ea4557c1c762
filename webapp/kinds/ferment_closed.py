"""A ferment is over: how much wash there is, and how strong."""

from webapp.kinds.common import GRAVITY_UNITS
from webapp.kinds.effects import fruit
from webapp.kinds.spec import Field, Figure, Kind

KIND = Kind(
    name="ferment_closed",
    version=1,
    title="Ferment closed",
    short="Close ferment",
    icon="check",
    about="Final gravity, volume and strength of the wash. From here on its pure alcohol is in the book.",
    vessels=("fermenter",),
    role="cellar hand",
    fields=(
        Field("final_gravity", "Final gravity", units=GRAVITY_UNITS, usual=(0.99, 1.02),
              possible=(0.985, 1.1), required=True, instrument="saccharometer", decimals=3, ghost=False),
        Field("volume", "Volume by dip", units=("L", "gal"), usual=(10, 20000), possible=(0, None), required=True,
              decimals=0, ghost=False, instrument="dip"),
        Field("wash_strength", "Strength of wash", units=("pct_vol", "proof"), usual=(3, 10), possible=(0, 18),
              required=True, decimals=1, ghost=False, help="By lab distillation, else by attenuation."),
        Field("method", "Strength by", "choice", aside=True, choices=(
            ("lab", "lab distillation"), ("attenuation", "attenuation"))),
    ),
    figures=(
        Figure("wash_lpa", "pure alcohol in the wash", "LPA", "lpa_volume",
               {"volume": ("volume",), "strength": ("wash_strength",), "temp": ("=20",)}, decimals=2, big=True),
        Figure("by_gravity", "strength from the fall of gravity", "pct_vol", "alcohol_so_far",
               {"original_gravity": ("@og",), "gravity": ("final_gravity",), "juice_share": ("@juice_share", "=80")},
               only_shown=True),
    ),
    checks=("time_order", "clock", "late", "twice", "over_capacity", "vessel_empty", "ferment_yield",
            "ferment_close"),
    effect=fruit.ferment_closed,
    summary="{volume} at {wash_strength}",
    cautions=("co2", "confined"),
    account="production",
    feeds=("run plan", "presumptive yield"),
)
