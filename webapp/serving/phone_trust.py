"""The files that make a phone trust this computer, and the small plain-http listener that hands them out.

The listener serves a page with its script and sheets, the certificate in two forms, a redirect to that page, and
nothing else.
"""

import contextlib
import plistlib
import socket
import threading
import uuid
from collections import Counter
from collections.abc import Iterable
from functools import cache
from pathlib import Path
from socketserver import ThreadingMixIn
from typing import TypeAlias
from urllib.parse import parse_qs, urlsplit
from wsgiref.simple_server import WSGIRequestHandler, WSGIServer
from wsgiref.types import StartResponse, WSGIApplication, WSGIEnvironment

from cryptography import x509
from cryptography.hazmat.primitives import hashes, serialization
from cryptography.x509.oid import NameOID
from jinja2 import Environment, FileSystemLoader
from werkzeug.datastructures import LanguageAccept
from werkzeug.http import parse_accept_header

from webapp.book.house.codes import groups_of
from webapp.places import STATIC_DIR
from webapp.serving.certificates import get_ca_pem
from webapp.serving.phone_kinds import KINDS, kind_of
from webapp.words.catalogue import ENGLISH
from webapp.words.desk import say, t
from webapp.words.language import best_of, html_lang, read_in

TRUST_PATH = "/trust"
PEM_PATH = "/trust/cellarslate.crt"
PROFILE_PATH = "/trust/cellarslate.mobileconfig"
Request: TypeAlias = socket.socket | tuple[bytes, socket.socket]
Address: TypeAlias = tuple[str, int]
_POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; base-uri 'none'; frame-ancestors 'none'"
# Callers at one time, of all and of one address; and how long one call may take in all. [s]
CALLERS_MOST, CALLERS_OF_ADDRESS_MOST, CALL_S = 32, 8, 20.0

# What the page is made of, by its address here and by its file below static. Nothing else of static is handed out.
_PARTS = {"/trust/trust.js": "doors/trust.js", "/trust/trust.css": "doors/trust.css",
          "/trust/tokens.css": "style/tokens.css"}
_TYPES = {".js": "text/javascript; charset=utf-8", ".css": "text/css; charset=utf-8"}
SEEN_PATH = "/trust/seen.svg"
SEEN = b'<svg xmlns="http://www.w3.org/2000/svg" width="1" height="1"/>'
_TEMPLATES = Path(__file__).resolve().parent.parent / "templates"


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


def write_groups(data_dir: Path) -> str:
    """Return the same fingerprint as four short groups, to compare by eye; empty if there is no authority.

    78 bits of it: nobody makes another authority that shows the same ones.
    """
    certificate = _load_certificate(data_dir)
    return "" if certificate is None else groups_of(certificate.fingerprint(hashes.SHA256()))


def page_words(data_dir: Path, user_agent: str, chosen: str = "") -> dict[str, object]:
    """Return the facts for templates/trust/_steps.html: the authority in this folder, and the browser of that name."""
    return {
        "kind": kind_of(user_agent, chosen), "kinds": KINDS, "pem": PEM_PATH, "profile": PROFILE_PATH,
        "groups": write_groups(data_dir), "fingerprint": write_fingerprint(data_dir),
    }


def trust_app(data_dir: Path, address: str) -> WSGIApplication:
    """Return a WSGI app that serves the trust page and files; `address` is where the real app answers."""

    def answer(environ: WSGIEnvironment, start_response: StartResponse) -> Iterable[bytes]:
        path = environ.get("PATH_INFO", "/")
        kind, content, extra = _choose(environ, path, data_dir, address)
        is_ready = environ["REQUEST_METHOD"] in ("GET", "HEAD")
        status = "405 Method Not Allowed" if not is_ready else "302 Found" if extra else "200 OK"
        headers = [
            ("Content-Type", kind),
            ("Content-Length", str(len(content))),
            ("Cache-Control", "no-store"),
            ("Content-Security-Policy", f"{_POLICY}; img-src {_origin(address)}"),
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


def _choose(
    environ: WSGIEnvironment, path: str, data_dir: Path, address: str
) -> tuple[str, bytes, list[tuple[str, str]]]:
    if path == PEM_PATH and (pem := ca_pem(data_dir)):
        return "application/x-x509-ca-cert", pem, []
    if path == PROFILE_PATH and (profile := ca_mobileconfig(data_dir)):
        return "application/x-apple-aspen-config", profile, []
    if path in _PARTS:
        file = STATIC_DIR / _PARTS[path]
        return _TYPES[file.suffix], file.read_bytes(), []
    if path == TRUST_PATH:
        return "text/html; charset=utf-8", _page(environ, data_dir, address).encode(), []
    # Never redirect to what the request names: only the trust page knows the address.
    return "text/plain; charset=utf-8", b"", [("Location", TRUST_PATH)]


def _page(environ: WSGIEnvironment, data_dir: Path, address: str) -> str:
    chosen = parse_qs(environ.get("QUERY_STRING", "")[:200]).get("for", [""])[0]
    wanted = parse_accept_header(environ.get("HTTP_ACCEPT_LANGUAGE", "")[:200], LanguageAccept).values()
    read_in(best_of(wanted) or ENGLISH)
    words = page_words(data_dir, environ.get("HTTP_USER_AGENT", "")[:500], chosen)
    is_let_in = bool(urlsplit(address).path.strip("/"))
    onward = say("access-trust-go_on_this_phone_is") if is_let_in else say("access-trust-open_the_floor_log")
    return _templates().get_template("trust/plain.html").render(
        **words, address=address, seen=f"{_origin(address)}{SEEN_PATH}", onward=onward, is_plain=True,
        port=urlsplit(address).port or 443,
    )


@cache
def _templates() -> Environment:
    made = Environment(loader=FileSystemLoader(_TEMPLATES), autoescape=True, trim_blocks=True, lstrip_blocks=True)
    made.globals.update(t=t, html_lang=html_lang)
    return made


def _origin(address: str) -> str:
    parts = urlsplit(address)
    return f"{parts.scheme}://{parts.netloc}"


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
