"""The moment the stream moves to another receiver, or another event of the run."""

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

# Changes of the still within a run: by how many plates each changes those in work.
CHANGES = {"heat_changed": 0, "water_changed": 0, "plate_in": 1, "plate_out": -1}

KIND = Kind(
    name="cut",
    version=2,
    title="Cut or run event",
    short="Cut",
    icon="cut",
    about="A cut with the receiver now open, heat on, first drop, a change of heat, water or plates. Timed by the tap.",
    vessels=("still",),
    role="still hand",
    run=True,
    fields=(
        Field("event", "Event", "choice", required=True, ghost=False, choices=(
            ("heat_on", "heat on"), ("first_drop", "first drop"), ("heads_cut", "heads cut, hearts begin"),
            ("hearts_cut", "hearts cut, tails begin"), ("heat_changed", "heat changed"),
            ("water_changed", "water changed"), ("plate_in", "plate in"), ("plate_out", "plate out"),
            ("still_opened", "still opened"), ("other", "other"))),
        Field("receiver", "Receiver now open", "mark", vessels=("receiver", "tank", "can")),
        Field("reason", "Why now", "choice", ghost=False, choices=(
            ("nose", "nose"), ("taste", "taste"), ("strength", "strength"), ("vapour", "vapour temperature"),
            ("time", "time"))),
        glass(required=False),
        density(),
        spirit_temp(required=False),
        Field("vapour_temp", "Vapour temperature", units=("degC", "degF"), usual=(77, 99), possible=(70, 101),
              decimals=1, instrument="thermometer"),
        Field("flow", "Flow", units=("L_h", "gal_h"), usual=(1, 40), possible=(0, None), decimals=1),
        Field("nose", "Nose and taste", "text", ghost=False, help="Your own words."),
        strength(),
    ),
    rules=(
        Rule("cut_needs_receiver", "needs", "event=heads_cut|hearts_cut", "receiver", "refuse",
             "A cut needs the receiver that is open now. Scan or pick it."),
        GLASS_NEEDS_TEMP, DENSITY_NEEDS_TEMP,
        RAW_IS_NOT_TRUE,
    ),
    figures=(TRUE_STRENGTH, BY_DENSITY, GLASS_TRUE),
    checks=("time_order", "clock", "late", "twice", "strength_slope", "strength_fell", "strength_ceiling",
            "run_order", "glass_scale", "distillate_warm", "vapour_strength", "glass_habit", "flow_jump", "row_gap",
            "strength_row", "receiver_planned", "cut_planned"),
    effect=run.cut,
    summary="{event}, {true_strength}",
    cautions=("fire_zone", "methanol"),
    account="production",
    feeds=("run log", "cuts"),
)
