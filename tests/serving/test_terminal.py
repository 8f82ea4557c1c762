"""The QR code in the terminal is read back by an independent decoder (zxing-cpp)."""

import io
import re

import numpy as np
import zxingcpp

from webapp.serving.terminal import print_qr

ADDRESS = "http://192.168.1.20:8081/trust"
# Upper half, lower half: lit or not.
_BLOCKS = {"█": (1, 1), "▀": (1, 0), "▄": (0, 1), " ": (0, 0), "\xa0": (0, 0)}


class Screen(io.StringIO):
    """A place to write that says whether it is a terminal, and of which character set."""

    def __init__(self, *, is_terminal: bool, encoding: str = "utf-8") -> None:
        super().__init__()
        self._is_terminal, self._encoding = is_terminal, encoding

    def isatty(self) -> bool:
        return self._is_terminal

    @property
    def encoding(self) -> str:  # type: ignore[override]
        return self._encoding


def read_back(drawn: str, *, lit: int, ground: int) -> list[str]:
    """Paint the blocks as a terminal would, with these grey levels, and decode the picture."""
    lines = [line for line in re.sub(r"\x1b\[[0-9;]*m", "", drawn).split("\n") if line]
    rows = [[_BLOCKS[sign][half] for sign in line] for line in lines for half in (0, 1)]
    cells = np.array(rows, dtype=np.uint8)
    picture = np.where(cells == 1, lit, ground).astype(np.uint8).repeat(8, axis=0).repeat(8, axis=1)
    framed = np.pad(picture, 40, constant_values=ground)
    return [found.text for found in zxingcpp.read_barcodes(framed)]


def test_terminal_code_sets_both_its_colours_and_is_read() -> None:
    screen = Screen(is_terminal=True)
    print_qr(ADDRESS, screen)
    # So the terminal's own theme, dark or light, does not reach the code.
    lines = screen.getvalue().rstrip("\n").split("\n")
    assert all(line.count("\x1b[38;5;255m") == 1 and line.endswith("\x1b[0m") for line in lines)
    assert all("\x1b[48;5;232m" in line for line in lines[:-1])
    assert read_back(screen.getvalue(), lit=238, ground=8) == [ADDRESS]


def test_code_in_a_pipe_is_read_on_a_dark_ground() -> None:
    screen = Screen(is_terminal=False)
    print_qr(ADDRESS, screen)
    assert "\x1b" not in screen.getvalue()
    assert read_back(screen.getvalue(), lit=200, ground=20) == [ADDRESS]


def test_console_without_blocks_gets_no_garbage() -> None:
    screen = Screen(is_terminal=True, encoding="latin-1")
    print_qr(ADDRESS, screen)
    assert screen.getvalue() == ""
