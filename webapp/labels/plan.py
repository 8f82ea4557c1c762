"""The arrangement of one label: the symbol as large as the print leaves room for, the mark never below 10 mm."""

from collections.abc import Iterable
from dataclasses import dataclass, replace
from pathlib import Path

from webapp.labels.layouts import BadLayout, Layout
from webapp.labels.symbol import Symbol, symbol_for
from webapp.trade.marks import parse_mark
from webapp.words.desk import Later, say

FONT, FONT_BOLD = "CellarslateText", "CellarslateBold"
CAP_HEIGHT_EM = 0.668  # Of the embedded fonts (their OS/2 table); tests measure it on the printed page.
POINT_MM = 25.4 / 72
CAP_HEIGHT_MM_MIN = 10.1  # 10 mm is promised; the rest is for the printer.
CAP_HEIGHT_MM_MAX = 22.0
MODULE_MM_GOOD = 0.8  # Wanted; a label whose text leaves less gets the shorter payload first.
MODULE_MM_MIN = 0.6  # Below this a label is refused.
MODULE_MM_MAX = 3.0
EDGE_MM = 1.5  # Clear of print at the label's edge. The quiet zone of the symbol may lie in it.
SMALL_SIZES_PT = (10.0, 8.5, 7.0)
STANDOFF_WORDS = Later("paper-label-stand_off_label_scan_here")
STRIP_PT = 7.0


@dataclass(frozen=True)
class LabelItem:
    """One label to print. `curved`: for a cask or pipe. `standoff`: for a marked point outside the fire zone."""

    mark: str
    name: str = ""
    place: str = ""
    curved: bool = False
    standoff: bool = False


@dataclass(frozen=True)
class LabelPlan:
    """A label worked out. Lengths in mm from the label's left and top edge; `symbol_mm` is the side with quiet zone."""

    symbol: Symbol
    module_mm: float
    symbol_left_mm: float
    symbol_top_mm: float
    mark_lines: tuple[str, ...]
    cap_height_mm: float
    small_lines: tuple[str, ...]
    small_pt: float
    text_left_mm: float
    text_top_mm: float
    strip_lines: tuple[str, ...] = ()

    @property
    def symbol_mm(self) -> float:
        return self.module_mm * self.symbol.modules_with_quiet


def with_standoffs(items: Iterable[LabelItem]) -> list[LabelItem]:
    """Return each item followed by its stand-off twin: the same mark, for a marked point outside the fire zone."""
    paired = []
    for item in items:
        paired += [item, replace(item, standoff=True, curved=False)]
    return paired


def plan_label(item: LabelItem, layout: Layout, host: str | None = None) -> LabelPlan:
    """Return the places of symbol and print on a label; raise BadLayout or BadMark with the change to make.

    Of all arrangements (print beside or below the symbol, the mark in one line or two, three sizes of small
    print) the one is taken that keeps the modules at 0.8 mm; then, on a flat label, the mark in one line; then the
    largest modules.
    """
    layout.check()
    load_fonts()
    mark = parse_mark(item.mark)
    small = tuple(line for line in (printable(item.name), printable(item.place)) if line)
    strip: tuple[str, ...] = ()
    if item.standoff:
        small = (", ".join(small),) if small else ()
        room_mm = layout.label_width_mm - layout.hole_band_mm - 2 * EDGE_MM
        strip = wrap(str(STANDOFF_WORDS), FONT_BOLD, STRIP_PT, room_mm)
    # The name is the first thing to give way on a small stand-off label; the mark and the caution never do.
    for lines in (small, ()) if strip else (small,):
        plans = _plans(mark, lines, strip, item.curved, layout, host)
        if plans:
            break
    if not plans:
        raise BadLayout(
            say("paper-label-does_not_fit_a_label", mark=mark, wide=f"{layout.label_width_mm:g}",
                high=f"{layout.label_height_mm:g}")
        )
    return max(plans, key=lambda plan: _worth(plan, item.curved))


def _plans(
    mark: str, small: tuple[str, ...], strip: tuple[str, ...], curved: bool, layout: Layout, host: str | None
) -> list[LabelPlan]:
    """Return the arrangements that fit: with the address if that keeps the modules large, else with the mark alone."""
    plans: list[LabelPlan] = []
    for symbol in symbol_for(mark, host, curved):
        plans = [
            plan
            for mark_lines in ((mark,), (mark[:-2], mark[-2:]))
            for small_pt in SMALL_SIZES_PT
            for beside in (True, False)
            if (plan := _arrange(symbol, mark_lines, small, small_pt, beside, strip, layout)) is not None
        ]
        if any(plan.module_mm >= MODULE_MM_GOOD for plan in plans):
            break
    return plans


def _worth(plan: LabelPlan, curved: bool) -> tuple[float, ...]:
    good, one_line = plan.module_mm >= MODULE_MM_GOOD, len(plan.mark_lines) == 1
    is_whole = not any(line.endswith("…") for line in plan.small_lines)
    if curved:  # On a bend nothing helps like larger modules.
        return good, round(plan.module_mm, 1), one_line, is_whole, plan.small_pt
    return good, one_line, is_whole, round(min(plan.module_mm, 1.6), 1), plan.small_pt, plan.cap_height_mm


def _arrange(
    symbol: Symbol,
    mark_lines: tuple[str, ...],
    small: tuple[str, ...],
    small_pt: float,
    beside: bool,
    strip: tuple[str, ...],
    layout: Layout,
) -> LabelPlan | None:
    """Return one arrangement with the largest symbol it leaves room for, or None where it leaves too little."""
    left = layout.hole_band_mm
    width, height = layout.label_width_mm - left, layout.label_height_mm - strip_height_mm(len(strip))
    text_width = max(text_width_mm(line, FONT_BOLD, CAP_HEIGHT_MM_MIN / CAP_HEIGHT_EM) for line in mark_lines)
    text_height = text_height_mm(len(mark_lines), CAP_HEIGHT_MM_MIN, len(small), small_pt) + (
        EDGE_MM if strip else 2 * EDGE_MM
    )
    if text_height > height or text_width + 2 * EDGE_MM > width:
        return None
    side = min(height, width - text_width - EDGE_MM) if beside else min(width, height - text_height)
    module = min(side / symbol.modules_with_quiet, MODULE_MM_MAX)
    if module < MODULE_MM_MIN:
        return None
    side = module * symbol.modules_with_quiet
    if beside:
        room_width, room_height = width - side - EDGE_MM, height - (EDGE_MM if strip else 2 * EDGE_MM)
        symbol_left, symbol_top, text_left = left, (height - side) / 2, left + side
    else:
        room_width, room_height = width - 2 * EDGE_MM, height - side - 2 * EDGE_MM
        symbol_left, symbol_top, text_left = left + (width - side) / 2, 0.0, left + EDGE_MM
    # The mark takes what room is left, up to a height that reads across a cellar.
    cap = min(CAP_HEIGHT_MM_MIN * room_width / text_width, CAP_HEIGHT_MM_MAX)
    while cap > CAP_HEIGHT_MM_MIN and text_height_mm(len(mark_lines), cap, len(small), small_pt) > room_height:
        cap = max(cap - 0.1, CAP_HEIGHT_MM_MIN)
    text_height = text_height_mm(len(mark_lines), cap, len(small), small_pt)
    text_top = max((height - text_height) / 2, EDGE_MM) if beside else side + EDGE_MM
    shortened = tuple(shorten(line, FONT, small_pt, room_width) for line in small)
    return LabelPlan(
        symbol,
        module,
        symbol_left,
        symbol_top,
        mark_lines,
        cap,
        shortened,
        small_pt,
        text_left,
        text_top,
        strip,
    )


def text_height_mm(mark_lines: int, cap_height_mm: float, small_lines: int, small_pt: float) -> float:
    """Return the height of the print: capitals, 0.28 of them between two lines of a mark, then the small lines. [mm]"""
    small_mm = small_lines * 1.2 * small_pt * POINT_MM + (0.8 if small_lines else 0.0)
    return cap_height_mm * (mark_lines + 0.28 * (mark_lines - 1)) + small_mm


def strip_height_mm(lines: int) -> float:
    """Return the height of the strip of words at the foot of a stand-off label. [mm]"""
    return lines * 1.2 * STRIP_PT * POINT_MM + EDGE_MM + 0.5 if lines else 0.0


def load_fonts() -> None:
    """Register the embedded fonts once. Atkinson Hyperlegible: 0 and O, 1 and I cannot be taken for each other."""
    from reportlab.pdfbase import pdfmetrics  # here and below: loaded for the first print, not for the first page
    from reportlab.pdfbase.ttfonts import TTFont

    if FONT not in pdfmetrics.getRegisteredFontNames():
        folder = Path(__file__).parent / "data"
        pdfmetrics.registerFont(TTFont(FONT_BOLD, folder / "AtkinsonHyperlegible-Bold.ttf"))
        pdfmetrics.registerFont(TTFont(FONT, folder / "AtkinsonHyperlegible-Regular.ttf"))


def printable(text: str, most: int = 200) -> str:
    """Return the text on one line of so many characters, with a question mark for what the fonts cannot draw."""
    from reportlab.pdfbase import pdfmetrics

    known = pdfmetrics.getFont(FONT).face.charToGlyph
    one_line = " ".join(text[:most].split()) + ("…" if len(text) > most else "")
    # Some fonts have an empty glyph for control characters: whoever copies the print would copy them.
    return "".join(c if ord(c) in known and c.isprintable() else "?" for c in one_line)


def text_width_mm(text: str, font: str, size_mm: float) -> float:
    from reportlab.pdfbase import pdfmetrics

    return float(pdfmetrics.stringWidth(text, font, size_mm))


def shorten(text: str, font: str, size_pt: float, width_mm: float) -> str:
    """Return the text, cut with an ellipsis where it is wider than the room."""
    if text_width_mm(text, font, size_pt * POINT_MM) <= width_mm:
        return text
    while text and text_width_mm(text + "…", font, size_pt * POINT_MM) > width_mm:
        text = text[:-1]
    return text.rstrip() + "…"


def wrap(text: str, font: str, size_pt: float, width_mm: float) -> tuple[str, ...]:
    """Return the text in lines no wider than the room; a caution is never cut short."""
    lines = [""]
    for word in text.split():
        longer = f"{lines[-1]} {word}".strip()
        if text_width_mm(longer, font, size_pt * POINT_MM) <= width_mm:
            lines[-1] = longer
        else:
            lines.append(word)
    return tuple(line for line in lines if line)
