"""Somebody has read or heard a note: from then on it hangs nowhere any more. The note itself stays in the book."""

from webapp.kinds.spec import Field, Kind

KIND = Kind(
    name="note_heard",
    version=1,
    title="Note heard",
    icon="check",
    about="Who has read or heard which note; before that it stays on its vessel.",
    needs_mark=False,
    floor=False,
    fields=(Field("note", "The note", "text", required=True, ghost=False),),
    summary="heard",
)
