"""The run ends."""

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
from webapp.kinds.effects import run
from webapp.kinds.spec import Field, Kind

KIND = Kind(
    name="run_end",
    version=1,
    title="End of run",
    short="End the run",
    icon="stop",
    about="The last of a run: why it ended and what it ran at.",
    vessels=("still",),
    role="still hand",
    run=True,
    fields=(
        Field("reason", "Why now", "choice", required=True, ghost=False, choices=(
            ("strength", "strength"), ("vapour", "vapour temperature"), ("time", "time"), ("nose", "nose"),
            ("trouble", "trouble"))),
        glass(required=False),
        density(),
        spirit_temp(required=False),
        Field("vapour_temp", "Vapour temperature", units=("degC", "degF"), usual=(77, 101), possible=(70, 101),
              decimals=1, instrument="thermometer"),
        Field("flow", "Flow", units=("L_h", "gal_h"), usual=(0, 40), possible=(0, None), decimals=1),
        strength(),
    ),
    rules=(GLASS_NEEDS_TEMP, DENSITY_NEEDS_TEMP, RAW_IS_NOT_TRUE),
    figures=(TRUE_STRENGTH, BY_DENSITY, GLASS_TRUE),
    checks=("time_order", "clock", "late", "twice", "strength_slope", "run_order", "glass_scale", "glass_habit",
            "flow_jump", "vapour_strength", "row_gap", "strength_row"),
    effect=run.run_end,
    summary="ended, {reason}",
    cautions=("still_heat",),
    account="production",
    feeds=("run log",),
)
