"""A small HTTP proxy between browser and server that fails in the ways networks fail."""

from __future__ import annotations

import contextlib
import http.client
import http.server
import re
import threading
from typing import Any, Literal

Mode = Literal["pass", "lose_answer", "portal", "redirect", "swallow", "unreachable"]
_HOP = {"connection", "keep-alive", "transfer-encoding", "upgrade", "proxy-connection", "te", "trailer"}
PORTAL = b"<!doctype html><title>Sign in to GuestNet</title><h1>Welcome to GuestNet</h1>"


class FaultyProxy:
    """Serves on a port of its own and passes on to `server_port`.

    `mode` may be changed at any time: `lose_answer` lets the server work and drops its reply to a hand-in; `portal`
    answers all with a sign-in page and 200, `redirect` with a redirect to one; `swallow` never answers;
    `unreachable` cuts the line, and `barred` does so for what lies below a path. `worker_suffix` is the name of a
    newer version of the product, in which every page and the jobs have changed.
    """

    def __init__(self, server_port: int) -> None:
        self.server_port = server_port
        self.mode: Mode = "pass"
        self.worker_suffix = self.barred = ""
        self.hand_ins = 0
        self.lost = 0
        proxy = self

        class Handler(_Handler):
            owner = proxy

        self._closed = threading.Event()
        self._server = http.server.ThreadingHTTPServer(("127.0.0.1", 0), Handler)
        self._server.daemon_threads = True
        self._server.block_on_close = False
        self._thread = threading.Thread(target=self._server.serve_forever, daemon=True)
        self._thread.start()

    @property
    def url(self) -> str:
        """Where the browser goes."""
        return f"http://127.0.0.1:{self._server.server_address[1]}"

    def close(self) -> None:
        """Stop serving."""
        self._closed.set()
        self._server.shutdown()
        self._server.server_close()


class _Handler(http.server.BaseHTTPRequestHandler):
    owner: FaultyProxy
    protocol_version = "HTTP/1.1"

    def do_GET(self) -> None:
        self._answer()

    do_POST = do_GET  # noqa: N815

    def _answer(self) -> None:
        body = self.rfile.read(int(self.headers.get("Content-Length") or 0))
        is_hand_in = self.path.startswith("/api/hand-in")
        mode = self.owner.mode
        is_barred = bool(self.owner.barred) and self.path.startswith(self.owner.barred)
        if mode == "unreachable" or is_barred:
            self._cut()
        elif mode == "swallow":
            self.owner._closed.wait(60)
            self._cut()
        elif mode == "portal":
            self._send(200, [("Content-Type", "text/html")], PORTAL)
        elif mode == "redirect":
            self._send(302, [("Location", f"{self.owner.url}/portal-sign-in")], b"")
        else:
            if is_hand_in:
                self.owner.hand_ins += 1
            self._pass_on(body, lose=mode == "lose_answer" and is_hand_in)

    def _pass_on(self, body: bytes, *, lose: bool) -> None:
        upstream = http.client.HTTPConnection("127.0.0.1", self.owner.server_port, timeout=30)
        try:
            left_out = _HOP | ({"if-none-match"} if self.owner.worker_suffix else set())
            headers = {k: v for k, v in self.headers.items() if k.lower() not in left_out}
            upstream.request(self.command, self.path, body or None, headers)
            reply = upstream.getresponse()
            content = reply.read()
        except OSError:
            self._cut()
            return
        finally:
            upstream.close()
        if lose:
            self.owner.lost += 1
            self._cut()
            return
        kept = [(k, v) for k, v in reply.getheaders() if k.lower() not in _HOP | {"content-length"}]
        if self.path.startswith("/sw.js") and self.owner.worker_suffix:
            kept = [(k, v) for k, v in kept if k.lower() not in ("etag", "content-encoding")]
            content = self._newer_worker(content, reply.getheader("Content-Encoding"))
        self._send(reply.status, kept, content)

    def _newer_worker(self, content: bytes, encoding: str | None) -> bytes:
        import gzip

        text = (gzip.decompress(content) if encoding == "gzip" else content).decode()
        head, rest = text.split("\n", 1)
        assert head.startswith("const VERSION = "), head[:80]
        # The parts that change with most versions: what every page needs, and the jobs.
        rest = re.sub(r'"cache": "(floor|jobs)-[0-9a-f]+"', rf'"cache": "\1-{self.owner.worker_suffix}"', rest)
        return f'const VERSION = "{self.owner.worker_suffix}";\n{rest}'.encode()

    def _send(self, status: int, headers: list[tuple[str, str]], content: bytes) -> None:
        with contextlib.suppress(OSError):
            self.send_response(status)
            for name, value in headers:
                self.send_header(name, value)
            self.send_header("Content-Length", str(len(content)))
            self.end_headers()
            self.wfile.write(content)

    def _cut(self) -> None:
        self.close_connection = True
        with contextlib.suppress(OSError):
            self.connection.shutdown(2)

    def log_message(self, *_: Any) -> None:
        pass
