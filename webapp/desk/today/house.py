"""What the house holds, as the page shows it: accounts as a bar, spirits, the line over the years, the season."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from webapp.book.periods.lines import ACCOUNTS
from webapp.book.today.holds import Holds
from webapp.desk.chart import Chart
from webapp.desk.figures import in_house
from webapp.desk.today import clock
from webapp.words import local
from webapp.words.desk import Later, say

SPIRITS_MOST = 6
NAMES = {
    "production": Later("desk-house-in_production"), "storage": Later("desk-house-in_storage"),
    "processing": Later("desk-house-in_processing"), "finished": Later("desk-common-bottled2"),
}


@dataclass(frozen=True, slots=True)
class Part:
    """An account as a part of the bar. [%, L at 20 degC]"""

    key: str
    name: str
    x: float
    width: float
    litres: float


@dataclass(frozen=True, slots=True)
class SpiritRow:
    """A spirit beside the largest. [% of the largest, L at 20 degC]; many: how many spirits it stands for."""

    name: str
    vessels: float
    bottled: float
    litres: float
    oldest: str
    many: int = 1


@dataclass(frozen=True, slots=True)
class HousePanel:
    """The panel of the house: total, how much more than a year ago, bar, spirits, what has no spirit yet. [L]"""

    total: float
    more: float | None
    since: str
    parts: list[Part]
    spirits: list[SpiritRow]
    in_work: float
    chart: Chart | None
    years: list[tuple[str, dict[str, float]]]
    holds: Holds


def panel_of(holds: Holds) -> HousePanel:
    """Return the panel of what the house holds."""
    litres = {name: ul / 1e6 for name, ul in holds.accounts.items()}
    whole = max(sum(max(one, 0.0) for one in litres.values()), 1e-9)
    parts, x = [], 0.0
    for name in ("storage", "finished", "processing", "production"):
        width = max(litres[name], 0.0) / whole * 100
        parts.append(Part(name, NAMES[name], x, max(width - 0.3, 0.0), litres[name]))
        x += width
    since = holds.year_ago
    return HousePanel(
        holds.total / 1e6, since[1] / 1e6 if since else None, _first_of(since[0]) if since else "",
        parts, _spirits(holds), max(holds.in_work, 0) / 1e6, _chart(holds), _years(holds), holds,
    )


def _first_of(month: str) -> str:
    """Return the first day of a month by its name: `2025-11` is 1 November 2025."""
    return local.day_in(date.fromisoformat(f"{month[:7]}-01"), "yMMMMd", "1 {0:%B %Y}")


def _spirits(holds: Holds) -> list[SpiritRow]:
    shown, rest = holds.spirits[:SPIRITS_MOST], holds.spirits[SPIRITS_MOST:]
    most = max((one.ul for one in shown), default=1) or 1
    rows = [
        SpiritRow(one.name, max(one.in_vessels, 0) / most * 100, max(one.bottled, 0) / most * 100, one.ul / 1e6,
                  one.oldest)
        for one in shown
    ]
    if rest:
        litres = sum(one.ul for one in rest) / 1e6
        oldest = min((one.oldest for one in rest if one.oldest), default="")
        rows.append(SpiritRow("others", 0.0, 0.0, litres, oldest, len(rest)))
    return rows


def _chart(holds: Holds) -> Chart | None:
    """Return the line over the years; None where there are not yet two points."""
    if len(holds.line) < 2:
        return None
    every = [[at, sum(accounts.values()) / 1e6] for at, accounts in holds.line]
    stored = [[at, accounts.get("storage", 0) / 1e6] for at, accounts in holds.line]
    return in_house(
        {"title": say("desk-house-pure_alcohol_in_the_house"), "yLabel": "", "yDecimals": 0, "xIsTime": True,
         "height": 190,
         "series": [{"label": say("desk-house-all"), "points": every},
                    {"label": say("desk-house-in_storage"), "points": stored}]},
        "LPA",
    )


def _years(holds: Holds) -> list[tuple[str, dict[str, float]]]:
    """Return the accounts at the beginning of each year, as far as the line has them, and now; the newest first."""
    found: dict[str, dict[str, float]] = {}
    for at, accounts in holds.line[:-1]:
        begun = clock.at_house(at)
        if begun.month == 1:
            found[_first_of(f"{begun.year}-01")] = {name: accounts.get(name, 0) / 1e6 for name in ACCOUNTS}
    found[say("desk-due-now")] = {name: holds.accounts[name] / 1e6 for name in ACCOUNTS}
    return list(reversed(found.items()))
