"""Fruit or grain over the scale and into a fermenter."""

from webapp.kinds.common import REFRACTOMETER_UNITS
from webapp.kinds.effects import fruit
from webapp.kinds.spec import Field, Figure, Kind, Rule

KIND = Kind(
    name="fruit_intake",
    version=1,
    title="Fruit intake",
    short="Fruit in",
    icon="scale",
    about="One load of fruit or grain, weighed and tipped into a fermenter.",
    vessels=("fermenter",),
    role="yard hand",
    fields=(
        Field("gross", "Gross weight", units=("kg", "lb"), usual=(5, 15000), possible=(0, None), required=True,
              instrument="scale", decimals=1, ghost=False),
        Field("tare", "Tare", units=("kg", "lb"), usual=(0, 2000), possible=(0, None), required=True,
              instrument="scale", decimals=1, help="Bins and pallet, empty."),
        Field("material", "Material", "choice", required=True, choices=(
            ("plum", "plum"), ("pear", "pear"), ("quince", "quince"), ("cherry", "cherry"),
            ("apricot", "apricot"), ("mirabelle", "mirabelle"), ("apple", "apple"), ("grape", "grape"),
            ("raspberry", "raspberry"), ("marc", "marc"), ("rye", "rye"), ("other", "other"))),
        Field("variety", "Variety", "text", aside=True),
        Field("grower_lot", "Grower and lot", "text", required=True, help="As on the weigh ticket."),
        Field("batch", "Batch", "text", aside=True, help="The ferment this load goes into, as the house names it."),
        Field("picked_on", "Picked on", "date", aside=True),
        Field("sugar", "Sugar by refractometer", units=REFRACTOMETER_UNITS, usual=(8, 22), possible=(1, 35),
              decimals=1, instrument="refractometer", help="Pressed juice. Leave empty for grain."),
        Field("ph", "pH", units=("pH",), usual=(2.9, 4.2), possible=(2, 7), decimals=2,
              instrument="pH meter", aside=True),
        Field("temp", "Temperature", units=("degC", "degF"), usual=(0, 30), possible=(-5, 50), required=True,
              instrument="thermometer", decimals=1),
        Field("rot", "Rot", units=("pct",), usual=(0, 5), possible=(0, 100), required=True, decimals=0),
    ),
    rules=(
        Rule("tare_below_gross", "lt", "tare", "gross", "stop",
             "Tare {tare} is not below gross {gross}. Look at the scale again."),
    ),
    figures=(
        Figure("net", "net fruit", "kg", "net_mass", {"gross": ("gross",), "tare": ("tare",)}, big=True),
        Figure("potential", "pure alcohol it may give", "LPA", "presumptive_lpa",
               {"net": ("net",), "sugar": ("sugar",), "juice_share": ("=85",)}, only_shown=True),
    ),
    checks=("time_order", "clock", "late", "twice", "over_capacity", "moved_twice", "fruit_mixed", "load_off",
            "row_gap"),
    effect=fruit.fruit_intake,
    summary="{net} {material}",
    cautions=("co2", "lifting"),
    account="production",
    feeds=("material record", "yield", "trace"),
)
