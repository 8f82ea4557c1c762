"""The API keeps to its own description: schemathesis makes the requests, from the served OpenAPI document."""

import re
from datetime import UTC, datetime

import pytest
import schemathesis
from hypothesis import HealthCheck, given, settings

from webapp import create_app
from webapp.access.tries import Tries
from webapp.book import intake
from webapp.book.house import devices, people, reading_keys, registry
from webapp.floor import api as floor_api
from webapp.kinds import as_card
from webapp.readers import guard
from webapp.trade.marks import make_mark


@pytest.fixture(scope="module")
def world(tmp_path_factory):
    """An app with one vessel, two people, one phone, one entry; the cookies of the phone and of the desk."""
    app = create_app(tmp_path_factory.mktemp("api"), testing=True)
    book = app.extensions["book"]
    people.put_person(book, {"code": "NS", "name": "Noor S.", "roles": ["cellar hand"], "access": "floor"}, by="OL")
    registry.put_vessel(
        book, {"mark": make_mark("F3"), "name": "F3", "title": "Fermenter 3", "sort": "fermenter"}, by="OL"
    )
    _, secret = devices.enrol_device(book, devices.new_token(book, by="OL", name="PH-2"), "PH-2", datetime.now(UTC))
    people.put_person(book, {"code": "OL", "name": "Ola L.", "roles": [], "access": "office"}, by="OL")
    people.set_password(book, "OL", PASSWORD)
    registry.put_vessel(book, {"mark": make_mark("T1"), "name": "T1", "title": "Tank 1", "sort": "tank"}, by="OL")
    log(book, "ferment_reading", "F3", temp=("14.6", "degC"), gravity=("1.031", "SG"))
    log(
        book, "receipt", "T1", consignor=("Neighbour", ""), document=("7", ""), purpose=("in_bond", ""),
        spirit=("pear spirit", ""), to_account=("storage", ""), declared_volume=("100", "L"),
        declared_strength=("60", "pct_vol"), volume=("100", "L"), temp=("20", "degC"), strength=("60", "pct_vol"),
        seals=("yes", ""),
    )
    yield app, {"/api": f"cellarslate_device={secret}", "/desk": f"cellarslate={session_of(app)}"}
    book.close()


def log(book, kind, name, **values):
    """Enter one entry about the vessel of that name."""
    result = intake.enter_page_entry(
        book, kind=kind, mark=make_mark(name), person="OL", role="", now=datetime.now(UTC), read_at=READ_AT,
        values={field: {"raw": raw, "unit": unit} for field, (raw, unit) in values.items()},
    )
    assert result["settled"] in ("entered", "queried"), result


def session_of(app):
    """Return the session cookie of a person who signs in."""
    client = app.test_client()
    token = re.search(r'name="csrf_token"[^>]*value="([^"]+)"', client.get("/sign-in").text)[1]
    answer = client.post("/sign-in", data={"csrf_token": token, "code": "OL", "password": PASSWORD})
    assert answer.status_code == 302
    return client.get_cookie("cellarslate").value


ADDRESSES = [
    ("POST", "/api/hand-in"),
    ("GET", "/api/cards"),
    ("GET", "/api/session"),
    ("POST", "/api/enrol"),
    ("POST", "/api/phone-key"),
    ("POST", "/api/hand"),
    ("GET", "/api/openapi.json"),
    ("GET", "/api/enclosures"),
    ("GET", "/api/enclosures/{name}"),
    ("PUT", "/api/enclosures/{name}"),
    ("GET", "/api/enclosures/{name}/thumb"),
    ("GET", "/api/enclosures/{name}/place"),
    ("GET", "/api/labels/{mark}.png"),
    ("GET", "/api/read/entries"),
    ("GET", "/api/read/entries.csv"),
    ("GET", "/api/read/stock"),
    ("GET", "/api/read/stock.csv"),
    ("GET", "/api/read/periods"),
    ("GET", "/api/read/periods/{name}"),
    ("GET", "/api/read/periods/{name}.csv"),
    ("GET", "/api/read/trace/{key}"),
    ("GET", "/api/read/cards"),
    ("GET", "/api/read/due.ics"),
    ("GET", "/desk/entries.json"),
    ("GET", "/desk/entries.csv"),
    ("GET", "/desk/bottled.csv"),
    ("GET", "/desk/periods/{name}.csv"),
    ("GET", "/desk/periods/{name}.json"),
    ("GET", "/desk/rules/{no}/entries.csv"),
    ("GET", "/desk/trace/{key}.csv"),
    ("GET", "/desk/trace/{key}.json"),
]
READ_AT = "2025-09-24T08:05:00+02:00"
PASSWORD = "eight words that nobody else has used yet"


@pytest.mark.parametrize(("method", "path"), ADDRESSES, ids=[path for _, path in ADDRESSES])
def test_every_answer_is_as_described(world, monkeypatch, method, path):
    app, cookies = world
    cookie = {"Cookie": cookies["/" + path.split("/")[1]]}
    if path.startswith("/api/read/"):
        folder, now = app.config["DATA_DIR"], datetime.now(UTC)
        key = reading_keys.make_key(folder, "all", reading_keys.SCOPES, 1, "OL", now)
        cookie = {"Authorization": f"Bearer {key}"}
        monkeypatch.setattr(guard, "_wrong", Tries(most=10**9, window_s=60))
    # Guessing a phone's code is slowed down; here every guess must be answered.
    monkeypatch.setattr(floor_api, "enrol_tries", Tries(most=10**9, window_s=60))
    schema = schemathesis.openapi.from_wsgi("/api/openapi.json", app)

    @given(case=schema[path][method].as_strategy())
    @settings(max_examples=60, deadline=None, suppress_health_check=list(HealthCheck), derandomize=True, database=None)
    def answers(case):
        case.call_and_validate(headers={**dict(case.headers or {}), **cookie, "Accept-Encoding": "identity"})

    answers()


def test_the_description_names_every_address_of_the_api(world):
    app, _ = world
    described = set(app.test_client().get("/api/openapi.json").json["paths"])
    rules = [re.sub(r"<(\w+)>", r"{\1}", rule.rule) for rule in app.url_map.iter_rules()]
    # What the phone fetches of its own version, as its words, is no part of it.
    served = {rule for rule in rules if rule.startswith("/api/") or re.fullmatch(r"/desk/.*\.(csv|json)", rule)}
    assert described == served == {path for _, path in ADDRESSES}


def test_a_card_is_described_field_by_field(world):
    app, cookies = world
    client = app.test_client(use_cookies=False)
    cards = client.get("/api/cards", headers={"Cookie": cookies["/api"]}).json["cards"]
    made = next(card for card in cards if card["name"] == "F3")
    described = client.get("/api/openapi.json").json["components"]["schemas"]["Card"]
    assert set(described["required"]) == set(described["properties"])
    # A card says more of a still, a cask and a ferment; this is a ferment's.
    assert set(made) - {"ferment"} == set(described["properties"])
    assert made["queries"], "a card without a question proves little"
    assert as_card.CardSchema().validate(made) == {}


def test_the_files_of_the_desk_come_as_described_to_whoever_is_signed_in(world):
    app, cookies = world
    client = app.test_client(use_cookies=False)
    paths = client.get("/api/openapi.json").json["paths"]
    # The rules of this new book have not changed, so it has no judging to send.
    for path in [path for _, path in ADDRESSES if path.startswith("/desk/") and "/rules/" not in path]:
        address = path.format(name="2025-09", key=make_mark("T1")) + "?kind=ferment_reading"
        made = client.get(address, headers={"Cookie": cookies["/desk"]})
        assert made.status_code == 200, address
        assert [made.mimetype] == list(paths[path]["get"]["responses"]["200"]["content"])
        assert client.get(address).status_code == 302
