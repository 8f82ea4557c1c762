"""While a change of limits is worked off: the desk says how far it is, cards have it at once, servers go on with it."""

import shutil
import time
from datetime import timedelta

import pytest
from click.testing import CliRunner

from tests.book.conftest import NOW, T1, fill_world, gauge, send
from webapp.backups import BOOK_NAME
from webapp.book.cards import card
from webapp.book.fold import fold, replay, unjudged
from webapp.book.house import registry
from webapp.book.opening import open_book
from webapp.keeping import commands, export

from .conftest import F1

WORDS = "entries are still to be judged by the limits and settings as they are now."


@pytest.fixture
def changed(house, monkeypatch):
    """Six readings, a range that changes, and slices of one entry: five are left."""
    monkeypatch.setattr(replay, "SLICE_S", 0.0)
    monkeypatch.setattr(replay, "SLICE_LEAST", 1)
    for n in range(6):
        house.log("ferment_reading", F1, n * 600, temp=("14.0", "degC"), gravity=(f"1.05{9 - n}", "SG"))
    registry.set_limit(house.book, "site", "", "ferment_reading", "temp", [15, 20], None, by="OL")
    return house


def test_the_desk_says_how_far_it_is_until_all_is_judged(changed):
    client = changed.client("OL")
    for path in ("/desk/", "/desk/settings", "/desk/limits", "/desk/periods"):
        assert f"5 of 6 {WORDS}" in client.get(path).text
    unjudged.judge_all(changed.book)
    assert WORDS not in client.get("/desk/").text


def test_cards_have_the_new_range_at_once(changed):
    assert card(changed.book, F1)["limits"]["ferment_reading"]["temp"]["usual"] == [15, 20]
    assert unjudged.count_left(changed.book) == 5


def test_a_server_that_starts_works_it_off_and_verify_and_export_do_first(make_server, tmp_path, monkeypatch):
    folder = tmp_path / "book"
    folder.mkdir()
    with monkeypatch.context() as patch, open_book(folder / BOOK_NAME) as book:
        patch.setattr(replay, "SLICE_S", 0.0)
        patch.setattr(replay, "SLICE_LEAST", 1)
        fill_world(book)
        send(book, *[gauge(T1, "300", seq=n, read_at=NOW - timedelta(days=n)) for n in range(1, 6)])
        registry.set_limit(book, "site", "", "gauge", "volume", None, [0, 100], "JK")
        assert unjudged.count_left(book) >= 4
    shutil.copytree(folder, tmp_path / "copy")
    said = CliRunner().invoke(commands.verify, ["--data", str(tmp_path / "copy")]).output
    assert "entries are still to be judged" in said and "That comes first." in said and "the chain holds" in said
    assert "All is judged by rules 1 of version" in said, "verify names the rules"
    digest = export.export_book(folder / BOOK_NAME, tmp_path / "files")["fold_sha256"]
    server = make_server(folder)
    with open_book(folder / BOOK_NAME) as book:
        until = time.monotonic() + 60
        while unjudged.count_left(book) and time.monotonic() < until:
            time.sleep(0.1)
        assert unjudged.describe_progress(book) == ""
        server.stop()
        assert export.fold_digest(book) == digest
        fold.rebuild(book)
        assert export.fold_digest(book) == digest
