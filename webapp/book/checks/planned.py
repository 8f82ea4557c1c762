"""What is done against what was planned: receivers of a run, the target of a reduction, a vat, a cut."""

from __future__ import annotations

from collections.abc import Iterable

from webapp.book.before.limits import Limit, declare, limit
from webapp.book.before.vat_draws import read_draws
from webapp.book.before.view import Query, seconds_between
from webapp.book.checks.moves import vessel_name
from webapp.book.checks.words import DAY_S, figure, like_typed, rounded, strength_field, typed, when
from webapp.kinds.amount import spirit_volume_ml
from webapp.kinds.effects.plan import ANY_STILL, fruit_of
from webapp.kinds.expected import Expected, Suggestion
from webapp.kinds.key import wish_key
from webapp.kinds.message import Declared, message
from webapp.kinds.read import Read
from webapp.kinds.rows import NO_ROW
from webapp.kinds.state import NO_FILL, PlannedVat, figure_in
from webapp.kinds.view import View

LIMITS = declare(
    Limit("plan_cut_pct", 3.0, "% vol", "A cut off the strength of its plan by"),
    Limit("plan_draw_pct", 10, "%", "A draw off the vat that was planned, by"),
    Limit("plan_vat_pct", 0.3, "% vol", "A planned vat off what its draws and its water give, by"),
    Limit("plan_days", 90, "days", "A plan of a vat holds for"),
)

PARTS = ("heads", "hearts", "tails")
FILLS = {"heads_cut": "hearts", "hearts_cut": "tails"}  # which part the receiver of a cut is for
CHANGED = ("heat_changed", "water_changed", "plate_in", "plate_out", "still_opened")


def receiver_planned(read: Read, view: View) -> Iterable[Query]:
    """A cut into another receiver than its charge says, and a receiver beside an event that is no cut."""
    run, receiver, event = view.run_on(read.mark), read.text("receiver"), read.text("event") or ""
    if run is None or not receiver or receiver == run["receiver"]:
        return
    wanted = run["receivers"].get(FILLS.get(event, ""))
    if wanted and wanted != receiver:
        said = message("receiver_other", vessel=vessel_name(receiver, view), planned=vessel_name(wanted, view),
                       part=Declared(("choice", "fraction_gauge", "fraction", FILLS[event])))
        yield Query("receiver_other", "ask", "receiver", said, suggestions=(Suggestion("receiver", wanted, ""),))
    elif event in CHANGED:
        said = message("receiver_no_cut", vessel=vessel_name(receiver, view), event=read.param("event"))
        yield Query("receiver_no_cut", "ask", "event", said)


def receivers_named(read: Read, view: View) -> Iterable[Query]:
    """One receiver for two parts of a run, or for another part than at the charge before."""
    named = {part: mark for part in PARTS if (mark := read.text(f"{part}_to"))}
    for part, mark in named.items():
        other = next((one for one, its in named.items() if one != part and its == mark), "")
        if other:
            said = message("receiver_twice", vessel=vessel_name(mark, view), part=_part(part), other=_part(other))
            yield Query("receiver_twice", "ask", f"{part}_to", said)
            return
    lines = view.recent(read.mark, "charge")[-1:]
    before = {part: lines[0]["values"].get(f"{part}_to") for part in PARTS} if lines else {}
    for part, mark in named.items():
        other = next((one for one in PARTS if one != part and before.get(one) == mark), "")
        if other and before.get(part) not in (None, mark):
            said = message("receiver_role", vessel=vessel_name(mark, view), part=_part(part), other=_part(other))
            was = str(before[part])
            yield Query("receiver_role", "ask", f"{part}_to", said, suggestions=(Suggestion(f"{part}_to", was, ""),))
            return


def _part(part: str) -> Declared:
    return Declared(("choice", "fraction_gauge", "fraction", part))


def target_moved(read: Read, view: View) -> Iterable[Query]:
    """Measured after the rest against another target than the water was for; a target below that of the planned vat."""
    held, target = view.state(read.mark)["holds"], read.number("target")
    if not held or target is None:
        return
    lines = [line for line in view.recent(read.mark, "reduce") if line["at"] >= held["since"]]
    last = figure_in(lines[-1]["values"], "target") if lines else None
    if last is not None and not read.figures.get("water_mass") and abs(target - last) > 1e-6:
        said = message("target_moved", target=typed(read, "target"), last=like_typed(read, "target", last),
                       at=when(lines[-1]["at"], read, view))
        yield Query("target_moved", "ask", "target", said, (Expected("target", last, last, last),))
        return
    plan = plan_of(read.mark, view)
    planned = plan["target_pct"] if plan else None
    if plan and planned and target < planned - limit("plan_vat_pct", view):
        said = message("target_planned", target=typed(read, "target"), planned=like_typed(read, "target", planned),
                       plan=plan["name"] or "none")
        yield Query("target_planned", "ask", "target", said, (Expected("target", planned, planned, planned),))


def label_planned(read: Read, view: View) -> Iterable[Query]:
    """Bottled under another strength than the vat was planned for."""
    plan, label = plan_of(read.mark, view), read.number("label_strength")
    planned = plan["target_pct"] if plan else None
    if plan and planned and label is not None and abs(label - planned) > limit("plan_vat_pct", view):
        said = message("label_planned", label=typed(read, "label_strength"), plan=plan["name"] or "none",
                       planned=like_typed(read, "label_strength", planned))
        yield Query("label_planned", "ask", "label_strength", said,
                    (Expected("label_strength", planned, planned, planned),))


def plan_of(mark: str, view: View) -> PlannedVat | None:
    """Return the vat that was planned for a tank, while its plan holds; None where what stands there is older."""
    state = view.state(mark)
    plan = state.get("planned")
    if not plan or seconds_between(plan["at"], view.at) > limit("plan_days", view) * DAY_S:
        return None
    held = state["holds"]
    return plan if held is None or held["since"] >= plan["at"] or mark in read_draws(plan["draws"])[0] else None


def dump_planned(read: Read, view: View) -> Iterable[Query]:
    """A cask that is not in the plan of the tank, or another amount of it than was planned."""
    tank, net = read.text("to_vessel") or "", read.figures.get("net")
    plan = plan_of(tank, view) if tank else None
    if plan is None:
        return
    draws = read_draws(plan["draws"])[0]
    wanted, name = draws.get(read.mark), plan["name"] or "none"
    if wanted is None:
        said = message("dump_planned", vessel=vessel_name(read.mark, view), plan=name, tank=vessel_name(tank, view))
        yield Query("dump_planned", "ask", "to_vessel", said)
    elif net is not None and abs(net - wanted) > wanted * limit("plan_draw_pct", view) / 100:
        said = message("dump_planned-amount", net=rounded(net, 1, "kg"), wanted=rounded(wanted, 1, "kg"), plan=name)
        most = wanted * limit("plan_draw_pct", view) / 100
        yield Query("dump_planned", "ask", "gross", said, (Expected("net", wanted - most, wanted + most, wanted),))


def vat_sum(read: Read, view: View) -> Iterable[Query]:
    """A planned vat against its own draws: what they and the water come to, what stands in the tank, and its brim."""
    draws, odd = read_draws(str(read.text("draws") or ""))
    parts = [(kg, view.state(mark)["holds"] or NO_FILL) for mark, kg in draws.items()]
    held = view.state(read.mark)["holds"]
    if held and held["lpa_ul"] and read.mark not in draws:
        said = message("vat_joins", vessel=vessel_name(read.mark, view), held=rounded(held["lpa_ul"] / 1e6, 1, "LPA"))
        yield Query("vat_joins", "ask", "draws", said)
    if odd or not parts or not all(fill["mass_g"] for _, fill in parts):
        return
    water, target = read.number("water"), read.number("target")
    mass_g = sum(kg for kg, _ in parts) * 1000 + (water or 0.0) * 1000
    lpa_ul = sum(fill["lpa_ul"] * kg * 1000 / fill["mass_g"] for kg, fill in parts)
    litres = spirit_volume_ml(round(lpa_ul), round(mass_g)) / 1000
    if litres <= 0:
        return
    strength, most = lpa_ul / 1e4 / litres, limit("plan_vat_pct", view)
    if water is not None and target is not None and abs(strength - target) > most:
        said = message("vat_sum", strength=rounded(strength, 1, "pct_vol"), target=typed(read, "target"),
                       water=typed(read, "water"))
        yield Query("vat_sum", "ask", "target", said, (Expected("target", strength - most, strength + most, strength),
                                                       *_water_for(lpa_ul, mass_g / 1000 - water, target)))
    brim = (view.vessel(read.mark) or NO_ROW).get("capacity_l")
    there = (held or NO_FILL)["volume_l"] or 0.0
    if brim and litres + there > brim:
        said = message("vat_full", then=rounded(litres + there, 0, "L"), vessel=vessel_name(read.mark, view),
                       holds=figure(brim, 0, "L"))
        yield Query("vat_full", "ask", "draws", said)


def _water_for(lpa_ul: float, spirit_kg: float, target_pct: float) -> Iterable[Expected]:
    """Yield the water that brings so much spirit to a strength. [kg]"""
    low, high = 0.0, spirit_kg * 20
    for _ in range(40):
        middle = (low + high) / 2
        litres = spirit_volume_ml(round(lpa_ul), round((spirit_kg + middle) * 1000)) / 1000
        low, high = (middle, high) if litres and lpa_ul / 1e4 / litres > target_pct else (low, middle)
    if 0 < low < spirit_kg * 19:
        yield Expected("water", low * 0.97, low * 1.03, low)


def cut_planned(read: Read, view: View) -> Iterable[Query]:
    """A hearts cut far from the strength that the distiller planned for this fruit. The nose decides; it is said."""
    run, now = view.run_on(read.mark), read.figures.get("true_strength")
    if run is None or now is None or read.text("event") != "hearts_cut" or not run["what"]:
        return
    wish = view.get(wish_key(fruit_of(run["what"])))
    plans = wish["plans"] if wish else {}
    plan = plans.get(run["still"]) or plans.get(ANY_STILL)
    wanted, most = plan["hearts_to_pct"] if plan else None, limit("plan_cut_pct", view)
    if wanted and abs(now - wanted) > most:
        said = message("cut_planned", now=figure(now, 1, "pct_vol"), planned=figure(wanted, 1, "pct_vol"))
        yield Query("cut_planned", "ask", strength_field(read), said,
                    (Expected("true_strength", wanted - most, wanted + most, wanted),))
