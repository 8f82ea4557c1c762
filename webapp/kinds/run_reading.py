"""A reading at the spirit safe while the run goes."""

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
from webapp.kinds.spec import Field, Kind, Rule

KIND = Kind(
    name="run_reading",
    version=2,
    title="Run reading",
    short="Reading",
    icon="glass",
    about="Glass and spirit temperature at the safe, with vapour temperature, flow, and a dip of the open receiver.",
    vessels=("still",),
    role="still hand",
    run=True,
    fields=(
        glass(required=False),
        density(),
        spirit_temp(required=False),
        Field("vapour_temp", "Vapour temperature", units=("degC", "degF"), usual=(77, 99), possible=(70, 101),
              decimals=1, instrument="thermometer"),
        Field("flow", "Flow", units=("L_h", "gal_h"), usual=(1, 40), possible=(0, None), decimals=1,
              help="Jug and watch."),
        Field("dip", "Dip of the open receiver", units=("L", "gal"), usual=(0, 5000), possible=(0, None), decimals=1,
              ghost=False, instrument="dip", help="What stands in it now, with what stood there before."),
        Field("plates", "Plates in", units=("count",), usual=(0, 8), possible=(0, 40), decimals=0),
        Field("cooling_temp", "Dephlegmator water", units=("degC", "degF"), usual=(20, 80), possible=(0, 99),
              decimals=1, instrument="thermometer"),
        strength(),
    ),
    rules=(
        Rule("some_reading", "any_of", "dip|strength|density", "glass", "refuse",
             "Type the glass reading and its temperature, a strength that is already corrected, or a dip."),
        GLASS_NEEDS_TEMP, DENSITY_NEEDS_TEMP,
        RAW_IS_NOT_TRUE,
    ),
    figures=(TRUE_STRENGTH, BY_DENSITY, GLASS_TRUE),
    checks=("time_order", "clock", "late", "twice", "strength_slope", "strength_fell", "strength_ceiling",
            "run_order", "glass_scale", "distillate_warm", "vapour_strength", "too_neat", "dip_flow", "glass_habit",
            "flow_jump", "row_gap", "plates_moved", "strength_row", "moved_twice"),
    effect=run.run_reading,
    summary="{true_strength} true",
    curve=("true_strength",),
    cautions=("fire_zone", "methanol"),
    account="production",
    feeds=("run log", "strength check"),
)
