"""The API keeps to its own description: schemathesis makes the requests, from the served OpenAPI document."""

from datetime import UTC, datetime

import pytest
import schemathesis
from hypothesis import HealthCheck, given, settings

from webapp import create_app
from webapp.access.tries import Tries
from webapp.book.house import devices, people, registry
from webapp.floor import api as floor_api
from webapp.trade.marks import make_mark


@pytest.fixture(scope="module")
def world(tmp_path_factory):
    """An app with one vessel, one person, one phone; and the phone's cookie."""
    app = create_app(tmp_path_factory.mktemp("api"), testing=True)
    book = app.extensions["book"]
    people.put_person(book, {"code": "NS", "name": "Noor S.", "roles": ["cellar hand"], "access": "floor"}, by="OL")
    registry.put_vessel(
        book, {"mark": make_mark("F3"), "name": "F3", "title": "Fermenter 3", "sort": "fermenter"}, by="OL"
    )
    _, secret = devices.enrol(book, devices.new_token(book, by="OL", name="PH-2"), "PH-2", datetime.now(UTC))
    yield app, {"Cookie": f"cellarslate_device={secret}"}
    book.close()


ADDRESSES = [
    ("POST", "/api/hand-in"),
    ("GET", "/api/cards"),
    ("GET", "/api/session"),
    ("POST", "/api/enrol"),
    ("GET", "/api/openapi.json"),
]


@pytest.mark.parametrize(("method", "path"), ADDRESSES, ids=[path for _, path in ADDRESSES])
def test_every_answer_is_as_described(world, monkeypatch, method, path):
    app, cookie = world
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
    served = {rule.rule for rule in app.url_map.iter_rules() if rule.rule.startswith("/api/")}
    assert described == served == {path for _, path in ADDRESSES}
