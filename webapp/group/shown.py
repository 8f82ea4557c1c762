"""The group's periods as rows for the page: as the desk shows them, with what is between sites in plain words."""

from __future__ import annotations

from typing import NamedTuple

from webapp.book.period_words import party_words, reason_words
from webapp.book.periods import Account, Shown, litres, proof_gallons
from webapp.desk.period_rows import TITLES
from webapp.group.periods import ON_THE_WAY

_BETWEEN = {
    ("out", ON_THE_WAY): "sent to sites of the group", ("in", ON_THE_WAY): "received from sites of the group",
    ("in", "sites"): "left a site", ("out", "sites"): "received at a site",
    ("in", "papers"): "declared above what was sent", ("out", "papers"): "declared below what was sent",
}  # fmt: skip


class Row(NamedTuple):
    """One row of an account, with the names that the desk's table asks for."""

    row: str
    words: str
    about: str
    litres: str
    proof_gallons: str
    rules: tuple[str, ...] = ()
    line: None = None


def rows_of(account: Account) -> list[Row]:
    """Return the rows of an account in their order."""
    return [
        _row("opening", "On hand at the start", "", account.opening),
        *(_line(line) for line in account.ins),
        _row("total_in", "Total in", "", account.total_in),
        *(_line(line) for line in account.outs),
        _row("total_out", "Total out", "", account.total_out),
        _row("closing", "On hand at the end", "", account.closing),
    ]


def title_of(name: str) -> str:
    """Return what an account is called."""
    return "On the way between sites" if name == ON_THE_WAY else TITLES[name]


def _line(line: Shown) -> Row:
    words = _BETWEEN.get((line.side, line.party)) or party_words(line.side, line.party)
    reason = "" if line.reason in line.party else reason_words(line.reason)
    return _row(line.side, words[0].upper() + words[1:], ", ".join(filter(None, (reason, line.sort))), line.ul)


def _row(row: str, words: str, about: str, ul: int) -> Row:
    return Row(row, words, about, str(litres(ul)), str(proof_gallons(ul)))
