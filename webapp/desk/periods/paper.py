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
from webapp.words.desk import say

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
        _text(say("paper-period-pure_alcohol", house=house, name=period.name), 15, bold=True),
        _text(_state(period), 9),
        _text(say("paper-period-litres_of_pure_alcohol_at", what=ROUNDED, what2=KNOWN), 9),
        Spacer(1, 4 * mm),
    ]
    for account in period.accounts:
        story += _account(account, "", parts)
    if period.differs:
        story.append(_text(say("paper-period-as_now_known_with_what"), 12, bold=True))
        for account in period.known:
            story += _account(account, (" " + say("desk-common-as_now_known2")), parts)
    story += [_text(one.words, 9) for one in warned]
    if asked:
        story.append(_text(say("paper-period-open_when_it_was_closed"), 12, bold=True))
        story += [_text(one, 9) for one in asked]
    if signed:
        words = (say(
            "paper-period-heads_of_the_book_of", signed=signed[0].time, shorten_digits=shorten_digits(signed[0].key),
        ) + " ")
        story += [_text(say("paper-period-a_book_rewritten_since_has", words=words), 8)]
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
        words = say("paper-period-printed", name=period.name, printed=printed, house=house)
        canvas.drawString(15 * mm, 10 * mm, shorten(words, FONT, 8, 150))
        canvas.drawRightString(A4[0] - 15 * mm, 10 * mm, say("paper-period-page", page=canvas.getPageNumber()))

    document.build(story, onFirstPage=foot, onLaterPages=foot)
    return out.getvalue()


def _account(account: Account, more: str, parts: Parts) -> list[Flowable]:
    cells: list[list[object]] = [[
        title_of(account.name) + more, say("desk-common-l_pure_alcohol"), say("desk-common-proof_gal2"),
        "± L (k = 2)",
    ]]
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
        return say("desk-common-open_figures_may_still_change")
    signed = "; ".join(f"{one.month} closed by {one.person}, {one.signed_at} ({one.digest[:16]})" for one in closed)
    return f"{signed}." if period.is_closed else say("paper-period-the_rest_is_open", signed=signed)


def _signature() -> Table:
    table = Table(
        [[say("paper-period-date"), say("paper-period-name_and_title"), say("paper-period-signature")]],
        (40 * mm, 70 * mm, 70 * mm),
    )
    table.setStyle(TableStyle([("FONT", (0, 0), (-1, -1), FONT, 8), ("LINEABOVE", (0, 0), (-1, 0), 0.6, GREY)]))
    return table


def _style(size: float, bold: bool = False) -> ParagraphStyle:
    return ParagraphStyle("plain", fontName=FONT_BOLD if bold else FONT, fontSize=size, leading=size * 1.3)


def _text(words: str, size: float, *, bold: bool = False) -> Paragraph:
    """Return a paragraph. What people typed is text in it: the markup of paragraphs is escaped."""
    return Paragraph(escape(printable(words, WORDS_MOST)), _style(size, bold))
