"""Labels as dots: a page of their PDF as a picture of black and white, as a PNG, and in ZPL for printers that speak it.

The dots are those of the PDF, so that fonts and symbols are the same on every printer.

Source: ZPL II, the published label language: `^XA` to `^XZ` is one label, `^PW` its width, `^LL` its length, `^GFA`
a bitmap in hexadecimal rows, black as 1, with its run lengths: G to Y repeat the next digit 1 to 19 times, g to z 20 to
400 times, `,` fills a row with 0, `!` with 1, `:` repeats the row before. From memory of its guide;
tried on no printer.
"""

from __future__ import annotations

import threading
from io import BytesIO
from itertools import groupby
from typing import TYPE_CHECKING

from webapp.labels.layouts import BadLayout, Layout
from webapp.words.desk import say

if TYPE_CHECKING:
    from PIL.Image import Image
    from pypdfium2 import PdfBitmap

DPI = (203, 300)  # what heads of label printers have
PNG_DPI = 300
ZPL_LABELS_MAX = 200  # a large label is some hundred kilobytes before it is packed
MIDDLE = 128  # of the tones: what is darker is printed
_POINTS_INCH = 72
_ONE = threading.Lock()  # PDFium is not made for two threads at a time


def pictures_of(pdf: bytes, dpi: int) -> list[Image]:
    """Return each page of a PDF as a picture of black and white, at its true size."""
    import pypdfium2  # loaded for the first picture

    with _ONE:
        document = pypdfium2.PdfDocument(pdf)
        try:
            return [_black_and_white(page.render(scale=dpi / _POINTS_INCH, grayscale=True)) for page in document]
        finally:
            document.close()


def _black_and_white(page: PdfBitmap) -> Image:
    grey: Image = page.to_pil()
    return grey.convert("L").point(lambda tone: 255 if tone >= MIDDLE else 0, mode="1")


def png_of(pdf: bytes) -> bytes:
    """Return the first page of a PDF as a PNG that says its size."""
    out = BytesIO()
    pictures_of(pdf, PNG_DPI)[0].save(out, "PNG", dpi=(PNG_DPI, PNG_DPI))
    return out.getvalue()


def check_zpl(count: int, layout: Layout) -> None:
    """Raise BadLayout where so many labels of that layout are not sent as ZPL."""
    if layout.is_sheet:
        raise BadLayout(say("paper-label-zpl_wants_a_roll"))
    if not 1 <= count <= ZPL_LABELS_MAX:
        raise BadLayout(say("paper-label-choose_1_to_labels_to", most=ZPL_LABELS_MAX))


def zpl_of(pdf: bytes, layout: Layout, dpi: int) -> bytes:
    """Return a PDF of labels, one a page, in ZPL: each label a bitmap of what its page shows.

    Parameters
    ----------
    pdf : bytes
        Of `render_labels` or `render_cases`.
    layout : Layout
        What it was made for; one that lies along its roll is turned.
    dpi : int
        Dots of the printer's head. [1/in], one of DPI

    Returns
    -------
    zpl : bytes
        ASCII; to be sent to the printer as it is. [bytes]

    Raises
    ------
    BadLayout
        If the layout is a sheet.
    """
    if layout.is_sheet:
        raise BadLayout(say("paper-label-zpl_wants_a_roll"))
    return b"".join(_label(page.rotate(90, expand=True) if layout.along else page) for page in pictures_of(pdf, dpi))


def _label(page: Image) -> bytes:
    width, height = page.size
    across = -(-width // 8)
    # Pillow packs rows to whole bytes, white as 1. What pads a row is 0 in both.
    white = page.tobytes()
    spare = 0xFF << (across * 8 - width) & 0xFF
    rows = [bytearray(255 - byte for byte in white[at : at + across]) for at in range(0, len(white), across)]
    for row in rows:
        row[-1] &= spare
    data, before = [], b""
    for row in rows:
        data.append(":" if row == before else _packed(row.hex().upper()))
        before = bytes(row)
    total = across * height
    return (
        f"^XA^PW{width}^LL{height}^LH0,0^FO0,0^GFA,{total},{total},{across},{''.join(data)}^FS^XZ\n".encode("ascii")
    )


def _packed(digits: str) -> str:
    """Return a row of hexadecimal digits with its run lengths."""
    runs = [(digit, len(list(run))) for digit, run in groupby(digits)]
    end = {"0": ",", "F": "!"}.get(runs[-1][0], "")
    if end:
        runs.pop()
    return "".join(_run(digit, count) for digit, count in runs) + end


def _run(digit: str, count: int) -> str:
    said = ""
    while count > 2:
        step = min(count, 419)
        twenties, ones = divmod(step, 20)
        said += (chr(ord("f") + twenties) if twenties else "") + (chr(ord("F") + ones) if ones else "") + digit
        count -= step
    return said + digit * count
