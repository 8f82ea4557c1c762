"""How people err at a slate, with the share of each sort.

Shares are common practice, no source: keys beside each other, digits changed about, a point in the wrong place, the
other unit, the line before written again, the wrong vessel, a step forgotten.
"""

from __future__ import annotations

import random
from collections.abc import Callable
from copy import deepcopy
from datetime import datetime, timedelta

import webapp.kinds
from tests.slips import figures
from tests.slips.house import MARK_FIELDS, House, Said
from tests.slips.slip import Slip, numbers, stake_of

# Steps that move stock or begin and end something: what nobody wrote of them is wrong in the book.
STEPS = ("opening", "fruit_intake", "ferment_closed", "charge", "cut", "run_end", "fraction_gauge", "account_move",
         "reduce", "cask_fill", "top_up", "dump", "bottling_gauge", "bottling_close", "dispatch", "destruction")


def make_slip(house: House, at: int, sort: str, chance: random.Random) -> Slip | None:
    """Return a slip of a sort at a place of a season; None where the entry there gives no occasion for it."""
    made = SORTS[sort][0](house, at, chance)
    if made is None:
        return None
    made.sort, made.said = sort, house.said[at]
    return made


def _left_out(house: House, at: int, chance: random.Random) -> Slip | None:
    """A figure that is not written at all."""
    said = house.said[at]
    names = [spec.name for spec in numbers(said.entry)]
    if len(names) < 2:
        return None
    wrong = deepcopy(said.entry)
    gone = chance.choice(names)
    right = wrong["values"].pop(gone)
    return Slip("", at, [wrong], gone, right, stake_of(said, wrong))


def _wrong_vessel(house: House, at: int, chance: random.Random) -> Slip | None:
    said = house.said[at]
    named = [name for name in MARK_FIELDS if said.entry["values"].get(name, {}).get("raw")]
    places = ([""] if said.entry["mark"] else []) + named
    if not places:
        return None
    place = chance.choice(places)
    was = said.entry["values"][place]["raw"] if place else said.entry["mark"]
    sort = house.vessels[was]["sort"]
    others = [mark for mark, row in house.vessels.items() if row["sort"] == sort and mark != was]
    if not others:
        return None
    wrong = deepcopy(said.entry)
    if place:
        wrong["values"][place]["raw"] = chance.choice(others)
    else:
        wrong["mark"] = chance.choice(others)
    return Slip("", at, [wrong], place, None, said.lpa)


def _wrong_instrument(house: House, at: int, chance: random.Random) -> Slip | None:
    said = house.said[at]
    named = [name for name, value in said.entry["values"].items() if value.get("instrument")]
    if not named:
        return None
    wrong = deepcopy(said.entry)
    name = chance.choice(named)
    was = wrong["values"][name]["instrument"]
    sort = next(names for names in house.instruments.values() if was in names)
    wrong["values"][name]["instrument"] = chance.choice([other for other in sort if other != was])
    return Slip("", at, [wrong], name)


def _wrong_choice(house: House, at: int, chance: random.Random) -> Slip | None:
    said = house.said[at]
    kind = webapp.kinds.get(said.entry["kind"])
    assert kind is not None
    specs = [spec for spec in kind.fields if spec.sort == "choice" and spec.name in said.entry["values"]
             and spec.name in ("event", "fraction", "material", "from_account", "to_account", "found", "work", "why")]
    if not specs:
        return None
    spec = chance.choice(specs)
    right = said.entry["values"][spec.name]["raw"]
    names = [name for name, _ in spec.choices]
    beside = [names[n] for n in (names.index(right) - 1, names.index(right) + 1) if 0 <= n < len(names)]
    wrong = deepcopy(said.entry)
    wrong["values"][spec.name] = {"raw": chance.choice(beside)}
    return Slip("", at, [wrong], spec.name, None, said.lpa)


def _moved(said: Said, at: int, off: timedelta, *, typed_too: bool) -> Slip:
    wrong = deepcopy(said.entry)
    for name in ("read_at", "typed_at") if typed_too else ("read_at",):
        wrong[name] = (datetime.fromisoformat(wrong[name]) + off).isoformat(timespec="seconds")
    return Slip("", at, [wrong], "read_at", skew_s=off.total_seconds() if typed_too else 0.0)


def _wrong_date(house: House, at: int, chance: random.Random) -> Slip | None:
    days = chance.choice((-1, -1, 1, -7, -30, 30, -365, -2))
    return _moved(house.said[at], at, timedelta(days=days), typed_too=False)


def _wrong_clock(house: House, at: int, chance: random.Random) -> Slip | None:
    return _moved(house.said[at], at, timedelta(hours=chance.choice((-1, 1, 12, -12, 24, -24))), typed_too=True)


def _twice(house: House, at: int, chance: random.Random) -> Slip | None:
    said = house.said[at]
    again = deepcopy(said.entry)
    off = timedelta(minutes=chance.choice((1, 4, 20, 120)))
    again["id"] = again["id"][:-12] + f"{int(again['id'][-12:], 16) + 0x900000:012x}"
    for name in ("read_at", "typed_at"):
        again[name] = (datetime.fromisoformat(again[name]) + off).isoformat(timespec="seconds")
    return Slip("", at, [said.entry, again], "", None, said.lpa)


def _forgotten(house: House, at: int, chance: random.Random) -> Slip | None:
    said = house.said[at]
    if said.entry["kind"] not in STEPS:
        return None
    return Slip("", at, [], "", None, said.lpa)


Maker = Callable[[House, int, random.Random], Slip | None]
SORTS: dict[str, tuple[Maker, str, float]] = {
    "neighbour key": (figures.other_digit(figures.KEYS), "a key beside the right one", 0.11),
    "misread digit": (figures.other_digit(figures.ALIKE), "3 for 8, 1 for 7", 0.09),
    "digits changed about": (figures.transposed, "86.4 for 68.4", 0.10),
    "point": (figures.point, "624 for 62.4", 0.09),
    "double digit": (figures.doubled, "622.4 for 62.4", 0.05),
    "lost digit": (figures.lost_digit, "6.4 for 62.4", 0.05),
    "unit": (figures.other_unit, "pounds for kilograms", 0.07),
    "copied": (figures.copied, "as in the line before", 0.08),
    "fields swapped": (figures.swapped, "gross for tare", 0.06),
    "net for gross": (figures.net_for_gross, "net or tare where gross belongs", 0.03),
    "raw for true": (figures.raw_for_true, "the glass in the box of the corrected strength", 0.03),
    "left out": (_left_out, "a figure not written", 0.04),
    "wrong vessel": (_wrong_vessel, "another of its sort", 0.06),
    "wrong choice": (_wrong_choice, "the choice beside", 0.03),
    "wrong instrument": (_wrong_instrument, "another of its sort", 0.01),
    "date": (_wrong_date, "yesterday, next week, last year", 0.03),
    "clock": (_wrong_clock, "a phone's clock off", 0.02),
    "twice": (_twice, "logged again minutes later", 0.02),
    "forgotten step": (_forgotten, "nothing written", 0.03),
}
