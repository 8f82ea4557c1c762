"""The still run: charge, readings, cuts, its end, and the gauges of what came over."""

from __future__ import annotations

from datetime import datetime
from typing import Final, cast

from webapp.kinds.amount import Amount, spirit_of
from webapp.kinds.effects.fruit import wash_taken
from webapp.kinds.key import (
    DESTROYED,
    FERMENTED,
    GAUGE_DIFFERENCE,
    NOT_ACCOUNTED,
    STILLAGE,
    Key,
    RunKey,
    name_in,
    run_key,
    vessel_key,
)
from webapp.kinds.read import Read
from webapp.kinds.remember import vessel, with_entry
from webapp.kinds.run_state import Fraction, Run, RunLine
from webapp.kinds.spec import Effect
from webapp.kinds.state import NO_FILL, READINGS, RUNS, State, Vessel
from webapp.kinds.stock import Posting, spirit_read
from webapp.kinds.view import View
from webapp.trade.still import vapour_offset_c

PARTS = ("heads", "hearts", "tails")
LATE_S = 180  # a cut typed so much later was made before it was logged; sooner is the tap and its words
OFFSETS = 8
KEPT: Final = (
    "vapour_temp", "flow", "plates", "cooling_temp", "event", "receiver", "reason", "nose", "glass", "temp", "dip"
)


def charge(read: Read, view: View) -> Effect:
    """A run begins: fermenter, receiver or can -> run, for wash and for feints.

    What the run before on this still has left unaccounted for goes to not_accounted.
    """
    post, run = Posting(view), run_key(view.root)
    post.remember(read)
    still = post.vessel(read.mark)
    for before in still["runs"][-1:]:
        post.clear(run_key(before), NOT_ACCOUNTED, "run_balance")
    source = read.text("from_vessel") or ""
    held = post.held(source) or NO_FILL
    wash, feints = read.number("wash"), read.number("feints")
    receivers = {part: read.text(f"{part}_to") for part in PARTS}
    # Of a stripping run there is one receiver alone.
    receiver = receivers["heads"] or (None if receivers["tails"] else receivers["hearts"])
    begun: Run = {
        "still": read.mark, "name": read.text("run_name") or "", "what": held["what"], "batch": held["name"],
        "material": held["material"], "started_at": view.at, "receivers": receivers, "receiver": receiver,
        "charge": {"volume_l": (wash or 0.0) + (feints or 0.0), "wash_l": wash, "feints_l": feints,
                   "feints_lpa_l": read.figures.get("feints_lpa") if feints else None,
                   "lpa_l": read.figures.get("charge_lpa")},
        "readings": [], "cuts": [], "fractions": [], "ended_at": None, "lpa_ul": 0, "volume_ml": 0, "mass_g": 0,
        "from": source,
    }
    post.keep(run, begun)
    post.put(vessel_key(read.mark), run=view.root, runs=[*still["runs"], view.root][-RUNS:])
    _wash(post, read, source, run)
    if feints:
        can = read.text("feints_from")
        amount = spirit_of(feints, _strength(read.figures.get("feints_lpa"), feints))
        post.draw(vessel_key(can) if can else NOT_ACCOUNTED, run, amount, "feints")
    return post.effect()


def _wash(post: Posting, read: Read, source: str, run: RunKey) -> None:
    volume, lpa = read.number("wash"), read.figures.get("wash_lpa")
    held = post.held(source)
    if held and held["mash"]:
        post.draw(vessel_key(source), run, wash_taken(post, source, volume, lpa), "wash")
        post.describe(source, charged=True)
        return
    amount = spirit_of(volume, _strength(lpa, volume))
    if held:
        post.draw(vessel_key(source), run, amount, "low_wines")
        return
    # The book has nothing there: what a ferment gave is fermented, anything else came from nowhere.
    row = post.view.vessel(source)
    is_ferment = row is None or row["sort"] == "fermenter"
    post.move(FERMENTED if is_ferment else NOT_ACCOUNTED, run, amount, "wash")


def _strength(lpa_l: float | None, volume_l: float | None) -> float:
    return (lpa_l or 0.0) / volume_l * 100.0 if volume_l else 0.0


def _line(read: Read, view: View) -> RunLine:
    kept = cast(RunLine, {name: read.values[name] for name in KEPT if name in read.values})  # KEPT are keys of it
    line: RunLine = {
        **kept, "entry": read.entry["id"], "at": view.at, "true_strength": read.figures.get("true_strength")
    }
    if read.kind.name == "cut" and (_seconds(view.typed_at) - _seconds(view.at)) >= LATE_S:
        # A cut that was logged after it was made keeps both times, and what was said about it.
        line["typed_at"] = view.typed_at
        line["late_why"] = read.entry.get("reason") or read.entry.get("remark") or ""
    return line


def _seconds(at: str) -> float:
    return datetime.fromisoformat(at).timestamp()


def _with_run(read: Read, view: View) -> tuple[Vessel, RunKey | None, Run | None]:
    still = with_entry(vessel(view, read.mark), read, view)
    run_id = still["run"]
    key = run_key(run_id) if run_id else None
    return still, key, view.get(key) if key else None


def run_reading(read: Read, view: View) -> Effect:
    """A reading joins the run now on the still."""
    still, key, run = _with_run(read, view)
    states: dict[Key, State] = {vessel_key(read.mark): still}
    if key and run:
        line = _line(read, view)
        if "dip" in line:  # what the receiver held before: a run's own spirit is booked by its gauge only
            held = vessel(view, run["receiver"] or "")["holds"] or NO_FILL
            line["receiver"], line["remnant_l"] = run["receiver"], held["volume_l"] or 0.0
        run = {**run, "readings": [*run["readings"], line][-READINGS:]}
        states[key] = run
    return Effect(states)


def cut(read: Read, view: View) -> Effect:
    """A cut moves the stream to another receiver."""
    still, key, run = _with_run(read, view)
    states: dict[Key, State] = {vessel_key(read.mark): still}
    if key and run:
        line = _line(read, view)
        readings = run["readings"]
        if line["true_strength"] is not None:
            readings = [*readings, line][-READINGS:]
        receiver = read.text("receiver") or run["receiver"]
        run = {**run, "cuts": [*run["cuts"], line], "readings": readings, "receiver": receiver}
        states[key] = run
    return Effect(states)


def run_end(read: Read, view: View) -> Effect:
    """The run closes; the still is free."""
    still, key, run = _with_run(read, view)
    freed: Vessel = {**still, "run": None}
    states: dict[Key, State] = {vessel_key(read.mark): freed}
    if key and run:
        line = _line(read, view)
        readings = [*run["readings"], line] if line["true_strength"] is not None else run["readings"]
        freed["vapour_offsets"] = _offsets(still, name_in(key), run, readings, view)
        run = {**run, "ended_at": view.at, "end": line, "readings": readings[-READINGS:]}
        states[key] = run
    return Effect(states)


def _offsets(
    still: Vessel, run_id: str, run: Run, readings: list[RunLine], view: View
) -> list[list[str | float]]:
    """Return the offset of the still's vapour thermometer in its last runs: [run id, degC] each. Heads read low."""
    begun = min((cut["at"] for cut in run["cuts"] if cut.get("event") == "heads_cut"), default="")
    pairs = [
        (line["true_strength"], line["vapour_temp"])
        for line in readings
        if line["true_strength"] is not None and line.get("vapour_temp") is not None and line["at"] >= begun
    ]
    found = vapour_offset_c(pairs, float(view.site().get("height_m") or 0))
    before = [one for one in still.get("vapour_offsets", []) if one[0] != run_id]
    if found is not None:
        before.append([run_id, round(found, 2)])
    return before[-OFFSETS:] if found is not None else before


def fraction_gauge(read: Read, view: View) -> Effect:
    """A receiver got its part of the last run on that still: run -> receiver; what stood there before is not of it.

    The remnant is measured first (receiver <-> gauge_difference). Stillage goes run -> stillage at once, and what is
    still unaccounted for goes to not_accounted; a fraction gauged later comes back from there.
    """
    post = Posting(view)
    post.remember(read)
    runs = vessel(view, read.text("still") or "")["runs"]
    known = run_key(runs[-1]) if runs else None
    run = known or NOT_ACCOUNTED
    fraction, goes_to = read.text("fraction"), read.text("goes_to")
    now = spirit_read(read)
    remnant = spirit_of(read.number("remnant"), read.number("remnant_strength"))
    of_run = now.less(remnant).above_nothing()
    here, reason = vessel_key(read.mark), str(fraction)
    if fraction == "stillage":
        post.move(run, STILLAGE, now, reason)
        if known:
            post.clear(known, NOT_ACCOUNTED, "run_balance")
    else:
        post.measure(read.mark, remnant, GAUGE_DIFFERENCE, "remnant")
        state = post.state(known) if known else None
        of = state["what"] if state else ""
        what = f"{fraction} {of or ''}".strip().replace("_", " ") if runs else reason
        if not post.held(read.mark) and any(of_run):
            post.begin(read.mark, account="production")  # also in a tank, until somebody moves it
        post.describe(read.mark, what=what)
        post.move(run, here, of_run, reason)
        post.measure(read.mark, now, GAUGE_DIFFERENCE, "after_collection")
        if goes_to in ("destroyed", "drain"):
            post.clear(here, DESTROYED, str(goes_to))
    if known:
        _note_fraction(post, read, known, of_run)
    return post.effect()


def _note_fraction(post: Posting, read: Read, run: RunKey, of_run: Amount) -> None:
    part: Fraction = {
        "entry": read.entry["id"], "at": post.view.at, "fraction": read.text("fraction"), "receiver": read.mark,
        "volume_l": of_run.volume_ml / 1000, "strength_pct": read.figures.get("true_strength"),
        "lpa_l": of_run.lpa_ul / 1_000_000, "goes_to": read.text("goes_to"),
    }
    state = post.state(run)
    if state:
        post.put(run, fractions=[*state["fractions"], part])
