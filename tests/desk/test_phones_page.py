"""Letting phones in from the desk: the office and distillers, by a square to scan or a code to type; shutting out."""

import re
from datetime import UTC, datetime

import pytest

from webapp.book.house import codes, devices

from .conftest import token


def ask_for_a_code(client):
    return client.post("/desk/phones", data={"csrf_token": token(client, "/desk/phones"), "name": "PH-6"}).text


@pytest.mark.parametrize("who", ["IM", "OL"])
def test_the_office_and_a_distiller_let_a_phone_in_by_a_typed_code(house, who):
    page = ask_for_a_code(house.client(who))
    shown = re.search(r'<p class="code-to-type"><code>([^<]+)</code>', page)[1]
    assert re.fullmatch(rf"[{codes.ALPHABET}]{{4}}-[{codes.ALPHABET}]{{4}}", shown)
    assert "/start</strong>" in page
    joined = house.app.test_client().post("/api/enrol", json={"token": shown, "name": ""})
    assert joined.json["device"]["name"] == "PH-6"
    (device,) = [one for one in devices.devices(house.book) if one["name"] == "PH-6"]
    assert device["enrolled_by"] == who, "who gave the leave stands beside the phone"


def test_the_square_of_the_same_leave_is_then_good_for_nobody(house):
    page = ask_for_a_code(house.client("IM"))
    shown = re.search(r'<p class="code-to-type"><code>([^<]+)</code>', page)[1]
    link = re.search(r"/enrol/([\w-]{40,})", page)[1]
    browser = house.app.test_client()
    assert browser.post("/api/enrol", json={"token": shown, "name": ""}).status_code == 200
    assert "used already" in browser.post("/api/enrol", json={"token": link, "name": ""}).json["error"]


def test_a_distiller_shuts_no_phone_out_and_the_office_does(house):
    distiller, office = house.client("IM"), house.client("OL")
    token_of_phone = devices.new_token(house.book, "OL", "PH-7")
    device, _ = devices.enrol_device(house.book, token_of_phone, "", datetime.now(UTC))
    assert "Shut out" not in distiller.get("/desk/phones").text
    assert "Shut out" in office.get("/desk/phones").text
    path = f"/desk/phones/{device['id']}/revoke"
    assert distiller.post(path, data={"csrf_token": token(distiller, "/desk/phones")}).status_code == 403
    assert office.post(path, data={"csrf_token": token(office, "/desk/phones")}).status_code == 302


def test_a_floor_hand_lets_nobody_in(house):
    assert house.client("NS").get("/desk/phones").status_code == 403


def test_without_script_a_phone_joins_by_typing_too_and_is_told_of_a_slip(house):
    grant = devices.new_grant(house.book, "IM", "PH-8")
    browser = house.app.test_client()
    wrong = grant.code[:-1] + ("2" if grant.code[-1] != "2" else "3")
    form = {"csrf_token": token(browser, "/start"), "name": ""}
    assert "One character of this code is not right" in browser.post("/start", data={**form, "token": wrong}).text
    joined = browser.post("/start", data={**form, "token": codes.show_code(grant.code).lower()})
    assert joined.status_code == 302
    assert any(one["name"] == "PH-8" for one in devices.devices(house.book))
