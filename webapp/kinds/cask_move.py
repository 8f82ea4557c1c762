"""A cask goes to another place."""

from webapp.kinds.effects import cask
from webapp.kinds.spec import Field, Kind

KIND = Kind(
    name="cask_move",
    version=1,
    title="Cask move",
    short="Move cask",
    icon="next",
    about="From one place to another, full or empty. Its stock stays what it was.",
    vessels=("cask",),
    role="warehouse hand",
    fields=(
        Field("from_place", "From place", "text", required=True,
              help="Where it stood. Scan the place's label if it has one."),
        Field("to_place", "To place", "text", required=True, ghost=False, help="Bay, tier, position."),
    ),
    checks=("time_order", "clock", "late", "twice", "place_from"),
    effect=cask.cask_move,
    summary="{from_place} to {to_place}",
    cautions=("lifting",),
    account="storage",
    feeds=("stock map",),
)
