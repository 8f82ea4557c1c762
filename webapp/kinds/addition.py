"""Something put into a mash or a tank: enzyme, acid, yeast, food, water, sugar."""

from webapp.kinds.effects import fruit
from webapp.kinds.spec import Field, Kind, Rule

KIND = Kind(
    name="addition",
    version=1,
    title="Addition",
    icon="plus",
    about="Enzyme, acid, yeast, yeast food or anything else put in, with its lot. Sugar is asked about each time.",
    vessels=("fermenter", "tank"),
    role="cellar hand",
    fields=(
        Field("what", "What", "choice", required=True, ghost=False, choices=(
            ("enzyme", "enzyme"), ("acid", "acid"), ("yeast", "yeast"), ("yeast_food", "yeast food"),
            ("sulphite", "sulphite"), ("antifoam", "antifoam"), ("water", "water"), ("malt", "malt"),
            ("sugar", "sugar"), ("wood", "wood chips"), ("caramel", "caramel"), ("other", "other"))),
        Field("lot_no", "Product and lot number", "text", required=True, help="As on the packet."),
        Field("amount", "Amount by weight", units=("kg", "g", "lb", "oz"), possible=(0, None), ghost=False,
              instrument="scale", typed_in="g"),
        Field("amount_volume", "or by volume", units=("L", "mL", "gal", "fl_oz"), possible=(0, None), ghost=False,
              typed_in="mL"),
        Field("is_sugar", "Is it sugar?", "yes_no", required=True, ghost=False,
              help="Fruit spirit comes from the fruit's own sugar. Yes stays with the batch."),
    ),
    rules=(
        Rule("some_amount", "any_of", "amount", "amount_volume", "refuse", "Type how much, by weight or by volume."),
    ),
    checks=("time_order", "clock", "late", "twice", "vessel_empty", "dose_off", "added_again"),
    effect=fruit.addition,
    summary="{what}, {lot_no}",
    cautions=("co2",),
    account="production",
    feeds=("batch record", "food safety", "trace"),
)
