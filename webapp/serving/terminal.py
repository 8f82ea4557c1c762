"""QR codes in a terminal."""

import sys
from typing import TextIO

import qrcode


def print_qr(text: str, out: TextIO | None = None) -> None:
    """Draw the text as a QR code of half blocks, readable on dark and light terminals.

    A terminal gets its colours set, so that its own theme does not matter. Elsewhere (a pipe, a file) the
    light modules are drawn, which reads on a dark ground.
    """
    out = out or sys.stdout
    if not _can_draw_blocks(out):
        return
    code = qrcode.QRCode(border=4, error_correction=qrcode.constants.ERROR_CORRECT_L)
    code.add_data(text)
    code.make(fit=True)
    code.print_ascii(out=out, tty=out.isatty(), invert=True)


def _can_draw_blocks(out: TextIO) -> bool:
    """Say whether the terminal's character set has the blocks; old Windows consoles lack them."""
    try:
        "█▀▄".encode(out.encoding or "utf-8")
    except (LookupError, UnicodeEncodeError):
        return False
    return True
