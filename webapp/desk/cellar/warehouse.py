"""Rooms as maps: what stands in each place, rows and positions taken from the names of the places. No page here."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, field

from webapp.book.house.places import PlacedVessel
from webapp.kinds.state import Fill
from webapp.trade.placenames import Spot, read_place, sort_key

LINES_MOST = 60  # rows, and positions in a row, of one map; what lies beyond is listed


@dataclass(frozen=True, slots=True)
class Standing:
    """A vessel where it stands. `holds` is None where it is empty; `is_asked`: a count found it elsewhere."""

    row: PlacedVessel
    holds: Fill | None
    is_asked: bool
    verdict: str


@dataclass(slots=True)
class Place:
    """One place: its name as it is written, and what stands there; nothing where it is free."""

    name: str
    spot: Spot
    standing: list[Standing] = field(default_factory=list)


@dataclass(slots=True)
class Room:
    """A room. `places` by (row, position); rows are in the order in which they are drawn, from the top."""

    key: str
    name: str
    rows: list[str] = field(default_factory=list)
    positions: list[str] = field(default_factory=list)
    places: dict[tuple[str, str], Place] = field(default_factory=dict)
    loose: list[Place] = field(default_factory=list)
    is_upright: bool = False
    row_word: str = ""
    position_word: str = ""

    @property
    def all_places(self) -> list[Place]:
        """All places of the room by name, those without a position first."""
        drawn = sorted(self.places.values(), key=lambda one: (sort_key(one.name), one.name))
        return [*self.loose, *drawn]

    @property
    def standing(self) -> list[Standing]:
        """All that stands in the room, in the order of places."""
        return [one for place in self.all_places for one in place.standing]

    @property
    def free(self) -> int:
        """How many places stand empty."""
        return sum(not place.standing for place in self.places.values())

    @property
    def lpa(self) -> float:
        """Pure alcohol in the room. [L at 20 °C]"""
        return sum((one.holds["lpa_l"] or 0.0) for one in self.standing if one.holds and not one.holds["mash"])

    def row_title(self, row: str) -> str:
        """Return the name of a row: `tier 3` where the places' names say so, else `A`."""
        return _title(self.row_word, row)

    def position_title(self, position: str) -> str:
        """Return the name of a position."""
        return _title(self.position_word, position)


def _title(word: str, text: str) -> str:
    return f"{word.upper()}{text}" if len(word) == 1 else f"{word} {text}".strip()


def rooms_of(
    vessels: Sequence[PlacedVessel], known: Sequence[str], holds: Mapping[str, Fill | None],
    names: Mapping[str, str], asked: Collection[str] = (), verdicts: Mapping[str, str] | None = None,
) -> list[Room]:
    """Return the rooms in their order, each with its places and what stands there.

    `known` are places that may stand empty; `names` are what the house calls its rooms, by how places begin; `asked`
    are the marks that a count found elsewhere; `verdicts` say by mark what a cask's loss looks like.
    """
    called = {sort_key(key): name for key, name in names.items()}
    found: dict[str, Room] = {}
    places: dict[tuple[str, str, str, str], Place] = {}
    for name in (*(one["stands"] for one in vessels if one["stands"]), *known):
        spot = read_place(name)
        key = _key_of(spot)
        room = found.setdefault(key[0], Room(key[0], called.get(key[0]) or spot.room))
        if key in places:
            continue
        places[key] = place = Place(name, spot)
        if not spot.position:
            room.loose.append(place)
            continue
        room.places[spot.row, spot.position] = place
        room.is_upright = room.is_upright or spot.is_upright
        room.row_word, room.position_word = room.row_word or spot.row_word, room.position_word or spot.position_word
    for vessel in vessels:
        if vessel["stands"]:
            mark = vessel["mark"]
            one = Standing(vessel, holds.get(mark), mark in asked, (verdicts or {}).get(mark, ""))
            places[_key_of(read_place(vessel["stands"]))].standing.append(one)
    for room in found.values():
        _lay_out(room)
    return [found[key] for key in sorted(found, key=lambda key: (not found[key].places, key))]


def _key_of(spot: Spot) -> tuple[str, str, str, str]:
    return sort_key(spot.room), spot.row, spot.position, "" if spot.position else spot.room


def _lay_out(room: Room) -> None:
    """Set the rows and positions of a room's map; what is beyond the bounds is listed."""
    room.rows = sorted({row for row, _ in room.places}, key=sort_key)[:LINES_MOST]
    room.positions = sorted({position for _, position in room.places}, key=sort_key)[:LINES_MOST]
    for key in [key for key in room.places if key[0] not in room.rows or key[1] not in room.positions]:
        room.loose.append(room.places.pop(key))
    if room.is_upright:
        room.rows.reverse()  # as one who stands before it sees it: the first tier at the foot
    room.loose = [place for place in room.loose if place.standing or not place.spot.position]
