"""The other work of a year: instruments checked, casks moved, tasted and counted, vessels cleaned, heads destroyed."""

from __future__ import annotations

from datetime import timedelta
from math import floor

from webapp.demo.story import Draft, Values, day, figure, glass_values, load
from webapp.demo.told import Cellar, Checked, Cleaned, Destroyed, Moved, Sampled, Tasted
from webapp.trade.density import density_from_strength

COUNTED_BY = "Pavel R., gauger; Odette L., office"


def drafts() -> list[Draft]:
    """Return all these entries, as demo_data/cellar.json tells them."""
    told: Cellar = load("cellar")
    return [
        *(_checked(line) for line in told["instrument_checks"]), *(_moved(line) for line in told["moves"]),
        *(_sampled(line) for line in told["samples"]), *(_tasted(line) for line in told["tastings"]),
        *(_cleaned(line) for line in told["cleanings"]), *_destroyed(told["heads_destroyed"]), *_counted(told),
    ]


def _checked(line: Checked) -> Draft:
    values: Values = {
        "instrument": line["instrument"], "against": line["against"], "result": line["result"],
        "in_use": line["in_use"], "expected": (line["expected"], "plain"), "found": (line["found"], "plain"),
        "correction": (line["correction"], "plain"),
    }
    at = day(*line["on"].split(" "))
    return Draft(at, "instrument_check", "", line["person"], values, key=f"check:{line['instrument']}:{at:%Y%m%d}")


def _moved(line: Moved) -> Draft:
    values: Values = {"from_place": line["from"], "to_place": line["to"]}
    at = day(*line["on"].split(" "))
    return Draft(at, "cask_move", line["cask"], "PR", values, key=f"moved:{line['cask']}", remark=line["why"])


def _sampled(line: Sampled) -> Draft:
    values: Values = {
        "size": (f"{line['millilitres']}", "mL"), "number": (f"{line['number']}", "count"),
        "purpose": line["purpose"], "went": "destroyed",
    }
    return Draft(day(*line["on"].split(" ")), "sample", line["vessel"], "PR", values)


def _tasted(line: Tasted) -> Draft:
    names = ("nose_score", "mouth_score", "wood_score", "fault_score")
    values: Values = {
        **{name: (f"{score}", "count") for name, score in zip(names, line["scores"], strict=True)},
        "words": line["words"], "reduced_to": (f"{line['reduced_to']}", "pct_vol"), "decision": line["decision"],
    }
    return Draft(day(*line["on"].split(" ")), "tasting_note", line["vessel"], "IM", values)


def _cleaned(line: Cleaned) -> Draft:
    values: Values = {
        "agent": line["agent"], "temp": (line["temp"], "degC", "TH-1"), "rinse_ph": (line["rinse_ph"], "pH"),
        "entered": "no",
    }
    return Draft(day(*line["on"].split(" ")), "cleaning", line["vessel"], line["person"], values)


def _destroyed(line: Destroyed) -> list[Draft]:
    """The heads of the season, made unfit and used to clean drains, in the presence of two people."""
    told, temp_c = [], 11.0
    for minutes, (vessel, volume_l, strength_pct) in enumerate(line["heads"]):
        shrunk = float(density_from_strength(strength_pct, 20.0) / density_from_strength(strength_pct, temp_c))
        values: Values = {
            "what": "heads of the season", "volume": (figure(floor(volume_l * shrunk * 10) / 10, 1), "L"),
            **glass_values(strength_pct, temp_c), "place": "drains of the fermenting room, outside the zone",
            "manner": "made unfit and used to clean the drains", "withdrawn": "no",
            "watched_by": "Ilka M., master distiller; Odette L., office",
        }
        at = day(*line["on"].split(" ")) + timedelta(minutes=8 * minutes)
        told.append(Draft(at, "destruction", vessel, "IM", values, key=f"destroyed:{vessel}"))
    return told


def _counted(told: Cellar) -> list[Draft]:
    """The stock count: every cask by the label of its place. Two of them had changed places."""
    count = told["counted"]
    places = {cask["base"]: cask["place"] for cask in load("casks")}
    places |= {line["cask"]: line["to"] for line in told["moves"]}
    one, other = count["swapped"]
    places[one], places[other] = places[other], places[one]
    places |= {row["base"]: row["place"] for row in load("vessels") if row["base"] in count["cans"]}
    at, found = day(*count["on"].split(" ")), []
    for n, (base, place) in enumerate(places.items()):
        values: Values = {"place": place, "found": "here", "signed": COUNTED_BY}
        found.append(Draft(at + timedelta(minutes=2 * n), "stock_count", base, "PR", values, key=f"counted:{base}"))
    return found
