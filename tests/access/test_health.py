"""`/health` for a monitor: it says whether entries can be kept, quickly, and nothing of the book to strangers."""

import json
import shutil
import sqlite3
import threading
from collections import namedtuple
from datetime import UTC, datetime, timedelta

import pytest

from webapp.book.record.clock import utc_text
from webapp.keeping import health
from webapp.keeping.schedule import STATUS_NAME
from webapp.version import VERSION

NOW = datetime(2026, 3, 1, 12, tzinfo=UTC)
Usage = namedtuple("Usage", "total used free")


@pytest.fixture
def book(app):
    return app.extensions["book"]


def look(app):
    return health.look_at(app.extensions["book"], app.config["DATA_DIR"], NOW)


def note_backup(app, **status):
    path = app.config["DATA_DIR"] / STATUS_NAME
    path.write_text(json.dumps({"folder": "/media/backup", "every_h": 24, "keep": 14, **status}), "utf-8")


def test_a_sound_book_answers_200(app):
    answer = app.test_client().get("/health")
    assert answer.status_code == 200
    assert answer.json == {
        "status": "ok", "version": VERSION,
        "checks": {"book": "ok", "scrub": "none", "disk": "ok", "backup": "none", "judging": "ok", "search": "ok",
                   "witnesses": "ok"},
    }
    assert answer.headers["Cache-Control"] == "no-store"


def test_figures_are_for_whoever_is_signed_in(app, sign_in, phone):
    note_backup(app, made_at=utc_text(datetime.now(UTC) - timedelta(hours=3)), entries=12, file="book.zip")
    client, _ = phone
    for stranger in (app.test_client(), client):
        assert "figures" not in stranger.get("/health").json
        assert "/media" not in stranger.get("/health").text
    figures = sign_in("WK").get("/health").json["figures"]
    assert figures["backup_age_h"] == pytest.approx(3, abs=0.2)
    assert figures["entries_to_judge"] == 0
    assert figures["disk_free_mb"] == pytest.approx(shutil.disk_usage(app.config["DATA_DIR"]).free / 1e6, rel=0.2)


@pytest.mark.parametrize(
    ("status", "word", "overall"),
    [({"made_at": "2026-03-01T03:00:00Z"}, "ok", "ok"), ({"made_at": "2026-02-26T03:00:00Z"}, "late", "look"),
     ({"made_at": "2026-03-01T03:00:00Z", "failed_at": "2026-03-01T11:00:00Z"}, "failed", "look"), ({}, "ok", "ok")],
)
def test_the_state_of_the_backups(app, status, word, overall):
    note_backup(app, **status)
    found = look(app)
    assert (found.checks["backup"], found.status) == (word, overall)


def test_a_book_that_cannot_be_written_answers_503(app, book, monkeypatch):
    monkeypatch.setattr(health, "DOOR_WAIT_S", 0.1)
    other = sqlite3.connect(book.path)
    book._writer.conn.execute("PRAGMA busy_timeout = 50")
    other.execute("BEGIN IMMEDIATE")
    answer = app.test_client().get("/health")
    assert (answer.status_code, answer.json["status"], answer.json["checks"]["book"]) == (503, "down", "down")
    other.rollback()
    other.close()
    assert look(app).status == "ok"


def test_a_write_that_never_ends_does_not_hold_the_answer_up(app, book, monkeypatch):
    monkeypatch.setattr(health, "DOOR_WAIT_S", 0.1)
    inside, done = threading.Event(), threading.Event()

    def hold():
        with book.write():
            inside.set()
            done.wait(30)

    thread = threading.Thread(target=hold)
    thread.start()
    inside.wait(30)
    assert look(app).checks["book"] == "down"
    done.set()
    thread.join()
    assert look(app).checks["book"] == "ok"


def test_a_closed_book_is_down_and_raises_nothing(app, book):
    book.close()
    found = look(app)
    assert (found.status, found.checks["book"], found.checks["judging"]) == ("down", "down", "unknown")


def test_a_disk_that_is_nearly_full_wants_a_look_and_one_that_takes_nothing_is_down(app, monkeypatch):
    monkeypatch.setattr(health.shutil, "disk_usage", lambda path: Usage(10**12, 10**12, 10**8))
    found = look(app)
    assert (found.status, found.checks["disk"], found.figures["disk_free_mb"]) == ("look", "look", 100)
    monkeypatch.setattr(type(app.config["DATA_DIR"]), "write_bytes", lambda self, data: full())
    found = look(app)
    assert (found.status, found.checks["disk"]) == ("down", "down")
    assert not [*app.config["DATA_DIR"].glob(".health*")]


def full():
    raise OSError(28, "No space left on device")


def test_what_is_still_to_be_judged_is_said_and_is_no_trouble(app, book):
    with book.write() as database:
        database.conn.execute("INSERT INTO unjudged VALUES ('2026')")
    found = look(app)
    assert (found.status, found.checks["judging"], found.figures["entries_to_judge"]) == ("ok", "behind", 1)


def test_many_who_ask_together_make_one_look(app, book, monkeypatch):
    looks = []
    monkeypatch.setattr(health, "look_at", lambda *given: looks.append(given) or health.Health("ok", {}))
    now = [100.0]
    watch = health.Watch(book, app.config["DATA_DIR"], lambda: now[0])
    threads = [threading.Thread(target=watch.look) for _ in range(20)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert len(looks) == 1
    now[0] += health.KEPT_S + 1
    watch.look()
    assert len(looks) == 2
