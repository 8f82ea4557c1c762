"""Wash, and perhaps feints, into the still: a run begins."""

from webapp.kinds.effects import run
from webapp.kinds.spec import Field, Figure, Kind, Rule

KIND = Kind(
    name="charge",
    version=1,
    title="Charge",
    short="Charge and start a run",
    icon="still",
    about="What goes into the still. It begins a run.",
    vessels=("still",),
    role="still hand",
    fields=(
        Field("run_name", "Run", "text", ghost=False, help="As the house names it. Left empty, the day names it."),
        Field("from_vessel", "From vessel", "mark", required=True, vessels=("fermenter", "receiver", "tank", "can")),
        Field("wash", "Wash volume", units=("L", "gal"), usual=(10, 20000), possible=(0, None), required=True,
              decimals=1, instrument="dip"),
        Field("wash_strength", "Wash strength", units=("pct_vol", "proof"), usual=(3, 45), possible=(0, 60),
              required=True, decimals=1,
              help="Lab distillation, or by attenuation. A glass does not work in wash."),
        Field("feints", "Feints or low wines in", units=("L", "gal"), usual=(0, 5000), possible=(0, None), decimals=1),
        Field("feints_strength", "Feints strength", units=("pct_vol", "proof"), usual=(15, 45), possible=(0, 97.2),
              decimals=1),
        Field("feints_temp", "Feints temperature", units=("degC", "degF"), usual=(5, 30), possible=(-20, 40),
              decimals=1),
        Field("feints_from", "Feints from", "mark", vessels=("receiver", "can", "tank")),
        Field("heads_to", "Heads go to", "mark", vessels=("receiver", "can")),
        Field("hearts_to", "Hearts go to", "mark", vessels=("receiver", "tank", "can")),
        Field("tails_to", "Tails go to", "mark", vessels=("receiver", "can")),
    ),
    rules=(
        Rule("feints_need_strength", "needs", "feints", "feints_strength", "refuse",
             "Feints went in: type their strength too."),
    ),
    figures=(
        Figure("wash_lpa", "pure alcohol in the wash", "LPA", "lpa_volume",
               {"volume": ("wash",), "strength": ("wash_strength",), "temp": ("=20",)}, decimals=2),
        Figure("feints_lpa", "pure alcohol in the feints", "LPA", "lpa_volume",
               {"volume": ("feints",), "strength": ("feints_strength",), "temp": ("feints_temp", "=20")}, decimals=2),
        Figure("charge_lpa", "pure alcohol charged", "LPA", "total", {"a": ("wash_lpa",), "b": ("feints_lpa", "=0")},
               decimals=2, big=True),
    ),
    checks=("time_order", "clock", "late", "twice", "over_capacity", "run_still_open", "wash_strength",
            "source_empty", "fraction_twice", "source_strength", "run_ungauged", "named_twice", "receiver_held",
            "charge_size", "feints_part", "receivers_named", "wash_open"),
    effect=run.charge,
    summary="{wash} at {wash_strength}",
    cautions=("still_heat", "fire_zone"),
    account="production",
    feeds=("run balance",),
)
