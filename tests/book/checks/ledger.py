"""A book in memory for tests of checks: entries in the order they were read, one line each, and what was asked."""

from collections.abc import Mapping
from datetime import UTC, datetime, timedelta
from typing import Any

import webapp.kinds
from tests.words.well_said import check_said
from webapp.book.before.limits import scopes_of
from webapp.book.before.view import BookView, Query
from webapp.book.checks import clock, questions
from webapp.book.fold.evaluate import with_notes
from webapp.kinds.expected import Suggestion
from webapp.kinds.read import Read, read_entry
from webapp.kinds.spec import NOTHING
from webapp.trade import units
from webapp.trade.marks import make_mark
from webapp.words import sentence

# Of every kind's fields and figures: a question points to one of them, or to none.
NAMES = {one.name for kind in webapp.kinds.ALL for one in (*kind.fields, *kind.figures)}
ZONE = "+02:00"
VESSELS = {
    "F1": {"sort": "fermenter", "capacity_l": 2000, "working_l": 1700},
    "S1": {"sort": "still", "capacity_l": 650, "working_l": 530},
    "R1": {"sort": "receiver", "capacity_l": 30, "working_l": 28},
    "R2": {"sort": "receiver", "capacity_l": 150, "working_l": 145},
    "R3": {"sort": "receiver", "capacity_l": 150, "working_l": 145},
    "T1": {"sort": "tank", "capacity_l": 1000, "working_l": 950},
    "T3": {"sort": "tank", "capacity_l": 300, "working_l": 285},
    "T4": {"sort": "tank", "capacity_l": 500, "working_l": 480},
    "C1": {"sort": "cask", "capacity_l": 225.0, "tare_kg": 50.0, "use": "used"},
    "C2": {"sort": "cask", "capacity_l": 30.0, "tare_kg": 10.6, "use": "used"},
    "C3": {"sort": "cask", "capacity_l": 225.0, "tare_kg": 50.0, "use": "new"},
    "C4": {"sort": "cask", "capacity_l": 200.0, "tare_kg": 46.3, "use": "used", "place": "CELL-A1"},
    "C5": {"sort": "cask", "capacity_l": 200.0, "tare_kg": 46.3, "use": "used", "place": "LOFT-J1"},
    **{f"N{n}": {"sort": "cask", "capacity_l": 225.0, "tare_kg": 50.0, "use": "used"} for n in range(1, 6)},
}
INSTRUMENTS = {
    "AH-1": {"sort": "alcoholmeter", "low": 60, "high": 80, "unit": "pct_glass"},
    "SG-1": {"sort": "saccharometer", "low": 0.990, "high": 1.100, "unit": "SG"},
}


class Ledger:
    """`enter` reads, asks, and folds one entry, as the book does; a stop keeps the entry out of the fold."""

    def __init__(self, **site: Any) -> None:
        self.site_values = {"height_m": 310, "units": "metric", **site}
        self.states: dict[str, Any] = {}
        self.flows: list[tuple[str, str, str, float]] = []
        self.count = 0

    def vessel(self, mark: str) -> Mapping[str, Any] | None:
        name = mark.split("-")[0]
        return {"mark": mark, "name": name, "size_class": "", **VESSELS[name]} if name in VESSELS else None

    def like(self, vessel: Mapping[str, Any], most: int) -> list[Mapping[str, Any]]:
        size = round(vessel["capacity_l"])
        alike = [name for name, row in VESSELS.items() if row["sort"] == "cask" and round(row["capacity_l"]) == size]
        rows = [self.vessel(make_mark(name)) for name in alike if name != vessel["name"]]
        return [row for row in rows if row][:most]

    def instrument(self, instrument_id: str) -> Mapping[str, Any] | None:
        return INSTRUMENTS.get(instrument_id)

    def person(self, code: str) -> Mapping[str, Any] | None:
        return {"NS": {"name": "Noor S."}, "PR": {"name": "Pavel R."}}.get(code)

    def site(self) -> Mapping[str, Any]:
        return self.site_values

    def enter(
        self, kind_name: str, vessel: str, at: str, *, person: str = "NS", typed_min: float = 0, skew_s: float = 0,
        device: str = "d-1", via: str = "", after_h: float = 0, **values: str,
    ) -> list[Query]:
        """Enter one reading; `at` is local time, values as "19.2", "66.6 degF" or "78.6 pct_glass AH-1".

        `flows` then are those of this entry: source, target, reason, pure alcohol [L].
        """
        kind = webapp.kinds.get(kind_name)
        assert kind is not None
        self.count += 1
        read_at = datetime.fromisoformat(f"{at.replace(' ', 'T')}:00{ZONE}")
        typed_at = read_at + timedelta(minutes=typed_min)
        given = {name: _given(kind.field(name), text) for name, text in values.items()}
        entry = {
            "id": f"e{self.count}", "kind": kind_name, "mark": make_mark(vessel) if vessel else "", "person": person,
            "device": device, "seq": self.count, "read_at": read_at.isoformat(), "typed_at": typed_at.isoformat(),
            "values": given,
        }
        read = read_entry(kind, entry, self._context(entry["mark"]))
        assert not [p for p in read.problems if p.weight == "refuse"], read.problems
        return self.take(read, skew_s, via, after_h)

    def take(self, read: Read, skew_s: float = 0, via: str = "", after_h: float = 0) -> list[Query]:
        """Ask about an entry that is read, and fold it."""
        entry, kind = read.entry, read.kind
        read_at, typed_at = (datetime.fromisoformat(entry[name]) for name in ("read_at", "typed_at"))
        view = BookView(
            at=_utc(read_at - timedelta(seconds=skew_s)), typed_at=_utc(typed_at - timedelta(seconds=skew_s)),
            received_at=_utc(typed_at + timedelta(hours=after_h)), via=via,
            skew_s=skew_s, root=entry["id"], registry=self, look_up=self.states.get,
        )
        view = view.within(scopes_of(read, view))
        asked = questions(read, view)
        for each in asked:
            check_said(each.message)
            assert each.weight in ("stop", "ask", "note") and each.field in {"", *entry, *NAMES}, each
        self.states.update(clock.device_state(read, view))
        stopped = any(q.weight == "stop" for q in asked)
        effect = kind.effect(read, view) if kind.effect and not stopped else NOTHING
        self.flows = [(flow.source, flow.target, flow.reason, flow.lpa_ul / 1e6) for flow in effect.flows]
        self.states.update(with_notes(effect, read, view).states)
        return asked

    def _context(self, mark: str) -> dict[str, Any]:
        held = (self.states.get(f"v:{mark}") or {}).get("holds") or {}
        figures = {name: held.get(name) for name in ("og", "volume_l", "strength_pct", "mass_kg", "lpa_l")}
        return {**figures, "tare_kg": VESSELS.get(mark.split("-")[0], {}).get("tare_kg"), "last": {}, "limits": {}}


def only(asked: list[Query], code: str) -> Query:
    """Return the one query there is, which must have this code."""
    assert [q.code for q in asked] == [code], asked
    return asked[0]


def codes(asked: list[Query]) -> list[str]:
    return [q.code for q in asked]


def _given(spec: Any, text: str) -> dict[str, str]:
    parts = text.split(" ")
    if not spec.units:
        return {"raw": make_mark(text) if spec.sort == "mark" else text}
    unit = parts[1] if len(parts) > 1 else spec.units[0]
    assert units.symbol(unit) is not None
    return {"raw": parts[0], "unit": unit, "instrument": parts[2] if len(parts) > 2 else ""}


def _utc(moment: datetime) -> str:
    return moment.astimezone(UTC).strftime("%Y-%m-%dT%H:%M:%SZ")


def hint(suggestion: Suggestion) -> str:
    """Return what is said beside a suggested figure."""
    assert suggestion.message
    return sentence(suggestion.message)
