"""Labels: pick vessels, pick what they are printed on, get a PDF."""

from __future__ import annotations

from flask import Response, abort, current_app, render_template, request
from flask.typing import ResponseReturnValue

from webapp.access import current, needs
from webapp.book.house import registry
from webapp.desk.blueprint import bp
from webapp.desk.forms import LabelForm
from webapp.kinds.as_form import pairs
from webapp.labels import LAYOUTS, BadLayout, LabelItem, render_labels
from webapp.trade.marks import BadMark

LABELS_MOST = 1000


@bp.get("/labels")
@needs("floor")
def labels_page() -> ResponseReturnValue:
    """Show the vessels to tick and the layouts to print on."""
    sort = request.args.get("sort") or None
    form = _form()
    rows = registry.find_vessels(current.book, sort=sort, text=request.args.get("q", ""), limit=500)
    return render_template("desk/vessels/labels.html", form=form, rows=rows, sort=sort, sorts=registry.SORTS)


def _form() -> LabelForm:
    form = LabelForm()
    form.layout.choices = pairs((name, layout.title) for name, layout in LAYOUTS.items())
    return form


@bp.post("/labels.pdf")
@needs("floor")
def labels_pdf() -> Response:
    """Send the ticked labels as a PDF."""
    form = _form()
    marks = request.form.getlist("mark")[:LABELS_MOST]
    if not marks or not form.validate():
        abort(400, "Tick at least one vessel, and pick what the labels are printed on.")
    rows = [row for mark in marks if (row := registry.vessel(current.book, mark))]
    items = []
    for row in rows:
        about = {"name": row["title"] or row["name"], "place": row["place"] or ""}
        curved = bool(row["curved"])
        items.append(LabelItem(mark=row["mark"], **about, curved=curved, standoff=False))
        if row["in_zone"] and form.standoff.data:
            items.append(LabelItem(mark=row["mark"], **about, curved=False, standoff=True))
    host = (current_app.config["PUBLIC_HOST"] or request.host) if form.with_address.data else None
    start_at = (form.start_at.data or 1) - 1
    try:
        body = render_labels(items, LAYOUTS[str(form.layout.data)], host=host, start_at=start_at)
    except (BadLayout, BadMark) as error:
        abort(400, str(error))
    return Response(body, mimetype="application/pdf", headers={"Content-Disposition": 'inline; filename="labels.pdf"'})
