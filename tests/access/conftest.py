"""A house with one person of each role and one phone, over a real book file."""

import pytest

from webapp import create_app
from webapp.access import journal as journal_of_access
from webapp.book.house import devices, people, registry
from webapp.trade.marks import make_mark

PASSWORD = "a long enough secret"


@pytest.fixture
def app(tmp_path):
    app = create_app(tmp_path, testing=True)
    book = app.extensions["book"]
    registry.set_site(book, {"name": "Tarrowdene Orchard Stills", "units": "metric"}, by="OL")
    for code, name, access in (
        ("WK", "Wim K.", "floor"),
        ("IM", "Ilka M.", "distiller"),
        ("OL", "Odette L.", "office"),
    ):
        people.put_person(book, {"code": code, "name": name, "roles": ["hand"], "access": access}, by="OL")
        people.set_password(book, code, PASSWORD)
    registry.put_vessel(
        book, {"mark": make_mark("F1"), "name": "F1", "title": "Fermenter 1", "sort": "fermenter"}, by="OL"
    )
    journal_of_access._again.__init__(most=1, window_s=60)  # what it has told of in another test
    yield app
    book.close()


@pytest.fixture
def sign_in(app):
    """Return a function that gives a client signed in as that person."""

    def as_person(code):
        client = app.test_client()
        if code:
            token = csrf_of(client.get("/sign-in").text)
            answer = client.post("/sign-in", data={"code": code, "password": PASSWORD, "csrf_token": token})
            assert answer.status_code == 302, answer.text
        return client

    return as_person


@pytest.fixture
def phone(app):
    """Return a client that is an enrolled phone, and its device."""
    from datetime import UTC, datetime

    book = app.extensions["book"]
    token = devices.new_token(book, by="OL", name="PH-1")
    device, secret = devices.enrol_device(book, token, "PH-1", datetime.now(UTC))
    client = app.test_client()
    client.set_cookie("cellarslate_device", secret)
    return client, device


def csrf_of(page):
    """Return the token that stands in a page."""
    return page.split('name="csrf_token"')[1].split('value="')[1].split('"')[0]
