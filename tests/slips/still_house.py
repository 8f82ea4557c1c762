"""From fruit to hearts in the store: loads, ferments, runs with readings and cuts, gauges of fractions, moves."""

from __future__ import annotations

from tests.slips.house import House, Spirit, spirit
from webapp.trade.scales import gravity_from_brix
from webapp.trade.still import vapour_temp_c
from webapp.trade.sugar import presumptive_lpa

# Material, sugar of its juice [Bx], gravity at which it ends: common practice, no source.
FRUITS = (
    ("plum", 13.0, 18.0, 1.011), ("pear", 11.0, 15.0, 1.009), ("quince", 10.0, 13.0, 1.008),
    ("cherry", 14.0, 19.0, 1.010), ("apricot", 11.0, 15.0, 1.006), ("mirabelle", 14.0, 18.0, 1.011),
    ("apple", 10.5, 14.0, 1.000), ("grape", 15.0, 20.0, 1.000),
)
READ_MIN = 30.0


def ferment(house: House, mark: str, number: int) -> tuple[float, float, dict[str, str], str]:
    """Tell one ferment from its loads to its close; return wash [L], its true strength [% vol], that as it was found,
    and the material.
    """
    draw = house.chance
    material, low, high, end = draw.choice(FRUITS)
    house.fruits.append(material)
    house.at = house.at.replace(hour=8, minute=draw.randrange(40))
    brix, net = draw.uniform(low, high), house.kg * draw.uniform(0.82, 1.0)
    loads = draw.randint(1, 3)
    for load in range(loads):
        tare = draw.uniform(0.04, 0.09) * net / loads
        house.say("fruit_intake", mark, {
            "gross": house.show(house.weigh(net / loads + tare), "mass", "SC-1"),
            "tare": house.show(house.weigh(tare), "mass", "SC-1"), "material": material,
            "grower_lot": f"G{draw.randint(1, 9)}-{load + 1}", "batch": f"B-{number:02d}",
            "sugar": house.show(brix + draw.gauss(0, 0.2), "sugar"),
            "temp": house.show(draw.uniform(9, 18), "temp", "TH-1"),
            "rot": house.value(str(draw.choice((0, 0, 1, 2))), "pct"),
        }, minutes=25)
    made = float(presumptive_lpa(net, brix, 0.85)) * draw.uniform(0.82, 1.0)
    _read_ferment(house, mark, float(gravity_from_brix(brix)), end + draw.uniform(-0.001, 0.001))
    wash = net / 1.04
    strength = made / wash * 100
    found = house.show(strength + draw.gauss(0, 0.03), "strength")
    house.say("ferment_closed", mark, {
        "final_gravity": house.show(end, "gravity"),
        "volume": house.show(wash * (1 + house.table_off[mark]), "volume", decimals=0),
        "wash_strength": found, "method": "lab",
    }, minutes=45, lpa=made)
    return wash * 0.995, strength, found, material


def _read_ferment(house: House, mark: str, begin: float, end: float) -> None:
    draw = house.chance
    middle, pace = draw.uniform(3.0, 4.5), max((begin - end) / 0.068, 0.9)
    shape = [1 / (1 + 2.718281828 ** ((day - middle) / pace)) for day in range(40)]
    temp = draw.uniform(15, 18)
    for day in range(1, round(middle + pace * 5) + 1):
        house.next_day(1, 8)
        gravity = end + (begin - end) * shape[day] / shape[0]
        house.say("ferment_reading", mark, {
            "temp": house.show(house.thermometer(temp + draw.gauss(0, 0.4)), "temp", "TH-1"),
            "gravity": house.show(gravity + draw.gauss(0, 0.0002), "gravity"), "cap": draw.choice(("thin", "thick")),
        }, minutes=draw.uniform(0, 50))
        if day == 1:
            house.say("addition", mark, {"what": "yeast", "lot_no": "Y4", "amount": house.value("250", "g"),
                                         "is_sugar": "no"}, minutes=15)


def run(house: House, source: str, wash_l: float, strength: float, found: dict[str, str], name: str, material: str
        ) -> None:
    """Tell one run from its charge to the hearts in the store."""
    draw, still = house.chance, house.still
    house.next_day(1, 6)
    wash_lpa, feints = wash_l * strength / 100, house.holds[house.tails].copy()
    values = {
        "run_name": name, "from_vessel": source, "wash": house.show(wash_l * (1 + house.table_off[source]), "volume"),
        "wash_strength": found, "heads_to": house.heads, "hearts_to": house.hearts,
        "tails_to": house.tails,
    }
    if feints.volume > 1:
        house.holds[house.tails] = Spirit()
        values |= {"feints": house.show(feints.volume, "volume"), "feints_from": house.tails,
                   "feints_strength": house.show(feints.strength, "strength")}
    house.say("charge", still, values, minutes=draw.uniform(0, 30), lpa=wash_lpa + feints.lpa)
    charged = wash_lpa + feints.lpa
    volume = wash_l + feints.volume
    parts = _distil(house, charged * (1 - draw.uniform(0.006, 0.016)), draw.uniform(0.05, 0.2) / 100, volume)
    _gauge_parts(house, parts, material)


def _distil(house: House, over: float, left_share: float, volume: float) -> dict[str, Spirit]:
    """Write the readings of a run down; return its fractions as they truly are."""
    draw, still = house.chance, house.still
    top, low, bend = draw.uniform(73, 83), draw.uniform(20, 25), draw.uniform(4.2, 5.4)
    heads_at, cut_pct = draw.uniform(0.03, 0.05), draw.uniform(54, 60)
    hearts_at = ((top - cut_pct) / (top - low)) ** (1 / bend)
    over -= volume * left_share
    whole = sum(over / 400 / (top - (top - low) * ((n + 0.5) / 400) ** bend) * 100 for n in range(400))
    flow = min(whole / draw.uniform(3.2, 5.0), 34.0)
    offset = draw.gauss(0, 0.15)
    house.say("cut", still, {"event": "first_drop"}, minutes=draw.uniform(50, 70))
    parts = {"heads": Spirit(), "hearts": Spirit(), "tails": Spirit()}
    now, following, at_s, plates = "heads", 8.0, 0.0, str(draw.randint(2, 4))

    def read(pct: float) -> dict[str, dict[str, str]]:
        boils = float(vapour_temp_c(max(pct, 20.0), house.height_m)) + max(20.0 - pct, 0.0) * 0.3
        vapour = boils + offset + draw.gauss(0, 0.15)
        return {**house.proved(pct, draw.uniform(13, 18)), "vapour_temp": house.show(vapour, "temp", "TH-2"),
                "flow": house.show(flow * (1 + draw.gauss(0, 0.015)), "flow")}

    gone = 0.0
    for n in range(400):
        share = (n + 0.5) / 400
        pct = top - (top - low) * share**bend
        if now == "heads" and share >= heads_at:
            house.say("cut", still, {"event": "heads_cut", "receiver": house.hearts, "reason": "nose", **read(pct)},
                      minutes=at_s - gone)
            now, gone, following = "hearts", at_s, at_s + READ_MIN / 2
        elif now == "hearts" and share >= hearts_at:
            house.say("cut", still, {"event": "hearts_cut", "receiver": house.tails, "reason": "nose", **read(pct)},
                      minutes=at_s - gone)
            now, gone, following = "tails", at_s, at_s + READ_MIN / 2
        elif at_s >= following:
            house.say("run_reading", still, {**read(pct), "plates": house.value(plates, "count")},
                      minutes=at_s - gone)
            gone, following = at_s, at_s + READ_MIN
        litres = over / 400 / pct * 100
        parts[now].join(spirit(litres, pct))
        at_s += litres / flow * 60
    house.say("run_end", still, {"reason": "strength", **read(low)}, minutes=at_s - gone)
    parts["stillage"] = spirit(volume - whole, left_share * 100)
    return parts


def _gauge_parts(house: House, parts: dict[str, Spirit], material: str) -> None:
    draw, still = house.chance, house.still
    house.at = house.at.replace(second=0)
    for name, mark in (("heads", house.heads), ("hearts", house.hearts), ("tails", house.tails)):
        before, temp = house.holds[mark], draw.uniform(12, 20)
        remnant = {"remnant": house.show(before.volume, "volume")}
        if before.volume > 0:
            remnant["remnant_strength"] = house.show(before.strength, "strength")
        before.join(parts[name])
        dipped = house.dip(mark, before.volume, before.strength, temp)
        house.say("fraction_gauge", mark, {
            "still": still, "fraction": name, **remnant, "volume": house.show(dipped, "volume"),
            **house.proved(before.strength, temp), "goes_to": {"tails": "next_run"}.get(name, "stays"),
        }, minutes=draw.uniform(8, 15), lpa=parts[name].lpa)
    left = parts["stillage"]
    house.say("fraction_gauge", still, {
        "still": still, "fraction": "stillage", "volume": house.show(left.volume, "volume", decimals=0),
        "temp": house.show(20.0, "temp"), "strength": house.show(left.strength, "strength"), "goes_to": "drain",
    }, minutes=8, lpa=left.lpa)
    hearts, temp = house.holds[house.hearts], draw.uniform(12, 19)
    house.say("account_move", house.hearts, {
        "serial": str(1 + sum(one.entry["kind"] == "account_move" for one in house.said)),
        "from_account": "production", "to_account": "storage", "to_vessel": house.store, "purpose": "deposit",
        "spirit": material, "lot": f"L-{house.at:%y}", "distilling_strength": house.show(hearts.strength, "strength"),
        "volume": house.show(house.dip(house.hearts, hearts.volume, hearts.strength, temp), "volume"),
        **house.proved(hearts.strength, temp),
    }, minutes=draw.uniform(20, 60), lpa=hearts.lpa)
    house.holds[house.store].join(hearts.take(1.0))
    gathered = house.holds[house.heads]
    if gathered.volume > house.vessels[house.heads]["capacity_l"] * 0.4:
        house.say("destruction", house.heads, {
            "what": "heads", "volume": house.show(gathered.volume, "volume"), **house.proved(gathered.strength),
            "place": "yard", "manner": "burnt", "withdrawn": "no", "watched_by": "XY, distiller",
        }, minutes=30, lpa=gathered.lpa)
        house.holds[house.heads] = Spirit()
