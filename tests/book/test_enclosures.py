"""Pictures, papers and voice notes: named by entries, taken piece by piece, kept once, whole, and found again."""

import hashlib
import io
import struct
from datetime import timedelta

import pytest
from PIL import Image

from tests.book.conftest import F1, NOW, T1, entry, reading, send, settled
from webapp.book.enclosures import content, copies, listed, shelf
from webapp.book.fold import fold
from webapp.book.opening import open_book
from webapp.book.record import log

VIA = "phone d-one"


def picture_of(width=64, height=48, sort="JPEG", colour=(90, 60, 20), **more):
    made = io.BytesIO()
    Image.new("RGB", (width, height), colour).save(made, sort, **more)
    return made.getvalue()


def sha(content):
    return hashlib.sha256(content).hexdigest()


def ogg():
    """Return the first page of an Ogg stream: capture pattern, version, flags (RFC 3533, 6), then air."""
    return b"OggS\x00\x02" + bytes(20) + b"\x01\x13OpusHead\x01\x01" + bytes(200)


def named(*names, **more):
    return {**entry("shift_note", F1, text="look", **more), "enclosed": list(names)}


def take(book, file, size=100, start=0):
    """Bring a file in pieces of this size; return what the book said last."""
    here = None
    for at in range(start, len(file), size):
        here = shelf.take_piece(book, sha(file), at, len(file), file[at : at + size], via=VIA, now=NOW)
    return here


def test_a_file_comes_in_pieces_after_its_entry_and_lies_under_its_digest(book):
    file = picture_of()
    with pytest.raises(shelf.NotNamed):
        shelf.take_piece(book, sha(file), 0, len(file), file, via=VIA, now=NOW)
    send(book, named(sha(file)))
    assert shelf.how_much(book, sha(file)) == (0, False)
    assert take(book, file) == (len(file), True)
    assert (book.path.parent / "enclosures" / sha(file)[:2] / sha(file)).read_bytes() == file
    assert shelf.find_file(book, sha(file))["type"] == "image/jpeg"
    assert shelf.how_much(book, sha(file)) == (len(file), True)
    assert shelf.verify(book) == []


def test_a_sender_goes_on_from_where_the_book_is_and_a_piece_of_elsewhere_changes_nothing(book):
    file = picture_of(200, 150)
    send(book, named(sha(file)))
    first = shelf.take_piece(book, sha(file), 0, len(file), file[:300], via=VIA, now=NOW)
    assert first == (300, False)
    assert shelf.take_piece(book, sha(file), 0, len(file), file[:300], via=VIA, now=NOW) == (300, False), "sent twice"
    assert shelf.take_piece(book, sha(file), 600, len(file), file[600:], via=VIA, now=NOW) == (300, False), "a gap"
    assert take(book, file, start=300) == (len(file), True)
    assert shelf.verify(book) == []


def test_the_same_picture_twice_is_kept_once_and_belongs_to_both(book):
    file = picture_of()
    one, other = named(sha(file)), named(sha(file), seq=2)
    send(book, one, other)
    take(book, file)
    assert take(book, file) == (len(file), True)
    assert len(list((book.path.parent / "enclosures").glob("??/*"))) == 1
    assert [line["about"] for line in listed.of_entries(book, [one["id"], other["id"]])] == [one["id"], other["id"]]


def test_what_arrives_otherwise_is_thrown_away_and_begun_anew(book):
    file = picture_of()
    spoilt = file[:-20] + bytes(20)
    send(book, named(sha(file)))
    with pytest.raises(shelf.Spoilt):
        shelf.take_piece(book, sha(file), 0, len(file), spoilt, via=VIA, now=NOW)
    assert shelf.how_much(book, sha(file)) == (0, False)
    assert take(book, file).is_whole


@pytest.mark.parametrize(
    "file",
    [
        b"<!doctype html><script>alert(1)</script>" + bytes(500),
        b"<svg xmlns='http://www.w3.org/2000/svg' onload='alert(1)'/>",
        b"#!/bin/sh\nrm -rf /\n",
        b"\xff\xd8\xff\xe0" + b"<script>alert(1)</script>" * 30,  # begins as a picture
        b"\x89PNG\r\n\x1a\n" + bytes(300),
        picture_of()[:-60],  # a picture that breaks off
        picture_of(sort="GIF"),
        b"MZ" + bytes(500),
    ],
    ids=["html", "svg", "script", "html as jpeg", "no png", "cut off", "gif", "program"],
)
def test_what_is_no_picture_is_refused_however_it_calls_itself(book, file):
    send(book, named(sha(file)))
    with pytest.raises(content.Refused):
        take(book, file, size=1000)
    assert list((book.path.parent / "enclosures").glob("??/*")) == []
    assert shelf.find_file(book, sha(file)) is None


@pytest.mark.parametrize(
    ("file", "type_"),
    [(picture_of(sort="PNG"), "image/png"), (picture_of(sort="WEBP"), "image/webp"), (ogg(), "audio/ogg"),
     (b"%PDF-1.7\n" + bytes(300), "application/pdf"),
     (b"\x1a\x45\xdf\xa3\x93\x42\x82\x84webm" + bytes(90), "audio/webm"),
     (struct.pack(">I", 24) + b"ftypM4A " + bytes(90), "audio/mp4")],
)
def test_the_sort_is_told_by_content(book, file, type_):
    send(book, named(sha(file)))
    assert take(book, file).is_whole
    assert shelf.find_file(book, sha(file))["type"] == type_


def test_a_picture_of_60_mb_or_of_too_many_points_is_refused_in_words(book):
    send(book, named("a" * 64, "b" * 64))
    with pytest.raises(content.Refused, match="20 MB"):
        shelf.take_piece(book, "a" * 64, 0, 60_000_000, b"\xff\xd8\xff", via=VIA, now=NOW)
    wide = picture_of(20_000, 4_000, "PNG")  # 80 million points in a few kilobytes
    assert len(wide) < 300_000
    send(book, named(sha(wide), seq=2))
    with pytest.raises(content.Refused, match="million points"):
        take(book, wide, size=len(wide))
    large = picture_of() + bytes(12_000_000)
    send(book, named(sha(large), seq=3))
    with pytest.raises(content.Refused, match="12 MB"):
        take(book, large, size=500_000)


def test_an_entry_names_at_most_twelve_and_by_digests_alone(book):
    good = [f"{n:064x}" for n in range(12)]
    answers = send(
        book, named(*good), named(*good, "f" * 64, seq=2), named("A" * 64, seq=3), {**named(seq=4), "enclosed": "x"},
        {**named(seq=5), "enclosed": [1]},
    )
    assert settled(answers) == ["entered", *["refused"] * 4]
    assert "SHA-256" in answers["results"][2]["problems"][0]["words"]


def test_entries_of_earlier_phones_have_none_and_stay_as_they_are(book):
    send(book, reading())
    assert "enclosed" not in log.find_entries(book)[0]["entry"]
    assert book.query("SELECT * FROM enclosed") == []


def test_a_server_that_died_before_the_row_was_written_finds_the_file_again(book):
    file = picture_of()
    send(book, named(sha(file)))
    path = shelf.path_in(shelf.folder_of(book), sha(file))
    path.parent.mkdir(parents=True)
    path.write_bytes(file)
    assert shelf.how_much(book, sha(file)) == (0, False)
    assert take(book, file).is_whole
    assert shelf.find_file(book, sha(file))["size"] == len(file)


def test_one_that_is_added_later_is_an_entry_of_its_own_and_belongs_to_the_other(book):
    about, file = reading(), picture_of()
    added = entry("enclosure", F1, values={"entry": {"raw": about["id"]}, "what": {"raw": "weigh ticket"}}, seq=2)
    added["enclosed"] = [sha(file)]
    send(book, about, added)
    take(book, file)
    (line,) = listed.of_entries(book, [about["id"]])
    assert (line["entry"], line["about"], line["what"], line["type"]) == (
        added["id"], about["id"], "weigh ticket", "image/jpeg")
    assert listed.of_marks(book, [F1]) == [line]
    assert listed.of_marks(book, [T1, ""]) == []


def test_which_entry_names_what_is_folded_from_the_log_and_comes_out_the_same(book):
    send(book, named("a" * 64, "b" * 64), named("b" * 64, seq=2))
    before = book.query("SELECT * FROM enclosed ORDER BY entry, sha256")
    assert len(before) == 3
    fold.rebuild(book)
    assert book.query("SELECT * FROM enclosed ORDER BY entry, sha256") == before


def test_a_lost_or_changed_file_is_found(book):
    one, other = picture_of(), picture_of(colour=(1, 2, 3))
    send(book, named(sha(one), sha(other)))
    take(book, one)
    take(book, other)
    shelf.find_path(book, sha(one)).unlink()
    path = shelf.find_path(book, sha(other))
    path.write_bytes(b"x" + path.read_bytes()[1:])
    told = shelf.verify(book)
    assert len(told) == 2
    assert any("is lost" in line for line in told) and any("no longer as it came" in line for line in told)
    assert not shelf.how_much(book, sha(one)).is_whole, "a phone that still has it brings it again"
    assert take(book, one).is_whole
    assert len(shelf.verify(book)) == 1


def test_a_nearly_full_disk_keeps_its_room_for_entries(book, monkeypatch):
    file = picture_of()
    send(book, named(sha(file)))
    usage = shelf.shutil.disk_usage(book.path.parent)
    monkeypatch.setattr(shelf.shutil, "disk_usage", lambda _: usage._replace(free=shelf.FREE_LEAST - 1))
    with pytest.raises(shelf.BookError, match="kept for entries"):
        take(book, file)
    assert settled(send(book, entry("shift_note", seq=2, text="stir"))) == ["entered"]


def test_a_small_picture_is_made_once_and_of_pictures_alone(book):
    file, note = picture_of(1600, 1200), ogg()
    send(book, named(sha(file), sha(note)))
    take(book, file, size=50_000)
    take(book, note)
    small = Image.open(io.BytesIO(shelf.thumb_of(book, sha(file))))
    assert max(small.size) == content.THUMB_PX
    assert shelf.thumb_of(book, sha(file)) == shelf.thumb_of(book, sha(file))
    assert shelf.thumb_of(book, sha(note)) is None
    assert shelf.thumb_of(book, "0" * 64) is None


def test_a_picture_of_the_desk_is_drawn_anew_without_its_place():
    exif = Image.Exif()
    exif[0x010F] = "a camera"
    exif[0x8825] = {1: "N", 2: (47.0, 3.0, 1.0)}  # the GPS part (Exif 2.32, 4.6.6)
    exif[0x0112] = 6  # lies on its side: 90 degrees
    file = picture_of(4000, 3000, exif=exif, comment=b"taken at home")
    assert b"taken at home" in file
    assert Image.open(io.BytesIO(file)).getexif().get_ifd(0x8825)
    made = Image.open(io.BytesIO(content.without_place(file)))
    assert not made.getexif() and not made.info.get("exif") and not made.info.get("comment")
    assert made.size == (1800, 2400), "upright"


@pytest.mark.parametrize("mode", ["1", "L", "P", "RGBA", "LA", "I;16"])
def test_a_picture_of_any_mode_is_drawn(mode):
    made = io.BytesIO()
    Image.new(mode, (300, 200), 1).save(made, "PNG")
    assert Image.open(io.BytesIO(content.without_place(made.getvalue()))).size == (300, 200)


def test_what_nobody_goes_on_sending_is_let_go_after_a_month(book):
    import os

    file = picture_of(200, 150)
    send(book, named(sha(file)))
    shelf.take_piece(book, sha(file), 0, len(file), file[:300], via=VIA, now=NOW)
    shelf.sweep(book)
    assert shelf.how_much(book, sha(file)).has == 300
    part = next((shelf.folder_of(book) / ".coming").iterdir())
    old = part.stat().st_mtime - timedelta(days=31).total_seconds()
    os.utime(part, (old, old))
    shelf.sweep(book)
    assert shelf.how_much(book, sha(file)).has == 0


def test_copies_beside_a_backup_are_made_once_and_brought_back_whole(book, tmp_path):
    files = [picture_of(colour=(n, n, n)) for n in range(3)]
    send(book, named(*map(sha, files)))
    for file in files:
        take(book, file)
    beside = tmp_path / "disk" / "enclosures"
    assert copies.copy_out(book, shelf.folder_of(book), beside) == 3
    assert copies.copy_out(book, shelf.folder_of(book), beside) == 0, "each is there already"
    for file in files[:2]:
        shelf.find_path(book, sha(file)).unlink()
    spoilt = shelf.path_in(beside, sha(files[1]))
    spoilt.write_bytes(b"spoilt")
    assert copies.bring_in(book, [beside]) == (2, 1)
    assert shelf.find_path(book, sha(files[0])).read_bytes() == files[0]
    assert len(shelf.verify(book)) == 1


def test_an_older_book_gets_the_tables_when_it_is_opened(tmp_path):
    with open_book(tmp_path / "book.sqlite") as made, made.write() as database:
        database.conn.execute("DROP TABLE enclosed")
        database.conn.execute("DROP TABLE enclosures")
        database.conn.execute("DROP INDEX entries_heard")
        database.conn.execute("DELETE FROM migrations WHERE name = 'enclosures'")
    with open_book(tmp_path / "book.sqlite") as again:
        assert again.query("SELECT * FROM enclosures") == []
