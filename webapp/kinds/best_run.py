"""The distiller's mark on a run: this is how it should go."""

from webapp.kinds.effects import plan
from webapp.kinds.spec import Field, Kind

KIND = Kind(
    name="best_run",
    version=1,
    title="Best run",
    short="Best run",
    icon="still",
    about="The distiller names a run as the best of its fruit on its still: later runs are held against it. The last "
    "naming counts.",
    vessels=("still",),
    role="distiller",
    fields=(
        Field("run", "Run", "text", required=True, ghost=False, help="Its name, or its id in the book."),
        Field("why", "Why", "text", ghost=False, help="What made it good, in your own words."),
    ),
    checks=("clock",),
    effect=plan.best_run,
    summary="{run}",
    account="production",
    feeds=("runs",),
)
