"""The check-up: each trouble is made for real where it can be, and its one next step is said.

The handshakes are Python's ssl against OpenSSL; which addresses are private is RFC 1918 and RFC 4193.
"""

from __future__ import annotations

import json
import socket
import ssl
import threading
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from click.testing import CliRunner
from cryptography import x509
from cryptography.hazmat.primitives import hashes, serialization
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.x509.oid import NameOID

from tests.server_process import ServerProcess
from webapp.book.house import devices
from webapp.book.opening import open_book
from webapp.cli import main
from webapp.doctor import keeping, network
from webapp.doctor.examine import examine
from webapp.doctor.finding import Finding, Weight

NOW = datetime.now(UTC)


@pytest.fixture
def data_dir(tmp_path: Path) -> Path:
    folder = tmp_path / "book"
    folder.mkdir(mode=0o700)
    with open_book(folder / "book.sqlite"):
        pass
    return folder


def about(findings: list[Finding], name: str) -> Finding:
    return next(finding for finding in findings if finding.about == name)


def test_a_folder_without_a_book_is_said_first(tmp_path: Path) -> None:
    (only,) = examine(tmp_path, None, NOW)
    assert only.weight is Weight.BAD and "--data" in only.step


def test_a_served_book_on_this_network_is_well(data_dir: Path, make_server: Callable[..., ServerProcess]) -> None:
    served = make_server(data_dir, arguments=("--tls",))
    findings = examine(data_dir, served.url + "/", NOW)
    assert about(findings, "port").weight is Weight.WELL
    certificate = about(findings, "certificate")
    assert certificate.weight is Weight.WELL and "127.0.0.1" in certificate.words
    assert about(findings, "book").weight is Weight.WELL
    assert about(findings, "served at").weight is Weight.LOOK  # this computer alone


def test_the_command_ends_with_one_where_something_is_bad(data_dir: Path) -> None:
    (data_dir / "backups.json").write_text(json.dumps({"failed_at": NOW.isoformat(), "words": "No room."}), "utf-8")
    done = CliRunner().invoke(main, ["doctor", "--data", str(data_dir)])
    assert done.exit_code == 1
    assert "BAD" in done.output and "No room." in done.output and "->" in done.output


def test_names_and_addresses() -> None:
    here = ["192.168.1.20"]

    def one(url: str, found: list[str] | None) -> Finding:
        def find(_host: str) -> list[str]:
            if found is None:
                raise socket.gaierror(socket.EAI_NONAME, "Name or service not known")
            return found

        (finding,) = network.look_at_url(url, here, find)
        return finding

    assert one("https://192.168.1.20:8443/", None).weight is Weight.WELL
    moved = one("https://192.168.1.7:8443/", None)
    assert moved.weight is Weight.BAD and "192.168.1.7" in moved.step
    assert one("https://log.stillhouse.example/", ["192.168.1.20"]).weight is Weight.WELL
    withheld = one("https://log.stillhouse.example/", None)
    assert withheld.weight is Weight.BAD and "rebind protection" in withheld.step
    unknown = one("https://cellar.local:8443/", None)
    assert unknown.weight is Weight.BAD and "address instead" in unknown.step
    elsewhere = one("https://log.stillhouse.example/", ["192.168.1.99"])
    assert elsewhere.weight is Weight.BAD and "192.168.1.99" in elsewhere.words
    assert one("https://log.stillhouse.example/", ["203.0.113.7"]).weight is Weight.LOOK
    assert network.look_at_url(None, here)[0].weight is Weight.BAD


def test_addresses_of_this_computer() -> None:
    assert network.look_at_addresses([]).weight is Weight.BAD
    assert network.look_at_addresses(["10.0.0.5"]).weight is Weight.WELL
    assert network.look_at_addresses(["10.0.0.5", "fd00::1"]).weight is Weight.LOOK


def test_a_port_that_does_not_answer() -> None:
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        port = free.getsockname()[1]
    (finding,) = network.look_at_port(f"https://127.0.0.1:{port}/", True)
    assert finding.weight is Weight.BAD and "firewall" in finding.step
    (idle,) = network.look_at_port(f"https://127.0.0.1:{port}/", False)
    assert idle.weight is Weight.LOOK


@pytest.mark.parametrize(
    ("name", "begins", "days", "is_trusted", "weight", "word"),
    [
        ("localhost", -10, 90, True, Weight.WELL, "79 more days"),
        ("localhost", -100, 90, True, Weight.BAD, "Renew"),
        ("localhost", 2, 90, True, Weight.BAD, "clock"),
        ("other.example", -1, 90, True, Weight.BAD, "made for localhost"),
        ("localhost", -1, 90, False, Weight.BAD, "whole chain"),
    ],
)
def test_a_certificate_as_a_phone_sees_it(
    tmp_path: Path, name: str, begins: int, days: int, is_trusted: bool, weight: Weight, word: str
) -> None:
    pem, key = _certificate(name, NOW + timedelta(days=begins), days)
    (tmp_path / "tls").mkdir()
    (tmp_path / "tls" / "authority.pem").write_bytes(pem if is_trusted else _certificate("x", NOW, 1)[0])
    with _tls_server(tmp_path, pem, key) as port:
        (finding,) = network.look_at_certificate(f"https://localhost:{port}/", tmp_path, True, NOW)
    assert finding.weight is weight and word in finding.words + finding.step


def test_what_is_no_tls_is_said(tmp_path: Path) -> None:
    def answer(listener: socket.socket) -> None:
        with listener.accept()[0] as plain:
            plain.sendall(b"HTTP/1.1 400 No\r\n\r\n")

    with socket.create_server(("127.0.0.1", 0)) as listener:
        threading.Thread(target=answer, args=(listener,), daemon=True).start()
        url = f"https://127.0.0.1:{listener.getsockname()[1]}/"
        (finding,) = network.look_at_certificate(url, tmp_path, True, NOW)
    assert finding.weight is Weight.BAD and "No TLS" in finding.words


@pytest.mark.parametrize(("skews", "weight"), [([], Weight.WELL), ([2.0, -3.0, 1.0], Weight.WELL),
                                               ([3600.0, 3598.0, 2.0], Weight.BAD)])
def test_the_clock_is_held_against_the_phones(data_dir: Path, skews: list[float], weight: Weight) -> None:
    with open_book(data_dir / "book.sqlite") as book:
        with book.write():
            for at, skew in enumerate(skews):
                devices.note_heard(book, f"PH-{at}", NOW.isoformat(), skew)
            devices.note_heard(book, "PH-old", (NOW - timedelta(days=3)).isoformat(), 9e5)
        found = keeping.look_at_clock(book, NOW)
    assert found.weight is weight
    if weight is Weight.BAD:
        assert "behind" in found.words  # the phones are an hour ahead of it


def test_a_full_disk(data_dir: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    with open_book(data_dir / "book.sqlite") as book:
        assert keeping.look_at_disk(book, data_dir).weight is Weight.WELL
        usage = type("Usage", (), {"free": 10**8})
        monkeypatch.setattr(keeping.shutil, "disk_usage", lambda _path: usage)
        found = keeping.look_at_disk(book, data_dir)
    assert found.weight is Weight.BAD and "0.1 GB" in found.words


def test_backups_by_the_clock(data_dir: Path) -> None:
    assert keeping.look_at_backups(data_dir, NOW).weight is Weight.LOOK
    note = {"folder": "/b", "every_h": 24, "keep": 3, "made_at": (NOW - timedelta(hours=3)).isoformat(), "entries": 3}
    (data_dir / "backups.json").write_text(json.dumps(note), "utf-8")
    assert keeping.look_at_backups(data_dir, NOW).weight is Weight.WELL
    assert keeping.look_at_backups(data_dir, NOW + timedelta(days=4)).weight is Weight.BAD


def _certificate(name: str, begins: datetime, days: int) -> tuple[bytes, bytes]:
    key = ec.generate_private_key(ec.SECP256R1())
    subject = x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, name)])
    made = (
        x509.CertificateBuilder().subject_name(subject).issuer_name(subject).public_key(key.public_key())
        .serial_number(x509.random_serial_number()).not_valid_before(begins)
        .not_valid_after(begins + timedelta(days=days))
        .add_extension(x509.BasicConstraints(ca=True, path_length=None), critical=True)
        .add_extension(x509.SubjectAlternativeName([x509.DNSName(name)]), critical=False)
        .sign(key, hashes.SHA256())
    )
    private = key.private_bytes(
        serialization.Encoding.PEM, serialization.PrivateFormat.PKCS8, serialization.NoEncryption()
    )
    return made.public_bytes(serialization.Encoding.PEM), private


@contextmanager
def _tls_server(folder: Path, pem: bytes, key: bytes) -> Iterator[int]:
    (folder / "c.pem").write_bytes(pem)
    (folder / "k.pem").write_bytes(key)
    context = ssl.SSLContext(ssl.PROTOCOL_TLS_SERVER)
    context.load_cert_chain(folder / "c.pem", folder / "k.pem")
    listener = socket.create_server(("127.0.0.1", 0))

    def answer() -> None:
        try:
            plain, _ = listener.accept()
            context.wrap_socket(plain, server_side=True).close()
        except OSError:
            pass  # the client has turned away, which is what is tested

    thread = threading.Thread(target=answer, daemon=True)
    thread.start()
    try:
        yield listener.getsockname()[1]
    finally:
        listener.close()
        thread.join(10)
