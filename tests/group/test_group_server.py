"""The group as a real server in a process of its own: joined over TLS, killed mid-batch, away for a while."""

from __future__ import annotations

import random
import re
import subprocess
import sys
import threading
import time
from pathlib import Path

import pytest

from tests.group.conftest import tell
from tests.server_process import ROOT_DIR, ServerProcess
from webapp.backups import BOOK_NAME
from webapp.book.fold import fold
from webapp.book.house import devices, registry
from webapp.book.intake import book_id
from webapp.book.opening import open_book
from webapp.book.record import log
from webapp.book.record.errors import BookError
from webapp.group import sites, way
from webapp.group.sender import NoAnswer, send
from webapp.group.store import open_store
from webapp.serving.phone_trust import write_fingerprint


@pytest.fixture
def database(postgres):
    return postgres.make()


def serve(folder: Path, database: str, *arguments: str) -> ServerProcess:
    environment = {"CELLARSLATE_GROUP_DATABASE": database}
    return ServerProcess(folder, command="group-serve", arguments=arguments, environment=environment).start()


def code_for(folder: Path, name: str) -> str:
    with open_book(folder / BOOK_NAME) as keeper:
        return devices.new_token(keeper, by="OL", name=name)


def run(*arguments: str) -> subprocess.CompletedProcess[str]:
    command = [sys.executable, "-m", "webapp", *arguments]
    return subprocess.run(command, capture_output=True, text=True, cwd=ROOT_DIR, timeout=100, check=False)


def test_a_group_killed_mid_batch_and_away_loses_nothing_and_sites_go_on_alone(database, make_site, tmp_path):
    north, south = make_site("North Hill", 150, 1), make_site("South Bank", 150, 2)
    server, chance = serve(tmp_path / "group", database), random.Random(3)
    ways = []
    for book in (north, south):
        folder = tmp_path / registry.site(book)["name"]
        folder.mkdir()
        way.join(folder, server.url, code_for(server.data_dir, folder.name), folder.name)
        ways.append((book, way.load_way(folder)))
    is_over = threading.Event()

    def keep_sending(book, carrier):
        while not is_over.is_set():
            try:
                send(book, carrier, batch_most=4)
            except NoAnswer:
                time.sleep(0.02)

    threads = [threading.Thread(target=keep_sending, args=pair) for pair in ways]
    for thread in threads:
        thread.start()
    try:
        for _ in range(2):
            time.sleep(chance.uniform(0.1, 0.6))
            server.kill()
            tell(north, 5, chance.randrange(1000))  # the site goes on alone
            server.start()
        store, deadline = open_store(database), time.monotonic() + 90
        wanted = {book_id(book): log.load_head(book) for book in (north, south)}

        def held():
            rows = store.query("SELECT site, cursor, digest FROM branches")
            folds = store.query("SELECT site, book_no, digest FROM folds")
            return [{row["site"]: (row[no], row["digest"]) for row in some}
                    for some, no in ((rows, "cursor"), (folds, "book_no"))]

        while held() != [wanted, wanted]:
            assert time.monotonic() < deadline, (held(), server.log)
            time.sleep(0.1)
    finally:
        is_over.set()
        for thread in threads:
            thread.join()
        server.close()
    for book in (north, south):
        assert sites.verify(store, book_id(book), 0) == (log.load_head(book)[0], [])
        assert len(sites.branches(store.connection(), book_id(book))) == 1
        with open_book(tmp_path / "group" / "sites" / f"{book_id(book)}.sqlite") as work:
            assert fold.dump(work) == fold.dump(book)
    store.close()
    checked = run("group-verify", "--database", database)
    assert (checked.returncode, "Every chain holds." in checked.stdout) == (0, True)


def test_a_site_joins_over_tls_by_fingerprint_and_hands_in_beside_serving(database, tmp_path, make_server, make_site):
    group = serve(tmp_path / "group", database, "--tls")
    try:
        folder = tmp_path / "book"
        folder.mkdir()
        book = make_site("North Hill", 40, 4)
        from webapp.book.record.backup import backup

        backup(book, folder / BOOK_NAME)
        fingerprint = write_fingerprint(group.data_dir)
        code = code_for(group.data_dir, "North")
        with pytest.raises(BookError, match="stop"):
            way.join(folder, group.url, code, "North", fingerprint.replace(fingerprint[:2], "0B"))
        with pytest.raises(NoAnswer):
            way.join(folder, group.url, code, "North")  # nothing vouches for it
        join = ("group-join", "--data", str(folder), "--to", group.url, "--code", code, "--fingerprint", fingerprint)
        joined = run(*join)
        assert joined.returncode == 0, joined.stderr
        assert (folder / way.FILE).stat().st_mode & 0o077 == 0
        again = run(*join)
        assert "has been used already" in again.stderr
        sent = run("group-send", "--data", str(folder))
        assert re.search("The group has 40 of 40 entries", sent.stdout), sent.stderr
        with open_book(folder / BOOK_NAME) as own:
            tell(own, 10, 5)
        make_server(folder)  # its thread hands in the rest
        store, deadline = open_store(database), time.monotonic() + 60
        while store.query("SELECT cursor FROM branches") != [{"cursor": 50}]:
            assert time.monotonic() < deadline
            time.sleep(0.1)
        store.close()
    finally:
        group.close()
    away = run("group-send", "--data", str(folder))
    assert (away.returncode, "does not answer" in away.stderr) == (1, True)


def test_what_cannot_be_opened_is_said_in_a_sentence(tmp_path, postgres):
    told = run("group-serve", "--data", str(tmp_path / "g"), "--host", "127.0.0.1", "--port", "0",
               "--database", postgres.address("nowhere"))
    assert (told.returncode, "Look at --database" in told.stderr, "Traceback" in told.stderr) == (2, True, False)
    with open_book(tmp_path / BOOK_NAME) as book:
        unnamed = run("group-join", "--data", str(tmp_path), "--to", "https://group.example", "--code", "x")
        assert (unnamed.returncode, "has no name yet" in unnamed.stderr) == (2, True)
        registry.set_site(book, {"name": "North Hill"}, by="JK")
    plain = run("group-join", "--data", str(tmp_path), "--to", "http://group.example", "--code", "x")
    assert (plain.returncode, "begins with https://" in plain.stderr) == (2, True)
