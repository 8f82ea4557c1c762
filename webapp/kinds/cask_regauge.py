"""A cask weighed and proved again where it lies."""

from webapp.kinds.common import (
    BY_DENSITY,
    DENSITY_NEEDS_TEMP,
    GLASS_NEEDS_TEMP,
    GLASS_OR_STRENGTH,
    GLASS_TRUE,
    PURE_ALCOHOL,
    RAW_IS_NOT_TRUE,
    TRUE_STRENGTH,
    density,
    glass,
    spirit_temp,
    strength,
    weighed_lpa,
    weighed_volume,
)
from webapp.kinds.effects import gauge
from webapp.kinds.spec import Field, Figure, Kind

KIND = Kind(
    name="cask_regauge",
    version=1,
    title="Cask regauge",
    short="Regauge",
    icon="cask",
    about="Gross weight, strength and condition of a cask; its loss follows.",
    vessels=("cask",),
    role="gauger",
    fields=(
        Field("gross", "Gross weight", units=("kg", "lb"), usual=(20, 900), possible=(0, None), required=True,
              decimals=1, instrument="scale", falls=0.2, help="Cask and spirit together."),
        glass(required=False, usual=(40.0, 80.0)),
        density(),
        spirit_temp(required=True, usual=(2.0, 25.0)),
        strength(),
        Field("condition", "Condition", "choice", required=True, choices=(
            ("tight", "tight"), ("weeping", "weeping"), ("leaking", "leaking"), ("dry_hoops", "dry hoops"))),
    ),
    rules=(GLASS_OR_STRENGTH, GLASS_NEEDS_TEMP, DENSITY_NEEDS_TEMP, RAW_IS_NOT_TRUE),
    figures=(
        TRUE_STRENGTH, BY_DENSITY,
        GLASS_TRUE,
        Figure("net", "net weight", "kg", "net_mass", {"gross": ("gross",), "tare": ("@tare_kg",)}),
        *weighed_volume("net", ("true_strength",), "gross"),
        weighed_lpa("net", ("true_strength",), "gross"),
        PURE_ALCOHOL,
    ),
    checks=("time_order", "clock", "late", "twice", "two_people", "strength_ceiling", "glass_scale", "cask_grew",
            "cask_earlier", "cask_strength_slip", "cask_loss", "vessel_empty", "cask_drift", "emptied_vessel",
            "neat_round", "glass_habit", "row_gap", "moved_twice"),
    effect=gauge.cask_regauge,
    summary="{gross}, {true_strength} true",
    curve=("lpa", "true_strength"),
    cautions=("lifting", "confined", "fire_zone"),
    account="storage",
    feeds=("loss rate", "strength drift"),
)
