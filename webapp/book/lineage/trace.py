"""Where spirit came from, and where it went, with shares of pure alcohol: sums over flows, and nothing else.

Every fill and every run is taken as well mixed: what leaves it is made of all that had come in by then, each part by
its share. So a share follows from the flows alone:
- an inflow of a into a fill that holds s is a/(s + a) of it, and thins what was there by s/(s + a);
- what leaves a fill takes all parts alike: it changes amounts, no share;
- a gauge that finds more or less than the book had changes the amount, not what it is. Where the book had nothing at
  all, what a gauge finds is of unknown origin. Opening stock comes from before this book;
- alcohol that a ferment made is shared over the loads in it by their mass: juicier fruit is not told from drier.
Flows are gone through in the order of time, once each, so feints that go round from run to run end by themselves.
"""

from __future__ import annotations

import heapq
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field
from typing import NamedTuple, TypeVar

K = TypeVar("K")
Order = tuple[str, int]
FIRST: Order = ("", 0)
LAST: Order = ("~", 0)
LEAST = 1e-9  # a share smaller than this is not followed further; it is counted
STEPS_MOST = 400_000  # flows looked at for one trace
BEFORE = {"out:opening": "o:", "out:received": "c:"}  # stock that this book did not see made, and its node
REST = "x:"  # the node of what is not followed further


class Step(NamedTuple):
    """One flow, as the trace sees it. A fill's id is empty for the world outside."""

    order: Order  # its place in the fold, and its number within the entry
    entry: str
    source: str
    target: str
    source_fill: str
    target_fill: str
    lpa_ul: int
    mass_g: int
    at: str


Reader = Callable[[str], list[Step]]  # every flow out of and into a fill, oldest first; none from a fill into itself


class Seed(NamedTuple):
    """So much of what is traced lay in this fill just before a place in the order."""

    fill: str
    order: Order
    weight: float


@dataclass(slots=True)
class Lineage:
    """What something was made of. Shares of the pure alcohol that is traced, 0 to 1.

    Nodes: `f:` fill or run, `i:` load of fruit, `o:` opening stock, `c:` received in bulk, `b:` poured back from
    bottles, `u:` found, `n:` a ferment without fruit on record, `x:` not followed further.
    """

    links: dict[tuple[str, str], float] = field(default_factory=dict)
    leaves: dict[str, float] = field(default_factory=dict)  # add up to 1
    steps: dict[str, Step] = field(default_factory=dict)  # of the leaves, where they came in


@dataclass(slots=True)
class Spread:
    """Where something went. Amounts are pure alcohol. [uL] Nodes as in Lineage, `b:` bottlings, `g:` gone."""

    started_ul: float = 0.0
    found_ul: float = 0.0  # more than booked, by gauges of what it is part of
    links: dict[tuple[str, str], float] = field(default_factory=dict)
    gone_ul: dict[str, float] = field(default_factory=dict)  # by the name of the outside account
    bottled: dict[str, tuple[float, float]] = field(default_factory=dict)  # entry -> (share of it, uL)
    standing: dict[str, tuple[float, float]] = field(default_factory=dict)  # fill -> (share of it, uL)
    mash: dict[str, float] = field(default_factory=dict)  # fill of fruit not fermented out -> share by mass
    is_whole: bool = True  # False where there was too much to follow


class _Later(tuple[Order, int, Seed | Step]):
    """Sorts the other way round, for a heap that gives the latest first."""

    __lt__ = tuple.__gt__


class _Stocks:
    """The flows of the fills looked at, and what each fill held just before each of them: (pure alcohol, mass)."""

    def __init__(self, read: Reader, most: int) -> None:
        self._read, self._left = read, most
        self.before: dict[tuple[str, Order], tuple[int, int]] = {}
        self.now: dict[str, tuple[int, int]] = {}

    def load(self, fill: str) -> list[Step] | None:
        """Return the flows of a fill; None where that would be too many."""
        if self._left <= 0:
            return None
        steps = self._read(fill)
        self._left -= len(steps)
        lpa_ul = mass_g = 0
        for step in steps:
            self.before[fill, step.order] = (lpa_ul, mass_g)
            sign = 1 if step.target_fill == fill else -1
            lpa_ul, mass_g = max(lpa_ul + sign * step.lpa_ul, 0), max(mass_g + sign * step.mass_g, 0)
        self.now[fill] = (lpa_ul, mass_g)
        return steps


def trace_back(read: Reader, seeds: Iterable[Seed], *, most: int = STEPS_MOST) -> Lineage:
    """Return the origins of the seeds; their weights add up to 1."""
    return _Back(read, most).run(seeds)


class _Back:
    """Goes back through the flows, the latest first, with what still has to be told of each fill."""

    def __init__(self, read: Reader, most: int) -> None:
        self._stocks = _Stocks(read, most)
        self._heap: list[_Later] = []
        self._spirit: dict[str, float] = {}  # fill -> share of the traced alcohol that lay in it here
        self._fruit: dict[str, float] = {}  # the same, of alcohol that fruit in it has yet to make
        self._loaded: set[str] = set()
        self.found = Lineage()

    def run(self, seeds: Iterable[Seed]) -> Lineage:
        for n, seed in enumerate(seeds):
            heapq.heappush(self._heap, _Later((seed.order, -1 - n, seed)))
        while self._heap:
            _, _, what = heapq.heappop(self._heap)
            if isinstance(what, Seed):
                self._sow(what)
            else:
                self._undo(what)
        for fill, weight in sorted(self._fruit.items()):
            self._leaf(f"n:{fill}", fill, weight, None)
        for fill, weight in sorted(self._spirit.items()):
            self._leaf(REST, fill, weight, None)
        return self.found

    def _sow(self, seed: Seed) -> None:
        self._load(seed.fill, seed.order)
        before = self._stocks.before.get((seed.fill, seed.order), self._stocks.now.get(seed.fill, (1, 0)))
        self._give(self._spirit if before[0] else self._fruit, seed.fill, seed.weight)

    def _load(self, fill: str, order: Order) -> None:
        if fill in self._loaded:
            return
        steps = self._stocks.load(fill)
        if steps is None:
            return
        self._loaded.add(fill)
        for step in steps:
            if step.target_fill == fill and step.order < order:
                heapq.heappush(self._heap, _Later((step.order, 0, step)))

    def _undo(self, step: Step) -> None:
        """Take an inflow out of its fill, and give its share to where it came from."""
        fill = step.target_fill
        lpa_ul, mass_g = self._stocks.before[fill, step.order]
        if step.source_fill and not step.lpa_ul:
            self._pass_on(step, self._fruit, _taken(self._fruit, fill, step.mass_g, mass_g))
        elif step.source_fill:
            self._pass_on(step, self._spirit, _taken(self._spirit, fill, step.lpa_ul, lpa_ul))
        elif step.source == "out:grower":
            self._leaf(f"i:{step.entry}", fill, _taken(self._fruit, fill, step.mass_g, mass_g), step)
        elif step.source == "out:fermented":
            self._give(self._fruit, fill, _taken(self._spirit, fill, step.lpa_ul, lpa_ul))
        elif step.source in BEFORE or step.source[:2] == "b:":
            node = f"{BEFORE[step.source]}{step.entry}" if step.source in BEFORE else step.source
            self._leaf(node, fill, _taken(self._spirit, fill, step.lpa_ul, lpa_ul), step)
        elif not lpa_ul:
            self._leaf(f"u:{step.entry}", fill, _taken(self._spirit, fill, step.lpa_ul, lpa_ul), step)

    def _pass_on(self, step: Step, pool: dict[str, float], weight: float) -> None:
        if weight < LEAST:
            self._leaf(REST, step.target_fill, weight, None)
            return
        _add_to_sum(self.found.links, (f"f:{step.source_fill}", f"f:{step.target_fill}"), weight)
        self._load(step.source_fill, step.order)
        self._give(pool, step.source_fill, weight)

    def _give(self, pool: dict[str, float], fill: str, weight: float) -> None:
        if weight:
            pool[fill] = pool.get(fill, 0.0) + weight

    def _leaf(self, node: str, fill: str, weight: float, step: Step | None) -> None:
        if weight <= 0.0:
            return
        _add_to_sum(self.found.leaves, node, weight)
        _add_to_sum(self.found.links, (node, f"f:{fill}"), weight)
        if step:
            self.found.steps[node] = step


def _taken(pool: dict[str, float], fill: str, inflow: int, before: int) -> float:
    """Take the share of an inflow from the part of a fill that is not traced yet, and return it."""
    weight = pool.get(fill, 0.0)
    if not weight or inflow <= 0:
        return 0.0
    if before <= 0:
        return pool.pop(fill)
    taken = weight * inflow / (before + inflow)
    pool[fill] = weight - taken
    return taken


def trace_forth(read: Reader, *, fill: str = "", loads: Iterable[Step] = (), most: int = STEPS_MOST) -> Spread:
    """Return the destinations of a fill, or of loads of fruit as they came in."""
    return _Forth(read, fill, most).run(loads)


class _Forth:
    """Goes on through the flows, the earliest first, with the traced share of every fill it reaches."""

    def __init__(self, read: Reader, fill: str, most: int) -> None:
        self._stocks = _Stocks(read, most)
        self._heap: list[tuple[Order, Step]] = []
        self._pushed: set[Order] = set()
        self._whole = fill  # the fill that is traced: all of it, at every time
        self._spirit: dict[str, float] = {}  # fill -> share of its alcohol
        self._fruit: dict[str, float] = {}  # fill -> share of its mass
        self._loads: set[Order] = set()
        self._loaded: set[str] = set()
        self._origin = ""
        self.found = Spread()

    def run(self, loads: Iterable[Step]) -> Spread:
        for step in loads:
            self._loads.add(step.order)
            self._origin = f"i:{step.entry}"
            self._push(step)
        if self._whole:
            self._origin = f"f:{self._whole}"
            self._spirit[self._whole] = self._fruit[self._whole] = 1.0
            self._load(self._whole, FIRST)
        while self._heap:
            self._follow(heapq.heappop(self._heap)[1])
        for fill in sorted(self._loaded):
            lpa_ul, mass_g = self._stocks.now[fill]
            share = self._spirit.get(fill, 0.0)
            if lpa_ul and share >= LEAST:
                self.found.standing[fill] = (share, share * lpa_ul)
            elif mass_g and not lpa_ul and self._fruit.get(fill, 0.0) >= LEAST:
                self.found.mash[fill] = self._fruit[fill]
        if self._whole:
            self.found.started_ul += self.found.standing.get(self._whole, (0.0, 0.0))[1]
        return self.found

    def _push(self, step: Step) -> None:
        if step.order not in self._pushed:
            self._pushed.add(step.order)
            heapq.heappush(self._heap, (step.order, step))

    def _load(self, fill: str, order: Order) -> bool:
        if fill in self._loaded:
            return True
        steps = self._stocks.load(fill)
        if steps is None:
            self.found.is_whole = False
            return False
        self._loaded.add(fill)
        for step in steps:
            if step.order > order:
                self._push(step)
        return True

    def _follow(self, step: Step) -> None:
        share, by_mass = self._spirit.get(step.source_fill, 0.0), self._fruit.get(step.source_fill, 0.0)
        if step.order in self._loads:
            by_mass = 1.0
        amount_ul = share * step.lpa_ul
        if step.source_fill == self._whole and self._whole:
            self.found.started_ul += amount_ul
        if not step.target_fill:
            self._leave(step, share, amount_ul)
            return
        if step.target_fill == self._whole:
            _add_to_sum(self.found.gone_ul, "returned", amount_ul)
            return
        is_followed = step.target_fill in self._loaded or share >= LEAST or by_mass >= LEAST
        if not is_followed or not self._load(step.target_fill, step.order):
            _add_to_sum(self.found.gone_ul, "not_followed", amount_ul)
            return
        self._come_in(step, share, by_mass)
        if amount_ul:
            _add_to_sum(self.found.links, (f"f:{step.source_fill}", f"f:{step.target_fill}"), amount_ul)

    def _leave(self, step: Step, share: float, amount_ul: float) -> None:
        if not amount_ul:
            return
        name = "bottled" if step.target[:2] == "b:" else step.target[4:]
        _add_to_sum(self.found.gone_ul, name, amount_ul)
        if name == "bottled":
            self.found.bottled[step.entry] = (share, amount_ul)
        node = f"b:{step.entry}" if name == "bottled" else f"g:{name}"
        _add_to_sum(self.found.links, (f"f:{step.source_fill}", node), amount_ul)

    def _come_in(self, step: Step, share: float, by_mass: float) -> None:
        """Change the share of the fill that an inflow comes into."""
        fill = step.target_fill
        lpa_ul, mass_g = self._stocks.before[fill, step.order]
        if step.source == "out:fermented":
            made = self._fruit.get(fill, 0.0)
            self._spirit[fill] = _mixed(self._spirit.get(fill, 0.0), lpa_ul, made, step.lpa_ul)
            if made * step.lpa_ul:
                self.found.started_ul += made * step.lpa_ul
                _add_to_sum(self.found.links, (self._origin, f"f:{fill}"), made * step.lpa_ul)
        elif step.source == "out:grower" or (step.source_fill and not step.lpa_ul):
            self._fruit[fill] = _mixed(self._fruit.get(fill, 0.0), mass_g, by_mass, step.mass_g)
        elif step.source_fill or step.source in BEFORE or step.source[:2] == "b:" or not lpa_ul:
            self._spirit[fill] = _mixed(self._spirit.get(fill, 0.0), lpa_ul, share, step.lpa_ul)
        else:
            self.found.found_ul += self._spirit.get(fill, 0.0) * step.lpa_ul


def _mixed(share: float, before: int, other: float, inflow: int) -> float:
    """Return the share of a mix."""
    return (share * before + other * inflow) / (before + inflow) if inflow > 0 else share


def _add_to_sum(sums: dict[K, float], key: K, amount: float) -> None:
    if amount:
        sums[key] = sums.get(key, 0.0) + amount
