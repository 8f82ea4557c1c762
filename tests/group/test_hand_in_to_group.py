"""Sites hand in to the group over a wire that fails in every way; nothing is lost, doubled or overwritten."""

from __future__ import annotations

import random
import shutil
import threading
from datetime import UTC, datetime

import psycopg
import pytest

from tests.book.conftest import C1, T1, gauge
from tests.book.conftest import send as log_at
from tests.group.conftest import Group, row_of, tell
from webapp.book.fold import fold
from webapp.book.house import people, registry
from webapp.book.intake import book_id
from webapp.book.opening import open_book
from webapp.book.record import log
from webapp.book.record.log import canonical, chain_digest, sha256
from webapp.group import sites
from webapp.group.sender import NoAnswer, send
from webapp.keeping import witnesses
from webapp.keeping.copied_rows import read_rows, write_rows


def rows_in(group, book, branch=0):
    return sites.rows_of(group.store, book_id(book), branch, 0, 10_000)


def same_as_site(group, book, branch=0):
    """Every row is in the group once, as the site has it."""
    names = ("book_no", "id", "body", "body_sha256", "received_at", "skew_s", "via", "digest")
    kept = [{name: row[name] for name in names} for row in rows_in(group, book, branch)]
    return kept == book.query(f"SELECT {', '.join(names)} FROM entries ORDER BY book_no")


def test_two_sites_hand_in_and_their_folds_are_their_own_to_the_byte(group: Group, make_site):
    north, south = make_site("North Hill", 160, 1), make_site("South Bank", 140, 2)
    for book in (north, south):
        people.set_password(book, "NS", "a long enough secret")
        report = send(book, group.let_in())
        assert not report.troubles
        assert report.cursor == log.load_head(book)[0]
        assert same_as_site(group, book)
    group.folds.step()
    for book in (north, south):
        work = group.folds.work(book_id(book)).book
        assert fold.dump(work) == fold.dump(book)
        held = group.store.query(
            "SELECT entry, n, source, target, lpa_ul, volume_ml, mass_g, source_fill, target_fill, reason, "
            "source_account, target_account, at, sort FROM flows WHERE site = %s", (book_id(book),)
        )
        assert sorted(map(canonical, held)) == sorted(map(canonical, book.query("SELECT * FROM flows")))
        sums = group.store.query("SELECT month, a, b, reason, sort, lpa_ul, n FROM month_sums WHERE site = %s",
                                 (book_id(book),))
        assert sorted(map(canonical, sums)) == sorted(map(canonical, book.query("SELECT * FROM month_sums")))
        assert sites.verify(group.store, book_id(book), 0) == (log.load_head(book)[0], [])
    assert "argon2" not in str(group.store.query("SELECT body FROM registry"))


def test_what_changes_at_a_site_changes_its_fold_in_the_group_too(group: Group, make_site):
    book, wire = make_site("North Hill", 120, 3), None
    wire = group.let_in()
    send(book, wire)
    group.folds.step()
    registry.put_vessel(book, {"mark": C1, "tare_kg": 52.0}, "JK")
    registry.set_limit(book, "site", "", "ferment_reading", "temp", (1, 2), None, "JK")
    registry.set_site(book, {"height_m": 900}, by="JK")
    tell(book, 60, 4)
    changed = gauge(T1, "300", "50.0", seq=900)
    log_at(book, changed)
    log_at(book, changed | {"remark": "another body"})  # a clash at the site: its fold asks about it
    send(book, wire)
    group.folds.step()
    assert fold.dump(group.folds.work(book_id(book)).book) == fold.dump(book)
    registry.set_limit(book, "site", "", "ferment_reading", "temp", None, None, "JK")
    send(book, wire)
    group.folds.step()
    assert fold.dump(group.folds.work(book_id(book)).book) == fold.dump(book)
    assert send(book, wire).registry == 0


def test_lost_answers_and_a_cut_wire_lose_and_double_nothing(group: Group, make_site):
    book, wire, chance = make_site("North Hill", 200, 5), group.let_in(), random.Random(5)
    wire.lose_answers = lambda: chance.random() < 0.5
    tries = 0
    while group.place(book)["cursor"] < log.load_head(book)[0]:
        tries += 1
        wire.is_cut = chance.random() < 0.2
        try:
            send(book, wire, batch_most=7)
        except NoAnswer:
            continue
    assert tries > 3
    assert same_as_site(group, book)


def test_sent_twice_is_known_and_another_body_is_a_clash_with_both_kept(group: Group, make_site):
    book, wire = make_site("North Hill", 30, 6), group.let_in()
    send(book, wire)
    rows = [row_of(book, n) for n in (10, 11)]
    batch = {"book_id": book_id(book), "name": "North Hill", "entries": rows}
    assert [r["settled"] for r in wire.hand_in(batch)[1]["results"]] == ["known", "known"]
    # The same id with another body, as number 31: it follows in the chain, and is kept aside all the same.
    last, other = row_of(book, 30), row_of(book, 10)
    body = other["body"].replace('"remark":""', '"remark":"changed"')
    assert body != other["body"]
    forged = other | {"book_no": 31, "body": body}
    forged["digest"] = chain_digest(last["digest"], forged | {"body_sha256": sha256(body)})
    result = wire.hand_in(batch | {"entries": [forged]})[1]["results"][0]
    assert result["settled"] == "clash"
    assert "under number 10" in result["problems"][0]["words"]
    assert group.store.one("SELECT settled FROM aside WHERE book_no = 31") == {"settled": "clash"}
    assert same_as_site(group, book)


def test_a_gap_is_reported_and_closed(group: Group, make_site):
    book, wire = make_site("North Hill", 20, 7), group.let_in()
    batch = {"book_id": book_id(book), "name": "N", "entries": [row_of(book, n) for n in (1, 2, 5, 6)]}
    answer = wire.hand_in(batch)[1]
    assert [r["settled"] for r in answer["results"]] == ["entered", "entered", "gap", "gap"]
    assert answer["results"][2]["gap"] == [3, 4]
    assert (answer["cursor"], answer["trouble"]) == (2, "Book numbers 3 to 4 have not come.")
    assert not send(book, wire).troubles
    assert same_as_site(group, book)


def test_a_hostile_site_is_refused_and_what_it_sent_is_kept_aside(group: Group, make_site):
    book, other, wire = make_site("North Hill", 20, 8), make_site("South Bank", 20, 9), group.let_in()
    send(book, wire)
    tell(book, 2, 10)
    forged = row_of(book, 21) | {"digest": "f" * 64}
    batch = {"book_id": book_id(book), "name": "N", "entries": [forged]}
    assert wire.hand_in(batch)[1]["results"][0]["problems"][0]["code"] == "bad_digest"
    odd = [None, {}, {"book_no": 21}, row_of(book, 21) | {"body": "[]"}, row_of(book, 21) | {"skew_s": "x"},
           row_of(book, 21) | {"body": '{"a":"\\u0000"}'}]
    answer = wire.hand_in(batch | {"entries": odd})[1]
    assert {r["settled"] for r in answer["results"]} == {"refused"}
    assert group.place(book)["cursor"] == 20
    # A device speaks for another site than its own, let in already or not.
    send(other, group.let_in())
    for named in (book_id(other), "b-0123456789abcdef"):
        status, said = wire.hand_in({"book_id": named, "name": "N", "entries": [row_of(other, 1)]})
        assert (status, said["ok"]) == (403, False)
        assert group.store.one("SELECT settled FROM aside WHERE site = %s", (named,)) == {"settled": "stranger"}
    with pytest.raises(NoAnswer, match="another site"):
        send(other, wire)
    assert wire.hand_in({"book_id": "../../etc", "name": "N", "entries": []})[0] == 422
    assert not send(book, wire).troubles
    assert same_as_site(group, book)
    assert same_as_site(group, other)


def test_nobody_hands_in_without_being_let_in(group: Group, make_site):
    book, wire = make_site("North Hill", 3, 1), group.let_in()
    wire.headers = {"Cookie": "cellarslate_device=guess"}
    with pytest.raises(NoAnswer, match="not let in"):
        send(book, wire)


def test_a_book_restored_and_gone_on_differently_is_noticed_and_nothing_overwritten(
    group: Group, make_site, tmp_path
):
    book, wire = make_site("North Hill", 50, 11), group.let_in()
    with book.write():
        pass
    book.db.conn.execute("PRAGMA wal_checkpoint(TRUNCATE)")
    backup = tmp_path / "backup.sqlite"
    from webapp.book.record.backup import backup as copy

    copy(book, backup)
    tell(book, 30, 12)
    send(book, wire)
    first = rows_in(group, book)
    again = tmp_path / "again.sqlite"
    shutil.copy(backup, again)
    with open_book(again) as restored:
        report = send(restored, wire)
        assert "ends at number 50" in report.words
        tell(restored, 45, 13)
        report = send(restored, wire)
        assert report.cursor == 95
        assert "A person decides" in report.words
        assert rows_in(group, book) == first
        assert same_as_site(group, restored, branch=1)
        group.folds.step()
        assert fold.dump(group.folds.work(book_id(book)).book) == fold.dump(book)
        tell(restored, 5, 14)
        assert send(restored, wire).cursor == 100
        sites.take(group.store, book_id(book), 1, "OL", datetime.now(UTC))
        group.folds.step()
        assert fold.dump(group.folds.work(book_id(book)).book) == fold.dump(restored)
        assert not send(restored, wire).troubles
        # And should the first come back, it is known again, and goes on where it was.
        tell(book, 3, 15)
        assert send(book, wire).cursor == 83
        assert len(rows_in(group, book, 0)) == 83
        assert len(sites.branches(group.store.connection(), book_id(book))) == 2


def test_two_senders_of_one_site_never_double(group: Group, make_site):
    book = make_site("North Hill", 120, 16)
    wire = group.let_in()
    wires = [wire, wire.__class__(group, wire.headers["Cookie"])]
    failures: list[BaseException] = []

    def run(one):
        try:
            send(book, one, batch_most=5)
        except BaseException as error:
            failures.append(error)

    threads = [threading.Thread(target=run, args=(one,)) for one in wires]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert not failures
    assert same_as_site(group, book)


def test_a_crash_of_the_database_loses_nothing_that_was_confirmed(group: Group, make_site, postgres):
    book, wire = make_site("North Hill", 100, 17), group.let_in()
    rounds = 0

    def crash_now() -> bool:
        nonlocal rounds
        rounds += 1
        if rounds in (3, 6, 9):
            postgres.crash()
            postgres.start()
        return rounds % 2 == 0

    wire.lose_answers = crash_now
    for _ in range(60):
        try:
            if not send(book, wire, batch_most=9).troubles and group.place(book)["cursor"] == 100:
                break
        except NoAnswer:
            continue
    assert rounds > 9
    assert same_as_site(group, book)
    group.folds.step()
    assert fold.dump(group.folds.work(book_id(book)).book) == fold.dump(book)


def test_the_record_cannot_be_changed_and_a_broken_chain_is_found(group: Group, make_site):
    book, wire = make_site("North Hill", 10, 18), group.let_in()
    send(book, wire)
    with pytest.raises(psycopg.errors.RaiseException, match="never changed"), group.store.write() as conn:
        conn.execute("UPDATE entries SET body = '{}' WHERE book_no = 4")
    with group.store.write() as conn:
        conn.execute("ALTER TABLE entries DISABLE TRIGGER entries_stay")
        for row in conn.execute("SELECT inhrelid::regclass::text AS name FROM pg_inherits "
                                "WHERE inhparent = 'entries'::regclass").fetchall():
            conn.execute(f"ALTER TABLE {row['name']} DISABLE TRIGGER entries_stay".encode())
        conn.execute("UPDATE entries SET body = replace(body, '\"seq\":4', '\"seq\":5') WHERE book_no = 4")
    number, troubles = sites.verify(group.store, book_id(book), 0)
    assert troubles == ["The body of book number 4 is not what was handed in."]
    assert number == 10


def test_a_fold_thrown_away_or_a_working_file_lost_is_made_again(group: Group, make_site):
    book, wire = make_site("North Hill", 60, 19), group.let_in()
    send(book, wire)
    group.folds.step()
    before = group.store.query("SELECT * FROM flows ORDER BY entry, n")
    assert before
    group.folds.close()
    for path in (group.folder / "sites").iterdir():
        path.unlink()
    with group.store.write() as conn:
        conn.execute("DELETE FROM flows WHERE n = 0")
    group.folds.step()
    assert group.store.query("SELECT * FROM flows ORDER BY entry, n") == before


def test_the_group_gives_back_the_heads_that_it_was_shown_and_a_copy_for_a_damaged_book(
    group: Group, make_site, tmp_path
):
    book, wire, now = make_site("North Hill", 30, 31), group.let_in(), datetime(2026, 3, 1, tzinfo=UTC)
    keeper = witnesses.Witnesses(book, tmp_path)
    keeper.look(now)
    send(book, wire, witnesses=keeper)
    given = keeper.give(now)
    assert group.place(book)["heads"] == given
    send(book, wire, witnesses=keeper)
    keeper.look(now)
    assert sorted(one.line() for one in witnesses.kept_heads(tmp_path)["group"]) == sorted(given)
    with book.write() as database:
        database.conn.execute("DROP TRIGGER changes_stay")
        database.conn.execute("UPDATE changes SET person = 'XX' WHERE no = 1")
    fresh = witnesses.Witnesses(book, tmp_path)
    send(book, wire, witnesses=fresh)
    assert {lost["who"] for lost in fresh.look(now)} == {"group"}
    assert write_rows(tmp_path / "rows", book_id(book), sites.walk(group.store, book_id(book), 0)) == 30
    held = read_rows(tmp_path / "rows")["entries"].rows
    names = [name for name in held[1,] if name != "skew_s"]
    assert [{name: row[name] for name in names} for row in held.values()] == book.query(
        f"SELECT {', '.join(names)} FROM entries ORDER BY book_no"
    )
