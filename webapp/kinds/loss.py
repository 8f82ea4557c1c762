"""A leak, a spill, a breakage, something missing."""

from webapp.kinds.common import (
    DENSITY_NEEDS_TEMP,
    GLASS_NEEDS_TEMP,
    RAW_IS_NOT_TRUE,
    density,
    glass,
    net_weight,
    quantity_figures,
    spirit_temp,
    strength,
    volume,
)
from webapp.kinds.effects import other
from webapp.kinds.spec import Field, Kind, Rule

KIND = Kind(
    name="loss",
    version=1,
    title="Leak, spill, breakage, missing",
    short="Loss",
    icon="warning",
    about="What was lost, why, who was told, what was done. Theft and missing casks are reported at once.",
    vessels=("fermenter", "still", "receiver", "tank", "cask", "can"),
    fields=(
        Field("cause", "Cause", "choice", required=True, ghost=False, choices=(
            ("leak", "leak"), ("spill", "spill"), ("broken", "broken"), ("theft", "theft suspected"),
            ("missing", "missing"), ("unknown", "unknown"))),
        Field("whole", "All of it is gone", "yes_no", ghost=False),
        volume("How much", usual=(0, 500), help="Measured or reckoned."),
        net_weight("or by weight"),
        glass(required=False),
        density(),
        spirit_temp(required=False, usual=(2.0, 25.0)),
        strength(),
        Field("reckoned", "Measured or reckoned", "choice", aside=True, choices=(
            ("measured", "measured"), ("reckoned", "reckoned"))),
        Field("found", "Found by, told whom", "text", required=True, ghost=False),
        Field("done", "Done", "choice", required=True, ghost=False, choices=(
            ("recoopered", "recoopered"), ("recasked", "recasked"), ("pumped", "pumped over"),
            ("cleaned", "cleaned up"),
            ("reported", "reported"), ("nothing", "nothing yet"))),
    ),
    rules=(
        Rule("some_loss", "any_of", "whole=yes", "volume|net_weight", "refuse",
             "Type how much was lost, by volume or weight, or say that all of it is gone."),
        GLASS_NEEDS_TEMP, DENSITY_NEEDS_TEMP, RAW_IS_NOT_TRUE,
    ),
    figures=quantity_figures(by_vessel=True),
    checks=("time_order", "clock", "late", "twice", "vessel_empty"),
    effect=other.loss,
    summary="{cause}: {volume_20}",
    cautions=("fire_zone",),
    account="any",
    taxed=True,
    feeds=("loss record",),
)
