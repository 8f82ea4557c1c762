"""Labels for cases of bottles: its number and lot in large print, what is in it, a symbol to the lot's trace.

They are for the store, for whoever takes goods in, and for an officer; what the law wants on bottles and cases is
another label, and each says so.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from functools import lru_cache, partial
from typing import TYPE_CHECKING

import qrcode
from qrcode.constants import ERROR_CORRECT_M
from qrcode.exceptions import DataOverflowError

from webapp.labels.layouts import BadLayout, Layout
from webapp.labels.plan import EDGE_MM, FONT, FONT_BOLD, POINT_MM, load_fonts, printable, shorten, text_width_mm, wrap
from webapp.labels.sheet import draw_sheet, draw_symbol
from webapp.labels.symbol import Symbol
from webapp.words.desk import Later, say

if TYPE_CHECKING:
    from reportlab.pdfgen.canvas import Canvas

NOT_THE_LAW = Later("paper-case-not_the_label_of_the_law")
VERSION_MAX = 10
MODULE_MM_MIN, MODULE_MM_MAX = 0.45, 1.6  # read in the hand, not across a cellar
SYMBOL_SHARE = 0.5  # of the longer side, so that the print has the rest
LEADING = 1.22
TEXT_MOST = 80
# [pt] of the case's number, its lot, what is in it, and the foot; the largest of the factors that fits is taken.
SIZES_PT = (26.0, 17.0, 11.0, 6.5)
FACTORS = (2.4, 2.0, 1.7, 1.45, 1.2, 1.0, 0.85, 0.72, 0.62)
FOOT_PT_MIN = 6.0
LARGE_PT_MIN = 8.0  # to which a long number or lot may shrink on the smallest label


@dataclass(frozen=True)
class CaseLabel:
    """One label to print: its lot, its case, what is in it, and the address of the lot's trace."""

    lot: str
    case: str
    facts: tuple[str, ...]
    address: str


@dataclass(frozen=True)
class Line:
    """A line of print. [pt]"""

    text: str
    font: str
    size_pt: float


@dataclass(frozen=True)
class CasePlan:
    """A label worked out. Lengths in mm from the label's left and top edge."""

    symbol: Symbol
    module_mm: float
    symbol_left_mm: float
    symbol_top_mm: float
    lines: tuple[Line, ...]
    text_left_mm: float
    text_top_mm: float


def render_cases(labels: Iterable[CaseLabel], layout: Layout, *, start_at: int = 0) -> bytes:
    """Return a PDF with one label a case, in order; raise BadLayout with what to change, before anything is drawn."""
    plans = [plan_case(label, layout) for label in labels]
    return draw_sheet([partial(_draw, plan=plan) for plan in plans], layout, start_at=start_at)


def plan_case(label: CaseLabel, layout: Layout) -> CasePlan:
    """Return the places of symbol and print: beside each other on a wide label, else the print below."""
    layout.check()
    load_fonts()
    symbol = symbol_of_address(label.address)
    left, height = layout.hole_band_mm, layout.label_height_mm
    width = layout.label_width_mm - left
    is_beside = width > height
    side = min(height, width, SYMBOL_SHARE * max(width, height))
    module = min(side / symbol.modules_with_quiet, MODULE_MM_MAX)
    side = module * symbol.modules_with_quiet
    if is_beside:
        room = (width - side - EDGE_MM, height - 2 * EDGE_MM)
        places = left, (height - side) / 2, left + side
    else:
        room = (width - 2 * EDGE_MM, height - side - EDGE_MM)
        places = left + (width - side) / 2, 0.0, left + EDGE_MM
    lines = next((made for factor in FACTORS if (made := _lines(label, factor, *room))), None)
    if module < MODULE_MM_MIN or lines is None:
        raise BadLayout(say("paper-case-does_not_fit", wide=f"{layout.label_width_mm:g}", high=f"{height:g}"))
    top = (height - _high(lines)) / 2 if is_beside else side
    return CasePlan(symbol, module, places[0], places[1], lines, places[2], top)


@lru_cache(maxsize=64)
def symbol_of_address(address: str) -> Symbol:
    """Return the smallest symbol of an address at level M; raise BadLayout where it is too long for a label."""
    code = qrcode.QRCode(error_correction=ERROR_CORRECT_M, border=0)
    code.add_data(address)
    try:
        code.make(fit=True)
    except (DataOverflowError, ValueError):  # the package raises either, by how much too long it is
        code.version = VERSION_MAX + 1
    if code.version > VERSION_MAX:
        raise BadLayout(say("paper-case-address_too_long"))
    rows = tuple(tuple(bool(cell) for cell in row) for row in code.get_matrix())
    return Symbol(address, code.version, "M", rows)


def _lines(label: CaseLabel, factor: float, room_mm: float, high_mm: float) -> tuple[Line, ...] | None:
    """Return the print in sizes of that factor, or None where it does not fit. Number and lot are never cut short."""
    case, lot, text, foot = (size * factor for size in SIZES_PT)
    foot = min(max(foot, FOOT_PT_MIN), 9.0)
    is_smallest = factor == FACTORS[-1]
    large = []
    for words, size in ((printable(label.case, TEXT_MOST), case), (printable(label.lot, TEXT_MOST), lot)):
        fits = size * min(1.0, room_mm / max(text_width_mm(words, FONT_BOLD, size * POINT_MM), 0.01))
        if fits < (LARGE_PT_MIN if is_smallest else size):
            return None
        large.append(Line(words, FONT_BOLD, fits))
    facts = [Line(shorten(printable(fact, TEXT_MOST), FONT, text, room_mm), FONT, text) for fact in label.facts if fact]
    feet = [Line(words, FONT, foot) for words in wrap(str(NOT_THE_LAW), FONT, foot, room_mm)]
    lines = (*large, *facts, *feet)
    if _high(lines) > high_mm or (not is_smallest and any(line.text.endswith("…") for line in facts)):
        return None
    return lines


def _high(lines: Iterable[Line]) -> float:
    """Return the height of lines. [mm]"""
    return sum(LEADING * line.size_pt * POINT_MM for line in lines)


def _draw(canvas: Canvas, plan: CasePlan) -> None:
    draw_symbol(canvas, plan.symbol, plan.module_mm, plan.symbol_left_mm, plan.symbol_top_mm)
    baseline = -plan.text_top_mm
    for line in plan.lines:
        high = line.size_pt * POINT_MM
        baseline -= LEADING * high
        canvas.setFont(line.font, high)
        canvas.drawString(plan.text_left_mm, baseline + 0.28 * high, line.text)
