"""Files beside the book: whole or not at all, and on the disk before anything is said of them; by the system calls.

POSIX: what fsync(2) says of files and folders; rename(2) is atomic and says nothing of the disk.
"""

from __future__ import annotations

import ast
import os
import stat
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from cryptography import x509

import webapp
from webapp import backups, durable, sealed, signed_heads
from webapp.access.secret import KEY_BYTES, load_secret
from webapp.book.opening import open_book
from webapp.keeping import schedule, scrub
from webapp.serving import certificates

PROGRAM = Path(webapp.__file__).parent
# Modules that write a file in another way, and why nothing is lost by it.
WRITE_OTHERWISE = {
    "cli.py": "pages of the documentation, in a checkout",
    "shipping/build.py": "the pack, in a checkout",
    "keeping/export.py": "a folder that is synced whole before it is said",
    "keeping/health.py": "a probe that is deleted at once",
    "keeping/folder_lock.py": "a note that is written anew every few seconds",
}


def test_every_module_that_writes_files_does_it_durably_or_says_why_not() -> None:
    found = set()
    for path in PROGRAM.rglob("*.py"):
        for node in ast.walk(ast.parse(path.read_text("utf-8"))):
            if isinstance(node, ast.Attribute) and node.attr in ("write_text", "write_bytes", "fsync"):
                found.add(path.relative_to(PROGRAM).as_posix())
    assert found - {"durable.py"} == set(WRITE_OTHERWISE)


@pytest.fixture
def calls(monkeypatch: pytest.MonkeyPatch) -> Iterator[list[tuple[str, str]]]:
    """What is done to files, in order: ("sync", name), ("put", name) for a rename or link to that name."""
    if sys.platform != "linux":
        pytest.skip("which file a handle is of is read from /proc")
    made: list[tuple[str, str]] = []
    fsync, replace, link = os.fsync, os.replace, os.link

    def sync(handle: int) -> None:
        made.append(("sync", str(Path(f"/proc/self/fd/{handle}").readlink())))
        fsync(handle)

    def put(do: Any) -> Any:
        def done(source: Any, target: Any, **more: Any) -> None:
            do(source, target, **more)
            made.append(("put", f"{source}\n{target}"))

        return done

    monkeypatch.setattr(os, "fsync", sync)
    monkeypatch.setattr(os, "replace", put(replace))
    monkeypatch.setattr(os, "link", put(link))
    yield made
    monkeypatch.undo()


def is_durable(calls: list[tuple[str, str]], path: Path) -> bool:
    """Return True if the file was synced under another name, then put in place, and then its folder was synced."""
    puts = [at for at, (what, name) in enumerate(calls) if what == "put" and name.endswith(f"\n{path}")]
    if not puts:
        return False
    source = calls[puts[-1]][1].partition("\n")[0]
    return ("sync", source) in calls[: puts[-1]] and ("sync", str(path.parent)) in calls[puts[-1] :]


def test_what_stands_beside_the_book_is_synced_put_in_place_and_its_folder_synced(
    tmp_path: Path, calls: list[tuple[str, str]]
) -> None:
    folder, disk = tmp_path / "book", tmp_path / "disk"
    disk.mkdir()
    with open_book(folder / backups.BOOK_NAME) as book:
        load_secret(folder)
        certificates.get_leaf(folder, ["10.0.0.5"])
        sealed.keep_recipient(folder, sealed.make_key(tmp_path / "stick.txt"))
        schedule.keep_plan(folder, schedule.Plan(disk))
        assert schedule.run_due(folder, schedule.Plan(disk), schedule.datetime.now(schedule.UTC))
        scrub.run_due(book, folder, schedule.datetime.now(schedule.UTC))
    (backup,) = disk.glob("book-*")
    names = ["session.key", "tls/server.key", "tls/server.pem", "tls/authority.key", "tls/authority.pem",
             sealed.RECIPIENT_NAME, schedule.PLAN_NAME, schedule.STATUS_NAME, scrub.STATUS_NAME, signed_heads.KEY_NAME]
    for path in [*(folder / name for name in names), backup]:
        assert is_durable(calls, path), path
    for path in (tmp_path / "stick.txt", disk / signed_heads.SIDE_NAME):
        at = calls.index(("sync", str(path)))
        assert ("sync", str(path.parent)) in calls[at:], path
    assert ("sync", str(folder)) in calls and ("sync", str(tmp_path)) in calls, "the folder itself"


def test_what_is_restored_is_on_the_disk_before_phones_hand_in_to_it(
    tmp_path: Path, calls: list[tuple[str, str]]
) -> None:
    open_book(tmp_path / "book" / backups.BOOK_NAME).close()
    backups.write_backup(tmp_path / "book", tmp_path / "copy.zip")
    calls.clear()
    backups.restore_backup(tmp_path / "copy.zip", tmp_path / "again")
    synced = [name for what, name in calls if what == "sync"]
    for path in (tmp_path / "again" / backups.BOOK_NAME, tmp_path / "again", tmp_path):
        assert str(path) in synced


def test_a_write_that_fails_leaves_what_stood_there_and_nothing_beside(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = tmp_path / "kept"
    durable.write_whole(path, b"before")

    def full(_file: object) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(durable, "sync_file", full)
    for write in (durable.write_whole, durable.write_once):
        with pytest.raises(OSError, match="No space"):
            write(path, b"after")
    assert [one.name for one in tmp_path.iterdir()] == ["kept"]
    assert path.read_bytes() == b"before"


def test_of_two_that_make_a_key_the_first_stands_and_its_rights_are_its_owners(tmp_path: Path) -> None:
    path = tmp_path / "key"
    assert durable.write_once(path, b"first")
    assert not durable.write_once(path, b"second")
    assert path.read_bytes() == b"first"
    assert [one.name for one in tmp_path.iterdir()] == ["key"]
    if os.name == "posix":
        assert stat.S_IMODE(path.stat().st_mode) == 0o600


def test_a_key_of_sessions_that_a_power_cut_emptied_is_made_anew(tmp_path: Path) -> None:
    (tmp_path / "session.key").write_bytes(b"")
    assert len(load_secret(tmp_path)) == KEY_BYTES
    assert load_secret(tmp_path) == load_secret(tmp_path)


def test_a_certificate_and_a_key_that_a_power_cut_parted_are_made_anew(tmp_path: Path) -> None:
    files = certificates.get_leaf(tmp_path, ["10.0.0.5"])
    old = files.certificate_path.read_bytes()
    certificates.get_leaf(tmp_path, ["10.0.0.5", "10.0.0.6"])
    files.certificate_path.write_bytes(old)  # the key is the new one's
    files = certificates.get_leaf(tmp_path, ["10.0.0.5"])
    leaf = x509.load_pem_x509_certificates(files.certificate_path.read_bytes())[0]
    assert certificates._load_key(files.key_path).public_key() == leaf.public_key()
