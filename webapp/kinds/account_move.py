"""The gauge of a move: from vessel to vessel, or from account to account."""

from webapp.kinds.common import (
    DENSITY_NEEDS_TEMP,
    GLASS_NEEDS_TEMP,
    GLASS_OR_STRENGTH,
    PROOF_GALLONS,
    RAW_IS_NOT_TRUE,
    SOME_QUANTITY,
    VOLUME_NEEDS_TEMP,
    density,
    glass,
    net_weight,
    quantity_figures,
    spirit_temp,
    strength,
    volume,
)
from webapp.kinds.effects import blend
from webapp.kinds.spec import Field, Kind

ACCOUNTS = (("production", "production"), ("storage", "storage"), ("processing", "processing"))

KIND = Kind(
    name="account_move",
    version=1,
    title="Production gauge or move",
    short="Gauge and move",
    icon="next",
    about="A gauged quantity goes to another vessel, another account, or off the premises.",
    vessels=("receiver", "tank", "can", "cask"),
    role="gauger",
    fields=(
        Field("serial", "Serial number", "text", required=True, ghost=False,
              help="From 1 each year, or never used twice.", source="27 CFR 19.618"),
        Field("from_account", "From account", "choice", required=True, choices=ACCOUNTS),
        Field("to_account", "To account", "choice", required=True, ghost=False, choices=(
            *ACCOUNTS, ("removed", "leaves the premises"))),
        Field("to_vessel", "To vessel", "mark", vessels=("tank", "cask", "can", "receiver"), ghost=False,
              help="Leave empty if it stays where it is."),
        Field("purpose", "Why", "choice", required=True, choices=(
            ("deposit", "production gauge, deposit"), ("move", "move"), ("redistil", "to be distilled again"),
            ("tax_paid", "tax paid"), ("export", "export"), ("in_bond", "in bond to another plant"),
            ("research", "research"), ("other", "other"))),
        Field("spirit", "Kind of spirit", "text", required=True),
        Field("lot", "Lot", "text"),
        Field("distilling_strength", "Distilled at", units=("pct_vol", "proof"), usual=(50, 95), possible=(0, 97.2),
              required=True, decimals=1, help="Strength at which it came off the still."),
        volume(),
        net_weight(),
        glass(required=False),
        density(),
        spirit_temp(required=False, usual=(5.0, 25.0)),
        strength(),
        Field("age", "Age so far", "text", help="Years-months-days."),
        Field("to_whom", "To whom", "text", ghost=False, help="Name and address, if it leaves."),
    ),
    rules=(SOME_QUANTITY, VOLUME_NEEDS_TEMP, GLASS_OR_STRENGTH, GLASS_NEEDS_TEMP, DENSITY_NEEDS_TEMP, RAW_IS_NOT_TRUE),
    figures=(*quantity_figures(), PROOF_GALLONS),
    checks=("time_order", "clock", "late", "twice", "strength_ceiling", "held_strength", "glass_scale",
            "move_balance", "account_changes", "target_capacity", "dip_sum", "emptied_vessel", "source_strength",
            "moved_twice", "glass_habit", "distilled_off", "account_habit", "parts_left", "named_twice"),
    effect=blend.account_move,
    summary="{serial}: {volume_20} at {true_strength}, {from_account} to {to_account}",
    cautions=("fire_zone",),
    account="any",
    taxed=True,
    feeds=("gauge record", "reports"),
)
