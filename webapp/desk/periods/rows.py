"""A period as rows: what the page, the CSV, the JSON and the printed page all show. Worked out once for all four."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from decimal import Decimal

from webapp.access import current
from webapp.book.periods.ledger import Closed
from webapp.book.periods.lines import WAREHOUSE
from webapp.book.periods.periods import Account, Period, Shown, litres, proof_gallons
from webapp.book.periods.warnings import Notice
from webapp.book.periods.words import CAUTION, party_words, reason_words, rules, rules_words
from webapp.kinds.rows import SiteSettings
from webapp.words.houseunits import US

CSV_HEADS = (
    "period", "basis", "account", "row", "line", "reason", "sort", "adjustment_of", "lpa_ul", "lpa_l", "proof_gal",
    "rules",
)
TITLES = {
    "production": "Production", "storage": "Storage", "processing": "Processing", "finished": "Bottled goods",
    WAREHOUSE: "Excise warehouse",
}


def held(ul: int) -> Decimal:
    """Return pure alcohol as the house counts it: litres to 0.01, or proof gallons to 0.1."""
    return proof_gallons(ul) if current.house == US else litres(ul)


@dataclass(frozen=True, slots=True)
class Row:
    """One row of an account. row: opening, in, total_in, out, total_out or closing."""

    row: str
    words: str
    about: str
    ul: int
    rules: tuple[str, ...]
    line: Shown | None = None

    @property
    def rules_words(self) -> str:
        """The rules in a line."""
        return rules_words(self.rules)

    @property
    def litres(self) -> str:
        """Litres of pure alcohol at 20 degC, to 0.01."""
        return str(litres(self.ul))

    @property
    def proof_gallons(self) -> str:
        """Proof gallons, to 0.1."""
        return str(proof_gallons(self.ul))


def rows_of(account: Account) -> list[Row]:
    """Return the rows of an account in their order."""
    whole = rules(account.name)
    return [
        Row("opening", "On hand at the start", "", account.opening, whole),
        *(_row("in", account.name, line) for line in account.ins),
        Row("total_in", "Total in", "", account.total_in, ()),
        *(_row("out", account.name, line) for line in account.outs),
        Row("total_out", "Total out", "", account.total_out, ()),
        Row("closing", "On hand at the end", "", account.closing, whole),
    ]


def rounding(account: Account) -> str:
    """Return in words by how much the rounded proof gallons differ from their total; empty where they agree."""
    parts = [proof_gallons(account.opening), *(proof_gallons(line.ul) for line in account.ins)]
    parts += [-proof_gallons(line.ul) for line in account.outs]
    off = sum(parts) - proof_gallons(account.closing)
    if not off:
        return ""
    way = "more" if off > 0 else "less"
    return f"Each figure is rounded by itself from the exact one; the rounded lines come to {abs(off)} proof gal {way}."


def title_of(account: str) -> str:
    """Return the title of an account."""
    return TITLES[account]


def csv_rows(period: Period) -> Iterator[list[str]]:
    """Yield the heads, then every row as stated, then every row as now known."""
    yield list(CSV_HEADS)
    for basis, accounts in (("stated", period.accounts), ("now_known", period.known)):
        for account in accounts:
            for row in rows_of(account):
                yield [period.name, basis, *account_cells(account.name, row)]


def account_cells(account: str, row: Row) -> list[str]:
    """Return the cells of a row under CSV_HEADS from `account` on."""
    line = row.line
    about = (line.party, line.reason, line.sort, line.of) if line else ("", "", "", "")
    return [account, row.row, *about, str(row.ul), row.litres, row.proof_gallons, "; ".join(row.rules)]


def as_json(period: Period, site: SiteSettings, warned: list[Notice]) -> dict[str, object]:
    """Return the whole period as plain data; amounts in microlitres are exact, the others are rounded for stating."""
    return {
        "period": period.name, "site": site.get("name", ""), "months": list(period.months), "time_zone": period.zone,
        "start_utc": f"{period.start}Z", "until_utc": f"{period.until}Z",
        "closed": period.is_closed, "closes": [_close(one) for one in period.closed],
        "stated": [account_data(one, rows_of(one)) for one in period.accounts],
        "now_known": [account_data(one, rows_of(one)) for one in period.known],
        "notices": [{"code": one.code, "weight": one.weight, "words": one.words} for one in warned],
        "caution": CAUTION,
    }


def _row(side: str, account: str, line: Shown) -> Row:
    words = party_words(side, line.party)
    if line.of:
        more = "more" if line.side == side else "less"  # what was stated too high is taken back on the other side
        words = f"Adjustment of {line.of}: {more} {party_words(line.side, line.party)}"
    reason = "" if line.reason in line.party else reason_words(line.reason)  # said by where it goes already
    about = ", ".join(filter(None, (reason, line.sort)))
    return Row(side, words[0].upper() + words[1:], about, line.ul, rules(account, line.party), line)


def account_data(account: Account, of: Iterable[Row]) -> dict[str, object]:
    """Return an account and its rows as plain data."""
    rows = [
        {
            "row": row.row, "words": row.words, "lpa_ul": row.ul, "lpa_l": row.litres, "proof_gal": row.proof_gallons,
            "rules": list(row.rules),
        }
        | ({"party": row.line.party, "reason": row.line.reason, "sort": row.line.sort,
            "adjustment_of": row.line.of or None} if row.line else {})
        for row in of
    ]
    return {"account": account.name, "rows": rows}


def _close(one: Closed) -> dict[str, str]:
    return {
        "month": one.month, "closed_as": one.period, "person": one.person, "signed_at": one.signed_at,
        "digest": one.digest,
    }
