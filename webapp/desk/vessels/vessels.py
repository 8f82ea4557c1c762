"""Vessels: what stands where, each with its history and its curve; and their registry."""

from __future__ import annotations

import json

from flask import abort, flash, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue

from webapp.access import current, needs
from webapp.book import cards
from webapp.book.cellar.tastings import names_of
from webapp.book.fold import row_reader, states
from webapp.book.house import places, registry
from webapp.book.house.uncertain import find_holding, uncertain_holding
from webapp.book.lineage import certificates
from webapp.book.record import log
from webapp.desk.blueprint import bp
from webapp.desk.figures import curve_charts, name_units, typed
from webapp.desk.figures import figure as shown
from webapp.desk.forms import VesselForm, figure
from webapp.desk.shown import line_of
from webapp.kinds.rows import VesselRow
from webapp.trade.marks import BadMark, make_mark, parse_mark
from webapp.words.desk import say

HISTORY = 60
_UNITS = {"capacity_l": "L", "working_l": "L", "tare_kg": "kg"}
PAGE = 200
START_MOST = 10_000_000


@bp.get("/vessels")
@needs("floor")
def vessels_page() -> ResponseReturnValue:
    """List vessels by place and code with what they hold, filtered by sort and text, a page at a time."""
    sort = request.args.get("sort") or None
    text = request.args.get("q", "").strip()
    start = min(max(request.args.get("start", 0, type=int), 0), START_MOST)
    rows = registry.find_vessels(current.book, sort=sort, text=text, limit=PAGE + 1, offset=start)
    held = states.load_fills(current.book, (row["mark"] for row in rows[:PAGE]))
    return render_template(
        "desk/vessels/vessels.html",
        rows=rows[:PAGE],
        stands=places.stands_at(current.book, (row["mark"] for row in rows[:PAGE])),
        held=held,
        sort=sort,
        text=text,
        start=start,
        following=start + PAGE if len(rows) > PAGE else None,
        sorts=registry.SORTS,
    )


@bp.get("/vessels/<mark>")
@needs("floor")
def vessel_page(mark: str) -> ResponseReturnValue:
    """Show one vessel: what it holds, its curves, open queries, and its entries, newest first."""
    row = known_vessel(mark)
    card = cards.load_standing(current.book, row)
    holding = find_holding(current.book, card["state"])
    rows = log.find_entries(current.book, mark=row["mark"], limit=HISTORY)
    reads = row_reader.read_all_as_folded(current.book, [*rows, *(holding.rows if holding else ())])
    uncertain = uncertain_holding(holding, reads[len(rows) :]) if holding else None
    history = [line_of(*pair) for pair in zip(rows, reads, strict=False)]
    held = card["holds"]
    is_spirit = held is not None and not held["mash"]
    found = certificates.find_certificates(current.book, mark=row["mark"]) if is_spirit else []
    tested = certificates.of_fill(found, row["mark"], str(held["since"])) if held else []
    return render_template(
        "desk/vessels/vessel.html", row=row, card=card, history=history, is_spirit=is_spirit, tested=tested,
        uncertain=uncertain,
        untested=certificates.untested(tested), tastings=names_of(card["state"]),
        stands=places.last_placing(current.book, row["mark"]), charts=json.dumps(curve_charts(card["curves"])),
    )


def known_vessel(mark: str) -> VesselRow:
    """Return a vessel of the book by its mark; 404 where there is none."""
    try:
        row = registry.vessel(current.book, parse_mark(mark))
    except BadMark:
        row = None
    if row is None:
        abort(404, say("desk-vessel-the_book_knows_no_vessel", mark=mark[:16]))
    return row


@bp.route("/vessels/new", methods=["GET", "POST"])
@bp.route("/vessels/<mark>/edit", methods=["GET", "POST"])
@needs("office")
def vessel_edit(mark: str | None = None) -> ResponseReturnValue:
    """Add a vessel, or change one. The mark itself is made from the code and never changes."""
    row = known_vessel(mark) if mark else None
    form = VesselForm(data=_boxes(row)) if row else VesselForm()
    if row:
        form.base.data = row["mark"].rsplit("-", 1)[0]
    if request.method == "POST" and form.validate():
        made, wrong = (row["mark"], "") if row else _new_mark(str(form.base.data))
        if wrong:
            form.base.errors = [wrong]
        else:
            assert current.person
            registry.put_vessel(current.book, _row(made, form), by=current.person["code"])
            flash(say("desk-vessel-is_in_the_book", made=made), "entered")
            return redirect(url_for("desk.vessel_page", mark=made))
    status = 422 if request.method == "POST" else 200
    name_units(form, **_UNITS)
    return render_template(
        "desk/vessels/edit.html", form=form, row=row, places=places.known_places(current.book),
        stands=places.last_placing(current.book, row["mark"]) if row else None,
    ), status


def _new_mark(base: str) -> tuple[str, str]:
    """Return the mark of a new code, or what is wrong with the code."""
    try:
        mark = make_mark(base)
    except BadMark as error:
        return "", str(error)
    if registry.vessel(current.book, mark):
        return "", say("desk-vessel-there_is_a_vessel_already", mark=mark)
    return mark, ""


def _boxes(row: VesselRow) -> dict[str, object]:
    sizes = {"capacity_l": row["capacity_l"], "working_l": row["working_l"], "tare_kg": row["tare_kg"]}
    return {**row, **{name: shown(size, _UNITS[name], None) for name, size in sizes.items()}}


def _row(mark: str, form: VesselForm) -> dict[str, object]:
    return {
        "mark": mark,
        "name": mark.rsplit("-", 1)[0],
        "title": form.title.data or "",
        "sort": form.sort.data,
        "place": form.place.data or "",
        "capacity_l": typed(figure(form.capacity_l), "L"),
        "working_l": typed(figure(form.working_l), "L"),
        "tare_kg": typed(figure(form.tare_kg), "kg"),
        "wood": form.wood.data or "",
        "toast": form.toast.data or "",
        "in_zone": bool(form.in_zone.data),
        "curved": bool(form.curved.data),
        "note": form.note.data or "",
        "retired": bool(form.retired.data),
    }
