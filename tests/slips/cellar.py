"""From the store to the bottle: stock, water, casks filled and weighed again, dumped, filtered, bottled, sent out."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

from tests.slips.house import House, Spirit, spirit

SOAK_KG = 5.0  # that the wood of a cask of 200 L keeps; common practice, no source


def water_for(now: Spirit, target_pct: float) -> float:
    """Return the water that brings spirit to a strength. [kg]"""
    low, high = 0.0, now.mass * 4 + 1
    for _ in range(40):
        middle = (low + high) / 2
        low, high = (middle, high) if Spirit(now.lpa, now.mass + middle).strength > target_pct else (low, middle)
    return (low + high) / 2


def gauge(house: House, mark: str, kind: str = "gauge", **more: Any) -> None:
    """Gauge a tank or receiver by dip and glass."""
    held, temp = house.holds[mark], house.chance.uniform(12, 19)
    house.say(kind, mark, {
        "volume": house.show(house.dip(mark, held.volume, held.strength, temp), "volume"),
        **house.proved(held.strength, temp), **more,
    }, minutes=house.chance.uniform(20, 60), lpa=held.lpa)


def reduce(house: House, mark: str, target_pct: float) -> None:
    """Add water by weight, and measure after a rest."""
    held = house.holds[mark]
    water = house.weigh(water_for(held, target_pct), "SC-1")
    before = {"strength_pct": held.strength, "volume_l": held.volume}
    house.say("reduce", mark, {"target": house.show(target_pct, "strength"), "water": house.show(water, "mass", "SC-1"),
                               "rest_until": "two days"},
              minutes=40, lpa=held.lpa, context=before)
    held.mass += water
    house.next_day(2)
    temp = house.chance.uniform(13, 19)
    house.say("reduce", mark, {
        "target": house.show(target_pct, "strength"), "water": house.show(0.0, "mass", "SC-1"),
        **house.proved(held.strength, temp),
        "volume": house.show(house.dip(mark, held.volume, held.strength, temp), "volume"),
    }, lpa=held.lpa, context=before)


def open_casks(house: House, many: int) -> None:
    """Take casks of earlier years into the book."""
    for _ in range(many):
        mark = house.put_cask()
        row, draw = house.vessels[mark], house.chance
        fill = spirit(row["capacity_l"] * draw.uniform(0.9, 0.97), draw.uniform(56, 64))
        house.holds[mark] = fill
        filled = house.at - timedelta(days=draw.randint(200, 900))
        house.say("opening", mark, {
            "spirit": "plum", "lot": f"L-{filled:%y}", "gross": house.show(_gross(house, mark), "mass", "SC-1"),
            "tare": house.show(row["tare_kg"], "mass"), **house.proved(fill.strength),
            "filled_on": f"{filled:%Y-%m-%d}", "papers": f"book 3, page {draw.randint(1, 90)}",
            "use": row["use"], "place": row["place"],
        }, minutes=12, person=0, lpa=fill.lpa, context={"tare_kg": row["tare_kg"]})


def _gross(house: House, mark: str) -> float:
    return house.weigh(house.vessels[mark]["tare_kg"] + house.holds[mark].mass)


def fill_casks(house: House) -> None:
    """Fill casks from the store, one after the other on one day."""
    store, draw = house.holds[house.store], house.chance
    house.next_day(3)
    filled = 0
    while filled < 5:
        mark = house.put_cask()
        row = house.vessels[mark]
        litres = row["capacity_l"] * draw.uniform(0.94, 0.985)
        if store.volume < litres + 4:
            del house.vessels[mark], house.holds[mark]
            house.casks.remove(mark)
            return
        filled += 1
        house.holds[mark] = store.take_litres(litres)
        held = house.holds[mark]
        house.say("cask_fill", mark, {
            "from_vessel": house.store, "lot": f"L-{house.at:%y}-{filled}",
            "tare": house.show(house.weigh(row["tare_kg"]), "mass", "SC-1"),
            "gross": house.show(_gross(house, mark), "mass", "SC-1"), **house.proved(held.strength),
            "use": row["use"], "soaked": "yes", "place": row["place"], "tight": "yes",
        }, minutes=draw.uniform(12, 25), person=0, lpa=held.lpa)


def age(house: House, days: float) -> None:
    """Let so many days go by: what casks breathe out by their size, and where their strength goes."""
    for mark in house.casks:
        held, row = house.holds[mark], house.vessels[mark]
        if held.volume <= 0:
            continue
        rate = (0.055 if row["capacity_l"] < 100 else 0.03) * house.chance.uniform(0.8, 1.25)
        drift = house.chance.uniform(-0.5, 0.3)
        lpa = held.lpa * (1 - rate) ** (days / 365)
        strength = held.strength + drift * days / 365
        held.lpa, held.mass = lpa, lpa / strength * 100 * house.rho(strength)
    house.next_day(days)


def regauge(house: House) -> None:
    """Weigh and prove each cask on one round."""
    for mark in house.casks:
        held = house.holds[mark]
        if held.volume <= 0:
            continue
        house.say("cask_regauge", mark, {
            "gross": house.show(_gross(house, mark), "mass", "SC-1"), **house.proved(held.strength),
            "condition": "tight",
        }, minutes=house.chance.uniform(6, 15), person=0, lpa=held.lpa,
            context={"tare_kg": house.vessels[mark]["tare_kg"]})


def top_up(house: House) -> None:
    """Top one cask up from another of the same house, by weight."""
    full = [mark for mark in house.casks if house.holds[mark].volume > 20]
    if len(full) < 3:
        return
    source, *others = house.chance.sample(full, 3)
    for mark in others:
        row = house.vessels[mark]
        room = min(row["capacity_l"] * 0.985 - house.holds[mark].volume, house.holds[source].volume * 0.4)
        if room < 0.5:
            continue
        poured = house.holds[source].take_litres(room)
        house.say("top_up", mark, {"work": "top_up", "from_vessel": source, **house.proved(poured.strength),
                                   "net_weight": house.show(house.weigh(poured.mass), "mass", "SC-1")},
                  minutes=15, person=0, lpa=poured.lpa)
        house.holds[mark].join(poured)


def dump(house: House) -> None:
    """Dump some casks into the vat, each weighed full and empty, after a plan."""
    vat, draw = house.vat, house.chance
    room = house.vessels[vat]["capacity_l"] * 0.6
    chosen: list[str] = []
    for mark in house.casks:
        if house.holds[mark].volume > 15 and sum(house.holds[m].volume for m in [*chosen, mark]) < room:
            chosen.append(mark)
    chosen = chosen[-max(3, len(chosen) // 2):]
    plan, together = "; ".join(f"{mark} {house.holds[mark].mass * 0.97:.1f}" for mark in chosen), Spirit()
    for mark in chosen:
        together.join(house.holds[mark].copy().take(0.97))
    house.label = float(draw.choice((38, 40, 42, 43, 45)))
    house.say("vat_plan", vat, {
        "name": "K-1", "draws": plan, "target": house.show(house.label, "strength"),
        "water": house.show(water_for(together, house.label), "mass"),
    }, minutes=60)
    for mark in chosen:
        held, row = house.holds[mark], house.vessels[mark]
        kept = SOAK_KG * (row["capacity_l"] / 200) ** (2 / 3) * draw.uniform(0.8, 1.3)
        gross, strength = _gross(house, mark), held.strength
        poured = held.take(1 - kept / held.mass)
        house.holds[mark] = Spirit()
        house.holds[vat].join(poured)
        now = house.holds[vat]
        house.say("dump", mark, {
            "gross": house.show(gross, "mass", "SC-1"),
            "empty": house.show(house.weigh(row["tare_kg"] + kept), "mass", "SC-1"), **house.proved(strength),
            "to_vessel": vat, "tank_dip": house.show(house.dip(vat, now.volume, now.strength, 20.0), "volume"),
        }, minutes=draw.uniform(30, 50), person=0, lpa=poured.lpa)


def bottle(house: House) -> None:
    """Reduce the vat to the label, filter, gauge, bottle, and send cases out."""
    vat, draw = house.vat, house.chance
    held, label = house.holds[vat], house.label
    house.next_day(2)
    gauge(house, vat)
    reduce(house, vat, round((held.strength + label) / 2))
    reduce(house, vat, label)
    house.next_day(7)
    _filter(house)
    _sample(house, vat)
    house.next_day(1)
    gauge(house, vat, "bottling_gauge", batch="K-1", label_strength=house.show(label, "strength"))
    size = draw.choice((0.35, 0.5, 0.7))
    loss = draw.uniform(0.004, 0.009) * held.volume
    filled = int((held.volume - loss) / size)
    for _ in range(2):
        house.say("bottle_check", vat, {
            "line": "1", "tested": house.value("6", "count"), "bottle_size": house.value(f"{size:g}", "L"),
            "fill_found": house.value(f"{draw.gauss(100.2, 0.1):.1f}", "pct"),
            "fill_least": house.value(f"{draw.uniform(99.6, 99.9):.1f}", "pct"),
            "fill_most": house.value(f"{draw.uniform(100.4, 100.7):.1f}", "pct"),
            "strength_found": house.show(held.strength + draw.gauss(0, 0.04), "strength"), "labels_right": "yes",
        }, minutes=45)
    broken, library = draw.randint(0, 3), draw.randint(0, 2)
    cases = (filled - broken - library) // 6
    filled = cases * 6 + broken + library
    house.say("bottling_close", vat, {
        "filled": house.value(str(filled), "count"), "broken": house.value(str(broken), "count"),
        "library": house.value(str(library), "count"), "bottle_size": house.value(f"{size:g}", "L"),
        "per_case": house.value("6", "count"), "case_from": "1", "case_to": str(cases), "lot_mark": f"L{house.at:%y}7",
        "loss": house.show(held.volume - filled * size, "volume"), "tank_empty": "yes",
    }, minutes=150, lpa=held.lpa, context={"strength_pct": held.strength})
    house.holds[vat] = Spirit()
    _send(house, cases, library, size * held.strength / 100)


def _filter(house: House) -> None:
    vat, draw, held = house.vat, house.chance, house.holds[house.vat]
    before = held.copy()
    held.take(draw.uniform(0.002, 0.006))
    read: dict[str, Any] = {}
    for side, now in (("before", before), ("after", held)):
        temp = draw.uniform(12, 18)
        read |= {
            f"volume_{side}": house.show(house.dip(vat, now.volume, now.strength, temp), "volume"),
            f"strength_{side}": house.show(now.strength + draw.gauss(0, 0.04), "strength"),
            f"temp_{side}": house.show(house.thermometer(temp), "temp", "TH-1"),
        }
    house.say("chill_filter", vat, {"temp": house.show(draw.uniform(-4, 2), "temp", "TH-1"), "sheets": "K150", **read},
              minutes=240, lpa=before.lpa)


def _sample(house: House, mark: str) -> None:
    draw, held = house.chance, house.holds[mark]
    house.say("sample", mark, {"size": house.value("100", "mL"), "number": house.value("3", "count"),
                               "purpose": "analysis", "went": "outside_lab", "lab": "Laboratory One"},
              minutes=30, lpa=0.3 * held.strength / 100, context={"strength_pct": held.strength})
    held.take_litres(0.3)
    low, high = (110, 190) if "grape" in house.fruits else (300, 560)  # wine spirit has less of it
    house.say("lab_certificate", mark, {
        "laboratory": "Laboratory One", "document": f"{house.at:%y}-{draw.randint(100, 900)}",
        "taken_on": f"{house.at:%Y-%m-%d}", "strength": house.show(held.strength, "strength", decimals=2),
        "methanol": house.value(f"{draw.uniform(low, high):.0f}", "g_hL_pa"),
        "volatile_substances": house.value(f"{draw.uniform(260, 480):.0f}", "g_hL_pa"),
        "ethyl_carbamate": house.value(f"{draw.uniform(0.1, 0.7):.2f}", "mg_L"),
    }, minutes=60 * 24 * 6)


def _send(house: House, cases: int, library: int, lpa_bottle: float) -> None:
    draw, first = house.chance, 1
    for n in range(draw.randint(2, 3)):
        house.next_day(draw.uniform(3, 20))
        many = max(min(draw.randint(2, 12), cases - first - 2), 1)
        house.say("dispatch", "", {
            "batch": "K-1", "why": "tax_paid", "cases": house.value(str(many), "count"), "case_from": str(first),
            "case_to": str(first + many - 1), "document": f"D-{first}{n}", "to_whom": "Shop One, Hilltown",
        }, lpa=many * 6 * lpa_bottle)
        first += many
    house.next_day(5)
    left = cases - first + 1
    house.say("bottled_count", "", {"batch": "K-1", "cases": house.value(str(left), "count"), "signed": "XY, office",
                                    "bottles": house.value(str(library), "count")}, lpa=left * 6 * lpa_bottle)
