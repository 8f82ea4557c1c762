"""Spirit into a cask, by weight."""

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
from webapp.kinds.effects import cask
from webapp.kinds.spec import Field, Figure, Kind, Rule

KIND = Kind(
    name="cask_fill",
    version=1,
    title="Cask fill",
    short="Fill cask",
    icon="cask",
    about="An empty cask is weighed, filled from a tank and weighed again. A new fill begins.",
    vessels=("cask",),
    role="warehouse hand",
    fields=(
        Field("from_vessel", "From vessel", "mark", required=True, vessels=("tank", "receiver", "can", "cask")),
        Field("lot", "Lot", "text", required=True),
        Field("what", "Kind of spirit", "text", aside=True),
        Field("tare", "Empty weight", units=("kg", "lb"), usual=(5, 120), possible=(0, None), required=True,
              decimals=1, instrument="scale", help="On the scale today, not from the cooper's list."),
        Field("gross", "Gross weight", units=("kg", "lb"), usual=(20, 900), possible=(0, None), required=True,
              decimals=1, instrument="scale", ghost=False),
        glass(required=False, usual=(52.0, 68.0)),
        density(),
        spirit_temp(required=True, usual=(5.0, 25.0)),
        strength(),
        Field("use", "Wood", "choice", required=True, choices=(
            ("new", "new"), ("used_once", "used once"), ("used", "used more than once"))),
        Field("cooperage", "Cooperage", "choice", aside=True, choices=(
            ("C", "charred"), ("REC", "recharred"), ("P", "plain"), ("PAR", "paraffined"), ("G", "glued"),
            ("R", "reused"), ("PS", "steel")), source="27 CFR 19.618"),
        Field("soaked", "Soaked or steamed first", "yes_no", required=True),
        Field("place", "Place", "text", required=True, help="Bay, tier, position."),
        Field("tight", "Tight after an hour", "yes_no", aside=True),
    ),
    rules=(
        Rule("tare_below_gross", "lt", "tare", "gross", "stop",
             "Empty weight {tare} is not below gross {gross}. Look at the scale again."),
        GLASS_OR_STRENGTH, GLASS_NEEDS_TEMP, DENSITY_NEEDS_TEMP, RAW_IS_NOT_TRUE,
    ),
    figures=(
        TRUE_STRENGTH, BY_DENSITY,
        GLASS_TRUE,
        Figure("net", "net weight", "kg", "net_mass", {"gross": ("gross",), "tare": ("tare",)}),
        *weighed_volume("net", ("true_strength",), "gross"),
        weighed_lpa("net", ("true_strength",), "gross"),
        PURE_ALCOHOL,
    ),
    checks=("time_order", "clock", "late", "twice", "over_capacity", "strength_ceiling", "glass_scale",
            "vessel_not_empty", "tare_off", "barrelled_high", "source_strength", "fill_level", "glass_habit",
            "water_unread"),
    effect=cask.cask_fill,
    summary="{net} at {true_strength}, {lot}",
    cautions=("fire_zone", "lifting"),
    account="storage",
    feeds=("package record", "marks", "trace"),
)
