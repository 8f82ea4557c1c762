"""The files that make a phone trust this computer, and the small plain-http listener that hands them out.

The listener serves three things only: a page, the certificate in two forms, and a redirect to that page.
"""

import contextlib
import html
import plistlib
import socket
import threading
import uuid
from collections import Counter
from collections.abc import Iterable
from pathlib import Path
from socketserver import ThreadingMixIn
from typing import TypeAlias
from wsgiref.simple_server import WSGIRequestHandler, WSGIServer
from wsgiref.types import StartResponse, WSGIApplication, WSGIEnvironment

from cryptography import x509
from cryptography.hazmat.primitives import hashes, serialization
from cryptography.x509.oid import NameOID

from webapp.serving.certificates import get_ca_pem

TRUST_PATH = "/trust"
PEM_PATH = "/trust/cellarslate.crt"
PROFILE_PATH = "/trust/cellarslate.mobileconfig"
Request: TypeAlias = socket.socket | tuple[bytes, socket.socket]
Address: TypeAlias = tuple[str, int]
# Callers at one time, of all and of one address; and how long one call may take in all. [s]
CALLERS_MOST, CALLERS_OF_ADDRESS_MOST, CALL_S = 32, 8, 20.0

_PAGE = """<!doctype html>
<html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
<title>Trust this distillery's computer</title>
<h1>Trust this distillery's computer</h1>
<p>Once on each phone. After that the floor log opens without a warning, and works with no signal.</p>
<h2>iPhone, iPad</h2>
<ol><li><a href="{profile}">Fetch the profile</a> in Safari and allow it.</li>
<li>Settings, General, VPN &amp; Device Management: open the profile, install it.</li>
<li>Settings, General, About, Certificate Trust Settings: switch it on.</li></ol>
<h2>Android</h2>
<ol><li><a href="{pem}">Fetch the certificate</a>.</li>
<li>Settings, search for &ldquo;CA certificate&rdquo;, install the file you fetched.</li></ol>
<h2>Compare before you trust</h2>
<p>The certificate's SHA-256 fingerprint must be the one that the office computer shows:</p>
<p>{fingerprint}</p>
<h2>Then</h2>
<p><a href="{address}">Open the floor log</a></p>
</html>
"""


def ca_pem(data_dir: Path) -> bytes | None:
    """Return the authority's certificate for phones to install (PEM), or None where there is none yet."""
    return get_ca_pem(data_dir)


def ca_mobileconfig(data_dir: Path) -> bytes | None:
    """Return the authority's certificate as a profile for iPhones and iPads, or None where there is none yet.

    Source: Apple, "Configuration Profile Reference", payload com.apple.security.root (from memory).
    """
    certificate = _load_certificate(data_dir)
    if certificate is None:
        return None
    fingerprint = certificate.fingerprint(hashes.SHA256()).hex()

    def name_payload(part: str) -> dict[str, object]:
        # Ids derived from the certificate: installing twice replaces the profile instead of adding one.
        own_id = str(uuid.uuid5(uuid.NAMESPACE_OID, fingerprint + part)).upper()
        identifier = f"cellarslate.{part}.{fingerprint[:16]}"
        return {"PayloadUUID": own_id, "PayloadIdentifier": identifier, "PayloadVersion": 1}

    common_name = certificate.subject.get_attributes_for_oid(NameOID.COMMON_NAME)[0].value
    authority_payload = {
        **name_payload("authority"),
        "PayloadType": "com.apple.security.root",
        "PayloadDisplayName": common_name,
        "PayloadContent": certificate.public_bytes(serialization.Encoding.DER),
    }
    profile = {
        **name_payload("profile"),
        "PayloadType": "Configuration",
        "PayloadDisplayName": "Cellarslate on this site",
        "PayloadDescription": "Lets this phone trust the floor log on the distillery's own network.",
        "PayloadContent": [authority_payload],
    }
    return plistlib.dumps(profile)


def write_fingerprint(data_dir: Path) -> str:
    """Return the authority's SHA-256 fingerprint in pairs, to compare by eye on the phone; empty if none."""
    certificate = _load_certificate(data_dir)
    return "" if certificate is None else certificate.fingerprint(hashes.SHA256()).hex(" ").upper()


def trust_app(data_dir: Path, address: str) -> WSGIApplication:
    """Return a WSGI app that serves the trust page and files; `address` is where the real app answers."""

    def answer(environ: WSGIEnvironment, start_response: StartResponse) -> Iterable[bytes]:
        path = environ.get("PATH_INFO", "/")
        kind, content, extra = _choose(path, data_dir, address)
        is_ready = environ["REQUEST_METHOD"] in ("GET", "HEAD")
        status = "405 Method Not Allowed" if not is_ready else "302 Found" if extra else "200 OK"
        headers = [
            ("Content-Type", kind),
            ("Content-Length", str(len(content))),
            ("Cache-Control", "no-store"),
            ("Content-Security-Policy", "default-src 'none'; frame-ancestors 'none'"),
            ("X-Content-Type-Options", "nosniff"),
        ]
        start_response(status, headers + (extra if is_ready else []))
        return [b"" if environ["REQUEST_METHOD"] == "HEAD" else content]

    return answer


def start_trust_listener(data_dir: Path, address: str, host: str, port: int) -> WSGIServer:
    """Serve the trust page over plain http in a thread of its own; raise OSError if the port is taken."""
    server = _TrustServer((host, port), _QuietHandler)
    server.set_app(trust_app(data_dir, address))
    threading.Thread(target=server.serve_forever, name="trust page", daemon=True).start()
    return server


def _choose(path: str, data_dir: Path, address: str) -> tuple[str, bytes, list[tuple[str, str]]]:
    if path == PEM_PATH and (pem := ca_pem(data_dir)):
        return "application/x-x509-ca-cert", pem, []
    if path == PROFILE_PATH and (profile := ca_mobileconfig(data_dir)):
        return "application/x-apple-aspen-config", profile, []
    if path == TRUST_PATH:
        page = _PAGE.format(
            pem=PEM_PATH,
            profile=PROFILE_PATH,
            fingerprint=write_fingerprint(data_dir),
            address=html.escape(address, quote=True),
        )
        return "text/html; charset=utf-8", page.encode(), []
    # Never redirect to what the request names: only the trust page knows the address.
    return "text/plain; charset=utf-8", b"", [("Location", TRUST_PATH)]


def _load_certificate(data_dir: Path) -> x509.Certificate | None:
    pem = get_ca_pem(data_dir)
    return None if pem is None else x509.load_pem_x509_certificate(pem)


class _TrustServer(ThreadingMixIn, WSGIServer):
    """A thread for each caller, and few: a phone looks at three small answers once in its life."""

    daemon_threads = True

    def __init__(self, address: tuple[str, int], handler: type[WSGIRequestHandler]) -> None:
        self._lock = threading.Lock()
        self._inside: Counter[str] = Counter()
        super().__init__(address, handler)

    def process_request(self, request: Request, client_address: Address) -> None:
        """Take a caller in, or hang up where there are too many already."""
        address = str(client_address[0])
        with self._lock:
            is_full = self._inside.total() >= CALLERS_MOST or self._inside[address] >= CALLERS_OF_ADDRESS_MOST
            if not is_full:
                self._inside[address] += 1
        if is_full:
            self.shutdown_request(request)
        else:
            super().process_request(request, client_address)

    def process_request_thread(self, request: Request, client_address: Address) -> None:
        """Answer one caller in its own thread, and hang up on a caller who sends one byte at a time for ever."""
        patience = threading.Timer(CALL_S, _hang_up, (request,))
        patience.daemon = True
        patience.start()
        try:
            super().process_request_thread(request, client_address)
        finally:
            patience.cancel()
            with self._lock:
                self._inside[str(client_address[0])] -= 1
                self._inside += Counter()  # forgets addresses that are at nothing

    def server_bind(self) -> None:
        # The parent asks the name service for the host's full name, which can take many seconds on a LAN.
        self.socket.bind(self.server_address)
        self.server_address = self.socket.getsockname()
        self.server_name, self.server_port = str(self.server_address[0]), self.server_address[1]
        self.setup_environ()


def _hang_up(request: Request) -> None:
    with contextlib.suppress(OSError):
        if isinstance(request, socket.socket):
            request.shutdown(socket.SHUT_RDWR)


class _QuietHandler(WSGIRequestHandler):
    timeout = 10  # A phone that goes out of reach in mid-request must not hold a thread.

    def log_message(self, format: str, *args: object) -> None:
        """Log nothing: one line for each phone's look at the page tells nobody anything."""
