"""The way from a site to its group: let in once by a code, then known by a secret; TLS with the group's own authority.

What is kept lies in `group.json` of the site's data folder, for its owner's eyes only.
"""

from __future__ import annotations

import hashlib
import http.client
import http.cookies
import json
import ssl
from contextlib import closing
from pathlib import Path
from urllib.parse import urlsplit

from webapp.book.record.errors import BookError
from webapp.durable import write_whole
from webapp.group.sender import NoAnswer

FILE = "group.json"
WAIT_S = 30.0
ANSWER_MOST = 32 << 20
PEM_PATH = "/trust/cellarslate.crt"


class Way:
    """Carries messages over http or https."""

    def __init__(self, url: str, cookie: str = "", authority: str = "", wait_s: float = WAIT_S) -> None:
        parts = urlsplit(url)
        is_local = parts.hostname in ("localhost", "127.0.0.1", "::1")
        if not parts.hostname or parts.scheme not in ("https", "http") or (parts.scheme == "http" and not is_local):
            raise BookError("The group's address begins with https://, such as https://group.example:8443. Give that.")
        self.url, self._cookie, self._wait_s = url.rstrip("/"), cookie, wait_s
        self._host, self._port, self._is_tls = parts.hostname, parts.port, parts.scheme == "https"
        self._context = ssl.create_default_context(cadata=authority or None) if self._is_tls else None

    def ask(self, method: str, path: str, body: bytes | None = None) -> tuple[int, bytes]:
        """Return status and body of the answer. NoAnswer where there is none."""
        return self.ask_whole(method, path, body, {"Content-Encoding": "gzip"} if body else {})[:2]

    def ask_whole(
        self, method: str, path: str, body: bytes | None, headers: dict[str, str]
    ) -> tuple[int, bytes, list[str]]:
        """Return also the cookies that were set."""
        headers = {"Content-Type": "application/json", "Cookie": self._cookie, **headers}
        try:
            with closing(self._open()) as conn:
                conn.request(method, path, body, headers)
                answer = conn.getresponse()
                return answer.status, answer.read(ANSWER_MOST), answer.headers.get_all("Set-Cookie") or []
        except (OSError, http.client.HTTPException) as error:
            raise NoAnswer(f"The group at {self.url} does not answer ({type(error).__name__}).") from error

    def _open(self) -> http.client.HTTPConnection:
        if self._context:
            return http.client.HTTPSConnection(self._host, self._port, timeout=self._wait_s, context=self._context)
        return http.client.HTTPConnection(self._host, self._port, timeout=self._wait_s)


def join(data_dir: Path, url: str, code: str, name: str, fingerprint: str = "") -> None:
    """Use a one-time code of the group and keep the secret that lets this site in.

    BookError or NoAnswer names the fault.

    With a fingerprint the group's own authority is fetched, compared with it, and trusted from then on.
    """
    authority = _fetch_authority(url, fingerprint) if fingerprint else ""
    body = json.dumps({"token": code.strip().rpartition("/")[2], "name": name[:40]}).encode()
    status, said, cookies = Way(url, authority=authority).ask_whole("POST", "/api/enrol", body, {})
    if status != 200 or not cookies:
        try:
            words = json.loads(said)["error"]
        except (ValueError, KeyError, TypeError):
            words = f"What answers at {url} is not the group's server. Look at its address."
        raise BookError(str(words))
    cookie = cookies[0].partition(";")[0]
    said_of_it = {"url": url.rstrip("/"), "cookie": cookie, "authority": authority}
    write_whole(data_dir / FILE, json.dumps(said_of_it).encode())


def load_way(data_dir: Path, url: str = "") -> Way | None:
    """Return the stored way to the group that this site was let in by (to this address, if one is given); or None."""
    try:
        said: dict[str, str] = json.loads((data_dir / FILE).read_text("utf-8"))
    except FileNotFoundError:
        return None
    if url and url.rstrip("/") != said["url"]:
        return None
    return Way(said["url"], said["cookie"], said["authority"])


def _fetch_authority(url: str, fingerprint: str) -> str:
    """Return the group's authority (PEM), if its fingerprint is the one that a person has read at the group."""
    way = Way(url)
    # Nothing is trusted yet: what comes is compared before it is.
    way._context = ssl._create_unverified_context()  # noqa: S323
    pem = way.ask("GET", PEM_PATH)[1].decode("ascii", "replace")
    try:
        found = hashlib.sha256(ssl.PEM_cert_to_DER_cert(pem)).hexdigest()
    except ValueError as error:
        raise BookError(f"What answers at {url} has no authority of its own. Leave --fingerprint out.") from error
    if found != "".join(char for char in fingerprint.lower() if char in "0123456789abcdef"):
        raise BookError("The fingerprint is not the group's. Read it again there; if it differs, stop: ask the group.")
    return pem
