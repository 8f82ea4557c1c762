"""A cask is topped up, or its spirit put into another cask."""

from webapp.kinds.common import (
    DENSITY_NEEDS_TEMP,
    GLASS_NEEDS_TEMP,
    RAW_IS_NOT_TRUE,
    SOME_QUANTITY,
    density,
    glass,
    net_weight,
    quantity_figures,
    spirit_temp,
    strength,
    volume,
)
from webapp.kinds.effects import cask
from webapp.kinds.spec import Field, Kind

KIND = Kind(
    name="top_up",
    version=1,
    title="Top up or recask",
    short="Top up",
    icon="cask",
    about="Spirit from one vessel into this cask. The mix is as old as its youngest part.",
    vessels=("cask",),
    role="warehouse hand",
    fields=(
        Field("work", "What was done", "choice", required=True, choices=(
            ("top_up", "topped up"), ("recask", "recasked"))),
        Field("from_vessel", "From vessel", "mark", required=True, vessels=("cask", "tank", "can", "receiver")),
        volume("Amount by volume", usual=(0.5, 700)),
        net_weight("or by net weight"),
        glass(required=False),
        density(),
        spirit_temp(required=False, usual=(2.0, 25.0)),
        strength(),
    ),
    rules=(SOME_QUANTITY, GLASS_NEEDS_TEMP, DENSITY_NEEDS_TEMP, RAW_IS_NOT_TRUE),
    figures=quantity_figures(),
    checks=("time_order", "clock", "late", "twice", "strength_ceiling", "glass_scale", "target_capacity",
            "source_strength", "moved_twice", "glass_habit", "recask_rest"),
    effect=cask.top_up,
    summary="{work} from {from_vessel}",
    cautions=("fire_zone", "lifting"),
    account="storage",
    feeds=("age", "package records"),
)
