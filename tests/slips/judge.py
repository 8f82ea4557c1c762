"""Slips put into a season, one at a time, and what the book asks: at once, by the next gauge, at all."""

from __future__ import annotations

import random
import tempfile
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from tests.slips.book import Asked, asked, copy_of, tell
from tests.slips.house import House, Said
from tests.slips.season import season
from tests.slips.slip import Slip, canonical, figure_slip, numbers
from tests.slips.slips import SORTS, make_slip
from webapp.book.opening import open_book
from webapp.book.record.store import Book
from webapp.trade import units
from webapp.trade.errors import OutOfDomain

AFTER = 45  # entries after a slip that may still ask
OFFERED = 3
QUANTITIES = {"volume", "gross", "net_weight", "wash", "filled", "volume_after", "cases"}
# Steps by which a figure is moved to find the power of a check, by its quantity; of all others, as a share.
STEPS = {
    "strength": (0.2, 0.5, 1.0, 2.0, 5.0, 10.0), "glass reading in %": (0.2, 0.5, 1.0, 2.0, 5.0, 10.0),
    "glass reading in proof": (0.4, 1.0, 2.0, 4.0, 10.0, 20.0),
    "temperature": (0.5, 1.0, 2.0, 5.0, 10.0, 20.0), "gravity": (0.001, 0.002, 0.005, 0.01, 0.02, 0.05),
}
# Kinds whose figures stand beside others of the book.
MEASURED_ON = (
    "fruit_intake", "ferment_reading", "ferment_closed", "charge", "run_reading", "cut", "fraction_gauge",
    "account_move", "gauge", "reduce", "cask_fill", "cask_regauge", "top_up", "dump", "chill_filter", "bottling_gauge",
    "bottling_close", "opening",
)
SHARES = (0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1.0)


@dataclass
class Found:
    """What the book made of one slip."""

    slip: Slip
    at_once: set[str] = field(default_factory=set)  # codes of weight ask or stop, or refusals
    by_gauge: set[str] = field(default_factory=set)
    later: set[str] = field(default_factory=set)
    notes: set[str] = field(default_factory=set)
    has_offer: bool = False
    is_offered: bool = False  # the right figure is among those offered
    step: float = 0.0  # of a figure moved on purpose

    @property
    def all_codes(self) -> set[str]:
        """Everything that asked, sooner or later, notes left out."""
        return self.at_once | self.by_gauge | self.later


@dataclass
class Clean:
    """What a clean season was asked, which nobody should have been."""

    entries: int
    asks: list[str]
    notes: list[str]


def measure(seed: int, slips: int, steps: int = 0) -> tuple[list[Found], Clean]:
    """Return what came of so many slips in the season of a seed, and so many figures moved by steps."""
    house, chance = season(seed), random.Random(f"slips {seed}")
    wanted = sorted([*_slips(house, slips, chance), *_steps(house, steps, chance)], key=lambda one: one[0].at)
    memory = Path("/dev/shm")  # much quicker than a disk
    with tempfile.TemporaryDirectory(dir=memory if memory.is_dir() else None) as folder:
        return _judge_all(house, wanted, Path(folder))


def _slips(house: House, many: int, chance: random.Random) -> Iterable[tuple[Slip, float]]:
    sorts, weights = list(SORTS), [share for _, _, share in SORTS.values()]
    by_kind: dict[str, list[int]] = {}
    for n, said in enumerate(house.said):
        by_kind.setdefault(said.entry["kind"], []).append(n)
    kinds = list(by_kind)
    often = [len(by_kind[kind]) ** 0.5 for kind in kinds]
    made = 0
    while made < many:
        sort = chance.choices(sorts, weights)[0]
        for _ in range(200):  # a house may give no occasion for a sort
            at = chance.choice(by_kind[chance.choices(kinds, often)[0]])
            if slip := make_slip(house, at, sort, chance):
                made += 1
                yield slip, 0.0
                break


def _steps(house: House, many: int, chance: random.Random) -> Iterable[tuple[Slip, float]]:
    by_field: dict[tuple[str, str], list[int]] = {}
    for n, said in enumerate(house.said):
        for spec in numbers(said.entry):
            if said.entry["kind"] in MEASURED_ON and spec.units[0] != "count":
                by_field.setdefault((said.entry["kind"], spec.name), []).append(n)
    names = list(by_field)
    made = 0
    while made < many:
        kind, name = chance.choice(names)
        at = chance.choice(by_field[kind, name])
        said = house.said[at]
        spec = next(one for one in numbers(said.entry) if one.name == name)
        quantity = units.quantity_of(spec.units[0])
        step = chance.choice(STEPS.get(quantity, SHARES))
        right = said.entry["values"][name]
        now = canonical(right) or 0.0
        moved = now + chance.choice((-1, 1)) * step * (1.0 if quantity in STEPS else now)
        try:
            shown = float(units.from_canonical(moved, right["unit"]))
        except OutOfDomain:
            continue
        places = len(right["raw"].partition(".")[2])
        slip = figure_slip(said, at, spec, {**right, "raw": f"{shown:.{places}f}"}) if shown >= 0 else None
        if slip is not None:
            slip.said, slip.sort = said, "step"
            made += 1
            yield slip, step


def _judge_all(house: House, wanted: Sequence[tuple[Slip, float]], folder: Path) -> tuple[list[Found], Clean]:
    entries = [said.entry for said in house.said]
    found: list[Found] = []
    with open_book(folder / "clean.db") as book:
        house.fill_book(book)
        tell(book, entries)
        clean = asked(book)
    with open_book(folder / "book.db") as book:
        house.fill_book(book)
        told = 0
        for slip, step in wanted:
            tell(book, entries[told : slip.at])
            told = slip.at
            with copy_of(book, folder / "copy.db") as copy:
                one = _judge(copy, house, slip, {**clean, **asked(book)})
            one.step = step
            found.append(one)
    asks = [name for (_, name), weight in clean.items() if weight != "note"]
    notes = [name for (_, name), weight in clean.items() if weight == "note"]
    return found, Clean(len(entries), asks, notes)


def _judge(book: Book, house: House, slip: Slip, clean: Asked) -> Found:
    found = Found(slip)
    results: list[Any] = []
    for entry in slip.entries:
        results += tell(book, [entry], slip.skew_s if entry is slip.entries[-1] else 0.0)
    following = [said.entry for said in house.said[slip.at + 1 : slip.at + 1 + AFTER]]
    gauge = _next_gauge(slip, house.said[slip.at + 1 : slip.at + 1 + AFTER])
    if not slip.entries:  # a step that is not there is asked about at the next one, if at all
        tell(book, following[:1])
    _note_offers(found, results)
    found.at_once, found.notes = _new(book, clean)
    found.at_once |= {problem["code"] for result in results for problem in result.get("problems", ())}
    if found.at_once or slip.sort == "step":
        return found
    tell(book, following[:gauge])
    found.by_gauge = _new(book, clean)[0]
    if not found.by_gauge:
        tell(book, following[gauge:])
        found.later = _new(book, clean)[0]
    return found


def _next_gauge(slip: Slip, following: Sequence[Said]) -> int:
    """Return how many entries it takes until one of the vessels concerned is gauged again."""
    assert slip.said is not None
    marks = slip.said.marks.union(entry["mark"] for entry in slip.entries if entry["mark"])
    for n, said in enumerate(following):
        if said.marks & marks and QUANTITIES & said.entry["values"].keys():
            return n + 1
    return len(following)


def _new(book: Book, clean: Asked) -> tuple[set[str], set[str]]:
    asks: set[str] = set()
    notes: set[str] = set()
    for (entry, name), weight in asked(book).items():
        if (entry, name) not in clean:
            (notes if weight == "note" else asks).add(name.partition(":")[0])
    return asks, notes


def _note_offers(found: Found, results: Sequence[Any]) -> None:
    right = found.slip.right
    offers = [offer for result in results for query in result.get("queries", ()) for offer in query["suggestions"]]
    found.has_offer = bool(offers)
    for offer in [box for one in offers[:OFFERED] for box in (one, *one.get("also", ()))]:
        if right is None or offer["field"] != found.slip.field or not offer["raw"]:
            continue
        meant, given = canonical(right), canonical(offer)
        if meant is not None and given is not None and abs(given - meant) <= 0.006 * abs(meant) + 1e-9:
            found.is_offered = True
