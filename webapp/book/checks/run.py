"""Checks of a still run: the order of its events, the fall of its strength, and a distillate too warm."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from statistics import median

from webapp.book.before.limits import Limit, declare, limit
from webapp.book.before.view import Query, seconds_between
from webapp.book.checks.words import figure, like_typed, strength_field, time_span, typed, when
from webapp.kinds.cut import CHANGES
from webapp.kinds.expected import Expected
from webapp.kinds.key import run_key
from webapp.kinds.message import Declared, message
from webapp.kinds.read import Read
from webapp.kinds.run_state import Run, RunLine
from webapp.kinds.state import Vessel
from webapp.kinds.view import View
from webapp.trade.errors import OutOfDomain
from webapp.trade.still import vapour_temp_c

LIMITS = declare(
    Limit("slope_pct", 1.0, "% vol", "Strength in hearts and tails may seem to rise by"),
    Limit("fall_pct", 12.0, "% vol", "Strength falls from one reading to the next by at most"),
    Limit("fall_min", 20, "min", "where they follow within"),
    Limit("warm_c", 25, "°C", "Distillate is warm above"),
    Limit("vapour_off_c", 2.0, "°C", "Vapour temperature and strength apart by"),
    Limit("vapour_spread_c", 0.25, "°C", "Least spread that is taken of vapour temperatures in one run"),
)

ORDER = ("heat_on", "first_drop", "heads_cut", "hearts_cut")
CUTS = ("heads_cut", "hearts_cut")
OFF_STILL_PCT = (20.0, 95.0)  # what may run off a still while vapour says how strong it is [% vol]
OFFSET_RUNS = 2  # a single run may be a slip
MAD_TO_SPREAD = 1.4826  # of a normal spread, from the median of the differences to the median
OWN_MOST = 6
OWN_READINGS = 3  # of a run, that tell how far its thermometer stands off
MOST_BELOW = 15  # a suggested strength may lie this far below the last one [% vol]


def run_still_open(read: Read, view: View) -> Iterable[Query]:
    """A charge while another run is open on this still."""
    run = view.run_on(read.mark)
    if run and not run["ended_at"]:
        said = message(
            "run_still_open", still=_still(read, view), run=run["name"] or "none",
            since=when(run["started_at"], read, view),
        )
        yield Query("run_still_open", "ask", "", said)


def run_order(read: Read, view: View) -> Iterable[Query]:
    """Events of a run in their order, with a receiver change at each cut; and a reading without a run."""
    run, event = view.run_on(read.mark), _event(read)
    if run is None:
        if event != "still_opened":
            yield Query("run_not_open", "ask", "", message("run_not_open", still=_still(read, view)))
        return
    done = {cut["event"]: cut["at"] for cut in run["cuts"] if "event" in cut}
    if event in ORDER:
        yield from _out_of_order(read, view, event, done)
    if event in CUTS and read.text("receiver") and read.values["receiver"] == run["receiver"]:
        said = message("run_receiver_same", receiver=_name(run["receiver"], view))
        yield Query("run_receiver_same", "ask", "receiver", said)
    if event == "run_end" and "heads_cut" in done and "hearts_cut" not in done:
        began = when(done["heads_cut"], read, view)
        yield Query("run_order", "ask", "", message("run_order-no_hearts_cut", began=began))
    if event == "still_opened":
        yield Query("run_order", "ask", "event", message("run_order-opened"))


def _out_of_order(read: Read, view: View, event: str, done: Mapping[str, str]) -> Iterable[Query]:
    shown = read.param("event")
    if event in done:
        said = message("run_order-again", event=shown, at=when(done[event], read, view))
        yield Query("run_order", "ask", "event", said)
        return
    later = [other for other in ORDER[ORDER.index(event) + 1 :] if other in done]
    if later:
        other, at = Declared(("choice", "cut", "event", later[0])), when(done[later[0]], read, view)
        said = message("run_order-late", event=shown, other=other, at=at)
        yield Query("run_order", "ask", "event", said)
    elif event == "heads_cut" and "first_drop" not in done and _had_first_drop(read, view):
        yield Query("run_order", "ask", "event", message("run_order-no_first_drop"))
    elif event == "hearts_cut" and "heads_cut" not in done:
        yield Query("run_order", "ask", "event", message("run_order-no_heads_cut"))


def _had_first_drop(read: Read, view: View) -> bool:
    """Whether the first drop of the run before on this still was logged: a house that never does is not asked."""
    runs = view.state(read.mark)["runs"]
    before = view.get(run_key(runs[-2])) if len(runs) > 1 else None
    return bool(before and any(cut.get("event") == "first_drop" for cut in before["cuts"]))


def strength_slope(read: Read, view: View) -> Iterable[Query]:
    """In hearts and tails the strength can only fall, unless plates or cooling were changed."""
    run, now = view.run_on(read.mark), read.figures.get("true_strength")
    if run is None or now is None or not any(cut.get("event") == "heads_cut" for cut in run["cuts"]):
        return
    lines = [line for line in run["readings"] if line.get("true_strength") is not None]
    if not lines or _still_was_changed(read, run, lines):
        return
    last = lines[-1]["true_strength"]
    if last is not None and now > last + limit("slope_pct", view) + 1e-9:
        before, at_last = figure(last, 1, "pct_vol"), when(lines[-1]["at"], read, view)
        said = message("strength_slope", now=figure(now, 1, "pct_vol"), last=before, at=at_last)
        at = strength_field(read)
        expects = Expected("true_strength", last - MOST_BELOW, last + limit("slope_pct", view), last)
        yield Query("strength_slope", "ask", at, said, (expects,))


def strength_fell(read: Read, view: View) -> Iterable[Query]:
    """In the hearts, a strength that fell within minutes by what takes an hour. Twin: static/jobs/run/second.js."""
    run, now = view.run_on(read.mark), read.figures.get("true_strength")
    done = {cut.get("event") for cut in run["cuts"]} if run else set()
    if run is None or now is None or not _is_hearts(done) or _event(read) in ("hearts_cut", "run_end"):
        return
    lines = [line for line in run["readings"] if line.get("true_strength") is not None]
    if not lines or _still_was_changed(read, run, lines):
        return
    last, apart_s = lines[-1]["true_strength"], seconds_between(lines[-1]["at"], view.at)
    most = limit("fall_pct", view)
    if last is None or not 0 <= apart_s <= limit("fall_min", view) * 60 or last - now <= most + 1e-9:
        return
    at = strength_field(read)
    said = message(
        "strength_fell", now=figure(now, 1, "pct_vol"), off=figure(last - now, 1, "pct_vol"),
        last=figure(last, 1, "pct_vol"), apart=time_span(apart_s),
    )
    yield Query("strength_fell", "ask", at, said, (Expected("true_strength", last - most, last + most, last),))


def distillate_warm(read: Read, view: View) -> Iterable[Query]:
    """Spirit at the safe too warm: vapour may be lost."""
    temp, warm = read.number("temp"), limit("warm_c", view)
    if temp is not None and temp > warm:
        said = message("distillate_warm", temp=typed(read, "temp"), warm=like_typed(read, "temp", warm))
        yield Query("distillate_warm", "ask", "temp", said, (Expected("temp", 5, warm),))


def vapour_strength(read: Read, view: View) -> Iterable[Query]:
    """Vapour temperature against strength: catches a mistyped 86.4 for 68.4 at once."""
    now, vapour = read.figures.get("true_strength"), read.number("vapour_temp")
    if now is None or vapour is None:
        return
    height_m = float(view.site().get("height_m") or 0)
    try:
        by_table = float(vapour_temp_c(now, height_m))
    except OutOfDomain:
        return
    own = own_offset(view.run_on(read.mark), height_m, vapour - by_table, view)
    wanted = by_table + (own[0] if own else offset_of(view.state(read.mark)))
    off = min(limit("vapour_off_c", view), own[1]) if own else limit("vapour_off_c", view)
    if abs(vapour - wanted) <= off:
        return
    said = message(
        "vapour_strength", vapour=typed(read, "vapour_temp"), strength=figure(now, 1, "pct_vol"),
        usual=like_typed(read, "vapour_temp", round(wanted, 1)),
    )
    expects = Expected("vapour_temp", wanted - off, wanted + off, wanted), Expected("true_strength", *OFF_STILL_PCT)
    yield Query("vapour_strength", "ask", "vapour_temp", said, expects)


def own_offset(run: Run | None, height_m: float, now: float, view: View) -> tuple[float, float] | None:
    """Return how far the thermometer of this very run stood off so far, and how far off that a reading may be. [degC]

    Middle and spread are medians, so one mistyped reading moves neither. now: how far it stands off. None where it
    stands as at the reading before, which most do: that costs one sum, not one for each reading.
    """
    found = []
    lines = [*run["cuts"], *run["readings"]][-OWN_MOST:] if run else []
    if len(lines) < OWN_READINGS:
        return None
    for line in reversed(lines):
        pct, vapour = line.get("true_strength"), line.get("vapour_temp")
        if pct is not None and vapour is not None and OFF_STILL_PCT[0] <= pct <= OFF_STILL_PCT[1]:
            found.append(vapour - float(vapour_temp_c(pct, height_m)))
            if len(found) == 1 and abs(now - found[0]) <= limit("vapour_spread_c", view):
                return None
    if len(found) < OWN_READINGS:
        return None
    middle = median(found)
    spread = MAD_TO_SPREAD * median(abs(one - middle) for one in found)
    return middle, limit("alike_spread", view) * max(spread, limit("vapour_spread_c", view))


def vapour_apart(read: Read, view: View) -> float | None:
    """Return how far the vapour is off that of the strength typed, by the thermometer of this run. [degC] or None"""
    now, vapour, run = read.figures.get("true_strength"), read.number("vapour_temp"), view.run_on(read.mark)
    if now is None or vapour is None or run is None:
        return None
    height_m, found = float(view.site().get("height_m") or 0), []
    for line in run["readings"][-OWN_MOST:]:
        pct, read_c = line.get("true_strength"), line.get("vapour_temp")
        if pct is not None and read_c is not None and OFF_STILL_PCT[0] <= pct <= OFF_STILL_PCT[1]:
            found.append(read_c - float(vapour_temp_c(pct, height_m)))
    if len(found) < 2 or not OFF_STILL_PCT[0] <= now <= OFF_STILL_PCT[1]:
        return None
    return vapour - float(vapour_temp_c(now, height_m)) - median(found)


def offset_of(still: Vessel) -> float:
    """Return a still's own vapour offset, the middle of its last runs; nothing before it has run twice. [degC]"""
    found = [float(one[1]) for one in still.get("vapour_offsets", [])]
    return float(median(found)) if len(found) >= OFFSET_RUNS else 0.0


def _still_was_changed(read: Read, run: Run, lines: list[RunLine]) -> bool:
    """Whether heat, water or plates were changed since the last of these readings, as told or by the figures."""
    if any(cut.get("event") in CHANGES and cut["at"] >= lines[-1]["at"] for cut in run["cuts"]):
        return True
    plates = [line.get("plates") for line in reversed(lines)]
    cooling = [line.get("cooling_temp") for line in reversed(lines)]
    for name, past, step in (("plates", plates, 0.5), ("cooling_temp", cooling, 2.0)):
        now = read.number(name)
        before = next((one for one in past if one is not None), None)
        if now is not None and before is not None and abs(now - before) >= step:
            return True
    return False


def _is_hearts(done: set[str | None]) -> bool:
    """Whether the hearts run, by the events there were: before them and after them a strength may plunge."""
    return "heads_cut" in done and "hearts_cut" not in done


def _event(read: Read) -> str:
    return (read.text("event") if read.kind.name == "cut" else None) or read.kind.name


def _name(mark: str, view: View) -> str:
    vessel = view.vessel(mark)
    return str(vessel["name"]) if vessel else mark


def _still(read: Read, view: View) -> str:
    return _name(read.mark, view)
