"""A small web server and a real Chromium for the label tests, under the content security policy of the product."""

import contextlib
import functools
import http.server
import os
import shutil
import threading
from collections.abc import Iterator
from pathlib import Path
from typing import Any, ClassVar

from playwright.sync_api import Browser, Page, Playwright

from webapp.shipping.assets import words_file

ROOT = Path(__file__).resolve().parents[2]
POLICY = "default-src 'self'; script-src 'self' 'wasm-unsafe-eval'"


class _Handler(http.server.SimpleHTTPRequestHandler):
    """Serves the repository as it is, and extra pages from memory."""

    extra: ClassVar[dict[str, tuple[str, bytes]]] = {}
    extensions_map: ClassVar[dict[str, str]] = {
        **http.server.SimpleHTTPRequestHandler.extensions_map,
        ".js": "text/javascript",
        ".wasm": "application/wasm",
    }

    def do_GET(self) -> None:
        path = self.path.split("?")[0]
        found = self.extra.get(path) or _words(path)
        if found is None:
            super().do_GET()
            return
        self.send_response(200)
        self.send_header("Content-Type", found[0])
        self.send_header("Content-Length", str(len(found[1])))
        self.end_headers()
        self.wfile.write(found[1])

    def end_headers(self) -> None:
        self.send_header("Content-Security-Policy", POLICY)
        super().end_headers()

    def log_message(self, *_: Any) -> None:
        pass


def _words(path: str) -> tuple[str, bytes] | None:
    """Return a language's words as the product serves them: nearly every module says some."""
    name = path.removeprefix("/words/").removesuffix(".json")
    body = words_file(name) if path == f"/words/{name}.json" else None
    return ("application/json", body) if body is not None else None


@contextlib.contextmanager
def serve(extra: dict[str, tuple[str, bytes]]) -> Iterator[str]:
    """Serve the repository and the extra pages {path: (content type, body)} on a free port; gives the origin."""
    handler = type("Handler", (_Handler,), {"extra": extra})
    server = http.server.ThreadingHTTPServer(("127.0.0.1", 0), functools.partial(handler, directory=str(ROOT)))
    thread = threading.Thread(target=server.serve_forever, daemon=True)
    thread.start()
    try:
        yield f"http://127.0.0.1:{server.server_address[1]}"
    finally:
        server.shutdown()
        server.server_close()
        thread.join()


def launch(playwright: Playwright, args: list[str] | None = None) -> Browser:
    """Launch Chromium: the one named by CELLARSLATE_CHROMIUM, else the machine's own, else Playwright's."""
    path = os.environ.get("CELLARSLATE_CHROMIUM") or shutil.which("chromium") or shutil.which("chromium-browser")
    return playwright.chromium.launch(executable_path=path, args=args or [], chromium_sandbox=False)


def watch(page: Page, origin: str) -> list[str]:
    """Return a list that gathers what a page must never do: foreign requests, policy breaches, script errors."""
    faults: list[str] = []

    def note_request(url: str) -> None:
        if not url.startswith((origin, "blob:" + origin, "data:")):
            faults.append(f"foreign request: {url}")

    page.on("request", lambda request: note_request(request.url))
    page.on("pageerror", lambda error: faults.append(f"script error: {error}"))
    page.on(
        "console",
        lambda message: faults.append(message.text) if "Content Security Policy" in message.text else None,
    )
    return faults
