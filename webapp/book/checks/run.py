"""Checks of a still run: the order of its events, the fall of its strength, and a distillate too warm."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from statistics import median
from typing import Any

from webapp.book.before.limits import limit
from webapp.book.before.view import Query, View
from webapp.book.checks.words import like_typed, plain, slips, typed, when
from webapp.kinds.read import Read, Suggestion
from webapp.trade import sums, units
from webapp.trade.errors import OutOfDomain
from webapp.trade.still import vapour_temp_c

ORDER = ("heat_on", "first_drop", "heads_cut", "hearts_cut")
CUTS = ("heads_cut", "hearts_cut")
OFFSET_RUNS = 2  # a single run may be a slip
MOST_BELOW = 15  # a suggested strength may lie this far below the last one [% vol]


def run_still_open(read: Read, view: View) -> Iterable[Query]:
    """A charge while another run is open on this still."""
    run = view.run_on(read.mark)
    if run and not run["ended_at"]:
        words = (
            f"{_still(read, view)} already has {run['name'] or 'a run'} open since "
            f"{when(run['started_at'], read, view)}. End that run first, or strike this charge."
        )
        yield Query("run_still_open", "ask", "", words)


def run_order(read: Read, view: View) -> Iterable[Query]:
    """Events of a run in their order, with a receiver change at each cut; and a reading without a run."""
    run, event = view.run_on(read.mark), _event(read)
    if run is None:
        if event != "still_opened":
            words = f"No run is open on {_still(read, view)} at this time. Log the charge with its time, and this fits."
            yield Query("run_not_open", "ask", "", words)
        return
    done = {cut["event"]: cut["at"] for cut in run["cuts"]}
    if event in ORDER:
        yield from _out_of_order(read, view, event, done)
    if event in CUTS and read.values.get("receiver") and read.values["receiver"] == run["receiver"]:
        words = (
            f"{_name(run['receiver'], view)} was open before this cut already. "
            "Which receiver is open now? Amend this, or the one before."
        )
        yield Query("run_receiver_same", "ask", "receiver", words)
    if event == "run_end" and "heads_cut" in done and "hearts_cut" not in done:
        began = when(done["heads_cut"], read, view)
        words = f"The run ends but no hearts cut is logged; hearts began {began}. Log the cut with its time."
        yield Query("run_order", "ask", "", words)
    if event == "still_opened":
        words = "The still is opened but its run is not ended. End the run with its time."
        yield Query("run_order", "ask", "event", words)


def _out_of_order(read: Read, view: View, event: str, done: Mapping[str, str]) -> Iterable[Query]:
    shown = read.shown("event")
    if event in done:
        words = f"{_start(shown)} was logged at {when(done[event], read, view)} already. Which one counts?"
        yield Query("run_order", "ask", "event", words)
        return
    later = [other for other in ORDER[ORDER.index(event) + 1 :] if other in done]
    if later:
        other = _label(read, later[0])
        words = f"{_start(shown)} comes after {other} of {when(done[later[0]], read, view)}. Look at the times."
        yield Query("run_order", "ask", "event", words)
    elif event == "hearts_cut" and "heads_cut" not in done:
        words = "Hearts are cut but the heads cut is not logged. Log it with its time and receiver."
        yield Query("run_order", "ask", "event", words)


def strength_slope(read: Read, view: View) -> Iterable[Query]:
    """In hearts and tails the strength can only fall, unless plates or cooling were changed."""
    run, now = view.run_on(read.mark), read.figures.get("true_strength")
    if run is None or now is None or not any(cut["event"] == "heads_cut" for cut in run["cuts"]):
        return
    lines = [line for line in run["readings"] if line.get("true_strength") is not None]
    if not lines or _still_was_changed(read, lines):
        return
    last = lines[-1]["true_strength"]
    if now > last + limit("slope_pct", view) + 1e-9:
        words = (
            f"True strength {plain(now, 1)} % is above {plain(last, 1)} % of {when(lines[-1]['at'], read, view)}; "
            "after the heads cut it can only fall, unless plates or cooling were changed."
        )
        at = "strength" if "strength" in read.values else "glass"
        found = strength_slips(read, at, last - MOST_BELOW, last + limit("slope_pct", view), last)
        yield Query("strength_slope", "ask", at, words, found)


def distillate_warm(read: Read, view: View) -> Iterable[Query]:
    """Spirit at the safe too warm: vapour may be lost."""
    temp, warm = read.values.get("temp"), limit("warm_c", view)
    if temp is not None and temp > warm:
        words = (
            f"Spirit runs at {typed(read, 'temp')}, above {like_typed(read, 'temp', warm)}. More condenser water now, "
            "and the heat down until it runs cool: warm spirit gives off vapour that burns."
        )
        yield Query("distillate_warm", "ask", "temp", words, slips(read, "temp", 5, warm))


def vapour_strength(read: Read, view: View) -> Iterable[Query]:
    """Vapour temperature against strength: catches a mistyped 86.4 for 68.4 at once."""
    now, vapour = read.figures.get("true_strength"), read.values.get("vapour_temp")
    if now is None or vapour is None:
        return
    height_m = float(view.site().get("height_m") or 0)
    try:
        wanted = float(vapour_temp_c(now, height_m)) + offset_of(view.state(read.mark))
    except OutOfDomain:
        return
    off = limit("vapour_off_c", view)
    if abs(vapour - wanted) <= off:
        return
    words = (
        f"Vapour {typed(read, 'vapour_temp')} and spirit of {plain(now, 1)} % do not go together: "
        f"about {like_typed(read, 'vapour_temp', round(wanted, 1))} is usual at that strength. Look at both again."
    )
    found = slips(read, "vapour_temp", wanted - off, wanted + off, wanted)
    if not found:
        at = "strength" if "strength" in read.values else "glass"
        found = tuple(
            s for s in strength_slips(read, at, 20, 95, None)
            if _agrees(read, s, vapour - offset_of(view.state(read.mark)), height_m, off)
        )  # fmt: skip
    yield Query("vapour_strength", "ask", "vapour_temp", words, found)


def _agrees(read: Read, slip: Suggestion, vapour: float, height_m: float, off: float) -> bool:
    true = true_of(read, slip)
    try:
        return true is not None and abs(float(vapour_temp_c(true, height_m)) - vapour) <= off
    except OutOfDomain:
        return False


def offset_of(still: Mapping[str, Any]) -> float:
    """Return a still's own vapour offset, the middle of its last runs; nothing before it has run twice. [degC]"""
    found = [one[1] for one in still.get("vapour_offsets", [])]
    return float(median(found)) if len(found) >= OFFSET_RUNS else 0.0


def strength_slips(read: Read, at: str, low: float, high: float, near: float | None) -> tuple[Suggestion, ...]:
    """Return slips of a strength field whose true strength lies from low to high. [% vol at 20 degC]"""
    if at == "strength":
        return slips(read, at, low, high, near)
    wide = 2.0 if read.raw(at).get("unit") == "proof_glass" else 1.0
    found = slips(read, at, 0.0, 100.0 * wide, None if near is None else near * wide)
    return tuple(s for s in found if low <= (true_of(read, s) or -1.0) <= high)


def true_of(read: Read, slip: Suggestion) -> float | None:
    """Return the true strength that a suggested figure would give, or None. [% vol at 20 degC], 0 to 100"""
    if slip.field == "strength":
        return float(units.to_canonical(units.parse_number(slip.raw), slip.unit))
    temp = read.values.get("temp")
    if temp is None:
        return None
    given = {"glass": sums.Quantity(units.parse_number(slip.raw), slip.unit), "temp": sums.Quantity(temp, "degC")}
    try:
        return sums.compute("true_strength", given)
    except OutOfDomain:
        return None


def _still_was_changed(read: Read, lines: list[Mapping[str, Any]]) -> bool:
    for name, step in (("plates", 0.5), ("cooling_temp", 2.0)):
        now = read.values.get(name)
        before = next((line[name] for line in reversed(lines) if line.get(name) is not None), None)
        if now is not None and before is not None and abs(now - before) >= step:
            return True
    return False


def _event(read: Read) -> str:
    return str(read.values["event"]) if read.kind.name == "cut" and "event" in read.values else read.kind.name


def _label(read: Read, event: str) -> str:
    spec = read.kind.field("event")
    return dict(spec.choices).get(event, event) if spec else event


def _start(text: str) -> str:
    return text[:1].upper() + text[1:]


def _name(mark: str, view: View) -> str:
    vessel = view.vessel(mark)
    return str(vessel["name"]) if vessel else mark


def _still(read: Read, view: View) -> str:
    return _name(read.mark, view)
