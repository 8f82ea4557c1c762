"""Each door names a person of the demo and lets in as that one; each thing to try leads where it says."""

from __future__ import annotations

import re

import pytest

from webapp.book.house import devices, people
from webapp.demo.story import load
from webapp.doors import pages
from webapp.doors.trials import TRIALS, person
from webapp.trade.marks import parse_mark

# What each page shows that the words of its task speak of, by the story of demo_data: D-2501 and D-2502 are the loads
# of the farm from which C-047 was filled (lots.json), C-001 is the cask with two digits swapped (faults.json).
SHOWS = {"question": "two digits swapped", "trace": "D-2502"}


@pytest.fixture(autouse=True)
def fresh_tries():
    pages.phones_of_address.__init__(most=20, window_s=600)


def test_the_front_page_has_three_doors_that_name_people_of_the_demo(app):
    page = app.test_client().get("/demo").text
    names = {one["name"] for one in load("people")}
    for heading in ("The desk", "A phone, in this browser", "Your own phone"):
        door = page[page.index(f"<h2>{heading}</h2>"):].split("</article>")[0]
        assert any(name in door for name in names), heading
    assert len(re.findall(r'<button class="trial">', page)) == len(TRIALS) == 5
    assert "is invented" in page


def test_a_strangers_first_page_is_the_front_and_nobody_elses(app, tap):
    stranger = app.test_client().get("/")
    assert (stranger.status_code, stranger.headers["Location"]) == (302, "/demo/")
    signed_in, _ = tap("/demo/desk")
    assert signed_in.get("/").status_code == 200


def test_the_desk_opens_signed_in_as_the_person_named(app, tap):
    client, answer = tap("/demo/desk")
    assert answer.headers["Location"] == "/desk/"
    page = client.get("/desk/").text
    assert person(pages.DESK).name in page
    assert 'href="/demo/">To its doors' in page, "the way back"


def test_a_door_needs_its_forms_token_and_is_not_opened_by_another_site(app):
    client = app.test_client()
    assert client.post("/demo/desk").status_code == 400
    assert client.post("/demo/desk", headers={"Origin": "https://evil.example"}).status_code == 403
    assert client.get("/desk/").status_code == 302


def test_every_thing_to_try_leads_to_a_page_that_is_there(app, tap):
    for trial in TRIALS:
        client, answer = tap(f"/demo/try/{trial.key}", sheet="x", name="x", do="look")
        if trial.is_phone:
            assert answer.status_code == 200
            then = re.search(r'data-then="([^"]+)"', answer.text)[1]
            assert parse_mark(then.split("/")[2])
            assert person(trial.who).name in answer.text
            assert client.get(then).status_code == 200
        else:
            assert answer.status_code == (307 if trial.key == "sheet" else 302)
            with client.session_transaction() as session:
                assert session["person"] == trial.who
            if trial.key != "sheet":
                page = client.get(answer.headers["Location"])
                assert page.status_code == 200
                assert SHOWS[trial.key] in page.text


def test_the_sheet_to_take_in_is_looked_over_by_one_tap_and_two_cells_stop_it(app, tap):
    client = app.test_client()
    page = client.get("/demo/").text
    boxes = dict(re.findall(r'<input type="hidden" name="(sheet|name|do)" value="([^"]*)">', page))
    _, first = tap("/demo/try/sheet", client, **boxes)
    assert first.status_code == 307
    # As a browser does at a 307: the same form again, at the new address.
    token = re.search(r'name="csrf_token" value="([^"]+)"', page)[1]
    again = client.post(first.headers["Location"], data={**boxes, "csrf_token": token})
    assert again.status_code == 200, "the token of the front page is still good"
    assert "does not fit" in again.text and "February 2020 has 29 days" in again.text
    book = app.extensions["book"]
    assert not book.query("SELECT * FROM takings"), "nothing was written"


def test_a_phone_is_let_in_once_for_a_browser_and_then_known(app, tap):
    client, answer = tap("/demo/phone")
    token = re.search(r'data-token="([^"]+)"', answer.text)[1]
    assert client.post("/api/enrol", json={"token": token, "name": ""}).json["device"]["name"].startswith("Visitor")
    _, again = tap("/demo/phone", client)
    assert 'data-token=""' in again.text
    assert client.get("/api/cards").status_code == 200


def test_the_pin_that_the_page_carries_is_the_one_of_the_person(app, tap):
    _, answer = tap("/demo/phone", who="NS")
    assert 'data-phone-of="NS"' in answer.text
    told = next(one for one in load("people") if one["code"] == "NS")
    assert f'data-pin="{told["pin"]}"' in answer.text
    assert people.person(app.extensions["book"], "NS")["pin"], "it asks for one"
    assert tap("/demo/phone", who="ZZ")[1].status_code == 404


def test_phones_are_bounded_for_an_address_and_in_all(app, tap, monkeypatch):
    statuses = [tap("/demo/phone")[1].status_code for _ in range(22)]
    assert statuses == [200] * 20 + [429] * 2
    fresh = pages.Tries(most=20, window_s=600)
    monkeypatch.setattr(pages, "phones_of_address", fresh)
    monkeypatch.setattr(pages, "PHONES_MOST", 0)
    assert tap("/demo/phone")[1].status_code == 429
    assert not [one for one in devices.devices(app.extensions["book"]) if one["name"].startswith("Visitor")]


def test_the_cut_holds_the_phones_questions_of_this_browser_alone_and_ends_by_itself(app, tap, monkeypatch):
    client, _ = tap("/demo/signal", do="cut")
    silent = client.get("/api/session")
    assert silent.status_code == 503
    assert silent.mimetype == "text/plain", "no answer of the book: the phone takes it for none"
    assert app.test_client().get("/api/session").status_code == 200, "another browser"
    assert "The signal is cut" in client.get("/demo/").text
    now = pages.time.time()
    monkeypatch.setattr(pages.time, "time", lambda: now + pages.CUT_S + 1)
    assert client.get("/api/session").status_code == 200
    monkeypatch.undo()
    tap("/demo/signal", client, do="back")
    assert client.get("/api/session").status_code == 200


@pytest.mark.parametrize("value", ["", "x", "-1", "99999999999999", "1e9", "٣", "999999999999"])
def test_a_made_up_cut_cuts_nothing(app, value):
    client = app.test_client()
    client.set_cookie(pages.CUT_COOKIE, value)
    assert client.get("/api/session").status_code == 200


def test_the_labels_on_the_screen_hold_their_marks(app):
    """Read back by an independent decoder, ZXing in C++, from a rendering of the page's own rectangles."""
    import zxingcpp
    from PIL import Image, ImageDraw

    page = app.test_client().get("/demo/labels").text
    labels = re.findall(r'viewBox="0 0 (\d+) \d+".*?d="([^"]+)".*?<strong>([^<]+)<span>([^<]+)', page, re.DOTALL)
    assert len(labels) >= 10
    for side, path, base, check in labels:
        image = Image.new("L", (int(side) * 8, int(side) * 8), 255)
        pen = ImageDraw.Draw(image)
        for left, top, width, height in re.findall(r"M(\d+) (\d+)h(\d+)v(\d+)", path):
            x, y = int(left) * 8, int(top) * 8
            pen.rectangle((x, y, x + int(width) * 8 - 1, y + int(height) * 8 - 1), fill=0)
        assert [one.text for one in zxingcpp.read_barcodes(image)] == [parse_mark(base + check)]


def test_the_same_labels_can_be_printed(app):
    answer = app.test_client().get("/demo/labels.pdf")
    assert answer.mimetype == "application/pdf"
    assert answer.data.startswith(b"%PDF")


def test_where_phones_can_come_a_square_leads_them_to_trust_first(app):
    assert "cellarslate demo --lan" in app.test_client().get("/demo/").text
    app.config["TRUST_URL"] = "http://192.168.1.20:8081/trust"
    page = app.test_client().get("/demo/").text
    assert "192.168.1.20:8081/trust" in page
    assert re.search(r'<div class="qr">\s*<svg', page)
