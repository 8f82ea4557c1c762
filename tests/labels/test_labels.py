"""Labels: every printed label is read back from the rendered page, and the print is measured on that page.

Independent of the code under test: PDFium renders, ZXing-C++ decodes, and lengths are measured on what they give.
"""

import re
from dataclasses import replace

import numpy as np
import pypdfium2
import pytest
import zxingcpp

from webapp.labels import LAYOUTS, BadLayout, LabelItem, Layout, plan_label, render_labels, roll, with_standoffs
from webapp.labels.symbol import make_symbol, symbol_of
from webapp.trade.marks import BadMark, make_mark, parse_mark

DPI = 200
PIXEL_MM = 25.4 / DPI
POINT_MM = 25.4 / 72
HOST = "BOOK.EXAMPLE"
ITEMS = with_standoffs(
    [
        LabelItem(make_mark("F3"), "Fermenter 3", "Fermentation"),
        LabelItem(make_mark("S1"), "Pot still", "Still house"),
        LabelItem(make_mark("C031"), "Cask 31, quince", "Cellar A2"),
        LabelItem(make_mark("C002"), "Cask 2", "Cellar A1", curved=True),
    ]
)


def rendered(pdf: bytes) -> list[np.ndarray]:
    document = pypdfium2.PdfDocument(pdf)
    try:
        return [page.render(scale=DPI / 72).to_numpy() for page in document]
    finally:
        document.close()


def read(picture: np.ndarray) -> list[zxingcpp.Barcode]:
    return zxingcpp.read_barcodes(picture, formats=zxingcpp.BarcodeFormat.QRCode)


def cell(picture: np.ndarray, layout: Layout, place: int) -> np.ndarray:
    """Return the picture of one label."""
    left, top = layout.corner_mm(place)
    right, bottom = left + layout.label_width_mm, top + layout.label_height_mm
    rows = slice(round(top / PIXEL_MM), round(bottom / PIXEL_MM))
    return picture[rows, round(left / PIXEL_MM) : round(right / PIXEL_MM)]


def side_mm(barcode: zxingcpp.Barcode) -> float:
    """Return the mean side of the symbol as the decoder found it on the page. [mm]"""
    place = barcode.position
    corners = [place.top_left, place.top_right, place.bottom_right, place.bottom_left]
    points = np.array([[corner.x, corner.y] for corner in corners], float)
    return float(np.linalg.norm(points - np.roll(points, 1, axis=0), axis=1).mean()) * PIXEL_MM


@pytest.mark.parametrize("name", list(LAYOUTS))
@pytest.mark.parametrize("host", [None, HOST])
def test_every_printed_label_reads_back_and_measures_as_planned(name, host):
    layout = LAYOUTS[name]
    pages = rendered(render_labels(ITEMS, layout, host=host))
    for number, item in enumerate(ITEMS):
        page, place = divmod(number, layout.labels_per_page)
        found = read(cell(pages[page], layout, place))
        assert len(found) == 1, (name, item)
        assert parse_mark(found[0].text) == item.mark
        plan = plan_label(item, layout, host)
        assert found[0].text == plan.symbol.payload
        if host is None or item.curved:
            assert (found[0].text, plan.symbol.version) == (item.mark, 1)
        # ISO/IEC 18004: version n has 17 + 4 n modules a side.
        module_mm = side_mm(found[0]) / (17 + 4 * plan.symbol.version)
        assert module_mm == pytest.approx(plan.module_mm, rel=0.03)
        assert module_mm >= 0.8 * 0.97


@pytest.mark.parametrize("name", list(LAYOUTS))
def test_the_mark_is_printed_at_least_10_mm_high(name):
    # The outline of each character of the mark, as PDFium gives it, measured on the page.
    layout = LAYOUTS[name]
    document = pypdfium2.PdfDocument(render_labels(ITEMS, layout, host=HOST))
    marks = []
    for page in document:
        text = page.get_textpage()
        lines: dict[float, str] = {}
        for at in range(text.count_chars()):
            left, bottom, right, top = text.get_charbox(at)
            letter = text.get_text_range(at, 1)
            if (top - bottom) * POINT_MM > 5:
                assert (top - bottom) * POINT_MM >= 10.0, letter
                marks.append(letter)
                lines[round(bottom)] = letter
            assert left >= -0.01
            assert right <= page.get_width() + 0.01
        text.close()
    document.close()
    assert sorted(marks) == sorted("".join(item.mark.replace("-", "") for item in ITEMS))


def test_four_quiet_modules_stand_around_every_symbol():
    for layout in LAYOUTS.values():
        pages = rendered(render_labels(ITEMS, layout, host=HOST))
        for number, item in enumerate(ITEMS):
            page, place = divmod(number, layout.labels_per_page)
            plan = plan_label(item, layout, HOST)
            picture = cell(pages[page], layout, place)[:, :, 0]
            left, top = plan.symbol_left_mm / PIXEL_MM, plan.symbol_top_mm / PIXEL_MM
            quiet, side = 4 * plan.module_mm / PIXEL_MM, plan.symbol_mm / PIXEL_MM
            window = picture[max(0, round(top) + 2) : round(top + side) - 2, max(0, round(left) + 2) :][
                :, : round(side) - 4
            ].copy()
            inner = slice(round(quiet) - 4, round(side - quiet) + 2)
            assert window[inner, inner].min() < 40
            window[inner, inner] = 255
            assert window.min() > 200, (layout.title, item)


def test_a_stand_off_label_says_what_it_is_and_never_cuts_the_caution():
    for layout in LAYOUTS.values():
        document = pypdfium2.PdfDocument(render_labels(ITEMS, layout))
        words = " ".join(page.get_textpage().get_text_range() for page in document)
        words = re.sub(r"\s+", " ", words)
        for sentence in ("STAND-OFF LABEL: scan here.", "Stay outside the line.", "The rules of the site come"):
            assert words.count(sentence) == 4
        document.close()


def test_a_reprint_of_a_few_starts_where_the_sheet_is_still_whole():
    layout = LAYOUTS["a4-3x8-64x34"]
    few = [ITEMS[4], ITEMS[0], ITEMS[6]]
    pages = rendered(render_labels(few, layout, start_at=22))
    assert len(pages) == 2
    assert [found[0].text for place in (22, 23) if (found := read(cell(pages[0], layout, place)))] == [
        few[0].mark,
        few[1].mark,
    ]
    assert len(read(pages[0])) == 2
    assert read(cell(pages[1], layout, 0))[0].text == few[2].mark


def test_the_ruler_on_a_sheet_is_50_mm():
    for layout in LAYOUTS.values():
        page = rendered(render_labels(ITEMS[:1], layout))[0][:, :, 0]
        longest = max(longest_run(row < 128) for row in page) * PIXEL_MM
        if layout.is_sheet:
            assert longest == pytest.approx(50, abs=0.3)
        else:
            assert longest < 40


def longest_run(dark: np.ndarray) -> int:
    edges = np.flatnonzero(np.diff(np.concatenate(([0], dark.astype(int), [0]))))
    return int((edges[1::2] - edges[::2]).max(initial=0))


def test_nothing_is_printed_near_the_hole_of_a_tag():
    layout = LAYOUTS["tag-120x70-hole8"]
    page = rendered(render_labels(ITEMS[:1], layout))[0][:, :, 0]
    band = page[:, : round(layout.hole_band_mm / PIXEL_MM) - 2] < 128
    rows, columns = np.nonzero(band)
    assert (columns.max() - columns.min()) * PIXEL_MM == pytest.approx(8, abs=0.5)
    assert (rows.max() - rows.min()) * PIXEL_MM == pytest.approx(8, abs=0.5)


def test_long_hosts_fall_back_to_a_payload_that_keeps_the_modules_large():
    layout = LAYOUTS["a4-2x4-99x67"]
    item = LabelItem(make_mark("C031"))
    assert plan_label(item, layout, "B.EX").symbol.version == 2
    assert plan_label(item, layout, "CELLAR-BOOK.THE-DISTILLERY.EXAMPLE").symbol.payload.startswith("HTTPS://CELLAR")
    long_host = "A" * 60 + ".EXAMPLE"
    assert plan_label(item, layout, long_host).symbol.payload == item.mark


def test_a_higher_level_that_costs_no_module_is_taken():
    assert make_symbol("C031-G").level == "H"
    assert symbol_of("C031-G", 1, "Q").modules == make_symbol("C031-G").modules == 21


SHEET = LAYOUTS["a4-3x8-64x34"]


@pytest.mark.parametrize(
    ("layout", "says"),
    [
        (replace(SHEET, columns=4), "across the page"),
        (replace(SHEET, rows=9), "down the page"),
        (replace(SHEET, pitch_x_mm=60.0), "overlap across"),
        (replace(SHEET, pitch_y_mm=float("nan")), "overlap down"),
        (replace(SHEET, columns=0), "columns"),
        (replace(SHEET, page_width_mm=float("inf")), "millimetres"),
        (replace(SHEET, label_width_mm=float("nan")), "millimetres"),
        (replace(SHEET, margin_top_mm=-1.0), "below 0"),
        (roll(30, 20), "larger label"),
    ],
)
def test_a_bad_layout_says_what_to_change(layout, says):
    with pytest.raises(BadLayout, match=says):
        render_labels(ITEMS[:1], layout)


def test_other_bad_input_says_what_to_change():
    with pytest.raises(BadLayout, match="Start at 1 to 24"):
        render_labels(ITEMS[:1], SHEET, start_at=24)
    with pytest.raises(BadLayout, match="1 to 5000 labels"):
        render_labels([], SHEET)
    for host in ("https://book.example", "book.example/path", "", "b\u00fccher.example", "a b", "-x"):
        if host:
            with pytest.raises(BadLayout, match="host alone"):
                render_labels(ITEMS[:1], SHEET, host=host)
    with pytest.raises(BadMark, match="a character is wrong"):
        render_labels([LabelItem("C031-H")], SHEET)


def test_hostile_names_are_printed_as_text_on_one_line():
    name = "<script>alert(1)</script>\n\u202egnol \U0001f378 " + "x" * 10_000_000
    plan = plan_label(LabelItem(make_mark("F3"), name, "\x00\x1b"), LAYOUTS["roll-100x60"])
    assert all(len(line) < 80 and line.isprintable() for line in plan.small_lines)
    assert read(rendered(render_labels([LabelItem(make_mark("F3"), name)], SHEET))[0])[0].text == make_mark("F3")


def test_layouts_are_named_by_their_dimensions():
    titles = [layout.title for layout in LAYOUTS.values()]
    assert titles[0] == "A4, 3 x 8, 64 x 34 mm"
    assert len(set(titles)) == len(titles)
    for layout in LAYOUTS.values():
        assert f"{layout.label_width_mm:g} x {layout.label_height_mm:g} mm" in layout.title


def test_the_same_labels_give_the_same_file():
    assert render_labels(ITEMS, SHEET, host=HOST) == render_labels(ITEMS, SHEET, host=HOST)
