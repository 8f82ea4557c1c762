"""A picture or a paper that is added to an entry which is in the book already: an entry of its own, that names it."""

from webapp.kinds.spec import Field, Kind

KIND = Kind(
    name="enclosure",
    version=1,
    title="Picture or paper added",
    short="Picture",
    icon="file",
    about="Names the entry that it belongs to; its `enclosed` names the files, by their SHA-256.",
    needs_mark=False,
    floor=False,
    fields=(
        Field("entry", "About entry", "text", required=True, ghost=False),
        Field("what", "What it shows", "text", ghost=False),
    ),
    summary="{what}",
)
