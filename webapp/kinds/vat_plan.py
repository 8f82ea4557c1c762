"""A vat is planned at the desk: which casks and tanks, how much of each, how much water. It moves no stock."""

from webapp.kinds.effects import blend
from webapp.kinds.spec import Field, Kind

KIND = Kind(
    name="vat_plan",
    version=2,
    title="Vat plan",
    short="Vat plan",
    icon="tank",
    about="What is to go into a tank and what it should come to; kept with who planned it and when.",
    vessels=("tank",),
    role="blender",
    fields=(
        Field("name", "Name of the vat", "text", required=True),
        Field("draws", "Draws", "text", required=True, ghost=False,
              help="Mark and kilograms, one after the other: C001-Z 153.7; C009-K 176.2"),
        Field("water", "Water by weight", units=("kg", "lb"), usual=(0, 20000), possible=(0, None), decimals=1,
              ghost=False),
        Field("target", "Strength it should come to", units=("pct_vol", "proof"), usual=(37.5, 75), possible=(1, 97.2),
              required=True, decimals=1, ghost=False),
        Field("volume", "Volume it should come to", units=("L", "gal"), usual=(0, 20000), possible=(0, None),
              decimals=1, ghost=False, help="At 20 °C."),
        Field("wishes", "What was asked for", "text", ghost=False),
        Field("tasting", "Blind tasting it rests on", "text", ghost=False, help="Its name: T-26-03"),
    ),
    checks=("clock", "vat_draws", "tasting_cited", "vat_sum"),
    effect=blend.vat_plan,
    summary="{name}: {volume} at {target}, {water} water",
    account="processing",
    feeds=("vat plan",),
    floor=False,
)
