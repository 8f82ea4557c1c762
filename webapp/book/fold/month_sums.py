"""Sums of the flows between tax accounts by month of UTC, kept as the fold runs: a period need not read every flow.

A key is where from, where to, the reason and the class: (a, b, reason, sort). What moves within one tax account is not
summed. Each row counts its flows, so that one that has none left goes; so the table is what summing all flows anew
would give, whatever was amended, struck or moved (`verify`, and the fold's own dump).
"""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Iterable
from typing import NamedTuple

from webapp.book.record import months
from webapp.book.record.store import Book


class Between(NamedTuple):
    """What is summed: tax accounts, or `out:<name>` for the world outside."""

    a: str
    b: str
    reason: str
    sort: str


_SIDES = (
    "CASE WHEN source_account = '' THEN source ELSE source_account END AS a, "
    "CASE WHEN target_account = '' THEN target ELSE target_account END AS b, "
    "CASE WHEN reason GLOB '* bottles' THEN 'bottles' ELSE reason END AS reason, sort"
)
_COUNTED = "lpa_ul <> 0 AND source_account <> target_account"


class MonthSums:
    """Gathers what the flows of one settling add and take away. Inside a write only."""

    def __init__(self, book: Book) -> None:
        self._conn = book.db.conn
        self._more: dict[tuple[str, ...], list[int]] = {}

    def add(
        self, sign: int, at: str, source: str, target: str, reason: str, source_account: str, target_account: str,
        sort: str, lpa_ul: int,
    ) -> None:
        """Count a flow in (sign 1) or out (-1)."""
        if not lpa_ul or source_account == target_account:
            return
        reason = "bottles" if reason.endswith(" bottles") else reason
        sums = self._more.setdefault((at[:7], source_account or source, target_account or target, reason, sort), [0, 0])
        sums[0] += sign * lpa_ul
        sums[1] += sign

    def take(self, entry_id: str) -> None:
        """Count out the flows that an entry has in the file."""
        rows = self._conn.execute(
            "SELECT at, source, target, reason, source_account, target_account, sort, lpa_ul FROM flows "
            "WHERE entry = ?",
            (entry_id,),
        )
        for row in rows.fetchall():
            self.add(-1, *row)

    def write(self) -> None:
        """Write the sums that changed."""
        lines = [(*key, *sums) for key, sums in self._more.items() if any(sums)]
        self._conn.executemany(
            "INSERT INTO month_sums VALUES (?, ?, ?, ?, ?, ?, ?) ON CONFLICT DO UPDATE SET "
            "lpa_ul = lpa_ul + excluded.lpa_ul, n = n + excluded.n",
            lines,
        )
        months_changed = [(month,) for month in {line[0] for line in lines}]
        self._conn.executemany("DELETE FROM month_sums WHERE month = ? AND n = 0", months_changed)
        self._more.clear()


class Reading:
    """The sums of a book for many times one after the other: months read once, and each edge once.

    The months, and the edges of the times that are named at once, are read in one statement.
    """

    def __init__(self, book: Book, times: Iterable[str] = ()) -> None:
        self._book = book
        self._months: dict[str, list[tuple[Between, int]]] = {}
        self._edges: dict[str, tuple[str, Counter[Between]]] = {}
        self._read(times, f"{_MONTHS} UNION ALL {_EDGES}")

    def between(self, start: str, until: str) -> Counter[Between]:
        """Return the sums from start up to until, UTC texts of any second. [uL]; `0000` is before everything.

        Whole months of UTC, and the flows between their beginnings and these two: a site's month begins hours from one.
        """
        (first, before), (last, after) = self._edge(start), self._edge(until)
        sums: Counter[Between] = Counter()
        for month, lines in self._months.items():
            if first <= month < last:
                for key, ul in lines:
                    sums[key] += ul
        for edge, sign in ((before, -1), (after, 1)):
            for key, ul in edge.items():
                sums[key] += sign * ul
        return Counter({key: ul for key, ul in sums.items() if ul})

    def _edge(self, at: str) -> tuple[str, Counter[Between]]:
        """Return the nearest beginning of a UTC month, and what flowed from there to a time; backwards negative."""
        if at not in self._edges:
            self._read([at], _EDGES)
        return self._edges[at]

    def _read(self, times: Iterable[str], sql: str) -> None:
        nearest = {at: _month_near(at) for at in times}
        begins = {at: f"{month}-01T00:00:00" if month != "0000" else "0000" for at, month in nearest.items()}
        self._edges |= {at: (month, Counter()) for at, month in nearest.items()}
        spans = [(at, min(at, begin), max(at, begin)) for at, begin in begins.items()]
        for month, at, *key, ul in self._book.db.conn.execute(sql, (json.dumps(spans),)):
            if month:
                self._months.setdefault(month, []).append((Between(*key), ul))
            else:
                self._edges[at][1][Between(*key)] = ul if at >= begins[at] else -ul


_MONTHS = "SELECT month, NULL AS edge, a, b, reason, sort, lpa_ul FROM month_sums"
_EDGES = (
    f"SELECT NULL AS month, json_extract(w.value, '$[0]') AS edge, {_SIDES}, sum(lpa_ul) "  # noqa: S608
    "FROM json_each(?) w CROSS JOIN flows INDEXED BY flows_at "
    "ON at >= json_extract(w.value, '$[1]') AND at < json_extract(w.value, '$[2]') "
    f"WHERE {_COUNTED} GROUP BY edge, 3, 4, 5, 6"
)


def _month_near(at: str) -> str:
    """Return the UTC month whose beginning is nearest: months of a site begin within hours of it."""
    if at < "0001":
        return "0000"
    return months.next_month(at[:7]) if at[8:10] > "15" else at[:7]


def verify(book: Book) -> list[str]:
    """Return the months whose sums are not those of their flows; empty where all agree."""
    anew = book.query(
        f"SELECT substr(at, 1, 7) AS month, {_SIDES}, sum(lpa_ul) AS lpa_ul, count(*) AS n FROM flows "  # noqa: S608
        f"WHERE {_COUNTED} GROUP BY 1, 2, 3, 4, 5"
    )
    kept = {tuple(row.values()) for row in book.query("SELECT * FROM month_sums")}
    wrong = {row[0] for row in kept ^ {tuple(row.values()) for row in anew}}
    return [f"The sums of {month} are not those of its flows. Run `cellarslate rebuild`." for month in sorted(wrong)]
