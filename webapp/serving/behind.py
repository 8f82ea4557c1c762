"""Requests through another web server: its word about the caller is believed, and requests past it are refused."""

from __future__ import annotations

from collections.abc import Iterable
from typing import TYPE_CHECKING
from urllib.parse import urlsplit

from werkzeug.middleware.proxy_fix import ProxyFix

from webapp.serving.addresses import is_loopback

if TYPE_CHECKING:
    from wsgiref.types import StartResponse, WSGIApplication, WSGIEnvironment

_NOT_SO = (
    "This address is for the web server in front of it only. Open the public address instead."
    " (That server must send X-Forwarded-For, X-Forwarded-Proto https and X-Forwarded-Host.)\n"
)
_WANTED = ("HTTP_X_FORWARDED_FOR", "HTTP_X_FORWARDED_HOST")


class Behind:
    """A WSGI app behind a web server on this computer.

    It takes the caller's address from that server, and from nobody else.
    """

    def __init__(self, app: WSGIApplication) -> None:
        # One step each: what a caller has put into these headers itself stands before what the server in front adds.
        self._app = ProxyFix(app, x_for=1, x_proto=1, x_host=1)

    def __call__(self, environ: WSGIEnvironment, start_response: StartResponse) -> Iterable[bytes]:
        """Answer a request that came through that server over https; refuse any other with a sentence."""
        is_from_it = is_loopback(environ.get("REMOTE_ADDR", "")) and all(environ.get(name) for name in _WANTED)
        if is_from_it and environ.get("HTTP_X_FORWARDED_PROTO", "").rpartition(",")[2].strip() == "https":
            return self._app(environ, start_response)
        start_response("403 Forbidden", [("Content-Type", "text/plain; charset=utf-8"), ("Cache-Control", "no-store")])
        return [_NOT_SO.encode()]


def caller(client: str, forwarded_for: str | None) -> str:
    """Return the caller's address as the server in front saw it, the last of those it names; `client` where it names
    none.
    """
    named = (forwarded_for or "").rpartition(",")[2].strip()
    return named if named and is_loopback(client) else client


def is_public_address(url: str) -> bool:
    """Say whether this is an address of a whole https site, such as https://log.stillhouse.example."""
    parts = urlsplit(url)
    return parts.scheme == "https" and bool(parts.hostname) and parts.path in ("", "/") and not parts.query
