"""The floor without script: a form posted as in old days, its faults shown beside what was typed."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from flask import Flask
from flask.testing import FlaskClient

from webapp import create_app
from webapp.book.house import devices, people, registry
from webapp.book.record import log
from webapp.trade.marks import make_mark

FERMENTER = make_mark("F3")
FORM = f"/m/{FERMENTER}/log/ferment_reading"
PASSWORD = "plum and pear and quince"


@pytest.fixture
def app(tmp_path: Path) -> Iterator[Flask]:
    made = create_app(tmp_path, testing=True)
    book = made.extensions["book"]
    registry.put_vessel(book, {"mark": FERMENTER, "name": "F3", "title": "Fermenter 3", "sort": "fermenter"}, by="NS")
    people.put_person(book, {"code": "NS", "name": "Noor", "roles": ["cellar hand"], "access": "floor"}, by="NS")
    people.set_password(book, "NS", PASSWORD)
    yield made
    book.close()


@pytest.fixture
def client(app: Flask) -> FlaskClient:
    made = app.test_client()
    answer = made.post("/sign-in", data={"csrf_token": _token(made, "/sign-in"), "code": "NS", "password": PASSWORD})
    assert answer.status_code == 302
    return made


def _token(client: FlaskClient, path: str) -> str:
    found = re.search(r'name="csrf_token"[^>]*value="([^"]+)"', client.get(path).text)
    assert found, "the page has a form with a token"
    return found[1]


def test_a_reading_goes_into_the_book(app: Flask, client: FlaskClient) -> None:
    typed = {"csrf_token": _token(client, FORM), "temp": "14,6", "temp_unit": "degC", "gravity": "1.031",
             "gravity_unit": "SG", "cap": "thick", "remark": "by hand"}
    answer = client.post(FORM, data=typed)
    assert (answer.status_code, answer.headers.get("Location")) == (302, f"/m/{FERMENTER}")
    (found,) = log.find_entries(app.extensions["book"])
    assert (found["kind"], found["mark"], found["person"]) == ("ferment_reading", FERMENTER, "NS")
    assert client.get(FORM).status_code == 200


def test_what_is_wrong_is_said_and_what_was_typed_stays(app: Flask, client: FlaskClient) -> None:
    typed = {"csrf_token": _token(client, FORM), "temp": "warm", "temp_unit": "degC", "remark": "<b>mind</b> the cap"}
    answer = client.post(FORM, data=typed)
    assert answer.status_code == 422
    page = answer.text
    assert 'value="warm"' in page
    assert "&lt;b&gt;mind&lt;/b&gt; the cap" in page
    assert "<b>mind" not in page
    assert "is missing. Type it." in page, "the gravity"
    assert "no plain number" in page, "the temperature"
    assert log.find_entries(app.extensions["book"]) == []


def test_signed_out_meanwhile_loses_nothing_that_was_typed(app: Flask) -> None:
    stranger = app.test_client()
    typed = {"csrf_token": _token(stranger, FORM), "temp": "14,6", "temp_unit": "degC", "gravity": "1.031"}
    answer = stranger.post(FORM, data=typed)
    assert answer.status_code == 422
    assert 'value="14,6"' in answer.text
    assert "Sign in first" in answer.text
    assert log.find_entries(app.extensions["book"]) == []


def test_a_form_without_our_token_is_not_taken(app: Flask, client: FlaskClient) -> None:
    answer = client.post(FORM, data={"temp": "14,6", "temp_unit": "degC", "gravity": "1.031", "gravity_unit": "SG"})
    assert answer.status_code == 400
    assert log.find_entries(app.extensions["book"]) == []


@pytest.mark.parametrize(
    ("path", "status"),
    [
        ("/", 200), ("/today", 200), ("/scan", 200), (f"/m/{FERMENTER}", 200), (f"/M/{FERMENTER}", 200),
        (f"/m/{FERMENTER}/run", 200), ("/slate", 200), ("/more", 200), ("/who", 200), ("/start", 200),
        ("/enrol/abc", 200), ("/log/shift_note", 200), (FORM, 200), ("/scan?mark=F3-0", 422), ("/m/F9-0", 404),
        (f"/m/{make_mark('F99')}", 404), (f"/m/{FERMENTER}/log/nothing", 404), (f"/m/{FERMENTER}/log/answer", 404),
        ("/log/ferment_reading", 302), (f"/scan?mark={FERMENTER.replace('-', '').lower()}", 302),
    ],
)
def test_every_page_answers(client: FlaskClient, path: str, status: int) -> None:
    assert client.get(path).status_code == status


def test_a_phone_without_script_is_let_in_by_the_form(app: Flask) -> None:
    token = devices.new_token(app.extensions["book"], "NS", "PH-2")
    stranger = app.test_client()
    page = f"/enrol/{token}"
    typed = {"csrf_token": _token(stranger, page), "token": token, "name": "PH-2"}
    assert stranger.post(page, data=typed).status_code == 302
    assert stranger.get("/api/session").get_json()["device"]["name"] == "PH-2"
    again = stranger.post(page, data={**typed, "csrf_token": _token(stranger, page)})
    assert again.status_code == 403
    assert "used already" in again.text
