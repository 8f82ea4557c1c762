"""The living moment: the vessels that are at work today, so that a newcomer finds something to do.

Pears in mid-ferment, rye two days old, a plum ferment that has ended and is being run: yesterday's run whole, today's
run in its hearts just now. One gravity of yesterday has two digits swapped. All figures are those of the year.
"""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime, timedelta

from webapp.demo import season, still
from webapp.demo.phones import HandIn, Phone
from webapp.demo.phones import hand_ins as batches_of
from webapp.demo.story import Draft, house_time, load
from webapp.demo.told import Ferment, Run

# (ferment of the year whose figures serve, vessel, days since it was set, number of the new batch)
FERMENTS = (("B-25-04", "F4", 6, 93), ("B-26-01", "F1", 2, 94), ("B-25-02", "F2", 19, 92))
YESTERDAYS_RUN, TODAYS_RUN = "R-25-05", "R-25-06"
INTO_RUN = timedelta(minutes=150)
UNTYPED = timedelta(minutes=2)
SWAPPED = {"1.034": "1.043"}


def hand_ins(phones: Mapping[str, Phone], today: datetime) -> list[HandIn]:
    """Return the batches of the last weeks up to `today` (aware)."""
    now = house_time(today)
    told = [draft for draft in drafts(now) if draft.typed_at <= now - UNTYPED]
    sent = batches_of(told, phones, up_min=1)
    return [hand_in for hand_in in sent if hand_in.now <= today]


def drafts(now: datetime) -> list[Draft]:
    """Return the drafts of the last weeks up to `now` (local, without a zone). Later ones are still to come."""
    told = []
    for name, vessel, days, number in FERMENTS:
        ferment = _on_other_days(name, vessel, days, f"B-{now:%y}-{number}", now)
        told += [season.intake(ferment), *season.readings(ferment), season.closed(ferment)]
    _swap_digits(told, "F4", now)
    runs = {run["run"]: run for run in load("runs")["runs"]}
    yesterday = (now - timedelta(days=1)).replace(hour=8, minute=5, second=0, microsecond=0)
    told += _run(runs[YESTERDAYS_RUN], f"R-{now:%y}-91", yesterday)
    told += _run(runs[TODAYS_RUN], f"R-{now:%y}-92", now.replace(second=0, microsecond=0) - INTO_RUN)
    return told


def _on_other_days(name: str, vessel: str, days: int, batch: str, now: datetime) -> Ferment:
    ferment: Ferment = next(ferment for ferment in load("ferments") if ferment["batch"] == name)
    clock = ferment["at"].split(" ")[1]
    at = f"{now - timedelta(days=days):%Y-%m-%d} {clock}"
    return {**ferment, "vessel": vessel, "at": at, "batch": batch, "delivery": f"D-{batch[2:]}"}


def _swap_digits(told: list[Draft], vessel: str, now: datetime) -> None:
    """Yesterday's gravity of that vessel, typed with two digits swapped."""
    yesterday = f"{now - timedelta(days=1):%Y-%m-%d}"
    for draft in told:
        value = draft.values.get("gravity")
        if draft.vessel == vessel and f"{draft.at:%Y-%m-%d}" == yesterday and isinstance(value, tuple):
            draft.values = {**draft.values, "gravity": (SWAPPED.get(value[0], value[0]), *value[1:])}


def _run(run: Run, name: str, begin: datetime) -> list[Draft]:
    run = {**run, "run": name, "tails_to": "R3"}
    log = still.log_of(run, begin)
    gauges = still.gauges(run, log[-1].at, {"R1": (0.0, 0.0)}, (0.0, 0.0))
    return [still.charge(run, begin, "F2"), *log, *gauges]
