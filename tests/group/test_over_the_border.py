"""Spirit goes in bulk from one site to another: the trace goes on over the border, and the periods cancel."""

from __future__ import annotations

import re
import subprocess
import sys
from datetime import UTC, datetime

import pytest

from tests.book.conftest import F1, R2, S1, T1, T2, charge, entry, fruit, gauge
from tests.book.conftest import send as log_at
from tests.group.conftest import Group, at, signed_in, tell, with_words
from webapp.book.intake import book_id
from webapp.book.lineage import lineage
from webapp.book.opening import open_book
from webapp.book.periods import periods
from webapp.book.record.backup import backup
from webapp.group import links
from webapp.group import periods as group_periods
from webapp.group.sender import send
from webapp.group.tracing import Tracing

LATER = datetime(2025, 11, 5, tzinfo=UTC)


def removal(serial: str = "T-7", whom: str = "South Bank, Lower Road 2", **more):
    made = entry("account_move", T1, serial=serial, from_account="processing", to_account="removed", purpose="in_bond",
                 spirit="plum", distilling_strength="70 pct_vol", volume="100 L", temp="20 degC",
                 strength="62 pct_vol", **more)
    return with_words(made, to_whom=whom)


def receipt(document: str = "T-7", consignor: str = "North Hill distillery", **more):
    made = entry("receipt", T2, document=document, purpose="in_bond", spirit="plum",
                 to_account="processing", declared_strength="62 pct_vol", declared_volume="100 L", volume="99 L",
                 temp="20 degC", strength="62 pct_vol", seals="yes", **more)
    return with_words(made, consignor=consignor)


@pytest.fixture
def two(group: Group, make_site):
    """North makes 400 L and sends 100 L of it; south receives it and bottles."""
    north, south = make_site("North Hill"), make_site("South Bank")
    log_at(north, fruit(F1, read_at=at(90), seq=1), gauge(T1, read_at=at(80), seq=2), removal(read_at=at(60), seq=3))
    log_at(south, receipt(read_at=at(50), seq=1),
           entry("bottling_close", T2, filled="100 count", broken="0 count", per_case="6 count", bottle_size="0.5 L",
                 lot_mark="L-9", case_from="1", case_to="17", loss="0 L", tank_empty="no", read_at=at(20), seq=2))
    for book in (north, south):
        assert not send(book, group.let_in()).troubles
    group.folds.step()
    names = {book_id(north): "North Hill", book_id(south): "South Bank"}
    return north, south, names


def tracing(group, names):
    return Tracing(group.store, group.folds, links.load(group.store, names))


def test_a_trace_goes_on_over_the_border_both_ways(group: Group, two):
    north, south, names = two
    tracer = tracing(group, names)
    subject = tracer.find(f"{book_id(north)}/{T1}")
    made = tracer.trace(subject, back_most=10_000)
    own = lineage.trace_subject(north, lineage.find_subject(north, T1))
    # At the site alone the 62 L of pure alcohol are gone; in the group they are in the other's tank and bottles.
    assert own.spread.gone_ul["removed"] == pytest.approx(62e6, rel=1e-3)
    assert "removed" not in made.spread.gone_ul
    there = sum(ul for fill, (_, ul) in made.spread.standing.items() if fill.startswith(book_id(south)))
    bottled = sum(ul for _, ul in made.spread.bottled.values())
    transit = made.spread.gone_ul["transit"]
    assert bottled > 0
    assert there + bottled + transit == pytest.approx(own.spread.gone_ul["removed"], abs=5)
    bottling = south.one("SELECT id FROM bottlings")["id"]
    back = tracer.trace(tracer.find(f"{book_id(south)}/{bottling}"), back_most=10_000)
    assert sum(back.origin.leaves.values()) == pytest.approx(1.0)
    assert all(node[2:].startswith(book_id(north)) for node in back.origin.leaves)
    assert {node.sort for node in back.nodes.values()} >= {"bottling", "tank", "way"}


def test_a_load_of_fruit_at_one_site_is_found_in_bottles_of_the_other(group: Group, make_site):
    north, south = make_site("North Hill"), make_site("South Bank")
    log_at(
        north, fruit(F1, read_at=at(200), seq=1),
        entry("ferment_closed", F1, read_at=at(150), seq=2, final_gravity="1.010 SG", volume="800 L",
              wash_strength="6.0 pct_vol"),
        charge(S1, F1, read_at=at(140), seq=3),
        entry("fraction_gauge", R2, read_at=at(130), seq=4, still=S1, volume="30 L", temp="20 degC",
              strength="70 pct_vol", fraction="hearts", goes_to="stays"),
        with_words(entry("account_move", R2, read_at=at(120), seq=5, serial="12", from_account="production",
                         to_account="removed", purpose="in_bond", spirit="plum", distilling_strength="70 pct_vol",
                         volume="30 L", temp="20 degC", strength="70 pct_vol"), to_whom="South Bank"),
    )
    log_at(south, receipt("12", "north hill", read_at=at(50), seq=1) | {"remark": "as gauged there"})
    for book in (north, south):
        send(book, group.let_in())
    group.folds.step()
    tracer = tracing(group, {book_id(north): "North Hill", book_id(south): "South Bank"})
    load = north.one("SELECT id FROM entries WHERE kind = 'fruit_intake'")["id"]
    made = tracer.trace(tracer.find(f"{book_id(north)}/load-{load}"), back_most=10_000)
    assert any(fill.startswith(book_id(south)) for fill in made.spread.standing)


def test_transfers_cancel_in_the_sum_and_what_is_on_the_way_is_said(group: Group, two):
    north, south, names = two
    found = links.load(group.store, names)
    total = group_periods.total(group.folds.all_works(), found, "2025-09", LATER)
    whole, way = total.accounts
    own = [periods.period(book, "2025-09", LATER, "warehouse").known[0] for book in (north, south)]
    assert whole.closing == sum(one.closing for one in own)
    assert not any(line.party in ("out:removed", "out:received") for line in (*whole.ins, *whole.outs))
    sent = next(line.ul for line in own[0].outs if line.party == "out:removed")
    received = next(line.ul for line in own[1].ins if line.party == "out:received")
    assert (way.name, way.opening, way.closing) == ("on the way", 0, 0)
    assert (way.total_in - way.total_out, way.ins[0].ul) == (0, max(sent, way.ins[0].ul))
    assert {line.party: line.ul for line in way.outs}["sites"] == received
    # Every line of every site is in the sum, and no other: outside the border nothing has changed.
    assert whole.total_in - whole.total_out == sum(one.total_in - one.total_out for one in own)


def test_papers_that_only_look_alike_are_not_joined(group: Group, make_site):
    north, south = make_site("North Hill"), make_site("South Bank")
    log_at(north, gauge(T1, read_at=at(80), seq=1), removal("7", "Corner shop", read_at=at(60), seq=2))
    log_at(south, receipt("7", "Somebody else", read_at=at(50), seq=1),
           receipt("8", "North Hill", read_at=at(40), seq=2))
    for book in (north, south):
        send(book, group.let_in())
    group.folds.step()
    found = links.load(group.store, {book_id(north): "North Hill", book_id(south): "South Bank"})
    assert not found.links
    assert [one["document"] for one in found.alike] == ["7"]


def test_the_pages_show_sites_trace_and_periods(group: Group, two):
    north, _, _ = two
    client = signed_in(group)
    page = client.get("/group/sites").text
    assert "North Hill" in page
    assert "up to date" in page
    assert "group-join --to" in client.post("/group/sites", data={"name": "West"}).text
    assert "on the way" not in client.get("/group/trace").text
    assert "North Hill" in client.get(f"/group/trace?q={T1}").text
    traced = client.get(f"/group/trace/{book_id(north)}/{T1}").text
    assert "document T-7" in traced
    assert "South Bank" in traced
    assert "2025-09" in client.get("/group/periods").text
    assert "On the way between sites" in client.get("/group/periods/2025-09").text
    assert client.get("/group/periods/1999-01").status_code == 404
    assert client.get(f"/group/trace/{book_id(north)}/nothing").status_code == 404
    added = {"code": "IM", "name": "Ira", "access": "floor", "invite": "yes"}
    shown = client.post("/group/people", data=added)
    assert shown.status_code == 200
    token = re.search(r"/invitation/([\w-]{43})", shown.text)[1]
    chosen = {"password": "another long secret", "again": "another long secret"}
    assert group.app.test_client().post(f"/invitation/{token}", data=chosen).status_code == 302
    looker = group.app.test_client()
    looker.post("/sign-in", data={"code": "IM", "password": "another long secret"})
    assert looker.get("/group/sites").status_code == 200
    assert looker.post("/group/sites", data={"name": "West"}).status_code == 403
    assert looker.get("/group/people").status_code == 403
    client.post(f"/group/sites/{book_id(north)}/shut-out")
    assert send(north, group.let_in("North again")).cursor == 3


def test_the_first_run_asks_for_the_group_and_not_for_a_house(group: Group):
    page = group.app.test_client().get("/set-up?code=x").text
    assert "A new group" in page
    assert 'name="units" value="metric"' in page
    assert "The house" not in page


def test_pages_say_when_the_database_is_away_and_go_on_when_it_is_back(group: Group, postgres):
    client, wire = signed_in(group), group.let_in()
    postgres.crash()
    for path in ("/group/sites", "/group/trace?q=T1", "/group/periods", "/group/periods/2025-09.csv"):
        answer = client.get(path)
        assert (answer.status_code, "does not answer. Nothing is lost" in answer.text) == (503, True), path
    assert wire.ask("GET", "/api/group/place?book_id=b-00000000")[0] == 503
    postgres.start()
    assert client.get("/group/sites").status_code == 200
    assert wire.ask("GET", "/api/group/place?book_id=b-00000000")[0] == 200


def test_a_site_alone_needs_no_driver_for_the_group():
    code = "import sys, webapp.cli, webapp.desk, webapp.floor, webapp.group.sender; print('psycopg' in sys.modules)"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "False"


def test_the_sites_page_asks_a_person_which_book_counts(group: Group, make_site, tmp_path):
    west, wire = make_site("West Mill", 30, 3), group.let_in()
    copy = backup(west, tmp_path / "backup.sqlite")
    tell(west, 10, 4)
    send(west, wire)
    with open_book(copy) as restored:
        tell(restored, 14, 5)
        assert "A person decides" in send(restored, wire).words
    client = signed_in(group)
    page = client.get("/group/sites").text
    assert "From number 31 on" in page
    assert "10 entries" in page
    taken = client.post(f"/group/sites/{book_id(west)}/take", data={"branch": "1"}, follow_redirects=True)
    assert "which book counts" not in taken.text
    assert "to come" not in taken.text
    with open_book(copy) as restored:
        tell(restored, 3, 6)
        batch = {"book_id": book_id(west), "name": "West Mill", "head": [47, "x"], "entries": []}
        wire.hand_in(batch)
    assert "3 to come" in client.get("/group/sites").text
    assert client.post(f"/group/sites/{book_id(west)}/take", data={"branch": "9"}).status_code == 422
