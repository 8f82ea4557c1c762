"""Steps that nobody wrote: a ferment never closed, water never measured, a part of a run never gauged, a tank that is
bottled without its gauge, a vessel cleaned that is full, a rest that would count as soaked up.
"""

from __future__ import annotations

from collections.abc import Iterable

from webapp.book.before.limits import Limit, declare, limit
from webapp.book.before.view import Query, seconds_between
from webapp.book.checks.cask_fill import soak_kg
from webapp.book.checks.moves import vessel_name
from webapp.book.checks.run_balance import expected, fraction_name, is_stripping, run_of
from webapp.book.checks.words import DAY_S, figure, rounded, when
from webapp.kinds.key import run_key
from webapp.kinds.message import Declared, message
from webapp.kinds.read import Read
from webapp.kinds.rows import NO_ROW
from webapp.kinds.state import Line
from webapp.kinds.view import View

LIMITS = declare(
    Limit("yeast_days", 4, "days", "The same yeast into one mash again within"),
    Limit("recask_left_l", 0.5, "L", "Pure alcohol left by a recask beside what wood keeps"),
)

ORDER = ("heads", "hearts", "tails", "stillage")
MEASURES = ("gauge", "distilled_gauge", "bottling_gauge", "account_move")
FULL = 0.02  # of what a vessel holds: less is a film on its floor; common practice, no source


def wash_open(read: Read, view: View) -> Iterable[Query]:
    """A charge out of a ferment that nobody has closed. A house that never closes them is not asked."""
    mark = read.text("from_vessel") or ""
    held = view.state(mark)["holds"] if mark else None
    if not held or not held["mash"] or held.get("closed") or held.get("charged"):
        return
    before = any(line["at"] < held["since"] for line in view.recent(mark, "fruit_intake"))
    if before and not view.recent(mark, "ferment_closed"):
        return
    yield Query("wash_open", "ask", "from_vessel", message("wash_open", vessel=vessel_name(mark, view)))


def water_unread(read: Read, view: View) -> Iterable[Query]:
    """Spirit taken from a tank that water went into, or more water, before anybody measured what it came to."""
    mark = str(read.text("from_vessel") or "") if read.kind.name == "cask_fill" else read.mark
    held = view.state(mark)["holds"] if mark else None
    if not held or not (reduced := held.get("reduced")):
        return
    if "true_strength" in read.figures and read.kind.name != "cask_fill":
        return  # it is measured now
    lines = view.recent(mark, "reduce")
    if any("true_strength" in line["figures"] for line in lines if line["at"] >= reduced["at"]):
        return
    if any(line["at"] > reduced["at"] for kind in MEASURES for line in view.recent(mark, kind)[-1:]):
        return
    said_already = view.recent(read.mark, read.kind.name) if read.kind.name != "cask_fill" else ()
    if any(line["at"] > reduced["at"] for line in said_already):
        return
    said = message("water_unread", vessel=vessel_name(mark, view), at=when(reduced["at"], read, view))
    yield Query("water_unread", "ask", "", said)


def bottling_ungauged(read: Read, view: View) -> Iterable[Query]:
    """Bottles off a tank that was not gauged for bottling: its label and its batch are not known."""
    held = view.state(read.mark)["holds"]
    if held and not held["mash"] and held.get("label_strength_pct") is None and read.number("label_strength") is None:
        yield Query("bottling_ungauged", "ask", "", message("bottling_ungauged", vessel=vessel_name(read.mark, view)))


def fraction_left(read: Read, view: View) -> Iterable[Query]:
    """A part of a run gauged while an earlier one is not, in the order of the run before on this still."""
    run_id, run = run_of(read, view)
    name = read.text("fraction") or ""
    if run is None or is_stripping(run) or name not in ORDER:
        return
    ids = view.state(read.text("still") or "")["runs"]
    other = view.get(run_key(ids[-2])) if len(ids) > 1 and ids[-1] == run_id else None
    # Of a first run nobody knows the order of the house; what is left in the still comes last everywhere.
    order = [str(part["fraction"]) for part in other["fractions"]] if other else list(ORDER)
    if name not in order or (other is None and name != "stillage"):
        return
    wanted = {*expected(run), *({"stillage"} if other else ())}
    done = {part["fraction"] for part in run["fractions"]}
    missing = [part for part in order[: order.index(name)] if part in wanted - done]
    if missing and missing[0] != name:
        said = message("fraction_left", fraction=fraction_name(name), missing=fraction_name(missing[0]),
                       run=run["name"] or "none")
        yield Query("fraction_left", "ask", "fraction", said)


def parts_left(read: Read, view: View) -> Iterable[Query]:
    """Spirit moved out of a receiver of a run of which a part is not gauged, as it was before the move until now."""
    lines = view.recent(read.mark, "fraction_gauge")
    still = lines[-1]["values"].get("still") if lines else None
    runs = view.state(str(still))["runs"] if still else []
    if len(runs) < 2 or lines[-1]["at"] < _last_move(read, view):
        return
    run, other = view.get(run_key(runs[-1])), view.get(run_key(runs[-2]))
    if run is None or other is None or not any(part["receiver"] == read.mark for part in run["fractions"]):
        return
    moved = view.recent(read.mark, "account_move")[-1:]
    before = {part["fraction"] for part in other["fractions"] if moved and part["at"] <= moved[0]["at"]}
    missing = [name for name in ORDER if name in before - {part["fraction"] for part in run["fractions"]}]
    if missing:
        said = message("fraction_left-moved", missing=fraction_name(missing[0]), run=run["name"] or "none",
                       vessel=vessel_name(read.mark, view))
        yield Query("fraction_left", "ask", "", said)


def _last_move(read: Read, view: View) -> str:
    return max((line["at"] for line in view.recent(read.mark, "account_move")[-1:]), default="")


def run_not_ended(read: Read, view: View) -> Iterable[Query]:
    """The last of a run is gauged and its end is not logged."""
    _, run = run_of(read, view)
    if run is not None and not run["ended_at"] and read.text("fraction") in ("tails", "stillage"):
        yield Query("run_not_ended", "ask", "fraction", message("run_not_ended", run=run["name"] or "none"))


def cleaned_full(read: Read, view: View) -> Iterable[Query]:
    """A vessel that is cleaned while the book has something in it."""
    held, capacity = view.state(read.mark)["holds"], (view.vessel(read.mark) or NO_ROW).get("capacity_l")
    if not held or held.get("charged"):
        return  # what is left of a charged wash is lees
    litres = held["volume_l"] or held["mass_kg"] or 0.0
    if litres > FULL * (capacity or 0.0) and litres > 0:
        said = message("cleaned_full", vessel=vessel_name(read.mark, view), litres=rounded(litres, 0, "L"))
        yield Query("cleaned_full", "ask", "", said)


def added_again(read: Read, view: View) -> Iterable[Query]:
    """As much of the same yeast again in one mash within days: another vessel, or twice. Food for it comes in parts."""
    held, what = view.state(read.mark)["holds"], read.text("what")
    if not held or what != "yeast":
        return
    for line in reversed(view.recent(read.mark, "addition")):
        if line["at"] < held["since"] or seconds_between(line["at"], view.at) > limit("yeast_days", view) * DAY_S:
            return
        if _same(line, read, ("what", "lot_no", "amount", "amount_volume")):
            said = message("added_again", what=Declared(("choice", "addition", "what", what)),
                           vessel=vessel_name(read.mark, view), at=when(line["at"], read, view))
            yield Query("added_again", "ask", "", said)
            return


def _same(line: Line, read: Read, names: Iterable[str]) -> bool:
    return all(line["values"].get(name) == read.values.get(name) for name in names)


def recask_rest(read: Read, view: View) -> Iterable[Query]:
    """A cask emptied into another one, of which far more stands in the book than was poured: the rest would be the
    wood's.
    """
    source, poured = read.text("from_vessel") or "", read.figures.get("lpa")
    held = view.state(source)["holds"] if source else None
    if read.text("work") != "recask" or not held or poured is None:
        return
    row = view.vessel(source) or NO_ROW
    strength = (held["strength_pct"] or 0.0) / 100
    kept = soak_kg(row.get("capacity_l"), limit("soak_high_kg", view)) * strength / 0.9  # of spirit, 0.9 kg to a litre
    left = held["lpa_ul"] / 1e6 - poured
    if left > kept + limit("recask_left_l", view):
        said = message("recask_rest", vessel=vessel_name(source, view), left=rounded(left, 1, "LPA"),
                       kept=figure(round(kept, 1), 1, "LPA"))
        yield Query("recask_rest", "ask", "work", said)
