"""Backups that the server makes by itself, and the rehearsal of a restore."""

import os
import shutil
import threading
import time
from datetime import UTC, datetime, timedelta

import pytest

from tests.book.conftest import NOW, fill_world, reading, send
from tests.server_process import ServerProcess
from webapp import create_app
from webapp.backups import BOOK_NAME, restore_backup, write_backup
from webapp.book.house import people, registry
from webapp.book.opening import open_book
from webapp.book.record import log
from webapp.book.record.errors import BookError
from webapp.keeping import schedule
from webapp.keeping.rehearsal import rehearse
from webapp.keeping.schedule import Plan, run_due

START = datetime(2026, 3, 1, 6, 0, tzinfo=UTC)


@pytest.fixture
def data_dir(tmp_path):
    folder = tmp_path / "book"
    folder.mkdir()
    with open_book(folder / BOOK_NAME) as book:
        fill_world(book)
        send(book, *[reading(seq=n) for n in range(1, 6)])
    return folder


def test_backups_come_by_the_clock_and_the_oldest_go(data_dir, tmp_path):
    plan = Plan(tmp_path / "safe", timedelta(hours=24), keep=3)
    made = [run_due(data_dir, plan, START + timedelta(hours=h)) for h in range(0, 24 * 5, 6)]
    assert made == [True, False, False, False] * 5
    names = sorted(path.name for path in plan.folder.iterdir())
    assert names.pop() == "heads.jsonl"
    assert names == [f"book-2026030{day}T060000Z.zip" for day in (3, 4, 5)]
    assert restore_backup(plan.folder / names[-1], tmp_path / "back") == 5
    status = schedule.read_status(data_dir)
    assert (status["entries"], status["file"], status["made_at"]) == (5, names[-1], "2026-03-05T06:00:00Z")
    assert schedule.describe_trouble(data_dir, START + timedelta(days=5)) == ""
    assert "No backup was made for 10 days" in schedule.describe_trouble(data_dir, START + timedelta(days=14))
    assert "5 entries, verified" in schedule.describe_backups(data_dir)


def test_a_clock_that_was_set_back_keeps_no_backup_away(data_dir, tmp_path):
    plan = Plan(tmp_path / "safe")
    assert run_due(data_dir, plan, START)
    assert run_due(data_dir, plan, START - timedelta(days=400))


def test_only_backups_of_its_own_are_let_go(data_dir, tmp_path):
    plan = Plan(tmp_path / "safe", timedelta(hours=1), keep=1)
    plan.folder.mkdir()
    others = ["book-2026-03-01.zip", "book-before-the-move.zip", "photos.zip"]
    for name in others:
        (plan.folder / name).write_bytes(b"mine")
    for hour in range(3):
        assert run_due(data_dir, plan, START + timedelta(hours=hour))
    left = {path.name for path in plan.folder.iterdir()}
    assert left == {*others, "book-20260301T080000Z.zip", "heads.jsonl"}


def test_what_a_killed_server_left_half_made_is_swept_away(data_dir, tmp_path):
    plan = Plan(tmp_path / "safe")
    for name, age_s in ((".backup-old", 2 * 86_400), (".backup-new", 60)):
        (plan.folder / name).mkdir(parents=True)
        os.utime(plan.folder / name, (time.time() - age_s,) * 2)
    run_due(data_dir, plan, datetime.now(UTC))
    assert [path.name for path in plan.folder.glob(".backup-*")] == [".backup-new"]


def test_a_failure_is_kept_said_and_tried_again(data_dir, tmp_path):
    blocked = tmp_path / "safe"
    blocked.write_text("a file where the folder should be")
    plan = Plan(blocked)
    assert run_due(data_dir, plan, START)
    assert not run_due(data_dir, plan, START + timedelta(minutes=5)), "not every minute"
    assert "The backup failed" in schedule.describe_trouble(data_dir, START)
    assert "There is none yet" in schedule.describe_trouble(data_dir, START)
    blocked.unlink()
    assert run_due(data_dir, plan, START + timedelta(minutes=20))
    assert schedule.describe_trouble(data_dir, START + timedelta(minutes=21)) == ""


def test_a_disk_that_cannot_be_read_is_a_failure_like_any_other(data_dir, tmp_path, monkeypatch):
    def broken(_folder):
        raise OSError(5, "Input/output error")

    with monkeypatch.context() as patch:
        patch.setattr(schedule, "_backups", broken)
        assert run_due(data_dir, Plan(tmp_path / "safe"), START)
    assert "Input/output error" in schedule.describe_trouble(data_dir, START)
    assert run_due(data_dir, Plan(tmp_path / "safe"), START + timedelta(minutes=20))


def test_a_turn_that_fails_is_not_the_last(data_dir, tmp_path, monkeypatch):
    turns, ended = [], threading.Event()

    def turn(*_about):
        turns.append(1)
        if len(turns) == 1:
            raise ValueError("nobody foresaw this")
        ended.set()

    monkeypatch.setattr(schedule, "run_due", turn)
    monkeypatch.setattr(schedule, "_LOOK_EVERY_S", 0.01)
    schedule.start_backups(data_dir, Plan(tmp_path / "safe"), ended).join(30)
    assert len(turns) == 2


def test_hourly_backups_that_stopped_are_counted_in_hours(data_dir, tmp_path):
    run_due(data_dir, Plan(tmp_path / "safe", timedelta(hours=1)), START)
    assert "No backup was made for 5 hours" in schedule.describe_trouble(data_dir, START + timedelta(hours=5))


def test_a_book_whose_chain_is_broken_makes_no_backup_and_says_so(data_dir, tmp_path):
    import sqlite3
    from contextlib import closing

    plan = Plan(tmp_path / "safe", keep=1)
    assert run_due(data_dir, plan, START)
    with closing(sqlite3.connect(data_dir / BOOK_NAME)) as conn:
        conn.execute("DROP TRIGGER entries_stay")
        conn.execute("UPDATE entries SET digest = 'x' WHERE book_no = 3")
        conn.commit()
    assert run_due(data_dir, plan, START + timedelta(days=2))
    assert "broken at book number 3" in schedule.describe_trouble(data_dir, START + timedelta(days=2))
    left = sorted(path.name for path in plan.folder.iterdir())
    assert left == ["book-20260301T060000Z.zip", "heads.jsonl"], "the last good one stays"


@pytest.mark.parametrize(("code", "is_shown"), [("OL", True), ("IM", False)])
def test_the_office_sees_a_failure_on_every_page_of_the_desk(data_dir, tmp_path, code, is_shown):
    app = create_app(data_dir, testing=True)
    book = app.extensions["book"]
    access = {"OL": "office", "IM": "distiller"}[code]
    people.put_person(book, {"code": code, "name": code, "access": access}, by="OL")
    people.set_password(book, code, "a long enough secret")
    (tmp_path / "safe").write_text("in the way")
    run_due(data_dir, Plan(tmp_path / "safe"), datetime.now(UTC))
    client = app.test_client()
    token = client.get("/sign-in").text.split('name="csrf_token"')[1].split('value="')[1].split('"')[0]
    client.post("/sign-in", data={"code": code, "password": "a long enough secret", "csrf_token": token})
    for path in ("/desk/", "/desk/settings"):
        assert ("The backup failed" in client.get(path).text) == is_shown
    assert ("Every 24 hours to" in client.get("/desk/settings").text) == is_shown
    book.close()


def test_serve_makes_them(data_dir, tmp_path):
    server = ServerProcess(data_dir, arguments=("--backup-to", str(tmp_path / "safe"))).start()
    try:
        deadline = time.monotonic() + 60
        while not list((tmp_path / "safe").glob("book-*.zip")) or not schedule.read_status(data_dir):
            assert time.monotonic() < deadline, server.log
            time.sleep(0.1)
        assert schedule.read_status(data_dir)["entries"] == 5
    finally:
        server.close()


def test_a_rehearsal_says_what_would_be_lost_and_changes_nothing(data_dir, tmp_path):
    backup = tmp_path / "copy.zip"
    write_backup(data_dir, backup)
    assert "It holds every entry of the book here." in rehearse(backup, data_dir)
    with open_book(data_dir / BOOK_NAME) as book:
        send(book, *[reading(seq=n) for n in range(6, 9)], now=NOW + timedelta(hours=1))
        send(book, *[reading(seq=n, device="d-two") for n in range(1, 3)], device="d-two", now=NOW + timedelta(hours=2))
        registry.set_site(book, {"name": "Tarrowdene"}, "JK")
        before = log.load_head(book)
    said = "\n".join(rehearse(backup, data_dir))
    assert "can be restored: 5 entries, the chain holds, the accounts add up." in said
    assert "lacks 5 entries, received since 2025-09-24T13:00:00Z: 3 of d-one, 2 of d-two." in said
    assert "lacks 1 changes at the desk: 1 of site" in said
    with open_book(data_dir / BOOK_NAME) as book:
        assert log.load_head(book) == before
    assert "no book in" in "\n".join(rehearse(backup, tmp_path / "elsewhere"))


def test_a_rehearsal_knows_another_book_and_another_past(data_dir, tmp_path):
    other = tmp_path / "other"
    other.mkdir()
    with open_book(other / BOOK_NAME) as book:
        fill_world(book)
    write_backup(other, tmp_path / "other.zip")
    assert "It is of another book than the one here." in "\n".join(rehearse(tmp_path / "other.zip", data_dir))
    write_backup(data_dir, tmp_path / "old.zip")
    shutil.copytree(data_dir, tmp_path / "twin")
    for folder, device in ((data_dir, "d-a"), (tmp_path / "twin", "d-b")):
        with open_book(folder / BOOK_NAME) as book:
            send(book, reading(device=device, seq=1), device=device)
    write_backup(tmp_path / "twin", tmp_path / "twin.zip")
    said = "\n".join(rehearse(tmp_path / "twin.zip", data_dir))
    assert "restored from a backup before" in said
    assert "lacks 1 entries" in said
    assert "1 of d-a" in said


def test_a_rehearsal_of_a_damaged_backup_says_so(data_dir, tmp_path):
    backup = tmp_path / "copy.zip"
    write_backup(data_dir, backup)
    body = bytearray(backup.read_bytes())
    body[len(body) // 2] ^= 0xFF
    backup.write_bytes(body)
    with pytest.raises(BookError):
        rehearse(backup, data_dir)
