"""A file of labels as a form of the desk asks for it: on which layout or own size, as PDF or in ZPL."""

from __future__ import annotations

from typing import TypeVar

from flask import Response
from wtforms import StringField

from webapp.desk.forms import LayoutForm, figure
from webapp.kinds.as_form import pairs
from webapp.labels import LAYOUTS, Layout, own, zpl_of
from webapp.labels.dots import DPI, check_zpl
from webapp.trade.errors import NotANumber
from webapp.words.desk import say

OWN = "own"
ZPL = {f"zpl{dpi}": dpi for dpi in DPI}
Form = TypeVar("Form", bound=LayoutForm)


def with_choices(form: Form) -> Form:
    """Return the form with what can be chosen in it."""
    layouts = [*((name, layout.title) for name, layout in LAYOUTS.items()), (OWN, say("desk-labels-own_size"))]
    form.layout.choices = pairs(layouts)
    form.file.choices = pairs([("pdf", "PDF"), *((name, f"ZPL, {dpi} dpi") for name, dpi in ZPL.items())])
    return form


def layout_asked(form: LayoutForm) -> Layout:
    """Return the layout that was chosen; raise BadLayout where the own size is none."""
    if form.layout.data != OWN:
        return LAYOUTS[str(form.layout.data)]
    return own(_length(form.own_width), _length(form.own_height), _length(form.own_clear))


def _length(field: StringField) -> float | None:
    try:
        return figure(field)
    except NotANumber:
        return float("nan")  # out of every bound, which is what the layout says


def check_file(form: LayoutForm, count: int, layout: Layout) -> None:
    """Raise BadLayout where that file cannot hold so many labels, before any is drawn."""
    if form.file.data in ZPL:
        check_zpl(count, layout)


def file_answer(form: LayoutForm, pdf: bytes, layout: Layout, name: str) -> Response:
    """Return the labels as the file that was chosen."""
    dpi = ZPL.get(str(form.file.data))
    if dpi is None:
        about = {"Content-Disposition": f'inline; filename="{name}.pdf"'}
        return Response(pdf, mimetype="application/pdf", headers=about)
    about = {"Content-Disposition": f'attachment; filename="{name}.zpl"'}
    return Response(zpl_of(pdf, layout, dpi), mimetype="text/plain", headers=about)
