"""A period on paper: the same rows as the page, in our own layout, with room to sign. No official form is copied."""

from __future__ import annotations

import io
from collections.abc import Sequence
from xml.sax.saxutils import escape

from reportlab.lib import colors
from reportlab.lib.pagesizes import A4
from reportlab.lib.styles import ParagraphStyle
from reportlab.lib.units import mm
from reportlab.pdfgen.canvas import Canvas
from reportlab.platypus import KeepTogether, Paragraph, SimpleDocTemplate, Spacer, Table, TableStyle
from reportlab.platypus.flowables import Flowable

from webapp.book.periods.known import Parts
from webapp.book.periods.periods import Account, Period
from webapp.book.periods.warnings import Notice
from webapp.book.periods.words import CAUTION
from webapp.desk.periods.rows import KNOWN, NO_PARTS, ROUNDED, rounding, rows_of, title_of
from webapp.labels.plan import FONT, FONT_BOLD, load_fonts, printable, shorten
from webapp.signed_heads import SignedHead
from webapp.signed_heads import shorten as shorten_digits

WIDTHS = (100 * mm, 30 * mm, 24 * mm, 26 * mm)
NAME_MOST = 120  # characters: a typed text without end would fill pages, or a row higher than its page
WORDS_MOST = 1000
GREY = colors.HexColor("#555555")


def paper(
    period: Period, house: str, printed: str, warned: list[Notice], asked: Sequence[str] = (),
    parts: Parts = NO_PARTS, signed: Sequence[SignedHead] = (),
) -> bytes:
    """Return the period as a PDF of A4 pages. printed: the local minute; asked: what was open at its closes;
    parts: how well its lines are known; signed: heads of the book as it was printed.
    """
    load_fonts()
    house = printable(house, NAME_MOST)
    story: list[Flowable] = [
        _text(f"{house}: pure alcohol, {period.name}", 15, bold=True),
        _text(_state(period), 9),
        _text(f"Litres of pure alcohol at 20 °C to 0.01; proof gallons to 0.1. {ROUNDED} {KNOWN}", 9),
        Spacer(1, 4 * mm),
    ]
    for account in period.accounts:
        story += _account(account, "", parts)
    if period.differs:
        story.append(_text("As now known, with what came to light since", 12, bold=True))
        for account in period.known:
            story += _account(account, " as now known", parts)
    story += [_text(one.words, 9) for one in warned]
    if asked:
        story.append(_text("Open when it was closed, and read by who closed it", 12, bold=True))
        story += [_text(one, 9) for one in asked]
    if signed:
        words = f"Heads of the book of {signed[0].time}, signed with the key {shorten_digits(signed[0].key)}. "
        story += [_text(f"{words}A book rewritten since has others: cellarslate verify --heads.", 8)]
        story += [_text(str(one.head), 7) for one in signed]
    story += [Spacer(1, 4 * mm), _text(CAUTION, 8), KeepTogether([Spacer(1, 14 * mm), _signature()])]
    out = io.BytesIO()
    document = SimpleDocTemplate(
        out, pagesize=A4, leftMargin=15 * mm, rightMargin=15 * mm, topMargin=15 * mm, bottomMargin=18 * mm,
        title=f"{house} {period.name}", author=house,
    )

    def foot(canvas: Canvas, _document: object) -> None:
        canvas.setFont(FONT, 8)
        canvas.setFillColor(GREY)
        words = f"{period.name} · printed {printed} · {house}"
        canvas.drawString(15 * mm, 10 * mm, shorten(words, FONT, 8, 150))
        canvas.drawRightString(A4[0] - 15 * mm, 10 * mm, f"page {canvas.getPageNumber()}")

    document.build(story, onFirstPage=foot, onLaterPages=foot)
    return out.getvalue()


def _account(account: Account, more: str, parts: Parts) -> list[Flowable]:
    cells: list[list[object]] = [[title_of(account.name) + more, "L pure alcohol", "proof gal", "± L (k = 2)"]]
    bold = [0]
    rows = rows_of(account, parts)
    for n, row in enumerate(rows, 1):
        if row.row in ("opening", "closing", "total_in", "total_out"):
            bold.append(n)
        words = escape(printable(row.words + (f", {row.about}" if row.about else ""), NAME_MOST))
        marks = f'<br/><font size="7" color="#555555">{escape(row.rules_words)}</font>' if row.rules else ""
        cells.append([Paragraph(words + marks, _style(9, n in bold)), row.litres, row.proof_gallons, row.off_by_l])
    table = Table(cells, WIDTHS, repeatRows=1)
    table.setStyle(TableStyle([
        ("FONT", (0, 0), (-1, -1), FONT, 9), ("ALIGN", (1, 0), (-1, -1), "RIGHT"), ("VALIGN", (0, 0), (-1, -1), "TOP"),
        ("LINEBELOW", (0, 0), (-1, -1), 0.3, colors.HexColor("#bbbbbb")), ("LINEBELOW", (0, 0), (-1, 0), 0.8, GREY),
        ("TOPPADDING", (0, 0), (-1, -1), 2), ("BOTTOMPADDING", (0, 0), (-1, -1), 3),
        *(("FONT", (0, n), (-1, n), FONT_BOLD, 9) for n in bold),
    ]))
    off = rounding(account, rows)
    return [table, *([_text(off, 8)] if off else []), Spacer(1, 6 * mm)]


def _state(period: Period) -> str:
    closed = period.closed
    if not closed:
        return "Open: figures may still change."
    signed = "; ".join(f"{one.month} closed by {one.person}, {one.signed_at} ({one.digest[:16]})" for one in closed)
    return f"{signed}." if period.is_closed else f"{signed}; the rest is open."


def _signature() -> Table:
    table = Table([["Date", "Name and title", "Signature"]], (40 * mm, 70 * mm, 70 * mm))
    table.setStyle(TableStyle([("FONT", (0, 0), (-1, -1), FONT, 8), ("LINEABOVE", (0, 0), (-1, 0), 0.6, GREY)]))
    return table


def _style(size: float, bold: bool = False) -> ParagraphStyle:
    return ParagraphStyle("plain", fontName=FONT_BOLD if bold else FONT, fontSize=size, leading=size * 1.3)


def _text(words: str, size: float, *, bold: bool = False) -> Paragraph:
    """Return a paragraph. What people typed is text in it: the markup of paragraphs is escaped."""
    return Paragraph(escape(printable(words, WORDS_MOST)), _style(size, bold))
