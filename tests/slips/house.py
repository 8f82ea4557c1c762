"""A house drawn at random: its vessels, people, instruments and units, and how its instruments read.

All of it is invented. How far instruments and hands stray is common practice, no source: dips by table and surface,
scales by an interval and a little slope, glasses by a tenth, thermometers by a few tenths. It is drawn here, apart from
what the product takes for granted (webapp/trade/uncertainty.py), so that neither is measured by itself.
"""

from __future__ import annotations

import random
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from typing import Any
from uuid import UUID

from webapp.book.house import people, registry
from webapp.book.record.store import Book
from webapp.kinds.stock import spirit_volume_ml
from webapp.trade import sums, units
from webapp.trade.alcoholometry import mass_from_litres, volume_at_20
from webapp.trade.density import density_from_strength
from webapp.trade.marks import make_mark

METRIC = {"mass": "kg", "volume": "L", "temp": "degC", "strength": "pct_vol", "glass": "pct_glass", "flow": "L_h"}
US = {"mass": "lb", "volume": "gal", "temp": "degF", "strength": "proof", "glass": "proof_glass", "flow": "gal_h"}
DECIMALS = {"mass": 1, "volume": 1, "temp": 1, "strength": 1, "glass": 1, "flow": 1, "gravity": 3, "sugar": 1}
CASK_SIZES = ((30, 9.0), (50, 13.5), (100, 25.0), (110, 27.0), (190, 42.0), (225, 48.0), (300, 62.0))
WOODS = ("oak", "chestnut", "mulberry", "acacia")
USES = ("new", "used_once", "used", "used")


@dataclass
class Spirit:
    """Spirit as it truly is: pure alcohol [L] and mass [kg]; volume and strength follow, with their contraction."""

    lpa: float = 0.0
    mass: float = 0.0

    @property
    def volume(self) -> float:
        """Litres at 20 degC."""
        return spirit_volume_ml(round(self.lpa * 1e6), round(self.mass * 1e3)) / 1000

    @property
    def strength(self) -> float:
        """Strength. [% vol at 20 degC]"""
        return self.lpa / self.volume * 100 if self.volume > 0 else 0.0

    def take(self, share: float) -> Spirit:
        """Take a share out of it and return that."""
        out = Spirit(self.lpa * share, self.mass * share)
        self.lpa, self.mass = self.lpa - out.lpa, self.mass - out.mass
        return out

    def take_litres(self, litres: float) -> Spirit:
        """Take litres at 20 degC out of it and return them."""
        return self.take(min(litres / self.volume, 1.0) if self.volume > 0 else 0.0)

    def join(self, other: Spirit) -> None:
        """Pour another into it."""
        self.lpa, self.mass = self.lpa + other.lpa, self.mass + other.mass

    def copy(self) -> Spirit:
        """Return the same once more."""
        return Spirit(self.lpa, self.mass)


def spirit(litres: float, strength_pct: float) -> Spirit:
    """Return spirit of litres at 20 degC and a strength."""
    return Spirit(litres * strength_pct / 100, float(mass_from_litres(litres, strength_pct)))


@dataclass
class Said:
    """An entry of a season as it was meant, with what its figures need that only the book knows."""

    entry: dict[str, Any]
    context: dict[str, float] = field(default_factory=dict)
    lpa: float = 0.0  # that it truly speaks of [L]

    @property
    def marks(self) -> set[str]:
        """The vessels that it speaks of."""
        named = {value["raw"] for name, value in self.entry["values"].items() if name in MARK_FIELDS}
        return {mark for mark in (self.entry["mark"], *named) if mark}


MARK_FIELDS = ("from_vessel", "to_vessel", "still", "feints_from", "heads_to", "hearts_to", "tails_to", "receiver")


class House:
    """A house and what it writes down. Everything drawn comes from one seeded generator."""

    def __init__(self, seed: int) -> None:
        self.seed, self.chance = seed, random.Random(seed)
        draw = self.chance
        self.is_us = draw.random() < 0.25
        self.units = US if self.is_us else METRIC
        self.gravity_unit = draw.choice(("SG", "SG", "SG", "degOe", "degP"))
        self.kg = draw.uniform(900, 5200)  # of fruit in a ferment
        self.height_m = draw.choice((0, 120, 310, 640))
        self.people = [f"{draw.choice('ABDEGHKLMN')}{draw.choice('OPRSTUVW')}{n}" for n in range(3)]
        self.at = datetime(draw.choice((2021, 2022, 2023)), 8, draw.randint(20, 30), 7, 0, tzinfo=UTC)
        self.said: list[Said] = []
        self.names_instruments = draw.random() < 0.6
        self.instruments = {
            "thermometer": ["TH-1", "TH-2"], "scale": ["SC-1", "SC-2"], "alcoholmeter": ["AL-1", "AL-2", "AL-3"],
        }
        self.off = {name: draw.gauss(0, 1) for names in self.instruments.values() for name in names}
        self.table_off: dict[str, float] = {}
        self.vessels: dict[str, dict[str, Any]] = {}
        self.holds: dict[str, Spirit] = {}
        self.types_glass = draw.random() < 0.75
        self._furnish()

    def _furnish(self) -> None:
        draw, kg = self.chance, self.kg
        self.fermenters = [self.put("fermenter", f"F{n}", round(kg / 1.05 * draw.uniform(1.25, 1.5), -1))
                           for n in range(1, draw.randint(2, 3) + 1)]
        self.charges = draw.choice((1, 2, 2, 3))
        wash = kg / 1.03 / self.charges
        self.still = self.put("still", "S1", round(wash * 1.6, -1))
        receiver = max(round(wash * 0.16, -1), 20)
        self.heads, self.hearts, self.tails = (
            self.put("receiver", f"R{n}", receiver * much) for n, much in ((1, 2), (2, 1), (3, 2)))
        store = max(round(kg * 0.11 * len(self.fermenters) * 1.6, -1), 200)
        self.store, self.vat = self.put("tank", "T1", store), self.put("tank", "T2", store)
        self.casks: list[str] = []
        self.fruits: list[str] = []
        self.label = 40.0  # that the vat is planned for [% vol]

    def put(self, sort: str, base: str, capacity: float, **more: Any) -> str:
        """Add a vessel; return its mark."""
        mark = make_mark(base)
        row = {"mark": mark, "sort": sort, "capacity_l": float(capacity), **more}
        if sort in ("fermenter", "still"):
            row["working_l"] = round(capacity * 0.92)
        self.vessels[mark] = row
        self.holds[mark] = Spirit()
        self.table_off[mark] = self.chance.gauss(0, 0.0012)
        return mark

    def put_cask(self) -> str:
        """Add a cask of a drawn size; return its mark."""
        n = len(self.casks) + 1
        fits = [one for one in CASK_SIZES if one[0] <= max(self.kg * 0.05, 30)]
        size, weight = self.chance.choice(fits[-3:])
        tare = round(weight * self.chance.uniform(0.95, 1.05), 1)
        mark = self.put("cask", f"C{n:03d}", size, tare_kg=tare, wood=self.chance.choice(WOODS[:2]),
                        use=self.chance.choice(USES), place=f"K{1 + n // 5}-{n % 5 + 1}")
        self.casks.append(mark)
        return mark

    def fill_book(self, book: Book) -> None:
        """Put site, vessels, people and instruments into a new book."""
        registry.set_site(book, {"units": "us" if self.is_us else "metric", "height_m": self.height_m,
                                 "time_zone": "UTC"}, "XY")
        for code in ("XY", *self.people):
            people.put_person(book, {"code": code, "name": code, "roles": ["cellar hand"]}, "XY")
        for row in self.vessels.values():
            registry.put_vessel(book, row, "XY")
        unit = self.units
        for sort, names in self.instruments.items():
            for name in names:
                row = {"id": name, "sort": sort}
                if sort == "alcoholmeter":
                    low, high = {"AL-1": (0, 45), "AL-2": (40, 80), "AL-3": (70, 100)}[name]
                    wide = 2 if self.is_us else 1
                    row |= {"unit": unit["glass"], "low": low * wide, "high": high * wide}
                registry.put_instrument(book, row, "XY")

    # How things are read

    def weigh(self, kg: float, name: str = "SC-1") -> float:
        """Return what a scale shows of a load. [kg]"""
        step = 0.1 if kg < 150 else 0.2 if kg < 600 else 0.5 if kg < 1500 else 1.0
        shown = kg * (1 + 0.0002 * self.off[name]) + self.chance.gauss(0, step * 0.4)
        return max(round(shown / step) * step, 0.0)

    def dip(self, mark: str, litres_20: float, strength_pct: float, temp_c: float) -> float:
        """Return what a dip shows of litres at 20 degC, at its temperature. [L]"""
        litres = litres_20 / float(volume_at_20(1.0, strength_pct, temp_c)) if strength_pct else litres_20
        surface = 0.0006 * (self.vessels[mark]["capacity_l"] / 1000) ** (2 / 3) * 1000
        return max(litres * (1 + self.table_off[mark]) + self.chance.gauss(0, surface), 0.0)

    def thermometer(self, temp_c: float) -> float:
        """Return what a thermometer shows. [degC]"""
        return temp_c + 0.1 * self.off["TH-1"] + self.chance.gauss(0, 0.1)

    def proved(self, strength_pct: float, temp_c: float | None = None) -> dict[str, Any]:
        """Return glass and temperature, or strength and temperature, of spirit as they are read."""
        temp = self.chance.uniform(11, 19) if temp_c is None else temp_c
        seen = min(max(strength_pct + self.chance.gauss(0, 0.06), 0.05), 96.9)
        shown = self.thermometer(temp)
        if not self.types_glass or (self.is_us and seen < 5):
            return {"strength": self.show(seen, "strength"), "temp": self.show(shown, "temp", "TH-1")}
        raw = self.glass_of(seen, temp)
        by_volume = raw / 2 if self.is_us else raw
        glass = "AL-1" if by_volume < 42 else "AL-2" if by_volume < 75 else "AL-3"
        return {"glass": self.value(f"{raw:.1f}", self.units["glass"], glass), "temp": self.show(shown, "temp", "TH-1")}

    def glass_of(self, strength_pct: float, temp_c: float) -> float:
        """Return what a glass shows, in the units of the house, by halving of an interval."""
        unit = self.units["glass"]
        low, high = 0.0, 200.0 if unit == "proof_glass" else 100.0
        for _ in range(40):
            middle = (low + high) / 2
            given = {"glass": sums.Quantity(middle, unit), "temp": sums.Quantity(temp_c, "degC")}
            try:
                is_high = (sums.compute("true_strength", given) or 0.0) > strength_pct
            except ValueError:
                is_high = middle > strength_pct
            low, high = (low, middle) if is_high else (middle, high)
        return round((low + high) / 2, 1)

    # How it is written down

    def value(self, raw: str, unit: str = "", instrument: str = "") -> dict[str, str]:
        """Return a field as a phone sends it."""
        made = {"raw": raw, "unit": unit} if unit else {"raw": raw}
        return made | ({"instrument": instrument} if instrument and self.names_instruments else {})

    def show(self, canonical: float, what: str, instrument: str = "", decimals: int | None = None) -> dict[str, str]:
        """Return a figure in the house's unit, as it would be typed."""
        unit = {"gravity": self.gravity_unit, "sugar": "Bx"}.get(what) or self.units[what]
        shown = float(units.from_canonical(canonical, unit))
        places = DECIMALS[what] if decimals is None else decimals
        if what == "gravity" and unit != "SG":
            places = 0 if unit == "degOe" else 1
        return self.value(f"{shown:.{places}f}", unit, instrument)

    def say(self, kind: str, mark: str, values: dict[str, Any], *, minutes: float = 0.0, person: int | None = None,
            lpa: float = 0.0, context: dict[str, float] | None = None) -> Said:
        """Write an entry down, so many minutes after the one before."""
        self.at += timedelta(minutes=minutes)
        who = self.chance.randrange(2) if person is None else person
        number = len(self.said) + 1
        typed = self.at + timedelta(seconds=self.chance.choice((5, 20, 40, 90, 200)))
        made = {name: self.value(given) if isinstance(given, str) else given for name, given in values.items()}
        one = {
            "id": str(UUID(int=(0x0190_0000_0000 + self.seed * 4096 + number) << 80 | 0x7000 << 64 | 0x8000 << 48
                           | number)),
            "kind": kind, "kind_version": 1, "mark": mark, "mark_by": "scanned" if mark else "",
            "read_at": self.at.isoformat(timespec="seconds"), "typed_at": typed.isoformat(timespec="seconds"),
            "person": self.people[who], "role": "cellar hand", "seen_by": "", "device": f"d-{who}", "seq": number,
            "values": made, "as_read": [], "looked_again": [], "remark": "", "amends": None, "reason": "",
        }
        said = Said(one, dict(context or {}), lpa)
        self.said.append(said)
        return said

    def next_day(self, days: float = 1.0, hour: float = 7.0) -> None:
        """Go on so many days later, at about this hour."""
        self.at = (self.at + timedelta(days=days)).replace(hour=int(hour), minute=self.chance.randrange(50), second=0)

    def rho(self, strength_pct: float) -> float:
        """Return the density of spirit at 20 degC. [kg/L]"""
        return float(density_from_strength(strength_pct, 20.0)) / 1000
