"""Whose PIN a phone holds, and what it enters for people who have not typed theirs on it."""

from datetime import UTC, datetime

import pytest

import webapp.kinds
from tests.access.test_attacks_hand_in import entry, send
from tests.access.test_signed_entries import second_phone
from webapp.book.house import people, registry
from webapp.book.record import log
from webapp.book.record.way import read_way
from webapp.floor import shown as shown_pages

NOW = datetime(2026, 5, 11, 10, 0, tzinfo=UTC)


@pytest.fixture
def book(app):
    book = app.extensions["book"]
    people.set_pin(book, "OL", "2468", by="OL")
    for tries in (shown_pages.here_tries, shown_pages.person_tries):
        tries._failed.clear()
    return book


def pins(client):
    return {one["code"]: bool(one["pin"]) for one in client.get("/api/cards").json["people"]}


def show(client, code="OL", pin="2468"):
    return client.post("/api/hand", json={"person": code, "pin": pin})


def found(book, client, device, **more):
    made = entry(device=device["id"], **more)
    (result,) = send(client, made)["results"]
    assert result["settled"] != "refused", result
    codes = {one["code"] for one in result.get("queries", ()) if one["code"].startswith("hand_")}
    return read_way(log.load_entry(book, made["id"])["via"]).findings, codes


def test_a_phone_holds_the_pins_of_those_who_typed_theirs_on_it(app, book, phone):
    client, _ = phone
    other, _ = second_phone(app)
    assert not any(pins(client).values())
    assert [one["has_pin"] for one in client.get("/api/cards").json["people"] if one["code"] == "OL"] == [True]
    assert show(client, pin="1111").status_code == 403
    assert not any(pins(client).values())
    assert show(client, code="ol").json["pin"]["rounds"] == people.PIN_ROUNDS
    assert [code for code, is_held in pins(client).items() if is_held] == ["OL"]
    assert not any(pins(other).values())
    people.set_pin(book, "OL", "1357", by="OL")  # another PIN is typed anew everywhere
    assert not any(pins(client).values())


def test_guesses_at_a_pin_are_few(app, book, phone):
    client, _ = phone
    other, _ = second_phone(app)
    answers = [show(client, pin=f"{n:04}").status_code for n in range(7)]
    assert answers == [403] * 5 + [429] * 2
    assert show(client).status_code == 429  # the right one too, until the minute is over
    assert show(other).status_code == 200
    assert show(client, code="WK").status_code == 403  # who has none, has no PIN to guess
    for odd in ({}, [], {"person": "OL"}, {"person": "OL", "pin": ""}, {"person": 1, "pin": "2468"}):
        assert client.post("/api/hand", json=odd).status_code == 422


def test_what_a_phone_enters_for_somebody_who_never_used_it_is_asked_about(app, book, phone):
    client, device = phone
    assert found(book, client, device, person="OL", seq=1, shown="") == ("n", {"hand_not_shown"})
    assert found(book, client, device, person="OL", seq=2, shown="pin") == ("n", {"hand_not_shown"})  # it says so only
    assert found(book, client, device, person="OL", seq=3) == ("n", {"hand_not_shown"})  # and saying nothing is no way
    assert found(book, client, device, person="WK", seq=4, shown="") == ("", set())  # who has no PIN cannot show one
    assert found(book, client, device, person="WK", seq=5, shown="", seen_by="OL") == ("w", {"hand_witness"})
    show(client)
    assert found(book, client, device, person="OL", seq=6, shown="pin") == ("p", set())
    assert found(book, client, device, person="OL", seq=7, shown="") == ("n", {"hand_not_shown"})  # not since its lock
    assert found(book, client, device, person="WK", seq=8, shown="", seen_by="OL") == ("", set())
    other, second = second_phone(app)
    assert found(book, other, second, person="OL", seq=1, shown="pin") == ("n", {"hand_not_shown"})


def test_what_concerns_tax_wants_the_pin_where_the_house_says_so(app, book, phone):
    client, device = phone
    show(client)
    kind = webapp.kinds.get("loss")
    given = {spec.name: {"raw": spec.choices[0][0] if spec.choices else "1"} for spec in kind.fields if spec.required}
    given["volume"] = {"raw": "2", "unit": "L"}
    loss = {"kind": "loss", "kind_version": kind.version, "values": given}
    assert found(book, client, device, person="OL", seq=1, shown="pin", **loss)[0] == "p"
    registry.set_site(book, {"pin_at_tax": True}, by="OL")
    assert found(book, client, device, person="OL", seq=2, shown="pin", **loss) == ("f", {"hand_second"})
    assert found(book, client, device, person="WK", seq=3, shown="", **loss) == ("f", {"hand_second"})
    assert found(book, client, device, person="OL", seq=4, shown="now", **loss)[0] == "P"
    assert found(book, client, device, person="OL", seq=5, shown="pin")[0] == "p"  # a note concerns no tax


def test_a_login_that_enters_for_somebody_else_is_asked_about(app, book, sign_in):
    client = sign_in("WK")
    own, others = entry(person="WK"), entry(person="OL", seq=2)
    send(client, own, others)
    assert [log.load_entry(book, one["id"])["via"] for one in (own, others)] == ["page WK", "page WK n"]
