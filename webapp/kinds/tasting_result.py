"""A blind tasting is opened: from here on the codes are known, and no further answer counts."""

from webapp.kinds.effects import tasting
from webapp.kinds.spec import Field, Kind

KIND = Kind(
    name="tasting_result",
    version=1,
    title="Blind tasting opened",
    short="Open",
    icon="glass",
    about="The key of a blind tasting, and what follows from it. A cut plan or a vat plan may name the tasting.",
    needs_mark=False,
    role="distiller",
    fields=(
        Field("session", "Tasting", "text", required=True, ghost=False),
        Field("key", "Key", "text", required=True, ghost=False,
              help="For each set of glasses the letters of the samples, then the word that the seal was made with."),
        Field("decision", "What follows", "text", ghost=False),
    ),
    checks=("clock", "tasting_opened"),
    effect=tasting.opened,
    summary="{session} opened: {decision}",
    account="any",
    feeds=("cut plan", "vat plan"),
    floor=False,
)
