"""What went into and out of the tax accounts within a time: sums of flows, by where to or from and by reason.

Every flow between two accounts is an `out` line of one and an `in` line of the other; gains and losses stay two lines.
Amounts are whole microlitres of pure alcohol at 20 degC, so every sum is exact.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping
from typing import NamedTuple

from webapp.book.fold.month_sums import Reading

ACCOUNTS = ("production", "storage", "processing", "finished")
WAREHOUSE = "warehouse"


class Line(NamedTuple):
    """What makes one line of an account. side: in or out; party: another account or `out:<name>`; sort: by strength."""

    account: str
    side: str
    party: str
    reason: str
    sort: str = ""


Lines = Mapping[Line, int]  # microlitres of pure alcohol


def lines_between(sums: Reading, start: str, until: str) -> Counter[Line]:
    """Return the lines of all accounts from start up to until, both UTC texts without Z (months.month_start). [uL]"""
    lines: Counter[Line] = Counter()
    for (a, b, reason, sort), ul in sums.between(start, until).items():
        if b in ACCOUNTS:
            lines[Line(b, "in", a, reason)] += ul
        if a in ACCOUNTS:
            lines[Line(a, "out", b, reason, sort)] += ul
    return lines


def as_warehouse(lines: Lines) -> Counter[Line]:
    """Return the lines of the whole premises as one account: what moves inside it is no line of it."""
    merged: Counter[Line] = Counter()
    for line, ul in lines.items():
        if line.party not in ACCOUNTS:
            merged[line._replace(account=WAREHOUSE, sort="")] += ul
    return merged
