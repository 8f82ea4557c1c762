"""Why curved labels carry the bare mark: the same print with other symbols, bent, wet and in glare, read back.

Measured by a flag (`--bench`), since it takes a minute and tells why the payload was chosen. That labels are found
is asked by the other tests.

Read with ZXing-C++ in two passes: the picture as it is, and black and white by its own light.
"""

import cv2
import numpy as np
import pytest
import zxingcpp

from tests.labels.scenes import photograph, printed_label
from webapp.labels import LAYOUTS, LabelItem, plan
from webapp.labels.symbol import address_for, symbol_of
from webapp.trade.marks import make_mark

pytestmark = [pytest.mark.bench, pytest.mark.timeout(900)]
SEEDS = range(300, 320)
MARK = make_mark("C031")
ADDRESS = address_for("BOOK.EXAMPLE", MARK)
SYMBOLS = {
    f"{name} {version}-{level}": symbol_of(payload, version, level)
    for name, payload, version, level in (
        ("mark", MARK, 1, "Q"),
        ("mark", MARK, 1, "H"),
        ("address", ADDRESS, 2, "M"),
        ("address", ADDRESS, 2, "Q"),
        ("address", ADDRESS, 3, "H"),
    )
}


def is_found(picture: np.ndarray) -> bool:
    soft = cv2.blur(picture, (3, 3))
    two_tone = cv2.adaptiveThreshold(soft, 255, cv2.ADAPTIVE_THRESH_MEAN_C, cv2.THRESH_BINARY, 41, 0)
    return any(
        MARK in code.text
        for view in (picture, two_tone)
        for code in zxingcpp.read_barcodes(view, formats=zxingcpp.BarcodeFormat.QRCode, try_invert=False)
    )


def test_on_a_bend_the_short_payload_is_worth_more_than_any_level(monkeypatch, capsys):
    item = LabelItem(MARK, "Cask 31", "Cellar A2", curved=True)
    kinds = ("curved", "curved, wet, glare", "glare")
    found = {}
    for name, symbol in SYMBOLS.items():
        assert symbol is not None
        monkeypatch.setattr(plan, "symbol_for", lambda *_, symbol=symbol: iter([symbol]))
        label = printed_label(item, LAYOUTS["roll-76x51"], None)
        for kind in kinds:
            found[kind, name] = sum(is_found(photograph(kind, label, seed)) for seed in SEEDS)
    with capsys.disabled():
        print(f"\n{'found of ' + str(len(SEEDS)):24}" + "".join(f"{name:>14}" for name in SYMBOLS))
        for kind in kinds:
            print(f"{kind:24}" + "".join(f"{found[kind, name]:14}" for name in SYMBOLS))
    for kind in kinds[:2]:
        addresses = [found[kind, name] for name in SYMBOLS if name.startswith("address")]
        assert found[kind, "mark 1-H"] >= 1.4 * max(addresses)
        assert found[kind, "mark 1-H"] >= found[kind, "mark 1-Q"] - 1  # Level H is no loss, since no module is lost.
        assert found[kind, "address 3-H"] <= found[kind, "address 2-Q"]
