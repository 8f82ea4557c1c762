"""Stock changes by flows and by nothing else. A posting gathers the flows of one entry and keeps the stocks they move.

Pure alcohol and mass are the ledger: whole microlitres and grams, added and taken away, so that every sum is exact and
no stock falls below nothing. Where an entry takes more than the book has, the difference is booked first, from an
outside account that says so. Volumes do not add: the volume of spirit is worked out from its mass and pure alcohol
(OIML R 22), and what a mix shrinks by is booked nowhere. A mash is no spirit: its volume is what was dipped.
"""

from __future__ import annotations

from typing import Final, TypeVar, Unpack, cast, overload

from webapp.kinds.amount import Amount, Stock, spirit_of, spirit_volume_ml
from webapp.kinds.goods_state import BottlingChanges
from webapp.kinds.key import (
    FERMENTED,
    GAUGE_DIFFERENCE,
    NOT_ACCOUNTED,
    OVERAGE,
    REMOVED,
    BottlingKey,
    Key,
    KeyOf,
    RunKey,
    VesselKey,
    fill_key,
    is_bottling,
    is_outside,
    is_run,
    is_vessel,
    name_in,
    vessel_key,
)
from webapp.kinds.read import Read
from webapp.kinds.remember import with_entry
from webapp.kinds.run_state import RunChanges
from webapp.kinds.spec import Effect, Flow
from webapp.kinds.spirits import class_of, mixed_pct
from webapp.kinds.state import EMPTY_VESSEL, NO_FILL, Fill, FillChanges, PastFill, State, Vessel, VesselChanges
from webapp.kinds.view import View
from webapp.trade.density import density_from_mass_fraction

S = TypeVar("S", bound=State)
HEEL_ML = 150  # a vessel that has no more left than this, or than that share, is empty; common practice, no source
HEEL_SHARE = 0.005
FACTS: Final = (
    "what", "material", "name", "lot", "since", "account", "mash", "use", "wood", "toast", "cooperage", "tare_kg",
    "fill_strength_pct", "distilled_pct", "label_strength_pct", "aged_since", "by_papers", "opened_at",
    "filled_lpa_l", "origin", "sugar_added", "og", "final_gravity",
)
WEIGHTS: Final = ("net_weight", "gross")
ACCOUNTS = {"cask": "storage", "tank": "processing", "place": "storage"}  # every other sort: production


def unit_weighed(read: Read) -> str | None:
    """Return the unit of the weight that an entry was read in, or None where nothing was weighed."""
    return next((unit for name in WEIGHTS if name in read.values and (unit := read.raw(name).get("unit"))), None)


def spirit_read(read: Read) -> Amount:
    """Return the spirit that an entry speaks of, by its figures `volume_20`, `true_strength` and `lpa`."""
    strength = read.figures.get("true_strength", read.context.get("strength_pct"))
    amount = spirit_of(read.figures.get("volume_20"), strength)
    lpa = read.figures.get("lpa")
    # What was weighed in pounds has its pure alcohol by a table of its own.
    return amount if lpa is None or unit_weighed(read) != "lb" else amount._replace(lpa_ul=round(lpa * 1_000_000))


class Posting:
    """The flows of one entry, and the states as they leave them. Every change of a stock goes through `_flow`."""

    def __init__(self, view: View) -> None:
        self.view = view
        self._states: dict[Key, State] = {}
        self._flows: list[Flow] = []
        self._declared: tuple[str, float | None] = ("", None)

    def declare(self, spirit: str, distilled_pct: float | None) -> None:
        """Note the declaration in this entry's document about the spirit that moves.

        It counts before the book's own figures.
        """
        self._declared = (spirit, distilled_pct)

    def vessel(self, mark: str) -> Vessel:
        """Return a vessel as this entry has left it so far, or an empty one."""
        return self.state(vessel_key(mark)) or EMPTY_VESSEL

    def state(self, key: KeyOf[S]) -> S | None:
        """Return a state as this entry has left it so far, or None."""
        mine = cast("S | None", self._states.get(key))  # the key says which sort of state it is
        return mine or self.view.get(key)

    @overload
    def put(self, key: VesselKey, **changes: Unpack[VesselChanges]) -> None: ...
    @overload
    def put(self, key: RunKey, **changes: Unpack[RunChanges]) -> None: ...
    @overload
    def put(self, key: BottlingKey, **changes: Unpack[BottlingChanges]) -> None: ...

    def put(self, key: Key, **changes: object) -> None:
        """Change parts of a state. Stocks are not changed here."""
        before: State = EMPTY_VESSEL if is_vessel(key) else {}
        # The overloads say what each sort of state may be given.
        self._states[key] = cast(State, {**(self.state(key) or before), **changes})

    def keep(self, key: KeyOf[S], state: S) -> None:
        """Keep a state as a whole, over what there was."""
        self._states[key] = cast(State, {**(self.state(key) or {}), **state})  # both are of the key's sort

    def remember(self, read: Read) -> None:
        """Keep the entry among the recent ones of its vessel."""
        self._states[vessel_key(read.mark)] = with_entry(self.vessel(read.mark), read, self.view)

    def held(self, mark: str) -> Fill | None:
        """Return the fill in a vessel, or None."""
        return self.vessel(mark)["holds"]

    def stock(self, key: Key) -> Amount:
        """Return the stock of a vessel, a run or the bottles of a bottling."""
        held = self._stock_in(key)
        return Amount(held["lpa_ul"], held["volume_ml"], held["mass_g"]) if held else Amount()

    def begin(self, mark: str, **facts: Unpack[FillChanges]) -> None:
        """Begin a fill in an empty vessel; its name is the root of this entry."""
        row = self.view.vessel(mark)
        fill: Fill = {
            "fill": self.view.root, "what": "spirit", "material": None, "name": "", "since": self.view.at, "og": None,
            "sources": [], "account": ACCOUNTS.get(row["sort"] if row else "", "production"), "mash": False,
            "lpa_ul": 0, "volume_ml": 0, "mass_g": 0, "volume_l": None, "lpa_l": None, "mass_kg": None,
            "strength_pct": None,
        }
        self._know(mark, _with_figures({**fill, **facts}))

    def describe(self, mark: str, **facts: Unpack[FillChanges]) -> None:
        """Change facts of a fill; its stock stays."""
        held = self.held(mark)
        if held:
            self._know(mark, _with_figures({**held, **facts}))

    def move(self, source: Key, target: Key, amount: Amount, reason: str = "") -> None:
        """Book an amount from one account to another; its negative parts go the other way."""
        for one, other, part in ((source, target, amount), (target, source, Amount().less(amount))):
            forth = part.above_nothing()
            if any(forth):
                self._move(one, other, forth, reason)

    def draw(self, source: Key, target: Key, amount: Amount, reason: str = "", *, whole: bool = False) -> None:
        """Take an amount out of a vessel. If hardly anything is left, it is empty, and the rest a gauge difference."""
        before = self.stock(source)
        self.move(source, target, amount, reason)
        mark = name_in(source)
        held = self.held(mark) if is_vessel(source) else None
        if not held:
            return
        rest = self.stock(source)
        has_end = not held["mash"] or held.get("closed")  # of an open mash nobody knows how much there is
        little = before.volume_ml and rest.volume_ml <= max(HEEL_ML, HEEL_SHARE * before.volume_ml)
        if whole or (has_end and little):
            self.clear(source, GAUGE_DIFFERENCE, "heel")
            return
        most_ul = round(rest.mass_g / float(density_from_mass_fraction(1.0, 20.0)) * 1e6)
        if not held["mash"] and rest.lpa_ul > most_ul:  # more alcohol than the rest weighs
            self.move(source, GAUGE_DIFFERENCE, Amount(rest.lpa_ul - most_ul), "heel")

    def measure(self, mark: str, amount: Amount, other: Key, reason: str = "") -> None:
        """Make a vessel hold what was measured; the difference to the book goes to, or comes from, the outside."""
        key = vessel_key(mark)
        if not (amount.lpa_ul or amount.mass_g):
            self.clear(key, other, reason)
            return
        difference = self.stock(key).less(amount)
        self.move(key, other, difference, reason)

    def clear(self, key: Key, other: Key, reason: str = "") -> None:
        """Send all that is left in a vessel, run or bottling to another account. A vessel's fill ends."""
        rest = self.stock(key)
        if any(rest):
            self._flow(key, other, rest, reason)
        held = self.held(name_in(key)) if is_vessel(key) else None
        if held and is_vessel(key):
            past = fill_key(held["fill"])
            known: PastFill = self.state(past) or {"mark": name_in(key), "ended_at": None}
            self._states[past] = {**known, "ended_at": self.view.at}
            self.put(key, holds=None)

    def change_account(self, mark: str, account: str, reason: str = "") -> None:
        """Move all that a vessel holds to another tax account, where it stands."""
        held = self.held(mark)
        if held and held["account"] != account:
            key, fill = vessel_key(mark), held["fill"]
            sort = self._sort(key, held["account"], key, account)
            self._flows.append(Flow(key, key, *self.stock(key), fill, fill, reason, held["account"], account, sort))
            self.describe(mark, account=account)

    def effect(self) -> Effect:
        """Return all of it as the effect of the entry."""
        return Effect(self._states, tuple(self._flows))

    def _know(self, mark: str, held: Fill) -> None:
        """Keep a fill, and what is to be known of it for good."""
        self.put(vessel_key(mark), holds=held)
        facts = {name: held[name] for name in FACTS if held.get(name) is not None}
        lasting = cast(PastFill, {"mark": mark, **facts, "ended_at": None})  # FACTS are its keys
        past = fill_key(held["fill"])
        if self.state(past) != lasting:
            self._states[past] = lasting

    def _move(self, source: Key, target: Key, amount: Amount, reason: str) -> None:
        if source == target:
            return
        if is_vessel(source) and not self.held(name_in(source)):
            source = NOT_ACCOUNTED  # the book knows of nothing there
        elif not is_outside(source):
            short = amount.less(self.stock(source)).above_nothing()
            if not self._counts_volume(source):
                short = short._replace(volume_ml=0)
            if any(short):
                self._flow(self._covered_by(source), source, short, "more_than_booked")
        if is_vessel(target) and not self.held(name_in(target)):
            self.begin(name_in(target))
        self._flow(source, target, amount, reason)

    def _flow(self, source: Key, target: Key, amount: Amount, reason: str) -> None:
        fills = self._fill(source), self._fill(target)
        accounts = self._account(source), self._account(target)
        sort = self._sort(source, accounts[0], target, accounts[1])
        self._flows.append(Flow(source, target, *amount, *fills, reason, *accounts, sort))
        self._mix_distilled(source, target, amount, reason)
        self._add(source, Amount().less(amount))
        self._add(target, amount)

    def _add(self, key: Key, amount: Amount) -> None:
        if is_outside(key):
            return
        stock = self.stock(key)
        lpa_ul, volume_ml, mass_g = (a + b for a, b in zip(stock, amount, strict=True))
        sums: Stock = {"lpa_ul": lpa_ul, "volume_ml": volume_ml, "mass_g": mass_g}
        if is_vessel(key):
            held = self.held(name_in(key))
            assert held is not None, key
            self.put(key, holds=_with_figures({**held, **sums}))
        else:
            sums["volume_ml"] = max(volume_ml, 0)  # volumes do not add
            self._states[key] = cast(State, {**(self.state(key) or {}), **sums})  # a run or a bottling

    def _sort(self, source: Key, account: str, target: Key, to: str) -> str:
        """Return the class of what leaves production: for another account, or the premises."""
        if account != "production" or to == "production" or not (to or target == REMOVED):
            return ""
        spirit, declared_pct = self._declared
        held = self.held(name_in(source)) if is_vessel(source) else None
        of = held or (self.state(source) if is_run(source) else None)
        words = f"{spirit} {of.get('what') or ''} {of.get('material') or ''}" if of else f"{spirit}  "
        return class_of(words, declared_pct or (held.get("distilled_pct") if held else None))

    def _mix_distilled(self, source: Key, target: Key, amount: Amount, reason: str) -> None:
        """Keep the strength at which a fill came off the still: that of hearts, and of mixes by their pure alcohol."""
        held = self.held(name_in(target)) if is_vessel(target) else None
        if not held or not amount.lpa_ul or held["mash"]:
            return
        came = (self.held(name_in(source)) or NO_FILL).get("distilled_pct") if is_vessel(source) else None
        if is_run(source) and reason == "hearts" and amount.volume_ml:
            came = min(amount.lpa_ul / amount.volume_ml / 10, 100.0)
        known = held.get("distilled_pct")
        if came and came != known and (held["lpa_ul"] or not known):
            mix = came if not known else mixed_pct(held["lpa_ul"], known, amount.lpa_ul, came)
            self.describe(name_in(target), distilled_pct=mix)

    def _stock_in(self, key: Key) -> Stock | None:
        if is_vessel(key):
            return self.held(name_in(key))
        if is_run(key):
            return self.state(key)
        return self.state(key) if is_bottling(key) else None

    def _counts_volume(self, key: Key) -> bool:
        return is_vessel(key) and (self.held(name_in(key)) or NO_FILL)["mash"]

    def _covered_by(self, key: Key) -> Key:
        if not is_vessel(key):
            return OVERAGE if is_bottling(key) else NOT_ACCOUNTED
        held = self.held(name_in(key)) or NO_FILL
        return FERMENTED if held["mash"] and not held.get("closed") else GAUGE_DIFFERENCE

    def _fill(self, key: Key) -> str:
        if is_run(key):
            return name_in(key)
        return (self.held(name_in(key)) or NO_FILL)["fill"] if is_vessel(key) else ""

    def _account(self, key: Key) -> str:
        if is_run(key) or is_bottling(key):
            return "production" if is_run(key) else "finished"
        return (self.held(name_in(key)) or NO_FILL)["account"] if is_vessel(key) else ""


def list_unbalanced(effect: Effect, view: View) -> list[Key]:
    """Return the vessels and runs whose stock this effect changes by anything but its flows. Empty: all is right.

    Since every entry is asked this, stock and flows agree over the whole book by induction.
    """
    moved: dict[Key, list[int]] = {}
    for flow in effect.flows:
        for account, sign in ((flow.source, -1), (flow.target, 1)):
            sums = moved.setdefault(account, [0, 0])
            sums[0] += sign * flow.lpa_ul
            sums[1] += sign * flow.mass_g
    keys = {key for key in (*moved, *effect.states) if is_vessel(key) or is_run(key) or is_bottling(key)}
    wrong: list[Key] = []
    for key in sorted(keys):
        before, after = _ledger(key, view.get(key)), _ledger(key, effect.states.get(key) or view.get(key))
        if [after[0] - before[0], after[1] - before[1]] != moved.get(key, [0, 0]) or min(after) < 0:
            wrong.append(key)
    return wrong


def _ledger(key: Key, state: State | None) -> tuple[int, int]:
    if state is None:
        return 0, 0
    # The key says which sort of state it is.
    held = cast(Vessel, state)["holds"] if is_vessel(key) else cast(Stock, state)
    return (held["lpa_ul"], held["mass_g"]) if held else (0, 0)


def _with_figures(held: Fill) -> Fill:
    """Return the fill with litres, kilograms and strength as its stock gives them; None where nobody knows."""
    lpa_ul, mass_g = held["lpa_ul"], held["mass_g"]
    if not held["mash"]:
        held["volume_ml"] = spirit_volume_ml(lpa_ul, mass_g)
    volume_ml = held["volume_ml"]
    known = bool(lpa_ul) or not held["mash"] or bool(held.get("closed"))
    return held | {
        "volume_l": volume_ml / 1000 if volume_ml or not held["mash"] else None,
        "lpa_l": lpa_ul / 1_000_000 if known else None,
        "mass_kg": mass_g / 1000 if mass_g or not held["mash"] else None,
        "strength_pct": min(lpa_ul / volume_ml / 10, 100.0) if known and volume_ml else None,
    }
