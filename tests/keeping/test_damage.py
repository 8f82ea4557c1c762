"""A book whose file is damaged: found at the start or when it is read through; nothing more is confirmed from then on.

Damage is made at random over the pages of a book, by seed. What SQLite finds by itself is SQLite's own
(sqlite.org, pragma.html, quick_check and integrity_check); what it cannot find, the digests must.
"""

from __future__ import annotations

import os
import random
import shutil
import sqlite3
from collections.abc import Callable, Iterator
from contextlib import closing
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

import pytest
from click.testing import CliRunner
from uuid6 import uuid7

from tests.desk.conftest import F1, House, token
from webapp import create_app
from webapp.backups import BOOK_NAME
from webapp.book.record.damage import BookDamaged
from webapp.cli import main
from webapp.keeping import scrub
from webapp.keeping.health import look_at

SEEDS = int(os.environ.get("DAMAGE_SEEDS", "40"))
NOW = datetime(2026, 3, 1, 6, 0, tzinfo=UTC)
ENTRIES = 60


@pytest.fixture(scope="module")
def whole(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A book of some hundred pages, closed: everything lies in the one file."""
    folder = tmp_path_factory.mktemp("whole")
    house = House(folder)
    house.log("fruit_intake", F1, -60, gross=("1700", "kg"), tare=("9", "kg"), material="pear", grower_lot="G4",
              sugar=("12.9", "Bx"), temp=("15", "degC"), rot=("1", "pct"))
    for n in range(ENTRIES):
        house.log("ferment_reading", F1, 600 * n, temp=("14.0", "degC"), gravity=(f"{1.05 - n / 2000:.4f}", "SG"))
    house.book.close()
    return folder


@pytest.fixture
def folder(whole: Path, tmp_path: Path) -> Path:
    shutil.copytree(whole, tmp_path / "book")
    return tmp_path / "book"


@pytest.fixture
def served(folder: Path) -> Iterator[Callable[[], Any]]:
    """Open the app over the folder as the server does, and read the book's pages as at its start."""
    opened = []

    def serve() -> Any:
        app = create_app(folder, testing=False)
        app.testing = True
        app.config["PROPAGATE_EXCEPTIONS"] = False
        opened.append(app)
        scrub.examine_pages(app.extensions["book"], is_quick=True)
        return app

    yield serve
    for app in opened:
        app.extensions["book"].close()


def page_of(folder: Path, table: str) -> int:
    """Return where in the file the root page of a table lies. [bytes]"""
    with closing(sqlite3.connect(folder / BOOK_NAME)) as conn:
        size = conn.execute("PRAGMA page_size").fetchone()[0]
        root = conn.execute("SELECT rootpage FROM sqlite_master WHERE name = ?", (table,)).fetchone()[0]
    return int((root - 1) * size)


def overwrite(folder: Path, at: int, what: bytes) -> None:
    with (folder / BOOK_NAME).open("r+b") as file:
        file.seek(at)
        file.write(what)


def hand_in(app: Any) -> Any:
    """Hand in one note as the page of a signed-in person does; return the answer."""
    client = app.test_client()
    page = client.get("/sign-in")
    if page.status_code != 200:
        return page
    form = {"code": "NS", "password": "a long enough secret", "csrf_token": token(client, "/sign-in")}
    signed = client.post("/sign-in", data=form)
    if signed.status_code != 302:
        return signed
    note = {
        "id": str(uuid7()), "kind": "shift_note", "kind_version": 1, "mark": F1, "read_at": NOW.isoformat(),
        "typed_at": NOW.isoformat(), "person": "NS", "device": "d-page", "seq": 1, "values": {"note": {"raw": "rain"}},
    }
    return client.post("/api/hand-in", json={"now": NOW.isoformat(), "device": "d-page", "entries": [note]})


def test_a_page_that_is_overwritten_stops_hand_ins_and_every_page_of_the_desk_says_so(
    folder: Path, served: Callable[[], Any]
) -> None:
    overwrite(folder, page_of(folder, "flows"), b"\x5a" * 4096)
    app = served()
    book = app.extensions["book"]
    assert book.damage
    with pytest.raises(BookDamaged, match="what is on the phones stays there"), book.write():
        pass
    client = app.test_client()
    form = {"code": "OL", "password": "a long enough secret", "csrf_token": token(client, "/sign-in")}
    client.post("/sign-in", data=form)
    for path in ("/desk/", "/desk/entries", "/desk/vessels", "/desk/periods", "/desk/people"):
        page = client.get(path, follow_redirects=True)
        assert "file is damaged" in page.text, path
        assert page.status_code in (200, 503), path
    assert look_at(book, folder, NOW).status == "down"
    assert look_at(book, folder, NOW).checks["scrub"] == "failed"


def test_a_hand_in_to_a_damaged_book_is_not_confirmed(folder: Path, served: Callable[[], Any]) -> None:
    overwrite(folder, page_of(folder, "flows"), b"\x5a" * 4096)
    app = served()
    answer = hand_in(app)
    assert answer.status_code == 503
    assert "file is damaged" in answer.json["error"]


def test_a_book_that_cannot_even_be_opened_is_not_served(folder: Path, served: Callable[[], Any]) -> None:
    overwrite(folder, page_of(folder, "entries"), b"\x5a" * 4096)
    with pytest.raises(BookDamaged):
        served()


@pytest.mark.parametrize("command", [
    ("verify",), ("rebuild",), ("backup", "new.zip"), ("export", "new"),
])
@pytest.mark.parametrize("table", ["entries", "states", "flows"])
def test_no_command_ends_in_a_traceback(folder: Path, tmp_path: Path, command: tuple[str, ...], table: str) -> None:
    overwrite(folder, page_of(folder, table), b"\x5a" * 4096)
    name, *files = command
    said = CliRunner().invoke(main, [name, "--data", str(folder), *(str(tmp_path / one) for one in files)])
    assert said.exception is None or isinstance(said.exception, SystemExit), said.exception
    if said.exit_code:
        assert said.exit_code == 2 and "file is damaged" in said.output
    else:
        assert name == "rebuild" and table != "entries", "folded anew, what is damaged of the fold is made anew"
    assert not (tmp_path / "new.zip").exists()


def test_a_file_that_is_cut_off_or_is_something_else_is_refused_in_a_sentence(folder: Path) -> None:
    whole = (folder / BOOK_NAME).read_bytes()
    for content in (whole[: len(whole) // 2], b"\0" * len(whole), b"%PDF-1.7 " * 1000, whole[:100]):
        (folder / BOOK_NAME).write_bytes(content)
        said = CliRunner().invoke(main, ["verify", "--data", str(folder)])
        assert said.exit_code == 2 and "file is damaged" in said.output, content[:20]


@pytest.mark.parametrize("seed", range(SEEDS))
def test_random_damage_is_found_before_anything_is_confirmed(
    folder: Path, served: Callable[[], Any], seed: int
) -> None:
    """A page of noise, of zeros, or written to the wrong place; a page that nothing uses may be anything."""
    chance = random.Random(seed)
    whole = (folder / BOOK_NAME).read_bytes()
    pages = len(whole) // 4096
    page, other = chance.randrange(pages), chance.randrange(pages)
    what = chance.choice((chance.randbytes(4096), bytes(4096), whole[4096 * other :][:4096]))
    if what == whole[4096 * page :][:4096]:
        return
    overwrite(folder, 4096 * page, what)
    try:
        app = served()
    except BookDamaged:
        return  # it does not even open: the server says so and ends
    book = app.extensions["book"]
    if not book.damage:
        assert scrub.run_due(book, folder, NOW)
        assert scrub.read_status(folder)["troubles"] or _says_the_same(folder, whole), f"page {page} of {pages}"
    answer = hand_in(app)
    assert answer.status_code == (503 if book.damage else 200), f"page {page} of {pages}: {answer.text[:200]}"


# What reading through holds against digests and changes. All else is worked out from these, or set anew at the desk.
HELD = ("entries", "aside", "changes", "people", "vessels", "instruments", "parties", "closes")


def _says_the_same(folder: Path, whole: bytes) -> bool:
    """Whether the record holds what it held: the page was a free one, or one of what is worked out from the record."""
    other = folder / "whole.sqlite"
    other.write_bytes(whole)

    def rows(path: Path) -> list[Any]:
        with closing(sqlite3.connect(path)) as conn:
            return [conn.execute(f"SELECT * FROM {name} ORDER BY 1, 2").fetchall() for name in HELD]

    return rows(folder / BOOK_NAME) == rows(other)


def test_a_body_that_reads_well_but_is_another_is_found_when_the_book_is_read_through(
    folder: Path, served: Callable[[], Any]
) -> None:
    whole = (folder / BOOK_NAME).read_bytes()
    at = whole.index(b'"1.0490"')
    overwrite(folder, at, b'"1.0940"')
    app = served()
    book = app.extensions["book"]
    assert not book.damage, "no page is broken"
    assert scrub.run_due(book, folder, NOW)
    assert not scrub.run_due(book, folder, NOW + timedelta(hours=23))
    assert "is not what was entered" in scrub.describe_trouble(book, folder)
    assert look_at(book, folder, NOW).checks["scrub"] == "failed"


def test_a_whole_book_is_read_through_once_a_day(folder: Path, served: Callable[[], Any]) -> None:
    book = served().extensions["book"]
    assert look_at(book, folder, NOW).checks["scrub"] == "none"
    assert scrub.run_due(book, folder, NOW)
    assert not scrub.run_due(book, folder, NOW + timedelta(hours=23))
    assert scrub.run_due(book, folder, NOW + timedelta(hours=24))
    assert scrub.read_status(folder) == {"ended_at": "2026-03-02T06:00:00Z", "troubles": []}
    assert scrub.describe_trouble(book, folder) == ""
    assert look_at(book, folder, NOW + timedelta(days=5)).checks["scrub"] == "late"
