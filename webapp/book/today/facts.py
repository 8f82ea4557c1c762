"""The facts of the book that a day is asked about, read in few statements and held until the book has changed.

Of vessels only those are read again whose cards have turned since. The rest is small: the last runs of each still,
what is wished of the fruits, the bottlings that have bottles, the checks of instruments.
"""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import TypedDict, TypeVar, cast
from weakref import WeakKeyDictionary

from webapp.book.cellar.endings import FALL_KEYS
from webapp.book.fold.registry_rows import with_flags
from webapp.book.fold.states import load_newest_of
from webapp.book.record.store import Book
from webapp.book.still.forecast import LOOKED_AT
from webapp.book.still.runs import KnownRun, runs_by_id
from webapp.book.today.asked import Asked, load_asked
from webapp.book.today.standing import Standing, standing_of
from webapp.kinds.goods_state import Bottling
from webapp.kinds.key import (
    Key,
    KeyOf,
    WishKey,
    bottling_key,
    instrument_key,
    name_in,
    run_key,
    vessel_key,
    wish_key,
)
from webapp.kinds.rows import InstrumentRow, VesselRow
from webapp.kinds.run_state import Wish
from webapp.kinds.state import EMPTY_VESSEL, Instrument, State
from webapp.words.houseunits import House

RECENT_DAYS = 3
S = TypeVar("S", bound=State)


class Phone(TypedDict):
    """A phone that is let in: when it was last heard, and which of its numbers have not come. [[low, high], ...]"""

    id: str
    name: str
    heard_at: str | None
    seen: list[list[int]]


@dataclass(frozen=True, slots=True)
class Registry:
    """What the registry says, read anew for every page."""

    turn: int
    entries: int
    unjudged: int
    instruments: Sequence[InstrumentRow]
    phones: Sequence[Phone]


class RunRef(TypedDict):
    """A run by its id: its still, its fruit; whether it is the newest of its still, or of the last days."""

    id: str
    still: str
    what: str
    is_recent: int


@dataclass(frozen=True, slots=True)
class Facts:
    """The facts of a book. runs: those of the last days and the newest of each still, newest first."""

    key: tuple[object, ...]
    turn: int
    standings: Mapping[str, Standing]
    runs: Sequence[KnownRun]
    past: Mapping[str, Sequence[KnownRun]]  # by still: its runs before the one under way, newest first
    wishes: Mapping[str, Wish]
    bottlings: Mapping[str, Bottling]
    checks: Mapping[str, Instrument]
    asked: Sequence[Asked]


_held: WeakKeyDictionary[Book, Facts] = WeakKeyDictionary()


def load_registry(book: Book) -> Registry:
    """Return the registry's part of a day, in one statement."""
    found: dict[str, list[str]] = {}
    for part, value in book.db.conn.execute(_REGISTRY):
        found.setdefault(part, []).append(value)
    seen: dict[str, list[list[int]]] = {}
    for device, low, high in map(json.loads, found.get("seen", ())):
        seen.setdefault(device, []).append([low, high])
    phones: list[Phone] = [json.loads(one) for one in found.get("device", ())]
    return Registry(
        int(found["turn"][0]), int(found["entries"][0]), int(found["unjudged"][0]),
        [json.loads(one) for one in found.get("instrument", ())],
        [{**phone, "seen": sorted(seen.get(phone["id"], []))} for phone in phones],
    )


def load_facts(book: Book, registry: Registry, house: House) -> Facts:
    """Return the facts of the book as it stands; read anew only where it has changed."""
    names = tuple(row["id"] for row in registry.instruments)
    key = (registry.turn, registry.entries, registry.unjudged, names, house)
    held = _held.get(book)
    if held and held.key == key:
        return held
    made = _load(book, key, held if held and held.turn <= registry.turn else None, registry, house)
    _held[book] = made
    return made


def _load(
    book: Book, key: tuple[object, ...], before: Facts | None, registry: Registry, house: House
) -> Facts:
    changed = _changed(book, before.turn if before else -1)
    asked = load_asked(book, house)
    rows = {row["mark"]: row for row in changed.vessels}
    recent = [ref["id"] for ref in changed.refs if ref["is_recent"]]
    instruments = {row["id"]: instrument_key(row["id"]) for row in registry.instruments}
    marks = {*rows, *(one.mark for one in asked if one.mark)}
    keys: list[Key] = [
        *map(vessel_key, marks), *map(run_key, recent), *changed.wishes, *map(bottling_key, changed.bottlings),
        *instruments.values(), *FALL_KEYS.values(),
    ]
    newest = _Newest(load_newest_of(book, keys))
    standings = {mark: one for mark, one in (before.standings if before else {}).items() if mark not in changed.marks}
    for mark, row in rows.items():
        one = standing_of(with_flags(row), newest(vessel_key(mark)) or EMPTY_VESSEL, newest)
        if one.holds or one.sort == "still":
            standings[mark] = one
    runs: list[KnownRun] = [{"id": one, **run} for one in recent if (run := newest(run_key(one)))]
    return Facts(
        key, registry.turn, standings, sorted(runs, key=lambda run: run["started_at"], reverse=True),
        _past(book, standings, changed.refs),
        {name_in(name): wish for name in changed.wishes if (wish := newest(name))},
        {one: held for one in changed.bottlings if (held := newest(bottling_key(one)))},
        {one: checks for one, name in instruments.items() if (checks := newest(name))},
        [one.with_history(newest(vessel_key(one.mark)) or EMPTY_VESSEL) if one.mark else one for one in asked],
    )


class _Newest:
    """The newest states of keys of every sort, read together."""

    def __init__(self, states: Mapping[str, State | None]) -> None:
        self._states = states

    def __call__(self, key: KeyOf[S]) -> S | None:
        """Return the newest state of a key."""
        return cast("S | None", self._states.get(key))  # the key says which sort of state it is


@dataclass(frozen=True, slots=True)
class _Changed:
    """What has to be read again: marks of all cards that have turned, rows of the vessels among them that hold a fill.
    """

    marks: set[str]
    vessels: list[VesselRow]
    refs: list[RunRef]
    wishes: list[WishKey]
    bottlings: list[str]


def _changed(book: Book, turn: int) -> _Changed:
    found: dict[str, list[str]] = {}
    for part, value in book.db.conn.execute(_CHANGED, {"turn": turn, "days": f"-{RECENT_DAYS} days"}):
        found.setdefault(part, []).append(value)
    return _Changed(
        set(found.get("mark", ())), [json.loads(one) for one in found.get("vessel", ())],
        [json.loads(one) for one in found.get("run", ())], [wish_key(one[2:]) for one in found.get("wish", ())],
        found.get("bottling", []),
    )


def _past(book: Book, standings: Mapping[str, Standing], refs: Sequence[RunRef]) -> dict[str, list[KnownRun]]:
    """Return by still under way its runs before, newest first, in one statement; none where no still runs."""
    at_work = {one.mark: one.run for one in standings.values() if one.run}
    before = [ref["id"] for ref in refs if ref["still"] in at_work and ref["id"] != at_work[ref["still"]]]
    known = runs_by_id(book, before) if before else {}
    found: dict[str, list[KnownRun]] = {still: [] for still in at_work}
    for run in known.values():
        found[run["still"]].append(run)
    return {still: sorted(some, key=lambda run: run["started_at"], reverse=True) for still, some in found.items()}


def _object(table: str, *names: str) -> str:
    pairs = ", ".join(f"'{name}', {table}.{name}" for name in names)
    return f"json_object({pairs})"


_REGISTRY = (  # names of columns are ours
    "SELECT 'turn', value FROM settings WHERE name = 'turn' "  # noqa: S608
    "UNION ALL SELECT 'entries', coalesce(max(book_no), 0) FROM entries "
    "UNION ALL SELECT 'unjudged', count(*) FROM unjudged "
    f"UNION ALL SELECT 'instrument', {_object('i', *InstrumentRow.__annotations__)} FROM instruments i "
    f"UNION ALL SELECT 'device', {_object('d', 'id', 'name', 'heard_at')} FROM devices d "
    "WHERE id <> 'desk' AND enrolled_at IS NOT NULL AND revoked_at IS NULL "
    "UNION ALL SELECT 'seen', json_array(device, low, high) FROM seen"
)
_HELD = "(v.sort = 'still' OR v.mark IN (SELECT mark FROM fills WHERE ended_at = ''))"
_CHANGED = (  # as above
    "WITH turned AS (SELECT mark FROM card_turns WHERE turn > :turn), "  # noqa: S608
    "bottled AS (SELECT substr(target, 3) AS id, lpa_ul AS ul FROM flows WHERE target >= 'b:' AND target < 'b;' "
    "UNION ALL SELECT substr(source, 3), -lpa_ul FROM flows WHERE source >= 'b:' AND source < 'b;') "
    "SELECT 'mark', mark FROM turned "
    f"UNION ALL SELECT 'vessel', {_object('v', *VesselRow.__annotations__)} FROM vessels v "
    f"WHERE NOT v.retired AND {_HELD} AND (:turn < 0 OR v.mark IN (SELECT mark FROM turned)) "
    "UNION ALL SELECT 'run', json_object('id', r.id, 'still', r.still, 'what', r.what, 'is_recent', "
    "r.started_at > datetime('now', :days) OR r.id = (SELECT id FROM runs WHERE still = v.mark "
    "ORDER BY started_at DESC, id DESC LIMIT 1)) FROM vessels v JOIN runs r ON r.id IN (SELECT id FROM runs "
    f"WHERE still = v.mark ORDER BY started_at DESC, id DESC LIMIT {LOOKED_AT}) "
    "WHERE v.sort = 'still' AND NOT v.retired "
    "UNION ALL SELECT 'wish', key FROM (SELECT DISTINCT key FROM states WHERE key >= 'c:' AND key < 'c;' LIMIT 60) "
    "UNION ALL SELECT 'bottling', id FROM bottled GROUP BY id HAVING sum(ul) > 0"
)
