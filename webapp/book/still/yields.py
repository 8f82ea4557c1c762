"""What fruit gave: pure alcohol from 100 kg of fruit and 100 L of wash, beside official flat rates and other years.

A ferment's yield is what its runs made: all that came over less the feints that went in. A run has the share of the
fruit that its wash is of the wash. Runs of low wines or feints alone made nothing new, and have no yield of their own.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping, Sequence
from functools import cache
from pathlib import Path
from typing import NotRequired, TypedDict

from webapp.book.fold.states import load_newest_of
from webapp.book.record.store import Book
from webapp.book.still import runs
from webapp.book.still.runs import KnownRun
from webapp.kinds.effects.plan import fruit_of
from webapp.kinds.key import VesselKey
from webapp.kinds.run_state import Run

DATA = Path(__file__).with_name("flat_rates.json")
_UL = 1e6
_WASH = """
SELECT source_fill AS fill, target, volume_ml, mass_g FROM flows
WHERE target LIKE 'r:%' AND reason = 'wash' AND source_fill <> ''
"""
_FRUIT = "SELECT target_fill AS fill, sum(mass_g) AS mass_g FROM flows WHERE reason = 'fruit' GROUP BY target_fill"
_WASH_OF = """
SELECT target, source_fill AS fill, volume_ml, mass_g FROM flows
WHERE target IN (SELECT value FROM json_each(?)) AND reason = 'wash' AND source_fill <> '' ORDER BY target, entry, n
"""
_FRUIT_OF = """
SELECT target_fill AS fill, sum(mass_g) AS mass_g FROM flows
WHERE target_fill IN (SELECT value FROM json_each(?)) AND target_fill <> '' AND reason = 'fruit' GROUP BY target_fill
"""


class FlatRate(TypedDict):
    """An official flat rate of a fruit: by German and by Austrian rules, and what handbooks have. [L]"""

    name: str
    material: str
    words: list[str]
    de_l: float
    at_l: float | None
    spread_l: list[float]
    per_kg: NotRequired[bool]


class _Judged(TypedDict):
    low_share: float
    high_share: float
    source: str


class FlatRates(TypedDict):
    """The flat rates with their sources, and from which share of them on a yield is low or high."""

    about: str
    sources: dict[str, str]
    judged: _Judged
    rates: list[FlatRate]


class Beside(TypedDict):
    """A yield beside the flat rate of its fruit."""

    rate: FlatRate
    share_pct: float
    side: str
    measure: float


class RunYield(TypedDict):
    """What a run made of its fruit. [kg, L, L from 100 kg, L from 100 L]"""

    kg: float
    made_l: float
    per_100_kg: float
    per_100_l: float
    beside: Beside | None


class _Wash(TypedDict):
    target: str
    fill: str
    volume_ml: int
    mass_g: int


class _Batch(TypedDict):
    fill: str
    what: str
    material: str | None
    batch: str
    began: str
    wash_l: float
    wash_g: int
    made_l: float
    runs: list[KnownRun]


class BatchYield(_Batch, RunYield):
    """What the runs of a ferment made of its fruit."""


@cache
def flat_rates() -> FlatRates:
    """Return the official flat rates with their sources."""
    found: FlatRates = json.loads(DATA.read_text("utf-8"))
    return found


def rate_for(material: str | None, what: str) -> FlatRate | None:
    """Return the flat rate of a fruit: of its material, by the words of its variety where there are several."""
    words = what.lower()
    fitting = [rate for rate in flat_rates()["rates"] if rate["material"] == material]
    named = [rate for rate in fitting if any(word in words for word in rate["words"])]
    plain = [rate for rate in fitting if not rate["words"]]
    return next(iter(named or plain), None)


def made_l(run: Run) -> float | None:
    """Return the pure alcohol that a run made: fractions less feints charged; None until hearts or low wines are
    gauged. [L]
    """
    parts = {part["fraction"] for part in run["fractions"]}
    if not parts & {"hearts", "low_wines"}:
        return None
    came: float = sum(part["lpa_l"] or 0.0 for part in run["fractions"] if part["fraction"] != "stillage")
    return came - feints_in_l(run)


def feints_in_l(run: Run) -> float:
    """Return the pure alcohol of the feints that went into a run. [L]"""
    return float(run["charge"].get("feints_lpa_l") or 0.0)


def judge_yield(material: str | None, what: str, per_100_kg: float, per_100_l: float | None) -> Beside | None:
    """Return a yield beside the flat rate of its fruit: rate, share of it [%], and `low`, `high` or ``."""
    rate = rate_for(material, what)
    measure = per_100_kg if rate and rate.get("per_kg") else per_100_l
    if rate is None or measure is None:
        return None
    share = measure / rate["de_l"]
    limits = flat_rates()["judged"]
    side = "low" if share < limits["low_share"] else "high" if share > limits["high_share"] else ""
    return {"rate": rate, "share_pct": 100 * share, "side": side, "measure": measure}


def batches(book: Book) -> list[BatchYield]:
    """Return ferments that were run, the newest first: fruit, kg, wash, what their runs made, and the judgement."""
    fruit_kg = {row["fill"]: row["mass_g"] / 1e3 for row in book.query(_FRUIT)}
    found: dict[str, _Batch] = {}
    wash = book.query(_WASH)
    known = runs.runs_by_id(book, (row["target"][2:] for row in wash))
    for row in wash:
        run = known.get(row["target"][2:])
        made = made_l(run) if run else None
        if run is None or made is None or row["fill"] not in fruit_kg:
            continue
        one = found.setdefault(
            row["fill"],
            {"fill": row["fill"], "what": run["what"], "material": run.get("material"), "batch": run["batch"],
             "began": run["started_at"], "wash_l": 0.0, "wash_g": 0, "made_l": 0.0, "runs": []},
        )
        one["wash_l"] += row["volume_ml"] / 1e3
        one["wash_g"] += row["mass_g"]
        one["made_l"] += made
        one["runs"].append(run)
        one["began"] = min(one["began"], run["started_at"])
    masses = _masses(book, found)
    dressed = (_dressed(one, fruit_kg[fill], *masses[fill]) for fill, one in found.items())
    return sorted(dressed, key=lambda one: one["began"], reverse=True)


def _dressed(one: _Batch, fruit_kg: float, charged: int, rest: int) -> BatchYield:
    kg = fruit_kg * one["wash_g"] / max(charged + rest, 1)
    per_kg, per_l = 100 * one["made_l"] / max(kg, 1e-9), 100 * one["made_l"] / max(one["wash_l"], 1e-9)
    beside = judge_yield(one["material"], one["what"], per_kg, per_l)
    return {**one, "kg": kg, "per_100_kg": per_kg, "per_100_l": per_l, "beside": beside}


def by_year(found: list[BatchYield]) -> dict[str, dict[str, tuple[float, int]]]:
    """Return by fruit and year what 100 kg gave, over all its ferments, with how many there were. [L]"""
    sums: dict[tuple[str, str], list[float]] = {}
    for one in found:
        line = sums.setdefault((fruit_of(one["what"]), one["began"][:4]), [0.0, 0.0, 0])
        line[0] += one["made_l"]
        line[1] += one["kg"]
        line[2] += 1
    years: dict[str, dict[str, tuple[float, int]]] = {}
    for (fruit, year), (made, kg, many) in sorted(sums.items()):
        years.setdefault(fruit, {})[year] = (100 * made / kg, int(many))
    return years


def _masses(book: Book, fills: Iterable[str]) -> dict[str, tuple[int, int]]:
    """Return by ferment the mash that has gone into runs, and the mash that still stands in its fermenter. [g]"""
    wanted = list(fills)
    rows = book.query(
        "SELECT source_fill AS fill, sum(mass_g) AS mass_g, max(source) AS source FROM flows "
        "WHERE source_fill IN (SELECT value FROM json_each(?)) AND source_fill <> '' "
        "AND target LIKE 'r:%' AND reason = 'wash' "
        "GROUP BY source_fill",
        (json.dumps(wanted),),
    )
    vessels: list[VesselKey] = [row["source"] for row in rows]
    states = load_newest_of(book, vessels)
    found = dict.fromkeys(wanted, (0, 0))
    for row in (row for row in rows if row["mass_g"]):
        state = states.get(row["source"])
        held = state["holds"] if state else None
        found[row["fill"]] = (row["mass_g"], held["mass_g"] if held and held["fill"] == row["fill"] else 0)
    return found


def of_run(book: Book, run: KnownRun) -> RunYield | None:
    """Return the yield of one run: fruit it had [kg], per_100_kg, per_100_l, and beside; None where it has none."""
    return of_runs(book, [run]).get(run["id"])


def of_runs(book: Book, some: Sequence[KnownRun]) -> dict[str, RunYield]:
    """Return the yields of these runs as `of_run` does, by id; a run without one is left out."""
    wash: dict[str, _Wash] = {}
    for row in book.rows(_Wash, _WASH_OF, (json.dumps([f"r:{run['id']}" for run in some]),)):
        wash.setdefault(row["target"][2:], row)
    known = [run for run in some if run["id"] in wash]
    fills = sorted({row["fill"] for row in wash.values()})
    fruit_g = {row["fill"]: row["mass_g"] for row in book.query(_FRUIT_OF, (json.dumps(fills),))} if fills else {}
    masses = _masses(book, fruit_g) if fruit_g else {}
    found = {run["id"]: _of_run(run, wash[run["id"]], fruit_g, masses) for run in known}
    return {run_id: one for run_id, one in found.items() if one}


def _of_run(
    run: Run, wash: _Wash, fruit_g: Mapping[str, int], masses: Mapping[str, tuple[int, int]]
) -> RunYield | None:
    made, fill = made_l(run), wash["fill"]
    if made is None or not wash["volume_ml"] or not fruit_g.get(fill):
        return None
    kg = fruit_g[fill] / 1e3 * wash["mass_g"] / max(sum(masses[fill]), 1)
    if kg <= 0:
        return None
    per_kg, per_l = 100 * made / kg, 100 * made / (wash["volume_ml"] / 1e3)
    beside = judge_yield(run.get("material"), run["what"], per_kg, per_l)
    return {"kg": kg, "made_l": made, "per_100_kg": per_kg, "per_100_l": per_l, "beside": beside}
