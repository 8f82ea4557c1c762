"""Heads that are signed and kept beside the backups, against a book that somebody rewrote with the file in hand.

Sources: RFC 8032, 7.1, whose first vector holds the signature; it was typed from memory.
"""

from __future__ import annotations

import json
import sqlite3
import stat
import zipfile
from concurrent.futures import ThreadPoolExecutor
from contextlib import closing
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from click.testing import CliRunner
from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PrivateKey, Ed25519PublicKey

from tests.book.conftest import fill_world, reading, send
from webapp import signed_heads
from webapp.backups import BOOK_NAME, restore_backup
from webapp.book.opening import open_book
from webapp.book.record import heads
from webapp.cli import main
from webapp.keeping.schedule import Plan, keep_plan, run_due

START = datetime(2026, 3, 1, 6, 0, tzinfo=UTC)


@pytest.fixture
def data_dir(tmp_path: Path) -> Path:
    folder = tmp_path / "book"
    folder.mkdir()
    with open_book(folder / BOOK_NAME) as book:
        fill_world(book)
        send(book, *[reading(seq=n) for n in range(1, 6)])
    return folder


@pytest.fixture
def plan(data_dir: Path, tmp_path: Path) -> Plan:
    plan = Plan(tmp_path / "safe", timedelta(hours=24))
    keep_plan(data_dir, plan)
    assert run_due(data_dir, plan, START)
    return plan


def verify(data_dir: Path, *more: str) -> tuple[int, str]:
    done = CliRunner().invoke(main, ["verify", "--data", str(data_dir), *more])
    return done.exit_code, done.output


def rewrite(data_dir: Path) -> None:
    """Change when an entry was received, a column that the chain of digests does not hold."""
    with closing(sqlite3.connect(data_dir / BOOK_NAME)) as conn:
        for (name,) in conn.execute("SELECT name FROM sqlite_master WHERE type = 'trigger'").fetchall():
            conn.execute(f"DROP TRIGGER {name}")
        assert conn.execute("UPDATE entries SET received_at = '2026-01-01T00:00:00Z' WHERE book_no = 3").rowcount
        conn.commit()


def test_the_key_is_the_owners_alone_and_in_no_backup_and_what_it_signed_is(data_dir: Path, plan: Plan) -> None:
    key_path = data_dir / signed_heads.KEY_NAME
    assert stat.S_IMODE(key_path.stat().st_mode) == 0o600
    (path,) = plan.folder.glob("book-*.zip")
    with zipfile.ZipFile(path) as archive:
        assert signed_heads.KEY_NAME not in archive.namelist()
        inside = archive.read(signed_heads.SIDE_NAME).decode()
    secret = key_path.read_text("ascii").strip()
    assert secret not in inside and bytes.fromhex(secret) not in path.read_bytes()
    assert inside.split() == (plan.folder / signed_heads.SIDE_NAME).read_text("ascii").split()
    public = Ed25519PrivateKey.from_private_bytes(bytes.fromhex(secret)).public_key().public_bytes_raw().hex()
    for line in inside.splitlines():
        told = json.loads(line)
        assert told["key"] == public
        # By the library alone, over the statement as the page on backups describes it.
        signature = bytes.fromhex(told.pop("signature"))
        statement = json.dumps(told, sort_keys=True, separators=(",", ":")).encode()
        Ed25519PublicKey.from_public_bytes(bytes.fromhex(public)).verify(signature, statement)
    lists = {json.loads(line)["tree"] for line in inside.splitlines()}
    assert lists == {"entries", "aside", "changes", "closes", "takings"}


def test_a_book_that_grew_is_proved_by_the_heads_beside_its_backups(data_dir: Path, plan: Plan) -> None:
    with open_book(data_dir / BOOK_NAME) as book:
        send(book, reading(seq=6))
    assert run_due(data_dir, plan, START + timedelta(days=2))
    code, said = verify(data_dir)
    assert code == 0, said
    assert "as 10 heads by the backups say, of 2026-03-01T06:00:00Z to 2026-03-03T06:00:00Z," in said
    assert signed_heads.shorten(signed_heads.find_key(data_dir)) in said


def test_a_rewriting_is_found_without_any_note_and_by_a_copied_side_file(data_dir: Path, plan: Plan) -> None:
    side = plan.folder / signed_heads.SIDE_NAME
    rewrite(data_dir)
    for more in ((), ("--heads", str(side))):
        code, said = verify(data_dir, *more)
        assert code != 0 and "The first 5 of entries are not those that were noted." in said


def test_a_head_that_was_changed_bears_no_signature_of_its_key(data_dir: Path, plan: Plan) -> None:
    side = plan.folder / signed_heads.SIDE_NAME
    whole = side.read_text("ascii")
    for old, new in (('"size":5', '"size":4'), ('"time":"20', '"time":"19'), ('"book":"b-', '"book":"c-')):
        assert old in whole
        side.write_text(whole.replace(old, new), "ascii")
        code, said = verify(data_dir)
        assert code != 0 and "bears a signature that is not that of its key" in said, old
    # One half line, as a power cut leaves it, hides none of the others.
    side.write_text(whole[:-40], "ascii")
    with open_book(data_dir / BOOK_NAME) as book:
        signed_heads.add_to(plan.folder, signed_heads.sign_heads(data_dir, book, START))
    assert len(signed_heads.read_signed(side.read_text("ascii"))) == 9


def test_a_restored_book_has_another_key_and_says_what_it_did_not_compare(
    data_dir: Path, plan: Plan, tmp_path: Path
) -> None:
    (path,) = plan.folder.glob("book-*.zip")
    back = tmp_path / "back"
    restore_backup(path, back)
    keep_plan(back, plan)
    code, said = verify(back)
    assert code == 0 and "5 heads by the backups are signed with another key" in said
    code, said = verify(back, "--heads", str(plan.folder / signed_heads.SIDE_NAME))
    assert code == 0 and "as 5 heads in" in said
    with open_book(back / BOOK_NAME) as book:
        signed_heads.sign_heads(back, book, START)
    assert signed_heads.find_key(back) not in ("", signed_heads.find_key(data_dir))


def test_many_who_make_the_first_key_at_once_sign_with_one(tmp_path: Path) -> None:
    with ThreadPoolExecutor(8) as pool:
        made = list(pool.map(lambda _: signed_heads._read_key(tmp_path) or signed_heads._make_key(tmp_path), range(16)))
    assert len(set(made)) == 1 and len(made[0]) == 32
    assert [path.name for path in tmp_path.iterdir()] == [signed_heads.KEY_NAME]


def test_signatures_are_those_of_the_standard() -> None:
    # RFC 8032, 7.1, TEST 1: secret key, public key, signature of the empty message.
    key = Ed25519PrivateKey.from_private_bytes(
        bytes.fromhex("9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60")
    )
    assert key.public_key().public_bytes_raw().hex() == (
        "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a"
    )
    assert key.sign(b"").hex() == (
        "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd"
        "25bf5f0595bbe24655141438e7a100b"
    )


def test_a_backup_by_hand_says_its_heads_in_four_groups(data_dir: Path, tmp_path: Path) -> None:
    done = CliRunner().invoke(main, ["backup", "--data", str(data_dir), str(tmp_path / "b.zip")])
    assert done.exit_code == 0, done.output
    with open_book(data_dir / BOOK_NAME) as book:
        root = heads.take_heads(book)[0].root
    assert f"  5 entries: {root[:4]} {root[4:8]} {root[8:12]} {root[12:16]}\n" in done.output
