"""Moving in at the desk, as a browser does it: from an empty folder to a whole house, and a sheet taken back."""

import io
import re

import pytest
from werkzeug.datastructures import FileStorage
from werkzeug.test import encode_multipart

from tests.desk.conftest import House, token
from tests.sheets.moving_house import workbook
from webapp import create_app
from webapp.access import pages

PASSWORD = "a long enough secret"
BOXES = re.compile(r'<input type="hidden" name="([\w-]+)" value="([^"]*)">')


@pytest.fixture
def office(tmp_path):
    house = House(tmp_path / "book")
    return house, house.client("OL")


def upload(client, content, name, page="/desk/sheets"):
    data = {"csrf_token": token(client, page), "file": (io.BytesIO(content), name)}
    return client.post("/desk/sheets", data=data, content_type="multipart/form-data")


def boxes(answer):
    """The hidden boxes of a sheet that is looked over, as a browser sends them back; here no name comes twice."""
    return {name: value for name, value in BOXES.findall(answer.text) if not name.startswith("was-")}


def put(client, answer, **more):
    return client.post("/desk/sheets/look", data={**boxes(answer), "do": "put", **more})


def test_from_an_empty_folder_to_a_whole_house_in_few_requests(tmp_path):
    app = create_app(tmp_path / "book", testing=True)
    client, asked = app.test_client(), []
    plain = client.open

    def count(*args, **more):
        answer = plain(*args, **more)
        asked.append((answer.request.method, answer.request.path))
        return answer

    client.open = count
    page = client.get("/set-up")
    form = {"csrf_token": re.search(r'name="csrf_token"[^>]*value="([^"]+)"', page.text)[1],
            "setup_code": pages.setup_code(app), "site": "Tarrowdene Orchard Stills", "units": "metric", "code": "OL",
            "name": "Orla L.", "password": PASSWORD, "again": PASSWORD}
    assert client.post("/set-up", data=form).status_code == 302
    look = upload(client, workbook(), "house.xlsx")
    assert "Put 71 vessels, 6 people, 11 instruments and 46 openings of vessels in the book" in look.text
    done = put(client, look)
    assert done.status_code == 302
    assert "Take the whole sheet back" in client.get(done.headers["Location"]).text
    book = app.extensions["book"]
    tables = ("vessels", "instruments", "entries")
    assert [book.one(f"SELECT count(*) AS n FROM {name}")["n"] for name in tables] == [71, 11, 46]
    assert len(asked) <= 15, asked


def test_a_fault_is_put_right_beside_it_and_a_row_is_left_out(office):
    house, client = office
    text = ("Cask no;Kind;Date in;Empty;Weight;ABV;Size\nC100;plum;21.11.2022;46,3;2099;60;225\n"
            "C101;plum;31.2.2022;46,3;209,9;60;225\n")
    look = upload(client, text.encode(), "casks.csv")
    assert look.status_code == 200
    assert "2260.6 L does not fit into C100, which holds 229.5 L" in look.text
    assert "February 2022 has 28 days" in look.text
    assert 'value="0:2:gross:209.9 kg"' in look.text
    entries = house.book.one("SELECT count(*) AS n FROM entries")["n"]
    again = client.post("/desk/sheets/look", data={**boxes(look), "set": "0:2:gross:209.9 kg", "leave": "0:3"})
    assert "Put 1 opening of a vessel in the book" in again.text and "left out" in again.text
    done = put(client, again)
    assert done.status_code == 302, done.text
    assert house.book.one("SELECT count(*) AS n FROM entries")["n"] == entries + 1
    page = client.get(done.headers["Location"]).text
    assert "C100" in page
    assert client.get("/desk/sheets/1/file").data == text.encode()
    form = {"csrf_token": token(client, "/desk/sheets"), "reason": "trial"}
    back = client.post("/desk/sheets/1/take-back", data=form)
    assert back.status_code == 302
    assert "taken back" in client.get("/desk/sheets").text
    assert house.book.one("SELECT standing FROM folded WHERE entry IN (SELECT id FROM entries WHERE kind = 'opening')"
                          ) == {"standing": "struck"}


def test_what_is_no_sheet_is_told_and_pasted_rows_are_taken(office):
    _, client = office
    answer = upload(client, b"%PDF-1.7", "casks.xlsx")
    assert answer.status_code == 422
    assert "This is a PDF, whatever its name says." in answer.text
    form = {"csrf_token": token(client, "/desk/sheets"), "text": "Code\tSort\nT40\ttank\nT41\tvat\n"}
    look = client.post("/desk/sheets", data=form)
    assert "Put 2 vessels in the book" in look.text
    assert put(client, look, expected="5").status_code == 200  # not what the person saw
    assert put(client, look).status_code == 302
    known = client.post("/desk/sheets", data=form)
    assert "The book has all of this already." in known.text
    gone = client.post("/desk/sheets/look", data={"csrf_token": token(client, "/desk/sheets"), "sheet": "0" * 64})
    assert gone.status_code == 422
    assert "Take it again" in gone.text


def test_templates_are_there_to_download(office):
    _, client = office
    for name in ("all.xlsx", "vessels.csv", "people.csv", "instruments.csv", "parties.csv", "opening.csv", "goods.csv"):
        answer = client.get(f"/desk/sheets/template/{name}")
        assert answer.status_code == 200 and len(answer.data) > 40
        assert answer.headers["Content-Disposition"].startswith("attachment")
    assert client.get("/desk/sheets/template/none").status_code == 404


def test_a_workbook_of_megabytes_comes_by_the_page_and_nowhere_else(office):
    _house, client = office
    lines = "Mark,Sort,Title\n" + "".join(f"C{n:03},cask,{'x' * 1000}\n" for n in range(1, 900))
    assert len(lines) > 800_000
    # Encoded here: of a long form the test client leaves a file open.
    boundary, body = encode_multipart({"csrf_token": token(client, "/desk/sheets"),
                                       "file": FileStorage(io.BytesIO(lines.encode()), "casks.csv")})
    sent = client.post("/desk/sheets", data=body, content_type=f"multipart/form-data; boundary={boundary}")
    assert sent.status_code == 200 and "899" in sent.text
    far = {"csrf_token": token(client, "/desk/sheets"), "text": lines}
    assert client.post("/desk/sheets", data=far).status_code == 200, "pasted too"
    assert client.post("/desk/settings", data=far).status_code == 413
    assert client.post("/desk/sheets", data=far | {"text": lines * 7}).status_code == 413
