"""After the faults: is everything there once, does the chain hold, and is the fold that of one quiet hand-in?"""

from __future__ import annotations

import itertools
import json
from collections import Counter
from collections.abc import Callable, Iterable
from datetime import datetime, timedelta
from pathlib import Path
from typing import Any

from tests.book.conftest import fill_world
from tests.faults.tally import Tally
from webapp.book.fold import fold, unjudged
from webapp.book.fold.evaluate import FAULT
from webapp.book.intake import BATCH_MOST, hand_in
from webapp.book.opening import open_book
from webapp.book.periods import accounts
from webapp.book.record import counters, log
from webapp.book.record.store import Book


def judge(
    book_path: Path, kept: Iterable[dict[str, Any]], tally: Tally, furnish: Callable[[Book], None] = fill_world
) -> None:
    """Count what was lost and doubled against what the phones kept, and compare the fold with a quiet book's."""
    bodies = {entry["id"]: log.canonical(entry) for entry in kept}
    with open_book(book_path) as book:
        rows = book.query("SELECT * FROM entries ORDER BY book_no")
        found = Counter(row["id"] for row in rows)
        tally.entries += len(bodies)
        tally.lost += len(bodies.keys() - found.keys())
        tally.doubled += sum(found.values()) - len(found)
        tally.doubled += sum(n - 1 for n in Counter((row["device"], row["seq"]) for row in rows).values())
        assert found.keys() <= bodies.keys(), "the book has what nobody logged"
        assert all(row["body"] == bodies[row["id"]] for row in rows), "a body is not what was logged"
        tally.check()
        assert log.verify(book) == []
        unjudged.judge_all(book)  # as the server goes on to do: until then stock is half as it was
        assert accounts.verify(book) == []
        assert book.query("SELECT settled FROM aside") == []
        assert book.query("SELECT * FROM queries WHERE code = ?", (FAULT,)) == []
        for device in {row["device"] for row in rows}:
            assert counters.report_seen(book, device)["gaps"] == [], device
        assert book.one("PRAGMA integrity_check(1)") == {"integrity_check": "ok"}
        dump = fold.dump(book)
    assert dump == _quiet_dump(book_path.with_name("quiet.sqlite"), rows, bodies, furnish), "the folds differ"


def _quiet_dump(
    path: Path, rows: list[dict[str, Any]], bodies: dict[str, str], furnish: Callable[[Book], None]
) -> bytes:
    """Return the fold of a book that got the same entries with no fault, at the times at which they came."""
    with open_book(path) as book:
        furnish(book)
        how = lambda row: (row["received_at"], row["skew_s"], row["device"])  # noqa: E731
        for (received_at, skew_s, device), group in itertools.groupby(sorted(rows, key=how), key=how):
            now = datetime.fromisoformat(received_at)
            said = {"now": (now + timedelta(seconds=skew_s)).isoformat(), "device": device}
            for part in _parts(list(group)):
                hand_in(book, said | {"entries": [json.loads(bodies[row["id"]]) for row in part]}, via="phone", now=now)
        unjudged.judge_all(book)
        return fold.dump(book)


def _parts(rows: list[dict[str, Any]]) -> Iterable[list[dict[str, Any]]]:
    return [rows[at : at + BATCH_MOST] for at in range(0, len(rows), BATCH_MOST)]
