"""One label to a file from the phone: what is saved is read by ZXing-C++; without a signal the phone says so."""

from __future__ import annotations

import io
from collections.abc import Iterator
from typing import Any

import numpy as np
import pytest
import zxingcpp
from PIL import Image

from tests.browser.floor_house import STILL, Floor, open_floor
from tests.browser.test_cellar_rounds import _no_axe

pytestmark = pytest.mark.browser


@pytest.fixture(scope="module")
def floor(
    tmp_path_factory: pytest.TempPathFactory, playwright: Any, browser_options: dict[str, Any]
) -> Iterator[Floor]:
    with open_floor(tmp_path_factory.mktemp("label"), playwright, browser_options) as floor:
        yield floor


def test_a_label_is_saved_with_signal_and_its_want_is_said_without(floor: Floor) -> None:
    page = floor.page
    floor.open(f"/m/{STILL}")
    link = page.get_by_role("link", name="Save its label")
    link.wait_for()
    assert link.bounding_box()["height"] >= 44
    with page.expect_download() as caught:
        link.click()
    assert caught.value.suggested_filename == f"label-{STILL}.png"
    picture = Image.open(io.BytesIO(caught.value.path().read_bytes()))
    assert [found.text for found in zxingcpp.read_barcodes(np.array(picture.convert("L")))] == [STILL]
    _no_axe(page)
    floor.world.server.stop()
    link.click()
    page.locator(".toast", has_text="It could not be fetched. Try again with signal.").wait_for()
    assert floor.faults == []
