"""Periods over all sites: each site's own account, and their sum, in which transfers between sites cancel.

The sum is of what is now known. What one site sent to another leaves the first and enters an account of its own, on
the way, until the other has received it; a difference between the two papers is shown there, never netted.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime

from webapp.book.fold.registry_rows import load_site
from webapp.book.periods import periods
from webapp.book.periods.lines import ACCOUNTS, WAREHOUSE
from webapp.book.periods.periods import Account, Period, Shown
from webapp.book.record import months
from webapp.book.record.errors import BookError
from webapp.group.links import Flow, Link, Links
from webapp.group.sites import SiteRow
from webapp.group.work import Work

ON_THE_WAY = "on the way"
Key = tuple[str, str, str, str, str]  # account, side, party, reason, sort


@dataclass(frozen=True, slots=True)
class Total:
    """A period of the group: the sum as now known, what is on the way, and each site's own."""

    name: str
    accounts: tuple[Account, ...]
    sites: tuple[tuple[SiteRow, Period | None], ...]
    transfers: tuple[Link, ...]  # of which a part was sent or received in it

    @property
    def closed(self) -> int:
        """How many sites have closed it."""
        return sum(1 for _, one in self.sites if one and one.is_closed)


def totals(works: list[tuple[SiteRow, Work]], links: Links, now: datetime) -> list[Total]:
    """Return every quarter and month that any site has, newest first, a quarter before its months."""
    names = {one.name for _, work in works for one in periods.periods(work.book, now, WAREHOUSE)}
    ordered = sorted(names, key=lambda name: (months.months_of(name)[-1], len(months.months_of(name))), reverse=True)
    return [total(works, links, name, now) for name in ordered]


def total(works: list[tuple[SiteRow, Work]], links: Links, name: str, now: datetime) -> Total:
    """Return one period of the group. Four accounts where every site keeps them so, else one. BookError if empty."""
    how = "us" if works and all(periods.accounts_of(load_site(work.book)) == "us" for _, work in works) else WAREHOUSE
    found = tuple((row, _period(work, name, now, how)) for row, work in works)
    if not any(one for _, one in found):
        raise BookError(f"The group has nothing in {name[:12]}. Pick a period from the list.")
    zones = {row["site"]: str(load_site(work.book).get("time_zone") or "UTC") for row, work in works}
    wanted = months.months_of(name)
    transfers = tuple(
        link for link in links.links if any(_month(flow, zones) in wanted for flow in (*link.sent, *link.received))
    )
    return Total(name, _sum([one for _, one in found if one], links, wanted, zones, how), found, transfers)


def _period(work: Work, name: str, now: datetime, how: str) -> Period | None:
    try:
        return periods.period(work.book, name, now, how)
    except BookError:
        return None


def _sum(
    found: list[Period], links: Links, wanted: list[str], zones: Mapping[str, str], how: str
) -> tuple[Account, ...]:
    lines: Counter[Key] = Counter()
    opening: Counter[str] = Counter()
    for one in found:
        for account in one.known:
            opening[account.name] += account.opening
            for line in (*account.ins, *account.outs):
                lines[account.name, line.side, line.party, line.reason, line.sort] += line.ul
    way_opening = _between(lines, links, wanted, zones, how)
    names = ACCOUNTS if how == "us" else (WAREHOUSE,)
    made = [_account(name, opening[name], lines) for name in names]
    way = _account(ON_THE_WAY, way_opening, lines)
    return (*made, way) if way.ins or way.outs or way.opening else tuple(made)


def _between(
    lines: Counter[Key], links: Links, wanted: list[str], zones: Mapping[str, str], how: str
) -> int:
    """Move the transfers between sites out of the lines and into the account on the way; return the opening of that
    account.
    """
    opening = 0
    for link in links.links:
        flows = [(flow, 1) for flow in link.sent] + [(flow, -1) for flow in link.received]
        for flow, sign in flows:
            month = _month(flow, zones)
            if month < wanted[0]:
                opening += sign * flow["lpa_ul"]
            if month not in wanted:
                continue
            side, party = ("out", flow["target"]) if sign > 0 else ("in", flow["source"])
            account = flow["source_account" if sign > 0 else "target_account"]
            sort = flow["sort"] if sign > 0 and how != WAREHOUSE else ""
            key = (WAREHOUSE if how == WAREHOUSE else account, side, party, flow["reason"], sort)
            lines[key] -= flow["lpa_ul"]
            lines[key[0], side, ON_THE_WAY, "", ""] += flow["lpa_ul"]
            lines[ON_THE_WAY, "in" if sign > 0 else "out", "sites", "", ""] += flow["lpa_ul"]
        last = max(_month(flow, zones) for flow in link.received)
        off = link.sent_ul - link.received_ul
        if last in wanted and off:
            lines[ON_THE_WAY, "out" if off > 0 else "in", "papers", "", ""] += abs(off)
        if last < wanted[0]:
            opening -= off
    return opening


def _month(flow: Flow, zones: Mapping[str, str]) -> str:
    return months.month_at(flow["at"], zones.get(flow["site"], "UTC"))


def _account(name: str, opening: int, lines: Mapping[Key, int]) -> Account:
    sides: dict[str, list[Shown]] = {"in": [], "out": []}
    for (account, side, party, reason, sort), ul in sorted(lines.items()):
        if account == name and ul:
            sides[side].append(Shown(side, party, reason, sort, ul))
    ins, outs = tuple(sides["in"]), tuple(sides["out"])
    closing = opening + sum(line.ul for line in ins) - sum(line.ul for line in outs)
    return Account(name, opening, ins, outs, closing)
