"""How the distiller means to cut a fruit: a plan in figures, with its reason."""

from webapp.kinds.effects import plan
from webapp.kinds.spec import Field, Kind, Rule

KIND = Kind(
    name="cut_plan",
    version=2,
    title="Cut plan",
    short="Cut plan",
    icon="cut",
    about="The distiller's plan for a fruit: heads by volume, hearts and tails to a strength. Logged on a still it "
    "holds for that still, without a vessel for all. The last one counts; the nose decides.",
    vessels=("still",),
    needs_mark=False,
    role="distiller",
    fields=(
        Field("what", "Fruit", "text", required=True, ghost=False, help="As the run names it: small blue plum."),
        Field("heads", "Heads by volume", units=("L", "gal"), usual=(0.1, 50), possible=(0, None), decimals=1,
              ghost=False),
        Field("hearts_to", "Hearts down to", units=("pct_vol", "proof"), usual=(40, 75), possible=(0, 97.2),
              decimals=1, ghost=False),
        Field("tails_to", "Tails down to", units=("pct_vol", "proof"), usual=(2, 40), possible=(0, 97.2), decimals=1,
              ghost=False),
        Field("why", "Why", "text", ghost=False),
        Field("tasting", "Blind tasting it rests on", "text", ghost=False, aside=True, help="Its name: T-26-03"),
    ),
    rules=(
        Rule("some_plan", "any_of", "heads|tails_to", "hearts_to", "refuse",
             "Type at least one figure of the plan: heads, hearts or tails."),
        Rule("tails_below_hearts", "lt", "tails_to", "hearts_to", "ask",
             "Tails down to {tails_to} are not below the hearts' {hearts_to}. Look again."),
    ),
    checks=("clock", "tasting_cited"),
    effect=plan.cut_plan,
    summary="{what}: hearts to {hearts_to}",
    account="production",
    feeds=("cut plan",),
)
