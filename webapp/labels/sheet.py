"""Labels to PDF: plans drawn on pages, the symbols as vector rectangles, a 50 mm ruler on each sheet."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from functools import partial
from io import BytesIO
from typing import TYPE_CHECKING

from webapp.labels.layouts import BadLayout, Layout
from webapp.labels.plan import (
    CAP_HEIGHT_EM,
    EDGE_MM,
    FONT,
    FONT_BOLD,
    POINT_MM,
    STRIP_PT,
    LabelItem,
    LabelPlan,
    load_fonts,
    plan_label,
    strip_height_mm,
)
from webapp.labels.symbol import QUIET_MODULES, Symbol
from webapp.words.desk import say

if TYPE_CHECKING:
    from reportlab.pdfgen.canvas import Canvas

mm = 1 / POINT_MM  # [pt], the unit of a page
LABELS_MAX = 5000
RULER_MM = 50
RULER_BAND_MM = 6.5  # The least margin that a ruler with its words fits in.


def render_labels(items: Iterable[LabelItem], layout: Layout, *, host: str | None = None, start_at: int = 0) -> bytes:
    """Return a PDF with one label an item, in order.

    Parameters
    ----------
    items : iterable of LabelItem
        What to print: 1 to 5,000 labels. A reprint is the same call with a few items. [labels]
    layout : Layout
        The page and its grid. [mm]
    host : str or None
        Host for the address on flat labels, with its port if it has one; None for bare marks. [text, 1 to 253]
    start_at : int
        The first free place on the first page, counted in rows from 0. [labels], 0 to labels_per_page - 1

    Returns
    -------
    pdf : bytes
        The document, at its true size: print it at 100 %, and check the ruler. [bytes]

    Raises
    ------
    BadLayout
        If the layout, the host or the start is wrong, or a mark does not fit. Nothing is drawn then.
    BadMark
        If a mark's check character is wrong.

    Source
    ------
    docs/labels.md, with the measured table.
    """
    items = list(items)
    _check(len(items), layout, start_at)
    plans = [(item, plan_label(item, layout, host)) for item in items]
    return draw_sheet([partial(_draw_label, item=item, plan=plan, layout=layout) for item, plan in plans], layout,
                      start_at=start_at)


def _check(count: int, layout: Layout, start_at: int) -> None:
    """Raise BadLayout where so many labels cannot be drawn from that place on."""
    layout.check()
    if not 1 <= count <= LABELS_MAX:
        raise BadLayout(say("paper-label-choose_1_to_labels_to", most=LABELS_MAX))
    if not 0 <= start_at < layout.labels_per_page:
        raise BadLayout(say("paper-label-this_page_has_labels_start", many=layout.labels_per_page))


def draw_sheet(draws: Sequence[Callable[[Canvas], None]], layout: Layout, *, start_at: int = 0) -> bytes:
    """Return a PDF of labels, each drawn in millimetres from its left edge, and up from its top edge."""
    from reportlab.pdfgen.canvas import Canvas  # loaded for the first print

    _check(len(draws), layout, start_at)
    load_fonts()
    buffer = BytesIO()
    canvas = Canvas(buffer, pagesize=(layout.page_width_mm * mm, layout.page_height_mm * mm), invariant=1)
    canvas.setTitle("Cellarslate labels")
    canvas.setViewerPreference("PrintScaling", "None")  # "Fit to page" would shrink the modules.
    for number, draw in enumerate(draws, start_at):
        place = number % layout.labels_per_page
        if number > start_at and place == 0:
            canvas.showPage()
        if layout.is_sheet and (number == start_at or place == 0):
            _draw_ruler(canvas, layout)
        left_mm, top_mm = layout.corner_mm(place)
        canvas.saveState()
        canvas.translate(left_mm * mm, (layout.page_height_mm - top_mm) * mm)
        canvas.scale(mm, mm)
        draw(canvas)
        canvas.restoreState()
    canvas.showPage()
    canvas.save()
    return buffer.getvalue()


def draw_symbol(canvas: Canvas, symbol: Symbol, module_mm: float, left_mm: float, top_mm: float) -> None:
    """Draw a symbol; the place is that of its quiet zone. One path: a renderer then leaves no hairlines between."""
    path = canvas.beginPath()
    left, top = left_mm + QUIET_MODULES * module_mm, top_mm + QUIET_MODULES * module_mm
    for x, y, width, height in symbol.rectangles():
        path.rect(left + x * module_mm, -(top + (y + height) * module_mm), width * module_mm, height * module_mm)
    canvas.drawPath(path, stroke=0, fill=1)


def _draw_label(canvas: Canvas, item: LabelItem, plan: LabelPlan, layout: Layout) -> None:
    draw_symbol(canvas, plan.symbol, plan.module_mm, plan.symbol_left_mm, plan.symbol_top_mm)
    baseline = -plan.text_top_mm
    for number, line in enumerate(plan.mark_lines):
        baseline -= plan.cap_height_mm * (1.28 if number else 1.0)
        canvas.setFont(FONT_BOLD, plan.cap_height_mm / CAP_HEIGHT_EM)
        canvas.drawString(plan.text_left_mm, baseline, line)
    baseline -= 0.8
    for line in plan.small_lines:
        baseline -= 1.2 * plan.small_pt * POINT_MM
        canvas.setFont(FONT, plan.small_pt * POINT_MM)
        canvas.drawString(plan.text_left_mm, baseline + 0.25 * plan.small_pt * POINT_MM, line)
    if item.standoff:
        _draw_strip(canvas, plan, layout)
    if layout.hole_mm:
        canvas.setLineWidth(0.2)
        canvas.circle(1.25 * layout.hole_mm, -layout.label_height_mm / 2, layout.hole_mm / 2, stroke=1, fill=0)


def _draw_strip(canvas: Canvas, plan: LabelPlan, layout: Layout) -> None:
    """Draw the words of a stand-off label under a broken line: it is known by its words, never by colour."""
    left = layout.hole_band_mm + EDGE_MM
    top = -layout.label_height_mm + strip_height_mm(len(plan.strip_lines))
    canvas.setLineWidth(0.35)
    canvas.setDash(2.0, 1.2)
    canvas.line(left, top - 0.2, layout.label_width_mm - EDGE_MM, top - 0.2)
    canvas.setDash()
    canvas.setFont(FONT_BOLD, STRIP_PT * POINT_MM)
    for number, line in enumerate(plan.strip_lines, 1):
        canvas.drawString(left, top - 0.5 - (1.2 * number - 0.25) * STRIP_PT * POINT_MM, line)


def _draw_ruler(canvas: Canvas, layout: Layout) -> None:
    """Draw a 50 mm ruler in the bottom, top or left margin; leave it out where none is wide enough."""
    used_mm = layout.margin_top_mm + (layout.rows - 1) * layout.pitch_y_mm + layout.label_height_mm
    canvas.saveState()
    if layout.page_height_mm - used_mm >= RULER_BAND_MM:
        canvas.translate(max(layout.margin_left_mm, 6.0) * mm, (layout.page_height_mm - used_mm - 5.0) * mm)
    elif layout.margin_top_mm >= RULER_BAND_MM:
        canvas.translate(
            max(layout.margin_left_mm, 6.0) * mm, (layout.page_height_mm - layout.margin_top_mm + 1.5) * mm
        )
    elif layout.margin_left_mm >= RULER_BAND_MM:
        canvas.translate((layout.margin_left_mm - 1.5) * mm, 20 * mm)
        canvas.rotate(90)
    else:
        canvas.restoreState()
        return
    canvas.scale(mm, mm)
    canvas.setLineWidth(0.2)
    canvas.line(0, 0, RULER_MM, 0)
    for tick in range(0, RULER_MM + 1, 5):
        canvas.line(tick, 0, tick, 2.5 if tick % 10 == 0 else 1.5)
    canvas.setFont(FONT, 8 * POINT_MM)
    canvas.drawString(RULER_MM + 2, 0.2, say("paper-label-ruler"))
    canvas.restoreState()
