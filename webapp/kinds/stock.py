"""Stock changes by flows and by nothing else. A posting gathers the flows of one entry and keeps the stocks they move.

Pure alcohol and mass are the ledger: whole microlitres and grams, added and taken away, so that every sum is exact and
no stock falls below nothing. Where an entry takes more than the book has, the difference is booked first, from an
outside account that says so. Volumes do not add: the volume of spirit is worked out from its mass and pure alcohol
(OIML R 22), and what a mix shrinks by is booked nowhere. A mash is no spirit: its volume is what was dipped.
"""

from __future__ import annotations

from collections.abc import Mapping
from functools import lru_cache
from typing import Any, NamedTuple

from webapp.kinds.read import Read
from webapp.kinds.spec import Effect, Flow
from webapp.kinds.spirits import class_of, mixed_pct
from webapp.kinds.state import EMPTY_VESSEL, remember
from webapp.trade.alcoholometry import litres_from_mass, mass_from_litres
from webapp.trade.density import density_from_mass_fraction

HEEL_ML = 150  # a vessel that has no more left than this, or than that share, is empty; common practice, no source
HEEL_SHARE = 0.005
MOST = 1e9
FACTS = (
    "what", "material", "name", "lot", "since", "account", "mash", "use", "wood", "toast", "cooperage", "tare_kg",
    "fill_strength_pct", "distilled_pct", "label_strength_pct", "aged_since", "sugar_added", "og", "final_gravity",
)  # fmt: skip
ACCOUNTS = {"cask": "storage", "tank": "processing", "place": "storage"}  # every other sort: production


class Amount(NamedTuple):
    """So much at once: pure alcohol [uL at 20 degC], volume [mL at 20 degC], mass [g]. Whole, may be negative."""

    lpa_ul: int = 0
    volume_ml: int = 0
    mass_g: int = 0

    def less(self, other: Amount) -> Amount:
        """Return the remainder after another amount is taken away."""
        return Amount(*(a - b for a, b in zip(self, other, strict=True)))

    def above_nothing(self) -> Amount:
        """Return it without its negative parts."""
        return Amount(*(max(part, 0) for part in self))

    def share(self, part: int, whole: int) -> Amount:
        """Return part/whole of it, rounded down, all of it at most."""
        return self if part >= whole else Amount(*(each * max(part, 0) // whole for each in self))


def amount_of(lpa_l: float | None, volume_l: float | None, mass_kg: float | None) -> Amount:
    """Return litres, litres and kilograms as an amount; what is not known counts for nothing."""
    return Amount(
        round((lpa_l or 0.0) * 1_000_000), round((volume_l or 0.0) * 1_000), round((mass_kg or 0.0) * 1_000)
    )


def spirit_of(volume_20_l: float | None, strength_pct: float | None, mass_kg: float | None = None) -> Amount:
    """Return spirit of a volume at 20 degC and a strength; its mass by OIML R 22 where it was not weighed."""
    # A figure that cannot be may stand all the same, because somebody said so: the sums below must answer.
    volume, strength = _within(volume_20_l, MOST), _within(strength_pct, 100.0)
    mass = float(mass_from_litres(volume, strength)) if mass_kg is None else _within(mass_kg, MOST)
    return amount_of(volume * strength / 100.0, volume, mass)


def _within(value: float | None, most: float) -> float:
    return min(max(value or 0.0, 0.0), most)


def weighed(mass_kg: float | None, strength_pct: float | None) -> Amount:
    """Return spirit of a net weight and a strength; its volume by OIML R 22."""
    mass, strength = _within(mass_kg, MOST / 2), _within(strength_pct, 100.0)
    return spirit_of(float(litres_from_mass(mass, strength)), strength, mass)


def spirit_read(read: Read) -> Amount:
    """Return the spirit that an entry speaks of: by its figures `volume_20` and `true_strength`, or its net weight."""
    strength = read.figures.get("true_strength", read.context.get("strength_pct"))
    weighed = read.figures.get("net", read.values.get("net_weight"))
    return spirit_of(read.figures.get("volume_20"), strength, weighed)


@lru_cache(maxsize=4096)
def spirit_volume_ml(lpa_ul: int, mass_g: int) -> int:
    """Return the volume at 20 degC of spirit by its pure alcohol and mass. [mL], 0 or more; OIML R 22."""
    if mass_g <= 0:
        return 0
    ethanol_g = lpa_ul * 1e-6 * float(density_from_mass_fraction(1.0, 20.0))
    return round(mass_g / float(density_from_mass_fraction(min(ethanol_g / mass_g, 1.0), 20.0)) * 1000.0)


class Posting:
    """The flows of one entry, and the states as they leave them. Every change of a stock goes through `_flow`."""

    def __init__(self, view: Any) -> None:
        self.view = view
        self._states: dict[str, dict[str, Any]] = {}
        self._flows: list[Flow] = []
        self._declared: tuple[str, float | None] = ("", None)

    def declare(self, spirit: str, distilled_pct: float | None) -> None:
        """Note the declaration in this entry's document about the spirit that moves.

        It counts before the book's own figures.
        """
        self._declared = (spirit, distilled_pct)

    def state(self, key: str) -> dict[str, Any]:
        """Return a state as this entry has left it so far."""
        found: dict[str, Any] | None = self._states.get(key) or self.view.get(key)
        return found or (EMPTY_VESSEL if key[:2] == "v:" else {})

    def put(self, key: str, **changes: Any) -> None:
        """Change parts of a state. Stocks are not changed here."""
        self._states[key] = {**self.state(key), **changes}

    def remember(self, read: Read) -> None:
        """Keep the entry among the recent ones of its vessel."""
        key = f"v:{read.mark}"
        self._states[key] = remember(self.state(key), read, self.view)

    def held(self, mark: str) -> dict[str, Any] | None:
        """Return the fill in a vessel, or None."""
        held: dict[str, Any] | None = self.state(f"v:{mark}")["holds"]
        return held

    def stock(self, key: str) -> Amount:
        """Return the stock of a vessel, a run or the bottles of a bottling."""
        held: Mapping[str, Any] = {} if key[:2] == "ou" else self._holder(key) or {}
        return Amount(*(held.get(name, 0) for name in Amount._fields))

    def begin(self, mark: str, **facts: Any) -> None:
        """Begin a fill in an empty vessel; its name is the root of this entry."""
        row = self.view.vessel(mark) or {}
        fill = {
            "fill": self.view.root, "what": "spirit", "material": None, "name": "", "since": self.view.at, "og": None,
            "sources": [], "account": ACCOUNTS.get(row.get("sort", ""), "production"), "mash": False,
            "lpa_ul": 0, "volume_ml": 0, "mass_g": 0,
        }  # fmt: skip
        self._know(mark, _with_figures({**fill, **facts}))

    def describe(self, mark: str, **facts: Any) -> None:
        """Change facts of a fill; its stock stays."""
        held = self.held(mark)
        if held:
            self._know(mark, _with_figures({**held, **facts}))

    def move(self, source: str, target: str, amount: Amount, reason: str = "") -> None:
        """Book an amount from one account to another; its negative parts go the other way."""
        for one, other, part in ((source, target, amount), (target, source, Amount().less(amount))):
            forth = part.above_nothing()
            if any(forth):
                self._move(one, other, forth, reason)

    def draw(self, source: str, target: str, amount: Amount, reason: str = "", *, whole: bool = False) -> None:
        """Take an amount out of a vessel. If hardly anything is left, it is empty, and the rest a gauge difference."""
        before = self.stock(source)
        self.move(source, target, amount, reason)
        mark = source[2:]
        if source[:2] != "v:" or not self.held(mark):
            return
        rest, held = self.stock(source), self.held(mark) or {}
        has_end = not held["mash"] or held.get("closed")  # of an open mash nobody knows how much there is
        little = before.volume_ml and rest.volume_ml <= max(HEEL_ML, HEEL_SHARE * before.volume_ml)
        if whole or (has_end and little):
            self.clear(mark, "out:gauge_difference", "heel")
            return
        most_ul = round(rest.mass_g / float(density_from_mass_fraction(1.0, 20.0)) * 1e6)
        if not held["mash"] and rest.lpa_ul > most_ul:  # more alcohol than the rest weighs
            self.move(source, "out:gauge_difference", Amount(rest.lpa_ul - most_ul), "heel")

    def measure(self, mark: str, amount: Amount, outside: str, reason: str = "") -> None:
        """Make a vessel hold what was measured; the difference to the book goes to, or comes from, the outside."""
        key = f"v:{mark}"
        if not (amount.lpa_ul or amount.mass_g):
            self.clear(mark, outside, reason)
            return
        difference = self.stock(key).less(amount)
        self.move(key, outside, difference, reason)

    def clear(self, key_or_mark: str, outside: str, reason: str = "") -> None:
        """Send all that is left in a vessel, run or bottling to another account. A vessel's fill ends."""
        key = key_or_mark if key_or_mark[:2] in ("r:", "b:") else f"v:{key_or_mark}"
        rest = self.stock(key)
        if any(rest):
            self._flow(key, outside, rest, reason)
        held = self.held(key[2:]) if key[:2] == "v:" else None
        if held:
            self.put(f"f:{held['fill']}", ended_at=self.view.at)
            self.put(key, holds=None)

    def change_account(self, mark: str, account: str, reason: str = "") -> None:
        """Move all that a vessel holds to another tax account, where it stands."""
        held = self.held(mark)
        if held and held["account"] != account:
            key, fill = f"v:{mark}", held["fill"]
            sort = self._sort(key, held["account"], key, account)
            self._flows.append(Flow(key, key, *self.stock(key), fill, fill, reason, held["account"], account, sort))
            self.describe(mark, account=account)

    def effect(self, **more: dict[str, Any]) -> Effect:
        """Return all of it as the effect of the entry."""
        return Effect({**self._states, **more}, tuple(self._flows))

    def _know(self, mark: str, held: dict[str, Any]) -> None:
        """Keep a fill, and what is to be known of it for good under `f:<fill>`."""
        self.put(f"v:{mark}", holds=held)
        facts = {name: held[name] for name in FACTS if held.get(name) is not None}
        lasting = {"mark": mark, **facts, "ended_at": None}
        if self.state(f"f:{held['fill']}") != lasting:
            self._states[f"f:{held['fill']}"] = lasting

    def _move(self, source: str, target: str, amount: Amount, reason: str) -> None:
        if source == target:
            return
        if source[:2] == "v:" and not self.held(source[2:]):
            source = "out:not_accounted"  # the book knows of nothing there
        elif source[:2] != "ou":
            short = amount.less(self.stock(source)).above_nothing()
            if not self._counts_volume(source):
                short = short._replace(volume_ml=0)
            if any(short):
                self._flow(self._covered_by(source), source, short, "more_than_booked")
        if target[:2] == "v:" and not self.held(target[2:]):
            self.begin(target[2:])
        self._flow(source, target, amount, reason)

    def _flow(self, source: str, target: str, amount: Amount, reason: str) -> None:
        fills = self._fill(source), self._fill(target)
        accounts = self._account(source), self._account(target)
        sort = self._sort(source, accounts[0], target, accounts[1])
        self._flows.append(Flow(source, target, *amount, *fills, reason, *accounts, sort))
        self._mix_distilled(source, target, amount, reason)
        self._add(source, Amount().less(amount))
        self._add(target, amount)

    def _add(self, key: str, amount: Amount) -> None:
        if key[:2] == "ou":
            return
        stock = self.stock(key)
        sums = {name: stock[n] + amount[n] for n, name in enumerate(Amount._fields)}
        if key[:2] in ("r:", "b:"):
            self.put(key, **sums | {"volume_ml": max(sums["volume_ml"], 0)})  # volumes do not add
        else:
            self.put(key, holds=_with_figures({**(self.held(key[2:]) or {}), **sums}))

    def _sort(self, source: str, account: str, target: str, to: str) -> str:
        """Return the class of what leaves production: for another account, or the premises."""
        if account != "production" or to == "production" or not (to or target == "out:removed"):
            return ""
        spirit, declared_pct = self._declared
        held = self._holder(source) or {}
        words = f"{spirit} {held.get('what') or ''} {held.get('material') or ''}"
        return class_of(words, declared_pct or held.get("distilled_pct"))

    def _mix_distilled(self, source: str, target: str, amount: Amount, reason: str) -> None:
        """Keep the strength at which a fill came off the still: that of hearts, and of mixes by their pure alcohol."""
        held = self.held(target[2:]) if target[:2] == "v:" else None
        if not held or not amount.lpa_ul or held["mash"]:
            return
        came = (self._holder(source) or {}).get("distilled_pct") if source[:2] == "v:" else None
        if source[:2] == "r:" and reason == "hearts" and amount.volume_ml:
            came = min(amount.lpa_ul / amount.volume_ml / 10, 100.0)
        known = held.get("distilled_pct")
        if came and came != known and (held["lpa_ul"] or not known):
            mix = came if not known else mixed_pct(held["lpa_ul"], known, amount.lpa_ul, came)
            self.describe(target[2:], distilled_pct=mix)

    def _holder(self, key: str) -> Mapping[str, Any] | None:
        return self.held(key[2:]) if key[:2] == "v:" else self.state(key)

    def _counts_volume(self, key: str) -> bool:
        return key[:2] == "v:" and bool((self.held(key[2:]) or {}).get("mash"))

    def _covered_by(self, key: str) -> str:
        if key[:2] != "v:":
            return "out:overage" if key[:2] == "b:" else "out:not_accounted"
        held = self.held(key[2:]) or {}
        return "out:fermented" if held.get("mash") and not held.get("closed") else "out:gauge_difference"

    def _fill(self, key: str) -> str:
        if key[:2] == "r:":
            return key[2:]
        return str((self.held(key[2:]) or {}).get("fill", "")) if key[:2] == "v:" else ""

    def _account(self, key: str) -> str:
        if key[:2] in ("r:", "b:"):
            return "production" if key[:2] == "r:" else "finished"
        return str((self.held(key[2:]) or {}).get("account", "")) if key[:2] == "v:" else ""


def unbalanced(effect: Effect, view: Any) -> list[str]:
    """Return the vessels and runs whose stock this effect changes by anything but its flows. Empty: all is right.

    Since every entry is asked this, stock and flows agree over the whole book by induction.
    """
    moved: dict[str, list[int]] = {}
    for flow in effect.flows:
        for account, sign in ((flow.source, -1), (flow.target, 1)):
            sums = moved.setdefault(account, [0, 0])
            sums[0] += sign * flow.lpa_ul
            sums[1] += sign * flow.mass_g
    keys = {key for key in (*moved, *effect.states) if key[:2] in ("v:", "r:", "b:")}
    wrong = []
    for key in sorted(keys):
        before, after = _ledger(key, view.get(key)), _ledger(key, effect.states.get(key) or view.get(key))
        if [after[0] - before[0], after[1] - before[1]] != moved.get(key, [0, 0]) or min(after) < 0:
            wrong.append(key)
    return wrong


def _ledger(key: str, state: Mapping[str, Any] | None) -> tuple[int, int]:
    holder = (state or {}).get("holds") if key[:2] == "v:" else state
    return (holder or {}).get("lpa_ul", 0), (holder or {}).get("mass_g", 0)


def _with_figures(held: dict[str, Any]) -> dict[str, Any]:
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


__all__ = ["Amount", "Posting", "amount_of", "spirit_of", "spirit_read", "spirit_volume_ml", "unbalanced", "weighed"]
