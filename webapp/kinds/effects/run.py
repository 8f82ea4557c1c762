"""The still run: charge, readings, cuts, its end, and the gauges of what came over."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from webapp.kinds.effects.fruit import wash_taken
from webapp.kinds.read import Read
from webapp.kinds.spec import Effect
from webapp.kinds.state import READINGS, RUNS, remember, vessel
from webapp.kinds.stock import Amount, Posting, spirit_of, spirit_read
from webapp.trade.still import vapour_offset_c

PARTS = ("heads", "hearts", "tails")
LATE_S = 180  # a cut typed so much later was made before it was logged; sooner is the tap and its words
OFFSETS = 8
KEPT = (
    "vapour_temp", "flow", "plates", "cooling_temp", "event", "receiver", "reason", "nose", "glass", "temp", "dip"
)  # fmt: skip


def charge(read: Read, view: Any) -> Effect:
    """A run begins: fermenter, receiver or can -> run, for wash and for feints.

    What the run before on this still has left unaccounted for goes to not_accounted.
    """
    post, run = Posting(view), f"r:{view.root}"
    post.remember(read)
    still = post.state(f"v:{read.mark}")
    for before in still["runs"][-1:]:
        post.clear(f"r:{before}", "out:not_accounted", "run_balance")
    source = read.values.get("from_vessel") or ""
    held = post.held(source) or {}
    wash, feints = read.values.get("wash"), read.values.get("feints")
    receivers = {part: read.values.get(f"{part}_to") for part in PARTS}
    post.put(
        run, still=read.mark, name=read.values.get("run_name") or "", what=held.get("what", ""),
        batch=held.get("name", ""), material=held.get("material"), started_at=view.at, receivers=receivers,
        receiver=receivers["heads"] or (None if receivers["tails"] else receivers["hearts"]),  # stripping: one alone
        charge={"volume_l": (wash or 0.0) + (feints or 0.0), "wash_l": wash, "feints_l": feints,
                "feints_lpa_l": read.figures.get("feints_lpa") if feints else None,
                "lpa_l": read.figures.get("charge_lpa")},
        readings=[], cuts=[], fractions=[], ended_at=None, lpa_ul=0, volume_ml=0, mass_g=0, **{"from": source},
    )  # fmt: skip
    post.put(f"v:{read.mark}", run=view.root, runs=[*still["runs"], view.root][-RUNS:])
    _wash(post, read, source, run)
    if feints:
        can = read.values.get("feints_from")
        amount = spirit_of(feints, _strength(read.figures.get("feints_lpa"), feints))
        post.draw(f"v:{can}" if can else "out:not_accounted", run, amount, "feints")
    return post.effect()


def _wash(post: Posting, read: Read, source: str, run: str) -> None:
    volume, lpa = read.values.get("wash"), read.figures.get("wash_lpa")
    held = post.held(source)
    if held and held["mash"]:
        post.draw(f"v:{source}", run, wash_taken(post, source, volume, lpa), "wash")
        post.describe(source, charged=True)
        return
    amount = spirit_of(volume, _strength(lpa, volume))
    if held:
        post.draw(f"v:{source}", run, amount, "low_wines")
        return
    # The book has nothing there: what a ferment gave is fermented, anything else came from nowhere.
    row = post.view.vessel(source) or {}
    is_ferment = row.get("sort", "fermenter") == "fermenter"
    post.move("out:fermented" if is_ferment else "out:not_accounted", run, amount, "wash")


def _strength(lpa_l: float | None, volume_l: float | None) -> float:
    return (lpa_l or 0.0) / volume_l * 100.0 if volume_l else 0.0


def _line(read: Read, view: Any) -> dict[str, Any]:
    line = {"entry": read.entry["id"], "at": view.at, "true_strength": read.figures.get("true_strength")}
    return line | {name: read.values[name] for name in KEPT if name in read.values} | _late(read, view)


def _late(read: Read, view: Any) -> dict[str, str]:
    """Keep both times of a cut that was logged after it was made, and the reason given."""
    if read.kind.name != "cut" or (_seconds(view.typed_at) - _seconds(view.at)) < LATE_S:
        return {}
    return {"typed_at": view.typed_at, "late_why": read.entry.get("reason") or read.entry.get("remark") or ""}


def _seconds(at: str) -> float:
    return datetime.fromisoformat(at).timestamp()


def _with_run(read: Read, view: Any) -> tuple[dict[str, Any], str | None, dict[str, Any] | None]:
    still = remember(vessel(view, read.mark), read, view)
    run_id = still["run"]
    return still, run_id, view.get(f"r:{run_id}") if run_id else None


def run_reading(read: Read, view: Any) -> Effect:
    """A reading joins the run now on the still."""
    still, run_id, run = _with_run(read, view)
    states = {f"v:{read.mark}": still}
    if run:
        line = _line(read, view)
        if "dip" in line:  # what the receiver held before: a run's own spirit is booked by its gauge only
            held = vessel(view, run["receiver"] or "")["holds"] or {}
            line |= {"receiver": run["receiver"], "remnant_l": held.get("volume_l") or 0.0}
        states[f"r:{run_id}"] = {**run, "readings": [*run["readings"], line][-READINGS:]}
    return Effect(states)


def cut(read: Read, view: Any) -> Effect:
    """A cut moves the stream to another receiver."""
    still, run_id, run = _with_run(read, view)
    states = {f"v:{read.mark}": still}
    if run:
        line = _line(read, view)
        readings = run["readings"]
        if line["true_strength"] is not None:
            readings = [*readings, line][-READINGS:]
        receiver = read.values.get("receiver") or run["receiver"]
        states[f"r:{run_id}"] = {**run, "cuts": [*run["cuts"], line], "readings": readings, "receiver": receiver}
    return Effect(states)


def run_end(read: Read, view: Any) -> Effect:
    """The run closes; the still is free."""
    still, run_id, run = _with_run(read, view)
    states = {f"v:{read.mark}": {**still, "run": None}}
    if run:
        line = _line(read, view)
        readings = [*run["readings"], line] if line["true_strength"] is not None else run["readings"]
        states[f"v:{read.mark}"]["vapour_offsets"] = _offsets(still, run_id, run, readings, view)
        states[f"r:{run_id}"] = {**run, "ended_at": view.at, "end": line, "readings": readings[-READINGS:]}
    return Effect(states)


def _offsets(
    still: dict[str, Any], run_id: str | None, run: dict[str, Any], readings: list[dict[str, Any]], view: Any
) -> list[list[Any]]:
    """Return the offset of the still's vapour thermometer in its last runs: [run id, degC] each. Heads read low."""
    begun = min((cut["at"] for cut in run["cuts"] if cut["event"] == "heads_cut"), default="")
    pairs = [
        (line["true_strength"], line["vapour_temp"])
        for line in readings
        if line["true_strength"] is not None and line.get("vapour_temp") is not None and line["at"] >= begun
    ]
    found = vapour_offset_c(pairs, float(view.site().get("height_m") or 0))
    before = [one for one in still.get("vapour_offsets", []) if one[0] != run_id]
    return [*before, [run_id, round(found, 2)]][-OFFSETS:] if found is not None else before


def fraction_gauge(read: Read, view: Any) -> Effect:
    """A receiver got its part of the last run on that still: run -> receiver; what stood there before is not of it.

    The remnant is measured first (receiver <-> gauge_difference). Stillage goes run -> stillage at once, and what is
    still unaccounted for goes to not_accounted; a fraction gauged later comes back from there.
    """
    post = Posting(view)
    post.remember(read)
    runs = vessel(view, read.values.get("still") or "")["runs"]
    run = f"r:{runs[-1]}" if runs else "out:not_accounted"
    fraction, goes_to = read.values.get("fraction"), read.values.get("goes_to")
    now = spirit_read(read)
    remnant = spirit_of(read.values.get("remnant"), read.values.get("remnant_strength"))
    of_run = now.less(remnant).above_nothing()
    here, reason = f"v:{read.mark}", str(fraction)
    if fraction == "stillage":
        post.move(run, "out:stillage", now, reason)
        if runs:
            post.clear(run, "out:not_accounted", "run_balance")
    else:
        post.measure(read.mark, remnant, "out:gauge_difference", "remnant")
        what = f"{fraction} {post.state(run).get('what') or ''}".strip().replace("_", " ") if runs else reason
        if not post.held(read.mark) and any(of_run):
            post.begin(read.mark, account="production")  # also in a tank, until somebody moves it
        post.describe(read.mark, what=what)
        post.move(run, here, of_run, reason)
        post.measure(read.mark, now, "out:gauge_difference", "after_collection")
        if goes_to in ("destroyed", "drain"):
            post.clear(read.mark, "out:destroyed", str(goes_to))
    if runs:
        _note_fraction(post, read, run, of_run)
    return post.effect()


def _note_fraction(post: Posting, read: Read, run: str, of_run: Amount) -> None:
    part = {
        "entry": read.entry["id"], "at": post.view.at, "fraction": read.values.get("fraction"), "receiver": read.mark,
        "volume_l": of_run.volume_ml / 1000, "strength_pct": read.figures.get("true_strength"),
        "lpa_l": of_run.lpa_ul / 1_000_000, "goes_to": read.values.get("goes_to"),
    }  # fmt: skip
    state = post.state(run)
    if state:
        post.put(run, fractions=[*state["fractions"], part])
