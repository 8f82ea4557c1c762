"""Labels as dots: ZPL is unpacked again by its published rules, and the symbol in the picture is read by ZXing-C++.

The unpacking here is written for itself, from the rules of the language: no function of the program is in it.
"""

import io
import re

import cv2
import numpy as np
import pypdfium2
import pytest
import zxingcpp
from PIL import Image

from tests.labels.scenes import place
from webapp.labels import LAYOUTS, BadLayout, LabelItem, own, plan_label, png_of, render_labels, zpl_of
from webapp.labels.dots import ZPL_LABELS_MAX, check_zpl
from webapp.trade.marks import make_mark, parse_mark

CASK = LabelItem(make_mark("C031"), "Cask 31, quince", "Cellar A2", curved=True)
ITEMS = [CASK, LabelItem(make_mark("F3"), "Fermenter 3", "Fermentation")]
SINGLE = [name for name, layout in LAYOUTS.items() if not layout.is_sheet]
LABEL = re.compile(r"\^XA\^PW(\d+)\^LL(\d+)\^LH0,0\^FO0,0\^GFA,(\d+),(\d+),(\d+),([^^]*)\^FS\^XZ\s*")
# Memory of the guide: G, H, .. Y stand for 1 to 19, g, h, .. z for 20, 40, .. 400; they add up before a digit.
TIMES = {**{chr(ord("G") + n): n + 1 for n in range(19)}, **{chr(ord("g") + n): 20 * (n + 1) for n in range(20)}}


def unpacked(data: str, across: int) -> list[str]:
    """Return the rows of a bitmap as hexadecimal digits."""
    rows: list[str] = []
    row, times = "", 0
    for sign in data:
        if sign == ":":
            assert not row
            rows.append(rows[-1])
        elif sign in ",!":
            rows.append(row.ljust(2 * across, "0" if sign == "," else "F"))
            row = ""
        elif sign in TIMES:
            times += TIMES[sign]
        else:
            assert sign in "0123456789ABCDEF", sign
            row, times = row + sign * (times or 1), 0
        if len(row) == 2 * across:
            rows.append(row)
            row = ""
    assert not row and not times
    return rows


def pictures(zpl: bytes) -> list[np.ndarray]:
    """Return the labels of a ZPL file, 0 for black, 255 for white."""
    text, made, at = zpl.decode("ascii"), [], 0
    while at < len(text):
        found = LABEL.match(text, at)
        assert found, text[at : at + 80]
        width, height, total, sent, across = (int(figure) for figure in found.groups()[:5])
        rows = unpacked(found[6], across)
        assert total == sent == across * height and len(rows) == height and across == -(-width // 8)
        bits = np.unpackbits(np.frombuffer(bytes.fromhex("".join(rows)), np.uint8)).reshape(height, across * 8)
        assert not bits[:, width:].any(), "what pads a row is white"
        made.append(np.where(bits[:, :width] == 1, 0, 255).astype(np.uint8))
        at = found.end()
    return made


def read(picture: np.ndarray) -> list[str]:
    return [found.text for found in zxingcpp.read_barcodes(picture, formats=zxingcpp.BarcodeFormat.QRCode)]


@pytest.mark.parametrize("dpi", [203, 300])
@pytest.mark.parametrize("name", SINGLE)
def test_zpl_is_the_page_of_the_pdf_dot_by_dot_and_reads_back(name: str, dpi: int) -> None:
    layout = LAYOUTS[name]
    pdf = render_labels(ITEMS, layout, host="BOOK.EXAMPLE")
    labels = pictures(zpl_of(pdf, layout, dpi))
    assert len(labels) == len(ITEMS)
    document = pypdfium2.PdfDocument(pdf)
    for item, label, page in zip(ITEMS, labels, document, strict=True):
        # The head of a printer lies across the roll: what lies along it comes turned.
        wide, high = layout.label_width_mm, layout.label_height_mm
        across, down = (high, wide) if layout.along else (wide, high)
        assert label.shape == pytest.approx((down / 25.4 * dpi, across / 25.4 * dpi), abs=1)
        upright = np.rot90(label, -1) if layout.along else label
        shown = page.render(scale=dpi / 72, grayscale=True).to_numpy().reshape(upright.shape)
        assert np.array_equal(upright, np.where(shown >= 128, 255, 0))
        (text,) = read(np.ascontiguousarray(np.pad(upright, 40, constant_values=255)))
        assert text == plan_label(item, layout, "BOOK.EXAMPLE").symbol.payload
    document.close()


@pytest.mark.parametrize("dpi", [203, 300])
@pytest.mark.parametrize("name", SINGLE)
def test_the_dots_of_a_cask_label_read_round_a_curve(name: str, dpi: int) -> None:
    # Edges of the symbol 45 to 55 degrees round a standing cylinder, as tests/labels/scenes.py bends them.
    layout = LAYOUTS[name]
    (label,) = pictures(zpl_of(render_labels([CASK], layout), layout, dpi))
    upright = np.ascontiguousarray(np.rot90(label, -1) if layout.along else label)
    plan, dots_mm = plan_label(CASK, layout), dpi / 25.4
    side = plan.module_mm * plan.symbol.modules * dots_mm
    centre = tuple((edge + plan.symbol_mm / 2) * dots_mm for edge in (plan.symbol_left_mm, plan.symbol_top_mm))
    for seed in range(4):
        random = np.random.default_rng(seed)
        scene, _, _ = place(upright, side, centre, random, symbol_px=300, bend_deg=random.uniform(45, 55))
        grey = np.clip(scene * 255, 0, 255).astype(np.uint8)
        assert [parse_mark(text) for text in read(grey)] == [CASK.mark], (name, dpi, seed)


def test_all_run_lengths_come_back() -> None:
    # Rows of black runs of 1 to 2,000 dots among white: each run length, each end of a row, whole rows of either.
    height, width = 90, 2003
    picture = np.full((height, width), 255, np.uint8)
    for row in range(height - 2):
        at = 0
        for length in (row + 1, 3, row * 19 + 8, 1):
            picture[row, at : at + length] = 0
            at += length + row * 2 + 1
    picture[-2] = 0
    from webapp.labels.dots import _label

    (back,) = pictures(_label(Image.fromarray(picture).convert("1", dither=Image.Dither.NONE)))
    assert np.array_equal(back, picture)


def test_a_sheet_or_too_many_labels_are_no_zpl() -> None:
    sheet = LAYOUTS["a4-3x8-64x34"]
    with pytest.raises(BadLayout, match="roll"):
        zpl_of(render_labels(ITEMS, sheet), sheet, 203)
    with pytest.raises(BadLayout, match="roll"):
        check_zpl(1, sheet)
    with pytest.raises(BadLayout, match=f"1 to {ZPL_LABELS_MAX} labels"):
        check_zpl(ZPL_LABELS_MAX + 1, LAYOUTS["roll-62x60"])


def test_a_png_says_its_size_and_reads_back() -> None:
    layout = LAYOUTS["roll-62x60"]
    picture = Image.open(io.BytesIO(png_of(render_labels([CASK], layout))))
    assert picture.format == "PNG" and picture.info["dpi"] == pytest.approx((300, 300), abs=0.1)
    assert [side / 300 * 25.4 for side in picture.size] == pytest.approx([62, 60], abs=0.1)
    assert read(np.array(picture.convert("L"))) == [CASK.mark]


@pytest.mark.parametrize(("width", "height", "clear"), [(80, 50, 0), (57, 57, 2.5), (300, 300, 8), (120, 40, 1.5)])
def test_an_own_size_prints_within_its_clear_edges(width: float, height: float, clear: float) -> None:
    layout = own(width, height, clear)
    (label,) = pictures(zpl_of(render_labels([CASK], layout), layout, 300))
    assert label.shape == pytest.approx((height / 25.4 * 300, width / 25.4 * 300), abs=1)
    assert read(label) == [CASK.mark]
    edge = round((clear + 1) / 25.4 * 300)
    middle = label[edge:-edge, edge:-edge].copy()
    label[edge:-edge, edge:-edge] = 255
    assert label.min() == 255 and middle.min() == 0


@pytest.mark.parametrize(
    ("width", "height", "clear"),
    [(None, 50, 0), (80, None, 0), (19, 50, 0), (80, 301, 0), (80, 50, -1), (80, 50, 9), (float("nan"), 50, 0),
     (80, 50, float("nan")), (float("inf"), 50, 0)],
)
def test_an_own_size_out_of_bounds_says_the_bounds(width: float, height: float, clear: float) -> None:
    with pytest.raises(BadLayout, match="20 to 300 mm wide and high, with 0 to 8 mm clear"):
        own(width, height, clear)


def test_rolls_have_the_widths_that_are_sold() -> None:
    # 62 mm, 29 mm and 4 x 6 in are common widths of rolls; 1 in = 25.4 mm (exact).
    across = {layout.label_height_mm if layout.along else layout.label_width_mm for layout in LAYOUTS.values()}
    assert {62.0, 29.0, 4 * 25.4} <= across
    assert LAYOUTS["roll-4x6in"].label_height_mm == pytest.approx(6 * 25.4)


def test_bending_is_no_plain_copy() -> None:
    # The curve in these tests must be one: its symbol is narrower than the flat one.
    flat = np.full((400, 400), 255, np.uint8)
    cv2.rectangle(flat, (50, 50), (349, 349), 0, -1)
    widths = []
    for bend in (0, 50):
        scene, (_, y), _ = place(flat, 300, (200, 200), np.random.default_rng(1), symbol_px=300, bend_deg=bend)
        widths.append(int((scene[int(y)] < 0.15).sum()))
    assert widths[1] < 0.95 * widths[0]
