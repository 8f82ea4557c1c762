"""Passkeys: made, used, ended; what is no answer to the question, or not at this house, is refused.

What devices say is that of W3C, Web Authentication Level 3, 16 (test vectors), and of the tests of the library
py_webauthn (both in tests/vectors/webauthn.json, with their sources); the flows are played with a device
made of `cryptography` and `cbor2` by 6.1 and 6.5.1 of the same text.
"""

import hashlib
import json
import os
from datetime import UTC, datetime
from pathlib import Path

import cbor2
import pytest
from cryptography.hazmat.primitives import hashes
from cryptography.hazmat.primitives.asymmetric import ec
from flask import session
from webauthn.helpers import base64url_to_bytes, bytes_to_base64url

from tests.access.conftest import PASSWORD, csrf_of
from webapp.access import guard, pages
from webapp.access import passkeys as door
from webapp.book import verification
from webapp.book.house import invitations, journal, passkeys, people, registry
from webapp.keeping.tables import record_tables
from webapp.serving.site import Site

UP, UV, AT = 1, 4, 64
VECTORS = json.loads((Path(__file__).parents[1] / "vectors" / "webauthn.json").read_text("utf-8"))
SELF, NOT_KNOWN, FRAMED = VECTORS["made"].values()
USED = VECTORS["used"]
HOME = "http://localhost"


class Device:
    """Something that holds passkeys: ES256, no attestation."""

    def __init__(self, rp_id="localhost", origin=HOME):
        self.key, self.id = ec.generate_private_key(ec.SECP256R1()), os.urandom(16)
        self.rp_id, self.origin, self.count, self.handle = rp_id, origin, 0, b""

    def make(self, options, flags=UP | UV | AT):
        """Return a new passkey as JSON, in the form of navigator.credentials.create()."""
        self.handle = base64url_to_bytes(options["user"]["id"])
        x, y = (getattr(self.key.public_key().public_numbers(), name).to_bytes(32, "big") for name in "xy")
        key = cbor2.dumps({1: 2, 3: -7, -1: 1, -2: x, -3: y})
        data = self._data(flags) + bytes(16) + len(self.id).to_bytes(2, "big") + self.id + key
        made = cbor2.dumps({"fmt": "none", "attStmt": {}, "authData": data})
        client = self._client("webauthn.create", options["challenge"])
        return said(self.id, clientDataJSON=client, attestationObject=made)

    def answer(self, options, flags=UP | UV, **other):
        """Return a passkey's answer as JSON, in the form of navigator.credentials.get(); `other` replaces parts."""
        client = self._client("webauthn.get", other.get("challenge", options["challenge"]))
        data = self._data(flags)
        signature = self.key.sign(data + hashlib.sha256(client).digest(), ec.ECDSA(hashes.SHA256()))
        return said(
            self.id, clientDataJSON=client, authenticatorData=data, signature=other.get("signature", signature),
            userHandle=other.get("handle", self.handle),
        )

    def _data(self, flags):
        return hashlib.sha256(self.rp_id.encode()).digest() + bytes([flags]) + self.count.to_bytes(4, "big")

    def _client(self, kind, challenge):
        told = {"type": kind, "challenge": challenge, "origin": self.origin, "crossOrigin": False}
        return json.dumps(told).encode()


def said(credential, **parts):
    """Return a credential as JSON; a part that is None is left out."""
    name = bytes_to_base64url(credential)
    response = {part: bytes_to_base64url(value) for part, value in parts.items() if value is not None}
    return json.dumps({"id": name, "rawId": name, "type": "public-key", "response": response})


@pytest.fixture
def app(app):
    for tries, most in ((pages.by_name_here, 5), (pages.by_address, 30), (pages.by_name, 40)):
        tries.__init__(most=most, window_s=60)
    app.config["PASSKEY_ORIGINS"] = {HOME}
    return app


@pytest.fixture
def device(app, sign_in):
    """A device with a passkey of OL, made at the desk."""
    device, client = Device(), sign_in("OL")
    answer = make(client, device)
    assert (answer.status_code, answer.headers["Location"]) == (302, "/desk/you")
    return device


def make(client, device, name="Office computer", **how):
    page = client.get("/desk/you/passkeys/new").text
    options = json.loads(page.split("data-options=\"")[1].split('"')[0].replace("&#34;", '"'))
    fields = {"name": name, "passkey": device.make(options, **how), "csrf_token": csrf_of(page)}
    return client.post("/desk/you/passkeys/new", data=fields)


def question(client, page="/sign-in", what="sign-in"):
    token = csrf_of(client.get(page).text)
    answer = client.post("/passkey/question", data={"csrf_token": token, "for": what})
    assert answer.status_code == 200, answer.text
    return token, answer.json


def sign_in_with(app, device, **other):
    """Return the answer to a sign-in by passkey from a new browser, and that browser."""
    client = app.test_client()
    token, options = question(client)
    fields = {"passkey": device.answer(options, **other), "csrf_token": token}
    return client.post("/sign-in/passkey", data=fields), client


def lines(app):
    return [(line["sort"], line["who"], line["about"]) for line in journal.all_lines(app.config["DATA_DIR"])]


def test_one_is_made_signs_in_and_is_ended(app, device, sign_in):
    book = app.extensions["book"]
    (row,) = passkeys.passkeys_of(book, "OL")
    assert (row["name"], row["rp_id"], row["used_at"]) == ("Office computer", "localhost", None)
    assert book.db.conn.execute("SELECT ended_at FROM passkeys").fetchone() == (None,)
    answer, browser = sign_in_with(app, device)
    assert answer.status_code == 302, answer.text
    page = browser.get("/desk/you").text
    assert "Office computer" in page
    assert passkeys.passkeys_of(book, "OL")[0]["used_at"]
    assert ("passkey", "OL", "added: Office computer") in lines(app)
    assert ("signed_in", "OL", "by the passkey Office computer") in lines(app)
    token = csrf_of(page)
    assert sign_in("IM").post(f"/desk/you/passkeys/{row['credential']}/end").status_code == 400, "no token"
    assert browser.post(f"/desk/you/passkeys/{row['credential']}/end", data={"csrf_token": token}).status_code == 302
    assert ("passkey", "OL", "ended: Office computer") in lines(app)
    assert sign_in_with(app, device)[0].status_code == 401
    assert "You have none yet." in browser.get("/desk/you").text
    assert browser.get("/desk/you").status_code == 200, "who is in stays in"
    assert verification.verify(book) == []


def test_nobody_ends_the_passkey_of_somebody_else(app, device, sign_in):
    (row,) = passkeys.passkeys_of(app.extensions["book"], "OL")
    client = sign_in("IM")
    token = csrf_of(client.get("/desk/you").text)
    assert client.post(f"/desk/you/passkeys/{row['credential']}/end", data={"csrf_token": token}).status_code == 404
    assert sign_in_with(app, device)[0].status_code == 302


WRONG = {
    "another challenge": {"challenge": bytes_to_base64url(bytes(32))},
    "no finger, face or PIN": {"flags": UP},
    "nobody there": {"flags": UV},
    "another's handle": {"handle": bytes(32)},
    "no handle": {"handle": None},
    "no signature of its key": {"signature": bytes(70)},
}


@pytest.mark.parametrize("other", WRONG.values(), ids=WRONG)
def test_what_does_not_answer_the_question_is_refused(app, device, other):
    answer, browser = sign_in_with(app, device, **other)
    assert answer.status_code == 401
    assert "does not open" in answer.text
    assert browser.get("/desk/").status_code == 302
    assert lines(app)[-1][0] == "not_signed_in"
    assert lines(app)[-1][2].startswith("passkey of OL: ")


@pytest.mark.parametrize(("rp_id", "origin"), [
    ("localhost", "http://localhost:81"), ("localhost", "https://localhost"), ("localhost", "http://lokalhost.example"),
    ("example.org", HOME), ("example.org", "https://example.org"),
])
def test_what_was_signed_for_another_house_is_refused(app, device, rp_id, origin):
    device.rp_id, device.origin = rp_id, origin
    assert sign_in_with(app, device)[0].status_code == 401


def test_an_answer_opens_once_in_the_session_that_asked_and_for_five_minutes(app, device, monkeypatch):
    client, copied, stranger = app.test_client(), app.test_client(), app.test_client()
    token, options = question(client)
    copied.set_cookie("cellarslate", client.get_cookie("cellarslate").value)
    answer = {"passkey": device.answer(options)}
    assert client.post("/sign-in/passkey", data=answer | {"csrf_token": token}).status_code == 302
    assert copied.post("/sign-in/passkey", data=answer | {"csrf_token": token}).status_code == 401, "used up for a copy"
    token, _ = question(stranger)
    assert stranger.post("/sign-in/passkey", data=answer | {"csrf_token": token}).status_code == 401, "another session"
    late = app.test_client()
    token, options = question(late)
    now = guard.time.time() + 300
    monkeypatch.setattr(guard.time, "time", lambda: now)
    fields = {"passkey": device.answer(options), "csrf_token": token}
    assert late.post("/sign-in/passkey", data=fields).status_code == 401
    assert [about for *_, about in lines(app)[-3:]] == [
        "passkey of OL: answered before", lines(app)[-2][2], "passkey of OL: too late"
    ]


def test_a_count_that_goes_back_is_refused_and_noted(app, device):
    for count, status in ((5, 302), (5, 401), (4, 401), (0, 401), (6, 302)):
        device.count = count
        assert sign_in_with(app, device)[0].status_code == status, count
    assert ("not_signed_in", "", "passkey of OL: its count was 5 and came as 4: it may have a copy") in lines(app)


def test_whoever_left_or_was_invited_anew_has_none_any_more(app, device):
    book, folder, now = app.extensions["book"], app.config["DATA_DIR"], datetime.now(UTC)
    token = invitations.invite(book, folder, "OL", "IM", now)
    assert sign_in_with(app, device)[0].status_code == 302, "until the invitation is used"
    invitations.accept(book, folder, token, "gravel teapot lantern north", now)
    assert sign_in_with(app, device)[0].status_code == 401
    other = Device()
    with app.test_request_context(base_url=HOME):
        session["person"] = "IM"
        options = json.loads(door.options_to_make(people.person(book, "IM"), door.place()))
        door.keep_made(people.person(book, "IM"), "Key", other.make(options))
    assert sign_in_with(app, other)[0].status_code == 302
    people.put_person(book, {"code": "IM", "retired": True}, by="OL")
    assert sign_in_with(app, other)[0].status_code == 401
    people.put_person(book, {"code": "IM", "retired": False}, by="OL")
    assert sign_in_with(app, other)[0].status_code == 401, "and does not come back with them"
    ended = [c["after"] for c in registry.changes(book, 20) if c["what"] == "passkey" and "ended_at" in c["before"]]
    assert len(ended) == 2
    assert verification.verify(book) == []


def test_it_stands_for_the_password_once_more_but_only_ones_own(app, device, sign_in, monkeypatch):
    client, other = sign_in("OL"), sign_in("IM")
    now = guard.time.time() + 660
    monkeypatch.setattr(guard.time, "time", lambda: now)
    assert client.get("/desk/access.jsonl").headers["Location"].startswith("/again?next=")
    copied = app.test_client()
    copied.set_cookie("cellarslate", client.get_cookie("cellarslate").value)
    token, options = question(other, "/again", "again")
    assert options["allowCredentials"] == []
    fields = {"again_passkey": device.answer(options), "csrf_token": token, "next": "/desk/"}
    assert other.post("/again", data=fields).status_code == 422, "somebody else's"
    token, options = question(client, "/again", "again")
    assert [one["id"] for one in options["allowCredentials"]] == [bytes_to_base64url(device.id)]
    fields = {"again_passkey": device.answer(options, handle=None), "csrf_token": token, "next": "/desk/access.jsonl"}
    answer = client.post("/again", data=fields)
    assert (answer.status_code, answer.headers["Location"]) == (302, "/desk/access.jsonl")
    assert "attachment" in client.get("/desk/access.jsonl").headers["Content-Disposition"]
    assert copied.get("/desk/you").status_code == 302, "the old session is over, for a copy too"
    assert ("again", "OL", "by the passkey Office computer") in lines(app)


def test_a_form_on_its_way_is_carried_past_a_passkey(app, device, sign_in, monkeypatch):
    client = sign_in("OL")
    token = csrf_of(client.get("/desk/people/IM").text)
    now = guard.time.time() + 660
    monkeypatch.setattr(guard.time, "time", lambda: now)
    form = {"code": "IM", "name": "Ilka M.", "roles": "cooper", "access": "office", "csrf_token": token}
    assert "Use a passkey" in client.post("/desk/people/IM", data=form).text
    _, options = question(client, "/again", "again")
    answer = device.answer(options)
    assert client.post("/desk/people/IM", data=form | {"again_passkey": answer}).status_code == 302
    assert people.person(app.extensions["book"], "IM")["access"] == "office"


def test_an_answer_to_the_sign_in_is_none_to_the_question_once_more(app, device, sign_in):
    client = sign_in("OL")
    for asked, path, field, status in (("again", "/sign-in/passkey", "passkey", 401),
                                       ("sign-in", "/again", "again_passkey", 422)):
        token, options = question(client, "/again", asked)
        fields = {field: device.answer(options), "csrf_token": token}
        assert client.post(path, data=fields).status_code == status


def test_adding_one_wants_the_password_and_a_device_that_knows_its_person(app, sign_in, monkeypatch):
    client, device = sign_in("OL"), Device()
    assert make(client, device, flags=UP | AT).status_code == 422
    for rp_id, origin in (("localhost", "http://localhost:81"), ("example.org", HOME)):
        refused = make(client, Device(rp_id, origin))
        assert refused.status_code == 422
        assert "Press once more" in refused.text
    assert make(client, device).status_code == 302
    assert "has this passkey already" in make(client, device).text
    assert len(passkeys.passkeys_of(app.extensions["book"], "OL")) == 1
    now = guard.time.time() + 660
    monkeypatch.setattr(guard.time, "time", lambda: now)
    assert client.get("/desk/you/passkeys/new").headers["Location"].startswith("/again?next=")


def test_tries_are_counted_like_those_with_a_password(app, device):
    statuses = [sign_in_with(app, device, flags=UP)[0].status_code for _ in range(7)]
    assert statuses == [401] * 5 + [429] * 2


@pytest.mark.parametrize("answer", [
    "", "null", "[]", "{", "[" * 7000, "x" * 9000, '{"id": 3}', '{"id": "AA", "rawId": "AA", "response": {}}',
    '{"id": "A", "rawId": "A", "type": "public-key", "response": {"clientDataJSON": "A", "authenticatorData": "A", '
    '"signature": "A"}}',
])
def test_what_cannot_be_read_is_refused(app, device, answer):
    client = app.test_client()
    token, _ = question(client)
    assert client.post("/sign-in/passkey", data={"passkey": answer, "csrf_token": token}).status_code == 401


def test_a_passkey_that_was_planted_or_revived_is_found(app, device):
    book = app.extensions["book"]
    (row,) = passkeys.passkeys_of(book, "OL")
    passkeys.end_passkey(book, "OL", row["credential"], "OL", datetime.now(UTC))
    assert verification.verify(book) == []
    with book.write() as database:
        database.conn.execute("UPDATE passkeys SET ended_at = NULL")
        database.conn.execute(
            "INSERT INTO passkeys SELECT 'AAAA', 'OL', name, public_key, 0, rp_id, made_at, NULL, NULL FROM passkeys"
        )
    found = " ".join(verification.verify(book))
    assert "not as its changes say: ended_at" in found
    assert "AAAA is in the registry, and no change put it there" in found


def test_none_leaves_with_an_export_nor_comes_in_with_one(app, device):
    book = app.extensions["book"]
    assert "passkeys" not in record_tables(book)
    with book.write() as database:
        database.conn.execute("DELETE FROM passkeys")  # as a book that was taken in has it
    assert verification.verify(book) == []


@pytest.mark.parametrize(("site", "origins"), [
    (Site(Path(), "127.0.0.1", 8080, False), ["http://127.0.0.1:8080", "http://localhost:8080"]),
    (Site(Path(), "127.0.0.1", 8080, False, public_url="https://Log.stillhouse.example/"),
     ["https://log.stillhouse.example"]),
    (Site(Path(), "192.168.4.2", 8443, True), ["https://192.168.4.2:8443"]),
])
def test_the_house_knows_its_own_origins(site, origins):
    assert site.list_origins() == origins


def test_at_an_address_or_a_name_of_others_nothing_of_it_shows(app, sign_in):
    client = app.test_client()
    for base in ("http://127.0.0.1", "http://evil.example"):
        page = client.get("/sign-in", base_url=base).text
        assert "passkey" not in page
    assert "Sign in with a passkey" in client.get("/sign-in").text
    token = csrf_of(client.get("/sign-in").text)
    app.config["PASSKEY_ORIGINS"] = {"http://127.0.0.1", "http://localhost:81"}
    assert client.post("/passkey/question", data={"csrf_token": token}).status_code == 404
    office = sign_in("OL")
    assert "Open the desk by the name of the house" in office.get("/desk/you").text
    assert office.get("/desk/you/passkeys/new").status_code == 404


def keep_vector(app, vector):
    """Have OL keep what a vector's device has made, to the question that it answers."""
    app.config["PASSKEY_ORIGINS"] = {"https://example.org"}
    client = bytes.fromhex(vector["client"])
    answer = said(bytes.fromhex(vector["id"]), clientDataJSON=client,
                  attestationObject=bytes.fromhex(vector["attestation"]))
    with app.test_request_context(base_url="https://example.org"):
        challenge = base64url_to_bytes(json.loads(client)["challenge"])
        session["passkey"] = [door.MAKE, challenge.hex(), int(door.time.time())]
        door.keep_made(people.person(app.extensions["book"], "OL"), "Vector", answer)


def test_a_device_of_the_specification_is_kept(app):
    keep_vector(app, SELF)
    (row,) = passkeys.passkeys_of(app.extensions["book"], "OL")
    assert base64url_to_bytes(row["credential"]).hex() == SELF["id"]
    assert base64url_to_bytes(row["public_key"]).hex() == SELF["attestation"][-154:]
    assert (row["rp_id"], row["sign_count"]) == ("example.org", 0)


@pytest.mark.parametrize(("vector", "why"), [(NOT_KNOWN, "verif"), (FRAMED, "page of others")])
def test_devices_of_the_specification_that_are_not_enough_are_refused(app, vector, why):
    with pytest.raises(door.Refused, match=why):
        keep_vector(app, vector)
    assert passkeys.all_passkeys(app.extensions["book"]) == []


@pytest.mark.parametrize(("count", "opens"), [(1625263263, True), (1625263266, False)])
def test_an_answer_that_a_real_device_gave_opens(app, monkeypatch, count, opens):
    book = app.extensions["book"]
    app.config["PASSKEY_ORIGINS"] = {"http://localhost:5000"}
    monkeypatch.setattr(passkeys, "user_handle", lambda *_: base64url_to_bytes(USED["handle"]))
    passkeys.add_passkey(book, "OL", "Real", USED["id"], USED["key"], count, "localhost", datetime.now(UTC))
    parts = {"clientDataJSON": USED["client"], "authenticatorData": USED["data"], "signature": USED["signature"],
             "userHandle": USED["handle"]}
    answer = said(base64url_to_bytes(USED["id"]), **{name: base64url_to_bytes(text) for name, text in parts.items()})
    with app.test_request_context(base_url="http://localhost:5000"):
        session["passkey"] = [door.SIGN_IN, base64url_to_bytes(USED["challenge"]).hex(), int(door.time.time())]
        person = door.tried_passkey(door.SIGN_IN, answer, "signed_in")
    assert bool(person) is opens
    assert passkeys.all_passkeys(book)[0]["sign_count"] == 1625263266


def test_a_password_that_signs_in_still_does(app, device, sign_in):
    assert sign_in("OL").get("/desk/").status_code == 200
    assert people.check_password(app.extensions["book"], "OL", PASSWORD)
