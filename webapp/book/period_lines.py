"""What went into and out of the tax accounts within a time: sums of flows, by where to or from and by reason.

Every flow between two accounts is an `out` line of one and an `in` line of the other; gains and losses stay two lines.
Amounts are whole microlitres of pure alcohol at 20 degC, so every sum is exact.
"""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Mapping
from typing import Any, NamedTuple

from webapp.book.checks.limits import is_grain
from webapp.book.states import load_newest
from webapp.book.store import Book
from webapp.kinds import get as kind_of
from webapp.kinds.read import read_plainly
from webapp.trade.proof import proof_from_strength

ACCOUNTS = ("production", "storage", "processing")
WAREHOUSE = "warehouse"
BRANDY_PROOF, WHISKY_PROOF = 170.0, 160.0  # where the monthly report splits (27 CFR 19.632 and the report it names)
DEEPEST = 8  # mixes before a distilling strength is called unknown


class Line(NamedTuple):
    """What makes one line of an account. side: in or out; party: another account or `out:<name>`; sort: by strength."""

    account: str
    side: str
    party: str
    reason: str
    sort: str = ""


Lines = Mapping[Line, int]  # microlitres of pure alcohol


def lines_between(book: Book, start: str, until: str) -> Counter[Line]:
    """Return the lines of all accounts from start up to until, both UTC texts without Z (months.begins). [uL]"""
    rows = book.query(
        "SELECT source_account, target_account, "
        "CASE WHEN source_account = '' THEN source ELSE source_account END AS a, "
        "CASE WHEN target_account = '' THEN target ELSE target_account END AS b, reason, sum(lpa_ul) AS ul "
        "FROM flows INDEXED BY flows_at WHERE at >= ? AND at < ? AND lpa_ul <> 0 AND source_account <> target_account "
        "GROUP BY 1, 2, 3, 4, 5",
        (start, until),
    )
    lines: Counter[Line] = Counter()
    for row in rows:
        reason = "bottles" if row["reason"].endswith(" bottles") else row["reason"]
        if row["target_account"]:
            lines[Line(row["target_account"], "in", row["a"], reason)] += row["ul"]
        if row["source_account"] and not _is_split(row["source_account"], row["b"]):
            lines[Line(row["source_account"], "out", row["b"], reason)] += row["ul"]
    lines.update(_split_by_strength(book, start, until))
    return lines


def as_warehouse(lines: Lines) -> Counter[Line]:
    """Return the lines of the whole premises as one account: what moves inside it is no line of it."""
    merged: Counter[Line] = Counter()
    for line, ul in lines.items():
        if line.party not in ACCOUNTS:
            merged[line._replace(account=WAREHOUSE, sort="")] += ul
    return merged


def _is_split(account: str, party: str) -> bool:
    return account == "production" and (party in ACCOUNTS or party == "out:removed")


def _split_by_strength(book: Book, start: str, until: str) -> Counter[Line]:
    """Return what left production for another account or the premises, by distilling strength as the law splits it."""
    rows = book.query(
        "SELECT f.entry, f.source_fill, f.target_fill, f.target, f.target_account, f.reason, f.lpa_ul, e.kind, e.body "
        "FROM flows f INDEXED BY flows_at JOIN entries e ON e.id = f.entry WHERE f.at >= ? AND f.at < ? "
        "AND f.lpa_ul <> 0 AND f.source_account = 'production' AND f.target_account <> 'production' "
        "AND (f.target_account <> '' OR f.target = 'out:removed')",
        (start, until),
    )
    origins = _Origins(book)
    lines: Counter[Line] = Counter()
    for row in rows:
        party = row["target_account"] or row["target"]
        lines[Line("production", "out", party, row["reason"], origins.sort_of(row))] += row["lpa_ul"]
    return lines


class _Origins:
    """At what strength the spirit of a fill came off the still. Asked again and again within one period."""

    def __init__(self, book: Book) -> None:
        self._book = book
        self._strengths: dict[str, float | None] = {}

    def sort_of(self, row: Mapping[str, Any]) -> str:
        """Return the class of a flow that leaves production; what was declared on the move counts before the runs."""
        declared, spirit = self._declared(row)
        facts = load_newest(self._book, f"f:{row['source_fill']}") or {}
        strength = declared or facts.get("distilled_pct") or self._of_fill(row["source_fill"], DEEPEST)
        grain = is_grain(f"{spirit} {facts.get('what') or ''} {facts.get('material') or ''}")
        name, split = ("whisky", WHISKY_PROOF) if grain else ("brandy", BRANDY_PROOF)
        if strength is None:
            return f"{name}, distilling strength not known"
        over = round(float(proof_from_strength(min(strength, 100.0))), 6) > split
        return f"{name} over {split:.0f} proof" if over else f"{name} at {split:.0f} proof and under"

    def _declared(self, row: Mapping[str, Any]) -> tuple[float | None, str]:
        kind = kind_of(row["kind"])
        if row["kind"] != "account_move" or kind is None:
            return None, ""
        values = read_plainly(kind, json.loads(row["body"])).values
        return values.get("distilling_strength"), str(values.get("spirit") or "")

    def _of_fill(self, fill: str, deep: int) -> float | None:
        """Return the strength of the hearts that a fill was made of, by their pure alcohol. [% vol at 20 degC]"""
        if fill not in self._strengths:
            self._strengths[fill] = None  # a fill that feeds itself has no end otherwise
            self._strengths[fill] = self._mean(fill, deep) if deep else None
        return self._strengths[fill]

    def _mean(self, fill: str, deep: int) -> float | None:
        parts = self._book.query(
            "SELECT source, source_fill, sum(lpa_ul) AS ul FROM flows WHERE target_fill = ? AND source_fill <> '' "
            "AND source_fill <> target_fill GROUP BY 1, 2",
            (fill,),
        )
        pure, volume = 0.0, 0.0
        for part in parts:
            is_run = part["source"][:2] == "r:"
            strength = self._of_run(part["source_fill"]) if is_run else self._of_fill(part["source_fill"], deep - 1)
            if strength and part["ul"] > 0:
                pure += part["ul"]
                volume += part["ul"] / strength
        return pure / volume if volume else None

    def _of_run(self, run: str) -> float | None:
        fractions = (load_newest(self._book, f"r:{run}") or {}).get("fractions", [])
        hearts = [part for part in fractions if part["fraction"] == "hearts" and part["lpa_l"] and part["strength_pct"]]
        volume = sum(part["lpa_l"] / part["strength_pct"] for part in hearts)
        return sum(part["lpa_l"] for part in hearts) / volume if volume else None
