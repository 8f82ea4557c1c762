"""The account of feints by fruit: heads and tails set aside, what went into later runs, was destroyed, and stands.

Feints go from fruit to fruit at the hand of the distiller; the account says of which fruit they came and into which
they went. Low wines are a run's charge and not counted here.
"""

from __future__ import annotations

from webapp.book.fold.states import load_fills
from webapp.book.record.store import Book
from webapp.book.still import runs
from webapp.kinds.effects.plan import fruit_of

PARTS = ("heads", "tails")
KEYS = ("heads", "tails", "used", "destroyed", "standing")


def account(book: Book, most: int = 500) -> list[dict[str, object]]:
    """Return one line a fruit: heads and tails gathered, used in runs of it, destroyed, and standing. [L pure alcohol]

    `used` is by the fruit of the run that had them. `destroyed` and `standing` are by the fruit last named on the
    vessel they are in.
    """
    lines: dict[str, dict[str, float]] = {}

    def add(what: str, key: str, litres: float) -> None:
        line = lines.setdefault(fruit_of(what) or "not named", dict.fromkeys(KEYS, 0.0))
        line[key] += litres

    for run in runs.runs(book, limit=most):
        for part in run["fractions"]:
            if part["fraction"] in PARTS:
                add(run["what"], part["fraction"], part["lpa_l"] or 0.0)
                if part.get("goes_to") in ("destroyed", "drain"):
                    add(run["what"], "destroyed", part["lpa_l"] or 0.0)
        used = run["charge"].get("feints_lpa_l") or 0.0
        if used:
            add(run["what"], "used", used)
    for row in book.query(
        "SELECT f.lpa_ul, coalesce(l.what, '') AS what FROM flows f LEFT JOIN fills l ON l.id = f.source_fill "
        "WHERE f.target = 'out:destroyed' AND f.reason = 'destruction' "
        "AND (l.what LIKE 'heads%' OR l.what LIKE 'tails%')"
    ):
        add(row["what"], "destroyed", row["lpa_ul"] / 1e6)
    rows = book.query("SELECT mark FROM vessels WHERE sort IN ('receiver', 'can', 'tank') ORDER BY mark")
    for held in load_fills(book, (row["mark"] for row in rows)).values():
        if held and held["what"].split(" ")[0] in PARTS:
            add(held["what"], "standing", held["lpa_l"] or 0.0)
    return [{"fruit": fruit, **line} for fruit, line in sorted(lines.items())]
