"""A period as rows: what the page, the CSV, the JSON and the printed page all show. Worked out once for all four."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from decimal import Decimal
from typing import NamedTuple

from webapp.access import current
from webapp.book.periods.footing import Footed, footed, in_litres, in_proof_gallons, moved
from webapp.book.periods.known import Held, Parts, known_line, known_total
from webapp.book.periods.ledger import Closed
from webapp.book.periods.lines import WAREHOUSE
from webapp.book.periods.periods import Account, Period, Shown, litres, proof_gallons
from webapp.book.periods.warnings import Notice
from webapp.book.periods.words import CAUTION, party_words, reason_words, rules, rules_words
from webapp.kinds.rows import SiteSettings
from webapp.trade.proof import lpa_per_proof_gallon
from webapp.trade.uncertainty import Uncertain, combine, expanded
from webapp.words.desk import Later, say
from webapp.words.houseunits import US

CSV_HEADS = (
    "period", "basis", "account", "row", "line", "reason", "sort", "adjustment_of", "lpa_ul", "lpa_l", "proof_gal",
    "rules", "lpa_l_off_by",
)
ROUNDED = (
    Later("desk-account-lines_add_up_to_their")
)
KNOWN = (
    Later("desk-account-is_twice_the_standard_uncertainty")
)
KNOWN_STOCK = (
    Later("desk-account-is_twice_the_standard_uncertainty2")
)
HELD = Later("desk-account-what_nobody_measured_mash_a", what=KNOWN_STOCK)
TITLES = {
    "production": Later("desk-account-production"), "storage": Later("desk-account-storage"),
    "processing": Later("desk-account-processing"), "finished": Later("desk-common-bottled_goods"),
    WAREHOUSE: Later("desk-account-excise_warehouse"),
}


def held(ul: int) -> Decimal:
    """Return pure alcohol as the house counts it: litres to 0.01, or proof gallons to 0.1."""
    return proof_gallons(ul) if current.house == US else litres(ul)


def held_account(account: Account) -> Footed:
    """Return an account's figures as the house counts pure alcohol, so that they add up."""
    return footed(account, in_proof_gallons() if current.house == US else in_litres())


def off_by_l(known: Uncertain | None) -> str:
    """Return the expanded uncertainty of pure alcohol, k = 2; empty where it is not known. [LPA, to 0.01]"""
    return f"{expanded(known.standard, 2):.2f}" if known else ""


def off_by_gal(known: Uncertain | None) -> str:
    """Return the expanded uncertainty of pure alcohol, k = 2; empty where it is not known. [proof gal, to 0.1]"""
    return f"{expanded(known.standard / float(lpa_per_proof_gallon()), 1):.1f}" if known else ""


@dataclass(frozen=True, slots=True)
class Row:
    """One row of an account. row: opening, in, total_in, out, total_out or closing; litres (of pure alcohol at 20 degC,
    to 0.01) and proof_gallons (to 0.1) as they are shown, so that the rows add up.
    """

    row: str
    words: str
    about: str
    ul: int
    litres: str
    proof_gallons: str
    rules: tuple[str, ...]
    line: Shown | None = None
    known: Uncertain | None = None

    @property
    def off_by_l(self) -> str:
        """The expanded uncertainty of the litres; empty where it is not known."""
        return off_by_l(self.known)

    @property
    def off_by_gal(self) -> str:
        """The expanded uncertainty of the proof gallons; empty where it is not known."""
        return off_by_gal(self.known)

    @property
    def rules_words(self) -> str:
        """The rules in a line."""
        return rules_words(self.rules)


NO_PARTS: Parts = {}
LineWords = Callable[[str, str, Shown], tuple[str, str, tuple[str, ...]]]


def rows_of(account: Account, parts: Parts = NO_PARTS) -> list[Row]:
    """Return the rows of an account in their order, those that are known by their parts with how well."""
    return lay_out(account, rules(account.name), line_words, parts)


def lay_out(
    account: Account, whole: tuple[str, ...], told: LineWords, parts: Parts = NO_PARTS
) -> list[Row]:
    """Return the rows of an account. whole: the rules of the account; told: what a line is called, and its rules, from
    its side, its account and itself.
    """
    litre, gal = footed(account, in_litres()), footed(account, in_proof_gallons())

    def lines(side: str, of: Sequence[Shown], in_l: Sequence[str], in_gal: Sequence[str]) -> Iterator[Row]:
        for line, in_litre, gallons in zip(of, in_l, in_gal, strict=True):
            words, about, asked = told(side, account.name, line)
            known = known_line(parts, account.name, line)
            yield Row(side, words, about, line.ul, in_litre, gallons, asked, line, known)

    return [
        Row(
            "opening", say("desk-account-on_hand_at_the_start"), "", account.opening, litre.opening, gal.opening,
            whole,
        ),
        *lines("in", account.ins, litre.ins, gal.ins),
        Row("total_in", say("desk-account-total_in"), "", account.total_in, litre.total_in, gal.total_in, (),
            known=known_total(parts, account, "in")),
        *lines("out", account.outs, litre.outs, gal.outs),
        Row("total_out", say("desk-account-total_out"), "", account.total_out, litre.total_out, gal.total_out, (),
            known=known_total(parts, account, "out")),
        Row("closing", say("desk-account-on_hand_at_the_end"), "", account.closing, litre.closing, gal.closing, whole),
    ]


class HeldRow(NamedTuple):
    """What of an account stood in measured vessels at the end of a period. account_ul: all of the account [uL at
    20 degC]; ul: what was measured, with how well that is known [LPA].
    """

    account: str
    account_ul: int
    ul: int
    known: Uncertain


def held_rows(period: Period, held: Iterable[Held]) -> list[HeldRow]:
    """Return a row for each account of a period that has something in measured vessels."""
    ends = {account.name: account.closing for account in (period.known if period.differs else period.accounts)}
    by_account: dict[str, list[Held]] = {}
    for one in held:
        by_account.setdefault(WAREHOUSE if WAREHOUSE in ends else one.account, []).append(one)
    return [
        HeldRow(name, end, sum(one.ul for one in some), combine([(1.0, one.known) for one in some]))
        for name, end in ends.items() if (some := by_account.get(name))
    ]


def rounding(account: Account, rows: Sequence[Row]) -> str:
    """Return in words which of its lines are not shown to their nearest, so that the account adds up; else empty."""
    off: dict[Shown, list[str]] = {}
    for line, by in moved(account):
        off.setdefault(line, []).append(by)
    if not off:
        return ""
    shown = {row.line: row for row in rows if row.line}
    said = "; ".join(f"{_name(shown[line])} {' and '.join(by)}" for line, by in off.items())
    return say("desk-account-so_that_the_lines_add", said=said)


def _name(row: Row) -> str:
    return f"{row.words}, {row.about}," if row.about else row.words


def title_of(account: str) -> str:
    """Return the title of an account."""
    return TITLES[account]


def csv_rows(period: Period, parts: Parts = NO_PARTS) -> Iterator[list[str]]:
    """Yield the heads, then every row as stated, then every row as now known."""
    yield list(CSV_HEADS)
    for basis, accounts in (("stated", period.accounts), ("now_known", period.known)):
        for account in accounts:
            for row in rows_of(account, parts):
                yield [period.name, basis, *account_cells(account.name, row)]


def account_cells(account: str, row: Row) -> list[str]:
    """Return the cells of a row under CSV_HEADS from `account` on."""
    line = row.line
    about = (line.party, line.reason, line.sort, line.of) if line else ("", "", "", "")
    return [account, row.row, *about, str(row.ul), row.litres, row.proof_gallons, "; ".join(row.rules), row.off_by_l]


def as_json(period: Period, site: SiteSettings, warned: list[Notice], parts: Parts = NO_PARTS) -> dict[str, object]:
    """Return the whole period as plain data; amounts in microlitres are exact, the others are rounded for stating."""
    return {
        "period": period.name, "site": site.get("name", ""), "months": list(period.months), "time_zone": period.zone,
        "start_utc": f"{period.start}Z", "until_utc": f"{period.until}Z",
        "closed": period.is_closed, "closes": [_close(one) for one in period.closed],
        "stated": [account_data(one, rows_of(one, parts)) for one in period.accounts],
        "now_known": [account_data(one, rows_of(one, parts)) for one in period.known],
        "notices": [{"code": one.code, "weight": one.weight, "words": one.words} for one in warned],
        "rounding": str(ROUNDED), "uncertainty": str(KNOWN), "caution": CAUTION,
    }


def line_words(side: str, account: str, line: Shown) -> tuple[str, str, tuple[str, ...]]:
    """Return the name of a line on a side of an account, what more is known of it, and the rules that ask for it."""
    words = party_words(side, line.party)
    if line.of:
        more = "more" if line.side == side else "less"  # what was stated too high is taken back on the other side
        words = say("desk-account-adjustment_of", of=line.of, more=more, party_words=party_words(line.side, line.party))
    return words[0].upper() + words[1:], about_line(line), rules(account, line.party)


def about_line(line: Shown) -> str:
    """Return the reason of a line and its sort, in words."""
    reason = "" if line.reason in line.party else reason_words(line.reason)  # said by where it goes already
    return ", ".join(filter(None, (reason, line.sort)))


def account_data(account: Account, of: Iterable[Row]) -> dict[str, object]:
    """Return an account and its rows as plain data."""
    rows = [
        {
            "row": row.row, "words": row.words, "lpa_ul": row.ul, "lpa_l": row.litres, "proof_gal": row.proof_gallons,
            "rules": list(row.rules), "lpa_l_off_by": row.off_by_l or None,
        }
        | ({"party": row.line.party, "reason": row.line.reason, "sort": row.line.sort,
            "adjustment_of": row.line.of or None} if row.line else {})
        for row in of
    ]
    return {"account": account.name, "rows": rows}


def _close(one: Closed) -> dict[str, object]:
    return {
        "month": one.month, "closed_as": one.period, "person": one.person, "signed_at": one.signed_at,
        "digest": one.digest, "open_questions": list(one.questions),
    }
