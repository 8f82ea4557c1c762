"""Phones as witnesses: what a phone was shown of the book comes back with its next hand-in, and must be in the book.

The scenes are the house's own, by what somebody with the file in hand could want; signatures are looked at by RFC 8032.
"""

from __future__ import annotations

import json
import sqlite3
from contextlib import closing
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

import pytest
from click.testing import CliRunner
from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PrivateKey

from tests.access.conftest import app, csrf_of, phone, sign_in  # noqa: F401 -- fixtures
from tests.book.conftest import F1, reading
from webapp import signed_heads
from webapp.backups import BOOK_NAME, restore_backup, write_backup
from webapp.book.house import journal
from webapp.cli import main
from webapp.keeping import witnesses
from webapp.keeping.health import look_at

NOW = datetime(2026, 3, 1, 6, 0, tzinfo=UTC)


def rewrite(path: Path, *statements: str) -> None:
    """Change the file as any program may that opens it, the book's own fences taken down."""
    with closing(sqlite3.connect(path)) as conn:
        for (name,) in conn.execute("SELECT name FROM sqlite_master WHERE type = 'trigger'").fetchall():
            conn.execute(f"DROP TRIGGER {name}")
        for statement in statements:
            assert conn.execute(statement).rowcount, statement
        conn.commit()


@pytest.fixture
def house(app: Any, phone: Any, tmp_path: Path) -> Any:  # noqa: F811
    """A served book, whose one phone hands in by `send(seqs, heads=None)` and gets the answer."""

    class House:
        book, folder, client, device = app.extensions["book"], tmp_path, *phone
        witnesses: witnesses.Witnesses = app.extensions["witnesses"]

        def send(self, *seqs: int, heads: object = None) -> dict[str, Any]:
            entries = [reading(F1, seq=seq, device=self.device["id"]) for seq in seqs]
            body = {"now": "2026-03-01T06:00:00Z", "device": self.device["id"], "entries": entries}
            answer = self.client.post("/api/hand-in", json={**body, "heads": heads} if heads is not None else body)
            assert answer.status_code == 200, answer.text
            told: dict[str, Any] = answer.json
            return told

    made = House()
    assert "heads" not in made.send(1)  # until the book was read once, none are given
    made.witnesses.look(NOW)
    return made


def test_a_phone_is_given_signed_heads_and_the_book_notes_that_it_came_back_with_them(house: Any) -> None:
    heads = house.send(2, 3)["heads"]
    signed = signed_heads.read_signed("\n".join(heads))
    assert len(signed) == len(heads) == 5 and all(one.is_signed() for one in signed)
    assert {one.head.name: one.head.size for one in signed}["entries"] == 3
    again = house.send(4, heads=heads)["heads"]
    assert house.witnesses.look(NOW) == [] and again != heads
    (kept,) = witnesses.kept_heads(house.folder).values()
    assert sorted(one.line() for one in kept) == sorted(heads)
    said = CliRunner().invoke(main, ["verify", "--data", str(house.folder)])
    assert said.exit_code == 0 and "The book still begins as 5 heads of The phone PH-1 say" in said.output, said.output


@pytest.mark.parametrize("statements", [
    ("UPDATE entries SET received_at = '2026-01-01T00:00:00Z' WHERE book_no = 2",),
    ("DELETE FROM entries WHERE book_no > 2",),
    ("UPDATE changes SET person = 'XX' WHERE no = 1",),
])
def test_what_a_phone_knows_and_the_book_no_longer_has_is_kept_and_told(
    house: Any, sign_in: Any, statements: tuple[str, ...]  # noqa: F811
) -> None:
    heads = house.send(2, 3)["heads"]
    house.send(heads=heads)
    house.witnesses.look(NOW)
    rewrite(house.book.path, *statements)
    fresh = witnesses.Witnesses(house.book, house.folder)  # as after a new start of the server
    fresh.take(house.device["id"], heads, NOW)
    (lost,) = fresh.look(NOW)
    assert lost["who"] == house.device["id"] and lost["line"] in heads
    fresh.take(house.device["id"], heads, NOW)
    assert fresh.look(NOW) == [] and witnesses.read_lost(house.folder) == [lost]  # told once
    assert look_at(house.book, house.folder, NOW).checks["witnesses"] == "failed"
    assert look_at(house.book, house.folder, NOW).status == "look"
    assert journal.lines(house.folder, sort="lost_head")[0]["origin"] == house.device["id"]
    office = sign_in("OL")
    page = office.get("/desk/proof").text
    assert "not explained" in page and lost["words"] in page
    assert "The phone PH-1 was shown a book" in office.get("/desk/").text
    assert "was shown a book" not in sign_in("IM").get("/desk/").text
    done = office.post("/desk/proof", data={"reason": "restored from Monday", "csrf_token": csrf_of(page)})
    assert done.status_code == 302
    page = office.get("/desk/proof").text
    assert "not explained" not in page and lost["words"] in page and "was shown a book" not in page
    assert witnesses.unsettled(house.book, house.folder) == []


def test_what_anybody_may_make_up_is_no_head(house: Any) -> None:
    heads = house.send(2)["heads"]
    (one, *_) = signed_heads.read_signed(heads[0])
    stranger = Ed25519PrivateKey.generate()
    forged = one._replace(head=one.head._replace(size=99), key=stranger.public_key().public_bytes_raw().hex())
    forged = forged._replace(signature=stranger.sign(forged.statement()).hex())
    changed = heads[0].replace('"size":', '"size":9')
    for made_up in ([forged.line(), changed, "x", 7, None, "[" * 500, "{}"], "x", {}, 5):
        assert house.send(heads=made_up)["ok"]
    assert house.witnesses.look(NOW) == [] and not witnesses.read_lost(house.folder)


def test_a_restored_book_knows_the_heads_of_its_past_by_the_key_on_record(house: Any, tmp_path_factory: Any) -> None:
    heads_then = house.send(2)["heads"]
    backup, back = tmp_path_factory.mktemp("safe") / "b.zip", tmp_path_factory.mktemp("back") / "data"
    write_backup(house.folder, backup)
    heads_since = house.send(3)["heads"]
    restore_backup(backup, back)
    from webapp.book.opening import open_book

    with open_book(back / BOOK_NAME) as book:
        fresh = witnesses.Witnesses(book, back)
        fresh.take("d-one", heads_then, NOW)
        assert fresh.look(NOW) == []
        fresh.take("d-one", heads_since, NOW)
        lost = fresh.look(NOW)
        assert [one["words"] for one in lost] == ["Of entries, 3 were noted, and the book has only 2."]
        witnesses.settle(book, "OL", "restored", datetime.now(UTC) + timedelta(seconds=2))
        assert witnesses.unsettled(book, back) == []


def test_what_is_kept_survives_half_a_line_and_a_file_that_is_none(house: Any) -> None:
    (house.folder / witnesses.KNOWN_NAME).write_text('{"d": {"at": 1}}')
    assert witnesses.read_known(house.folder) == {}
    whole = {"at": "a", "who": "d", "words": "w", "line": "l"}
    (house.folder / witnesses.LOST_NAME).write_text(json.dumps(whole) + '\n{"at": "a", "w')
    assert witnesses.read_lost(house.folder) == [whole]
