"""How a paper looks: one design for all, in the type of the product, on A4 or US letter. Knows nothing of a book."""

from __future__ import annotations

import io
from collections.abc import Callable, Iterable, Sequence
from typing import Any, TypeAlias
from xml.sax.saxutils import escape

from reportlab.lib.pagesizes import A4, LETTER
from reportlab.lib.styles import ParagraphStyle
from reportlab.lib.units import mm
from reportlab.pdfgen.canvas import Canvas
from reportlab.platypus import CondPageBreak, KeepTogether, Paragraph, SimpleDocTemplate, Spacer, Table, TableStyle
from reportlab.platypus.flowables import Flowable

from webapp.desk.paper.cautions import FIRST
from webapp.desk.paper.imprint import Imprint
from webapp.desk.paper.shapes import COPPER, DUST, INK, RULE, TINT, Code, Sign
from webapp.labels.plan import FONT, FONT_BOLD, load_fonts, printable, shorten
from webapp.words.desk import say

SIDE, TOP, FOOT = 16 * mm, 24 * mm, 19 * mm
QR_SIDE = 21 * mm
PAD = 6  # [pt], by which the frame of a template stands in from its margins
WORDS_MOST = 1_000  # characters: a typed text without end would fill pages
CELL_MOST = 160
HIGH_MOST = 44  # in a row of one height, which holds two lines
ROWS_MOST = 1_500
Cell: TypeAlias = str | Flowable


class Paper:
    """One paper: what is put on it comes in its order; `render` makes the PDF."""

    def __init__(self, title: str, about: str, imprint: Imprint, *, code: bool = True) -> None:
        load_fonts()
        self._imprint, self._title = imprint, printable(title, CELL_MOST)
        self.size = LETTER if imprint.is_letter else A4
        self.width = self.size[0] - 2 * SIDE
        head = [text(title, 19, bold=True), *([Spacer(1, 1.5 * mm), text(about, 10, DUST)] if about else [])]
        if code:
            side = [Code(imprint.address, QR_SIDE), text(say("paper-press-in_the_book"), 6.5, DUST)]
            top = Table([[head, side]], (self.width - QR_SIDE - 4 * mm, QR_SIDE + 4 * mm))
            top.setStyle(
                TableStyle(
                    [("VALIGN", (0, 0), (-1, -1), "TOP"), *_no_padding(), ("LEFTPADDING", (1, 0), (1, 0), 4 * mm)]
                )
            )
            self._story: list[Flowable] = [top, Spacer(1, 2 * mm)]
        else:
            self._story = [*head, Spacer(1, 4 * mm)]

    def put(self, *parts: Flowable) -> None:
        """Put flowables on the paper."""
        self._story += parts

    def heading(self, words: str, room: float = 28 * mm) -> None:
        """Begin a section; where less than `room` [pt] is left, on a new page."""
        self._story += [CondPageBreak(room), Spacer(1, 4 * mm), text(words, 12.5, bold=True), Spacer(1, 1.5 * mm)]

    def say(self, words: str, *, quiet: bool = False) -> None:
        """Put a paragraph on the paper."""
        self._story += [text(words, 8.5 if quiet else 10, DUST if quiet else INK), Spacer(1, 1.5 * mm)]

    def facts(self, pairs: Iterable[tuple[str, str]], columns: int = 3) -> None:
        """Put facts in columns: a small label over what it is. Those that say nothing are left out."""
        cells: list[Cell] = [[text(label, 7.5, DUST), text(said, 10.5, bold=True)] for label, said in pairs if said]
        if not cells:
            return
        cells += [""] * (-len(cells) % columns)
        rows = [cells[at : at + columns] for at in range(0, len(cells), columns)]
        table = Table(rows, [self.width / columns] * columns)
        table.setStyle(
            TableStyle(
                [
                    ("VALIGN", (0, 0), (-1, -1), "TOP"),
                    *_no_padding(),
                    ("BOTTOMPADDING", (0, 0), (-1, -1), 2.5 * mm),
                    ("RIGHTPADDING", (0, 0), (-1, -1), 3 * mm),
                ]
            )
        )
        self._story += [table]

    def table(
        self,
        heads: Sequence[str],
        rows: Sequence[Sequence[Cell]],
        widths: Sequence[float],
        *,
        numbers: str = "",
        bold: Iterable[int] = (),
        empty: str = "",
        high: float | None = None,
    ) -> None:
        """Put a table on the paper.

        `widths` are shares; `numbers` has a character for each column, `r` where it holds figures; `bold` are rows;
        `high` is the least height of a row that is written in. [pt]
        """
        if not rows:
            self.say(empty or say("desk-common-none2"), quiet=True)
            return
        kept = rows[:ROWS_MOST]
        strong = set(bold)
        right = {n for n, sign in enumerate(numbers) if sign == "r"}
        cells: list[list[Any]] = [[text(head, 7.5, DUST, is_right=n in right) for n, head in enumerate(heads)]]
        for at, row in enumerate(kept):
            cells.append(
                [
                    cell
                    if isinstance(cell, Flowable)
                    else text(cell, 9, bold=at in strong, most=HIGH_MOST if high else CELL_MOST, is_right=n in right)
                    for n, cell in enumerate(row)
                ]
            )
        whole = sum(widths)
        heights = [None, *([high] * len(kept))] if high else None
        table = Table(cells, [self.width * one / whole for one in widths], heights, repeatRows=1)
        table.setStyle(
            TableStyle(
                [
                    ("VALIGN", (0, 0), (-1, -1), "MIDDLE" if high else "TOP"),
                    ("LEFTPADDING", (0, 0), (-1, -1), 1.2 * mm),
                    ("RIGHTPADDING", (0, 0), (-1, -1), 1.2 * mm),
                    ("TOPPADDING", (0, 0), (-1, -1), 1.1 * mm),
                    ("BOTTOMPADDING", (0, 0), (-1, -1), 1.3 * mm),
                    ("LINEBELOW", (0, 0), (-1, -1), 0.4, RULE),
                    ("LINEBELOW", (0, 0), (-1, 0), 0.8, INK),
                    ("VALIGN", (0, 0), (-1, 0), "BOTTOM"),
                    ("LEFTPADDING", (0, 0), (0, -1), 0),
                    # Words that follow figures stand apart from them.
                    *(("LEFTPADDING", (n + 1, 0), (n + 1, -1), 4 * mm) for n in right if n + 1 not in right),
                    *([("INNERGRID", (0, 1), (-1, -1), 0.4, RULE)] if high else []),
                ]
            )
        )
        self._story += [table, Spacer(1, 1 * mm)]
        if len(rows) > len(kept):
            self.say(f"The first {len(kept)} of {len(rows)} are printed.", quiet=True)

    def questions(self, asked: Sequence[tuple[str, str]]) -> None:
        """Print open questions, (weight, words) each, as open; or that there is none."""
        self.heading(say("paper-press-still_open") if asked else say("paper-press-open_questions"))
        if not asked:
            self.say("The book asks nothing about this.", quiet=True)
            return
        rows = [[Sign(weight), text(weight, 9, bold=True), text(words, 9.5)] for weight, words in asked]
        table = Table(rows, (7 * mm, 12 * mm, self.width - 19 * mm))
        table.setStyle(
            TableStyle(
                [
                    ("VALIGN", (0, 0), (-1, -1), "TOP"),
                    ("LINEBEFORE", (0, 0), (0, -1), 2, COPPER),
                    ("TOPPADDING", (0, 0), (0, -1), 1.7 * mm),
                    ("RIGHTPADDING", (0, 0), (1, -1), 0),
                    ("BACKGROUND", (0, 0), (-1, -1), TINT),
                    ("BOTTOMPADDING", (0, 0), (-1, -1), 1.5 * mm),
                ]
            )
        )
        self._story += [
            table,
            Spacer(1, 1 * mm),
            text(say("paper-press-these_are_not_answered_what"), 8.5, DUST),
        ]

    def cautions(self, *words: str) -> None:
        """Print cautions in a frame, the site's own rules first."""
        parts = [text(say("paper-press-cautions"), 9, bold=True), *(text(one, 8.5) for one in (*words, FIRST))]
        frame = Table([[parts]], [self.width])
        frame.setStyle(
            TableStyle(
                [
                    ("BOX", (0, 0), (-1, -1), 0.8, INK),
                    ("LEFTPADDING", (0, 0), (-1, -1), 3 * mm),
                    ("RIGHTPADDING", (0, 0), (-1, -1), 3 * mm),
                    ("TOPPADDING", (0, 0), (-1, -1), 1.5 * mm),
                    ("BOTTOMPADDING", (0, 0), (-1, -1), 2.5 * mm),
                ]
            )
        )
        self._story += [Spacer(1, 3 * mm), frame, Spacer(1, 2 * mm)]

    def signatures(self, *roles: str) -> None:
        """Leave room for people to sign: name, signature, date and time for each role. They stand together."""
        heads = (say("paper-press-name_in_capitals"), say("paper-press-signature"), say("paper-press-date_and_time"))
        rows: list[list[Cell]] = [["", *(cell for head in heads for cell in (text(head, 7.5, DUST), ""))]]
        rows += [[text(role, 8.5), *[""] * 6] for role in roles]
        table = Table(
            rows,
            [self.width * one for one in (0.19, 0.25, 0.02, 0.31, 0.02, 0.19, 0.02)],
            [None, *([12 * mm] * len(roles))],
        )
        lines = [("LINEBELOW", (column, 1), (column, -1), 0.8, INK) for column in (1, 3, 5)]
        table.setStyle(TableStyle([("VALIGN", (0, 0), (-1, -1), "BOTTOM"), *lines, *_no_padding()]))
        self._story += [KeepTogether([Spacer(1, 7 * mm), table])]

    def blanks(self, *labels: str) -> None:
        """Leave room to write what these labels ask for, side by side."""
        cells = [[cell for label in labels for cell in (text(label, 7.5, DUST), "")]]
        share = self.width / len(labels)
        table = Table(cells, [share - 5 * mm, 5 * mm] * len(labels), [11 * mm])
        lines = [("LINEBELOW", (2 * n, 0), (2 * n, 0), 0.8, INK) for n in range(len(labels))]
        table.setStyle(TableStyle([("VALIGN", (0, 0), (-1, -1), "TOP"), *lines, *_no_padding()]))
        self._story += [table, Spacer(1, 2 * mm)]

    def part(self, words: str) -> None:
        """Name a part within a section."""
        self._story += [CondPageBreak(20 * mm), Spacer(1, 1.5 * mm), text(words, 9.5, COPPER, bold=True)]

    def render(self) -> bytes:
        """Return the PDF. Every page says the house, when and by whom it was printed, the book's state, page n of m."""
        out = io.BytesIO()
        said, house = self._imprint, printable(self._imprint.house, CELL_MOST)
        document = SimpleDocTemplate(
            out,
            pagesize=self.size,
            leftMargin=SIDE - PAD,
            rightMargin=SIDE - PAD,
            topMargin=TOP,
            bottomMargin=FOOT,
            title=self._title,
            author=house,
        )

        def frame(canvas: Canvas, number: int, of: int) -> None:
            width, height = self.size
            canvas.setFillColor(INK)
            canvas.setFont(FONT_BOLD, 9)
            canvas.drawString(SIDE, height - 15 * mm, shorten(house, FONT_BOLD, 9, 95))
            canvas.setFont(FONT, 9)
            canvas.setFillColor(DUST)
            canvas.drawRightString(width - SIDE, height - 15 * mm, shorten(self._title, FONT, 9, 75))
            canvas.setStrokeColor(COPPER)
            canvas.setLineWidth(1.4)
            canvas.line(SIDE, height - 17.5 * mm, SIDE + 12 * mm, height - 17.5 * mm)
            canvas.setStrokeColor(RULE)
            canvas.setLineWidth(0.5)
            canvas.line(SIDE + 12 * mm, height - 17.5 * mm, width - SIDE, height - 17.5 * mm)
            canvas.line(SIDE, 14.5 * mm, width - SIDE, 14.5 * mm)
            canvas.setFont(FONT, 7.5)
            words = say(
                "paper-press-printed_by", printed=said.printed, printable=printable(said.by, 60), book=said.book,
            )
            canvas.drawString(SIDE, 10.5 * mm, shorten(words, FONT, 7.5, (self.size[0] - 2 * SIDE) / mm - 24))
            canvas.drawRightString(width - SIDE, 10.5 * mm, say("paper-press-page_of", number=number, of=of))

        document.build(self._story, canvasmaker=_counted(frame))
        return out.getvalue()


def _counted(frame: Callable[[Canvas, int, int], None]) -> type[Canvas]:
    """Return a canvas that draws the frame of every page when all are there, so that each can say how many they are."""

    class Counted(Canvas):
        def __init__(self, *args: Any, **more: Any) -> None:
            super().__init__(*args, **more)
            self._kept: list[dict[str, Any]] = []

        def showPage(self) -> None:  # noqa: N802  # reportlab's name
            self._kept.append(dict(self.__dict__))
            self._startPage()

        def save(self) -> None:
            for number, page in enumerate(self._kept, 1):
                self.__dict__.update(page)
                frame(self, number, len(self._kept))
                super().showPage()
            super().save()

    return Counted


def text(
    words: str, size: float, colour: Any = INK, *, bold: bool = False, most: int = WORDS_MOST, is_right: bool = False
) -> Paragraph:
    """Return a paragraph. What people typed is text in it: the markup of paragraphs is escaped."""
    style = ParagraphStyle(
        "plain",
        fontName=FONT_BOLD if bold else FONT,
        fontSize=size,
        leading=size * 1.28,
        textColor=colour,
        alignment=2 if is_right else 0,
        splitLongWords=1,
    )
    return Paragraph(escape(printable(str(words), most)), style)


def _no_padding() -> list[tuple[str, tuple[int, int], tuple[int, int], float]]:
    return [(f"{side}PADDING", (0, 0), (-1, -1), 0.0) for side in ("LEFT", "RIGHT", "TOP", "BOTTOM")]
