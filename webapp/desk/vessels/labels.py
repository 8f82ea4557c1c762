"""Labels: pick vessels by place, by sort or by what is missing, pick what they are printed on, get a file."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from datetime import UTC, datetime

from flask import Response, abort, current_app, render_template, request
from flask.typing import ResponseReturnValue

from webapp.access import current, needs
from webapp.book.house import label_prints, places, registry
from webapp.book.house.label_prints import WHICH, Labelled
from webapp.desk.blueprint import bp
from webapp.desk.forms import LabelForm
from webapp.desk.labelfile import check_file, file_answer, layout_asked, with_choices
from webapp.labels import BadLayout, LabelItem, render_labels
from webapp.trade.marks import BadMark
from webapp.words.desk import say

LABELS_MOST = 1000
SHOWN_MOST = 500
FILTERS = ("which", "sort", "room", "q")
NO_PLACE = "-"  # stands for those without a place, in the address


@bp.get("/labels")
@needs("floor")
def labels_page() -> ResponseReturnValue:
    """Show the vessels to tick and the layouts to print on."""
    asked = {name: request.args.get(name, "") for name in FILTERS}
    found = _find(asked)
    missing = found if asked["which"] == "missing" else _find({"which": "missing"})
    return render_template(
        "desk/vessels/labels.html", form=_form(), rows=found[:SHOWN_MOST], count=len(found), asked=asked,
        missing=len(missing), areas=places.rooms_of(places.known_places(current.book)), no_place=NO_PLACE, which=WHICH,
        sorts=registry.SORTS, most=LABELS_MOST, words_of=label_prints.words_of,
    )


def _find(asked: Mapping[str, str], marks: Iterable[str] | None = None) -> list[Labelled]:
    room = asked.get("room", "")
    return label_prints.find_labels(
        current.book, which=asked.get("which", ""), sort=asked.get("sort", ""), text=asked.get("q", "")[:40].strip(),
        room=("" if room == NO_PLACE else room) if room else None, marks=marks,
    )


def _form() -> LabelForm:
    return with_choices(LabelForm())


@bp.post("/labels.pdf")
@needs("floor")
def labels_pdf() -> Response:
    """Send the labels that are ticked, or all that the page shows, as PDF or ZPL; and note that they were printed."""
    form = _form()
    marks = request.form.getlist("mark")[:LABELS_MOST]
    is_all = request.form.get("every") == "1"
    if not (marks or is_all) or not form.validate():
        abort(400, say("desk-labels-tick_at_least_one_vessel"))
    asked = {name: request.form.get(name, "") for name in FILTERS}
    rows = _find(asked)[:LABELS_MOST] if is_all else _find({}, marks)
    host = (current_app.config["PUBLIC_HOST"] or request.host) if form.with_address.data else None
    start_at = (form.start_at.data or 1) - 1
    items = _items(rows, is_standoff=bool(form.standoff.data))
    try:
        layout = layout_asked(form)
        check_file(form, len(items), layout)
        answer = file_answer(form, render_labels(items, layout, host=host, start_at=start_at), layout, "labels")
    except (BadLayout, BadMark) as error:
        abort(400, str(error))
    assert current.person
    label_prints.note_prints(current.book, rows, by=current.person["code"], now=datetime.now(UTC))
    return answer


def _items(rows: Sequence[Labelled], *, is_standoff: bool) -> list[LabelItem]:
    """Return the labels to print: for a vessel inside a fire zone also its stand-off label, where that is wanted."""
    items = []
    for row in rows:
        about = {"name": row["title"] or row["name"], "place": row["stands"]}
        items.append(LabelItem(mark=row["mark"], **about, curved=bool(row["curved"]), standoff=False))
        if row["in_zone"] and is_standoff:
            items.append(LabelItem(mark=row["mark"], **about, curved=False, standoff=True))
    return items
