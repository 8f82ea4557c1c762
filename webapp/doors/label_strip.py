"""Labels of the demo's vessels on the screen, to hold a phone to, and the same ones as a sheet to print."""

from __future__ import annotations

from dataclasses import dataclass

from flask import Response, current_app, render_template
from flask.typing import ResponseReturnValue
from markupsafe import Markup

from webapp.access import current
from webapp.book.house import registry
from webapp.book.record.store import Book
from webapp.doors import bp
from webapp.labels import LAYOUTS, LabelItem, render_labels
from webapp.labels.symbol import QUIET_MODULES, symbol_for
from webapp.trade.marks import make_mark

# Under the doors: one of each sort that a floor hand meets on a morning.
STRIP = ("F4", "S1", "C047", "T3")
ALL = ("F1", "F2", "F4", "S1", "R2", "T1", "T3", "C001", "C022", "C031", "C047", "FE01")
LAYOUT = "a4-2x7-99x38"


@dataclass(frozen=True, slots=True)
class ShownLabel:
    """One label on the screen: what is printed large, what small, and the symbol as SVG."""

    mark: str
    title: str
    place: str
    picture: Markup


def labels_of(book: Book, bases: tuple[str, ...]) -> list[ShownLabel]:
    """Return the labels of these vessels, in that order; one that the book has not is left out."""
    rows = [row for base in bases if (row := registry.vessel(book, make_mark(base)))]
    host = current_app.config["PUBLIC_HOST"]  # on this computer alone there is no address that a camera could open
    return [
        ShownLabel(row["mark"], row["title"] or row["name"], row["place"] or "", _draw(row["mark"], host))
        for row in rows
    ]


@bp.get("/labels")
def labels() -> ResponseReturnValue:
    """Show a wall of labels, large enough to be scanned from the screen."""
    return render_template("doors/labels.html", site=current.site, labels=labels_of(current.book, ALL))


@bp.get("/labels.pdf")
def labels_pdf() -> Response:
    """Send the same labels as a sheet to print and hang about the house."""
    rows = [row for base in ALL if (row := registry.vessel(current.book, make_mark(base)))]
    items = [
        LabelItem(row["mark"], row["title"] or row["name"], row["place"] or "", curved=bool(row["curved"]))
        for row in rows
    ]
    body = render_labels(items, LAYOUTS[LAYOUT], host=current_app.config["PUBLIC_HOST"])
    return Response(body, mimetype="application/pdf", headers={"Content-Disposition": 'inline; filename="labels.pdf"'})


def _draw(mark: str, host: str | None) -> Markup:
    symbol = next(iter(symbol_for(mark, host, curved=False)))
    side = symbol.modules_with_quiet
    path = "".join(
        f"M{left + QUIET_MODULES} {top + QUIET_MODULES}h{width}v{height}h-{width}z"
        for left, top, width, height in symbol.rectangles()
    )
    return Markup(  # noqa: S704 -- numbers only
        f'<svg viewBox="0 0 {side} {side}" role="img" aria-label="Symbol of {{}}" shape-rendering="crispEdges">'
        f'<path fill="#000" d="{path}"/></svg>'
    ).format(mark)
