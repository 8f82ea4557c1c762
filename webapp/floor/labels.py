"""One label to a file on the phone: made here, so that it needs a signal; the phone hands it on or keeps it."""

from __future__ import annotations

from flask import Response, current_app, request
from flask.typing import ResponseReturnValue

from webapp.access import current, needs
from webapp.access.errors import error_answer
from webapp.book.house import label_prints
from webapp.floor import bp
from webapp.labels import LAYOUTS, BadLayout, LabelItem, png_of, render_labels
from webapp.trade.marks import BadMark, parse_mark

LAYOUT = "roll-62x60"


@bp.get("/api/labels/<mark>.png")
@needs("floor")
def one_label(mark: str) -> ResponseReturnValue:
    """Send the label of a vessel as a picture of its true size, on `layout` or what is usual."""
    layout = LAYOUTS.get(request.args.get("layout", LAYOUT))
    if layout is None or layout.is_sheet:
        return error_answer(400, "Name a `layout` with one label: a roll or a tag.")
    try:
        wanted = parse_mark(mark)
    except BadMark as error:
        return error_answer(404, str(error))
    found = label_prints.find_labels(current.book, text=wanted, marks=[wanted])
    if not found:
        return error_answer(404, "The book has no such vessel in use. Look at the mark.")
    (row,) = found
    item = LabelItem(row["mark"], row["title"] or row["name"], row["stands"], curved=bool(row["curved"]))
    try:
        body = png_of(render_labels([item], layout, host=current_app.config["PUBLIC_HOST"]))
    except BadLayout as error:
        return error_answer(400, str(error))
    about = {"Content-Disposition": f'inline; filename="label-{wanted}.png"', "Cache-Control": "no-store"}
    return Response(body, mimetype="image/png", headers=about)
