"""The group's periods as rows for the page: as the desk shows them, with what is between sites in plain words."""

from __future__ import annotations

from webapp.book.periods.periods import Account, Shown
from webapp.book.periods.words import party_words, reason_words
from webapp.desk.periods.rows import TITLES, Row
from webapp.group.periods import ON_THE_WAY

_BETWEEN = {
    ("out", ON_THE_WAY): "sent to sites of the group", ("in", ON_THE_WAY): "received from sites of the group",
    ("in", "sites"): "left a site", ("out", "sites"): "received at a site",
    ("in", "papers"): "declared above what was sent", ("out", "papers"): "declared below what was sent",
}


def rows_of(account: Account) -> list[Row]:
    """Return the rows of an account in their order."""
    return [
        Row("opening", "On hand at the start", "", account.opening, ()),
        *(_line(line) for line in account.ins),
        Row("total_in", "Total in", "", account.total_in, ()),
        *(_line(line) for line in account.outs),
        Row("total_out", "Total out", "", account.total_out, ()),
        Row("closing", "On hand at the end", "", account.closing, ()),
    ]


def title_of(name: str) -> str:
    """Return the title of an account."""
    return "On the way between sites" if name == ON_THE_WAY else TITLES[name]


def _line(line: Shown) -> Row:
    words = _BETWEEN.get((line.side, line.party)) or party_words(line.side, line.party)
    reason = "" if line.reason in line.party else reason_words(line.reason)
    about = ", ".join(filter(None, (reason, line.sort)))
    return Row(line.side, words[0].upper() + words[1:], about, line.ul, (), line)
