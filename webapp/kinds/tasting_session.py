"""A blind tasting is set out at the desk: what is asked, of which samples, in which glasses. The codes are sealed."""

from webapp.kinds.effects import tasting
from webapp.kinds.spec import Field, Kind

METHODS = (
    ("triangle", "triangle"), ("duo_trio", "duo-trio"), ("pair", "pair, one-sided"),
    ("pair_two_sided", "pair, two-sided"), ("ranking", "ranking"),
)

KIND = Kind(
    name="tasting_session",
    version=1,
    title="Blind tasting",
    short="Blind",
    icon="glass",
    about="What is asked of which samples, by which method, and the codes on each taster's glasses. Which code holds "
    "which sample is sealed until the opening. Heads are never tasted.",
    needs_mark=False,
    role="distiller",
    fields=(
        Field("name", "Name of the tasting", "text", required=True, ghost=False),
        Field("question", "Question", "text", required=True, ghost=False),
        Field("method", "Method", "choice", required=True, ghost=False, choices=METHODS),
        Field("alpha", "Risk of a difference that is none", "choice", required=True, ghost=False,
              choices=(("5", "5 %"), ("1", "1 %"))),
        Field("samples", "Samples", "text", required=True, ghost=False,
              help="A letter and a mark, or run or batch and its name: A C001-Z; B run PL-31, 64 to 60 % vol"),
        Field("reduced_to", "Served at", units=("pct_vol", "proof"), usual=(20, 30), possible=(5, 45), required=True,
              decimals=1, ghost=False, help="All glasses alike, with the same water."),
        Field("poured_by", "Poured by", "text", ghost=False, help="Who pours does not taste."),
        Field("glasses", "Glasses", "text", required=True, ghost=False,
              help="A taster and the codes from left to right: NS 418 902 637; JK 271 550 803"),
        Field("seal", "Seal of the key", "text", required=True, ghost=False),
    ),
    checks=("clock", "tasting_set_out"),
    effect=tasting.session,
    summary="{name}: {question}",
    cautions=("methanol",),
    account="any",
    feeds=("cut plan", "vat plan"),
    floor=False,
)
