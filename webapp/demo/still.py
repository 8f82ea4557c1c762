"""The still runs: charge, events, readings and fraction gauges. One run is logged in full, the others by `curve`."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, timedelta

from webapp.demo import lots
from webapp.demo.curve import Fraction, Moment, fractions_of, moments, stripping
from webapp.demo.story import Draft, Values, day, figure, glass_values, load, wobble
from webapp.demo.told import PARTS, LoggedLine, Run, Spirit
from webapp.trade.density import density_from_strength
from webapp.trade.marks import make_mark
from webapp.trade.still import vapour_temp_c

HEIGHT_M = 310
HEAT_MIN, DROP_MIN = 6, 58  # minutes after the charge until heat is on, until the first drop
EVENTS = {"heat on": "heat_on", "first drop": "first_drop"}
RECEIVERS = {"heads": "R1", "hearts": "R2", "tails": "R3"}


def drafts() -> list[Draft]:
    """Return all entries of the year's runs."""
    told, data, heads_before = [], load("runs"), {"R1": (0.0, 0.0), "HC1": (0.0, 0.0)}
    low_wines = (0.0, 0.0)
    full = "R-25-02"
    ferments = {ferment["batch"]: ferment["vessel"] for ferment in load("ferments")}
    for run in data["runs"]:
        begin = day(run["on"]) + timedelta(minutes=round(wobble(run["run"], 12)))
        told.append(charge(run, begin, ferments[run["batch"]]))
        log = _logged(run, data["in_full"]) if run["run"] == full else log_of(run, begin)
        told += log
        told += gauges(run, log[-1].at, heads_before, low_wines)
        if "low_wines" in run:
            low_wines = _mixed(low_wines, run["low_wines"])
        elif run.get("from") == "R4":
            low_wines = (0.0, 0.0)
    return told


def receivers(run: Run) -> dict[str, str]:
    """Return the vessels for heads, hearts and tails of a run; a stripping run has low wines alone."""
    if "low_wines" in run:
        return {"hearts": "R4"}
    return {
        "heads": run.get("heads_to", RECEIVERS["heads"]), "hearts": run.get("hearts_to", RECEIVERS["hearts"]),
        "tails": run.get("tails_to", RECEIVERS["tails"]),
    }


def charge(run: Run, at: datetime, fermenter: str) -> Draft:
    """Return the charge that begins a run."""
    values: dict[str, str | tuple[str, ...]] = {
        "run_name": run["run"],
        "from_vessel": make_mark(run.get("from", fermenter)),
        "wash": (figure(run["wash_l"], 1), "L"),
        "wash_strength": (figure(run["wash_strength_pct"], 1), "pct_vol"),
        **{f"{part}_to": make_mark(base) for part, base in receivers(run).items()},
    }
    if "feints_l" in run:
        values |= {
            "feints": (figure(run["feints_l"], 1), "L"),
            "feints_strength": (figure(run["feints_strength_pct"], 1), "pct_vol"),
            "feints_from": make_mark(run.get("feints_from", "R3")),
        }
    return Draft(at, "charge", run["still"], "BT", values, key=f"charge:{run['run']}")


def log_of(run: Run, begin: datetime) -> list[Draft]:
    """Return events and readings of a run by its invented curve, from heat on to the end."""
    parts = fractions(run)
    drop = begin + timedelta(minutes=DROP_MIN)
    told = [
        _event(run, begin + timedelta(minutes=HEAT_MIN), "heat_on"),
        _event(run, drop, "first_drop", {"vapour_temp": (figure(79.2 + wobble(run["run"], 0.6), 1), "degC", "TH-3")}),
    ]
    told += [_reading(run, drop, moment) for moment in picked(parts)]
    for name, event in (("heads", "heads_cut"), ("hearts", "hearts_cut")):
        if any(part.name == name for part in parts):
            last = [m for m in moments(parts) if m.fraction == name][-1]
            told.append(_cut(run, drop, last, event))
    last = list(moments(parts))[-1]
    told.append(_end(run, drop, last))
    return sorted(told, key=lambda draft: draft.at)


def fractions(run: Run) -> list[Fraction]:
    """Return the fractions of a run, in order."""
    if "low_wines" in run:
        return stripping(*run["low_wines"])
    cut_pct = 57.5 + wobble(run["run"] + "cut", 1.5)
    charge_l = run["wash_l"] + run.get("feints_l", 0)
    pace = 0.55 if run["still"] == "S2" else max(1.0, 0.6 + run["hearts"][0] / charge_l * 5)
    return fractions_of(_pair(run["heads"]), _pair(run["hearts"]), _pair(run["tails"]), cut_pct, pace)


def _pair(spirit: Spirit) -> tuple[float, float]:
    litres, strength_pct = spirit
    return litres, strength_pct


def picked(parts: list[Fraction]) -> list[Moment]:
    """Return the moments of reading: twice in the heads, then every 20 minutes or so, not close to a cut."""
    found: list[Moment] = []
    stream = list(moments(parts))
    ends = [m.minute for m in stream if m.share == 1.0]
    following = 4.0
    for moment in stream:
        if moment.minute >= following and all(abs(moment.minute - end) > 4 for end in ends):
            found.append(moment)
            following = moment.minute + (8 if moment.fraction == "heads" else 22)
    return found


def _at(drop: datetime, moment: Moment) -> datetime:
    return drop + timedelta(minutes=round(moment.minute))


def _stream(run: Run, moment: Moment) -> dict[str, str | tuple[str, ...]]:
    """The reading of the stream at one moment. People read thermometer and flow, so both are a little off."""
    seed = f"{run['run']}{moment.minute:.1f}"
    strength = moment.strength_pct
    vapour = float(vapour_temp_c(max(strength, 20.0), HEIGHT_M)) + max(20.0 - strength, 0.0) * 0.08
    temp_c = 15.0 + max(60 - strength, 0) * 0.07 + wobble(seed + "t", 0.5)
    return {
        **glass_values(strength, temp_c),
        "vapour_temp": (figure(vapour + wobble(seed, 0.35), 1), "degC", "TH-3"),
        "flow": (figure(moment.flow_l_h * (1 + wobble(seed + "f", 0.03)), 1), "L_h"),
    }


def _reading(run: Run, drop: datetime, moment: Moment) -> Draft:
    key = f"reading:{run['run']}:{moment.minute:.0f}"
    return Draft(_at(drop, moment), "run_reading", run["still"], "BT", _stream(run, moment), key=key)


def _event(run: Run, at: datetime, event: str, more: Values | None = None) -> Draft:
    return Draft(at, "cut", run["still"], "BT", {"event": event, **(more or {})}, key=f"{event}:{run['run']}")


def _cut(run: Run, drop: datetime, moment: Moment, event: str) -> Draft:
    opened = receivers(run)["hearts" if event == "heads_cut" else "tails"]
    nose = "glue gone, fruit clean" if event == "heads_cut" else "wet card, boiled"
    more = {"receiver": make_mark(opened), "reason": "nose", "nose": nose}
    return _event(run, _at(drop, moment), event, {**_stream(run, moment), **more})


def _end(run: Run, drop: datetime, moment: Moment) -> Draft:
    values: Values = {"reason": "strength", **_stream(run, moment)}
    return Draft(_at(drop, moment), "run_end", run["still"], "BT", values, key=f"end:{run['run']}")


def _logged(run: Run, log: list[LoggedLine]) -> list[Draft]:
    """The one run that is known line by line from its log."""
    told = []
    for line in log[1:]:  # the first line is the charge
        at = day(run["on"], line["at"])
        values: dict[str, str | tuple[str, ...]] = {}
        if "glass_pct" in line:
            shown = glass_values(line["true_pct"], line["temp_c"])
            values |= {"glass": (figure(line["glass_pct"], 1), *shown["glass"][1:]), "temp": shown["temp"]}
            values["flow"] = (figure(line["flow_l_h"], 1), "L_h")
        if "vapour_c" in line:
            values["vapour_temp"] = (figure(line["vapour_c"], 1), "degC", "TH-3")
        told.append(_logged_line(run, at, line["event"], values))
    told[0].remark = "3 plates in, dephlegmator water 68 °C"
    return told


def _logged_line(run: Run, at: datetime, event: str, values: Values) -> Draft:
    if event in EVENTS:
        return _event(run, at, EVENTS[event], values)
    if "cut" in event:
        name, opened = ("heads_cut", "R2") if event.startswith("heads") else ("hearts_cut", "R3")
        nose = "glue gone, fruit clean" if name == "heads_cut" else "wet card, boiled"
        return _event(run, at, name, {**values, "receiver": make_mark(opened), "reason": "nose", "nose": nose})
    if event == "reading":
        return Draft(at, "run_reading", run["still"], "BT", values, key=f"reading:{run['run']}:{at:%H%M}")
    return Draft(at, "run_end", run["still"], "BT", {"reason": "strength", **values}, key=f"end:{run['run']}")


def _mixed(one: Sequence[float], other: Sequence[float]) -> tuple[float, float]:
    """Return (litres, % vol) of two spirits mixed; the shrinking of the mix is left out at these strengths."""
    volume = one[0] + other[0]
    return round(volume, 1), (one[0] * one[1] + other[0] * other[1]) / volume if volume else 0.0


def gauges(
    run: Run, ended: datetime, heads_before: dict[str, tuple[float, float]], low_wines: tuple[float, float]
) -> list[Draft]:
    """Return the gauges of the receivers; heads gather in their receiver, hearts go to a tank the same day."""
    told, minutes = [], 20
    for part in PARTS:
        if part not in run:
            continue
        base = "R4" if part == "low_wines" else receivers(run)[part]
        before = heads_before[base] if part == "heads" else low_wines if part == "low_wines" else (0.0, 0.0)
        now = _mixed(before, run[part])
        if part == "heads":
            heads_before[base] = now
        goes = {"tails": "stays" if base.startswith("FE") else "next_run", "low_wines": "next_run"}.get(part, "stays")
        told.append(_gauge(run, ended + timedelta(minutes=minutes), part, base, before, now, goes))
        minutes += 6
    stillage: Values = {
        "still": make_mark(run["still"]), "fraction": "stillage", "volume": (figure(run["stillage"][0], 0), "L"),
        "temp": ("20.0", "degC", "TH-1"), "strength": (figure(run["stillage"][1], 2), "pct_vol"), "goes_to": "drain",
    }
    at = ended + timedelta(minutes=55)
    told.append(Draft(at, "fraction_gauge", run["still"], "BT", stillage, key=f"stillage:{run['run']}",
                      remark="Sample cooled before it was read."))
    if "hearts" in run:
        hearts = next(draft for draft in told if draft.key == f"hearts:{run['run']}")
        told.append(lots.hearts_move(run, hearts, ended + timedelta(minutes=80)))
    return told


def _gauge(
    run: Run, at: datetime, part: str, base: str, before: tuple[float, float], now: tuple[float, float],
    goes_to: str,
) -> Draft:
    temp_c = 16.5 + wobble(run["run"] + part, 1.5)
    read_l = now[0] * float(density_from_strength(now[1], 20.0) / density_from_strength(now[1], temp_c))
    values: Values = {
        "still": make_mark(run["still"]), "fraction": part, "remnant": (figure(before[0], 1), "L"),
        "remnant_strength": (figure(before[1], 1), "pct_vol"), "volume": (figure(read_l, 1), "L"),
        **glass_values(now[1], temp_c), "goes_to": goes_to,
    }
    return Draft(at, "fraction_gauge", base, "BT", values, key=f"{part}:{run['run']}")
