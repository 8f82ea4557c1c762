"""Backups closed to a public key in the age format, and the week's look at the newest one."""

import base64
import hashlib
import hmac
import json
import random
import stat
import zipfile
from datetime import UTC, datetime, timedelta

import pytest
from click.testing import CliRunner
from cryptography.hazmat.primitives import hashes
from cryptography.hazmat.primitives.asymmetric.x25519 import X25519PrivateKey, X25519PublicKey
from cryptography.hazmat.primitives.ciphers.aead import ChaCha20Poly1305
from cryptography.hazmat.primitives.kdf.hkdf import HKDF

from tests.book.conftest import fill_world, reading, send
from webapp.backups import BOOK_NAME, keep_authority, put_authority_back, restore_backup, write_backup
from webapp.book.opening import open_book
from webapp.book.record.errors import BookError
from webapp.cli import main
from webapp.keeping import schedule
from webapp.keeping.health import look_at
from webapp.keeping.rehearsal import rehearse
from webapp.keeping.schedule import Plan, read_plan, rehearse_due, run_due
from webapp.sealed import keep_recipient, make_key, recipient_of
from webapp.serving.certificates import get_authority, get_leaf, leaf_is_due

START = datetime(2026, 3, 1, 6, 0, tzinfo=UTC)
BECH32 = "qpzry9x8gf2tvdw0s3jn54khce6mua7l"


@pytest.fixture
def data_dir(tmp_path):
    folder = tmp_path / "book"
    folder.mkdir()
    with open_book(folder / BOOK_NAME) as book:
        fill_world(book)
        send(book, *[reading(seq=n) for n in range(1, 6)])
    (folder / "session.key").write_bytes(b"k" * 32)
    get_leaf(folder, ["localhost"], now=START)
    return folder


@pytest.fixture
def key(tmp_path, data_dir):
    """Return the file of the private key that opens the backups of this folder."""
    path = tmp_path / "stick.txt"
    keep_recipient(data_dir, make_key(path))
    return path


def opened_by_hand(sealed, identity_line):
    """Open an age file by the text of its specification, with primitives of `cryptography` alone.

    Source: C2SP age specification v1 (age-encryption.org/v1): header, X25519 stanza, HKDF-SHA-256, STREAM of 64 KiB
    chunks; Bech32 by BIP 173 without its length limit.
    """
    values = [BECH32.index(c) for c in identity_line.lower().rsplit("1", 1)[1]][:-6]
    bits = "".join(f"{v:05b}" for v in values)[:256]
    secret = X25519PrivateKey.from_private_bytes(int(bits, 2).to_bytes(32, "big"))

    def b64(text):
        return base64.b64decode(text + b"=" * (-len(text) % 4))

    head, mac_line_and_body = sealed.split(b"\n---", 1)
    mac_line, body = mac_line_and_body.split(b"\n", 1)
    lines = head.split(b"\n")
    assert lines[0] == b"age-encryption.org/v1"
    at = next(n for n, line in enumerate(lines) if line.startswith(b"-> X25519 "))
    share = b64(lines[at].split(b" ")[2])
    shared = secret.exchange(X25519PublicKey.from_public_bytes(share))
    own = secret.public_key().public_bytes_raw()
    wrap = HKDF(hashes.SHA256(), 32, share + own, b"age-encryption.org/v1/X25519").derive(shared)
    file_key = ChaCha20Poly1305(wrap).decrypt(bytes(12), b64(lines[at + 1]), None)
    mac_key = HKDF(hashes.SHA256(), 32, b"", b"header").derive(file_key)
    assert hmac.digest(mac_key, head + b"\n---", "sha256") == b64(mac_line.strip())
    payload_key = HKDF(hashes.SHA256(), 32, body[:16], b"payload").derive(file_key)
    chunks = [body[n : n + 65536 + 16] for n in range(16, len(body), 65536 + 16)]
    return b"".join(
        ChaCha20Poly1305(payload_key).decrypt(n.to_bytes(11, "big") + bytes([n == len(chunks) - 1]), chunk, None)
        for n, chunk in enumerate(chunks)
    )


def test_a_backup_is_in_the_age_format_as_its_specification_says(data_dir, key, tmp_path):
    write_backup(data_dir, tmp_path / "b.zip.age")
    sealed = (tmp_path / "b.zip.age").read_bytes()
    (tmp_path / "by-hand.zip").write_bytes(opened_by_hand(sealed, key.read_text().splitlines()[-1]))
    assert restore_backup(tmp_path / "by-hand.zip", tmp_path / "back") == 5
    assert b"SQLite format 3" not in sealed
    assert b"book.sqlite" not in sealed
    assert stat.S_IMODE((tmp_path / "b.zip.age").stat().st_mode) == 0o600
    assert stat.S_IMODE(key.stat().st_mode) == 0o600


def test_only_its_key_opens_it_and_it_lacks_the_keys_of_sessions_and_of_the_authority(data_dir, key, tmp_path):
    backup = tmp_path / "b.zip.age"
    assert write_backup(data_dir, backup) == 5
    make_key(tmp_path / "other.txt")
    (tmp_path / "empty.txt").write_text("nothing here")
    for wrong, words in (
        (None, "--identity"), (tmp_path / "other.txt", "closed to another key"), (tmp_path / "none.txt", "be read"),
        (tmp_path / "empty.txt", "no private key"),
    ):
        with pytest.raises(BookError, match=words):
            restore_backup(backup, tmp_path / "back", wrong)
        assert not (tmp_path / "back").exists()
    assert restore_backup(backup, tmp_path / "back", key) == 5
    names = {path.relative_to(tmp_path / "back").as_posix() for path in (tmp_path / "back").rglob("*.*")}
    assert names == {"book.sqlite", "backups.recipient", "tls/authority.pem", "tls/server.pem", "tls/server.key"}
    assert recipient_of(tmp_path / "back") == recipient_of(data_dir), "the restored book goes on encrypting"
    assert "5 entries, the chain holds" in "\n".join(rehearse(backup, data_dir, key))


@pytest.mark.parametrize("seed", range(40))
def test_a_file_that_is_cut_off_or_damaged_says_so_and_nothing_is_lost(data_dir, key, tmp_path, seed):
    backup = tmp_path / "b.zip.age"
    write_backup(data_dir, backup)
    body = bytearray(backup.read_bytes())
    dice = random.Random(seed)
    if seed % 2:
        body = body[: dice.randrange(len(body))]
    else:
        body[dice.randrange(len(body))] ^= 1 << dice.randrange(8)
    backup.write_bytes(body)
    with pytest.raises(BookError) as said:
        restore_backup(backup, tmp_path / "back", key)
    assert str(said.value).endswith((".", ")"))
    assert backup.read_bytes() == body
    assert not (tmp_path / "back").exists()
    assert not list(tmp_path.glob(".restore-*"))


def test_a_backup_of_before_that_is_not_encrypted_and_holds_the_keys_is_restored(data_dir, tmp_path):
    write_backup(data_dir, tmp_path / "new.zip")
    with zipfile.ZipFile(tmp_path / "new.zip", "a") as old:
        old.write(data_dir / "session.key", "session.key")
        old.write(data_dir / "tls" / "authority.key", "tls/authority.key")
    assert restore_backup(tmp_path / "new.zip", tmp_path / "back") == 5
    assert (tmp_path / "back" / "tls" / "authority.key").read_bytes() == (data_dir / "tls/authority.key").read_bytes()
    assert not (tmp_path / "back" / "session.key").exists(), "sessions begin anew"


@pytest.mark.parametrize("is_closed", [True, False])
def test_the_authoritys_key_is_kept_apart_and_put_back(data_dir, tmp_path, is_closed):
    key = tmp_path / "stick.txt"
    recipient = make_key(key)
    if is_closed:
        keep_recipient(data_dir, recipient)
    assert keep_authority(data_dir, tmp_path / "authority.key") == is_closed
    assert (b"PRIVATE KEY" in (tmp_path / "authority.key").read_bytes()) != is_closed
    with pytest.raises(BookError, match="left as it is"):
        keep_authority(data_dir, tmp_path / "authority.key")
    write_backup(data_dir, tmp_path / "b")
    restore_backup(tmp_path / "b", tmp_path / "back", key)
    back, later = tmp_path / "back", START + timedelta(days=380)
    assert get_authority(back).certificate == get_authority(data_dir).certificate, "phones trust it as before"
    assert get_authority(back).key is None
    assert not leaf_is_due(back, ["10.1.2.3"], now=later), "nobody could make another"
    with pytest.raises(BookError, match="Put it back"):
        get_leaf(back, ["10.1.2.3"], now=START + timedelta(days=400))
    get_authority(tmp_path / "elsewhere")
    keep_authority(tmp_path / "elsewhere", tmp_path / "foreign.key")
    with pytest.raises(BookError, match="another authority"):
        put_authority_back(back, tmp_path / "foreign.key", key)
    put_authority_back(back, tmp_path / "authority.key", key)
    assert leaf_is_due(back, ["10.1.2.3"], now=later)
    get_leaf(back, ["10.1.2.3"], now=later)
    assert stat.S_IMODE((back / "tls" / "authority.key").stat().st_mode) == 0o600


def test_by_the_clock_they_are_encrypted_and_leave_nothing_plain_on_the_other_disk(data_dir, key, tmp_path):
    plan = Plan(tmp_path / "safe", timedelta(hours=24), keep=2)
    for day in range(3):
        assert run_due(data_dir, plan, START + timedelta(days=day))
        assert not run_due(data_dir, plan, START + timedelta(days=day, hours=1))
    names = sorted(path.name for path in plan.folder.iterdir())
    assert names == ["book-20260302T060000Z.zip.age", "book-20260303T060000Z.zip.age", "heads.jsonl"]
    names.pop()
    assert not list(data_dir.glob(".backup-*"))
    status = schedule.read_status(data_dir)
    assert status["is_encrypted"] is True
    assert status["sha256"] == hashlib.sha256((plan.folder / names[-1]).read_bytes()).hexdigest()
    assert "encrypted" in schedule.describe_backups(data_dir)


@pytest.mark.parametrize(("at_hand", "said"), [(True, "opened and verified"), (False, "size and digest hold")])
def test_once_a_week_the_newest_is_looked_at_where_it_lies(data_dir, key, tmp_path, at_hand, said):
    plan = Plan(tmp_path / "safe", timedelta(hours=720), identity=key if at_hand else None)
    run_due(data_dir, plan, START)
    assert not rehearse_due(data_dir, plan, START + timedelta(days=6))
    assert rehearse_due(data_dir, plan, START + timedelta(days=7))
    assert not rehearse_due(data_dir, plan, START + timedelta(days=8))
    assert schedule.read_status(data_dir)["rehearsed"] == said
    assert f"looked at again 2026-03-08: {said}" in schedule.describe_backups(data_dir)
    assert schedule.describe_trouble(data_dir, START + timedelta(days=8)) == ""
    (path,) = (one for one in plan.folder.iterdir() if one.name != "heads.jsonl")
    body = bytearray(path.read_bytes())
    body[-40] ^= 1
    path.write_bytes(body)
    assert rehearse_due(data_dir, plan, START + timedelta(days=14))
    assert "no longer as it was written" in schedule.describe_trouble(data_dir, START + timedelta(days=14))
    with open_book(data_dir / BOOK_NAME) as book:
        assert look_at(book, data_dir, START + timedelta(days=14)).checks["backup"] == "failed"
    path.unlink()
    assert rehearse_due(data_dir, plan, START + timedelta(days=21))
    assert "does not hold" in schedule.describe_trouble(data_dir, START + timedelta(days=21))


def test_a_folder_is_named_once(data_dir, tmp_path):
    assert schedule.is_asked(data_dir)
    assert read_plan(data_dir) is None
    plan = Plan(tmp_path / "safe", timedelta(hours=12), keep=3)
    schedule.keep_plan(data_dir, plan)
    assert read_plan(data_dir) == plan
    assert not schedule.is_asked(data_dir)
    schedule.keep_plan(data_dir, None)
    assert schedule.is_asked(data_dir)
    schedule.keep_plan(data_dir, None, is_elsewhere=True)
    assert not schedule.is_asked(data_dir)
    for spoilt in ("{", "[]", json.dumps({"folder": "/x", "every_h": "often", "keep": 1})):
        (data_dir / schedule.PLAN_NAME).write_text(spoilt)
        assert read_plan(data_dir) is None


def test_the_commands_from_key_to_restore(data_dir, tmp_path):
    def run(*words):
        return CliRunner().invoke(main, [*map(str, words), "--data", str(data_dir)])

    assert "not encrypted" in run("backup", tmp_path / "plain.zip").output
    assert "must not lie beside the book" in run("backup-key", data_dir / "key.txt").output
    assert "begins with age1" in run("backup-key", "--recipient", "age1nonsense").output
    made = run("backup-key", tmp_path / "stick.txt")
    assert made.exit_code == 0
    assert "AGE-SECRET-KEY" not in made.output
    assert run("backup-key", tmp_path / "stick.txt").exit_code == 2, "a key is never overwritten"
    assert "Encrypted" in run("backup", tmp_path / "b.age").output
    assert "closed to the backup key" in run("authority-key", tmp_path / "authority.age").output
    back = tmp_path / "back"
    got = CliRunner().invoke(main, ["restore", str(tmp_path / "b.age"), "--data", str(back)])
    assert (got.exit_code, "--identity" in got.output) == (2, True)
    opened = ["--identity", str(tmp_path / "stick.txt"), "--data", str(back)]
    got = CliRunner().invoke(main, ["restore", str(tmp_path / "b.age"), *opened])
    assert "kept apart" in got.output
    got = CliRunner().invoke(main, ["authority-key", str(tmp_path / "authority.age"), "--put-back", *opened])
    assert "is back" in got.output, got.output
