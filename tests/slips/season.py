"""A clean season: everything a house logs in two years or so, in order, plausible to the last figure."""

from __future__ import annotations

from tests.slips import cellar, still_house
from tests.slips.house import House


def season(seed: int) -> House:
    """Return a house with its season told."""
    house = House(seed)
    draw = house.chance
    cellar.open_casks(house, draw.randint(3, 5))
    _check_instruments(house)
    closed = []
    for number, mark in enumerate(house.fermenters, 1):
        house.next_day(1)
        closed.append((mark, *still_house.ferment(house, mark, number)))
    name = 0
    for mark, wash, strength, found, material in closed:
        for _ in range(house.charges):
            name += 1
            still_house.run(house, mark, wash / house.charges, strength, found, f"R-{name:02d}", material)
        house.say("cleaning", mark, {"agent": "caustic 2 %, 20 min", "rinse_ph": house.value("7.1", "pH"),
                                     "entered": "no"}, minutes=60)
    house.next_day(2)
    cellar.gauge(house, house.store, purpose="stock")
    cellar.reduce(house, house.store, float(round(draw.uniform(57, 63))))
    cellar.fill_casks(house)
    house.next_day(1)
    cellar.gauge(house, house.store, purpose="stock")
    cellar.age(house, draw.uniform(90, 150))
    cellar.regauge(house)
    cellar.top_up(house)
    cellar.age(house, draw.uniform(200, 260))
    _check_instruments(house)
    _walk_round(house)
    cellar.regauge(house)
    cellar.age(house, draw.uniform(20, 60))
    cellar.dump(house)
    cellar.bottle(house)
    return house


def _check_instruments(house: House) -> None:
    for name, expected, against in (("TH-1", 0.0, "ice"), ("SC-1", 20.0, "weight"), ("AL-2", 62.0, "liquid")):
        house.say("instrument_check", "", {
            "instrument": name, "against": against, "expected": house.value(f"{expected:.1f}", "plain"),
            "found": house.value(f"{expected + house.chance.choice((0.0, 0.0, 0.1, -0.1)):.1f}", "plain"),
            "correction": house.value("0", "plain"), "result": "good", "in_use": "yes",
        }, minutes=10)


def _walk_round(house: House) -> None:
    """Count and taste what lies in the cellar, and move a cask to another place."""
    full = [mark for mark in house.casks if house.holds[mark].volume > 0]
    for mark in full[:3]:
        house.say("stock_count", mark, {"place": house.vessels[mark]["place"], "found": "here",
                                        "signed": "XY, cellar"}, minutes=4)
    house.say("tasting_note", full[0], {
        **{f"{part}_score": house.value("6", "count") for part in ("nose", "mouth", "wood", "fault")},
        "reduced_to": house.show(22.0, "strength"), "decision": "hold",
    }, minutes=15)
    house.say("cask_move", full[-1], {"from_place": house.vessels[full[-1]]["place"], "to_place": "K9-1"}, minutes=9)
    house.next_day(1)
