"""The API as a stranger's tool sees it: one shape of answer, whatever is sent."""

from __future__ import annotations

import gzip
import json
import uuid
from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest
from flask import Flask
from flask.testing import FlaskClient

from webapp import create_app
from webapp.book.house import devices, people, registry
from webapp.book.record import log
from webapp.trade.marks import make_mark

FERMENTER = make_mark("F3")
ERROR_KEYS = {"marker", "ok", "error", "problems", "status"}
STAMP = "2025-09-24T08:05:00+02:00"


@pytest.fixture
def app(tmp_path: Path) -> Iterator[Flask]:
    made = create_app(tmp_path, testing=True)
    book = made.extensions["book"]
    registry.put_vessel(book, {"mark": FERMENTER, "name": "F3", "title": "Fermenter 3", "sort": "fermenter"}, by="MD")
    people.put_person(book, {"code": "NS", "name": "Noor", "roles": ["cellar hand"], "access": "floor"}, by="MD")
    yield made
    book.close()


@pytest.fixture
def client(app: Flask) -> FlaskClient:
    """A phone that is let in."""
    made = app.test_client()
    token = devices.new_token(app.extensions["book"], "MD", "PH-2")
    answer = made.post("/api/enrol", json={"token": token, "name": "PH-2"})
    assert answer.status_code == 200, answer.text
    return made


def entry(seq: int = 1, **more: Any) -> dict[str, Any]:
    values = {"temp": {"raw": "14,6", "unit": "degC"}, "gravity": {"raw": "1.031", "unit": "SG"}}
    about = {"kind": "ferment_reading", "kind_version": 1, "mark": FERMENTER, "mark_by": "typed"}
    hand = {"person": "NS", "role": "cellar hand", "seen_by": "", "device": "d-test", "seq": seq}
    rest = {"as_read": [], "looked_again": [], "remark": "", "amends": None, "reason": ""}
    times = {"read_at": STAMP, "typed_at": STAMP}
    return {"id": str(uuid.uuid4()), **about, **times, **hand, "values": values, **rest, **more}


def batch(*entries: Any) -> dict[str, Any]:
    return {"now": datetime.now(UTC).isoformat(timespec="seconds"), "device": "d-test", "entries": list(entries)}


def test_each_entry_is_answered_in_order(client: FlaskClient) -> None:
    good, bad = entry(1), entry(2, kind="no_such_kind")
    answer = client.post("/api/hand-in", json=batch(good, bad, "no entry at all", good)).get_json()
    assert answer["marker"] == "cellarslate"
    assert answer["ok"] is True
    assert [one["settled"] for one in answer["results"]][1:] == ["refused", "refused", "known"]
    assert answer["results"][0]["settled"] in ("entered", "queried")
    assert answer["devices"]["d-test"] == {"seen": 2, "gaps": []}
    again = client.post("/api/hand-in", json=batch(good)).get_json()["results"][0]
    assert again["settled"] == "known"
    assert again["digest"] == answer["results"][0]["digest"]
    changed = client.post("/api/hand-in", json=batch({**good, "remark": "changed"})).get_json()["results"][0]
    assert changed["settled"] == "clash"


def test_an_empty_batch_asks_how_far_the_book_has_seen(client: FlaskClient) -> None:
    client.post("/api/hand-in", json=batch(entry(1), entry(4)))
    answer = client.post("/api/hand-in", json=batch()).get_json()
    assert answer["results"] == []
    assert answer["devices"]["d-test"] == {"seen": 4, "gaps": [[2, 3]]}


def test_a_gzipped_body_is_taken(client: FlaskClient) -> None:
    body = gzip.compress(json.dumps(batch(entry())).encode())
    answer = client.post(
        "/api/hand-in", data=body, headers={"Content-Type": "application/json", "Content-Encoding": "gzip"}
    )
    assert answer.status_code == 200
    assert len(answer.get_json()["results"]) == 1


JSON = "application/json"
TOO_MANY = json.dumps({"now": STAMP, "device": "d", "entries": [{}] * 201})
# Without the time in it: files that are tested side by side must come to the same names.
BOMB = gzip.compress(b'{"a":"' + b"x" * 50_000_000 + b'"}', mtime=0)
CUT_OFF = gzip.compress(b"{}", mtime=0)[:-4]
LARGE = json.dumps({"now": STAMP, "device": "d", "entries": ["x" * 600_000]})


@pytest.mark.parametrize(
    ("method", "path", "body", "headers", "status"),
    [
        ("GET", "/api/nothing", None, {}, 404),
        ("GET", "/api/hand-in", None, {}, 405),
        ("POST", "/api/cards", "{}", {"Content-Type": JSON}, 405),
        ("GET", "/api/cards?since=-1", None, {}, 400),
        ("GET", "/api/cards?since=abc", None, {}, 400),
        ("GET", "/api/cards?since=99999999999999999999", None, {}, 400),
        ("GET", "/api/cards?since=1e3", None, {}, 400),
        ("GET", f"/api/cards?goods={'a' * 65}", None, {}, 400),
        ("GET", "/api/cards?goods=%C3%A4", None, {}, 400),
        ("POST", "/api/hand-in", "{}", {"Content-Type": "text/plain"}, 415),
        ("POST", "/api/hand-in", "a=1", {"Content-Type": "application/x-www-form-urlencoded"}, 415),
        ("POST", "/api/hand-in", "{}", {"Content-Type": JSON, "Content-Encoding": "br"}, 415),
        ("POST", "/api/hand-in", "not json", {"Content-Type": JSON}, 400),
        ("POST", "/api/hand-in", b"\xff\xfe", {"Content-Type": JSON}, 400),
        ("POST", "/api/hand-in", b"no gzip", {"Content-Type": JSON, "Content-Encoding": "gzip"}, 400),
        ("POST", "/api/hand-in", CUT_OFF, {"Content-Type": JSON, "Content-Encoding": "gzip"}, 400),
        ("POST", "/api/hand-in", "[" * 100_000, {"Content-Type": JSON}, 400),
        ("POST", "/api/hand-in", "[]", {"Content-Type": JSON}, 422),
        ("POST", "/api/hand-in", "null", {"Content-Type": JSON}, 422),
        ("POST", "/api/hand-in", '{"now": 1, "device": [], "entries": {}}', {"Content-Type": JSON}, 422),
        ("POST", "/api/hand-in", TOO_MANY, {"Content-Type": JSON}, 413),
        ("POST", "/api/hand-in", LARGE, {"Content-Type": JSON}, 413),
        ("POST", "/api/hand-in", BOMB, {"Content-Type": JSON, "Content-Encoding": "gzip"}, 413),
        ("POST", "/api/hand-in", "{}", {"Content-Type": JSON, "Origin": "https://else.example"}, 403),
        ("POST", "/api/hand-in", "{}", {"Content-Type": JSON, "Sec-Fetch-Site": "cross-site"}, 403),
        ("POST", "/api/hand-in", "{}", {"Content-Type": JSON, "Sec-Fetch-Site": "same-site"}, 403),
        ("POST", "/api/enrol", "{}", {"Content-Type": JSON}, 422),
        ("POST", "/api/enrol", '{"token": 7}', {"Content-Type": JSON}, 422),
        ("POST", "/api/enrol", '{"token": "guess"}', {"Content-Type": JSON}, 403),
    ],
)
def test_every_error_has_the_one_shape(
    client: FlaskClient, method: str, path: str, body: Any, headers: dict[str, str], status: int
) -> None:
    answer = client.open(path, method=method, data=body, headers=headers)
    assert answer.status_code == status, answer.text[:300]
    found = answer.get_json()
    assert set(found) == ERROR_KEYS
    assert (found["marker"], found["ok"], found["status"]) == ("cellarslate", False, status)
    assert len(found["error"]) > 10, "a sentence"


def test_a_body_that_is_no_batch_is_told_its_faults_in_words(client: FlaskClient) -> None:
    answer = client.post("/api/hand-in", json={"now": 7, "device": "d" * 41, "head": [1]})
    assert answer.status_code == 422
    assert {one["field"]: one["words"] for one in answer.get_json()["problems"]} == {
        "now": "Not a valid string.", "device": "Longer than maximum length 40.", "head": "Length must be 2.",
        "entries": "Missing data for required field.",
    }


@pytest.mark.parametrize("path", ["/api/cards", "/api/hand-in"])
def test_a_stranger_is_told_that_nothing_is_lost(app: Flask, path: str) -> None:
    stranger = app.test_client()
    answer = stranger.post(path, json=batch(entry())) if path.endswith("in") else stranger.get(path)
    assert answer.status_code == 401
    assert "nothing is lost" in answer.get_json()["error"]


def test_a_number_that_is_none_spoils_its_own_entry_only(client: FlaskClient) -> None:
    text = json.dumps(batch(entry(1), entry(2), entry(3)))
    text = text.replace('"seq": 2', '"seq": 1e999').replace('"kind_version": 1', '"kind_version": NaN', 1)
    answer = client.post("/api/hand-in", data=text, content_type="application/json").get_json()
    settled = [one["settled"] for one in answer["results"]]
    assert settled[:2] == ["refused", "refused"]
    assert settled[2] in ("entered", "queried")


@pytest.mark.parametrize(
    "raw",
    [
        "<script>alert(1)</script>",
        "'; DROP TABLE entries; --",
        "NaN",
        "1e999",
        "\u202e14,6",
        "🥃",
        "x" * 2001,
        "\x00",
        "\ud800",
    ],
)
def test_hostile_text_in_a_field_is_kept_as_text_and_refused_as_a_figure(
    app: Flask, client: FlaskClient, raw: str
) -> None:
    hostile = entry(1)
    hostile["values"]["temp"]["raw"] = raw
    good = entry(2)
    text = json.dumps(batch(hostile, good))
    answer = client.post("/api/hand-in", data=text, content_type="application/json").get_json()
    assert answer["results"][0]["settled"] == "refused"
    assert answer["results"][1]["settled"] in ("entered", "queried")
    assert [one["id"] for one in log.find_entries(app.extensions["book"])] == [good["id"]]


def test_cards_come_with_people_and_a_cursor(client: FlaskClient) -> None:
    answer = client.get("/api/cards").get_json()
    assert [card["mark"] for card in answer["cards"]] == [FERMENTER]
    assert {"book_id", "server_now", "cursor", "more", "gone", "people", "instruments", "site", "notes",
            "tastings"} <= set(answer)
    assert [person["code"] for person in answer["people"]] == ["NS"]
    assert client.get(f"/api/cards?since={answer['cursor']}").get_json()["cards"] == []
    beyond = client.get(f"/api/cards?since={answer['cursor'] + 1000}").get_json()
    assert [card["mark"] for card in beyond["cards"]] == [FERMENTER], "a cursor of another past begins afresh"


def test_goods_come_to_whoever_asks_and_only_when_they_have_changed(client: FlaskClient) -> None:
    assert not {"goods", "goods_rev"} & set(client.get("/api/cards").get_json()), "an earlier phone gets what it knows"
    first = client.get("/api/cards?goods=").get_json()
    assert first["goods"] == []
    again = client.get(f"/api/cards?goods={first['goods_rev']}").get_json()
    assert again["goods_rev"] == first["goods_rev"]
    assert "goods" not in again


def test_a_code_lets_one_phone_in_once_and_its_cookie_is_out_of_reach_of_scripts(app: Flask) -> None:
    token = devices.new_token(app.extensions["book"], "MD", "PH-9")
    first, second = app.test_client(), app.test_client()
    answer = first.post("/api/enrol", json={"token": token, "name": "PH-9"})
    cookie = answer.headers["Set-Cookie"]
    assert "HttpOnly" in cookie
    assert "SameSite=Lax" in cookie
    assert first.get("/api/session").get_json()["device"] == answer.get_json()["device"]
    assert second.post("/api/enrol", json={"token": token, "name": "PH-9"}).status_code == 403
    assert second.get("/api/session").get_json()["device"] is None


def test_guessing_codes_is_slowed_down(app: Flask) -> None:
    from webapp.floor.api import enrol_tries

    guesser = app.test_client()
    from_there = {"environ_base": {"REMOTE_ADDR": "192.0.2.7"}}
    guesses = [f"a guess as long as what a QR carries, {i}" for i in range(12)]
    answers = [guesser.post("/api/enrol", json={"token": guess}, **from_there) for guess in guesses]
    enrol_tries.passed("192.0.2.7")
    assert [answer.status_code for answer in answers] == [403] * 10 + [429] * 2
    assert 0 < int(answers[-1].headers["Retry-After"]) <= 61
