"""A word to the next shift."""

from webapp.kinds.effects import other
from webapp.kinds.spec import Field, Kind

KIND = Kind(
    name="shift_note",
    version=1,
    title="Note to the next shift",
    short="Note",
    icon="pen",
    about="A few words for whoever comes next, about a vessel or about nothing in particular.",
    vessels=("fermenter", "still", "receiver", "tank", "cask", "can"),
    needs_mark=False,
    fields=(Field("text", "Note", "text", required=True, ghost=False),),
    checks=("clock",),
    effect=other.remembered,
    summary="{text}",
    feeds=("handover",),
)
