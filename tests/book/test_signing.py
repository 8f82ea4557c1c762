"""Signatures of entries, against the published vectors of the curve, and against every way to change an entry."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.hazmat.primitives.asymmetric.utils import decode_dss_signature

from webapp.book.record import signing
from webapp.book.record.signing import PublicKey

VECTORS = json.loads((Path(__file__).parents[1] / "vectors" / "signed_entries.json").read_text("utf-8"))
KEY = PublicKey(VECTORS["key"]["x"], VECTORS["key"]["y"])
# RFC 7515, appendix A.3: the signing input of its example, and the signature.
A3_INPUT = ("eyJhbGciOiJFUzI1NiJ9.eyJpc3MiOiJqb2UiLA0KICJleHAiOjEzMDA4MTkzODAsDQogImh0dHA6Ly9leGFtcGxlLmNvbS9pc19yb290"
            "Ijp0cnVlfQ")
A3_SIGNATURE = "DtEhU3ljbEg8L38VWAfUAqOyKAM6-Xx-F4GawxaepmXFCgfTjDxw5djxLa8ISlSApmWQxfKTUJqPP3-Kg6NU1Q"
# RFC 6979, appendix A.2.5: P-256 with SHA-256.
A25 = PublicKey("YP7UuiVanTHJYet0xjVtaMBJuJI7Yfps5mliLmDyn7Y", "eQP-EAi4vJmkGunpVii8ZPLxsgwtfp9Rd6PClNRGIpk")
A25_SIGNATURES = {
    "sample": "EFD48B2AACB6A8FD1140DD9CD45E81D69D2C877B56AAF991C34D0EA84EAF3716"
              "F7CB1C942D657C41D436C7A1B6E29F65F3E900DBB9AFF4064DC4AB2F843ACDA8",
    "test": "F1ABB023518351CD71D881567B1EA663ED3EFCF6C5132B354F28D3B0B7D38367"
            "019F4113742A2B14BD25926B49C649155F267E60D3814B4C0CC84250E46F0083",
}


@pytest.fixture
def as_it_is(monkeypatch):
    """Let a text be signed as it is, as the published examples do."""
    monkeypatch.setattr(signing, "signed_bytes", lambda entry: str(entry["text"]).encode())


@pytest.mark.usefixtures("as_it_is")
def test_the_published_signatures_hold_and_no_other():
    """Sources: RFC 7515, appendix A.3; RFC 6979, appendix A.2.5."""
    assert signing.is_signed_by(KEY, {"text": A3_INPUT, "signature": f"k.{A3_SIGNATURE}"})
    assert not signing.is_signed_by(KEY, {"text": A3_INPUT + "x", "signature": f"k.{A3_SIGNATURE}"})
    for text, both in A25_SIGNATURES.items():
        named = f"k.{signing._base64url(bytes.fromhex(both))}"
        assert signing.is_signed_by(A25, {"text": text, "signature": named})
        assert not signing.is_signed_by(KEY, {"text": text, "signature": named})


def test_a_thumbprint_is_that_of_the_standard():
    """RFC 7638, section 3: the required members in the order of their names, no spaces. By hashlib alone."""
    import base64
    import hashlib

    text = json.dumps({"crv": "P-256", "kty": "EC", **KEY._asdict()}, sort_keys=True, separators=(",", ":"))
    made = base64.urlsafe_b64encode(hashlib.sha256(text.encode()).digest()).decode().rstrip("=")
    assert signing.thumbprint(KEY) == made == VECTORS["key"]["thumbprint"]


@pytest.mark.parametrize("case", VECTORS["cases"], ids=range(len(VECTORS["cases"])))
def test_entries_are_signed_in_one_form_and_every_change_is_found(case):
    entry = {**case["entry"], "signature": case["signature"]}
    assert signing.signed_bytes(entry).decode() == case["signed"]
    assert signing.name_of_key(entry) == VECTORS["key"]["thumbprint"]
    assert signing.is_signed_by(KEY, dict(reversed(entry.items())))  # in whatever order it was sent
    assert not signing.is_signed_by(A25, entry)
    changes = {"person": "OL", "typed_at": "2025-09-24T08:05:42+02:00", "read_at": "2025-07-01T08:05:00+02:00",
               "seq": 42, "kind": "gauge", "kind_version": 2, "device": "d-22222222", "role": "", "remark": "-",
               "mark": "F2-L", "values": {}, "as_read": ["x"], "amends": "x", "reason": "-", "looked_again": ["x"],
               "seen_by": "OL", "id": "01939f6e-7c1a-7cc3-98c4-dc0c0c073980", "mark_by": "typed", "more": 1}
    for name, value in changes.items():
        assert not signing.is_signed_by(KEY, {**entry, name: value}), name


def test_signatures_and_keys_in_another_shape_are_none():
    entry = {**VECTORS["cases"][0]["entry"], "signature": VECTORS["cases"][0]["signature"]}
    name, _, raw = entry["signature"].partition(".")
    last = raw[:-1] + chr(ord(raw[-1]) + 1)  # other unused bits at the end: the same bytes, written otherwise
    for odd in ("", name, f"{name}.", f"{name}.{raw}=", f"{name}.{raw[:-2]}", f"{name}.{raw}{raw}", f"{name}.{last}",
                f"{name}.{'A' * 86}", f"{name}.ž"):
        assert not signing.is_signed_by(KEY, {**entry, "signature": odd}), odd
    assert not signing.is_signed_by(KEY, {**entry, "signature": 7})
    assert not signing.is_key(PublicKey(KEY.x, KEY.x))  # no point of the curve
    assert not signing.is_key(PublicKey(KEY.x + "=", KEY.y))
    assert not signing.is_key(PublicKey("", ""))
    assert signing.is_key(KEY)


def test_a_signature_of_another_purpose_is_none():
    """Whoever gets a phone to sign the bare text of an entry has no signature under the entry."""
    entry = VECTORS["cases"][0]["entry"]
    number = int.from_bytes(signing._bytes(VECTORS["key"]["d"]) or b"", "big")
    private = ec.derive_private_key(number, ec.SECP256R1())
    bare = signing.signed_bytes(entry).removeprefix(signing.PURPOSE.encode())
    both = b"".join(n.to_bytes(32, "big") for n in decode_dss_signature(private.sign(bare, signing._HOW)))
    assert not signing.is_signed_by(KEY, {**entry, "signature": f"k.{signing._base64url(both)}"})
