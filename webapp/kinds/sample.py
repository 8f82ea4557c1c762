"""A sample is drawn."""

from webapp.kinds.effects import other
from webapp.kinds.spec import Field, Figure, Kind, Rule

KIND = Kind(
    name="sample",
    version=1,
    title="Sample",
    icon="glass",
    about="How much was drawn, what for, and what became of it.",
    vessels=("fermenter", "receiver", "tank", "cask", "can"),
    role="gauger",
    fields=(
        Field("size", "Size", units=("L", "mL", "fl_oz"), usual=(0.02, 0.2), possible=(0, 1), required=True,
              decimals=None, typed_in="mL"),
        Field("number", "How many", units=("count",), usual=(1, 12), possible=(1, 1000), required=True, decimals=0),
        Field("purpose", "What for", "choice", required=True, choices=(
            ("analysis", "analysis"), ("tasting", "tasting"), ("gauge", "gauge"), ("library", "library"),
            ("customer", "customer"), ("other", "other"))),
        Field("went", "Where it went", "choice", required=True, choices=(
            ("destroyed", "destroyed"), ("returned", "poured back"), ("library", "library"),
            ("outside_lab", "outside laboratory"))),
        Field("lab", "Laboratory", "text", help="Name and address."),
        Field("account", "Account", "choice", aside=True, choices=(
            ("production", "production"), ("storage", "storage"), ("processing", "processing")),
            help="Leave empty: the book knows it by the vessel."),
    ),
    rules=(
        Rule("lab_is_named", "needs", "went=outside_lab", "lab", "refuse", "Type the laboratory's name and address."),
    ),
    figures=(
        Figure("taken", "taken", "L", "volume_of_count", {"size": ("size",), "number": ("number",)}, decimals=2),
        Figure("lpa", "pure alcohol", "LPA", "lpa_volume",
               {"volume": ("taken",), "strength": ("@strength_pct",), "temp": ("=20",)}, decimals=3, only_shown=True),
    ),
    checks=("time_order", "clock", "late", "twice", "vessel_empty", "emptied_vessel"),
    effect=other.sample,
    summary="{number} × {size}, {purpose}",
    cautions=("fire_zone",),
    account="any",
    feeds=("sample record", "stock"),
)
