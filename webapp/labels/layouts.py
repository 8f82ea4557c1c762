"""Layouts: the page and the grid of labels on it. The ones given are named by their dimensions alone."""

from dataclasses import dataclass

from webapp.words.desk import say

OWN_MM = (20.0, 300.0)  # the shortest and longest side of an own size
OWN_CLEAR_MM_MAX = 8.0
PAGE_MM_MAX = 1200.0
TOLERANCE_MM = 0.05  # Two makers round the same inch differently; less than a printer can hold.


class BadLayout(ValueError):
    """A layout, or a label on it, that cannot be printed. `str(error)` says what to change."""


@dataclass(frozen=True)
class Layout:
    """A page with a grid of labels. Lengths are millimetres; a label that is its own page has one column and one row.

    `pitch` is the distance from one label's left (top) edge to the next one's. `hole_mm` is the diameter of a hole at
    the middle of the left edge of a tag: nothing is printed there, and `hole_mm` more on its right. `along` says that
    the label's width lies along the roll, so that a printer that is sent dots gets them turned.
    """

    title: str
    page_width_mm: float
    page_height_mm: float
    label_width_mm: float
    label_height_mm: float
    columns: int = 1
    rows: int = 1
    margin_left_mm: float = 0.0
    margin_top_mm: float = 0.0
    pitch_x_mm: float = 0.0
    pitch_y_mm: float = 0.0
    hole_mm: float = 0.0
    along: bool = False

    @property
    def labels_per_page(self) -> int:
        return self.columns * self.rows

    @property
    def is_sheet(self) -> bool:
        return self.labels_per_page > 1

    @property
    def hole_band_mm(self) -> float:
        """The width at the left edge that a hole keeps free of print. [mm]"""
        return 2.5 * self.hole_mm

    def check(self) -> None:
        """Raise BadLayout with what to change, if the labels do not fit the page or each other."""
        lengths = (self.page_width_mm, self.page_height_mm, self.label_width_mm, self.label_height_mm)
        # Written so that not-a-number fails too.
        if not all(0 < length <= PAGE_MM_MAX for length in lengths):
            raise BadLayout(f"Give page and label sizes in millimetres, above 0 and up to {PAGE_MM_MAX:.0f}.")
        if not (1 <= self.columns <= 50 and 1 <= self.rows <= 100):
            raise BadLayout("Give 1 to 50 columns and 1 to 100 rows.")
        if not (self.margin_left_mm >= 0 and self.margin_top_mm >= 0 and 0 <= self.hole_mm <= 20):
            raise BadLayout("Margins cannot be below 0, and a hole is at most 20 mm wide.")
        _check_line(
            "across", self.columns, self.margin_left_mm, self.pitch_x_mm, self.label_width_mm, self.page_width_mm
        )
        _check_line("down", self.rows, self.margin_top_mm, self.pitch_y_mm, self.label_height_mm, self.page_height_mm)

    def corner_mm(self, place: int) -> tuple[float, float]:
        """Return the left and top edge of the label at a place on the page, counted in rows from 0. [mm]"""
        row, column = divmod(place, self.columns)
        return self.margin_left_mm + column * self.pitch_x_mm, self.margin_top_mm + row * self.pitch_y_mm


def _check_line(
    direction: str, count: int, margin_mm: float, pitch_mm: float, label_mm: float, page_mm: float
) -> None:
    """Raise BadLayout if a row or column of labels overlaps or leaves the page."""
    if count > 1 and not pitch_mm >= label_mm - TOLERANCE_MM:
        raise BadLayout(
            f"The labels overlap {direction} the page: the pitch is {pitch_mm:g} mm and a label is {label_mm:g} mm. "
            "Make the pitch at least as long as the label."
        )
    needed_mm = margin_mm + label_mm + (count - 1) * pitch_mm
    if not needed_mm <= page_mm + TOLERANCE_MM:
        raise BadLayout(
            f"The labels need {needed_mm:.1f} mm {direction} the page, which has {page_mm:g} mm. "
            "Check the margin, the pitch and the number of labels."
        )


def roll(width_mm: float, height_mm: float, *, along: bool = False) -> Layout:
    """Return the layout for a roll printer: one label a page. `along`: the roll is as wide as the label is high."""
    return Layout(f"Roll, {width_mm:g} x {height_mm:g} mm", width_mm, height_mm, width_mm, height_mm, along=along)


def own(width_mm: float | None, height_mm: float | None, clear_mm: float | None = None) -> Layout:
    """Return the layout of a house's own label: its size, and what stays clear of print at each edge for the printer.

    Raises BadLayout where a length is missing or outside of its bounds.
    """
    low, high = OWN_MM
    sides, clear = (width_mm or 0.0, height_mm or 0.0), clear_mm or 0.0
    # Written so that not-a-number fails too.
    if not (all(low <= side <= high for side in sides) and 0 <= clear <= OWN_CLEAR_MM_MAX):
        raise BadLayout(
            say("paper-label-own_size_is", low=f"{low:g}", high=f"{high:g}", clear=f"{OWN_CLEAR_MM_MAX:g}")
        )
    width, height = (round(side - 2 * clear, 3) for side in sides)
    return Layout(
        f"{sides[0]:g} x {sides[1]:g} mm", *sides, width, height, margin_left_mm=clear, margin_top_mm=clear
    )


def tag(width_mm: float, height_mm: float, hole_mm: float) -> Layout:
    """Return the layout of a tag with a hole at the middle of its left edge, one a page."""
    title = f"Tag, {width_mm:g} x {height_mm:g} mm, {hole_mm:g} mm hole"
    return Layout(title, width_mm, height_mm, width_mm, height_mm, hole_mm=hole_mm)


def _centred(
    paper: str,
    page_mm: tuple[float, float],
    grid: tuple[int, int],
    label_mm: tuple[float, float],
    gap_mm: float,
) -> Layout:
    """Return a sheet of labels centred on its page, with a gap between columns and none between rows."""
    (width, height), (columns, rows) = label_mm, grid
    return Layout(
        f"{paper}, {columns} x {rows}, {width:g} x {height:g} mm",
        *page_mm,
        width,
        height,
        columns,
        rows,
        margin_left_mm=round((page_mm[0] - columns * width - (columns - 1) * gap_mm) / 2, 3),
        margin_top_mm=round((page_mm[1] - rows * height) / 2, 3),
        pitch_x_mm=width + gap_mm,
        pitch_y_mm=height,
    )


_A4 = (210.0, 297.0)
_LETTER = (215.9, 279.4)
LAYOUTS: dict[str, Layout] = {
    "a4-3x8-64x34": _centred("A4", _A4, (3, 8), (64.0, 34.0), 2.0),
    "a4-2x7-99x38": _centred("A4", _A4, (2, 7), (99.0, 38.0), 2.5),
    "a4-2x4-99x67": _centred("A4", _A4, (2, 4), (99.0, 67.0), 2.5),
    "letter-2x7-102x34": _centred("US letter", _LETTER, (2, 7), (101.6, 33.9), 4.8),
    "letter-2x5-102x51": _centred("US letter", _LETTER, (2, 5), (101.6, 50.8), 4.8),
    "letter-2x3-102x85": _centred("US letter", _LETTER, (2, 3), (101.6, 84.7), 4.8),
    "roll-62x60": roll(62.0, 60.0),
    "roll-76x51": roll(76.0, 51.0),
    "roll-100x60": roll(100.0, 60.0),
    "roll-62-along-100": roll(100.0, 62.0, along=True),
    "roll-29-along-125": roll(125.0, 29.0, along=True),
    "roll-4x6in": roll(101.6, 152.4),
    "tag-120x70-hole8": tag(120.0, 70.0, 8.0),
}
