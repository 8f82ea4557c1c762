"""The accounts as sums of flows: what stands where, and whether book and flows say the same."""

from __future__ import annotations

from typing import Any

from webapp.book.fold.states import load_newest
from webapp.book.record.store import Book
from webapp.kinds.amount import Amount

SUMS = """
SELECT account, sum(lpa_ul) AS lpa_ul, sum(volume_ml) AS volume_ml, sum(mass_g) AS mass_g FROM (
    SELECT target AS account, lpa_ul, volume_ml, mass_g FROM flows
    UNION ALL SELECT source, -lpa_ul, -volume_ml, -mass_g FROM flows
) GROUP BY account ORDER BY account
"""


def balances(book: Book) -> dict[str, Amount]:
    """Return the sum of the flows of every account: `v:<mark>`, `r:<run>`, `b:<bottling>`, `out:<name>`; over all zero.

    [uL, mL, g]
    """
    return {row["account"]: Amount(row["lpa_ul"], row["volume_ml"], row["mass_g"]) for row in book.query(SUMS)}


def verify(book: Book) -> list[str]:
    """Return sentences about faults of the accounts; empty where all is right.

    The grand sum is nothing; each vessel, run and bottling holds the sum of its flows, in pure alcohol and mass; none
    holds less than nothing; an empty vessel holds nothing. Volumes do not add and are not compared.
    """
    sums, wrong = balances(book), []
    for name in Amount._fields:
        total = sum(getattr(each, name) for each in sums.values())
        if total:
            wrong.append(f"The grand sum of {name} is {total}.")
    keys = [row["key"] for row in book.query("SELECT DISTINCT key FROM states WHERE key GLOB '[vrb]:*'")]
    for key in sorted({*keys, *(account for account in sums if account[:2] in ("v:", "r:", "b:"))}):
        wrong += _compare(key, load_newest(book, key) or {}, sums.get(key, Amount()))
    return wrong


def _compare(key: str, state: dict[str, Any], flowed: Amount) -> list[str]:
    holder = state.get("holds") if key[:2] == "v:" else state
    stock = Amount(*((holder or {}).get(name, 0) for name in Amount._fields))
    wrong = []
    if (stock.lpa_ul, stock.mass_g) != (flowed.lpa_ul, flowed.mass_g):
        wrong.append(f"{key} holds {stock}, its flows come to {flowed}.")
    if min(stock) < 0:
        wrong.append(f"{key} holds less than nothing: {stock}.")
    return wrong
