"""The group's periods as rows for the page: as the desk shows them, with what is between sites in plain words."""

from __future__ import annotations

from webapp.book.periods.periods import Account, Shown
from webapp.book.periods.words import party_words
from webapp.desk.periods.rows import TITLES, Row, about_line, lay_out
from webapp.group.periods import ON_THE_WAY
from webapp.words.desk import Later, say

_BETWEEN = {
    ("out", ON_THE_WAY): Later("group-period-sent_to_sites_of_the"),
    ("in", ON_THE_WAY): Later("group-period-received_from_sites_of_the"),
    ("in", "sites"): Later("group-period-left_a_site"), ("out", "sites"): Later("group-period-received_at_a_site"),
    ("in", "papers"): Later("group-period-declared_above_what_was_sent"),
    ("out", "papers"): Later("group-period-declared_below_what_was_sent"),
}


def rows_of(account: Account) -> list[Row]:
    """Return the rows of an account in their order."""
    return lay_out(account, (), _line_words)


def title_of(name: str) -> str:
    """Return the title of an account."""
    return say("group-period-on_the_way_between_sites") if name == ON_THE_WAY else TITLES[name]


def _line_words(side: str, _account: str, line: Shown) -> tuple[str, str, tuple[str, ...]]:
    words = _BETWEEN.get((side, line.party)) or party_words(side, line.party)
    return words[0].upper() + words[1:], about_line(line), ()
