"""Behind another web server: whom to believe about where a request came from, and what to refuse."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import Any
from urllib.parse import urlsplit

from werkzeug.middleware.proxy_fix import ProxyFix

from webapp.serving.addresses import is_loopback

App = Callable[[dict[str, Any], Callable[..., Any]], Iterable[bytes]]

_NOT_SO = (
    "This address is for the web server in front of it only. Open the public address instead."
    " (That server must send X-Forwarded-For, X-Forwarded-Proto https and X-Forwarded-Host.)\n"
)
_WANTED = ("HTTP_X_FORWARDED_FOR", "HTTP_X_FORWARDED_HOST")


class Behind:
    """A WSGI app that believes one web server on this same computer what it says of its callers, and nobody else."""

    def __init__(self, app: App) -> None:
        # One step each: what a caller has put into these headers itself stands before what the server in front adds.
        self._app = ProxyFix(app, x_for=1, x_proto=1, x_host=1)

    def __call__(self, environ: dict[str, Any], start_response: Callable[..., Any]) -> Iterable[bytes]:
        """Pass on what came over that server, by https; refuse the rest with a sentence."""
        is_from_it = is_loopback(environ.get("REMOTE_ADDR", "")) and all(environ.get(name) for name in _WANTED)
        if is_from_it and environ.get("HTTP_X_FORWARDED_PROTO", "").rpartition(",")[2].strip() == "https":
            return self._app(environ, start_response)
        start_response("403 Forbidden", [("Content-Type", "text/plain; charset=utf-8"), ("Cache-Control", "no-store")])
        return [_NOT_SO.encode()]


def caller(client: str, forwarded_for: str | None) -> str:
    """Return the address that the server in front names last, the one that it saw; `client` where it names none."""
    named = (forwarded_for or "").rpartition(",")[2].strip()
    return named if named and is_loopback(client) else client


def is_public_address(url: str) -> bool:
    """Say whether this is an address of a whole https site, such as https://log.stillhouse.example."""
    parts = urlsplit(url)
    return parts.scheme == "https" and bool(parts.hostname) and parts.path in ("", "/") and not parts.query
