"""The QR symbol of a label: its payload, its size in modules, and its black rectangles.

Short payloads make small symbols with large modules, which is what is found on a curved, wet or distant label.
Source: ISO/IEC 18004 (QR Code), capacities of versions 1 to 3 in alphanumeric mode as the `qrcode` package holds them.
"""

import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache

import qrcode
from qrcode.constants import ERROR_CORRECT_H, ERROR_CORRECT_L, ERROR_CORRECT_M, ERROR_CORRECT_Q
from qrcode.exceptions import DataOverflowError
from qrcode.util import MODE_ALPHA_NUM, QRData

from webapp.labels.layouts import BadLayout

QUIET_MODULES = 4
VERSION_MAX = 3  # Above this the modules are too small for a label that is read at arm's length.
LEVELS = {"L": ERROR_CORRECT_L, "M": ERROR_CORRECT_M, "Q": ERROR_CORRECT_Q, "H": ERROR_CORRECT_H}
_HOST = re.compile(r"[a-z0-9]([a-z0-9.-]*[a-z0-9])?(:[0-9]{1,5})?", re.IGNORECASE | re.ASCII)


@dataclass(frozen=True)
class Symbol:
    """A QR symbol. `rows` are the modules from the top, True for black, without the quiet zone."""

    payload: str
    version: int
    level: str
    rows: tuple[tuple[bool, ...], ...]

    @property
    def modules(self) -> int:
        """The side of the symbol without its quiet zone. [modules]"""
        return len(self.rows)

    @property
    def modules_with_quiet(self) -> int:
        """The side of the symbol with its quiet zone. [modules]"""
        return self.modules + 2 * QUIET_MODULES

    def rectangles(self) -> list[tuple[int, int, int, int]]:
        """Return the black modules as (left, top, width, height) rectangles, runs merged along and down. [modules]"""
        found: list[tuple[int, int, int, int]] = []
        open_runs: dict[tuple[int, int], int] = {}
        for top, row in enumerate([*self.rows, (False,) * self.modules]):
            runs = set(_runs(row))
            for run in [run for run in open_runs if run not in runs]:
                since = open_runs.pop(run)
                found.append((run[0], since, run[1], top - since))
            for run in runs:
                open_runs.setdefault(run, top)
        return sorted(found, key=lambda rectangle: (rectangle[1], rectangle[0]))


def _runs(row: tuple[bool, ...]) -> list[tuple[int, int]]:
    """Return the black runs of a row as (left, width)."""
    runs = []
    left = None
    for at, black in enumerate([*row, False]):
        if black and left is None:
            left = at
        elif not black and left is not None:
            runs.append((left, at - left))
            left = None
    return runs


def address_for(host: str, mark: str) -> str:
    """Return the web address of a mark, in upper case: QR's alphanumeric mode packs that tighter than small letters."""
    if not _HOST.fullmatch(host):
        raise BadLayout("Give the host alone, such as BOOK.EXAMPLE or BOOK.EXAMPLE:8443, without https:// or a path.")
    return f"HTTPS://{host}/M/{mark}".upper()


@lru_cache(maxsize=512)
def make_symbol(payload: str, lowest_level: str = "Q") -> Symbol | None:
    """Return the smallest symbol, version 1 to 3, that holds the payload, or None where none does.

    The level is raised above the lowest one as far as the version allows: that costs no module.
    """
    levels = list(LEVELS)
    for version in range(1, VERSION_MAX + 1):
        for level in reversed(levels[levels.index(lowest_level) :]):
            symbol = symbol_of(payload, version, level)
            if symbol:
                return symbol
    return None


def symbol_of(payload: str, version: int, level: str) -> Symbol | None:
    """Return the symbol of one version and level, or None where the payload does not fit."""
    code = qrcode.QRCode(version=version, error_correction=LEVELS[level], border=0)
    code.add_data(QRData(payload, mode=MODE_ALPHA_NUM))
    try:
        code.make(fit=False)
    except DataOverflowError:
        return None
    return Symbol(payload, version, level, tuple(tuple(bool(cell) for cell in row) for row in code.get_matrix()))


def symbol_for(mark: str, host: str | None, curved: bool) -> Iterator[Symbol]:
    """Give the symbols that may stand on a label, best first.

    A flat label may carry the address, which a phone's own camera opens; level Q where it fits, M for a long host.
    A curved one, or a label too small for the address, carries the bare mark.
    """
    if host and not curved:
        address = address_for(host, mark)
        wide = make_symbol(address, "Q") or make_symbol(address, "M")
        if wide:
            yield wide
    bare = make_symbol(mark)
    assert bare is not None, "a mark of at most nine characters fits version 1"
    yield bare
