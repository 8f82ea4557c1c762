"""Spirit is destroyed before a witness."""

from webapp.kinds.common import (
    DENSITY_NEEDS_TEMP,
    GLASS_NEEDS_TEMP,
    GLASS_OR_STRENGTH,
    PROOF_GALLONS,
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
from webapp.kinds.effects import other
from webapp.kinds.spec import Field, Kind

KIND = Kind(
    name="destruction",
    version=1,
    title="Destruction",
    short="Destroy",
    icon="warning",
    about="What was destroyed, how much, where, how, and who watched.",
    vessels=("receiver", "tank", "cask", "can"),
    role="distiller",
    fields=(
        Field("what", "What and lot", "text", required=True),
        volume(),
        net_weight(),
        glass(required=False),
        density(),
        spirit_temp(required=False, usual=(2.0, 25.0)),
        strength(),
        Field("place", "Place", "text", required=True),
        Field("manner", "How", "text", required=True),
        Field("withdrawn", "Ever withdrawn from bond?", "yes_no", required=True),
        Field("watched_by", "Done or watched by, with title", "text", required=True),
    ),
    rules=(SOME_QUANTITY, GLASS_OR_STRENGTH, GLASS_NEEDS_TEMP, DENSITY_NEEDS_TEMP, RAW_IS_NOT_TRUE),
    figures=(*quantity_figures(by_vessel=True), PROOF_GALLONS),
    checks=("time_order", "clock", "late", "twice", "strength_ceiling", "glass_scale", "source_strength",
            "glass_habit"),
    effect=other.destruction,
    summary="{what}: {volume_20} at {true_strength}",
    cautions=("fire_zone",),
    account="any",
    taxed=True,
    feeds=("destruction record",),
)
