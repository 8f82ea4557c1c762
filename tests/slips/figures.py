"""Slips of one figure: keys, digits, points, units, lines copied, fields swapped, raw for true, gross for net.

Shares and sizes are common practice, no source.
"""

from __future__ import annotations

import random
from collections.abc import Callable
from copy import deepcopy
from itertools import pairwise

from tests.slips.house import House, Said
from tests.slips.slip import Slip, canonical, figure_slip, numbers, stake_of
from webapp.kinds.spec import Field

KEYS = {"1": "24", "2": "135", "3": "26", "4": "157", "5": "2468", "6": "359", "7": "48", "8": "579", "9": "68",
        "0": "8"}
ALIKE = {"1": "7", "7": "1", "3": "8", "8": "3", "5": "6", "6": "5", "0": "6", "9": "4", "4": "9", "2": "7"}
UNIQUE = ("run_name", "lot", "lot_mark", "serial", "document", "case_from", "case_to", "batch")


def _typed(house: House, at: int, chance: random.Random, change: Callable[[str], str | None],
           fields: list[Field] | None = None) -> Slip | None:
    said = house.said[at]
    specs = numbers(said.entry) if fields is None else fields
    if not specs:
        return None
    spec = chance.choice(specs)
    right = said.entry["values"][spec.name]
    raw = change(right["raw"])
    if raw is None or raw == right["raw"]:
        return None
    return figure_slip(said, at, spec, {**right, "raw": raw})


def _digits(raw: str) -> list[int]:
    return [n for n, char in enumerate(raw) if char.isdigit()]


def other_digit(table: dict[str, str]) -> Callable[[House, int, random.Random], Slip | None]:
    """Return the slip that writes another digit, out of a table of digits."""
    def slip(house: House, at: int, chance: random.Random) -> Slip | None:
        def change(raw: str) -> str | None:
            n = chance.choice(_digits(raw))
            return raw[:n] + chance.choice(table[raw[n]]) + raw[n + 1:]

        return _typed(house, at, chance, change)

    return slip


def transposed(house: House, at: int, chance: random.Random) -> Slip | None:
    """Two digits beside each other change places."""
    def change(raw: str) -> str | None:
        places = _digits(raw)
        pairs = [(a, b) for a, b in pairwise(places) if raw[a] != raw[b]]
        if not pairs:
            return None
        a, b = chance.choice(pairs)
        chars = list(raw)
        chars[a], chars[b] = chars[b], chars[a]
        return "".join(chars)

    return _typed(house, at, chance, change)


def point(house: House, at: int, chance: random.Random) -> Slip | None:
    """The point is left out, or in another place."""
    def change(raw: str) -> str | None:
        if "." in raw and chance.random() < 0.7:
            return raw.replace(".", "")
        factor = chance.choice((0.1, 10.0))
        return f"{float(raw) * factor:.{2 if factor < 1 else 0}f}" if float(raw) else None

    return _typed(house, at, chance, change)


def doubled(house: House, at: int, chance: random.Random) -> Slip | None:
    """A key is pressed twice."""
    def change(raw: str) -> str | None:
        n = chance.choice(_digits(raw))
        return raw[: n + 1] + raw[n:]

    return _typed(house, at, chance, change)


def lost_digit(house: House, at: int, chance: random.Random) -> Slip | None:
    """A key is not pressed."""
    def change(raw: str) -> str | None:
        places = _digits(raw)
        if len(places) < 2:
            return None
        n = chance.choice(places)
        return (raw[:n] + raw[n + 1:]).strip(".") or None

    return _typed(house, at, chance, change)


def other_unit(house: House, at: int, chance: random.Random) -> Slip | None:
    """The figure is right, the unit is not."""
    said = house.said[at]
    specs = [spec for spec in numbers(said.entry) if len(spec.units) > 1]
    if not specs:
        return None
    spec = chance.choice(specs)
    right = said.entry["values"][spec.name]
    other = chance.choice([unit for unit in spec.units if unit != right["unit"]])
    return figure_slip(said, at, spec, {**right, "unit": other})


def _before(house: House, at: int, same_vessel: bool) -> Said | None:
    now = house.said[at].entry
    for said in reversed(house.said[:at]):
        if said.entry["kind"] == now["kind"] and (said.entry["mark"] == now["mark"]) is same_vessel:
            return said
    return None


def copied(house: House, at: int, chance: random.Random) -> Slip | None:
    """A figure, or what must be said once, as it stands in the line before."""
    said, before = house.said[at], _before(house, at, same_vessel=chance.random() < 0.6)
    if before is None:
        return None
    named = [name for name in UNIQUE if name in said.entry["values"] and name in before.entry["values"]
             and said.entry["values"][name] != before.entry["values"][name]]
    if named and chance.random() < 0.3:
        wrong, name = deepcopy(said.entry), chance.choice(named)
        wrong["values"][name] = before.entry["values"][name]
        return Slip("", at, [wrong], name)
    specs = [spec for spec in numbers(said.entry) if before.entry["values"].get(spec.name, {}).get("raw")]
    if not specs:
        return None
    spec = chance.choice(specs)
    return figure_slip(said, at, spec, {**said.entry["values"][spec.name], **before.entry["values"][spec.name]})


PAIRS = (("gross", "tare"), ("glass", "temp"), ("strength", "temp"), ("volume_before", "volume_after"),
         ("volume", "remnant"), ("gross", "empty"), ("wash", "feints"), ("water", "volume"), ("vapour_temp", "temp"),
         ("cases", "bottles"), ("filled", "broken"), ("flow", "temp"), ("strength_before", "strength_after"))


def swapped(house: House, at: int, chance: random.Random) -> Slip | None:
    """Two figures of one entry change places."""
    said = house.said[at]
    held = said.entry["values"]
    pairs = [pair for pair in PAIRS if all(name in held for name in pair)]
    if not pairs:
        return None
    one, other = chance.choice(pairs)
    if held[one]["raw"] == held[other]["raw"]:
        return None
    wrong = deepcopy(said.entry)
    wrong["values"][one] = {**held[one], "raw": held[other]["raw"]}
    wrong["values"][other] = {**held[other], "raw": held[one]["raw"]}
    return Slip("", at, [wrong], one, held[one], stake_of(said, wrong))


def net_for_gross(house: House, at: int, chance: random.Random) -> Slip | None:
    """The net weight where the gross belongs, or the gross where the empty weight belongs."""
    said = house.said[at]
    held = said.entry["values"]
    tare = next((name for name in ("tare", "empty") if name in held), None)
    specs = {spec.name: spec for spec in numbers(said.entry)}
    if "gross" not in held:
        return None
    if tare is None:
        row = house.vessels.get(said.entry["mark"])
        if not row or not row.get("tare_kg"):
            return None
        tare_kg = row["tare_kg"]
    else:
        tare_kg = canonical(held[tare]) or 0.0
        if chance.random() < 0.3:
            return figure_slip(said, at, specs[tare], {**held[tare], "raw": held["gross"]["raw"]})
    net = (canonical(held["gross"]) or 0.0) - tare_kg
    return figure_slip(said, at, specs["gross"], {**held["gross"], **house.show(net, "mass")})


def raw_for_true(house: House, at: int, chance: random.Random) -> Slip | None:
    """What the glass shows in the box of the corrected strength, or the other way about."""
    said = house.said[at]
    held, unit = said.entry["values"], house.units
    if "glass" in held:
        wrong = deepcopy(said.entry)
        wrong["values"]["strength"] = {"raw": held["glass"]["raw"], "unit": unit["strength"]}
        del wrong["values"]["glass"]
        off = abs((canonical(held["temp"]) or 20.0) - 20.0) * 0.35
        return Slip("", at, [wrong], "glass", held["glass"], stake_of(said, wrong), off < 0.4)
    return None
