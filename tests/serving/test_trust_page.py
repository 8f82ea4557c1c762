"""The plain-http listener: the trust page, the certificate, a redirect to the page, and nothing else."""

import hashlib
import http.client
import re
import socket
from pathlib import Path
from typing import Any
from wsgiref.util import setup_testing_defaults
from wsgiref.validate import validator

import pytest
from cryptography import x509
from cryptography.hazmat.primitives.serialization import Encoding

from webapp.serving import phone_trust
from webapp.serving.certificates import get_authority

ADDRESS = "https://192.168.1.20:8443/"


def ask(
    data_dir: Path, path: str, method: str = "GET", host: str = "10.0.0.1", agent: str = "", query: str = ""
) -> tuple[str, dict[str, str], bytes]:
    environ: dict[str, Any] = {
        "PATH_INFO": path,
        "REQUEST_METHOD": method,
        "HTTP_HOST": host,
        "QUERY_STRING": query,
        "HTTP_USER_AGENT": agent,
        "SCRIPT_NAME": "",
    }
    setup_testing_defaults(environ)
    seen: list[Any] = []

    def start_response(status: str, headers: list[tuple[str, str]], exc_info: Any = None) -> Any:
        seen.extend((status, dict(headers)))
        return lambda data: None

    answer = validator(phone_trust.trust_app(data_dir, ADDRESS))(environ, start_response)
    body = b"".join(answer)
    answer.close()  # type: ignore[attr-defined]
    return seen[0], seen[1], body


IPHONE = "Mozilla/5.0 (iPhone; CPU iPhone OS 18_1 like Mac OS X) AppleWebKit/605.1.15 Version/18.1 Mobile Safari/604.1"
ANDROID = "Mozilla/5.0 (Linux; Android 15; K) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/131.0 Mobile Safari/537.36"


def test_page_shows_fingerprint_groups_and_the_address(tmp_path: Path) -> None:
    get_authority(tmp_path)
    status, _headers, body = ask(tmp_path, "/trust")
    page = body.decode()
    assert status == "200 OK"
    for expected in (phone_trust.write_fingerprint(tmp_path), phone_trust.write_groups(tmp_path), ADDRESS):
        assert expected
        assert expected in page


@pytest.mark.parametrize(
    ("agent", "query", "has", "has_not"),
    [
        (IPHONE, "", "Certificate Trust Settings", "CA certificate"),
        (ANDROID, "", "CA certificate", "Certificate Trust Settings"),
        (ANDROID, "for=iphone", "Certificate Trust Settings", "CA certificate"),
        (IPHONE, "for=nonsense", "Certificate Trust Settings", "CA certificate"),
        ("", "for=windows", "Trusted Root", "CA certificate"),
        ("x" * 100_000, "for=" + "y" * 5000, "Authorities", "Trusted Root"),
    ],
)
def test_page_has_the_steps_of_the_phone_at_hand_and_a_way_to_another(
    tmp_path: Path, agent: str, query: str, has: str, has_not: str
) -> None:
    get_authority(tmp_path)
    page = ask(tmp_path, "/trust", agent=agent, query=query)[2].decode()
    assert has in page
    assert has_not not in page
    assert page.count('href="?for=') == 5
    is_iphone = "Certificate Trust Settings" in page
    assert (phone_trust.PROFILE_PATH in page, phone_trust.PEM_PATH in page) == (is_iphone, not is_iphone)


def test_nothing_of_what_a_phone_sends_is_drawn(tmp_path: Path) -> None:
    get_authority(tmp_path)
    page = ask(tmp_path, "/trust", agent="<script>alert(1)</script>", query="for=<img onerror=1>")[2].decode()
    assert "alert(1)" not in page
    assert "onerror" not in page


def test_page_has_its_script_and_sheets_and_no_other_file_of_ours(tmp_path: Path) -> None:
    get_authority(tmp_path)
    page = ask(tmp_path, "/trust")[2].decode()
    for path in re.findall(r'(?:src|href)="(/trust/[^"]+)"', page):
        status, headers, body = ask(tmp_path, path)
        assert status == "200 OK", path
        assert body
        assert headers["X-Content-Type-Options"] == "nosniff"
    for path in ("/static/doors/trust.js", "/trust/../static/desk.js", "/trust/base.css", "/trust/phone.js"):
        assert ask(tmp_path, path)[0] == "302 Found"
    policy = ask(tmp_path, "/trust")[1]["Content-Security-Policy"]
    assert "default-src 'none'" in policy
    assert policy.endswith("img-src https://192.168.1.20:8443"), "a picture of the house, and of nobody else"


def test_groups_are_those_of_the_certificate_and_differ_from_another_ones(tmp_path: Path) -> None:
    """Worked out apart from the page, from the bytes that a phone installs."""
    get_authority(tmp_path / "one")
    get_authority(tmp_path / "two")
    shown = phone_trust.write_groups(tmp_path / "one")
    assert shown != phone_trust.write_groups(tmp_path / "two")
    pem = ask(tmp_path / "one", phone_trust.PEM_PATH)[2]
    der = x509.load_pem_x509_certificate(pem).public_bytes(Encoding.DER)
    number, alphabet = int(hashlib.sha256(der).hexdigest(), 16), "23456789ABCDEFGHJKMNPQRSTVWXYZ"
    assert shown.replace(" ", "") == "".join(alphabet[number // 30**n % 30] for n in range(16))


def test_certificate_is_handed_out_but_never_the_key(tmp_path: Path) -> None:
    authority = get_authority(tmp_path)
    _status, headers, body = ask(tmp_path, phone_trust.PEM_PATH)
    assert headers["Content-Type"] == "application/x-x509-ca-cert"
    assert x509.load_pem_x509_certificate(body) == authority.certificate
    assert b"PRIVATE" not in body
    _status, headers, body = ask(tmp_path, phone_trust.PROFILE_PATH)
    assert headers["Content-Type"] == "application/x-apple-aspen-config"
    assert b"PRIVATE" not in body


@pytest.mark.parametrize(
    "path", ["/", "/floor", "/trust/authority.key", "/trust/../tls/authority.key", "//evil.example"]
)
def test_everything_else_leads_to_the_trust_page(tmp_path: Path, path: str) -> None:
    get_authority(tmp_path)
    status, headers, body = ask(tmp_path, path, host="evil.example")
    assert (status, headers["Location"], body) == ("302 Found", "/trust", b"")


def test_nothing_can_be_sent_to_it(tmp_path: Path) -> None:
    get_authority(tmp_path)
    status, headers, _body = ask(tmp_path, "/", method="POST")
    assert status == "405 Method Not Allowed"
    assert "Location" not in headers


def test_listener_answers_over_a_real_socket(tmp_path: Path) -> None:
    get_authority(tmp_path)
    server = phone_trust.start_trust_listener(tmp_path, ADDRESS, "127.0.0.1", 0)
    try:
        # A silent visitor is left waiting while others are served.
        with socket.create_connection(("127.0.0.1", server.server_port), 10):
            connection = http.client.HTTPConnection("127.0.0.1", server.server_port, timeout=10)
            connection.request("HEAD", "/trust")
            answer = connection.getresponse()
            assert answer.status == 200
            assert answer.read() == b""
            connection.close()
    finally:
        server.shutdown()
        server.server_close()
