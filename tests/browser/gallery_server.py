"""Serve the gallery from the repository's own templates and files, under the product's content policy."""

from __future__ import annotations

import threading
from collections.abc import Iterator
from contextlib import contextmanager
from functools import partial
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from urllib.parse import parse_qs, urlsplit
from xml.etree import ElementTree

from jinja2 import Environment, FileSystemLoader
from wtforms import (
    BooleanField,
    DateTimeLocalField,
    DecimalField,
    Form,
    RadioField,
    SelectField,
    StringField,
    TextAreaField,
)
from wtforms.fields.choices import SelectChoice
from wtforms.validators import InputRequired

from webapp.shipping.assets import words_file
from webapp.words.desk import t
from webapp.words.language import html_lang, language, offered

ROOT = Path(__file__).parents[2]
POLICY = "default-src 'self'; script-src 'self'; style-src 'self'; object-src 'none'; base-uri 'none'"
WORKER = """
self.addEventListener("install", (event) => event.waitUntil(caches.open("look").then((cache) => cache.addAll(
  ["/gallery?screen=slate", "/static/icons/sprite.svg", "/static/style/icon.css", "/static/style/tokens.css"]))));
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));
self.addEventListener("fetch", (event) => event.respondWith(
  caches.match(event.request).then((kept) => kept ?? fetch(event.request))));
"""


class GalleryForm(Form):
    """One field of each sort."""

    temp = DecimalField("Mash temperature")
    gravity = DecimalField("Gravity, strained juice", [InputRequired("Type the gravity as read.")])
    ph = DecimalField("pH")
    strength = DecimalField("Strength by the glass", [InputRequired("Type the strength as the glass shows it.")])
    mark = StringField("Mark on the label", [InputRequired("Scan the label, or type the mark under it.")])
    basis = RadioField(
        "Strength is given as",
        choices=[SelectChoice("glass", "as the glass shows"), SelectChoice("true", "true at 20 °C")],
    )
    fruit = SelectField(
        "Fruit",
        choices=[SelectChoice("plum", "plum"), SelectChoice("pear", "pear"), SelectChoice("quince", "quince")],
    )
    reason = SelectField(
        "Reason",
        choices=[SelectChoice("slip", "slip of the pen"), SelectChoice("other", "another instrument")],
    )
    read_at = DateTimeLocalField("Read at", render_kw={"data-last-when": "now 11:30"})
    is_rinsed = BooleanField("Jar rinsed with the sample first")
    remark = TextAreaField("Remark", render_kw={"data-remark": True, "rows": 1})


class Handler(SimpleHTTPRequestHandler):
    """Files of the repository, and the gallery rendered fresh for each request."""

    def do_GET(self) -> None:
        address = urlsplit(self.path)
        if address.path == "/gallery":
            self._answer("text/html; charset=utf-8", render(parse_qs(address.query)))
        elif address.path == "/look-worker.js":
            self._answer("text/javascript", WORKER)
        elif address.path == "/words/en.json":
            self._answer("application/json", (words_file("en") or b"").decode())
        else:
            super().do_GET()

    def _answer(self, kind: str, text: str) -> None:
        body = text.encode()
        self.send_response(200)
        self.send_header("Content-Type", kind)
        self.send_header("Content-Length", str(len(body)))
        self.end_headers()
        self.wfile.write(body)

    def end_headers(self) -> None:
        self.send_header("Content-Security-Policy", POLICY)
        self.send_header("Cache-Control", "no-store")
        super().end_headers()

    def log_message(self, *_: object) -> None:
        """Keep the test's output to the test."""


def render(query: dict[str, list[str]]) -> str:
    """Render one screen of the gallery; ?wrong=1 shows the form as the server answers a bad one."""
    screen = query.get("screen", ["parts"])[0]
    loader = FileSystemLoader([ROOT / "webapp" / "templates", ROOT / "tests" / "browser"])
    environment = Environment(loader=loader, autoescape=True, trim_blocks=True, lstrip_blocks=True)
    environment.globals.update(t=t, html_lang=html_lang, languages=offered, language=language)
    form = GalleryForm()
    if "wrong" in query:
        form.validate()
    icons = [symbol.get("id") for symbol in ElementTree.parse(ROOT / "static" / "icons" / "sprite.svg").getroot()]
    return environment.get_template("gallery.html").render(
        form=form,
        screen=screen,
        side="desk" if screen == "desk" else "floor",
        title="Gallery",
        icons=icons,
        decimal_mark=query.get("decimal", [""])[0],
        zone="UTC",
    )


@contextmanager
def serve_gallery() -> Iterator[str]:
    """Give the gallery's address for as long as the block runs."""
    server = ThreadingHTTPServer(("127.0.0.1", 0), partial(Handler, directory=str(ROOT)))
    thread = threading.Thread(target=server.serve_forever, daemon=True)
    thread.start()
    try:
        yield f"http://127.0.0.1:{server.server_port}"
    finally:
        server.shutdown()
        server.server_close()
        thread.join()
