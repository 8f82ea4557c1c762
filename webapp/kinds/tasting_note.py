"""What nose and mouth say."""

from webapp.kinds.effects import other
from webapp.kinds.spec import Field, Kind


def _score(name: str, label: str) -> Field:
    return Field(name, label, units=("count",), usual=(0, 10), possible=(0, 10), required=True, decimals=0,
                 help="0 to 10.")


KIND = Kind(
    name="tasting_note",
    version=1,
    title="Tasting note",
    short="Taste",
    icon="glass",
    about="Nose, mouth, wood and fault of a cask or lot, and what is decided.",
    vessels=("cask", "tank", "receiver", "can"),
    role="distiller",
    fields=(
        _score("nose_score", "Nose"),
        _score("mouth_score", "Mouth"),
        _score("wood_score", "Wood"),
        _score("fault_score", "Fault"),
        Field("words", "In words", "text", ghost=False),
        Field("house_scores", "House scores", "text", ghost=False, help="The house's own, 0 to 10: fruit 7; depth 5."),
        Field("reduced_to", "Reduced to", units=("pct_vol", "proof"), usual=(20, 25), possible=(5, 70), required=True,
              decimals=1),
        Field("decision", "Decision", "choice", required=True, ghost=False, choices=(
            ("hold", "hold"), ("move", "move"), ("vat", "vat"), ("treat", "treat"), ("reject", "reject"))),
    ),
    checks=("time_order", "clock", "late", "twice", "vessel_empty"),
    effect=other.remembered,
    summary="{decision}: nose {nose_score}, mouth {mouth_score}",
    cautions=("methanol",),
    feeds=("blend choice",),
)
