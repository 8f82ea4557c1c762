"""The journal of access: its lines hang together, and whoever changes or takes one out is found."""

from __future__ import annotations

import re
import sqlite3
import threading
from contextlib import closing
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from webapp.book.house import journal


def tell(folder: Path, many: int = 5) -> None:
    for n in range(many):
        journal.note(folder, "signed_in", "OL", "192.0.2.7", f"turn {n}")


def rewrite(folder: Path, *statements: str) -> None:
    """Whoever holds the file can do this."""
    with closing(sqlite3.connect(folder / journal.FILE_NAME)) as conn, conn:
        for statement in statements:
            conn.execute(statement)


def test_lines_come_newest_first_and_by_sort_and_person(tmp_path: Path) -> None:
    assert journal.lines(tmp_path) == [] and journal.verify(tmp_path) == []
    tell(tmp_path, 2)
    journal.note(tmp_path, "not_signed_in", origin="192.0.2.9", about="IM")
    assert [line["n"] for line in journal.lines(tmp_path)] == [3, 2, 1]
    assert [line["about"] for line in journal.lines(tmp_path, sort="not_signed_in")] == ["IM"]
    assert len(journal.lines(tmp_path, who="OL")) == 2
    assert len(journal.lines(tmp_path, most=1)) == 1
    assert journal.verify(tmp_path) == []


@pytest.mark.parametrize(("statement", "words"), [
    ("UPDATE journal SET who = 'IM' WHERE n = 3", "Line 3 .* not as it was written"),
    ("UPDATE journal SET at = '2020-01-01' WHERE n = 2", "Line 2 .* not as it was written"),
    ("DELETE FROM journal WHERE n = 3", "lacks the lines between 2 and 4"),
    ("DELETE FROM journal WHERE n > 3", "left at line 5, and lacks lines at its end"),
    ("DELETE FROM journal", "left at line 5, and lacks lines at its end"),
])
def test_a_line_changed_or_taken_out_is_found(tmp_path: Path, statement: str, words: str) -> None:
    tell(tmp_path)
    rewrite(tmp_path, "DROP TRIGGER journal_stays", statement)
    (said, *_) = journal.verify(tmp_path)
    assert re.search(words, said)


def test_lines_cut_off_stay_missing_when_others_follow(tmp_path: Path) -> None:
    tell(tmp_path)
    rewrite(tmp_path, "DELETE FROM journal WHERE n > 3")
    tell(tmp_path, 2)
    assert journal.verify(tmp_path) == ["The journal of access lacks the lines between 3 and 6."]


def test_no_line_is_changed_by_the_way(tmp_path: Path) -> None:
    tell(tmp_path)
    with pytest.raises(sqlite3.IntegrityError, match="lines stay"):
        rewrite(tmp_path, "UPDATE journal SET who = 'IM'")


def test_many_hands_write_one_after_the_other(tmp_path: Path) -> None:
    hands = [threading.Thread(target=tell, args=(tmp_path, 10)) for _ in range(4)]
    for hand in hands:
        hand.start()
    for hand in hands:
        hand.join()
    assert [line["n"] for line in journal.all_lines(tmp_path)] == list(range(1, 41))
    assert journal.verify(tmp_path) == []


def test_old_lines_go_and_what_is_left_hangs_together(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(journal, "_PRUNED_EVERY", 4)
    tell(tmp_path, 3)
    old = (datetime.now(UTC) - timedelta(days=journal.KEPT_DAYS + 1)).isoformat()
    rewrite(tmp_path, "DROP TRIGGER journal_stays", f"UPDATE journal SET at = '{old}' WHERE n < 3")
    tell(tmp_path, 1)
    assert [line["n"] for line in journal.all_lines(tmp_path)] == [3, 4]
    assert journal.verify(tmp_path) == []


def test_a_journal_that_cannot_be_written_keeps_nobody_out(tmp_path: Path, caplog: pytest.LogCaptureFixture) -> None:
    (tmp_path / journal.FILE_NAME).write_bytes(b"no database at all" * 100)
    journal.note(tmp_path, "signed_in", "OL")
    assert "could not be written" in caplog.text
    (said,) = journal.verify(tmp_path)
    assert "the book is another file" in said
    with pytest.raises(journal.CannotRead):
        journal.lines(tmp_path)
