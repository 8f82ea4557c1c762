"""The counters of each device that the book has seen, kept as ranges, so that they cost the same after ten years."""

from __future__ import annotations

import json
from collections.abc import Iterable
from typing import TypedDict

from webapp.book.record.store import Book

GAPS_MOST = 100
# A phone goes on counting above what the book has seen of it. One forged number near the end of all numbers would
# leave it none, so that the book believes no leap that a phone could not have made in years away.
LEAP_MOST = 1_000_000


class Seen(TypedDict):
    """The highest counter that the book has seen of a device, and the gaps below it: [[low, high], ...]."""

    seen: int
    gaps: list[list[int]]


def note_seen(book: Book, device: str, numbers: Iterable[int]) -> None:
    """Note counters of a device as seen, inside a write. Seeing one again does no harm; a wild leap is not noted."""
    conn = book.db.conn
    most = (conn.execute("SELECT max(high) FROM seen WHERE device = ?", (device,)).fetchone()[0] or 0) + LEAP_MOST
    for low, high in _runs_of(sorted({number for number in numbers if number <= most})):
        # Everything that overlaps or adjoins melts into one range.
        near = conn.execute(
            "SELECT low, high FROM seen WHERE device = ? AND low <= ? AND high >= ?", (device, high + 1, low - 1)
        ).fetchall()
        if len(near) == 1 and near[0][0] <= low and near[0][1] >= high:
            continue
        conn.executemany("DELETE FROM seen WHERE device = ? AND low = ?", [(device, row[0]) for row in near])
        low, high = min([low, *(row[0] for row in near)]), max([high, *(row[1] for row in near)])
        conn.execute("INSERT INTO seen VALUES (?, ?, ?)", (device, low, high))


def report_seen(book: Book, device: str) -> Seen:
    """Return `{"seen": highest counter, "gaps": [[low, high], ...]}`; the first GAPS_MOST gaps."""
    return report_all_seen(book, [device])[device]


def report_all_seen(book: Book, devices: Iterable[str]) -> dict[str, Seen]:
    """Return the reports of `report_seen` by device, in one statement."""
    wanted = list(devices)
    found: dict[str, Seen] = {device: {"seen": 0, "gaps": []} for device in wanted}
    rows = book.db.conn.execute(
        "SELECT device, low, high FROM seen WHERE device IN (SELECT value FROM json_each(?)) ORDER BY device, low",
        (json.dumps(wanted),),
    )
    for device, low, high in rows:
        one = found[device]
        if low > one["seen"] + 1 and len(one["gaps"]) < GAPS_MOST:
            one["gaps"].append([one["seen"] + 1, low - 1])
        one["seen"] = high
    return found


def _runs_of(numbers: list[int]) -> list[tuple[int, int]]:
    """Return the ranges that sorted numbers make up."""
    found: list[tuple[int, int]] = []
    for number in numbers:
        if found and number == found[-1][1] + 1:
            found[-1] = (found[-1][0], number)
        else:
            found.append((number, number))
    return found
