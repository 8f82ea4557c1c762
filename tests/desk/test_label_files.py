"""Files of labels from the desk and the phone: layouts, own sizes, ZPL, cases of a bottling, one label as a picture.

What comes is rendered by PDFium or unpacked by tests/labels/test_dots.py, and read by ZXing-C++.
"""

from __future__ import annotations

import io
import re
from typing import Any

import numpy as np
import pypdfium2
import pytest
import zxingcpp
from PIL import Image

from tests.desk.conftest import C1, F1, House
from tests.desk.trace_world import tell
from tests.labels.test_dots import pictures
from webapp.labels import LAYOUTS


def token(client: Any, path: str) -> str:
    return str(re.findall(r'name="csrf_token"[^>]*value="([^"]+)"', client.get(path).text)[0])


def asked(house: House, **more: str) -> Any:
    client = house.client("NS")
    data = {"mark": [F1], "layout": "roll-62x60", "start_at": "1", "file": "pdf", **more}
    return client.post("/desk/labels.pdf", data={**data, "csrf_token": token(client, "/desk/labels")})


def noted(house: House) -> list[str]:
    return [row["mark"] for row in house.book.query("SELECT mark FROM label_prints")]


def pages(pdf: bytes) -> list[tuple[Any, str, tuple[float, float]]]:
    """Return each page as a picture, what it says, and its size in millimetres."""
    document = pypdfium2.PdfDocument(pdf)
    found = [
        (page.render(scale=300 / 72).to_numpy(), " ".join(page.get_textpage().get_text_range().split()),
         tuple(side / 72 * 25.4 for side in page.get_size()))
        for page in document
    ]
    document.close()
    return found


def read(picture: Any) -> list[str]:
    return [found.text for found in zxingcpp.read_barcodes(picture)]


@pytest.mark.parametrize(("file", "dpi"), [("zpl203", 203), ("zpl300", 300)])
def test_labels_come_in_zpl(house: House, file: str, dpi: int) -> None:
    answer = asked(house, file=file, layout="roll-62x60")
    assert answer.status_code == 200 and answer.mimetype == "text/plain"
    assert answer.headers["Content-Disposition"] == 'attachment; filename="labels.zpl"'
    (label,) = pictures(answer.data)
    assert label.shape == pytest.approx((60 / 25.4 * dpi, 62 / 25.4 * dpi), abs=1)
    assert read(label) == [F1]
    assert noted(house) == [F1], "what was sent is noted"


def test_an_own_size_is_typed_with_the_labels(house: House) -> None:
    answer = asked(house, layout="own", own_width="57,5", own_height="57", own_clear="2")
    ((picture, _, size),) = pages(answer.data)
    assert size == pytest.approx((57.5, 57.0), abs=0.01) and read(picture) == [F1]


@pytest.mark.parametrize(
    ("more", "says"),
    [
        ({"layout": "own"}, "20 to 300 mm"),
        ({"layout": "own", "own_width": "wide", "own_height": "50"}, "20 to 300 mm"),
        ({"layout": "own", "own_width": "400", "own_height": "50"}, "20 to 300 mm"),
        ({"layout": "own", "own_width": "80", "own_height": "50", "own_clear": "9"}, "0 to 8 mm"),
        ({"layout": "own", "own_width": "22", "own_height": "22"}, "larger label"),
        ({"layout": "a4-3x8-64x34", "file": "zpl203"}, "Choose a roll"),
        ({"file": "exe"}, "Tick at least one"),
    ],
)
def test_what_cannot_be_printed_says_what_to_change(house: House, more: dict[str, str], says: str) -> None:
    answer = asked(house, **more)
    assert answer.status_code == 400 and says in answer.text
    assert noted(house) == [], "nothing was sent, nothing is noted"


@pytest.fixture
def bottled(house: House) -> str:
    """The id of the close of a bottling: cases 101 to 173 of six bottles of 0.5 L, odd case 174R, lot L2603."""
    return tell(house)["bottled"]


def cases(house: House, **more: str) -> Any:
    query = {"batch": "K-26-03", "layout": "roll-62x60", "file": "pdf", "first": "101", "last": "103", **more}
    return house.client("NS").get("/desk/bottlings/cases", query_string=query)


def test_labels_of_cases_lead_to_the_trace_of_their_lot(house: House, bottled: str) -> None:
    page = house.client("NS").get("/desk/bottlings?batch=K-26-03").text
    assert 'value="101"' in page and 'value="173"' in page and "not the label that the law asks for" in page
    answer = cases(house)
    assert answer.status_code == 200 and answer.mimetype == "application/pdf"
    made = pages(answer.data)
    for number, (picture, words, _) in zip((101, 102, 103), made, strict=True):
        assert f"Case {number}" in words and "Lot L2603" in words and "plum" in words
        assert "6 × 0.5 L" in words and "45.0 % vol" in words
        (address,) = read(picture)
        assert address.endswith(f"/desk/trace/{bottled}")
        shown = house.client("NS").get(address.removeprefix("http://localhost"))
        assert shown.status_code == 200 and "K-26-03" in shown.text
    for picture in pictures(cases(house, file="zpl203", layout="roll-4x6in").data):
        assert read(picture) == [address]


def test_the_whole_of_a_bottling_ends_with_its_odd_case(house: House, bottled: str) -> None:
    words = " | ".join(said for _, said, _ in pages(cases(house, first="172", last="999").data))
    assert re.findall(r"Case (\w+)", words) == ["172", "173", "174R"]
    assert re.findall(r"Case (\w+)", pages(cases(house, first="174R", last="174R").data)[0][1]) == ["174R"]
    assert re.findall(r"Case (\w+)", pages(cases(house, first="150", last="").data)[0][1]) == ["150"]


@pytest.mark.parametrize(
    ("more", "status", "says"),
    [
        ({"first": "1", "last": "9"}, 400, "as its close has them"),
        ({"first": "x", "last": "y"}, 400, "as its close has them"),
        ({"first": "103", "last": "101"}, 400, "as its close has them"),
        ({"batch": "none"}, 404, "no batch"),
        ({"layout": "own", "own_width": "20", "own_height": "20"}, 400, "larger label"),
        ({"file": "zpl300", "layout": "letter-2x3-102x85"}, 400, "Choose a roll"),
    ],
)
def test_cases_that_are_none_say_so(
    house: House, bottled: str, more: dict[str, str], status: int, says: str
) -> None:
    answer = cases(house, **more)
    assert answer.status_code == status and says in answer.text


def test_one_label_comes_to_the_phone_as_a_picture(house: House) -> None:
    client = house.client("NS")
    answer = client.get(f"/api/labels/{F1}.png")
    assert answer.status_code == 200 and answer.mimetype == "image/png"
    picture = Image.open(io.BytesIO(answer.data))
    assert [side / 300 * 25.4 for side in picture.size] == pytest.approx([62, 60], abs=0.1)
    assert read(np.array(picture.convert("L"))) == [F1]
    wide = Image.open(io.BytesIO(client.get(f"/api/labels/{F1}.png?layout=roll-29-along-125").data))
    assert [side / 300 * 25.4 for side in wide.size] == pytest.approx([125, 29], abs=0.1)
    assert client.get("/api/labels/F3-9.png").status_code == 404
    assert client.get("/api/labels/NOTHING.png").status_code == 404
    for layout in ("nothing", next(name for name, one in LAYOUTS.items() if one.is_sheet)):
        assert client.get(f"/api/labels/{C1}.png?layout={layout}").status_code == 400
    assert house.app.test_client().get(f"/api/labels/{F1}.png").status_code == 401
