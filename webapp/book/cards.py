"""Cards: the facts of a vessel that a phone needs to work offline, and the choice of the cards that are new to it."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Collection, Mapping
from datetime import UTC, datetime
from typing import Final, NotRequired, TypedDict

import webapp.kinds
from webapp.book.before.accuracy import accuracy_of
from webapp.book.before.corrections import in_force
from webapp.book.before.reading_context import context_for, last_values
from webapp.book.cellar import casks, ferments, tastings
from webapp.book.fold import queries, unjudged
from webapp.book.fold.registry_rows import load_limits
from webapp.book.fold.states import load_newest, load_newest_of
from webapp.book.goods import goods
from webapp.book.house import people, registry
from webapp.book.house.devices import DESK
from webapp.book.notes import Note, load_notes
from webapp.book.record.store import Book
from webapp.book.record.units import house_units
from webapp.book.still import runs
from webapp.book.still.card import PastRun, Taught, still_part
from webapp.kinds.entry import Correction, Entry, Ranges
from webapp.kinds.key import instrument_key, run_key, vessel_key
from webapp.kinds.read import Read
from webapp.kinds.rows import InstrumentRow, SiteSettings, VesselRow
from webapp.kinds.spec import Kind
from webapp.kinds.state import EMPTY_VESSEL, NO_FILL, Body, Line, PlannedVat, Value, Vessel
from webapp.trade.stillprior import Learnt
from webapp.words.houseunits import House
from webapp.words.lines import summary_in

ROUND_MOST = 300
RECENT_MOST = 12
CURVE_MOST = 60  # points
RUN_PAUSE_S = 12 * 3600  # longer than any pause within a run
CONTEXT = ("og", "tare_kg", "juice_share", "volume_l", "strength_pct", "mass_kg", "lpa_l", "dips", "cask_dips")


class LastValue(TypedDict):
    """The last value of a field on a vessel: canonical, and as it was typed."""

    value: Value
    raw: str
    unit: str
    at: str


class CardLine(TypedDict):
    """One entry in the list of a vessel's latest."""

    entry: str
    kind: str
    at: str
    person: str
    phone: str  # as the house calls it; "" where it was typed at the desk
    summary: str


class InstrumentOnCard(InstrumentRow):
    """An instrument, with what is to be added to what it shows, and whether its last check is bad or too old."""

    correction: Correction | None
    doubtful: bool


class Card(TypedDict):
    """All that a phone needs of one vessel to work offline."""

    mark: str
    rev: int
    name: str
    title: str
    sort: str
    place: str
    capacity_l: float | None
    working_l: float | None
    tare_kg: float | None
    in_zone: bool
    curved: bool
    holds: dict[str, object] | None
    context: dict[str, object]
    last: dict[str, dict[str, LastValue]]
    limits: dict[str, Mapping[str, Ranges]]
    recent: list[CardLine]
    curves: dict[str, list[list[float]]]
    queries: list[queries.CardQuestion]
    run: runs.KnownRun | None
    past_runs: list[PastRun]
    forms: list[str]
    judging: bool  # the book is still working out what late entries change here
    still: NotRequired[Taught]
    still_lessons: NotRequired[Learnt | None]
    planned: NotRequired[PlannedVat]
    cask: NotRequired[casks.CaskPart]
    ferment: NotRequired[ferments.FermentPart | None]


class Standing(TypedDict):
    """What the desk shows of a vessel as it stands."""

    state: Vessel
    holds: dict[str, object] | None
    run: runs.KnownRun | None
    queries: list[queries.CardQuestion]
    curves: dict[str, list[list[float]]]


class CardsSince(TypedDict):
    """The cards that have changed after a cursor, with the lists that every phone keeps whole."""

    cursor: int
    more: bool
    cards: list[Card]
    gone: list[str]
    people: list[people.PersonOnPhone]
    instruments: list[InstrumentOnCard]
    site: SiteSettings
    notes: list[Note]
    tastings: list[tastings.TastingOnPhone]


class GoodsSince(TypedDict):
    """The goods in bottles, where a phone does not have them already, and the name of this list of them."""

    goods_rev: str
    goods: NotRequired[list[goods.GoodsOnPhone]]


def goods_since(book: Book, known: str) -> GoodsSince:
    """Return the goods in bottles, unless `known` is the name of the list as it stands: it is long and changes seldom.
    """
    now = goods.for_phones(book)
    rev = hashlib.sha256(json.dumps(now, sort_keys=True).encode()).hexdigest()[:16]
    return {"goods_rev": rev} if rev == known else {"goods_rev": rev, "goods": now}


def cards_since(book: Book, since: int, limit: int = ROUND_MOST, hands: Collection[str] = ()) -> CardsSince:
    """Return the changes after a cursor: cursor, more, cards, gone, people, instruments, site, notes, tastings.

    `hands`: the codes of those who use the phone that asks, whose PIN it may look at.
    """
    rows = book.query(
        "SELECT mark, turn FROM card_turns WHERE turn > ? ORDER BY turn LIMIT ?",
        (since, max(1, min(limit, ROUND_MOST)) + 1),
    )
    more = len(rows) > limit
    rows = rows[:limit]
    made = {row["mark"]: card(book, row["mark"]) for row in rows}
    return {
        "cursor": rows[-1]["turn"] if rows else since, "more": more,
        "cards": [one for one in made.values() if one], "gone": [mark for mark, one in made.items() if one is None],
        "people": people.for_phones(book, hands), "instruments": _instruments(book), "site": registry.site(book),
        "notes": load_notes(book), "tastings": tastings.for_phones(book),
    }


def _instruments(book: Book) -> list[InstrumentOnCard]:
    """Return the house's instruments, each with the correction that is in force now."""
    rows = registry.instruments(book)
    states = load_newest_of(book, (instrument_key(row["id"]) for row in rows))
    today, made = datetime.now(UTC).date().isoformat(), []
    for row in rows:
        state = states.get(instrument_key(row["id"]))
        known = accuracy_of(row, state, today)
        one: InstrumentOnCard = {**row, "correction": in_force(row, state), "doubtful": known["doubtful"]}
        made.append(one)
    return made


def card(book: Book, mark: str) -> Card | None:
    """Return a vessel's card, or None where the book has no such vessel in use."""
    row = registry.vessel(book, mark)
    if row is None or row["retired"]:
        return None
    state = load_newest(book, vessel_key(mark)) or EMPTY_VESSEL
    kinds = _kinds_of(row)
    limits = load_limits(book)
    contexts = {kind.name: context_for(kind, row, state, limits) for kind in kinds}
    first: Body = next(iter(contexts.values()), {})
    bodies, phones = _bodies(book, kinds, state)
    turn = book.one("SELECT turn FROM card_turns WHERE mark = ?", (mark,))
    current = runs.run(book, state["run"]) if state["run"] else None
    made: Card = {
        "mark": mark, "rev": turn["turn"] if turn else 0, "name": row["name"], "title": row["title"],
        "sort": row["sort"], "capacity_l": row["capacity_l"], "working_l": row["working_l"],
        "tare_kg": row["tare_kg"], "in_zone": row["in_zone"], "curved": row["curved"],
        "place": state.get("place") or row["place"],
        "holds": _holds(state), "context": {name: first.get(name) for name in CONTEXT},
        "last": {kind.name: last for kind in kinds if (last := _last(kind, state, bodies))},
        "limits": {name: context["limits"] for name, context in contexts.items() if context["limits"]},
        "recent": _recent(state, bodies, phones, house_units(book)), "curves": _curves(kinds, state),
        "queries": queries.for_card(book, mark), "run": current, "past_runs": [],
        "forms": [kind.name for kind in kinds if kind.name != "opening" or may_open(state)],
        "judging": unjudged.is_being_judged(book, vessel_key(mark), run_key(state["run"] or "")),
    }
    if state.get("planned"):
        made["planned"] = state["planned"]
    # What its own job needs: a run, the rounds of the cellar.
    match row["sort"]:
        case "still":
            part = still_part(book, mark, state, current)
            made["past_runs"], made["still"] = part["past_runs"], part["still"]
            made["still_lessons"] = part["still_lessons"]
        case "cask":
            made["cask"] = casks.card_part(row, state)
        case "fermenter":
            made["ferment"] = ferments.card_part(book, state)
    return made


def may_open(state: Vessel) -> bool:
    """Whether the book knows a vessel by gauges alone: what stood there before the book began can still be told."""
    gauges = state["recent"].get("gauge", [])
    return state["recent"].keys() <= {"gauge"} and all(
        line["values"].get("purpose") == "opening" for line in gauges
    )


def load_standing(book: Book, row: VesselRow) -> Standing:
    """Return the part of a vessel's card that the desk shows. No phone needs it."""
    state = load_newest(book, vessel_key(row["mark"])) or EMPTY_VESSEL
    return {
        "state": state, "holds": _holds(state), "run": runs.run(book, state["run"]) if state["run"] else None,
        "queries": queries.for_card(book, row["mark"]), "curves": _curves(_kinds_of(row), state),
    }


def _kinds_of(row: VesselRow) -> list[Kind]:
    return [kind for kind in webapp.kinds.ALL if kind.floor and row["sort"] in kind.vessels]


def _holds(state: Vessel) -> dict[str, object] | None:
    names: Final = ("fill", "what", "material", "name", "since", "volume_l", "strength_pct", "lpa_l", "mass_kg", "og",
             "account", "charged", "closed", "sugar_added", "lot", "use", "fill_strength_pct", "aged_since",
             "label_strength_pct", "by_papers")
    held = state["holds"]
    return {name: held.get(name) for name in names} | {"mash": held["mash"]} if held else None


def _bodies(book: Book, kinds: list[Kind], state: Vessel) -> tuple[dict[str, Entry], dict[str, str]]:
    """Return the entries that the card shows, as they were handed in, and the names of their phones, by id."""
    ids = {line["entry"] for line, _ in _newest_lines(state)}
    ids |= {line["entry"] for kind in kinds for _, line in last_values(kind, state).values()}
    if not ids:
        return {}, {}
    marks = ", ".join("?" * len(ids))
    rows = book.query(
        "SELECT e.id, e.body, coalesce(d.name, '') phone FROM entries e "  # noqa: S608
        f"LEFT JOIN devices d ON d.id = e.device AND d.id <> '{DESK}' WHERE e.id IN ({marks})",
        list(ids),
    )
    return {row["id"]: json.loads(row["body"]) for row in rows}, {row["id"]: row["phone"] for row in rows}


def _last(kind: Kind, state: Vessel, bodies: Mapping[str, Entry]) -> dict[str, LastValue]:
    found: dict[str, LastValue] = {}
    for name, (value, line) in last_values(kind, state).items():
        raw = bodies[line["entry"]]["values"].get(name) or {}
        found[name] = {"value": value, "raw": raw.get("raw", ""), "unit": raw.get("unit", ""), "at": line["at"]}
    return found


def _newest_lines(state: Vessel) -> list[tuple[Line, str]]:
    lines = [(line, name) for name, kind_lines in state["recent"].items() for line in kind_lines]
    return sorted(lines, key=lambda pair: (pair[0]["at"], pair[0]["entry"]), reverse=True)[:RECENT_MOST]


def _recent(
    state: Vessel, bodies: Mapping[str, Entry], phones: Mapping[str, str], house: House
) -> list[CardLine]:
    return [
        {
            "entry": line["entry"], "kind": name, "at": line["at"], "person": line["person"],
            "phone": phones[line["entry"]], "summary": _summary(name, line, bodies[line["entry"]], house),
        }
        for line, name in _newest_lines(state)
    ]


def _summary(kind_name: str, line: Line, body: Entry, house: House) -> str:
    kind = webapp.kinds.get(kind_name)
    return summary_in(Read(body, kind, line["values"], line["figures"], ()), house) if kind else kind_name


def _curves(kinds: list[Kind], state: Vessel) -> dict[str, list[list[float]]]:
    """Return per figure the points (seconds since 1970, value), oldest first, of the fill that the vessel holds now."""
    since = (state["holds"] or NO_FILL)["since"]
    found: dict[str, list[list[float]]] = {}
    for kind in kinds:
        for name in kind.curve:
            points = [
                [datetime.fromisoformat(line["at"]).timestamp(), round(float(value), 6)]
                for line in state["recent"].get(kind.name, ())
                if line["at"] >= since
                and isinstance(value := line["figures"].get(name, line["values"].get(name)), int | float)
            ]
            if kind.name == "run_reading":
                points = _last_run(points)
            if points:
                found[name] = sorted([*found.get(name, []), *points])[-CURVE_MOST:]
    return found


def _last_run(points: list[list[float]]) -> list[list[float]]:
    """Return the points since the last long pause: a line from one run to the next says nothing."""
    points = sorted(points)
    begun = [n for n in range(1, len(points)) if points[n][0] - points[n - 1][0] > RUN_PAUSE_S]
    return points[begun[-1] if begun else 0 :]
