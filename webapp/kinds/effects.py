"""What each kind does to the fold. Pure: (read, view) -> Effect. Times are the fold's own, UTC.

State of a vessel, key `v:<mark>`:
    holds: None or {fill, what, name, since, volume_l, strength_pct, lpa_l, mass_kg, og, sources}
    recent: {kind: [{entry, at, person, device, seq, values, figures}, ...]} the last RECENT of each kind, oldest first
    run: id of the run now on this still, or None; runs: the last RUNS run ids, oldest first
    stock_ul: pure alcohol by the flows [uL]; after a gauge it is what was gauged, to the last microlitre
State of a run, key `r:<run>` (a run's id is the root of its charge entry, so amending the charge keeps the run):
    still, name, from, charge {...}, started_at, receivers {heads, hearts, tails}, receiver, readings, cuts,
    fractions, ended_at
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from webapp.kinds.read import Read
from webapp.kinds.spec import Effect, Flow

RECENT = 20
RUNS = 12
READINGS = 400

EMPTY_VESSEL: dict[str, Any] = {"holds": None, "recent": {}, "run": None, "runs": [], "stock_ul": 0}


def keep_stock(effect: Effect, view: Any) -> Effect:
    """Return the effect with `stock_ul` of every vessel and run that its flows move; called after each effect."""
    moved: dict[str, int] = {}
    for flow in effect.flows:
        moved[flow.source] = moved.get(flow.source, 0) - flow.lpa_ul
        moved[flow.target] = moved.get(flow.target, 0) + flow.lpa_ul
    states = dict(effect.states)
    for account, change in moved.items():
        if change and account[:2] in ("v:", "r:"):
            state = states.get(account) or view.get(account) or EMPTY_VESSEL
            states[account] = {**state, "stock_ul": state.get("stock_ul", 0) + change}
    return Effect(states, effect.flows)


def _move(source: str, target: str, lpa_ul: int, volume_ml: int = 0) -> Flow:
    """Return a flow that runs the other way where its alcohol is negative."""
    return Flow(source, target, lpa_ul, volume_ml) if lpa_ul >= 0 else Flow(target, source, -lpa_ul, -volume_ml)


def vessel(view: Any, mark: str) -> dict[str, Any]:
    """Return the vessel's state before this entry, or an empty one."""
    return view.get(f"v:{mark}") or EMPTY_VESSEL


def _line(read: Read, view: Any) -> dict[str, Any]:
    entry = read.entry
    return {
        "entry": entry["id"], "at": view.at, "person": entry["person"], "device": entry["device"],
        "seq": entry["seq"], "values": dict(read.values), "figures": dict(read.figures),
    }


def remember(state: Mapping[str, Any], read: Read, view: Any) -> dict[str, Any]:
    """Return the vessel's state with this entry among its recent ones."""
    kind = read.kind.name
    lines = [*state["recent"].get(kind, []), _line(read, view)][-RECENT:]
    return {**state, "recent": {**state["recent"], kind: lines}}


def _ul(litres: float | None) -> int:
    return round((litres or 0.0) * 1_000_000)


def _ml(litres: float | None) -> int:
    return round((litres or 0.0) * 1_000)


def _g(kilograms: float | None) -> int:
    return round((kilograms or 0.0) * 1_000)


def fruit_intake(read: Read, view: Any) -> Effect:
    """Fruit joins what the fermenter holds, or begins a new fill."""
    state = remember(vessel(view, read.mark), read, view)
    net = read.get("net") or 0.0
    what = read.values.get("variety") or read.values.get("material") or "fruit"
    held, here = state["holds"], f"v:{read.mark}"
    flows = [Flow("out:grower", here, mass_g=_g(net))]
    if held and (held.get("lpa_l") or held.get("charged")):  # spirit or charged wash takes no fruit: a new fill begins
        flows.append(_move(here, "out:not_accounted", state.get("stock_ul", 0)))
        held = None
    if held:
        held = {**held, "mass_kg": (held["mass_kg"] or 0.0) + net, "sources": [*held["sources"], view.root]}
    else:
        held = {
            "fill": view.root, "what": what, "material": read.values.get("material"),
            "name": read.values.get("batch") or "", "since": view.at, "volume_l": None, "strength_pct": None,
            "lpa_l": None, "mass_kg": net, "og": None, "sources": [view.root],
        }
    return Effect({here: {**state, "holds": held}}, tuple(flows))


def ferment_reading(read: Read, view: Any) -> Effect:
    """The first gravity of a fill is its original gravity."""
    state = remember(vessel(view, read.mark), read, view)
    held = state["holds"]
    if held and held.get("og") is None and read.values.get("gravity") is not None:
        state = {**state, "holds": {**held, "og": read.values["gravity"]}}
    return Effect({f"v:{read.mark}": state})


def charge(read: Read, view: Any) -> Effect:
    """A run begins; its wash leaves the fermenter, its feints leave their can."""
    still_key, run_id = f"v:{read.mark}", view.root
    still = remember(vessel(view, read.mark), read, view)
    states: dict[str, dict[str, Any]] = {}
    source_mark = read.values.get("from_vessel") or ""
    source = dict(vessel(view, source_mark))
    wash, wash_lpa = read.values.get("wash"), read.figures.get("wash_lpa")
    flows = [Flow(f"v:{source_mark}", f"r:{run_id}", _ul(wash_lpa), _ml(wash))]
    held = source["holds"]
    if held and held.get("lpa_l") is not None:  # spirit or low wines: its alcohol is in the book already
        states[f"v:{source_mark}"], left_over = _taken(source, wash or 0.0, wash_lpa)
        flows += left_over(f"v:{source_mark}")
    else:
        flows.insert(0, Flow("out:fermented", f"v:{source_mark}", _ul(wash_lpa)))
        if source_mark and held:
            left = None if held["volume_l"] is None else max(held["volume_l"] - (wash or 0.0), 0.0)
            states[f"v:{source_mark}"] = {**source, "holds": {**held, "volume_l": left, "charged": True}}
    feints_mark = read.values.get("feints_from") or ""
    feints, feints_lpa = read.values.get("feints"), read.figures.get("feints_lpa")
    if feints:
        account = f"v:{feints_mark}" if feints_mark else "out:not_accounted"
        flows.append(Flow(account, f"r:{run_id}", _ul(feints_lpa), _ml(feints)))
        if feints_mark and account not in states:
            states[account], left_over = _taken(vessel(view, feints_mark), feints, feints_lpa)
            flows += left_over(account)
    receivers = {part: read.values.get(f"{part}_to") for part in ("heads", "hearts", "tails")}
    states[f"r:{run_id}"] = {
        "still": read.mark, "name": read.values.get("run_name") or "", "from": source_mark,
        "what": (held or {}).get("what", ""), "batch": (held or {}).get("name", ""), "started_at": view.at,
        "charge": {"volume_l": (wash or 0.0) + (feints or 0.0), "wash_l": wash, "feints_l": feints,
                   "lpa_l": read.figures.get("charge_lpa")},
        "receivers": receivers, "receiver": receivers["heads"], "readings": [], "cuts": [], "fractions": [],
        "ended_at": None,
    }
    states[still_key] = {**still, "run": run_id, "runs": [*still["runs"], run_id][-RUNS:]}
    return Effect(states, tuple(flows))


def _taken(
    state: Mapping[str, Any], volume_l: float, lpa_l: float | None
) -> tuple[dict[str, Any], Callable[[str], list[Flow]]]:
    """Return the vessel's state after something was taken, and what to book where the book had more or less."""
    held = state["holds"] or {}
    rest_ul = state.get("stock_ul", 0) - _ul(lpa_l)
    left = None if held.get("volume_l") is None else held["volume_l"] - volume_l
    lpa = None if held.get("lpa_l") is None else max(held["lpa_l"] - (lpa_l or 0.0), 0.0)
    if left is None or lpa is None:  # the book knew of no spirit there
        return dict(state), lambda account: [_move(account, "out:not_accounted", rest_ul)]
    if left <= 0.05:
        return {**state, "holds": None}, lambda account: [_move(account, "out:gauge_difference", rest_ul)]
    short_ul = rest_ul if lpa == 0.0 else 0
    new = {**state, "holds": {**held, "volume_l": left, "lpa_l": lpa}}
    return new, lambda account: [_move(account, "out:gauge_difference", short_ul)]


def _run_line(read: Read, view: Any) -> dict[str, Any]:
    keep = ("vapour_temp", "flow", "plates", "cooling_temp", "event", "receiver", "reason", "nose", "glass", "temp")
    line = {"entry": read.entry["id"], "at": view.at, "true_strength": read.figures.get("true_strength")}
    return line | {name: read.values[name] for name in keep if name in read.values}


def _with_run(read: Read, view: Any) -> tuple[dict[str, Any], str | None, dict[str, Any] | None]:
    still = remember(vessel(view, read.mark), read, view)
    run_id = still["run"]
    return still, run_id, view.get(f"r:{run_id}") if run_id else None


def run_reading(read: Read, view: Any) -> Effect:
    """A reading joins the run now on the still."""
    still, run_id, run = _with_run(read, view)
    states = {f"v:{read.mark}": still}
    if run:
        states[f"r:{run_id}"] = {**run, "readings": [*run["readings"], _run_line(read, view)][-READINGS:]}
    return Effect(states)


def cut(read: Read, view: Any) -> Effect:
    """A cut moves the stream to another receiver."""
    still, run_id, run = _with_run(read, view)
    states = {f"v:{read.mark}": still}
    if run:
        line = _run_line(read, view)
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
        line = _run_line(read, view)
        readings = [*run["readings"], line] if line["true_strength"] is not None else run["readings"]
        states[f"r:{run_id}"] = {**run, "ended_at": view.at, "end": line, "readings": readings[-READINGS:]}
    return Effect(states)


def fraction_gauge(read: Read, view: Any) -> Effect:
    """A receiver got its part of the last run on that still; what stood there before is not of this run."""
    still = vessel(view, read.values.get("still") or "")
    run_id = still["runs"][-1] if still["runs"] else None
    state = remember(vessel(view, read.mark), read, view)
    lpa, volume = read.figures.get("lpa"), read.figures.get("volume_20")
    of_run_lpa = max((lpa or 0.0) - (read.figures.get("remnant_lpa") or 0.0), 0.0)
    of_run_l = max((volume or 0.0) - (read.values.get("remnant") or 0.0), 0.0)
    fraction, goes_to = read.values.get("fraction"), read.values.get("goes_to")
    account = f"r:{run_id}" if run_id else "out:not_accounted"
    here = f"v:{read.mark}"
    flows = [Flow(account, here, _ul(of_run_lpa), _ml(of_run_l))]
    # What the receiver holds is what was gauged; where book and gauge differ, the difference is booked too.
    surplus = state.get("stock_ul", 0) + _ul(of_run_lpa) - _ul(lpa)
    if surplus and fraction != "stillage":
        flows.append(_move(here, "out:gauge_difference", surplus))
    states: dict[str, dict[str, Any]] = {}
    gone = goes_to in ("destroyed", "drain") or fraction == "stillage"
    if gone:
        outside = "out:stillage" if fraction == "stillage" else "out:destroyed"
        flows.append(Flow(here, outside, _ul(lpa), _ml(volume)))
        holds = None if fraction != "stillage" else state["holds"]
    else:
        run = (view.get(f"r:{run_id}") if run_id else None) or {}
        holds = _spirit(read, view, f"{fraction} {run.get('what') or ''}".strip().replace("_", " "))
    states[here] = {**state, "holds": holds}
    if run_id and (run_state := view.get(f"r:{run_id}")):
        part = {"entry": read.entry["id"], "at": view.at, "fraction": fraction, "receiver": read.mark,
                "volume_l": of_run_l, "strength_pct": read.figures.get("true_strength"), "lpa_l": of_run_lpa}
        states[f"r:{run_id}"] = {**run_state, "fractions": [*run_state["fractions"], part]}
    return Effect(states, tuple(flows))


def _spirit(read: Read, view: Any, what: str) -> dict[str, Any]:
    volume, strength = read.figures.get("volume_20"), read.figures.get("true_strength")
    return {
        "fill": view.root, "what": what, "name": "", "since": view.at, "volume_l": volume,
        "strength_pct": strength, "lpa_l": read.figures.get("lpa"), "mass_kg": read.values.get("net_weight"),
        "og": None, "sources": [],
    }


def gauge(read: Read, view: Any) -> Effect:
    """The measured stock holds; the difference to the book is booked as a gauge difference."""
    return _measured(read, view, "out:opening" if read.values.get("purpose") == "opening" else "out:gauge_difference")


def cask_regauge(read: Read, view: Any) -> Effect:
    """The measured stock holds; what is gone since the last gauge has evaporated, leaked, or was misread."""
    return _measured(read, view, "out:evaporation")


def _measured(read: Read, view: Any, outside: str) -> Effect:
    state = remember(vessel(view, read.mark), read, view)
    held = state["holds"] or {}
    lpa = read.figures.get("lpa")
    if lpa is None:
        return Effect({f"v:{read.mark}": state})
    new = _spirit(read, view, read.values.get("what") or held.get("what") or "spirit")
    if held:
        new = {**new, "fill": held["fill"], "since": held["since"], "name": held["name"], "sources": held["sources"]}
    new["mass_kg"] = read.figures.get("net", new["mass_kg"])
    difference = state.get("stock_ul", 0) - _ul(lpa)
    volume = _ml(held.get("volume_l")) - _ml(new["volume_l"])
    here = f"v:{read.mark}"
    flow = _move(here, outside, difference, volume)
    return Effect({here: {**state, "holds": new}}, (flow,))


def shift_note(read: Read, view: Any) -> Effect:
    """A note is remembered with its vessel, if it names one."""
    if not read.mark:
        return Effect()
    return Effect({f"v:{read.mark}": remember(vessel(view, read.mark), read, view)})
