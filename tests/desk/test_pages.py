"""Every page of the desk shows what it is for, exports carry it, and hostile text stays text."""

import csv
import io
import json
import re

import pypdfium2
import pytest
import zxingcpp

from webapp.book.house import devices, people, registry
from webapp.trade.marks import make_mark

from .conftest import C1, F1, R1, R2, S1, token

EVIL = '<script>alert("x")</script><img src=x onerror=alert(1)>"\'{{7*7}}\u202e'


def a_run(house):
    """A short run with two cuts, whose id is returned."""
    charge = house.log(
        "charge", S1, 0, run_name="R-25-02", from_vessel=F1, wash=("482", "L"), wash_strength=("5.1", "pct_vol")
    )
    house.log("run_reading", S1, 60, glass=("78.6", "pct_glass"), temp=("16.2", "degC"))
    house.log(
        "cut", S1, 75, event="heads_cut", receiver=R2, reason="nose", glass=("77.5", "pct_glass"), temp=("15.4", "degC")
    )
    house.log(
        "cut",
        S1,
        220,
        event="hearts_cut",
        receiver=R1,
        reason="nose",
        glass=("56.5", "pct_glass"),
        temp=("16.3", "degC"),
    )
    house.log("run_end", S1, 290, reason="strength", glass=("8.7", "pct_glass"), temp=("18.8", "degC"))
    return charge["id"]


def test_the_run_page_shows_cuts_with_true_strength(house):
    run_id = a_run(house)
    page = house.client("IM").get(f"/desk/runs/{run_id}").text
    # 77.5 on the glass at 15.4 degC is 78.9 true, 56.5 at 16.3 is 57.8: OIML R 22 with glass expansion.
    for shown in ("R-25-02", "78.9", "57.8", "heads cut", "hearts cut", "cannot see methanol"):
        assert shown in page


def test_entries_are_filtered_and_leave_as_csv_and_json(house, rising):
    house.log(
        "cask_regauge",
        C1,
        10,
        gross=("206,4", "kg"),
        glass=("57.5", "pct_glass"),
        temp=("10.5", "degC"),
        condition="tight",
    )
    client = house.client("NS")
    assert "206,4 kg" in client.get("/desk/entries?kind=cask_regauge").text
    assert "206,4 kg" not in client.get(f"/desk/entries?mark={F1}").text
    rows = list(csv.DictReader(io.StringIO(client.get("/desk/entries.csv?kind=cask_regauge").text.lstrip("\ufeff"))))
    assert rows[0]["gross_as_read"] == "206,4" and float(rows[0]["gross_kg"]) == 206.4
    assert float(rows[0]["true_strength_pct_vol"]) == pytest.approx(60.8, abs=0.05)
    lines = client.get("/desk/entries.json").text.splitlines()
    assert [json.loads(line)["kind"] for line in lines] == [
        "cask_regauge",
        "ferment_reading",
        "ferment_reading",
        "fruit_intake",
    ]
    assert client.get("/desk/entries.csv").status_code == 400
    assert client.get("/desk/entries?since=yesterday").status_code == 400


def test_no_entry_is_left_out_of_an_export_however_many_there_are(house, monkeypatch):
    from webapp.book.record import log

    monkeypatch.setattr(log, "LIST_MOST", 7)
    for n in range(20):
        house.log("shift_note", F1, n, text=f"note {n}")
    client = house.client("NS")
    lines = client.get("/desk/entries.json").text.splitlines()
    assert [json.loads(line)["values"]["text"]["raw"] for line in lines] == [f"note {n}" for n in reversed(range(20))]
    rows = csv.DictReader(io.StringIO(client.get("/desk/entries.csv?kind=shift_note").text.lstrip("\ufeff")))
    assert len(list(rows)) == 20


def test_hostile_text_is_shown_as_text_wherever_it_stands(house):
    people.put_person(house.book, {"code": "EV", "name": EVIL, "roles": [EVIL], "access": "floor"}, by="OL")
    registry.put_vessel(house.book, {"mark": F1, "title": EVIL, "place": EVIL, "note": EVIL}, by="OL")
    registry.put_instrument(house.book, {"id": "TH-9", "sort": EVIL, "title": EVIL}, by="OL")
    noted = house.log("shift_note", F1, 5, text=EVIL)
    client = house.client("OL")
    house.client("IM")
    for path in (
        "/desk/",
        "/desk/queries",
        "/desk/queries?weight=note",
        "/desk/entries",
        f"/desk/entries/{noted['id']}",
        "/desk/vessels",
        f"/desk/vessels/{F1}",
        f"/desk/vessels/{F1}/edit",
        "/desk/people",
        "/desk/people/EV",
        "/desk/settings",
        "/desk/labels",
        "/desk/phones",
        f"/desk/entries?mark={EVIL}",
        f"/desk/vessels?q={EVIL}",
    ):
        answer = client.get(path)
        assert answer.status_code == 200, path
        assert (
            "<script>alert" not in answer.text
            and "<img src=x" not in answer.text
            and "49" + "\u202e" not in answer.text
        ), path


def test_a_phone_is_let_in_by_its_code_once_and_shut_out_again(house):
    client = house.client("OL")
    page = client.post("/desk/phones", data={"name": "PH-9", "csrf_token": token(client, "/desk/phones")}).text
    code = page.split("/enrol/")[1].split('"')[0].split("<")[0]
    assert "<svg" in page and "style=" not in page.split("<svg")[1].split("</svg>")[0]
    phone = house.app.test_client()
    assert phone.post("/api/enrol", json={"token": code, "name": "PH-9"}).status_code == 200
    assert house.app.test_client().post("/api/enrol", json={"token": code}).status_code in (401, 403, 422)
    assert phone.get("/api/cards").status_code == 200
    device = next(row for row in devices.devices(house.book) if row["name"] == "PH-9")
    client.post(f"/desk/phones/{device['id']}/revoke", data={"csrf_token": token(client, "/desk/phones")})
    assert phone.get("/api/cards").status_code == 401


def test_missing_counters_of_a_phone_are_shown(house):
    house.log("shift_note", F1, 0, text="one")
    house.seq += 3
    house.log("shift_note", F1, 1, text="five")
    assert "2–4" in house.client("OL").get("/desk/phones").text


def test_a_vessel_is_added_with_its_check_character_and_changed_on_record(house):
    client = house.client("OL")
    data = {
        "base": "t7",
        "title": "Tank 7",
        "sort": "tank",
        "capacity_l": "500,5",
        "csrf_token": token(client, "/desk/vessels/new"),
    }
    answer = client.post("/desk/vessels/new", data=data)
    assert answer.status_code == 302, answer.text
    mark = answer.headers["Location"].rsplit("/", 1)[1]
    assert registry.vessel(house.book, mark)["capacity_l"] == 500.5
    assert client.post("/desk/vessels/new", data=data).status_code == 422, "not twice"
    blind = client.post("/desk/vessels/new", data={**data, "base": "C078"})
    assert blind.status_code == 422 and "Choose another code" in blind.text
    wrong = client.post(f"/desk/vessels/{mark}/edit", data={**data, "capacity_l": "many"})
    assert wrong.status_code == 422 and 'value="many"' in wrong.text
    client.post(f"/desk/vessels/{mark}/edit", data={**data, "capacity_l": "480"})
    assert any(
        change["key"] == mark and change["after"].get("capacity_l") == 480
        for change in registry.changes(house.book, 20)
    )


def test_a_range_set_for_one_vessel_changes_what_is_asked(house):
    first = house.log("ferment_reading", F1, 0, temp=("23", "degC"), gravity=("1.060", "SG"))
    assert [q["field"] for q in first["queries"] if q["code"] == "unusual"] == ["temp"]
    client = house.client("IM")
    data = {
        "scope": "vessel",
        "key": F1,
        "target": "ferment_reading.temp",
        "usual_low": "12",
        "usual_high": "26",
        "csrf_token": token(client, "/desk/limits"),
    }
    assert client.post("/desk/limits", data=data).status_code == 302
    page = client.get("/desk/queries").text
    assert "23 °C is unusual" not in page
    wrong = client.post("/desk/limits", data={**data, "usual_low": "30"})
    assert wrong.status_code == 422 and "no range" in wrong.text


def test_somebody_keeps_the_office(house):
    client = house.client("OL")
    data = {"code": "OL", "name": "OL", "access": "floor", "csrf_token": token(client, "/desk/people/OL")}
    answer = client.post("/desk/people/OL", data=data)
    assert answer.status_code == 422 and "must keep the office" in answer.text
    assert people.person(house.book, "OL")["access"] == "office"


def test_ticked_labels_come_as_a_pdf_that_scans(house):
    client = house.client("NS")
    data = {
        "mark": [F1, C1],
        "layout": next(iter(_layouts())),
        "start_at": "1",
        "csrf_token": token(client, "/desk/labels"),
    }
    answer = client.post("/desk/labels.pdf", data=data)
    assert answer.status_code == 200 and answer.mimetype == "application/pdf"
    page = pypdfium2.PdfDocument(answer.data)[0].render(scale=200 / 72).to_pil()
    assert {found.text for found in zxingcpp.read_barcodes(page)} == {F1, C1}
    assert client.post("/desk/labels.pdf", data={**data, "mark": []}).status_code == 400


def test_labels_are_picked_by_place_by_sort_and_by_what_is_missing(house):
    registry.put_vessel(house.book, {"mark": C1, "sort": "cask", "place": "CELL-A10"}, by="OL")
    registry.put_vessel(house.book, {"mark": make_mark("C002"), "sort": "cask", "place": "CELL-A9"}, by="OL")
    house.log("shift_note", F1, 0, text="stir at six")  # its label was scanned, whoever printed it
    client = house.client("NS")

    def listed(query=""):
        return re.findall(r'name="mark" value="([^"]+)"', client.get(f"/desk/labels?{query}").text)

    everything = listed()
    assert everything[-2:] == [make_mark("C002"), C1], "as people count"
    assert listed("room=CELL") == [make_mark("C002"), C1] and F1 in listed("room=-")
    assert listed("sort=fermenter") == [F1] and listed("q=a10") == [C1]
    assert set(listed("which=missing")) == set(everything) - {F1}
    assert listed("which=changed") == []
    page = client.get("/desk/labels?room=CELL&which=missing").text
    data = {
        "every": "1", "room": "CELL", "which": "missing", "layout": next(iter(_layouts())), "start_at": "1",
        "csrf_token": page.split('name="csrf_token"')[-1].split('value="')[1].split('"')[0],
    }
    answer = client.post("/desk/labels.pdf", data=data)
    sheet = pypdfium2.PdfDocument(answer.data)[0].render(scale=200 / 72).to_pil()
    assert {found.text for found in zxingcpp.read_barcodes(sheet)} == {make_mark("C002"), C1}
    assert set(listed("which=missing")) == set(everything) - {F1, C1, make_mark("C002")}
    house.log("cask_move", C1, 10, from_place="CELL-A10", to_place="LOFT-K1")
    assert listed("which=changed") == [C1], "the label says where it stood"
    assert "says something else by now" in client.get("/desk/labels").text


def _layouts():
    from webapp.labels import LAYOUTS

    return LAYOUTS
