"""The signature of an entry: what a phone signs, and whether a signature is of its key. Twin: static/slate/signing.js.

A phone signs an entry when it is logged, whole but for the signature itself: person, times, counter, kind and boxes.
The signature is a part of the entry, and so of its body, its digest and the chain.
"""

from __future__ import annotations

import base64
import binascii
import hashlib
from collections.abc import Mapping
from functools import lru_cache
from typing import NamedTuple

from cryptography.exceptions import InvalidSignature
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.hazmat.primitives.asymmetric.utils import encode_dss_signature
from cryptography.hazmat.primitives.hashes import SHA256

from webapp.book.record.log import canonical

# What is signed begins with its purpose: a signature under something else is never one under an entry.
PURPOSE = "cellarslate entry 1\n"
SIGNATURE = "signature"
_COORDINATE_BYTES = 32
_HOW = ec.ECDSA(SHA256())


class PublicKey(NamedTuple):
    """A point on the curve P-256 as a JSON Web Key has it: both coordinates in base64url without padding."""

    x: str
    y: str


def signed_bytes(entry: Mapping[str, object]) -> bytes:
    """Return what a phone signs of an entry: the purpose, then its canonical JSON without the signature, as UTF-8.

    Source of the form: RFC 8785 (JSON Canonicalization Scheme), for texts, whole numbers, lists and objects with names
    in ASCII, of which an entry is made.
    """
    bare = {name: value for name, value in entry.items() if name != SIGNATURE}
    return (PURPOSE + canonical(bare)).encode()


def thumbprint(key: PublicKey) -> str:
    """Return the name of a public key: its SHA-256 thumbprint of RFC 7638, section 3. [43 characters, base64url]"""
    text = f'{{"crv":"P-256","kty":"EC","x":"{key.x}","y":"{key.y}"}}'
    return _base64url(hashlib.sha256(text.encode("ascii")).digest())


def is_key(key: PublicKey) -> bool:
    """Return whether the two coordinates are a point on the curve, written in their one form."""
    return _load(key) is not None


def name_of_key(entry: Mapping[str, object]) -> str:
    """Return the thumbprint that an entry's signature names, or an empty text where it is not signed."""
    signature = entry.get(SIGNATURE)
    return signature.partition(".")[0] if isinstance(signature, str) else ""


def is_signed_by(key: PublicKey, entry: Mapping[str, object]) -> bool:
    """Return whether an entry's signature is one of this key under this very entry.

    ECDSA over P-256 with SHA-256, both numbers one after the other (FIPS 186-5; the form of RFC 7518, section 3.4,
    which browsers give).
    """
    loaded, raw = _load(key), _bytes(str(entry.get(SIGNATURE)).partition(".")[2])
    if loaded is None or raw is None or len(raw) != 2 * _COORDINATE_BYTES:
        return False
    r, s = (int.from_bytes(half, "big") for half in (raw[:_COORDINATE_BYTES], raw[_COORDINATE_BYTES:]))
    try:
        loaded.verify(encode_dss_signature(r, s), signed_bytes(entry), _HOW)
    except InvalidSignature:
        return False
    return True


@lru_cache(maxsize=1024)
def _load(key: PublicKey) -> ec.EllipticCurvePublicKey | None:
    x, y = (_bytes(one) for one in key)
    if x is None or y is None or not len(x) == len(y) == _COORDINATE_BYTES:
        return None
    numbers = ec.EllipticCurvePublicNumbers(int.from_bytes(x, "big"), int.from_bytes(y, "big"), ec.SECP256R1())
    try:
        return numbers.public_key()
    except ValueError:  # no point of the curve
        return None


def _bytes(text: str) -> bytes | None:
    """Return what a base64url text stands for, or None where it is none, or not written in its one form."""
    try:
        found = base64.b64decode(text + "=" * (-len(text) % 4), altchars=b"-_", validate=True)
    except (binascii.Error, ValueError):
        return None
    return found if _base64url(found) == text else None


def _base64url(raw: bytes) -> str:
    return base64.urlsafe_b64encode(raw).rstrip(b"=").decode("ascii")
