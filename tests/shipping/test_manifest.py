"""The web app manifest: pictures and shortcuts that the system can use."""

import re
import struct

import pytest

from webapp import create_app
from webapp.shipping import shells

# What Chromium asks of a screenshot for its install prompt (web.dev, "Richer PWA installation UI"; from memory): 320 to
# 3840 px a side, the longer at most 2.3 times the shorter, one shape for all of a form factor.
SIDE_PX = (320, 3840)
LONGER_MOST = 2.3
BYTES_MOST = 60_000


@pytest.fixture
def client(tmp_path):
    app = create_app(tmp_path, testing=True)
    yield app.test_client()
    app.extensions["book"].close()


def test_screenshots_are_as_large_as_they_say_and_no_part_of_an_install(client):
    shots = client.get("/manifest.webmanifest").json["screenshots"]
    shapes = {}
    for shot in shots:
        with client.get(shot["src"]) as answer:
            png = answer.data
        width, height = struct.unpack(">II", png[16:24])  # the head of a PNG (RFC 2083, 4.1.1)
        assert shot["sizes"] == f"{width}x{height}" and len(png) < BYTES_MOST
        short, long = sorted((width, height))
        assert SIDE_PX[0] <= short and long <= min(SIDE_PX[1], LONGER_MOST * short)
        shapes.setdefault(shot["form_factor"], set()).add(width / height)
    assert {form: len(each) for form, each in shapes.items()} == {"narrow": 1, "wide": 1}
    assert "/static/screens/" not in client.get("/sw.js").text


def test_every_shortcut_opens_a_page_that_the_phone_has(client):
    shortcuts = client.get("/manifest.webmanifest").json["shortcuts"]
    assert {one["url"] for one in shortcuts} >= {"/scan", "/today", "/slate"}
    for one in shortcuts:
        assert any(re.match(pattern, one["url"]) for pattern, _ in shells.PATTERNS), one
        assert one["icons"]
