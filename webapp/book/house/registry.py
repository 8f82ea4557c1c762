"""The registry: vessels, instruments, limits, the site. Changed by people at the desk; each change is on record.

What the fold has computed with the old row is computed again: at once where it is little, else a slice at a time
(unjudged.py).
"""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from datetime import datetime
from typing import SupportsFloat
from zoneinfo import ZoneInfo

import webapp.kinds
from webapp.book.before.corrections import table_typed
from webapp.book.fold import unjudged
from webapp.book.fold.reader_tables import turn_cards
from webapp.book.fold.registry_rows import VESSEL_FLAGS, load_site, with_flags
from webapp.book.house.check_limits import check_limits, set_check_limit
from webapp.book.house.places import LAST_PUT
from webapp.book.record.changes import changes, note_change
from webapp.book.record.errors import BookError
from webapp.book.record.months import zone_named
from webapp.book.record.store import Book
from webapp.kinds.key import instrument_key, neighbours_key, vessel_key
from webapp.kinds.rows import InstrumentRow, SiteSettings, VesselRow
from webapp.trade.marks import BadMark, parse_mark

SORTS = ("fermenter", "still", "receiver", "tank", "cask", "can", "place")
SCOPES = ("site", "material", "sort", "vessel")
TEXT_MOST = 500
_NUMBERS = ("capacity_l", "working_l", "tare_kg")
_TEXTS = ("name", "title", "place", "wood", "toast", "use", "size_class", "note")
# No check and no effect looks at these.
_SITE_ONLY_SHOWN = ("name", "decimal_mark", "accounts", "season_month", "due", "loss_allowance", "tasting",
                    "ready_rules", "group", "language", "pin_at_tax")  # the last is looked at as an entry comes
_INSTRUMENT = ("id", "sort", "title", "low", "high", "unit", "due_on", "state", "corrections", "accuracy",
               "interval")
__all__ = [
    "changes",
    "check_limits",
    "instruments",
    "limits",
    "put_instrument",
    "put_vessel",
    "set_check_limit",
    "set_limit",
    "set_site",
    "site",
    "vessel",
    "vessels",
]


def find_vessels(
    book: Book, *, sort: str | None = None, text: str = "", limit: int = 200, offset: int = 0
) -> list[VesselRow]:
    """Return vessels in use first, by sort and name, whose mark, name, title or place holds the text.

    A place is where an entry put the vessel last, else what the registry says.
    """
    like = "%" + text.replace("\\", "\\\\").replace("%", "\\%").replace("_", "\\_") + "%"
    rows = book.rows(
        VesselRow,
        f"WITH put AS MATERIALIZED ({LAST_PUT} HAVING :text <> '') "  # noqa: S608
        "SELECT * FROM vessels WHERE (:sort IS NULL OR sort = :sort) AND (:text = '' OR mark LIKE :like ESCAPE '\\' "
        "OR title LIKE :like ESCAPE '\\' OR mark IN (SELECT mark FROM put WHERE place LIKE :like ESCAPE '\\') "
        "OR (place LIKE :like ESCAPE '\\' AND mark NOT IN (SELECT mark FROM put))) "
        "ORDER BY retired, sort, length(name), name LIMIT :limit OFFSET :offset",
        {"sort": sort, "text": text, "like": like, "limit": limit, "offset": offset},
    )
    return [with_flags(row) for row in rows]


def vessels(book: Book, sort: str | None = None) -> list[VesselRow]:
    """Return all vessels, or those of one sort, retired ones last, by name."""
    rows = book.rows(
        VesselRow,
        "SELECT * FROM vessels WHERE ?1 IS NULL OR sort = ?1 ORDER BY retired, sort, length(name), name", (sort,),
    )
    return [with_flags(row) for row in rows]


def vessel(book: Book, mark: str) -> VesselRow | None:
    """Return a vessel by its stored mark, or None."""
    row = book.row(VesselRow, "SELECT * FROM vessels WHERE mark = ?", (mark,))
    return with_flags(row) if row else None


def put_vessel(book: Book, row: Mapping[str, object], by: str) -> VesselRow:
    """Add a vessel, or change the given columns of an existing one; return it. BookError names the fault."""
    with book.write() as database:
        try:
            mark = parse_mark(str(row.get("mark") or ""))
        except BadMark as error:
            raise BookError(str(error)) from error
        before = vessel(book, mark)
        kept: Mapping[str, object] = before or {}
        after = _checked_vessel(mark, {**kept, **row, "mark": mark})
        # An upsert by the primary key, columns by name.
        database.table("vessels").upsert(after, pk="mark")
        note_change(book, by, "vessel", mark, before, after)
        sizes = {str(row["size_class"]) for row in (before, after) if row}
        unjudged.note_keys(book, vessel_key(mark), *map(neighbours_key, sizes))
        turn_cards(book, {mark})
        unjudged.judge_slice(book)
        found = vessel(book, mark)
        assert found is not None
        return found


def instruments(book: Book) -> list[InstrumentRow]:
    """Return all instruments by id."""
    return book.rows(InstrumentRow, "SELECT * FROM instruments ORDER BY id")


def put_instrument(book: Book, row: Mapping[str, object], by: str) -> dict[str, object]:
    """Add an instrument or change one; return it. BookError where it has no id or no sort."""
    with book.write() as database:
        instrument_id = str(row.get("id") or "").strip()[:40]
        if not instrument_id:
            raise BookError("An instrument needs an id, such as TH-2. Type it.")
        before = book.one("SELECT * FROM instruments WHERE id = ?", (instrument_id,))
        unsaid = {"title": "", "unit": "", "state": "in use", "corrections": "", "accuracy": ""}
        said = unsaid | (before or {}) | dict(row)
        after = {name: said.get(name) for name in _INSTRUMENT} | {"id": instrument_id}
        if not after["sort"]:
            raise BookError("Say what sort of instrument it is: thermometer, alcoholmeter, scale.")
        for name in ("low", "high"):
            after[name] = _number(after[name], f"The {name} end of the scale")
        after["interval"] = _number(after["interval"], "The interval of the scale")
        if after["interval"] is not None and not after["interval"] > 0:
            raise BookError("The interval of the scale is above 0. Leave it empty where it is not known.")
        after["due_on"] = after["due_on"] or None
        if "corrections" in row:
            after["corrections"] = table_typed(str(row["corrections"] or ""))
        database.table("instruments").upsert(after, pk="id")
        note_change(book, by, "instrument", instrument_id, before, after)
        unjudged.note_keys(book, instrument_key(instrument_id))
        unjudged.judge_slice(book)
        return after


def limits(book: Book) -> list[dict[str, object]]:
    """Return every limit that somebody has set: scope, key, kind, field, usual, possible ([low, high] or None)."""
    rows = book.query("SELECT * FROM limits ORDER BY scope, key, kind, field")
    return [
        row | {name: json.loads(row[name]) if row[name] else None for name in ("usual", "possible")} for row in rows
    ]


def set_limit(
    book: Book, scope: str, key: str, kind: str, field: str, usual: Sequence[float | None] | None,
    possible: Sequence[float | None] | None, by: str,
) -> None:
    """Set the usual and the possible range of a field, in its canonical unit; both None takes the limit out."""
    spec = webapp.kinds.get(kind)
    if scope not in SCOPES or spec is None or spec.field(field) is None:
        raise BookError("There is no such field to limit. Pick the entry and its field from the list.")
    ranges = {"usual": _range(usual), "possible": _range(possible)}
    with book.write() as database:
        where = (scope, key if scope != "site" else "", kind, field)
        before = book.one(
            "SELECT usual, possible FROM limits WHERE scope = ? AND key = ? AND kind = ? AND field = ?", where
        )
        if any(ranges.values()):
            line = (*where, ranges["usual"], ranges["possible"])
            database.conn.execute("INSERT OR REPLACE INTO limits VALUES (?, ?, ?, ?, ?, ?)", line)
        else:
            database.conn.execute("DELETE FROM limits WHERE scope = ? AND key = ? AND kind = ? AND field = ?", where)
        note_change(book, by, "limit", "/".join(where), before, ranges if any(ranges.values()) else None)
        unjudged.note_places(book, *_select_concerned(scope, where[1], kind))
        turn_cards(book, {row["mark"] for row in book.query("SELECT mark FROM vessels")})
        unjudged.judge_slice(book)


def site(book: Book) -> SiteSettings:
    """Return the site's settings: name, units, decimal_mark, height_m, areas, time_zone, and any other that was set."""
    return load_site(book)


def zone(book: Book) -> ZoneInfo:
    """Return the time zone of the house."""
    return zone_named(str(load_site(book).get("time_zone") or ""))


def at_house(book: Book, minute: str) -> str:
    """Return a minute by the house's clock with its offset, to the second. Raises ValueError where it is no time."""
    return datetime.fromisoformat(minute).replace(tzinfo=zone(book)).isoformat(timespec="seconds")


def set_site(book: Book, values: Mapping[str, object], by: str) -> SiteSettings:
    """Set some of the site's settings; the others stay. Where a check may look at them, all is judged again."""
    with book.write() as database:
        before: Mapping[str, object] = load_site(book)
        lines = [(str(name), json.dumps(value)) for name, value in values.items()]
        database.conn.executemany("INSERT OR REPLACE INTO site VALUES (?, ?)", lines)
        note_change(book, by, "site", "", {k: before.get(k) for k in values}, values)
        book.memory.registry.clear()
        site = load_site(book)
        after: Mapping[str, object] = site
        if any(before.get(name) != after[name] for name in after if name not in _SITE_ONLY_SHOWN):
            unjudged.note_places(book, unjudged.ALL)
            unjudged.judge_slice(book)
        return site


def _select_concerned(scope: str, key: str, kind: str) -> tuple[str, tuple[str, ...]]:
    """Return a SELECT of the places in the fold that a limit may concern, and its parameters."""
    sql = "SELECT f.order_key FROM folded f JOIN entries e ON e.id = f.entry WHERE e.kind = ?"
    if scope == "vessel":
        return f"{sql} AND f.mark = ?", (kind, key)
    if scope == "sort":
        return f"{sql} AND f.mark IN (SELECT mark FROM vessels WHERE sort = ?)", (kind, key)  # noqa: S608
    return sql, (kind,)


def _checked_vessel(mark: str, said: Mapping[str, object]) -> dict[str, object]:
    if said.get("sort") not in SORTS:
        raise BookError(f"Say what sort of vessel {mark} is: {', '.join(SORTS)}.")
    row: dict[str, object] = {"mark": mark, "sort": said["sort"]}
    row |= {name: str(said.get(name) or "").strip()[:TEXT_MOST] for name in _TEXTS}
    row["name"] = row["name"] or mark.rpartition("-")[0]
    row["title"] = row["title"] or row["name"]
    row["dips"] = str(said.get("dips") or "")
    row |= {name: _number(said.get(name), f"{name.rpartition('_')[0].capitalize()} of {mark}") for name in _NUMBERS}
    return row | {name: int(bool(said.get(name))) for name in VESSEL_FLAGS}


def _number(value: object, what: str) -> float | None:
    if value is None or value == "":
        return None
    try:
        number = float(value) if isinstance(value, str | SupportsFloat) else float("nan")
    except (TypeError, ValueError):
        number = float("nan")
    if not -1e9 < number < 1e9:
        raise BookError(f"{what} is no plain number. Type it in digits, or leave it empty.")
    return number


def _range(pair: Sequence[float | None] | None) -> str | None:
    if pair is None or list(pair) == [None, None]:
        return None
    low, high = (_number(end, "A limit") for end in pair)
    if low is not None and high is not None and low > high:
        raise BookError("The lower limit is above the upper one. Swap them.")
    return json.dumps([low, high])
