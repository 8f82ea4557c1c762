"""Labels of cases: each symbol is read back from the rendered page, each word from its text.

PDFium renders and gives the text, ZXing-C++ decodes: neither is ours.
"""

import numpy as np
import pypdfium2
import pytest
import zxingcpp

from tests.labels.test_dots import pictures
from webapp.labels import LAYOUTS, BadLayout, CaseLabel, own, render_cases, zpl_of
from webapp.labels.cases import plan_case

TRACE = "https://book.example/desk/trace/01980a3e-0000-7000-8000-00000000001b"
LABELS = [CaseLabel("Lot L2603", f"Case {number}", ("plum", "6 × 0.5 L", "45.0 % vol"), TRACE) for number in (101, 102)]
DPI = 300


def rendered(pdf: bytes) -> list[tuple[np.ndarray, str]]:
    """Return each page as a picture and what it says."""
    document = pypdfium2.PdfDocument(pdf)
    pages = [(page.render(scale=DPI / 72).to_numpy(), page.get_textpage().get_text_range()) for page in document]
    document.close()
    return pages


@pytest.mark.parametrize("name", list(LAYOUTS))
def test_a_case_label_leads_to_its_trace_and_says_what_is_in_it(name: str) -> None:
    layout = LAYOUTS[name]
    pages = rendered(render_cases(LABELS, layout))
    found = [barcode.text for picture, _ in pages for barcode in zxingcpp.read_barcodes(picture)]
    assert found == [TRACE, TRACE]
    said = " ".join(" ".join(words.split()) for _, words in pages)
    for words in ("Case 101", "Case 102"):
        assert said.count(words) == 1
    for words in ("Lot L2603", "plum", "6 × 0.5 L", "45.0 % vol", "The label that the law asks for is another."):
        assert said.count(words) == 2, words
    plan = plan_case(LABELS[0], layout)
    assert plan.module_mm >= 0.45
    # ISO/IEC 18004 wants four quiet modules on each side: print begins after them.
    quiet_right = plan.symbol_left_mm + plan.module_mm * plan.symbol.modules_with_quiet
    quiet_foot = plan.symbol_top_mm + plan.module_mm * plan.symbol.modules_with_quiet
    assert plan.text_left_mm >= quiet_right - 1e-9 or plan.text_top_mm >= quiet_foot - 1e-9


@pytest.mark.parametrize("name", [name for name, layout in LAYOUTS.items() if not layout.is_sheet])
@pytest.mark.parametrize("dpi", [203, 300])
def test_it_reads_from_the_dots_of_a_label_printer(name: str, dpi: int) -> None:
    layout = LAYOUTS[name]
    for picture in pictures(zpl_of(render_cases(LABELS, layout), layout, dpi)):
        upright = np.ascontiguousarray(np.rot90(picture, -1) if layout.along else picture)
        assert [one.text for one in zxingcpp.read_barcodes(np.pad(upright, 40, constant_values=255))] == [TRACE]


@pytest.mark.parametrize("name", list(LAYOUTS))
def test_nothing_leaves_the_label_however_long_it_is(name: str) -> None:
    layout = LAYOUTS[name]
    long = CaseLabel("Lot L-2026-0003", "Case AB-000117", ("Mirabelle and damson, aged in pear wood " * 9,), TRACE)
    plan = plan_case(long, layout)
    document = pypdfium2.PdfDocument(render_cases([long], layout))
    text = document[0].get_textpage()
    boxes = [text.get_charbox(at) for at in range(text.count_chars())]
    said = " ".join(text.get_text_range().split())
    text.close()
    document.close()
    assert "Lot L-2026-0003" in said and "Case AB-000117" in said and "…" in said
    if not layout.is_sheet:
        wide, high = (side * 72 / 25.4 for side in (layout.label_width_mm, layout.label_height_mm))
        assert min(box[0] for box in boxes) >= 0 and min(box[1] for box in boxes) >= 0
        assert max(box[2] for box in boxes) <= wide and max(box[3] for box in boxes) <= high
        assert min(box[0] for box in boxes) >= layout.hole_band_mm * 72 / 25.4 - 0.1
    assert plan.lines


def test_what_does_not_fit_says_what_to_change() -> None:
    with pytest.raises(BadLayout, match="larger label"):
        render_cases(LABELS, own(20, 20))
    with pytest.raises(BadLayout, match="too long"):
        render_cases([CaseLabel("L", "1", (), "https://book.example/" + "x" * 400)], LAYOUTS["roll-4x6in"])
    with pytest.raises(BadLayout, match="too long"):
        render_cases([CaseLabel("L", "1", (), "https://book.example/" + "x" * 9000)], LAYOUTS["roll-4x6in"])
    with pytest.raises(BadLayout, match="1 to 5000 labels"):
        render_cases([], LAYOUTS["roll-62x60"])


def test_hostile_words_are_letters() -> None:
    label = CaseLabel("<b>x</b>\u202e", "1\n2", ("<script>alert(1)</script>", "\x00\x1b"), TRACE)
    (page,) = rendered(render_cases([label], LAYOUTS["roll-4x6in"]))
    assert "<b>x</b>?" in page[1] and "1 2" in page[1] and "<script>" in page[1]
