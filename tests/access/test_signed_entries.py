"""Entries that a phone signs: taken, refused, asked for, kept with the phone that brought them, and verified."""

import json
import sqlite3
from datetime import UTC, datetime

import pytest
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.hazmat.primitives.asymmetric.utils import decode_dss_signature
from cryptography.hazmat.primitives.hashes import SHA256

from tests.access.test_attacks_hand_in import entry, send
from webapp.book import verification
from webapp.book.house import devices, phone_keys
from webapp.book.record import log, signing
from webapp.book.record.way import read_way


class Signer:
    """A phone's key, as its browser has it."""

    def __init__(self):
        self._private = ec.generate_private_key(ec.SECP256R1())
        numbers = self._private.public_key().public_numbers()
        self.key = signing.PublicKey(*(signing._base64url(n.to_bytes(32, "big")) for n in (numbers.x, numbers.y)))

    def sign(self, made):
        raw = self._private.sign(signing.signed_bytes(made), ec.ECDSA(SHA256()))
        both = b"".join(number.to_bytes(32, "big") for number in decode_dss_signature(raw))
        return {**made, "signature": f"{signing.thumbprint(self.key)}.{signing._base64url(both)}"}

    def introduce(self, client, from_seq=0):
        return client.post("/api/phone-key", json={**self.key._asdict(), "from_seq": from_seq})


@pytest.fixture
def book(app):
    return app.extensions["book"]


def second_phone(app):
    book = app.extensions["book"]
    device, secret = devices.enrol_device(book, devices.new_token(book, "OL", "PH-2"), "PH-2", datetime.now(UTC))
    client = app.test_client()
    client.set_cookie("cellarslate_device", secret)
    return client, device


def test_a_signed_entry_is_taken_with_its_phone_on_record_and_verified(phone, book, sign_in):
    client, device = phone
    signer = Signer()
    assert send(client)["key"] == ""
    assert signer.introduce(client).json["key"] == signing.thumbprint(signer.key)
    assert signer.introduce(client).status_code == 200  # again: the answer may have been lost
    assert send(client)["key"] == signing.thumbprint(signer.key)
    made = signer.sign(entry(device=device["id"]))
    (result,) = send(client, made)["results"]
    assert result["settled"] != "refused"
    row = log.load_entry(book, made["id"])
    assert read_way(row["via"]) == ("phone", device["id"], "s")
    assert (phone_keys.signer_of(book, row["entry"]) or {})["device"] == device["id"]
    assert verification.verify(book) == []
    page = sign_in("IM").get(f"/desk/entries/{made['id']}").text
    assert "of PH-1, and it holds" in page
    assert "<dt>Handed in by</dt><dd>PH-1</dd>" in page
    (again,) = send(client, made)["results"]
    assert again["settled"] == "known"


def test_what_was_changed_after_signing_is_refused_kept_aside_and_holds_nobody_up(phone, book):
    client, device = phone
    signer = Signer()
    signer.introduce(client)
    good, forged = (signer.sign(entry(device=device["id"], seq=seq)) for seq in (1, 2))
    forged["person"] = "OL"
    first, second = send(client, forged, good)["results"]
    assert first["settled"] == "refused" != second["settled"]
    assert "signature" in first["problems"][0]["words"]
    (kept,) = log.load_aside(book, entry_id=forged["id"])
    assert (kept["settled"], kept["via"]) == ("refused", f"phone {device['id']}")


def test_a_phone_cannot_sign_as_another_phone(app, phone, book):
    client, device = phone
    other, _ = second_phone(app)
    signer, thief = Signer(), Signer()
    signer.introduce(client)
    thief.introduce(other)
    (result,) = send(other, thief.sign(entry(device=device["id"])))["results"]
    assert result["settled"] == "refused"
    assert signer.introduce(other).status_code == 422  # another phone's key is not its own


def test_who_carries_is_told_from_who_logged(app, phone, book):
    client, device = phone
    signer = Signer()
    signer.introduce(client)
    made = signer.sign(entry(device=device["id"]))
    other, carrier = second_phone(app)
    send(other, made)
    assert read_way(log.load_entry(book, made["id"])["via"]) == ("phone", carrier["id"], "s")


def test_an_unsigned_entry_of_a_phone_that_signs_is_marked(phone, book):
    client, device = phone
    Signer().introduce(client, from_seq=3)
    early, late = (entry(device=device["id"], seq=seq) for seq in (3, 4))
    unknown = Signer().sign(entry(device=device["id"], seq=5))
    send(client, early, late, unknown)
    found = [read_way(log.load_entry(book, one["id"])["via"]).findings for one in (early, late, unknown)]
    assert found == ["", "u", "u"]


def test_keys_are_bounded_and_only_phones_have_them(phone, book, sign_in):
    client, _ = phone
    for _ in range(phone_keys.KEYS_MOST):
        assert Signer().introduce(client).status_code == 200
    assert Signer().introduce(client).status_code == 422
    assert Signer().introduce(sign_in("OL")).status_code == 409
    key = Signer().key
    for odd in ([], {"x": key.x}, {"x": key.x, "y": key.y, "from_seq": -1}, {"x": key.x, "y": key.y, "from_seq": True},
                {"x": key.x, "y": key.x, "from_seq": 0}, {"x": 7, "y": key.y, "from_seq": 0}):
        assert client.post("/api/phone-key", json=odd).status_code == 422


def test_verify_finds_another_key_and_another_signature_behind_the_books_back(phone, book):
    client, device = phone
    signer = Signer()
    signer.introduce(client)
    made = signer.sign(entry(device=device["id"]))
    send(client, made)
    other = Signer().key
    with sqlite3.connect(book.path) as conn:
        conn.execute("UPDATE device_keys SET x = ?, y = ?", other)
    conn.close()
    troubles = verification.verify(book)
    assert any("phone key" in one and "as its changes say" in one for one in troubles)
    assert any("does not bear the signature" in one for one in troubles)
    assert json.loads(log.load_entry(book, made["id"])["body"])["signature"] == made["signature"]
