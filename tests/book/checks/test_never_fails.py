"""No check fails on an entry that can be read at all, however odd, in whatever order such entries come."""

import random
from datetime import datetime, timedelta, timezone

import pytest

import webapp.kinds
from tests.book.checks.ledger import INSTRUMENTS, VESSELS, ZONE, Ledger
from tests.kinds.cases import entries
from webapp.book.checks import ALWAYS, CHECKS
from webapp.kinds.read import read_entry
from webapp.trade.marks import make_mark

COUNT, FEWER = 150, 60  # entries of each kind; fewer where it is no soak
SORTS = ("fermenter", "still", "receiver", "tank", "cask")
BEGAN = datetime.fromisoformat(f"2025-09-24T08:00:00{ZONE}")


SOAKED = [pytest.param(seed, COUNT, marks=pytest.mark.soak) for seed in range(20)]


@pytest.mark.parametrize(("seed", "count"), [(0, FEWER), *SOAKED])
def test_no_check_fails_on_odd_entries(seed: int, count: int) -> None:
    chance, book, asked = random.Random(seed), Ledger(units=random.Random(seed).choice(("metric", "us"))), []
    told = [(kind, entry, context) for kind in webapp.kinds.ALL for entry, context in entries(kind, count)]
    chance.shuffle(told)
    # Few vessels, so that each has a history.
    marks = {sort: [make_mark(n) for n, row in VESSELS.items() if row["sort"] == sort] for sort in SORTS}
    at, folded = BEGAN, 0
    for n, (kind, entry, context) in enumerate(told):
        at += timedelta(minutes=chance.choice((0, 1, 9, 300, 9000)))
        zone = timezone(timedelta(hours=chance.choice((-5, 0, 2))))
        sort = next((sort for sort in kind.vessels if sort in marks), "cask")
        instrument = chance.choice(("", "X-9", *INSTRUMENTS))
        values = {name: {**value, "instrument": instrument} for name, value in entry["values"].items()}
        whole = {
            **entry,
            "values": values,
            "id": f"e{n}",
            "mark": chance.choice(marks[sort]) if entry["mark"] else "",
            "person": chance.choice(("NS", "PR", "??")),
            "device": f"d-{n % 3}",
            "seq": n + 1,
            "read_at": at.astimezone(zone).isoformat(),
            "typed_at": (at + timedelta(minutes=chance.choice((-9, 0, 45)))).astimezone(zone).isoformat(),
        }
        read = read_entry(kind, whole, context)
        if any(problem.weight == "refuse" for problem in read.problems):
            continue
        asked += book.take(read, chance.choice((0, 0, 90, -4000)))
        folded += 1
    assert folded > count
    assert all(query.words.strip() == query.words and query.words for query in asked)
    assert all(query.weight in ("stop", "ask", "note") for query in asked)


def test_every_check_is_named_by_a_kind_and_every_name_is_a_check() -> None:
    named = {name for kind in webapp.kinds.ALL for name in kind.checks}
    assert named | set(ALWAYS) == set(CHECKS)
