"""Pictures and papers at the desk: added by an entry of their own, shown at entry, vessel, trace and certificate."""

import io
import re

import pytest
from PIL import Image

from tests.access.conftest import app, csrf_of, sign_in  # noqa: F401
from tests.book.conftest import entry, send
from tests.book.test_enclosures import picture_of, sha
from webapp.book.enclosures import listed, shelf
from webapp.book.house import registry
from webapp.book.record import log
from webapp.trade.marks import make_mark

T1 = make_mark("T1")
PDF = b"%PDF-1.7\n" + bytes(400)


@pytest.fixture
def book(app):  # noqa: F811
    book = app.extensions["book"]
    registry.put_vessel(book, {"mark": T1, "name": "T1", "title": "Tank 1", "sort": "tank"}, by="OL")
    return book


@pytest.fixture
def delivery(book):
    """An entry that stands in the book, to which papers are added."""
    one = entry("receipt", T1, consignor="Neighbour", document="7", purpose="in_bond", to_account="storage",
                declared_volume="100 L", declared_strength="60 pct_vol", volume="100 L", temp="20 degC",
                strength="60 pct_vol", seals="yes", person="WK", values=None)
    one["values"]["spirit"] = {"raw": "pear spirit"}
    send(book, one)
    return one


def filled(client, page):
    """Return the part of a page that its script loads, and that stands behind a link without script."""
    (href,) = re.findall(r'data-fills href="(/desk/enclosures/[^"]+)"', page)
    answer = client.get(href)
    assert answer.status_code == 200 and 'data-same="enclosed"' in answer.text
    return answer.text


def add(client, entry_id, *files, what="delivery note"):
    page = client.get(f"/desk/entries/{entry_id}")
    data = {"csrf_token": csrf_of(page.text), "entry": entry_id, "what": what,
            "file": [(io.BytesIO(content), name) for name, content in files]}
    return client.post("/desk/enclosures", data=data, content_type="multipart/form-data", follow_redirects=True)


def test_a_paper_is_added_by_an_entry_of_its_own_and_the_old_one_stays_as_it_was(book, delivery, sign_in):  # noqa: F811
    client = sign_in("WK")
    before = log.load_entry(book, delivery["id"])
    page = add(client, delivery["id"], ("note.pdf", PDF))
    assert "Added. It is an entry of its own" in page.text
    assert log.load_entry(book, delivery["id"]) == before
    added = log.find_entries(book, kind="enclosure")[0]
    assert added["entry"]["enclosed"] == [sha(PDF)]
    assert added["entry"]["values"] == {"entry": {"raw": delivery["id"]}, "what": {"raw": "delivery note"}}
    assert (added["mark"], added["person"]) == (T1, "WK")
    assert shelf.find_path(book, sha(PDF)).read_bytes() == PDF
    shown = filled(client, page.text)
    assert f"/api/enclosures/{sha(PDF)}" in shown and "delivery note, WK" in shown
    assert log.verify(book) == [] and shelf.verify(book) == []
    own = client.get(f"/desk/entries/{added['id']}").text
    assert "delivery note" in own and "Add pictures or papers" not in own


def test_a_picture_is_drawn_anew_so_that_its_place_stays_outside(book, delivery, sign_in):  # noqa: F811
    exif = Image.Exif()
    exif[0x8825] = {1: "N", 2: (47.0, 3.0, 1.0)}
    add(sign_in("OL"), delivery["id"], ("ticket.jpg", picture_of(900, 600, exif=exif)))
    (line,) = listed.of_entries(book, [delivery["id"]])
    content = shelf.find_path(book, line["sha256"]).read_bytes()
    assert line["type"] == "image/jpeg" and b"Exif" not in content


@pytest.mark.parametrize(
    ("files", "said"),
    [([("page.pdf", b"<!doctype html><script>alert(1)</script>")], "This file is none of them"),
     ([("drawing.svg", b"<svg onload='alert(1)'/>")], "This file is none of them"),
     ([("large.jpg", picture_of() + bytes(12_000_000))], "at most 12 MB"),
     ([("large.pdf", b"%PDF-1.7" + bytes(20_000_001))], "at most 20 MB"),
     ([("cut.jpg", picture_of()[:-40])], "cannot be read to its end"),
     ([(f"{n}.pdf", PDF + bytes([n])) for n in range(13)], "At most 12 at a time"),
     ([], "Pick a picture or a paper first")],
    ids=["html", "svg", "large picture", "large pdf", "cut off", "too many", "none"],
)
def test_what_is_not_taken_is_said_and_nothing_is_entered(book, delivery, sign_in, files, said):  # noqa: F811
    page = add(sign_in("OL"), delivery["id"], *files)
    assert said in page.text
    assert log.find_entries(book, kind="enclosure") == []
    assert not (shelf.folder_of(book)).exists() or list(shelf.folder_of(book).glob("??/*")) == []


def test_one_bad_file_among_several_keeps_all_of_them_out(book, delivery, sign_in):  # noqa: F811
    page = add(sign_in("OL"), delivery["id"], ("good.pdf", PDF), ("<b>bad.pdf", b"#!/bin/sh"))
    assert "&lt;b&gt;bad.pdf: The book keeps" in page.text
    assert "<b>bad" not in page.text
    assert log.find_entries(book, kind="enclosure") == []


def test_they_are_shown_at_the_vessel_and_in_the_trace_and_load_when_seen(book, delivery, sign_in):  # noqa: F811
    client = sign_in("WK")
    add(client, delivery["id"], ("ticket.png", picture_of(sort="PNG")), what="weigh ticket")
    for path in (f"/desk/vessels/{T1}", f"/desk/trace/{T1}"):
        page = filled(client, client.get(path).text)
        (image,) = re.findall(r"<img [^>]*/thumb[^>]*>", page)
        assert 'loading="lazy"' in image, path
        assert "weigh ticket, WK" in page, path


def test_a_laboratory_paper_goes_with_its_certificate_onto_the_page_and_into_the_passport(
    book, delivery, sign_in  # noqa: F811
):
    certificate = entry("lab_certificate", T1, laboratory="Bayfield", document="C-04", taken_on="2025-09-24",
                        methanol="812 g_hL_pa", values=None)
    send(book, certificate)
    client = sign_in("OL")
    assert "add its paper" in client.get("/desk/certificates").text
    add(client, certificate["id"], ("c-04.pdf", PDF), what="certificate")
    page = client.get("/desk/certificates").text
    assert f'href="/api/enclosures/{sha(PDF)}"' in page and "add its paper" not in page
    import pypdfium2

    paper = pypdfium2.PdfDocument(client.get(f"/desk/trace/{T1}.pdf").data)
    text = " ".join(page.get_textpage().get_text_range() for page in paper).replace("\r\n", " ")
    paper.close()
    assert sha(PDF)[:16] in text and "paper is in the book" in text


def test_what_waits_on_a_phone_is_said_and_what_is_struck_is_struck_through(book, sign_in):  # noqa: F811
    one = entry("shift_note", T1, text="look", person="WK") | {"enclosed": ["a" * 64]}
    send(book, one)
    client = sign_in("OL")
    assert "Not here yet" in filled(client, client.get(f"/desk/entries/{one['id']}").text)
    assert "Not here yet" in filled(client, client.get(f"/desk/vessels/{T1}").text)
    struck = {"csrf_token": csrf_of(client.get(f"/desk/entries/{one['id']}").text), "query": "", "verdict": "struck",
              "reason": "wrong picture", "back": "/desk/"}
    client.post(f"/desk/entries/{one['id']}/answer", data=struck)
    assert "<s>" in filled(client, client.get(f"/desk/entries/{one['id']}").text)
    assert "Not here yet" not in filled(client, client.get(f"/desk/vessels/{T1}").text)

