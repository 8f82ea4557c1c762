"""A certificate of the house's own name: what it says, when it does not serve, and that a renewed one is taken up.

The certificates are made here with `cryptography`; who is trusted is judged by OpenSSL, through Python's ssl.
"""

from __future__ import annotations

import http.client
import ssl
import subprocess
import sys
import threading
import time
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from cryptography import x509
from cryptography.hazmat.primitives import hashes, serialization
from cryptography.hazmat.primitives.asymmetric import ec, rsa
from cryptography.x509.oid import NameOID

from tests.server_process import ServerProcess
from webapp.serving import named_certificate, server, site
from webapp.serving.named_certificate import BadCertificate, NamedCertificate
from webapp.serving.server import CannotServe

NOW = datetime.now(UTC).replace(microsecond=0)
NAME = "log.stillhouse.example"
Key = ec.EllipticCurvePrivateKey | rsa.RSAPrivateKey
_PRIVATE = serialization.PrivateFormat
KEYS: dict[str, Callable[[], Key]] = {
    "ec": lambda: ec.generate_private_key(ec.SECP256R1()),
    "rsa": lambda: rsa.generate_private_key(65537, 2048),
}


class Files:
    """A pair of files as an ACME client leaves them."""

    def __init__(self, folder: Path) -> None:
        self.certificate, self.key = folder / "chain.pem", folder / "key.pem"

    def write(
        self, *names: str, begins: datetime = NOW - timedelta(days=1), days: int = 90, key: Key | None = None,
        form: serialization.PrivateFormat = _PRIVATE.PKCS8, password: bytes | None = None, key_too: bool = True,
    ) -> None:
        """Make a certificate that signs itself, and its key."""
        key = key or ec.generate_private_key(ec.SECP256R1())
        subject = x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, "log")])
        making = (
            x509.CertificateBuilder().subject_name(subject).issuer_name(subject).public_key(key.public_key())
            .serial_number(x509.random_serial_number()).not_valid_before(begins)
            .not_valid_after(begins + timedelta(days=days))
            .add_extension(x509.BasicConstraints(ca=True, path_length=None), critical=True)
        )
        if names:
            san = x509.SubjectAlternativeName([x509.DNSName(name) for name in names])
            making = making.add_extension(san, critical=False)
        self.certificate.write_bytes(making.sign(key, hashes.SHA256()).public_bytes(serialization.Encoding.PEM))
        if key_too:
            lock = serialization.BestAvailableEncryption(password) if password else serialization.NoEncryption()
            self.key.write_bytes(key.private_bytes(serialization.Encoding.PEM, form, lock))


@pytest.fixture
def files(tmp_path: Path) -> Files:
    folder = tmp_path / "from outside"
    folder.mkdir()
    return Files(folder)


def test_it_says_its_names_and_its_life(files: Files) -> None:
    files.write(NAME, "*.Cellar.example", days=90)
    said = NamedCertificate(files.certificate, files.key).read()
    assert said.names == [NAME, "*.cellar.example"]
    assert (said.begins, said.ends) == (NOW - timedelta(days=1), NOW + timedelta(days=89))


@pytest.mark.parametrize(
    ("host", "is_covered"),
    [
        (NAME, True), ("LOG.stillhouse.example.", True), ("stillhouse.example", False), ("a.cellar.example", True),
        # One label, and no more: RFC 6125, 6.4.3.
        ("cellar.example", False), ("b.a.cellar.example", False), ("localhost", False),
    ],
)
def test_whom_it_covers(files: Files, host: str, is_covered: bool) -> None:
    files.write(NAME, "*.cellar.example")
    assert NamedCertificate(files.certificate, files.key).read().covers(host) is is_covered


def test_its_last_third_is_near_its_end(files: Files) -> None:
    files.write(NAME, begins=NOW, days=90)
    said = NamedCertificate(files.certificate, files.key).read(now=NOW)
    assert not said.is_near_its_end(NOW + timedelta(days=59)) and said.is_near_its_end(NOW + timedelta(days=61))


def test_what_does_not_serve_is_said_in_a_sentence(files: Files) -> None:
    pair = NamedCertificate(files.certificate, files.key)

    def words() -> str:
        with pytest.raises(BadCertificate) as raised:
            pair.read(now=NOW)
        return str(raised.value)

    assert "Cannot read" in words() and "--certificate" in words()
    files.certificate.write_text("no certificate")
    assert "holds no certificate" in words()
    files.write(NAME, key_too=False)
    assert "--key" in words()
    files.key.write_text("no key")
    assert "holds no private key" in words()
    files.write(NAME, password=b"plum")
    assert "without one" in words()
    files.write(NAME)
    files.write(NAME, key_too=False)
    assert "not the one" in words()
    files.write()
    assert "names no host" in words()
    files.write(NAME, begins=NOW - timedelta(days=100), days=90)
    assert "ended on" in words()
    files.write(NAME, begins=NOW + timedelta(days=1))
    assert "clock" in words()


def test_only_a_whole_new_pair_is_due(files: Files) -> None:
    files.write(NAME)
    pair = NamedCertificate(files.certificate, files.key)
    pair.take()
    assert not pair.is_due()
    files.write(NAME, key_too=False)  # half of the renewal
    assert not pair.is_due()
    files.write(NAME)
    assert pair.is_due()
    pair.take()
    assert not pair.is_due()
    files.key.unlink()
    assert not pair.is_due()


def test_the_site_is_reached_by_its_name_and_has_no_trust_page(files: Files, tmp_path: Path) -> None:
    files.write("*.cellar.example", NAME)
    chosen = site.choose_named_site(tmp_path, "0.0.0.0", None, files.certificate, files.key)
    assert chosen.url == f"https://{NAME}:8443/" and chosen.trust_url is None
    named = site.choose_named_site(tmp_path, "0.0.0.0", 443, files.certificate, files.key, ("book.cellar.example",))
    assert named.url == "https://book.cellar.example/"
    with pytest.raises(CannotServe, match=r"not for other\.example"):
        site.choose_named_site(tmp_path, "0.0.0.0", None, files.certificate, files.key, ("other.example",))
    files.write("*.cellar.example")
    with pytest.raises(CannotServe, match="--name"):
        site.choose_named_site(tmp_path, "0.0.0.0", None, files.certificate, files.key)


@pytest.mark.parametrize("form", [_PRIVATE.PKCS8, _PRIVATE.TraditionalOpenSSL])
@pytest.mark.parametrize("make_key", KEYS.values(), ids=KEYS)
def test_clients_that_trust_it_are_served(
    files: Files, make_server: Callable[..., ServerProcess], tmp_path: Path, make_key: Callable[[], Key],
    form: serialization.PrivateFormat,
) -> None:
    files.write("localhost", key=make_key(), form=form)
    folder = tmp_path / "book"
    folder.mkdir()
    made = make_server(folder, arguments=("--tls", "--certificate", str(files.certificate), "--key", str(files.key)))
    assert _ask(made.port, files.certificate) == 200
    assert "https://localhost" in made.log and "trusts the certificate" not in made.log


def test_a_renewed_pair_is_served_without_a_restart_by_hand(
    files: Files, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The watch ends the round once the new pair is whole; the next round takes it."""
    files.write(NAME)
    pair = NamedCertificate(files.certificate, files.key)
    first = pair.take()
    monkeypatch.setattr(server, "_RENEWAL_LOOK_EVERY_S", 0.02)
    ended = []
    renewal = threading.Event()

    class Round:
        def signal_handler_interrupt(self) -> None:
            ended.append(time.monotonic())

    server._watch_certificate(pair, Round(), renewal)  # type: ignore[arg-type]
    time.sleep(0.1)
    assert not ended
    files.write(NAME)
    assert renewal.wait(10)
    assert pair.take() == first and named_certificate.read_pair(files.certificate, files.key, now=NOW)


def test_the_command_wants_both_files(tmp_path: Path) -> None:
    done = subprocess.run(
        [sys.executable, "-m", "webapp", "serve", "--data", str(tmp_path), "--certificate", "x.pem"],
        capture_output=True, text=True, timeout=60, check=False,
    )
    assert done.returncode == 2 and "--key" in done.stderr


def _ask(port: int, authority: Path) -> int:
    trust = ssl.create_default_context(cafile=str(authority))
    connection = http.client.HTTPSConnection("localhost", port, timeout=30, context=trust)
    connection.request("GET", "/today")
    answer = connection.getresponse()
    answer.read()
    connection.close()
    return answer.status
