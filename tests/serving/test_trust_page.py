"""The plain-http listener: the trust page, the certificate, a redirect to the page, and nothing else."""

import http.client
import socket
from pathlib import Path
from typing import Any
from wsgiref.util import setup_testing_defaults
from wsgiref.validate import validator

import pytest
from cryptography import x509

from webapp.serving import phone_trust
from webapp.serving.certificates import get_authority

ADDRESS = "https://192.168.1.20:8443/"


def ask(
    data_dir: Path, path: str, method: str = "GET", host: str = "10.0.0.1"
) -> tuple[str, dict[str, str], bytes]:
    environ: dict[str, Any] = {
        "PATH_INFO": path,
        "REQUEST_METHOD": method,
        "HTTP_HOST": host,
        "QUERY_STRING": "",
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


def test_page_shows_fingerprint_both_files_and_the_address(tmp_path: Path) -> None:
    get_authority(tmp_path)
    status, _headers, body = ask(tmp_path, "/trust")
    page = body.decode()
    assert status == "200 OK"
    for expected in (
        phone_trust.write_fingerprint(tmp_path),
        ADDRESS,
        phone_trust.PEM_PATH,
        phone_trust.PROFILE_PATH,
    ):
        assert expected
        assert expected in page


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
