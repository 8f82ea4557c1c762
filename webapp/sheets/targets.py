"""What a sheet can hold: vessels, people, instruments, opening stock, bottles, customers and growers; and its columns.

A column has the words by which it is known in the head of a sheet. Those of opening stock come from the kinds.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from webapp.kinds import opening, opening_goods
from webapp.kinds.spec import Field, Kind, Sort

SORT_WORDS = {
    "fermenter": "fermenter, fermentor, fermentation tank, mash tun, open fermenter",
    "still": "still, pot still, column still",
    "receiver": "receiver, spirit receiver",
    "tank": "tank, vat, steel tank, storage tank, blending tank, ibc",
    "cask": "cask, barrel, hogshead, butt, barrique, quarter cask",
    "can": "can, carboy, demijohn, drum",
    "place": "place, bottle store, store",
}
ACCESS_WORDS = {
    "floor": "floor, worker, staff", "distiller": "distiller, master distiller, blender",
    "office": "office, owner, manager, all",
}
PARTY_WORDS = {
    "customer": "customer, buyer, client, shop, importer",
    "supplier": "supplier, grower, farmer, orchard, vendor, cooper",
}
USE_WORDS = {
    "new": "new, virgin, first fill new", "used_once": "used once, once used, second fill",
    "used": "used, used more than once, refill, old",
}
ACCOUNT_WORDS = {one: one for one in ("production", "storage", "processing")}


@dataclass(frozen=True, slots=True)
class Column:
    """One column that a sheet may have. units: as of a field, the canonical one first."""

    name: str
    label: str
    words: tuple[str, ...]
    sort: Sort = "text"
    units: tuple[str, ...] = ()
    required: bool = False
    choices: tuple[tuple[str, tuple[str, ...]], ...] = ()  # (value, the words for it)
    decimals: int | None = None
    example: str = ""


@dataclass(frozen=True, slots=True)
class Target:
    """What the rows of a sheet become. kind: of the entries that rows are; empty for rows of the registry."""

    name: str
    title: str
    one: str
    many: str
    columns: tuple[Column, ...]
    kind: Kind | None = None

    def column(self, name: str) -> Column | None:
        """Return the column of that name, or None."""
        return next((column for column in self.columns if column.name == name), None)


def _words(text: str) -> tuple[str, ...]:
    return tuple(word.strip() for word in text.split(",") if word.strip())


def _choices(words: dict[str, str]) -> tuple[tuple[str, tuple[str, ...]], ...]:
    return tuple((value, (value.replace("_", " "), *_words(text))) for value, text in words.items())


_CODE_WORDS = _words(
    "code, mark, vessel, vessel code, vessel no, cask no, cask number, cask, barrel, barrel no, barrel number, tank, "
    "tank no, no, nr, number"
)
_PLACE_WORDS = _words("place, pos, position, location, bay, rack, where it stands, where")
_WOOD = Column("wood", "Wood", _words("wood, oak, timber"), example="oak")
_READ_ON = Column("read_on", "Gauged on", _words("gauged on, gauged, weighed on, date of gauge, gauge date, as of, "
                                                 "stock date, counted on"), "date", example="2026-11-02")

# Words by which the fields of opening stock are known besides their labels.
_FIELD_WORDS = {
    "spirit": "spirit, kind, type, product, contents, what, what it holds",
    "lot": "lot, lot no, batch, batch no",
    "gross": "gross, weight, full weight, gross mass, total weight",
    "tare": "tare, empty, tare weight, empty cask",
    "net_weight": "net, net weight, net mass, spirit weight",
    "volume": "volume, litres, liters, dip, content, bulk litres, bulk, wine gallons, gallons",
    "glass": "glass, hydrometer, indication, apparent",
    "temp": "temp, temperature",
    "strength": "abv, strength, alcohol, alc, vol, true strength, proof, strength at 20, corrected strength",
    "filled_on": "filled, date in, fill date, filling date, date filled, date of fill, date of filling",
    "filled_volume": "volume at fill, original volume, original litres, litres at fill, litres filled, fill volume",
    "filled_strength": "strength at fill, original strength, fill strength, abv at fill, fill abv, original abv",
    "filled_lpa": "pure alcohol at fill, original lpa, lpa at fill, lpa filled, original pure alcohol, fill lpa",
    "aged_since": "in wood since, youngest, youngest since, aged since",
    "papers": "papers, paper, evidence, document, cask book, certificate",
    "origin": "origin, source, from, distiller, supplier, distilled by",
    "material": "material, fruit, grain, raw material",
    "harvest": "harvest, vintage, year, crop, harvest year",
    "distilling_strength": "distilled at, still strength",
    "use": "use, fill no, previous use, history of the wood",
    "to_account": "account, tax account",
    "place": "place, pos, position, location, bay, rack",
    "batch": "batch, batch no, batch or lot, lot or batch, bottling",
    "lot_mark": "lot, lot mark, lot code, lot no",
    "bottle_size": "size, bottle size, bottle, format",
    "per_case": "per case, bottles per case, case size, in a case",
    "cases": "cases, boxes, full cases",
    "bottles": "bottles, loose, loose bottles, singles",
    "case_from": "first case, case from, from case",
    "case_to": "last case, case to, to case",
    "bottled_on": "bottled, date bottled, bottling date",
}
_EXAMPLES = {
    "spirit": "plum", "lot": "L-22-07", "gross": "209.9", "tare": "46.3", "strength": "60.2", "filled_on": "2022-11-21",
    "filled_volume": "195", "filled_strength": "62.5", "papers": "cask book 2 page 14", "origin": "own still",
    "material": "plum", "harvest": "2022", "use": "used once", "batch": "K-24-02", "bottle_size": "0.5",
    "per_case": "6", "cases": "40", "bottles": "3", "bottled_on": "2024-03-12",
}
_CHOICE_WORDS = {"use": USE_WORDS, "to_account": ACCOUNT_WORDS}


def _of_field(spec: Field) -> Column:
    own = _words(_FIELD_WORDS.get(spec.name, ""))
    label = spec.label.removeprefix("or ")
    label = label[:1].upper() + label[1:]
    return Column(
        spec.name, label, tuple(dict.fromkeys((label.lower(), spec.name.replace("_", " "), *own))), spec.sort,
        spec.units, spec.required, _choices(_CHOICE_WORDS[spec.name]) if spec.name in _CHOICE_WORDS else (),
        spec.decimals, _EXAMPLES.get(spec.name, ""),
    )


VESSELS = Target("vessels", "Vessels", "vessel", "vessels", (
    Column("code", "Code", _CODE_WORDS, "mark", required=True, example="C001"),
    Column("sort", "Sort", _words("sort, type, kind, kind of vessel"), "choice", required=True,
           choices=_choices(SORT_WORDS), example="cask"),
    Column("title", "What it is", _words("what it is, title, description, name"), example="Cask 1"),
    Column("place", "Place", _PLACE_WORDS, example="CELL-A1"),
    Column("capacity_l", "Capacity", _words("capacity, size, holds, nominal, rated, volume"), "number", ("L", "gal"),
           example="225"),
    Column("working_l", "Working level", _words("working level, working, working volume, fill line"), "number",
           ("L", "gal")),
    Column("tare_kg", "Empty weight", _words("tare, empty, empty weight, tare weight"), "number", ("kg", "lb"),
           example="46.3"),
    _WOOD,
    Column("toast", "Toast or char", _words("toast, char, toast or char, toasting"), example="medium"),
    Column("use", "Wood before", _words("use, wood before, previous use, fill no"), "choice",
           choices=_choices(USE_WORDS), example="used once"),
    Column("in_zone", "Inside a fire zone", _words("fire zone, in zone, zone, inside a fire zone"), "yes_no",
           example="no"),
    Column("note", "Note", _words("note, notes, remark, comment")),
))
PEOPLE = Target("people", "People", "person", "people", (
    Column("code", "Short code", _words("short code, code, initials, no, id"), required=True, example="NS"),
    Column("name", "Name", _words("name, person, full name, who"), required=True, example="Noor S."),
    Column("roles", "Roles", _words("roles, role, job, trade role, work"), example="cellar hand, gauger"),
    Column("access", "May", _words("may, access, rights, permission"), "choice", choices=_choices(ACCESS_WORDS),
           example="floor"),
))
INSTRUMENTS = Target("instruments", "Instruments", "instrument", "instruments", (
    Column("id", "Number", _words("number, id, instrument, instrument no, no, code"), required=True, example="TH-2"),
    Column("sort", "Sort", _words("sort, type, kind"), required=True, example="thermometer"),
    Column("title", "Description", _words("description, title, name, serial, serial no"), example="0 to 40, glass"),
    Column("low", "Scale from", _words("scale from, from, lowest, low, min"), "number", ("plain",), example="0"),
    Column("high", "Scale to", _words("scale to, to, highest, high, max"), "number", ("plain",), example="40"),
    Column("unit", "Unit", _words("unit, units, reads"), example="°C"),
    Column("due_on", "Check due on", _words("check due on, due, due on, calibration due, next check"), "date",
           example="2027-03-01"),
))
PARTIES = Target("parties", "Customers and growers", "name", "customers and growers", (
    Column("name", "Name", _words("name, customer, grower, supplier, company, who"), required=True,
           example="Corner shop"),
    Column("role", "Sells or buys", _words("sells or buys, role, type, sort, kind"), "choice", required=True,
           choices=_choices(PARTY_WORDS), example="customer"),
    Column("address", "Address", _words("address, town, place, street"), example="2 Lane, Elderbridge"),
    Column("number", "Their number", _words("number, their number, no, account no, permit, warehouse no, excise no")),
    Column("note", "Note", _words("note, notes, remark, comment")),
))
OPENING = Target("opening", "Opening stock in vessels", "vessel", "vessels", (
    Column("code", "Vessel", _CODE_WORDS, "mark", required=True, example="C001"),
    *(_of_field(spec) for spec in opening.KIND.fields),
    _READ_ON,
    Column("vessel_sort", "Sort of vessel", _words("sort of vessel, vessel sort, vessel type"), "choice",
           choices=_choices(SORT_WORDS)),
    Column("capacity_l", "Capacity", _words("capacity, size, cask size, nominal"), "number", ("L", "gal")),
), opening.KIND)
GOODS = Target("goods", "Opening stock in bottles", "bottling", "bottlings", (
    *(_of_field(spec) for spec in opening_goods.KIND.fields), _READ_ON,
), opening_goods.KIND)

# In the order in which they go into the book: what a row names has to be there.
ALL: tuple[Target, ...] = (VESSELS, PEOPLE, INSTRUMENTS, PARTIES, OPENING, GOODS)
BY_NAME = {target.name: target for target in ALL}


def labels(columns: Sequence[Column]) -> str:
    """Return the labels of columns in a line."""
    return ", ".join(column.label for column in columns)
