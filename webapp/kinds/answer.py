"""An answer to a query of the book, or the striking of an entry. An entry like any other."""

from webapp.kinds.spec import Field, Kind

KIND = Kind(
    name="answer",
    version=1,
    title="Answer",
    icon="check",
    about="It stands, or it is struck, with the reason. The entry it speaks of stays legible.",
    needs_mark=False,
    floor=False,
    fields=(
        Field("entry", "About entry", "text", required=True, ghost=False),
        Field("query", "Query", "text", ghost=False, help="Its code; empty for the entry as a whole."),
        Field("verdict", "Answer", "choice", required=True, ghost=False,
              choices=(("stands", "it stands"), ("struck", "struck"))),
        Field("reason", "Reason", "text", required=True, ghost=False),
    ),
    checks=(),
    summary="{verdict}: {reason}",
)
