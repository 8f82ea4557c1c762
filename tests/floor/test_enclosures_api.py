"""Pictures over the API: in pieces that resume, for whoever is let in, never as anything that runs."""

import pytest

from tests.access.conftest import app, phone, sign_in  # noqa: F401
from tests.book.conftest import entry, send
from tests.book.test_enclosures import ogg, picture_of, sha
from webapp.book.enclosures import shelf
from webapp.trade.marks import make_mark

F1 = make_mark("F1")


@pytest.fixture
def named(app):  # noqa: F811
    """Return a function that enters an entry which names a file, and returns the file's address."""

    def enter(*files):
        one = entry("shift_note", F1, text="look") | {"enclosed": [sha(file) for file in files]}
        send(app.extensions["book"], one)
        return [f"/api/enclosures/{sha(file)}" for file in files]

    return enter


def put(client, url, file, at=0, size=None):
    piece = file[at : at + (size or len(file))]
    span = f"bytes {at}-{at + len(piece) - 1}/{len(file)}"
    return client.put(url, data=piece, headers={"Content-Range": span, "Content-Type": "application/octet-stream"})


def test_a_phone_brings_a_picture_in_pieces_and_everybody_let_in_sees_it(app, phone, sign_in, named):  # noqa: F811
    client, device = phone
    file = picture_of(300, 200)
    (url,) = named(file)
    assert client.get(f"{url}/place").json["has"] == 0
    first = put(client, url, file, size=400)
    assert (first.status_code, first.json["has"], first.json["is_whole"]) == (200, 400, False)
    assert client.get(f"{url}/place").json["has"] == 400
    assert client.get(url).status_code == 404, "half a picture is none"
    assert put(client, url, file, at=400).json["is_whole"] is True
    for who in (client, sign_in("WK"), sign_in("OL")):
        answer = who.get(url)
        assert answer.data == file
        answer.close()
    assert app.test_client().get(url).status_code == 401
    assert shelf.find_file(app.extensions["book"], sha(file))["via"] == f"phone {device['id']}"


def test_what_is_sent_is_fenced_in_and_called_what_it_is(phone, named):  # noqa: F811
    client, _ = phone
    files = {"image/jpeg": picture_of(), "application/pdf": b"%PDF-1.4\n<script>alert(1)</script>", "audio/ogg": ogg()}
    for (type_, file), url in zip(files.items(), named(*files.values()), strict=True):
        assert put(client, url, file).status_code == 200
        with client.get(url) as answer:
            assert answer.headers["Content-Type"] == type_
            assert answer.headers["X-Content-Type-Options"] == "nosniff"
            assert "sandbox" in answer.headers["Content-Security-Policy"]
            assert "script-src" not in answer.headers["Content-Security-Policy"]
            assert "default-src 'none'" in answer.headers["Content-Security-Policy"]
            assert answer.headers["Cache-Control"] == "no-store"
            how = answer.headers["Content-Disposition"].split(";")[0]
            assert how == ("inline" if type_.startswith("image/") else "attachment")
    thumb = client.get(f"{named(files['image/jpeg'])[0]}/thumb")
    assert thumb.headers["Content-Type"] == "image/jpeg" and "sandbox" in thumb.headers["Content-Security-Policy"]


def test_what_is_no_picture_or_was_not_named_is_refused_in_a_sentence(phone, named):  # noqa: F811
    client, _ = phone
    page = b"<!doctype html><script>alert(1)</script>"
    (url,) = named(page)
    refused = put(client, url, page)
    assert refused.status_code == 422 and "none of them" in refused.json["error"]
    assert client.get(url).status_code == 404
    stranger = picture_of()
    unknown = put(client, f"/api/enclosures/{sha(stranger)}", stranger)
    assert unknown.status_code == 404 and "Hand in its entry first" in unknown.json["error"]
    spoilt = picture_of(70, 70)
    (url,) = named(spoilt)
    assert put(client, url, spoilt[:-1] + b"x").status_code == 409
    for header in ("", "bytes 0-9", "bytes 0-3/10", "bytes 9-0/10", "bytes */10"):
        answer = client.put(url, data=b"0123456789", headers={"Content-Range": header})
        assert answer.status_code in (400, 422), header
    assert client.put(url, data=bytes(600_000), headers={"Content-Range": "bytes 0-599999/600000"}).status_code == 413
    assert put(client, "/api/enclosures/../../book.sqlite", b"x").status_code == 404
    assert put(client, f"/api/enclosures/{'.' * 64}", b"x").status_code == 404


def test_another_site_brings_nothing(phone, named):  # noqa: F811
    client, _ = phone
    file = picture_of()
    (url,) = named(file)
    span = {"Content-Range": f"bytes 0-{len(file) - 1}/{len(file)}"}
    assert client.put(url, data=file, headers={**span, "Origin": "https://elsewhere.example"}).status_code == 403
    assert client.put(url, data=file, headers={**span, "Sec-Fetch-Site": "cross-site"}).status_code == 403


def test_a_phone_asks_what_a_vessel_has(phone, named):  # noqa: F811
    client, _ = phone
    here, coming = picture_of(), picture_of(9, 9)
    urls = named(here, coming)
    put(client, urls[0], here)
    found = client.get(f"/api/enclosures?mark={F1}").json["enclosed"]
    assert [one["sha256"] for one in found] == [sha(here)]
    assert client.get(f"/api/enclosures?entry={found[0]['entry']}").json["enclosed"] == found
    assert client.get("/api/enclosures?mark=nonsense").status_code == 400
