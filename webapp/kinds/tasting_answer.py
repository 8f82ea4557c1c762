"""What a taster says of one set of glasses in a blind tasting."""

from webapp.kinds.effects import tasting
from webapp.kinds.spec import Field, Kind, Rule

KIND = Kind(
    name="tasting_answer",
    version=1,
    title="Answer in a blind tasting",
    short="Answer",
    icon="glass",
    about="The glass that a taster names, or all glasses in order. A guess is an answer too: there is no other choice.",
    needs_mark=False,
    fields=(
        Field("session", "Tasting", "text", required=True, ghost=False, help="Its name, as on the serving sheet."),
        Field("set_no", "Set", units=("count",), usual=(1, 8), possible=(1, 72), required=True, decimals=0, ghost=False,
              help="Which of your sets, counted from 1."),
        Field("picked", "The code you name", "text", ghost=False),
        Field("order", "or all codes in order", "text", ghost=False, help="The first one first: 418 902 637"),
        Field("sure", "How sure", "choice", ghost=False, choices=(
            ("guessing", "guessing"), ("fairly", "fairly"), ("quite", "quite"))),
        Field("gave_away", "What gave it away", "text", ghost=False),
    ),
    rules=(
        Rule("some_answer", "any_of", "picked", "order", "refuse", "Name a glass. A guess is an answer too."),
    ),
    checks=("clock", "tasting_answered"),
    effect=tasting.answer,
    summary="{session}, set {set_no}: {picked}",
    cautions=("methanol",),
    account="any",
    feeds=("blind tasting",),
)
