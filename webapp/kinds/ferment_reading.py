"""A look into a fermenter: temperature, gravity, pH, cap."""

from webapp.kinds.common import GRAVITY_UNITS, REFRACTOMETER_UNITS
from webapp.kinds.effects import fruit
from webapp.kinds.spec import Field, Figure, Kind

KIND = Kind(
    name="ferment_reading",
    version=1,
    title="Ferment reading",
    short="Reading",
    icon="thermometer",
    about="Temperature, gravity of strained juice, pH and cap of one fermenter.",
    vessels=("fermenter",),
    role="cellar hand",
    fields=(
        Field("temp", "Mash temperature", units=("degC", "degF"), usual=(12, 20), possible=(0, 45), required=True,
              instrument="thermometer", decimals=1, help="Probe in the middle, not at the wall."),
        Field("gravity", "Gravity, strained juice", units=GRAVITY_UNITS, usual=(0.998, 1.08),
              possible=(0.985, 1.15), required=True, instrument="saccharometer", decimals=3, falls=0.001,
              help="By hydrometer. A refractometer reads wrong once there is alcohol."),
        Field("refractometer", "Refractometer, same juice", units=REFRACTOMETER_UNITS, usual=(3, 25), possible=(0, 40),
              decimals=1, aside=True,
              instrument="refractometer", ghost=False, help="Wrong by itself once there is alcohol; a hint beside it."),
        Field("ph", "pH", units=("pH",), usual=(2.8, 3.6), possible=(2, 7), instrument="pH meter",
              decimals=2, aside=True),
        Field("cap", "Cap", "choice", aside=True, choices=(
            ("none", "none"), ("thin", "thin"), ("thick", "thick"), ("fallen", "fallen")), ghost=True),
        Field("volatile_acid", "Volatile acid", units=("g_L",), usual=(0, 0.5), possible=(0, 20),
              decimals=2, aside=True),
        Field("room_co2", "Room CO₂ checked", units=("ppm",), usual=(0, 5000), possible=(0, 1_000_000), decimals=0,
              aside=True,
              danger=((5000, "Leave, ventilate, tell the supervisor. Do not go back for a reading."),
                      (30_000, "Everyone out now. Tell the supervisor. Do not go back for a reading.")),
              help="From the meter. At 5000 ppm leave, ventilate, tell the supervisor.",
              source="29 CFR 1910.1000 Table Z-1: 5000 ppm over 8 h; 30 000 ppm over 15 min as the short limit of "
                     "NIOSH and ACGIH (1988 project pages)"),
    ),
    figures=(
        Figure("alcohol_so_far", "alcohol so far, from gravity", "pct_vol", "alcohol_so_far",
               {"original_gravity": ("@og",), "gravity": ("gravity",), "juice_share": ("=80",)}, only_shown=True),
        Figure("alcohol_by_both", "alcohol by both instruments, a hint", "pct_vol", "alcohol_by_both",
               {"refractometer": ("refractometer",), "gravity": ("gravity",)}, only_shown=True),
    ),
    checks=("time_order", "clock", "late", "twice", "ferment_gravity_rose", "ferment_stuck", "ferment_ended",
            "ferment_heat", "ferment_temp_sense", "glass_scale", "vessel_empty", "too_neat", "neat_round",
            "ferment_jump", "row_gap"),
    effect=fruit.ferment_reading,
    summary="{gravity} at {temp}",
    curve=("gravity", "temp"),
    cautions=("co2",),
    account="production",
    feeds=("ferment curve", "predicted end"),
)
