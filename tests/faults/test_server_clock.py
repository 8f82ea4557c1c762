"""The server's own clock jumps a year back or forward, in the middle of a session: all is taken in, and it is said.

The clock is set for the whole program at once, in each module that asks for the time.
"""

from __future__ import annotations

import sys
import time
from collections.abc import Callable, Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

import pytest

from tests.book.conftest import fill_world
from tests.faults.plain_phone import PlainPhone
from webapp import create_app
from webapp.book import verification
from webapp.book.fold import fold
from webapp.book.house import devices, journal, people
from webapp.keeping import schedule, scrub
from webapp.keeping.health import look_at
from webapp.serving import certificates

PASSWORD = "plum and pear and quince"
YEAR = timedelta(days=365)
JUMPS = [timedelta(0), -YEAR, YEAR, timedelta(0), 2 * YEAR, -YEAR, timedelta(0)]
Set = Callable[[timedelta], datetime]


@pytest.fixture
def set_clock(monkeypatch: pytest.MonkeyPatch) -> Iterator[Set]:
    """A function that sets the clock of the program off by so much, and returns its time."""
    off = timedelta(0)
    true_time = time.time

    class Clock(datetime):
        @classmethod
        def now(cls, tz: Any = None) -> datetime:  # type: ignore[override]
            return datetime.now(tz) + off

    def set_off(by: timedelta) -> datetime:
        nonlocal off
        off = by
        for name, module in list(sys.modules.items()):
            if name.startswith("webapp") and getattr(module, "datetime", None) is datetime:
                monkeypatch.setattr(module, "datetime", Clock)
        return Clock.now(UTC)

    monkeypatch.setattr(time, "time", lambda: true_time() + off.total_seconds())
    yield set_off
    off = timedelta(0)


class Phone(PlainPhone):
    """A phone whose own clock is right, and whose batches go to the app without a network between."""

    app: Any

    def _ask(self, method: str, path: str, body: dict[str, Any], timeout_s: float) -> dict[str, Any] | None:
        client = self.app.test_client()
        client.set_cookie("cellarslate_device", self.secret)
        reply = client.open(path, method=method, json={**body, "now": datetime.now(UTC).isoformat()})
        self.statuses[reply.status_code] += 1
        self.last_error = reply.get_json().get("error", "")
        return reply.get_json() if reply.status_code == 200 else None


def test_a_clock_that_jumps_a_year_either_way_loses_nothing_and_is_said(
    tmp_path: Path, set_clock: Set, caplog: pytest.LogCaptureFixture
) -> None:
    app = create_app(tmp_path / "book", WTF_CSRF_ENABLED=False)
    book = app.extensions["book"]
    fill_world(book)
    people.put_person(book, {"code": "MD", "name": "M. D.", "access": "office"}, "MD")
    people.set_password(book, "MD", PASSWORD)
    device, secret = devices.enrol_device(book, devices.new_token(book, "MD", "PH-1"), "", datetime.now(UTC))
    phone = Phone("http://localhost", device["id"], secret, seed=1)
    phone.app = app
    client = app.test_client()
    asked = 0
    for by in JUMPS:
        now = set_clock(by)
        asked += client.get("/desk/entries").status_code == 302  # the session is of another time: sign in again
        assert client.post("/sign-in", data={"code": "MD", "password": PASSWORD}).status_code == 302
        for path in ("/desk/entries", "/desk", "/health", "/desk/access"):
            assert client.get(path, follow_redirects=True).status_code == 200, (by, path)
        phone.log(4)
        assert phone.hand_in(), phone.last_error
        scrub.run_due(book, tmp_path / "book", now)
        assert look_at(book, tmp_path / "book", now).checks["book"] == "ok"
    assert asked >= 3
    assert phone.statuses[200] == len(JUMPS)
    assert "Traceback" not in caplog.text
    # What phones say of the time is on the desk's list of phones: the server is off by a year, either way.
    skews = [row["skew_s"] for row in book.query("SELECT DISTINCT skew_s FROM entries")]
    assert max(skews) > 360 * 86_400
    assert min(skews) < -360 * 86_400
    assert {row["id"] for row in book.query("SELECT id FROM entries")} == set(phone.kept)
    assert verification.verify_as_it_is(book) == []
    assert journal.verify(tmp_path / "book") == []
    before = fold.dump(book)
    fold.rebuild(book)
    assert fold.dump(book) == before
    book.close()


def test_backups_go_on_when_the_clock_was_ahead_once(tmp_path: Path) -> None:
    """Neither one at every look, which would push out the others, nor none, nor the new one let go as the oldest."""
    create_app(tmp_path / "book").extensions["book"].close()
    plan = schedule.Plan(tmp_path / "disk", timedelta(hours=24), keep=2)
    plan.folder.mkdir()
    right = datetime(2026, 3, 1, 6, 0, tzinfo=UTC)
    for ahead in (YEAR, YEAR + timedelta(days=1)):
        assert schedule.run_due(tmp_path / "book", plan, right + ahead)
    assert schedule.run_due(tmp_path / "book", plan, right)
    newest = plan.folder / schedule.read_status(tmp_path / "book")["file"]
    assert newest.name == "book-20260301T060000Z.zip"
    assert newest.exists()
    assert not schedule.run_due(tmp_path / "book", plan, right + timedelta(minutes=1))
    assert schedule.run_due(tmp_path / "book", plan, right + timedelta(hours=24))
    assert len(list(plan.folder.glob("*.zip"))) == 2


def test_a_certificate_made_by_a_clock_that_was_ahead_is_made_anew(tmp_path: Path) -> None:
    """A phone with the right time refuses one that is not valid yet (RFC 5280, 6.1.3)."""
    right = datetime(2026, 3, 1, 12, 0, tzinfo=UTC)
    certificates.get_leaf(tmp_path, ["10.0.0.5"], now=right)
    assert not certificates.leaf_is_due(tmp_path, ["10.0.0.5"], now=right)
    certificates.get_leaf(tmp_path, ["10.0.0.5"], now=right + YEAR)
    assert certificates.leaf_is_due(tmp_path, ["10.0.0.5"], now=right)
    certificates.get_leaf(tmp_path, ["10.0.0.5"], now=right)
    assert not certificates.leaf_is_due(tmp_path, ["10.0.0.5"], now=right)
