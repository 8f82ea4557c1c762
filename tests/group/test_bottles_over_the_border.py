"""Cases go in bond from one site to another: the trace goes on through them, and the periods cancel."""

from __future__ import annotations

import csv
import io
import json
import re
from datetime import UTC, datetime

import pytest

from tests.book.conftest import T1, entry, gauge
from tests.book.conftest import send as log_at
from tests.group.conftest import Group, at, signed_in, with_words
from webapp.book.intake import book_id
from webapp.book.periods import periods
from webapp.group import links
from webapp.group import periods as group_periods
from webapp.group.sender import send
from webapp.group.tracing import Tracing

LATER = datetime(2025, 11, 5, tzinfo=UTC)


def bottled(seq=1, lot="K2603", first=1):
    """181 L at 45 % into 60 cases of 6 half-litre bottles: 81 L of pure alcohol."""
    hours = 100 - seq
    yield gauge(T1, "181", "45.0", read_at=at(hours), seq=seq)
    yield entry("bottling_gauge", T1, batch="K-26-03", volume="181 L", temp="20 degC", strength="45.0 pct_vol",
                label_strength="45 pct_vol", read_at=at(hours - 0.2), seq=seq + 1)
    yield entry("bottling_close", T1, filled="360 count", broken="0 count", bottle_size="0.5 L", per_case="6 count",
                case_from=str(first), case_to=str(first + 59), lot_mark=lot, loss="1 L", tank_empty="yes",
                read_at=at(hours - 0.4), seq=seq + 2)


def out(hours, seq, cases="20", first="1", batch="K2603", whom="South Bank, Lower Road", document="D-7", **more):
    made = entry("dispatch", batch=batch, why=more.pop("why", "in_bond"), cases=f"{cases} count", case_from=first,
                 document=document, read_at=at(hours), seq=seq, **more)
    return with_words(made, to_whom=whom)


def come_in(hours, seq, cases="20", batch="K-26-03", document="d-7", consignor="North Hill", **more):
    made = entry("goods_receipt", batch=batch, spirit="kirsch", strength="45 pct_vol", bottle_size="0.5 L",
                 per_case="6 count", cases=f"{cases} count", case_from="1", case_to=cases, seals="yes",
                 document=document, read_at=at(hours), seq=seq, **more)
    return with_words(made, consignor=consignor)


def hand_in(group, *books):
    for book in books:
        assert not send(book, group.let_in()).troubles
    group.folds.step()
    return {book_id(book): book.one("SELECT value FROM site WHERE name = 'name'")["value"].strip('"') for book in books}


@pytest.fixture
def two(group: Group, make_site):
    """North bottles 60 cases and sends 20 of them; two bottles break, and south sells five cases."""
    north, south = make_site("North Hill"), make_site("South Bank")
    log_at(north, *bottled(), out(60, 4, case_to="20"))
    log_at(south, come_in(50, 1, short="2 count"),
           out(40, 2, "5", batch="K-26-03", whom="=Corner shop", document="R-1", why="tax_paid", case_to="5"))
    return north, south, hand_in(group, north, south)


def key_of(book, kind):
    return f"{book_id(book)}/{book.one('SELECT id FROM entries WHERE kind = ?', (kind,))['id']}"


def trace_of(group, names, key):
    tracer = Tracing(group.store, group.folds, links.load(group.store, names))
    return tracer.trace(tracer.find(key), back_most=10_000)


def test_a_trace_goes_on_through_cases_that_another_site_received(group: Group, two):
    """181 L x 45 % = 81.45 L: 81 L in bottles, 27 L of them at the other site, 2 x 0.225 L of those lost on the way."""
    north, south, names = two
    made = trace_of(group, names, key_of(north, "gauge"))
    close, came = key_of(north, "bottling_close"), key_of(south, "goods_receipt")
    litres = {key: ul / 1e6 for key, (_, ul) in made.spread.bottled.items()}
    assert litres == {close: pytest.approx(81), came: pytest.approx(27)}
    assert [share for share, _ in made.spread.bottled.values()] == pytest.approx([1.0, 1.0])
    gone = {name: ul / 1e6 for name, ul in made.spread.gone_ul.items()}
    assert gone["bottled"] == pytest.approx(81)
    assert gone["transit"] == pytest.approx(0.45, abs=1e-4)
    assert "removed" not in gone  # neither the cases that went over, nor those sold there
    way = next(node for node in made.nodes.values() if node.sort == "goods_way")
    assert (way.name, way.words) == ("document d-7", "from North Hill to South Bank")
    assert made.spread.links[f"b:{close}", way.id] / 1e6 == pytest.approx(27, abs=1e-4)
    assert not any("/b:" in node for node in made.nodes)


def test_a_case_received_is_traced_back_to_where_it_was_made(group: Group, two):
    north, south, names = two
    made = trace_of(group, names, key_of(south, "goods_receipt"))
    assert made.lpa_ul / 1e6 == pytest.approx(27)
    assert made.origin.leaves == {f"u:{key_of(north, 'gauge')}": pytest.approx(1.0)}
    assert {node.sort for node in made.nodes.values()} == {"goods", "goods_way", "bottling", "tank", "found", "gone"}
    # From the sender's bottling the way on goes over the border too, and names what it holds there.
    own = trace_of(group, names, key_of(north, "bottling_close"))
    assert list(own.spread.bottled) == [key_of(south, "goods_receipt")]
    assert own.spread.bottled[key_of(south, "goods_receipt")] == (pytest.approx(1.0), pytest.approx(27e6))


def test_cases_between_sites_cancel_in_the_sum(group: Group, two):
    north, south, names = two
    total = group_periods.total(group.folds.all_works(), links.load(group.store, names), "2025-09", LATER)
    whole, way = total.accounts
    own = [periods.period(book, "2025-09", LATER, "warehouse").known[0] for book in (north, south)]
    assert whole.closing == sum(one.closing for one in own)
    assert not any(line.party == "out:received" for line in whole.ins)
    assert [line.ul / 1e6 for line in whole.outs if line.party == "out:removed"] == [pytest.approx(6.75, abs=1e-4)]
    assert [line.ul / 1e6 for line in whole.outs if line.party == "out:transit"] == [pytest.approx(0.45, abs=1e-4)]
    assert (way.name, way.closing, way.ins[0].ul) == ("on the way", 0, way.outs[0].ul)


def test_papers_that_differ_say_so_and_the_difference_stays_in_sight(group: Group, make_site):
    """20 cases sent, 19 declared: six half-litre bottles at 45 % are 1.35 L."""
    north, south = make_site("North Hill"), make_site("South Bank")
    log_at(north, *bottled(), out(60, 4, case_to="20"))
    log_at(south, come_in(50, 1, "19"))
    names = hand_in(group, north, south)
    made = trace_of(group, names, key_of(north, "gauge"))
    way = next(node for node in made.nodes.values() if node.sort == "goods_way")
    assert way.words == "from North Hill to South Bank, declared 1.35 L less than sent"
    total = group_periods.total(group.folds.all_works(), links.load(group.store, names), "2025-09", LATER)
    lines = {line.party: line.ul / 1e6 for line in total.accounts[1].outs}
    assert lines == {"sites": pytest.approx(25.65, abs=1e-4), "papers": pytest.approx(1.35, abs=1e-4)}


def test_one_document_brings_two_batches_and_neither_is_taken_for_the_other(group: Group, make_site):
    north, south = make_site("North Hill"), make_site("South Bank")
    log_at(north, *bottled(), *bottled(4, "K2604", 101), out(60, 7, case_to="20"),
           out(59, 8, "10", "101", "K2604", case_to="110"))
    log_at(south, come_in(50, 1, batch="K2603"), come_in(49, 2, "10", batch="K2604"),
           come_in(48, 3, "4", batch="K2699"))
    names = hand_in(group, north, south)
    found = links.load(group.store, names)
    assert {link.goods: link.sent_ul - link.received_ul for link in found.links} == {"K2603": 0, "K2604": 0}
    assert [one["batch"] for one in found.alike] == ["K2699"]
    close = north.query("SELECT id FROM bottlings WHERE lot_mark = 'K2604'")[0]["id"]
    made = trace_of(group, names, f"{book_id(north)}/{close}")
    assert [ul / 1e6 for _, ul in made.spread.bottled.values()] == [pytest.approx(13.5, abs=1e-4)]


def test_cases_that_come_back_to_the_sender_are_no_new_bottles(group: Group, make_site):
    north, south = make_site("North Hill"), make_site("South Bank")
    log_at(north, *bottled(), out(60, 4, case_to="20"),
           out(30, 5, "5", batch="K2603", whom="South Bank", document="B-1", why="returned", case_to="5"))
    log_at(south, come_in(50, 1), out(40, 2, "5", batch="K-26-03", whom="North Hill", document="B-1", case_to="5"))
    names = hand_in(group, north, south)
    made = trace_of(group, names, key_of(north, "gauge"))
    assert made.spread.bottled[key_of(north, "bottling_close")][1] / 1e6 == pytest.approx(81)
    total = group_periods.total(group.folds.all_works(), links.load(group.store, names), "2025-09", LATER)
    assert total.accounts[1].closing == 0
    assert {line.party for account in total.accounts for line in (*account.ins, *account.outs)}.isdisjoint(
        {"out:removed", "out:returned"}
    )


def test_the_files_hold_both_directions_and_no_formula(group: Group, two):
    north, south, names = two
    client = signed_in(group)
    made, close, came = key_of(north, "gauge"), key_of(north, "bottling_close"), key_of(south, "goods_receipt")
    page = client.get(f"/group/trace/{made}").text
    assert re.search(f'href="/group/trace/{book_id(north)}/[^"]+[.]csv"', page)
    sent = client.get(f"/group/trace/{came}.csv")
    assert sent.mimetype == "text/csv"
    assert "attachment" in sent.headers["Content-Disposition"]
    rows = list(csv.DictReader(io.StringIO(sent.text.removeprefix("\ufeff"))))
    assert {row["way"] for row in rows} == {"on", "back"}
    back = {row["sort"]: row for row in rows if row["way"] == "back"}
    assert set(back) == {"goods_way", "bottling", "tank", "found"}
    assert (back["bottling"]["site_name"], back["bottling"]["entry"]) == ("North Hill", close.partition("/")[2])
    sold = next(row for row in rows if row["name"] == "left, duty determined")
    assert (sold["site"], sold["detail"]) == (book_id(south), "R-1, =Corner shop")
    whole = client.get(f"/group/trace/{made}.json").json
    assert whole["sites"] == names
    assert {one["id"] for one in whole["nodes"]} >= {f"b:{close}", f"b:{came}"}
    assert whole["transfers"][0] | {"sent": 0, "received": 0} == {
        "from": book_id(north), "to": book_id(south), "document": "d-7", "goods": "K-26-03", "sent": 0, "received": 0,
        "sent_ul": whole["transfers"][0]["received_ul"], "received_ul": whole["transfers"][0]["sent_ul"],
    }
    assert {one["why"] for one in whole["on"]["removals"]} == {"in_bond", "tax_paid"}
    assert client.get(f"/group/trace/{book_id(north)}/nothing.csv").status_code == 404
    assert group.app.test_client().get(f"/group/trace/{made}.json").status_code in (302, 401)


def test_a_period_of_all_sites_is_a_file_that_adds_up(group: Group, make_site):
    north, south = make_site("=North Hill"), make_site("South Bank")
    log_at(north, *bottled(), out(60, 4, case_to="20"))
    log_at(south, come_in(50, 1, "19", consignor="=North Hill"))
    hand_in(group, north, south)
    client = signed_in(group)
    text = client.get("/group/periods/2025-09.csv").text
    rows = list(csv.DictReader(io.StringIO(text.removeprefix("\ufeff"))))
    assert {row["site_name"] for row in rows} == {"all sites", "'=North Hill", "South Bank"}
    closing = {(row["site_name"], row["basis"], row["account"]): int(row["lpa_ul"])
               for row in rows if row["row"] == "closing"}
    known = [ul for (name, basis, _), ul in closing.items() if basis == "now_known" and name != "all sites"]
    assert closing["all sites", "now_known", "warehouse"] == sum(known)
    assert {row["line"] for row in rows if row["account"] == "on the way"} == {"", "sites", "papers"}
    whole = client.get("/group/periods/2025-09.json").json
    assert [one["id"] for one in whole["sites"]] == [book_id(north), book_id(south)]
    assert whole["transfers"][0]["sent_ul"] - whole["transfers"][0]["received_ul"] == pytest.approx(1.35e6, abs=100)
    assert json.dumps(whole["sum"]).count('"party": "papers"') == 1
    assert client.get("/group/periods/1999-01.csv").status_code == 404
    page = client.get("/group/periods/2025-09").text
    assert "/group/periods/2025-09.csv" in page
    assert "1.35 L less than sent" in page


def test_an_older_group_book_publishes_its_flows_anew(group: Group, two):
    names = two[2]
    with group.store.write() as conn:
        conn.execute("UPDATE flows SET document = '', whom = ''")  # as the program before this one left them
        conn.execute("DELETE FROM migrations WHERE name = 'goods'")
        conn.execute("DROP INDEX flows_out_of_bottles, flows_into_bottles")
    assert not links.load(group.store, names).links
    again = Group(group.folder.parent / "again", group.url)
    try:
        group.folds.step()
        assert [link.document for link in links.load(group.store, names).links] == ["d-7"]
    finally:
        again.close()
