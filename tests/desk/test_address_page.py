"""The page that says how phones reach the book, and the word to the office where a certificate is not renewed."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from cryptography import x509
from cryptography.hazmat.primitives import hashes, serialization
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.x509.oid import NameOID

NOW = datetime.now(UTC)


def write_certificate(path: Path, begins: datetime, days: int) -> None:
    key = ec.generate_private_key(ec.SECP256R1())
    subject = x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, "log")])
    made = (
        x509.CertificateBuilder().subject_name(subject).issuer_name(subject).public_key(key.public_key())
        .serial_number(x509.random_serial_number()).not_valid_before(begins)
        .not_valid_after(begins + timedelta(days=days)).sign(key, hashes.SHA256())
    )
    path.write_bytes(made.public_bytes(serialization.Encoding.PEM))


@pytest.mark.parametrize(
    ("config", "words"),
    [
        ({}, "on this computer alone"),
        ({"TLS": True}, "this house's own certificate"),
        ({"TLS": True, "BEHIND_PROXY": True}, "Another web server on this computer speaks for it"),
    ],
)
def test_it_says_what_makes_phones_trust_the_address(house, config, words):
    client = house.client("OL")
    house.app.config.update(config)
    page = client.get("/desk/address").text
    assert words in page and "who the book is" in page


@pytest.mark.parametrize(
    ("begins", "days", "word"),
    [
        (NOW - timedelta(days=1), 90, ""),
        (NOW - timedelta(days=70), 90, "ends in 1"),
        (NOW - timedelta(days=91), 90, "ended on"),
    ],
)
def test_the_office_hears_of_a_certificate_that_is_not_renewed(house, tmp_path, begins, days, word):
    path = tmp_path / "chain.pem"
    write_certificate(path, begins, days)
    office, distiller = house.client("OL"), house.client("IM")
    house.app.config.update(TLS=True, CERTIFICATE_FILE=path)
    said = "certificate ended" if word == "ended on" else "was not renewed"
    page = office.get("/desk/address").text
    assert (said in page) is bool(word) and word in page
    assert said not in distiller.get("/desk/entries").text
